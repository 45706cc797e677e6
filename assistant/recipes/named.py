"""The ingredients that steps name with their amounts, where a recipe lists none: "Beat 175 g butter with 3 eggs"."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from functools import cache

from assistant.recipes.lines import Measure, any_of, measure_at, read_line, words
from assistant.recipes.pantry import find
from assistant.recipes.steps import LONGEST, vessels
from rules import tables
from rules.recipe import IngredientLine

MOST_UNKNOWN_WORDS, MOST_CUPS = 3, 60.0
_FLAGS = re.IGNORECASE
_START = re.compile(
    r"(?<![\w.,/°-])(?:(?:finely\s+|grated\s+)*(?:juice|zest|rind)\s+of\s+)?(?=\d|[½¼¾⅐-⅞]|(?:an?|one|two|three|four|five|six|seven|eight"
    r"|nine|ten|twelve|half|quarter|pinch|dash)\b)",
    _FLAGS,
)
# what was measured before, or what a figure is no amount of
_AGAIN = re.compile(
    r"\b(?:the|those|that|these|your|remaining|reserved|other|first|last|gas|mark|step)\s+$",
    _FLAGS,
)
_MADE = re.compile(r"\b(?:into|makes?|yields?|serves|for|of)\s+$", _FLAGS)
_OF = re.compile(r"(?:(?<=[a-z])\.)?\s*(?:\([^()]{0,60}\)\s*)?(?:of\s+)?", _FLAGS)
_OF_THE = re.compile(r"(?:the|it|them|this|these|each|more|that|your)\b", _FLAGS)
_WORDS = re.compile(r"[^\W\d_][\w'-]*(?:,?\s+[^\W\d_][\w'-]*){0,5}")


def named(steps: Sequence[tuple[str, str]]) -> list[IngredientLine]:
    """The ingredients of steps, in order. steps: (text, component)

    >>> [line.line for line in named([("Beat 175 g soft butter with 3 eggs, then 50 g of the sugar.", "")])]
    ['175 g soft butter', '3 eggs']
    """
    return [line for text, component in steps for line in _in_step(text[:LONGEST], component)]


def _in_step(text: str, component: str) -> Iterator[IngredientLine]:
    at = 0
    for start in _START.finditer(text):
        again = not start[0] and _AGAIN.search(text[max(0, start.start() - 12) : start.start()])
        if start.start() < at or again:
            continue
        measure = measure_at(text, start.end(), spelled=True)
        made = measure and not measure.unit and _MADE.search(text[max(0, start.start() - 12) : start.start()])
        end = _named_until(text, measure, of_fruit=bool(start[0])) if measure and not made else None
        line = read_line(text[start.start() : end].strip(" ,"), component) if end else None
        if end and line and line.amount is not None:
            at = end
            yield line


def _named_until(text: str, measure: Measure, *, of_fruit: bool) -> int | None:
    """Where the name behind a measure ends; None where it measures no ingredient."""
    opened = _OF.match(text, measure.end)
    begin = opened.end() if opened else measure.end
    if _OF_THE.match(text, begin) or (measure.unit and measure.unit.name == "cup" and measure.low > MOST_CUPS):
        return None
    found = _WORDS.match(text, begin)
    if not found:
        return None
    ends = [m.end() for m in re.finditer(r"[\w'-]+(?=,?\s|$)", found[0])]
    for end in reversed(ends):
        phrase = found[0][:end]
        item = None if "," in phrase else find(phrase)
        if item is not None and not _stops().search(phrase):
            return begin + end
    if of_fruit and ends:
        return begin + ends[0]
    if measure.unit is None or measure.unit.kind not in ("mass", "volume", "count"):
        return None
    stop = _stops().search(found[0])
    phrase = found[0][: stop.start() if stop else len(found[0])].split(",")[0].rstrip()
    told = phrase.lower().split()
    spelled = not text[measure.start].isdigit() and "of" not in text[measure.end : begin]
    if spelled or not told or len(told) > MOST_UNKNOWN_WORDS or vessels(phrase) or not _nouns().isdisjoint(told):
        return None
    return begin + len(phrase)


@cache
def _stops() -> re.Pattern[str]:
    """Where the name of an ingredient ends in a sentence."""
    verbs = sorted((verb for verb in words("steps", "verbs") if find(verb) is None), key=len, reverse=True)
    told = "|".join(map(re.escape, verbs))
    return re.compile(rf"\s+(?:{any_of('lines', 'goes_on')}|(?:{told})(?!\w))", _FLAGS)


@cache
def _nouns() -> frozenset[str]:
    """What is measured in a kitchen and is no ingredient: dough, tin."""
    return frozenset(tables.read_toml("lexicon/recipe_talk.toml")["no_ingredient"]) | {
        word for name in words("vessels", "names") for word in name.split()
    }
