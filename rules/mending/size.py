"""By how much: the change that mends a cause, sized for the dish and the elevation."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from rules.baking import bands, components, frying, leavening, yeast
from rules.baking.bands import Span
from rules.baking.batch import percent_apart, towards
from rules.baking.change import Change
from rules.baking.rounding import kitchen, same_measure, step_of
from rules.foods import dishes
from rules.heat.pressure import STOVE_TOP_GAUGE_PA, inside_c
from rules.mending.causes import Cause
from rules.mending.failed_dish import DOWN, Bench
from rules.physics import kinetics
from rules.physics.ambient import ambient
from rules.physics.units import round_to
from rules.preserving.gel import LABORATORY_RISE_K, RISE_K
from rules.recipes.steps import scaled_min, shifted_c
from rules.recipes.wet_dish import softening_ratio
from rules.said import (
    Said,
    Words,
    duration,
    duration_span,
    gauge,
    measure,
    number,
    oven,
    sentences,
    temp,
    temp_drop,
)

say = sentences("mending/size")
FINE = ("leavening", "yeast", "salt")
K_PER_F = 5 / 9
NOTICEABLE_K = 0.5
HOTTEST_FAT_C = frying.HOTTEST_C
USUAL_FAT_C = 185.0
BREW_C = 96.0
DAY_MIN = 24 * 60


@dataclass(frozen=True, slots=True)
class Sized:
    """A change with its size, and the sentence that tells a cook to make it."""

    change: Change
    line: Words


def sized(cause: Cause, bench: Bench, *, further: bool = False) -> Sized:
    """The change of a cause for the dish on the bench.

    further: it helped before; half a step more from where it stands now
    source: the tables of the component where they change it in this direction, else a first trial of common practice
    """
    if not cause.by:
        return Sized(_change(cause), cause.say)
    if cause.by in BY:
        return BY[cause.by](cause, bench)
    return BY_WHAT.get(cause.what, _amount)(cause, bench, further)


def _change(cause: Cause, *, sources: tuple[str, ...] = (), **figures: Any) -> Change:
    return Change(
        what=cause.what, way=cause.way, rule=cause.rule, because=cause.because,
        sources=tuple(dict.fromkeys((cause.source, *sources))), **{"at": "recipe", **figures},
    )  # fmt: skip


def _sign(cause: Cause) -> int:
    return -1 if cause.way in DOWN else 1


def _trial(cause: Cause) -> Span:
    ratio = 1 + _sign(cause) * cause.step
    return Span(ratio, ratio, ratio)


def _ratio(cause: Cause, bench: Bench, further: bool) -> tuple[Span, tuple[str, ...]]:
    """How many times the amount, and by which tables; the tables' whole change is taken once, trial steps after."""
    if cause.by != "formula":
        return _trial(cause), ("common-practice",)
    table = components.ratio(bench.style, cause.what, bench.from_m, bench.here_m)
    if not bench.asks(cause) or (bench.log.times_tried(cause) and not further):
        return _trial(cause), ("common-practice",)
    sources = components.sources(bench.style, cause.what)
    return (table.map(lambda r: 1 + (r - 1) / 2) if further else table), sources


def _amount(cause: Cause, bench: Bench, further: bool) -> Sized:
    base, fine = bench.base(cause.what), cause.what in FINE
    ratio, sources = _ratio(cause, bench, further)
    ratio = _keeping_acid(cause, bench, ratio)
    start, unit = same_measure(base.value, base.unit, fine=fine)
    now = kitchen(start * bench.log.moved(cause.what), unit, fine=fine) if bench.log.moved(cause.what) != 1 else start
    to, low, high = (towards(now, r, unit, fine=fine) for r in (ratio.value, ratio.low, ratio.high))
    if abs(to - now) < 1e-9:
        step = step_of(now, unit, fine=fine)
        to = now + _sign(cause) * step if now > step or _sign(cause) > 0 else now / 2
    low, high = sorted((low, high)) if further or bench.log.moved(cause.what) == 1 else (to, to)
    line = say(
        "amount", now=measure(to, unit or ""), was=measure(now, unit or ""), item=base.item,
        own="yes" if base.own else "no",
    )  # fmt: skip
    change = _change(
        cause, sources=sources, at=base.at, item=base.item, from_value=round(now, 4), from_unit=unit,
        to_value=round(to, 4), to_low=round(min(low, to), 4), to_high=round(max(high, to), 4), to_unit=unit,
    )  # fmt: skip
    return Sized(change, line)


def _keeping_acid(cause: Cause, bench: Bench, ratio: Span) -> Span:
    """Soda that sour milk needs stays, whatever the tables take off."""
    lines = bench.lines("leavening")
    if cause.what != "leavening" or cause.way != "less" or not lines or lines[0].part.name != "soda":
        return ratio
    return leavening.soda_ratio(bench.batch, lines[0], ratio)


def _oven(cause: Cause, bench: Bench, further: bool) -> Sized:
    table = components.difference(bench.style, "oven", bench.from_m, bench.here_m)
    agrees, again = bench.asks(cause), bench.log.times_tried(cause) > 0
    span_f = table if agrees and not again else bands.Span(*(_sign(cause) * cause.step,) * 3)
    if further:
        span_f = span_f.map(lambda f: f / 2)
    sources = components.sources(bench.style, "oven") if agrees and not again else ("common-practice",)
    low, value, high = (f * K_PER_F for f in (span_f.low, span_f.value, span_f.high))
    if bench.oven_c is None:
        change = _change(cause, sources=sources, to_value=round(value, 1), to_low=round(low, 1),
                         to_high=round(high, 1), to_unit="K")  # fmt: skip
        return Sized(change, _oven_by(cause, bench, span_f.value))
    unit, size = ("degF", 5.0) if bench.units == "us" else ("degC", 2.0)
    to, to_low, to_high = (shifted_c(bench.oven_c, k, unit, size) for k in (value, low, high))
    change = _change(
        cause, sources=sources, from_value=round(bench.oven_c, 1), from_unit="degC", to_value=round(to, 1),
        to_low=round(min(to_low, to), 1), to_high=round(max(to_high, to), 1), to_unit="degC",
    )  # fmt: skip
    return Sized(change, say("oven-to", now=oven(to), was=oven(bench.oven_c)))


def _oven_by(cause: Cause, bench: Bench, degrees_f: float) -> Said:
    """An oven that is set by so many degrees hotter or cooler than it was."""
    us, metric = number(round_to(abs(degrees_f), 5)), number(round_to(abs(degrees_f) * K_PER_F, 1))
    return say("oven-by", units=bench.units, fahrenheit=us, celsius=metric, way=cause.way)


def _time(cause: Cause, bench: Bench, further: bool) -> Sized:
    ratio = _trial(cause).value
    ratio = 1 + (ratio - 1) / 2 if further else ratio
    now = bench.baked_min and bench.baked_min * bench.log.moved("time")
    if now:
        to = scaled_min(now, ratio)
        change = _change(cause, from_value=round(now, 1), from_unit="min", to_value=to, to_unit="min")
        return Sized(change, say("time-to", now=duration(to), was=duration(now)))
    change = _change(cause, from_value=100.0, from_unit="percent", to_value=round(100 * ratio), to_unit="percent")
    return Sized(change, say("time-by", percent=percent_apart(ratio), way="less" if ratio < 1 else "more"))


def _proof(cause: Cause, bench: Bench, further: bool) -> Sized:
    ratio = yeast.proof_ratio(bench.batch)
    by_air = ratio.low if cause.way == "shorter" and ratio.low < 0.97 and not bench.log.times_tried(cause) else None
    value = by_air or _trial(cause).value
    value = 1 + (value - 1) / 2 if further else value
    change = _change(
        cause, sources=("computed",) if by_air else ("common-practice",), from_value=100.0, from_unit="percent",
        to_value=round(100 * value), to_unit="percent",
    )  # fmt: skip
    if cause.way == "shorter":
        return Sized(change, say("proof-shorter", percent=number(100 * value, 0)))
    return Sized(change, say("proof-longer", percent=percent_apart(value)))


def _boil(cause: Cause, bench: Bench) -> Sized:
    """Time at the boil of the place, by how fast the class softens."""
    soft = kinetics.softening(bench.dish_class)
    ratio = softening_ratio(bench.dish_class, bench.boil_c, bench.sea_boil_c)
    sources = (soft.source, "iapws-r7-97")
    if ratio.value < 1.03:
        return _time(cause, bench, False)
    span = dishes.sea_level_time(bench.dish, bench.dish_class, bench.usual_method or "")
    figures: dict[str, Any] = {
        "from_value": 100.0, "from_unit": "percent", "to_value": round(100 * ratio.value),
        "to_low": round(100 * ratio.low), "to_high": round(100 * ratio.high), "to_unit": "percent",
    }  # fmt: skip
    change = _change(cause, sources=sources, **figures)
    if span is None or span.high_min > DAY_MIN:
        return Sized(change, say("boil-times", times=number(ratio.value, 1)))
    line = say(
        "boil", here=duration_span(span.low_min * ratio.value, span.high_min * ratio.value),
        sea=duration_span(span.low_min, span.high_min), told="yes" if bench.time_min else "no",
        given=duration(bench.time_min or 0.0),
    )  # fmt: skip
    return Sized(change, line)


def _cooker(cause: Cause, bench: Bench) -> Sized:
    """The time in a stove-top cooker here, where the table has the dish."""
    span = dishes.sea_level_time(bench.dish, bench.dish_class, "pressure_cook")
    pressure = gauge(STOVE_TOP_GAUGE_PA)
    if span is None:
        return Sized(_change(cause), say("cooker-by-its-book", pressure=pressure))
    here_c, sea_c = (inside_c(ambient(m), STOVE_TOP_GAUGE_PA) for m in (bench.here_m, 0.0))
    ratio = softening_ratio(bench.dish_class, here_c, sea_c)
    low, high = span.low_min * ratio.value, span.high_min * ratio.value
    change = _change(
        cause, sources=(span.source, kinetics.softening(bench.dish_class).source, "iapws-r7-97"),
        to_value=round((low + high) / 2, 1), to_low=round(low, 1), to_high=round(high, 1), to_unit="min",
    )  # fmt: skip
    return Sized(change, say("cooker", time=duration_span(low, high), pressure=pressure))


def _stage(cause: Cause, bench: Bench) -> Sized:
    """A sugar temperature: down by what the boil has fallen, else a trial."""
    fallen_k = bench.boil_c - bench.sea_boil_c
    by_boil = cause.way == "cooler" and fallen_k < -NOTICEABLE_K and not bench.log.times_tried(cause)
    kelvin = fallen_k if by_boil else _sign(cause) * cause.step * K_PER_F
    sources = ("usu-faq-453", "iapws-r7-97") if by_boil else ("common-practice",)
    change = _change(cause, sources=sources, to_value=round(kelvin, 2), to_unit="K")
    way = "printed" if by_boil else "sooner" if kelvin < 0 else "further"
    return Sized(change, say("stage", way=way, by=temp_drop(abs(kelvin))))


def _gel(cause: Cause, bench: Bench) -> Sized:
    """The gel point here: 8 degF over the boil of water."""
    point, low = bench.boil_c + RISE_K, bench.boil_c + LABORATORY_RISE_K
    change = _change(
        cause, sources=("usda-aib-539", "iapws-r7-97"), to_value=round(point, 2), to_low=round(low, 2),
        to_high=round(point, 2), to_unit="degC",
    )  # fmt: skip
    return Sized(change, say("gel", way=cause.way, point=temp(point)))


def _fat(cause: Cause, bench: Bench) -> Sized:
    """The fat: down by the table on the way up, else a trial; never hotter than 375 degF."""
    table = frying.difference_k(0.0, bench.here_m)
    by_table = cause.way == "cooler" and table.value < -1 and not bench.log.times_tried(cause)
    kelvin = table.value if by_table else _sign(cause) * cause.step * K_PER_F
    sources = ("uwyo-altitude-adjusters",) if by_table else ("common-practice",)
    change = _change(cause, sources=sources, to_value=round(kelvin, 1), to_unit="K")
    if by_table:
        return Sized(change, say("fat-printed", here=oven(USUAL_FAT_C + kelvin), sea=oven(USUAL_FAT_C)))
    return Sized(change, say("fat", by=temp_drop(abs(kelvin)), way=cause.way, hottest=oven(HOTTEST_FAT_C)))


def _brew(cause: Cause, bench: Bench) -> Sized:
    """Water straight off the boil of the place, as far as brewing wants it."""
    wanted_c = min(bench.boil_c, BREW_C)
    change = _change(cause, sources=("iapws-r7-97",), to_value=round(wanted_c, 2), to_unit="degC")
    return Sized(change, say("brew", water=temp(wanted_c)))


BY: dict[str, Callable[[Cause, Bench], Sized]] = {
    "boil": _boil, "cooker": _cooker, "stage": _stage, "gel": _gel, "fat": _fat, "brew": _brew,
}  # fmt: skip
BY_WHAT: dict[str, Callable[[Cause, Bench, bool], Sized]] = {"oven": _oven, "time": _time, "proof": _proof}
