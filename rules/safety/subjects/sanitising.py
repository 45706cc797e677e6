"""Sanitising with hot water: the targets, and how much room the boil here leaves above them."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.heat.where_water_boils import boiling_point
from rules.model import Caution
from rules.physics import water
from rules.physics.units import to_c
from rules.safety.local_code import local_code

MANUAL_C, RINSE_C, RINSE_CEILING_C, SURFACE_C = to_c(171), to_c(180), to_c(194), to_c(160)


@rule("safety.sanitising", "fda-food-code-2022", "from-memory")
def sanitising(case: Case) -> Part:
    """Temperatures for sinks and machines, against the boil here."""
    room_k = case.here.boiling_c - RINSE_C
    rinse = case.say.temp(RINSE_C)
    enough = (
        f"the boil here is {case.say.temp_drop(room_k)} above that"
        if room_k > 0
        else f"water boils at {case.say.temp(case.here.boiling_c)} here, under that: use chemical sanitiser"
    )
    flash = (
        Caution(
            "note",
            f"A machine may run its rinse up to {case.say.temp(RINSE_CEILING_C)}; here that is at the boil, and it "
            "comes out as steam, which does not sanitise. Have it set lower.",
            ("from-memory", "computed"),
        ),
    )
    return Part(
        headline=f"A machine's final rinse stays at {rinse} or more and a sink at {case.say.temp(MANUAL_C)} for 30 s; "
        f"{enough}.",
        figures=(
            celsius("rinse_temperature", "Final rinse at least", RINSE_C, RINSE_C),
            celsius("surface_temperature", "Which gives on the plate", SURFACE_C, SURFACE_C),
            celsius("sink_temperature", "Sanitising sink, 30 s", MANUAL_C, MANUAL_C),
        ),
        because="Heat sanitises by temperature, not by bubbles, so the targets do not move with elevation. A pot that "
        f"boils is only as hot as the air allows, {case.say.temp(case.here.boiling_c)} at {case.place}: put a "
        "thermometer in it.",
        cautions=flash if case.here.boiling_c <= RINSE_CEILING_C + 1 else (),
        maths=f"Water boils under {rinse} above {case.say.elevation(water.elevation_from_boiling_m(RINSE_C))}.",
    )


NEEDS = ("elevation",)
RULES = (sanitising, boiling_point, local_code)
