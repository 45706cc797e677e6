"""A cook says where they cook: what follows from it at once."""

from __future__ import annotations

from rules.book import Case, Part, Rule, rule
from rules.heat.equipment import label
from rules.heat.where_water_boils import boiling_point
from rules.model import Request
from rules.said import Words, listed, sentences, temp, together

say = sentences("topics/set_kitchen")


@rule("kitchen.noted", "common-practice")
def noted(case: Case) -> Part:
    """Repeat the elevation and the equipment that were understood, so that a mishearing is caught at once."""
    request = case.request
    owned = listed((label(id) for id in request.equipment), "commas")
    if request.elevation_m is None:
        return Part(headline=say("noted", owned=owned) if owned.items else say("units-first", units=request.units))
    return Part(headline=together(_told(case), say("equipment", owned=owned) if owned.items else ""))


def _told(case: Case) -> Words:
    """Where the kitchen is, or how high the place is that was asked after."""
    request, boil = case.request, temp(case.here.boiling_c)
    if request.sets_kitchen or request.elevation_from == "kitchen":
        return say("kitchen", place=case.place, boil=boil)
    if request.place:
        return say("town", name=request.place, place=case.place, boil=boil)
    return say("elevation", place=case.place, boil=boil)


def rules_for(request: Request | None) -> tuple[Rule, ...]:
    """Where water boils is said of a kitchen whose elevation is known."""
    return RULES if request is None or request.elevation_m is not None else (noted,)


RULES = (noted, boiling_point)
