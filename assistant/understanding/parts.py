"""Several questions, or one question about several dishes, in one utterance: the pieces of text that ask them."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

from spacy.tokens import Doc, Token

from assistant.reading.spans import Found
from assistant.understanding import corrected
from assistant.understanding.cue_words import cues
from rules.foods.dishes import dishes

ENDS, ASKS = frozenset(".?!;"), "?"
OPENERS, WORDS_OF_ASKING = frozenset(cues("parts", "openers")), frozenset(cues("parts", "wh"))
JOINS, FILLERS = frozenset(cues("parts", "joins")), frozenset(cues("parts", "fillers"))
# what asks nothing of its own: and by how much
BARE = JOINS | FILLERS | frozenset(cues("parts", "bare"))
COORDINATES, INTO = frozenset(cues("parts", "coordinates")), frozenset(cues("parts", "into"))
# forms that make a question wherever they stand in a sentence
ASKED_ANYWHERE = frozenset(("how_long", "how_hot", "how_much", "more", "remaining", "start", "worth", "differ", "why"))
PAUSES = ENDS | {","}
MOST, FEWEST_WORDS, LEAD = 4, 3, 3


@dataclass(frozen=True, slots=True)
class Segment:
    """A piece of an utterance: tokens, end exclusive, and whether it asks."""

    start: int
    end: int
    asks: bool


def questions(doc: Doc) -> tuple[str, ...]:
    """The pieces of an utterance that ask, each with what is told before it; what is told last goes with the last.

    >>> from assistant.understanding.pipeline import read
    >>> questions(read("Rice at 9,000 ft: how long, and does it need more water?"))
    ('Rice at 9,000 ft: how long,', 'and does it need more water?')
    """
    segments = list(_segments(doc))
    asking = [i for i, segment in enumerate(segments) if segment.asks]
    if not 2 <= len(asking) <= MOST:
        return ()
    ends = [segments[i].end for i in asking[:-1]] + [len(doc)]
    starts = [0, *ends[:-1]]
    return tuple(doc[start:end].text for start, end in zip(starts, ends, strict=True))


def led(doc: Doc) -> tuple[str, str] | None:
    """What is said before a question that is joined to it, and the question: in Celsius please, and how long a side?"""
    for token in doc[1:]:
        joined = token.norm_ in JOINS and _opens(doc, token.i + 1)
        after = doc[token.i - 1].norm_ in PAUSES and _opens(doc, token.i)
        if joined or after:
            return doc[: token.i].text, doc[token.i :].text
    return None


def _segments(doc: Doc) -> Iterator[Segment]:
    cuts = [0, *(token.i for token in doc if token.i and _begins(doc, token)), len(doc)]
    for start, end in pairwise(cuts):
        if end > start:
            yield Segment(start, end, _asks(doc, start, end))


def _begins(doc: Doc, token: Token) -> bool:
    """Whether a new piece begins at a token: behind the end of a sentence, or where a question is joined on."""
    before, word = doc[token.i - 1].norm_, token.norm_
    if before in ENDS and word not in ENDS:
        return True
    if word in JOINS and before not in JOINS:
        return _opens(doc, token.i + 1)
    return before == "," and word in WORDS_OF_ASKING


def _opens(doc: Doc, at: int) -> bool:
    while at < len(doc) and (doc[at].norm_ in FILLERS or doc[at].norm_ in JOINS or doc[at].norm_ == ","):
        at += 1
    return at < len(doc) and doc[at].norm_ in OPENERS


def _asks(doc: Doc, start: int, end: int) -> bool:
    words = sum(token.norm_.isalnum() for token in doc[start:end])
    if words < FEWEST_WORDS or all(token.norm_ in BARE for token in doc[start:end] if token.norm_.isalnum()):
        return False
    anywhere = any(start <= form.start < end and form.id in ASKED_ANYWHERE for form in doc._.forms)
    marked = any(token.norm_ == ASKS for token in doc[start:end])
    return anywhere or marked or _opens(doc, start)


def of_dishes(doc: Doc) -> tuple[str, ...]:
    """The pieces of an utterance that name one dish each, where it asks the same of several.

    >>> from assistant.understanding.pipeline import read
    >>> of_dishes(read("how long for artichokes and also for eggs in Quito"))
    ('how long for artichokes', 'for eggs in Quito')
    """
    words = [token.norm_ for token in doc]
    named = _apart([f for f in corrected.meant(words, doc._.found) if f.kind == "dish"])
    leads = [_lead(doc, before, after) for before, after in pairwise(named)]
    if not leads or any(lead is None for lead in leads) or len(named) > MOST:
        return ()
    starts = [0, *(lead for lead in leads if lead is not None)]
    ends = [*(_without_joins(doc, lead) for lead in starts[1:]), len(doc)]
    return tuple(doc[start:end].text for start, end in zip(starts, ends, strict=True))


def _apart(found: Sequence[Found]) -> list[Found]:
    """The dishes that differ: penne pasta is one, and a dish that is named again is the same."""
    kept: list[Found] = []
    for one in found:
        classes = {dishes()[k.id].dish_class for k in kept if k.id == dishes()[k.id].dish_class}
        if all(k.id != one.id for k in kept) and dishes()[one.id].dish_class not in classes | {"water"}:
            kept.append(one)
    return kept


def _lead(doc: Doc, before: Found, dish: Found) -> int | None:
    """Where the piece of a dish begins that is joined to the one before it; None where it is but a part of that."""
    for i in range(dish.start - 1, max(before.end, dish.start - 1 - LEAD) - 1, -1):
        if doc[i].norm_ in INTO:
            return None
        if doc[i].norm_ in COORDINATES:
            within = _without_joins(doc, i)
            return i + 1 if PAUSES.isdisjoint(token.norm_ for token in doc[before.end : within]) else None
    return None


def _without_joins(doc: Doc, end: int) -> int:
    while end > 0 and doc[end - 1].norm_ in COORDINATES:
        end -= 1
    return end
