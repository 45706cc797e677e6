"""How near two phrases are to the ear: their phones set beside each other, each as dear as the ear takes it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import cache, lru_cache
from itertools import product, repeat
from typing import TYPE_CHECKING, Any

from assistant.voice import phones

if TYPE_CHECKING:
    from numpy import float32, int16
    from numpy.typing import NDArray

# what a step of place counts, the most steps that count, and what voice does; in a nasal, place is hardly heard
PLACE_COSTS, MOST_PLACES, VOICE_COSTS, NASAL_PLACE = 0.16, 2.0, 0.15, 0.6
# manners that no row names, and the most that two consonants can cost
STRANGE, DEAREST = 0.9, 1.0
# two vowels: that they differ, and by how much; a vowel for a consonant
VOWEL_COSTS, VOWEL_COUNTS, UNLIKE = 0.08, 0.45, 1.1
NEVER = 1_000.0
REST_COUNTS = 0.25
# how a plural ends, and what it costs that many were heard of a thing whose name is of one
PLURAL, PLURAL_COSTS = ("s", "z"), 0.15
# how much of their shape phrases have in common that are near
NEAR_IN_SHAPE = 0.65
VOWEL = "v"


@cache
def _weights() -> NDArray[float32]:
    """What it costs to miss each phone; number 0 is none."""
    import numpy as np

    sounds = phones.table()["consonants"] | phones.table()["vowels"]
    return np.array([0.0, *(sounds[phone]["weight"] for phone in phones.known())], "f4")


@cache
def _swaps() -> NDArray[float32]:
    """What it costs to take each phone for each; never for none."""
    import numpy as np

    costs = np.full((len(phones.known()) + 1,) * 2, NEVER, "f4")
    for (one, i), (other, j) in product(phones.known().items(), repeat=2):
        costs[i, j] = _swap(one, other)
    return costs


def _swap(one: str, other: str) -> float:
    consonants, vowels = phones.table()["consonants"], phones.table()["vowels"]
    if one == other:
        return 0.0
    if one in consonants and other in consonants:
        return _of_consonants(consonants[one], consonants[other])
    if one in vowels and other in vowels:
        apart = (vowels[one][way] - vowels[other][way] for way in ("open", "back"))
        return VOWEL_COSTS + VOWEL_COUNTS * float(sum(far**2 for far in apart)) ** 0.5
    return _paired("nearly").get(frozenset((one, other)), UNLIKE)


def _of_consonants(one: dict[str, Any], other: dict[str, Any]) -> float:
    same = one["manner"] == other["manner"]
    manner = 0.0 if same else _paired("manners").get(frozenset((one["manner"], other["manner"])), STRANGE)
    place = PLACE_COSTS * min(MOST_PLACES, abs(one["place"] - other["place"]))
    place *= NASAL_PLACE if one["manner"] == "nasal" else 1.0
    return min(DEAREST, manner + place + VOICE_COSTS * (one["voiced"] != other["voiced"]))


@cache
def _paired(name: str) -> dict[frozenset[str], float]:
    return {frozenset(pair): row["cost"] for row in phones.table()[name] for pair in row["pairs"]}


def likeness(heard: str, meant: str, whole: float | None = None) -> float:
    """How near two phrases are to the ear, 1 for the same; words that both begin or end with tell less than the rest.

    whole: how near they are with every word alike, where that is known

    >>> likeness("kinwa", "quinoa") > likeness("kinwa", "chicken")
    True
    >>> likeness("steam beans", "green beans") < likeness("grin beans", "green beans")
    True
    """
    rest, of_rest = apart(heard, meant)
    if not rest:
        return float(not of_rest)
    whole = _aligned(heard, meant) if whole is None else whole
    if not of_rest or (rest, of_rest) == (heard, meant):
        return whole
    return (1 - REST_COUNTS) * whole + REST_COUNTS * _aligned(rest, of_rest)


def _alike(one: str, other: str) -> bool:
    return one.removesuffix("s") == other.removesuffix("s")


def apart(heard: str, meant: str) -> tuple[str, str]:
    """Two phrases without the words that both begin or end with; many of a thing count as one.

    >>> apart("split piece soup", "split pea soup")
    ('piece', 'pea')
    >>> apart("east rolls", "yeast roll")
    ('east', 'yeast')
    """
    one, other = heard.split(), meant.split()
    while one and other and _alike(one[0], other[0]):
        one, other = one[1:], other[1:]
    while one and other and _alike(one[-1], other[-1]):
        one, other = one[:-1], other[:-1]
    return " ".join(one), " ".join(other)


@lru_cache(maxsize=65_536)
def _aligned(heard: str, meant: str) -> float:
    return float(_likenesses(heard, _numbered((meant,)))[0])


def near(heard: Sequence[str], meant: tuple[str, ...], least: float) -> Iterator[tuple[int, int, float]]:
    """Where in what was heard and in what may be meant two phrases are at least so near, and how near they are.

    Words that both begin or end with count like others here.
    """
    for at, shared in enumerate(_in_shape(heard, meant)):
        rows = shared.nonzero()[0]
        found = _likenesses(heard[at], _numbered(meant)[rows])
        likely = found >= least
        yield from zip(repeat(at), rows[likely].tolist(), found[likely].tolist())


def _likenesses(heard: str, meant: NDArray[int16]) -> NDArray[float32]:
    """1 less what it costs to set the phones of a phrase beside those of each row, of all that they weigh."""
    weights = _weights()
    weigh = (weights[list(_numbers(heard))].sum() + weights[meant].sum(1)) / 2
    return 1 - _costs(_numbers(heard), meant) / weigh.clip(min=weights[1:].min())


def _costs(heard: Sequence[int], meant: NDArray[int16]) -> NDArray[float32]:
    """The least that it costs to make each row of phones of what was heard, as by Wagner and Fischer.

    Each further phone that was heard gives all rows of their tables at once; leaving phones of `meant` out is a
    running sum.
    """
    import numpy as np

    weights, swaps = _weights(), _swaps()
    left_out = np.zeros((len(meant), meant.shape[1] + 1), "f4")
    weights[meant].cumsum(1, out=left_out[:, 1:])
    row = before = left_out
    for phone in heard:
        before = row
        best = row + weights[phone]
        best[:, 1:] = np.minimum(best[:, 1:], row[:, :-1] + swaps[phone][meant])
        row = left_out + np.minimum.accumulate(best - left_out, axis=1)
    many = heard and heard[-1] in {phones.known()[phone] for phone in PLURAL}
    return np.minimum(row[:, -1], before[:, -1] + PLURAL_COSTS) if many else row[:, -1]


@lru_cache(maxsize=16_384)
def _numbered(phrases: tuple[str, ...]) -> NDArray[int16]:
    """A row of phones by their numbers for each phrase, 0 behind the last."""
    import numpy as np

    rows = [_numbers(phrase) for phrase in phrases]
    longest = max(map(len, rows), default=0)
    return np.array([row + (0,) * (longest - len(row)) for row in rows], "i2").reshape(len(rows), longest)


@lru_cache(maxsize=65_536)
def _numbers(phrase: str) -> tuple[int, ...]:
    return tuple(phones.known()[phone] for phone in phones.of(phrase))


@lru_cache(maxsize=65_536)
def shape(phrase: str) -> str:
    """The phones roughly, in letters that phones share which sound alike: what is near has much of it in common.

    >>> shape("clams"), shape("plans")
    ('s3l2vn0h2', 's0l2vn2h2')
    """
    consonants = phones.table()["consonants"]
    return "".join(_letters(consonants[phone]) if phone in consonants else VOWEL for phone in phones.of(phrase))


def _letters(consonant: dict[str, Any]) -> str:
    return f"{consonant['manner'][0]}{consonant['place']:.0f}"


def consonants(phrase: str) -> int:
    """How many consonants are said in a phrase.

    >>> consonants("pot roast"), consonants("egg")
    (5, 1)
    """
    return sum(phone in phones.table()["consonants"] for phone in phones.of(phrase))


def _in_shape(heard: Sequence[str], meant: tuple[str, ...]) -> NDArray[float32]:
    """How much of their shape phrases have in common; 0 where it is too little to look at them more closely."""
    from rapidfuzz.distance import Indel
    from rapidfuzz.process import cdist

    shapes = [shape(phrase) for phrase in heard]
    return cdist(shapes, _shapes(meant), scorer=Indel.normalized_similarity, score_cutoff=NEAR_IN_SHAPE)


@lru_cache(maxsize=64)
def _shapes(phrases: tuple[str, ...]) -> tuple[str, ...]:
    return tuple(map(shape, phrases))
