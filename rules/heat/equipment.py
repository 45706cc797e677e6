"""What the cook's own equipment changes at elevation: one rule, added to any method for equipment that is used for it.

Equipment ids are those of data/lexicon/equipment.toml.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import cache

from rules.book import Case, Part, rule
from rules.heat.pressure import STOVE_TOP_GAUGE_PA, inside_c
from rules.model import Caution, Request
from rules.physics import air
from rules.physics.units import FT_PER_M, PSI_PER_PA, round_to
from rules.say import number
from rules.tables import read_toml

WET = ("boil", "simmer", "poach", "braise", "stew", "steam", "reduce", "brew", "sugarwork")
ON_FLAME = (*WET, "fry", "pressure_cook", "preserve")
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

    because: str = ""
    steps: tuple[str, ...] = ()
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
    method, known = method_of(case.request), [ADVICE[id] for id in case.request.equipment if id in ADVICE]
    every = case.request.topic == "set_kitchen"
    told = [advice for methods, advise in known if (every or method in methods) and (advice := advise(case))]
    if not told:
        return None
    return Part(
        because=" ".join(advice.because for advice in told if advice.because),
        steps=tuple(step for advice in told for step in advice.steps),
        cautions=tuple(caution for advice in told for caution in advice.cautions),
        sources=tuple(dict.fromkeys(source for advice in told for source in advice.sources)),
    )


def high(case: Case) -> bool:
    """Whether the kitchen is high enough for any of this to show."""
    return case.sea.boiling_c - case.here.boiling_c > NOTICEABLE_K


def pressure_marks(id: str) -> Callable[[Case], Advice]:
    """Advice on the marks of a pressure cooker: gauge pressure, and what low and high reach here."""

    def advise(case: Case) -> Advice:
        gauges: list[float] = _rows()[id]["gauge_psi"]  # type: ignore[assignment]
        reached = ", ".join(
            f"{name} ({number(psi)} psi) {case.say.temp(inside_c(case.here, psi / PSI_PER_PA))}"
            for name, psi in zip(("LOW", "HIGH"), gauges, strict=True)
        )
        rings = (
            " Rings on the valve stem instead of figures usually mean some 50 kPa (7 psi) and 90 kPa (13 psi)."
            if id == "stovetop_pressure_cooker"
            else ""
        )
        return Advice(
            because=f"The marks of a cooker are gauge pressure, on top of the air outside; inside it is {reached} "
            "here. "
            f"A mark in absolute pressure would read about 1 bar (14.7 psi) more at sea level: see its booklet.{rings}",
            sources=("iapws-r7-97", "common-practice"),
        )

    return advise


def electric_cooker(case: Case) -> Advice:
    """An electric pressure cooker: its marks; and it is no canner."""
    if method_of(case.request) != "preserve":
        return pressure_marks("electric_pressure_cooker")(case)
    text = (
        "An electric pressure cooker is not a pressure canner, whatever its buttons say: tested processes do not hold "
        "in it, and above 5,000 ft tested models ran short of heat."
    )
    return Advice(cautions=(Caution("stop", text, ("nchfp", "usu-ask-extension")),), sources=("nchfp",))


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
    text = (
        "A yellow, lifting or sooty flame makes carbon monoxide: stop using it, open the room, and have a licensed "
        "fitter set it for this elevation."
    )
    return Advice(
        because=f"A gas burner set for this elevation gives {number(less, 0)} to {number(more, 0)} % less heat: the "
        "fuel-gas rule takes off 4 % for each 1,000 ft, counted from 2,000 ft or from sea level. The boil comes "
        "later, not cooler.",
        steps=("Use a wider burner, a lid and smaller batches to come back to the boil; heat up longer.",),
        cautions=(Caution("warn", text, ("nfpa-54", "common-practice")),),
        sources=("nfpa-54",),
    )


def electric(case: Case) -> Advice | None:
    """Induction and electric hobs: full power at any elevation."""
    if not high(case):
        return None
    share = (case.sea.boiling_c - case.here.boiling_c) / (case.sea.boiling_c - TAP_WATER_C) * 100
    return Advice(
        because="Induction and electric hobs give their full heat at any elevation. Water comes to its lower boil "
        f"with {number(share, 0)} % less heat than at sea level; after that the food takes its longer time all the "
        "same.",
        sources=("computed", "common-practice"),
    )


def kettle(case: Case) -> Advice | None:
    """Kettles: what makes them switch off."""
    if not high(case):
        return None
    below = case.say.temp(case.here.boiling_c - 1)
    return Advice(
        because="A kettle that feels the steam switches off at the boil anywhere. One that waits for a set "
        f"temperature above {case.say.temp(case.here.boiling_c)} never gets there and boils on.",
        steps=(f"Set a variable kettle to {below} or less, and do not leave it alone.",),
        sources=("common-practice", "iapws-r7-97"),
    )


def espresso(case: Case) -> Advice | None:
    """Espresso machines: pump pressure, brew water and the steam boiler."""
    if not high(case):
        return None
    here, sea = (inside_c(air_here, STEAM_BOILER_GAUGE_PA) for air_here in (case.here, case.sea))
    over = case.here.boiling_c < ESPRESSO_WATER_C
    set_c = min(ESPRESSO_WATER_C, case.here.boiling_c - 1)
    return Advice(
        because="The pump gauge reads above the air outside, so 9 bar stays 9 bar. The steam boiler is set by gauge "
        f"too: at 1.1 bar it holds {case.say.temp(here)} here, against {case.say.temp(sea)} at sea level, so steam is "
        "a little "
        "weaker." + (" Brew water over the local boil flashes to steam as it leaves the group." if over else ""),
        steps=(f"Set brew water to {case.say.temp(set_c)} or less and grind a touch finer.",) if over else (),
        sources=("iapws-r7-97", "from-memory"),
    )


def circulator(case: Case) -> Advice:
    """Immersion circulators: the ceiling of the bath, and what it loses."""
    ceiling = case.say.temp(case.here.boiling_c - BATH_MARGIN_K)
    return Advice(
        because=f"A circulator holds the temperature it is set to, so nothing changes up to {ceiling} here; above that "
        "the bath boils before it gets there.",
        steps=("Cover the bath: thin, dry air takes water away faster, and a low bath stops the pump.",),
        sources=("iapws-r7-97", "common-practice"),
    )


def slow_cooker(case: Case) -> Advice | None:
    """Slow cookers: how near the boil they get, and 200 degF that is out of reach."""
    if not high(case):
        return None
    reach = (
        f" The advice to keep it at {case.say.temp(HOLD_200_F_C)} cannot be met, since water boils at "
        f"{case.say.temp(case.here.boiling_c)} here: a steady simmer is the most there is."
        if case.here.boiling_c < HOLD_200_F_C
        else ""
    )
    return Advice(
        because=f"A slow cooker on HIGH ends at the local simmer, which is cooler here.{reach}",
        steps=(
            "Start on HIGH for the first hour, then HIGH or LOW; check the food with a thermometer before serving.",
        ),
        sources=("csu-high-altitude-food-prep", "computed"),
    )


def rice_cooker(case: Case) -> Advice | None:
    """Rice cookers: switched off by a dry pan, not by doneness."""
    if not high(case):
        return None
    return Advice(
        because="A rice cooker switches off when the pan runs dry and its heat climbs, which comes too soon for "
        "cooler-boiling rice.",
        steps=("Add a few spoonfuls more water to each cup of rice, and leave it closed on warm for 10 min more.",),
    )


def thin_air_share(case: Case) -> float:
    """How much air mass a fan moves here against sea level [-]: the same volume, of thinner air."""
    return air.density_ratio(case.here.elevation_m)


def fan_oven(case: Case) -> Advice | None:
    """Convection ovens: the fan moves thinner air."""
    if not high(case):
        return None
    lost = round_to((1 - thin_air_share(case)) * 100, 1)
    return Advice(
        because=f"A fan moves the same volume of air, but it weighs {number(lost, 0)} % less here and hands over less "
        "heat; the oven's thermostat reads true all the same. Fan settings stay 25 °F (15 °C) under still ones, as at "
        "sea level.",
        steps=("Give the oven its full preheat, and load it less full.",),
        sources=("us-std-atm-1976", "common-practice"),
    )


def still_oven(case: Case) -> Advice | None:
    """Still ovens: mostly radiant, and true to their thermostat."""
    if not high(case):
        return None
    return Advice(
        because="A still or deck oven heats mostly by radiation, which thin air does not touch; its thermostat reads "
        "true. It is the food that dries sooner.",
        sources=("common-practice",),
    )


def steam_oven(case: Case) -> Advice | None:
    """Combi ovens and pressureless steamers: steam at the local boil."""
    if not high(case):
        return None
    return Advice(
        because=f"Steam without pressure stops at the local boil, {case.say.temp(case.here.boiling_c)} here, whatever "
        "the display says.",
        steps=("Have the maker's altitude setting entered or run its calibration, and lengthen the steaming times.",),
        sources=("iapws-r7-97", "common-practice"),
    )


def pressure_steamer(case: Case) -> Advice | None:
    """Pressure steamers and jacketed kettles: gauge on top of thinner air."""
    if not high(case):
        return None
    gauge = STOVE_TOP_GAUGE_PA
    return Advice(
        because=f"At {case.say.gauge(gauge)} the steam is {case.say.temp(inside_c(case.here, gauge))} here, against "
        f"{case.say.temp(inside_c(case.sea, gauge))} at sea level.",
        sources=("iapws-r7-97",),
    )


def steam_kettle(case: Case) -> Advice:
    """Steam-jacketed kettles: pressure in the jacket, none in the food."""
    return Advice(
        because="Only the jacket of a steam kettle is under pressure; the food in it boils at "
        f"{case.say.temp(case.here.boiling_c)} like in any pot.",
        sources=("iapws-r7-97",),
    )


def fire(case: Case) -> Advice | None:
    """Grills and smokers: less oxygen for the fire."""
    if not high(case):
        return None
    share = number(thin_air_share(case) * 100, 0)
    return Advice(
        because=f"The air holds {share} % of its sea-level oxygen here, so charcoal and wood burn slower and cooler.",
        steps=("Open the vents wider, light more fuel than at home, and go by the thermometer at the grate.",),
        cautions=(Caution("warn", "Burn charcoal and gas outdoors only.", ("common-practice",)),),
        sources=("us-std-atm-1976", "usda-fsis-high-altitude"),
    )


def camp_stove(case: Case) -> Advice | None:
    """Camp stoves: canisters and thin air."""
    if not high(case):
        return None
    return Advice(
        because="A camp stove gives less heat in thin air and, on a canister, less again when it is cold.",
        steps=("Use a windscreen that leaves the canister free, a lid, and a wide pot.",),
        cautions=(Caution("warn", "Never cook on it inside a tent or a closed room.", ("common-practice",)),),
    )


def steam_table(case: Case) -> Advice | None:
    """Steam tables: cooler water, still hot enough."""
    if not high(case):
        return None
    return Advice(
        because=f"The water of a steam table stops at {case.say.temp(case.here.boiling_c)} here. Holding temperatures "
        "are still within reach; heat-up is slower.",
        steps=("Put food in hot: a steam table holds heat and does not reheat.",),
        sources=("iapws-r7-97", "common-practice"),
    )


def blast_chiller(case: Case) -> Advice | None:
    """Blast chillers: cold air, but less of it."""
    if not high(case):
        return None
    lost = number((1 - thin_air_share(case)) * 100, 0)
    return Advice(
        because=f"The fan of a blast chiller moves {lost} % less air by weight here, so chilling takes longer.",
        steps=("Load it lighter and shallower, and let the probe, not the timer, end the cycle.",),
        sources=("us-std-atm-1976", "common-practice"),
    )


ADVICE: dict[str, tuple[tuple[str, ...], Callable[[Case], Advice | None]]] = {
    "stovetop_pressure_cooker": (("pressure_cook",), pressure_marks("stovetop_pressure_cooker")),
    "electric_pressure_cooker": (("pressure_cook", "preserve"), electric_cooker),
    "commercial_pressure_steamer": (("steam", "pressure_cook"), pressure_steamer),
    "gas_burner": (ON_FLAME, gas),
    "induction_hob": (ON_FLAME, electric),
    "electric_hob": (ON_FLAME, electric),
    "camp_stove": (ON_FLAME, camp_stove),
    "kettle": (("brew", "boil"), kettle),
    "espresso_machine": (("brew",), espresso),
    "immersion_circulator": (("sous_vide",), circulator),
    "slow_cooker": (("slow_cook",), slow_cooker),
    "rice_cooker": (("boil", "simmer", "steam"), rice_cooker),
    "convection_oven": (("bake", "roast", "braise"), fan_oven),
    "rack_oven": (("bake", "roast"), fan_oven),
    "air_fryer": (("bake", "roast", "fry"), fan_oven),
    "standard_oven": (("bake", "roast", "braise"), still_oven),
    "deck_oven": (("bake",), still_oven),
    "combi_oven": (("steam", "bake", "roast"), steam_oven),
    "convection_steamer": (("steam",), steam_oven),
    "steam_kettle": ((*WET,), steam_kettle),
    "grill": (("grill",), fire),
    "smoker": (("smoke",), fire),
    "chafing_dish": (("hold",), steam_table),
    "blast_chiller": (("chill",), blast_chiller),
}
