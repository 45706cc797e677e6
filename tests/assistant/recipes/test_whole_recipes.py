"""Whole recipes, most with one list for all parts: what style they are, and which lines are left as they are."""

from __future__ import annotations

from pathlib import Path

import pytest

from assistant.recipes.read import read
from rules.baking.division import divided
from rules.baking.part_names import is_apart, is_left
from rules.baking.style import recognise
from rules.recipes.convert import convert

FILE = Path(__file__).parent / "whole_recipes.toml"
KITCHEN_M = 2133.6


def _recipes():
    import tomllib

    return tomllib.loads(FILE.read_text(encoding="utf-8"))["recipe"]


def _name(one) -> str:
    return one["text"].strip().splitlines()[0]


@pytest.fixture(params=_recipes(), ids=_name)
def one(request):
    return request.param


def test_the_style(one) -> None:
    assert recognise(read(one["text"])).id == one["style"]


def test_the_lines_that_are_left(one) -> None:
    recipe = read(one["text"])
    left = [i.line for i in divided(recipe).ingredients if is_left(i.component) or is_apart(i.line)]
    for begins in one["left"]:
        assert any(line.startswith(begins) for line in left), begins
    if one["left"]:
        core = [i for i in divided(recipe).ingredients if i.role in ("leavening", "yeast")]
        assert not any(is_left(i.component) for i in core)


def test_what_is_left_does_not_change(one) -> None:
    converted = convert(read(one["text"]), to_elevation_m=KITCHEN_M)
    for to in converted.ingredients:
        if any(to.line.line.startswith(begins) for begins in one["left"]):
            assert to.text == to.line.line
