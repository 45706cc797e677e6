"""Proof: dough rises faster in thin air. It is stopped by its size, not by the clock."""

from __future__ import annotations

from rules.baking.yeast import COLD_FROM_MIN, proof_ratio
from rules.book import Case, Part, rule
from rules.heat.cook_times import stated_span, time_figures
from rules.heat.wet import pace_words
from rules.model import Caution, Figure
from rules.physics.units import FT_PER_M
from rules.said import Said, duration_span, number, sentences, temp_span

say = sentences("methods/proof")

USUAL_MIN = (60.0, 90.0)
WARM_C = (24.0, 27.0)
ADVICE_FROM_FT, TWO_RISES_FROM_FT = 3000.0, 5000.0


def swell(case: Case) -> float:
    """Room that the same gas takes here, as a multiple of the baseline (Boyle)."""
    return case.there.pressure_pa / case.here.pressure_pa


def ratios(case: Case) -> tuple[float, float, float]:
    """Rising time here over the baseline's: by gas alone, likely, and with the yeast cut back.

    source: computed, uwyo-altitude-adjusters (the direction)
    """
    from rules.baking.batch import Batch
    from rules.recipe import Recipe

    span = proof_ratio(Batch.of(Recipe(), "yeast_bread", case.there.elevation_m, case.here.elevation_m))
    return span.low, span.value, span.high


@rule("proof.time", "uwyo-altitude-adjusters", "us-std-atm-1976", "common-practice")
def time(case: Case) -> Part:
    """How long a dough takes to double here."""
    stated = stated_span(case)
    base = stated or USUAL_MIN
    low, likely, high = ratios(case)
    cold = bool(stated) and base[0] >= COLD_FROM_MIN
    if cold:
        low = likely = high = 1.0
    mid = sum(base) / 2
    figures = time_figures(case, base, (base[0] * low, mid * likely, base[1] * high))
    return Part(
        figures=(*figures, _room_for_gas(case)),
        headline=_headline(case, figures, cold=cold) if case.request.topic == "time" else "",
        because=_why(case, low, cold=cold),
        maths=say(
            "maths",
            there=number(case.there.pressure_pa, 0),
            here=number(case.here.pressure_pa, 0),
            swell=number(swell(case), 3),
        ),
    )


def _room_for_gas(case: Case) -> Figure:
    room = round(swell(case), 2)
    if case.there.elevation_m:
        return Figure("gas_volume", say("gas-against", baseline=case.baseline), room, "factor")
    return Figure("gas_volume", say("gas"), room, "factor", sea_level=1.0)


def _headline(case: Case, figures: tuple[Figure, Figure], *, cold: bool) -> Said:
    here, there = (duration_span(f.low or f.value, f.high or f.value) for f in figures)
    if cold:
        return say("cold-rise", time=there, place=case.place)
    return say(
        "headline",
        food=case.request.dish or say("dough"),
        here=here,
        place=case.place,
        against=("usual" if case.request.time_min is None else "given") if case.moved else "same",
        there=there,
        baseline=case.baseline,
    )


def _why(case: Case, gas_only: float, *, cold: bool) -> Said:
    if not case.moved:
        return say("presses-alike", baseline=case.baseline)
    if cold:
        return say("cold-because")
    if swell(case) < 1:
        return say("slower", swell=number(swell(case)))
    return say("because", swell=number(swell(case)), baseline=case.baseline, pace=pace_words(gas_only))


@rule("proof.steps", "uwyo-altitude-adjusters", "usu-faq-204")
def steps(case: Case) -> Part:
    """Judge by size; punch down; less yeast or a cold rest."""
    feet = case.here.elevation_m * FT_PER_M
    twice = (say("two-rises"),) if feet >= TWO_RISES_FROM_FT else ()
    slowed = (say("slow-it"),) if feet >= ADVICE_FROM_FT else ()
    return Part(steps=(say("marked-tub"), *twice, *slowed))


@rule("proof.warmth", "common-practice")
def warmth(case: Case) -> Part:
    """Where dough is proofed: the same warmth as anywhere."""
    low, high = WARM_C
    asked = case.request.topic == "temperature"
    return Part(
        figures=(Figure("proof_temperature", say("warmth"), (low + high) / 2, "degC", low, high, (low + high) / 2),),
        headline=say("warmth-headline", warmth=temp_span(low, high), place=case.place) if asked else "",
    )


@rule("proof.sourdough", "common-practice")
def sourdough(case: Case) -> Part | None:
    """A natural leaven."""
    if "sourdough" not in case.traits:
        return None
    return Part(steps=(say("sourdough-step"),), because=say("sourdough-because"))


@rule("proof.over", "common-practice")
def over(case: Case) -> Part | None:
    """What an overproofed dough does."""
    if case.here.elevation_m * FT_PER_M < ADVICE_FROM_FT:
        return None
    return Part(cautions=(Caution("note", say("overproofed"), ("common-practice",)),))


NEEDS = ("elevation",)
RULES = (time, steps, sourdough, warmth, over)
