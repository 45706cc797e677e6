"""Microwave: the oven's power is the same, the food's own boil is not. Published advice parts foods in two."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.foods import dishes, popcorn
from rules.heat import dry
from rules.heat.cook_times import stated_span, time_figures
from rules.heat.dry import dries
from rules.heat.headline import doing
from rules.heat.where_water_boils import boiling_point
from rules.model import Caution, Figure
from rules.physics import kinetics
from rules.physics.units import FT_PER_M, round_to, to_c
from rules.safety.subjects.drinking_water import drinking_water
from rules.say import duration, duration_span

ADVICE_FROM_FT = 2500.0
START_SHORT = 0.9
RAW_MEATS = (
    "collagen_cut", "tender_cut", "ground_meat", "sausage", "offal", "poultry_pieces", "whole_bird",
)  # fmt: skip
LONGEST_CLASSES = (*RAW_MEATS, "pasta", "noodle", "rice")
CUPS = ("soup", "dairy", "water", "instant_dried", "coffee", "tea")
BOILS_OVER = (*CUPS, "porridge", "pasta", "rice", "sauce", "starch_pudding")
MEAT_C = to_c(165)


@rule("microwave.time", "usda-fsis-high-altitude")
def time(case: Case) -> Part | None:
    """How long: the longest time given for meat, poultry, pasta and rice, the shortest for the rest."""
    if case.dish_class == "water":
        return None
    stated = stated_span(case)
    row = dishes.sea_level_time(case.request.dish, case.dish_class, "microwave")
    longest = case.dish_class in LONGEST_CLASSES
    if stated is None and row is None:
        return _no_time(case, longest)
    low, high = stated or ((row.low_min, row.high_min) if row else (0.0, 0.0))
    here = _here(case, low, high, longest=longest)
    figures = time_figures(case, (low, high), here)
    return Part(
        figures=figures,
        headline=_headline(case, figures, longest=longest),
        steps=(_step(case, low, high, longest=longest),),
        because=_why(case, longest=longest),
    )


@rule("microwave.drinking_water", "cdc-eid-2025-boil", "epa-boil", "health-canada-boil", "who-boil")
def safe_to_drink(case: Case) -> Part | None:
    """How long water itself is boiled to make it safe to drink."""
    return drinking_water(case) if case.dish_class == "water" else None


def applies(case: Case) -> bool:
    """Whether the published advice, for high kitchens, is for this one."""
    return case.here.elevation_m * FT_PER_M >= ADVICE_FROM_FT and case.here.boiling_c < case.there.boiling_c


def _here(case: Case, low: float, high: float, *, longest: bool) -> tuple[float, float, float]:
    if not applies(case):
        return low, (low + high) / 2, high
    if not longest:
        return low * START_SHORT, (low * START_SHORT + high) / 2, high
    more = kinetics.rate_factor(case.here.boiling_c, case.there.boiling_c, kinetics.softening(case.dish_class).z_k)
    return high, high * more**0.5, high * more


def _headline(case: Case, figures: tuple[Figure, Figure], *, longest: bool) -> str:
    if case.request.topic == "temperature":
        boil = case.say.temp(case.here.boiling_c)
        return f"A microwave oven has no temperature to set; wet food in it stops at {boil} at {case.place}."
    here, base = (duration_span(f.low or f.value, f.high or f.value) for f in figures)
    what = doing(case, "microwave")
    if not applies(case):
        return f"{what} takes {here} at {case.place}, as at {case.baseline}."
    start = "from the longest" if longest else "just under the shortest"
    return f"{what} takes {here} at {case.place}: start {start} time given, {base} at {case.baseline}."


def _step(case: Case, low: float, high: float, *, longest: bool) -> str:
    if case.dish_class == "popcorn":
        return "Stay beside it and stop the oven when pops come two seconds apart, whatever the clock says."
    if not applies(case):
        return "Cover it, stir or turn it halfway, and let it stand 2 min."
    short = f"{duration(low * START_SHORT)}, just under the shortest time"
    start = f"{duration(high)}, the longest time given" if longest else short
    return f"Set {start}. Cover it, stir or turn it halfway, let it stand 2 min, then add half a minute at a time."


def _why(case: Case, *, longest: bool) -> str:
    boil = case.say.temp(case.here.boiling_c)
    if not applies(case):
        return f"The oven gives the same power anywhere, and water boils at {boil} here, as the package expects."
    return (
        "Published advice for high kitchens: meat, poultry, pasta and rice take the longest time given, since they "
        f"cook at their own boil, {boil} here, which is cooler."
        if longest
        else "Published advice for high kitchens: start just under the shortest time given, since the food boils at "
        f"{boil} here, sooner than at sea level, and loses its water faster."
    )


def _no_time(case: Case, longest: bool) -> Part:
    much = (1.0, 1.1, 1.3) if longest and applies(case) else (START_SHORT, 1.0, 1.0) if applies(case) else (1.0,) * 3
    low, mid, high = (round_to(m, 0.05) for m in much)
    return Part(
        figures=(Figure("time_factor", f"Time against {case.baseline}", mid, "factor", low, high),),
        because=f"No tested time is known for this. {_why(case, longest=longest)}",
    )


@rule("microwave.safety", "fda-food-code-2022")
def safety(case: Case) -> Part | None:
    """Meat from a microwave oven: hot all through, and it stands covered."""
    if case.dish_class not in (*RAW_MEATS, "cured_meat", "fish", "egg", "casserole"):
        return None
    text = (
        f"A microwave oven heats unevenly: bring every part to {case.say.temp(MEAT_C)}, turn it halfway, and let it "
        "stand covered 2 min before measuring."
    )
    return Part(cautions=(Caution("warn", text, ("fda-food-code-2022",)),))


@rule("microwave.boil_over", "common-practice")
def boil_over(case: Case) -> Part | None:
    """Boiling over, and water that erupts."""
    if case.dish_class == "egg":
        text = "Never heat an egg in its shell, or a whole yolk unpricked: it bursts, often in the face."
        return Part(cautions=(Caution("warn", text, ("common-practice",)),))
    if case.dish_class not in BOILS_OVER:
        return None
    deep = ("Use a dish twice as deep as the food: it boils sooner and climbs higher in thin air.",)
    return Part(
        steps=deep if dries(case) else (),
        cautions=()
        if case.dish_class not in CUPS
        else (
            Caution(
                "warn",
                "A still cup can be hotter than its boil and erupt when it is moved: leave a wooden spoon in it, "
                "and let it stand a minute.",
                ("common-practice",),
            ),
        ),
    )


RULES = (popcorn.pops, time, safe_to_drink, boiling_point, safety, dry.check, boil_over, popcorn.larger)
