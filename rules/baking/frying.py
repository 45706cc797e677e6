"""Hot fat: it runs cooler, because the dough's water boils cooler and the crust would outrun the crumb."""

from __future__ import annotations

from functools import cache

from rules.baking.bands import M_PER_FT, Span
from rules.baking.batch import Batch
from rules.baking.time_shift import Shift
from rules.tables import read_csv

RULE = "baking.fat_temp"
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


def shift(batch: Batch, temp_c: float) -> Shift | None:
    """How a fat temperature [degC] moves. On the way down it stops at 375 °F: hotter fat smokes and can catch fire."""
    hottest_k = max(HOTTEST_C - temp_c, 0.0)
    span = difference_k(batch.from_m, batch.to_m).map(lambda k: min(k, hottest_k))
    if abs(span.value) < 0.1:
        return None
    because = (
        f"Water in the food boils at {batch.say.temp(batch.boil_here_c)} at {batch.here}, so the crumb heats more "
        "slowly while "
        "the crust browns as before. Cooler fat lets them finish together: 3 °F (1.7 °C) for every 1,000 ft (305 m). "
        "The frying takes a little longer."
        if batch.up
        else f"Water in the food boils hotter at {batch.here}, so the fat can be hotter, up to 375 °F (190 °C)."
    )
    return Shift(span, "fat_temp", RULE, because, ("uwyo-altitude-adjusters",))
