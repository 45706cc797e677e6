"""The words of data/lexicon/drill.toml, and how an utterance is compared with them."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache
from typing import Any

from assistant.reading.text import LONGEST, fold
from rules import tables
from rules.drill import THEMES

CATALOGUE = "lexicon/drill.toml"
LONGEST_START = 120
MARKS = re.compile(r"[^\w\s%°.,/]+|[.,](?!\d)")
NAME, NUMBER = r"\s+([^\W\d_]+)\b", r" (\d{1,9})\b"


@dataclass(frozen=True, slots=True)
class Wanted:
    """A drill that is asked for.

    themes: of THEMES, none where none is named; seed: of the set, where one is named
    name: of the trainee whose progress is kept, as it was said; "" where none was
    """

    themes: tuple[str, ...] = ()
    seed: int | None = None
    name: str = ""


def bare(text: str) -> str:
    """Words in lower case, without marks but those within figures.

    >>> bare("Quiz me on baking, please!"), bare("It's 7,000 ft.")
    ('quiz me on baking please', 'its 7,000 ft')
    """
    return " ".join(MARKS.sub(" ", fold(text[:LONGEST])).split())


def wanted(text: str) -> Wanted | None:
    """The drill that an utterance asks for; None where it asks for none.

    >>> wanted("Quiz me on baking"), wanted("how do I test meat")
    (Wanted(themes=('baking',), seed=None, name=''), None)
    >>> wanted("I am Ana, quiz me on altitude, set 12")
    Wanted(themes=(), seed=12, name='Ana')
    """
    if len(text) > LONGEST_START:
        return None
    called = after("named", NAME).search(text)
    said = bare(text.replace(called[0], " ") if called else text)
    polite = said.removesuffix(" please").removeprefix("please ")
    if polite not in listed("alone") and not any(holds(said, cue) for cue in listed("start")):
        return None
    number = after("numbered", NUMBER).search(said)
    return Wanted(themes_in(said), int(number[1]) if number else None, called[1].title() if called else "")


def themes_in(said: str) -> tuple[str, ...]:
    """The themes that are named in bare words, in the order of THEMES."""
    return tuple(theme for theme in THEMES if any(holds(said, word) for word in catalogue()["themes"][theme]))


def holds(said: str, phrase: str) -> bool:
    """Whether bare words hold a phrase as whole words.

    >>> holds("quiz me now", "quiz me"), holds("test meat", "test me")
    (True, False)
    """
    return f" {phrase} " in f" {said} "


@cache
def after(name: str, pattern: str) -> re.Pattern[str]:
    """A pattern that stands after one of the phrases of a list of the lexicon."""
    phrases = "|".join(map(re.escape, catalogue()[name]))
    return re.compile(rf"\b(?:{phrases}){pattern}", re.IGNORECASE)


def listed(name: str) -> frozenset[str]:
    """The phrases of a list of the lexicon."""
    return _lists()[name]


@cache
def catalogue() -> dict[str, Any]:
    """The lexicon as it stands in the file.

    raises: BadTable where a theme has no words, or a phrase would be both of two replies
    """
    rows = tables.read_toml(CATALOGUE)
    if tuple(rows["themes"]) != THEMES:
        raise tables.BadTable(f"data/{CATALOGUE}: themes must be {', '.join(THEMES)}, in this order")
    seen: dict[str, str] = {}
    for name in ("yes", "no", "pass", "stop", "again", "hint", "why"):
        for phrase in rows[name]:
            if seen.setdefault(phrase, name) != name:
                raise tables.BadTable(f'data/{CATALOGUE}: "{phrase}" is {seen[phrase]} and {name}')
    return rows


@cache
def _lists() -> dict[str, frozenset[str]]:
    return {name: frozenset(bare(p) for p in phrases) for name, phrases in catalogue().items() if name != "themes"}
