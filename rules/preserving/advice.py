"""What is asked around jars that is no process time: acid, headspace, the clock, salt, vinegar, sugar, a good batch."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

from rules.amounts.portion import grams
from rules.book import Case, Part, rule
from rules.model import Caution, Request
from rules.physics.units import FT_PER_M, PSI_PER_PA
from rules.preserving import pressure, process_times, tested
from rules.preserving.gate import printed_here, refusal
from rules.preserving.printed import recipe_of
from rules.preserving.vessel import PRESSURE, called, food_of, vessel
from rules.said import Said, Words, mass, number, sentences, temp, temp_drop, together, yes

say = sentences("preserving/advice")
# words of the ferments of vegetables, to which the times of kraut apply
VEGETABLES = frozenset(("sauerkraut", "kraut", "cabbage", "pickles", "vegetables"))
# what most tested pickle recipes print for 0-1,000 ft
USUAL_PICKLE_MIN = 10.0
# a gas that takes so much more room is seen
GAS_SEEN = 1.03
FT_PER_PSI, NEAR_PSI = 2000.0, 0.3
USDA, NCHFP, MEMORY = "usda-aib-539", "nchfp", "from-memory"


@dataclass(frozen=True, slots=True)
class Advice:
    """The answer to one question. process: whether the time of the food follows as the last step, where it is known."""

    headline: Words
    steps: tuple[Said, ...] = ()
    because: Words = ""
    cautions: tuple[Caution, ...] = ()
    sources: tuple[str, ...] = (USDA, MEMORY)
    process: bool = False


def _acid(case: Case) -> Advice:
    """Whether acid goes into the jar."""
    food = food_of(case.request)
    if food.kind == "acidify" and food.demands:
        return Advice(say("acid-yes", food=called(case.request)), (food.demands,), say("acid-why"), process=True)
    if food.kind in ("high_acid", "jam"):
        return Advice(say("acid-by-recipe", food=called(case.request)), because=say("acid-sour"), process=True)
    if food.kind in ("pickle", "ferment"):
        return Advice(say("acid-of-pickle", food=called(case.request)), because=say("acid-why"), process=True)
    if food.kind == "low_acid":
        return Advice(say("acid-no-help", food=called(case.request)), because=say("acid-low-why"), process=True)
    return Advice(say("acid-which"), because=say("acid-why"))


def _headspace(case: Case) -> Advice:
    """How much is left free under the lid; the same at every elevation."""
    recipe = recipe_of(case.request)
    if recipe is None:
        return Advice(say("headspace-usual"), because=say("headspace-why"))
    free = tested.headspace(recipe)
    memory = (MEMORY,) if recipe.memory else ()
    return Advice(
        say("headspace", headspace=free, food=called(case.request)),
        (say("headspace-bubbles"),),
        say("headspace-why"),
        sources=(USDA, *memory),
        process=True,
    )


def _clock(case: Case) -> Advice:
    """From when the time counts."""
    if vessel(case.request) != PRESSURE:
        return Advice(
            say("clock-water", boil=temp(case.here.boiling_c), placed=yes(case.request.elevation_m is not None)),
            (say("clock-again"),),
            process=True,
        )
    wanted = pressure.wanted(case)
    headline = say("clock-pressure", wanted=wanted) if wanted else say("clock-pressure-any")
    return Advice(headline, (say("clock-vent"), say("clock-fell")), say("clock-why"), process=True)


def _small_jars(case: Case) -> Advice:
    """Jars smaller than the printed ones."""
    odd = tested.odd_jar(case.request)
    times = printed_here(replace(case.request, subject=None))
    size = tested.takes_of(odd, times) if odd and times else None
    return Advice(say("small-jars", size=size or "any"), because=say("small-jars-why"), process=True)


def _sugar(case: Case) -> Advice:
    """Less sugar, in fruit and in jam."""
    if food_of(case.request).kind == "jam":
        return Advice(say("sugar-jam"), (say("sugar-jam-instead"),), say("sugar-jam-why"))
    if food_of(case.request).kind == "pickle":
        return Advice(say("sugar-pickle"), because=say("sugar-pickle-why"))
    return Advice(say("sugar-fruit"), (say("sugar-fruit-colour"),), say("sugar-fruit-why"), process=True)


def _salt(case: Case) -> Advice:
    """How much salt: the acid of a ferment hangs on it, nothing in other jars does."""
    kind, asks = food_of(case.request).kind, yes(_asks_change(case))
    if kind in ("low_acid", "high_acid", "acidify"):
        return Advice(say("salt-taste"), because=say("salt-taste-why"), process=True)
    if kind == "pickle":
        return Advice(say("salt-pickle", asks=asks), because=say("salt-pickle-why"))
    weight = grams(case.request.quantity)
    weighed = (
        say("salt-weighed", low=mass(weight * 0.02), high=mass(weight * 0.025), of=mass(weight)) if weight else None
    )
    return Advice(together(say("salt-ferment", asks=asks), weighed), (say("salt-weigh"),), say("salt-why"))


def _asks_change(case: Case) -> bool:
    """Whether it is asked if anything changes."""
    return case.request.asked_way is not None or "changes" in case.request.forms


def _vinegar(case: Case) -> Advice:
    """How strong the vinegar is, or whether it changes."""
    first = say("vinegar-same") if _asks_change(case) and case.request.asked_way != "same" else say("vinegar")
    return Advice(first, (say("vinegar-kinds"),), say("vinegar-why"), sources=(USDA, MEMORY), process=True)


def _ferment(case: Case) -> Advice:
    """How warm and how long a ferment stands; of one that is no kraut only what its time goes by."""
    if case.request.dish == "kimchi":
        return Advice(say("ferment-kimchi"), (say("ferment-under"),), say("ferment-other-why"), sources=(MEMORY,))
    if case.request.dish and not VEGETABLES.intersection(case.request.dish.split()):
        return Advice(say("ferment-other", food=case.food), because=say("ferment-other-why"), sources=(MEMORY,))
    return Advice(say("ferment"), (say("ferment-under"), say("ferment-done")), say("ferment-why"))


def _gas(case: Case) -> Advice:
    """What thin air does to the gas of a ferment, and to its pace."""
    ratio = case.there.pressure_pa / case.here.pressure_pa
    headline = say(
        "gas",
        placed=yes(case.request.elevation_m is not None and ratio > GAS_SEEN),
        ratio=number(ratio, 2),
        place=case.place,
        baseline=case.baseline,
    )
    return Advice(headline, (say("gas-burp"), say("gas-warmth")), say("gas-why"), sources=("us-std-atm-1976", MEMORY))


def _gauge_sum(case: Case) -> Advice:
    """What the rule of a pound for each 2,000 ft makes, and what the printed table says instead."""
    table = pressure.low_acid_gauges(case.request)
    if case.request.elevation_m is None or not table.items:
        return Advice(say("sum-any"), because=say("sum-why"))
    base, psi = base_psi(case.request), sum_psi(case.request, case.request.elevation_m)
    headline = say(
        "sum",
        base=number(base, 0),
        more=number(psi - base, 2),
        sum=number(psi, 2),
        place=case.place,
        table=table,
    )
    return Advice(headline, because=say("sum-why"), sources=(USDA,))


def base_psi(request: Request) -> float:
    """The pressure at sea level that a sum begins with [psi]: 10 or 11, as the cook says, else the dial's 11."""
    of = request.quantity
    pounds = of.value if of and of.unit == "lb" else None
    told = pounds if request.gauge_pa is None else request.gauge_pa * PSI_PER_PA
    weighted = request.subject == "weighted_gauge" or "weighted_gauge_canner" in request.equipment
    return 10.0 if weighted or (told is not None and abs(told - 10) < NEAR_PSI) else 11.0


def sum_psi(request: Request, elevation_m: float) -> float:
    """The base and a pound for each 2,000 ft [psi].

    >>> sum_psi(Request(topic="preserve"), 2286.0)
    14.75
    """
    return round(base_psi(request) + elevation_m * FT_PER_M / FT_PER_PSI, 2)


def _time_or_pressure(case: Case) -> Advice:
    """Under pressure the minutes stay and the pressure goes up; in boiling water the minutes go up."""
    wanted = pressure.low_acid_gauges(case.request) if case.request.elevation_m is not None else None
    if "why" in case.request.forms:
        return Advice(say("why-either"), because=say("why-either-because"), process=True)
    if wanted is None or not wanted.items:
        return Advice(say("which-changes"), because=say("which-changes-why"), process=True)
    return Advice(
        say("which-changes-here", wanted=wanted, place=case.place), because=say("which-changes-why"), process=True
    )


def _fell(case: Case) -> Advice:
    """Pressure that falls under the mark in the middle: the whole time again."""
    wanted = pressure.wanted(case)
    return Advice(
        say("fell", wanted=wanted) if wanted else say("fell-any"),
        (say("fell-steady"), say("fell-late")),
        say("fell-why"),
    )


def _plain(advice: Advice) -> Callable[[Case], Advice]:
    return lambda _case: advice


def _vinegar_pickles(case: Case) -> Advice:
    """Whether pickles in vinegar must be processed: for a shelf, by a tested recipe; in the cold they need none."""
    height = case.request.elevation_m
    added = process_times.added(process_times.SHORT, height) if height is not None else None
    shelf = say(
        "pickles-shelf",
        placed=yes(added is not None),
        base=number(USUAL_PICKLE_MIN),
        due=number(USUAL_PICKLE_MIN + (added.most_min if added else 0.0)),
        place=case.place,
    )
    return Advice(
        say("pickles", food=called(case.request)),
        (say("pickles-cold"), shelf, say("pickles-discard")),
        say("pickles-why"),
    )


ADVICE: dict[str, Callable[[Case], Advice]] = {
    "acid_needed": _acid,
    "headspace_asked": _headspace,
    "clock_start": _clock,
    "small_jars": _small_jars,
    "less_sugar": _sugar,
    "salt_amount": _salt,
    "vinegar_strength": _vinegar,
    "ferment_gas": _gas,
    "gauge_sum": _gauge_sum,
    "pressure_fell": _fell,
    "time_or_pressure": _time_or_pressure,
    "fermenting": _ferment,
    "vinegar_pickles": _vinegar_pickles,
    "fridge_pickles": _plain(Advice(say("fridge"), (say("fridge-keep"),), say("fridge-why"), sources=(NCHFP, MEMORY))),
    "siphoning": _plain(
        Advice(say("siphon"), (say("siphon-keep"), say("siphon-next")), say("siphon-why"), sources=(NCHFP, MEMORY))
    ),
    "sealed_batch": _plain(Advice(say("sealed"), sources=(NCHFP, MEMORY))),
    "keeping": _plain(Advice(say("keeping"), (say("keeping-opened"),), say("keeping-why"), sources=(NCHFP, MEMORY))),
    "curing": _plain(Advice(say("curing"), (say("curing-ask"),), say("curing-why"), sources=(NCHFP, MEMORY))),
}


@rule("preserve.advice", USDA, NCHFP, MEMORY)
def advice(case: Case) -> Part | None:
    """What is asked around jars: the answer first, and the printed time of the food after it."""
    find = ADVICE.get(case.request.subject or "")
    if find is None:
        return None
    found = find(case)
    last = then_process(case) if found.process else None
    return Part(
        headline=found.headline,
        steps=(*found.steps, *((last,) if last else ())),
        because=found.because,
        cautions=found.cautions,
        sources=found.sources,
    )


def then_process(case: Case) -> Said | None:
    """How long the jars of the food are processed here, where the food and the elevation are known."""
    request = replace(case.request, subject=_canner_of(case), time_min=None, time_high_min=None)
    if request.elevation_m is None or refusal(request) or not (times := printed_here(request)):
        return None
    plain = replace(case, request=request)
    if vessel(request) == PRESSURE:
        wanted = pressure.wanted(plain)
        return say("then-pressure", each=tested.each(times), wanted=wanted, place=case.place) if wanted else None
    return say("then-water", each=tested.each(times), place=case.place)


def _canner_of(case: Case) -> str | None:
    """A low-acid food goes under pressure, and so does any where the cook has named a gauge."""
    return "pressure_canning" if vessel(case.request) == PRESSURE else None


@rule("preserve.over_boiled", USDA, "nchfp-jellied-problems", MEMORY)
def over_boiled(case: Case) -> Part | None:
    """Jam or jelly that was boiled too far: how far, what can be saved, and where to stop here."""
    if case.request.subject != "over_boiled_jam":
        return None
    from rules.preserving.gel import RISE_K

    here_c, told_c = case.here.boiling_c + RISE_K, case.request.temperature_c
    far = told_c is not None and told_c > here_c + 1
    headline = (
        say("over-boiled-by", told=temp(told_c), by=temp_drop(told_c - here_c), gel=temp(here_c), place=case.place)
        if far and told_c is not None
        else say("over-boiled", gel=temp(here_c), place=case.place)
    )
    return Part(
        headline=headline,
        steps=(say("over-boiled-save"), say("over-boiled-burnt"), say("over-boiled-next")),
        because=say("over-boiled-why", boil=temp(case.here.boiling_c)),
    )
