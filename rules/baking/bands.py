"""Published altitude bands, read smoothly: a table gives 3,000, 5,000 and 7,000 ft, a kitchen stands at 6,240.

The tables are straight lines from band to band. They say that nothing is needed below 3,000 ft, and want their first
change there at once; the first change is therefore brought in over the 1,000 ft below the first band. Above the last
band it is held, since no table read goes higher, but for leavening, which goes on by the gas law: `beyond` says so,
and a caution passes it on.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import cache, lru_cache
from itertools import pairwise

from rules.errors import UnknownWord
from rules.physics import air, water
from rules.physics.units import M_PER_FT
from rules.tables import BadTable, read_csv

RAMP_FT = 1000.0
# what goes on by the gas law where its tables end, in a batter that sets about so warm [degC]
BY_GAS_LAW, SETTING_C = "leavening", 60.0

UW_CAKE = "tables/baking_cake_uwyo-altitude-adjusters.csv"
USU_CAKE = "tables/baking_cake_usu-faq-204.csv"
EGG_PRODUCERS = "tables/baking_cake_egg-producers-cakes.csv"
CSU_SHORT = "tables/baking_cake_csu-cakes-2002.csv"
CSU = "tables/baking_cake_csu-high-altitude-food-prep.csv"
CONVENTION = "tables/baking_cake_common-practice.csv"
YEAST = "tables/baking_yeast_common-practice.csv"
USU_QUICK = "tables/baking_quick_bread_usu-faq-204.csv"
NMSU = "tables/baking_cake_nmsu-circular-293.csv"

# The first table of a component gives the value, the others widen its range.
TABLES: dict[str, tuple[str, ...]] = {
    "leavening": (UW_CAKE, USU_CAKE, CSU_SHORT),
    "sugar": (UW_CAKE, USU_CAKE, CSU_SHORT),
    "liquid": (UW_CAKE, USU_CAKE),
    "oven": (UW_CAKE,),
    "time": (EGG_PRODUCERS,),
    "fill": (EGG_PRODUCERS,),
    "egg": (CSU,),
    "fat": (CSU,),
    "flour": (CONVENTION,),
    "yeast": (YEAST,),
    "quick_bread_leavening": (USU_QUICK,),
    "bread_machine_yeast": (USU_QUICK,),
    "powder_per_flour": (NMSU,),
}


@dataclass(frozen=True, slots=True)
class Span:
    """A figure with the range its sources allow."""

    value: float
    low: float
    high: float

    def map(self, function: Callable[[float], float]) -> Span:
        """The function applied to the figure and both ends; the ends are put in order again.

        >>> Span(2, 1, 3).map(lambda x: -x)
        Span(value=-2, low=-3, high=-1)
        """
        value, *ends = (function(x) for x in (self.value, self.low, self.high))
        return Span(value, min(ends), max(ends))

    def against(self, base: Span, combine: Callable[[float, float], float]) -> Span:
        """This figure against a baseline, like with like: combine(value, value), the low ends, the high ends."""
        value = combine(self.value, base.value)
        ends = (combine(self.low, base.low), combine(self.high, base.high), value)
        return Span(value, min(ends), max(ends))


NOTHING = Span(0.0, 0.0, 0.0)
AS_IS = Span(1.0, 1.0, 1.0)


@cache
def points(table: str, component: str) -> tuple[tuple[float, float, float], ...]:
    """Bands of one table: elevation [ft], low and high as a fraction of the sea-level amount (oven: degF), signed.

    raises: UnknownWord when the table has no such component; BadTable when its bands do not climb
    """
    rows = [r for r in read_csv(table).rows if r["component"] == component]
    if not rows:
        raise UnknownWord.among("baking component", component, {r["component"] for r in read_csv(table).rows})
    found = []
    for row in rows:
        sign = -1 if row["way"] == "less" else 1
        ends = [sign * float(row[end]) / float(row["per"]) for end in ("low", "high")]
        found.append((float(row["elevation_ft"]), min(ends), max(ends)))
    if [p[0] for p in found] != sorted({p[0] for p in found}):
        raise BadTable(f"data/{table}: {component}: bands must climb, each elevation once")
    return tuple(found)


def _read(table: str, component: str, elevation_m: float) -> Span:
    feet = elevation_m / M_PER_FT
    bands = points(table, component)
    first = bands[0][0]
    bands = ((first - RAMP_FT, 0.0, 0.0), *bands)
    if feet <= bands[0][0]:
        return NOTHING
    for (below, low0, high0), (above, low1, high1) in pairwise(bands):
        if feet <= above:
            share = (feet - below) / (above - below)
            low, high = low0 + share * (low1 - low0), high0 + share * (high1 - high0)
            return Span((low + high) / 2, low, high)
    low, high = bands[-1][1:]
    return Span((low + high) / 2, low, high)


# a conversion asks for each component again and again; there is no end of elevations
@lru_cache(maxsize=4096)
def change(component: str, elevation_m: float) -> Span:
    """What the tables change at an elevation, against sea level, as a signed fraction (the oven in degF).

    component: a key of TABLES
    elevation_m: height above sea level [m]; 0 change up to 1,000 ft below the first band, held above the last
    returns: the middle of the preferred table's range, with the range of all tables of the component
    raises: UnknownWord for another component
    source: the tables

    >>> change("leavening", 7000 * M_PER_FT).value, change("leavening", 1900 * M_PER_FT).value
    (-0.25, 0.0)
    >>> change("sugar", 5000 * M_PER_FT)
    Span(value=-0.0625, low=-0.125, high=0.0)
    """
    if component not in TABLES:
        raise UnknownWord.among("baking component", component, TABLES)
    spans = [_read(table, component, elevation_m) for table in TABLES[component]]
    read = Span(spans[0].value, min(s.low for s in spans), max(s.high for s in spans))
    if component != BY_GAS_LAW or elevation_m <= highest_m(component):
        return read
    return by_gas_law(read, highest_m(component), elevation_m)


def by_gas_law(last: Span, top_m: float, elevation_m: float) -> Span:
    """The cut of leavening above the tables: their last step, and what the gas swells more from there on.

    last: the last step of the tables, at top_m [m], which is never undercut; the range reaches to what gas in a
    setting batter asks for
    source: computed

    >>> round(by_gas_law(Span(-0.25, -0.25, -0.125), 7000 * M_PER_FT, 10_000 * M_PER_FT).value, 2)
    -0.34
    """
    (top_dry, top_wet), (dry, wet) = (_gas_cut(metres) for metres in (top_m, elevation_m))
    return Span(last.value + (dry + wet - top_dry - top_wet) / 2, min(last.low, wet), last.value)


def _gas_cut(elevation_m: float) -> tuple[float, float]:
    """By how much less gas fills the same room as at sea level, as a signed fraction: dry, and in a setting batter."""
    vapour_pa = water.saturation_pressure_pa(SETTING_C)
    sea_pa, here_pa = air.pressure_pa(0.0), air.pressure_pa(elevation_m)
    return here_pa / sea_pa - 1, (here_pa - vapour_pa) / (sea_pa - vapour_pa) - 1


def highest_m(component: str) -> float:
    """The last band of the component's preferred table [m].

    >>> round(highest_m("leavening") / M_PER_FT)
    7000
    """
    return points(TABLES[component][0], component)[-1][0] * M_PER_FT


def sources(component: str) -> tuple[str, ...]:
    """Source ids of a component's tables, the preferred first.

    >>> sources("leavening")
    ('uwyo-altitude-adjusters', 'usu-faq-204', 'csu-cakes-2002')
    """
    return tuple(dict.fromkeys(read_csv(table).source for table in TABLES[component]))
