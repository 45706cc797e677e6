"""The usual formula of a dish, taken to another elevation as a recipe is."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

from rules.amounts.makings import makings, role_of
from rules.baking.change import Change, adds
from rules.baking.styles import is_a, style_of
from rules.recipe import IngredientLine, Recipe
from rules.recipes.convert import convert
from rules.recipes.sheet import line_added

# a formula is converted as a batch of so much, in which every spoon can be weighed [g]
BATCH_G = 10_000.0
# what the converter changes by weighing; times and temperatures are no matter of an order
BOUGHT = ("leavening", "yeast", "sugar", "liquid", "flour", "egg", "fat", "salt")


@dataclass(frozen=True, slots=True)
class Making:
    """An ingredient of a dish: grams to a gram of it here, and at the elevation that the formula is for."""

    item: str
    here: float
    there: float

    @property
    def change(self) -> float:
        """How much more of it here, as a share; less below zero."""
        return self.here / self.there - 1 if self.there else 0.0


@lru_cache(maxsize=512)
def at(dish: str | None, dish_class: str, from_m: float, to_m: float) -> tuple[Making, ...]:
    """The makings of a dish as the recipe converter changes them between two elevations [m].

    What it adds that the formula has not (flour to a batter) is joined to the ingredient of that kind.
    """
    inside = makings(dish, dish_class)
    style = style_of(dish_class)
    if not inside or from_m == to_m or not is_a(style, "baked"):
        return tuple(Making(name, share, share) for name, share in inside)
    recipe = Recipe(ingredients=tuple(_line(name, share) for name, share in inside))
    converted = convert(recipe, from_elevation_m=from_m, to_elevation_m=to_m, style=style)
    here = [(name, share * to.ratio) for (name, share), to in zip(inside, converted.ingredients, strict=True)]
    for added in filter(_is_bought, converted.changes):
        line = line_added(added)
        role = line.role if line else ""
        place = next((i for i, (name, _) in enumerate(here) if role_of(name) == role), None)
        if line and line.mass_g and place is not None:
            name, share = here[place]
            here[place] = (name, share + line.mass_g / BATCH_G)
    return tuple(Making(name, now, share) for (name, now), (_, share) in zip(here, inside, strict=True))


def _is_bought(change: Change) -> bool:
    return change.what in BOUGHT and adds(change)


def _line(name: str, share: float) -> IngredientLine:
    grams = share * BATCH_G
    measure = f"{grams:g} g "
    return IngredientLine(
        line=measure + name, item=name, known=True, role=role_of(name) or None, amount=grams, unit="g", mass_g=grams,
        mass_from="stated", start=0, end=len(measure),
    )  # fmt: skip
