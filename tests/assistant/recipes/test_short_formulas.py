"""Short formulas, a line of method each: the style a baker would name."""

import tomllib
from pathlib import Path

import pytest

from assistant.recipes.read import read
from rules.baking.style import recognise

FORMULAS = tomllib.loads((Path(__file__).parent / "short_formulas.toml").read_text(encoding="utf-8"))["formula"]


@pytest.mark.parametrize("formula", FORMULAS, ids=[f["text"].splitlines()[0] for f in FORMULAS])
def test_style(formula):
    assert recognise(read(formula["text"])).id == formula["style"]


@pytest.mark.parametrize("formula", FORMULAS, ids=[f["text"].splitlines()[0] for f in FORMULAS])
def test_everything_is_read(formula):
    recipe = read(formula["text"])
    assert recipe.title
    assert recipe.ingredients
    assert len(recipe.steps) == 1
    assert recipe.unread == ()
