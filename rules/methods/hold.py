"""Hold: cooked food kept hot until it is served. The limits are of the food and stay where they are."""

from __future__ import annotations

from rules import book
from rules.book import Case, Part, Rule, celsius, rule
from rules.foods import infant
from rules.foods.dishes import traits_of
from rules.foods.infant import INFANT
from rules.model import Caution, Figure, Request
from rules.safety import holding_limits
from rules.safety.holding_limits import limit_c, limit_min, placed
from rules.say import duration

ROASTS = ("collagen_cut", "tender_cut")
COLDEST_C, HOTTEST_C = -40.0, 150.0


@rule("hold.limits", "fda-food-code-2022")
def limits(case: Case) -> Part | None:
    """How hot to hold, how hot to reheat, and how long without heat."""
    if case.dish_class == INFANT:
        return None
    hot, roast, reheat = (limit_c(name) for name in ("hot_hold", "roast_hold", "reheat"))
    food, least = case.request.dish or "hot food", case.say.temp(_least_c(case, hot, roast))
    at = f" at {case.place}" if placed(case.request) else ""
    return Part(
        cautions=_too_cool(case, hot, roast),
        figures=(
            celsius("hold_temperature", "Hold hot at or above", hot, hot),
            celsius("roast_hold_temperature", "Whole roasts at or above", roast, roast),
            celsius("reheat_temperature", "Reheat for holding to", reheat, reheat),
            Figure("reheat_time", "Reheat within", limit_min("reheat"), "min"),
            Figure("time_without_heat", "Or serve without heat within", limit_min("time_control"), "min"),
        ),
        headline=_verdict(case, hot, roast)
        or f"Hold {food} at {case.say.temp(hot)} or hotter{at}, the same as at any elevation.",
        steps=(
            f"Check the centre with a thermometer every two hours; under {least}, reheat to "
            f"{case.say.temp(reheat)} for 15 s within {duration(limit_min('reheat'))}, or throw it away.",
            f"Food held without heat is served or thrown away within {duration(limit_min('time_control'))}, and "
            "labelled so.",
        ),
    )


def _least_c(case: Case, hot_c: float, roast_c: float) -> float:
    """The limit for this food: a roast of an intact cut may be held cooler than anything else."""
    return roast_c if "whole_cut" in case.traits and case.dish_class in ROASTS else hot_c


def _verdict(case: Case, hot_c: float, roast_c: float) -> str:
    """Whether the temperature that the cook holds is right; empty where none was given, or the food may stand."""
    asked_c, food = case.request.temperature_c, case.request.dish or "food"
    if asked_c is None or "shelf_stable" in case.traits or not COLDEST_C < asked_c < HOTTEST_C:
        return ""
    asked, least_c, cold_c = case.say.temp(asked_c), _least_c(case, hot_c, roast_c), limit_c("cold_hold")
    if asked_c <= cold_c + 0.05:
        return f"Yes. {asked} is cold enough for {food}: {case.say.temp(cold_c)} or colder, at any elevation."
    if asked_c >= least_c - 0.05:
        return f"Yes. {asked} is hot enough for {food}: {case.say.temp(least_c)} or hotter, at any elevation."
    return f"No. Hold {food} at {case.say.temp(least_c)} or hotter: at {asked} germs grow, at any elevation."


def _too_cool(case: Case, hot_c: float, roast_c: float) -> tuple[Caution, ...]:
    if not _verdict(case, hot_c, roast_c).startswith("No."):
        return ()
    least, most = case.say.temp(_least_c(case, hot_c, roast_c)), duration(limit_min("time_control"))
    text = (
        f"Food that stood under {least} for over {most} is thrown away: reheating does not undo what germs leave in it."
    )
    return (Caution("stop", text, ("fda-food-code-2022",)),)


@rule("hold.dry_air", "common-practice", "computed")
def dry_air(case: Case) -> Part | None:
    """What does change: held food dries out sooner in thin, dry air."""
    if not placed(case.request) or case.here.elevation_m < 600 or case.dish_class == INFANT:
        return None
    return Part(
        steps=("Keep it covered and add hot liquid as it dries; top up the water of the steam table more often.",),
        because=f"What changes is drying: the air at {case.place} is thinner and usually drier, so uncovered food "
        f"loses water sooner. The water of a steam table boils at {case.say.temp(case.here.boiling_c)} and still "
        "holds food hot enough.",
    )


@rule("hold.rice", "fda-food-code-2022", "common-practice")
def rice(case: Case) -> Part | None:
    """Cooked rice and pasta, where spores outlive the cooking."""
    if "cooked_starch" not in case.traits:
        return None
    return Part(
        cautions=(
            Caution(
                "warn",
                "Cooked rice and pasta carry spores that outlive boiling and make a poison that reheating does not "
                f"destroy: keep them above {case.say.temp(limit_c('hot_hold'))} or chill them at once, never warm in "
                "between.",
                ("fda-food-code-2022", "common-practice"),
            ),
        )
    )


@rule("hold.ferment", "common-practice")
def ferment(case: Case) -> Part | None:
    """Kefir and kombucha: kept at room temperature, the same everywhere."""
    span_h = FERMENTED_H.get(case.request.dish or "")
    if span_h is None:
        return None
    low_c, high_c = FERMENT_C
    low, high = (60.0 * h for h in span_h)
    warm = case.say.temp_span(low_c, high_c)
    at = f" at {case.place}" if placed(case.request) else ""
    return Part(
        figures=(
            Figure("hold_temperature", "Keep it at", (low_c + high_c) / 2, "degC", low_c, high_c),
            Figure("ferment_time", "For", (low + high) / 2, "min", low, high)
            if high < LONG_MIN
            else Figure("ferment_time", "For", (low + high) / 2 / DAY_MIN, "days", low / DAY_MIN, high / DAY_MIN),
        ),
        headline=f"Keep {case.request.dish} at {warm}{at}, the same as at any elevation, until it is as sour as you "
        "like.",
        steps=(
            "Use clean jars and a lively culture, cover it with a cloth, and refrigerate it once it is sour.",
            "Leave room and open closed bottles now and then: the same gas presses harder against thinner air.",
        ),
        because="The culture grows by warmth, and that has nothing to do with the weight of the air.",
        cautions=(Caution("warn", "Throw it out if it shows mould or smells wrong.", ("common-practice",)),),
    )


FERMENTED_H = {"kefir": (18.0, 36.0), "kombucha": (168.0, 336.0)}
DAY_MIN, LONG_MIN = 1440.0, 4320.0
FERMENT_C = (20.0, 26.0)
NEEDS: tuple[str, ...] = ()
HOT: tuple[Rule, ...] = (limits, infant.formula, infant.breast_milk, holding_limits.same_everywhere, dry_air, rice)


def rules_for(request: Request | None) -> tuple[Rule, ...]:
    """The limits of hot holding, or for what is cultured its own rules."""
    if request is None:
        return (*HOT, ferment)
    curd = book.room("safety", "cheese_curd")
    if curd and "stretched_curd" in traits_of(request.dish, request.dish_class):
        return book.rules_of(curd)
    return (ferment,) if request.dish in FERMENTED_H else HOT
