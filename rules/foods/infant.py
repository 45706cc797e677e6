"""Food for infants: formula and breast milk. Cautious, and the doctor's word stands above ours."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.model import Caution, Figure
from rules.said import sentences, temp

INFANT = "infant_formula"
MIX_C = 70.0
# body warm, and no hotter: what is in the milk is hurt by more, and so is the mouth [degC]
FEED_C, HOTTEST_FEED_C = 37.0, 40.0
say = sentences("foods/infant")
DOCTOR = Caution("warn", say("doctor"), ("who-formula-2007",))


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
        steps=(say("formula-mix", hot=hot), feed),
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
