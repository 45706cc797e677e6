"""How words are said, taken from espeak-ng."""

from __future__ import annotations

import shutil

import pytest

from assistant.contributing import pronounce
from assistant.voice import phones


@pytest.mark.skipif(shutil.which("espeak-ng") is None, reason="espeak-ng is missing: apt install espeak-ng")
def test_the_table_is_what_espeak_says() -> None:
    words = ["beets", "chickpeas", "dough", "roast", "simmer", "the"]
    assert [" ".join(said) for said in pronounce._said(words)] == [phones.pronounced()[word] for word in words]


def test_without_espeak_it_is_told_how_to_get_it(monkeypatch: pytest.MonkeyPatch) -> None:
    before = phones.pronounced()
    monkeypatch.setattr(shutil, "which", lambda program: None)
    with pytest.raises(pronounce.NoSpeech, match="apt install espeak-ng"):
        pronounce.write()
    phones.pronounced.cache_clear()
    assert phones.pronounced() == before


def test_the_words_of_dishes_are_in_it() -> None:
    """No more than one in a hundred has to be said by its letters: a word added since, or one of another script."""
    words = {word for phrase in pronounce.shelf("dish").phrases for word in phrase.split()}
    assert len(words - phones.pronounced().keys()) < len(words) / 100
