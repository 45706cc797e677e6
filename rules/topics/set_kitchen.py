"""A cook says where they cook: what follows from it at once."""

from __future__ import annotations

from rules.boiling import boiling_point
from rules.book import Part, rule
from rules.case import Case


@rule("kitchen.noted", "common-practice")
def noted(case: Case) -> Part:
    """Repeat the elevation that was understood, so that a mishearing is caught at once."""
    if case.request.elevation_m is None:
        return Part(headline=f"I will give {'US' if case.request.units == 'us' else 'metric'} units first.")
    boiling = case.say.temp(case.here.boiling_c)
    return Part(headline=f"Your kitchen is at {case.place}; water boils at {boiling} there.")


def needs(request: object) -> tuple[str, ...]:
    """Nothing: a kitchen may be described by its units alone."""
    return ()


RULES = (noted, boiling_point)
