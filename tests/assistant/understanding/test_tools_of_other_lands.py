"""Tools by their British, Indian, Australian, South African and hotel names, and ingredients likewise."""

from __future__ import annotations

import pytest

from assistant.answering import understand
from assistant.understanding.lexicon import meanings


@pytest.mark.parametrize(
    ("said", "method"),
    [
        ("toor dal in the cooker at 2,900 m", "pressure_cook"),
        ("potatoes on the hob at 1,700 m", "simmer"),
        ("steak on the braai at 1,900 m", "grill"),
        ("chops braaied at 1,900 m", "grill"),
        ("chapatis on the tawa at 3,100 m", "fry"),
        ("bhindi in the kadhai at 2,300 m", "fry"),
        ("batter in the idli stand at 1,500 m", "steam"),
        ("lamb neck in the potjie at 2,000 m", "braise"),
    ],
)
def test_methods(said: str, method: str) -> None:
    assert understand(said).method == method


@pytest.mark.parametrize(
    ("word", "equipment"),
    [
        ("otg", "toaster_oven"),
        ("degchi", "stockpot"),
        ("dekchi", "stockpot"),
        ("handi", "stockpot"),
        ("billy can", "stockpot"),
        ("three-legged pot", "dutch_oven"),
        ("kazan", "dutch_oven"),
        ("range cooker", "standard_oven"),
        ("gas cooker", "gas_burner"),
        ("ceramic hob", "electric_hob"),
        ("spirit stove", "camp_stove"),
        ("kerosene stove", "camp_stove"),
        ("bratt pan", "tilt_skillet"),
        ("boiling pan", "steam_kettle"),
        ("hot cupboard", "chafing_dish"),
        ("chip pan", "deep_fryer"),
        ("clay oven", "wood_fired_oven"),
        ("combination steamer", "combi_oven"),
        ("jaffle iron", "jaffle_iron"),
        ("cool box", "cool_box"),
        ("whistling pressure cooker", "stovetop_pressure_cooker"),
    ],
)
def test_tools(word: str, equipment: str) -> None:
    assert ("equipment", equipment) in meanings(word.replace("-", " "))


@pytest.mark.parametrize(
    ("word", "ingredient"),
    [
        ("maida", "all-purpose flour"),
        ("atta", "whole wheat flour"),
        ("besan", "chickpea flour"),
        ("sooji", "semolina flour"),
        ("strong bread flour", "bread flour"),
        ("cornflour", "cornstarch"),
        ("gur", "panela"),
        ("bicarb of soda", "baking soda"),
        ("gelatine leaves", "unflavored gelatin"),
        ("mealie meal", "cornmeal"),
        ("masa", "masa harina"),
        ("double cream", "heavy cream"),
        ("treacle", "molasses"),
        ("hing", "ground spice"),
        ("full cream milk", "whole milk"),
        ("amasi", "buttermilk"),
    ],
)
def test_ingredients(word: str, ingredient: str) -> None:
    assert ("ingredient", ingredient) in meanings(word)
