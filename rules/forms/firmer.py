"""A dish wanted firmer, or softer, than it was told: the early or the late end of its time."""

from __future__ import annotations

from typing import Literal

from rules.book import Part, rule
from rules.forms import Asked
from rules.heat.by_eye import seen
from rules.heat.dry import heated_through
from rules.said import duration, sentences, together, yes

say = sentences("forms/firmer")

# what a shorter time leaves as it must not be eaten
MUST_SOFTEN = frozenset(("lectin", "any_bean", "cyanogenic"))
UNSAID = "general"
# classes of what sets in the heat, where others soften
SETTING = ("custard",)
Way = Literal["firmer", "softer"]
# ends of a time that are this much of it apart are two times
NEAR = 0.05


@rule("firmer.early", "common-practice")
def firmer(asked: Asked) -> Part | None:
    """The early end of the time; of what is no food until it is done, that it stays as long."""
    less_done = asked.case.dish_class not in SETTING
    return not_less(asked) if less_done and must_be_done(asked) else at_end(asked, "firmer")


def must_be_done(asked: Asked) -> bool:
    """Whether a dish less done may hurt: meat that is done once it is hot, beans, what poisons until it has boiled."""
    case = asked.case
    hot_is_done = heated_through(case.dish_class) and seen(case) is not None
    return hot_is_done or not MUST_SOFTEN.isdisjoint(case.traits)


def not_less(asked: Asked) -> Part:
    """That a dish is not to be less done than was told."""
    return Part(headline=together(say("not-less", food=asked.case.food), asked.answer.headline))


def at_end(asked: Asked, way: Way) -> Part | None:
    """One end of the time of a dish, as it is wanted; what sets is firmer with time, what softens is softer."""
    if asked.time is None or asked.case.dish_class == UNSAID:
        return None
    here, sets = asked.time[0], asked.case.dish_class in SETTING
    end = here.low if (way == "firmer") is not sets else here.high
    if end is None or abs(end - here.value) < NEAR * here.value:
        return None
    text = say(
        "end",
        way=way,
        sets=yes(sets),
        food=asked.case.food,
        end=duration(end),
        usual=duration(here.value),
        place=asked.case.place,
    )
    return Part(headline=text)


RULES = (firmer,)
