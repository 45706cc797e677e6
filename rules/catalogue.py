"""The catalogue of questions: the rows of data/lexicon/topics.toml, which are the only list of topics."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from functools import cache
from typing import Any, Literal, get_args

from rules import tables

FILE = "lexicon/topics.toml"

# how the assistant goes about a topic; the head of the file says what each means
Mark = Literal[
    "by_method", "by_words", "passing", "slots_alone", "no_method", "in_cooker", "hot", "of_baking", "feeding",
    "of_a_dish", "same_dish", "keeps_dish", "leaning_cues", "ends_there", "giving", "by_the_way", "scaled",
    "may_be_safety", "safety_apart", "may_be_canning", "unsure", "asks_on", "leaves_refusal", "harmless",
    "may_be_syrup", "may_be_tins", "none_beside", "laid_together", "whistled", "of_a_formula", "in_form",
    "gives_verdict", "of_buying", "of_places", "one_time", "of_degrees", "by_example", "told_whole", "of_amounts",
    "unlike_a_pot",
    "of_readings", "of_service", "of_nothing", "of_a_sign", "of_a_centre", "no_why", "knows_equipment",
    "beside_the_main", "of_readings_told", "without_a_dish", "for_plan", "of_a_recipe", "by_hand",
]  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class Topic:
    """A row of the catalogue.

    needs: what must be known, words of rules.model.MISSING_WORDS, most important first; ask: how each is asked for
    turns_to: slot -> the topic that a question becomes when the slot is said by itself
    own: forms that speak for it
    forms, must, cannot: the frame, by which an utterance may be about it
    choice: what it is about, in a question back that offers two; empty where it is never offered
    fewest_questions: how many test questions there are at least
    """

    id: str
    description: str
    example: str
    needs: tuple[str, ...] = ()
    ask: Mapping[str, str] = field(default_factory=dict)
    cues: tuple[str, ...] = ()
    turns_to: Mapping[str, str] = field(default_factory=dict)
    marks: tuple[Mark, ...] = ()
    own: tuple[str, ...] = ()
    forms: tuple[str, ...] = ()
    must: tuple[str, ...] = ()
    cannot: tuple[str, ...] = ()
    choice: str = ""
    fewest_questions: int = 15


@cache
def topics() -> Mapping[str, Topic]:
    """Every topic by its id, in the order of the file.

    raises: TypeError where a row has a column that no topic has, or lacks one
    """
    rows: Iterable[dict[str, Any]] = (
        {name: tuple(value) if isinstance(value, list) else value for name, value in row.items()}
        for row in tables.read_toml(FILE)["topic"]
    )
    return {str(row["id"]): Topic(**row) for row in rows}


def marked(mark: Mark) -> frozenset[str]:
    """The topics that have a mark.

    >>> sorted(marked("by_method"))
    ['temperature', 'time']
    """
    return _by_mark()[mark]


@cache
def _by_mark() -> Mapping[Mark, frozenset[str]]:
    every = topics().values()
    return {mark: frozenset(topic.id for topic in every if mark in topic.marks) for mark in get_args(Mark)}
