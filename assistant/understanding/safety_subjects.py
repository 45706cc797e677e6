"""Component: a subject of food safety or preserving, by the phrases of its catalogue."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cache

from spacy.language import Language
from spacy.tokens import Doc

from assistant.reading.text import fold
from rules import book, tables
from rules.catalogue import marked
from rules.foods.dishes import dishes

CATALOGUE = "lexicon/safety_subjects.toml"
PRESERVE = "preserve"
# dishes and words that a question of preserving has, and one of cooking has not
KEPT_CLASSES = {"pickle", "jam", "canned_low_acid", "canned_high_acid", "dried_fruit", "fruit"}
OF_PRESERVING = ("to can", "canner", "canning", "jar", "jars", "keep", "dry", "drying", "dehydrate", "freeze", "cure")

Doc.set_extension("safety", default=None, force=True)


@dataclass(frozen=True, slots=True)
class Subject:
    """A row of the catalogue.

    within: topics for which its phrases count; empty for any that is open to safety
    together: groups of words; a sentence with a word of each group is about the subject, wherever they stand
    """

    id: str
    topic: str
    within: tuple[str, ...] = ()
    together: tuple[frozenset[str], ...] = ()


@Language.component("kitchen_safety", requires=["doc._.topic", "doc._.concepts"], assigns=["doc._.safety"])
def kitchen_safety(doc: Doc) -> Doc:
    """Hear a subject of food safety. One of preserving sets the topic, and so does any where the topic was unsure."""
    if puts_up(doc) and doc._.topic.id in marked("may_be_canning"):
        doc._.topic = replace(doc._.topic, id=PRESERVE)
    words = [token.norm_ for token in doc]
    if cooks_instead(doc, " ".join(words)):
        doc._.topic = replace(doc._.topic, id=next(t for t, _ in doc._.topic.scores if t != PRESERVE))
    found = safety_subject(" ".join(words), doc._.topic.id)
    if found is None:
        found = spread_subject(frozenset(words), doc._.topic.id, any(item.kind == "dish" for item in doc._.found))
    if found:
        doc._.safety = found.id
        if found.id not in book.names("safety") or doc._.topic.id in marked("unsure"):
            doc._.topic = replace(doc._.topic, id=found.topic)
    return doc


def cooks_instead(doc: Doc, text: str) -> bool:
    """Whether a question that sounds like preserving names a way to cook, and nothing of preserving."""
    if doc._.topic.id != PRESERVE or puts_up(doc) or safety_subject(text, PRESERVE):
        return False
    methods = {found.id for found in doc._.found if found.kind == "method"}
    kept = {dishes()[found.id].dish_class for found in doc._.found if found.kind == "dish"} & KEPT_CLASSES
    speaks_of_it = kept or any(f" {word} " in f" {text} " for word in OF_PRESERVING)
    return bool(methods) and PRESERVE not in methods and not speaks_of_it


def puts_up(doc: Doc) -> bool:
    """Whether food is put up in jars, whatever else is said."""
    heard = {heard.concept for heard in doc._.concepts}
    return "canning" in heard and "not_canning" not in heard


@cache
def subjects() -> dict[str, Subject]:
    """Every row of the catalogue by id."""
    return {
        row["id"]: Subject(
            row["id"],
            row["topic"],
            tuple(row.get("within", ())),
            tuple(frozenset(map(fold, group)) for group in row.get("together", ())),
        )
        for row in tables.read_toml(CATALOGUE)["subject"]
    }


@cache
def phrases() -> dict[str, Subject]:
    """Every phrase with its subject, longest first."""
    heard = {
        fold(phrase): subjects()[row["id"]]
        for row in tables.read_toml(CATALOGUE)["subject"]
        for phrase in row["heard_as"]
    }
    return dict(sorted(heard.items(), key=lambda item: (-len(item[0]), item[0])))


def safety_subject(text: str, topic: str) -> Subject | None:
    """The subject of the longest phrase in a lower-case text that counts for a question of this topic.

    >>> safety_subject("can i water bath can asparagus at 8000 ft", "preserve").id
    'boiling_water_canning'
    >>> safety_subject("why does thawing take so long", "why") is None
    True
    """
    padded = f" {text} "
    inside = (subject for phrase, subject in phrases().items() if f" {phrase} " in padded)
    return next((subject for subject in inside if _counts(subject, topic)), None)


def spread_subject(words: frozenset[str], topic: str, dish: bool = False) -> Subject | None:
    """The subject of which a sentence has a word of each group, whatever stands between them.

    A question of preserving may name a dish beside it; elsewhere a dish is what the question is about.

    >>> spread_subject(frozenset("how long must i boil creek water".split()), "time").id
    'drinking_water'
    """
    for subject in subjects().values():
        at_home = topic == PRESERVE if subject.topic == PRESERVE else topic in marked("safety_apart") and not dish
        if subject.together and at_home and all(words & group for group in subject.together):
            return subject
    return None


def _counts(subject: Subject, topic: str) -> bool:
    if subject.within:
        return topic in subject.within
    return topic in marked("may_be_safety") or (topic == "troubleshoot" and subject.topic == PRESERVE)
