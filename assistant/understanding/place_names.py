"""Component: places by name where the lexicon alone does not hear them: cut in two, misspelt, or called like a dish."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from dataclasses import replace
from functools import cache

from spacy.language import Language
from spacy.tokens import Doc

from assistant.reading.spans import Found
from assistant.reading.tokens import norms
from assistant.understanding import lexicon, spelling, towns
from assistant.understanding.cue_words import cues

ASKS = cues("elevation", "asks")
LEADS, SIGNS = cues("place_names", "leads"), (",", ".", "-", "(", ";", ":", "!", "?", ")")
SHORTEST_WORD, LONGEST = 3, 3
# no misspelt name ends with one: to change a recipe
ARTICLES = ("a", "an", "the", "my", "our")


@Language.component(
    "kitchen_places", requires=["doc._.numbers", "doc._.measures", "doc._.found"], assigns=["doc._.found"]
)
def kitchen_places(doc: Doc) -> Doc:
    """Hear places beside the phrases of the lexicon."""
    words = norms(doc)
    found = tuple(_preferred(words, one) for one in doc._.found)
    spans = (*doc._.numbers, *doc._.measures, *found)
    taken = {i for span in spans for i in range(span.start, span.end)}
    more = hear(words, taken, beside_another=any(one.kind == "place" for one in found))
    doc._.found = tuple(sorted((*found, *more), key=lambda one: one.start)) if more else found
    return doc


def _preferred(words: Sequence[str], found: Found) -> Found:
    """The town rather than the dish of its name, behind a word of place or by itself between commas."""
    if found.kind == "place":
        return found
    place = next(
        (id for kind, id in lexicon.meanings(" ".join(words[found.start : found.end])) if kind == "place"), None
    )
    return replace(found, kind="place", id=place) if place and _is_placed(words, found) else found


def _is_placed(words: Sequence[str], found: Found) -> bool:
    before = words[found.start - 1] if found.start else ""
    ends = found.end == len(words) or words[found.end] in (*SIGNS, *ASKS)
    return before in LEADS or (ends and before in SIGNS)


def hear(words: Sequence[str], taken: Collection[int] = (), *, beside_another: bool = False) -> tuple[Found, ...]:
    """The places among lower-case words that are cut in two (brecken ridge) or misspelt, the nearest first.

    taken: the words that mean something else
    beside_another: whether a place was heard already; beside one a misspelt one needs a word of place before it
    """
    cut = next((place for start, end in _windows(words, taken, 2) if (place := _cut(words, start, end))), None)
    if cut:
        return (cut,)
    near = [hit for start, end in _windows(words, taken, 1) if (hit := _near(words, start, end))]
    kept: list[Found] = []
    for _, place in sorted(near, key=lambda hit: hit[0]):
        alone = not kept and not beside_another
        apart = all(place.end <= k.start or k.end <= place.start for k in kept)
        if apart and (alone or _is_placed_at(words, place.start)):
            kept.append(place)
    return tuple(kept)


def _windows(words: Sequence[str], taken: Collection[int], shortest: int) -> Iterator[tuple[int, int]]:
    for start in range(len(words)):
        for end in range(start + shortest, min(start + LONGEST, len(words)) + 1):
            if taken and any(i in taken for i in range(start, end)):
                break
            if not words[end - 1].isalpha():
                break
            yield start, end


def _cut(words: Sequence[str], start: int, end: int) -> Found | None:
    """A name that is cut; where each part is a word of its own, only behind a word of place: the dead wood."""
    place = towns.cut_in_two(*words[start:end])
    if place is None or (_are_known(words[start:end]) and not _is_placed_at(words, start)):
        return None
    return Found(start, end, "place", place, 0.9)


def _near(words: Sequence[str], start: int, end: int) -> tuple[int, Found] | None:
    """The one name that a misspelt one is near, with its slips; it needs a word of place or a pause before it."""
    if not _is_led(words, start) or _are_known(words[start:end]) or words[end - 1] in ARTICLES:
        return None
    hit = towns.nearest("".join(words[start:end]))
    return hit and (hit[0], Found(start, end, "place", hit[1], 0.7))


def _is_placed_at(words: Sequence[str], start: int) -> bool:
    return start > 0 and words[start - 1] in LEADS


def _is_led(words: Sequence[str], start: int) -> bool:
    return start == 0 or _is_placed_at(words, start) or words[start - 1] in SIGNS


def _are_known(words: Sequence[str]) -> bool:
    return all(word in _known() or len(word) < SHORTEST_WORD for word in words)


@cache
def _known() -> frozenset[str]:
    """Words that are right as they stand without a place: Ababa is none."""
    return spelling.plain_words() | spelling.words_but_of_places()
