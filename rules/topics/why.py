"""Why: the explanation that was asked for, in a line, a paragraph, or with the equations.

Without an elevation it takes an example, and says so. Without a subject it takes what is usually wondered at about the
dish and the method. An explanation is a row of data/lexicon/explanations.toml and a text of the same name in
data/wording/<language>/why; what the text names is worked out by rules/explanations. A belief that was stated gets its
verdict first. Words of the trade are told as rules/explanations/glossary.py has them.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from functools import cache
from typing import Any, Literal

from rules import example, explanations, tables
from rules.book import Case, Part, Rule, rule
from rules.explanations import glossary
from rules.foods.dishes import usual_method
from rules.model import Caution, Level, Request
from rules.said import Said, Words, listed, sentences, together

ONE_LINE = 1
FOLDER = "why"
GENERAL, WATER = "general_reason", "water_boils_cooler"
IN_WATER = ("boil", "simmer")

Polarity = Literal["positive", "negative", "either"]
Claim = Literal["change", "same"]

say = sentences("topics/why")
say_of_all = sentences("why/shared")

BROKEN = "broken"
# lower than this nobody would blame the elevation [m]
BLAMED_FROM_M = 600.0
# forms that want yes or no, and those that want more than that
# ways of an ingredient, of which a reason claims nothing
OF_AMOUNT = ("more_of", "less_of")
YES_OR_NO = frozenset(("is_ok", "is_true", "can_it"))
WANTS_MORE = frozenset(("why", "what_is", "how_to", "which", "differ", "how_long", "how_much", "more", "how_hot"))
CONTRARY = {"yes": "no", "no": "yes"}


@dataclass(frozen=True, slots=True)
class Belief:
    """What cooks say, and whether it is so.

    verdict: open where the sentence itself says it, by the elevation
    polarity: whether it is stated with a no, without one, or either way
    claims: whether it says that something changes or stays the same, where a question may ask for the one or the other
    tested: whether it is judged whatever the topic, once all that it is about was said and it was put to the test
    """

    verdict: Literal["yes", "partly", "no", "open"]
    about: tuple[str, ...]
    heard_as: tuple[str, ...]
    polarity: Polarity = "positive"
    claims: Claim | None = None
    tested: bool = False


@dataclass(frozen=True, slots=True)
class Row:
    """One row of data/lexicon/explanations.toml.

    about: what has to be asked about, all of it, each with its alternatives; not_about: what rules it out
    tells_apart: whether it sets one word against another; beliefs: by their ids
    outright: whether it is told whatever the topic
    in_full: whether it is meant only where all that it is about was said
    for_a_class: whether it is what a class, a child or a board is told by, and meant wherever all that was said
    in_forms: forms of question that it answers with a yes, whatever the topic: is it hot enough, can it be done
    no_fault: whether it explains what looks like a fault and is none, such as a loaf that never reads 208 °F
    claims: whether its line says that a thing changes up high, or that it stays the same
    values, figures: names of rules/explanations; caution: how grave it is, and its sources
    """

    id: str
    title: str
    heard_as: tuple[str, ...]
    classes: tuple[str, ...]
    methods: tuple[str, ...]
    about: tuple[str, ...]
    not_about: str
    tells_apart: bool
    no_fault: bool
    outright: bool
    in_full: bool
    for_a_class: bool
    in_forms: frozenset[str]
    claims: Claim | None
    beliefs: Mapping[str, Belief]
    sources: tuple[str, ...]
    values: tuple[str, ...]
    figures: tuple[str, ...]
    caution: tuple[Level, tuple[str, ...]] | None


@cache
def catalogue() -> tuple[Row, ...]:
    """Every explanation, in order of precedence.

    >>> catalogue()[-1].title
    'Why water boils cooler up high'
    """
    return tuple(map(_row, tables.read_toml("lexicon/explanations.toml")["explanation"]))


def _row(held: dict[str, Any]) -> Row:
    lists = ("heard_as", "classes", "methods", "about", "sources", "values", "figures")
    caution = held.get("caution")
    return Row(
        beliefs={of["id"]: _belief(of) for of in held.get("belief", ())},
        id=held["id"],
        title=held.get("title", ""),
        not_about=held.get("not_about", ""),
        tells_apart=held.get("tells_apart", False),
        outright=held.get("outright", False),
        in_full=held.get("in_full", False),
        for_a_class=held.get("for_a_class", False),
        in_forms=frozenset(held.get("in_forms", ())),
        no_fault=held.get("no_fault", False),
        claims=held.get("claims"),
        caution=(caution["level"], tuple(caution["sources"])) if caution else None,
        **{name: tuple(held.get(name, ())) for name in lists},
    )


def _belief(held: dict[str, Any]) -> Belief:
    about, heard_as = tuple(held["about"]), tuple(held["heard_as"])
    polarity, claims = held.get("polarity", "positive"), held.get("claims")
    return Belief(held["verdict"], about, heard_as, polarity, claims, held.get("tested", False))


@cache
def rows() -> dict[str, Row]:
    """Every explanation by its id."""
    return {row.id: row for row in catalogue()}


def rules_for(request: Request | None) -> tuple[Rule, ...]:
    """The one rule that answers this request; every rule for None."""
    if request is None:
        return (*(explanation_rule(name) for name in sorted(rows())), nothing_fits, *glossary.every_rule())
    if words := glossary.rule_of(request.terms):
        return (words,)
    name = subject(request)
    return (explanation_rule(name) if name else nothing_fits,)


def needs(request: Request) -> tuple[str, ...]:
    """Which explanation is meant must be known where one or two may be."""
    return ("explanation",) if is_open(request) else ()


def is_open(request: Request) -> bool:
    """Whether one or two explanations may be meant, and none was named."""
    return (
        request.subject not in rows() and not request.terms and bool(request.nearest) and request.nearest != (GENERAL,)
    )


def subject(request: Request) -> str | None:
    """The explanation that is meant: the one named, else the one that fits dish and method best, else the general one.

    >>> subject(Request(topic="why", dish_class="pasta", method="boil"))
    'pasta_takes_longer'
    """
    if request.subject in rows():
        return request.subject
    fits = [((request.dish_class in row.classes) + (request.method in row.methods), row.id) for row in catalogue()]
    best = max(fit for fit, _ in fits)
    if best:
        return next(name for fit, name in fits if fit == best)
    if request.dish_class and request.method is None and usual_method(request.dish, request.dish_class) in IN_WATER:
        return WATER
    return GENERAL if request.nearest == (GENERAL,) else None


@cache
def explanation_rule(name: str) -> Rule:
    """An explanation as a rule of the book, `why.<its id>`."""
    row = rows()[name]

    def work(case: Case) -> Part:
        return part(row, case)

    work.__doc__ = f"{row.title}."
    return Rule(f"why.{name}", row.sources, work)


def part(row: Row, case: Case) -> Part:
    """The explanation at the depth that is asked for, at the asker's elevation or at an example."""
    if case.request.elevation_m is not None:
        return explained(row, case)
    of_it = explained(row, Case(replace(case.request, elevation_m=example.EXAMPLE_M)))
    return replace(
        of_it,
        headline=example.told(of_it.headline, case.request),
        figures=(example.figure(), *of_it.figures),
        cautions=(*of_it.cautions, example.ASK),
    )


def explained(row: Row, case: Case) -> Part:
    """The explanation in a kitchen: its text, filled with the values that it names, and its figures."""
    values = {name: explanations.value(name)(case) for name in row.values}

    def text(id: str) -> Said:
        return Said(f"{FOLDER}/{row.id}", id, tuple(values.items()))

    line = text("line")
    headline: Words = together(_doubted(row, case), line)
    stated = case.request.belief
    if stated and stated in row.beliefs:
        denied, who = case.request.denied, case.request.claimant
        verdict = None if is_choice(case.request) else verdict_on(row.beliefs[stated], denied=denied, who=who)
        verdict = verdict or (on_change(row, case.request) if case.request.denied and row.in_forms else None)
        headline = together(verdict, text(belief_message(stated)))
    elif (opening := on_change(row, case.request)) is not None:
        headline = together(opening, line)
    if (other := also(row, case.request)) is not None:
        headline = together(headline, line_of(other, case))
    return Part(
        headline=headline,
        because=headline if case.request.depth <= ONE_LINE else text("paragraph"),
        maths=text("equations"),
        figures=tuple(
            replace(figure, label=text(label_of(name)))
            for name in row.figures
            if (figure := explanations.figure(name)(case)) is not None
        ),
        cautions=(Caution(row.caution[0], text("caution"), row.caution[1]),) if row.caution else (),
    )


def _doubted(row: Row, case: Case) -> Words:
    """The answer to whether something is broken, or the cook at fault, where it is the elevation."""
    high = case.here.elevation_m >= BLAMED_FROM_M
    if BROKEN not in case.request.forms or row.claims == "same" or not high or row.no_fault:
        return ""
    return say("not-broken") if row.id == GENERAL else say("not-you")


def also(row: Row, request: Request) -> Row | None:
    """A second explanation that is told behind the first, where both sides of a thing were asked about."""
    two = request.nearest
    return rows()[two[1]] if len(two) == 2 and two[0] == row.id and two[1] in rows() else None


def line_of(row: Row, case: Case) -> Said:
    """The one line of an explanation."""
    return Said(f"{FOLDER}/{row.id}", "line", tuple((name, explanations.value(name)(case)) for name in row.values))


def verdict_on(belief: Belief, *, denied: bool = False, who: str | None = None) -> Said | None:
    """Whether a belief is so: yes, partly or no; of one that is open the sentence speaks for itself.

    who: whose belief it is, where it was said who is right
    denied: the contrary was asked, which has a verdict only where the belief claims that something changes or does not,
        or where it is put to the test and is not so: then the contrary is right
    """
    if belief.verdict == "open":
        return None
    if denied and belief.claims is None:
        return say_of_all("contrary") if belief.tested and belief.verdict == "no" else None
    verdict = CONTRARY.get(belief.verdict, belief.verdict) if denied else belief.verdict
    return say_of_all("verdict-on", who=who, verdict=verdict) if who else say_of_all("verdict", verdict=verdict)


def on_change(row: Row, request: Request) -> Said | None:
    """Yes or no to whether a thing changes, or stays, where the line of the explanation only says how it is."""
    settled = row.claims is not None and asked_claim(request.asked_way) is not None
    if not settled and not row.in_forms.isdisjoint(request.forms) and "is_ok" in request.forms:
        return None if request.asked_way == "either" else say_of_all("verdict", verdict="yes")
    yes_or_no = not YES_OR_NO.isdisjoint(request.forms) and WANTS_MORE.isdisjoint(request.forms)
    asked = asked_claim(request.asked_way)
    if not yes_or_no or row.claims is None or asked is None:
        return None
    return say_of_all("verdict", verdict="yes" if asked == row.claims else "no")


def is_choice(request: Request) -> bool:
    """Whether it was asked which of two ways a thing goes, which neither yes nor no answers: faster or slower."""
    held_apart = request.asked_way == "either" or "is_ok" not in request.forms
    return held_apart and "which" in request.forms and "is_true" not in request.forms


def asked_claim(way: str | None) -> Claim | None:
    """What a way of asking puts to the test: that something changes, or stays; None where it is either.

    >>> asked_claim("any"), asked_claim("longer"), asked_claim("same"), asked_claim("either")
    ('change', 'change', 'same', None)
    """
    if way in (None, "either", *OF_AMOUNT):
        return None
    return "same" if way == "same" else "change"


def belief_message(belief: str) -> str:
    """The message of a belief.

    >>> belief_message("hot_enough")
    'belief-hot-enough'
    """
    return f"belief-{belief.replace('_', '-')}"


def label_of(figure: str) -> str:
    """The message that labels a figure.

    >>> label_of("boiling_point")
    'boiling-point-label'
    """
    return f"{figure.replace('_', '-')}-label"


@rule("why.nothing_fits", "common-practice")
def nothing_fits(case: Case) -> Part:
    """What is asked is not among the things explained: what would have to be said for a reason."""
    near = [rows()[name].title for name in case.request.nearest if name in rows()]
    return Part(headline=say("nothing-fits"), because=say("nearest", titles=listed(near, "semicolons")) if near else "")
