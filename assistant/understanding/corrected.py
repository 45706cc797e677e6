"""What is named and not meant: a dish taken back (not beans, LENTILS), a method or tool that is not there."""

from __future__ import annotations

import re
from collections.abc import Sequence

from assistant.reading.spans import Found
from assistant.understanding.cue_words import cues

NOT_THIS = tuple(phrase.split() for phrase in cues("corrected", "not_this"))
RATHER = frozenset(cues("corrected", "rather"))
NOT_THERE = tuple(phrase.split() for phrase in cues("corrected", "not_there"))
LITTLE = frozenset(cues("corrected", "little"))

# forget that, and then another question of so many words
TAKEN_BACK = re.compile(rf"\b(?:{'|'.join(cues('corrected', 'taken_back'))})\b[\s.,;:!-]+", re.IGNORECASE)
FEWEST_LEFT = 3


def after_taking_back(text: str) -> str:
    """What is left where a first question is taken back, and another put; else the text as it came.

    >>> after_taking_back("Price of beans? No, forget that. How long for lentils at 7,000 ft?")
    'How long for lentils at 7,000 ft?'
    >>> after_taking_back("forget that")
    'forget that'
    """
    *_, last = TAKEN_BACK.split(text)
    return last.strip() if last != text and len(last.split()) >= FEWEST_LEFT else text


def takes_back(text: str) -> bool:
    """Whether what was talked of is taken back, and another question put: no, forget that, what about rice."""
    return after_taking_back(text) != text


def meant(words: Sequence[str], found: Sequence[Found]) -> tuple[Found, ...]:
    """What was found without the dishes that are taken back, and what else was heard in their words.

    >>> from assistant.understanding.lexicon import hear
    >>> words = "not beans , lentils".split()
    >>> [f.id for f in meant(words, hear(words))]
    ['lentils']
    """
    dishes = [f for f in found if f.kind == "dish"]
    if len({f.id for f in dishes}) < 2:
        return tuple(found)
    back = {
        f.start
        for i, f in enumerate(dishes)
        if _is_taken_back(words, f, dishes[i + 1] if i + 1 < len(dishes) else None)
    }
    kept = tuple(f for f in found if f.start not in back)
    return kept if any(f.kind == "dish" for f in kept) else tuple(found)


def lacking(words: Sequence[str], found: Sequence[Found]) -> tuple[Found, ...]:
    """The methods and tools that are named as not there: no pressure cooker, without an oven.

    >>> from assistant.understanding.lexicon import hear
    >>> words = "chickpeas , no pressure cooker here".split()
    >>> {f.id for f in lacking(words, hear(words))}
    {'pressure_cook'}
    """
    return tuple(f for f in found if f.kind in ("method", "equipment") and _behind(words, f.start, NOT_THERE))


def _behind(words: Sequence[str], at: int, phrases: Sequence[list[str]]) -> bool:
    return any(list(words[max(0, at - len(phrase)) : at]) == phrase for phrase in phrases)


def _is_taken_back(words: Sequence[str], dish: Found, following: Found | None) -> bool:
    if _behind(words, dish.start, NOT_THIS):
        return True
    between = [word for word in words[dish.end : following.start] if word not in LITTLE] if following else []
    return bool(between) and RATHER.issuperset(between)
