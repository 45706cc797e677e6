"""A dish wanted firmer, or softer, than it was told: the early or the late end of its time."""

from __future__ import annotations

from typing import Literal

from rules import safety
from rules.book import Part, rule
from rules.forms import Asked
from rules.heat.by_eye import seen
from rules.heat.dry import heated_through
from rules.said import duration, sentences, temp, together

say = sentences("forms/firmer")

# what a shorter time leaves as it must not be eaten
MUST_SOFTEN = frozenset(("lectin", "any_bean", "cyanogenic"))
UNSAID = "general"
# classes of what sets in the heat, where others soften
EGG, SETTING = "egg", ("custard", "egg")
Way = Literal["firmer", "softer"]
Kind = Literal["softens", "custard", "egg", "meat"]
# ends of a time that are this much of it apart are two times
NEAR = 0.05


@rule("firmer.early", "common-practice", "usda-fsis-safe-temperatures")
def firmer(asked: Asked) -> Part | None:
    """The early end of the time; of what is no food until it is done, that it stays as long."""
    kind = kind_of(asked)
    if kind == "softens" and not MUST_SOFTEN.isdisjoint(asked.case.traits):
        return not_less(asked)
    charted = safety.safe_temperature(asked.request.dish, asked.case.dish_class)
    if kind == "meat" and charted and charted.kind != "whole_cut":
        return not_less(asked)
    return at_end(asked, "firmer")


def kind_of(asked: Asked) -> Kind:
    """What time does to a dish: it sets, as custard and eggs do, meat gets more done, and all else softens."""
    case = asked.case
    if case.dish_class in SETTING:
        return "egg" if case.dish_class == EGG else "custard"
    return "meat" if heated_through(case.dish_class) and seen(case) else "softens"


def not_less(asked: Asked) -> Part:
    """That a dish is not to be less done than was told."""
    return Part(headline=together(say("not-less", food=asked.case.food), asked.answer.headline))


def at_end(asked: Asked, way: Way) -> Part | None:
    """One end of the time of a dish, as it is wanted; what sets is firmer with time, what softens is softer."""
    if asked.time is None or asked.case.dish_class == UNSAID:
        return None
    here, kind = asked.time[0], kind_of(asked)
    early = (way == "firmer") is (kind in ("softens", "meat"))
    end = here.low if early else here.high
    if end is None or abs(end - here.value) < NEAR * here.value:
        return None
    charted = safety.safe_temperature(asked.request.dish, asked.case.dish_class)
    text = say(
        "end",
        way=way,
        kind=kind,
        food=asked.case.food,
        end=duration(end),
        usual=duration(here.value),
        place=asked.case.place,
        core=temp(charted.temp_c) if charted else "",
    )
    return Part(headline=text)


RULES = (firmer,)
