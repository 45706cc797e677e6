"""Bare degrees of a cook who speaks in Celsius, and a figure that is of water or of another food."""

from __future__ import annotations

import pytest

from assistant.understanding.hazards import hazards
from assistant.understanding.pipeline import read
from assistant.understanding.spread import of_another_food
from assistant.understanding.temperatures import said


@pytest.mark.parametrize(
    ("text", "celsius", "role", "temp_f"),
    [
        ("water at 95 is not 100", True, "other", 203.0),
        ("pressure cooker, 121?", True, "oven", 249.8),
        ("so 150 inside does?", True, "core", 150.0),
        ("so 150 inside does?", False, "core", 150.0),
    ],
)
def test_bare_degrees(text: str, celsius: bool, role: str, temp_f: float) -> None:
    first = said(read(text), celsius=celsius)[0]
    assert (first.role, round(first.temp_f, 1)) == (role, temp_f)


def test_a_figure_in_the_sentence_of_another_food_is_not_its_own() -> None:
    minced = next(h for h in hazards() if h.id == "undercooked_ground" and h.temps_f)
    assert of_another_food(read("Rib roast pulled at 52. Meatballs and potatoes beside it."), minced)
    assert not of_another_food(read("Meatballs pulled at 52. Rib roast beside them."), minced)
