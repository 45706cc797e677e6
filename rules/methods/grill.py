"""Grill: over or under radiant heat. The fire gets less oxygen, the food dries sooner, the thermometer decides."""

from __future__ import annotations

from rules.book import Case, Part, Rule, rule
from rules.foods import popcorn
from rules.heat import chamber, dry
from rules.heat.dry import dries, heated_through, set_to, setting_figure, span
from rules.model import Caution, Request
from rules.physics import air
from rules.physics.units import FT_PER_M
from rules.say import number

FIRE_FROM_FT = 2000.0


@rule("grill.grate", "common-practice")
def grate(case: Case) -> Part:
    """The heat at the grate, which stays as at sea level."""
    heat, _ = set_to(case, "grill")
    way = "beside the fire, lid down" if heat.way == "indirect" else "over the fire"
    return Part(
        figures=(setting_figure("cooker_setting", "Heat at the grate", heat),),
        headline=f"Cook {case.food} {way} at {span(case, heat)} at {case.place}, as at sea level."
        if case.request.topic == "temperature"
        else "",
        steps=(f"Cook {way} at {span(case, heat)}, by a thermometer at the grate.",),
    )


@rule("grill.time", "usda-fsis-high-altitude", "computed")
def time(case: Case) -> Part:
    """How long it grills: up to a quarter longer."""
    if not case.moved:
        why = f"Nothing differs from {case.baseline}, so the time stays."
    else:
        done = "gets hot" if heated_through(case.dish_class) else "softens"
        why = (
            f"Radiant heat browns as anywhere, while the wet middle stays under the boil, "
            f"{case.say.temp(case.here.boiling_c)} here, and {done} a little "
            + (
                "more slowly. USDA guidance allows up to a quarter more time on the grill."
                if case.here.boiling_c < case.there.boiling_c
                else f"sooner than at {case.baseline}."
            )
        )
    pace = dry.up_to_a_quarter(dry.wet_surface_pace(case))
    return dry.time_part(case, "grill", pace, why, "usda-fsis-high-altitude", "computed")


@rule("grill.fire", "us-std-atm-1976", "usda-fsis-high-altitude")
def fire(case: Case) -> Part | None:
    """What thin air does to gas and charcoal."""
    if case.here.elevation_m * FT_PER_M < FIRE_FROM_FT or "grill" in case.request.equipment:
        return None
    share = number(air.density_ratio(case.here.elevation_m) * 100, 0)
    return Part(
        steps=("Open the vents wider, light more charcoal, and give the grill longer to heat up.",),
        because=f"The same breath of air holds {share} % of its sea-level oxygen, so charcoal burns slower and a gas "
        "burner gives less heat: the grate takes longer to get hot.",
    )


@rule("grill.drying", "computed", "common-practice")
def drying(case: Case) -> Part | None:
    """Drying on the grill."""
    if not dries(case):
        return None
    return Part(
        steps=("Oil or marinate the food, turn it often, and pull thick pieces to the cool side to finish covered.",),
        because=dries(case),
    )


@rule("grill.safety", "common-practice")
def safety(case: Case) -> Part:
    """Carbon monoxide and a colour that says nothing."""
    return Part(
        cautions=(
            Caution("warn", "Burn charcoal and gas outdoors only.",
                    ("common-practice",)),
        )
    )  # fmt: skip


NEEDS = ("elevation", "dish")
RULES = (popcorn.pops, grate, time, dry.core, dry.check, fire, drying, safety, popcorn.hot_fat)


def rules_for(request: Request | None) -> tuple[Rule, ...]:
    """The rules, after a refusal where raw meat is set too cool; every rule for None."""
    return (*RULES, *chamber.RULES) if request is None else chamber.guarded(request, RULES)


def needs(request: Request) -> tuple[str, ...]:
    """What must be known first; nothing for a refusal."""
    return chamber.needs(request, NEEDS)
