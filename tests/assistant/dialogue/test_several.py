"""Several questions at once, and two topics that the words fit alike."""

from __future__ import annotations

from dataclasses import replace

import pytest

from assistant.answering import reply_to, reply_to_request
from assistant.dialogue.memory import Memory
from assistant.dialogue.turn import take_turn
from assistant.replies.contract import as_json
from rules.model import Kitchen, Request


def test_each_question_is_answered() -> None:
    answer = reply_to("How long do carrots boil at 7,000 ft, and what inside temperature do chicken thighs need?")
    assert answer.parts[0].request.topic == "time"
    assert len(answer.parts) == 2
    assert "carrots" in answer.text
    assert "165" in answer.text


def test_each_dish_is_answered_where_the_cook_is() -> None:
    answer = reply_to("how long for turnips and parsnips in Leadville")
    assert [part.request.dish for part in answer.parts] == ["turnips", "parsnips"]
    assert {part.request.elevation_m for part in answer.parts} == {answer.parts[0].request.elevation_m}
    assert [part["heard"]["dish"] for part in as_json(answer)["parts"]] == ["turnips", "parsnips"]


def test_what_only_goes_by_itself_is_named() -> None:
    answer = reply_to(
        "how long do carrots boil at 7,000 ft and how hot is the water, and can you set a timer for 9 minutes"
    )
    assert "set a timer for 9 minutes" in answer.text


def test_one_question_has_no_parts() -> None:
    assert not reply_to("how long do carrots boil at 7,000 ft").parts
    assert "parts" not in as_json(reply_to("how long do carrots boil at 7,000 ft"))


def unsure() -> Memory:
    """Somebody who was asked which of two is meant."""
    asked = Request(
        text="carrots in the pot at 7,000 ft", topic="time", dish="carrots", dish_class="root_vegetable", method="boil",
        elevation_m=2133.6, elevation_from="kitchen", choices=("time", "temperature"),
    )  # fmt: skip
    return Memory(request=asked, asked="choice")


def test_a_choice_is_one_short_question() -> None:
    asked = unsure().request
    assert asked is not None
    answer = reply_to_request(asked)
    assert answer.missing == ("choice",)
    assert answer.text == "I am not sure what you want to know of carrots: how long it takes, or how hot to have it?"


def test_a_choice_is_taken_by_its_place_or_its_words() -> None:
    first, second = take_turn("the first one", unsure()), take_turn("the second", unsure())
    assert (first.memory.request and first.memory.request.topic) == "time"
    assert (second.memory.request and second.memory.request.topic) == "temperature"
    said = take_turn("how long", unsure())
    assert said.answer.figure("cook_time")


def test_another_question_leaves_the_choice() -> None:
    turn = take_turn("why does water boil cooler up here", replace(unsure(), kitchen=Kitchen(elevation_m=2133.6)))
    assert turn.answer.request.topic == "why"


@pytest.mark.parametrize(
    ("text", "opens", "second"),
    [
        ("how long and at what oven temp for a leg of lamb in Quito", "About ", "Set the oven"),
        ("trout in the oven, 2,300 m: what temp and how long please", "Set the oven", "About "),
        ("how many litres of water for 5 kg penne at 2,600 m and how long will it boil", "About ", "About "),
        ("barley for 25 in Cusco: how many minutes, and how much carrots do I buy?", "About ", "About "),
    ],
)
def test_two_things_asked_in_one_breath_are_two_paragraphs(text: str, opens: str, second: str) -> None:
    first, other = take_turn(text, Memory()).answer.text.split("\n\n")[:2]
    assert first.startswith(opens)
    assert other.startswith(second)


def test_a_reason_asked_behind_a_verdict_leaves_the_verdict_first() -> None:
    turn = take_turn("do split peas need longer at 8,300 ft, and what is the science?", Memory())
    assert turn.answer.text.startswith("Yes: ")
    assert "\nWhy: " in turn.answer.text


def test_a_part_that_nobody_understood_is_named() -> None:
    told = take_turn("how long for barley at 2,800 m and should I swaddle sooner?", Memory()).answer.text
    assert told.startswith("About ")
    assert "I left out “should I swaddle sooner”" in told
    assert "left out" not in take_turn("how long for couscous at 2,800 m and is that right?", Memory()).answer.text


def test_what_is_warned_of_beside_a_question_is_warned_of_where_its_reason_is_asked_too() -> None:
    """For whom it is cooked stays in the answer: a yolk for a small child is set."""
    plain = take_turn("how long to boil eggs for my baby at 8,300 ft", Memory()).answer
    reasoned = take_turn("how long to boil eggs for my baby at 8,300 ft and why", Memory()).answer
    assert any("child under five" in caution.text for caution in plain.cautions)
    assert {caution.text for caution in plain.cautions} <= {caution.text for caution in reasoned.cautions}
