"""schema.org/Recipe as JSON-LD -> Recipe. The document is kept whole beside what was read from it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any

from assistant.recipes import lenient_json
from assistant.recipes.errors import NoRecipe
from assistant.recipes.schema_org import MOST_DEEP, fullness, read_node, types
from rules.recipe import Recipe

Path = tuple[str | int, ...]


def at(document: Any, path: Sequence[str | int]) -> Any:
    """What stands in a document at the end of a path."""
    for key in path:
        document = document[key]
    return document


def _recipes(document: object, path: Path = ()) -> Iterator[Path]:
    """The ways to the Recipes of a document: itself, in an array, a @graph, or under another thing."""
    if len(path) > MOST_DEEP:
        return
    if "Recipe" in types(document):
        yield path
    entries = (
        document.items() if isinstance(document, dict) else enumerate(document) if isinstance(document, list) else ()
    )
    for key, value in entries:
        if isinstance(value, dict | list):
            yield from _recipes(value, (*path, key))


def fullest(document: Any) -> Path | None:
    """The way to the Recipe of a document that says the most, the first among equals; None where there is none."""
    return max(_recipes(document), key=lambda path: fullness(at(document, path)), default=None)


def read_jsonld(text: str, *, name: str = "") -> Recipe:
    """Read a schema.org/Recipe document.

    text: JSON, with the Recipe bare, in an array, in a @graph or under another thing; name: what to call it in an error
    returns: the fullest Recipe in it; what could not be read stands in `unread`, and the document is kept in `jsonld`
    raises: NoRecipe where it holds no Recipe; RecipeError where it is not JSON, or is larger than any recipe is

    >>> recipe = read_jsonld('{"@type": "Recipe", "name": "Rolls", "recipeYield": "12 rolls", "prepTime": "PT1H10M"}')
    >>> recipe.title, recipe.yields.value, recipe.yields.unit, recipe.prep_min
    ('Rolls', 12.0, 'roll', 70.0)
    """
    document, fault = lenient_json.read(text, name)
    path = fullest(document)
    if fault and (path is None or fullness(at(document, path))[0] == 0):
        raise fault  # what is left after mending is no recipe
    if path is None:
        raise NoRecipe(name, "there is no schema.org Recipe in this JSON", 'Give the object that has "@type": "Recipe"')
    return read_node(at(document, path), lenient_json.unwrapped(text), name)
