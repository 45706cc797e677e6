"""The lines of a recipe, sorted -> Recipe: steps that know what the recipe as a whole says, percentages in grams."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace

from assistant.recipes.amounts import amounts
from assistant.recipes.evidence import says
from assistant.recipes.steps import read_step
from assistant.recipes.temperatures import Habits, units_named
from assistant.recipes.times import named_last
from rules.recipe import Amount, IngredientLine, Recipe, Step

HUNDRED = 100.0


def assembled(
    *,
    title: str,
    yields: Amount | None,
    ingredients: Sequence[IngredientLine],
    steps: Iterable[tuple[str, str]],
    notes: Iterable[str] = (),
    unread: Iterable[str] = (),
    facts: dict[str, float],
    jsonld: str = "",
) -> Recipe:
    """A Recipe from its lines. Steps are (text, component); what the recipe as a whole says settles a bare "to 240".

    facts: prep, cook, total [min], flour and dough [g], each where known
    """
    marked = tuple(_marked(list(steps), ingredients, title))
    flour_g = facts.get("flour") or _flour_weighed(ingredients) or _flour_in(facts.get("dough"), ingredients)
    return Recipe(
        title=title,
        yields=yields,
        ingredients=_percentages(ingredients, flour_g),
        steps=marked,
        notes=tuple(notes),
        unread=tuple(unread),
        prep_min=facts.get("prep"),
        cook_min=facts.get("cook"),
        total_min=facts.get("total"),
        flour_g=flour_g,
        jsonld=jsonld,
    )


def _marked(texts: list[tuple[str, str]], ingredients: Sequence[IngredientLine], title: str) -> Iterator[Step]:
    """The steps, read: each knows what the recipe as a whole says, and what was cooked in before it."""
    habits = _habits(" ".join(text for text, _ in texts), ingredients)
    apparatus = named_last(title, "")
    for text, component in texts:
        told = tuple(amounts(text, component, ingredients))
        yield replace(read_step(text, component, habits=habits, apparatus=apparatus), amounts=told)
        apparatus = named_last(text, apparatus)


def _habits(every: str, ingredients: Sequence[IngredientLine]) -> Habits:
    units = units_named(every)
    only = next(iter(units)) if len(units) == 1 else None
    metric = only == "degC" or (not units and _weighed_in_grams(ingredients))
    return Habits(only, metric, sweet=says("sweet", every), warm=says("warm", every))


def _weighed_in_grams(ingredients: Sequence[IngredientLine]) -> bool:
    units = [i.unit for i in ingredients if i.unit]
    return bool(units) and sum(u in ("g", "kg", "ml", "l", "dl", "cl") for u in units) * 2 > len(units)


def _flour_weighed(ingredients: Sequence[IngredientLine]) -> float | None:
    """The flour that percentages refer to [g], where the list weighs the flour and gives the rest in percent."""
    if not any(i.unit == "percent" for i in ingredients):
        return None
    return sum(i.mass_g for i in ingredients if i.role == "flour" and i.mass_g) or None


def _flour_in(dough_g: float | None, ingredients: Sequence[IngredientLine]) -> float | None:
    """The flour [g] in a dough whose parts are all in percent of it."""
    parts = [i.amount for i in ingredients if i.unit == "percent" and i.amount is not None]
    whole = bool(parts) and len(parts) == len(ingredients)
    return dough_g * 100 / sum(parts) if dough_g and whole and sum(parts) >= HUNDRED else None


def _percentages(ingredients: Sequence[IngredientLine], flour_g: float | None) -> tuple[IngredientLine, ...]:
    """Baker's percentages turned to grams, where the flour weight is known."""
    if flour_g is None:
        return tuple(ingredients)
    return tuple(
        replace(i, mass_g=round(i.amount * flour_g / 100, 3), mass_from="percent")
        if i.unit == "percent" and i.amount is not None and i.mass_g is None
        else i
        for i in ingredients
    )
