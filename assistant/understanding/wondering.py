"""What is wondered at: the one reason that is meant, two that are equally near, the belief that was stated, or a word.

A reason is told only where all that it is about was said and little of the question is left over. Where two are near
the reply offers both; where none is, it falls back on the general reason.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import lru_cache

from spacy.tokens import Doc

from assistant.understanding import senses, trade_words
from assistant.understanding.explanations import Match, ranked
from assistant.understanding.senses import Slot

# how much of a question a reason has to explain, by the weight of its words; so much that it is offered all the same
ENOUGH, NEARLY = 0.44, 0.58
# how far the best reason has to be ahead of the next, as a share of its score
AHEAD = 0.07
# how far the next has to be behind one that explains less
FAR = 0.9
# how near the next has to be to be offered beside it
HALF = 0.6
# the weight of a word that tells what the talk is of, such as no word has that many reasons share
TELLING = 2.6
GENERAL = "general_reason"
WHY, TRUE = "why", "is_true"


@dataclass(frozen=True, slots=True)
class Wonder:
    """What is wondered at.

    row: the explanation; belief: the one about it that was stated, and denied: whether it was said not to hold
    rivals: the one or two explanations that may be meant, where none is told; terms: words of the trade asked about
    share: how much of the question the row explains; idle: whether nothing was said but where, what dish and how
    plainly: whether the meaning of a word is all that can be meant
    """

    row: str | None = None
    belief: str | None = None
    denied: bool = False
    rivals: tuple[str, ...] = ()
    terms: tuple[str, ...] = ()
    share: float = 0.0
    idle: bool = False
    plainly: bool = False


@lru_cache(maxsize=8)
def wonder(doc: Doc) -> Wonder:
    """What an utterance wonders at, whatever its topic. What asks for a word alone, or what none explains, is a word."""
    said = senses.slots(doc)
    asks = trade_words.asked(doc, said)
    if asks.plainly:
        return Wonder(terms=asks.terms, share=1.0, plainly=True)
    stated = is_stated(doc)
    stems = frozenset(senses.stems_of(token.norm_) for token in doc)
    matches = ranked(said, stems, beliefs=stated)
    found = chosen(said, matches, denied=stated and is_negated(doc, said))
    return found if found.row or not asks.terms else Wonder(terms=asks.terms, share=1.0)


def chosen(said: Sequence[Slot], matches: Sequence[Match], *, denied: bool) -> Wonder:
    """The reason among the nearest, or those that are too near to choose between."""
    first, second = _two(matches)
    if first is None or (first.telling < TELLING and not first.framed):
        return Wonder(idle=True)
    if is_told(first, second):
        of = belief_of(first.of.row, matches)
        turned = of is not None and of.of.polarity != "either" and denied != (of.of.polarity == "negative")
        return Wonder(first.of.row, of.of.belief if of else None, turned, share=first.share)
    if all(_of_lexicon_alone(slot) for slot in said if slot.counts):
        return Wonder(idle=True)
    if second and ((first.share >= NEARLY and second.share >= ENOUGH) or _both(first, second)):
        return Wonder(rivals=(first.of.row, second.of.row))
    return Wonder(rivals=(first.of.row,)) if first.share >= NEARLY else Wonder()


def is_told(first: Match, second: Match | None) -> bool:
    """Whether the nearest is meant beyond doubt: it explains enough, and no other is nearly as near."""
    if not first.near:
        return False
    near = second is not None and second.share >= ENOUGH and (second.near or not first.framed)
    if near and second and first.score - second.score < AHEAD * first.score:
        return False
    return first.share >= ENOUGH or second is None or second.score < FAR * first.score


def _both(first: Match, second: Match) -> bool:
    """Whether two are near enough to be offered although much of the question is left over."""
    return first.near and second.framed and second.score >= HALF * first.score


def _two(matches: Iterable[Match]) -> tuple[Match | None, Match | None]:
    """The nearest of two explanations; a belief stands for the one that it is about."""
    best: dict[str, Match] = {}
    for match in matches:
        best.setdefault(match.of.row, match)
    first, second, *_ = (*best.values(), None, None)
    return first, second


def belief_of(row: str, matches: Iterable[Match]) -> Match | None:
    """The nearest belief about an explanation of which all was said."""
    return next((m for m in matches if m.of.row == row and m.of.belief and m.framed), None)


def _of_lexicon_alone(slot: Slot) -> bool:
    return any(feature[0] == "<" for feature in slot.features)


def is_stated(doc: Doc) -> bool:
    """Whether a belief is stated or put to the test: is it true, does it, he says so, right?"""
    opening = {token.norm_ for token in doc if token.is_sent_start}
    forms = {form.id for form in doc._.forms}
    if TRUE in forms or opening & senses.words("auxiliaries"):
        return True
    text = f" {' '.join(token.norm_ for token in doc)} "
    return WHY not in forms and any(f" {claim} " in text for claim in senses.words("claims"))


def is_negated(doc: Doc, said: Sequence[Slot]) -> bool:
    """Whether what is stated is turned round by a no; a question's own `isn't it` is none, and two noes make a yes."""
    told = {word for slot in said for word in slot.features}
    noes = [
        token
        for token in doc
        if token.norm_ in senses.words("negations") and token.norm_ not in told and not token.is_sent_start
    ]
    tags = sum(doc[token.i + 1].norm_ in ("it", "that", "they") for token in noes if token.i + 1 < len(doc))
    return (len(noes) - tags) % 2 == 1
