"""Component: what kind of question it is, by the cues of the catalogue and a learned table of words."""

from __future__ import annotations

import gzip
import json
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from functools import cache
from itertools import combinations, pairwise
from typing import Any

from spacy.language import Language
from spacy.tokens import Doc

from assistant.reading.spans import Found
from assistant.reading.text import fold
from assistant.reading.tokens import norms
from assistant.understanding import syrups, tins
from rules import tables
from rules.catalogue import marked, topics
from rules.foods.dishes import dishes
from rules.kept import kept

WEIGHTS = "tables/topic_weights.json.gz"
CONCEPTS = "lexicon/concepts.toml"
CUE_WEIGHT = 1.0
# nearer together than this, two topics are as likely
UNSURE = 0.3
# what is asked of a syrup with its temperature is how far to boil it
STAGE, SWEET = "sugar_stage", "candy"
# a batter that goes from one tin into another is asked of a bake
BAKE = "bake_adjust"
# whether the test in cold water holds is asked of the reasons
REASON = "why"
NOTHING_KNOWN = "out_of_scope"
NOTHING_SAID = "help"
# what tells that the fat of a sweet is asked about, and not its syrup
OF_FAT = (
    frozenset(("frying", "fry", "fried", "fryer")),
    frozenset(("oil", "fat", "ghee", "fryer", "temp", "temperature")),
)
# who is looked for in a town is no food
TRADES = "trades"
START, END = "^", "$"
BEGINS = "begins:"
BEGINNINGS = (3, 4, 5)
CONCEPT = "has:concept:"
# features that do not show that a word is known, unless it belongs to a concept
UNSPECIFIC = (START, "has:", BEGINS)

Doc.set_extension("topic", default=None, force=True)


@dataclass(frozen=True, slots=True)
class Topic:
    """A topic with how far it is ahead of the next one, and all scores, best first."""

    id: str
    margin: float
    scores: tuple[tuple[str, float], ...]
    fitting: frozenset[str] = frozenset()

    @property
    def choices(self) -> tuple[str, ...]:
        """The two that are as likely, where both can be offered; else none."""
        two = [topic for topic, _ in self.scores[:2] if topic in self.fitting and topics()[topic].choice]
        return tuple(two) if len(two) == 2 and self.margin < UNSURE else ()


@dataclass(frozen=True, slots=True)
class Weights:
    """What was learned from data/utterances/train: feature -> the topics it speaks for or against.

    examples: fingerprint of the training examples, so that a stale table shows
    """

    topics: tuple[str, ...]
    bias: tuple[float, ...]
    features: dict[str, dict[str, float]]
    examples: str


@Language.component(
    "kitchen_topic",
    requires=["doc._.numbers", "doc._.measures", "doc._.found", "doc._.elevations", "doc._.fitting"],
    assigns=["doc._.topic"],
)
def kitchen_topic(doc: Doc) -> Doc:
    """Decide the topic."""
    doc._.topic = decide(doc)
    if TRADES in doc._.signs and not doc._.measures:
        doc._.topic = Topic(NOTHING_KNOWN, CUE_WEIGHT, ())
        return doc
    if doc._.topic.id == STAGE and any(f.kind == "dish" and dishes()[f.id].dish_class == SWEET for f in doc._.found):
        doc._.topic = replace(doc._.topic, margin=max(doc._.topic.margin, CUE_WEIGHT))
    if doc._.topic.id == STAGE and OF_FAT[1].intersection(norms(doc)) and OF_FAT[0].intersection(norms(doc)):
        doc._.topic = replace(doc._.topic, id="temperature", margin=max(doc._.topic.margin, CUE_WEIGHT))
    if doc._.topic.id == STAGE and syrups.judges_the_test(doc):
        doc._.topic = replace(doc._.topic, id=REASON, margin=max(doc._.topic.margin, CUE_WEIGHT))
    elif doc._.topic.id in marked("may_be_syrup") and syrups.boiled_to(doc):
        doc._.topic = replace(doc._.topic, id=STAGE, margin=max(doc._.topic.margin, CUE_WEIGHT))
    elif doc._.topic.id in marked("may_be_tins") and len(tins.named(doc.text)) == 2:
        doc._.topic = replace(doc._.topic, id=BAKE, margin=max(doc._.topic.margin, CUE_WEIGHT))
    return doc


def decide(doc: Doc, learned: Weights | None = None) -> Topic:
    """The topic of a text that has been through the components before.

    learned: the table, where not the one in data
    """
    if not any(word.isalnum() for word in norms(doc)):
        return Topic(NOTHING_SAID, 0.0, ())
    learned, present = learned or weights(), features(doc)
    telling = (f for f in present if f.startswith(CONCEPT) or not f.startswith(UNSPECIFIC))
    if not any(feature in learned.features for feature in telling):
        return Topic(NOTHING_KNOWN, 0.0, ())
    scores = dict(zip(learned.topics, learned.bias, strict=True))
    for feature in present:
        for topic, weight in learned.features.get(feature, {}).items():
            scores[topic] += weight
    for topic, offset in cue_scores(doc).items():
        scores[topic] = scores.get(topic, 0.0) + offset
    fitting: frozenset[str] = doc._.fitting
    ranked = sorted(scores.items(), key=lambda item: (item[0] not in fitting, -item[1], item[0]))
    margin = ranked[0][1] - ranked[1][1]
    if is_own(doc, ranked[0][0], ranked[1][0]):
        margin = max(margin, UNSURE)
    return Topic(ranked[0][0], margin, tuple(ranked), fitting)


def is_own(doc: Doc, first: str, second: str) -> bool:
    """Whether the form of the question belongs to the first of two topics alone: nobody need ask which is meant."""
    forms = {form.id for form in doc._.forms}
    return not forms.isdisjoint(topics()[first].own) and forms.isdisjoint(topics()[second].own)


@kept
def weights() -> Weights:
    """The learned table; an empty one where it has not been made yet."""
    path = tables.data_path(WEIGHTS)
    if not path.is_file():
        return Weights(tuple(topics()), (0.0,) * len(topics()), {}, "")
    return unpacked(json.loads(gzip.decompress(path.read_bytes())))


def unpacked(made: dict[str, Any]) -> Weights:
    """A learned table as it is worked with."""
    learned = tuple(made["topics"])
    named = {f: {learned[int(i)]: w for i, w in row.items()} for f, row in made["features"].items()}
    return Weights(learned, tuple(made["bias"]), named, made["examples"])


@cache
def cues() -> tuple[tuple[str, str], ...]:
    """Cue and topic, every one."""
    return tuple((f" {fold(cue)} ", topic.id) for topic in topics().values() for cue in topic.cues)


def cue_scores(doc: Doc) -> dict[str, float]:
    """Topic -> weight of the cue or form that speaks for it; several of a topic count once."""
    text = f" {' '.join(norms(doc))} "
    forms = {form.id for form in doc._.forms}
    told = [topic for cue, topic in cues() if cue in text]
    return dict.fromkeys(
        [*told, *(topic.id for topic in topics().values() if forms.intersection(topic.own))], CUE_WEIGHT
    )


def features(doc: Doc) -> tuple[str, ...]:
    """What the learned table looks at: words, pairs of words, how words begin, concepts and pairs of them.

    What was heard stands in place of its words. The words of a measure speak for no concept: 20 quarts is no canning.
    """
    line = (START, *outline(doc), END)
    words = [word for word in line[1:-1] if not word.startswith("<")]
    pairs = [f"{a} {b}" for a, b in pairwise(line)]
    begins = [BEGINS + word[:n] for word in words for n in BEGINNINGS if len(word) > n]
    measured = {i for measure in doc._.measures for i in range(measure.start, measure.end)}
    meant = {c for i, word in enumerate(norms(doc)) if i not in measured for c in concepts_of(word)}
    meant |= {c for found in doc._.found if found.kind == "dish" for c in concepts_of_dish(found.id)}
    spoken = sorted(meant)
    together = [f"{CONCEPT}{a} {b}" for a, b in combinations(spoken, 2)]
    spoken = [CONCEPT + concept for concept in spoken]
    return tuple(dict.fromkeys([*line[1:-1], *pairs, *begins, *spoken, *together, *flags(doc)]))


@cache
def concepts() -> dict[str, tuple[str, ...]]:
    """Word -> the concepts it stands for."""
    found: dict[str, tuple[str, ...]] = {}
    for row in tables.read_toml(CONCEPTS)["concept"]:
        for word in row.get("words", ()):
            found[word] = (*found.get(word, ()), row["id"])
    return found


def concepts_of(word: str) -> tuple[str, ...]:
    """The concepts of a word or of its singular.

    >>> concepts_of("barometers")
    ('instrument',)
    """
    return concepts().get(word) or concepts().get(word.removesuffix("s"), ())


@cache
def concepts_of_dish(name: str) -> tuple[str, ...]:
    """The concepts of a dish, by its class.

    >>> concepts_of_dish("muffins")
    ('baked',)
    """
    dish_class = dishes()[name].dish_class
    return tuple(row["id"] for row in tables.read_toml(CONCEPTS)["concept"] if dish_class in row.get("classes", ()))


def outline(doc: Doc) -> list[str]:
    """The text with names for what was heard: how long to <method> <dish> at <elevation>.

    Words of symptoms, equipment and ingredients stay; they tell topics apart.
    """
    names: dict[int, tuple[int, str]] = {}
    for number in doc._.numbers:
        names[number.start] = (number.end, "<number>")
    for measure in doc._.measures:
        names[measure.start] = (measure.end, f"<{measure.kind}>")
    for found in doc._.found:
        if found.kind in ("dish", "method"):
            names.setdefault(found.start, (found.end, f"<{found.kind}>"))
    for elevation in doc._.elevations:
        names[elevation.start] = (elevation.end, "<elevation>")
    words: list[str] = []
    at = 0
    while at < len(doc):
        end, name = names.get(at, (at + 1, norms(doc)[at]))
        if name != "<dish>" or words[-1:] != ["<dish>"]:
            words.append(name)
        at = max(end, at + 1)
    return [word for word in words if word.startswith("<") or word[0].isalnum()]


def flags(doc: Doc) -> Iterable[str]:
    """Features of the whole text: classes of dishes, methods, kinds of measures, kinds of phrases."""
    found: Sequence[Found] = doc._.found
    yield from sorted({f"has:class:{dishes()[f.id].dish_class}" for f in found if f.kind == "dish"})
    yield from sorted({f"has:method:{f.id}" for f in found if f.kind == "method"})
    yield from sorted({f"has:{f.kind}" for f in found})
    yield from sorted({f"has:{m.kind}" for m in doc._.measures})
    if doc._.elevations:
        yield "has:elevation"
    yield from sorted({f"has:form:{form.id}" for form in doc._.forms})
