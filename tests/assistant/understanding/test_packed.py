"""Jars by their size and packs by their words."""

import pytest

from assistant.answering import understand
from assistant.understanding import packed
from assistant.understanding.pipeline import read
from rules.model import Quantity


@pytest.mark.parametrize(
    ("text", "jars"),
    [
        ("nine quarts of pears", [(1, "qt")]),
        ("14 pints of crushed tomatoes", [(1, "pt")]),
        ("pears in pints", [(1, "pt")]),
        ("half-pints of jam", [(0.5, "pt")]),
        ("half a pint of jam in each jar", [(0.5, "pt")]),
        ("quarter pints of jelly", [(0.25, "pt")]),
        ("pints and quarts of plums in one load", [(1, "pt"), (1, "qt")]),
        ("half gallon jars of apple juice", [(0.5, "gal")]),
        ("peaches in 500 ml jars", [(500, "ml")]),
        ("peaches in one litre clip-top jars", [(1, "l")]),
        ("4 oz jelly jars", [(4, "oz")]),
        ("forty little jars, the four ounce ones", [(4, "oz")]),
        ("12-ounce jars of pickles", [(12, "oz")]),
        ("4 oz of pectin in the pan", []),
        ("20 litres of tomatoes to can", []),
        ("a jar of jam", []),
    ],
)
def test_the_jars_that_are_named(text, jars):
    assert packed.jars(read(text)) == tuple(Quantity(float(value), unit) for value, unit in jars)


@pytest.mark.parametrize(
    ("text", "packs"),
    [
        ("raw-pack peaches", ["raw"]),
        ("pears, hot packed", ["hot"]),
        ("apricots packed cold", ["raw"]),
        ("crushed tomatoes", ["crushed"]),
        ("whole tomatoes in water", ["whole", "in_water"]),
        ("tomatoes in their own juice, no liquid added", ["no_liquid"]),
        ("tomatoes packed in tomato juice", ["in_juice"]),
        ("chicken thighs, bone in", ["with_bones"]),
        ("tomatoes in boiling water", []),
        ("a hot oven", []),
    ],
)
def test_how_the_food_is_packed(text, packs):
    assert packed.packing(read(text)) == tuple(packs)


def test_jars_and_packs_stay_with_the_dish_of_a_follow_up():
    first = "raw pack peaches in quarts at 5,500 ft, how long in the canner"
    again = understand("and at 6,400?", [first])
    assert (again.dish, again.jars, again.packing) == ("peaches", (Quantity(1.0, "qt"),), ("raw",))
    other = understand("and in pints?", [first])
    assert (other.dish, other.jars) == ("peaches", (Quantity(1.0, "pt"),))


@pytest.mark.parametrize(
    "text",
    ["what about my sister at 6,300", "how about Lena over the ridge, shes at 6300", "and for my mother at 6,300 ft"],
)
def test_a_follow_up_for_another_kitchen_goes_on_with_the_question(text):
    again = understand(text, ["raw pack peaches in quarts at 5,500 ft, how long in the canner"])
    assert (again.topic, again.dish) == ("preserve", "peaches")
    assert round(again.elevation_m / 0.3048) == 6300


def test_another_kitchen_with_another_dish_is_a_question_of_its_own():
    again = understand("what about braised ribs at 6,300 ft", ["raw pack peaches in quarts at 5,500 ft, how long"])
    assert again.dish != "peaches"


def test_a_question_of_preserving_keeps_the_dish_of_one_before_and_of_no_other():
    assert understand("do I still add lemon?", ["crushed tomatoes in pints at 7,000 ft, canning"]).dish == "tomatoes"
    assert understand("how long do I sterilise jars", ["how long to braise short ribs at 7,000 ft"]).dish is None
