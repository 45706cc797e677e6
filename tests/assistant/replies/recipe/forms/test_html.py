"""A converted recipe as a page to print."""

from __future__ import annotations

import re

from selectolax.lexbor import LexborHTMLParser

from assistant.replies.recipe.forms.html import as_html


def test_the_page_escapes_what_a_recipe_says(nasty) -> None:
    page = as_html(nasty)
    tree = LexborHTMLParser(page)
    assert not tree.css("script, b, img, iframe, link")
    assert tree.css_first("h1").text() == "Cake <script>alert(1)</script>"
    assert "{{ 7*7 }}" in page


def test_the_page_needs_nothing_from_outside(sample) -> None:
    page = as_html(sample("yellow_layer_cake"))
    assert not re.search(r"https?://|src=|@import|url\(", page)
    assert "@media print" in page


def test_the_page_shows_both_columns_and_marks_the_changed_lines(sample) -> None:
    tree = LexborHTMLParser(as_html(sample("yellow_layer_cake")))
    rows = [[cell.text().strip() for cell in row.css("td")] for row in tree.css("table.ingredients tr.changed")]
    assert ["1 tbsp baking powder", "▶", "2 1/4 tsp baking powder", "10 g"] in rows
    assert len(tree.css("table.ingredients tbody tr td.now")) == 12
    assert len(tree.css("table.method td.now")) == 6
