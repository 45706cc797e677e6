"""A saved kitchen in words: in one line, and all else that is kept of it."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from assistant.store.kitchens import SavedKitchen


def line(kitchen: SavedKitchen) -> str:
    """A kitchen in one line."""
    from assistant.replies.quantities import Say

    place = f", {kitchen.place}" if kitchen.place else ""
    height = (
        Say(kitchen.units).elevation(kitchen.elevation_m) if kitchen.elevation_m is not None else "elevation unknown"
    )
    return f"{kitchen.name}{place}: {height}{', in use' if kitchen.in_use else ''}"


def details(kitchen: SavedKitchen) -> list[str]:
    """What else is kept of a kitchen, a line each."""
    from assistant.replies.quantities import Say
    from rules.baking.rounding import number
    from rules.heat.equipment import label
    from rules.physics.ambient import ambient
    from rules.physics.units import INHG_PER_PA

    lines = []
    if kitchen.elevation_m is not None:
        air = ambient(kitchen.elevation_m)
        say = Say(kitchen.units)
        lines.append(f"Water boils at {say.temp(air.boiling_c)}; the air stands at {say.pressure(air.pressure_pa)}.")
    lines.append(f"Units: {'US first' if kitchen.units == 'us' else 'metric first'}.")
    if kitchen.equipment:
        lines.append(f"Equipment: {', '.join(label(id) for id in kitchen.equipment)}.")
    if offset := kitchen.barometer_offset_pa:
        size = f"{number(abs(offset) * INHG_PER_PA, 2)} inHg ({number(abs(offset) / 100, 1)} hPa)"
        lines.append(f"Its barometer reads {size} too {'high' if offset > 0 else 'low'}.")
    if offset := kitchen.thermometer_offset_c:
        size = f"{number(abs(offset) * 1.8, 1)} °F ({number(abs(offset), 1)} °C)"
        lines.append(f"Its thermometer reads {size} too {'high' if offset > 0 else 'low'}.")
    return lines
