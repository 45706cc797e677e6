"""Curd for fresh cheese: by heat and acid near the boil, or by rennet far under it."""

from __future__ import annotations

from rules.book import Part, rule
from rules.case import Case, celsius
from rules.holding import placed
from rules.local_code import local_code
from rules.model import Caution, Figure
from rules.say import to_c

ACID_C = (to_c(185), to_c(195))
RENNET_C = (to_c(86), to_c(104))
UNDER_BOIL_K = 2.0


@rule("safety.cheese_curd", "common-practice")
def curd(case: Case) -> Part:
    """Where curd forms, and the ceiling that the boil puts on it."""
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
        cautions=(
            Caution(
                "warn",
                "Use pasteurised milk: fresh cheese of raw milk is a known source of illness, worst for the pregnant.",
                ("common-practice",),
            ),
        ),
    )


NEEDS: tuple[str, ...] = ()
RULES = (curd, local_code)
