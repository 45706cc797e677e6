"""Dry beans: the boil that destroys their natural poison, and how long they take when they were not soaked."""

from __future__ import annotations

from functools import cache

from rules.book import Case
from rules.foods.dishes import Span, kin, sea_level_time
from rules.said import Said, number, sentences, temp
from rules.tables import read_csv

UNSOAKED = "tables/unsoaked_beans_common-practice.csv"

SOAK_H = (5, 12)
# the extension answer, and the U.S. handbook on toxins
BOIL_MIN = (10.0, 30.0)
COOL_BOIL_K = 3.0
# under it no open pot is trusted with them: heated to 80 C they were found more poisonous than raw
LEAST_BOIL_C = 86.0
say = sentences("foods/beans")


def bare(case: Case) -> Said:
    """The beans by name, without a "dried" that is said beside it.

    >>> from rules.model import Request
    >>> dict(bare(Case(Request(dish="dried beans", dish_class="dried_bean"))).values)["kind"]
    'any'
    """
    told = case.request.dish is not None and "any_bean" not in case.traits
    return say("bare", kind="told" if told else "any", beans=case.food)


def poisonous_dry(case: Case) -> bool:
    """Whether the dish is dry beans that poison until they have boiled, and not a dish with beans in it."""
    return "lectin" in case.traits and case.dish_class == "dried_bean"


def boils_cool(case: Case) -> bool:
    """Whether the boil is so much cooler that the longer of the two times counts."""
    return case.sea.boiling_c - case.here.boiling_c > COOL_BOIL_K


def boil_spares_poison(case: Case) -> bool:
    """Whether the boil here is too cool to be trusted with beans that poison.

    source: fda-bad-bug-book
    """
    return poisonous_dry(case) and case.here.boiling_c < LEAST_BOIL_C


def first_boil(case: Case) -> Said:
    """What is done with dry beans before any gentle cooking, by both agencies.

    source: fda-bad-bug-book, usu-ask-extension
    """
    (soak_low, soak_high), (least, full) = SOAK_H, BOIL_MIN
    return say(
        "first-boil",
        soak_low=number(soak_low),
        soak_high=number(soak_high),
        least=number(least),
        full=number(full),
        where="cool" if boils_cool(case) else "usual",
        place=case.place,
        boil=temp(case.here.boiling_c),
    )


@cache
def _unsoaked() -> dict[tuple[str, str], Span]:
    table = read_csv(UNSOAKED)
    return {(r["dish"], r["method"]): Span(float(r["low_min"]), float(r["high_min"]), table.source) for r in table.rows}


def unsoaked_time(dish: str | None, dish_class: str, method: str) -> Span | None:
    """Time at sea level of beans that were not soaked [min]; None for other food and where no table has one.

    A dish of beans whose own time is longer keeps its own.
    source: common-practice

    >>> unsoaked_time("black beans", "dried_bean", "pressure_cook").low_min
    20.0
    """
    if dish_class != "dried_bean":
        return None
    names = (*kin(dish), f"class:{dish_class}")
    found = next((_unsoaked()[name, method] for name in names if (name, method) in _unsoaked()), None)
    soaked = sea_level_time(dish, dish_class, method)
    return None if found and soaked and soaked.high_min >= found.high_min else found
