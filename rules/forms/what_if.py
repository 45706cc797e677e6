"""What happens if a figure of the cook's own is kept: what comes of it, and what to set instead; neither yes nor no."""

from __future__ import annotations

from rules.book import Part, rule
from rules.forms import Asked, enough
from rules.heat.compared import compared
from rules.methods.sous_vide import ceiling_c
from rules.said import oven, oven_span, sentences, temp

say = sentences("forms/what_if")

# hotter is no crust that browns and is done together: the crust of what is fried up high as the book says
OUTRUN = ("fat", "oven")


@rule("what_if.bath", "computed", "iapws-r7-97")
def bath(asked: Asked) -> Part | None:
    """A sous vide bath set over the boil, which it never reaches."""
    request, case = asked.request, asked.case
    if request.method != "sous_vide" or request.temperature_c is None or request.temperature_c <= ceiling_c(case.here):
        return None
    return Part(
        headline=say(
            "bath",
            asked=temp(request.temperature_c),
            boil=temp(case.here.boiling_c),
            top=temp(ceiling_c(case.here)),
            place=case.place,
        )
    )


@rule("what_if.setting", "common-practice", "usda-fsis-high-altitude", "uwyo-altitude-adjusters")
def setting(asked: Asked) -> Part | None:
    """The oven or the fat left at the recipe's figure where it is changed up here: what comes of it."""
    request, found = asked.request, compared(asked.answer)
    if request.temperature_c is None or found is None or found.thing not in OUTRUN or found.way == "same":
        return None
    return Part(
        headline=say(
            "setting",
            thing=found.thing,
            way=found.way,
            asked=oven(request.temperature_c),
            here=oven_span(found.low_c, found.high_c),
            boil=temp(asked.case.here.boiling_c),
            place=asked.case.place,
        )
    )


RULES = (bath, setting, *enough.RULES)
