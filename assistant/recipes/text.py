"""A recipe as people paste it -> Recipe.

Each line of the text ends up somewhere: in the title, the yields, an ingredient, a step, a note, or unread.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field
from itertools import zip_longest

from assistant.recipes.assembled import assembled
from assistant.recipes.facts import bare_fact, fact, is_time
from assistant.recipes.lines import read_line
from assistant.recipes.looks import (
    SENTENCE_END,
    Section,
    as_ingredient,
    heading,
    inline_part,
    like_step,
    measured,
    part_opened,
    run_together,
)
from assistant.recipes.steps import vessels
from assistant.recipes.yields import bare_yields, read_yields, told_yields
from rules.recipe import Amount, IngredientLine, Recipe

_FLAGS = re.IGNORECASE
_BULLET = re.compile(r"^\s*(?:[•*·●▪◦▢☐□✓–—]\s*|-\s+|\[\s?[x ]?\]\s*)+", _FLAGS)
_ENUMERATED = re.compile(r"^\s*(?:step\s+\d{1,3}\s*[.:)\-–]?|\(?\d{1,3}[.):](?!\d)|\(\d{1,3}\))\s*", _FLAGS)
_MARKUP = re.compile(r"^\s*#{1,6}\s+")
_RULE = re.compile(r"^[\s|:=_*~-]{3,}$")
_EMPHASIS = re.compile(r"\*\*|__")
_ARTICLE = re.compile(r"^(?:the|our|my|an?)\b(?!.*[.!?]\s+\S)", _FLAGS)


@dataclass
class _Reading:
    """What has been read so far, line by line."""

    title: str = ""
    yields: Amount | None = None
    ingredients: list[IngredientLine] = field(default_factory=list)
    steps: list[tuple[str, str]] = field(default_factory=list)
    notes: list[str] = field(default_factory=list)
    unread: list[str] = field(default_factory=list)
    facts: dict[str, float] = field(default_factory=dict)
    section: Section = "head"
    headed: bool = False
    component: str = ""
    introducing: bool = False

    def open_part(self, name: str) -> None:
        """Begin a sub-recipe; one that was opened and held nothing is kept as unread."""
        used = {i.component for i in self.ingredients} | {component for _, component in self.steps}
        if self.component and self.component not in used:
            self.unread.append(self.component)
        self.component = name


def _bare(line: str) -> str:
    """A line without the marks of a list or of markup."""
    line = _EMPHASIS.sub("", _MARKUP.sub("", line))
    return _BULLET.sub("", line).strip().strip("|").strip()


def _introduction(lines: Sequence[str]) -> int:
    """How many lines stand before a heading for the ingredients and only lead up to it.

    None do where a recipe begins among them: one that lists two ingredients and gives its headings later.
    """
    at = next((i for i, line in enumerate(lines) if (h := heading(line)) and h[0] == "ingredients" and not h[1]), 0)
    listed = sum(measured(line, known=True) and len(line.split()) < 12 for line in lines[:at])
    return at if listed < 2 else 0


def _take(line: str, following: str | None, so_far: _Reading) -> None:
    """Put one line where it belongs."""
    if (opened := heading(line)) and not is_time(opened[1]):
        so_far.section, rest = opened
        so_far.headed = True
        so_far.open_part("")
        if (said := re.search(r"\((.+?)\)\s*:?\s*$", line)) and not rest:
            _take_aside(said[1], so_far)
        if so_far.section == "notes" and not rest:
            so_far.notes.append(line)
        if rest:
            _take_rest(rest, line, so_far)
        return
    called = not measured(line) and (not like_step(line) or (_ARTICLE.match(line) and len(line.split()) < 12))
    if not so_far.title and so_far.section == "head" and called:
        so_far.title = line.strip(" #*")
        so_far.yields = next(filter(None, map(read_yields, re.split(r"[,(;|–—]\s*", line)[1:])), None)
        return
    if so_far.section != "notes" and so_far.yields is None and (amount := read_yields(line)):
        so_far.yields = amount
        return
    if so_far.section in ("head", "ingredients") and (facts := fact(line)) and (bare_fact(line) or not like_step(line)):
        so_far.facts |= facts
        so_far.notes.append(line)
        return
    if so_far.introducing and so_far.yields is None and (amount := bare_yields(line)):
        so_far.yields = amount
    elif so_far.section == "notes" or so_far.introducing:
        so_far.notes.append(line)
    elif (named := inline_part(line)) and so_far.section != "steps":
        so_far.open_part(named[0])
        so_far.section = "ingredients"
        so_far.ingredients += filter(None, (read_line(part, named[0]) for part in named[1]))
    elif part := part_opened(line, following, so_far.section):
        so_far.open_part(part)
        so_far.section = "ingredients" if so_far.section == "head" else so_far.section
    elif so_far.section == "steps":
        _take_step(line, so_far)
    elif so_far.yields is None and not so_far.ingredients and (amount := bare_yields(line)):
        so_far.yields = amount
    elif not so_far.ingredients and vessels(line) and not measured(line, known=True) and not like_step(line):
        so_far.notes.append(line)
    else:
        for part_line in run_together(line):
            _take_early(part_line, so_far)


def _take_aside(text: str, so_far: _Reading) -> None:
    """What a heading says in brackets: "Ingredients (makes 2 loaves)"."""
    so_far.yields = so_far.yields or read_yields(text)
    if so_far.yields is None or so_far.yields.line != text:
        so_far.notes.append(text)


def _take_rest(rest: str, line: str, so_far: _Reading) -> None:
    """What stands on the line of a heading itself: "Ingredients: flour, water", "Note: keeps a week"."""
    if so_far.section == "notes":
        so_far.notes.append(line)
    elif so_far.section == "steps":
        _take_step(rest, so_far)
    else:
        for part in run_together(rest):
            _take_early(part, so_far)


def _take_early(line: str, so_far: _Reading) -> None:
    """A line before the method has begun: an ingredient, the first step, or introduction."""
    numbered = _ENUMERATED.match(line)
    if so_far.ingredients and (numbered or like_step(line)) and not (so_far.headed and not like_step(line)):
        so_far.section = "steps"
        so_far.open_part("")
        _take_step(line, so_far)
        return
    ingredient = as_ingredient(line, so_far.component, so_far.section == "ingredients")
    if ingredient:
        so_far.section = "ingredients"
        so_far.ingredients.append(ingredient)
    elif (so_far.section == "head" and len(line.split()) >= 4) or (so_far.ingredients and SENTENCE_END.search(line)):
        so_far.notes.append(line)
    else:
        so_far.unread.append(line)


def _take_step(line: str, so_far: _Reading) -> None:
    text = _ENUMERATED.sub("", line).strip()
    if text:
        so_far.steps.append((text, so_far.component))


def _lines(text: str) -> list[str]:
    plain = (_bare(line) for line in text.replace("\u00a0", " ").splitlines() if not _RULE.match(line))
    return [line for line in plain if line]


def read_text(text: str) -> Recipe:
    """Read a plain-text recipe.

    text: any text whatsoever, headings or none
    returns: the Recipe; every line is in its title, yields, ingredients, steps, notes or unread

    >>> recipe = read_text("Plain rolls\\nMakes 12 rolls\\n500 g bread flour\\n340 g water\\nMix and knead 10 minutes.")
    >>> recipe.title, recipe.yields.value, len(recipe.ingredients), recipe.steps[0].times[0].what
    ('Plain rolls', 12.0, 2, 'knead')
    """
    lines = _lines(text)
    so_far, introduction = _Reading(), _introduction(lines)
    for index, (line, following) in enumerate(zip_longest(lines, lines[1:])):
        so_far.introducing = index < introduction
        _take(line, following, so_far)
    so_far.open_part("")
    so_far.yields = so_far.yields or told_yields(so_far.steps)
    if not so_far.ingredients and not so_far.steps:
        so_far.steps = [(note, "") for note in so_far.notes if like_step(note)]
        so_far.notes = [note for note in so_far.notes if not like_step(note)]
    return assembled(
        title=so_far.title,
        yields=so_far.yields,
        ingredients=so_far.ingredients,
        steps=so_far.steps,
        notes=so_far.notes,
        unread=so_far.unread,
        facts=so_far.facts,
    )
