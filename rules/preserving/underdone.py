"""After a danger about jars: what the room of preserving says nearer, of the food and of its own figures."""

from __future__ import annotations

from dataclasses import replace

from rules.book import Case, Part, Rule, rule
from rules.model import Request
from rules.preserving.gate import refusal
from rules.preserving.judged import judged, short_verdict
from rules.preserving.refusals import refused
from rules.safety.danger import further, replies
from rules.said import together

# the general rule, and one on recipes, which this room may say nearer
GENERAL, OWN_RECIPE = "general_canning", "own_canning_recipe"
# why a food is refused in jars whatever is done to it
OF_THE_FOOD = ("unknown", "untested", "thick_puree", "thickened", "dairy_canning", "low_acid_fruit", "needs_pressure")


@rule("preserve.after_danger", "usda-aib-539", "from-memory")
def nearer(case: Case) -> Part | None:
    """The refusal of the food by its name where only the general rule was heard; jars that had too little are judged.

    What stands there already is discarded all the same.
    """
    request = case.request
    if request.danger not in (GENERAL, OWN_RECIPE) or request.topic != "preserve" or not request.dish:
        return None
    part = None
    if request.jarred and short_verdict(case):
        part = judged(case)
    elif request.danger == GENERAL and refusal(request) in OF_THE_FOOD:
        part = refused(case)
        instead = replies()[GENERAL].said("instead")
        part = part and replace(part, steps=(*part.steps[:1], instead, *part.steps[1:]))
    return part and replace(part, cautions=(*part.cautions, *further(case)))


@rule("preserve.fell_short", "usda-aib-539")
def fell_short(case: Case) -> Part | None:
    """Jars that a danger was heard of: their time and pressure against the ones that are due, before the verdict."""
    request, reply = case.request, replies().get(case.request.danger or "")
    if reply is None or not reply.underdone or not (request.topic == "preserve" or request.jars or request.jarred):
        return None
    if not (told := short_verdict(case)):
        return None
    return Part(headline=told if reply.underdone == "instead" else together(told, reply.said("verdict")))


def rules_after(request: Request, usual: tuple[Rule, ...]) -> tuple[Rule, ...]:
    """The rules of a danger, with what this room says nearer before them or in their place."""
    return (nearer,) if nearer(Case(request)) else (fell_short, *usual)
