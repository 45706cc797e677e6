"""A recipe in a conversation: pasted with the question, after it, or not at all."""

from __future__ import annotations

from pathlib import Path

import pytest

from assistant.answering import reply_to
from assistant.recipes.pasted import pasted

SAMPLES = Path(__file__).parent / "samples"
CAKE = (SAMPLES / "yellow_layer_cake.txt").read_text(encoding="utf-8")
LOAF = (SAMPLES / "banana_loaf.json").read_text(encoding="utf-8")
LISTED = "2 cups flour, 1 cup sugar, 2 tsp baking powder, 2 eggs, 1 cup milk"


@pytest.mark.parametrize(
    ("text", "context"),
    [
        (f"convert this to 7,000 ft:\n\n{CAKE}", ()),
        (f"{CAKE}\nconvert to 7000 ft please", ()),
        (CAKE, ("convert my recipe to 7000 ft",)),
        ("7,000 ft", (CAKE,)),
        (f"convert to 7000 ft\n{LOAF}", ()),
        (f"can you adjust the whole recipe for 7,000 ft: {LISTED}", ()),
    ],
    ids=["above", "below", "after", "elevation after", "document", "one line"],
)
def test_a_pasted_recipe_is_converted(text, context) -> None:
    answer = reply_to(text, context)
    assert (answer.request.topic, answer.missing) == ("convert_recipe", ())
    assert "to 7,000 ft (2,130 m): less leavening" in answer.headline
    assert "What changes, and why" in answer.text
    assert answer.because
    assert all(because.sources for because in answer.because)


@pytest.mark.parametrize("text", ["convert this recipe to 7000 ft", "convert a recipe"])
def test_without_a_recipe_it_is_asked_for(text) -> None:
    answer = reply_to(text)
    assert answer.missing[0] == "recipe"
    assert "Paste the recipe" in answer.text


def test_a_recipe_without_a_place_asks_for_the_place() -> None:
    assert reply_to(CAKE).missing == ("elevation",)


def test_both_places_are_remembered_while_the_recipe_is_awaited() -> None:
    answer = reply_to(CAKE, ("convert my recipe from 5000 ft to 7000 ft",))
    assert "from 5,000 ft (1,520 m) to 7,000 ft" in answer.headline


def test_another_place_afterwards_converts_the_same_recipe() -> None:
    answer = reply_to("and at 9,000 ft?", (f"convert this to 7,000 ft:\n\n{CAKE}",))
    assert "Lodge yellow layer cake, from sea level to 9,000 ft" in answer.headline


def test_what_went_wrong_stays_a_question_about_that() -> None:
    assert reply_to(f"my cake sank at 7000 ft, what went wrong?\n{CAKE}").request.topic == "troubleshoot"


@pytest.mark.parametrize(
    "text",
    [
        "",
        "how long to boil 2 lb potatoes and 1 lb carrots",
        "note: 2 cups",
        "hello\nhow long for rice\nat 7000 ft",
        "x" * 300_000,
    ],
)
def test_what_holds_no_recipe_is_left_alone(text) -> None:
    assert pasted(text) is None


def test_the_oven_and_the_ingredients_are_figures() -> None:
    answer = reply_to(f"convert this to 7,000 ft:\n\n{CAKE}")
    oven = answer.figure("oven")
    assert (oven.unit, round(oven.value)) == ("degC", 188)
    assert answer.figure("leavening_ingredient_3").value == 2.25
