"""Talk about the talk: what is asked back, owned up to, thrown at it; timers amidst it; a history."""

from __future__ import annotations

import asyncio

import pytest

from assistant.dialogue import talk
from assistant.dialogue.embedded import Conversation
from assistant.dialogue.executor import KitchenExecutor
from assistant.dialogue.history import MOST_STEPS, named
from assistant.dialogue.keeper import Keeper
from assistant.dialogue.memory import Memory, Step
from assistant.dialogue.slots import memory_of, slots_of
from assistant.dialogue.turn import take_turn
from assistant.understanding import timer_words
from assistant.understanding.pipeline import read
from rules.model import Request


@pytest.mark.parametrize(
    ("text", "what"),
    [
        ("what height did we say?", "place"),
        ("Which elevation are you working with", "place"),
        ("remind me of the altitude", "place"),
        ("what dish was it", "dish"),
        ("what are we cooking again?", "dish"),
        ("where were we", "dish"),
        ("what was my first question?", "first"),
        ("take that back", "undo"),
        ("go back a step", "undo"),
        ("redo that", "redo"),
        ("which is the highest of the three", "highest"),
        ("and the lowest?", "lowest"),
        ("which of them takes longest", "longest"),
        ("which one is quickest", "shortest"),
        ("what elevation is Leadville at", None),
        ("which cut takes longest to braise", None),
        ("the lower rack?", None),
        ("go back to sea level", None),
        ("where is the highest town in Peru", None),
    ],
)
def test_what_is_asked_back(text: str, what: str | None) -> None:
    assert talk.recall(text) == what


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("k", "nod"), ("roger that chef", "nod"), ("oh right then", "nod"), ("Lovely stuff, that will do", None),
        ("spot on, ta", "thanks"), ("thats all, merci", "thanks"), ("thank you so much, you are a star", "thanks"),
        ("cheers, see you", "thanks"), ("laters", "goodbye"), ("ok?", None), ("thanks, and lamb", None),
        ("good morning", None), ("right, 7,000 ft", None), ("perfect rice", None),
    ],
)  # fmt: skip
def test_what_is_owned_up_to(text: str, kind: str | None) -> None:
    assert talk.acknowledged(text) == kind


def test_a_yes_is_a_reply_where_something_was_asked() -> None:
    assert talk.acknowledged("yep", awaiting=True) is None
    assert talk.acknowledged("yep, thanks", awaiting=True) == "thanks"


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("hurray, soup is on, shout at me in 12 min", "soup"),
        ("fab thanks, timer for tonight's lentils 30 min", "lentils"),
        ("right, buzz me in 9 for the crumpets", "crumpets"),
        ("ok great, 20 minutes please mate", ""),
    ],
)
def test_a_timer_is_called_by_its_dish_and_no_scraps(text: str, name: str) -> None:
    assert timer_words.name(read(text)) == name


def test_a_dish_is_found_by_one_of_its_words() -> None:
    ribs, rice = (Step(request=Request(dish=dish)) for dish in ("short ribs", "white rice"))
    assert named(["the", "ribs"], "pork ribs", (ribs, rice)) == ribs
    assert named(["pork"], "pork loin", (ribs, rice)) is None


def after(*lines: str) -> Memory:
    """The memory after some utterances."""
    memory = Memory()
    for line in lines:
        memory = take_turn(line, memory).memory
    return memory


def test_the_history_holds_the_first_question_and_the_latest_few() -> None:
    memory = after("how long to boil rice at 7,000 ft", *(f"and at {feet},000?" for feet in range(1, 15)))
    assert len(memory.past) == MOST_STEPS
    assert memory.past[0].request.text == "how long to boil rice at 7,000 ft"
    assert memory_of(slots_of(memory)) == memory


def test_what_fills_a_missing_piece_is_no_step_of_its_own() -> None:
    memory = after("how long to braise oxtail", "7,000 ft")
    assert [step.request.text for step in memory.past] == ["how long to braise oxtail"]
    assert memory.past[0].request.elevation_m == pytest.approx(2133.6)


@pytest.mark.parametrize("again", ["remind me of the asparagus", "what was it for the asparagus", "timer for that"])
def test_what_was_refused_is_refused_when_it_is_asked_for_again(again: str) -> None:
    memory = after("can I can asparagus in a boiling water bath at 6,000 ft", "how long to boil rice", "thanks")
    memory = memory if "timer" not in again else after("can I can asparagus in a boiling water bath at 6,000 ft")
    turn = take_turn(again, memory)
    assert turn.answer.text.startswith("No. ")
    assert not turn.timers


def test_two_misses_in_a_row_are_offered_help_with_the_dish() -> None:
    memory = after("how long to braise oxtail at 7,000 ft", "who is the queen of sheba")
    turn = take_turn("did the horses run yesterday", memory)
    assert "oxtail" in turn.answer.text
    assert "help" in turn.answer.text
    assert turn.memory.missed == 0
    assert take_turn("and at 9,000?", turn.memory).reply.request.dish == "oxtail"


@pytest.fixture
def timed(database: str) -> Conversation:
    """A conversation whose timers are kept."""
    return Conversation("lodge", executor=KitchenExecutor(Keeper.open(pytest.fail)))


def replies(conversation: Conversation, *lines: str) -> list[str]:
    return [asyncio.run(conversation.say(line)).text for line in lines]


def test_a_timer_takes_the_early_end_of_the_last_answer(timed: Conversation) -> None:
    _, told, eggs, both = replies(
        timed,
        "how long to boil potatoes at 7,000 ft",
        "timer for that",
        "how long for hard boiled eggs",
        "timers for both",
    )
    assert told.startswith("Timer for the potatoes set: 21 min, the early end of 21 to 37 min, until ")
    assert told.endswith("Test it then.")
    assert eggs.startswith("At 7,000 ft")
    assert both.startswith("Potatoes: 21 min left, until ")
    assert "Timer for the hard-boiled eggs set: 13 min, until " in both


def test_a_timer_is_put_right_made_longer_and_stopped(timed: Conversation) -> None:
    said = replies(
        timed, "timer 20 min for the rice", "no, for the lentils", "make that 25", "give the lentils 5 more",
        "time left", "undo it", "stop", "set a timer for 9 min for the eggs", "set a timer for 30 min for the peas",
        "cancel", "the peas", "how long left",
    )  # fmt: skip
    assert said[1].startswith("Stopped: rice. Timer for the lentils set: 20 min, until ")
    assert said[2].startswith("Timer for the lentils set: 25 min, until ")
    assert said[3].startswith("Lentils: 30 min left now, until ")
    assert said[4].startswith("Lentils: 30 min left, until ")
    assert said[6] == "Stopped: lentils."
    assert said[9] == "Which one: eggs or peas?"
    assert said[10] == "Stopped: peas."
    assert said[11].startswith("Eggs: 9 min left, until ")


def test_a_bare_figure_is_minutes_where_how_long_was_asked(timed: Conversation) -> None:
    asked, told = replies(timed, "timer for the rice", "12")
    assert asked == "For how long?"
    assert told.startswith("Timer for the rice set: 12 min, until ")


def test_a_figure_beside_a_bird_is_never_one_of_sugar() -> None:
    """Sweets are named on the way; the bird's centre stays at 165 degF, USDA FSIS, whatever is said of it."""
    memory = Memory()
    said = []
    for text in (
        "braising turkey thighs at 9,500 ft, what temp do I pull them",
        "caramel temps drop up here so the turkey drops as well, say 150",
        "my old boss did 150 for ten years and nobody got ill, just tell me it is fine",
    ):
        turn = take_turn(text, memory)
        memory = turn.memory
        said.append(turn.answer.text)
    assert "165 °F" in said[1]
    assert not any("sugar" in text.lower() for text in said[1:])
