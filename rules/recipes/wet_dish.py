"""Wet dishes: times by how fast food softens at the boil of the place, the liquid for them, the pressure cooker."""

from __future__ import annotations

from collections.abc import Iterator

from rules.baking.bands import AS_IS, Span
from rules.baking.batch import Batch, changed, rescaled
from rules.baking.change import Change, Shift, step
from rules.baking.mark import TimeAt
from rules.baking.styles import is_a
from rules.book import Part, rule
from rules.foods import dishes
from rules.heat.pressure import LOW_SETTING_GAUGE_PA, STOVE_TOP_GAUGE_PA, inside_c
from rules.heat.wet import pace_words
from rules.physics import evaporation, kinetics
from rules.physics.ambient import ambient
from rules.physics.units import M_PER_FT, PSI_PER_PA
from rules.recipe import Step
from rules.recipes import pot
from rules.said import gauge, number, sentences, temp, volume

POT_AREA_M2 = 0.06
BOILED_DOWN_TIMES = (*pot.WET_TIMES, "reduce", "cook")
# How many times as much liquid a pot is ever given for a longer simmer: beyond that, look and top up.
MOST_LIQUID = 1.5
say = sentences("recipes/wet_dish")


@rule("wet.time", "iapws-r7-97", "common-practice")
def wet_time(at: TimeAt) -> Part | None:
    """How long food takes at the boil, at a simmer, in steam or in a bath here, by how fast it softens."""
    if not pot.governs(at):
        return None
    paced = pot.paced_by(at)
    return simmering(at.batch, paced) if paced else None


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
    name = paced or pot.dish_class(batch)
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
    paced = pot.paced_by(at)
    return under_pressure(at.batch, at.step, paced) if paced else None


def under_pressure(batch: Batch, one: Step, paced: str | None = None) -> Part | None:
    """A time under pressure. None where nothing in the cooker softens.

    paced: the dish class that sets the pace, that of the cooker where not given
    """
    gauged, name = gauge_pa(one), paced or pot.dish_class(batch)
    if name is None:
        return None
    here_c, there_c = inside_c(batch.here, gauged), inside_c(batch.there, gauged)
    ratio = softening_ratio(name, here_c, there_c)
    if abs(ratio.value - 1) < 1e-9:
        return None
    because = say(
        "under-pressure",
        gauge=gauge(gauged),
        inside=temp(here_c),
        place=batch.place,
        baseline_inside=temp(there_c),
        baseline=batch.baseline,
    )
    rule_of_thumb = _rule_of_thumb(batch.to_m) / _rule_of_thumb(batch.from_m)
    span = Span(ratio.value, min(ratio.low, rule_of_thumb), max(ratio.high, rule_of_thumb))
    sources = ("iapws-r7-97", kinetics.softening(name).source, "anderson-1980-altitude")
    return Part(shift=Shift(span, "time"), because=because, sources=sources)


def _rule_of_thumb(elevation_m: float) -> float:
    """The published 5 % more for each 1,000 ft above 2,000 ft, smoothly."""
    return 1 + 0.05 * max(0.0, elevation_m / (1000 * M_PER_FT) - 2)


def pressure_option(batch: Batch) -> tuple[float, float] | None:
    """How long a stove-top cooker at 15 psi takes here [min]; None where no table has the class."""
    name = pot.dish_class(batch)
    span = dishes.sea_level_time(None, name, "pressure_cook") if name else None
    if span is None or name is None:
        return None
    here_c, sea_c = (inside_c(air, STOVE_TOP_GAUGE_PA) for air in (batch.here, ambient(0.0)))
    ratio = softening_ratio(name, here_c, sea_c)
    return span.low_min * ratio.low, span.high_min * ratio.high


@rule("wet.liquid", "ashrae-applications")
def liquid(batch: Batch) -> Part | None:
    """The largest liquid of a pot takes what the longer simmer boils off."""
    return changed(_liquid(batch)) if is_a(batch.style, "topped_up") else None


def _liquid(batch: Batch) -> Iterator[Change]:
    """The change, reckoned for a covered pot of 28 cm (11 in)."""
    pours = [p for p in batch.parts("liquid", least_g=100.0) if p.mass_g and p.line.role != "dairy"]
    minutes, name = pot.minutes(batch), pot.dish_class(batch)
    if not pours or not minutes or name is None or batch.here.boiling_c == batch.there.boiling_c:
        return
    ratio = softening_ratio(name, batch.here.boiling_c, batch.there.boiling_c)
    main = max(pours, key=lambda p: p.mass_g)
    extra = ratio.map(
        lambda r: evaporation.extra_liquid_ml(
            minutes * r, minutes, POT_AREA_M2, covered=True, elevation_m=batch.to_m, from_elevation_m=batch.from_m
        )
    )
    span = extra.map(lambda ml: min(MOST_LIQUID, max(1 / MOST_LIQUID, 1 + ml / main.mass_g)))
    more = "more" if extra.value > 0 else "less"
    because = say("liquid", way=batch.way, amount=volume(abs(extra.value)), more=more)
    change = rescaled(main, span, "liquid", because=because, coarse=True)
    if change and change.way != "same":
        yield change


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
