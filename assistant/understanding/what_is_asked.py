"""Component: what a why, stage, symptom or adjustment question is about."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import cache

from spacy.language import Language
from spacy.tokens import Doc

from assistant.reading.spans import Found
from assistant.reading.text import fold
from assistant.understanding import faults
from rules import tables

STAGES = {
    "thread": ("thread", "thread stage"),
    "soft_ball": ("soft ball", "softball", "soft ball stage"),
    "firm_ball": ("firm ball", "firmball"),
    "hard_ball": ("hard ball", "hardball"),
    "soft_crack": ("soft crack",),
    "hard_crack": ("hard crack", "hardcrack"),
    "caramel": ("caramel stage", "dark caramel", "light caramel", "caramelize", "caramelise"),
}
# What of a bake is asked about where no ingredient is named; the ids are those of rules.topics.bake_adjust.
ADJUSTED = {
    "oven": ("oven",),
    "liquid": ("liquid", "liquids", "moisture"),
    "leavening": ("leavening", "leavener", "leaveners", "raising agent"),
    "foam": ("whites", "whip", "peaks"),
    "pan": ("pan", "pans", "tin", "how full"),
    "proof": ("proof", "proofing", "prove", "rise", "rises", "rising", "double", "doubles", "doubled", "doubling"),
    "time": ("baking time", "bake time"),
}
EXPLANATIONS = "lexicon/explanations.toml"
NEAR_ENOUGH = 80.0

Doc.set_extension("subject", default=None, force=True)


@Language.component(
    "kitchen_subject",
    requires=["doc._.topic", "doc._.safety", "doc._.found", "doc._.elevations"],
    assigns=["doc._.subject"],
)
def kitchen_subject(doc: Doc) -> Doc:
    """Hear the subject that belongs to the topic."""
    doc._.subject = str(doc._.safety) if doc._.safety else subject(doc, doc._.topic.id)
    return doc


def subject(doc: Doc, topic: str) -> str | None:
    """The id of what is asked about, in the catalogue of a topic; None where the text names nothing of it."""
    words, found = [token.norm_ for token in doc], doc._.found
    match topic:
        case "why":
            return explanation(" ".join(words))
        case "sugar_stage":
            return stage(" ".join(words))
        case "troubleshoot":
            return next(iter(faults.told(doc)), None)
        case "bake_adjust":
            return _first(found, "ingredient") or named(ADJUSTED, " ".join(words))
        case "order" | "liquid":
            return _first(found, "ingredient") or _first(found, "place")
        case _:
            return _first(found, "place")


def _first(found: Sequence[Found], kind: str) -> str | None:
    return next((f.id for f in found if f.kind == kind), None)


def stage(text: str) -> str | None:
    """The sugar stage that is named.

    >>> stage("what temperature is soft ball here")
    'soft_ball'
    """
    return named(STAGES, text)


def named(catalogue: Mapping[str, Sequence[str]], text: str) -> str | None:
    """The first id of a catalogue one of whose names stands in the text, word by word."""
    return next((id for id, names in catalogue.items() if any(f" {n} " in f" {text} " for n in names)), None)


def explanation(text: str) -> str | None:
    """The explanation that is asked for."""
    return nearest(text, EXPLANATIONS, "explanation")


@cache
def _phrases(path: str, key: str) -> dict[str, str]:
    rows = tables.read_toml(path).get(key, []) if tables.data_path(path).is_file() else []
    return {
        fold(phrase): row["id"] for row in rows for phrase in (*row.get("heard_as", ()), row.get("title", row["id"]))
    }


def nearest(text: str, path: str, key: str) -> str | None:
    """The row whose phrase stands in the text, the longest one; or else is nearest to it word by word."""
    phrases = _phrases(path, key)
    inside = [phrase for phrase in phrases if f" {phrase} " in f" {text} "]
    if inside:
        return phrases[max(inside, key=len)]
    from rapidfuzz import fuzz, process

    near = process.extractOne(text, list(phrases), scorer=fuzz.token_set_ratio, score_cutoff=NEAR_ENOUGH)
    return phrases[near[0]] if near else None
