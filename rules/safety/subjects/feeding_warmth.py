"""How warm a baby's bottle is fed: the feed's own temperature, which no elevation moves."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.foods import infant
from rules.safety.holding_limits import placed
from rules.said import sentences, temp

say = sentences("safety/subjects/feeding_warmth")


@rule("safety.feeding_warmth", "from-memory", "who-formula-2007")
def warmth(case: Case) -> Part:
    """Body warm, tested on the wrist; the powder itself is mixed hotter."""
    return Part(
        figures=(celsius("feed_temperature", say("label"), infant.FEED_C, infant.FEED_C),),
        headline=say(
            "headline",
            feed=temp(infant.FEED_C),
            most=temp(infant.HOTTEST_FEED_C),
            where="here" if placed(case.request) else "anywhere",
            place=case.place,
        ),
        steps=(say("test"), say("mixed", hot=temp(infant.MIX_C))),
        because=say("because"),
        cautions=(infant.DOCTOR,),
    )


NEEDS: tuple[str, ...] = ()
RULES = (warmth,)
