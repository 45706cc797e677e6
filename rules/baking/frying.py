"""Hot fat: it runs cooler, because the dough's water boils cooler and the crust would outrun the crumb."""

from __future__ import annotations

from functools import cache

from rules.baking.bands import Span
from rules.baking.change import Shift
from rules.baking.mark import TempAt
from rules.book import Part, rule
from rules.physics.units import M_PER_FT
from rules.said import sentences, temp
from rules.tables import read_csv

say = sentences("baking/frying")
# 375 degF
HOTTEST_C = 190.6
TABLE = "tables/frying_uwyo-altitude-adjusters.csv"


@cache
def _per_m() -> Span:
    row = read_csv(TABLE).rows[0]
    metres = float(row["per_ft"]) * M_PER_FT
    value, low, high = (-float(row[c]) * 5 / 9 / metres for c in ("value_f", "low_f", "high_f"))
    return Span(value, min(low, high), max(low, high))


def difference_k(from_m: float, to_m: float) -> Span:
    """How much hotter the fat is here than there [K], negative on the way up.

    from_m, to_m: elevation there and here [m]
    source: uwyo-altitude-adjusters, section 7: 3 degF cooler for every 1,000 ft; another text gives 2 to 3

    >>> round(difference_k(0, 1524).value * 1.8, 1)
    -15.0
    """
    return _per_m().map(lambda k: k * (to_m - from_m))


@rule("baking.fat_temp", "uwyo-altitude-adjusters")
def fat(at: TempAt) -> Part | None:
    """How the temperature of hot fat moves. On the way down it stops at 375 °F: hotter it smokes and can catch fire."""
    if at.mark.what != "fat":
        return None
    batch, hottest_k = at.batch, max(HOTTEST_C - at.mark.low_c, 0.0)
    span = difference_k(batch.from_m, batch.to_m).map(lambda k: min(k, hottest_k))
    if abs(span.value) < 0.1:
        return None
    because = say("why", way=batch.way, boil=temp(batch.here.boiling_c), place=batch.place)
    return Part(shift=Shift(span, "fat_temp"), because=because)
