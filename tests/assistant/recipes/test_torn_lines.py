"""Methods torn into lines of so many characters, and lists of steps that only look like it."""

import json
import textwrap

import pytest

from assistant.recipes.read import read
from assistant.recipes.torn_lines import rejoined

STEPS = [
    "Weigh the flour, the salt and the yeast into the bowl of the mixer and stir them with the hook for 1 minute.",
    "Pour in the water at 75 F and mix on the first speed for 4 minutes, until no dry flour is left at the bottom.",
    "Knead on the second speed for 6 minutes. The dough comes away from the sides of the bowl but still clings below.",
    "Cover it and let it rise for 50 minutes, until it has grown by half; at the bakery that is sooner than below.",
    "Shape 12 buns of 75 g each, set them on lined sheets with room between them and cover them with a damp cloth.",
    "Prove them for 35 minutes while the oven heats to 425 F with a pan of water on its floor.",
    "Brush the buns with milk and bake for 18 minutes. Turn the sheets once halfway so that all brown alike.",
    "Cool them on racks for at least 20 minutes before they are packed for the Lodge.",
]


@pytest.mark.parametrize("width", [60, 72, 78, 100])
@pytest.mark.parametrize("between", ["\n\n", "\n1. "], ids=["empty lines", "numbers"])
def test_eight_wrapped_steps_stay_eight(width, between):
    text = ("1. " * (between != "\n\n")) + between.join(textwrap.fill(step, width) for step in STEPS)
    document = {"@type": "Recipe", "recipeIngredient": ["1 kg flour"], "recipeInstructions": text}
    assert [s.text for s in read(json.dumps(document)).steps] == STEPS


def test_wrapped_steps_of_a_list_stay_their_number():
    document = {"@type": "Recipe", "recipeInstructions": [{"text": textwrap.fill(step, 72)} for step in STEPS]}
    assert [s.text for s in read(json.dumps(document)).steps] == STEPS


@pytest.mark.parametrize(
    "lines",
    [
        ["Mix.", "Knead 10 minutes.", "Bake."],
        ["Mix the flour and the water in the big bowl", "Knead the dough on a board for 10 minutes", "Bake it"],
        ["mix the flour and the water in the big bowl", "knead the dough on a board for 10 minutes", "bake it"],
        ["Line the tins:", "two for the white loaves", "one for the rye"],
        ["Whisk the eggs with the sugar until pale", "- fold in the flour", "- fold in the butter"],
    ],
    ids=["sentences", "no stops", "small letters", "colon", "bullets"],
)
def test_lines_that_were_written_as_lines_stay(lines):
    assert rejoined("\n".join(lines)) == lines


def test_what_an_empty_line_parts_is_not_joined():
    text = "Heat the milk until it steams around the edge\n\nand then the cream"
    assert rejoined(text) == ["Heat the milk until it steams around the edge", "and then the cream"]


def test_ingredients_are_never_joined():
    document = {"@type": "Recipe", "recipeIngredient": "2 cups of the very best flour there is\nsalt\nwater"}
    assert len(read(json.dumps(document)).ingredients) == 3
