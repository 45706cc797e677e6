"""Recipes in the vocabulary of schema.org (Recipe, HowToSection, HowToStep) with ISO 8601 durations, and bad ones."""

import contextlib
import json
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from assistant.errors import AssistantError
from assistant.recipes.errors import RecipeError
from assistant.recipes.jsonld import read_jsonld
from assistant.recipes.jsonld_written import to_jsonld
from assistant.recipes.pages import read_page
from assistant.recipes.read import read
from assistant.recipes.text import read_text

RECIPE = {"@type": "Recipe", "name": "Rolls", "recipeIngredient": ["500 g bread flour", "340 g water"]}
SAMPLES = Path(__file__).parent / "samples"


@pytest.mark.parametrize(
    "document",
    [
        RECIPE,
        [{"@type": "WebSite"}, RECIPE],
        {"@graph": [{"@type": "WebPage"}, RECIPE]},
        {"@type": "WebPage", "mainEntity": RECIPE},
        RECIPE | {"@type": ["Recipe", "NewsArticle"]},
        RECIPE | {"@type": "https://schema.org/Recipe"},
        RECIPE | {"@type": "schema:Recipe"},
        {"@context": "https://schema.org", **RECIPE},
    ],
    ids=["bare", "array", "graph", "nested", "types", "url", "prefixed", "context"],
)
def test_where_the_recipe_stands(document):
    recipe = read_jsonld(json.dumps(document))
    assert recipe.title == "Rolls"
    assert [i.mass_g for i in recipe.ingredients] == [500, 340]
    assert to_jsonld(recipe) == document


@pytest.mark.parametrize(
    ("instructions", "expected"),
    [
        ("Mix.\nBake 20 minutes.", [("Mix.", ""), ("Bake 20 minutes.", "")]),
        ("<p>Mix.</p><p>Bake 20&nbsp;minutes.</p>", [("Mix.", ""), ("Bake 20 minutes.", "")]),
        (["Mix.", "Bake 20 minutes."], [("Mix.", ""), ("Bake 20 minutes.", "")]),
        (["1. Mix.", "Step 2: Bake."], [("Mix.", ""), ("Bake.", "")]),
        (
            [{"@type": "HowToStep", "text": "Mix."}, {"@type": "HowToStep", "name": "Bake."}],
            [("Mix.", ""), ("Bake.", "")],
        ),
        ({"@type": "ItemList", "itemListElement": [{"@type": "HowToStep", "text": "Mix."}]}, [("Mix.", "")]),
        (
            [
                {
                    "@type": "HowToSection",
                    "name": "For the glaze:",
                    "itemListElement": {"@type": "HowToStep", "text": "Stir."},
                }
            ],
            [("Stir.", "glaze")],
        ),
        ([{"@type": "HowToStep", "itemListElement": [{"@type": "HowToDirection", "text": "Mix."}]}], [("Mix.", "")]),
        (None, []),
        ([], []),
        ({}, []),
        (7, []),
    ],
)
def test_instructions(instructions, expected):
    document = RECIPE | {"recipeInstructions": instructions}
    recipe = read_jsonld(json.dumps(document))
    assert [(s.text, s.component) for s in recipe.steps] == expected
    assert to_jsonld(recipe) == document


# ISO 8601-1:2019, 5.5.2, and what sites write in its place
@pytest.mark.parametrize(
    ("text", "minutes"),
    [
        ("PT1H10M", 70),
        ("PT90M", 90),
        ("P0DT0H30M", 30),
        ("P1DT2H", 1560),
        ("PT1.5H", 90),
        ("pt45m", 45),
        ("20 min", 20),
        ("PT30S", 0.5),
    ],
)
def test_durations(text, minutes):
    assert read_jsonld(json.dumps(RECIPE | {"prepTime": text})).prep_min == minutes


@pytest.mark.parametrize("value", ["soon", "PT", 30, {"@type": "Duration"}, ["PT5M"], "P" + "9" * 40 + "D"])
def test_durations_that_are_none(value):
    recipe = read_jsonld(json.dumps(RECIPE | {"cookTime": value}))
    assert recipe.cook_min in (None, 0)
    if recipe.cook_min is None:
        assert any("cookTime" in line for line in recipe.unread)


@pytest.mark.parametrize(
    ("value", "amount", "unit"),
    [
        (12, 12, None),
        ("12", 12, None),
        ("12 rolls", 12, "roll"),
        (["12", "12 rolls"], 12, "roll"),
        ("Makes 2 loaves", 2, "loaf"),
        ({"@type": "QuantitativeValue", "value": 14, "unitText": "slices"}, 14, "slice"),
    ],
)
def test_yields(value, amount, unit):
    document = RECIPE | {"recipeYield": value}
    recipe = read_jsonld(json.dumps(document))
    assert (recipe.yields.value, recipe.yields.unit) == (amount, unit)
    assert to_jsonld(recipe) == document


def test_a_yield_that_cannot_be_read_is_listed():
    assert "recipeYield: a whole lot" in read_jsonld(json.dumps(RECIPE | {"recipeYield": "a whole lot"})).unread


def test_a_sample_comes_back_unchanged(sample_path):
    if sample_path.suffix != ".json":
        pytest.skip("not JSON")
    text = sample_path.read_text(encoding="utf-8")
    assert to_jsonld(read_jsonld(text)) == json.loads(text)


def test_changed_lines_are_written_where_they_stood():
    document = RECIPE | {
        "x-mixer": {"speed": 2},
        "recipeInstructions": [
            {
                "@type": "HowToSection",
                "name": "Dough",
                "itemListElement": [{"@type": "HowToStep", "text": "<p>Mix.</p><p>Rise 1 hour.</p>", "url": "#1"}],
            },
            "2. Bake 20 minutes.",
        ],
    }
    recipe = read_jsonld(json.dumps(document))
    steps = tuple(replace(s, text=s.text.replace("1 hour", "45 minutes").replace("20", "18")) for s in recipe.steps)
    lines = tuple(replace(i, line=i.line.replace("340", "355")) for i in recipe.ingredients)
    written = to_jsonld(replace(recipe, steps=steps, ingredients=lines))
    section, bake = written["recipeInstructions"]
    assert section["itemListElement"][0] == {
        "@type": "HowToStep",
        "text": "<p>Mix.</p><p>Rise 45 minutes.</p>",
        "url": "#1",
    }
    assert bake == "2. Bake 18 minutes."
    assert written["recipeIngredient"] == ["500 g bread flour", "355 g water"]
    assert written["x-mixer"] == {"speed": 2}


def test_an_added_step_is_written():
    recipe = read_jsonld(json.dumps(RECIPE | {"recipeInstructions": "Mix."}))
    more = read_text("x\n1 egg\nMix it all well.\nBake 20 minutes in the oven.").steps
    written = to_jsonld(replace(recipe, steps=more))
    assert [s["text"] for s in written["recipeInstructions"]] == [s.text for s in more]


def test_plain_text_becomes_a_document_and_comes_back(sample_path):
    if sample_path.suffix != ".txt":
        pytest.skip("not plain text")
    recipe = read(sample_path.read_bytes())
    again = read_jsonld(json.dumps(to_jsonld(recipe)))
    assert [i.line for i in again.ingredients] == [i.line for i in recipe.ingredients]
    assert [i.component for i in again.ingredients] == [i.component for i in recipe.ingredients]
    assert [s.text for s in again.steps] == [s.text for s in recipe.steps]
    assert again.title == recipe.title
    assert again.yields == recipe.yields


JSON = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats(allow_nan=False) | st.text(max_size=20),
    lambda inner: (
        st.lists(inner, max_size=4)
        | st.dictionaries(
            st.text(max_size=8) | st.sampled_from(["@type", "text", "name", "itemListElement"]), inner, max_size=4
        )
    ),
    max_leaves=12,
)
KEYS = [
    "name",
    "recipeIngredient",
    "recipeInstructions",
    "recipeYield",
    "prepTime",
    "cookTime",
    "description",
    "x",
    "ingredients",
]


@settings(max_examples=150, deadline=None)
@given(st.dictionaries(st.sampled_from(KEYS), JSON))
def test_any_value_anywhere_is_read_and_comes_back(fields):
    document = {"@type": "Recipe", **fields}
    text = json.dumps(document)
    recipe = read_jsonld(text)
    assert to_jsonld(recipe) == json.loads(text)


@settings(max_examples=60, deadline=None)
@given(st.text(max_size=200))
def test_any_text_is_read_or_refused_as_a_recipe_error(text):
    for reader in (read, read_page, read_jsonld):
        with contextlib.suppress(RecipeError):
            reader(text)


@pytest.mark.parametrize(
    ("content", "says"),
    [
        ("", "empty"),
        ('{"@type": "Recipe",', "line 1"),
        ('{"@type": "Person"}', "no schema.org Recipe"),
        ("[" * 100_000, "too deep"),
        ('{"@type":"Recipe","recipeIngredient":' + "[" * 5000 + "]" * 5000 + "}", "too deep"),
        ("<html><body>Soup</body></html>", "no recipe data"),
        (b"PK\x03\x04\x00\x00", "not text"),
        ("x" * (5 * 1024 * 1024 + 1), "larger than 5 MB"),
        ("word " * 50_000, "longer than a recipe"),
        (json.dumps(RECIPE | {"recipeIngredient": ["1 egg"] * 100_000}), "2,000 ingredients"),
        (json.dumps(RECIPE | {"recipeIngredient": "1 egg\n" * 100_000}), "2,000 ingredients"),
        (json.dumps(RECIPE | {"recipeInstructions": ["Mix."] * 100_000}), "2,000 steps"),
        ('{"@type": "Recipe", "recipeYield": ' + "9" * 5000 + "}", "absurd"),
    ],
    ids=[
        "empty",
        "broken",
        "none",
        "bracket bomb",
        "nested bomb",
        "page",
        "zip",
        "huge",
        "long",
        "bomb",
        "text bomb",
        "step bomb",
        "number",
    ],
)
def test_what_is_refused(content, says):
    with pytest.raises(RecipeError, match=says) as caught:
        read(content, name="lunch.json")
    assert isinstance(caught.value, AssistantError)
    assert str(caught.value).startswith("lunch.json: ")


def test_a_large_page_with_a_small_recipe():
    page = "<html><head>" + f'<script type="application/ld+json">{json.dumps(RECIPE)}</script>' + "<p>x</p>" * 500_000
    assert read(page).title == "Rolls"


@pytest.mark.parametrize(
    "wrap",
    ["<!-- {} -->", "//<![CDATA[\n{}\n//]]>", "\n {} \n"],
)
def test_what_pages_put_around_their_data(wrap):
    assert read_page(f'<script type="Application/LD+json">{wrap.format(json.dumps(RECIPE))}</script>').title == "Rolls"


def test_a_broken_block_does_not_hide_the_next():
    page = (
        '<script type="application/ld+json">{"a": </script>'
        + f'<script type="application/ld+json">{json.dumps(RECIPE)}</script>'
    )
    assert read_page(page).title == "Rolls"


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "cp1252"])
def test_encodings(encoding):
    assert read("Crème\n½ cup sugar\nBake it for 20 minutes.".encode(encoding)).ingredients[0].mass_g == 100


def test_a_bracket_does_not_make_json():
    assert read("[ ] 2 eggs\n[ ] 1 cup sugar\nMix and bake for 20 minutes.").ingredients[1].mass_g == 200


def test_the_document_stays_out_of_the_repr():
    assert "jsonld" not in repr(read_jsonld(json.dumps(RECIPE)))


def test_headings_without_a_sign_and_the_other_choice_are_no_ingredients() -> None:
    listed = [
        "BASE",
        "2 cups flour",
        "1 cup butter",
        "OR 1 cup margarine",
        "Glaze",
        "1 cup sugar",
        "For the crunch",
        "1 cup nuts",
    ]
    recipe = read_jsonld(json.dumps({"@type": "Recipe", "name": "Slice", "recipeIngredient": listed}))
    assert [(line.item, line.component) for line in recipe.ingredients] == [
        ("all-purpose flour", "base"),
        ("butter", "base"),
        ("granulated sugar", "glaze"),
        ("nuts", "crunch"),
    ]
    assert "OR 1 cup margarine" in recipe.notes
    assert to_jsonld(recipe)["recipeIngredient"] == listed


def test_a_list_that_is_one_text_is_read_ingredient_by_ingredient() -> None:
    listed = ["125 ml milk, 60 ml olive oil, 100 g caster sugar, 96 g self-raising flour, pinch of salt"]
    recipe = read_jsonld(json.dumps({"@type": "Recipe", "name": "Cupcakes", "recipeIngredient": listed}))
    assert [line.item for line in recipe.ingredients] == [
        "whole milk", "olive oil", "granulated sugar", "self-rising flour", "salt",
    ]  # fmt: skip
