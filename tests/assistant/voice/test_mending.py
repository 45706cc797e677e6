"""Words mended by sound, and ranked by what makes sense in a kitchen. What a small model heard stands first."""

from __future__ import annotations

import pytest

from assistant.understanding.pipeline import read
from assistant.understanding.utterance import listen
from assistant.voice.guesses import KINDS, guesses
from assistant.voice.mending import Reading, readings
from rules.model import Kitchen, Request


def parse(text: str) -> Request:
    return listen(text, Kitchen()).hearing.request


def best(*takes: str) -> Reading:
    return readings(takes, parse)[0]


@pytest.mark.parametrize(
    ("takes", "dish"),
    [
        (["How long to cook beats at 6,700 feet?", "How long to cook feats at 6,700 feet?"], "beets"),
        (["What oil temperature for dough nuts at 6,000 feet"], "doughnuts"),
        (
            ["How long do pental beans need at 7,200 feet?", "How long do pinto beans need at 7,200 feet?"],
            "pinto beans",
        ),
        (["What about maybe beans at 8,300 feet?"], "navy beans"),
        (["My east rolls rise too fast at 7,500 feet."], "dinner rolls"),
        (["Heats a doe at six thousand feet"], "pizza"),
    ],
)
def test_a_dish_is_mended_by_its_sound(takes: list[str], dish: str) -> None:
    assert best(*takes).request.dish == dish


@pytest.mark.parametrize(
    ("takes", "place"),
    [
        (
            ["How long do I braise lamb shanks incentive?", "How long do I braise lamb shanks in center fee?"],
            "Santa Fe",
        ),
        (["How long to boil rice and toes?", "How long to boil rice and tops?"], "Taos"),
        (["How long to boil potatoes and be goada"], "Bogota"),
    ],
)
def test_a_place_is_mended_by_its_sound(takes: list[str], place: str) -> None:
    assert best(*takes).request.place == place


def test_a_method_is_mended_by_its_sound() -> None:
    assert best("How long do I praise oxtail at 7,000 feet").request.method == "braise"


@pytest.mark.parametrize(
    "text",
    [
        "How long do I cook rice at 7,000 feet?",
        "Why do beans take so long at 7,000 feet?",
        "My custard will not set at 9,000 feet.",
        "How long to steam artichokes at 6,800 feet?",
        "What temperature does water boil at 14,000 feet",
        "and at 9,000 feet",
        "set a timer for 20 minutes",
        "How many minutes do dumplings steam at 1,700 meters?",
        "Grill chicken at 7,000 feet, what internal temperature?",
        "Can I trust 202 degrees for boiling at 5,000 feet?",
        "do I cut the sugar in meringues at 7,000",
        "reheat leftovers to what temperature",
        "candy came out too hard at 7,000 feet",
    ],
)
def test_what_makes_sense_is_left_as_it_is(text: str) -> None:
    assert best(text).text == text


def test_numbers_and_units_are_never_touched() -> None:
    doc = read("how long for eggs at fifteen hundred feet and sixty minutes or 8,000 feet")
    figures = {i for span in (*doc._.numbers, *doc._.measures) for i in range(span.start, span.end)}
    for kind in KINDS:
        assert not [guess for guess in guesses(doc, kind) if not figures.isdisjoint(range(guess.start, guess.end))]


def test_the_number_that_most_takes_have_wins() -> None:
    found = best("boil rice at 8,000 feet", "boil rice at 800 feet", "boil rice at 8,000 feet")
    assert "8,000" in found.text


def test_takes_with_nothing_in_them_are_read_all_the_same() -> None:
    assert best("uh", "?!", "").text in ("uh", "?!", "")
