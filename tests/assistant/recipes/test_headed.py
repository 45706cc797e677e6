"""Headings among the steps of a page are headings of parts, and no numbered steps."""

import json

import pytest

from assistant.recipes.headed import headed
from assistant.recipes.jsonld_written import to_jsonld
from assistant.recipes.read import read
from rules.recipes.convert import convert

MIX = "Whisk the eggs with the honey until the mixture is pale."
BAKE = "Bake at 350 °F for 30 minutes, until a skewer comes out clean."
SPREAD = "Stir the sugar into the lime juice and pour it over the cold cake."


def parts(*texts: str) -> list[tuple[str, str]]:
    return headed([(text, "") for text in texts])[0]


@pytest.mark.parametrize(
    ("heading", "part"),
    [
        ("Lime Icing", "lime icing"),
        ("Glaze", "glaze"),
        ("For the ripple", "ripple"),
        ("To make the icing:", "icing"),
        ("Make the syrup:", "syrup"),
        ("CARAMEL SAUCE", "caramel sauce"),
    ],
)
def test_a_heading_opens_a_part(heading: str, part: str) -> None:
    assert parts(MIX, BAKE, heading, SPREAD) == [(MIX, ""), (BAKE, ""), (SPREAD, part)]


def test_deeds_that_stand_over_their_steps() -> None:
    steps, unnamed = headed([(t, "") for t in ("Whip the eggs", MIX, "Bake the tin", BAKE, "Finish it off", SPREAD)])
    assert [text for text, _ in steps] == [MIX, BAKE, SPREAD]
    assert "Whip the eggs" in unnamed


@pytest.mark.parametrize(
    "texts",
    [
        ("Grease a tin.", MIX, "Chill the batter", BAKE),
        ("Heat the oven to 350 °F", MIX, BAKE),
        ("Mix the eggs and honey", "Pour into a tin", "Bake until a skewer comes out clean and dry"),
        (MIX, BAKE, "Serve"),
        (MIX, "Add 2 cups sugar", BAKE),
    ],
)
def test_a_short_step_stays_a_step(texts: tuple[str, ...]) -> None:
    assert [text for text, _ in parts(*texts)] == list(texts)


def test_a_page_keeps_its_headings_when_it_is_written_back() -> None:
    told = ["For the cake", MIX, BAKE, "Lime icing", SPREAD]
    page = {
        "@type": "Recipe",
        "name": "Lime cake",
        "recipeIngredient": ["2 cups flour", "1 cup sugar", "2 tsp baking powder", "3 eggs", "1/2 cup honey"],
        "recipeInstructions": [{"@type": "HowToStep", "text": text} for text in told],
    }
    recipe = read(json.dumps(page), name="cake.json")
    assert len(recipe.steps) == 3
    written = to_jsonld(convert(recipe, to_elevation_m=2134.0).plain)
    texts = [step["text"] for step in written["recipeInstructions"]]
    assert len(texts) == 5
    assert texts[0] == told[0]
    assert texts[3] == told[3]
    assert texts[2] != told[2]
