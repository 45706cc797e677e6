"""Component: concepts of danger: things, acts, people and circumstances, by the words and dishes that tell them."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cache
from typing import Any

import Stemmer
from spacy.language import Language
from spacy.tokens import Doc

from assistant.reading.spans import Found
from assistant.reading.text import fold
from assistant.reading.tokens import norms
from assistant.understanding import can_verb
from assistant.understanding.cue_words import cues
from rules import tables
from rules.foods.dishes import Dish, dishes
from rules.kept import kept
from rules.preserving.foods import food

FOLDER, SHARED = "lexicon/danger", "shared"
KINDS = ("food", "thing", "act", "vessel", "person", "place", "circumstance")
ROW_SETS = ("dishes", "classes", "traits", "canned_as", "methods", "equipment", "only_classes")
GAP, LONGEST_GAP, NUMBER = "..", 4, "#"
STEMS, NUMBERED = "stems", "numbered"
SENTENCE_ENDS = frozenset((".", "?", "!", ";"))
CANNING = "canning"
INFANT, TODDLER = "infant", "toddler"
YOUNG_MONTHS, TODDLER_YEARS, OLD_YEARS = 12, 4, 70


@dataclass(frozen=True, slots=True, kw_only=True)
class Concept:
    """A row of the catalogue; see its head. Words are in the form in which they are compared."""

    id: str
    kind: str
    stays: bool = False
    names: bool = True
    not_before: frozenset[str] = frozenset()
    not_after: frozenset[str] = frozenset()
    dishes: frozenset[str] = frozenset()
    classes: frozenset[str] = frozenset()
    traits: frozenset[str] = frozenset()
    canned_as: frozenset[str] = frozenset()
    only_classes: frozenset[str] = frozenset()
    methods: frozenset[str] = frozenset()
    equipment: frozenset[str] = frozenset()

    def __post_init__(self) -> None:
        if self.kind not in KINDS:
            raise tables.BadTable(f'data/{FOLDER}: {self.id}: kind "{self.kind}" is none of {", ".join(KINDS)}')

    @property
    def of_dishes(self) -> bool:
        """Whether rows of the lexicon tell it, so that the row of a known dish decides."""
        return bool(self.dishes or self.classes or self.traits or self.canned_as)


@dataclass(frozen=True, slots=True)
class Heard:
    """A concept where it was heard: tokens, end exclusive."""

    start: int
    end: int
    concept: str


@dataclass(frozen=True, slots=True)
class Phrases:
    """Phrases by their stems.

    whole: those without a gap; gapped: by the part before the first gap
    longest: stem -> words of the longest whole one or first part that it opens
    words: every word as it is written in the catalogue
    """

    whole: dict[str, tuple[str, ...]]
    gapped: dict[str, tuple[tuple[tuple[str, ...], str], ...]]
    longest: dict[str, int]
    words: frozenset[str]


@cache
def family(name: str) -> dict[str, Any]:
    """One file of the catalogue: concepts, and but for the shared one hazards."""
    return tables.read_toml(f"{FOLDER}/{name}.toml")


@cache
def families() -> tuple[str, ...]:
    """The names of the families, in the order in which their hazards are tried."""
    return tuple(family(SHARED)["families"])


@cache
def _rows() -> dict[str, dict[str, Any]]:
    return {id: row for name in (SHARED, *families()) for id, row in family(name).get("concept", {}).items()}


@kept
def concepts() -> dict[str, Concept]:
    """Every concept by id."""
    found = {}
    for id, row in _rows().items():
        held: dict[str, Any] = {k: frozenset(row[k]) for k in ROW_SETS if k in row}
        held |= {k: frozenset(stem(fold(w)) for w in row[k]) for k in ("not_before", "not_after") if k in row}
        held |= {k: row[k] for k in ("stays", "names") if k in row}
        found[id] = Concept(id=id, kind=row["kind"], **held)
    return found


@cache
def _exact() -> frozenset[str]:
    return frozenset(family(SHARED)["exact"])


_stemmer = Stemmer.Stemmer("english")


def stem(word: str) -> str:
    """The form in which a word is compared; the few whose stem is another word stay as they are.

    >>> stem("foraged") == stem("foraging"), stem("canning")
    (True, 'canning')
    """
    return word if word in _exact() else str(_stemmer.stemWord(word))


def stems(doc: Doc) -> list[str]:
    """The stems of an utterance, word by word; worked out once, and only read."""
    found: list[str] | None = doc.user_data.get(STEMS)
    if found is None:
        found = doc.user_data[STEMS] = [stem(word) for word in norms(doc)]
    return found


def numbered(doc: Doc) -> list[str]:
    """The same, with a sign for every number."""
    found: list[str] | None = doc.user_data.get(NUMBERED)
    if found is None:
        pairs = zip(doc, stems(doc), strict=True)
        found = doc.user_data[NUMBERED] = [NUMBER if token.like_num else one for token, one in pairs]
    return found


class _Stems(dict[str, str]):
    """The stem of each word, worked out once."""

    def __missing__(self, word: str) -> str:
        self[word] = found = stem(word)
        return found


@kept
def phrases() -> Phrases:
    """Every phrase of every concept."""
    whole: dict[str, list[str]] = defaultdict(list)
    gapped: dict[str, list[tuple[tuple[str, ...], str]]] = defaultdict(list)
    stem_of, longest = _Stems(), defaultdict[str, int](int)
    for id, row in _rows().items():
        for phrase in row["words"]:
            words = phrase.split(" ")
            stemmed = " ".join([stem_of[word] for word in words])
            first, *others = stemmed.split(f" {GAP} ")
            opens = stem_of[words[0]]
            longest[opens] = max(longest[opens], first.count(" ") + 1)
            if others:
                gapped[first].append((tuple(others), id))
            else:
                whole[first].append(id)
    apart = {first: tuple(others) for first, others in gapped.items()}
    return Phrases({stems: tuple(ids) for stems, ids in whole.items()}, apart, dict(longest), frozenset(stem_of))


@cache
def counted() -> Counter[str]:
    """How often each word stands in the phrases of the catalogue."""
    return Counter(word for row in _rows().values() for phrase in row["words"] for word in phrase.split(" "))


# before what a dish is made with
MADE_WITH = ("with", "using")

Doc.set_extension("concepts", default=(), force=True)


@Language.component("kitchen_concepts", requires=["doc._.found", "doc._.numbers"], assigns=["doc._.concepts"])
def kitchen_concepts(doc: Doc) -> Doc:
    """Hear every concept of danger."""
    doc._.concepts = hear(doc)
    return doc


def hear(doc: Doc) -> tuple[Heard, ...]:
    """The concepts of an utterance that has been through the lexicon."""
    measured = {i for measure in doc._.measures for i in range(measure.start, measure.end)}
    # the words of a measure tell no act: 20 quarts is no canning
    told = (h for h in _of_words(doc) if h.start not in measured or concepts()[h.concept].kind != "act")
    named, called = (*_names_of_places(doc), *_complaints(doc)), _called_like_food(doc)
    ages, bought = tuple(_of_ages(doc)), _bought_to_go_in(doc)
    # a child past its first year is no infant, whatever it is called: our little one, 14 months
    grown = any(h.concept == TODDLER for h in ages) and all(h.concept != INFANT for h in ages)
    heard = tuple(
        h
        for h in (*told, *_of_lexicon(doc), *ages)
        if not (grown and h.concept == INFANT)
        and not (h.concept == CANNING and h.start in bought)
        and not any(a <= h.start and h.end <= b for a, b in named)
        and not (h.end - 1 in called and (h.end - h.start > 1 or concepts()[h.concept].kind == "food"))
    )
    foods = frozenset(i for h in heard if concepts()[h.concept].kind == "food" for i in range(h.start, h.end))
    verbs = (Heard(at, at + 1, CANNING) for at in can_verb.positions(doc, foods))
    return tuple(dict.fromkeys((*heard, *verbs)))


def _bought_to_go_in(doc: Doc) -> frozenset[int]:
    """The words of a food that another dish is made with, which tell nothing of jars: chili with canned beans."""
    named = [found for found in doc._.found if found.kind == "dish"]
    goes_in = (f for f in named if norms(doc)[f.start - 1] in MADE_WITH and any(one.end < f.start for one in named))
    return frozenset(i for f in goes_in for i in range(f.start, f.end))


def _names_of_places(doc: Doc) -> Iterator[tuple[int, int]]:
    """Names of places in several words, which tell of nothing else: Big Bear is no bear, Salt Lake no lake.

    A name that was guessed from a spelling may be another word.
    """
    names = ((f, f.id.lower().split()) for f in doc._.found if f.kind == "place" and len(f) > 1)
    return ((f.start, f.end) for f, name in names if norms(doc)[f.start : f.end] == name[: len(f)])


def _called_like_food(doc: Doc) -> frozenset[int]:
    """Words that a place is called by, before a valley or a village: a kitchen in Bear Valley cooks no bear.

    A single word that is no food still tells what it is: the water of a mining town.
    """
    words = norms(doc)
    return frozenset(i for i in range(len(words) - 1) if words[i + 1] in family(SHARED)["land"] and words[i].isalpha())


def _complaints(doc: Doc) -> Iterator[tuple[int, int]]:
    """What is wrong with a dough, a pasta or a sweet, which is a fault and no sign of what is eaten: gummy pancakes.

    A food that spoils beside it may be what is meant.
    """
    classes = {dishes()[f.id].dish_class for f in doc._.found if f.kind == "dish"}
    if classes and classes <= _of_dough():
        yield from ((f.start, f.end) for f in doc._.found if f.kind == "symptom")


@cache
def _of_dough() -> frozenset[str]:
    return frozenset(family(SHARED)["fault_classes"])


def _of_words(doc: Doc) -> Iterator[Heard]:
    yield from _in_stems(doc, stems(doc))
    if numbered(doc) != stems(doc):
        yield from _in_stems(doc, numbered(doc))


def _in_stems(doc: Doc, words: Sequence[str]) -> Iterator[Heard]:
    book, known = phrases(), [f for f in doc._.found if f.kind == "dish"]
    for start in range(len(words)):
        for end in range(start + 1, min(start + book.longest.get(words[start], 0), len(words)) + 1):
            part = " ".join(words[start:end])
            for id in book.whole.get(part, ()):
                concept = concepts()[id]
                if _means(concept, doc, words, start, end) and not _inside_dish(concept, start, end, known):
                    yield Heard(start, end, id)
            for parts, id in book.gapped.get(part, ()):
                last = _after_gaps(words, end, parts)
                if last and _means(concepts()[id], doc, words, start, last):
                    yield Heard(start, last, id)


def _after_gaps(words: Sequence[str], at: int, parts: Sequence[str]) -> int | None:
    """Where the last of some parts ends that follow each other in a sentence, with at most a short gap before each."""
    if not parts:
        return at
    size = parts[0].count(" ") + 1
    for start in range(at, min(at + LONGEST_GAP, len(words) - size) + 1):
        if start > at and words[start - 1] in SENTENCE_ENDS:
            return None
        if " ".join(words[start : start + size]) == parts[0]:
            last = _after_gaps(words, start + size, parts[1:])
            if last:
                return last
    return None


def _means(concept: Concept, doc: Doc, words: Sequence[str], start: int, end: int) -> bool:
    return concept.not_before.isdisjoint(_forms(doc, words, end)) and concept.not_after.isdisjoint(
        _forms(doc, words, start - 1)
    )


def _forms(doc: Doc, words: Sequence[str], at: int) -> tuple[str, ...]:
    """What a word beside a phrase is compared as: its stem, and any number also as a number."""
    if not 0 <= at < len(words):
        return ()
    return (words[at], NUMBER) if numbered(doc)[at] == NUMBER else (words[at],)


def _inside_dish(concept: Concept, start: int, end: int, known: Sequence[Found]) -> bool:
    """Whether a word is but a part of the name of a known dish, whose row decides: chicken, in chicken stock."""
    return concept.of_dishes and any(f.start <= start and end <= f.end and len(f) > end - start for f in known)


def _of_lexicon(doc: Doc) -> Iterator[Heard]:
    for found in doc._.found:
        for id in of_row(found.kind, found.id):
            if _means(concepts()[id], doc, stems(doc), found.start, found.end):
                yield Heard(found.start, found.end, id)


@cache
def of_row(kind: str, name: str) -> tuple[str, ...]:
    """The concepts that a row of the lexicon tells.

    >>> "poultry" in of_row("dish", "turkey"), "slow_cooker" in of_row("method", "slow_cook")
    (True, True)
    """
    if kind == "dish":
        return tuple(id for id, concept in concepts().items() if _tells(dishes()[name], concept))
    return tuple(
        id
        for id, c in concepts().items()
        if (kind == "method" and name in c.methods) or (kind == "equipment" and name in c.equipment)
    )


def _tells(dish: Dish, concept: Concept) -> bool:
    """Whether a dish tells a concept: by its name, its class, a trait, or the way it is canned."""
    if concept.only_classes and dish.dish_class not in concept.only_classes:
        return False
    named = dish.name in concept.dishes or dish.dish_class in concept.classes
    canned = bool(concept.canned_as) and food(dish.name, dish.dish_class).kind in concept.canned_as
    return named or not concept.traits.isdisjoint(dish.traits) or canned


def _of_ages(doc: Doc) -> Iterator[Heard]:
    """People by their age: 8 months old, a 3 year old, a 2nd birthday, gran is 88, 20 weeks along."""
    words = norms(doc)
    for number in doc._.numbers:
        unit, end = _unit_of_age(words, number.end)
        after = words[end] if end < len(words) else ""
        before = words[max(0, number.start - 2) : number.start]
        if before[-1:] == [","] and before[0] in CHILDREN:
            before = ["is"]
        for id in _of_age(number.value, unit, before, after):
            yield Heard(number.start, end, id)


def _unit_of_age(words: Sequence[str], at: int) -> tuple[str, int]:
    """The unit behind a number, and where it ends."""
    if words[at : at + 3] == ["y", "/", "o"]:
        return "yo", at + 3
    unit = stem(words[at]) if at < len(words) else ""
    return (unit, at + 1) if unit in (*MONTHS, *WEEKS, *YEARS, *ORDINALS) else ("", at)


def _of_age(value: float, unit: str, before: Sequence[str], after: str) -> tuple[str, ...]:
    """The concepts that a number tells, with its unit of age or none."""
    old, told = after in AGED, bool(before) and before[-1] in BEFORE_AGE
    if unit in (*MONTHS, *WEEKS):
        return ("at_risk", "pregnant") if after in ALONG else _of_months(value, unit) if old or told else ()
    told_of = told and before[0] in PEOPLE
    person = told_of or (bool(before) and before[-1] in PEOPLE)
    years = (unit in YEARS and (old or told_of or unit == "yo")) or (unit in ORDINALS and after == "birthday")
    if years or (not unit and person and not after.startswith(DEGREES)):
        return _of_years(value)
    return ("at_risk",) if unit in ORDINALS and value >= OLD_YEARS and person else ()


def _of_months(value: float, unit: str) -> tuple[str, ...]:
    months = value / WEEKS_A_MONTH if unit in WEEKS else value
    return () if months > MOST_MONTHS else ("infant",) if months < YOUNG_MONTHS else ("at_risk", "toddler")


def _of_years(value: float) -> tuple[str, ...]:
    if value < 1:
        return ("infant",)
    if value < TODDLER_YEARS:
        return ("at_risk", "toddler") if value > 1 else ("toddler",)
    return ("at_risk",) if OLD_YEARS <= value <= OLDEST_YEARS else ()


MONTHS, WEEKS, YEARS = ("month", "mo", "mth"), ("week", "wk"), ("year", "yr", "yo")
ORDINALS, DEGREES = ("th", "rd", "nd", "st"), ("f", "c", "deg", "°", "%", "min", "percent")
MOST_MONTHS, WEEKS_A_MONTH, OLDEST_YEARS = 24, 4.3, 115
AGED = ("old", "olds", "baby", "son", "daughter", "girl", "boy", "infant", "kid", "niece", "nephew", "twins")
ALONG = ("along", "pregnant", "pregant", "preg", "gone", "expecting")
BEFORE_AGE = ("is", "shes", "hes", "only", "turned", "aged", "at", "turns", "age")
# who is told of by the age behind a comma: our little one, 14 months
CHILDREN = (
    "one",
    "son",
    "daughter",
    "girl",
    "boy",
    "baby",
    "kid",
    "niece",
    "nephew",
    "grandson",
    "granddaughter",
    "child",
)
PEOPLE = (
    "shes", "hes", "he", "she", "gran", "granny", "grans", "grandma", "grandmas", "grandmother", "grandpa", "grandpas",
    "grandad", "grandads", "nan", "nana", "oma", "opa", "abuela", "abuelo", "mum", "mom", "mother", "dad", "father",
    "kid", "son", "daughter", "boy", "girl", "niece", "nephew", "grandson", "granddaughter", "aunt", "uncle",
    *cues("kin", "names"),
)  # fmt: skip
