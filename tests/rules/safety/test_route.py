"""How a question of safety finds its room."""

import pytest

from assistant.replies.worded import answer
from rules import book
from rules.catalogue import topics
from rules.model import Request
from rules.topics.why import rows


@pytest.mark.parametrize("topic", [t for t in topics() if t not in ("smalltalk", "out_of_scope")])
def test_a_subject_of_safety_answers_whatever_the_topic(topic):
    given = answer(Request(topic=topic, subject="drinking_water", elevation_m=2133.6))
    assert given.because[0].rule == "safety.drinking_water"
    assert given.figure("boil_cdc").value == 3


def test_a_room_says_what_it_needs():
    assert answer(Request(topic="doneness", subject="drinking_water")).missing == ("elevation",)


def test_another_subject_leaves_the_topic_its_room():
    assert answer(Request(topic="set_kitchen", subject="none_such", elevation_m=0)).covered


def test_subjects_of_safety_are_no_explanations():
    assert not set(book.names("safety")) & set(rows())
