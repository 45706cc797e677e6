"""Cooked part of the way ahead, chilled, and finished at service: a share of the time here."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.heat.pots import BOIL, STEAM
from rules.heat.wet import wet_time
from rules.model import Caution, Figure
from rules.physics.units import round_time_min
from rules.safety.holding_limits import limit_min
from rules.said import duration, number, sentences

say = sentences("heat/par_cook")

# how far it is cooked ahead, by the class
SHARES = {
    "pasta": 0.75, "noodle": 0.75, "rice": 0.7, "whole_grain": 0.75, "starchy_root": 0.7, "root_vegetable": 0.7,
    "tender_vegetable": 0.5, "leafy_green": 0.5,
}  # fmt: skip
# at service the rest goes by the heat that is left to go through [min]
PICKUP_MIN = {"pasta": (0.75, 1.0), "noodle": (0.75, 1.0), "tender_vegetable": (0.5, 1.0), "leafy_green": (0.5, 0.75)}
ROOTS, GREENS = ("starchy_root", "root_vegetable"), ("tender_vegetable", "leafy_green")
# a time as short as this is that of the pickup, and not of the cooking [min]
SHORT_MIN = 3.0


def _how_far(case: Case) -> str:
    """What shows that it is cooked so far, where that is asked: by the class."""
    if "done" not in case.request.forms:
        return "unasked"
    if case.dish_class in ROOTS:
        return "root"
    return "green" if case.dish_class in GREENS else "grain"


@rule("wet.par_cook", "common-practice", "fda-food-code-2022")
def par_cook(case: Case) -> Part | None:
    """When to pull what is cooked part of the way, and what finishes it."""
    share = SHARES.get(case.dish_class)
    if not case.request.ahead or share is None:
        return None
    pot = STEAM if case.request.method == "steam" else BOIL
    time = wet_time(case, pot.heats(case))
    if time is None:
        return None
    pull = share * time.likely_min
    pickup = PICKUP_MIN.get(case.dish_class)
    return Part(
        headline=say(
            "headline",
            far=_how_far(case),
            food=case.food,
            pull=duration(pull),
            percent=number(share * 100, 0),
            whole=duration(time.likely_min),
            place=case.place,
        ),
        figures=(Figure("pull_time", say("pull-label"), round_time_min(pull), "min"),),
        steps=(
            say("chill", first=duration(limit_min("cool_first"))),
            say("finish-short", low=duration(pickup[0]), high=duration(pickup[1])) if pickup else say("finish"),
        ),
        because=say("because"),
        cautions=(Caution("note", say("try-one"), ("common-practice",)),),
    )
