"""What cooks of the world call their dishes is heard as what it is."""

from __future__ import annotations

from pathlib import Path

import pytest

from assistant.reading.text import fold
from assistant.understanding.pipeline import read
from assistant.understanding.request import main_dish
from rules.foods.dishes import classes, dishes
from rules.tables import tomli

HERE = Path(__file__).parent
KITCHENS = tomli.loads((HERE / "dishes_of_the_world.toml").read_text(encoding="utf-8"))
SHELVES = [(kitchen, dish_class) for kitchen, shelf in KITCHENS.items() for dish_class in shelf]
AT_LEAST = 3000


def heard_as(name: str) -> str | None:
    """The class of the dish that is asked about."""
    dish = main_dish(read(f"how long for {name} at 7000 ft")._.found, "time")
    return dishes()[dish].dish_class if dish else None


@pytest.mark.parametrize(("kitchen", "dish_class"), SHELVES, ids=lambda word: word)
def test_every_name_is_heard_as_its_class(kitchen: str, dish_class: str) -> None:
    heard = {name: heard_as(name) for name in KITCHENS[kitchen][dish_class]}
    assert {name: word for name, word in heard.items() if word != dish_class} == {}


def test_enough_of_them() -> None:
    names = [name for shelf in KITCHENS.values() for group in shelf.values() for name in group]
    assert len({fold(name) for name in names}) >= AT_LEAST
    assert {dish_class for _, dish_class in SHELVES} <= set(classes())


@pytest.mark.parametrize(
    ("said", "dish_class"),
    [
        # a dish made of another is named last
        ("oxtail potjie in Maseru, how long", "mixed_stew"),
        ("goat cheese souffle at 6,400 ft", "souffle"),
        ("turkey stew for the crew at 8,800 ft", "mixed_stew"),
        ("yak burgers at 3,400 m how long on the grill", "ground_meat"),
        ("pumpkin custard at 1,900 m", "custard"),
        # but a cut of a fish stays a fish, and what poisons stays what is asked about
        ("salmon steak at 7,300 ft", "fish"),
        ("tuna steaks at 2,050 m", "fish"),
        ("kidney bean curry at 2,600 m", "dried_bean"),
        ("cassava cake at 2,600 m", "starchy_root"),
    ],
)
def test_what_is_made_of_what(said: str, dish_class: str) -> None:
    from assistant.answering import understand

    assert understand(said).dish_class == dish_class


@pytest.mark.parametrize(
    ("said", "dish", "method"),
    [
        ("how long to stew rabbit at 6,600 ft", "rabbit", "stew"),
        ("stew the chicken at 2,300 m how long", "chicken", "stew"),
        ("how long does a stew want at 9,100 ft", "stew", None),
        ("chicken stew at 9,100 ft how long", "chicken stew", None),
    ],
)
def test_a_word_that_is_a_dish_and_a_method(said: str, dish: str, method: str | None) -> None:
    from assistant.answering import understand

    request = understand(said)
    assert (request.dish, request.method) == (dish, method)
