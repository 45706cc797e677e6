"""A converted recipe as schema.org JSON-LD."""

from __future__ import annotations

import json

import pytest

from assistant.recipes.converting import convert_recipe
from assistant.recipes.read import read
from assistant.replies.recipe.forms.jsonld import as_jsonld
from assistant.replies.recipe.worded import in_words
from assistant.replies.recipe.words import added
from rules.baking.change import adds


@pytest.mark.parametrize("name", ["banana_loaf", "beef_chili", "carrot_cake", "rolled_sugar_cookies"])
def test_where_nothing_changes_the_document_is_as_it_was(sample, name) -> None:
    converted = sample(name, to_elevation_m=0)
    assert as_jsonld(converted) == json.loads(converted.recipe.jsonld)


def test_every_key_that_means_nothing_here_is_kept(sample) -> None:
    converted = sample("banana_loaf")
    before, after = json.loads(converted.recipe.jsonld), as_jsonld(converted)
    mine = {"recipeIngredient", "recipeInstructions", "recipeYield", "cookTime", "totalTime", "description"}
    assert set(before) <= set(after)
    assert {k: v for k, v in before.items() if k not in mine} == {k: v for k, v in after.items() if k not in mine}


def test_the_document_reads_back_as_the_converted_recipe(each_sample) -> None:
    again = read(json.dumps(as_jsonld(each_sample)))
    new = [added(change) for change in in_words(each_sample).changes if adds(change)]
    assert [line.line for line in again.ingredients if line.line not in new] == [
        line.line for line in each_sample.plain.ingredients
    ]
    assert [step.text for step in again.steps] == [step.text for step in each_sample.plain.steps]


def test_the_document_says_what_its_lists_have_no_place_for(sample) -> None:
    text = json.dumps(as_jsonld(sample("carrot_cake")), ensure_ascii=False)
    assert "Converted from sea level to 7,000 ft" in text
    assert "New in the list: 1 tbsp water." in text


def test_the_stated_times_of_the_document_go_along(sample) -> None:
    after = as_jsonld(sample("banana_loaf"))
    assert after["cookTime"] == "PT50M"
    assert after["prepTime"] == "PT15M"


@pytest.mark.parametrize("listed", ["list", "text"])
def test_what_is_added_stands_in_the_list_behind_what_it_is_mixed_with(listed) -> None:
    lines = ["300 g self-raising flour", "80 g butter", "160 ml milk", "For the top:", "1 egg"]
    method = "Rub in, mix, cut out, brush with egg and bake for 14 minutes at 220 C."
    node = {
        "@type": "Recipe",
        "name": "Scones",
        "recipeIngredient": lines if listed == "list" else "\n".join(lines),
        "recipeInstructions": method,
    }
    after = as_jsonld(convert_recipe(json.dumps(node), to_elevation_m=2133.6))["recipeIngredient"]
    found = after if listed == "list" else after.splitlines()
    assert [line for line in found if "all-purpose" in line] == found[3:4]
    assert len(found) == len(lines) + 1
