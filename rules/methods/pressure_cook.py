"""Pressure cook: the gauge adds to the air outside, so a cooker runs cooler inside the higher one climbs."""

from __future__ import annotations

from dataclasses import replace

from rules.book import Case, Part, celsius, rule
from rules.errors import within
from rules.foods.beans import unsoaked_time
from rules.foods.dishes import sea_level_time
from rules.heat.wet import Heats, check, kidney_beans, time_part, wet_time
from rules.heat.where_water_boils import boiling_point
from rules.model import Caution, Figure
from rules.physics import water
from rules.physics.ambient import Ambient
from rules.physics.units import FT_PER_M, PSI_PER_PA, round_time_min
from rules.say import duration, duration_span, number
from rules.tables import read_csv, read_toml

BEANS = "tables/bean_pressure_csu-dry-beans.csv"

STOVE_TOP_GAUGE_PA = 15 / PSI_PER_PA
HIGHEST_GAUGE_PA = 30 / PSI_PER_PA
WORTH_IT_K, WORTH_IT_MIN = 1.5, 6.0
NO_WAY_OUT = ("general", "egg")
COOKERS = ("stovetop_pressure_cooker", "electric_pressure_cooker", "commercial_pressure_steamer")
PRESSURE_CAUTION = Caution(
    "warn",
    "Never fill a pressure cooker past two thirds, half for beans, grains and anything that foams; keep the vent "
    "clear, let the pressure fall before opening, and follow the maker's instructions.",
    ("common-practice",),
)


WAY_OUT_CAUTION = Caution(
    "note",
    "In a pressure cooker keep to its booklet: how full, the vent, and no opening before the pressure has fallen.",
    ("common-practice",),
)


def inside_c(air: Ambient, gauge_pa: float) -> float:
    """Temperature of saturated steam in a cooker [degC]: gauge [Pa] plus the air outside.

    raises: OutOfRange where no saturated steam exists
    source: iapws-r7-97

    >>> from rules.physics.ambient import ambient
    >>> round(inside_c(ambient(0), 15 / PSI_PER_PA), 1)
    120.9
    """
    return water.saturation_temp_c(air.pressure_pa + gauge_pa)


def gauge_pa(case: Case) -> float:
    """The gauge pressure to reckon with [Pa]: the cook's setting, else their own cooker's, else a stove-top's 15 psi.

    raises: OutOfRange for a gauge below zero or above 30 psi
    """
    if case.request.gauge_pa is not None:
        hint = "Domestic cookers run at 5 to 15 psi."
        return within("gauge pressure", case.request.gauge_pa, 0, HIGHEST_GAUGE_PA, "Pa", hint)
    return cooker(case)[1]


def cooker(case: Case) -> tuple[str, float]:
    """The pressure cooker to speak of and its gauge [Pa]: the cook's own at its highest mark, else a stove-top one."""
    if case.request.equipment:
        for row in read_toml("lexicon/equipment.toml")["equipment"]:
            if row["id"] in case.request.equipment and row["id"] in COOKERS:
                return f"your {row['label']}", row["gauge_psi"][-1] / PSI_PER_PA
    return "a stove-top pressure cooker", STOVE_TOP_GAUGE_PA


def heats(case: Case, gauge: float) -> Heats:
    """Temperatures inside at this gauge pressure [Pa]; the table's times hold for 15 psi at sea level."""
    here_c, there_c = inside_c(case.here, gauge), inside_c(case.there, gauge)
    return Heats("pressure_cook", "the steam inside", here_c, there_c, inside_c(case.sea, STOVE_TOP_GAUGE_PA))


@rule("pressure_cook.inside", "iapws-r7-97", "us-std-atm-1976")
def inside(case: Case) -> Part:
    """How hot it gets inside the cooker here."""
    gauge = gauge_pa(case)
    here, sea = inside_c(case.here, gauge), inside_c(case.sea, gauge)
    cooler = f"{case.say.temp_drop(sea - here)} less than at sea level" if sea - here > 0.25 else "as at sea level"
    return Part(
        figures=(
            celsius("inside_temperature", "Inside the cooker", here, sea),
            Figure("gauge", "Gauge pressure", round(gauge * PSI_PER_PA, 1), "psi"),
        ),
        because=f"A gauge reads what the cooker adds to the air outside. At {case.say.gauge(gauge)} the steam inside "
        f"is {case.say.temp(here)} at {case.place}, {cooler}.",
        maths=f"T_sat({round(case.here.pressure_pa):,} + {round(gauge):,} Pa) = {here:.1f} °C.",
    )


@rule("pressure_cook.time", "common-practice")
def time(case: Case) -> Part:
    """How long at pressure here, from the time at the baseline."""
    part = time_part(case, heats(case, gauge_pa(case)))
    return (
        replace(part, headline=str(part.headline).replace(case.food, f"unsoaked {case.food}", 1))
        if unsoaked(case)
        else part
    )


def unsoaked(case: Case) -> bool:
    """Whether the time is that of beans that were not soaked."""
    request = case.request
    return request.soaked is False and unsoaked_time(request.dish, case.dish_class, "pressure_cook") is not None


@rule("pressure_cook.soak", "common-practice")
def soak(case: Case) -> Part | None:
    """Which beans the time is for, soaked or not, and how long the others take."""
    other = unsoaked_time(case.request.dish, case.dish_class, "pressure_cook")
    if other is None or case.request.time_min is not None:
        return None
    if unsoaked(case):
        return Part(
            because="The time is for beans that were not soaked; a night's soak takes more than half of it off."
        )
    dry = wet_time(Case(replace(case.request, soaked=False)), heats(case, gauge_pa(case)))
    if dry is None:
        return None
    return Part(
        because="The time is for beans that were soaked overnight; unsoaked they take "
        f"{duration_span(dry.low_min, dry.high_min)} here."
    )


@rule("pressure_cook.rule_of_thumb", "usda-fsis-high-altitude")
def rule_of_thumb(case: Case) -> Part | None:
    """The published rule: 5 % more time for every 1,000 ft above 2,000 ft, set beside the softening rate."""
    percent = published_percent(case.here.elevation_m)
    time = wet_time(case, heats(case, gauge_pa(case)))
    if time is None or case.there.elevation_m or not percent:
        return None
    span = [t * (1 + percent / 100) for t in (time.base_low_min, time.base_high_min)]
    overlap = span[0] <= time.high_min and time.low_min <= span[1]
    relation = "overlaps with" if overlap else "lies under" if span[1] < time.low_min else "lies over"
    return Part(
        figures=(Figure("rule_of_thumb", "Published rule of thumb adds", float(percent), "percent"),),
        because=f"The published rule of thumb, 5 % more for each 1,000 ft above 2,000 ft, adds {percent} % here: "
        f"{duration_span(*span)}, which {relation} the range by softening rate.",
    )


def published_percent(elevation_m: float) -> int:
    """What the published rule adds to the time under pressure [%]: 5 for each whole 1,000 ft above 2,000 ft.

    source: usda-fsis-high-altitude

    >>> published_percent(1524), published_percent(600)
    (15, 0)
    """
    return 5 * max(0, int(elevation_m * FT_PER_M / 1000 + 1e-6) - 2)


@rule("pressure_cook.step", "common-practice", "uwyo-altitude-adjusters")
def step(case: Case) -> Part:
    """What to do: count from pressure, and raise the gauge where the cooker allows it."""
    gauge = gauge_pa(case)
    same = gauge + case.there.pressure_pa - case.here.pressure_pa
    can_raise = gauge < same <= STOVE_TOP_GAUGE_PA + 500 and case.say.gauge(same) != case.say.gauge(gauge)
    raised = (
        (f"Or keep to the time at {case.baseline} and run at {case.say.gauge(same)}, if your cooker is made for it.",)
        if can_raise
        else ()
    )
    return Part(
        steps=(
            f"Bring it to {case.say.gauge(gauge)} and count the time from there, at the lowest flame that holds it.",
            *raised,
        )
    )


@rule("pressure_cook.beans", "csu-dry-beans")
def beans(case: Case) -> Part | None:
    """Tested times for soaked dry beans in an electric cooker on its low setting."""
    row = next((r for r in read_csv(BEANS).rows if r["dish"] == case.request.dish), None)
    if row is None or case.request.soaked is False:
        return None
    low_ft = case.here.elevation_m * FT_PER_M < 7000
    release = row["release_below_7000_ft" if low_ft else "release_above_7000_ft"]
    minutes = float(row["low_pressure_min"])
    return Part(
        figures=(Figure("tested_low_pressure_time", "Tested on LOW, after a salted soak", minutes, "min"),),
        steps=(
            "Electric cooker, tested in Colorado: soak 12 to 24 h in salted water (1½ tbsp to 8 cups, for 1 lb), "
            f"cook in 6 cups of fresh water {duration(minutes)} at LOW pressure, let the pressure fall by itself for "
            f"{release} min, then release the rest.",
        ),
        because="The tested time on LOW is far shorter than the time above: the long salted soak softens the skins, "
        "and the beans go on cooking while the pressure falls.",
    )


@rule("pressure_cook.electric", "usu-ask-extension")
def electric(case: Case) -> Part | None:
    """What was measured of electric cookers at elevation."""
    if case.here.elevation_m * FT_PER_M < 5000:
        return None
    return Part(
        cautions=(
            Caution(
                "note",
                "Above 5,000 ft electric pressure cookers that were tested did not always get as hot as they should, "
                "and chicken in particular needed longer: check meat with a thermometer.",
                ("usu-ask-extension",),
            ),
        )
    )


@rule("pressure_cook.safety", "common-practice")
def safety(case: Case) -> Part:
    """The usual cautions."""
    return Part(cautions=(PRESSURE_CAUTION,))


@rule("pressure_cook.way_out", "common-practice", "iapws-r7-97")
def way_out(case: Case) -> Part | None:
    """The pressure cooker as the way out where the open pot is slow: its time here, for this dish."""
    if case.here.boiling_c > case.sea.boiling_c - WORTH_IT_K or case.dish_class in NO_WAY_OUT:
        return None
    table = Case(replace(case.request, time_min=None, time_high_min=None, from_elevation_m=None))
    name, gauge = cooker(case)
    quick = wet_time(table, heats(table, gauge))
    if quick is None or quick.base_mid_min < WORTH_IT_MIN:
        return None
    usual = sea_level_time(case.request.dish, case.dish_class, case.request.method or "")
    if usual is not None and usual.high_min <= quick.base_high_min:
        return None
    low, likely, high = (round_time_min(t) for t in (quick.low_min, quick.likely_min, quick.high_min))
    psi = number(gauge * PSI_PER_PA, 0)
    return Part(
        figures=(Figure("pressure_time", f"In a pressure cooker at {psi} psi", likely, "min", low, high),),
        steps=(
            f"Short of time: {name} at {case.say.gauge(gauge)} does it in {duration_span(low, high)}, then let the "
            "pressure fall by itself.",
        ),
        because=f"A pressure cooker at {case.say.gauge(gauge)} reaches {case.say.temp(inside_c(case.here, gauge))} "
        "inside here, well over any open pot.",
        cautions=(WAY_OUT_CAUTION,),
    )


RULES = (
    boiling_point,
    inside,
    time,
    soak,
    rule_of_thumb,
    step,
    beans,
    check,
    kidney_beans,
    electric,
    safety,
)
