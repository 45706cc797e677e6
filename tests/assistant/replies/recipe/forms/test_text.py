"""A converted recipe as plain text."""

from __future__ import annotations

from assistant.recipes.converting import convert_recipe
from assistant.replies.recipe.forms.text import as_text


def test_what_changes_is_starred_and_what_it_was_is_said(sample) -> None:
    text = as_text(sample("yellow_layer_cake"))
    assert "* 2 1/4 tsp baking powder [10 g] (was 1 tbsp baking powder)" in text
    assert "- 2 3/4 cups (375 g) cake flour, sifted\n" in text
    assert "4. Divide between the pans, filling them no more than half (was two thirds)" in text
    assert "Baking powder: 1 tbsp becomes 2 1/4 tsp (range 2 1/4 tsp to 2 1/2 tsp plus 1/8 tsp)." in text
    assert "Bake time: 24 minutes" in text


def test_what_is_added_stands_with_the_batter() -> None:
    cake = "Pound cake\nFor the cake:\n1 lb butter\n1 lb sugar\n9 eggs\n1 lb flour\n"
    pound = f"{cake}For the glaze:\n1 cup powdered sugar\n"
    text = as_text(convert_recipe(f"{pound}\nBake at 325 F for 70 minutes.", to_elevation_m=2133.6))
    assert text.index("tbsp water (new)") < text.index("For the glaze:")


def test_a_foam_gets_no_water(sample) -> None:
    assert "water (new)" not in as_text(sample("genoise_roulade")) + as_text(sample("angel_food"))


def test_where_nothing_changes_that_is_said(sample) -> None:
    text = as_text(sample("yellow_layer_cake", to_elevation_m=0))
    assert "nothing changes for the elevation" in text
    assert "What changes" not in text
