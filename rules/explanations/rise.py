"""The room that gas takes up, in batter, dough and foam."""

from __future__ import annotations

from rules.book import Case
from rules.explanations.boil import at, side
from rules.explanations.named import Figures, Values, always, at_sea, figure, grouped, here, tenths
from rules.physics import air, water
from rules.physics.ambient import Ambient
from rules.said import Measure, Said, elevation, fixed, number, pressure, sentences, temp

QUARTER_OFF_M = 2133.6
ROOM_C, WARM_C = 20.0, 70.0

say = sentences("why/shared")


def gas_ratio(ambient: Ambient) -> float:
    """Room that a given amount of gas takes up, as a multiple of sea level [-]."""
    return air.SEA_LEVEL_PA / ambient.pressure_pa


def gas_percent(case: Case) -> Measure:
    """How much of the gas does the job of sea level [%]."""
    return number(100 / gas_ratio(case.here), 0)


def gas_swells(case: Case) -> Said:
    """A sentence: how much room the same gas takes up here."""
    return say(
        "gas-swells", at=at(case), side=side(case), percent=gas_percent(case), ratio=number(gas_ratio(case.here), 2)
    )


def gas_equation(case: Case) -> Said:
    """Boyle's law with its numbers."""
    return say("gas-equation", pressure=number(case.here.pressure_pa, 0), ratio=fixed(gas_ratio(case.here), 3))


def kept_percent(ambient: Ambient) -> float:
    """How much of its gas a drink holds under this air [%]."""
    return 100 / gas_ratio(ambient)


def pack_push_pa(ambient: Ambient) -> float:
    """How hard a pack that was closed at sea level is blown up, or pressed in [Pa]."""
    return abs(air.SEA_LEVEL_PA - ambient.pressure_pa)


def foam_swells(ambient: Ambient) -> float:
    """How many times its volume moist air takes up when a foam warms from ROOM_C to WARM_C [-].

    The bubbles are full of air and as much steam as water gives off at that temperature, at the pressure outside.
    """
    dry_cold = ambient.pressure_pa - water.saturation_pressure_pa(ROOM_C)
    dry_warm = ambient.pressure_pa - water.saturation_pressure_pa(WARM_C)
    return dry_cold / dry_warm * (WARM_C + 273.15) / (ROOM_C + 273.15)


VALUES: Values = {
    "gas_ratio": here(number, gas_ratio),
    "pack_push": here(pressure, pack_push_pa),
    "gas_percent": gas_percent,
    "gas_swells": gas_swells,
    "gas_equation": gas_equation,
    "quarter_off": always(elevation(QUARTER_OFF_M)),
    "foam_warm": always(temp(WARM_C)),
    "foam_swells": here(tenths, foam_swells),
    "foam_swells_at_sea": at_sea(tenths, foam_swells),
    "foam_ratio": here(fixed, foam_swells),
    "foam_ratio_at_sea": at_sea(fixed, foam_swells),
    "steam_at_20": lambda case: grouped(water.saturation_pressure_pa(ROOM_C)),
    "steam_at_70": lambda case: grouped(water.saturation_pressure_pa(WARM_C)),
}
FIGURES: Figures = {
    "gas_volume": figure("gas_volume", "factor", gas_ratio, 3),
    "fizz_kept": figure("gas_kept", "percent", kept_percent, None),
    "pack_push": figure("pack_push", "kPa", lambda ambient: pack_push_pa(ambient) / 1000, beside_sea_level=False),
    "foam_swelling": figure("foam_swelling", "factor", foam_swells),
}
