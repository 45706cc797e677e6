"""Doneness: what to check, and the reading of the centre. Safe temperatures never move; readings near the boil do."""

from __future__ import annotations

from rules import safety
from rules.book import Case, Part, celsius, rule
from rules.foods import dishes
from rules.heat import done_readings
from rules.model import Caution, Figure
from rules.physics.units import to_c
from rules.safety import holding_limits, lethality
from rules.safety.holding_limits import placed
from rules.say import exact_duration

TENDER_C = to_c(203)
TENDER_CLASSES = ("collagen_cut", "mixed_stew")
SIMMER_BELOW_K = 3.0
# hotter is no reading of meat, but of an oven
READING_AT_MOST_C = to_c(210)


@rule("doneness.judged", "fda-food-code-2022", "usda-fsis-safe-temperatures")
def judged(case: Case) -> Part | None:
    """Whether the reading that the cook has in the centre is safe: at once, after a time held there, or never."""
    kind, asked_c = lethality.kind_judged(case.request.dish, case.dish_class), case.request.temperature_c
    if kind is None or asked_c is None or not 0 < asked_c <= READING_AT_MOST_C:
        return None
    found = lethality.judge(kind, asked_c, case.request.time_min)
    food = case.request.dish or lethality.kind(kind).name
    return Part(
        headline=_judged(case, found, case.say.temp(asked_c), food),
        cautions=()
        if found.needs_min is not None
        else (
            Caution("stop", f"{case.say.temp(asked_c)} in the centre: do not serve it, cook it on.", (found.source,)),
        ),
        because="The printed times are for the coldest point, by a checked thermometer, and nothing is read between "
        "their rows.",
        sources=(found.source,),
    )


def _judged(case: Case, found: lethality.Judgement, asked: str, food: str) -> str:
    charted = safety.row_of(lethality.kind(lethality.kind_judged(case.request.dish, case.dish_class) or "").chart)
    at_once = f"{case.say.temp(charted.temp_c)}{f' and {charted.rest_min:.0f} min of rest' if charted.rest_min else ''}"
    if found.needs_min is None:
        return (
            f"No. {asked} in the centre is not safe for {food} after any time: take it to {at_once}, at any elevation."
        )
    if found.safe:
        return f"Yes. {asked} in the centre is safe for {food}, at any elevation."
    held = exact_duration(found.needs_min)
    if case.request.time_min is not None:
        return f"No. At {asked} in the centre {food} must be held {held}, at any elevation, or taken to {at_once}."
    if charted.rest_min == found.needs_min:
        return f"Yes, after a rest of {held}: {asked} in the centre is safe for {food}, at any elevation."
    return f"Not at once: {asked} in the centre is safe for {food} once held there {held}, or at {at_once}, anywhere."


@rule("doneness.safe", "usda-fsis-safe-temperatures")
def safe(case: Case) -> Part | None:
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


def _no_row(case: Case) -> Part | None:
    if done_readings.reading(case.request.dish, case.dish_class):
        return None
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
    return Part(steps=(f"Done means: {dishes.classes()[case.dish_class].check_for(case.request.method)}",))


@rule("doneness.core", "common-practice", "iapws-r7-97")
def core_reading(case: Case) -> Part | None:
    """The reading of the centre of breads, cakes, potatoes, custards and sugar, and what elevation does to it."""
    of = done_readings.reading(case.request.dish, case.dish_class)
    if of is None:
        return None
    low, high = of.here(case.here, case.sea)
    told, sea = case.say.temp_span(low, high), case.say.temp_span(of.low_c, of.high_c)
    food = sentence(case.request.dish or dishes.classes()[case.dish_class].label)
    where = f" at {case.place}" if placed(case.request) else ""
    against = f", against {sea} at sea level" if told != sea else ", as at sea level" if where else " at any elevation"
    if of.bound in ("boil", "above") and not where:
        against = " at sea level"
    return Part(
        figures=(
            Figure("core_temperature", "Reading of the centre", round((low + high) / 2, 2), "degC", round(low, 2),
                   round(high, 2), round((of.low_c + of.high_c) / 2, 2)),
        ),
        headline=""
        if safety.safe_temperature(case.request.dish, case.dish_class)
        else f"{food}: done at {told}{' in the centre' if of.bound in ('boil', 'set') else ''}{where}{against}.",
        because=_bound_why(case, of),
    )  # fmt: skip


def _bound_why(case: Case, of: done_readings.Reading) -> str:
    boil, drop = case.say.temp(case.here.boiling_c), case.say.temp_drop(abs(case.sea.boiling_c - case.here.boiling_c))
    if of.bound == "dry":
        return "With the water gone, sugar browns by its own chemistry, at the same temperature everywhere."
    if of.bound == "set":
        return "It sets by its own proteins, at the same temperature everywhere, well under any kitchen's boil."
    if not placed(case.request):
        return "That reading hangs on the boiling point: say where the kitchen is, and it is worked out."
    if of.bound == "above":
        return (
            f"Sugar boils over the boil of water by a fixed step for each strength, so every stage falls with it: take "
            f"{drop} off the recipe's reading here. Ask for one stage to have it exactly."
        )
    return (
        f"The crumb is wet, and its water boils at {boil} here, so the centre stops a little under that however long "
        "it stays in. A recipe's reading near the sea-level boil is never reached here: waiting dries it out. "
        "Go by colour, a hollow sound or a clean pick as well."
        if case.here.boiling_c < of.high_c + done_readings.UNDER_BOIL_K
        else f"The centre stays under the boil, {boil} here, which leaves the usual reading within reach."
    )


@rule("doneness.same_everywhere", "fda-food-code-2022", "iapws-r7-97")
def same_everywhere(case: Case) -> Part | None:
    """Why safe temperatures do not move with elevation; only where one was given."""
    if safety.safe_temperature(case.request.dish, case.dish_class) is None and case.dish_class != "general":
        return None
    return holding_limits.same_everywhere(case)


@rule("doneness.whole_meat", "usda-fsis-safe-temperatures", "common-practice")
def whole_meat(case: Case) -> Part | None:
    """Meat and fish by any dry heat or in a pot: the reading is the same, the way there is slower."""
    if case.dish_class not in ("tender_cut", "ground_meat", "poultry_pieces", "whole_bird", "sausage", "fish"):
        return None
    slower = "; where the boil is lower a wet method only gets there later" if placed(case.request) else ""
    return Part(because=f"Meat and fish are done by their own proteins, whatever the air weighs{slower}.")


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
    smoker = (
        f" A smoker's air is hotter than {case.say.temp(TENDER_C)}, so bark and drier parts pass it there; but wet "
        f"meat stands near the boil, {case.say.temp(case.here.boiling_c)}, in a smoker too."
        if placed(case.request) and case.here.boiling_c < TENDER_C
        else ""
    )
    return Part(
        figures=(celsius("tender_temperature", "Usual reading when a tough cut is tender", TENDER_C, TENDER_C),),
        because=f"A tough cut is safe long before it is tender; cooks look for about {case.say.temp(TENDER_C)}. "
        f"{reach}{smoker}",
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


RULES = (judged, safe, core_reading, check, same_everywhere, tender, whole_meat)
