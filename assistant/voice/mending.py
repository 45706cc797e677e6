"""From what was heard to what was said: candidates made by sound, and the parser's word on which makes sense."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise, product

from spacy.tokens import Doc

from assistant.reading.spans import Elevation
from assistant.understanding.pipeline import read
from assistant.voice import words
from assistant.voice.guesses import KINDS, Guess, fixed_tokens, guesses, heard_as_written
from assistant.voice.guesses import least as least_of
from assistant.voice.sounds import consonants
from rules.foods.dishes import dishes
from rules.model import Request
from rules.physics.units import M_PER_FT

Parser = Callable[[str], Request]
OUTSIDE = "outside"
# how sure a phrase has to be before it says more than nothing, as it is written; what a kind counts beside the others
WORTH = {"dish": 0.7, "method": 0.8, "place": 0.76, "jars": 0.78}
COUNTS = {"dish": 1.0, "method": 0.6, "place": 0.8, "jars": 1.0}
# how much surer a phrase has to be that was mended than the least of its sound
SURER = {"dish": 0.02, "method": 0.03, "place": 0.04, "jars": 0.06}
THE_SAME = 0.95
# what a phrase is worth in a take in which nothing sounds like it
UNHEARD, ON_AVERAGE = 0.5, 0.6
# changing what the lexicon knows as it was heard costs more than changing what nobody knows
MEND_COSTS, KNOWN_COSTS = 0.03, 0.12
# what making a phrase longer counts beside what it was worth already
PART_COUNTS = 0.9
# so many times as far from sure as it sounds: a phrase that sounds nearly the same may well write over another
SURE_BY = 3.0
# consonants of a phrase that weighs one, and the most that a longer one weighs
WEIGHS_ONE, HEAVIEST = 4, 2.0
# where nothing tells how high it is, a place is looked for sooner
PLACELESS = 0.08
# who asks here cooks higher than this; a lower height is more likely one that lost a word: eight thousand, a thousand
LOW_M, LOW_COSTS = 450.0, 0.3
NUMBERS_COUNT, PARSED_COUNTS, COOKED_SO, OUT_OF_PLACE = 0.5, 0.15, 0.1, 0.3
OPTIONS, PARSED = 5, 10


@dataclass(frozen=True, slots=True)
class Reading:
    """One way to read what was heard. text: mended; guesses: what it takes for granted; request: the parser's"""

    text: str
    take: str
    guesses: tuple[Guess, ...]
    request: Request
    worth: float

    @property
    def mends(self) -> tuple[Guess, ...]:
        """What was changed in it."""
        return tuple(guess for guess in self.guesses if guess.mends)


def readings(takes: Sequence[str], parse: Parser) -> list[Reading]:
    """The ways to read an utterance that was heard so many times, the best first, no two alike.

    parse: what the assistant understands of a text
    """
    docs = [read(take) for take in takes]
    options = {kind: _options(docs, kind) for kind in KINDS}
    evidence = {kind: _evidence(of_kind) for kind, of_kind in options.items()}
    written = [[guess for kind in KINDS for guess in heard_as_written(doc, kind)] for doc in docs]
    agreed = Counter(number for doc in docs for number in _numbers(doc))
    worth = _worths(docs)
    drafts = [
        (
            _worth(draft, evidence, worth, written[at])
            - _lost(written[at], draft)
            + _of_numbers(doc, agreed, len(docs)),
            at,
            draft,
        )
        for at, doc in enumerate(docs)
        for draft in _drafts([options[kind][at] for kind in KINDS])
    ]
    drafts.sort(key=lambda draft: (-draft[0], draft[1]))
    parsed = (_reading(docs[at], takes[at], draft, worth, parse) for worth, at, draft in drafts[:PARSED])
    return _without_doubles(sorted(parsed, key=lambda reading: -reading.worth))


def _options(docs: Sequence[Doc], kind: str) -> list[tuple[Guess, ...]]:
    """For each take what it may say of a kind: what is written there, and what sounds near."""
    return [(*heard_as_written(doc, kind), *(() if _told(doc, kind) else guesses(doc, kind))) for doc in docs]


def _told(doc: Doc, kind: str) -> bool:
    """Whether nothing of a kind is to be looked for: no place where a figure tells how high it is."""
    return kind == "place" and bool(doc._.elevations)


def _evidence(takes: Sequence[Iterable[Guess]]) -> dict[str, float]:
    """How near each thing is to what was heard: on the average of the takes, and in the best of them."""
    nearest: dict[str, dict[int, float]] = defaultdict(dict)
    for at, options in enumerate(takes):
        for guess in options:
            nearest[guess.id][at] = max(guess.likeness, nearest[guess.id].get(at, 0.0))
    return {
        id: ON_AVERAGE * sum(near.get(at, UNHEARD) for at in range(len(takes))) / len(takes)
        + (1 - ON_AVERAGE) * max(near.values())
        for id, near in nearest.items()
    }


def _drafts(options: Sequence[tuple[Guess, ...]]) -> Iterator[tuple[Guess, ...]]:
    """Every choice of at most one thing of each kind whose words do not overlap."""
    for choice in product(*((None, *of_kind[:OPTIONS]) for of_kind in options)):
        draft = tuple(sorted((guess for guess in choice if guess), key=lambda guess: guess.start))
        if all(before.end <= behind.start for before, behind in pairwise(draft)):
            yield draft


def _worth(
    draft: Iterable[Guess], evidence: dict[str, dict[str, float]], least: dict[str, float], written: Sequence[Guess]
) -> float:
    """What a choice is worth by its sound alone; what it makes longer is worth as much by itself already."""
    worth = 0.0
    for guess in draft:
        enough = least[guess.kind] - WORTH[guess.kind] + _sure(guess) if guess.mends else least[guess.kind]
        gained = COUNTS[guess.kind] * _weight(guess) * (evidence[guess.kind][guess.id] - enough)
        within = [known for known in written if _is_part(known, guess)]
        if within:
            gained = PART_COUNTS * gained + max(
                COUNTS[part.kind] * _weight(part) * (1 - least[part.kind]) for part in within
            )
        worth += gained - MEND_COSTS * guess.mends
    return worth


def _sure(guess: Guess) -> float:
    """How sure a phrase has to be that was mended; what sounds the same is as sure as what is written so."""
    if guess.likeness >= THE_SAME:
        return WORTH[guess.kind]
    return least_of(guess.meant, guess.kind) + SURER[guess.kind]


def _is_part(known: Guess, guess: Guess) -> bool:
    """Whether a guess keeps what is written and makes it longer: pinto beans, doughnuts."""
    inside = guess.start <= known.start and known.end <= guess.end and guess.end - guess.start > known.end - known.start
    return (
        inside
        and guess.mends
        and known.kind == guess.kind
        and known.heard.replace(" ", "") in guess.meant.replace(" ", "")
    )


def _weight(guess: Guess) -> float:
    """A longer phrase that fits tells more than a short one."""
    weight = min(HEAVIEST, min(consonants(guess.heard), consonants(guess.meant)) / WEIGHS_ONE)
    return weight if guess.mends else max(1.0, weight)


def _worths(docs: Sequence[Doc]) -> dict[str, float]:
    """How sure each kind has to be; a place is looked for sooner where no figure tells how high it is."""
    placed = any(doc._.elevations for doc in docs)
    return WORTH if placed else {**WORTH, "place": WORTH["place"] - PLACELESS}


def _reading(doc: Doc, take: str, draft: Sequence[Guess], worth: float, parse: Parser) -> Reading:
    """A choice put into words and heard by the parser."""
    text = _mended(doc, draft)
    request = parse(text)
    return Reading(text, take, tuple(draft), request, worth + _sense(draft, request))


def _mended(doc: Doc, draft: Sequence[Guess]) -> str:
    """The text with every guess in the place of what was heard."""
    text = doc.text
    for guess in reversed(draft):
        if guess.mends:
            first, last = doc[_begins(doc, guess)], doc[guess.end - 1]
            meant = f"{words.place_lead()} {guess.id}" if guess.kind == "place" else guess.meant
            text = text[: first.idx] + meant + text[last.idx + len(last) :]
    return text


def _begins(doc: Doc, guess: Guess) -> int:
    """The first token that a guess takes the place of: that of the small word before a place, where there is one."""
    led = guess.kind == "place" and guess.start and doc[guess.start - 1].lower_ in words.listed("place_leads_heard_as")
    return guess.start - bool(led)


def _lost(written: Sequence[Guess], draft: Sequence[Guess]) -> float:
    """What it costs that words the lexicon knows are written over; less where it sounds nearly the same."""
    over = [
        guess.likeness
        for known in written
        for guess in draft
        if guess.mends and guess.start < known.end and known.start < guess.end and known.id != guess.id
        if not _is_part(known, guess)
    ]
    return KNOWN_COSTS * sum(min(1.0, SURE_BY * (1.0 - likeness)) for likeness in over)


def _sense(draft: Sequence[Guess], request: Request) -> float:
    """What the parser says to it: everything guessed is found where it should be, and the dish is cooked so."""
    asked = PARSED_COUNTS * (request.topic != OUTSIDE)
    missed = sum(guess.kind == "dish" and request.dish != guess.id for guess in draft)
    cooked = request.dish is not None and request.method in dishes()[request.dish].methods
    return asked + COOKED_SO * cooked - OUT_OF_PLACE * missed


def _numbers(doc: Doc) -> set[float]:
    return {number.value for number in doc._.numbers}


def _of_numbers(doc: Doc, agreed: Counter[float], takes: int) -> float:
    """What the numbers of a take are worth: how many takes have them, and whether a cook would ask from there."""
    numbers = _numbers(doc)
    if not numbers:
        return 0.0
    low = any(0 < _height_m(one) < LOW_M for one in doc._.elevations)
    return NUMBERS_COUNT * sum(agreed[number] for number in numbers) / takes / len(numbers) - LOW_COSTS * low


def _height_m(one: Elevation) -> float:
    return one.said * (1.0 if one.unit.startswith("m") else M_PER_FT)


def _without_doubles(found: Iterable[Reading]) -> list[Reading]:
    """The best reading of each sense."""
    best: dict[tuple[object, ...], Reading] = {}
    for reading in found:
        request = reading.request
        sense = (request.topic, request.dish, request.method, request.elevation_m, request.place, request.time_min)
        best.setdefault(sense, reading)
    return list(best.values())


def untouched(doc: Doc, guess: Guess) -> bool:
    """Whether a guess leaves numbers and units alone."""
    return fixed_tokens(doc).isdisjoint(range(guess.start, guess.end))
