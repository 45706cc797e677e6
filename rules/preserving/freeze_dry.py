"""Preserving without jars: blanching for the freezer, and drying."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.errors import within
from rules.model import Caution, Figure
from rules.physics.units import FT_PER_M, round_to, to_c
from rules.preserving.gate import is_drying
from rules.said import duration, duration_span, sentences, temp

BLANCH_FROM_FT, BLANCH_MORE_MIN = 5000, 1.0
PER_1000_FT_MIN, COUNTED_FROM_FT = 0.5, 2000
LONGEST_BLANCH_MIN = 30.0
say = sentences("preserving/freeze_dry")
DRY_C, MEAT_FIRST_C, POULTRY_FIRST_C = to_c(140), to_c(160), to_c(165)


def blanch_more_min(elevation_m: float) -> tuple[float, float]:
    """What two printed rules add to blanching for the freezer [min], less and more.

    One adds a minute from 5,000 ft up; the other half a minute for each 1,000 ft above 2,000 ft.

    source: csu-high-altitude-food-prep; the second rule common-practice

    >>> blanch_more_min(1524), blanch_more_min(0)
    ((1.0, 1.5), (0.0, 0.0))
    """
    feet = elevation_m * FT_PER_M
    step = BLANCH_MORE_MIN if feet >= BLANCH_FROM_FT - 1e-6 else 0.0
    slope = max(0.0, round_to(PER_1000_FT_MIN * (feet - COUNTED_FROM_FT) / 1000, 0.5))
    return min(step, slope), max(step, slope)


@rule("preserve.blanching", "csu-high-altitude-food-prep", "common-practice")
def blanching(case: Case) -> Part | None:
    """How much longer to blanch for the freezer."""
    if case.request.subject != "blanching":
        return None
    low, high = blanch_more_min(case.here.elevation_m)
    base = case.request.time_min
    figures = [Figure("blanch_more", say("blanch-more-label"), high, "min", low, high)]
    if base is not None:
        within("blanching time", base, 0.25, LONGEST_BLANCH_MIN, "min", "Give the time that the recipe prints.")
        figures.insert(0, Figure("blanch_time", say("blanch-label"), base + high, "min", base + low, base + high))
    return Part(
        headline=say(
            "blanch",
            food=case.request.dish or say("vegetables"),
            way="longer" if low else "up_to" if high else "same",
            span=duration_span(low, high),
            most=duration(high),
            place=case.place,
        ),
        figures=tuple(figures),
        steps=(say("blanch-in"), say("blanch-cool")),
        because=say("blanch-because", boil=temp(case.here.boiling_c)),
    )


@rule("preserve.drying", "common-practice", "from-memory")
def drying(case: Case) -> Part | None:
    """Drying fruit, vegetables and meat: the temperatures stay, the time shortens."""
    if not is_drying(case.request):
        return None
    jerky = say("jerky", meat=temp(MEAT_FIRST_C), poultry=temp(POULTRY_FIRST_C))
    return Part(
        headline=say("dry", temperature=temp(DRY_C)),
        figures=(
            celsius("drying_temperature", say("dry-label"), DRY_C, DRY_C),
            celsius("meat_first_temperature", say("meat-label"), MEAT_FIRST_C, MEAT_FIRST_C),
            celsius("poultry_first_temperature", say("poultry-label"), POULTRY_FIRST_C, POULTRY_FIRST_C),
        ),
        steps=(say("dry-turn"), say("dry-keep")),
        because=say("dry-because"),
        cautions=(Caution("warn", jerky, ("from-memory",)),),
    )
