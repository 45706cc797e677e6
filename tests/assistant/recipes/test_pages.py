"""Saved pages: what makes a page, which of its recipes is read, and pages that were made to choke a reader."""

import json

import pytest

from assistant.recipes.converting import convert_recipe
from assistant.recipes.errors import NoRecipe, RecipeError
from assistant.recipes.html_tree import MOST_NESTED, nesting, plain, tree
from assistant.recipes.read import read
from assistant.replies.recipe.worded import in_words

LODGE_M = 2133.6
POT = {"@type": "Recipe", "name": "Lodge pot roast", "recipeIngredient": ["3 lb chuck", "1 cup stock"],
       "recipeInstructions": ["Brown the meat.", "Braise it for 3 hours."]}  # fmt: skip


def script(data) -> str:
    return f'<script type="application/ld+json">{data if isinstance(data, str) else json.dumps(data)}</script>'


def cautions(converted) -> str:
    """All that is said with a conversion, in words."""
    return "\n".join(caution.text for caution in in_words(converted).cautions)


@pytest.mark.parametrize(
    "before",
    ["", "\ufeff", '"', "'\n", "<!-- saved from the lodge's own site -->\n", "\ufeff<!--" + "x" * 3000 + "-->", "> ",
     '<?xml version="1.0"?>', "Saved by the night shift.\n"],
    ids=["nothing", "mark", "quote", "quote and line", "comment", "long comment", "quoted mail", "xml", "a line"],
)  # fmt: skip
def test_a_page_is_known_whatever_stands_before_it(before):
    page = f"{before}<!DOCTYPE html><html><head>{script(POT)}</head></html>"
    for content in (page, page.encode("utf-8"), page.encode("utf-8-sig"), page.encode("utf-16")):
        assert read(content).title == "Lodge pot roast"


def test_text_with_a_tag_in_it_is_no_page():
    assert read("<b>Rolls</b>\n500 g flour\n340 g water\nMix it and bake for 20 minutes.").ingredients[0].mass_g == 500


def test_the_fullest_recipe_of_a_page_is_read():
    teaser = {"@type": "Recipe", "name": "Related", "recipeIngredient": ["1 egg"]}
    assert read(script({"@graph": [teaser, POT, teaser]})).title == "Lodge pot roast"
    assert read(script(teaser) + script(POT)).title == "Lodge pot roast"
    assert read(script(POT) + script(POT | {"name": "Second"})).title == "Lodge pot roast"


def test_a_page_without_a_recipe_says_what_was_looked_for():
    with pytest.raises(NoRecipe, match=r"JSON-LD.*microdata") as caught:
        read("<html><body><h1>Menu</h1></body></html>", name="menu.html")
    assert str(caught.value).startswith("menu.html: ")


def test_a_page_whose_only_recipe_is_past_mending_says_where():
    with pytest.raises(RecipeError, match="breaks off at line 1") as caught:
        read(script('{"@type": "Recipe", "name": '))
    assert not isinstance(caught.value, NoRecipe)


@pytest.mark.parametrize(
    ("lacks", "said"), [("recipeInstructions", "ingredients and no steps"), ("recipeIngredient", "steps and no ingr")]
)
def test_half_a_recipe_is_converted_and_said(lacks, said):
    converted = convert_recipe(script({k: v for k, v in POT.items() if k != lacks}), to_elevation_m=LODGE_M)
    assert said in cautions(converted)
    assert "holds" not in cautions(convert_recipe(script(POT), to_elevation_m=LODGE_M))


@pytest.mark.parametrize("content", [script({"@type": "Recipe", "name": "Rolls"}), "Closed on Mondays."])
def test_what_holds_neither_is_no_recipe(content):
    with pytest.raises(NoRecipe, match="neither an ingredient nor a step"):
        convert_recipe(content, to_elevation_m=LODGE_M)


# Pages to choke on. Nothing is timed here: each of them took minutes, or never came back, before it was bounded.


@pytest.mark.parametrize("deep", ["<div>", "<ul><li>", "<b>", "<div><p>"])
def test_scripts_of_a_page_nested_without_end_are_read(deep):
    page = deep * (5_000_000 // len(deep) - 100)
    assert read(script(POT) + page).title == "Lodge pot roast"
    with pytest.raises(NoRecipe):
        read("<html>" + page)


def test_a_page_nested_as_pages_are_is_not_cut():
    page = "<div>" * (MOST_NESTED - 5) + "<h1>here</h1>"
    assert tree(page).css_first("h1") is not None
    assert tree("<p>x" * 5 * MOST_NESTED + "<h1>here</h1>").css_first("h1") is not None
    assert tree(page + "<div>" * 100).css_first("h1") is None


def test_nesting_is_counted_from_the_shallowest_place():
    assert nesting("</div>" * 50 + "<div>" * 7 + "</div>" * 7) == 7
    assert nesting("no tags < at > all") == 0


def test_text_nested_without_end_loses_its_tags():
    assert plain("<i>" * 2_000_000 + "Mix.") == "Mix."


@pytest.mark.parametrize("filling", ["[" * 5_000_000, '{"a":' * 900_000, "/*" * 2_000_000, "\\" * 4_000_000])
def test_a_script_of_brackets_is_passed_over(filling):
    assert read(script(filling) + script(POT)).title == "Lodge pot roast"


def test_one_step_of_five_megabytes_is_refused():
    with pytest.raises(RecipeError, match="far longer than a recipe"):
        read(json.dumps(POT | {"recipeInstructions": "Mix it well. " * 350_000}))
