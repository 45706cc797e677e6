"""The formula that a cook tells with a fault, each amount as the tables change it for the place."""

from __future__ import annotations

from collections.abc import Iterator

from rules.baking import components
from rules.baking.bands import TABLES
from rules.baking.batch import towards
from rules.baking.rounding import same_measure
from rules.mending.failed_dish import LEAST_CHANGE, Bench
from rules.said import Said, measure, sentences

say = sentences("mending/amounts")
FEWEST, FINE = 3, ("leavening", "yeast", "salt")


def resized(bench: Bench) -> tuple[Said, ...]:
    """What becomes of the amounts that were told; none of fewer than three, which are no formula."""
    return tuple(_resized(bench)) if bench.placed and len(bench.amounts) >= FEWEST else ()


def _resized(bench: Bench) -> Iterator[Said]:
    for what, base in bench.amounts.items():
        ratio = components.ratio(bench.style, what, bench.from_m, bench.here_m).value if what in TABLES else 1.0
        if abs(ratio - 1) < LEAST_CHANGE:
            continue
        fine = what in FINE
        was, unit = same_measure(base.value, base.unit, fine=fine)
        now = towards(was, ratio, unit, fine=fine)
        if abs(now - was) > 1e-9:
            yield say("in-short", now=measure(now, unit or ""), was=measure(was, unit or ""), item=base.item)
