"""Curd for fresh cheese: by heat and acid near the boil, or by rennet far under it."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.model import Caution, Figure
from rules.physics.units import to_c
from rules.safety.holding_limits import placed
from rules.safety.local_code import local_code

ACID_C = (to_c(185), to_c(195))
RENNET_C = (to_c(86), to_c(104))
STRETCH_C = (to_c(170), to_c(185))
UNDER_BOIL_K = 2.0


@rule("safety.cheese_curd", "common-practice")
def curd(case: Case) -> Part | None:
    """Where curd forms, and the ceiling that the boil puts on it."""
    if "stretched_curd" in case.traits:
        return None
    low = ACID_C[0]
    high = min(ACID_C[1], case.here.boiling_c - UNDER_BOIL_K)
    pressed = placed(case.request) and high < ACID_C[1]
    reach = (
        f" Water boils at {case.say.temp(case.here.boiling_c)} at {case.place}, so the usual top of the range is at "
        "the boil: stay under it and give it a few minutes more."
        if pressed
        else ""
    )
    return Part(
        headline=f"For ricotta or paneer heat the milk to {case.say.temp_span(low, high)} and add the acid; rennet "
        f"curd sets at {case.say.temp_span(*RENNET_C)} at every elevation.",
        figures=(
            Figure("acid_curd_temperature", "Acid curd at", round(low, 2), "degC", round(low, 2), round(high, 2)),
            celsius("rennet_temperature", "Rennet curd from", RENNET_C[0], RENNET_C[0]),
        ),
        steps=(
            "Take it off the heat as the curd parts from clear whey, rest it 10 min, drain it cold and refrigerate.",
        ),
        because=f"Whey protein and casein clot by temperature and acid; the boil only sets the ceiling.{reach}",
    )


@rule("safety.stretched_curd", "common-practice")
def stretched(case: Case) -> Part | None:
    """Curd that is stretched in hot water."""
    if "stretched_curd" not in case.traits:
        return None
    return Part(
        headline=f"For {case.request.dish} set the rennet curd at {case.say.temp_span(*RENNET_C)} and stretch it in "
        f"water of {case.say.temp_span(*STRETCH_C)}, the same at every elevation.",
        figures=(
            celsius("rennet_temperature", "Rennet curd from", RENNET_C[0], RENNET_C[0]),
            Figure("stretch_temperature", "Stretch in water at", round(sum(STRETCH_C) / 2, 2), "degC",
                   *(round(t, 2) for t in STRETCH_C)),
        ),
        steps=("Stretch a small piece first: if it tears, the curd wants more time to sour, not hotter water.",),
        because="Rennet sets by temperature and the curd stretches by its acid and its heat; both lie under the boil "
        "of any kitchen.",
    )  # fmt: skip


@rule("safety.raw_milk_cheese", "common-practice")
def raw_milk(case: Case) -> Part:
    """Fresh cheese starts from pasteurised milk."""
    text = "Use pasteurised milk: fresh cheese of raw milk is a known source of illness, worst for the pregnant."
    return Part(cautions=(Caution("warn", text, ("common-practice",)),))


NEEDS: tuple[str, ...] = ()
RULES = (curd, stretched, raw_milk, local_code)
