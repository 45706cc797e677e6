"""Words that voice goes by: data/lexicon/voice.toml."""

from __future__ import annotations

import math
import re
from collections import Counter
from functools import cache, lru_cache

from rules import tables
from rules.catalogue import topics

FILE = "lexicon/voice.toml"
PRESERVE = "preserve"
# questions as cooks put them, a line each
QUESTIONS, QUESTION = "utterances/train", re.compile(r"^ +- (.+)$", re.MULTILINE)
WORD = re.compile(r"[a-z]+")
OFTEN = 2_000


@cache
def frame() -> frozenset[str]:
    """Words that hold a question together."""
    return frozenset(tables.read_toml(FILE)["frame"])


@cache
def listed(name: str) -> tuple[str, ...]:
    """One list of words of the file."""
    return tuple(tables.read_toml(FILE)[name])


def place_lead() -> str:
    """The small word before a place."""
    return str(tables.read_toml(FILE)["place_lead"])


@cache
def run_on() -> tuple[str, ...]:
    """How a phrase ends that speech has run into a small word before a number."""
    return tuple(f" {end}" for end in listed("ends"))


@cache
def of_preserving() -> frozenset[str]:
    """What speaks of putting food up in jars."""
    return frozenset((*listed("preserving"), *topics()[PRESERVE].cues))


@cache
def alike() -> tuple[tuple[int, int], ...]:
    """Numbers that sound alike, with those of hundreds and thousands: 13 and 30, 1,300 and 3,000."""
    file = tables.read_toml(FILE)
    scaled = ((low * scale, high * scale) for low, high in file["alike"] for scale in file["scales"])
    return (*scaled, *((low, high) for low, high in file["alike_as_they_are"]))


@cache
def _counted() -> Counter[str]:
    """How often each word stands in the questions."""
    files = sorted(tables.data_path(QUESTIONS).iterdir(), key=lambda file: file.name)
    asked = (question for file in files for question in QUESTION.findall(file.read_text(encoding="utf-8")))
    return Counter(word for question in asked for word in WORD.findall(question.casefold().replace("'", "")))


# about all the words that kitchens use; people never run out of new words
@lru_cache(maxsize=8192)
def usual(phrase: str) -> float:
    """How usual the words of a phrase are in kitchen questions, 0 never to 1 in most; of several the average.

    >>> usual("cook") > usual("cookie") > usual("ozone")
    True
    """
    said = phrase.split()
    if not said:
        return 0.0
    return sum(min(1.0, math.log1p(_counted()[word]) / math.log1p(OFTEN)) for word in said) / len(said)
