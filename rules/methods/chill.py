"""Chill: food taken down through the danger range. The limits stay where they are; thin air cools a little slower."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.foods import infant
from rules.foods.infant import INFANT
from rules.model import Caution, Figure
from rules.physics import air
from rules.safety import holding_limits
from rules.safety.holding_limits import limit_c, limit_min, placed
from rules.say import duration, number

COLD_MADE = (
    "garlic in oil", "gravlax", "ceviche", "caviar", "sea urchin", "ice cream cake", "kimchi", "fermented pickles",
    "quick pickles", "pickled eggs", "century eggs",
)  # fmt: skip


@rule("chill.limits", "fda-food-code-2022")
def limits(case: Case) -> Part | None:
    """How fast to chill and how cold to keep."""
    if case.dish_class == INFANT or case.request.dish in COLD_MADE:
        return None
    hot, first, cold = (limit_c(name) for name in ("hot_hold", "cool_first", "cool_last"))
    early, total = limit_min("cool_first"), limit_min("cool_last")
    food = case.request.dish or "cooked food"
    at = f" at {case.place}" if placed(case.request) else ""
    return Part(
        figures=(
            celsius("first_temperature", "First down to", first, first),
            Figure("first_time", "Within", early, "min"),
            celsius("cold_temperature", "Then down to", cold, cold),
            Figure("total_time", "Within, in all", total, "min"),
        ),
        headline=f"Chill {food}{at} from {case.say.temp(hot)} to {case.say.temp(first)} within {duration(early)} and "
        f"to {case.say.temp(cold)} within {duration(total)} in all, the same as at any elevation.",
        steps=(
            "Cut it up or pour it out shallow, 5 cm (2 in) deep at most, and set it in ice and water, stirring.",
            f"Into the refrigerator uncovered until cold, then covered. Not at {case.say.temp(first)} after "
            f"{duration(early)}: reheat to {case.say.temp(limit_c('reheat'))} and start again, or throw it away.",
        ),
    )


@rule("chill.cold_made", "fda-food-code-2022", "common-practice")
def cold_made(case: Case) -> Part | None:
    """What is made cold is kept cold from the start."""
    if case.request.dish not in COLD_MADE:
        return None
    cold = limit_c("cool_last")
    raw = Caution(
        "warn",
        "Raw fish and shellfish are not made safe by salt, acid or cold: use fish sold to be eaten raw, and serve none "
        "to the pregnant, the very young, the old or the ill.",
        ("fda-food-code-2022",),
    )
    return Part(
        figures=(celsius("cold_temperature", "Keep at or under", cold, cold),),
        headline=f"Keep {case.request.dish} at {case.say.temp(cold)} or colder from the start, the same as at any "
        "elevation.",
        steps=("Keep a thermometer in the refrigerator, and date what you put in it.",),
        cautions=(raw,) if case.dish_class in ("fish", "shellfish") else (),
    )


@rule("chill.garlic_in_oil", "nchfp", "from-memory")
def garlic_in_oil(case: Case) -> Part | None:
    """Garlic in oil: botulism without any sign of it."""
    if case.request.dish != "garlic in oil":
        return None
    text = (
        "Garlic in oil grows botulism at room temperature without looking or smelling bad. Make it fresh, refrigerate "
        "it at once, use it within 4 days or freeze it, and throw out what stood warm for 2 h. Never store it in the "
        "cupboard."
    )
    return Part(cautions=(Caution("stop", text, ("nchfp", "from-memory")),))


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
    if not placed(case.request) or case.here.elevation_m < 600 or case.request.dish in COLD_MADE:
        return None
    slower = (1 / air_cooling_share(case.here.elevation_m) - 1) * 100
    return Part(
        because=f"Thin air carries off less heat: a pan in a cold room cools about {number(slower, 0)} % slower at "
        f"{case.place}. An ice bath does not mind, since ice melts at 32 °F (0 °C) everywhere."
    )


@rule("chill.rice", "fda-food-code-2022", "common-practice")
def rice(case: Case) -> Part | None:
    """Cooked rice has to be cold soonest."""
    if case.dish_class != "rice":
        return None
    text = "Spread cooked rice thin and chill it at once: its spores outlive boiling, and reheating does not undo harm."
    return Part(cautions=(Caution("warn", text, ("fda-food-code-2022", "common-practice")),))


NEEDS: tuple[str, ...] = ()
RULES = (
    limits,
    cold_made,
    garlic_in_oil,
    infant.formula,
    infant.breast_milk,
    holding_limits.same_everywhere,
    thin_air,
    rice,
)
