"""The forms a converted recipe is written in: text, Markdown, page, JSON-LD, terminal."""

from __future__ import annotations

import io
import json
import re
from pathlib import Path

import pytest
from rich.console import Console
from selectolax.lexbor import LexborHTMLParser

from assistant.cli.convert_terminal import show_recipe
from assistant.recipes.converting import convert_recipe
from assistant.recipes.read import read
from assistant.replies.recipe import as_html, as_jsonld, as_markdown, as_text

SAMPLES = sorted((Path(__file__).parents[1] / "recipes" / "samples").iterdir())
LODGE_M = 2133.6
NASTY = (
    "Cake <script>alert(1)</script>\nServes 4\n2 cups flour | <b>sifted</b>\n2 tsp baking powder {{ 7*7 }}\n"
    "1 cup milk \x1b[31mred\x07\n\nBake at 350 F for 30 minutes *now* & \u202eserve."
)


def sample(name: str, **asked):
    path = next(p for p in SAMPLES if p.stem == name)
    return convert_recipe(path.read_bytes(), **({"to_elevation_m": LODGE_M} | asked))


def in_terminal(converted, width: int) -> str:
    out = io.StringIO()
    show_recipe(converted, "us", Console(file=out, width=width, highlight=False))
    return out.getvalue()


def test_text_stars_what_changes_and_says_what_it_was() -> None:
    text = as_text(sample("yellow_layer_cake"))
    assert "* 2 1/4 tsp baking powder [10 g] (was 1 tbsp baking powder)" in text
    assert "- 2 3/4 cups (375 g) cake flour, sifted\n" in text
    assert "4. Divide between the pans, filling them no more than half (was two thirds)" in text
    assert "Baking powder: 1 tbsp becomes 2 1/4 tsp (range 2 1/4 tsp to 2 5/8 tsp)." in text
    assert "Bake time: 24 minutes" in text


def test_what_is_added_stands_with_the_batter() -> None:
    cake = "Pound cake\nFor the cake:\n1 lb butter\n1 lb sugar\n9 eggs\n1 lb flour\n"
    pound = f"{cake}For the glaze:\n1 cup powdered sugar\n"
    text = as_text(convert_recipe(f"{pound}\nBake at 325 F for 70 minutes.", to_elevation_m=LODGE_M))
    assert text.index("tbsp water (new)") < text.index("For the glaze:")


def test_a_foam_gets_no_water() -> None:
    assert "water (new)" not in as_text(sample("genoise_roulade")) + as_text(sample("angel_food"))


def test_where_nothing_changes_that_is_said() -> None:
    text = as_text(sample("yellow_layer_cake", to_elevation_m=0))
    assert "nothing changes for the elevation" in text
    assert "What changes" not in text


@pytest.mark.parametrize("path", SAMPLES, ids=lambda p: p.stem)
def test_no_form_leaves_a_gap(path) -> None:
    converted = convert_recipe(path.read_bytes(), to_elevation_m=LODGE_M)
    forms = (as_text(converted), as_markdown(converted), as_html(converted), in_terminal(converted, 100))
    for form in forms:
        assert not re.search(r"\bNone\b|\{\{|\{%|Undefined", form)
        assert form.endswith("\n")
    for form in forms[:3]:
        assert "\n\n\n" not in form


def test_the_page_escapes_what_a_recipe_says() -> None:
    page = as_html(convert_recipe(NASTY, to_elevation_m=LODGE_M))
    tree = LexborHTMLParser(page)
    assert not tree.css("script, b, img, iframe, link")
    assert tree.css_first("h1").text() == "Cake <script>alert(1)</script>"
    assert "{{ 7*7 }}" in page


def test_the_page_needs_nothing_from_outside() -> None:
    page = as_html(sample("yellow_layer_cake"))
    assert not re.search(r"https?://|src=|@import|url\(", page)
    assert "@media print" in page


def test_the_page_shows_both_columns_and_marks_the_changed_lines() -> None:
    tree = LexborHTMLParser(as_html(sample("yellow_layer_cake")))
    rows = [[cell.text().strip() for cell in row.css("td")] for row in tree.css("table.ingredients tr.changed")]
    assert ["1 tbsp baking powder", "▶", "2 1/4 tsp baking powder", "10 g"] in rows
    assert len(tree.css("table.ingredients tbody tr td.now")) == 12
    assert len(tree.css("table.method td.now")) == 6


def test_markdown_takes_nothing_in_a_recipe_for_markup() -> None:
    text = as_markdown(convert_recipe(NASTY, to_elevation_m=LODGE_M))
    assert "# Cake &lt;script&gt;" in text
    assert "2 cups flour \\| &lt;b&gt;sifted" in text
    assert "\\*now\\*" in text


@pytest.mark.parametrize("form", [as_text, as_markdown, as_html])
def test_nothing_drives_a_terminal_or_turns_the_reading_direction(form) -> None:
    assert not re.search(r"[\x00-\x08\x0b-\x1f\x7f\u202e]", form(convert_recipe(NASTY, to_elevation_m=LODGE_M)))


def test_the_terminal_shows_both_columns_where_there_is_room() -> None:
    cake = sample("yellow_layer_cake")
    wide, narrow = in_terminal(cake, 110), in_terminal(cake, 60)
    assert re.search(r"1 tbsp baking powder\s+>\s+2 1/4 tsp baking powder\s+10 g", wide)
    assert not re.search(r"1 tbsp baking powder\s+>", narrow)
    assert "2 1/4 tsp baking powder" in narrow
    assert "\x1b[31m" not in in_terminal(convert_recipe(NASTY, to_elevation_m=LODGE_M), 100)


# schema.org JSON-LD


@pytest.mark.parametrize("name", ["banana_loaf", "beef_chili", "carrot_cake", "rolled_sugar_cookies"])
def test_where_nothing_changes_the_document_is_as_it_was(name) -> None:
    converted = sample(name, to_elevation_m=0)
    assert as_jsonld(converted) == json.loads(converted.recipe.jsonld)


def test_every_key_that_means_nothing_here_is_kept() -> None:
    converted = sample("banana_loaf")
    before, after = json.loads(converted.recipe.jsonld), as_jsonld(converted)
    mine = {"recipeIngredient", "recipeInstructions", "recipeYield", "cookTime", "totalTime", "description"}
    assert set(before) <= set(after)
    assert {k: v for k, v in before.items() if k not in mine} == {k: v for k, v in after.items() if k not in mine}


def test_the_document_reads_back_as_the_converted_recipe() -> None:
    for path in SAMPLES:
        converted = convert_recipe(path.read_bytes(), to_elevation_m=LODGE_M)
        again = read(json.dumps(as_jsonld(converted)))
        assert [line.line for line in again.ingredients] == [line.line for line in converted.plain.ingredients]
        assert [step.text for step in again.steps] == [step.text for step in converted.plain.steps]


def test_the_document_says_what_its_lists_have_no_place_for() -> None:
    described = as_jsonld(sample("carrot_cake"))
    text = json.dumps(described, ensure_ascii=False)
    assert "Converted from sea level to 7,000 ft" in text
    assert "Add 1 tbsp water" in text


def test_the_stated_times_of_the_document_go_along() -> None:
    after = as_jsonld(sample("banana_loaf"))
    assert after["cookTime"] == "PT50M"
    assert after["prepTime"] == "PT15M"


@pytest.mark.parametrize("form", [as_text, as_markdown, as_html])
def test_a_bake_has_its_formula_beside_it(form) -> None:
    assert "Formula: flour 375 g = 100 %; sugar" in form(sample("yellow_layer_cake"))
    assert "Formula" not in form(sample("beef_chili"))
