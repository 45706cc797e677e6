"""Smoke: low and slow in hot smoke. Thin air dries the surface harder, so the stall comes cooler and lasts longer."""

from __future__ import annotations

from rules.book import Case, Part, Rule, rule
from rules.heat import chamber, dry
from rules.heat.dry import CORE_BELOW_C, Pace, PaceOf, heated_through, set_to, setting_figure, span
from rules.heat.where_water_boils import boiling_point
from rules.model import Caution, Figure, Request
from rules.physics import humid_air
from rules.physics.ambient import Ambient
from rules.physics.evaporation import drying_ratio
from rules.physics.units import round_to, to_c
from rules.say import number

STALL_SEA_C = (to_c(150), to_c(170))
STALL_CLASSES = ("collagen_cut", "cured_meat", "tender_cut", "whole_bird", "mixed_stew", "general")
STALL_SHARE = 0.4
FIRE_FROM_M = 600.0
TENDER_C = to_c(203)
SAFE_SMOKER_C = (to_c(225), to_c(300))
COLDEST_HOT_SMOKE_C = to_c(150)


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
    wider = ("Open the vents wider than at sea level: the fire gets less air.",) if vents else ()
    cautions: tuple[Caution, ...] = ()
    low, high = SAFE_SMOKER_C
    if heat.way == "cold":
        text = (
            "Cold smoke does not cook: smoke only cheese and other food that is eaten as it is, keep it cold before "
            "and after, and cure fish or meat by a tested recipe."
        )
        cautions = (Caution("warn", text, ("common-practice",)),)
    elif stated and heat.low_c < low - 1:
        text = f"USDA wants smokers kept between {case.say.oven(low)} and {case.say.oven(high)}: cooler, meat stays "
        cautions = (Caution("warn", f"{text}too long in the danger range.", ("usda-smoking-2012",)),)
    return Part(
        figures=(setting_figure("cooker_setting", "Smoker, at the grate", heat),),
        headline=_core_headline(case)
        or f"Hold the smoker at {span(case, heat)} for {case.food} at {case.place}, as at sea level."
        if case.request.topic == "temperature"
        else "",
        steps=(f"Hold the smoker at {span(case, heat)} by a thermometer at the grate.", *wider),
        cautions=cautions,
    )


def _core_headline(case: Case) -> str:
    asked_c = case.request.temperature_c
    if asked_c is None or not STALL_SEA_C[1] < asked_c < CORE_BELOW_C["smoke"]:
        return ""
    asked, boil = case.say.temp(asked_c), case.say.temp(case.here.boiling_c)
    if asked_c < case.here.boiling_c - 2:
        return f"{asked} in the centre is within reach of a smoker at {case.place}, under the boil of {boil}."
    return f"Do not wait for {asked} in the centre at {case.place}: wet meat stands near the boil, {boil}."


@rule("smoke.stall", "ashrae-fundamentals", "common-practice")
def stall(case: Case) -> Part | None:
    """The stall: the wet bulb of the smoker's air, which thin air brings down."""
    heat, _ = set_to(case, "smoke")
    if case.dish_class not in STALL_CLASSES or heat.middle_c < STALL_SEA_C[1] + 5 or heat.middle_c > 180:
        return None
    low, high = (stall_c(case.here, case.sea, heat.middle_c, t) for t in STALL_SEA_C)
    cooler = sum(STALL_SEA_C) / 2 - (low + high) / 2
    figure = Figure(
        "stall_temperature", "The stall", round((low + high) / 2, 2), "degC", round(low, 2), round(high, 2),
        round(sum(STALL_SEA_C) / 2, 2),
    )  # fmt: skip
    if cooler < 0.3:
        return Part(figures=(figure,), because=_stall_why(case))
    return Part(
        figures=(figure,),
        steps=(
            f"Expect the stall from {case.say.temp_span(low, high)}. Wrap in paper or foil there to end it, or keep a "
            "pan of water in the smoker and spritz every half hour until the bark has set.",
        ),
        because=f"{_stall_why(case)} Air as moist as at sea level has its wet bulb {case.say.temp_drop(cooler)} lower "
        "at this pressure, so the stall comes that much cooler. A spritz and a water pan add moisture, which slows the "
        "drying.",
    )


def _stall_why(case: Case) -> str:
    return (
        "In the stall the surface dries as fast as the smoker heats it, and the meat stands at the wet bulb of the "
        f"air around it, {case.say.temp_span(*STALL_SEA_C)} at sea level by common practice."
    )


def pace_of(case: Case) -> PaceOf:
    """How much longer smoking takes: heat to the middle, and for a cut that stalls the drying that holds it there.

    A stall is some two fifths of a long smoke (common practice), so that share of it grows with the drying; at most
    the whole does.
    """
    wet = dry.wet_surface_pace(case)

    def pace(air: Ambient) -> Pace:
        of = wet(air)
        if case.dish_class not in STALL_CLASSES:
            return of
        faster = drying_ratio(air.elevation_m)
        if heated_through(case.dish_class):
            return Pace(*sorted((of.low, of.likely, max(of.high, faster**0.5))))
        return Pace(*sorted((1.0, 1 + STALL_SHARE * (faster - 1), faster)))

    return pace


@rule("smoke.time", "computed", "common-practice")
def time(case: Case) -> Part:
    """How long it smokes here."""
    why = f"Nothing differs from {case.baseline}, so the time stays."
    if case.moved:
        faster = number(round_to(abs(drying_ratio(case.here.elevation_m) - 1) * 100, 5))
        why = (
            f"The smoker is as hot as at sea level, but a wet surface dries about {faster} % faster in this air and "
            "cools itself doing so, and the fire burns slower. Wrapped early it comes near the short end; unwrapped "
            "in a dry smoker near the long end."
            if case.here.elevation_m > 300
            else "The smoker is as hot here as anywhere; the range is the size of the piece."
        )
    return dry.time_part(case, "smoke", pace_of(case), why, "computed", "common-practice")


@rule("smoke.tender", "iapws-r7-97", "common-practice")
def tender(case: Case) -> Part | None:
    """203 degF and the boil: smoker air is far hotter, a pot is not, and wet meat knows the boil too."""
    if case.dish_class != "collagen_cut":
        return None
    boil_c, target = case.here.boiling_c, case.say.temp(TENDER_C)
    if boil_c > TENDER_C + 1:
        return Part(
            steps=(f"It is tender at about {target} in the thickest part, when a probe goes in like butter.",),
            because="Time at that heat turns collagen to gelatin; the number is a guide, the feel decides.",
        )
    boil = case.say.temp(boil_c)
    return Part(
        steps=(
            f"Do not wait for {target}: probe from {case.say.temp(boil_c - 5)} on and take it off when the probe goes "
            "in like butter.",
        ),
        because=f"The smoker's air is well over {target}, so bark and dry edges pass it, where no open pot here could. "
        f"But water boils at {boil}, and meat that is still wet stands near that: the middle may stall again there. It "
        "gets tender a little cooler, only later.",
    )


@rule("smoke.jerky", "usda-jerky")
def jerky(case: Case) -> Part | None:
    """Jerky has to be heated before it is dried."""
    if "jerky" not in case.traits:
        return None
    text = (
        f"Heat meat for jerky to {case.say.temp(to_c(160))}, poultry to {case.say.temp(to_c(165))}, before drying it: "
        "in dry air it cools itself, and dried germs stand heat."
    )
    return Part(cautions=(Caution("warn", text, ("usda-jerky",)),))


@rule("smoke.safety", "usda-smoking-2012", "common-practice")
def safety(case: Case) -> Part | None:
    """Time in the danger range, and carbon monoxide."""
    heat, _ = set_to(case, "smoke")
    texts = ["Burn charcoal and gas outdoors only."]
    if heat.low_c > COLDEST_HOT_SMOKE_C:
        texts.insert(0, "Thaw meat first and start it in a smoker that is up to heat, so that it passes 140 °F (60 °C) "
                        "within 4 h.")  # fmt: skip
    return Part(cautions=tuple(Caution("warn", text, ("common-practice",)) for text in texts))


NEEDS = ("elevation", "dish")
RULES = (smoker, time, stall, tender, boiling_point, dry.core, dry.check, jerky, safety)


def rules_for(request: Request | None) -> tuple[Rule, ...]:
    """The rules, after a refusal where raw meat is set too cool; every rule for None."""
    return (*RULES, *chamber.RULES) if request is None else chamber.guarded(request, RULES)


def needs(request: Request) -> tuple[str, ...]:
    """What must be known first; nothing for a refusal."""
    return chamber.needs(request, NEEDS)
