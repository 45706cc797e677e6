"""A recipe that is told line by line keeps every line, also those that nobody understands."""

from __future__ import annotations

import pytest

from assistant.answering import reply_to

BEGUN = ("convert my recipe to 6,800 ft", "2 cups flour", "2 tsp baking powder", "3/4 cup sugar")


@pytest.mark.parametrize("line", ["2 overripe persimmons", "a handful of hazelnuts", "chopped dates if there are any"])
def test_a_line_that_is_not_understood_stands_as_it_was_told(line: str) -> None:
    told = reply_to("oven 345, 40 min", [*BEGUN, line]).text
    assert f"- {line}" in told
    assert "bake at" in told


@pytest.mark.parametrize("oven", ["345F/40 min", "oven at 345, 40 min", "345 degrees 40 minutes", "40 min at 345"])
def test_an_oven_line_is_a_step(oven: str) -> None:
    told = reply_to(oven, BEGUN).text
    assert "(was 345 F)" in told
    assert "(was 40 minutes)" in told


def test_a_title_may_come_behind_its_lines() -> None:
    assert reply_to("oven 345, 40 min", [*BEGUN, "Date Loaf"]).text.startswith("Date Loaf")
