"""Which dish classes have a formula, and the style of each by the tables of baking."""

from __future__ import annotations

BAKED = (
    "layer_cake", "foam_cake", "pound_cake", "quick_bread", "biscuit", "cookie", "brownie", "yeast_bread",
    "laminated", "pizza", "pie", "choux", "souffle", "custard", "cheesecake", "meringue", "fried_dough",
)  # fmt: skip
# classes that are no style of their own, and the style whose formula they share
STYLES = {
    "flatbread": "yeast_bread", "starch_pudding": "custard", "battered": "fried_dough", "general": "layer_cake",
}  # fmt: skip


def style_of(dish_class: str) -> str:
    """The style of a dish class; a class that has no formula keeps its own name.

    >>> style_of("flatbread"), style_of("cookie"), style_of("rice")
    ('yeast_bread', 'cookie', 'rice')
    """
    return STYLES.get(dish_class, dish_class)
