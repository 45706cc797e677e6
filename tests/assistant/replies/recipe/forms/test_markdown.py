"""A converted recipe as Markdown."""

from __future__ import annotations

from assistant.replies.recipe.forms.markdown import as_markdown


def test_nothing_in_a_recipe_is_taken_for_markup(nasty) -> None:
    text = as_markdown(nasty)
    assert "# Cake &lt;script&gt;" in text
    assert "2 cups flour \\| &lt;b&gt;sifted" in text
    assert "\\*now\\*" in text
