"""How old somebody is, which is neither a temperature nor a count of anything: my dad is 76, nan, 91."""

from __future__ import annotations

from collections.abc import Sequence

from assistant.understanding.cue_words import cues

PEOPLE = frozenset((*cues("elevation", "others"), *cues("ages", "people")))
LINKS, AGED, UNITS = (frozenset(cues("ages", name)) for name in ("links", "aged", "units"))
OLDEST, NEAR = 115.0, 4


def is_age(words: Sequence[str], start: int, end: int, value: float) -> bool:
    """Whether a number tells how old somebody is.

    start, end: where it stands among lower-case words

    >>> is_age("my dad is 76 and frail".split(), 3, 4, 76), is_age("the core is 76".split(), 3, 4, 76)
    (True, False)
    """
    if not 1 <= value <= OLDEST:
        return False
    behind = words[end] if end < len(words) else ""
    if behind in UNITS:
        return False
    before = list(words[max(0, start - NEAR) : start])
    if before and before[-1] in AGED:
        return True
    linked = False
    while before and before[-1] in LINKS:
        linked = True
        before.pop()
    return linked and bool(before) and before[-1] in PEOPLE
