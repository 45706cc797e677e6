"""The baker's formula of a recipe, and what each ingredient is in it."""

from __future__ import annotations

import pytest

from rules.baking.division import batter
from rules.baking.formula import ratios
from rules.baking.leavening import gas_ratio
from rules.baking.parts import part_of
from rules.recipe import Recipe


@pytest.mark.parametrize(("item", "part"), [
    ("all-purpose flour", "flour"), ("cornstarch", "starch"), ("almond flour", "nut_meal"),
    ("granulated sugar", "sugar"),
    ("powdered sugar", "icing_sugar"), ("honey", "syrup"), ("whole milk", "liquid"), ("buttermilk", "sour_liquid"),
    ("egg white", "white"), ("egg yolk", "yolk"), ("egg", "egg"), ("baking powder", "powder"), ("baking soda", "soda"),
    ("butter", "fat"), ("peanut butter", "nut_butter"), ("vegetable oil", "fat"),
    ("active dry yeast", "yeast"),
    ("milk powder", "other"), ("canned condensed milk", "other"), ("vanilla extract", "other"),
    ("cocoa powder", "cocoa"),
    ("cream of tartar", "acid"), ("salt", "salt"), ("beef stock", "liquid"), ("cream cheese block", "other"),
])  # fmt: skip
def test_the_part_an_ingredient_plays(item, part) -> None:
    assert part_of(item).name == part


def test_a_cake_by_its_ratios(layer_cake) -> None:
    found = ratios(layer_cake)
    assert found.flour_g == 281
    assert found.percent["flour"] == 100
    assert found.sugar == pytest.approx(300 / 281, abs=0.01)
    # water of 244 g of milk, 150 g of egg and 113 g of butter
    assert found.liquid == pytest.approx((0.88 * 244 + 0.76 * 150 + 0.16 * 113) / 281, abs=0.02)
    assert found.leavening_tsp_per_cup == {"powder": pytest.approx(2 / 2.25, abs=0.02)}
    assert found.unweighed == 0


def test_soda_gives_more_gas_than_powder(hand) -> None:
    flour = hand.line(1, "cup", "flour", 125)
    powder, soda = (
        ratios(Recipe(ingredients=(flour, hand.line(1, "tsp", name, 4.6)))).gas_ml_per_g
        for name in ("baking powder", "baking soda")
    )
    assert 3 <= soda / powder <= 5


def test_frosting_is_no_part_of_the_batter(hand) -> None:
    cake = Recipe(
        ingredients=(
            hand.line(2, "cup", "flour", 250, component="cake"),
            hand.line(1, "cup", "sugar", 200, component="cake"),
            hand.line(3, "cup", "powdered sugar", 360, component="frosting"),
        )
    )
    assert [p.line.item for p in batter(cake)] == ["flour", "sugar"]


def test_flour_for_dusting_is_no_part_of_the_dough(hand) -> None:
    dough = Recipe(ingredients=(hand.line(500, "g", "flour", 500), hand.line(20, "g", "flour for dusting", 20)))
    assert ratios(dough).flour_g == 500


def test_a_recipe_without_flour_has_no_percentages(fudge) -> None:
    found = ratios(fudge)
    assert found.percent == {}
    assert found.sugar is None


def test_unweighed_lines_are_counted(hand) -> None:
    dough = Recipe(ingredients=(hand.line(500, "g", "flour", 500), hand.line(None, None, "salt", None)))
    assert ratios(dough).unweighed == 1


@pytest.mark.parametrize("elevation_m", [500, 1500, 2500, 4000])
def test_wet_gas_swells_more_than_dry(elevation_m) -> None:
    assert 1 < gas_ratio(0, elevation_m) < gas_ratio(0, elevation_m, 60)
    assert gas_ratio(0, elevation_m) * gas_ratio(elevation_m, 0) == pytest.approx(1)


def test_percentages_of_flour_nobody_weighed_are_ratios_all_the_same(hand) -> None:
    lines = ((100, "flour"), (63, "water"), (2.5, "salt"), (0.4, "instant yeast"))
    found = ratios(Recipe(ingredients=tuple(hand.line(n, "percent", item, None) for n, item in lines)))
    assert (found.flour_g, found.liquid, found.percent["yeast"]) == (100, 0.63, 0.4)


def test_self_rising_flour_brings_its_powder(hand) -> None:
    # 1 1/2 tsp of powder to the cup: common practice
    found = ratios(Recipe(ingredients=(hand.line(2, "cup", "self-rising flour", 250),)))
    assert found.leavening_tsp_per_cup == {"powder": 1.5}


def test_berries_keep_their_water(hand) -> None:
    flour, berries = hand.line(1, "cup", "flour", 125), hand.line(1, "cup", "blueberries", 148)
    assert ratios(Recipe(ingredients=(flour, berries))).liquid == 0
