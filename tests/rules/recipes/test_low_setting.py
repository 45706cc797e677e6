"""A pressure cooker goes by the published rule at every setting; CoolProp tells how far a low one may need more."""

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
def test_every_setting_goes_by_the_published_rule(hand, setting: str, psi: float) -> None:
    step = hand.step(f"Cook the meat at {setting} for 240 minutes.", ("time", "240 minutes", 240, 240, "pressure"))
    meat = hand.line(2, "lb", "beef chuck", 907)
    recipe = Recipe(title="Pot roast", ingredients=(meat,), steps=(step,))
    new = convert(recipe, from_elevation_m=0, to_elevation_m=2133.6, style="braise")
    # 7,000 ft is 5,000 ft above 2,000 ft, at 5 % for each thousand
    assert new.steps[0].times[0].to_low_min == 240 * 1.25
    cooler_k = steam_c(SEA_PA + psi * PSI_PA) - steam_c(HERE_PA + psi * PSI_PA)
    stubborn = 240 * 10 ** (cooler_k / softening("collagen_cut").z_low_k)
    change = next(c for c in new.changes if c.what == "time")
    assert change.to_high == pytest.approx(max(300, stubborn), rel=0.04)
