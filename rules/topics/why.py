"""Why: the explanation that was asked for, in a line, a paragraph, or with the equations.

Without an elevation it takes an example, and says so. Without a subject it takes what is usually wondered at about the
dish and the method. One explanation is imported for an answer, and one rule made of it.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from functools import cache

from rules import tables, why
from rules.book import Part, Rule, rule
from rules.case import Case
from rules.model import Caution, Figure, Request

EXAMPLE_M = 1524.0
ONE_LINE = 1
NEAREST = 3
LONGEST_TEXT = 500
DULL = frozenset(
    [
        "a",
        "an",
        "and",
        "as",
        "at",
        "be",
        "by",
        "do",
        "does",
        "for",
        "here",
        "how",
        "in",
        "is",
        "it",
        "my",
        "of",
        "on",
        "or",
        "the",
        "to",
        "up",
        "what",
        "when",
        "why",
        "with",
        "you",
    ]
)

NEEDS: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Row:
    """One row of data/lexicon/explanations.toml."""

    id: str
    title: str
    heard_as: tuple[str, ...]
    classes: tuple[str, ...]
    methods: tuple[str, ...]


@cache
def catalogue() -> tuple[Row, ...]:
    """Every explanation, in order of precedence.

    >>> catalogue()[-1].title
    'Why water boils cooler up high'
    """
    return tuple(
        Row(r["id"], r["title"], tuple(r["heard_as"]), tuple(r.get("classes", ())), tuple(r.get("methods", ())))
        for r in tables.read_toml("lexicon/explanations.toml")["explanation"]
    )


def rules_for(request: Request | None) -> tuple[Rule, ...]:
    """The one rule that answers this request; every rule for None."""
    if request is None:
        return (*(explanation_rule(name) for name in why.names()), nothing_fits)
    name = subject(request)
    return (explanation_rule(name) if name else nothing_fits,)


def subject(request: Request) -> str | None:
    """The explanation that is meant: the one named, else the one that fits dish and method best.

    >>> subject(Request(topic="why", dish_class="pasta", method="boil"))
    'pasta_takes_longer'
    """
    if request.subject in why.names():
        return request.subject
    fits = [((request.dish_class in row.classes) + (request.method in row.methods), row.id) for row in catalogue()]
    best = max(fit for fit, _ in fits)
    return next(name for fit, name in fits if fit == best) if best else None


@cache
def explanation_rule(name: str) -> Rule:
    """An explanation as a rule of the book, `why.<its id>`."""
    module = why.module(name)

    def work(case: Case) -> Part:
        return part(module.explain, case)

    work.__doc__ = f"{module.TITLE}."
    return Rule(f"why.{name}", module.SOURCES, work)


def part(explain: why.Explain, case: Case) -> Part:
    """The explanation at the depth that is asked for, at the asker's elevation or at an example."""
    given = case.request.elevation_m is not None
    told = explain(case if given else Case(replace(case.request, elevation_m=EXAMPLE_M)))
    example = case.say.elevation(EXAMPLE_M)
    return Part(
        headline=told.line if given else f"{told.line} No elevation was given, so {example} serves as an example.",
        because=told.line if case.request.depth <= ONE_LINE else told.paragraph,
        maths=" ".join(told.equations),
        figures=told.figures
        if given
        else (Figure("example_elevation", "Example elevation", EXAMPLE_M, "m"), *told.figures),
        cautions=told.cautions if given else (*told.cautions, ASK),
    )


ASK = Caution("note", "The figures are for the example; say your elevation and they will be for your kitchen.")


@rule("why.nothing_fits", "common-practice")
def nothing_fits(case: Case) -> Part:
    """What is asked is not among the things explained; the nearest that are."""
    titles = [row.title for row in nearest(case.request.text)]
    return Part(
        headline="That is not among the things explained here yet.",
        because=f"The nearest that can be explained: {'; '.join(titles)}.",
    )


def nearest(text: str) -> tuple[Row, ...]:
    """The rows that share most words with the text, in order of precedence where they share as many."""
    said = words(text[:LONGEST_TEXT])
    ranked = sorted(catalogue(), key=lambda row: -len(said & words(" ".join((row.title, *row.heard_as)))))
    return tuple(ranked[:NEAREST])


def words(text: str) -> set[str]:
    """The words of a text that tell something."""
    return set(re.findall(r"[a-z]+", text.casefold())) - DULL
