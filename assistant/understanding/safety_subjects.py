"""Component: a subject of food safety or preserving, by the phrases of its catalogue."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cache

from spacy.language import Language
from spacy.tokens import Doc

from assistant.reading.text import fold
from assistant.reading.tokens import norms
from assistant.understanding import done_jars
from assistant.understanding.cue_words import cues, said
from assistant.understanding.forms import patterns_heard
from assistant.understanding.topics import UNSURE
from rules import book, tables
from rules.catalogue import marked
from rules.foods.dishes import dishes
from rules.preserving.foods import CANNED, food

CATALOGUE = "lexicon/safety_subjects.toml"
PRESERVE = "preserve"
# dishes and words that a question of preserving has, and one of cooking has not
KEPT_CLASSES = {"pickle", "jam", "canned_low_acid", "canned_high_acid", "dried_fruit", "fruit"}
OF_PRESERVING = ("to can", "canner", "canning", "jar", "jars", "keep", "dry", "drying", "dehydrate", "freeze", "cure")

# pickles in vinegar, and words that ask whether they must be boiled at all
VINEGAR, WITHIN = "vinegar_pickles", 9
# what keeps in a jar that is filled dry and not canned
DRY_JAR = "keeps_dry"
VINEGARS, NO_VINEGAR, MUST, BOILED = (cues("vinegar_pickles", name) for name in ("vinegars", "other", "must", "boiled"))

# the weights that there are for a canner
POUNDS, WEIGHTS = ("lb", "psi"), (5, 10, 15)

Doc.set_extension("safety", default=None, force=True)


@dataclass(frozen=True, slots=True)
class Subject:
    """A row of the catalogue.

    within: topics for which its phrases count; empty for any that is open to safety
    together: groups of words; a sentence with a word of each group is about the subject, wherever they stand
    spread: topics beside its own in which its groups count; unless: words and phrases that speak against it
    first: whether it is looked for before the others; beside_dish: whether its groups count where a dish is named
    patterned: whether it is told by patterns, as a form is, and then whatever the topic
    """

    id: str
    topic: str
    within: tuple[str, ...] = ()
    together: tuple[frozenset[str], ...] = ()
    spread: tuple[str, ...] = ()
    unless: tuple[str, ...] = ()
    first: bool = False
    patterned: bool = False
    beside_dish: bool = False

    def spread_over(self, words: frozenset[str]) -> bool:
        """Whether a sentence has a word of each group."""
        return bool(self.together) and all(words & group for group in self.together)

    def barred(self, text: str) -> bool:
        """Whether a sentence holds words that speak against the subject."""
        padded = f" {text} "
        return any(f" {phrase} " in padded for phrase in self.unless)


@Language.component(
    "kitchen_safety", requires=["doc._.topic", "doc._.concepts", "doc._.packed"], assigns=["doc._.safety"]
)
def kitchen_safety(doc: Doc) -> Doc:
    """Hear a subject of food safety. One of preserving sets the topic, and so does any where the topic was unsure."""
    if (puts_up(doc) or packs_jars(doc) or weighs_down(doc)) and doc._.topic.id in marked("may_be_canning"):
        doc._.topic = replace(doc._.topic, id=PRESERVE)
    if done_jars.told(doc) or done_jars.under_gauge(doc):
        doc._.topic = replace(doc._.topic, id=PRESERVE, margin=max(doc._.topic.margin, UNSURE))
    settle_jam(doc)
    words = norms(doc)
    if patterned := patterned_subject(doc, " ".join(words)):
        doc._.safety, doc._.topic = patterned.id, replace(doc._.topic, id=patterned.topic)
        return doc
    if keeps_in_vinegar(doc):
        doc._.safety, doc._.topic = VINEGAR, replace(doc._.topic, id=PRESERVE, margin=UNSURE)
        return doc
    if cooks_instead(doc, " ".join(words)):
        doc._.topic = replace(doc._.topic, id=next(t for t, _ in doc._.topic.scores if t != PRESERVE))
    found = subject_of(words, doc._.topic.id, any(item.kind == "dish" for item in doc._.found))
    if found:
        doc._.safety = found.id
        # bottles that are boiled for a baby are no jars, and what comes after them is not put up
        no_jars = doc._.topic.id == PRESERVE != found.topic and found.beside_dish
        if found.id not in book.names("safety") or doc._.topic.id in marked("unsure") or no_jars:
            doc._.topic = replace(doc._.topic, id=found.topic)
    return doc


def subject_of(words: Sequence[str], topic: str, dish: bool) -> Subject | None:
    """The subject of a question: one that comes first, else by a phrase, else by words that stand apart."""
    by_phrase = safety_subject(" ".join(words), topic)
    if by_phrase and by_phrase.first:
        return by_phrase
    return spread_subject(words, topic, dish, first=True) or by_phrase or spread_subject(words, topic, dish)


def patterned_subject(doc: Doc, text: str) -> Subject | None:
    """The subject one of whose patterns stands in a question, in the order of the rows."""
    heard = {id for id, _, _ in patterns_heard(doc, CATALOGUE, "subject")}
    return next((one for one in subjects().values() if one.id in heard and not one.barred(text)), None)


def is_patterned(id: str | None) -> bool:
    """Whether a subject is told by patterns: nothing else that a question sounds like counts then."""
    return id in subjects() and subjects()[id].patterned


def keeps_in_vinegar(doc: Doc) -> bool:
    """Whether it is asked if a pickle in vinegar must be boiled or processed at all, and nothing else is in it.

    >>> from assistant.understanding.pipeline import read
    >>> keeps_in_vinegar(read("do i have to process my vinegar piccalilli jars"))
    True
    """
    words = norms(doc)
    pickled = any(f.kind == "dish" and dishes()[f.id].dish_class == "pickle" for f in doc._.found)
    if not pickled or not said(words, VINEGARS) or said(words, NO_VINEGAR):
        return False
    starts = [i for i, word in enumerate(words) if word in MUST]
    return any(word in BOILED for i in starts for word in words[i : i + WITHIN])


def cooks_instead(doc: Doc, text: str) -> bool:
    """Whether a question that sounds like preserving names a way to cook, and nothing of preserving."""
    if doc._.topic.id != PRESERVE or puts_up(doc) or safety_subject(text, PRESERVE):
        return False
    methods = {found.id for found in doc._.found if found.kind == "method"}
    if methods and PRESERVE not in methods and any(h.concept == "not_canning" for h in doc._.concepts):
        return True
    kept = {dishes()[found.id].dish_class for found in doc._.found if found.kind == "dish"} & KEPT_CLASSES
    speaks_of_it = kept or any(f" {word} " in f" {text} " for word in OF_PRESERVING)
    return bool(methods) and PRESERVE not in methods and not speaks_of_it


def settle_jam(doc: Doc) -> None:
    """Leave no choice of topics where jam or jelly is asked about, but not for a reason: preserving answers it."""
    jam = any(found.kind == "dish" and dishes()[found.id].dish_class == "jam" for found in doc._.found)
    if jam and doc._.topic.id == PRESERVE and all(form.id != "why" for form in doc._.forms):
        doc._.topic = replace(doc._.topic, margin=max(doc._.topic.margin, UNSURE))


def packs_jars(doc: Doc) -> bool:
    """Whether food is packed hot or raw into jars that are named."""
    heard = {packed.packing for packed in doc._.packed}
    return bool(heard & {"hot", "raw"}) and any(packed.jar for packed in doc._.packed)


def weighs_down(doc: Doc) -> bool:
    """Whether a canner's weight is named beside a food that is canned, and no way to cook it."""
    words = norms(doc)
    weight = any(
        m.unit in POUNDS and m.said in WEIGHTS and words[m.end : m.end + 1] == ["weight"] for m in doc._.measures
    )
    if not weight or any(found.kind == "method" and found.id != PRESERVE for found in doc._.found):
        return False
    kept = (food(found.id, dishes()[found.id].dish_class).kind for found in doc._.found if found.kind == "dish")
    return any(kind in (*CANNED, "untested") for kind in kept)


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
            tuple(row.get("spread", ())),
            tuple(map(fold, row.get("unless", ()))),
            row.get("first", False),
            "patterns" in row,
            row.get("beside_dish", False),
        )
        for row in tables.read_toml(CATALOGUE)["subject"]
    }


@cache
def phrases() -> dict[str, Subject]:
    """Every phrase with its subject, those of subjects that come first before the others, longest first."""
    heard = {
        fold(phrase): subjects()[row["id"]]
        for row in tables.read_toml(CATALOGUE)["subject"]
        for phrase in row["heard_as"]
    }
    return dict(sorted(heard.items(), key=lambda item: (not item[1].first, -len(item[0]), item[0])))


def safety_subject(text: str, topic: str) -> Subject | None:
    """The subject of the longest phrase in a lower-case text that counts for a question of this topic.

    >>> safety_subject("can i water bath can asparagus at 8000 ft", "preserve").id
    'boiling_water_canning'
    >>> safety_subject("why does thawing take so long", "why") is None
    True
    """
    padded = f" {text} "
    near = sorted({at for word in text.split() for at in opening().get(word, ())})
    inside = (told()[at][1] for at in near if f" {told()[at][0]} " in padded)
    return next((subject for subject in inside if _counts(subject, topic) and not subject.barred(text)), None)


@cache
def told() -> tuple[tuple[str, Subject], ...]:
    """The phrases in their order."""
    return tuple(phrases().items())


@cache
def opening() -> dict[str, tuple[int, ...]]:
    """Where the phrases stand in their order that a word opens."""
    found: dict[str, tuple[int, ...]] = {}
    for at, (phrase, _) in enumerate(told()):
        word = phrase.split()[0]
        found[word] = (*found.get(word, ()), at)
    return found


def spread_subject(words: Sequence[str], topic: str, dish: bool = False, first: bool = False) -> Subject | None:
    """The subject of which a sentence has a word of each group, whatever stands between them.

    A question of preserving may name a dish beside it; elsewhere a dish is what the question is about.
    first: whether only subjects that come first are looked at

    >>> spread_subject("how long must i boil creek water".split(), "time").id
    'drinking_water'
    """
    said, text = frozenset(words), " ".join(words)
    for subject in subjects().values():
        looked_at = (subject.first or not first) and _is_at_home(subject, topic, dish)
        if looked_at and subject.spread_over(said) and not subject.barred(text):
            return subject
    return None


def _is_at_home(subject: Subject, topic: str, dish: bool) -> bool:
    if subject.topic == PRESERVE:
        return topic == PRESERVE or topic in subject.spread
    if subject.beside_dish:
        return topic in subject.spread
    return topic in marked("safety_apart") and not dish


def _counts(subject: Subject, topic: str) -> bool:
    if subject.within:
        return topic in subject.within
    return topic in marked("may_be_safety") or (topic == "troubleshoot" and subject.topic == PRESERVE and subject.first)
