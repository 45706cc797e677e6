"""The drill inside a conversation: it begins, is interrupted, goes on and ends, and the thread before it is kept."""

import asyncio

import pytest

from assistant.dialogue.embedded import Conversation
from assistant.dialogue.memory import Memory
from assistant.dialogue.slots import BadSlot, memory_of, slots_of
from assistant.dialogue.turn import take_turn
from assistant.drill import put
from rules.model import Kitchen


def talk(*texts, memory=None):
    memory, said = memory or Memory(), []
    for text in texts:
        turn = take_turn(text, memory)
        memory, said = turn.memory, [*said, turn.answer.text]
    return memory, said


def test_it_begins_and_takes_replies():
    memory, said = talk("quiz me on altitude", "next")
    assert said[0].startswith("Set 1, 5 questions.")
    assert said[1].startswith(("The answer: ", "No. ", "Yes"))
    assert memory.drill.at == 1
    assert put(memory.drill) in said[1]


def test_a_question_in_between_is_answered_and_the_drills_put_again():
    memory, said = talk("quiz me on boiling", "how long to boil pasta at 7,000 ft")
    assert " for boiling pasta at " in said[1].splitlines()[0]
    assert said[1].endswith(put(memory.drill))
    assert memory.drill.at == 0


def test_a_piece_that_is_asked_for_in_between_comes_first():
    memory, said = talk("quiz me on boiling", "how long to braise short ribs")
    assert memory.asked == "elevation"
    assert put(memory.drill) not in said[1]
    memory, said = talk("7,000 ft", memory=memory)
    assert " for braising short ribs at 7,000 ft" in said[0].splitlines()[0]
    assert said[0].endswith(put(memory.drill))


def test_asking_for_a_drill_lets_go_of_the_piece_that_was_awaited():
    memory, said = talk("how long to braise short ribs", "quiz me on baking")
    assert memory.asked is None
    assert "questions on baking" in said[1]
    assert memory.request.dish == "short ribs"


def test_the_thread_before_the_drill_is_taken_up_after_it():
    memory, said = talk("how long to braise short ribs at 7,000 ft", "quiz me", "next", "stop", "and at 9,000?")
    assert " for braising short ribs at 9,000 ft" in said[-1].splitlines()[0]
    assert memory.drill.over
    assert memory.request.elevation_m == pytest.approx(2743.2)


def test_figures_of_the_drill_never_become_the_kitchens():
    memory, _ = talk("quiz me on boiling", "7,000 ft", "199 F", "2 h", "next", "next")
    assert memory.request is None
    assert memory.kitchen == Kitchen()


def test_a_failed_reply_is_told_how_to_answer():
    _, said = talk("quiz me on baking", "purple 7 12 13", "7 12 13")
    assert said[2].startswith("I cannot read that as an answer.")


def test_the_next_drill_is_another_set_and_a_set_can_be_named():
    memory, _ = talk("quiz me", "stop", "another quiz")
    assert memory.drill.seed == 2
    memory, said = talk("quiz me on safety, set 12", memory=memory)
    assert (memory.drill.seed, memory.drill.themes) == (12, ("safety",))
    assert said[0].startswith("Set 12, 5 questions on safety.")


def test_units_are_those_of_the_kitchen():
    memory, _ = talk("quiz me on boiling", memory=Memory(kitchen=Kitchen(units="metric")))
    assert memory.drill.units == "metric"


def test_starting_over_ends_it():
    memory, _ = talk("quiz me", "start over")
    assert memory.drill is None


def test_it_travels_in_the_slots_of_a_tracker():
    memory, _ = talk("quiz me on safety, set 12", "next")
    assert memory_of(slots_of(memory)) == memory
    with pytest.raises(BadSlot, match="drill"):
        memory_of({**slots_of(memory), "drill": {"seed": 1, "count": 99}})
    with pytest.raises(BadSlot, match="drill"):
        memory_of({**slots_of(memory), "drill": {"seed": 1, "themes": ["bread"]}})


def test_the_embedded_conversation_says_the_same():
    conversation = Conversation()
    texts = ("how long to braise short ribs", "quiz me on baking", "next", "how long to boil pasta at 7,000 ft", "stop")
    said = [asyncio.run(conversation.say(text)).text for text in texts]
    assert said == talk(*texts)[1]
