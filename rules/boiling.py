"""The rule every wet method opens with: where water boils here."""

from __future__ import annotations

from rules.book import Part, rule
from rules.case import Case, celsius


@rule("water.boiling_point", "iapws-r7-97", "us-std-atm-1976")
def boiling_point(case: Case) -> Part:
    """Where water boils here: the ceiling of every open pot."""
    drop = case.sea.boiling_c - case.here.boiling_c
    way = "under" if drop > 0 else "over"
    against = f", {case.say.temp_drop(abs(drop))} {way} sea level" if abs(drop) > 0.05 else ""
    return Part(
        figures=(celsius("boiling_point", "Water boils at", case.here.boiling_c, case.sea.boiling_c),),
        because=f"Water boils at {case.say.temp(case.here.boiling_c)} at {case.place}{against}, because the air "
        f"presses on it with {case.say.pressure(case.here.pressure_pa)}. No open pot gets hotter than that, however "
        "hard it boils.",
        maths=f"p = 101,325·(1 − {round(case.here.elevation_m)}/44,331)^5.2559 = {round(case.here.pressure_pa):,} Pa; "
        f"T_sat(p) = {case.here.boiling_c:.2f} °C.",
    )
