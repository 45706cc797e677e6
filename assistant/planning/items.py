"""One name for one thing that is bought, however a recipe, a menu or a list of stores calls it."""

from __future__ import annotations

from functools import lru_cache

from assistant.recipes.pantry import find
from assistant.understanding import lexicon
from rules.amounts import yields
from rules.baking.parts import pantry
from rules.foods.dishes import dishes
from rules.recipe import IngredientLine

# states that leave a food the one that is bought
STATES = (
    "dry ", "dried ", "raw ", "fresh ",
    "chopped ", "minced ", "sliced ", "grated ", "shredded ", "bone-in ", "boneless ",
    "unpeeled ", "untrimmed ",
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
    whole = [one for one in found if one.kind == "dish" and (one.start, one.end) == (0, len(bare.split()))]
    return whole[0].id if whole else ""


def as_bought_g(line: IngredientLine) -> float | None:
    """What a line takes as it is bought [g]: what is measured cut up, or said to be peeled, was trimmed before."""
    if line.mass_g is None:
        return None
    left = yields.trimmed(item_of(line.item))
    return line.mass_g / left.share if left and line.mass_from == "density" else line.mass_g
