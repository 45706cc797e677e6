"""The word lists and ratios of the recipe reader name only what the code knows."""

from typing import get_args

import pytest

from rules import tables
from rules.baking import style, styles
from rules.recipe import CueOf, Recipe, TempOf, TimeOf

WORDS = tables.read_toml("lexicon/recipe_words.toml")
STYLES = {row["id"]: row for row in tables.read_toml("lexicon/recipe_styles.toml")["style"]}
RATIOS = tables.read_csv("tables/style_ratios_common-practice.csv").rows


ROLES = tables.read_toml("lexicon/recipe_roles.toml")


def test_kinds_of_cues():
    assert set(WORDS["cues"]) <= set(get_args(CueOf))


@pytest.mark.parametrize(("kind", "known"), [("time", TimeOf), ("temperature", TempOf)])
def test_every_role_is_one_that_the_rules_know(kind, known):
    assert {row["id"] for row in ROLES[kind]} <= set(get_args(known))
    assert {row[kind] for row in ROLES["apparatus"] if kind in row} <= set(get_args(known))


def test_the_words_of_a_role_are_lower_case():
    listed = [row[key] for kind in ("time", "temperature", "apparatus") for row in ROLES[kind] for key in row]
    phrases = [phrase for value in listed if isinstance(value, list) for phrase in value]
    assert [phrase for phrase in phrases if phrase != phrase.lower()] == []


@pytest.mark.parametrize("section", sorted(WORDS))
def test_words_are_lower_case(section):
    for name, words in WORDS[section].items():
        assert [w for w in words if w != w.lower()] == [], name


def test_ratios_and_words_speak_of_the_same_styles():
    by_words = {id for id, row in STYLES.items() if row.get("otherwise")}
    assert {row["style"] for row in RATIOS} == set(STYLES) - by_words
    assert styles.ids() == (*STYLES, "other")


@pytest.mark.parametrize("row", RATIOS, ids=[f"{r['style']}-{r['feature']}" for r in RATIOS])
def test_a_ratio_is_a_span(row):
    assert 0 <= float(row["low"]) <= float(row["high"])
    assert row["must"] in ("0", "1")


def test_only_the_last_variety_is_the_rest():
    for row in STYLES.values():
        for kind in row.get("variety", [])[:-1]:
            assert kind.get("words") or kind.get("ratio"), kind["id"]


def test_an_empty_recipe_is_of_no_style():
    assert style.recognise(Recipe()).id == "other"
