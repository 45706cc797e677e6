"""A turn that would be answered as the one before is asked about, or the answer is said to stay as it was."""

from __future__ import annotations

import pytest

from assistant.answering import reply_to


def told(*turns: str) -> str:
    """The headline of the last turn."""
    *context, last = turns
    return reply_to(last, context).headline


def test_a_figure_that_nobody_asked_for_is_asked_about() -> None:
    assert told("boiled turnips at 6,700 ft", "35").startswith("35 of what, for turnips")


def test_a_bare_figure_behind_the_oven_sets_it() -> None:
    assert "instead of 350 °F" in told("muffins at 6,700 ft, which oven", "350")


@pytest.mark.parametrize("text", ["nah forget that", "scrap that", "no never mind"])
def test_letting_go_is_not_answered_with_the_dish(text: str) -> None:
    assert told("lemon cake at 7,300 ft", text) == "All right. What else?"


def test_what_leaves_the_answer_as_it_was_is_said_to() -> None:
    first = "braise ox cheek at 7,500 ft"
    assert told(first, "with the lid on").startswith("That leaves my answer as it was.")


@pytest.mark.parametrize("text", ["same again", "in celsius", "how long again?"])
def test_who_asks_again_is_told_again(text: str) -> None:
    assert "of what" not in told("boiled turnips at 6,700 ft", text)
