"""While pressure builds, falls or is let off, the clock is the cooker's: those times never change."""

import pytest

from assistant.recipes.converting import convert_recipe

RECIPE = """Pork for Tacos

2 lb pork shoulder, in chunks
1 cup chicken stock
1 tsp salt

1. Put everything into the pressure cooker.
2. Cook at high pressure for 42 minutes. {told}
"""
FALLING = (
    "Let the pressure fall by itself for 17 minutes.",
    "Natural release: 17 minutes.",
    "Natural release for 17 minutes, then let out what is left.",
    "Give it a 17-minute natural release.",
    "Let the steam release naturally, about 17 minutes.",
    "Allow the pot to depressurize for 17 minutes.",
    "Allow 17 minutes of natural pressure release.",
    "Let it NPR for 17 minutes.",
    "Naturally release the pressure for 17 minutes. After 17 minutes, open the valve.",
    "Let the pressure subside for 17 minutes. After 17 minutes, do a quick release.",
    "After 17 minutes, release any remaining pressure.",
    "Wait 17 minutes before you vent the steam.",
    "Switch off and leave the cooker to cool down naturally for 17 minutes.",
    "Leave it on the keep-warm setting for 17 minutes.",
    "Keep warm for 17 minutes, then open.",
    "Once the time is up, let it sit for 17 minutes and vent.",
    "Let it stand, unopened, for 17 minutes.",
    "Let the pressure come down. This takes 17 minutes.",
    "The valve needs 17 minutes of venting.",
)
BUILDING = (
    "It takes 17 minutes to come to pressure.",
    "The cooker needs 17 minutes to come up to full pressure.",
    "Expect 17 minutes for it to build pressure.",
    "It takes about 17 minutes to reach pressure.",
    "Allow 17 minutes for the pot to pressurize.",
)


@pytest.mark.parametrize("told", FALLING + BUILDING)
def test_what_the_cooker_takes_stays(told: str) -> None:
    done = convert_recipe(RECIPE.format(told=told), to_elevation_m=2134.0)
    last = done.steps[-1].text
    assert "(was 42 minutes)" in last
    assert told in last


@pytest.mark.parametrize(
    "told",
    [
        "Cook at high pressure for 42 minutes with a natural release of 17 minutes.",
        "Turn the vent to sealing, set to 42 minutes at high pressure, then let the pressure drop for 17 minutes.",
        "Set the timer for 42 minutes at high pressure; release naturally for 17 minutes.",
        "Bring to high pressure, cook for 42 minutes, and let the pressure go down by itself, 17 minutes.",
    ],
)
def test_what_cooks_beside_it_is_longer(told: str) -> None:
    text = RECIPE.replace("Cook at high pressure for 42 minutes. {told}", told)
    last = convert_recipe(text, to_elevation_m=2134.0).steps[-1].text
    assert "(was 42 minutes)" in last
    assert "17 minutes (was" not in last
    assert "(was 17" not in last
