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
from rules.say import duration_span
from rules.tables import read_csv

BANDS = "tables/brewing_common-practice.csv"
LONGER_PER_K = 0.05
BOIL_K = 0.05


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
    span, here = case.say.temp_span(wants.low_c, wants.high_c), case.say.temp_span(low_c, ceiling_c)
    boil, food = case.say.temp(case.here.boiling_c), case.request.dish or case.dish_class
    if wants.under_pressure:
        head = (
            f"{food.capitalize()} is brewed at {span} at {case.place} as anywhere: the brewer makes its own pressure."
        )
        why = "The air outside does not count inside a pump or a sealed boiler."
    elif wants.short_k(case.here) > 0:
        head = f"At {case.place} water boils at {boil}, under the {span} that {food} wants: brew straight off the boil."
        why = (
            f"No open kettle here reaches {span}. Cooler water draws less and the cup tastes thin, so make up for it "
            f"with {'a finer grind' if case.dish_class == 'coffee' else 'more leaf'} and more time."
        )
    elif ceiling_c < wants.high_c - BOIL_K:
        head = (
            f"At {case.place} brew {food} at {here}: straight off the boil, the top of the {span} band is out of reach."
        )
        why = f"The boil, {boil} here, stands inside the band, so water just off the boil is right without waiting."
    else:
        head = f"Brew {food} at {span} at {case.place}, as at sea level."
        why = (
            f"The whole band lies under the boil, {boil} here, so nothing changes but the wait for the kettle to cool."
        )
    return Part(
        figures=(
            Figure(
                "brew_temperature",
                "Water for brewing",
                round((low_c + ceiling_c) / 2, 2),
                "degC",
                round(low_c, 2),
                round(ceiling_c, 2),
                sea_level=round((wants.low_c + min(wants.high_c, case.sea.boiling_c)) / 2, 2),
            ),
        ),
        headline=head,
        because=why,
        sources=(wants.source,),
    )


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
    because = (
        "A twentieth more time for each degree the boil falls short makes "
        f"{duration_span(low * factor, high * factor)}, the range being the strength you like; taste decides."
        if factor > 1
        else "The range is the strength you like; taste decides."
    )
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
        return Part(
            steps=(f"Let the kettle stand until the water is {case.say.temp_span(wants.low_c, wants.high_c)}.",)
        )
    steps = [
        "Use the water the moment it boils, and heat the pot and brewer with boiling water first: each pour costs "
        "degrees."
    ]
    if case.dish_class == "coffee":
        steps.append("Grind one step finer, and keep the brewer covered.")
        if wants.short_k(case.here):
            steps.append("For a hotter brew go to pressure: a moka pot, an espresso pump or a siphon with a tight lid.")
    else:
        steps.append("Use a little more leaf, keep the pot covered and warm, and taste from the usual time on.")
    return Part(steps=tuple(steps))


@rule("brew.standard", "iso-3103-2019")
def standard(case: Case) -> Part | None:
    """What the tea standard says of elevation."""
    wants = band(case)
    if case.dish_class != "tea" or wants is None or wants.high_c < 100:
        return None
    return Part(
        because="The international standard for tasting tea uses freshly boiling water, 6 min for black and 5 min "
        "for green leaf, and asks that the elevation be reported where the boil is affected."
    )


@rule("brew.scald", "common-practice")
def scald(case: Case) -> Part | None:
    """A pressurised brewer scalds."""
    wants = band(case)
    if wants is None or not wants.under_pressure:
        return None
    text = "Keep the safety valve of a pressurised brewer clear, and let it cool before opening it."
    return Part(cautions=(Caution("note", text, ("common-practice",)),))


NEEDS = ("elevation",)
RULES = (temperature, boiling_point, time, what_to_do, instant.stand, standard, scald)
