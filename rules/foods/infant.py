"""Food for infants: formula and breast milk. Cautious, and the doctor's word stands above ours."""

from __future__ import annotations

import math

from rules.book import Case, Part, celsius, rule
from rules.model import Caution, Figure
from rules.said import duration, sentences, temp

INFANT = "infant_formula"
MIX_C = 70.0
# the room and the standing time of a label, and to what it is rounded down [degC, min]
ROOM_C, LABEL_MIN, STEP_MIN = 20.0, 30.0, 5.0
# body warm, and no hotter: what is in the milk is hurt by more, and so is the mouth [degC]
FEED_C, HOTTEST_FEED_C = 37.0, 40.0
say = sentences("foods/infant")
DOCTOR = Caution("warn", say("doctor"), ("who-formula-2007",))


def stand_min(boiling_c: float) -> float:
    """How long boiled water may stand before it is under 70 degC [min], to 5 min below.

    The 30 min of the label are from a boil at 100 degC; Newton's law of cooling takes them to that of the place, in a
    room of 20 degC, of which the pot and its lid drop out. Source: WHO 2007 for the 30 min; the law is from memory.

    >>> stand_min(100.0), stand_min(93.0), stand_min(88.0)
    (30.0, 20.0, 15.0)
    """
    whole, here = (math.log((c - ROOM_C) / (MIX_C - ROOM_C)) for c in (100.0, min(boiling_c, 100.0)))
    return max(STEP_MIN * math.floor(LABEL_MIN * here / whole / STEP_MIN), STEP_MIN)


@rule("infant.formula", "who-formula-2007")
def formula(case: Case) -> Part | None:
    """Powdered formula: hot water to mix, used at once."""
    if case.dish_class != INFANT or "breast_milk" in case.traits:
        return None
    hot = temp(MIX_C)
    feed = say("formula-feed", feed=temp(FEED_C))
    return Part(
        figures=(
            celsius("mix_temperature", say("mix-label"), MIX_C, MIX_C),
            Figure("use_within", say("formula-use-within"), 120.0, "min"),
            Figure("keep_cold_time", say("formula-keep-cold"), 1440.0, "min"),
        ),
        headline=say("formula-headline", hot=hot),
        steps=(say("formula-mix", hot=hot, stand=duration(stand_min(case.here.boiling_c))), feed),
        because=say("formula", hot=hot),
        cautions=(DOCTOR,),
    )


@rule("infant.breast_milk", "from-memory")
def breast_milk(case: Case) -> Part | None:
    """Breast milk: how warm it is fed, where that is asked, and how long it keeps; the same everywhere."""
    if case.dish_class != INFANT or "breast_milk" not in case.traits:
        return None
    warms = case.request.topic == "temperature" and case.request.temperature_of not in ("hold", "fridge")
    feed = Figure("feed_temperature", say("feed-label"), FEED_C, "degC", FEED_C, HOTTEST_FEED_C, FEED_C)
    warm = say("breast-milk-warm-headline", feed=temp(FEED_C), most=temp(HOTTEST_FEED_C))
    return Part(
        figures=(
            *((feed,) if warms else ()),
            Figure("use_within", say("breast-milk-use-within"), 240.0, "min"),
            Figure("keep_cold_time", say("breast-milk-keep-cold"), 5760.0, "min"),
        ),
        headline=warm if warms else say("breast-milk-headline"),
        steps=(say("breast-milk-warm"),),
        cautions=(DOCTOR,),
    )
