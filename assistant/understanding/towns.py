"""Names of places by their letters alone: what a name is that was cut in two or misspelt."""

from __future__ import annotations

from collections import defaultdict
from functools import cache, lru_cache

from assistant.understanding import lexicon
from rules.kept import kept

# letters that a name has at least to be heard when it is cut in two, and when it is misspelt
SHORTEST_CUT, SHORTEST_NEAR = 6, 5
# how many slips are allowed from so many letters on
SLIPS = ((10, 3), (8, 2), (6, 1))


@kept
def by_letters() -> dict[str, str]:
    """Names of places by their letters, and the place."""
    return {
        letters: place
        for phrase, meant in lexicon.phrase_book().phrases.items()
        for kind, place in meant
        if kind == "place" and len(letters := phrase.replace(" ", "")) >= SHORTEST_NEAR and letters.isalpha()
    }


def cut_in_two(*parts: str) -> str | None:
    """The place whose name some words are together.

    >>> cut_in_two("brecken", "ridge"), cut_in_two("broken", "ridge")
    ('Breckenridge', None)
    """
    letters = "".join(parts)
    return by_letters().get(letters) if len(letters) >= SHORTEST_CUT else None


@cache
def _shelves() -> dict[str, tuple[str, ...]]:
    shelves = defaultdict(list)
    for letters in by_letters():
        shelves[letters[0]].append(letters)
    return {letter: tuple(names) for letter, names in shelves.items()}


# slips that people make again; people never run out of new words
@lru_cache(maxsize=1024)
def nearest(letters: str) -> tuple[int, str] | None:
    """The slips and the place of the name that is nearest to some letters; None where none is near, or two are.

    >>> nearest("addisabbaba"), nearest("bogotta"), nearest("potatoes")
    ((1, 'Addis Ababa'), (1, 'Bogota'), None)
    """
    slips = next((slips for length, slips in SLIPS if len(letters) >= length), 0)
    shelf = _shelves().get(letters[:1], ())
    if not slips or not shelf:
        return None
    from rapidfuzz.distance import OSA
    from rapidfuzz.process import extract

    near = extract(letters, shelf, scorer=OSA.distance, score_cutoff=slips, limit=5)
    places = {by_letters()[str(name)] for name, distance, _ in near if distance == near[0][1]}
    return (int(near[0][1]), places.pop()) if len(places) == 1 else None
