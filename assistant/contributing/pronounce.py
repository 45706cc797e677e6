"""How words are said, by espeak-ng: makes data/lexicon/pronounced.csv anew."""

from __future__ import annotations

import shutil
import subprocess
from collections.abc import Iterable, Iterator
from pathlib import Path

from assistant.understanding import lexicon
from assistant.voice import phones
from assistant.voice.guesses import KINDS, shelf
from assistant.voice.saying import MISSING, PROGRAM
from rules import tables
from rules.errors import RulesError

HEAD = """\
# How words are said, in the phones of data/lexicon/phones.toml: those of the lexicon, and the usual ones of English.
# Made by `python -m assistant.contributing pronounce` with espeak-ng, American English.
word,phones
"""


class NoSpeech(RulesError, OSError):
    """espeak-ng is not here, or did not say every word."""


def write(further: Iterable[str] = ()) -> Path:
    """Make the table anew: its words, those of the lexicon, and further ones. raises: NoSpeech"""
    known = {*phones.pronounced(), *further}
    words = sorted({word for word in (*known, *_of_lexicon()) if word.isalpha() and word == word.casefold()})
    path = Path(str(tables.data_path(phones.PRONOUNCED)))
    rows = (f"{word},{' '.join(said)}\n" for word, said in zip(words, _said(words), strict=True))
    path.write_text(HEAD + "".join(rows), encoding="utf-8")
    return path


def _of_lexicon() -> Iterator[str]:
    """Every word that something heard may be mended to, and every word of the lexicon."""
    for kind in KINDS:
        for phrase in shelf(kind).phrases:
            yield from phrase.split()
    for phrase in lexicon.phrase_book().phrases:
        yield from phrase.split()


def _said(words: list[str]) -> list[list[str]]:
    """The phones of each word, said by itself."""
    if shutil.which(PROGRAM) is None:
        raise NoSpeech(MISSING)
    asked = [PROGRAM, "-q", "--ipa=1", "-v", "en-us", "--stdin"]
    apart = "\n\n".join(f"{word}." for word in words)
    run = subprocess.run(asked, input=apart, capture_output=True, text=True, encoding="utf-8", check=True)
    said = [line for line in run.stdout.splitlines() if line.strip()]
    if len(said) != len(words):
        raise NoSpeech(f"espeak-ng said {len(said)} of {len(words)} words")
    return [phones.of_ipa(line) for line in said]
