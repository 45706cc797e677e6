"""What is read back before it is answered: unsure numbers, mended places, and everything about jars."""

from __future__ import annotations

import pytest

from assistant.dialogue.memory import Memory
from assistant.dialogue.turn import take_turn
from assistant.replies.sentences import worded
from assistant.voice.hearing import from_takes
from rules.model import Kitchen

SURE = "How long to boil rice at 8,500 feet?"


def doubts(*takes: str) -> dict[str, tuple[str, ...]]:
    return {number.said: number.others for number in from_takes(takes, Memory()).unsure}


def test_what_is_heard_the_same_each_time_is_answered_at_once() -> None:
    heard = from_takes([SURE, SURE], Memory())
    assert heard.to_ask == SURE
    assert worded(heard.read_back, "us") == ""


@pytest.mark.parametrize(
    ("text", "said", "other"),
    [
        ("boil rice for fifteen minutes at 8,500 feet", "fifteen minutes", "50 minutes"),
        ("boil rice for 50 minutes at 8,500 feet", "50 minutes", "15 minutes"),
        ("boil rice at thirteen hundred feet", "thirteen hundred feet", "3,000 feet"),
        ("boil rice at a thousand feet", "a thousand feet", "8,000 feet"),
        ("boil rice at two thousand", "two thousand", "2,000 metres"),
    ],
)
def test_a_number_that_sounds_like_another_is_read_back(text: str, said: str, other: str) -> None:
    assert other in doubts(text)[said]


@pytest.mark.parametrize(
    "text",
    [
        "boil rice at 8,500 feet",
        "boil rice at thirteen thousand feet",
        "boil rice at 7,000",
        "boil rice at 2,200 metres",
    ],
)
def test_a_number_that_can_be_no_other_is_not(text: str) -> None:
    assert doubts(text) == {}


def test_a_number_that_was_heard_differently_is_read_back_with_what_else_was_heard() -> None:
    found = doubts("boil rice at 7,200 feet", "boil rice at 11,200 feet", "boil rice at 7,200 feet")
    assert found == {"7,200 feet": ("11,200 feet",)}


def test_a_number_that_one_take_has_lost_is_read_back() -> None:
    assert "7,200 feet" in doubts("boil rice at 7,200 feet", "boil rice at seven wonders", "boil rice at 7,200 feet")


def test_what_was_heard_otherwise_each_time_is_read_back() -> None:
    heard = from_takes(["Coming out of our chicken soup", "I can't wait for a match", "Some of them eat"], Memory())
    assert heard.garbled
    assert heard.to_ask is None
    assert heard.text in worded(heard.read_back, "us")


def test_a_place_that_was_mended_is_read_back() -> None:
    heard = from_takes(["How long to boil rice and toes?"], Memory())
    assert heard.to_ask is None
    assert "Taos" in worded(heard.read_back, "us")


# the first words are what a small model made of questions about jars
@pytest.mark.parametrize(
    "text",
    [
        "How long do I process pints of tomatoes at 6,000 feet?",
        "Panning apple sauce in quartz at 3,000 feet",
        "Can I use my electric pressure cooker to consume at 6,000 feet?",
        "Is it safe to compound can butter at 7,000 feet?",
        "How long to convince and pints at 6,400 feet",
        "strawberry jam at 5,500 feet what temperature does it set",
        "Can I can meditate on water math at 7,000 feet",
        "How long to water back in peaches imports at 7,000 feet?",
        "Pressure can carrots at 9,000 feet",
        "Way to gauge pressure for carrots at 2,000 feet",
        "My civil marmalade will not set, we are 1,200 meters up, have I not boiled it enough?",
    ],
)
def test_nothing_that_may_be_about_jars_is_answered_unconfirmed(text: str) -> None:
    heard = from_takes([text, text], Memory())
    assert heard.of_jars
    assert heard.to_ask is None
    assert heard.text in worded(heard.read_back, "us")


def test_a_number_that_goes_on_with_jars_is_not_answered_unconfirmed() -> None:
    memory = take_turn("how long do I process pints of tomatoes at 6,000 feet", Memory(kitchen=Kitchen())).memory
    assert from_takes(["and at 8,000 feet", "and at 8,000 feet"], memory).to_ask is None
    assert from_takes(["and at 8,500 feet", "and at 8,500 feet"], Memory()).to_ask == "and at 8,500 feet"


@pytest.mark.parametrize("text", [SURE, "How long to cancel the timer", "How long to cook beets at 6,700 feet?"])
def test_what_is_not_about_jars_is_not_taken_for_it(text: str) -> None:
    assert not from_takes([text, text], Memory()).of_jars


def test_what_was_heard_is_told_to_a_page() -> None:
    told = from_takes(["How long to boil rice and toes?"], Memory()).as_json()
    assert told["takes"] == ("How long to boil rice and toes?",)
    assert told["mends"] == [{"heard": "toes", "meant": "taos", "kind": "place"}]
    assert told["to_ask"] is None
    assert told["read_back"]
