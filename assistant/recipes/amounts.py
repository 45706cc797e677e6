"""Amounts of listed ingredients inside a step ("1/2 cup of the sugar") -> marks that say which line they belong to."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from assistant.reading.reader import hear
from assistant.reading.units import AMOUNTS, unit_by
from assistant.recipes.pantry import find
from assistant.recipes.steps import LONGEST
from rules.baking.batch import amount_of
from rules.baking.rounding import in_unit
from rules.recipe import AmountMark, IngredientLine
from rules.recipes.phrases import stems

MOST_WORDS = 4
# Roles by whose name a step calls an ingredient of another: "the flour" is the bread flour, "the water" no sherry.
CALLED_BY_ROLE = ("flour", "sugar", "fat", "egg", "leavening", "yeast")
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
        told = (measure.said, measure.unit)
        line = _line(named.group(), component, ingredients, told) if named else None
        if line is not None:
            high = measure.high / unit_by(measure.unit).size if measure.high > measure.low else None
            yield AmountMark(start, end, measure.said, high, measure.unit, line)


def _line(words: str, component: str, ingredients: Sequence[IngredientLine], told: tuple[float, str]) -> int | None:
    """The line that the longest run of these words names: by the ingredient, else by the only one of its role.

    told: the amount with its unit; of lines of one ingredient the one that has it is meant, and none that has less
    """
    said = words.split()
    for count in range(min(MOST_WORDS, len(said)), 0, -1):
        item = find(" ".join(said[:count]))
        if item is None or not item.name:
            continue
        same = [i for i, line in enumerate(ingredients) if line.item == item.name]
        alike = same or [i for i, line in enumerate(ingredients) if line.role == item.role in CALLED_BY_ROLE]
        exact = [i for i in alike if _amount_in(ingredients[i], told[1]) == told[0]]
        enough = [i for i in alike if (_amount_in(ingredients[i], told[1]) or told[0]) >= told[0]]
        near = [i for i in exact or enough if ingredients[i].component == component] or exact or enough
        if near and (same or len(near) == 1):
            return near[0]
    return _called_short(said, ingredients, told)


def _called_short(said: Sequence[str], ingredients: Sequence[IngredientLine], told: tuple[float, str]) -> int | None:
    """The one line whose name ends in these words, "the broth" of a chicken broth, and that has so much of it."""
    for count in range(min(MOST_WORDS, len(said)), 0, -1):
        run = stems(" ".join(said[:count]))
        alike = [
            i
            for i, line in enumerate(ingredients)
            if run and run[-1:] == stems(line.item)[-1:] and set(run) <= set(stems(line.line))
        ]
        if len(alike) == 1 and (_amount_in(ingredients[alike[0]], told[1]) or 0.0) >= told[0]:
            return alike[0]
    return None


def _amount_in(line: IngredientLine, unit: str) -> float | None:
    """The amount of a line in the unit of a step; None where the two cannot be compared."""
    amount = amount_of(line) if line.amount_high is None else line.amount_high
    return None if amount is None else in_unit(amount, line.unit, unit)
