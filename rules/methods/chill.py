"""Chill: food taken down through the danger range. The limits stay where they are; thin air cools a little slower."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.foods import infant
from rules.foods.infant import INFANT
from rules.model import Caution, Figure
from rules.physics import air
from rules.safety import holding_limits
from rules.safety.holding_limits import limit_c, limit_min, placed
from rules.said import duration, number, sentences, temp

say = sentences("methods/chill")


@rule("chill.limits", "fda-food-code-2022")
def limits(case: Case) -> Part | None:
    """How fast to chill and how cold to keep."""
    if case.dish_class == INFANT or "cold_made" in case.traits:
        return None
    hot, first, cold = (limit_c(name) for name in ("hot_hold", "cool_first", "cool_last"))
    early, total = limit_min("cool_first"), limit_min("cool_last")
    return Part(
        figures=(
            celsius("first_temperature", say("first"), first, first),
            Figure("first_time", say("within"), early, "min"),
            celsius("cold_temperature", say("then"), cold, cold),
            Figure("total_time", say("within-in-all"), total, "min"),
        ),
        headline=say(
            "headline",
            food=case.request.dish or say("cooked-food"),
            where="here" if placed(case.request) else "anywhere",
            place=case.place,
            hot=temp(hot),
            first=temp(first),
            early=duration(early),
            cold=temp(cold),
            total=duration(total),
        ),
        steps=(
            say("shallow"),
            say("refrigerate", first=temp(first), early=duration(early), reheat=temp(limit_c("reheat"))),
        ),
    )


@rule("chill.cold_made", "fda-food-code-2022", "common-practice")
def cold_made(case: Case) -> Part | None:
    """What is made cold is kept cold from the start."""
    if "cold_made" not in case.traits:
        return None
    cold = limit_c("cool_last")
    raw = Caution("warn", say("raw-fish"), ("fda-food-code-2022",))
    return Part(
        figures=(celsius("cold_temperature", say("keep-under"), cold, cold),),
        headline=say("cold-made", food=case.food, cold=temp(cold)),
        steps=(say("date-it"),),
        cautions=(raw,) if case.dish_class in ("fish", "shellfish") else (),
    )


@rule("chill.garlic_in_oil", "nchfp", "from-memory")
def in_oil(case: Case) -> Part | None:
    """Garlic, herbs and vegetables in oil: botulism without any sign of it."""
    if "in_oil" not in case.traits:
        return None
    return Part(cautions=(Caution("stop", say("in-oil", food=case.food), ("nchfp", "from-memory")),))


def air_cooling_share(elevation_m: float) -> float:
    """How well still air cools here against sea level: heat carried by natural convection goes as the root of density.

    source: from-memory (laminar natural convection)

    >>> round(air_cooling_share(2133.6), 2)
    0.9
    """
    return float(air.density_ratio(elevation_m) ** 0.5)


@rule("chill.thin_air", "computed", "from-memory")
def thin_air(case: Case) -> Part | None:
    """What does change: thin air carries less heat away, ice does not care."""
    if not placed(case.request) or case.here.elevation_m < 600 or "cold_made" in case.traits:
        return None
    slower = (1 / air_cooling_share(case.here.elevation_m) - 1) * 100
    return Part(because=say("thin-air", slower=number(slower, 0), place=case.place))


@rule("chill.rice", "fda-food-code-2022", "common-practice")
def rice(case: Case) -> Part | None:
    """Cooked rice has to be cold soonest."""
    if case.dish_class != "rice":
        return None
    return Part(cautions=(Caution("warn", say("rice"), ("fda-food-code-2022", "common-practice")),))


NEEDS: tuple[str, ...] = ()
RULES = (
    limits,
    cold_made,
    in_oil,
    infant.formula,
    infant.breast_milk,
    holding_limits.same_everywhere,
    thin_air,
    rice,
)
