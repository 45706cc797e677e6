"""Smoke: low and slow in hot smoke. Thin air dries the surface harder, so the stall comes cooler and lasts longer."""

from __future__ import annotations

from rules.book import Case, Part, Rule, rule
from rules.foods.methods import methods
from rules.heat import chamber, dry
from rules.heat.dry import Pace, PaceOf, heated_through, set_to, setting_figure
from rules.heat.fire import OUTDOORS
from rules.heat.heat_settings import Setting
from rules.heat.where_water_boils import boiling_point
from rules.model import Caution, Figure, Request
from rules.physics import humid_air
from rules.physics.ambient import Ambient
from rules.physics.evaporation import drying_ratio
from rules.physics.units import round_to, to_c
from rules.said import Words, number, oven, sentences, temp, temp_drop, temp_span, together

say = sentences("methods/smoke")

STALL_SEA_C = (to_c(150), to_c(170))
STALL_SHARE = 0.4
FIRE_FROM_M, DRIES_FROM_M = 600.0, 300.0
TENDER_C = to_c(203)
SAFE_SMOKER_C = (to_c(225), to_c(300))
COLDEST_HOT_SMOKE_C = to_c(150)
JERKY_MEAT_C, JERKY_POULTRY_C = to_c(160), to_c(165)


def stall_c(air: Ambient, sea: Ambient, smoker_c: float, sea_level_stall_c: float) -> float:
    """Where a wet surface settles here [degC], in smoker air as moist, pound for pound, as at sea level.

    sea_level_stall_c: where it settles at sea level [degC]
    raises: OutOfRange where the smoker is too cool for such a stall
    source: ashrae-fundamentals

    >>> from rules.physics.ambient import ambient
    >>> round(stall_c(ambient(2133.6), ambient(0), 107.2, 71.1), 1)
    65.4
    """
    humidity = humid_air.humidity_at_wet_bulb(smoker_c, sea_level_stall_c, sea.pressure_pa)
    return humid_air.wet_bulb_c(smoker_c, humidity, air.pressure_pa)


@rule("smoke.smoker", "usda-smoking-2012", "common-practice")
def smoker(case: Case) -> Part:
    """The heat of the smoker, which stays as at sea level."""
    heat, stated = set_to(case, "smoke")
    vents = case.here.elevation_m > FIRE_FROM_M and "smoker" not in case.request.equipment
    return Part(
        figures=(setting_figure("cooker_setting", say("label"), heat),),
        headline=_headline(case, heat) if case.request.topic == "temperature" else "",
        steps=(say("step", setting=heat.span), *((say("vents"),) if vents else ())),
        cautions=_cool_smoke(heat, stated=stated),
    )


def _headline(case: Case, heat: Setting) -> Words:
    """Whether the centre gets as hot as was asked, or how hot to hold the smoker."""
    asked_c, boil_c = case.request.temperature_c, case.here.boiling_c
    if asked_c is None or not STALL_SEA_C[1] < asked_c < methods()["smoke"].core_below_c:
        return say("headline", setting=heat.span, food=case.food, place=case.place)
    if asked_c < boil_c - 2:
        return say("centre-within-reach", asked=temp(asked_c), place=case.place, boil=temp(boil_c))
    return say("centre-out-of-reach", asked=temp(asked_c), place=case.place, boil=temp(boil_c))


def _cool_smoke(heat: Setting, *, stated: bool) -> tuple[Caution, ...]:
    low, high = SAFE_SMOKER_C
    if heat.way == "cold":
        return (Caution("warn", say("cold-smoke"), ("common-practice",)),)
    if stated and heat.low_c < low - 1:
        return (Caution("warn", say("too-cool", low=oven(low), high=oven(high)), ("usda-smoking-2012",)),)
    return ()


def stalls(case: Case) -> bool:
    """Whether the food may stall, as big wet pieces do; a dish that nobody knows may be one."""
    return "stalls" in case.traits or case.dish_class == "general"


@rule("smoke.stall", "ashrae-fundamentals", "common-practice")
def stall(case: Case) -> Part | None:
    """The stall: the wet bulb of the smoker's air, which thin air brings down."""
    heat, _ = set_to(case, "smoke")
    if not stalls(case) or heat.middle_c < STALL_SEA_C[1] + 5 or heat.middle_c > 180:
        return None
    low, high = (stall_c(case.here, case.sea, heat.middle_c, t) for t in STALL_SEA_C)
    cooler = sum(STALL_SEA_C) / 2 - (low + high) / 2
    why = say("stall-because", sea=temp_span(*STALL_SEA_C))
    figure = Figure(
        "stall_temperature", say("stall-label"), round((low + high) / 2, 2), "degC", round(low, 2), round(high, 2),
        round(sum(STALL_SEA_C) / 2, 2),
    )  # fmt: skip
    if cooler < 0.3:
        return Part(figures=(figure,), because=why)
    return Part(
        figures=(figure,),
        steps=(say("stall-step", stall=temp_span(low, high)),),
        because=together(why, say("stall-cooler", cooler=temp_drop(cooler))),
    )


def pace_of(case: Case) -> PaceOf:
    """How much longer smoking takes: heat to the middle, and for a cut that stalls the drying that holds it there.

    A stall is some two fifths of a long smoke (common practice), so that share of it grows with the drying; at most
    the whole does.
    """
    wet = dry.wet_surface_pace(case)

    def pace(air: Ambient) -> Pace:
        of = wet(air)
        if not stalls(case):
            return of
        faster = drying_ratio(air.elevation_m)
        if heated_through(case.dish_class, case.request.dish):
            return Pace(*sorted((of.low, of.likely, max(of.high, faster**0.5))))
        return Pace(*sorted((1.0, 1 + STALL_SHARE * (faster - 1), faster)))

    return pace


@rule("smoke.time", "computed", "common-practice")
def time(case: Case) -> Part:
    """How long it smokes here."""
    return dry.time_part(case, "smoke", pace_of(case), _why(case), "computed", "common-practice")


def _why(case: Case) -> Words:
    if not case.moved:
        return dry.nothing_differs(case)
    if case.here.elevation_m <= DRIES_FROM_M:
        return say("size-of-the-piece")
    return say("dries-faster", percent=number(round_to(abs(drying_ratio(case.here.elevation_m) - 1) * 100, 5)))


@rule("smoke.tender", "iapws-r7-97", "common-practice")
def tender(case: Case) -> Part | None:
    """203 degF and the boil: smoker air is far hotter, a pot is not, and wet meat knows the boil too."""
    if case.dish_class != "collagen_cut":
        return None
    boil_c, tender_at = case.here.boiling_c, temp(TENDER_C)
    if boil_c > TENDER_C + 1:
        return Part(steps=(say("tender-step", tender=tender_at),), because=say("tender-because"))
    return Part(
        steps=(say("near-boil-step", tender=tender_at, probe=temp(boil_c - 5)),),
        because=say("near-boil-because", tender=tender_at, boil=temp(boil_c)),
    )


@rule("smoke.jerky", "usda-jerky")
def jerky(case: Case) -> Part | None:
    """Jerky has to be heated before it is dried."""
    if "jerky" not in case.traits:
        return None
    text = say("jerky", meat=temp(JERKY_MEAT_C), poultry=temp(JERKY_POULTRY_C))
    return Part(cautions=(Caution("warn", text, ("usda-jerky",)),))


@rule("smoke.safety", "usda-smoking-2012", "common-practice")
def safety(case: Case) -> Part | None:
    """Time in the danger range, and carbon monoxide."""
    heat, _ = set_to(case, "smoke")
    thawed = Caution("warn", say("thawed"), ("common-practice",))
    return Part(cautions=(thawed, OUTDOORS) if heat.low_c > COLDEST_HOT_SMOKE_C else (OUTDOORS,))


NEEDS = ("elevation", "dish")
RULES = (smoker, time, stall, tender, boiling_point, dry.core, dry.check, jerky, safety)


def rules_for(request: Request | None) -> tuple[Rule, ...]:
    """The rules, after a refusal where raw meat is set too cool; every rule for None."""
    return (*RULES, *chamber.RULES) if request is None else chamber.guarded(request, RULES)


def needs(request: Request) -> tuple[str, ...]:
    """What must be known first; nothing for a refusal."""
    return chamber.needs(request, NEEDS)
