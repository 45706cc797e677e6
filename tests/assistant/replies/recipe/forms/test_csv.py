"""The ingredients of a converted recipe as a table for a spreadsheet."""

from __future__ import annotations

import csv
import io

from assistant.recipes.converting import convert_recipe
from assistant.replies.recipe.forms.csv import as_csv


def rows(converted) -> list[dict[str, str]]:
    return list(csv.DictReader(io.StringIO(as_csv(converted))))


def test_each_ingredient_stands_as_it_was_beside_as_it_is(sample) -> None:
    cake = rows(sample("yellow_layer_cake"))
    assert len(cake) == 12
    assert cake[2] == {
        "recipe": "Lodge yellow layer cake",
        "part": "cake",
        "item": "baking powder",
        "was": "1 tbsp baking powder",
        "was_g": "14",
        "now": "2 1/4 tsp baking powder",
        "now_g": "10",
        "changed": "yes",
        "stop": "",
    }
    assert [row["changed"] for row in cake if row["item"] == "vanilla extract"] == ["no"]


def test_masses_are_figures_that_add_up(sample) -> None:
    jam = rows(sample("strawberry_jam"))
    assert [row["was_g"] for row in jam if row["item"] == "granulated sugar"] == ["1200"]
    for row in rows(sample("yellow_layer_cake")):
        assert float(row["was_g"]) > 0
        assert float(row["now_g"]) > 0


def test_what_is_added_has_its_part_and_its_mass() -> None:
    cake = "Pound cake\nFor the cake:\n1 lb butter\n1 lb sugar\n9 eggs\n1 lb flour\n"
    pound = f"{cake}For the glaze:\n1 cup powdered sugar\n\nBake at 325 F for 70 minutes."
    water = next(row for row in rows(convert_recipe(pound, to_elevation_m=2133.6)) if row["item"] == "water")
    assert (water["part"], water["was"], water["was_g"], water["changed"]) == ("cake", "", "", "yes")
    assert (water["now"], water["now_g"]) == ("3 1/2 tbsp water", "52")


def test_what_is_stopped_is_said_first(sample) -> None:
    first, second, *_ = rows(sample("strawberry_jam"))
    assert first["stop"].startswith("A recipe for canning is not converted")
    assert (first["now"], second["stop"]) == ("", "")


def test_a_spreadsheet_works_nothing_of_a_recipe_out() -> None:
    recipe = convert_recipe("=HYPERLINK(1)\n2 cups flour\n@SUM(A1) salt\n\nBake 20 minutes.", to_elevation_m=0)
    cells = [cell for row in csv.reader(io.StringIO(as_csv(recipe))) for cell in row]
    assert "'=HYPERLINK(1)" in cells
    assert not any(cell.startswith(("=", "+", "-", "@")) for cell in cells)
