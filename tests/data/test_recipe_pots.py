"""The words that tell what stands in a pot: classes and foods that the lexicon has, phrases that are whole words."""

from __future__ import annotations

import pytest

from rules.foods import dishes
from rules.recipes.contents import WORDS, says
from rules.recipes.foods import foods_in
from rules.tables import read_toml

POT = read_toml(WORDS)["pot"]
OF_CLASSES = ("beside", "never", "once")


@pytest.mark.parametrize("name", OF_CLASSES)
def test_classes_are_those_of_the_lexicon(name: str) -> None:
    assert set(POT[name]) <= set(dishes.classes())


def test_the_shortest_times_are_of_classes_of_the_lexicon() -> None:
    assert set(read_toml(WORDS)["least_min"]) <= set(dishes.classes())


@pytest.mark.parametrize("name", POT["aromatics"])
def test_what_is_fried_first_is_a_food(name: str) -> None:
    assert foods_in(name)


@pytest.mark.parametrize(
    ("name", "text", "told"),
    [
        ("another", "Heat a little oil in a wide pan", True),
        ("another", "Heat the pot again", False),
        ("emptied", "Lift the shanks to a plate", True),
        ("emptied", "Lift the lid", False),
        ("boiled_down", "Boil the wine down", True),
        ("boiled_down", "Turn the flame down", False),
        ("uncovered", "Tent it with foil", True),
    ],
)
def test_a_list_says_what_it_is_for(name: str, text: str, told: bool) -> None:
    assert bool(says(name).search(text)) is told
