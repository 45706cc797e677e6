"""From the bytes of a recipe to the converted recipe: scaling, both directions, and what can be wrong."""

from __future__ import annotations

import contextlib
import json
from pathlib import Path

import pytest

from assistant.recipes.converting import BadServings, NoYield, convert_recipe, counted
from assistant.recipes.errors import NoRecipe, RecipeError
from assistant.recipes.lines import read_line
from assistant.recipes.read import read
from assistant.recipes.scale import scaled
from assistant.replies.recipe.worded import in_words
from rules.errors import OutOfRange, UnknownWord

SAMPLES = sorted((Path(__file__).parent / "samples").iterdir())
LODGE_M, BAKERY_M = 2133.6, 1615.4
ROLLS = "Lodge rolls\nMakes 12 rolls\n{}\n\nMix {} and bake 20 minutes at 400 F."


def lines(*ingredients: str, servings: float) -> list[str]:
    """The ingredient lines of rolls for 12, scaled and not moved."""
    text = ROLLS.format("\n".join(ingredients), "all")
    return [to.text for to in convert_recipe(text, to_elevation_m=0, servings=servings).ingredients]


@pytest.mark.parametrize("path", SAMPLES, ids=lambda p: p.stem)
def test_the_same_place_and_size_is_the_same_recipe(path) -> None:
    same = convert_recipe(path.read_bytes(), from_elevation_m=LODGE_M, to_elevation_m=LODGE_M)
    assert same.plain == same.recipe == read(path.read_bytes())
    assert same.changes == same.cautions == ()


@pytest.mark.parametrize("path", SAMPLES, ids=lambda p: p.stem)
@pytest.mark.parametrize("factor", [0.5, 3.0])
def test_scaling_keeps_every_line_and_the_mass_balance(path, factor) -> None:
    recipe = read(path.read_bytes())
    new = scaled(recipe, factor)
    assert len(new.ingredients) == len(recipe.ingredients)
    assert len(new.steps) == len(recipe.steps)
    for was, now in zip(recipe.ingredients, new.ingredients, strict=True):
        assert now.item == was.item
        if was.mass_g:
            assert now.mass_g == pytest.approx(factor * was.mass_g, rel=0.06 if was.unit else 0.4)
    for was, now in zip(recipe.steps, new.steps, strict=True):
        assert [(t.low_min, t.what) for t in was.times] == [(t.low_min, t.what) for t in now.times]
        assert [now.text[t.start : t.end] for t in now.times] == [was.text[t.start : t.end] for t in was.times]


@pytest.mark.parametrize("path", SAMPLES, ids=lambda p: p.stem)
def test_a_scaled_line_reads_as_it_says(path) -> None:
    for line in scaled(read(path.read_bytes()), 2.0).ingredients:
        again = read_line(line.line, line.component)
        if line.mass_g and again.mass_g and line.unit != "percent":
            assert again.mass_g == pytest.approx(line.mass_g, rel=0.07, abs=1)


@pytest.mark.parametrize(
    ("line", "doubled", "halved"),
    [
        ("2 tsp baking powder", "1 tbsp plus 1 tsp baking powder", "1 tsp baking powder"),
        ("2 tbsp oil", "1/4 cup oil", "1 tbsp oil"),
        ("1 cup plus 2 tablespoons milk", "2 1/4 cups milk", "1/2 cup plus 1 tbsp milk"),
        ("1/3 cup sugar", "2/3 cup sugar", "2 1/2 tbsp sugar"),
        ("2 1/4 cups (281 g) flour", "4 1/2 cups (562 g) flour", "1 cup plus 2 tbsp (140 g) flour"),
        ("3 eggs (150 g)", "6 eggs (300 g)", "1 1/2 eggs (75 g)"),
        ("1 egg", "2 eggs", "1/2 egg"),
        ("1 (14 oz) can tomatoes", "2 (14 oz) cans tomatoes", "1/2 (14 oz) can tomatoes"),
        ("1 whole chicken (about 4 lb)", "2 whole chickens (about 8 lb)", "1/2 whole chicken (about 2 lb)"),
        ("2 x 400 g tins beans", "4 x 400 g tins beans", "1 x 400 g tin beans"),
        ("1 packet (7 g) yeast", "2 packets (14 g) yeast", "1/2 packet (3.5 g) yeast"),
        ("1 lb 4 oz beef", "2 1/2 lb beef", "10 oz beef"),
        ("6 to 8 tbsp ice water", "3/4 to 1 cup ice water", "3 to 4 tbsp ice water"),
        ("salt to taste", "salt to taste", "salt to taste"),
        ("a few sprigs thyme", "a few sprigs thyme", "a few sprigs thyme"),
    ],
)
def test_a_line_for_more_and_fewer(line, doubled, halved) -> None:
    assert (lines(line, servings=24), lines(line, servings=6)) == ([doubled], [halved])


def test_an_amount_inside_a_step_is_scaled_and_converted_with_its_line() -> None:
    listed = "2 cups flour\n1 cup sugar\n2 tsp baking powder\n3 eggs\n1 cup milk"
    text = f"Cake\nServes 8\n{listed}\n\nBeat 1/2 cup of the sugar in."
    step = convert_recipe(text, to_elevation_m=LODGE_M, servings=16, style="layer_cake").steps[0]
    assert step.step.text == "Beat 1/2 cup of the sugar in."
    assert step.text == "Beat 3/4 cup plus 2 tbsp (was 1 cup) of the sugar in."


def test_slices_are_counted_before_layers() -> None:
    cake = next(p for p in SAMPLES if p.stem == "yellow_layer_cake")
    recipe = read(cake.read_bytes())
    assert (counted(recipe).value, counted(recipe).unit) == (16, "slice")
    assert scaled(recipe, 2).yields.line == "Yield: 4 9-inch layers, about 32 slices"


def test_the_flour_weight_of_a_formula_goes_along() -> None:
    bread = next(p for p in SAMPLES if p.stem == "lean_hearth_bread")
    half = convert_recipe(bread.read_bytes(), to_elevation_m=0, servings=4.5)
    assert half.plain.flour_g == 2500
    assert "Total flour: 2.5 kg" in half.plain.notes
    assert half.ingredients[2].text == "Water 70%"


def test_a_large_batch_says_that_its_time_may_change() -> None:
    text = ROLLS.format("500 g flour", "it")
    said = [c.text for c in in_words(convert_recipe(text, to_elevation_m=0, servings=60)).cautions]
    assert any("time changes too" in words for words in said)
    assert not convert_recipe(text, to_elevation_m=0, servings=14).cautions


def test_the_stated_time_of_the_whole_recipe_goes_along() -> None:
    text = "Rolls\nBake time: 30 minutes\n2 cups flour\n2 tsp baking powder\n\nBake 30 to 35 minutes at 350 F."
    plain = convert_recipe(text, to_elevation_m=LODGE_M, style="layer_cake").plain
    assert plain.notes == ("Bake time: 24 minutes",)


@pytest.mark.parametrize(("there", "here"), [(0, LODGE_M), (LODGE_M, 0), (BAKERY_M, 91.4), (BAKERY_M, 2743.2)])
def test_any_pair_of_elevations(there, here) -> None:
    text = ROLLS.format("2 cups flour\n2 tsp baking powder\n1 cup milk", "all")
    powder = convert_recipe(text, from_elevation_m=there, to_elevation_m=here, style="quick_bread").ingredients[1]
    assert (powder.amount < 2) == (here > there) or powder.unit == "tbsp"


@pytest.mark.parametrize(
    ("content", "asked", "error"),
    [
        ("", {}, RecipeError),
        (b"\x00\x01\x02", {}, RecipeError),
        ('{"@type": "Recipe", "name": ', {}, RecipeError),
        ('{"@type": "Person", "name": "nobody"}', {}, RecipeError),
        ("[" * 50_000 + '"x"', {}, RecipeError),
        (b"x" * (5 * 1024 * 1024 + 1), {}, RecipeError),
        ("Rolls\n500 g flour\nBake 20 minutes.", {"servings": 12}, NoYield),
        ("Rolls\nServes 4\n500 g flour\nBake.", {"servings": -1}, BadServings),
        ("Rolls\nServes 4\n500 g flour\nBake.", {"servings": 1e9}, BadServings),
        ("Rolls\n500 g flour\nBake.", {"style": "cake"}, UnknownWord),
        ("Rolls\n500 g flour\nBake.", {"to_elevation_m": 9000.0}, OutOfRange),
    ],
)
def test_what_cannot_be_converted_is_said(content, asked, error) -> None:
    with pytest.raises(error) as caught:
        convert_recipe(content, **({"to_elevation_m": LODGE_M, "name": "rolls.txt"} | asked))
    assert len(str(caught.value)) > 20


@pytest.mark.parametrize(
    "content",
    [
        "Cake\n" + "1 cup flour\n" * 5000,
        "Cake\n1 cup flour\nMix " + "1/2 cup of the sugar " * 5000,
        "1 cup " + "(" * 100_000,
        "1 (" * 50_000,
        "1 cup" + " " * 150_000 + "flour",
        "Cake\n2 cups flour\nMix " + "1 2 3 4 5 6 7 8 9 " * 5000,
        json.dumps({"@type": "Recipe", "recipeIngredient": ["1 cup flour"] * 1999}),
        '<html><script type=\'application/ld+json\'>{"@type": "Recipe"}</script>' + "<p>x</p>" * 500_000,
    ],
    ids=["lines", "step", "brackets", "packs", "spaces", "figures", "list", "page"],
)
def test_a_bomb_is_read_in_the_time_of_a_breath(content) -> None:
    """Each took minutes where a pattern ran over a whole line at every place of it."""
    with contextlib.suppress(NoRecipe):
        assert convert_recipe(content, to_elevation_m=LODGE_M) is not None


def test_missing_units_and_lines_listed_twice_are_pointed_out() -> None:
    shortbread = next(p for p in SAMPLES if p.stem == "duplicates_and_no_units")
    converted = in_words(convert_recipe(shortbread.read_bytes(), to_elevation_m=LODGE_M))
    said = "\n".join(c.text for c in converted.cautions)
    assert "2 flour" in said
    assert "1 cup butter" in said
