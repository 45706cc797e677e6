"""How much fuel: against another elevation, for so many litres, or to carry for so many days."""

from __future__ import annotations

import math
from dataclasses import replace

from rules.amounts.portion import grams, millilitres
from rules.book import Case, Part, rule
from rules.heat import fuel, pressure
from rules.heat.burner import gas_share
from rules.heat.where_water_boils import boiling_point
from rules.model import Caution, Figure, Request
from rules.safety.holding_limits import placed
from rules.said import Measure, Said, bulk, number, sentences, yes

say = sentences("safety/subjects/fuel")

DAY_MIN = 24 * 60.0
# what a walker drinks and eats of boiled water in a day, and a usual canister
LITRES_A_DAY, CANISTER_G = 3.0, 230.0
# taken for an example where nobody says how high [m]
EXAMPLE_M = 3000.0
# no more than this is no difference that a stove shows [%]
NOTICED = 4.0
# from here on it is told by how many times [%]
SEVERAL = 90.0
HOW_MUCH, AGAINST = "how_much", ("more", "changes", "differ", "worth")


def of_two(request: Request) -> Request:
    """The higher of two elevations is where it is cooked, where no word told which; the example where there is none."""
    if not placed(request):
        return replace(request, elevation_m=EXAMPLE_M)
    if request.from_elevation_m is None and len(request.elevations_m) > 1:
        high, low = max(request.elevations_m), min(request.elevations_m)
        unused = tuple(u for u in request.unused if u.kind != "elevations")
        return replace(request, elevation_m=high, from_elevation_m=low, pressure_pa=None, unused=unused)
    here, there = request.elevation_m, request.from_elevation_m
    if "more" in request.forms and here is not None and there is not None and here < there:
        # who asks how much more goes up, whichever was named first
        return replace(request, elevation_m=there, from_elevation_m=here)
    return request


def litres(request: Request) -> float | None:
    """How much water is to be boiled [l]; the size of a cooker is none."""
    ml = millilitres(request.quantity)
    return None if ml is None or in_cooker(request) else ml / 1000


def in_cooker(request: Request) -> bool:
    """Whether the cook speaks of a pressure cooker."""
    return (
        request.method == "pressure_cook"
        or "pressure_cooker" in request.equipment
        or not set(pressure.COOKERS).isdisjoint(request.equipment)
    )


def days(request: Request) -> float | None:
    """For how many days, where so long was said."""
    told = request.time_min or request.planned_min
    return told / DAY_MIN if told and told >= DAY_MIN else None


@rule("fuel.carried", "common-practice", "computed")
def carried(case: Case) -> Part | None:
    """Gas for so many litres, or for so many people and days."""
    request = case.request
    compared = request.from_elevation_m is not None or not set(AGAINST).isdisjoint(request.forms)
    poured, stay, people = litres(request), days(request), request.portions
    own = grams(request.quantity)
    if compared or (HOW_MUCH not in request.forms and not (stay and (people or own))):
        return None
    if own and stay is None:
        return lasts(case, own)
    low, each, high = fuel.gas_g(fuel.boil_kj_l(case.here))
    of_litre = Figure("gas_a_litre", say("litre-label"), each, "g", low, high, fuel.gas_g(fuel.boil_kj_l(case.sea))[1])
    if poured is None and stay is None and people is None:
        return None
    if poured is not None:
        gas_g = poured * each
        headline = say("for-litres", gas=bulk(gas_g), litres=number(poured, 1), place=case.place)
    else:
        heads, stay = people or 1, stay or 1.0
        cooked = request.dish is not None and case.dish_class not in fuel.ONLY_BOILED
        gas_g = LITRES_A_DAY * heads * stay * each * (2 if cooked else 1)
        headline = say(
            "for-days",
            verdict="none" if own is None else "yes" if own >= gas_g else "no",
            own=bulk(own or 0.0),
            gas=bulk(gas_g),
            canisters=math.ceil(gas_g / CANISTER_G),
            cooked=yes(cooked),
            heads=heads,
            days=number(stay, 0),
            one="yes" if stay == 1 else "no",
            place=case.place,
            litres=number(LITRES_A_DAY, 0),
            each=number(each, 0),
        )
    kilos = [gas_g * part / each / 1000 for part in (each, low, high)]
    total = Figure("gas", say("gas-label"), kilos[0], "kg", *kilos[1:])
    return Part(headline=headline, figures=(total, of_litre), steps=(say("cooked-too"), say("snow")))


def lasts(case: Case, own_g: float) -> Part:
    """How long the cook's own gas lasts: half of it for what is boiled, half for what simmers."""
    low, each, high = (2 * LITRES_A_DAY * grams_l * (case.request.portions or 1) for grams_l in gas_of(case))
    return Part(
        headline=say(
            "lasts",
            own=bulk(own_g),
            heads=case.request.portions or 1,
            days=number(own_g / each, 1 if own_g < 5 * each else 0),
            one=yes(own_g / each < 1.05),
            each=bulk(each),
            place=case.place,
            litres=number(LITRES_A_DAY, 0),
        ),
        figures=(Figure("lasts_days", say("lasts-label"), own_g / each, "count", own_g / high, own_g / low),),
        steps=(say("snow"),),
    )


def gas_of(case: Case) -> tuple[float, float, float]:
    """Gas for a litre here [g]."""
    return fuel.gas_g(fuel.boil_kj_l(case.here))


@rule("fuel.against", "common-practice", "computed")
def against(case: Case) -> Part:
    """How much more a meal takes here than at the baseline: in an open pot, in a cooker, and of water that boils."""
    here, there = fuel.meal(case, case.here), fuel.meal(case, case.there)
    open_pot, cooker, boiled = (
        percent(a, b)
        for a, b in ((here.open_pot, there.open_pot), (here.cooker, there.cooker), (here.boiled, there.boiled))
    )
    saved = (1 - here.cooker / here.open_pot) * 100
    saves = in_cooker(case.request) and case.request.from_elevation_m is None
    boils = case.request.method == "boil" and case.request.dish is None
    only_boiled = boils or case.dish_class in fuel.ONLY_BOILED
    key = "only-boiled" if only_boiled else "saved" if saves else "in-cooker" if in_cooker(case.request) else "in-pot"
    first = {"only-boiled": boiled, "in-pot": open_pot}.get(key, cooker)
    return Part(
        headline=say(
            "against",
            told=key,
            verdict=verdict(case.request, first),
            example=yes(case.request.elevation_from is None),
            place=case.place,
            first=way(first, case.baseline),
            open=way(open_pot),
            cooker=way(cooker),
            boiled=way(boiled),
            saved=number(round(saved / 5) * 5, 0),
            food=case.request.dish or say("a-meal"),
        ),
        figures=(
            Figure("fuel_open_pot", say("open-label", baseline=case.baseline), round(open_pot), "percent"),
            Figure("fuel_cooker", say("cooker-label", baseline=case.baseline), round(cooker), "percent"),
            Figure("fuel_boiled", say("boiled-label", baseline=case.baseline), round(boiled), "percent"),
        ),
        steps=(say("spare"),),
        because=say("why", kept=number(gas_share(case.here.elevation_m) * 100, 0), place=case.place),
    )


def percent(here: float, there: float) -> float:
    """How much more [%], less below zero; to 5 % from ten on.

    >>> percent(1.27, 1.0), percent(0.94, 1.0)
    (25, -6)
    """
    change = (here / there - 1) * 100
    return round(change / 5) * 5 if abs(change) >= 10 else round(change)


def verdict(request: Request, change: float) -> str:
    """Whether it is more, where that is asked: yes or no."""
    asked = (
        "changes" in request.forms and HOW_MUCH not in request.forms and request.asked_way in (None, "more", "longer")
    )
    return "none" if not asked else yes(way_of(change) == "more")


def way(change: float, baseline: Measure | None = None) -> Said:
    """So much more, so much less, or the same; than at a baseline, where one is told."""
    told = "times" if change >= SEVERAL else way_of(change)
    percent, times = number(abs(change), 0), number(round((1 + change / 100) * 2) / 2, 1)
    if baseline is None:
        return say("way", way=told, percent=percent, times=times)
    return say("full", way=told, percent=percent, times=times, baseline=baseline)


def way_of(change: float) -> str:
    """Whether it is more, less or the same, as a sentence chooses by it."""
    return "same" if abs(change) < NOTICED else "more" if change > 0 else "less"


@rule("fuel.litres", "common-practice", "computed")
def litre(case: Case) -> Part:
    """What a litre takes, of water and of snow."""
    of_water, of_snow = (fuel.gas_g(of(case.here)) for of in (fuel.boil_kj_l, fuel.snow_kj_l))
    return Part(
        figures=(
            Figure("gas_a_litre", say("litre-label"), of_water[1], "g", of_water[0], of_water[2]),
            Figure("gas_a_litre_of_snow", say("snow-label"), of_snow[1], "g", of_snow[0], of_snow[2]),
        ),
        because=say("a-litre"),
        cautions=(Caution("warn", say("fumes"), ("common-practice",)),),
    )


NEEDS: tuple[str, ...] = ()
settled = of_two
RULES = (carried, against, litre, boiling_point)
