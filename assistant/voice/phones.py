"""How words are said: by data/lexicon/pronounced.csv, and by their letters where it has them not."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache, lru_cache
from itertools import groupby
from typing import Any

from rules import tables

FILE, PRONOUNCED = "lexicon/phones.toml", "lexicon/pronounced.csv"
HEADER = "word,"
# a silent letter at the end of a word, and the shortest word that can have one
SILENT, LEAST_LETTERS = "e", 4


@cache
def table() -> dict[str, Any]:
    """The sounds, what they cost, and how letters are said."""
    return tables.read_toml(FILE)


@cache
def known() -> dict[str, int]:
    """Every phone with its number, from 1."""
    return {phone: at for at, phone in enumerate((*table()["consonants"], *table()["vowels"]), start=1)}


@cache
def pronounced() -> dict[str, str]:
    """Words with their phones, a blank between two."""
    lines = tables.data_path(PRONOUNCED).read_text(encoding="utf-8").splitlines()
    rows = (line.partition(",") for line in lines if not line.startswith(("#", HEADER)))
    return {word: said for word, _, said in rows}


@lru_cache(maxsize=65_536)
def of(phrase: str) -> tuple[str, ...]:
    """The phones of a phrase, its words run together as they are in speech.

    >>> " ".join(of("beef stew")), of("beets") == of("beats")
    ('b i f s t u', True)
    """
    return tuple(phone for phone, _ in groupby(phone for word in phrase.split() for phone in _of_word(word)))


def _of_word(word: str) -> list[str]:
    said = table()["said"].get(word) or pronounced().get(word)
    return said.split() if said else list(by_letters(word))


def by_letters(word: str) -> Iterator[str]:
    """The phones of a word by its letters, as English mostly says them.

    >>> " ".join(by_letters("flanch")), " ".join(by_letters("brine"))
    ('f l æ n tʃ', 'b ɹ ɪ n')
    """
    letters = table()["letters"]
    longest = max(map(len, letters))
    if len(word) >= LEAST_LETTERS and not word.endswith(("le", "ee")):
        word = word.removesuffix(SILENT)
    at = 0
    while at < len(word):
        run = next((word[at : at + many] for many in range(longest, 0, -1) if word[at : at + many] in letters), None)
        if run:
            yield from letters[run].split()
        at += len(run or word[at])


def of_ipa(said: str) -> list[str]:
    """Phones of a transcription with `_` between two; stress and length are left out.

    >>> of_ipa("pˈɪ_n_t_oʊ"), of_ipa("tʃ_ˈɜː_ɹ")
    (['p', 'ɪ', 'n', 't', 'o'], ['tʃ', 'ɜ', 'ɹ'])
    """
    return [phone for part in said.split("_") for phone in _of_part(part)]


def _of_part(part: str) -> Iterator[str]:
    written = table()["written"]
    bare = "".join(char for char in part if any(char in phone for phone in (*known(), *written)))
    for char in (bare,) if bare in known() or bare in written else bare:
        yield from written.get(char, char).split()
