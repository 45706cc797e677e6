"""Whether "can" is the verb of preserving: a spaCy Matcher for what stands before it, and the food that must follow."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache
from typing import Any

from spacy.matcher import Matcher
from spacy.tokens import Doc
from spacy.vocab import Vocab

from assistant.reading.tokens import norms
from rules import tables

WORDS = "lexicon/danger/can_verb.toml"
FOOD_WITHIN, AMOUNT = 4, 2


def positions(doc: Doc, foods: frozenset[int]) -> Iterator[int]:
    """Where "can" means to preserve in jars.

    foods: the tokens that belong to a food

    >>> from assistant.understanding.pipeline import read
    >>> list(positions(read("can I can beans"), frozenset({3})))
    [2]
    >>> list(positions(read("how can I cook beans"), frozenset({4})))
    []
    """
    for _, start, end in _matcher()(doc):
        if _food_follows(doc, end, foods) or _object_follows(doc, start, end):
            yield end - 1
    if len(doc) > 1 and norms(doc)[0] == "can" and _begins(doc, foods):
        yield 0


@cache
def _words() -> dict[str, list[str]]:
    return tables.read_toml(WORDS)


@cache
def _matcher() -> Matcher:
    words = _words()
    verb: dict[str, Any] = {"NORM": {"IN": ["can", "cans", "recan"]}}
    matcher = Matcher(Vocab())
    subject = {"NORM": {"IN": words["subject"]}}
    between = {"NORM": {"IN": words["between"]}, "OP": "?"}
    matcher.add("after a word", [[{"NORM": {"IN": words["before"]}}, verb]])
    matcher.add("after a subject", [[{"NORM": {"IN": words["asking"]}}, subject, between, verb]])
    return matcher


def _object_follows(doc: Doc, start: int, end: int) -> bool:
    """Whether an object stands where the food was named before: to can it, can i can them."""
    certain = norms(doc)[start] in ("to", "can", "pressure", "should", "how", "home")
    return certain and end < len(doc) and norms(doc)[end] in _words()["object"]


def _food_follows(doc: Doc, at: int, foods: frozenset[int]) -> bool:
    if at < len(doc) and norms(doc)[at] in _words()["pronouns"] and norms(doc)[at] not in _words()["object"]:
        return False
    return any(i in foods for i in range(at, min(at + FOOD_WITHIN, len(doc))))


def _begins(doc: Doc, foods: frozenset[int]) -> bool:
    """Whether a sentence that begins with "can" orders to can: can bacon at 7,000 ft; not: can bacon be frozen."""
    if norms(doc)[1] in _words()["pronouns"]:
        return False
    within = FOOD_WITHIN + (AMOUNT if doc[1].like_num else 0)
    first = next((i for i in range(1, min(within, len(doc))) if i in foods), None)
    if first is None:
        return False
    end = first
    while end < len(doc) and end in foods:
        end += 1
    return end == len(doc) or norms(doc)[end] in _words()["after_food"] or doc[end].like_num
