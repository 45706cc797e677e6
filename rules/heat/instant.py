"""Instant dried food: water poured on and left to stand. Cooler water takes longer."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.heat.headline import about, known
from rules.heat.pots import BOIL
from rules.heat.wet import figures_of, wet_time
from rules.said import Words, sentences, temp

INSTANT = "instant_dried"
say = sentences("heat/instant")


@rule("instant.stand", "common-practice", "iapws-r7-97")
def stand(case: Case) -> Part | None:
    """How to give dried food its time where the water is not as hot as the packet takes for granted."""
    if case.dish_class != INSTANT:
        return None
    if not case.moved or case.here.boiling_c > case.there.boiling_c:
        return Part(headline=_headline(case), steps=(say("pour-on"),))
    return Part(
        headline=_headline(case),
        steps=(say("pour-on"), say("wrap"), say("still-hard")),
        because=say("because", packet=temp(case.there.boiling_c), here=temp(case.here.boiling_c)),
    )


def _headline(case: Case) -> Words:
    time = wet_time(case, BOIL.heats(case)) if case.request.method == "boil" else None
    if time is None or case.request.topic != "time":
        return ""
    here, packet = figures_of(case, time)
    return say(
        "headline",
        food=case.food,
        here=about(here),
        place=case.place,
        packet=known(case, packet),
        baseline=case.baseline,
    )
