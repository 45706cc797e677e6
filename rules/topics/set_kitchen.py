"""A cook says where they cook: what follows from it at once."""

from __future__ import annotations

from rules.book import Case, Part, Rule, rule
from rules.heat.equipment import label
from rules.heat.where_water_boils import boiling_point
from rules.model import Request


@rule("kitchen.noted", "common-practice")
def noted(case: Case) -> Part:
    """Repeat the elevation and the equipment that were understood, so that a mishearing is caught at once."""
    request = case.request
    owned = ", ".join(label(id) for id in request.equipment)
    if request.elevation_m is None:
        units = f"I will give {'US' if request.units == 'us' else 'metric'} units first."
        return Part(headline=f"Noted: {owned}." if owned else units)
    boiling = case.say.temp(case.here.boiling_c)
    equipped = f" Equipment: {owned}." if owned else ""
    return Part(headline=f"Your kitchen is at {case.place}; water boils at {boiling} there.{equipped}")


def rules_for(request: Request | None) -> tuple[Rule, ...]:
    """Where water boils is said of a kitchen whose elevation is known."""
    return RULES if request is None or request.elevation_m is not None else (noted,)


RULES = (noted, boiling_point)
