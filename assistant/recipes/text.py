"""A recipe as people paste it -> Recipe.

Each line of the text ends up somewhere: in the title, the yields, an ingredient, a step, a note, or unread.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field, replace
from itertools import zip_longest

from assistant.recipes.assembled import assembled
from assistant.recipes.corrected import corrected
from assistant.recipes.each import each_of
from assistant.recipes.facts import bare_fact, fact, is_time
from assistant.recipes.lines import read_line, words
from assistant.recipes.listing import begins_measured, run_together
from assistant.recipes.looks import (
    SENTENCE_END,
    Section,
    as_ingredient,
    heading,
    inline_part,
    is_afterword,
    is_done,
    is_subheading,
    is_title,
    like_step,
    measured,
    part_of_heading,
    part_opened,
)
from assistant.recipes.named import named
from assistant.recipes.pasting.chats import speakers_dropped
from assistant.recipes.pasting.columns import side_by_side
from assistant.recipes.pasting.marks import Line, bared, lines_of, numbered, unmarked
from assistant.recipes.pasting.running import apart, title_in
from assistant.recipes.pasting.scanned import mended
from assistant.recipes.pasting.tables import rows_written
from assistant.recipes.pasting.wrapped import joined
from assistant.recipes.steps import vessels
from assistant.recipes.yields import bare_yields, read_yields, told_yields
from rules.recipe import Amount, IngredientLine, Recipe

LONGEST_INTRODUCTION, LONGEST_LISTED, FEWEST_TWICE = 12, 4, 3
_ASIDE = re.compile(r"\((.+?)\)\s*:?\s*$")
_BESIDE = re.compile(r"\s*[|•·]\s*|\s{3,}")


@dataclass
class _Reading:
    """What has been read so far, line by line. filled: the sub-recipes that hold anything"""

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
    filled: set[str] = field(default_factory=set)
    introducing: bool = False
    first: bool = True

    def open_part(self, name: str) -> None:
        """Begin a sub-recipe; one that was opened and held nothing is kept as unread."""
        if self.component and self.component not in self.filled:
            self.unread.append(self.component)
        self.component = name

    def list_line(self, line: IngredientLine) -> None:
        """Take an ingredient."""
        self.section = "ingredients"
        self.ingredients.append(line)
        self.filled.add(line.component)

    def add_step(self, text: str) -> None:
        """Take a step."""
        self.section = "steps"
        self.steps.append((text, self.component))
        self.filled.add(self.component)


def _introduction(lines: Sequence[Line]) -> int:
    """How many lines stand before a heading for the ingredients and only lead up to it.

    None do where a recipe begins among them: one that lists two ingredients and gives its headings later.
    """
    headings = ((i, heading(line.text)) for i, line in enumerate(lines))
    at = next((i for i, opened in headings if opened and opened[0] == "ingredients" and not opened[1]), 0)
    listed = sum(
        measured(line.text, known=True) and len(line.text.split()) < LONGEST_INTRODUCTION for line in lines[:at]
    )
    return at if listed < 2 else 0


def _take(line: Line, following: Line | None, so_far: _Reading) -> None:
    """Put one line where it belongs."""
    text = line.text
    if line.mark in ("note", "step", "title"):
        _take_marked(line, so_far)
    elif (opened := heading(text)) and not is_time(opened[1]) and not _lists_on(opened, following):
        _take_heading(text, opened, so_far)
    elif not so_far.title and so_far.section == "head" and is_title(line, following, first=so_far.first):
        so_far.title = text.strip(" #*")
        so_far.facts |= fact(text)
        pieces = re.split(r"[,()\[;|–—]\s*|\s-\s|\s{3,}", text)[1:]
        told = filter(None, (read_yields(piece) or bare_yields(piece) for piece in pieces))
        so_far.yields = so_far.yields or next(told, None)
    elif not _take_frame(text, so_far):
        _take_matter(line, following, so_far)


def _take_marked(line: Line, so_far: _Reading) -> None:
    """A line that is known for what it is."""
    if line.mark == "step" and so_far.yields is None and (amount := read_yields(line.text)):
        so_far.yields = amount
    elif line.mark == "step":
        so_far.open_part("" if so_far.section != "steps" else so_far.component)
        so_far.add_step(line.text)
    elif line.mark == "title" and not so_far.title:
        so_far.title = line.text
    else:
        so_far.title = so_far.title or title_in(line.text)
        so_far.notes.append(line.text)


def _lists_on(opened: tuple[Section, str], following: Line | None) -> bool:
    """Whether a heading of steps stands over ingredients, and so names a part: "To assemble"."""
    return (
        opened[0] == "steps" and not opened[1] and following is not None and not following.apart
        and following.mark != "number" and begins_measured(following.text) and not like_step(following.text)
    )  # fmt: skip


def _take_heading(line: str, opened: tuple[Section, str], so_far: _Reading) -> None:
    section, rest = opened
    if section == "notes" and so_far.section == "head" and not rest:
        # notes that stand before the ingredients do not end the head
        so_far.notes.append(line)
        return
    so_far.section, so_far.headed = section, True
    so_far.open_part(part_of_heading(line))
    if (said := _ASIDE.search(line)) and not rest:
        _take_aside(said[1], so_far)
    if so_far.section == "notes" and not rest:
        so_far.notes.append(line)
    if rest:
        _take_rest(rest, line, so_far)


def _take_frame(text: str, so_far: _Reading) -> bool:
    """Take what is said of the recipe as a whole, its yield and its times; False for any other line."""
    if so_far.section != "notes" and so_far.yields is None and (amount := read_yields(text)):
        said, *beside = _BESIDE.split(text)
        told = beside and all(read_yields(piece) or fact(piece, loose=True) or not measured(piece) for piece in beside)
        so_far.yields = read_yields(said) if told else amount
        for piece in beside if told else ():
            so_far.facts |= fact(piece, loose=True)
            so_far.notes.append(piece)
        return True
    loose = not so_far.ingredients and so_far.section == "head"
    facts = fact(text, loose=loose) if so_far.section in ("head", "ingredients") else {}
    if facts and (bare_fact(text, loose=loose) or not like_step(text)):
        so_far.facts |= facts
        so_far.notes.append(text)
        so_far.yields = so_far.yields or next(filter(None, map(read_yields, _BESIDE.split(text)[1:])), None)
    return bool(facts) and so_far.notes[-1:] == [text]


def _take_matter(line: Line, following: Line | None, so_far: _Reading) -> None:
    """An ingredient, a step, the heading of a part, or a note."""
    text = line.text
    if so_far.introducing and so_far.yields is None and (amount := bare_yields(text)):
        so_far.yields = amount
    elif so_far.section == "notes" or so_far.introducing:
        so_far.notes.append(text)
    elif (named := inline_part(text)) and (so_far.section != "steps" or line.apart):
        so_far.open_part(named[0])
        _list_all(named[1], so_far)
    elif part := part_opened(line, following, so_far.section):
        _open(so_far.component if part in words("headings", "no_parts") else part, text, following, so_far)
    elif so_far.section == "steps":
        _take_late(line, following, so_far)
    elif so_far.ingredients and is_subheading(line, following) and following and like_step(following.text):
        so_far.open_part("")
        so_far.section = "steps"
        so_far.notes.append(text)
    elif so_far.yields is None and not so_far.ingredients and (amount := bare_yields(text)):
        so_far.yields = amount
    elif not so_far.ingredients and vessels(text) and not measured(text, known=True) and not like_step(text):
        so_far.notes.append(text)
    else:
        listed = run_together(text)
        for part_line in listed:
            _take_early(replace(line, text=part_line, mark="" if len(listed) > 1 else line.mark), so_far)


def _open(part: str, text: str, following: Line | None, so_far: _Reading) -> None:
    so_far.open_part(part)
    if so_far.section == "head" or (following and begins_measured(following.text) and not like_step(following.text)):
        so_far.section = "ingredients"
    if said := _ASIDE.search(text):
        so_far.notes.append(said[1])


def _list_all(lines: Iterable[str], so_far: _Reading) -> None:
    """Take the lines of a list, headings of parts among them."""
    for text in lines:
        if text.endswith(":") and (part := part_opened(Line(text), Line(text), "ingredients")):
            so_far.open_part(part)
        elif like_step(text) or not begins_measured(text):
            so_far.steps.append((text, so_far.component))
        elif read := read_line(text, so_far.component):
            so_far.list_line(read)
        else:
            so_far.unread.append(text)


def _take_late(line: Line, following: Line | None, so_far: _Reading) -> None:
    """A line behind the first step: a step, a heading among the steps, or what is said when all is done."""
    text = line.text
    if is_afterword(text):
        so_far.notes.append(text)
    elif is_subheading(line, following):
        part = part_of_heading(text)
        known = bool(part) and part in so_far.filled
        so_far.open_part(part if known else "")
        so_far.notes += [] if known else [text]
    else:
        so_far.add_step(text)


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
        so_far.add_step(unmarked(rest).text or rest)
    else:
        for part in run_together(rest):
            _take_early(Line(part), so_far)


def _take_early(line: Line, so_far: _Reading) -> None:
    """A line before the method has begun: an ingredient, the first step, or introduction."""
    text, done = line.text, like_step(line.text)
    counted = line.mark == "number"
    begun = (so_far.ingredients and (counted or done) and not (so_far.headed and not done)) or (counted and done)
    if begun and not (counted and not done and begins_measured(text) and not so_far.steps):
        so_far.open_part("")
        so_far.add_step(text)
        return
    lines = each_of(text)
    reads = [as_ingredient(one, so_far.component, so_far.section == "ingredients") for one in lines]
    if all(reads):
        for read in filter(None, reads):
            so_far.list_line(replace(read, written=text) if len(lines) > 1 else read)
    elif (so_far.section == "head" and len(text.split()) >= LONGEST_LISTED) or (
        so_far.ingredients and SENTENCE_END.search(text)
    ):
        so_far.notes.append(text)
    else:
        so_far.unread.append(text)


def _once(so_far: _Reading) -> list[IngredientLine]:
    """The ingredients, those of a list that was pasted twice or that stands in percent and in weights once.

    What is left out is kept as a note.
    """
    lines = so_far.ingredients
    half = len(lines) // 2
    if half > 1 and [line.line for line in lines[:half]] == [line.line for line in lines[half:]]:
        return lines[:half]
    weighed = {line.item.lower() for line in lines if line.unit and line.unit != "percent"}
    parts = [line for line in lines if line.unit == "percent" and line.mass_g is None]
    twice = [line for line in parts if line.item.lower() in weighed]
    if len(twice) < FEWEST_TWICE or len(twice) * 2 <= len(parts):
        return lines
    so_far.notes += [line.line for line in twice]
    return [line for line in lines if line not in twice]


def _laid_out(text: str) -> list[Line]:
    """The lines of a text as they were meant."""
    lines = list(lines_of(corrected(mended(side_by_side(text.replace("\u00a0", " "))))))
    rows = rows_written(speakers_dropped(lines))
    return apart(joined(numbered(bared(rows))))


def read_text(text: str) -> Recipe:
    """Read a plain-text recipe.

    text: any text whatsoever, headings or none
    returns: the Recipe; every line is in its title, yields, ingredients, steps, notes or unread

    >>> recipe = read_text("Plain rolls\\nMakes 12 rolls\\n500 g bread flour\\n340 g water\\nMix and knead 10 minutes.")
    >>> recipe.title, recipe.yields.value, len(recipe.ingredients), recipe.steps[0].times[0].what
    ('Plain rolls', 12.0, 2, 'knead')
    """
    lines = _laid_out(text)
    so_far, introduction = _Reading(), _introduction(lines)
    for index, (line, following) in enumerate(zip_longest(lines, lines[1:])):
        so_far.introducing = index < introduction
        _take(line, following, so_far)
        so_far.first = False
    so_far.open_part("")
    so_far.yields = so_far.yields or told_yields(so_far.steps)
    if not so_far.ingredients and not so_far.steps:
        so_far.steps = [(note, "") for note in so_far.notes if like_step(note)]
        so_far.notes = [note for note in so_far.notes if not like_step(note)]
    if not so_far.ingredients and not any(is_done(text) for text, _ in so_far.steps):
        so_far.notes += [f"{part}: {text}" if part else text for text, part in so_far.steps]
        so_far.steps = []
    listed = {line.item for line in so_far.ingredients}
    spoken = not listed or any(line.mark == "said" for line in lines)
    also = [line for line in named(so_far.steps) if line.item not in listed] if spoken else []
    return assembled(
        title=so_far.title,
        yields=so_far.yields,
        ingredients=[*_once(so_far), *also],
        steps=so_far.steps,
        notes=so_far.notes,
        unread=so_far.unread,
        facts=so_far.facts,
    )
