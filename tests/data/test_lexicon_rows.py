"""Every row of the lexicon by itself, so that a fault names its word."""

from __future__ import annotations

from collections import Counter, defaultdict
from functools import cache
from typing import Any

import airportsdata
import pytest

from rules import tables
from rules.dishes import Dish, Span, classes, dishes, sea_level_time

LONGEST_MIN = 48 * 60  # a cured or tough cut sous vide
A_DAY_MIN = 24 * 60

# These go by other rules than a cooking time at sea level.
UNTIMED = frozenset({"proof", "sugarwork", "preserve", "hold", "chill"})

# Last words that have no plural a cook would say.
UNCOUNTED = """
meat beef pork lamb venison chicken goat barbacoa carnitas pasta rice quinoa polenta oatmeal grits barley farro
bulgur freekeh millet buckwheat amaranth teff sorghum hominy pozole couscous ramen udon soba somen orzo lasagna
manicotti ravioli tortellini gnocchi spaghetti penne rigatoni macaroni fusilli farfalle spaetzle congee broccoli
cauliflower asparagus spinach kale okra cabbage celery fennel garlic chard choy callaloo salmon trout cod halibut
tuna swordfish tilapia catfish sole haddock snapper bass mahi mackerel monkfish skate carp eel shrimp lobster crab
crawfish squid calamari octopus cuttlefish abalone caviar roe tofu tempeh seitan paneer ghee yogurt ricotta milk
coffee tea espresso chai mate stroganoff pastrami birria vieja tripe bison alpaca adobo confit pibil pollo ave
cordero goose feet fish ziti pho ciabatta pastry corn tapioca bolognese ketchup leche creme water formula popcorn
fudge porchetta choucroute jerky chicharron bacon pancetta applesauce rhubarb sauerkraut kimchi chuck
"""

JOINING = frozenset({"and", "with", "in", "of", "on", "a", "al", "au", "con", "the"})

# Melted sugar is caramel; the sweets cut from it are caramels.
TWO_THINGS = frozenset({"caramel", "caramels"})

PLACES_AT_LEAST, DISHES_AT_LEAST, CLASSES_AT_LEAST, INGREDIENTS_AT_LEAST = 250, 700, 25, 60
LOWEST_M, HIGHEST_M = -430, 5500


@cache
def rows(file: str, key: str) -> list[dict[str, Any]]:
    return list(tables.read_toml(f"lexicon/{file}.toml")[key])


@cache
def airports() -> dict[str, Any]:
    return dict(airportsdata.load("IATA"))


@cache
def owners() -> dict[str, set[str]]:
    """Which dishes each phrase names."""
    heard: dict[str, set[str]] = defaultdict(set)
    for dish in dishes().values():
        for phrase in (dish.name, *dish.heard_as):
            heard[phrase.casefold()].add(dish.name)
    return heard


def span(dish: Dish, method: str) -> Span:
    found = sea_level_time(dish.name, dish.dish_class, method)
    assert found, f"{dish.name}: no time to {method}, neither its own nor of its class {dish.dish_class}"
    return found


def other_number(phrase: str) -> set[str]:
    """Plain guesses at the plural of a singular, and the other way round."""
    guesses = {phrase + "s", phrase + "es"}
    if phrase.endswith("y"):
        guesses.add(phrase[:-1] + "ies")
    if phrase.endswith("s"):
        guesses |= {
            phrase[:-1],
            phrase.removesuffix("es"),
            phrase.removesuffix("ies") + "y",
            phrase.removesuffix("ves") + "f",
        }
    return guesses


def counted(name: str) -> bool:
    """A name of which there may be one or many: rice pudding, but not rice, nor rice and beans."""
    words = name.split()
    return words[-1] not in UNCOUNTED.split() and not JOINING.intersection(words)


DISHES = [pytest.param(dish, id=dish.name) for dish in dishes().values()]


@pytest.mark.parametrize("dish", DISHES)
def test_dish(dish: Dish) -> None:
    methods = {row["id"] for row in rows("methods", "method")}
    assert dish.dish_class in classes(), "unknown class"
    assert dish.methods
    assert set(dish.methods) <= methods, "unknown method"
    assert len(set(dish.methods)) == len(dish.methods), "a method stands twice"
    for phrase in (dish.name, *dish.heard_as):
        assert owners()[phrase.casefold()] == {dish.name}, f'"{phrase}" names more than this dish'
        assert phrase == phrase.strip().lower(), f'"{phrase}" is not plain lower case'
    assert len(set(dish.heard_as)) == len(dish.heard_as), "a phrase stands twice"
    for method in set(dish.methods) - UNTIMED:
        found = span(dish, method)
        assert 0 < found.low_min <= found.high_min, method
        assert found.high_min <= (LONGEST_MIN if method == "sous_vide" else A_DAY_MIN), method
        assert found.source in tables.sources(), method


@pytest.mark.parametrize("dish", [p for p in DISHES if counted(p.values[0].name)])  # type: ignore[union-attr]
def test_dish_in_the_other_number(dish: Dish) -> None:
    """One rib or many ribs: the other number names this dish, and no other."""
    guesses = {guess for guess in other_number(dish.name) if guess in owners()} - TWO_THINGS
    assert guesses or dish.name in TWO_THINGS, "list its plural or singular, or the word among UNCOUNTED"
    for guess in guesses:
        assert owners()[guess] == {dish.name}, f'"{guess}" names another dish'


@pytest.mark.parametrize("dish", [p for p in DISHES if "pressure_cook" in p.values[0].methods])  # type: ignore[union-attr]
def test_pressure_is_quicker(dish: Dish) -> None:
    """At 15 psi, about 121 C by steam tables, nothing takes as long as in the open pot."""
    under_pressure = span(dish, "pressure_cook")
    for method in {"boil", "simmer", "braise", "stew"}.intersection(dish.methods):
        open_pot = span(dish, method)
        assert under_pressure.low_min < open_pot.low_min, method
        assert under_pressure.high_min < open_pot.high_min, method


def test_slow_cooker_is_slower() -> None:
    """A crock works below the simmer: it never beats the pot."""
    for dish in dishes().values():
        for method in {"simmer", "braise", "stew"}.intersection(dish.methods if "slow_cook" in dish.methods else ()):
            assert span(dish, "slow_cook").high_min > span(dish, method).high_min, (dish.name, method)


@pytest.mark.parametrize("row", rows("places", "place"), ids=lambda row: row["name"])
def test_place(row: dict[str, Any]) -> None:
    assert ("airport" in row) != ("elevation_m" in row), "give an airport or an elevation, one of them"
    if "airport" in row:
        assert row["airport"] in airports()
        elevation_m = airports()[row["airport"]]["elevation"] * 0.3048
    else:
        assert row["source"] in tables.sources()
        elevation_m = row["elevation_m"]
    assert LOWEST_M <= elevation_m <= HIGHEST_M


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


@pytest.mark.parametrize("row", rows("ingredients", "ingredient"), ids=lambda row: row["name"])
def test_ingredient(row: dict[str, Any]) -> None:
    cup_g = row.get("grams_per_cup")
    assert cup_g is None or 30 <= cup_g <= 400, "bran is the lightest, syrup the heaviest"
    assert cup_g or any(key in row for key in ("tsp_g", "tbsp_g", "each_g")), "it has no weight at all"
    assert sum(row.get(f"{part}_pct", 0) for part in ("water", "sugar", "fat")) <= 101
    for spoon, share in (("tbsp_g", 16), ("tsp_g", 48)):
        if cup_g and spoon in row:
            assert row[spoon] * share == pytest.approx(cup_g, rel=0.25), f"{spoon} does not go with the cup"
    if "tsp_g" in row and "tbsp_g" in row:
        assert row["tsp_g"] * 3 == pytest.approx(row["tbsp_g"], rel=0.08)


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


@pytest.mark.parametrize(
    ("file", "key", "name"),
    [
        ("places", "place", "name"),
        ("ingredients", "ingredient", "name"),
        ("equipment", "equipment", "id"),
        ("methods", "method", "id"),
    ],
)
def test_no_phrase_means_two_things(file: str, key: str, name: str) -> None:
    heard: dict[str, set[str]] = defaultdict(set)
    for row in rows(file, key):
        for phrase in (row[name].replace("_", " "), *row.get("heard_as", ())):
            heard[phrase.casefold()].add(row[name])
    assert [phrase for phrase, owned in heard.items() if len(owned) > 1] == []
    assert [n for n, times in Counter(row[name] for row in rows(file, key)).items() if times > 1] == []


def test_every_class_has_times_for_its_usual_method() -> None:
    missing = [
        c.id
        for c in classes().values()
        if c.default_method not in UNTIMED and not sea_level_time(None, c.id, c.default_method)
    ]
    assert missing == []


def test_every_class_has_a_dish() -> None:
    assert set(classes()) == {dish.dish_class for dish in dishes().values()}


def test_rows_of_tables_name_dishes_that_exist() -> None:
    known = {*dishes(), *(f"class:{id}" for id in classes())}
    for file in ("cooking_times_common-practice", "portions_common-practice"):
        assert {row["dish"] for row in tables.read_csv(f"tables/{file}.csv").rows} <= known, file


def test_portions_are_plausible() -> None:
    found = {row["dish"]: row for row in tables.read_csv("tables/portions_common-practice.csv").rows}
    assert {f"class:{id}" for id in classes()} <= set(found)
    for dish, row in found.items():
        raw_g, cooked_g = float(row["raw_g"]), float(row["cooked_g"])
        assert 2 <= raw_g <= 1000, dish
        assert 20 <= cooked_g <= 500, dish


# By USDA water contents before and after boiling, from memory: rice 2.8, spaghetti 2.4, beans 2.4 to 2.7, lentils 3.0.
@pytest.mark.parametrize(
    ("dish", "ratio"), [("class:rice", 2.80), ("class:pasta", 2.38), ("class:dried_bean", 2.55), ("class:lentil", 3.0)]
)
def test_dry_goods_gain_their_water(dish: str, ratio: float) -> None:
    row = next(row for row in tables.read_csv("tables/portions_common-practice.csv").rows if row["dish"] == dish)
    assert float(row["cooked_g"]) / float(row["raw_g"]) == pytest.approx(ratio, rel=0.12)


def test_enough_of_everything() -> None:
    assert len(dishes()) >= DISHES_AT_LEAST
    assert len(classes()) >= CLASSES_AT_LEAST
    assert len(rows("ingredients", "ingredient")) >= INGREDIENTS_AT_LEAST
    assert len(rows("places", "place")) >= PLACES_AT_LEAST
    assert len(rows("methods", "method")) == 22
