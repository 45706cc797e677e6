"""Slips of spelling are mended where nobody can doubt what is meant, and nowhere else."""

import pytest

from assistant.understanding.pipeline import read
from assistant.understanding.spelling import mend


@pytest.mark.parametrize(
    ("slip", "word"),
    [
        ("brocoli", "broccoli"),
        ("chiken", "chicken"),
        ("lentls", "lentils"),
        ("brasied", "braised"),
        ("temprature", "temperature"),
        ("reciepe", "recipe"),
        ("elevaton", "elevation"),
        # as it sounds
        ("steem", "steam"),
        ("kwinoa", "quinoa"),
        ("karots", "carrots"),
    ],
)
def test_mends(slip: str, word: str) -> None:
    assert mend(slip) == word


@pytest.mark.parametrize(
    "word", ["place", "beast", "weather", "zorgon", "house", "seven", "thousand", "feet", "7000", "rib", "Ωμέγα", ""]
)
def test_leaves_alone(word: str) -> None:
    assert mend(word) is None


def test_a_neighbour_settles_a_doubt() -> None:
    assert mend("shrot") is None
    assert mend("shrot", beside=("ribs",)) == "short"


def test_a_slip_never_makes_an_elevation() -> None:
    assert read("how long for rice at seven thosand feat")._.elevations == ()


def test_claimed_words_stay() -> None:
    doc = read("boil potatoes 20 minits")
    assert doc._.mended == ()
    assert doc._.measures[0].low == 20
