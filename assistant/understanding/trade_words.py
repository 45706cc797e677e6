"""Words of the trade whose meaning is asked: what is headspace, what does it mean, how do simmer and poach differ."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cache

from spacy.tokens import Doc

from assistant.reading.text import fold
from assistant.reading.tokens import norms
from assistant.understanding.concepts import stems
from assistant.understanding.cue_words import cues
from assistant.understanding.senses import Slot, stems_of
from rules.explanations.glossary import terms

DIFFER = "differ"
MEANING = cues("meaning", "asked")
BARE, REASON = cues("meaning", "bare"), frozenset(cues("meaning", "reason"))
# the field that a word is of
FIELDS = frozenset(map(stems_of, cues("meaning", "fields")))
# "mean" asks for a meaning behind one of these
MEAN, BY_WHAT = "mean", frozenset(("what", "whats"))


@cache
def phrases() -> dict[str, str]:
    """Every word for a term by its stems -> the term."""
    return {
        stems_of(phrase): term.id
        for term in terms().values()
        for phrase in (term.title, term.id.replace("_", " "), *term.heard_as)
    }


@cache
def every_word() -> frozenset[str]:
    """Every word of the terms as it is written."""
    phrases = (phrase for term in terms().values() for phrase in (term.title, *term.heard_as))
    return frozenset(word for phrase in phrases for word in fold(phrase).split())


@cache
def longest() -> int:
    """The words of the longest phrase."""
    return max(phrase.count(" ") for phrase in phrases()) + 1


@dataclass(frozen=True, slots=True)
class Asks:
    """The words that are asked for. plainly: whether nothing but their meaning can be meant"""

    terms: tuple[str, ...] = ()
    plainly: bool = False


def asked(doc: Doc, said: Sequence[Slot]) -> Asks:
    """The words whose meaning is asked for: one, or two that are told apart; none where more is asked.

    said: the words that say something
    """
    words = norms(doc)
    text = f" {' '.join(words)} "
    differ = any(form.id == DIFFER for form in doc._.forms)
    meaning = any(f" {cue} " in text for cue in MEANING) or (f" {MEAN} " in text and not BY_WHAT.isdisjoint(words))
    bare = any(text.startswith(f" {cue} ") for cue in BARE) and REASON.isdisjoint(words) and not doc._.elevations
    if not meaning and not differ and not bare:
        return Asks()
    found = list(_found(stems(doc)))
    named = tuple(dict.fromkeys(id for _, _, id in found))
    if differ and len(named) == 2:
        return Asks(named)
    if not named or (terms()[named[0]].a_figure and not meaning):
        return Asks()
    others = sum(slot.counts and FIELDS.isdisjoint(slot.features) for slot in said)
    alone = others <= sum(end - start for start, end, _ in found)
    return Asks(named[:1], plainly=alone) if meaning or alone else Asks()


def _found(stems: Sequence[str]) -> Iterator[tuple[int, int, str]]:
    """The terms among some stems, the longest phrase at each place."""
    book, at = phrases(), 0
    while at < len(stems):
        ends = range(min(at + longest(), len(stems)), at, -1)
        end = next((end for end in ends if " ".join(stems[at:end]) in book), at)
        if end > at:
            yield at, end, book[" ".join(stems[at:end])]
        at = max(end, at + 1)
