"""Preserving without jars: blanching for the freezer, and drying."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.errors import within
from rules.model import Caution, Figure
from rules.physics.units import FT_PER_M, round_to, to_c
from rules.preserving.gate import is_drying
from rules.say import duration, duration_span

BLANCH_FROM_FT, BLANCH_MORE_MIN = 5000, 1.0
PER_1000_FT_MIN, COUNTED_FROM_FT = 0.5, 2000
LONGEST_BLANCH_MIN = 30.0
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
    figures = [Figure("blanch_more", "More for the elevation", high, "min", low, high)]
    if base is not None:
        within("blanching time", base, 0.25, LONGEST_BLANCH_MIN, "min", "Give the time that the recipe prints.")
        figures.insert(0, Figure("blanch_time", "Blanch for", base + high, "min", base + low, base + high))
    what = case.request.dish or "vegetables"
    more = f"{duration_span(low, high)} longer" if low else f"up to {duration(high)} longer" if high else "no longer"
    return Part(
        headline=f"Blanch {what} {more} at {case.place} than the recipe prints.",
        figures=tuple(figures),
        steps=(
            "Plenty of boiling water, small batches, lid on; count from when it boils again.",
            "Then straight into ice water for as long again, drain well, and freeze.",
        ),
        because=f"Blanching stops enzymes, and water boils at {case.say.temp(case.here.boiling_c)} here. Printed rules "
        "differ: a minute more from 5,000 ft up, or half a minute for each 1,000 ft above 2,000 ft.",
    )


@rule("preserve.drying", "common-practice", "from-memory")
def drying(case: Case) -> Part | None:
    """Drying fruit, vegetables and meat: the temperatures stay, the time shortens."""
    if not is_drying(case.request):
        return None
    dry, meat, poultry = (case.say.temp(temp_c) for temp_c in (DRY_C, MEAT_FIRST_C, POULTRY_FIRST_C))
    return Part(
        headline=f"Dry fruit and vegetables at about {dry} here as anywhere, and start checking early: thin, dry air "
        "takes "
        "water off sooner.",
        figures=(
            celsius("drying_temperature", "Dry at", DRY_C, DRY_C),
            celsius("meat_first_temperature", "Meat first to", MEAT_FIRST_C, MEAT_FIRST_C),
            celsius("poultry_first_temperature", "Poultry first to", POULTRY_FIRST_C, POULTRY_FIRST_C),
        ),
        steps=(
            "Turn and rotate the trays; if the outside hardens over a wet centre, go cooler and slower.",
            "Cool it, then keep it loose in a closed jar for a week, shaking daily; moisture on the glass means dry it "
            "more.",
        ),
        because="In thin air water leaves faster and the wet surface stays cooler, so the surface may dry ahead of the "
        "centre.",
        cautions=(
            Caution(
                "warn",
                f"Jerky: heat the meat to {meat}, poultry to {poultry}, with moist heat before it is dried. Drying air "
                "alone cools wet meat and does not kill germs, and less so here. Follow a tested recipe.",
                ("from-memory",),
            ),
        ),
    )
