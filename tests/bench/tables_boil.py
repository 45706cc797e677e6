"""The boiling point of water: our equation beside CoolProp's, under the same pressure of the air."""

from __future__ import annotations

from tables_shown import cpu_s, library, show

from rules.physics.air import pressure_pa
from rules.physics.water import saturation_temp_c

LOWEST_M, HIGHEST_M, STEP_M = -430, 5500, 10
ROUNDS, KELVIN = 5, 273.15


def table() -> None:
    """Print the table."""
    heights = range(LOWEST_M, HIGHEST_M + 1, STEP_M)
    pressures = [pressure_pa(height) for height in heights]
    own_s = cpu_s(lambda: [saturation_temp_c(p) for p in pressures], ROUNDS)
    rows = [("simmerline, IAPWS-IF97 region 4", f"{own_s / len(pressures) * 1e6:.2f} us", "1.0", "-")]
    if coolprop := library("CoolProp.CoolProp", "CoolProp"):

        def theirs(p: float) -> float:
            return float(coolprop.PropsSI("T", "P", p, "Q", 0, "Water")) - KELVIN

        their_s = cpu_s(lambda: [theirs(p) for p in pressures], ROUNDS)
        apart, at_m = max((abs(saturation_temp_c(p) - theirs(p)), h) for p, h in zip(pressures, heights, strict=True))
        rows.append(
            (
                "CoolProp, IAPWS-95",
                f"{their_s / len(pressures) * 1e6:.2f} us",
                f"{their_s / own_s:.1f}",
                f"{apart * 1000:.3f} mK at {at_m} m",
            )
        )
    show(
        f"Boiling point, {LOWEST_M} to {HIGHEST_M} m",
        ("equation", "a point", "times our time", "greatest difference"),
        rows,
    )


if __name__ == "__main__":
    table()
