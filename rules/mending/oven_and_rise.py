"""How the oven, the bake and the rise are changed to mend a dish."""

from __future__ import annotations

from rules.baking import bands, components, yeast
from rules.baking.batch import percent_apart
from rules.mending.causes import Cause
from rules.mending.failed_dish import Bench
from rules.mending.sized import COMMON, Sized, change_of, sign, trial
from rules.physics.units import K_PER_F, round_to
from rules.recipes.steps import scaled_min, shifted_c
from rules.said import Said, duration, number, sentences
from rules.said import oven as setting

say = sentences("mending/oven_and_rise")


def oven(cause: Cause, bench: Bench, further: bool) -> Sized:
    """A hotter or cooler oven: a setting where one is known, else by how many degrees."""
    table = components.difference(bench.style, "oven", bench.from_m, bench.here_m)
    agrees, again = bench.asks(cause), bench.log.times_tried(cause) > 0
    span_f = table if agrees and not again else bands.Span(*(sign(cause) * cause.step,) * 3)
    if further:
        span_f = span_f.map(lambda f: f / 2)
    sources = components.sources(bench.style, "oven") if agrees and not again else COMMON
    low, value, high = (f * K_PER_F for f in (span_f.low, span_f.value, span_f.high))
    if bench.oven_c is None:
        change = change_of(cause, sources=sources, to_value=round(value, 1), to_low=round(low, 1),
                         to_high=round(high, 1), to_unit="K")  # fmt: skip
        return Sized(change, _oven_by(cause, bench, span_f.value))
    unit, size = ("degF", 5.0) if bench.units == "us" else ("degC", 2.0)
    to, to_low, to_high = (shifted_c(bench.oven_c, k, unit, size) for k in (value, low, high))
    change = change_of(
        cause, sources=sources, from_value=round(bench.oven_c, 1), from_unit="degC", to_value=round(to, 1),
        to_low=round(min(to_low, to), 1), to_high=round(max(to_high, to), 1), to_unit="degC",
    )  # fmt: skip
    return Sized(change, say("oven-to", now=setting(to), was=setting(bench.oven_c)))


def _oven_by(cause: Cause, bench: Bench, degrees_f: float) -> Said:
    """An oven that is set by so many degrees hotter or cooler than it was."""
    us, metric = number(round_to(abs(degrees_f), 5)), number(round_to(abs(degrees_f) * K_PER_F, 1))
    return say("oven-by", units=bench.units, fahrenheit=us, celsius=metric, way=cause.way)


def time(cause: Cause, bench: Bench, further: bool) -> Sized:
    """More or less time: a time where one is known, else by how much."""
    ratio = trial(cause).value
    return timed(cause, bench, 1 + (ratio - 1) / 2 if further else ratio)


def timed(cause: Cause, bench: Bench, ratio: float, sources: tuple[str, ...] = ()) -> Sized:
    """So many times the time it was given."""
    now = bench.baked_min and bench.baked_min * bench.log.moved("time")
    if now:
        to = scaled_min(now, ratio)
        figures = {"from_value": round(now, 1), "from_unit": "min", "to_value": to, "to_unit": "min"}
        change = change_of(cause, sources=sources, **figures)
        return Sized(change, say("time-to", now=duration(to), was=duration(now)))
    figures = {"from_value": 100.0, "from_unit": "percent", "to_value": round(100 * ratio), "to_unit": "percent"}
    change = change_of(cause, sources=sources, **figures)
    return Sized(change, say("time-by", percent=percent_apart(ratio), way="less" if ratio < 1 else "more"))


def proof(cause: Cause, bench: Bench, further: bool) -> Sized:
    """A shorter or longer rise: by the air of the place the first time, in trial steps after."""
    ratio = yeast.proof_ratio(bench.batch)
    by_air = ratio.low if cause.way == "shorter" and ratio.low < 0.97 and not bench.log.times_tried(cause) else None
    value = by_air or trial(cause).value
    value = 1 + (value - 1) / 2 if further else value
    change = change_of(
        cause, sources=("computed",) if by_air else COMMON, from_value=100.0, from_unit="percent",
        to_value=round(100 * value), to_unit="percent",
    )  # fmt: skip
    if cause.way == "shorter":
        return Sized(change, say("proof-shorter", percent=number(100 * value, 0)))
    return Sized(change, say("proof-longer", percent=percent_apart(value)))
