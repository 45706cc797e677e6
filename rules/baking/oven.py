"""Oven: a little hotter sets the crumb before its gas has swelled too far."""

from __future__ import annotations

from rules.baking import bands, components
from rules.baking.batch import Batch
from rules.baking.time_shift import Shift
from rules.say import number

RULE = "baking.oven"
K_PER_F = 5 / 9


def shift(batch: Batch) -> Shift | None:
    """How the oven setting moves for this style; None where the style has no advice on it."""
    part = components.share(batch.style, "oven")
    if part is None or not batch.expects("oven"):
        return None
    sources = components.sources(batch.style, "oven")
    if not part.value:
        return Shift(bands.NOTHING, "oven", RULE, f"{batch.stays(part)}.", sources, stays=True)
    degrees_f = components.difference(batch.style, "oven", batch.from_m, batch.to_m)
    return Shift(degrees_f.map(lambda f: f * K_PER_F), "oven", RULE, why(batch), sources)


def why(batch: Batch) -> str:
    """The reason."""
    if not batch.up:
        return f"The rise is slower in the denser air at {batch.here}, so the crumb may set more slowly."
    swell = number(1 / batch.pressure_ratio)
    return (
        f"The gas in the batter takes {swell} times the room it takes at {batch.there}. A hotter oven sets the crumb "
        "before "
        "it swells too far, and browns a crust that drying keeps pale. Extension guides give 15 to 25 °F (8 to 14 °C)."
    )
