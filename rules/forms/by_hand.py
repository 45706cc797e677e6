"""Without a thermometer: how cooks judge the heat, or what is cooked in it, by hand and eye."""

from __future__ import annotations

from functools import cache

from rules.book import Part, rule
from rules.foods.dishes import check_of, kin, usual_method
from rules.forms import Asked
from rules.heat.by_eye import seen
from rules.said import Words, sentences, together
from rules.tables import read_csv

say = sentences("forms/by_hand")

TESTS = "tables/hand_tests_common-practice.csv"
UNREAD = "thermometer"
# answered by their own signs already
JUDGED, SUGAR, JARS, UNSAID = "doneness", "sugar_stage", "preserve", "general"


IN_ITS_PLACE = ("bath",)
# what is asked behind it and has been told by hand already
ASKS_APART = frozenset(("how_long", "how_much", "why", "remaining"))


@cache
def _tests() -> dict[str, str]:
    return {row["judged"]: row["test"] for row in read_csv(TESTS).rows}


@rule("by_hand.test", "common-practice")
def test(asked: Asked) -> Part | None:
    """How to tell by hand what the answer gives as a reading, before the answer itself."""
    request, dish_class = asked.request, asked.case.dish_class
    if (
        not any(UNREAD in id for id in request.lacking)
        or request.topic == SUGAR
        or not ASKS_APART.isdisjoint(request.forms)
    ):
        return None
    method = request.method or (usual_method(request.dish, dish_class) if request.dish else None)
    names = (*kin(request.dish), f"method:{method}", f"class:{dish_class}")
    id = next((_tests()[name] for name in names if name in _tests()), None)
    told: Words = say("test", of=id) if id else ""
    safe = seen(asked.case) if dish_class != "custard" and request.topic != JUDGED else None
    if not told and not safe:
        if request.topic in (JUDGED, JARS) or dish_class == UNSAID:
            return None
        told = say("signs", signs=check_of(request.dish, dish_class, request.method))
    # what cannot be kept by hand is not told how long either
    return Part(headline=together(told, safe, "" if id in IN_ITS_PLACE else asked.answer.headline))


RULES = (test,)
