"""A temperature written in both scales is one; two that are no translation of each other are two."""

import pytest

from assistant.recipes.read import read


def marks(said: str) -> list[tuple[float, float]]:
    recipe = read(f"Cake\n\n2 cups flour\n1 cup sugar\n\nBake at {said} for 30 minutes.\n")
    return [(round(t.low_c), round(t.high_c)) for step in recipe.steps for t in step.temperatures]


@pytest.mark.parametrize("said", ["350°F (177°C)", "350 F / 175 C", "180°C (350°F)"])
def test_both_scales_are_one_temperature(said: str) -> None:
    assert len(marks(said)) == 1


@pytest.mark.parametrize("said", ["350°F (150°C)", "350 F / 200 C"])
def test_what_is_no_translation_is_not_taken_for_one(said: str) -> None:
    assert len(marks(said)) != 1
