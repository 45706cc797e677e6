"""What liquid a dish takes, and how much more of it here: absorbed, round the food, or poured away."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cache

from rules.amounts.portion import grams, head, millilitres, over
from rules.book import Case
from rules.foods.dishes import kin, usual_method
from rules.foods.methods import methods
from rules.heat import pots
from rules.heat.wet import Pot, wet_time
from rules.model import Request
from rules.physics import evaporation
from rules.physics.units import FT_PER_M, ML_PER_CUP
from rules.tables import read_csv

LIQUIDS = "tables/liquids_common-practice.csv"
ABSORBED, COVERS, PLENTY, BREWED = "absorbed", "covers", "plenty", "brewed"
# what cooks at elevation give an absorbing grain more for each 1,000 ft: its lid never shuts quite [share]
MORE_PER_1000_FT = 0.025
NOTICED_FROM_FT = 2000
# in a big covered batch, or in steam, less gets away
LARGE_G, LARGE_SHARE = 2000.0, 0.5
STEAMED_BY = ("combi_oven", "convection_steamer", "commercial_pressure_steamer", "steam_kettle")
STEAMED_AS = ("steam", "bake")
POTS = {"braise": pots.BRAISE, "stew": pots.STEW, "boil": pots.BOIL}


@dataclass(frozen=True, slots=True)
class Ratio:
    """A row of the table: ml to a gram of the dish as it is bought, and grams of a cup of it where it goes by cups."""

    way: str
    liquid: str
    ml_per_g: float
    low: float
    high: float
    g_per_cup: float | None
    source: str


@dataclass(frozen=True, slots=True)
class Needed:
    """The liquid of one amount [ml]. of_g: the amount; sea_ml, low_ml, high_ml: at sea level; extra_ml: more here"""

    ratio: Ratio
    of_g: float
    sea_ml: float
    low_ml: float
    high_ml: float
    extra_ml: float

    @property
    def here_ml(self) -> float:
        """All of it, here."""
        return self.sea_ml + self.extra_ml


@cache
def _ratios() -> dict[tuple[str, str], Ratio]:
    found = {}
    for row in read_csv(LIQUIDS).rows:
        cup_g = float(row["g_per_cup"]) if row["g_per_cup"] else None
        scale = ML_PER_CUP / cup_g if row["per"] == "cup" and cup_g else 1 / 1000
        amount, low, high = (float(row[name]) * scale for name in ("amount", "low", "high"))
        found[row["dish"], row["vessel"]] = Ratio(row["way"], row["liquid"], amount, low, high, cup_g, row["source"])
    return found


def vessel(request: Request) -> str:
    """What it is cooked in, as the table knows it: a rice cooker, in steam or a covered pan, a method, or any."""
    if "rice_cooker" in request.equipment:
        return "rice_cooker"
    steamed = any(name in request.equipment for name in STEAMED_BY) or request.method in STEAMED_AS
    panned = any(name.startswith("pan") for name in request.counted_in)
    return "steam" if steamed or panned else request.method or "any"


def ratio(request: Request) -> Ratio | None:
    """The ratio of a dish; None where the table has none."""
    vessels = (vessel(request), "any")
    names = (*kin(request.dish), f"class:{request.dish_class or 'general'}")
    rows = ((name, used) for used in vessels for name in names)
    return next((_ratios()[key] for key in rows if key in _ratios()), None)


def amount_g(request: Request, of: Ratio) -> float:
    """What the liquid is for [g]: the cook's amount, that of the guests, or one cup, or one kilogram."""
    volume = millilitres(request.quantity)
    if (own := grams(request.quantity)) is not None:
        return own
    if volume is not None and of.g_per_cup:
        return volume / ML_PER_CUP * of.g_per_cup
    if request.portions:
        one = head(request)
        return one.raw_g * request.portions * over(one.way)
    return of.g_per_cup or 1000.0


def needed(case: Case) -> Needed | None:
    """The liquid for what was asked; None where no ratio is known."""
    of = ratio(case.request)
    if of is None:
        return None
    of_g = amount_g(case.request, of)
    sea, low, high = (share * of_g for share in (of.ml_per_g, of.low, of.high))
    more = {ABSORBED: absorbed_more, COVERS: boiled_off_more}.get(of.way)
    return Needed(of, of_g, sea, low, high, more(case, of_g, sea) if more else 0.0)


def absorbed_more(case: Case, of_g: float, sea_ml: float) -> float:
    """How much more an absorbing grain is given here [ml], by common practice: in a big batch half as much of it."""
    feet = (case.here.elevation_m - case.there.elevation_m) * FT_PER_M
    if abs(feet) < NOTICED_FROM_FT:
        return 0.0
    large = of_g >= LARGE_G or vessel(case.request) == "steam"
    return sea_ml * feet / 1000 * MORE_PER_1000_FT * (LARGE_SHARE if large else 1.0)


def boiled_off_more(case: Case, of_g: float, sea_ml: float) -> float:
    """What the longer simmer here boils off [ml]; 0 where no time is known.

    The pot is the usual one of the method, or one wide enough for the amount.
    """
    request = case.request
    method = request.method or usual_method(request.dish, case.dish_class) or "simmer"
    pot = POTS.get(method, Pot(method, "liquid", below_boil_k=3.0) if method in methods() else pots.SIMMER)
    timed = Case(replace(request, topic="time", method=method))
    time = wet_time(timed, pot.heats(timed))
    if time is None:
        return 0.0
    covered = "uncovered" not in case.traits if request.covered is None else request.covered
    more = evaporation.extra_liquid_ml(
        time.likely_min, time.base_mid_min, max(pot.area_m2, evaporation.surface_m2(of_g + sea_ml)), covered=covered,
        elevation_m=case.here.elevation_m, from_elevation_m=case.there.elevation_m,
    )  # fmt: skip
    return max(0.0, more)
