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

    word: of rules.model.MISSING_WORDS
    why: what it is needed for; find_out: how a cook who does not know it comes to know it
    """

    word: str
    why: str
    find_out: str

    def __post_init__(self) -> None:
        if self.word not in MISSING_WORDS:
            raise tables.BadTable(f'data/{CATALOGUE}: piece "{self.word}" is none of {", ".join(MISSING_WORDS)}')


def heard(said: str) -> Move | None:
    """The move that the words of an utterance are, and nothing else.

    >>> heard("okay double it please")
    Move(id='scale', factor=2.0)
    >>> heard("start over the beans at 7 000 ft")
    """
    return (phrases().get(bare(said)) or phrases().get(said)) if len(said) <= LONGEST_MOVE else None


@cache
def phrases() -> Mapping[str, Move]:
    """Phrase -> the move it makes; the phrase is known with and without its polite words."""
    found: dict[str, Move] = {}
    for row in tables.read_toml(CATALOGUE)["move"]:
        for phrase in row["phrases"]:
            move = Move(row["id"], row.get("factor", 1.0))
            for form in dict.fromkeys((words(phrase), bare(words(phrase)))):
                if found.setdefault(form, move) != move:
                    raise tables.BadTable(f'data/{CATALOGUE}: "{phrase}" is the move {found[form].id} already')
    return found


def back_to_recipe(said: str) -> bool:
    """Whether the words of an utterance speak of a recipe as of one that is known.

    >>> back_to_recipe("now the recipe again for 8 000 ft"), back_to_recipe("convert a recipe for 8 000 ft")
    (True, False)
    """
    return any(f" {phrase} " in f" {said} " for phrase in tables.read_toml(CATALOGUE)["recipe"])


@cache
def pieces() -> Mapping[str, Piece]:
    """Word -> the piece, every one."""
    return {row["word"]: Piece(**row) for row in tables.read_toml(CATALOGUE)["piece"]}


def words(text: str) -> str:
    """The words of an utterance in the form in which phrases are compared."""
    return " ".join(MARKS.sub(" ", fold(text[:LONGEST])).split())


def bare(said: str) -> str:
    """Words without those of politeness.

    >>> bare("could you say it again please")
    'say it again'
    """
    return " ".join(_polite().sub(" ", said).split())


@cache
def _polite() -> re.Pattern[str]:
    longest_first = sorted(tables.read_toml(CATALOGUE)["polite"], key=len, reverse=True)
    return re.compile(rf"\b(?:{'|'.join(map(re.escape, longest_first))})\b")
