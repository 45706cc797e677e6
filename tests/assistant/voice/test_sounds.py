"""How words are said and how near they are to the ear, against what English speakers hear as the same."""

from __future__ import annotations

import pytest

from assistant.voice import phones, sounds


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("beets", "beats"),
        ("flour", "flower"),
        ("mussels", "muscles"),
        ("leek", "leak"),
        ("chili", "chilly"),
        ("thyme", "time"),
    ],
)
def test_homophones_sound_the_same(one: str, other: str) -> None:
    """Common practice: words that dictionaries give one pronunciation."""
    assert sounds.likeness(one, other) == pytest.approx(1.0)


@pytest.mark.parametrize(
    ("heard", "nearer", "farther"),
    [
        ("pin", "bin", "sin"),
        ("cat", "cad", "cash"),
        ("ship", "sheep", "shop"),
        ("mice", "nice", "lice"),
        ("fin", "thin", "tin"),
        ("clams", "plans", "beans"),
    ],
)
def test_sounds_that_share_their_making_are_nearer(heard: str, nearer: str, farther: str) -> None:
    """As listeners confuse consonants in noise: voice and place go before manner (from memory, the classic studies)."""
    assert sounds.likeness(heard, nearer) > sounds.likeness(heard, farther)


def test_likeness_is_the_same_either_way() -> None:
    for one, other in (("navy beans", "maybe beans"), ("rice", "roast turkey"), ("egg", "eggplant")):
        assert sounds.likeness(one, other) == pytest.approx(sounds.likeness(other, one), abs=1e-6)


def test_many_at_once_are_as_near_as_each_by_itself() -> None:
    heard, meant = ["maybe beans", "rice"], ("navy beans", "nice", "pound cake", "ice")
    found = {(heard[row], meant[column]): like for row, column, like in sounds.near(heard, meant, 0.3)}
    assert ("maybe beans", "navy beans") in found
    for (one, other), like in found.items():
        if sounds.apart(one, other) == (one, other):
            assert like == pytest.approx(sounds.likeness(one, other), abs=1e-6)


def test_every_phone_of_the_table_of_words_is_known() -> None:
    rows = {**phones.pronounced(), **phones.table()["said"], **phones.table()["letters"]}
    strange = {phone for said in rows.values() for phone in said.split()} - phones.known().keys()
    assert not strange


def test_a_word_that_is_not_in_the_table_is_said_by_its_letters() -> None:
    assert "quonchy" not in phones.pronounced()
    assert phones.of("quonchy") == ("k", "w", "ɑ", "n", "tʃ", "i")


@pytest.mark.parametrize("text", ["", "...", "北京", "é", "'"])
def test_odd_text_has_no_sound_and_breaks_nothing(text: str) -> None:
    assert sounds.likeness(text, "rice") <= sounds.likeness("rise", "rice")
    assert list(sounds.near([text], ("rice",), 0.9)) == []
