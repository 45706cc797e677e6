"""A drill held in a conversation, utterance by utterance."""

import json
from dataclasses import asdict

import pytest

from assistant import drill
from assistant.drill import Sitting
from assistant.drill.wording import in_words
from rules.drill import make_set


def said_right(question):
    if question.form != "figure":
        return question.answer
    unit = {"degC": " C", "K": " C", "min": " min", "psi": " psi", "m": " m"}.get(question.unit, "")
    return f"{question.answer}{unit}"


def test_a_set_from_beginning_to_end():
    sitting, text = drill.start(7)
    assert text.startswith("Set 7, 5 questions. ")
    assert "1 of 5, boiling." in text
    for number in range(1, 6):
        sitting, text = drill.reply(sitting, said_right(sitting.question))
        assert text.startswith("Right. ")
        assert (f"{number + 1} of 5" in text) == (number < 5)
    assert (sitting.over, sitting.at, sitting.right) == (True, 5, 5)
    assert "5 of 5 right." in text
    assert "quiz me, set 7" in text


def test_a_reply_that_cannot_be_read_leaves_the_question_and_says_how_to_answer():
    sitting, _ = drill.start(7, ("boiling",))
    after, text = drill.reply(sitting, "purple")
    assert after == sitting
    assert text.startswith("I cannot read that as an answer. ")


def test_passing_over_tells_the_answer_and_stopping_ends_with_the_score():
    sitting, _ = drill.start(3, ("timing",))
    question = sitting.question
    sitting, text = drill.reply(sitting, "next")
    assert question.why in text
    assert (sitting.at, sitting.right) == (1, 0)
    sitting, text = drill.reply(sitting, "stop")
    assert sitting.over
    assert text.startswith("1 passed over, none answered.")
    assert "quiz me on timing, set 3" in text


def test_the_question_is_said_again():
    sitting, first = drill.start(3)
    assert drill.reply(sitting, "say it again") == (sitting, drill.put(sitting))
    assert drill.put(sitting) in first


def test_what_is_left_between_two_utterances_is_plain_json():
    sitting, _ = drill.start(3, ("safety", "baking"), "metric", 8)
    sitting, _ = drill.reply(sitting, "next")
    back = json.loads(json.dumps(asdict(sitting)))
    assert Sitting(**{**back, "themes": tuple(back["themes"])}) == sitting


def test_the_questions_are_those_of_the_set_with_this_seed():
    sitting, _ = drill.start(21, units="metric")
    assert sitting.question == in_words(make_set(21, count=5, units="metric")[0])


@pytest.mark.parametrize(
    "wrong",
    [{"themes": ("bread",)}, {"count": 0}, {"count": 41}, {"at": 5}, {"at": -1}, {"right": 1}, {"at": 6, "over": True}],
)
def test_what_no_set_can_have_is_refused(wrong):
    with pytest.raises(ValueError, match=r"theme|questions|right"):
        Sitting(**wrong)


def test_which_utterances_are_the_drills():
    sitting, _ = drill.start(3, ("boiling",))
    for text in ("12 min", "199", "no", "b", "stop", "next", "say it again"):
        assert drill.understood(sitting, text), text
    for text in ("how long to boil pasta", "short ribs", "why does it boil", "and at 9,000?"):
        assert not drill.understood(sitting, text), text
