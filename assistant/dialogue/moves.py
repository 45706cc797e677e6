"""Utterances about the conversation itself: say it again, shorter, why do you need that, start over."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache

from assistant.reading.text import LONGEST, fold
from rules import tables
from rules.model import MISSING_WORDS

CATALOGUE = "lexicon/moves.toml"
LONGEST_MOVE = 120
MARKS = re.compile(r"[^\w\s]+")


@dataclass(frozen=True, slots=True)
class Move:
    """A move. factor: by how much the amounts are multiplied, where the move is `scale`."""

    id: str
    factor: float = 1.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Piece:
    """A piece that is asked for.

    word: of rules.model.MISSING_WORDS; frame: the sentence in which a bare reply to it is heard, {} for the reply
    why: what it is needed for; find_out: how a cook who does not know it comes to know it
    """

    word: str
    why: str
    find_out: str
    frame: str = ""

    def __post_init__(self) -> None:
        if self.word not in MISSING_WORDS:
            raise tables.BadTable(f'data/{CATALOGUE}: piece "{self.word}" is none of {", ".join(MISSING_WORDS)}')
        if self.frame and self.frame.count("{}") != 1:
            raise tables.BadTable(f"data/{CATALOGUE}: piece {self.word}: frame needs one {{}} for the reply")


def heard(text: str) -> Move | None:
    """The move that an utterance is, and nothing else.

    >>> heard("Okay, double it please.")
    Move(id='scale', factor=2.0)
    >>> heard("start over the beans at 7,000 ft")
    """
    if len(text) > LONGEST_MOVE:
        return None
    return phrases().get(bare(text)) or phrases().get(words(text))


@cache
def phrases() -> Mapping[str, Move]:
    """Phrase -> the move it makes; the phrase is known with and without its polite words."""
    found: dict[str, Move] = {}
    for row in tables.read_toml(CATALOGUE)["move"]:
        for phrase in row["phrases"]:
            move = Move(row["id"], row.get("factor", 1.0))
            for form in dict.fromkeys((words(phrase), bare(phrase))):
                if found.setdefault(form, move) != move:
                    raise tables.BadTable(f'data/{CATALOGUE}: "{phrase}" is the move {found[form].id} already')
    return found


def back_to_recipe(text: str) -> bool:
    """Whether an utterance speaks of a recipe as of one that is known.

    >>> back_to_recipe("now the recipe again for 8,000 ft"), back_to_recipe("convert a recipe for 8,000 ft")
    (True, False)
    """
    said = f" {words(text)} "
    return any(f" {phrase} " in said for phrase in tables.read_toml(CATALOGUE)["recipe"])


@cache
def pieces() -> Mapping[str, Piece]:
    """Word -> the piece, every one."""
    return {row["word"]: Piece(**row) for row in tables.read_toml(CATALOGUE)["piece"]}


def words(text: str) -> str:
    """The words of an utterance in the form in which phrases are compared."""
    return " ".join(MARKS.sub(" ", fold(text[:LONGEST])).split())


def bare(text: str) -> str:
    """The same without words of politeness.

    >>> bare("Could you say it again, please?")
    'say it again'
    """
    return " ".join(_polite().sub(" ", words(text)).split())


@cache
def _polite() -> re.Pattern[str]:
    longest_first = sorted(tables.read_toml(CATALOGUE)["polite"], key=len, reverse=True)
    return re.compile(rf"\b(?:{'|'.join(map(re.escape, longest_first))})\b")
