"""Hold: cooked food kept hot until it is served. The limits are of the food and stay where they are."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from rules import book
from rules.book import Case, Part, Rule, celsius, rule
from rules.foods import infant
from rules.foods.dishes import traits_of
from rules.foods.infant import INFANT
from rules.foods.meat import raw_meat
from rules.model import Caution, Figure, Request
from rules.safety import holding_limits
from rules.safety.holding_limits import limit_c, limit_min, placed
from rules.said import Words, duration, sentences, temp, temp_span
from rules.tables import read_csv

say = sentences("methods/hold")

FERMENTS = "tables/ferments_common-practice.csv"
LONG_H = 72.0
COLDEST_C, HOTTEST_C = -40.0, 150.0


@rule("hold.limits", "fda-food-code-2022")
def limits(case: Case) -> Part | None:
    """How hot to hold, how hot to reheat, and how long without heat."""
    if case.dish_class == INFANT:
        return None
    hot, roast, reheat = (limit_c(name) for name in ("hot_hold", "roast_hold", "reheat"))
    least = _least_c(case, hot, roast)
    return Part(
        cautions=_too_cool(least) if _verdict(case, least) == "too_cool" else (),
        figures=(
            celsius("hold_temperature", say("hot"), hot, hot),
            celsius("roast_hold_temperature", say("roasts"), roast, roast),
            celsius("reheat_temperature", say("reheat"), reheat, reheat),
            Figure("reheat_time", say("reheat-within"), limit_min("reheat"), "min"),
            Figure("time_without_heat", say("without-heat"), limit_min("time_control"), "min"),
        ),
        headline=_headline(case, hot, least),
        steps=(
            say("check", least=temp(least), reheat=temp(reheat), within=duration(limit_min("reheat"))),
            say("labelled", within=duration(limit_min("time_control"))),
        ),
    )


def _least_c(case: Case, hot_c: float, roast_c: float) -> float:
    """The limit for this food: a roast of an intact cut may be held cooler than anything else."""
    return roast_c if "whole_cut" in case.traits and raw_meat(case.traits) else hot_c


def _verdict(case: Case, least_c: float) -> str:
    """How the temperature that the cook holds is: cold, hot or too_cool; none where none was given, or the food may
    stand.
    """
    asked_c = case.request.temperature_c
    if asked_c is None or "shelf_stable" in case.traits or not COLDEST_C < asked_c < HOTTEST_C:
        return "none"
    if asked_c <= limit_c("cold_hold") + 0.05:
        return "cold"
    return "hot" if asked_c >= least_c - 0.05 else "too_cool"


def _headline(case: Case, hot_c: float, least_c: float) -> Words:
    dish, verdict = case.request.dish, _verdict(case, least_c)
    if verdict == "none":
        return say("headline", food=dish or say("hot-food"), hot=temp(hot_c), where=_where(case), place=case.place)
    asked, limit = temp(case.request.temperature_c or 0.0), limit_c("cold_hold") if verdict == "cold" else least_c
    return say("verdict", verdict=verdict, asked=asked, food=dish or say("food"), limit=temp(limit))


def _where(case: Case) -> str:
    return "here" if placed(case.request) else "anywhere"


def _too_cool(least_c: float) -> tuple[Caution, ...]:
    text = say("too-cool", least=temp(least_c), most=duration(limit_min("time_control")))
    return (Caution("stop", text, ("fda-food-code-2022",)),)


@rule("hold.dry_air", "common-practice", "computed")
def dry_air(case: Case) -> Part | None:
    """What does change: held food dries out sooner in thin, dry air."""
    if not placed(case.request) or case.here.elevation_m < 600 or case.dish_class == INFANT:
        return None
    return Part(
        steps=(say("dry-air-step"),),
        because=say("dry-air-because", place=case.place, boil=temp(case.here.boiling_c)),
    )


@rule("hold.rice", "fda-food-code-2022", "common-practice")
def rice(case: Case) -> Part | None:
    """Cooked rice and pasta, where spores outlive the cooking."""
    if "cooked_starch" not in case.traits:
        return None
    text = say("spores", hot=temp(limit_c("hot_hold")))
    return Part(cautions=(Caution("warn", text, ("fda-food-code-2022", "common-practice")),))


@rule("hold.ferment", "common-practice")
def ferment(case: Case) -> Part | None:
    """What sours by its culture at room temperature, which is the same everywhere."""
    of = ferments().get(case.request.dish or "")
    if of is None:
        return None
    return Part(
        figures=(
            Figure("hold_temperature", say("keep-at"), (of.low_c + of.high_c) / 2, "degC", of.low_c, of.high_c),
            of.time,
        ),
        headline=say(
            "ferment-headline",
            food=case.food,
            warmth=temp_span(of.low_c, of.high_c),
            where=_where(case),
            place=case.place,
        ),
        steps=(say("ferment-jars"), say("ferment-gas")),
        because=say("ferment-because"),
        cautions=(Caution("warn", say("ferment-spoilt"), ("common-practice",)),),
    )


@dataclass(frozen=True, slots=True)
class Ferment:
    """How warm [degC] and how long [h] a culture is left to sour what it is in."""

    low_c: float
    high_c: float
    low_h: float
    high_h: float

    @property
    def time(self) -> Figure:
        """The time as a figure, a long one in days."""
        hours, unit = (1 / 60, "min") if self.high_h < LONG_H else (24.0, "days")
        low, high = self.low_h / hours, self.high_h / hours
        return Figure("ferment_time", say("ferment-time"), (low + high) / 2, unit, low, high)


@cache
def ferments() -> dict[str, Ferment]:
    """What sours by a culture, by dish.

    source: common-practice
    """
    ends = ("low_c", "high_c", "low_h", "high_h")
    return {row["dish"]: Ferment(*(float(row[end]) for end in ends)) for row in read_csv(FERMENTS).rows}


NEEDS: tuple[str, ...] = ()
HOT: tuple[Rule, ...] = (limits, infant.formula, infant.breast_milk, holding_limits.same_everywhere, dry_air, rice)


def rules_for(request: Request | None) -> tuple[Rule, ...]:
    """The limits of hot holding, or for what is cultured its own rules."""
    if request is None:
        return (*HOT, ferment)
    curd = book.room("safety", "cheese_curd")
    if curd and "stretched_curd" in traits_of(request.dish, request.dish_class):
        return book.rules_of(curd)
    return (ferment,) if request.dish in ferments() else HOT
