"""How long pages of 5 MB take that were made to choke a reader, and half of each. Run: python tests/bench/pages.py"""

from __future__ import annotations

import json
import time
from contextlib import suppress

from assistant.recipes.errors import RecipeError
from assistant.recipes.read import read

WHOLE, HALF = 4_900_000, 2_450_000
# twice the page in at most so many times the time: linear, with room for a busy machine
MOST_TIMES = 3.0
RECIPE = {"@type": "Recipe", "name": "Rolls", "recipeIngredient": ["1 cup flour"], "recipeInstructions": "Bake."}
SCRIPT = '<script type="application/ld+json">{}</script>'
SCOPE = '<div itemscope itemtype="https://schema.org/Recipe"><p itemprop="ingredients">1 egg</p>'


def filled(unit: str, size: int, before: str = "<html>", after: str = "") -> str:
    """A unit again and again, up to so many characters."""
    return before + unit * (size // len(unit)) + after


PAGES = {
    "flat": lambda size: filled("<p class=x>text <b>x</b></p>", size, SCRIPT.format(json.dumps(RECIPE))),
    "nested": lambda size: filled("<div>", size),
    "brackets": lambda size: filled("[", size, '<script type="application/ld+json">', "</script>"),
    "broken JSON": lambda size: filled('{"a" ', size, '<script type="application/ld+json">', "</script>"),
    "many scripts": lambda size: filled(SCRIPT.format(json.dumps(RECIPE)), size),
    "microdata": lambda size: filled(SCOPE + "</div>", size),
    "one long step": lambda size: json.dumps(RECIPE | {"recipeInstructions": filled("Mix it. ", size, "")}),
    "long JSON": lambda size: json.dumps([RECIPE] * (size // len(json.dumps(RECIPE)) - 1000)),
}


def taken_s(page: str) -> float:
    """Processor time to read a page, or to refuse it [s]."""
    start = time.process_time()
    with suppress(RecipeError):
        read(page)
    return time.process_time() - start


if __name__ == "__main__":
    for name, page in PAGES.items():
        half_s, whole_s = taken_s(page(HALF)), taken_s(page(WHOLE))
        linear = whole_s < MOST_TIMES * max(half_s, 0.05)
        print(f"{name:14} {half_s:5.2f} s, twice as long {whole_s:5.2f} s{'' if linear else '  NOT LINEAR'} (goal 1 s)")
