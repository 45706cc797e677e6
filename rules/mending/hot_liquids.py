"""What mends a dish that is cooked in water, sugar or fat: its time or its temperature here."""

from __future__ import annotations

from typing import Any

from rules.baking import frying
from rules.foods import dishes
from rules.heat.pressure import STOVE_TOP_GAUGE_PA, inside_c
from rules.mending.causes import Cause
from rules.mending.failed_dish import Bench
from rules.mending.oven_and_rise import time
from rules.mending.sized import COMMON, Sized, change_of, sign
from rules.physics import kinetics
from rules.physics.ambient import ambient
from rules.physics.units import K_PER_F
from rules.preserving.gel import LABORATORY_RISE_K, RISE_K
from rules.recipes.wet_dish import softening_ratio
from rules.said import duration, duration_span, gauge, number, oven, sentences, temp, temp_drop, yes

say = sentences("mending/hot_liquids")
NOTICEABLE_K = 0.5
HOTTEST_FAT_C = frying.HOTTEST_C
USUAL_FAT_C = 185.0
BREW_C = 96.0
LEAST_MORE_MIN = 5.0
DAY_MIN = 24 * 60
# methods of which the boil does not set the pace
DRY = ("smoke", "roast", "grill")
# readings of a sugar thermometer and of hot fat [degC]
SUGAR_C, FAT_C = (102.0, 180.0), (140.0, 205.0)


def boil(cause: Cause, bench: Bench) -> Sized:
    """Time at the boil of the place, by how fast the class softens."""
    soft = kinetics.softening(bench.dish_class)
    ratio = softening_ratio(bench.dish_class, bench.boil_c, bench.sea_boil_c)
    sources = (soft.source, "iapws-r7-97")
    if ratio.value < 1.03:
        return time(cause, bench, False)
    if bench.usual_method in DRY:
        return time(cause, bench, False)
    span = dishes.sea_level_time(bench.dish, bench.dish_class, bench.usual_method or "")
    figures: dict[str, Any] = {
        "from_value": 100.0, "from_unit": "percent", "to_value": round(100 * ratio.value),
        "to_low": round(100 * ratio.low), "to_high": round(100 * ratio.high), "to_unit": "percent",
    }  # fmt: skip
    change = change_of(cause, sources=sources, **figures)
    if span is None or span.high_min > DAY_MIN:
        return Sized(change, say("boil-times", times=number(ratio.value, 1)))
    sea_low, sea_high = (bench.written_min,) * 2 if bench.written_min else (span.low_min, span.high_min)
    low, high = (ratio.low, ratio.high) if bench.written_min else (ratio.value, ratio.value)
    low_min, high_min, given_min = sea_low * low, sea_high * high, bench.time_min or 0.0
    goes_on = given_min and given_min < high_min
    least_min = min(LEAST_MORE_MIN, given_min / 4)
    more_low, more_high = (max(end - given_min, least_min) for end in (low_min, high_min))
    here = (given_min + more_low, given_min + more_high) if goes_on else (low_min, high_min)
    line = say(
        "boil", here=duration_span(*here), sea=duration_span(sea_low, sea_high),
        told="more" if goes_on else yes(given_min), given=duration(given_min),
        more=duration_span(more_low, more_high),
    )  # fmt: skip
    return Sized(change, line)


def cooker(cause: Cause, bench: Bench) -> Sized:
    """The time in a stove-top cooker here, where the table has the dish."""
    span = dishes.sea_level_time(bench.dish, bench.dish_class, "pressure_cook")
    pressure = gauge(STOVE_TOP_GAUGE_PA)
    if span is None:
        return Sized(change_of(cause), say("cooker-by-its-book", pressure=pressure))
    here_c, sea_c = (inside_c(ambient(m), STOVE_TOP_GAUGE_PA) for m in (bench.here_m, 0.0))
    ratio = softening_ratio(bench.dish_class, here_c, sea_c)
    low, high = span.low_min * ratio.value, span.high_min * ratio.value
    change = change_of(
        cause, sources=(span.source, kinetics.softening(bench.dish_class).source, "iapws-r7-97"),
        to_value=round((low + high) / 2, 1), to_low=round(low, 1), to_high=round(high, 1), to_unit="min",
    )  # fmt: skip
    return Sized(change, say("cooker", time=duration_span(low, high), pressure=pressure))


def stage(cause: Cause, bench: Bench) -> Sized:
    """A sugar temperature: down by what the boil has fallen, else a trial."""
    if cause.way == "cooler" and not bench.placed:
        return Sized(change_of(cause, sources=("usu-faq-453",)), say("stage-anywhere"))
    fallen_k = bench.boil_c - bench.sea_boil_c
    by_boil = cause.way == "cooler" and fallen_k < -NOTICEABLE_K and not bench.log.times_tried(cause)
    kelvin = fallen_k if by_boil else sign(cause) * cause.step * K_PER_F
    sources = ("usu-faq-453", "iapws-r7-97") if by_boil else COMMON
    change = change_of(cause, sources=sources, to_value=round(kelvin, 2), to_unit="K")
    if by_boil and bench.said_c and SUGAR_C[0] < bench.said_c < SUGAR_C[1]:
        line = say("stage-to", to=temp(bench.said_c + kelvin), by=temp_drop(abs(kelvin)), said=temp(bench.said_c))
        return Sized(change, line)
    way = "printed" if by_boil else "sooner" if kelvin < 0 else "further"
    return Sized(change, say("stage", way=way, by=temp_drop(abs(kelvin))))


def gel(cause: Cause, bench: Bench) -> Sized:
    """The gel point here: 8 degF over the boil of water."""
    if not bench.placed:
        return Sized(change_of(cause, sources=("usda-aib-539",)), say("gel-anywhere", way=cause.way))
    point, low = bench.boil_c + RISE_K, bench.boil_c + LABORATORY_RISE_K
    change = change_of(
        cause, sources=("usda-aib-539", "iapws-r7-97"), to_value=round(point, 2), to_low=round(low, 2),
        to_high=round(point, 2), to_unit="degC",
    )  # fmt: skip
    return Sized(change, say("gel", way=cause.way, point=temp(point)))


def fat(cause: Cause, bench: Bench) -> Sized:
    """The fat: down by the table on the way up, else a trial; never hotter than 375 degF."""
    if cause.way == "cooler" and not bench.placed:
        return Sized(change_of(cause), say("fat-anywhere"))
    table = frying.difference_k(0.0, bench.here_m)
    by_table = cause.way == "cooler" and table.value < -1 and not bench.log.times_tried(cause)
    kelvin = table.value if by_table else sign(cause) * cause.step * K_PER_F
    sources = ("uwyo-altitude-adjusters",) if by_table else COMMON
    change = change_of(cause, sources=sources, to_value=round(kelvin, 1), to_unit="K")
    if by_table:
        sea_c = bench.said_c if bench.said_c and FAT_C[0] < bench.said_c < FAT_C[1] else USUAL_FAT_C
        return Sized(change, say("fat-printed", here=oven(sea_c + kelvin), sea=oven(sea_c)))
    return Sized(change, say("fat", by=temp_drop(abs(kelvin)), way=cause.way, hottest=oven(HOTTEST_FAT_C)))


def brew(cause: Cause, bench: Bench) -> Sized:
    """Water straight off the boil of the place, as far as brewing wants it."""
    if not bench.placed:
        return Sized(change_of(cause), say("brew-anywhere"))
    wanted_c = min(bench.boil_c, BREW_C)
    change = change_of(cause, sources=("iapws-r7-97",), to_value=round(wanted_c, 2), to_unit="degC")
    return Sized(change, say("brew", water=temp(wanted_c)))
