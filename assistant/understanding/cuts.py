"""How food is cut, or how big or in what state it is: sliced, diced, whole, small, green."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from assistant.reading.spans import Found
from assistant.understanding.cue_words import said
from rules import tables

CUTS = "lexicon/cuts.toml"


def heard(words: Sequence[str], found: Iterable[Found]) -> str | None:
    """The id of the cut that the words tell of a dish, the first of the lexicon; None where they tell none.

    found: what was found in the words, with where it stands

    >>> heard(["diced", "carrots"], ()), heard(["a", "large", "pot"], ())
    ('diced', None)
    """
    starts = [f.start for f in found if f.kind == "dish"]
    near = [word for start in starts for word in words[max(start - 1, 0) : start + 1]]
    rows = tables.read_toml(CUTS)["cut"]
    return next((row["id"] for row in rows if said(near if row.get("beside") else words, row["heard_as"])), None)
