"""Curd for fresh cheese: by heat and acid near the boil, or by rennet far under it."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.model import Caution, Figure
from rules.physics.units import to_c
from rules.safety.holding_limits import placed
from rules.safety.local_code import local_code
from rules.said import sentences, temp, temp_span, together

ACID_C = (to_c(185), to_c(195))
RENNET_C = (to_c(86), to_c(104))
STRETCH_C = (to_c(170), to_c(185))
UNDER_BOIL_K = 2.0
say = sentences("safety/subjects/cheese_curd")


@rule("safety.cheese_curd", "common-practice")
def curd(case: Case) -> Part | None:
    """Where curd forms, and the ceiling that the boil puts on it."""
    if "stretched_curd" in case.traits:
        return None
    low, high = (min(usual, case.here.boiling_c - UNDER_BOIL_K) for usual in ACID_C)
    pressed = placed(case.request) and high < ACID_C[1]
    reach = say("pressed", boil=temp(case.here.boiling_c), place=case.place) if pressed else None
    return Part(
        headline=say("headline", acid=temp_span(low, high), rennet=temp_span(*RENNET_C)),
        figures=(
            Figure("acid_curd_temperature", say("acid-label"), round(low, 2), "degC", round(low, 2), round(high, 2)),
            celsius("rennet_temperature", say("rennet-label"), RENNET_C[0], RENNET_C[0]),
        ),
        steps=(say("drain"),),
        because=together(say("because"), reach),
    )


@rule("safety.stretched_curd", "common-practice")
def stretched(case: Case) -> Part | None:
    """Curd that is stretched in hot water."""
    if "stretched_curd" not in case.traits:
        return None
    return Part(
        headline=say("stretched", food=case.food, rennet=temp_span(*RENNET_C), water=temp_span(*STRETCH_C)),
        figures=(
            celsius("rennet_temperature", say("rennet-label"), RENNET_C[0], RENNET_C[0]),
            Figure("stretch_temperature", say("stretch-label"), round(sum(STRETCH_C) / 2, 2), "degC",
                   *(round(t, 2) for t in STRETCH_C)),
        ),
        steps=(say("stretch-first"),),
        because=say("stretched-because"),
    )  # fmt: skip


@rule("safety.raw_milk_cheese", "common-practice")
def raw_milk(case: Case) -> Part:
    """Fresh cheese starts from pasteurised milk."""
    return Part(cautions=(Caution("warn", say("raw-milk"), ("common-practice",)),))


NEEDS: tuple[str, ...] = ()
RULES = (curd, stretched, raw_milk, local_code)
