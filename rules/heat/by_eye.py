"""By which signs food that must be hot through is judged, where no thermometer is there."""

from __future__ import annotations

from rules import safety
from rules.book import Case
from rules.said import Said, sentences

say = sentences("heat/by_eye")


def seen(case: Case) -> Said | None:
    """The signs by which a food that must be hot through is judged by eye; None for any other."""
    kind = _seen_as(case)
    charted = safety.safe_temperature(case.request.dish, case.dish_class)
    return say("by-eye", kind=kind) if kind and charted else None


def _seen_as(case: Case) -> str | None:
    """By which signs a food is judged without a thermometer; None where none of them tells."""
    if "poultry" in case.traits:
        return "poultry" if "ground" not in case.traits else "ground"
    if "ground" in case.traits:
        return "ground"
    if case.dish_class == "fish":
        return "fish"
    return "meat" if "meat" in case.traits else "egg" if "egg" in case.traits else None
