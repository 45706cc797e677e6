"""A dough told by two times: how long it takes to double, and how long it should; the yeast goes by their ratio."""

from __future__ import annotations

from collections.abc import Sequence

from spacy.tokens import Doc

from assistant.reading.spans import Found, Measure
from assistant.reading.tokens import norms
from assistant.understanding import what_is_in_it
from rules.model import Quantity

RISES = frozenset((
    "doubled", "double", "doubles", "doubling", "rise", "rises", "rising", "rose", "risen", "proof", "proofs",
    "proofed", "proofing", "prove", "proves", "proved", "proving", "ready", "dough", "ferments", "fermented", "bulk",
    "blown",
))  # fmt: skip
# what stands before the time that is wanted, and what asks for another amount
WANTED = frozenset((
    "instead", "rather", "not", "recipe", "says", "said", "should", "supposed", "used", "usually", "normally",
    "against", "vs", "versus", "home", "book", "written", "formula", "was",
    "sheet", "card", "usual", "normal", "mother", "mom",
    "mum", "she", "he", "schedule", "never", "always", "coast",
))  # fmt: skip
# what tells that the second time is that of the asker
HERE = frozenset(("here", "now", "mine"))
ASKS = frozenset((
    "cut", "less", "more", "much", "reduce", "drop", "lower", "change", "what", "scale", "adjust", "down", "keep",
    "same",
))  # fmt: skip
LONGEST_MIN, NEAREST = 24 * 60.0, 1.05
BEFORE_A_TIME = ("of", "not", "me", "takes", "take", "took", "need", "needs", "be", "says", "vs", "than")
YEAST, PERCENT = "yeast", ("%", "percent")
KINDS = {"instant": "instant yeast", "idy": "instant yeast", "ady": "active dry yeast"}


def times(doc: Doc) -> tuple[float, float] | None:
    """How long the dough takes, and how long it should [min]; None where both are not told of a dough with yeast in it.

    >>> from assistant.understanding.pipeline import read
    >>> times(read("dough doubled in 50 min instead of 90, cut the 8 g yeast to what")) is None
    False
    """
    words = norms(doc)
    if yeast(doc) is None or RISES.isdisjoint(words) or ASKS.isdisjoint(words):
        return None
    told = [m for m in doc._.measures if m.kind == "time" and m.low <= LONGEST_MIN]
    said = [*((m.start, m.end, m.low) for m in told), *_bare(doc, told)]
    if len(said) != 2:
        return None
    (start, end, first), (then, _, second) = sorted(said)
    before, between = frozenset(words[max(start - 6, 0) : start]), frozenset(words[end:then])
    if first <= 0 or second <= 0 or max(first, second) / min(first, second) < NEAREST:
        return None
    if not HERE.isdisjoint(between):
        return second, first
    if not WANTED.isdisjoint(between):
        return first, second
    return (second, first) if not WANTED.isdisjoint(before) else None


def yeast(doc: Doc) -> Found | None:
    """The yeast that is named; in a baker's formula its kind alone names it: 0.8 % instant."""
    named = (f for f in doc._.found if f.kind == "ingredient" and what_is_in_it.roles().get(f.id) == YEAST)
    return next(named, None) or _of_formula(norms(doc))


def _of_formula(words: Sequence[str]) -> Found | None:
    behind = ((i, word) for i, word in enumerate(words[1:], start=1) if words[i - 1] in PERCENT)
    return next((Found(i, i + 1, "ingredient", KINDS[word]) for i, word in behind if word in KINDS), None)


def amount(doc: Doc) -> Quantity | None:
    """How much yeast there is: by weight or spoon, or as a baker's percentage."""
    found = yeast(doc)
    if found is None:
        return None
    for number in doc._.numbers:
        if doc[number.end : number.end + 1].text.lower() in PERCENT and 0 <= found.start - number.end - 1 <= 1:
            return Quantity(number.value, "percent")
    told = what_is_in_it.amounts(doc)
    own = next((a for a in told if a.ingredient == found.id), None)
    near = next((m for m in doc._.measures if m.kind in ("mass", "volume") and _is_beside(m, found)), None)
    return Quantity(own.value, own.unit) if own else Quantity(near.said, near.unit) if near else None


def _is_beside(measure: Measure, found: Found) -> bool:
    return 0 <= measure.start - found.end <= 3 or 0 <= found.start - measure.end <= 2


def _bare(doc: Doc, told: list[Measure]) -> list[tuple[int, int, float]]:
    """A second time that leaves out its unit: in 50 min instead of 90; it takes me three."""
    if len(told) != 1:
        return []
    words, unit = norms(doc), told[0].low / told[0].said if told[0].said else 1.0
    after = told[0].end
    for number in doc._.numbers:
        behind = words[number.end : number.end + 1]
        of_time = number.start > 1 and words[number.start - 1] in BEFORE_A_TIME
        if number.start >= after and of_time and behind and not behind[0].isalnum() and behind[0] not in PERCENT:
            return [(number.start, number.end, number.value * unit)]
        if number.start >= after and of_time and behind and behind[0] in ("at", "in", "up", "here"):
            return [(number.start, number.end, number.value * unit)]
    return []
