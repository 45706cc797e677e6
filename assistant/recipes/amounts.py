"""Amounts of listed ingredients inside a step ("1/2 cup of the sugar") -> marks that say which line they belong to."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from assistant.reading.reader import hear
from assistant.reading.units import AMOUNTS, unit_by
from assistant.recipes.pantry import find
from assistant.recipes.steps import LONGEST
from rules.recipe import AmountMark, IngredientLine

MOST_WORDS = 4
_OF_THE = re.compile(r"\.?\s+(?:of\s+)?(?:the\s+)?(?:remaining\s+|reserved\s+|other\s+)?")
_WORDS = re.compile(r"[a-z][a-z-]*(?:\s+[a-z][a-z-]*){0,3}", re.IGNORECASE)


def amounts(text: str, component: str, ingredients: Sequence[IngredientLine]) -> Iterator[AmountMark]:
    """The amounts of listed ingredients that a step names, in order of appearance.

    component: the sub-recipe of the step; of lines that fit alike, one of the same sub-recipe is meant
    """
    text = text[:LONGEST]
    heard = hear(text, AMOUNTS)
    for measure in heard.measures:
        if measure.kind not in ("mass", "volume") or heard.words[measure.start].norm == "per":
            continue
        start, end = heard.place(measure)
        opened = _OF_THE.match(text, end)
        named = _WORDS.match(text, opened.end()) if opened else None
        line = _line(named.group(), component, ingredients) if named else None
        if line is not None:
            high = measure.high / unit_by(measure.unit).size if measure.high > measure.low else None
            yield AmountMark(start, end, measure.said, high, measure.unit, line)


def _line(words: str, component: str, ingredients: Sequence[IngredientLine]) -> int | None:
    """The line that the longest run of these words names: by the ingredient, else by the only one of its role."""
    said = words.split()
    for count in range(min(MOST_WORDS, len(said)), 0, -1):
        item = find(" ".join(said[:count]))
        if item is None or not item.name:
            continue
        same = [i for i, line in enumerate(ingredients) if line.item == item.name]
        alike = same or [i for i, line in enumerate(ingredients) if line.role == item.role]
        near = [i for i in alike if ingredients[i].component == component] or alike
        if same or len(near) == 1:
            return near[0]
    return None
