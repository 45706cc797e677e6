"""Several questions, or one question about several dishes, in one utterance: the pieces of text that ask them."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

from spacy.tokens import Doc, Token

from assistant.reading.spans import Found
from assistant.reading.tokens import norms
from assistant.understanding import asked_ways, corrected, forms, senses
from assistant.understanding.claims import claimed
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
# how a piece begins that asks of the two before it, and by what it asks for their reason
ONE_OF_THEM = frozenset((("which", "one"), ("which", "of"), ("which", "ones")))
WORDS_OF_REASONS = frozenset(("why", "science", "physics", "chemistry", "reason", "logic", "theory", "explain"))
# what may stand between the question and the word for its reason: ..., and what is the reason
BEFORE_REASONS = JOINS | FILLERS | OPENERS | ENDS | {",", "the", "s"}
# forms that are heard from an opening alone, whatever stands behind it; words of talk that ask of nothing
OPEN_FORMS = frozenset(("is_ok", "what_is", "how_to", "can_it", "changes"))
TALK = frozenset(cues("parts", "talk"))
FILLS, FILLED = frozenset(("filling", "fillings", "inside")), frozenset(("filled", "stuffed"))
PAUSES = ENDS | {","}
MOST, FEWEST_WORDS, LEAD = 4, 3, 3
# how far from each other how long and how hot stand in one breath
BETWEEN_TWO = 6


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
    asking = [i for at, i in enumerate(asking) if not (at and refers_back(doc, segments[i]))]
    if not 2 <= len(asking) <= MOST:
        return ()
    ends = [segments[i].end for i in asking[:-1]] + [len(doc)]
    starts = [0, *ends[:-1]]
    return tuple(doc[start:end].text for start, end in zip(starts, ends, strict=True))


def asks_of_the_unknown(doc: Doc) -> bool:
    """Whether a piece asks about a thing that no component knows, so that it has to be said that it is left out.

    >>> from assistant.understanding.pipeline import read
    >>> asks_of_the_unknown(read("and should I baste sooner?")), asks_of_the_unknown(read("and is that right?"))
    (True, False)
    """
    if not _opens(doc, 0):
        return False
    heard = [(form.start, form.end) for form in doc._.forms if form.id not in OPEN_FORMS]
    heard += [(start, end) for _, start, end in forms.patterns_heard(doc, asked_ways.FILE, "way")]
    known = claimed(doc).union(*(range(*span) for span in heard))
    idle, little = senses.senses().idle, OPENERS | JOINS | FILLERS | BARE
    loose = (word for i, word in enumerate(norms(doc)) if i not in known and word.isalpha() and word not in little)
    return any(senses.stems_of(word) not in idle and word not in TALK for word in loose)


def refers_back(doc: Doc, segment: Segment) -> bool:
    """Whether a piece asks of nothing but the one before it: which one is quicker, and what is the science?"""
    words = [t.norm_ for t in doc[segment.start : segment.end] if t.norm_.isalnum() and t.norm_ not in JOINS | FILLERS]
    if tuple(words[:2]) in ONE_OF_THEM:
        return True
    idle = senses.senses().idle
    return not WORDS_OF_REASONS.isdisjoint(words) and all(senses.stems_of(word) in idle for word in words)


@dataclass(frozen=True, slots=True)
class TimeAndHeat:
    """The words that ask how long and how hot, and which stands first."""

    time: str
    heat: str
    time_first: bool


def time_and_heat(doc: Doc) -> TimeAndHeat | None:
    """Where one breath asks how long and how hot, joined by an and; None where it asks one of them.

    >>> from assistant.understanding.pipeline import read
    >>> time_and_heat(read("how long and at what oven temp for a ham at 6,000 ft"))
    TimeAndHeat(time='how long', heat='what oven temp', time_first=True)
    """
    longs = [form for form in doc._.forms if form.id == "how_long"]
    hots = [form for form in doc._.forms if form.id == "how_hot"]
    words = norms(doc)
    for time in longs:
        for heat in hots:
            first, second = sorted((time, heat), key=lambda form: form.start)
            between = words[first.end : second.start]
            near = not ENDS.intersection(between) and len(between) <= BETWEEN_TWO
            if near and (JOINS | {"/"}).intersection(between):
                return TimeAndHeat(doc[time.start : time.end].text, doc[heat.start : heat.end].text, time is first)
    return None


def without_reason(doc: Doc) -> str | None:
    """A question without the short piece at its end that asks for its reason too; None where none stands there.

    >>> from assistant.understanding.pipeline import read
    >>> without_reason(read("does the oven change for a pie at 7,000 ft, and why?"))
    'does the oven change for a pie at 7,000 ft'
    """
    words = norms(doc)
    at = max((i for i, word in enumerate(words) if word in WORDS_OF_REASONS), default=None)
    if at is None or any(word.isalnum() and word not in senses.senses().idle for word in words[at + 1 :]):
        return None
    start = at
    while start and words[start - 1] in BEFORE_REASONS:
        start -= 1
    joined = next((i for i in range(start, at) if words[i] in JOINS), None)
    return None if joined is None or joined < FEWEST_WORDS else doc[:joined].text.rstrip(" ,;")


def led(doc: Doc) -> tuple[str, str] | None:
    """What is said before a question that is joined to it, and the question: in Celsius please, and how long a side?"""
    for token in doc[1:]:
        joined = token.norm_ in JOINS and _opens(doc, token.i + 1)
        after = norms(doc)[token.i - 1] in PAUSES and _opens(doc, token.i)
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
    before, word = norms(doc)[token.i - 1], token.norm_
    if before in ENDS and word not in ENDS:
        return True
    if word in JOINS and before not in JOINS:
        return _opens(doc, token.i + 1)
    return before == "," and word in WORDS_OF_ASKING


def _opens(doc: Doc, at: int) -> bool:
    while at < len(doc) and (norms(doc)[at] in FILLERS or norms(doc)[at] in JOINS or norms(doc)[at] == ","):
        at += 1
    return at < len(doc) and norms(doc)[at] in OPENERS


def _asks(doc: Doc, start: int, end: int) -> bool:
    words = sum(word.isalnum() for word in norms(doc)[start:end])
    if words < FEWEST_WORDS or all(word in BARE for word in norms(doc)[start:end] if word.isalnum()):
        return False
    anywhere = any(start <= form.start < end and form.id in ASKED_ANYWHERE for form in doc._.forms)
    marked = ASKS in norms(doc)[start:end]
    return anywhere or marked or _opens(doc, start)


def of_dishes(doc: Doc) -> tuple[str, ...]:
    """The pieces of an utterance that name one dish each, where it asks the same of several.

    >>> from assistant.understanding.pipeline import read
    >>> of_dishes(read("how long for artichokes and also for eggs in Quito"))
    ('how long for artichokes', 'for eggs in Quito')
    """
    named = _named(doc)
    leads = [_lead(doc, before, after) for before, after in pairwise(named)]
    if not leads or any(lead is None for lead in leads) or len(named) > MOST:
        return ()
    starts = [0, *(lead for lead in leads if lead is not None)]
    ends = [*(_without_joins(doc, lead) for lead in starts[1:]), len(doc)]
    return tuple(doc[start:end].text for start, end in zip(starts, ends, strict=True))


def of_listed(doc: Doc) -> tuple[str, ...]:
    """The pieces of a list of dishes, each with what stands before its dish; what is told last goes with the last.

    >>> from assistant.understanding.pipeline import read
    >>> of_listed(read("rank these: boiled eggs, roast pork or penne"))
    ('rank these: boiled eggs', ', roast pork', 'or penne')
    """
    named = _named(doc)
    if len(named) < 2:
        return ()
    ends = [*(dish.end for dish in named[:-1]), len(doc)]
    return tuple(doc[start:end].text for start, end in zip([0, *ends[:-1]], ends, strict=True))


def _named(doc: Doc) -> list[Found]:
    """The dishes that are asked about, each once."""
    return _apart([f for f in corrected.meant(norms(doc), doc._.found) if f.kind == "dish" and not _fills(doc, f)])


def _fills(doc: Doc, dish: Found) -> bool:
    """Whether it is what another dish is filled with: chicken filling, chicken mince inside, filled with pork."""
    words, end = norms(doc), dish.end
    if dish.start > 1 and words[dish.start - 1] == "with" and words[dish.start - 2] in FILLED:
        return True
    while any(f.kind == "dish" and f.start == end for f in doc._.found):
        end = next(f.end for f in doc._.found if f.kind == "dish" and f.start == end)
    return end < len(doc) and words[end] in FILLS and dish.start > 0


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
        if norms(doc)[i] in INTO:
            return None
        if norms(doc)[i] in COORDINATES:
            within = _without_joins(doc, i)
            return i + 1 if PAUSES.isdisjoint(token.norm_ for token in doc[before.end : within]) else None
    return None


def _without_joins(doc: Doc, end: int) -> int:
    while end > 0 and norms(doc)[end - 1] in COORDINATES:
        end -= 1
    return end
