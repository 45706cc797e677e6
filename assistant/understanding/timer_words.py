"""What is said about timers: what is to be done, and what the cook calls the timer."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from typing import Literal

from spacy.tokens import Doc

from assistant.understanding.claims import timed
from rules import tables

Action = Literal["set", "left", "extend", "stop", "stop_all"]

WORDS = "lexicon/timers.toml"
LONGEST_NAME = 4


@dataclass(frozen=True, slots=True)
class OfTimers:
    """What an utterance says of timers, if it is about them.

    spoken: whether timers or a call are spoken of, rather than only a length of time
    """

    action: Action | None = None
    name: str = ""
    spoken: bool = False


def heard(doc: Doc) -> OfTimers:
    """What an utterance says of timers."""
    return OfTimers(action(doc.text), name(doc), spoken_of(doc.text))


def action(text: str) -> Action | None:
    """What is to be done about timers; None where nothing tells, which is to set one where it must be something.

    >>> [action(t) for t in ("set a timer for the beans", "how long left on the beans", "clear all timers", "25 min")]
    ['set', 'left', 'stop_all', None]
    """
    said = text.casefold()
    return next((what for what, pattern in cues() if pattern.search(said)), None)


def spoken_of(text: str) -> bool:
    """Whether a text speaks of timers or of being called, rather than only of a length of time.

    >>> spoken_of("ping me in 20 minutes"), spoken_of("the recipe says 2 hours")
    (True, False)
    >>> spoken_of("remind me the peaches again"), spoken_of("remind me of the beans in 20 minutes")
    (False, True)
    """
    words = tables.read_toml(WORDS)
    said = re.sub(words["recalls"], " ", text.casefold())
    return any(word in said for word in words["spoken"].split())


def name(doc: Doc) -> str:
    """What the cook calls the timer: the words for its dish; empty where none is named.

    Of a dish that nobody has heard of it is the last run of words that are neither a time, nor about timers, nor said
    by the way.

    >>> from assistant.understanding.pipeline import read
    >>> name(read("start the clock, 35 min, banana bread")), name(read("stop the timer"))
    ('banana bread', '')
    >>> name(read("soup is on for tonight, buzz me in 25 min")), name(read("brilliant, ping me, the zorgon, 9 min"))
    ('soup', 'zorgon')
    """
    runs = list(_runs(doc))
    of_dish = [
        run
        for run in runs
        if any(found.kind == "dish" and found.start < run[1] and run[0] < found.end for found in doc._.found)
    ]
    start, end = next(iter(of_dish or runs[-1:]), (0, 0))
    return " ".join(token.lower_ for token in doc[start:end][-LONGEST_NAME:])


def _runs(doc: Doc) -> Iterator[tuple[int, int]]:
    """Runs of words that may name a timer, as tokens from and to."""
    taken, start = timed(doc), None
    for token in doc:
        named = token.i not in taken and token.is_alpha and _may_name(token.lower_)
        if named and start is None:
            start = token.i
        elif not named and start is not None:
            yield start, token.i
            start = None
    if start is not None:
        yield start, len(doc)


def _may_name(word: str) -> bool:
    return word not in talk() and not is_slip_of_timer(word)


def is_slip_of_timer(word: str) -> bool:
    """Whether a word is `timer` misspelled, rather than a food such as thyme.

    >>> is_slip_of_timer("tmer"), is_slip_of_timer("thyme")
    (True, False)
    """
    if abs(len(word) - len("timers")) > 2:
        return False
    from rapidfuzz.distance import OSA

    return word not in ("tiger", "timber") and any(OSA.distance(word, w) <= 1 for w in ("timer", "timers"))


@cache
def cues() -> tuple[tuple[Action, re.Pattern[str]], ...]:
    """What is done with timers, and the pattern that tells it, in the order in which they count."""
    return tuple((row["action"], re.compile(row["pattern"])) for row in tables.read_toml(WORDS)["cue"])


@cache
def talk() -> frozenset[str]:
    """Words that name no dish."""
    words = tables.read_toml(WORDS)
    return frozenset((*words["talk"].split(), *words["amidst"]["no_name"].split()))
