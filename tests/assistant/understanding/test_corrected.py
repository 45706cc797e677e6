"""A dish that is taken back is not the dish."""

from __future__ import annotations

import pytest

from assistant.answering import understand


@pytest.mark.parametrize(
    ("text", "dish"),
    [
        ("not chickpeas, LENTILS, at 8,000 ft", "lentils"),
        ("mussels? no wait clams, steamed at 7,000 ft", "clams"),
        ("rice, sorry, i meant barley at 7,000 ft", "barley"),
        ("braise the lamb, no, goat, at 6,500 ft", "goat"),
        ("pasta - oops - potatoes, how long at 9,000 ft", "potatoes"),
        ("lentils instead of chickpeas at 7k ft", "lentils"),
        ("how long for potatoes not pasta at 9,000 ft", "potatoes"),
        ("eggs. actually make that oatmeal at 7,000 ft", "oatmeal"),
    ],
)
def test_the_dish_that_is_meant(text: str, dish: str) -> None:
    assert understand(text).dish == dish


@pytest.mark.parametrize(
    ("text", "dish"),
    [
        ("potatoes and carrots at 7,000 ft, how long", "potatoes"),
        ("why is rice not done at 8,000 ft", "white rice"),
        ("not pasta again at 8,000 ft, how long", "pasta"),
    ],
)
def test_a_dish_is_not_taken_back_by_other_words(text: str, dish: str) -> None:
    assert understand(text).dish == dish


def test_a_question_that_is_taken_back_is_not_answered() -> None:
    asked = understand("how much brisket for 40? no, forget that. how long for barley at 7,000 ft")
    assert (asked.topic, asked.dish, asked.portions) == ("time", "barley", None)
