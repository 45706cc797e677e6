"""Why: the explanation that was asked for, in a line, a paragraph, or with the equations.

Without an elevation it takes an example, and says so. Without a subject it takes what is usually wondered at about the
dish and the method. One explanation is imported for an answer, and one rule made of it.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cache

from rules import tables, why
from rules.book import Case, Part, Rule, rule
from rules.model import Caution, Figure, Request

EXAMPLE_M = 1524.0
ONE_LINE = 1
NEAREST = 3
ASK = Caution("note", "The figures are for the example; say your elevation and they will be for your kitchen.")


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
    if case.request.elevation_m is not None:
        return told(explain(case), case)
    example = told(explain(Case(replace(case.request, elevation_m=EXAMPLE_M))), case)
    return replace(
        example,
        headline=f"{example.headline} No elevation was given, so {case.say.elevation(EXAMPLE_M)} serves as an example.",
        figures=(Figure("example_elevation", "Example elevation", EXAMPLE_M, "m"), *example.figures),
        cautions=(*example.cautions, ASK),
    )


def told(explanation: why.Explanation, case: Case) -> Part:
    """The explanation as a part of an answer."""
    return Part(
        headline=explanation.line,
        because=explanation.line if case.request.depth <= ONE_LINE else explanation.paragraph,
        maths=" ".join(explanation.equations),
        figures=explanation.figures,
        cautions=explanation.cautions,
    )


@rule("why.nothing_fits", "common-practice")
def nothing_fits(case: Case) -> Part:
    """What is asked is not among the things explained; the nearest that are."""
    known = {row.id: row.title for row in catalogue()}
    titles = [known[name] for name in case.request.nearest or tuple(known)[:NEAREST] if name in known]
    return Part(
        headline="That is not among the things explained here yet.",
        because=f"The nearest that can be explained: {'; '.join(titles)}.",
    )
