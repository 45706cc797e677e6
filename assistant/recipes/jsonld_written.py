"""A Recipe -> schema.org JSON-LD: the document it came from brought up to date, or a new one.

A line that is unchanged leaves its bytes alone, a changed one is replaced where it stood, and keys that mean nothing to
us stay.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Iterator, Sequence
from typing import Any

from assistant.recipes import lenient_json
from assistant.recipes.each import as_written
from assistant.recipes.jsonld import at, fullest
from assistant.recipes.schema_org import TIMES, Leaf, ingredient_leaves, read_node, step_leaves, yield_of
from rules.recipe import Amount, Recipe


def to_jsonld(recipe: Recipe) -> dict[str, Any] | list[Any]:
    """The recipe as a schema.org document.

    returns: the document it was read from with title, ingredient lines and steps brought up to date, every other key
        as it was; or a new one for a recipe that came as plain text

    >>> import json
    >>> from assistant.recipes.jsonld import read_jsonld
    >>> text = '{"@type": "Recipe", "name": "Rolls", "x-oven": 3, "recipeIngredient": ["500 g flour"]}'
    >>> to_jsonld(read_jsonld(text)) == json.loads(text)
    True
    """
    if not recipe.jsonld:
        return _new_document(recipe)
    document = lenient_json.loads(recipe.jsonld, recipe.title)
    node = at(document, fullest(document) or ())
    before = read_node(node, recipe.jsonld, recipe.title)
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
    node: dict[str, Any] = at(document, fullest(document) or ())
    return node


def insert_lines(node: dict[str, Any], after: str, new: Sequence[str]) -> None:
    """Put further ingredients into a Recipe behind a line that it lists; at the end of its list where it is not found.

    >>> node = {"recipeIngredient": ["2 cups self-rising flour", "2 eggs"]}
    >>> insert_lines(node, "2 cups self-rising flour", ["1/2 cup flour"])
    >>> node["recipeIngredient"]
    ['2 cups self-rising flour', '1/2 cup flour', '2 eggs']
    """
    leaves = list(ingredient_leaves(node))
    leaf = next((leaf for leaf in leaves if after in leaf.lines), leaves[-1])
    index = leaf.path[1] if len(leaf.path) > 1 else None
    if isinstance(index, int):
        node[str(leaf.path[0])][index + 1 : index + 1] = new
        return
    text = _rewritten(leaf.text, [(after, "\n".join((after, *new)))]) if after in leaf.text else None
    at(node, leaf.path[:-1])[leaf.path[-1]] = text or "\n".join((leaf.text, *new))


def _write_times(node: dict[str, Any], recipe: Recipe, before: Recipe) -> None:
    for key, name in TIMES.items():
        minutes = getattr(recipe, f"{key}_min")
        if minutes is not None and minutes != getattr(before, f"{key}_min"):
            node[name] = _duration(minutes)


def _write_ingredients(node: dict[str, Any], recipe: Recipe, before: Recipe) -> None:
    pairs = as_written(before.ingredients, recipe.ingredients)
    old, new = [was for was, _ in pairs], [becomes for _, becomes in pairs]
    alike = len(before.ingredients) == len(recipe.ingredients)
    if alike and old == new:
        return
    if alike and _replaced(node, list(ingredient_leaves(node)), old, new):
        return
    node.pop("ingredients", None)
    node["recipeIngredient"] = new if alike else [i.line for i in recipe.ingredients]


def _write_steps(node: dict[str, Any], recipe: Recipe, before: Recipe) -> None:
    old, new = [s.text for s in before.steps], [s.text for s in recipe.steps]
    if old == new:
        return
    leaves = list(step_leaves(node))
    if len(old) != len(new) or not _replaced(node, leaves, old, new):
        node["recipeInstructions"] = _instructions(recipe)


def _replaced(node: dict[str, Any], leaves: Sequence[Leaf], old: Sequence[str], new: Sequence[str]) -> bool:
    """Put the new lines where the old ones stand; False where the old ones are not all found.

    A line of a leaf that is not the next old one is a heading among the ingredients, or was unread: it stays.
    """
    rest = deque(zip(old, new, strict=True))
    for leaf in leaves:
        lines = [(line, rest.popleft()[1] if rest and rest[0][0] == line else line) for line in leaf.lines]
        if any(was != becomes for was, becomes in lines):
            at(node, leaf.path[:-1])[leaf.path[-1]] = _rewritten(leaf.text, lines)
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
    if yields.line and yield_of(yields.line) == yields:
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
    times = {name: getattr(recipe, f"{key}_min") for key, name in TIMES.items()}
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
