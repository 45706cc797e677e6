"""The bare word cooker as owners of a pressure cooker say it: in my cooker it takes 40 min."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from assistant.reading.spans import Found
from assistant.understanding.cue_words import cues
from rules.foods.dishes import dishes

METHOD = "pressure_cook"
WORDS, OTHERS = cues("bare_cooker", "words"), cues("bare_cooker", "others")
# ways to cook in a pot that a pressure cooker does sooner
POTS = frozenset((METHOD, "simmer", "boil", "braise", "stew"))
BEFORE, BEHIND, STANDS_ON = (cues("bare_cooker", name) for name in ("before", "behind", "stands_on"))


def found(words: Sequence[str], heard: Sequence[Found]) -> Iterator[Found]:
    """The method that a bare cooker tells, where a dish that pots cook stands beside it and no other way to cook.

    On a cooker a pot stands, which is the stove; a cooker that is named by what it cooks or burns is another.

    >>> beans = Found(2, 3, "dish", "pinto beans")
    >>> [f.id for f in found("my cooker beans 20 min".split(), [beans])]
    ['pressure_cook']
    """
    if not any(one.kind == "dish" and POTS.intersection(dishes()[one.id].methods) for one in heard):
        return
    taken = {at for one in heard for at in range(one.start, one.end)}
    told = any(one.kind in ("method", "equipment") for one in heard)
    for at, word in enumerate(words):
        if not told and word in WORDS and at not in taken and _is_own(words, at):
            yield Found(at, at + 1, "method", METHOD)


def _is_own(words: Sequence[str], at: int) -> bool:
    before, behind = words[max(0, at - 2) : at], words[at + 1 : at + 2]
    if any(word in OTHERS for word in before[-1:]) or any(word in STANDS_ON for word in before):
        return False
    return any(word in BEFORE for word in before) or any(word in BEHIND for word in behind)
