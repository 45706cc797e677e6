"""Doneness: what to check, and the safe temperature of the centre, neither of which moves with elevation."""

from __future__ import annotations

from rules import dishes, holding, safety
from rules.book import Part, rule
from rules.case import Case, celsius
from rules.holding import placed
from rules.model import Caution, Figure

TENDER_C = 95.0
TENDER_CLASSES = ("collagen_cut", "mixed_stew")
SIMMER_BELOW_K = 3.0


@rule("doneness.safe", "usda-fsis-safe-temperatures")
def safe(case: Case) -> Part:
    """The safe minimum temperature for this food, or the whole chart where no food is named."""
    row = safety.safe_temperature(case.request.dish, case.dish_class)
    at = f" at {case.place}" if placed(case.request) else ""
    if row is None:
        return _chart(case, at) if case.dish_class == "general" else _no_row(case)
    rest = f", then rest {row.rest_min:.0f} min" if row.rest_min else ""
    figures = [celsius("safe_temperature", "Safe at the centre", row.temp_c, row.temp_c)]
    if row.rest_min:
        figures.append(Figure("rest_time", "Rest", row.rest_min, "min"))
    food = case.request.dish or dishes.classes()[case.dish_class].label
    return Part(
        figures=tuple(figures),
        headline=f"{sentence(food)}: safe at {case.say.temp(row.temp_c)} in the centre{rest}, the "
        f"same{at or ' at any elevation'} as at sea level.",
        steps=("Put the thermometer in the thickest part, clear of bone, and check in two places.",),
        cautions=(safety.caution(case, row),),
    )


def sentence(words: str) -> str:
    """The words with their first letter raised.

    >>> sentence("fish with fins")
    'Fish with fins'
    """
    return words[:1].upper() + words[1:]


def _chart(case: Case, at: str) -> Part:
    rows = safety.chart()
    return Part(
        figures=tuple(
            celsius(f"safe_{row.kind}_temperature", sentence(row.food), row.temp_c, row.temp_c) for row in rows
        ),
        headline=f"Safe temperatures in the centre of the food are the same{at or ' at any elevation'} as at sea "
        "level.",
        steps=("Put the thermometer in the thickest part, clear of bone, and check in two places.",),
    )


def _no_row(case: Case) -> Part:
    food = case.request.dish or "this"
    return Part(
        headline=f"For {food} there is no safe temperature in the chart; go by the signs below, which are the same at "
        "any elevation."
    )


@rule("doneness.check", "common-practice")
def check(case: Case) -> Part | None:
    """What shows that it is done."""
    if case.dish_class == "general":
        return None
    return Part(steps=(f"Done means: {dishes.classes()[case.dish_class].check}",))


@rule("doneness.tender", "common-practice", "iapws-r7-97")
def tender(case: Case) -> Part | None:
    """The tender temperature of a tough cut against the boil: above some elevation the pot cannot reach it."""
    if case.dish_class not in TENDER_CLASSES:
        return None
    pot_c = case.here.boiling_c - SIMMER_BELOW_K
    out_of_reach = placed(case.request) and pot_c < TENDER_C
    reach = (
        f"In a pot at {case.place} the liquid stands at {case.say.temp(pot_c)}, so the meat never shows that reading: "
        "it gets just as tender lower down, only later. Go by the fork."
        if out_of_reach
        else "Time at that heat does the work, so go by the fork."
    )
    return Part(
        figures=(celsius("tender_temperature", "Usual reading when a tough cut is tender", TENDER_C, TENDER_C),),
        because=f"A tough cut is safe long before it is tender; cooks look for about {case.say.temp(TENDER_C)}. "
        f"{reach}",
        cautions=(
            Caution(
                "note",
                f"Do not wait for {case.say.temp(TENDER_C)} in a braise here: an open or covered pot cannot reach it.",
                ("common-practice",),
            ),
        )
        if out_of_reach
        else (),
    )


NEEDS: tuple[str, ...] = ()
RULES = (safe, check, holding.same_everywhere, tender)
