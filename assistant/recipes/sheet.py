"""A recipe as a list of lines that can be added to, put right and read out: what a conversation works on."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from itertools import groupby


@dataclass(frozen=True, slots=True)
class Entry:
    """A line of a recipe. part: the sub-recipe it belongs to ("topping"), "" for the first or only one."""

    line: str
    part: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Sheet:
    """A recipe line by line.

    makes: the line that tells how much it makes; part: the sub-recipe that the next ingredient belongs to
    """

    title: str = ""
    makes: str = ""
    ingredients: tuple[Entry, ...] = ()
    steps: tuple[Entry, ...] = ()
    notes: tuple[str, ...] = ()
    part: str = ""

    @property
    def count(self) -> int:
        """How many lines were told, the yield among them; the title is none."""
        return len(self.ingredients) + len(self.steps) + bool(self.makes)

    @property
    def text(self) -> str:
        """The recipe as the reader of recipes takes it, under headings.

        >>> Sheet(title="Rolls", ingredients=(Entry("500 g flour"),), steps=(Entry("Bake at 200 C."),)).text
        'Rolls\\n\\nIngredients\\n500 g flour\\n\\nMethod\\n1. Bake at 200 C.'
        """
        head = [self.title, *([self.makes] if self.makes else [])] if self.title else []
        steps = [replace(step, line=f"{i}. {step.line}") for i, step in enumerate(self.steps, 1)]
        blocks = ["\n".join(head)] if head else []
        # without a title above it, what it makes would be taken for one
        makes = (self.makes,) if self.makes and not self.title else ()
        blocks += ["\n".join(("Ingredients", *makes, *_in_parts(self.ingredients)))] if self.ingredients else []
        blocks += ["\n".join(("Method", *_in_parts(steps)))] if steps else []
        blocks += ["\n".join(("Notes", *self.notes))] if self.notes else []
        return "\n\n".join(blocks)

    @property
    def parts(self) -> tuple[str, ...]:
        """The names of the sub-recipes, in order."""
        return tuple(dict.fromkeys(entry.part for entry in self.ingredients))

    def of(self, part: str) -> Sheet:
        """The sub-recipe alone."""
        ingredients, steps = (tuple(e for e in own if e.part == part) for own in (self.ingredients, self.steps))
        return replace(self, ingredients=ingredients, steps=steps, notes=())


def _in_parts(entries: Iterable[Entry]) -> list[str]:
    lines: list[str] = []
    for part, members in groupby(entries, key=lambda entry: entry.part):
        lines += [*([f"For the {part}:"] if part else []), *(entry.line for entry in members)]
    return lines


def sheet_of(recipe: str) -> Sheet:
    """The lines of a recipe that was pasted.

    raises: RecipeError where it cannot be read
    """
    from assistant.recipes.read import read

    found = read(recipe, name="the recipe")
    return Sheet(
        title=found.title,
        makes=found.yields.line if found.yields else "",
        ingredients=tuple(Entry(line.line, line.component) for line in found.ingredients),
        steps=tuple(Entry(step.text, step.component) for step in found.steps),
        notes=(*found.notes, *found.unread),
    )
