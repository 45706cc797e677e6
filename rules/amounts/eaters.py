"""How many of the guests eat a dish of a menu."""

from __future__ import annotations

import math

from rules.foods.dishes import traits_of
from rules.model import Request

# as near to a whole guest as a share can be told
HAIR = 1e-9
# traits of food that those who eat no meat do not eat
OF_MEAT = frozenset(("meat", "poultry", "fish", "shellfish"))
STEWS, PLANTS = (
    ("mixed_stew",),
    frozenset(("vegetable", "vegetables", "mushroom", "lentil", "bean", "beans", "chickpea")),
)


def eaters(one: Request, menu: Request) -> int | None:
    """How many of the covers eat a dish: as many as are said to take it, else all of them.

    Those who eat no meat do not eat what is made of it.

    >>> ninety = Request(portions=90)
    >>> [eaters(one, ninety) for one in (Request(portions=35), Request(share=0.25), Request())]
    [35, 23, 90]
    """
    if one.portions is not None or menu.portions is None:
        return one.portions
    if one.share is not None:
        return math.ceil(menu.portions * one.share - HAIR)
    if menu.meatless is None or not is_of_meat(one):
        return menu.portions
    return max(1, menu.portions - menu.meatless)


def is_of_meat(one: Request) -> bool:
    """Whether a dish is of meat, poultry or fish; a stew is, unless its name says what else it is of."""
    if one.dish_class in STEWS:
        return PLANTS.isdisjoint((one.dish or "").split())
    return not OF_MEAT.isdisjoint(traits_of(one.dish, one.dish_class))
