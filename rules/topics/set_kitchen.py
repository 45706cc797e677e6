"""A cook says where they cook: what follows from it at once."""

from __future__ import annotations

from rules.book import Case, Part, Rule, rule
from rules.heat.equipment import label
from rules.heat.where_water_boils import boiling_point
from rules.model import Request
from rules.said import listed, sentences, temp, together

say = sentences("topics/set_kitchen")


@rule("kitchen.noted", "common-practice")
def noted(case: Case) -> Part:
    """Repeat the elevation and the equipment that were understood, so that a mishearing is caught at once."""
    request = case.request
    owned = listed((label(id) for id in request.equipment), "commas")
    if request.elevation_m is None:
        return Part(headline=say("noted", owned=owned) if owned.items else say("units-first", units=request.units))
    kitchen = say("kitchen", place=case.place, boil=temp(case.here.boiling_c))
    return Part(headline=together(kitchen, say("equipment", owned=owned) if owned.items else ""))


def rules_for(request: Request | None) -> tuple[Rule, ...]:
    """Where water boils is said of a kitchen whose elevation is known."""
    return RULES if request is None or request.elevation_m is not None else (noted,)


RULES = (noted, boiling_point)
