"""How far apart the pieces of a hazard were said: a long story brings words together by chance, a question does not."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from spacy.tokens import Doc

from assistant.reading.tokens import norms
from assistant.understanding import temperatures
from assistant.understanding.concepts import SENTENCE_ENDS, Heard, concepts
from assistant.understanding.hazards import Hazard
from assistant.understanding.scene import POINTING

# the nearest first. BEFORE: a piece was said earlier in the conversation; LINKED: in two sentences of which the later
# points back at the earlier; APART: in sentences that nothing joins
BEFORE, CLOSE, LINKED, FAR, APART = SPREADS = ("before", "close", "linked", "far", "apart")
NEAR = frozenset((BEFORE, CLOSE))
# foods that are judged by the heat in their middle, and what parts one of several from the next
MEATS = frozenset(("poultry", "ground_meat", "red_meat", "pork", "game", "fish"))
PAUSES = frozenset((",", ";"))
MOST_WORDS = 14


def spread(doc: Doc, hazard: Hazard, heard: Sequence[Heard]) -> str:
    """One of SPREADS: how the pieces of a hazard stand in an utterance."""
    places = [[h for h in heard if h.concept in group] for group in hazard.when]
    if not all(places):
        return BEFORE
    ends = [i for i, word in enumerate(norms(doc)) if word in SENTENCE_ENDS]
    spans = ((sum(start <= i < end - 1 for i in ends), end - start, start) for start, end in _spans(places))
    crossed, words, start = min(spans, default=(0, 0, 0))
    if not crossed:
        return CLOSE if words <= MOST_WORDS else FAR
    return LINKED if crossed <= 2 and _points_back(doc, next(i for i in ends if i >= start)) else APART


def _spans(places: Sequence[Sequence[Heard]]) -> Iterator[tuple[int, int]]:
    """Stretches of tokens that hold a piece of each group: from each piece on, the shortest."""
    pieces = sorted((h.start, h.end, group) for group, held in enumerate(places) for h in held)
    for first, (start, _, _) in enumerate(pieces):
        wanted, last = set(range(len(places))), start
        for _, end, group in pieces[first:]:
            if group in wanted:
                wanted.discard(group)
                last = max(last, end)
            if not wanted:
                yield start, last
                break


def _points_back(doc: Doc, at: int) -> bool:
    """Whether the sentence after a full stop speaks of what was named before it."""
    end = next((i for i, word in enumerate(norms(doc)) if i > at and word in SENTENCE_ENDS), len(doc))
    return any(word in POINTING for word in norms(doc)[at + 1 : end])


def of_another_food(doc: Doc, hazard: Hazard) -> bool:
    """Whether its temperature was said of another food: the ribs pulled at 52, and sausages in the next sentence.

    A figure in a sentence that names no food, or the food of the hazard too, may be of it.
    """
    places = temperatures.places(doc)
    parts = [h for h in doc._.concepts if concepts()[h.concept].kind == "food"]
    own = [h.start for h in parts if any(h.concept in group for group in hazard.when)]
    if not places or not own:
        return False
    names = {h.concept for h in parts if any(h.concept in group for group in hazard.when)}
    if names <= MEATS and all(_is_of_other_meat(doc, place, hazard) for place in places):
        return True
    dishes = [span.start for span in doc._.found if span.kind == "dish"]
    told = [(start, end) for start, end in sentences(doc) if any(start <= place < end for place in places)]
    return bool(told) and all(_holds(dishes, span) and not _holds(own, span) for span in told)


def _is_of_other_meat(doc: Doc, place: int, hazard: Hazard) -> bool:
    """Whether the nearest meat before a figure, in its sentence, is another than that of the hazard.

    What stands between two commas belongs together: turkey with sausage at 68 may be of either.
    """
    heard = [h for h in doc._.concepts if h.concept in MEATS]
    start = next((start for start, end in sentences(doc) if start <= place < end), 0)
    cuts = [i for i in range(start, place) if norms(doc)[i] in PAUSES]
    for begin, end in reversed(tuple(pairwise((start, *cuts, place)))):
        here = {h.concept for h in heard if begin <= h.start < end}
        if here:
            return not any(here & group for group in hazard.when)
    return False


def _holds(places: Sequence[int], span: tuple[int, int]) -> bool:
    return any(span[0] <= place < span[1] for place in places)


def names_food_beside(doc: Doc, hazard: Hazard) -> bool:
    """Whether a food is named in the sentence of what makes a hazard, and near it: soup for gran, not gran's kettle."""
    foods = [span.start for span in doc._.found if span.kind == "dish"]
    foods += [h.start for h in doc._.concepts if _is_food(h)]
    people = [h.start for h in doc._.concepts if any(h.concept in group for group in hazard.when)]
    return any(
        start <= person < end and any(start <= food < end and abs(food - person) <= MOST_WORDS for food in foods)
        for start, end in sentences(doc)
        for person in people
    )


def _is_food(heard: Heard) -> bool:
    concept = concepts()[heard.concept]
    return concept.kind == "food" and concept.names


def sentences(doc: Doc) -> Iterator[tuple[int, int]]:
    """The stretches of tokens between full stops and the like."""
    cuts = [0, *(i + 1 for i, word in enumerate(norms(doc)) if word in SENTENCE_ENDS), len(doc)]
    yield from ((start, end) for start, end in pairwise(cuts) if start < end)
