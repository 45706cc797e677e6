"""What the cook's own equipment changes at elevation: one rule, added to any method for equipment that is used for it.

Equipment ids are those of data/lexicon/equipment.toml.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import cache, wraps

from rules.book import Case, Part, rule
from rules.foods.methods import methods
from rules.heat.fire import OUTDOORS
from rules.heat.pressure import STOVE_TOP_GAUGE_PA, inside_c
from rules.model import Caution, Request
from rules.physics import air
from rules.physics.units import FT_PER_M, PSI_PER_PA
from rules.said import Said, Words, gauge, listed, number, sentences, temp, together
from rules.tables import read_toml

say = sentences("heat/equipment")

HIGH_FT, DERATE_FROM_FT, DERATE_PERCENT_PER_1000_FT = 2000, 2000, 4
TAP_WATER_C = 15.0
STEAM_BOILER_GAUGE_PA = 110_000.0
ESPRESSO_WATER_C = 93.0
BATH_MARGIN_K = 2.0
HOLD_200_F_C = 93.3
NOTICEABLE_K = 0.5


@dataclass(frozen=True, slots=True)
class Advice:
    """What one piece of equipment has to be told for: a sentence why, things to do, cautions, and what it rests on."""

    because: Words = ""
    steps: tuple[Words, ...] = ()
    cautions: tuple[Caution, ...] = ()
    sources: tuple[str, ...] = ("common-practice",)


@cache
def _rows() -> dict[str, dict[str, object]]:
    return {row["id"]: row for row in read_toml("lexicon/equipment.toml")["equipment"]}


def label(id: str) -> str:
    """What a piece of equipment is called; an unknown id is its own name."""
    return str(_rows().get(id, {}).get("label", id))


def method_of(request: Request) -> str | None:
    """The method a request is about, also where its topic names it; jars are canned, whatever pot is named for it."""
    if request.topic == "preserve":
        return "preserve"
    return request.method or {"pressure": "pressure_cook"}.get(request.topic)


@rule("equipment.note", "common-practice")
def note(case: Case) -> Part | None:
    """What elevation does to the equipment the cook named or owns, where the method uses it."""
    method, every = methods().get(method_of(case.request) or ""), case.request.topic == "set_kitchen"
    used = ADVICE if every else method.equipment if method else ()
    told = [advice for id in case.request.equipment if id in used and id in ADVICE and (advice := ADVICE[id](case))]
    if not told:
        return None
    return Part(
        because=together(*(advice.because for advice in told)),
        steps=tuple(step for advice in told for step in advice.steps),
        cautions=tuple(caution for advice in told for caution in advice.cautions),
        sources=tuple(dict.fromkeys(source for advice in told for source in advice.sources)),
    )


def high(case: Case) -> bool:
    """Whether the kitchen is high enough for any of this to show."""
    return case.sea.boiling_c - case.here.boiling_c > NOTICEABLE_K


def up_high(advise: Callable[[Case], Advice]) -> Callable[[Case], Advice | None]:
    """Advice that is given only where the kitchen is high enough for it to show."""

    @wraps(advise)
    def told(case: Case) -> Advice | None:
        return advise(case) if high(case) else None

    return told


def pressure_marks(id: str) -> Callable[[Case], Advice]:
    """Advice on the marks of a pressure cooker: gauge pressure, and what low and high reach here."""

    def advise(case: Case) -> Advice:
        gauges: list[float] = _rows()[id]["gauge_psi"]  # type: ignore[assignment]
        reached = [
            say("mark", mark=mark, psi=number(psi), reached=temp(inside_c(case.here, psi / PSI_PER_PA)))
            for mark, psi in zip(("low", "high"), gauges, strict=True)
        ]
        return Advice(
            because=say("pressure-marks", reached=listed(reached, "commas"), cooker=id),
            sources=("iapws-r7-97", "common-practice"),
        )

    return advise


def electric_cooker(case: Case) -> Advice:
    """An electric pressure cooker: its marks; and it is no canner."""
    if method_of(case.request) != "preserve":
        return pressure_marks("electric_pressure_cooker")(case)
    return Advice(cautions=(Caution("stop", say("no-canner"), ("nchfp", "usu-ask-extension")),), sources=("nchfp",))


def derated_percent(elevation_m: float) -> tuple[float, float]:
    """What a gas appliance loses at an elevation by the trade's rule [%]: counted from 2,000 ft, and from sea level.

    Up to 2,000 ft nothing is taken off. Printed both ways; the code itself counts from sea level.

    source: nfpa-54

    >>> derated_percent(2133.6)
    (20.0, 28.0)
    """
    feet = elevation_m * FT_PER_M
    if feet <= HIGH_FT:
        return 0.0, 0.0
    less, more = (round(DERATE_PERCENT_PER_1000_FT * (feet - start) / 1000, 1) for start in (DERATE_FROM_FT, 0))
    return less, more


def gas(case: Case) -> Advice | None:
    """Gas flames: less air, less heat, and a fitter's job."""
    less, more = derated_percent(case.here.elevation_m)
    if not more:
        return None
    return Advice(
        because=say("gas", less=number(less, 0), more=number(more, 0)),
        steps=(say("gas-step"),),
        cautions=(Caution("warn", say("yellow-flame"), ("nfpa-54", "common-practice")),),
        sources=("nfpa-54",),
    )


@up_high
def electric(case: Case) -> Advice:
    """Induction and electric hobs: full power at any elevation."""
    share = (case.sea.boiling_c - case.here.boiling_c) / (case.sea.boiling_c - TAP_WATER_C) * 100
    return Advice(because=say("electric", less=number(share, 0)), sources=("computed", "common-practice"))


def kettle(case: Case) -> Advice | None:
    """Kettles: what makes them switch off; none of the kettle in which bagels are dipped or soup is made."""
    if not high(case) or (case.request.dish and case.dish_class not in POURED_FROM_A_KETTLE):
        return None
    return Advice(
        because=say("kettle", boil=temp(case.here.boiling_c)),
        steps=(say("kettle-step", below=temp(case.here.boiling_c - 1)),),
        sources=("common-practice", "iapws-r7-97"),
    )


# classes of what is made with the water of a kettle
AIR_FRYER = "air_fryer"
POURED_FROM_A_KETTLE = ("water", "tea", "coffee", "instant_dried")


@up_high
def espresso(case: Case) -> Advice:
    """Espresso machines: pump pressure, brew water and the steam boiler."""
    here, sea = (temp(inside_c(air_here, STEAM_BOILER_GAUGE_PA)) for air_here in (case.here, case.sea))
    over = case.here.boiling_c < ESPRESSO_WATER_C
    set_c = min(ESPRESSO_WATER_C, case.here.boiling_c - 1)
    return Advice(
        because=together(say("espresso", here=here, sea=sea), say("espresso-flashes") if over else ""),
        steps=(say("espresso-step", water=temp(set_c)),) if over else (),
        sources=("iapws-r7-97", "from-memory"),
    )


def circulator(case: Case) -> Advice:
    """Immersion circulators: the ceiling of the bath, and what it loses."""
    return Advice(
        because=say("circulator", ceiling=temp(case.here.boiling_c - BATH_MARGIN_K)),
        steps=(say("circulator-step"),),
        sources=("iapws-r7-97", "common-practice"),
    )


def start_on_high() -> Said:
    """How to run a slow cooker."""
    return say("slow-cooker-step")


@up_high
def slow_cooker(case: Case) -> Advice:
    """Slow cookers: how near the boil they get, and 200 degF that is out of reach."""
    boil = case.here.boiling_c
    held = say("slow-cooker-hold", hold=temp(HOLD_200_F_C), boil=temp(boil)) if boil < HOLD_200_F_C else ""
    return Advice(
        because=together(say("slow-cooker"), held),
        steps=(start_on_high(),),
        sources=("csu-high-altitude-food-prep", "computed"),
    )


@up_high
def rice_cooker(case: Case) -> Advice:
    """Rice cookers: switched off by a dry pan, not by doneness."""
    return Advice(because=say("rice-cooker"), steps=(say("rice-cooker-step"),))


def thin_air_share(case: Case) -> float:
    """How much air mass a fan moves here against sea level [-]: the same volume, of thinner air."""
    return air.density_ratio(case.here.elevation_m)


@up_high
def fan_oven(case: Case) -> Advice:
    """Convection ovens: the fan moves thinner air."""
    basket = AIR_FRYER in case.request.equipment
    return Advice(
        because=say("fan-oven", less=number((1 - thin_air_share(case)) * 100, 0)),
        steps=() if basket else (say("fan-oven-step"),),
        sources=("us-std-atm-1976", "common-practice"),
    )


@up_high
def still_oven(case: Case) -> Advice:
    """Still ovens: mostly radiant, and true to their thermostat."""
    return Advice(because=say("still-oven"), sources=("common-practice",))


@up_high
def steam_oven(case: Case) -> Advice:
    """Combi ovens and pressureless steamers: steam at the local boil."""
    return Advice(
        because=say("steam-oven", boil=temp(case.here.boiling_c)),
        steps=(say("steam-oven-step"),),
        sources=("iapws-r7-97", "common-practice"),
    )


@up_high
def pressure_steamer(case: Case) -> Advice:
    """Pressure steamers and jacketed kettles: gauge on top of thinner air."""
    here, sea = (temp(inside_c(air_here, STOVE_TOP_GAUGE_PA)) for air_here in (case.here, case.sea))
    return Advice(
        because=say("pressure-steamer", gauge=gauge(STOVE_TOP_GAUGE_PA), here=here, sea=sea), sources=("iapws-r7-97",)
    )


def steam_kettle(case: Case) -> Advice | None:
    """Steam-jacketed kettles: pressure in the jacket, none in the food."""
    return Advice(because=say("steam-kettle", boil=temp(case.here.boiling_c)), sources=("iapws-r7-97",))


@up_high
def fire(case: Case) -> Advice:
    """Grills and smokers: less oxygen for the fire."""
    return Advice(
        because=say("fire", share=number(thin_air_share(case) * 100, 0)),
        steps=(say("fire-step"),),
        cautions=(OUTDOORS,),
        sources=("us-std-atm-1976", "usda-fsis-high-altitude"),
    )


@up_high
def camp_stove(case: Case) -> Advice:
    """Camp stoves: canisters and thin air."""
    return Advice(
        because=say("camp-stove"),
        steps=(say("camp-stove-step"),),
        cautions=(Caution("warn", say("camp-stove-outdoors"), ("common-practice",)),),
    )


@up_high
def steam_table(case: Case) -> Advice:
    """Steam tables: cooler water, still hot enough."""
    return Advice(
        because=say("steam-table", boil=temp(case.here.boiling_c)),
        steps=(say("steam-table-step"),),
        sources=("iapws-r7-97", "common-practice"),
    )


@up_high
def blast_chiller(case: Case) -> Advice:
    """Blast chillers: cold air, but less of it."""
    return Advice(
        because=say("blast-chiller", less=number((1 - thin_air_share(case)) * 100, 0)),
        steps=(say("blast-chiller-step"),),
        sources=("us-std-atm-1976", "common-practice"),
    )


ADVICE: dict[str, Callable[[Case], Advice | None]] = {
    "stovetop_pressure_cooker": pressure_marks("stovetop_pressure_cooker"),
    "electric_pressure_cooker": electric_cooker,
    "commercial_pressure_steamer": pressure_steamer,
    "gas_burner": gas,
    "induction_hob": electric,
    "electric_hob": electric,
    "camp_stove": camp_stove,
    "kettle": kettle,
    "espresso_machine": espresso,
    "immersion_circulator": circulator,
    "slow_cooker": slow_cooker,
    "rice_cooker": rice_cooker,
    "convection_oven": fan_oven,
    "rack_oven": fan_oven,
    AIR_FRYER: fan_oven,
    "standard_oven": still_oven,
    "deck_oven": still_oven,
    "combi_oven": steam_oven,
    "convection_steamer": steam_oven,
    "steam_kettle": steam_kettle,
    "grill": fire,
    "smoker": fire,
    "chafing_dish": steam_table,
    "blast_chiller": blast_chiller,
}
