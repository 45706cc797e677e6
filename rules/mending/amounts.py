"""How much more or less of an ingredient mends a dish."""

from __future__ import annotations

from rules.baking import components, leavening
from rules.baking.bands import Span
from rules.baking.batch import towards
from rules.baking.rounding import kitchen, same_measure, step_of
from rules.mending.causes import Cause
from rules.mending.failed_dish import Bench
from rules.mending.sized import COMMON, Sized, change_of, sign, trial
from rules.said import measure, sentences, yes

say = sentences("mending/amounts")
FINE = ("leavening", "yeast", "salt")


def amount(cause: Cause, bench: Bench, further: bool) -> Sized:
    """More or less of an ingredient, from where the log has brought it, in steps that a cook can measure."""
    base, fine = bench.base(cause.what), cause.what in FINE
    ratio, sources = _ratio(cause, bench, further)
    ratio = _keeping_acid(cause, bench, ratio)
    start, unit = same_measure(base.value, base.unit, fine=fine)
    now = kitchen(start * bench.log.moved(cause.what), unit, fine=fine) if bench.log.moved(cause.what) != 1 else start
    to, low, high = (towards(now, r, unit, fine=fine) for r in (ratio.value, ratio.low, ratio.high))
    if abs(to - now) < 1e-9:
        step = step_of(now, unit, fine=fine)
        to = now + sign(cause) * step if now > step or sign(cause) > 0 else now / 2
    low, high = sorted((low, high)) if further or bench.log.moved(cause.what) == 1 else (to, to)
    after, before = measure(to, unit or ""), measure(now, unit or "")
    line = say("amount", now=after, was=before, item=base.item, own=yes(base.own))
    change = change_of(
        cause, sources=sources, at=base.at, item=base.item, from_value=round(now, 4), from_unit=unit,
        to_value=round(to, 4), to_low=round(min(low, to), 4), to_high=round(max(high, to), 4), to_unit=unit,
    )  # fmt: skip
    return Sized(change, line)


def _ratio(cause: Cause, bench: Bench, further: bool) -> tuple[Span, tuple[str, ...]]:
    """How many times the amount, and by which tables; the tables' whole change is taken once, trial steps after."""
    if cause.by != "formula":
        return trial(cause), COMMON
    table = components.ratio(bench.style, cause.what, bench.from_m, bench.here_m)
    if not bench.asks(cause) or (bench.log.times_tried(cause) and not further):
        return trial(cause), COMMON
    sources = components.sources(bench.style, cause.what)
    return (table.map(lambda r: 1 + (r - 1) / 2) if further else table), sources


def _keeping_acid(cause: Cause, bench: Bench, ratio: Span) -> Span:
    """Soda that sour milk needs stays, whatever the tables take off."""
    lines = bench.lines("leavening")
    if cause.what != "leavening" or cause.way != "less" or not lines or lines[0].part.name != "soda":
        return ratio
    return leavening.soda_ratio(bench.batch, lines[0], ratio)
