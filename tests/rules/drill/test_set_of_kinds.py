"""A set of questions of chosen kinds: no two alike, the kinds in turn, fewer where there is no more to ask."""

import pytest

from rules.drill import LONGEST_SET, make_set_of
from rules.errors import OutOfRange, UnknownWord

KINDS = ("boiling.fall", "timing.murmur", "baking.gas")


def kind(question_id: str) -> str:
    return question_id.partition("/")[0]


def test_every_kind_comes_once_before_one_comes_again() -> None:
    made = make_set_of(12, KINDS, count=9)
    assert len({question.text for question in made}) == 9
    for start in (0, 3, 6):
        assert {kind(question.id) for question in made[start : start + 3]} == set(KINDS)


def test_a_seed_repeats_and_another_does_not() -> None:
    assert make_set_of(3, KINDS, count=6) == make_set_of(3, KINDS, count=6)
    assert make_set_of(3, KINDS, count=6) != make_set_of(4, KINDS, count=6)


def test_a_kind_that_has_one_question_gives_one() -> None:
    assert len(make_set_of(1, ("baking.onset",), count=10)) == 1


def test_what_is_none_is_refused() -> None:
    with pytest.raises(UnknownWord):
        make_set_of(1, ("boiling.nothing",), count=1)
    with pytest.raises(OutOfRange):
        make_set_of(1, KINDS, count=LONGEST_SET + 1)
