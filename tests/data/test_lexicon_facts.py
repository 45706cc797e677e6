"""What the lexicon says, against what is known outside; that its rows are well formed is the validator's to tell."""

from __future__ import annotations

from functools import cache
from typing import Any

import airportsdata
import pytest

from assistant.contributing.validate_lexicon import named, owners
from rules import tables
from rules.foods.dishes import classes, dishes

# Plurals that do not come of an s alone, as cooks type them.
PLURALS = {
    "peaches": "peaches",
    "cherries": "cherries",
    "strawberries": "strawberries",
    "berries": "berries",
    "tomatoes": "tomatoes",
    "potatoes": "potatoes",
    "sweet potatoes": "sweet potatoes",
    "radishes": "radishes",
    "butternut squashes": "butternut squash",
    "chickpeas": "chickpeas",
    "black-eyed peas": "black-eyed peas",
    "curries": "curry",
    "egg sandwiches": "egg sandwiches",
    "burger patties": "hamburgers",
    "loaves of bread": "bread",
    "danishes": "danish pastries",
    "turnovers": "turnovers",
    "cornish pasties": "pasties",
    "stuffed vine leaves": "dolmas",
    "legs of lamb": "leg of lamb",
    "racks of ribs": "pork ribs",
    "ears of corn": "corn on the cob",
    "jellies": "jelly",
    "gravies": "gravy",
    "taffies": "taffy",
    "spelt berries": "spelt",
    "blintzes": "blintzes",
    "sugar snaps": "sugar snap peas",
    "short ribs": "short ribs",
    "shortribs": "short ribs",
    "ciabattas": "ciabatta",
    "chicken thighs": "chicken thighs",
    "churros": "churros",
}

PLACES_AT_LEAST, DISHES_AT_LEAST, CLASSES_AT_LEAST, INGREDIENTS_AT_LEAST = 250, 2500, 25, 60
PHRASES_AT_MOST = 9700  # each costs a cold start: a thousand cost 10 ms


@cache
def rows(file: str, key: str) -> list[dict[str, Any]]:
    return list(tables.read_toml(f"lexicon/{file}.toml")[key])


@cache
def airports() -> dict[str, Any]:
    return dict(airportsdata.load("IATA"))


@pytest.mark.parametrize(("plural", "dish"), PLURALS.items())
def test_plurals_that_cooks_type(plural: str, dish: str) -> None:
    assert named(plural) == {dish}


# The towns' own elevations, from memory: national survey figures as towns print them on their signs.
KNOWN_M = {
    "Denver": 1609,
    "Leadville": 3094,
    "Santa Fe": 2194,
    "Salt Lake City": 1288,
    "Flagstaff": 2106,
    "Cheyenne": 1848,
    "Mexico City": 2240,
    "Bogota": 2640,
    "Quito": 2850,
    "La Paz": 3640,
    "Cusco": 3399,
    "Addis Ababa": 2355,
    "Lhasa": 3656,
    "Davos": 1560,
    "Boston": 14,
    "Dead Sea": -430,
}


@pytest.mark.parametrize(("name", "known_m"), KNOWN_M.items())
def test_place_stands_where_it_is(name: str, known_m: float) -> None:
    row = next(row for row in rows("places", "place") if row["name"] == name)
    elevation_m = row.get("elevation_m") or airports()[row["airport"]]["elevation"] * 0.3048
    assert elevation_m == pytest.approx(known_m, abs=60)  # 60 m is 0.2 degC at the boil


@pytest.mark.parametrize(
    ("name", "cup_g"),
    [
        ("all-purpose flour", 125),
        ("bread flour", 137),
        ("granulated sugar", 200),
        ("brown sugar", 220),
        ("honey", 339),
        ("butter", 227),
        ("whole milk", 244),
        ("cocoa powder", 86),
        ("rolled oats", 81),
        ("salt", 292),
    ],
)
def test_weight_of_a_cup(name: str, cup_g: float) -> None:
    """USDA National Nutrient Database for Standard Reference, Release 28, WEIGHT file."""
    assert next(row for row in rows("ingredients", "ingredient") if row["name"] == name)["grams_per_cup"] == cup_g


# By USDA water contents before and after boiling, from memory: rice 2.8, spaghetti 2.4, beans 2.4 to 2.7, lentils 3.0.
@pytest.mark.parametrize(
    ("dish", "ratio"), [("class:rice", 2.80), ("class:pasta", 2.38), ("class:dried_bean", 2.55), ("class:lentil", 3.0)]
)
def test_dry_goods_gain_their_water(dish: str, ratio: float) -> None:
    row = next(row for row in tables.read_csv("tables/portions_common-practice.csv").rows if row["dish"] == dish)
    assert float(row["cooked_g"]) / float(row["raw_g"]) == pytest.approx(ratio, rel=0.12)


def test_enough_of_everything() -> None:
    assert len(dishes()) >= DISHES_AT_LEAST
    assert len(owners()) <= PHRASES_AT_MOST
    assert len(classes()) >= CLASSES_AT_LEAST
    assert len(rows("ingredients", "ingredient")) >= INGREDIENTS_AT_LEAST
    assert len(rows("places", "place")) >= PLACES_AT_LEAST
