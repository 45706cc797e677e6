"""Component: which topics an utterance may be about: those whose frame in the catalogue fits its forms and signs."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache

from spacy.language import Language
from spacy.tokens import Doc

from assistant.reading.text import fold
from assistant.reading.tokens import norms
from assistant.understanding import kitchen_told
from assistant.understanding.claims import claimed
from assistant.understanding.concepts import stem, stems
from assistant.understanding.serving import HOURS
from rules import tables
from rules.catalogue import Topic, topics
from rules.foods.dishes import dishes

SIGNS = "lexicon/signs.toml"
# dishes that are no ingredients; an utterance of spans alone
FOOD, NOTHING_ELSE = "food", "nothing_else"
# a form that tells of no topic: minutes for each
SAYS_NOTHING = frozenset(("each",))
BARE, KITCHEN_TOLD, HOUR = "bare", "kitchen_told", "hour"
# before a figure that can be an hour
BEFORE_HOUR = ("at", "for", "by", "from", "till", "until", "before", "is")

Doc.set_extension("signs", default=frozenset(), force=True)
Doc.set_extension("fitting", default=frozenset(), force=True)


@dataclass(frozen=True, slots=True)
class Signs:
    """The signs by what tells them: a stem, a phrase, a dish class, a method, a concept of danger, several signs."""

    stems: dict[str, tuple[str, ...]]
    phrases: tuple[tuple[str, str], ...]
    classes: dict[str, tuple[str, ...]]
    methods: dict[str, tuple[str, ...]]
    concepts: dict[str, tuple[str, ...]]
    together: tuple[tuple[str, frozenset[str], frozenset[str]], ...]


@Language.component(
    "kitchen_frames", requires=["doc._.forms", "doc._.concepts"], assigns=["doc._.signs", "doc._.fitting"]
)
def kitchen_frames(doc: Doc) -> Doc:
    """Tell the topics whose frame an utterance fits."""
    heard = frozenset(signs_of(doc))
    doc._.signs = heard | {sign for sign, of, unless in signs().together if of <= heard and unless.isdisjoint(heard)}
    doc._.fitting = frozenset(topic.id for topic in topics().values() if fits(topic, doc._.signs))
    return doc


def fits(topic: Topic, signs: frozenset[str]) -> bool:
    """Whether an utterance with these signs can be about a topic."""
    asked = not topic.forms or not signs.isdisjoint(topic.forms)
    return asked and (not topic.must or not signs.isdisjoint(topic.must)) and signs.isdisjoint(topic.cannot)


def signs_of(doc: Doc) -> Iterator[str]:
    """Every sign of an utterance: the forms it has, the kinds of what was heard, and those of the catalogue."""
    forms = {form.id for form in doc._.forms}
    yield from forms - SAYS_NOTHING or {BARE}
    yield from (token.tag_ for token in doc if token.tag_)
    yield from (found.kind for found in doc._.found)
    book = signs()
    for one in stems(doc):
        yield from book.stems.get(one, ())
    if kitchen_told.tells(doc) or kitchen_told.asks_back(doc):
        yield KITCHEN_TOLD
    if any(n.value in HOURS and n.start and norms(doc)[n.start - 1] in BEFORE_HOUR for n in doc._.numbers):
        yield HOUR
    text = f" {' '.join(norms(doc))} "
    yield from (sign for phrase, sign in book.phrases if phrase in text)
    kept = claimed(doc)
    if not any(word.isalnum() for i, word in enumerate(norms(doc)) if i not in kept):
        yield NOTHING_ELSE
    ingredients = {found.start for found in doc._.found if found.kind == "ingredient"}
    for found in doc._.found:
        if found.kind == "dish":
            yield from () if found.start in ingredients else (FOOD,)
            yield from book.classes.get(dishes()[found.id].dish_class, ())
        elif found.kind == "method":
            yield from book.methods.get(found.id, ())
    for heard in doc._.concepts:
        yield from book.concepts.get(heard.concept, ())


@cache
def signs() -> Signs:
    """The catalogue of signs."""
    rows = tables.read_toml(SIGNS)["sign"]
    told = {key: _by(rows, key) for key in ("words", "classes", "methods", "concepts")}
    phrases = tuple((f" {fold(phrase)} ", row["id"]) for row in rows for phrase in row.get("phrases", ()))
    stems: dict[str, tuple[str, ...]] = {}
    for word, of in told["words"].items():
        stems[stem(word)] = tuple(dict.fromkeys((*stems.get(stem(word), ()), *of)))
    together = tuple(
        (row["id"], frozenset(row["together"]), frozenset(row.get("unless", ()))) for row in rows if "together" in row
    )
    return Signs(stems, phrases, told["classes"], told["methods"], told["concepts"], together)


def _by(rows: list[dict[str, list[str]]], key: str) -> dict[str, tuple[str, ...]]:
    found: dict[str, tuple[str, ...]] = {}
    for row in rows:
        for told in row.get(key, ()):
            found[told] = (*found.get(told, ()), str(row["id"]))
    return found
