"""What a cook takes back while telling a recipe."""

from __future__ import annotations

import pytest

from assistant.recipes.amended import with_correction
from assistant.recipes.corrected import corrected
from assistant.recipes.sheet import Entry, Sheet


@pytest.mark.parametrize(
    ("told", "meant"),
    [
        ("three cups of rye flour, no, make that two cups", "two cups of rye flour"),
        ("400 g sugar, no wait, 350 g", "350 g sugar"),
        ("400 g sugar, sorry, 350", "350 g sugar"),
        ("two eggs, I mean three eggs and a pinch of salt", "three eggs and a pinch of salt"),
        ("simmer for 40 minutes, or rather 50 minutes", "simmer for 50 minutes"),
        ("roast at 400 F for 20 minutes, scratch that, 25 minutes", "roast at 400 F for 25 minutes"),
        ("1 cup cream, correction: 1 cup milk", "1 cup milk"),
    ],
)
def test_the_amount_that_is_meant_stands_where_the_other_stood(told, meant) -> None:
    assert corrected(told) == meant


@pytest.mark.parametrize(
    "told",
    [
        "no more than 2 cups flour",
        "1 cup milk, no sugar, 2 eggs",
        "Sorry, there are no pictures. 3 eggs",
        "1 lb beef, no bones\n2 onions",
        "Make it a day ahead and keep it for 3 days",
        "2 cups stock\nmake it 2 days ahead",
    ],
)
def test_what_takes_nothing_back_stays(told) -> None:
    assert corrected(told) == told


def test_a_turn_that_takes_back_the_last_line() -> None:
    sheet = Sheet(ingredients=(Entry("2 cups flour"), Entry("2 tsp baking powder")))
    assert with_correction(sheet, "no, make that 3 tsp")[1] == "3 tsp baking powder"
    with_step = Sheet(ingredients=sheet.ingredients, steps=(Entry("bake at 350 F for 30 minutes"),))
    assert with_correction(with_step, "sorry, 35 minutes")[0].steps[-1].line == "bake at 350 F for 35 minutes"
    assert with_correction(sheet, "no nuts in it") is None
