"""Poach: in liquid held well under the boil, which stays the same until the boil comes down to it."""

from __future__ import annotations

from rules.book import Case, Part, Rule, rule
from rules.errors import within
from rules.foods import eggs
from rules.heat.wet import Pot, check, time_part
from rules.heat.where_water_boils import boiling_point
from rules.model import Figure

POACH_C = 76.5
POACH_RANGE_C = (71.0, 82.0)
LOWEST_C, HIGHEST_C = 40.0, 100.0
OVER_WATER = ("sauce", "custard")


def pot(case: Case) -> Pot:
    """A pot held at the temperature the cook gave, or in the usual range.

    raises: OutOfRange for a temperature at which nothing is poached
    """
    asked_c = case.request.temperature_c
    if asked_c is None:
        return Pot("poach", "the liquid", hold_c=POACH_C)
    hint = "Poaching is done between 160 and 180 °F (71 and 82 °C)."
    return Pot("poach", "the liquid", hold_c=within("poaching temperature", asked_c, LOWEST_C, HIGHEST_C, "degC", hint))


@rule("poach.liquid_temperature", "common-practice")
def liquid_temperature(case: Case) -> Part:
    """The temperature to hold, and whether an open pot here still reaches it."""
    held = pot(case)
    here_c, sea_c = held.working_c(case.here), held.working_c(case.sea)
    stated = case.request.temperature_c is not None
    low_c, high_c = (here_c, here_c) if stated else (min(end, case.here.boiling_c) for end in POACH_RANGE_C)
    low, high = round(low_c, 2), round(high_c, 2)
    return Part(
        figures=(Figure("liquid_temperature", _label(case), round(here_c, 2), "degC", low, high, round(sea_c, 2)),),
        steps=(_step(case, case.say.temp_span(low_c, high_c)),),
        because=_why(case, low_c, high_c, reached=here_c >= sea_c - 0.05),
    )


def _over_water(case: Case) -> bool:
    return case.dish_class in OVER_WATER


def _label(case: Case) -> str:
    return "Water under the bowl" if _over_water(case) else "Poaching liquid"


def _step(case: Case, held: str) -> str:
    if _over_water(case):
        return f"Keep the water under the bowl at {held}, clear of the bowl, and stir all the time."
    return (
        f"Hold the liquid at {held} by thermometer, with no bubbles breaking: the look of the surface misleads where "
        "water boils cooler."
    )


def _why(case: Case, low_c: float, high_c: float, *, reached: bool) -> str:
    boil = case.say.temp(case.here.boiling_c)
    if reached:
        return (
            f"{case.say.temp_span(low_c, high_c)} lies under the boil of {boil} here, so it can be held at "
            "this elevation too."
        )
    return f"The boil, {boil} here, stands under the temperature you want: the liquid stops there, the time grows."


@rule("poach.time", "common-practice")
def time(case: Case) -> Part:
    """How long it takes: as at the baseline, as long as the temperature can be held."""
    return time_part(case, pot(case).heats(case))


RULES: tuple[Rule, ...] = (boiling_point, liquid_temperature, time, check, eggs.safety, eggs.sauce_safety)
