"""A converted recipe on a screen."""

from __future__ import annotations

import io
import re

from rich.console import Console

from assistant.replies.recipe.forms.terminal import show_recipe


def in_terminal(converted, width: int) -> str:
    out = io.StringIO()
    show_recipe(converted, "us", Console(file=out, width=width, highlight=False))
    return out.getvalue()


def test_both_columns_are_shown_where_there_is_room(sample) -> None:
    cake = sample("yellow_layer_cake")
    wide, narrow = in_terminal(cake, 110), in_terminal(cake, 60)
    assert re.search(r"1 tbsp baking powder\s+>\s+2 1/4 tsp baking powder\s+10 g", wide)
    assert not re.search(r"1 tbsp baking powder\s+>", narrow)
    assert "2 1/4 tsp baking powder" in narrow


def test_no_sample_leaves_a_gap(each_sample) -> None:
    shown = in_terminal(each_sample, 100)
    assert not re.search(r"\bNone\b|\{\{|\{%|Undefined", shown)
    assert shown.endswith("\n")


def test_a_recipe_does_not_drive_the_terminal(nasty) -> None:
    assert "\x1b[31m" not in in_terminal(nasty, 100)
