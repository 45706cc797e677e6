"""One name for one thing that is bought, however a recipe, a menu or a list of stores calls it."""

from __future__ import annotations

from functools import lru_cache

from assistant.recipes.pantry import find
from assistant.understanding import lexicon
from rules.amounts import yields
from rules.amounts.packs import piece
from rules.baking.parts import pantry
from rules.foods.dishes import dishes
from rules.recipe import IngredientLine
from rules.topics.order.buy import DRAWN
from rules.topics.order.words import POURED

STOCK = "stock"
# classes of what is made, and of which another word makes another thing: fish sauce, hot coffee
MADE = (*POURED, *DRAWN, "dairy", "candy", "syrup", "jam")
# states that leave a food the one that is bought
STATES = (
    "dry ", "dried ", "raw ", "fresh ",
    "chopped ", "minced ", "sliced ", "grated ", "shredded ", "bone-in ", "boneless ",
    "unpeeled ", "untrimmed ", "large ", "medium ", "small ",
)  # fmt: skip


@lru_cache(maxsize=4096)
def item_of(words: str) -> str:
    """The item that words name: an ingredient or a dish of the lexicon, else the words themselves.

    >>> item_of("all purpose flour"), item_of("dry white rice"), item_of("chopped onion"), item_of("dragon scales")
    ('all-purpose flour', 'white rice', 'onions', 'dragon scales')
    """
    known = find(words)
    name = (known.name if known else "") or words.strip().lower()
    return _as_food(name) or (name if name in pantry() else "") or _as_food(words.strip().lower()) or name


def _as_food(name: str) -> str:
    """The dish of the lexicon that is bought under a name, without the state it is bought in; "" for none."""
    bare = name
    while bare.startswith(STATES):
        bare = bare.partition(" ")[2]
    if bare == name and name in pantry():
        return ""
    if bare in dishes():
        return bare
    found = lexicon.hear(bare.split())
    ends = [one for one in found if one.kind == "dish" and one.end == len(bare.split())]
    if not ends or _is_bones(bare, ends[-1].id):
        return ""
    # tart apples are apples; hot coffee is not bought as it is poured
    whole = ends[-1].start == 0 or dishes()[ends[-1].id].dish_class not in MADE
    return ends[-1].id if whole else ""


def _is_bones(words: str, dish: str) -> bool:
    """Whether words that are heard as a stock are what it is made from: veal bones."""
    return dishes()[dish].dish_class == STOCK and dish.split()[-1] not in words.split() and words != dish


def as_bought_g(line: IngredientLine) -> float | None:
    """What a line takes as it is bought [g]: what is measured cut up, or said to be peeled, was trimmed before."""
    if line.mass_g is None:
        return _counted_g(line)
    left = yields.trimmed(item_of(line.item))
    return line.mass_g / left.share if left and line.mass_from == "density" else line.mass_g


def _counted_g(line: IngredientLine) -> float | None:
    """The weight of so many pieces of a food that is usually of one size: two onions."""
    item = item_of(line.item)
    if line.unit not in (None, "piece") or not line.amount or item not in dishes():
        return None
    one = piece(item, dishes()[item].dish_class)
    return line.amount * one.grams if one and one.grams else None
