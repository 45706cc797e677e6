"""Whether it can be done here at all: what the food needs, and what the boil reaches."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

from rules.book import Part, rule
from rules.forms import Asked
from rules.forms.changes import out_of_reach
from rules.forms.enough import readings, settings, times
from rules.heat import done_readings
from rules.heat.headline import about, doing, middle
from rules.heat.pressure import STOVE_TOP_GAUGE_PA, inside_c
from rules.heat.verdict import opened
from rules.said import Words, gauge, sentences, temp, temp_span, together
from rules.tables import read_csv

say = sentences("forms/can_it")

SOFTENS = "tables/softens_from_common-practice.csv"
IN_WATER = ("boil", "simmer", "stew", "braise", "steam", "slow_cook", "poach")
IN_HEAT = ("bake", "roast", "fry", "grill", "smoke")
# what comes tender at a cooler reading, only later
TENDER_LOWER = ("collagen_cut",)
SUGARED = ("candy", "syrup", "jam")
# hotter is no food with water in it [degC]
WET_AT_MOST_C = 112.0
REACHED_K = 0.5


@cache
def softens_from_c() -> dict[str, float]:
    """About how hot a class of dish has to get to cook through at all [degC].

    source: common-practice

    >>> softens_from_c()["rice"]
    75.0
    """
    return {row["dish_class"]: float(row["temp_c"]) for row in read_csv(SOFTENS).rows}


@rule("can_it.reach", "iapws-r7-97", "common-practice")
def reach(asked: Asked) -> Part | None:
    """Whether food or water gets as hot as was asked."""
    request, case = asked.request, asked.case
    asked_c = request.temperature_c
    if asked.judged and not {"safe", "harm"}.isdisjoint(request.forms):
        return None
    if (
        asked_c is None
        or request.temperature_of not in ("core", None)
        or request.method in ("smoke", "sous_vide", "hold")
    ):
        return None
    if case.dish_class in SUGARED or request.topic == "sugar_stage":
        return Part(headline=opened("yes", say("sugar", asked=temp(asked_c), place=case.place)))
    if asked_c > WET_AT_MOST_C:
        return None
    top_c = top_of(asked)
    if request.method == "pressure_cook" or request.topic == "pressure":
        top_c = inside_c(case.here, STOVE_TOP_GAUGE_PA)
    fits = "yes" if asked_c <= top_c + REACHED_K else "no"
    return Part(headline=opened(fits, _reach(asked, fits, top_c)))


@rule("can_it.beyond", "iapws-r7-97", "common-practice")
def beyond(asked: Asked) -> Part | None:
    """Food in water that is to get hotter in the middle than the water is: it cannot, safe or not."""
    asked_c, method = asked.request.temperature_c, asked.request.method
    if asked_c is None or method not in IN_WATER or not top_of(asked) + REACHED_K < asked_c <= WET_AT_MOST_C:
        return None
    short = reach(asked)
    if short is None or asked.time is None or asked.case.dish_class not in TENDER_LOWER:
        return short
    return replace(short, headline=together(short.headline, say("tender", time=middle(asked.time[0]))))


def top_of(asked: Asked) -> float:
    """The hottest that the food gets in an open pot or in the oven [degC]: the boil, or a little under it."""
    of = done_readings.reading(asked.request.dish, asked.case.dish_class)
    boil_c = asked.case.here.boiling_c
    return boil_c - done_readings.UNDER_BOIL_K if of and of.bound == "boil" else boil_c


def _reach(asked: Asked, fits: str, top_c: float) -> Words:
    case = asked.case
    of = done_readings.reading(asked.request.dish, case.dish_class)
    crumb = of is not None and of.bound == "boil"
    return say(
        "reach",
        fits=fits,
        of="crumb" if crumb else "pressure" if top_c > case.here.boiling_c else "water",
        asked=temp(asked.request.temperature_c or 0.0),
        top=temp(top_c),
        boil=temp(case.here.boiling_c),
        place=case.place,
        food=case.food,
        done=temp_span(*of.here(case.here, case.sea)) if of and crumb else "",
        gauge=gauge(STOVE_TOP_GAUGE_PA),
        inside=temp(inside_c(case.here, STOVE_TOP_GAUGE_PA)),
    )


@rule("can_it.dish", "common-practice", "iapws-r7-97")
def dish(asked: Asked) -> Part | None:
    """Whether a dish cooks here, and how long it takes."""
    request, case = asked.request, asked.case
    if request.topic not in ("time", "temperature") or request.dish_class is None:
        return None
    if out_of_reach(asked):
        return Part(headline=opened("no", together(asked.answer.headline, _under_pressure(asked))))
    needs_c = softens_from_c().get(case.dish_class)
    if request.method in IN_HEAT:
        return _in_heat(asked)
    if request.method not in IN_WATER or needs_c is None:
        return None
    fits = "yes" if case.here.boiling_c >= needs_c + 1 else "no"
    text = say(
        "cooks",
        fits=fits,
        boil=temp(case.here.boiling_c),
        place=case.place,
        food=case.food,
        needs=temp(needs_c),
        time=_time(asked),
    )
    return Part(headline=opened(fits, together(text, "" if fits == "yes" else _under_pressure(asked))))


def _time(asked: Asked) -> Words:
    return "" if asked.time is None else say("takes", time=middle(asked.time[0]))


def _in_heat(asked: Asked) -> Part | None:
    """In the oven, in fat, over a fire: as hot as anywhere."""
    if asked.time is None or asked.request.method is None:
        return None
    text = say(
        "in-heat",
        doing=doing(asked.case, asked.request.method),
        place=asked.case.place,
        time=about(asked.time[0]),
    )
    return Part(headline=opened("yes", text))


def _under_pressure(asked: Asked) -> Words:
    quick = asked.answer.figure("pressure_time")
    return "" if quick is None else say("under-pressure", time=middle(quick), gauge=gauge(STOVE_TOP_GAUGE_PA))


RULES = (
    readings.outdoors,
    beyond, readings.cold, readings.core, readings.bath, readings.hold, times.time, reach, settings.setting,
    readings.stage, dish,
)  # fmt: skip
