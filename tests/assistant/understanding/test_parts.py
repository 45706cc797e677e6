"""Several questions in one utterance, and one question about several dishes."""

from __future__ import annotations

import pytest

from assistant.understanding import parts
from assistant.understanding.pipeline import read

SEVERAL = [
    ("How long for barley in Cusco, and how much water?", ["How long for barley in Cusco,", "and how much water?"]),
    ("lamb at 9k when do i start and does it need to rest", ["lamb at 9k when do i start", "and does it need to rest"]),
    ("Why is my rice hard? What do I change? I am at 8,000 ft.",
     ["Why is my rice hard?", "What do I change? I am at 8,000 ft."]),
    ("is the oil too hot and also how long do chips want", ["is the oil too hot", "and also how long do chips want"]),
]  # fmt: skip
ONE = [
    "how long do beans and rice take at 7,000 ft",
    "My pot roast is tough, which is odd, and I am in Quito. What now?",
    "is it done or is it raw",
    "ok? right? yes?",
]
DISHES = [
    ("how long for turnips and leeks at 7,000 ft", ["how long for turnips", "leeks at 7,000 ft"]),
    ("boil carrots, potatoes and beets in Leadville", ["boil carrots", "potatoes", "beets in Leadville"]),
]
ONE_DISH = ["beef stew with carrots and potatoes", "penne pasta at 9,000", "eggs in water", "salmon. Then, later, rice"]


@pytest.mark.parametrize(("text", "pieces"), SEVERAL)
def test_questions_are_cut_apart(text: str, pieces: list[str]) -> None:
    assert list(parts.questions(read(text))) == pieces


@pytest.mark.parametrize("text", ONE)
def test_one_question_is_left_whole(text: str) -> None:
    assert not parts.questions(read(text))


@pytest.mark.parametrize(("text", "pieces"), DISHES)
def test_dishes_are_cut_apart(text: str, pieces: list[str]) -> None:
    assert list(parts.of_dishes(read(text))) == pieces


@pytest.mark.parametrize("text", ONE_DISH)
def test_a_part_of_a_dish_is_no_other_dish(text: str) -> None:
    assert not parts.of_dishes(read(text))
