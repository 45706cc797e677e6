"""What holds an allergen as it is usually made, from knowledge outside the program (from memory)."""

import pytest

from rules.foods.allergens import allergens, holds
from rules.foods.dishes import classes, dishes
from rules.tables import read_toml


@pytest.mark.parametrize(
    ("id", "dish", "expected"),
    [
        ("peanut", "maafe", "yes"),
        ("peanut", "green beans", "no"),
        ("nut", "baklava", "yes"),
        ("gluten", "layer cake", "yes"),
        ("gluten", "beef stew", "may"),
        ("gluten", "potatoes", "no"),
        ("egg", "hollandaise", "yes"),
        ("egg", "pasta", "may"),
        ("milk", "risotto", "yes"),
        ("shellfish", "paella", "yes"),
        ("sesame", "hummus", "yes"),
        ("soy", "miso soup", "yes"),
        ("fish", "tuna steak", "yes"),
        ("peanut", "a dish that nobody knows", "may"),
    ],
)
def test_what_holds_it(id, dish, expected):
    assert holds(id, dish) == expected


@pytest.mark.parametrize("row", allergens().values(), ids=lambda row: row.id)
def test_its_row_names_what_there_is(row):
    known = {trait["id"] for trait in read_toml("lexicon/traits.toml")["trait"]} | {"dairy"}
    assert row.classes | row.may <= set(classes())
    assert row.classes.isdisjoint(row.may)
    assert row.traits <= known
    assert {dish for dish in row.dishes if dish not in dishes()} <= {"romesco", "nkatenkwan"}
