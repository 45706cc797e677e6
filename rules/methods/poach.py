"""Poach: in liquid held well under the boil, which stays the same until the boil comes down to it."""

from __future__ import annotations

from rules.book import Case, Part, Rule, rule
from rules.errors import within
from rules.foods import eggs
from rules.heat.wet import Pot, check, time_part
from rules.heat.where_water_boils import boiling_point
from rules.model import Figure
from rules.said import Measure, Words, sentences, temp, temp_span

POACH_C = 76.5
POACH_RANGE_C = (71.0, 82.0)
# plants are poached at a bare simmer, so far under the boil
PLANTS = ("fruit", "dried_fruit", "starchy_root", "root_vegetable", "tender_vegetable")
UNDER_BOIL_K, SIMMER_K = 5.0, (8.0, 3.0)
LOWEST_C, HIGHEST_C = 40.0, 100.0
REACHED_K = 0.05
say = sentences("methods/poach")


def softens(case: Case) -> bool:
    """Whether it is poached until it is soft: plants soften only near the boil, which falls with elevation."""
    return case.dish_class in PLANTS


def pot(case: Case) -> Pot:
    """A pot held at the temperature the cook gave, or in the usual range.

    raises: OutOfRange for a temperature at which nothing is poached
    """
    asked_c = case.request.temperature_c
    if asked_c is None and softens(case):
        return Pot("poach", "liquid", below_boil_k=UNDER_BOIL_K)
    if asked_c is None:
        return Pot("poach", "liquid", hold_c=POACH_C)
    hint = "Poaching is done between 160 and 180 °F (71 and 82 °C)."
    return Pot("poach", "liquid", hold_c=within("poaching temperature", asked_c, LOWEST_C, HIGHEST_C, "degC", hint))


@rule("poach.liquid_temperature", "common-practice")
def liquid_temperature(case: Case) -> Part:
    """The temperature to hold, and whether an open pot here still reaches it."""
    held = pot(case)
    here_c, sea_c = held.working_c(case.here), held.working_c(case.sea)
    stated = case.request.temperature_c is not None
    ends_c: tuple[float, ...] = POACH_RANGE_C
    if softens(case):
        ends_c = tuple(case.here.boiling_c - under for under in SIMMER_K)
    low_c, high_c = (here_c, here_c) if stated else (min(end, case.here.boiling_c) for end in ends_c)
    held_in = "bowl" if "bowl_over_water" in case.traits else "liquid"
    label, span, boil = say("label", held_in=held_in), temp_span(low_c, high_c), temp(case.here.boiling_c)
    ends = round(here_c, 2), "degC", round(low_c, 2), round(high_c, 2), round(sea_c, 2)
    return Part(
        figures=(Figure("liquid_temperature", label, *ends),),
        steps=(say("step", held_in=held_in, temp=span),),
        because=_why(case, span, boil, reached=here_c >= sea_c - REACHED_K),
    )


def _why(case: Case, span: Measure, boil: Measure, *, reached: bool) -> Words:
    if softens(case) and case.request.temperature_c is None:
        return say("soft-near-the-boil", boil=boil)
    return say("reached", temp=span, boil=boil) if reached else say("out-of-reach", boil=boil)


@rule("poach.time", "common-practice")
def time(case: Case) -> Part:
    """How long it takes: as at the baseline, as long as the temperature can be held."""
    return time_part(case, pot(case).heats(case))


RULES: tuple[Rule, ...] = (boiling_point, liquid_temperature, time, check, eggs.safety, eggs.sauce_safety)
