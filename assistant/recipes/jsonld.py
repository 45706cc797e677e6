"""schema.org/Recipe as JSON-LD -> Recipe, and back without loss.

The document is kept whole beside what was read from it. Writing goes back into that document: a line that is unchanged
leaves its bytes alone, a changed one is replaced where it stood, and keys that mean nothing to us stay.
"""

from __future__ import annotations

import html
import json
import math
import re
from collections import deque
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import zip_longest
from typing import Any

from assistant.recipes.assembled import assembled
from assistant.recipes.each import as_written, each_of
from assistant.recipes.errors import RecipeError
from assistant.recipes.lines import read_line
from assistant.recipes.steps import read_step
from assistant.recipes.yields import bare_yields, read_yields
from rules.recipe import Amount, IngredientLine, Recipe

MOST_DEEP = 40
MOST_INGREDIENTS = 2_000
MOST_STEPS = 2_000
_LD_JSON = 'script[type^="application/ld+json"]'
_STEP_KEYS = ("itemListElement", "steps", "text", "item", "description", "name")
_FACTS = {"prep": "prepTime", "cook": "cookTime", "total": "totalTime"}
_LINE_BREAK = re.compile(r"<\s*(?:br|/p|/li|/div)\b[^>]*>", re.IGNORECASE)
_ENUMERATED = re.compile(r"^\s*(?:step\s+\d{1,3}\s*[.:)\-–]?|\d{1,3}[.)](?!\d))\s*", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class _Leaf:
    """One string of the document with the way to it, and the lines it holds."""

    path: tuple[str | int, ...]
    text: str
    component: str

    @property
    def lines(self) -> tuple[str, ...]:
        """The lines in plain words: no tags, no entities, no numbering."""
        return tuple(
            line for line in (_ENUMERATED.sub("", raw).strip() for raw in _plain(self.text).splitlines()) if line
        )


def _plain(text: str) -> str:
    """Text without HTML tags and entities, its line breaks kept."""
    if "<" in text:
        from selectolax.lexbor import LexborHTMLParser

        text = LexborHTMLParser(_LINE_BREAK.sub("\n", text)).text()
    return html.unescape(text).replace("\u00a0", " ")


def _types(node: object) -> list[str]:
    kind = node.get("@type", []) if isinstance(node, dict) else []
    kinds = kind if isinstance(kind, list) else [kind]
    return [k.rsplit("/", 1)[-1].rsplit(":", 1)[-1] for k in kinds if isinstance(k, str)]


def _recipe_path(document: object, path: tuple[str | int, ...] = ()) -> tuple[str | int, ...] | None:
    """The way to the first Recipe of a document: itself, in an array, a @graph, or under another thing."""
    if len(path) > MOST_DEEP:
        return None
    if "Recipe" in _types(document):
        return path
    entries = (
        document.items() if isinstance(document, dict) else enumerate(document) if isinstance(document, list) else ()
    )
    found = (_recipe_path(value, (*path, key)) for key, value in entries if isinstance(value, dict | list))
    return next((p for p in found if p is not None), None)


def _at(document: Any, path: Sequence[str | int]) -> Any:
    for key in path:
        document = document[key]
    return document


def _loads(text: str, name: str) -> Any:
    try:
        return json.loads(text, strict=False)
    except json.JSONDecodeError as error:
        raise RecipeError(
            name,
            f"the JSON breaks off at line {error.lineno}, column {error.colno} ({error.msg[0].lower()}{error.msg[1:]})",
            "Mend that place, or save the recipe as plain text and try again",
        ) from None
    except (RecursionError, ValueError):
        raise RecipeError(
            name, "the JSON is nested too deeply or holds a number of absurd length", "Take out the recipe alone"
        ) from None


def _ingredient_leaves(node: dict[str, Any]) -> Iterator[_Leaf]:
    key = "recipeIngredient" if "recipeIngredient" in node else "ingredients"
    yield from _line_leaves(node.get(key), (key,))


def _line_leaves(value: object, path: tuple[str | int, ...]) -> Iterator[_Leaf]:
    """Every ingredient text: strings, lists of them, things with a name or text."""
    if len(path) > MOST_DEEP:
        return
    if isinstance(value, str):
        yield _Leaf(path, value, "")
    elif isinstance(value, list):
        for index, item in enumerate(value):
            yield from _line_leaves(item, (*path, index))
    elif isinstance(value, dict):
        key = next((k for k in ("name", "text") if isinstance(value.get(k), str) and value[k]), None)
        if key:
            yield _Leaf((*path, key), value[key], "")


def _step_leaves(value: object, path: tuple[str | int, ...], component: str = "") -> Iterator[_Leaf]:
    """Every step text under recipeInstructions: strings, HowToStep, HowToSection, HowToDirection, ItemList."""
    if len(path) > MOST_DEEP:
        return
    if isinstance(value, str):
        yield _Leaf(path, value, component)
    elif isinstance(value, list):
        for index, item in enumerate(value):
            yield from _step_leaves(item, (*path, index), component)
    elif isinstance(value, dict):
        if "HowToSection" in _types(value):
            component = _component(value.get("name")) or component
        key = next((k for k in _STEP_KEYS if value.get(k)), None)
        if key:
            yield from _step_leaves(value[key], (*path, key), component)


def _component(name: object) -> str:
    text = _plain(name).strip().strip(":").strip() if isinstance(name, str) else ""
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
    found = [_yield(t) for t in _yield_texts(value)]
    known = [a for a in found if a]
    best = next((a for a in known if a.unit), known[0] if known else None)
    if best and best.unit is None and isinstance(value, dict):
        unit = value.get("unitText")
        named = _yield(f"{best.line} {unit}") if isinstance(unit, str) else None
        return replace(named, line=best.line) if named else best
    return best


def _yield(text: str) -> Amount | None:
    """A yield with or without a word in front: "Makes 12 rolls", "12 rolls", "12"."""
    found = read_yields(text) or bare_yields(text) or read_yields(f"Makes {text}")
    return replace(found, line=text) if found else None


def _parts_of(lines: Sequence[str]) -> Iterator[tuple[str, str]]:
    """Ingredient lines with their sub-recipe: a line such as "For the glaze:" names those that follow."""
    component = ""
    for line, following in zip_longest(lines, lines[1:], fillvalue=""):
        if line.endswith(":") and len(line) <= 60 and following and not following.endswith(":"):
            component = _component(line)
        else:
            yield line, component


def _bounded(leaves: Iterator[_Leaf], most: int, name: str, what: str) -> list[_Leaf]:
    kept: list[_Leaf] = []
    lines = 0
    for leaf in leaves:
        kept.append(leaf)
        lines += 1 + leaf.text.count("\n")
        if lines > most:
            raise RecipeError(name, f"it lists more than {most:,} {what}", "Split it into recipes a kitchen could cook")
    return kept


def read_jsonld(text: str, *, name: str = "") -> Recipe:
    """Read a schema.org/Recipe document.

    text: JSON, with the Recipe bare, in an array, in a @graph or under another thing; name: what to call it in an error
    returns: the first Recipe in it; what could not be read stands in `unread`, and the document is kept in `jsonld`
    raises: RecipeError where it is not JSON, holds no Recipe, or is larger than any recipe is

    >>> recipe = read_jsonld('{"@type": "Recipe", "name": "Rolls", "recipeYield": "12 rolls", "prepTime": "PT1H10M"}')
    >>> recipe.title, recipe.yields.value, recipe.yields.unit, recipe.prep_min
    ('Rolls', 12.0, 'roll', 70.0)
    """
    document = _loads(text, name)
    path = _recipe_path(document)
    if path is None:
        raise RecipeError(
            name, "there is no schema.org Recipe in this JSON", 'Give the object that has "@type": "Recipe"'
        )
    return _read_node(_at(document, path), text, name)


def _read_node(node: dict[str, Any], text: str, name: str) -> Recipe:
    heard = [
        line
        for leaf in _bounded(_ingredient_leaves(node), MOST_INGREDIENTS, name, "ingredients")
        for line in leaf.lines
    ]
    read: list[IngredientLine] = []
    unread: list[str] = []
    for line, component in _parts_of(heard):
        several = each_of(line)
        reads = [read_line(told, component) for told in several]
        unread += [told for told, one in zip(several, reads, strict=True) if one is None]
        read += [replace(one, written=line) if len(several) > 1 else one for one in reads if one]
    steps = _bounded(_step_leaves(node.get("recipeInstructions"), ("recipeInstructions",)), MOST_STEPS, name, "steps")
    times = {key: _minutes(node[field]) for key, field in _FACTS.items() if node.get(field)}
    unread += [f"{_FACTS[key]}: {node[_FACTS[key]]}" for key, value in times.items() if value is None]
    yields = _yields(node.get("recipeYield", node.get("yield")))
    if yields is None:
        unread += [f"recipeYield: {t}" for t in _yield_texts(node.get("recipeYield"))]
    described = node.get("description")
    return assembled(
        title=_plain(node["name"]).strip() if isinstance(node.get("name"), str) else "",
        yields=yields,
        ingredients=read,
        steps=[(line, leaf.component) for leaf in steps for line in leaf.lines],
        notes=[line for line in _plain(described).splitlines() if line.strip()] if isinstance(described, str) else [],
        unread=unread,
        facts={key: value for key, value in times.items() if value is not None and math.isfinite(value)},
        jsonld=text,
    )


def read_page(page: str | bytes, *, name: str = "") -> Recipe:
    """Read the Recipe out of a saved HTML page.

    page: the page; its application/ld+json blocks are tried in order, and a broken one does not hide the next
    raises: RecipeError where no block holds a Recipe; it names the first fault met

    >>> read_page('<script type="application/ld+json">{"@type": "Recipe", "name": "Rolls"}</script>').title
    'Rolls'
    """
    from selectolax.lexbor import LexborHTMLParser

    fault: RecipeError | None = None
    for block in LexborHTMLParser(page).css(_LD_JSON):
        try:
            return read_jsonld(_unwrapped(block.text()), name=name)
        except RecipeError as error:
            fault = fault or error
    raise fault or RecipeError(
        name, "this page carries no recipe data (JSON-LD)", "Copy the recipe's text from the page and give me that"
    )


def _unwrapped(block: str) -> str:
    """A script's text without the comment or CDATA marks that old pages put around it."""
    text = block.strip()
    for opening, closing in (("<!--", "-->"), ("//<![CDATA[", "//]]>"), ("<![CDATA[", "]]>")):
        if text.startswith(opening):
            text = text.removeprefix(opening).removesuffix(closing).strip()
    return text


def to_jsonld(recipe: Recipe) -> dict[str, Any] | list[Any]:
    """The recipe as a schema.org document.

    returns: the document it was read from with title, ingredient lines and steps brought up to date, every other key
        as it was; or a new one for a recipe that came as plain text

    >>> text = '{"@type": "Recipe", "name": "Rolls", "x-oven": 3, "recipeIngredient": ["500 g flour"]}'
    >>> to_jsonld(read_jsonld(text)) == json.loads(text)
    True
    """
    if not recipe.jsonld:
        return _new_document(recipe)
    document = _loads(recipe.jsonld, recipe.title)
    path = _recipe_path(document) or ()
    node = _at(document, path)
    before = _read_node(node, recipe.jsonld, recipe.title)
    if recipe.title != before.title:
        node["name"] = recipe.title
    if recipe.yields != before.yields:
        node["recipeYield"] = _yield_text(recipe.yields)
    _write_times(node, recipe, before)
    _write_ingredients(node, recipe, before)
    _write_steps(node, recipe, before)
    return document


def recipe_node(document: Any) -> dict[str, Any]:
    """The Recipe inside a document that to_jsonld gave."""
    node: dict[str, Any] = _at(document, _recipe_path(document) or ())
    return node


def _write_times(node: dict[str, Any], recipe: Recipe, before: Recipe) -> None:
    for key, name in _FACTS.items():
        minutes = getattr(recipe, f"{key}_min")
        if minutes is not None and minutes != getattr(before, f"{key}_min"):
            node[name] = _duration(minutes)


def _write_ingredients(node: dict[str, Any], recipe: Recipe, before: Recipe) -> None:
    pairs = as_written(before.ingredients, recipe.ingredients)
    old, new = [was for was, _ in pairs], [becomes for _, becomes in pairs]
    if old == new and len(recipe.ingredients) == len(before.ingredients):
        return
    if len(recipe.ingredients) == len(before.ingredients) and _replaced(node, list(_ingredient_leaves(node)), old, new):
        return
    node.pop("ingredients", None)
    node["recipeIngredient"] = new


def _write_steps(node: dict[str, Any], recipe: Recipe, before: Recipe) -> None:
    old, new = [s.text for s in before.steps], [s.text for s in recipe.steps]
    if old == new:
        return
    leaves = list(_step_leaves(node.get("recipeInstructions"), ("recipeInstructions",)))
    if len(old) != len(new) or not _replaced(node, leaves, old, new):
        node["recipeInstructions"] = _instructions(recipe)


def _replaced(node: dict[str, Any], leaves: Sequence[_Leaf], old: Sequence[str], new: Sequence[str]) -> bool:
    """Put the new lines where the old ones stand; False where the old ones are not all found.

    A line of a leaf that is not the next old one is a heading among the ingredients, or was unread: it stays.
    """
    rest = deque(zip(old, new, strict=True))
    for leaf in leaves:
        lines = [(line, rest.popleft()[1] if rest and rest[0][0] == line else line) for line in leaf.lines]
        if any(was != becomes for was, becomes in lines):
            _at(node, leaf.path[:-1])[leaf.path[-1]] = _rewritten(leaf.text, lines)
    return not rest


def _rewritten(text: str, lines: Sequence[tuple[str, str]]) -> str:
    """The text with lines replaced in place; without its markup where a line does not stand in it as such."""
    at = 0
    for was, becomes in lines:
        place = text.find(was, at)
        if place < 0:
            return "\n".join(becomes for _, becomes in lines)
        text, at = text[:place] + becomes + text[place + len(was) :], place + len(becomes)
    return text


def _yield_text(yields: Amount | None) -> str | None:
    if yields is None:
        return None
    if yields.line and _yield(yields.line) == yields:
        return yields.line
    number = f"{yields.value:g}" + (f"–{yields.high:g}" if yields.high else "")
    return f"{number} {yields.unit}" if yields.unit else number


def _duration(minutes: float) -> str:
    from datetime import timedelta

    import isodate

    return str(isodate.duration_isoformat(timedelta(minutes=minutes)))


def _instructions(recipe: Recipe) -> list[dict[str, Any]]:
    """HowToSteps, gathered in HowToSections where the method names sub-recipes."""
    written: list[dict[str, Any]] = []
    for step in recipe.steps:
        entry = {"@type": "HowToStep", "text": step.text}
        if not step.component:
            written.append(entry)
        elif written and written[-1].get("name") == step.component:
            written[-1]["itemListElement"].append(entry)
        else:
            written.append({"@type": "HowToSection", "name": step.component, "itemListElement": [entry]})
    return written


def _ingredient_lines(recipe: Recipe) -> Iterator[str]:
    current = ""
    for ingredient in recipe.ingredients:
        if ingredient.component != current and ingredient.component:
            yield f"For the {ingredient.component}:"
        current = ingredient.component
        yield ingredient.line


def _new_document(recipe: Recipe) -> dict[str, Any]:
    times = {"prepTime": recipe.prep_min, "cookTime": recipe.cook_min, "totalTime": recipe.total_min}
    fields = {
        "@context": "https://schema.org",
        "@type": "Recipe",
        "name": recipe.title,
        "description": "\n".join((*recipe.notes, *recipe.unread)),
        "recipeYield": _yield_text(recipe.yields),
        **{key: _duration(minutes) for key, minutes in times.items() if minutes},
        "recipeIngredient": list(_ingredient_lines(recipe)),
        "recipeInstructions": _instructions(recipe),
    }
    return {key: value for key, value in fields.items() if value}
