"""The low setting of a pressure cooker, some 7 psi (common practice), against steam temperatures by CoolProp."""

import pytest
from CoolProp.CoolProp import PropsSI

from rules.physics.kinetics import softening
from rules.recipe import Recipe
from rules.recipes.convert import convert

PSI_PA = 6894.757
SEA_PA, HERE_PA = 101_325.0, 78_190.0  # U.S. Standard Atmosphere at 0 and 2,133.6 m


def steam_c(pressure_pa: float) -> float:
    return PropsSI("T", "P", pressure_pa, "Q", 1, "Water") - 273.15


@pytest.mark.parametrize(("setting", "psi"), [("low pressure", 7.0), ("high pressure", 15.0)])
def test_a_setting_is_as_hot_as_its_gauge(hand, setting: str, psi: float) -> None:
    step = hand.step(f"Cook the meat at {setting} for 240 minutes.", ("time", "240 minutes", 240, 240, "pressure"))
    meat = hand.line(2, "lb", "beef chuck", 907)
    recipe = Recipe(title="Pot roast", ingredients=(meat,), steps=(step,))
    moved = convert(recipe, from_elevation_m=0, to_elevation_m=2133.6, style="braise").steps[0].times[0]
    cooler_k = steam_c(SEA_PA + psi * PSI_PA) - steam_c(HERE_PA + psi * PSI_PA)
    expected = 240 * 10 ** (cooler_k / softening("collagen_cut").z_k)
    assert moved.to_low_min == pytest.approx(expected, rel=0.04)
