"""A flat list cut into its parts, and the names that parts go by."""

from __future__ import annotations

import pytest

from assistant.recipes.read import read
from rules.baking.division import batter, divided, left_steps
from rules.baking.part_names import announced, first_left, heads, is_left, laid, named, tied
from rules.recipe import Recipe
from rules.recipes.convert import convert

KITCHEN_M = 2133.6
FROSTED = """
Mocha layer cake
Ingredients
250 g flour
2 tsp baking powder
120 g butter
180 g sugar
2 eggs
150 ml milk
90 g butter
250 g icing sugar
1 tbsp strong coffee
Method
1. Cream the 120 g butter with the sugar, add the eggs, then flour, baking powder and milk.
2. Bake at 180 C for 30 minutes.
3. For the icing, beat the 90 g butter with icing sugar and coffee.
4. Beat to stiff peaks if you like it firm, and spread.
"""


def items(lines) -> list[str]:
    return [line.line for line in lines]


def test_a_recipe_without_a_batter_stays_in_one_piece() -> None:
    recipe = read("Stew\n1 kg beef\n2 carrots\n500 ml stock\nSimmer 2 hours.")
    assert divided(recipe) == recipe
    assert divided(Recipe()) == Recipe()


def test_the_frosting_is_no_batter_and_its_lines_stay() -> None:
    recipe = read(FROSTED)
    assert [p.line.line for p in batter(recipe)] == items(recipe.ingredients)[:6]
    converted = convert(recipe, to_elevation_m=KITCHEN_M)
    assert [to.text for to in converted.ingredients[6:]] == items(recipe.ingredients)[6:]


def test_the_reader_sees_the_list_as_it_is() -> None:
    recipe = read(FROSTED)
    converted = convert(recipe, to_elevation_m=KITCHEN_M)
    assert {to.line.component for to in converted.ingredients} == {""}
    assert {one.step.component for one in converted.steps} == {one.plain.component for one in converted.steps} == {""}


def test_an_amount_in_a_step_belongs_to_the_line_that_has_it() -> None:
    text = FROSTED.replace("the sugar", "the 180 g sugar")
    steps = [one.text for one in convert(read(text), to_elevation_m=KITCHEN_M).steps]
    assert "158 g (was 180 g) sugar" in steps[0]
    assert "90 g butter" in steps[2]


def test_only_the_steps_of_the_frosting_are_left() -> None:
    assert left_steps(read(FROSTED)) == {2, 3}


def test_nuts_toasted_first_do_not_end_the_batter() -> None:
    text = "Nut loaf cake\n100 g walnuts\n200 g flour\n2 tsp baking powder\n100 g butter\n120 g sugar\n2 eggs\n"
    text += (
        "Method\n1. Bake the walnuts at 180 C for 8 minutes.\n2. Beat butter, sugar and eggs, add flour and powder.\n"
    )
    recipe = read(text + "3. Bake in a loaf tin for 40 minutes.")
    assert len(batter(recipe)) == len(recipe.ingredients)


def test_a_cut_that_would_take_the_leavening_is_not_made() -> None:
    text = "Odd cake\n200 g flour\n100 g butter\n150 g sugar\n2 eggs\n2 tsp baking powder, for the topping\n"
    recipe = read(text + "Method\n1. Mix and bake at 180 C for 30 minutes.")
    assert len(batter(recipe)) == len(recipe.ingredients)


@pytest.mark.parametrize(
    ("name", "part"),
    [("orange glaze", "glaze"), ("sponge cake", "batter"), ("cake with glaze", "batter"), ("pastry cream", "custard")],
)
def test_a_name_is_that_of_its_last_word(name: str, part: str) -> None:
    assert getattr(named(name), "id", None) == part


@pytest.mark.parametrize("name", ["ginger frosting", "crumb topping", "lemon curd", "toffee sauce", "levain"])
def test_what_is_left(name: str) -> None:
    assert is_left(name)


@pytest.mark.parametrize("name", ["", "dough", "choux", "pie crust", "muffins"])
def test_what_is_not_left(name: str) -> None:
    assert not is_left(name)


@pytest.mark.parametrize(
    ("sentence", "part"),
    [
        ("For the mocha icing, melt the chocolate.", "frosting"),
        ("Meanwhile, make the syrup.", "syrup"),
        ("Glaze: stir until smooth.", "glaze"),
        ("Whisk together the frosting ingredients.", "frosting"),
        ("Make the shortcrust pastry first.", "crust"),
    ],
)
def test_a_part_is_announced(sentence: str, part: str) -> None:
    assert announced(sentence).kind.id == part


@pytest.mark.parametrize(
    "sentence", ["Pour the glaze over.", "Beat the cream cheese.", "Reserve a third for the topping.", "Mix the dough."]
)
def test_no_part_is_announced(sentence: str) -> None:
    assert announced(sentence) is None


def test_lines_that_say_what_they_are_for() -> None:
    assert tied("2 tbsp honey, for the glaze").id == "glaze"
    assert tied("300 g flour, plus more for dusting") is None


def test_what_goes_on_or_in_before_the_oven() -> None:
    assert laid("Scatter the nuts over the batter.") is not None
    assert laid("Fold the nuts into the batter.") is None


def test_headings_in_a_list_and_verbs_that_tell_a_part() -> None:
    assert heads("For the praline filling:").id == "filling"
    assert heads("2 tbsp filling") is None
    assert first_left("Ice the cold buns.").id == "frosting"
