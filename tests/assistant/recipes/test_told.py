"""Formulas told within a sentence."""

from __future__ import annotations

import pytest

from assistant.answering import understand
from assistant.recipes.told import told


@pytest.mark.parametrize(
    ("text", "question", "lines"),
    [
        ("scones up at 6,000 ft, 2 cups flour, 1 tbsp baking powder, 3/4 cup milk", "scones up at 6,000 ft",
         ["2 cups flour", "1 tbsp baking powder", "3/4 cup milk"]),
        ("brioche at 1,600 m: flour 500 / butter 250 / eggs 300 / sugar 60", "brioche at 1,600 m",
         ["500 g flour", "250 g butter", "300 g eggs", "60 g sugar"]),
        ("rye for Cusco, 400 flour 300 water 80 g starter", "rye for Cusco",
         ["400 g flour", "300 g water", "80 g starter"]),
        ("stollen: 3 cups flour and 1 cup milk; bake 40 min at 350. we are in Quito", "stollen, we are in Quito",
         ["3 cups flour", "1 cup milk", "bake 40 min at 350"]),
        ("scale my focaccia for 4,900 ft: 600 g flour, 450 g water", "scale my focaccia for 4,900 ft",
         ["600 g flour", "450 g water"]),
    ],
)  # fmt: skip
def test_amounts_are_set_apart(text: str, question: str, lines: list[str]) -> None:
    found = told(text)
    assert found is not None
    assert (found.question, found.recipe.split("\n")) == (question, lines)


@pytest.mark.parametrize(
    "text",
    ["350 for 35 min at 7,000 ft", "how long do 3 kg of ham take", "2 tsp baking powder at 6,500 ft", "for 120 covers"],
)
def test_one_amount_is_no_formula(text: str) -> None:
    assert told(text) is None


def test_a_formula_with_a_bake_is_converted() -> None:
    request = understand("muffins for 8,000 ft: 2 cups flour, 1 tbsp baking powder, 1 cup milk, 1 egg, what changes")
    assert (request.topic, request.dish, bool(request.recipe)) == ("convert_recipe", "muffins", True)
    assert request.elevation_m == pytest.approx(2438.4)


def test_amounts_without_a_bake_are_no_formula() -> None:
    assert not understand("how long to boil 2 lb potatoes and 1 lb carrots at 8,000 ft").recipe


@pytest.mark.parametrize(
    ("text", "lines"),
    [
        ("parsnip muffins at 6,200 ft, 2 cups flour, 1 tbsp baking powder, 2 eggs, oven 390, 18 min",
         ["2 cups flour", "1 tbsp baking powder", "2 eggs", "bake at 390 F for 18 minutes"]),
        ("pear cake at 1,900 m, 250 g flour, 150 g sugar, 3 eggs, 170C/50min",
         ["250 g flour", "150 g sugar", "3 eggs", "bake at 170 C for 50 minutes"]),
        ("scones at 6,200 ft, 2 cups flour, 1 tbsp baking powder, 1 egg, 14 min at 425",
         ["2 cups flour", "1 tbsp baking powder", "1 egg", "bake at 425 F for 14 minutes"]),
        ("quince bread at 6,200 ft, 2 cups flour, 2 grated quinces, 2 tsp baking powder, a handful of pecans, 1 egg",
         ["2 cups flour", "2 grated quinces", "2 tsp baking powder", "a handful of pecans", "1 egg"]),
    ],
)  # fmt: skip
def test_no_line_of_a_told_recipe_is_dropped(text: str, lines: list[str]) -> None:
    found = told(text)
    assert found is not None
    assert sorted(found.recipe.split("\n")) == sorted(lines)


def test_what_counts_no_ingredient_is_no_line() -> None:
    found = told("my cake at 6,200 ft, 2 cups flour, 1 cup sugar, 2 tsp baking powder, sank in 2 places, for 8 people")
    assert found is not None
    assert found.recipe.split("\n") == ["2 cups flour", "1 cup sugar", "2 tsp baking powder"]
