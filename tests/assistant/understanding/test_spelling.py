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
        # whose slips stand beside dangers as well
        ("pumkin", "pumpkin"),
        ("sqaush", "squash"),
        ("unpasturised", "unpasteurised"),
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


@pytest.mark.parametrize(
    "text",
    [
        "how long for kashk at 7,000 ft",
        "locro from Cauda's book at 2,850 m",
        "appam batter in Ooty",
        "Brasís with rice",
        "the recipe of Lentilla, how long",
        "kottu at 1,800 m",
    ],
)
def test_words_of_other_kitchens_and_names_stay(text: str) -> None:
    assert read(text)._.mended == ()


def test_a_word_with_accents_is_no_slip_of_an_english_one() -> None:
    assert read("stéem it")._.mended == ()
    assert read("steem it")._.mended == (("steem", "steam"),)


def test_a_capital_leaves_what_sounds_alike_to_be_mended() -> None:
    assert read("how long for Brocoli")._.mended == (("brocoli", "broccoli"),)


@pytest.mark.parametrize("text", ["beans in brecken ridge", "rice in quitto", "eggs in lead ville"])
def test_the_name_of_a_place_is_not_mended_into_the_kitchen(text: str) -> None:
    assert read(text)._.mended == ()
