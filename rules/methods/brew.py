"""Brew: coffee and tea, whose band of temperatures may stand above the boil."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from rules.book import Case, Part, rule
from rules.foods import dishes
from rules.heat import instant
from rules.heat.cook_times import stated_span, time_figures
from rules.heat.where_water_boils import boiling_point
from rules.model import Caution, Figure
from rules.physics.ambient import Ambient
from rules.said import duration_span, sentences, temp, temp_span
from rules.tables import read_csv

BANDS = "tables/brewing_common-practice.csv"
LONGER_PER_K = 0.05
BOIL_K = 0.05
say = sentences("methods/brew")


@dataclass(frozen=True, slots=True)
class Band:
    """The water a drink wants [degC]. under_pressure: whether the brewer makes its own pressure."""

    low_c: float
    high_c: float
    under_pressure: bool
    source: str

    def short_k(self, air: Ambient) -> float:
        """How far the boil stands under the bottom of the band [K], 0 where it does not."""
        return 0.0 if self.under_pressure else max(0.0, min(self.low_c, 100.0) - air.boiling_c)


@cache
def _bands() -> dict[str, Band]:
    return {
        r["drink"]: Band(float(r["low_c"]), float(r["high_c"]), r["under_pressure"] == "yes", r["source"])
        for r in read_csv(BANDS).rows
    }


def band(case: Case) -> Band | None:
    """The band of a drink, or of its class; None for what is not brewed."""
    rows = (_bands().get(name) for name in (*dishes.kin(case.request.dish), f"class:{case.dish_class}"))
    return next((row for row in rows if row), None)


@rule("brew.temperature", "scaa-brewing", "iso-3103-2019", "common-practice")
def temperature(case: Case) -> Part | None:
    """The band of the drink, and how much of it the boil here still reaches."""
    wants = band(case)
    if wants is None:
        return None
    ceiling_c = wants.high_c if wants.under_pressure else min(wants.high_c, case.here.boiling_c)
    low_c = min(wants.low_c, ceiling_c)
    at_sea_c = (wants.low_c + min(wants.high_c, case.sea.boiling_c)) / 2
    middle, low, high, sea = (round(t, 2) for t in ((low_c + ceiling_c) / 2, low_c, ceiling_c, at_sea_c))
    reach, boil, wanted = _reach(case, wants), temp(case.here.boiling_c), temp_span(wants.low_c, wants.high_c)
    return Part(
        figures=(Figure("brew_temperature", say("water-label"), middle, "degC", low, high, sea_level=sea),),
        headline=say(
            "headline",
            reach=reach,
            drink=case.request.dish or case.dish_class,
            band=wanted,
            here=temp_span(low_c, ceiling_c),
            boil=boil,
            place=case.place,
        ),
        because=say("because", reach=reach, band=wanted, boil=boil, drink=case.dish_class),
        sources=(wants.source,),
    )


def _reach(case: Case, wants: Band) -> str:
    """How much of the band the water reaches here: all of it, its lower part, none, or what a brewer's pump makes."""
    if wants.under_pressure:
        return "pressure"
    if wants.short_k(case.here) > 0:
        return "none"
    return "part" if min(wants.high_c, case.here.boiling_c) < wants.high_c - BOIL_K else "all"


@rule("brew.time", "common-practice")
def time(case: Case) -> Part | None:
    """How long to brew: longer by a twentieth for each degree that the boil falls short of the band."""
    wants = band(case)
    stated = stated_span(case)
    row = dishes.sea_level_time(case.request.dish, case.dish_class, "brew")
    if wants is None or (stated is None and row is None):
        return None
    here, there = (1 + LONGER_PER_K * wants.short_k(air) for air in (case.here, case.there))
    low, high = stated or ((row.low_min * there, row.high_min * there) if row else (0.0, 0.0))
    factor = here / there
    because = say("taste") if factor <= 1 else say("longer", time=duration_span(low * factor, high * factor))
    return Part(
        figures=time_figures(case, (low, high), (low * factor, (low + high) / 2 * factor, high * factor)),
        because=because,
    )


@rule("brew.what_to_do", "common-practice")
def what_to_do(case: Case) -> Part | None:
    """What helps where the water is too cool."""
    wants = band(case)
    if wants is None or wants.under_pressure:
        return None
    if wants.short_k(case.here) == 0 and wants.high_c <= case.here.boiling_c:
        return Part(steps=(say("let-it-cool", band=temp_span(wants.low_c, wants.high_c)),))
    if case.dish_class != "coffee":
        return Part(steps=(say("off-the-boil"), say("more-leaf")))
    hotter = (say("under-pressure"),) if wants.short_k(case.here) else ()
    return Part(steps=(say("off-the-boil"), say("finer-grind"), *hotter))


@rule("brew.standard", "iso-3103-2019")
def standard(case: Case) -> Part | None:
    """What the tea standard says of elevation."""
    wants = band(case)
    if case.dish_class != "tea" or wants is None or wants.high_c < 100:
        return None
    return Part(because=say("standard"))


@rule("brew.scald", "common-practice")
def scald(case: Case) -> Part | None:
    """A pressurised brewer scalds."""
    wants = band(case)
    if wants is None or not wants.under_pressure:
        return None
    return Part(cautions=(Caution("note", say("scald"), ("common-practice",)),))


NEEDS = ("elevation",)
RULES = (temperature, boiling_point, time, what_to_do, instant.stand, standard, scald)
