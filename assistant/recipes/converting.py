"""The one way from a recipe to the same recipe at another elevation; every front end goes through here."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace

from assistant.errors import AssistantError
from assistant.recipes.errors import NoRecipe
from assistant.recipes.facts import retimed
from assistant.recipes.lenient_json import fault_in
from assistant.recipes.read import read
from assistant.recipes.scale import scaled
from assistant.recipes.yields import bare_yields, read_yields
from rules.model import Caution, Units
from rules.recipe import Amount, Recipe
from rules.recipes.convert import Converted, convert
from rules.remembered import all_of_them, remembered
from rules.said import sentences

# What people count when they say how many a recipe is for, rather than pans or pots of it.
PORTIONS = ("serving", "portion", "person", "slice", "cover", "guest", "piece", "square")
# Beyond these a batch heats, bakes and boils down at a pace of its own.
NEAR_FACTORS = (0.67, 1.5)
MOST_FACTOR = 1000.0
say = sentences("recipes/converting")


class NoYield(AssistantError, ValueError):
    """A recipe that is to be scaled but does not say how much it makes. name: what the cook calls it."""

    def __init__(self, name: str) -> None:
        super().__init__(name)
        self.name = name

    def __str__(self) -> str:
        return (
            f"{self.name or 'this recipe'} does not say how much it makes, so it cannot be scaled. "
            'Add a line such as "Serves 8", or leave out the number of servings.'
        )


class BadServings(AssistantError, ValueError):
    """A number of servings nobody cooks for. servings: what was asked; yields: what the recipe makes."""

    def __init__(self, servings: float, yields: float) -> None:
        super().__init__(servings, yields)
        self.servings, self.yields = servings, yields

    def __str__(self) -> str:
        return (
            f"{self.servings:g} servings from a recipe for {self.yields:g} is out of reach; "
            f"give a number above 0 and up to {MOST_FACTOR * self.yields:g}."
        )


class BadBatches(AssistantError, ValueError):
    """A number of batches nobody makes. batches: what was asked."""

    def __init__(self, batches: float) -> None:
        super().__init__(batches)
        self.batches = batches

    def __str__(self) -> str:
        return f"{self.batches:g} times a recipe is out of reach; take up to {MOST_FACTOR:g} times."


def convert_recipe(
    content: str | bytes,
    *,
    from_elevation_m: float = 0.0,
    to_elevation_m: float,
    style: str | None = None,
    servings: float | None = None,
    batches: float = 1.0,
    units: Units = "us",
    name: str = "",
) -> Converted:
    """Read a recipe, scale it where that is asked, and convert it.

    content: plain text, JSON-LD or a saved page; name: what to call it in an error, usually the file
    from_elevation_m, to_elevation_m: above sea level [m]; style: a style id, recognised where not given
    servings: how many it should make, in the recipe's own count; batches: how often the recipe, where that is not given
    units: which system stands first in explanations
    returns: the recipe as read beside the recipe to cook; where it is scaled, `plain.yields` says for how many
    raises: RecipeError (NoRecipe where neither an ingredient nor a step is found), NoYield, BadServings, BadBatches;
        of the rules OutOfRange for an elevation, UnknownWord for a style

    >>> text = "Rolls\\nMakes 12 rolls\\n2 tsp baking powder\\n2 cups flour\\nBake 20 minutes at 400 F."
    >>> convert_recipe(text, to_elevation_m=0, servings=24).ingredients[0].text
    '1 tbsp plus 1 tsp baking powder'
    """
    recipe = recipe_in(content, name=name)
    factor = _of_batch(batches) if servings is None else _factor(recipe, servings, name)
    return converted(
        recipe, factor, from_elevation_m=from_elevation_m, to_elevation_m=to_elevation_m, style=style, units=units
    )


def recipe_in(content: str | bytes, *, name: str = "") -> Recipe:
    """The recipe that a text holds.

    raises: RecipeError; NoRecipe where neither an ingredient nor a step is found
    """
    recipe = read(content, name=name)
    if recipe.ingredients or recipe.steps:
        return recipe
    raise NoRecipe(
        name,
        "neither an ingredient nor a step of a method was found in it",
        "Give the ingredients, one a line with their amounts, and the method",
    )


def converted(
    recipe: Recipe,
    factor: float = 1,
    *,
    from_elevation_m: float = 0.0,
    to_elevation_m: float,
    style: str | None = None,
    units: Units = "us",
) -> Converted:
    """A recipe that was read, so many times, converted: as convert_recipe does it, for whoever goes to many places.

    raises: of the rules OutOfRange for an elevation, UnknownWord for a style
    """
    batch = scaled(recipe, factor)
    found = convert(batch, from_elevation_m=from_elevation_m, to_elevation_m=to_elevation_m, style=style, units=units)
    notes = tuple(retimed(note, batch, found.plain) for note in found.plain.notes)
    said = (*found.notes, *_of_document(recipe))
    found = replace(found, plain=replace(found.plain, notes=notes), notes=said)
    return found if factor == 1 else _beside(recipe, found, factor)


@remembered(by=all_of_them)
def _of_document(recipe: Recipe) -> tuple[Caution, ...]:
    """What the cook has to know about the page or document that a recipe was read from."""
    return tuple(_faults_of(recipe)) if recipe.jsonld else ()


def _faults_of(recipe: Recipe) -> Iterator[Caution]:
    if fault := fault_in(recipe.jsonld):
        yield Caution("note", say("mended", line=str(fault[0]), column=str(fault[1])))
    if not recipe.ingredients or not recipe.steps:
        yield Caution("note", say("half-a-recipe", lacks="steps" if recipe.ingredients else "ingredients"))


def _of_batch(batches: float) -> float:
    if not 1 / MOST_FACTOR <= batches <= MOST_FACTOR:
        raise BadBatches(batches)
    return batches


def _factor(recipe: Recipe, servings: float, name: str) -> float:
    makes = counted(recipe)
    if makes is None or makes.value <= 0:
        raise NoYield(name)
    usual = (makes.value + (makes.high or makes.value)) / 2
    if not 0 < servings <= MOST_FACTOR * usual:
        raise BadServings(servings, usual)
    return servings / usual


def counted(recipe: Recipe) -> Amount | None:
    """The yield as people count it: the slices of "two 9-inch layers, about 16 slices", else the yield as it is."""
    line = recipe.yields.line if recipe.yields else ""
    parts = [bare_yields(part) or read_yields(f"Makes {part}") for part in re.split(r"[,;(]\s*", line)[1:]]
    return next((part for part in parts if part and part.unit in PORTIONS), recipe.yields)


def _beside(recipe: Recipe, converted: Converted, factor: float) -> Converted:
    """The conversion of a scaled recipe, told against the lines as they were read."""
    lines = zip(recipe.ingredients, converted.ingredients, strict=True)
    steps = zip(recipe.steps, converted.steps, strict=True)
    return replace(
        converted,
        recipe=recipe,
        ingredients=tuple(replace(to, line=line) for line, to in lines),
        steps=tuple(replace(to, step=step) for step, to in steps),
        notes=(*converted.notes, *_batch_size(factor)),
    )


def _batch_size(factor: float) -> tuple[Caution, ...]:
    least, most = NEAR_FACTORS
    if least <= factor <= most:
        return ()
    text = say("batch-size", times=f"{factor:.2g}", size="larger" if factor > 1 else "smaller")
    return (Caution("note", text, ("common-practice",)),)
