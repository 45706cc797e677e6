"""What converted recipes say of safe temperatures, against the chart they are taken from, typed again."""

from __future__ import annotations

import pytest

from assistant.recipes.text import read_text
from assistant.replies.recipe.worded import in_words
from rules.recipes.convert import convert

# USDA FSIS, Safe Minimum Internal Temperature Chart (12 April 2019): food, degF, rest
CHART = [
    ("2 lb chicken thighs", 165, 0),
    ("1 turkey (12 lb)", 165, 0),
    ("1 lb ground chicken", 165, 0),
    ("2 cups stuffing", 165, 0),
    ("1 lb ground beef", 160, 0),
    ("1 lb ground pork", 160, 0),
    ("4 pork chops", 145, 3),
    ("3 lb pork loin", 145, 3),
    ("1 lb salmon fillets", 145, 0),
]


@pytest.mark.source("usda-fsis-safe-temperatures")
@pytest.mark.parametrize(("line", "printed_f", "rest_min"), CHART)
@pytest.mark.parametrize("way_m", [(0, 2133.6), (2133.6, 0), (1615.4, 2743.2)])
def test_a_recipe_without_a_reading_is_given_the_printed_one(line, printed_f, rest_min, way_m) -> None:
    recipe = read_text(f"Supper\nIngredients\n{line}\nMethod\nCook 30 minutes.")
    new = in_words(convert(recipe, from_elevation_m=way_m[0], to_elevation_m=way_m[1]))
    said = next(c for c in new.cautions if "thermometer" in c.text)
    assert f"{printed_f} °F" in said.text
    assert ("rest of 3 min" in said.text) is bool(rest_min)
    assert said.sources == ("usda-fsis-safe-temperatures",)


@pytest.mark.source("usda-fsis-safe-temperatures")
@pytest.mark.parametrize(("line", "printed_f"), [(line, f) for line, f, _ in CHART if f > 145])
@pytest.mark.parametrize("under_f", [5, 25])
def test_a_reading_under_the_printed_one_is_stopped(line, printed_f, under_f) -> None:
    recipe = read_text(f"Supper\nIngredients\n{line}\nMethod\nCook to {printed_f - under_f} °F inside.")
    new = in_words(convert(recipe, to_elevation_m=2133.6))
    stop = next(c for c in new.cautions if c.level == "stop")
    assert f"{printed_f} °F" in stop.text
    assert new.steps[0].text == f"Cook to {printed_f - under_f} °F inside."
