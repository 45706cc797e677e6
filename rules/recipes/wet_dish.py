"""Wet dishes: times by how fast food softens at the boil of the place, the liquid for them, the pressure cooker."""

from __future__ import annotations

import math
from collections.abc import Iterator

from rules.baking import components
from rules.baking.bands import AS_IS, Span
from rules.baking.batch import Batch, changed, rescaled
from rules.baking.change import Change, Shift, step
from rules.baking.mark import TimeAt
from rules.baking.parts import placed
from rules.baking.styles import is_a
from rules.book import Part, rule
from rules.foods import dishes
from rules.heat.crock import crock_min
from rules.heat.pressure import LOW_SETTING_GAUGE_PA, STOVE_TOP_GAUGE_PA, inside_c, published_factor
from rules.heat.wet import pace_words
from rules.physics import evaporation, kinetics
from rules.physics.ambient import ambient
from rules.physics.conduction import remaining
from rules.physics.units import PSI_PER_PA
from rules.recipe import Step
from rules.recipes import contents, keeping, pace, pot
from rules.said import gauge, number, sentences, temp, volume

# Meat from the refrigerator [degC], and up to which reading it is only to be done: tough meat is cooked far beyond.
FROM_FRIDGE_C, DONE_C = 4.0, 76.0
# The style that says how much more liquid a grain is given.
RICE = "rice"
POT_AREA_M2 = 0.06
BOILED_DOWN_TIMES = (*pace.WET_TIMES, "reduce", "cook")
# How many times as much liquid a pot is ever given for a longer simmer: beyond that, look and top up.
MOST_LIQUID = 1.3
# A lid keeps the most of it in.
MOST_LIQUID_COVERED = 1.2
# How much liquid stands over a grain that takes it all up, by weight; what is more is a soup.
LEAST_LIQUID, MOST_TAKEN_UP = 0.8, 8.0
say = sentences("recipes/wet_dish")


@rule("wet.time", "iapws-r7-97", "common-practice")
def wet_time(at: TimeAt) -> Part | None:
    """How long food takes at the boil, at a simmer, in steam or in a bath here, by how fast it softens."""
    paced = pace.paced_by(at) if pot.governs(at) else None
    centre_c = _centre_c(at) if paced else None
    if centre_c is not None:
        return to_the_centre(at.batch, centre_c)
    return simmering(at.batch, paced) if paced else None


def _centre_c(at: TimeAt) -> float | None:
    """The reading of the centre that ends a time [degC], where it is that of meat which is only to be done."""
    for mark in at.step.temperatures:
        here = mark.start >= at.mark.end and not contents.SENTENCE.search(at.step.text, at.mark.end, mark.start)
        if here and keeping.named_inside(mark) and mark.low_c <= DONE_C:
            return mark.low_c
    return None


def to_the_centre(batch: Batch, centre_c: float) -> Part | None:
    """A time in liquid that a reading of the centre ends: heat goes in by the difference to the boil, nothing softens.

    centre_c: the reading [degC]
    source: computed
    """
    here, there = (remaining(FROM_FRIDGE_C, air.boiling_c, centre_c) for air in (batch.here, batch.there))
    ratio = math.log(here) / math.log(there)
    if abs(ratio - 1) < 1e-9:
        return None
    soft = softening_ratio(kinetics.GENERAL, batch.here.boiling_c, batch.there.boiling_c)
    because = say("to-the-centre", boil=temp(batch.here.boiling_c), place=batch.place, centre=temp(centre_c))
    span = Span(ratio, min(1.0, ratio), max(soft.value, ratio)) if ratio > 1 else Span(ratio, soft.value, 1.0)
    return Part(shift=Shift(span, "time"), because=because, sources=("computed", "iapws-r7-97"))


@rule("wet.boiled_down", "iapws-r7-97")
def boiled_down(at: TimeAt) -> Part | None:
    """A time in which water is boiled away stays, since the burner sets how fast that goes."""
    mark = at.mark
    told = mark.what in BOILED_DOWN_TIMES and mark.low_min >= pot.SHORTEST_MIN
    if not told or not is_a(at.batch.style, "boiled_down") or pot.governs(at):
        return None
    return Part(shift=Shift(AS_IS, "time", stays=True), because=say("boiled-down"))


def softening_ratio(dish_class: str, here_c: float, there_c: float) -> Span:
    """How many times longer a class takes at here_c than at there_c [degC], with the range of its z."""
    soft = kinetics.softening(dish_class)
    value, *ends = (kinetics.rate_factor(here_c, there_c, z) for z in (soft.z_k, soft.z_low_k, soft.z_high_k))
    return Span(value, min(ends), max(ends))


def simmering(batch: Batch, paced: str | None = None) -> Part | None:
    """A time at the boil, the simmer, in steam or in a water bath; None where nothing in the pot softens.

    paced: the dish class that sets the pace, that of the pot where not given
    """
    name = paced or pace.dish_class(batch)
    if name is None:
        return None
    ratio = softening_ratio(name, batch.here.boiling_c, batch.there.boiling_c)
    if abs(ratio.value - 1) < 1e-9:
        return None
    because = say(
        "simmering",
        boil=temp(batch.here.boiling_c),
        place=batch.place,
        baseline_boil=temp(batch.there.boiling_c),
        baseline=batch.baseline,
        pace=pace_words(ratio.value),
    )
    sources = (kinetics.softening(name).source, "iapws-r7-97")
    return Part(shift=Shift(ratio, "time"), because=because, sources=sources)


def gauge_pa(one: Step) -> float:
    """Gauge pressure of a step [Pa]: as it says, else that of a low setting, else a stove-top cooker's 15 psi."""
    if one.pressures:
        return one.pressures[0].gauge_pa
    return LOW_SETTING_GAUGE_PA if "low pressure" in one.text.lower() else STOVE_TOP_GAUGE_PA


@rule("wet.pressure", "iapws-r7-97", "anderson-1980-altitude", "common-practice")
def pressure_time(at: TimeAt) -> Part | None:
    """How long food takes under pressure here: the gauge adds to the air outside."""
    if at.mark.what != "pressure":
        return None
    return under_pressure(at.batch, at.step, pace.paced_by(at))


def under_pressure(batch: Batch, one: Step, paced: str | None = None) -> Part | None:
    """A time under pressure, by the published rule for pressure cookers; its range takes in the rate of softening.

    paced: the dish class that sets the pace, that of foods in general where not given
    """
    gauged, name = gauge_pa(one), paced or kinetics.GENERAL
    factor = published_factor(batch.to_m, batch.from_m)
    if abs(factor - 1) < 1e-9:
        return None
    here_c, there_c = inside_c(batch.here, gauged), inside_c(batch.there, gauged)
    ratio = softening_ratio(name, here_c, there_c)
    because = say(
        "under-pressure",
        gauge=gauge(gauged),
        inside=temp(here_c),
        place=batch.place,
        baseline_inside=temp(there_c),
        baseline=batch.baseline,
    )
    span = Span(factor, min(ratio.low, factor), max(ratio.high, factor))
    sources = ("anderson-1980-altitude", "iapws-r7-97", kinetics.softening(name).source)
    return Part(shift=Shift(span, "time"), because=because, sources=sources)


@rule("wet.slow_cook", "common-practice", "usu-ask-extension")
def crock_time(at: TimeAt) -> Part | None:
    """How long a slow cooker takes here: its heat-up stays, and the rest goes by how fast the food softens."""
    paced = pace.paced_by(at) if at.mark.what == "slow_cook" else None
    boiled = simmering(at.batch, paced) if paced else None
    if boiled is None or boiled.shift is None:
        return None
    time_min = (at.mark.low_min + at.mark.high_min) / 2
    span = boiled.shift.span.map(lambda factor: crock_min(time_min, factor) / time_min)
    return Part(shift=Shift(span, "time"), because=say("slow-cook"), sources=boiled.sources)


def pressure_option(batch: Batch) -> tuple[float, float] | None:
    """How long a stove-top cooker at 15 psi takes here [min]; None where no table has the class."""
    name = pace.dish_class(batch)
    span = dishes.sea_level_time(None, name, "pressure_cook") if name else None
    if span is None or name is None:
        return None
    here_c, sea_c = (inside_c(air, STOVE_TOP_GAUGE_PA) for air in (batch.here, ambient(0.0)))
    ratio, factor = softening_ratio(name, here_c, sea_c), published_factor(batch.to_m)
    return span.low_min * min(ratio.low, factor), span.high_min * max(ratio.high, factor)


@rule("wet.liquid", "ashrae-applications")
def liquid(batch: Batch) -> Part | None:
    """A grain that takes up its liquid is given more; else the largest liquid of a pot takes what boils off."""
    if absorbing := tuple(_absorbed(batch)):
        return changed(absorbing)
    return changed(_liquid(batch)) if is_a(batch.style, "topped_up") else None


def _absorbed(batch: Batch) -> Iterator[Change]:
    """The liquid of a grain that takes it up, by the share that rice is given; none where it is drained."""
    found = [at for at in pot.simmered(batch) if pace.paced_by(at) in contents.GRAINS]
    if not found or any(contents.drained(batch.recipe, at.step, at.mark) for at in found):
        return
    grain_g = sum(line.mass_mid_g or 0.0 for line in batch.recipe.ingredients if contents.is_grain(line))
    every = (p for p in placed(batch.recipe) if p.part.name == "liquid" and contents.poured_in(p.line))
    pours = [p for p in every if grain_g and LEAST_LIQUID <= p.mass_g / grain_g <= MOST_TAKEN_UP]
    if not pours:
        return
    main = max(pours, key=lambda p: p.mass_g)
    ratio = components.ratio(RICE, "liquid", batch.from_m, batch.to_m)
    change = rescaled(main, ratio, "liquid", because=say("absorbed", way=batch.way), coarse=True)
    if change and change.way != "same":
        yield change


def _liquid(batch: Batch) -> Iterator[Change]:
    """The change, reckoned for a pot of 28 cm (11 in)."""
    pours = [p for p in batch.parts("liquid", least_g=100.0) if p.mass_g and contents.poured_in(p.line)]
    if not pours or batch.here.boiling_c == batch.there.boiling_c:
        return
    extra = _boiled_off(batch)
    if extra is None:
        return
    main = max(pours, key=lambda p: p.mass_g)
    open_pot = any(contents.covered(batch.recipe, at.step, at.mark) is False for at in pot.simmered(batch))
    most = MOST_LIQUID if open_pot else MOST_LIQUID_COVERED
    span = extra.map(lambda ml: min(most, max(1 / most, 1 + ml / main.mass_g)))
    more = "more" if extra.value > 0 else "less"
    because = say("liquid", way=batch.way, amount=volume(abs(extra.value)), more=more)
    change = rescaled(main, span, "liquid", because=because, coarse=True)
    if change and change.way != "same":
        yield change


def _boiled_off(batch: Batch) -> Span | None:
    """How much more its simmering times boil off here [ml], each with its lid or without; None for none."""
    told = [
        _more_boiled_off(at, name)
        for at in pot.simmered(batch)
        if (name := pace.paced_by(at)) and not contents.drained(batch.recipe, at.step, at.mark)
    ]
    if not told:
        return None
    return Span(sum(t.value for t in told), sum(t.low for t in told), sum(t.high for t in told))


def _more_boiled_off(at: TimeAt, name: str) -> Span:
    """How much more one time boils off here [ml]. name: the dish class that sets its pace"""
    batch, minutes = at.batch, (at.mark.low_min + at.mark.high_min) / 2
    lid = contents.covered(batch.recipe, at.step, at.mark) is not False

    def more_ml(ratio: float) -> float:
        return evaporation.extra_liquid_ml(
            minutes * ratio, minutes, POT_AREA_M2, covered=lid, elevation_m=batch.to_m, from_elevation_m=batch.from_m
        )

    return softening_ratio(name, batch.here.boiling_c, batch.there.boiling_c).map(more_ml)


@rule("wet.gauge", "uwyo-altitude-adjusters", "iapws-r7-97")
def gauge_note(batch: Batch) -> Part | None:
    """The gauge that would be as hot inside here as the recipe's is there; the recipe's own stays."""
    steps = enumerate(batch.recipe.steps)
    return changed(
        _same_gauge(batch, index, one) for index, one in steps if any(t.what == "pressure" for t in one.times)
    )


def _same_gauge(batch: Batch, index: int, one: Step) -> Change:
    gauged = gauge_pa(one)
    same_heat = gauged + batch.there.pressure_pa - batch.here.pressure_pa
    psi, same_psi = gauged * PSI_PER_PA, same_heat * PSI_PER_PA
    because = say("same-gauge", same=number(same_psi, 1), gauge=number(psi, 1), baseline=batch.baseline)
    return Change(
        what="pressure", way="same", at=step(index), from_value=round(psi, 1), from_unit="psi", to_value=round(psi, 1),
        to_low=round(min(psi, same_psi), 1), to_high=round(max(psi, same_psi), 1), to_unit="psi", because=because,
    )  # fmt: skip
