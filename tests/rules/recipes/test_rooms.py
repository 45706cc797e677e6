"""The shelf of recipes: what a conversion cites stands in the book, and every danger has words of its own."""

from __future__ import annotations

from collections import Counter
from pathlib import Path

import pytest

from assistant.recipes.read import read
from assistant.replies.sentences import worded
from rules import book, tables
from rules.baking import components
from rules.recipes.convert import convert
from rules.recipes.dangers import say

SAMPLES = sorted((Path(__file__).parents[2] / "assistant" / "recipes" / "samples").iterdir())
BOOK = {rule.id: (room, rule) for room, rule in book.every_rule()}
ON_RECIPES = {id: rule for id, (room, rule) in BOOK.items() if room.startswith("recipes/")}
LODGE_M, PASS_M = 2133.6, 3400.0
COMPONENTS = ("leavening", "yeast", "sugar", "liquid", "flour", "egg", "fat", "salt", "oven", "time")


@pytest.mark.parametrize("way", [(0.0, LODGE_M), (0.0, PASS_M), (LODGE_M, 0.0)], ids=["up", "far_up", "down"])
@pytest.mark.parametrize("path", SAMPLES, ids=lambda p: p.stem)
def test_what_a_conversion_cites_stands_in_the_book(path, way) -> None:
    new = convert(read(path.read_bytes()), from_elevation_m=way[0], to_elevation_m=way[1])
    assert {change.rule for change in new.changes} <= set(ON_RECIPES)
    assert all(change.sources for change in new.changes)
    assert all(caution.sources for caution in new.cautions)


def test_no_two_rules_of_recipes_share_an_id() -> None:
    times = Counter(rule.id for name in book.names("recipes") for rule in _rules("recipes", name))
    assert set(times.values()) == {1}
    elsewhere = [(shelf, name) for shelf in book.SHELVES if shelf != "recipes" for name in book.names(shelf)]
    assert not set(times) & {rule.id for shelf, name in elsewhere for rule in _rules(shelf, name)}


def _rules(shelf: str, name: str) -> tuple[book.Rule, ...]:
    module = book.room(shelf, name)
    return book.rules_of(module) if module else ()


@pytest.mark.parametrize(
    "component", ["leavening", "yeast", "sugar", "liquid", "flour", "egg", "fat", "salt", "oven", "time"]
)
def test_a_rule_names_every_source_of_its_tables(component) -> None:
    styles = {row["style"] for row in tables.read_csv(components.TABLE).rows if row["component"] == component}
    cited = {source for style in styles for source in components.sources(style, component)}
    assert cited <= set(BOOK[f"baking.{component}"][1].sources)


def test_a_rule_that_holds_a_time_back_speaks_after_the_one_that_moves_it() -> None:
    """Chicken on the way down: the pot boils hotter and would want less time, but the time makes the meat safe."""
    text = "Simmer the chicken 40 minutes."
    recipe = read(f"Stew\n\nIngredients\n3 lb chicken thighs\n\nMethod\n{text}".encode())
    new = convert(recipe, from_elevation_m=LODGE_M, to_elevation_m=0.0, style="soup")
    assert [change.rule for change in new.changes if change.what == "time"] == ["safety.never_shorter"]
    assert new.steps[0].text == text


def test_every_danger_has_words_of_its_own() -> None:
    ids = [row["id"] for row in tables.read_toml("lexicon/recipe_safety.toml")["danger"]]
    texts = {worded(say("as-written", danger=id, food="kidney beans"), "us") for id in ids}
    assert len(texts) == len(ids)
