"""The Recipe of schema.org, from whatever syntax it came: its lines, times and yields -> Recipe.

A node is a dict of properties, as JSON-LD has them and as microdata is brought into.
"""

from __future__ import annotations

import math
import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import zip_longest
from typing import Any

from assistant.recipes.assembled import assembled
from assistant.recipes.each import each_of
from assistant.recipes.errors import RecipeError
from assistant.recipes.headed import headed
from assistant.recipes.html_tree import plain
from assistant.recipes.lines import read_line
from assistant.recipes.listing import run_together
from assistant.recipes.looks import measured, names_part
from assistant.recipes.steps import read_step
from assistant.recipes.torn_lines import rejoined
from assistant.recipes.yields import bare_yields, read_yields
from rules.baking.part_names import named
from rules.recipe import Amount, IngredientLine, Recipe

MOST_DEEP = 40
MOST_WORDS_OF_HEADING = 5
MOST_INGREDIENTS = 2_000
MOST_STEPS = 2_000
MOST_CHARACTERS = 200_000
TIMES = {"prep": "prepTime", "cook": "cookTime", "total": "totalTime"}
_FOR = re.compile(r"for\s+(?!(?:serving|garnish|dusting|frying|greasing|brushing)\b)", re.IGNORECASE)
_STEP_KEYS = ("itemListElement", "steps", "step", "recipeInstructions", "text", "item", "description", "name")
_BLOCK_END = re.compile(r"<\s*(?:br|/p|/li|/div)\b[^>]*>", re.IGNORECASE)
# the other choice for the line before: "OR 1 stick margarine"
_OTHERWISE = re.compile(r"or:?\s+(?=[\d½¼¾⅓⅔⅛])", re.IGNORECASE)
_ENUMERATED = re.compile(r"^\s*(?:step\s+\d{1,3}\s*[.:)\-–]?|\d{1,3}[.)](?!\d))\s*", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Leaf:
    """One string of a node with the way to it, and the lines it holds. is_step: whether it is part of the method."""

    path: tuple[str | int, ...]
    text: str
    component: str = ""
    is_step: bool = False

    @property
    def lines(self) -> tuple[str, ...]:
        """The lines in plain words: no tags, no entities, no numbering, no break inside a sentence of the method."""
        text = plain(_BLOCK_END.sub("\n\n", self.text))
        lines = rejoined(text) if self.is_step else text.splitlines()
        return tuple(line for line in (_ENUMERATED.sub("", raw).strip() for raw in lines) if line)


def types(node: object) -> list[str]:
    """The types a node says it is of, without their vocabulary."""
    kind = node.get("@type", []) if isinstance(node, dict) else []
    kinds = kind if isinstance(kind, list) else [kind]
    return [k.strip().rstrip("/").rsplit("/", 1)[-1].rsplit(":", 1)[-1] for k in kinds if isinstance(k, str)]


def ingredient_leaves(node: dict[str, Any]) -> Iterator[Leaf]:
    """The texts of the ingredients."""
    key = "recipeIngredient" if "recipeIngredient" in node else "ingredients"
    yield from _line_leaves(node.get(key), (key,))


def _line_leaves(value: object, path: tuple[str | int, ...]) -> Iterator[Leaf]:
    """Every ingredient text: strings, lists of them, things with a name or text."""
    if len(path) > MOST_DEEP:
        return
    if isinstance(value, str):
        yield Leaf(path, value)
    elif isinstance(value, list):
        for index, item in enumerate(value):
            yield from _line_leaves(item, (*path, index))
    elif isinstance(value, dict):
        key = next((k for k in ("name", "text") if isinstance(value.get(k), str) and value[k]), None)
        if key:
            yield Leaf((*path, key), value[key])


def step_leaves(node: dict[str, Any]) -> Iterator[Leaf]:
    """The texts of the method: strings, HowToStep, HowToSection, HowToDirection, ItemList."""
    yield from _steps_in(node.get("recipeInstructions"), ("recipeInstructions",))


def _steps_in(value: object, path: tuple[str | int, ...], component: str = "") -> Iterator[Leaf]:
    if len(path) > MOST_DEEP:
        return
    if isinstance(value, str):
        yield Leaf(path, value, component, is_step=True)
    elif isinstance(value, list):
        for index, item in enumerate(value):
            yield from _steps_in(item, (*path, index), component)
    elif isinstance(value, dict):
        if "HowToSection" in types(value):
            component = _component(value.get("name")) or component
        key = next((k for k in _STEP_KEYS if value.get(k)), None)
        if key:
            yield from _steps_in(value[key], (*path, key), component)


def fullness(node: dict[str, Any]) -> tuple[int, int]:
    """How much of a recipe a node has: of ingredients and method how many, and how many texts in them."""
    ingredients, steps = sum(1 for _ in ingredient_leaves(node)), sum(1 for _ in step_leaves(node))
    return (ingredients > 0) + (steps > 0), ingredients + steps


def _component(name: object) -> str:
    text = plain(name).strip().strip(":").strip() if isinstance(name, str) else ""
    return re.sub(r"^(?:for\s+)?(?:the\s+)?", "", text, flags=re.IGNORECASE).lower()


def _minutes(value: Any) -> float | None:
    """An ISO 8601 duration in minutes, or a time in words ("20 min"); None for anything else."""
    import isodate

    try:
        found = isodate.parse_duration(value.strip().upper(), as_timedelta_if_possible=True)
        return float(found.total_seconds() / 60)
    except (AttributeError, TypeError, ValueError, OverflowError, ArithmeticError):
        times = read_step(value).times if isinstance(value, str) else ()
        return times[0].low_min if times else None


def _yield_texts(value: object) -> list[str]:
    values = value if isinstance(value, list) else [value]
    texts = [v.get("value", "") if isinstance(v, dict) else v for v in values]
    return [
        str(t).strip() for t in texts if isinstance(t, str | int | float) and not isinstance(t, bool) and str(t).strip()
    ]


def _yields(value: object) -> Amount | None:
    """recipeYield in any of its forms: 12, "12", "12 rolls", ["12", "12 rolls"], a QuantitativeValue."""
    found = [yield_of(t) for t in _yield_texts(value)]
    known = [a for a in found if a]
    best = next((a for a in known if a.unit), known[0] if known else None)
    if best and best.unit is None and isinstance(value, dict):
        unit = value.get("unitText")
        named = yield_of(f"{best.line} {unit}") if isinstance(unit, str) else None
        return replace(named, line=best.line) if named else best
    return best


def yield_of(text: str) -> Amount | None:
    """A yield with or without a word in front: "Makes 12 rolls", "12 rolls", "12"."""
    found = read_yields(text) or bare_yields(text) or read_yields(f"Makes {text}")
    return replace(found, line=text) if found else None


def _parts_of(lines: Sequence[str]) -> Iterator[tuple[str, str]]:
    """Ingredient lines with their sub-recipe: a line such as "For the glaze:" names those that follow."""
    component = ""
    for line, following in zip_longest(lines, lines[1:], fillvalue=""):
        signed = line.endswith(":") and len(line) <= 60 and following and not following.endswith(":")
        if signed or _stands_over(line, following):
            component = _component(line)
        else:
            yield line, component


def _stands_over(line: str, following: str) -> bool:
    """Whether a line without a sign is a heading: "GLAZE", "For the filling" over what is measured."""
    told = len(line.split()) <= MOST_WORDS_OF_HEADING and not re.search(r"[\d,()]", line)
    if not told or measured(line) or not measured(following):
        return False
    return names_part(line) or bool(_FOR.match(line)) or (line.isupper() and named(line) is not None)


def _paragraphs(described: object) -> list[str]:
    """The lines of a description that hold anything."""
    text = plain(_BLOCK_END.sub("\n", described)) if isinstance(described, str) else ""
    return [line for line in text.splitlines() if line.strip()]


def _bounded(leaves: Iterator[Leaf], most: int, name: str, what: str) -> list[Leaf]:
    kept: list[Leaf] = []
    lines = characters = 0
    for leaf in leaves:
        kept.append(leaf)
        lines += 1 + leaf.text.count("\n")
        characters += len(leaf.text)
        if lines > most:
            raise RecipeError(name, f"it lists more than {most:,} {what}", "Split it into recipes a kitchen could cook")
    if characters > MOST_CHARACTERS:
        raise RecipeError(name, f"its {what} are far longer than a recipe", "Give one recipe at a time")
    return kept


def read_node(node: dict[str, Any], text: str, name: str) -> Recipe:
    """The Recipe that a node describes; text: the document it stands in, which is kept; name: for an error."""
    heard = [
        line for leaf in _bounded(ingredient_leaves(node), MOST_INGREDIENTS, name, "ingredients") for line in leaf.lines
    ]
    heard = run_together(heard[0]) if len(heard) == 1 else heard
    read: list[IngredientLine] = []
    unread: list[str] = []
    others = [line for line in heard if _OTHERWISE.match(line)]
    for line, component in _parts_of([line for line in heard if line not in others]):
        several = each_of(line)
        reads = [read_line(told, component) for told in several]
        unread += [told for told, one in zip(several, reads, strict=True) if one is None]
        read += [replace(one, written=line) if len(several) > 1 else one for one in reads if one]
    steps = _bounded(step_leaves(node), MOST_STEPS, name, "steps")
    times = {key: _minutes(node[field]) for key, field in TIMES.items() if node.get(field)}
    unread += [f"{TIMES[key]}: {node[TIMES[key]]}" for key, value in times.items() if value is None]
    yields = _yields(node.get("recipeYield", node.get("yield")))
    if yields is None:
        unread += [f"recipeYield: {t}" for t in _yield_texts(node.get("recipeYield"))]
    told, unnamed = headed([(line, leaf.component) for leaf in steps for line in leaf.lines])
    described = node.get("description")
    return assembled(
        title=plain(node["name"]).strip() if isinstance(node.get("name"), str) else "",
        yields=yields,
        ingredients=read,
        steps=told,
        notes=[*_paragraphs(described), *others, *unnamed],
        unread=unread,
        facts={key: value for key, value in times.items() if value is not None and math.isfinite(value)},
        jsonld=text,
    )
