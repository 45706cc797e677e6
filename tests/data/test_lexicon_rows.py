"""Every row of the lexicon by itself, so that a fault names its word."""

from __future__ import annotations

from collections import Counter, defaultdict
from functools import cache
from typing import Any

import airportsdata
import pytest

from assistant.reading.text import fold
from assistant.understanding import lexicon
from rules import tables
from rules.foods.dishes import Dish, Span, classes, dishes, in_row, sea_level_time

LONGEST_MIN = 48 * 60  # a cured or tough cut sous vide
A_DAY_MIN = 24 * 60

# These go by other rules than a cooking time at sea level.
UNTIMED = frozenset({"proof", "sugarwork", "preserve", "hold", "chill"})

# Last words, ending in s, of names that have no singular that a cook would say.
NO_SINGULAR = """
arrugadas asparagus bass bigos bogracs bourekas bravas bretonnes camarones carnitas chilaquiles coulis
couscous cristianos dauphinois divorciados escamoles fours fries fritos giblets glass gras grits haggis hummus
jus keftedes kourabiedes langos leftovers loukoumades maas machboos medames migas molasses octopus potjiekos
raisins rajas rancheros rellenas res rois speculoos tournedos varnishkes verts
"""

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

# Melted sugar is caramel and the sweets cut from it are caramels; chocolate and chocolates likewise.
TWO_THINGS = frozenset({"caramel", "chocolate"})

PLACES_AT_LEAST, DISHES_AT_LEAST, CLASSES_AT_LEAST, INGREDIENTS_AT_LEAST = 250, 2500, 25, 60
PHRASES_AT_MOST = 7000  # each costs a cold start
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


def singulars(plural: str) -> set[str]:
    """Plain guesses at the singular of a plural."""
    return {
        plural[:-1],
        plural.removesuffix("es"),
        plural.removesuffix("ies") + "y",
        plural.removesuffix("ves") + "f",
    } - {plural}


def named(phrase: str) -> set[str]:
    """The dishes that the language hears in a phrase, its plurals included."""
    return {id for kind, id in lexicon.meanings(fold(phrase)) if kind == "dish"}


def dish_rows() -> list[dict[str, Any]]:
    folder = tables.data_path("lexicon/dishes")
    files = sorted(f.name for f in folder.iterdir() if f.name.endswith(".toml"))
    return [row for name in files for row in tables.read_toml(f"lexicon/dishes/{name}")["dish"]]


ROWS = [pytest.param(tuple(in_row(row)), id=row["name"]) for row in dish_rows()]


@pytest.mark.parametrize("row", ROWS)
def test_dishes_of_a_row(row: tuple[Dish, ...]) -> None:
    methods = {row["id"] for row in rows("methods", "method")}
    for dish in row:
        assert dish.dish_class in classes(), "unknown class"
        assert dish.methods
        assert set(dish.methods) <= methods, "unknown method"
        assert len(set(dish.methods)) == len(dish.methods), "a method stands twice"
        for phrase in (dish.name, *dish.heard_as):
            assert owners()[phrase.casefold()] == {dish.name}, f'"{phrase}" names more than {dish.name}'
            assert named(phrase) == {dish.name}, f'"{phrase}" is not heard as {dish.name}'
            assert phrase == phrase.strip().lower(), f'"{phrase}" is not plain lower case'
        for method in set(dish.methods) - UNTIMED:
            found = span(dish, method)
            assert 0 < found.low_min <= found.high_min, (dish.name, method)
            assert found.high_min <= (LONGEST_MIN if method == "sous_vide" else A_DAY_MIN), (dish.name, method)
            assert found.source in tables.sources(), (dish.name, method)


@pytest.mark.parametrize("row", ROWS)
def test_one_or_many(row: tuple[Dish, ...]) -> None:
    """One rib or many ribs: the other number names this dish, and no other."""
    for dish in row:
        if {dish.name, dish.name[:-1]} & TWO_THINGS or " and " in dish.name:
            continue
        if not dish.name.endswith("s"):
            assert named(dish.name + "s") <= {dish.name}, f"more than one {dish.name} is something else"
        elif dish.name.split()[-1] not in NO_SINGULAR.split():
            heard = {name for one in singulars(dish.name) for name in named(one)}
            assert heard == {dish.name}, f"list the singular of {dish.name}, or it among NO_SINGULAR"


@pytest.mark.parametrize(("plural", "dish"), PLURALS.items())
def test_plurals_that_cooks_type(plural: str, dish: str) -> None:
    assert named(plural) == {dish}


@pytest.mark.parametrize("row", ROWS)
def test_no_phrase_that_follows_from_another(row: tuple[Dish, ...]) -> None:
    """A plural in s, an accent, a hyphen or an apostrophe more need not be listed."""
    for dish in row:
        phrases = [fold(phrase) for phrase in (dish.name, *dish.heard_as)]
        assert len(set(phrases)) == len(phrases), f"{dish.name}: a phrase stands twice"
        idle = [p for p in phrases[1:] if p.endswith("s") and len(p) > 4 and p[:-1] in phrases]
        assert idle == [], dish.name


@pytest.mark.parametrize("row", [p for p in ROWS if "pressure_cook" in p.values[0][0].methods])  # type: ignore[index]
def test_pressure_is_quicker(row: tuple[Dish, ...]) -> None:
    """At 15 psi, about 121 C by steam tables, nothing takes as long as in the open pot."""
    for dish in row:
        under_pressure = span(dish, "pressure_cook")
        for method in {"boil", "simmer", "braise", "stew"}.intersection(dish.methods):
            open_pot = span(dish, method)
            assert under_pressure.low_min < open_pot.low_min, (dish.name, method)
            assert under_pressure.high_min < open_pot.high_min, (dish.name, method)


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


def csv_files() -> list[str]:
    return sorted(f.name for f in tables.data_path("tables").iterdir() if f.name.endswith(".csv"))


@pytest.mark.parametrize("file", csv_files())
def test_rows_of_tables_name_dishes_that_exist(file: str) -> None:
    """A table that a dish was renamed under would fall silent."""
    known = {*dishes(), *(f"class:{id}" for id in classes())}
    table = tables.read_csv(f"tables/{file}").rows
    for column in {"dish", "drink", "of"}.intersection(table[0]):
        assert {row[column] for row in table} <= known, column


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
    assert len(owners()) <= PHRASES_AT_MOST
    assert len(classes()) >= CLASSES_AT_LEAST
    assert len(rows("ingredients", "ingredient")) >= INGREDIENTS_AT_LEAST
    assert len(rows("places", "place")) >= PLACES_AT_LEAST
    assert len(rows("methods", "method")) == 22
