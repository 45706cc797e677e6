"""Words that voice goes by: data/lexicon/voice.toml."""

from __future__ import annotations

from functools import cache

from rules import tables
from rules.catalogue import topics

FILE = "lexicon/voice.toml"
PRESERVE = "preserve"


@cache
def frame() -> frozenset[str]:
    """Words that hold a question together."""
    return frozenset(tables.read_toml(FILE)["frame"])


@cache
def listed(name: str) -> tuple[str, ...]:
    """One list of words of the file."""
    return tuple(tables.read_toml(FILE)[name])


@cache
def of_preserving() -> frozenset[str]:
    """What speaks of putting food up in jars."""
    return frozenset((*listed("preserving"), *topics()[PRESERVE].cues))


@cache
def alike() -> tuple[tuple[int, int], ...]:
    """Numbers that sound alike, with those of hundreds and thousands: 13 and 30, 1,300 and 3,000."""
    file = tables.read_toml(FILE)
    return tuple((low * scale, high * scale) for low, high in file["alike"] for scale in file["scales"])
