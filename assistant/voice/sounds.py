"""How words sound, and how near two phrases are to the ear. Metaphone by jellyfish, distances by rapidfuzz."""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache
from itertools import groupby
from typing import TYPE_CHECKING

from assistant.voice.errors import VoiceMissing
from assistant.voice.recognisers import HOW

if TYPE_CHECKING:
    from numpy import float32
    from numpy.typing import NDArray

# consonants that noise makes one: voiced and not, the two of the nose
FOLDED = str.maketrans("BDGVZJN0EIOU", "PTKFSXMTAAAA")
VOWELS = "AEIOU"
# what each part counts: the consonants as noise leaves them, as they are, the letters with their vowels
FOLDED_COUNTS, EXACT_COUNTS, LETTERS_COUNT = 0.35, 0.2, 0.45
REST_COUNTS = 0.25


@lru_cache(maxsize=65_536)
def code(phrase: str) -> str:
    """The consonants of a phrase as they sound, its words run together, and its first vowel.

    >>> code("incentive e") == code("in santa fe"), code("scones")
    (True, 'SKNS')
    """
    try:
        from jellyfish import metaphone
    except ImportError:
        raise VoiceMissing(f"mending by sound needs jellyfish, which is not installed: {HOW}") from None
    first, *others = [metaphone(word) for word in phrase.split()] or [""]
    run = first + "".join(other.lstrip(VOWELS) for other in others)
    return "".join(letter for letter, _ in groupby(run))


def folded(phrase: str) -> str:
    """The code with consonants alike that noise makes alike, and vowels.

    >>> folded("bat") == folded("pad"), folded("combs")
    (True, 'KMPS')
    """
    return "".join(letter for letter, _ in groupby(code(phrase).translate(FOLDED)))


@lru_cache(maxsize=65_536)
def likeness(heard: str, meant: str) -> float:
    """How near two phrases are to the ear, 0 to 1; words that both begin or end with tell less than the rest.

    >>> likeness("kinwa", "quinoa") > likeness("kinwa", "chicken")
    True
    >>> likeness("steam beans", "green beans") < likeness("grin beans", "green beans")
    True
    """
    rest, of_rest = apart(heard, meant)
    if not rest:
        return float(not of_rest)
    whole = _likeness(heard, meant)
    return whole if not of_rest else (1 - REST_COUNTS) * whole + REST_COUNTS * _likeness(rest, of_rest)


def apart(heard: str, meant: str) -> tuple[str, str]:
    """Two phrases without the words that both begin or end with.

    >>> apart("split piece soup", "split pea soup")
    ('piece', 'pea')
    """
    one, other = heard.split(), meant.split()
    while one and other and one[0] == other[0]:
        one, other = one[1:], other[1:]
    while one and other and one[-1] == other[-1]:
        one, other = one[:-1], other[:-1]
    return " ".join(one), " ".join(other)


def _likeness(heard: str, meant: str) -> float:
    from rapidfuzz.distance import Indel, Levenshtein

    by_noise = Levenshtein.normalized_similarity(folded(heard), folded(meant))
    by_code = Levenshtein.normalized_similarity(code(heard), code(meant))
    by_letters = Indel.normalized_similarity(heard.replace(" ", ""), meant.replace(" ", ""))
    return FOLDED_COUNTS * by_noise + EXACT_COUNTS * by_code + LETTERS_COUNT * by_letters


def by_noise(heard: Sequence[str], meant_codes: Sequence[str], least: float) -> NDArray[float32]:
    """How near the folded codes are, each phrase that was heard by each code; 0 where it is less than the least."""
    from rapidfuzz.distance import Levenshtein
    from rapidfuzz.process import cdist

    codes = [folded(phrase) for phrase in heard]
    return cdist(codes, meant_codes, scorer=Levenshtein.normalized_similarity, score_cutoff=least)
