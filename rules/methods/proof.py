"""Proof: dough rises faster in thin air. It is stopped by its size, not by the clock."""

from __future__ import annotations

from rules.baking.yeast import COLD_FROM_MIN, proof_ratio
from rules.book import Case, Part, rule
from rules.heat.cook_times import stated_span, time_figures
from rules.heat.wet import pace_words
from rules.model import Caution, Figure
from rules.physics.units import FT_PER_M
from rules.say import duration_span, number

USUAL_MIN = (60.0, 90.0)
WARM_C = (24.0, 27.0)
ADVICE_FROM_FT, TWO_RISES_FROM_FT = 3000.0, 5000.0
SOURDOUGH_WORDS = ("sourdough", "levain", "starter")


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
    food = case.request.dish or "dough"
    here, there = (duration_span(f.low or f.value, f.high or f.value) for f in figures)
    usual = "" if stated else "the usual "
    if cold:
        head = f"A rise of {there} in the cold stays as it is at {case.place}; watch the size."
    elif case.moved:
        head = f"Let {food} rise until doubled, {here} at {case.place} against {usual}{there} at {case.baseline}."
    else:
        head = f"Let {food} rise until doubled, {here} at {case.place}, as at {case.baseline}."
    return Part(
        figures=(
            *figures,
            Figure("gas_volume", "Room the same gas takes up", round(swell(case), 2), "factor", sea_level=1.0)
            if not case.there.elevation_m
            else Figure("gas_volume", f"Room the same gas takes up, against {case.baseline}", round(swell(case), 2),
                        "factor"),
        ),
        headline=head if case.request.topic == "time" else "",
        because=_why(case, low, cold=cold),
        maths=f"V here / V there = {round(case.there.pressure_pa):,} / {round(case.here.pressure_pa):,} = "
        f"{number(swell(case), 3)}, for dry gas at the same warmth.",
    )  # fmt: skip


def _why(case: Case, gas_only: float, *, cold: bool) -> str:
    if not case.moved:
        return f"The air presses as at {case.baseline}, so the rise keeps its pace."
    if cold:
        return "In the cold the yeast sets the pace for hours, and a little more swelling hardly shows."
    if swell(case) < 1:
        return f"The same gas takes only {number(swell(case))} times the room here, so dough rises more slowly."
    return (
        f"Yeast works at the same pace, but its gas takes {number(swell(case))} times the room it takes at "
        f"{case.baseline}. With the yeast as written, doubling takes {pace_words(gas_only)}; with less yeast, or in "
        "a cooler place, the usual time comes back."
    )


@rule("proof.steps", "uwyo-altitude-adjusters", "usu-faq-204")
def steps(case: Case) -> Part:
    """Judge by size; punch down; less yeast or a cold rest."""
    feet = case.here.elevation_m * FT_PER_M
    told = [
        "Let it rise in a straight-sided tub with the start marked, and stop when it has just doubled: a dent of the "
        "finger stays."
    ]
    if feet >= TWO_RISES_FROM_FT:
        told.append("Punch it down and let it double again before shaping, to give back the time for flavour.")
    if feet >= ADVICE_FROM_FT:
        told.append(
            "Or use less yeast, or give it a night in the refrigerator. Keep it covered: a skin forms fast in dry air."
        )
    return Part(steps=tuple(told))


@rule("proof.warmth", "common-practice")
def warmth(case: Case) -> Part:
    """Where dough is proofed: the same warmth as anywhere."""
    low, high = WARM_C
    told = case.say.temp_span(low, high)
    return Part(
        figures=(
            Figure("proof_temperature", "Proof at", (low + high) / 2, "degC", low, high, (low + high) / 2),
        ),
        headline=f"Proof dough at {told} at {case.place}, as anywhere; cooler gives back the time it loses."
        if case.request.topic == "temperature"
        else "",
    )  # fmt: skip


@rule("proof.sourdough", "common-practice")
def sourdough(case: Case) -> Part | None:
    """A natural leaven."""
    if not any(word in (case.request.dish or "") for word in SOURDOUGH_WORDS):
        return None
    return Part(
        steps=("For sourdough stop the bulk rise at half to three quarters more, and finish it cold.",),
        because="A natural leaven takes hours, so its flavour suffers less; its dough overproofs all the same.",
    )


@rule("proof.over", "common-practice")
def over(case: Case) -> Part | None:
    """What an overproofed dough does."""
    if case.here.elevation_m * FT_PER_M < ADVICE_FROM_FT:
        return None
    text = "Dough left to the recipe's clock here overproofs and falls in the oven; knead it down and shape it again."
    return Part(cautions=(Caution("note", text, ("common-practice",)),))


NEEDS = ("elevation",)
RULES = (time, steps, sourdough, warmth, over)
