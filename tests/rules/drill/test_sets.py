"""Sets of questions: repeatable, of the themes, level and number asked for, graded in words."""

import subprocess
import sys

import pytest

from assistant.drill.wording import in_words
from assistant.replies.sentences import worded
from rules import drill
from rules.errors import OutOfRange, UnknownWord


def test_a_set_is_the_same_to_the_byte_in_another_process():
    code = "from rules import drill; print(ascii(drill.make_set(11, count=40, units='metric')))"
    other = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True).stdout
    assert other.strip() == ascii(drill.make_set(11, count=40, units="metric"))


def test_another_seed_gives_another_set():
    assert drill.make_set(1) != drill.make_set(2)


def test_a_longer_set_begins_with_the_shorter_one():
    assert drill.make_set(5, count=20)[:7] == drill.make_set(5, count=7)


def test_the_themes_come_in_turn_and_no_kind_twice_before_all_have_been():
    questions = drill.make_set(3, count=40)
    assert [q.theme for q in questions[:8]] == [*drill.THEMES, *drill.THEMES]
    ids = [q.id for q in questions]
    assert len(set(ids)) == len(ids)
    assert {i.rpartition("/")[2] for i in ids} == {"1"}


@pytest.mark.parametrize("theme", drill.THEMES)
@pytest.mark.parametrize("level", drill.LEVELS)
@pytest.mark.parametrize("seed", [0, 7, 2**31 - 1])
def test_a_theme_has_the_longest_set_at_every_level_without_repeating_itself(theme, level, seed):
    questions = drill.make_set(seed, themes=(theme,), count=drill.LONGEST_SET, level=level)
    assert len({in_words(q).text for q in questions}) == drill.LONGEST_SET
    assert all(q.theme == theme and q.level <= level for q in questions)


def test_themes_count_once_in_their_own_order():
    one = drill.make_set(4, themes=("safety", "boiling", "safety"))
    assert one == drill.make_set(4, themes=("boiling", "safety"))


def test_what_no_set_can_have_is_refused_kindly():
    with pytest.raises(UnknownWord, match="did you mean baking"):
        drill.make_set(1, themes=("bakin",))
    for wrong in ({"count": 0}, {"count": 41}, {"level": 0}, {"level": 4}):
        with pytest.raises(OutOfRange):
            drill.make_set(1, **wrong)


def where_water_boils():
    point = next(kind for kind in drill.kinds_of("boiling") if kind.name == "point")
    return in_words(drill.make_question(2, "boiling", point, 1, "us"))


def feedback(question, given):
    return worded(drill.grade(question, given).feedback, question.asked_in)


def test_feedback_tells_the_answer_what_counts_and_why():
    question = where_water_boils()
    assert drill.grade(question, question.answer).right
    assert feedback(question, question.answer) == f"Right. {question.why}"
    wrong = f"Not so: {question.shown}. What counts: within 2 °F (1 °C). {question.why}"
    assert feedback(question, 0.0) == wrong
    assert feedback(question, None) == f"The answer: {question.shown}. {question.why}"
    assert not drill.grade(question, None).right


def test_feedback_on_a_yes_or_no_leaves_the_word_to_the_explanation():
    steam = next(kind for kind in drill.kinds_of("boiling") if kind.name == "steam")
    question = in_words(drill.make_question(2, "boiling", steam, 1, "us"))
    assert feedback(question, "no").startswith("Right. No. ")
    assert feedback(question, "yes").startswith("Not so. No. ")
    assert feedback(question, None).startswith("No. ")


def test_a_range_is_right_where_both_ends_are():
    question = where_water_boils()
    assert drill.grade(question, (question.low, question.high)).right
    assert not drill.grade(question, (question.low, question.high + 0.1)).right


def test_the_theme_of_a_question_is_told_by_its_id():
    assert all(drill.theme_of(q.id) == q.theme for q in drill.make_set(9, count=40))
