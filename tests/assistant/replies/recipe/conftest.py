"""Recipes to be written in any form."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from assistant.recipes.converting import convert_recipe
from rules.recipes.convert import Converted

SAMPLES = sorted((Path(__file__).parents[2] / "recipes" / "samples").iterdir())
LODGE_M = 2133.6
NASTY = (
    "Cake <script>alert(1)</script>\nServes 4\n2 cups flour | <b>sifted</b>\n2 tsp baking powder {{ 7*7 }}\n"
    "1 cup milk \x1b[31mred\x07\n\nBake at 350 F for 30 minutes *now* & \u202eserve."
)


@pytest.fixture(scope="session")
def sample() -> Callable[..., Converted]:
    """A sample by its name, converted from sea level to 7,000 ft, or as asked."""
    paths = {path.stem: path for path in SAMPLES}
    return lambda name, **asked: convert_recipe(paths[name].read_bytes(), **({"to_elevation_m": LODGE_M} | asked))


@pytest.fixture(scope="session", params=SAMPLES, ids=lambda path: path.stem)
def each_sample(request) -> Converted:
    """Every sample in its turn, converted."""
    return convert_recipe(request.param.read_bytes(), to_elevation_m=LODGE_M)


@pytest.fixture(scope="session")
def nasty() -> Converted:
    """A recipe that holds markup, a template and signs that would drive a terminal."""
    return convert_recipe(NASTY, to_elevation_m=LODGE_M)
