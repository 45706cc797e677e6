"""How much a recipe makes, in a line that says so."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from functools import cache

from assistant.recipes.lines import any_of, figure_at, words
from rules.recipe import Amount

LONGEST_YIELD = 80
_FLAGS = re.IGNORECASE


@cache
def _yields() -> re.Pattern[str]:
    about = r"(?:about\s+|approximately\s+|approx\.?\s+)?"
    return re.compile(rf"(?P<lead>{any_of('yields', 'lead')})\s*:?\s*{about}", _FLAGS)


def read_yields(line: str) -> Amount | None:
    """How much a recipe makes: "Makes about 24 cookies", "Serves 6 to 8".

    returns: the amount with its unit in the singular as the line has it, or None

    >>> read_yields("Yield: 2 loaves"), read_yields("Serves 6 to 8").high
    (Amount(value=2.0, unit='loaf', high=None, line='Yield: 2 loaves'), 8.0)
    """
    line = line.strip()
    found = _yields().match(line)
    figure = figure_at(line, found.end(), spelled=True) if found else None
    if not found or not figure:
        return None
    low, high, end = figure
    lead, rest = found["lead"].lower(), line[end:].strip()
    if len(rest) > LONGEST_YIELD or (lead == "for" and not _is_for(rest)):
        return None
    said = [_singular(word) for word in re.findall(r"[a-zé-]+", rest.lower())[:4]]
    unit = next((word for word in said if word in _yield_units()), None)
    if unit is None and lead in ("serves", "servings", "portions", "feeds", "for"):
        unit = "serving"
    if unit is None and line[found.end() : end].lower() in ("a", "an"):
        return None
    return Amount(low, unit, high, line)


def _is_for(rest: str) -> bool:
    """Whether "for" with a figure and these words says for how many: for 6, for four bowls."""
    said = [_singular(word) for word in re.findall(r"[a-zé-]+", rest.lower())]
    return not rest.strip(" .") or said[0:1] == ["person"] or (len(said) == 1 and said[0] in _yield_units())


@cache
def _yield_units() -> frozenset[str]:
    return frozenset(_singular(word) for word in words("yields", "units"))


def _singular(word: str) -> str:
    if word.endswith("ves"):
        return word[:-3] + "f"
    if word.endswith("ies") and word not in ("cookies", "brownies", "pies", "smoothies"):
        return word[:-3] + "y"
    if word == "people":
        return "person"
    return word[:-1] if word.endswith("s") and len(word) > 2 else word


def bare_yields(line: str) -> Amount | None:
    """A yield with no word in front: "1 loaf", "One 9-inch pie, serves 8"."""
    named = line.split(",")[0].strip(" .")
    found = read_yields(f"Makes {named}")
    bare = found and found.unit in _bare_yield_units() and _singular(named.split()[-1].lower()) == found.unit
    return replace(found, line=line) if found and bare else None


@cache
def _bare_yield_units() -> frozenset[str]:
    return frozenset(_singular(word) for word in words("yields", "bare"))


def told_yields(steps: Sequence[tuple[str, str]]) -> Amount | None:
    """How much a recipe makes where its last step says so: "Bake 12 minutes. Makes 4 dozen."."""
    sentences = re.split(r"(?<=[.!])\s+", steps[-1][0]) if steps else []
    found = (read_yields(s) or bare_yields(s) for s in sentences if s[:5].lower() not in ("make ", "for t"))
    return next((amount for amount in found if amount and (amount.unit or amount.value >= 12)), None)
