"""What every written form of a converted recipe shows, in words and in order; the forms only lay it out."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import groupby

from assistant.replies.one_line import clean
from assistant.replies.quantities import Say
from assistant.replies.recipe.worded import in_words
from assistant.replies.recipe.words import added, formula, head, opening, part_title, summary
from assistant.replies.wording import cited
from rules.baking.change import Change, adds, ingredient, step
from rules.baking.rounding import number
from rules.model import Units
from rules.recipes.convert import Converted
from rules.recipes.lines import LineTo
from rules.recipes.sheet import stands_after
from rules.recipes.steps import StepTo

# Signs that would drive a terminal, or turn the reading direction, rather than be read.
_WEIGHED = re.compile(r"\d\s*(?:g|kg|grams?)\b", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Row:
    """A line of the recipe: as it was and as it is now. grams: its weight now, "" where not known or said already.

    why: the reasons of what was changed in it, each once
    """

    was: str
    now: str
    changed: bool
    grams: str = ""
    why: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Group:
    """The rows of one sub-recipe; title "" for the only or unnamed one. first: the number of its first row."""

    title: str
    rows: tuple[Row, ...]
    first: int = 1


@dataclass(frozen=True, slots=True)
class Told:
    """What changes, or stays, in a few words each, and the one reason for all of them."""

    heads: tuple[str, ...]
    because: str


@dataclass(frozen=True, slots=True)
class View:
    """A converted recipe, ready to be laid out."""

    title: str
    stops: tuple[str, ...]
    summary: tuple[str, ...]
    there: str
    here: str
    ingredients: tuple[Group, ...]
    formula: tuple[str, ...]
    steps: tuple[Group, ...]
    changes: tuple[Told, ...]
    kept: tuple[Told, ...]
    cautions: tuple[tuple[str, str], ...]
    unread: tuple[str, ...]
    notes: tuple[str, ...]
    sources: tuple[str, ...]


def view(converted: Converted, units: Units = "us") -> View:
    """A conversion in words. units: which system stands first."""
    say = Say(units)
    converted = in_words(converted, units)
    recipe = converted.recipe
    moved = [c for c in converted.changes if c.way != "same"]
    rows = [
        (to.line.component, _ingredient(to, _why(moved, ingredient(n)))) for n, to in enumerate(converted.ingredients)
    ]
    new = [Row("", added(c), True, why=(c.because,)) for c in moved if adds(c)]
    if new and rows:
        last = stands_after(recipe)
        rows[last + 1 : last + 1] = [(rows[last][0], row) for row in new]
    steps = [(one.step.component, _step(one, _why(moved, step(n)))) for n, one in enumerate(converted.steps)]
    return View(
        title=clean(recipe.title) or "Recipe",
        stops=tuple(c.text for c in converted.cautions if c.level == "stop"),
        summary=summary(converted, say),
        there=say.elevation(converted.from_elevation_m),
        here=say.elevation(converted.to_elevation_m),
        ingredients=tuple(_groups(rows)),
        formula=formula(converted),
        steps=tuple(_groups(steps)),
        changes=tuple(_told(converted, moved)),
        kept=tuple(_told(converted, [c for c in converted.changes if c.way == "same"])),
        cautions=tuple((c.level, c.text) for c in converted.cautions if c.level != "stop"),
        unread=tuple(map(clean, converted.unread)),
        notes=tuple(map(clean, converted.plain.notes)),
        sources=cited(_sources(converted)),
    )


def _ingredient(to: LineTo, why: tuple[str, ...]) -> Row:
    weighed = to.mass_g is None or _WEIGHED.search(to.text)
    grams = "" if weighed else f"{number(to.mass_g or 0, 1)} g"
    return Row(clean(to.line.line), clean(to.text), to.changed, grams, why)


def _step(one: StepTo, why: tuple[str, ...]) -> Row:
    return Row(clean(one.step.text), clean(one.text), one.text != one.step.text, why=why)


def _why(changes: Iterable[Change], place: str) -> tuple[str, ...]:
    """The reasons of the changes at a place of the recipe."""
    return tuple(dict.fromkeys(change.because for change in changes if change.at == place))


def _groups(rows: Iterable[tuple[str, Row]]) -> Iterator[Group]:
    first = 1
    for name, members in groupby(rows, key=lambda row: row[0]):
        found = tuple(row for _, row in members)
        yield Group(part_title(clean(name)), found, first)
        first += len(found)


def _told(converted: Converted, changes: Iterable[Change]) -> Iterator[Told]:
    """The changes with one reason for those that share it, in the order in which each reason first comes."""
    heads: dict[str, list[str]] = {}
    for change in changes:
        heads.setdefault(change.because, []).append(head(converted, change))
    for because, found in heads.items():
        heads_once = tuple(dict.fromkeys(map(clean, found)))
        yield Told((opening(heads_once[0]), *heads_once[1:]), because)


def _sources(converted: Converted) -> Iterator[str]:
    for change in converted.changes:
        yield from change.sources
    for caution in converted.cautions:
        yield from caution.sources
