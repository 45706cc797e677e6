"""What a dish is made of, by usual formulas; and what elevation makes of such a formula."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache, lru_cache

from rules.baking.change import Change, adds
from rules.baking.parts import pantry
from rules.baking.styles import is_a, style_of
from rules.foods.dishes import kin
from rules.physics.units import ML_PER_CUP
from rules.recipe import IngredientLine, Recipe
from rules.recipes.convert import convert
from rules.recipes.phrases import stems
from rules.recipes.sheet import line_added
from rules.tables import read_csv

MAKINGS = "tables/makings_common-practice.csv"
# a formula is converted as a batch of so much, in which every spoon can be weighed [g]
BATCH_G = 10_000.0
# what the converter changes by weighing; times and temperatures are no matter of an order
BOUGHT = ("leavening", "yeast", "sugar", "liquid", "flour", "egg", "fat", "salt")
# ingredients of which one kind stands for another
ANY_KIND = ("flour", "yeast", "egg", "sugar")
# water comes out of the tap
WATER = "water"


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


@cache
def _rows() -> dict[str, tuple[tuple[str, float], ...]]:
    found: dict[str, tuple[tuple[str, float], ...]] = {}
    for row in read_csv(MAKINGS).rows:
        found[row["dish"]] = (*found.get(row["dish"], ()), (row["item"], float(row["share"])))
    return found


def makings(dish: str | None, dish_class: str) -> tuple[tuple[str, float], ...]:
    """The ingredients of a dish, each with its share; nothing where no usual formula is known.

    >>> makings("cornbread", "quick_bread")[0], makings("short ribs", "collagen_cut")
    (('cornmeal', 0.2), ())
    """
    names = (*kin(dish), f"class:{dish_class}")
    return next((_rows()[name] for name in names if name in _rows()), ())


def share_of(item: str, dish: str | None, dish_class: str) -> float | None:
    """What share of a dish an ingredient is. None where it is not in it.

    >>> share_of("cornmeal", "cornbread", "quick_bread"), share_of("all-purpose flour", "bread", "yeast_bread")
    (0.2, 0.595)
    """
    inside = dict(makings(dish, dish_class))
    return sum(inside[name] for name in meant(item, dish, dish_class)) or None


def meant(item: str, dish: str | None, dish_class: str) -> tuple[str, ...]:
    """The ingredients of a dish that one is: itself where the formula has it, else those that it stands for."""
    names = tuple(name for name, _ in makings(dish, dish_class))
    return (item,) if item in names else tuple(name for name in names if is_the(item, name))


def is_the(item: str, name: str) -> bool:
    """Whether an ingredient of a formula is the one that is meant: any flour or sugar, egg for eggs, tomatoes canned.

    >>> is_the("all-purpose flour", "bread flour"), is_the("eggs", "egg"), is_the("butter", "peanut butter")
    (True, True, False)
    """
    if name == item or item in kin(name):
        return True
    if role_of(item) and role_of(name):
        return role_of(item) == role_of(name) and role_of(item) in ANY_KIND
    return stems(name)[-1:] == stems(item)[-1:] and not (role_of(item) and role_of(name))


def bought_for(item: str, dish: str | None, dish_class: str) -> str:
    """As what an ingredient is bought for a dish: tomatoes in cans for soup."""
    return next(iter(meant(item, dish, dish_class)), item)


def g_per_ml(item: str) -> float:
    """How much an ingredient weighs by volume; as water where the lexicon has no weight of a cup."""
    return float(pantry().get(item, {}).get("grams_per_cup", ML_PER_CUP)) / ML_PER_CUP


def role_of(item: str) -> str:
    """What an ingredient does in a formula; "" for a food that is only known as a dish."""
    return str(pantry().get(item, {}).get("role", ""))


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
