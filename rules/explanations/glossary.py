"""Words of the trade: what each means, a rule a word.

A word is a row of data/lexicon/glossary.toml and a message of the same name in why/glossary.ftl of data/wording. The
message may name values of rules/explanations; where they are of a place and none was said, an example is taken.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from functools import cache, lru_cache
from typing import Any

from rules import example, explanations, tables
from rules.book import Case, Part, Rule
from rules.said import Said, together

FILE = "lexicon/glossary.toml"
WORDING = "why/glossary"


@dataclass(frozen=True, slots=True)
class Term:
    """A word of the trade.

    heard_as: further words for it; values: names of rules/explanations that its message names
    a_figure: whether cooks who ask what it is mostly want its figure here, so that only `meaning` asks for the word
    """

    id: str
    title: str
    sources: tuple[str, ...]
    heard_as: tuple[str, ...] = ()
    values: tuple[str, ...] = ()
    a_figure: bool = False


@cache
def terms() -> dict[str, Term]:
    """Every word by its id."""
    rows: Iterable[dict[str, Any]] = (
        {name: tuple(held) if isinstance(held, list) else held for name, held in row.items()}
        for row in tables.read_toml(FILE)["term"]
    )
    return {str(row["id"]): Term(**row) for row in rows}


def rule_of(asked: Iterable[str]) -> Rule | None:
    """The rule that tells some words; those that are not known are passed over."""
    known = tuple(name for name in asked if name in terms())
    return words_rule(known) if known else None


def every_rule() -> tuple[Rule, ...]:
    """The rules of all words, each by itself."""
    return tuple(words_rule((name,)) for name in sorted(terms()))


# words are set against one another in any number of ways
@lru_cache(maxsize=256)
def words_rule(names: tuple[str, ...]) -> Rule:
    """One word as a rule of the book, `why.word.<its id>`; several that are set against one another as one rule."""
    asked = tuple(terms()[name] for name in names)

    def work(case: Case) -> Part:
        return told(asked, case)

    work.__doc__ = f"What is meant by {' and '.join(term.title for term in asked)}."
    sources = dict.fromkeys(source for term in asked for source in term.sources)
    return Rule(f"why.word.{'.'.join(names)}", tuple(sources), work)


def told(asked: tuple[Term, ...], case: Case) -> Part:
    """What the words mean, one after the other; where a figure of the place is in it and none was said, an example."""
    exemplary = case.request.elevation_m is None and any(term.values for term in asked)
    here = Case(replace(case.request, elevation_m=example.EXAMPLE_M)) if exemplary else case
    text = together(*(meaning(term, here) for term in asked))
    text = example.told(text) if exemplary else text
    return Part(headline=text, because=text)


def meaning(term: Term, case: Case) -> Said:
    """What a word means, filled with the values that its message names."""
    values = tuple((name, explanations.value(name)(case)) for name in term.values)
    return Said(WORDING, message_of(term.id), values)


def message_of(term: str) -> str:
    """The message of a word.

    >>> message_of("gel_point")
    'gel-point'
    """
    return term.replace("_", "-")
