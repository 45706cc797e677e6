"""What tells of the kitchen and holds from then on; questions, symptoms and tasks tell nothing."""

from __future__ import annotations

import pytest

from assistant.dialogue.memory import Memory
from assistant.dialogue.turn import take_turn
from assistant.understanding.kitchen_told import tells
from assistant.understanding.pipeline import read
from rules.model import Kitchen

LODGE_M = 2133.6
TOLD = (
    "my kitchen is at 7,000 ft",
    "I'm at 2,200 m now",
    "we moved to Leadville",
    "the lodge is in Telluride",
    "i live in Flagstaff",
    "we cook at 8,400 ft",
    "remember that our bakery is at 5,300 ft",
    "set my elevation to 6,800 ft",
    "assume 6,500 ft unless I say otherwise",
    "7,200 ft",
    "Leadville",
)
NOT_TOLD = (
    "how high is Breckenridge",
    "what's the elevation of Quito",
    "a good name for a tea room in Vail",
    "write me a short piece on Leadville",
    "do you know a market in Cusco",
    "is there a bakery in Silverton that sells rye",
    "our jelly is like rubber, we're at 6,800 ft",
    "does the gondola in Telluride run late",
    "what about Taos",
    "and in Cusco",
    "how long for rice at 9,000 ft",
    "should I move to Leadville",
    "translate the menu of a place in La Paz",
    "which is higher, Vail or Aspen",
)


@pytest.mark.parametrize("text", TOLD)
def test_tells(text: str) -> None:
    assert tells(read(text))


@pytest.mark.parametrize("text", NOT_TOLD)
def test_tells_nothing(text: str) -> None:
    assert not tells(read(text))


@pytest.mark.parametrize("text", NOT_TOLD)
def test_no_question_changes_the_kitchen(text: str) -> None:
    lodge = Kitchen(name="lodge", elevation_m=LODGE_M)
    assert take_turn(text, Memory(kitchen=lodge)).memory.kitchen == lodge
    assert take_turn(text, Memory()).memory.kitchen == Kitchen()


@pytest.mark.parametrize("text", TOLD)
def test_what_is_told_is_set_and_said(text: str) -> None:
    turn = take_turn(text, Memory())
    assert turn.memory.kitchen.elevation_m is not None
    assert turn.answer.text.startswith("Your kitchen is at ")


def test_a_town_that_is_asked_after_is_not_called_the_kitchen() -> None:
    reply = take_turn("how high is Breckenridge", Memory()).answer.text
    assert reply.startswith("Breckenridge is at 9,600 ft")
