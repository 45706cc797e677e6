"""A cook says where they cook: what follows from it at once."""

from __future__ import annotations

from rules.boiling import boiling_point
from rules.book import Part, Rule, rule
from rules.case import Case
from rules.model import Request
from rules.tables import read_toml


@rule("kitchen.noted", "common-practice")
def noted(case: Case) -> Part:
    """Repeat the elevation that was understood, so that a mishearing is caught at once."""
    if case.request.elevation_m is None and case.request.equipment:
        labels = {row["id"]: row["label"] for row in read_toml("lexicon/equipment.toml")["equipment"]}
        return Part(headline=f"Noted: {', '.join(labels.get(id, id) for id in case.request.equipment)}.")
    if case.request.elevation_m is None:
        return Part(headline=f"I will give {'US' if case.request.units == 'us' else 'metric'} units first.")
    boiling = case.say.temp(case.here.boiling_c)
    return Part(headline=f"Your kitchen is at {case.place}; water boils at {boiling} there.")


def needs(request: object) -> tuple[str, ...]:
    """Nothing: a kitchen may be described by its units alone."""
    return ()


def rules_for(request: Request | None) -> tuple[Rule, ...]:
    """Where water boils is said of a kitchen whose elevation is known."""
    return RULES if request is None or request.elevation_m is not None else (noted,)


RULES = (noted, boiling_point)
