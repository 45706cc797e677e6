"""Sanitising with hot water: the targets, and how much room the boil here leaves above them."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.heat.where_water_boils import boiling_point
from rules.model import Caution
from rules.physics import water
from rules.physics.units import to_c
from rules.safety.local_code import local_code
from rules.said import elevation, sentences, temp, temp_drop

say = sentences("safety/subjects/sanitising")
MANUAL_C, RINSE_C, RINSE_CEILING_C, SURFACE_C = to_c(171), to_c(180), to_c(194), to_c(160)


@rule("safety.sanitising", "fda-food-code-2022", "from-memory")
def sanitising(case: Case) -> Part:
    """Temperatures for sinks and machines, against the boil here."""
    room_k = case.here.boiling_c - RINSE_C
    rinse, boil = temp(RINSE_C), temp(case.here.boiling_c)
    flash = Caution("note", say("flashes", ceiling=temp(RINSE_CEILING_C)), ("from-memory", "computed"))
    return Part(
        headline=say(
            "headline",
            rinse=rinse,
            sink=temp(MANUAL_C),
            way="reached" if room_k > 0 else "out_of_reach",
            room=temp_drop(room_k),
            boil=boil,
        ),
        figures=(
            celsius("rinse_temperature", say("rinse-label"), RINSE_C, RINSE_C),
            celsius("surface_temperature", say("plate-label"), SURFACE_C, SURFACE_C),
            celsius("sink_temperature", say("sink-label"), MANUAL_C, MANUAL_C),
        ),
        because=say("because", boil=boil, place=case.place),
        cautions=(flash,) if case.here.boiling_c <= RINSE_CEILING_C + 1 else (),
        maths=say("maths", rinse=rinse, above=elevation(water.elevation_from_boiling_m(RINSE_C))),
    )


NEEDS = ("elevation",)
RULES = (sanitising, boiling_point, local_code)
