"""Sentences and figures that several explanations share."""

from __future__ import annotations

from dataclasses import dataclass

from rules.book import Case, celsius
from rules.model import Figure
from rules.physics import air, kinetics
from rules.physics.evaporation import BELOW_BOIL_K, drying_ratio
from rules.physics.units import round_to
from rules.say import number

NOTICEABLE_K = 0.3


def drop_k(case: Case) -> float:
    """How far water boils under sea level here [K]; negative below sea level."""
    return case.sea.boiling_c - case.here.boiling_c


def by_side(case: Case, *, above: str, level: str, below: str) -> str:
    """The words that fit a kitchen above, at or below sea level."""
    if abs(drop_k(case)) < NOTICEABLE_K:
        return level
    return above if drop_k(case) > 0 else below


def at(case: Case) -> str:
    """Where the kitchen is: "at 7,000 ft (2,130 m)" or "here at sea level"."""
    return "here at sea level" if abs(case.here.elevation_m) < 1 else f"at {case.place}"


def capital(words: str) -> str:
    """The words with a capital at the front."""
    return words[:1].upper() + words[1:]


def boils(case: Case) -> str:
    """A sentence: where water boils here, and how far that is from sea level."""
    start = f"{capital(at(case))} water boils at {case.say.temp(case.here.boiling_c)}"
    apart = case.say.temp_drop(abs(drop_k(case)))
    return start + by_side(case, above=f", {apart} under sea level.", level=".", below=f", {apart} over sea level.")


def boiling_figure(case: Case) -> Figure:
    """Where water boils, here and at sea level."""
    return celsius("boiling_point", "Water boils at", case.here.boiling_c, case.sea.boiling_c)


def boiling_equation(case: Case) -> str:
    """Air pressure and boiling point with their numbers."""
    pressure = f"{number(case.here.pressure_pa, 0)} Pa"
    if case.request.pressure_pa is not None:
        return f"p = {pressure}, as measured; T_sat(p) = {case.here.boiling_c:.2f} °C."
    height, scale = number(case.here.elevation_m, 0), number(air.SEA_LEVEL_K / air.LAPSE_K_PER_M, 0)
    height = f"({height})" if case.here.elevation_m < 0 else height
    return (
        f"p = {number(air.SEA_LEVEL_PA, 0)}·(1 − {height}/{scale})^{air.EXPONENT:.4f} = {pressure}; T_sat(p) = "
        f"{case.here.boiling_c:.2f} °C."
    )


@dataclass(frozen=True, slots=True)
class Pace:
    """How many times as long a food takes at the boil here as at sea level: least, likely, most."""

    soft: kinetics.Softening
    low: float
    likely: float
    high: float

    @property
    def words(self) -> str:
        """What stands after "takes": "10 to 30 % longer", "2.4 to 2.8 times as long", "3 to 8 % less time".

        >>> from rules.physics.kinetics import softening
        >>> Pace(softening("pasta"), 1.13, 1.31, 1.5).words
        '15 to 50 % longer'
        """
        if self.high >= 1.9:
            return f"{span(self.low, self.high, 0.1)} times as long"
        less = self.likely < 1
        near, far = sorted((abs(self.low - 1) * 100, abs(self.high - 1) * 100))
        return f"{span(near, far, 1 if far < 10 else 5)} % {'less time' if less else 'longer'}"


def span(low: float, high: float, step: float) -> str:
    """Two numbers as a range, each rounded to the step and at least one step; "about" one where they agree."""
    ends = [number(max(step, round_to(end, step))) for end in (low, high)]
    return f"about {ends[0]}" if ends[0] == ends[1] else f"{ends[0]} to {ends[1]}"


def pace(case: Case, dish_class: str) -> Pace:
    """The pace of a class of dish at the boil here, by its softening rate."""
    soft = kinetics.softening(dish_class)
    low, likely, high = (
        kinetics.rate_factor(case.here.boiling_c, case.sea.boiling_c, z)
        for z in (soft.z_high_k, soft.z_k, soft.z_low_k)
    )
    return Pace(soft, min(low, high), likely, max(low, high))


def pace_figure(of: Pace, what: str, figure_id: str = "time_factor") -> Figure:
    """The factor on the time, with its range. what: the food, as the label ends ("pasta")."""
    return Figure(
        figure_id,
        f"Time against sea level, {what}",
        round(of.likely, 2),
        "factor",
        round(of.low, 2),
        round(of.high, 2),
        sea_level=1.0,
    )


def pace_equation(case: Case, of: Pace) -> str:
    """The softening rate with its numbers."""
    soft = of.soft
    return (
        f"Time factor = 10^(({case.sea.boiling_c:.2f} − {case.here.boiling_c:.2f})/z) with z = {number(soft.z_k)} K "
        f"({number(soft.z_low_k)} to {number(soft.z_high_k)} K): ×{of.likely:.2f} ({of.low:.2f} to {of.high:.2f})."
    )


def gas_ratio(case: Case) -> float:
    """Room that a given amount of gas takes up here, as a multiple of sea level."""
    return air.SEA_LEVEL_PA / case.here.pressure_pa


def gas_figure(case: Case) -> Figure:
    """The room that gas takes up here."""
    return Figure("gas_volume", "Room the same gas takes up", round(gas_ratio(case), 3), "factor", sea_level=1.0)


def gas_swells(case: Case) -> str:
    """A sentence: how much room the same gas takes up here."""
    ratio = number(gas_ratio(case), 2)
    share = number(100 / gas_ratio(case), 0)
    return by_side(
        case,
        above=f"{capital(at(case))} the air presses with {share} % of its sea-level push, so the same gas takes up "
        f"{ratio} times the room.",
        level=f"{capital(at(case))} the air presses as the recipe expects, so the gas takes up the room it should.",
        below=f"{capital(at(case))} the air presses harder than at sea level, so the same gas takes up only {ratio} "
        "times the room.",
    )


def gas_equation(case: Case) -> str:
    """Boyle's law with its numbers."""
    return (
        f"V_here/V_sea = p_sea/p_here = {number(air.SEA_LEVEL_PA, 0)}/{number(case.here.pressure_pa, 0)} = "
        f"{gas_ratio(case):.3f}, for dry gas at the same temperature."
    )


def drying_percent(case: Case) -> str:
    """How much faster (below sea level: more slowly) a surface dries here in equally damp air, in percent."""
    return number(round_to(abs(drying_ratio(case.here.elevation_m) - 1) * 100, 1))


def drying_figure(case: Case) -> Figure:
    """How fast a surface dries here."""
    ratio = round(drying_ratio(case.here.elevation_m), 2)
    return Figure("drying", "Drying against sea level, air equally damp", ratio, "factor", sea_level=1.0)


def drying_equation(case: Case) -> str:
    """Diffusion of vapour with its numbers."""
    ratio = drying_ratio(case.here.elevation_m)
    return (
        "Vapour spreads as 1/p: p_sea/p_here = "
        f"{number(air.SEA_LEVEL_PA, 0)}/{number(air.pressure_pa(case.here.elevation_m), 0)} = {ratio:.2f}."
    )


def density_figure(case: Case) -> Figure:
    """How much air, and oxygen, a given volume holds here."""
    density = round(air.density_ratio(case.here.elevation_m), 3)
    return Figure("air_density", "Air density against sea level", density, "factor", sea_level=1.0)


def simmer_figure(case: Case) -> Figure:
    """Where the liquid of a bare simmer stands."""
    here_c, sea_c = (a.boiling_c - BELOW_BOIL_K for a in (case.here, case.sea))
    return celsius("liquid_temperature", "Liquid at a bare simmer", here_c, sea_c)


def small_drop(case: Case, kelvin: float) -> str:
    """A difference too small for whole degrees, to a tenth of a degree Fahrenheit and a hundredth Celsius."""
    us, metric = f"{number(kelvin * 1.8, 1)} °F", f"{number(kelvin)} °C"
    return f"{us} ({metric})" if case.request.units == "us" else f"{metric} ({us})"
