"""What a dish is made of, by usual formulas."""

from __future__ import annotations

from functools import cache

from rules.baking.parts import pantry
from rules.foods.dishes import kin
from rules.physics.units import ML_PER_CUP
from rules.tables import read_csv

MAKINGS = "tables/makings_common-practice.csv"
# ingredients of which one kind stands for another
ANY_KIND = ("flour", "yeast", "egg", "sugar")
# what a dry mix is made of
DRY_ROLES = ("flour", "sugar", "leavening", "salt")


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


def of_its_kind(dish: str | None, dish_class: str) -> bool:
    """Whether a dish is reckoned by the formula of its class, so that what makes it what it is has to be added.

    >>> of_its_kind("zucchini bread", "quick_bread"), of_its_kind("cornbread", "quick_bread")
    (True, False)
    """
    return not any(name in _rows() for name in kin(dish)) and f"class:{dish_class}" in _rows()


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
    last, meant_last = (words.split()[-1].removesuffix("s") for words in (name, item))
    return last == meant_last


def bought_for(item: str, dish: str | None, dish_class: str) -> str:
    """As what an ingredient is bought for a dish: tomatoes in cans for soup."""
    return next(iter(meant(item, dish, dish_class)), item)


def g_per_ml(item: str) -> float:
    """How much an ingredient weighs by volume; as water where the lexicon has no weight of a cup."""
    return float(pantry().get(item, {}).get("grams_per_cup", ML_PER_CUP)) / ML_PER_CUP


def role_of(item: str) -> str:
    """What an ingredient does in a formula; "" for a food that is only known as a dish."""
    return str(pantry().get(item, {}).get("role", ""))


def is_dry(item: str) -> bool:
    """Whether an ingredient is part of a dry mix: liquid, eggs and fat are put to that.

    >>> is_dry("cornmeal"), is_dry("baking powder"), is_dry("butter")
    (True, True, False)
    """
    return role_of(item) in DRY_ROLES
