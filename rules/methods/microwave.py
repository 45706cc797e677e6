"""Microwave: the oven's power is the same, the food's own boil is not. Published advice parts foods in two."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.foods import dishes, popcorn
from rules.foods.meat import raw_meat
from rules.heat import dry
from rules.heat.cook_times import no_time, stated_span, time_figures
from rules.heat.dry import dries
from rules.heat.headline import about, doing
from rules.heat.where_water_boils import boiling_point
from rules.model import Caution, Figure
from rules.physics import kinetics
from rules.physics.units import FT_PER_M, round_to, to_c
from rules.safety.subjects.drinking_water import drinking_water
from rules.said import Said, duration, sentences, temp

say = sentences("methods/microwave")

ADVICE_FROM_FT = 2500.0
START_SHORT = 0.9
MEAT_C = to_c(165)


@rule("microwave.time", "usda-fsis-high-altitude")
def time(case: Case) -> Part | None:
    """How long: the longest time given for meat, poultry, pasta and rice, the shortest for the rest."""
    if case.dish_class == "water":
        return None
    stated = stated_span(case)
    row = dishes.sea_level_time(case.request.dish, case.dish_class, "microwave")
    longest = takes_longest(case)
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


def takes_longest(case: Case) -> bool:
    """Whether the published advice gives this food the longest time: meat, poultry, pasta and rice."""
    return raw_meat(case.traits) or case.dish_class in ("pasta", "noodle", "rice")


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


def _headline(case: Case, figures: tuple[Figure, Figure], *, longest: bool) -> Said:
    if case.request.topic == "temperature":
        return say("no-temperature", boil=temp(case.here.boiling_c), place=case.place)
    here, base = figures
    return say(
        "takes",
        doing=doing(case, "microwave"),
        time=about(here),
        place=case.place,
        start=_start(longest=longest) if applies(case) else "anywhere",
        base=duration((base.high if longest else base.low) or base.value),
        baseline=case.baseline,
    )


def _start(*, longest: bool) -> str:
    return "longest" if longest else "shortest"


def _step(case: Case, low: float, high: float, *, longest: bool) -> Said:
    if case.dish_class == "popcorn":
        return say("popcorn-step")
    if not applies(case):
        return say("step-as-given")
    return say("step", start=_start(longest=longest), time=duration(high if longest else low * START_SHORT))


def _why(case: Case, *, longest: bool) -> Said:
    boil = temp(case.here.boiling_c)
    return say("advice", start=_start(longest=longest), boil=boil) if applies(case) else say("same-power", boil=boil)


def _no_time(case: Case, longest: bool) -> Part:
    much = (1.0, 1.1, 1.3) if longest and applies(case) else (START_SHORT, 1.0, 1.0) if applies(case) else (1.0,) * 3
    low, mid, high = (round_to(m, 0.05) for m in much)
    return no_time(case, (low, mid, high), _why(case, longest=longest))


@rule("microwave.safety", "fda-food-code-2022")
def safety(case: Case) -> Part | None:
    """Meat from a microwave oven: hot all through, and it stands covered."""
    if "meat" not in case.traits and case.dish_class not in ("fish", "egg", "casserole"):
        return None
    return Part(cautions=(Caution("warn", say("uneven", core=temp(MEAT_C)), ("fda-food-code-2022",)),))


@rule("microwave.boil_over", "common-practice")
def boil_over(case: Case) -> Part | None:
    """Boiling over, and water that erupts."""
    if case.dish_class == "egg":
        return Part(cautions=(Caution("warn", say("egg-bursts"), ("common-practice",)),))
    if "boils_over" not in case.traits:
        return None
    erupts = Caution("warn", say("cup-erupts"), ("common-practice",))
    return Part(
        steps=(say("deep-dish"),) if dries(case) else (),
        cautions=(erupts,) if "superheats" in case.traits else (),
    )


RULES = (popcorn.pops, time, safe_to_drink, boiling_point, safety, dry.check, boil_over, popcorn.larger)
