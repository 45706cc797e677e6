"""Every row of the process tables, typed again from the pages that print it; what was not read there says so.

The pages, each a reprint of the USDA Complete Guide (AIB 539), read in 2026: Michigan State University Extension,
Preserving Food Safely (1997), files 01600038 to 01600886; the Meal-Master files of the 1994 guide; a sausage makers'
site with the text of the 2015 guide; pages of the National Center (potatoes, stock) and of UF/IFAS (plums, stock). The
five-minute jam table in a jam-makers' leaflet. Lima beans and beans in sauce in two canner booklets.
"""

import pytest

from rules.preserving import printed
from rules.preserving.foods import CANNED, foods
from rules.preserving.jars import sizes
from rules.preserving.vessel import BOILING_WATER, PRESSURE
from rules.tables import read_toml

# process, style, pack, jars: 0 - 1,000 ft, 1,001 - 3,000, 3,001 - 6,000, above 6,000 ft
READ_IN_WATER = {
    ("peaches", "", "hot", "pint"): (20, 25, 30, 35),
    ("peaches", "", "hot", "quart"): (25, 30, 35, 40),
    ("peaches", "", "raw", "pint"): (25, 30, 35, 40),
    ("peaches", "", "raw", "quart"): (30, 35, 40, 45),
    ("apricots", "", "hot", "pint"): (20, 25, 30, 35),
    ("apricots", "", "hot", "quart"): (25, 30, 35, 40),
    ("apricots", "", "raw", "pint"): (25, 30, 35, 40),
    ("apricots", "", "raw", "quart"): (30, 35, 40, 45),
    ("pears", "", "hot", "pint"): (20, 25, 30, 35),
    ("pears", "", "hot", "quart"): (25, 30, 35, 40),
    ("apples", "", "hot", "pint quart"): (20, 25, 30, 35),
    ("applesauce", "", "hot", "pint"): (15, 20, 20, 25),
    ("applesauce", "", "hot", "quart"): (20, 25, 30, 35),
    ("plums", "", "hot raw", "pint"): (20, 25, 30, 35),
    ("plums", "", "hot raw", "quart"): (25, 30, 35, 40),
    ("cherries", "", "hot", "pint"): (15, 20, 20, 25),
    ("cherries", "", "hot", "quart"): (20, 25, 30, 35),
    ("cherries", "", "raw", "pint quart"): (25, 30, 35, 40),
    ("berries", "", "hot", "pint quart"): (15, 20, 20, 25),
    ("berries", "", "raw", "pint"): (15, 20, 20, 25),
    ("berries", "", "raw", "quart"): (20, 25, 30, 35),
    ("apple juice", "", "hot", "pint quart"): (5, 10, 10, 15),
    ("apple juice", "", "hot", "half_gallon"): (10, 15, 15, 20),
    ("grape juice", "", "hot", "pint quart"): (5, 10, 10, 15),
    ("grape juice", "", "hot", "half_gallon"): (10, 15, 15, 20),
    ("tomatoes", "crushed", "hot", "pint"): (35, 40, 45, 50),
    ("tomatoes", "crushed", "hot", "quart"): (45, 50, 55, 60),
    ("tomatoes", "in_water", "hot raw", "pint"): (40, 45, 50, 55),
    ("tomatoes", "in_water", "hot raw", "quart"): (45, 50, 55, 60),
    ("tomatoes", "in_juice", "hot raw", "pint quart"): (85, 90, 95, 100),
    ("tomatoes", "no_liquid", "raw", "pint quart"): (85, 90, 95, 100),
    ("tomato juice", "", "hot", "pint"): (35, 40, 45, 50),
    ("tomato juice", "", "hot", "quart"): (40, 45, 50, 55),
    ("tomato sauce", "", "hot", "pint"): (35, 40, 45, 50),
    ("tomato sauce", "", "hot", "quart"): (40, 45, 50, 55),
    ("salsa", "", "hot", "pint"): (15, 20, 20, 25),
    ("dill pickles", "", "raw", "pint"): (10, 15, 15, 20),
    ("dill pickles", "", "raw", "quart"): (15, 20, 20, 25),
    ("bread and butter pickles", "", "hot", "pint quart"): (10, 15, 15, 20),
    ("piccalilli", "", "hot", "half_pint pint"): (5, 10, 10, 15),
    ("jam", "", "hot", "half_pint pint"): (5, 10, 10, 15),
}
# the same rows of the guide, carried from memory
REMEMBERED_IN_WATER = {
    ("nectarines", "", "hot", "pint"): 20,
    ("nectarines", "", "hot", "quart"): 25,
    ("nectarines", "", "raw", "pint"): 25,
    ("nectarines", "", "raw", "quart"): 30,
    ("asian pears", "", "hot", "pint"): 20,
    ("asian pears", "", "hot", "quart"): 25,
    ("rhubarb", "", "hot", "pint quart"): 15,
    ("grapes", "", "hot", "pint quart"): 10,
    ("grapes", "", "raw", "pint"): 15,
    ("grapes", "", "raw", "quart"): 20,
    ("grapefruit", "", "raw", "pint quart"): 10,
    ("pineapple", "", "hot", "pint"): 15,
    ("pineapple", "", "hot", "quart"): 20,
    ("figs", "", "hot", "pint"): 45,
    ("figs", "", "hot", "quart"): 50,
    ("lemon curd", "", "hot", "half_pint"): 15,
    ("tomatillos", "", "hot", "pint"): 40,
    ("tomatillos", "", "hot", "quart"): 45,
    ("ketchup", "", "hot", "pint"): 15,
    ("sweet pickles", "", "hot", "pint quart"): 5,
    ("sweet pickles", "", "raw", "pint"): 10,
    ("sweet pickles", "", "raw", "quart"): 15,
    ("gherkins", "", "raw", "pint"): 5,
    ("pickled beets", "", "hot", "pint quart"): 30,
    ("dilly beans", "", "raw", "pint"): 5,
    ("pickled jalapenos", "", "raw", "pint"): 10,
    ("pickled asparagus", "", "raw", "pint"): 10,
    ("pickled okra", "", "raw", "pint"): 10,
    ("pickled onions", "", "raw", "pint"): 10,
    ("pickled carrots", "", "hot", "pint"): 15,
    ("pickled vegetables", "", "hot", "pint"): 5,
    ("pickled vegetables", "", "hot", "quart"): 10,
    ("pickle relish", "", "hot", "half_pint pint"): 10,
    ("fermented pickles", "", "raw", "pint"): 10,
    ("fermented pickles", "", "raw", "quart"): 15,
    ("sauerkraut", "", "hot", "pint"): 10,
    ("sauerkraut", "", "hot", "quart"): 15,
    ("sauerkraut", "", "raw", "pint"): 20,
    ("sauerkraut", "", "raw", "quart"): 25,
    ("fruit butter", "", "hot", "half_pint pint"): 5,
    ("fruit butter", "", "hot", "quart"): 10,
}
READ_UNDER_PRESSURE = {
    ("asparagus", "", "hot raw", "pint"): 30,
    ("asparagus", "", "hot raw", "quart"): 40,
    ("green beans", "", "hot raw", "pint"): 20,
    ("green beans", "", "hot raw", "quart"): 25,
    ("beets", "", "hot", "pint"): 30,
    ("beets", "", "hot", "quart"): 35,
    ("carrots", "", "hot raw", "pint"): 25,
    ("carrots", "", "hot raw", "quart"): 30,
    ("corn", "", "hot raw", "pint"): 55,
    ("corn", "", "hot raw", "quart"): 85,
    ("creamed corn", "", "hot", "pint"): 85,
    ("potatoes", "", "hot", "pint"): 35,
    ("potatoes", "", "hot", "quart"): 40,
    ("pumpkin", "", "hot", "pint"): 55,
    ("pumpkin", "", "hot", "quart"): 90,
    ("dried beans", "", "hot", "pint"): 75,
    ("dried beans", "", "hot", "quart"): 90,
    ("baked beans", "", "hot", "pint"): 65,
    ("baked beans", "", "hot", "quart"): 75,
    ("lima beans", "fresh", "hot raw", "pint"): 40,
    ("lima beans", "fresh", "hot raw", "quart"): 50,
    ("lima beans", "dried", "hot", "pint"): 75,
    ("lima beans", "dried", "hot", "quart"): 90,
    ("peas", "", "hot raw", "pint quart"): 40,
    ("mushrooms", "", "hot", "half_pint pint"): 45,
    ("meat", "", "hot raw", "pint"): 75,
    ("meat", "", "hot raw", "quart"): 90,
    ("ground meat", "", "hot", "pint"): 75,
    ("ground meat", "", "hot", "quart"): 90,
    ("chicken", "boneless", "hot raw", "pint"): 75,
    ("chicken", "boneless", "hot raw", "quart"): 90,
    ("chicken", "with_bones", "hot raw", "pint"): 65,
    ("chicken", "with_bones", "hot raw", "quart"): 75,
    ("stock", "", "hot", "pint"): 20,
    ("stock", "", "hot", "quart"): 25,
    ("soup", "", "hot", "pint"): 60,
    ("soup", "", "hot", "quart"): 75,
    ("chili", "", "hot", "pint"): 75,
    ("fish", "", "raw", "pint"): 100,
    ("tomatoes", "crushed", "hot", "pint quart"): 15,
    ("tomatoes", "in_water", "hot raw", "pint quart"): 10,
    ("tomatoes", "in_juice", "hot raw", "pint quart"): 25,
    ("tomatoes", "no_liquid", "raw", "pint quart"): 25,
    ("tomato juice", "", "hot", "pint quart"): 15,
    ("tomato sauce", "", "hot", "pint quart"): 15,
    ("peaches", "", "hot raw", "pint quart"): 10,
    ("apricots", "", "hot raw", "pint quart"): 10,
    ("pears", "", "hot", "pint quart"): 10,
    ("plums", "", "hot raw", "pint quart"): 10,
    ("apples", "", "hot", "pint quart"): 8,
    ("applesauce", "", "hot", "pint"): 8,
    ("applesauce", "", "hot", "quart"): 10,
    ("berries", "", "hot", "pint quart"): 8,
    ("berries", "", "raw", "pint"): 8,
    ("berries", "", "raw", "quart"): 10,
}
REMEMBERED_UNDER_PRESSURE = {
    ("okra", "", "hot", "pint"): 25,
    ("okra", "", "hot", "quart"): 40,
    ("sweet potatoes", "", "hot", "pint"): 65,
    ("sweet potatoes", "", "hot", "quart"): 90,
    ("spinach", "", "hot", "pint"): 70,
    ("spinach", "", "hot", "quart"): 90,
    ("succotash", "", "hot raw", "pint"): 60,
    ("succotash", "", "hot raw", "quart"): 85,
    ("peppers", "", "hot", "half_pint pint"): 35,
    ("spaghetti sauce", "", "hot", "pint"): 20,
    ("spaghetti sauce", "", "hot", "quart"): 25,
    ("spaghetti sauce with meat", "", "hot", "pint"): 60,
    ("spaghetti sauce with meat", "", "hot", "quart"): 70,
    ("tuna", "", "raw", "half_pint pint"): 100,
    ("clams", "", "hot", "half_pint"): 60,
    ("clams", "", "hot", "pint"): 70,
    ("crab", "", "hot", "half_pint"): 70,
    ("crab", "", "hot", "pint"): 80,
    ("oysters", "", "hot", "half_pint pint"): 75,
    ("shrimp", "", "hot", "half_pint pint"): 45,
    ("tomatillos", "", "hot", "pint quart"): 10,
    ("nectarines", "", "hot raw", "pint quart"): 10,
    ("cherries", "", "hot", "pint"): 8,
    ("cherries", "", "hot", "quart"): 10,
    ("cherries", "", "raw", "pint quart"): 10,
    ("rhubarb", "", "hot", "pint quart"): 8,
    ("grapefruit", "", "hot", "pint quart"): 8,
    ("grapefruit", "", "raw", "pint"): 8,
    ("grapefruit", "", "raw", "quart"): 10,
}
HIGH_ACID = ("peaches", "apricots", "pears", "plums", "apples", "applesauce", "berries", "nectarines", "cherries")
# inches: the pages that were read
HEADSPACES = {
    **dict.fromkeys(("peaches", "pears", "apricots", "apples", "applesauce", "plums", "cherries", "berries"), 0.5),
    **dict.fromkeys(
        ("tomatoes", "tomato juice", "salsa", "dill pickles", "bread and butter pickles", "piccalilli"), 0.5
    ),
    **dict.fromkeys(("apple juice", "grape juice", "tomato sauce", "jam"), 0.25),
    **dict.fromkeys(
        ("green beans", "asparagus", "beets", "carrots", "corn", "creamed corn", "potatoes", "pumpkin"), 1.0
    ),
    **dict.fromkeys(("dried beans", "peas", "mushrooms", "meat", "ground meat", "stock", "soup", "chili", "fish"), 1.0),
    "chicken": 1.25,
}
# how much longer a time in the first column becomes in the others; what is remembered follows them
SHORT, LONG = (0, 5, 5, 10), (0, 5, 10, 15)


def key(row):
    return row.process, row.style, " ".join(row.packs), " ".join(row.jars)


def table(canner, *, memory):
    return {key(row): row for row in printed.rows(canner) if row.memory is memory}


@pytest.mark.source("usda-aib-539")
def test_every_cell_for_boiling_water_that_was_read():
    found = {name: row.minutes for name, row in table(BOILING_WATER, memory=False).items()}
    assert found == READ_IN_WATER


@pytest.mark.source("usda-aib-539", "from-memory")
def test_every_remembered_row_for_boiling_water_follows_the_bands():
    found = {name: row.minutes for name, row in table(BOILING_WATER, memory=True).items()}
    expected = {
        name: tuple(base + more for more in (SHORT if base <= 15 else LONG))
        for name, base in REMEMBERED_IN_WATER.items()
    }
    assert found == expected


@pytest.mark.source("usda-aib-539")
def test_every_time_under_pressure_that_was_read():
    assert {name: row.minutes[0] for name, row in table(PRESSURE, memory=False).items()} == READ_UNDER_PRESSURE


@pytest.mark.source("usda-aib-539", "from-memory")
def test_every_remembered_time_under_pressure():
    assert {name: row.minutes[0] for name, row in table(PRESSURE, memory=True).items()} == REMEMBERED_UNDER_PRESSURE


@pytest.mark.source("computed")
def test_fruit_alone_is_read_in_the_lower_pressures():
    for row in printed.rows(PRESSURE):
        lower = row.process in HIGH_ACID or row.process in ("rhubarb", "grapefruit")
        assert row.gauge == ("high_acid" if lower else "low_acid"), row


@pytest.mark.source("usda-aib-539")
@pytest.mark.parametrize(("process", "inches"), HEADSPACES.items())
def test_the_headspace_of_a_recipe(process, inches):
    assert printed.recipes()[process].headspace_in == inches


@pytest.mark.source("computed")
def test_every_process_has_a_recipe_and_a_food():
    of_rows = {row.process for canner in (BOILING_WATER, PRESSURE) for row in printed.rows(canner)}
    of_foods = {food.process for food in foods().values() if food.process}
    assert of_rows == of_foods == set(printed.recipes())


@pytest.mark.source("computed")
def test_only_food_that_is_canned_has_a_process():
    for name, food in foods().items():
        assert not food.process or food.kind in CANNED, name


@pytest.mark.source("computed")
def test_low_acid_food_has_no_row_for_boiling_water():
    in_water = {row.process for row in printed.rows(BOILING_WATER)}
    for name, food in foods().items():
        assert food.kind != "low_acid" or food.process not in in_water, name


@pytest.mark.source("computed")
def test_no_printed_time_is_under_the_shortest_of_its_food():
    for name, food in foods().items():
        for row in printed.rows(BOILING_WATER):
            if food.process == row.process and "half_gallon" not in row.jars:
                assert food.water_min <= row.minutes[0], name
        for row in printed.rows(PRESSURE):
            if food.process == row.process and food.pressure_min:
                assert food.pressure_min[0] <= row.minutes[0] <= food.pressure_min[1], name


@pytest.mark.source("computed")
def test_styles_packs_and_jars_are_words_of_the_data():
    packing = {row["id"] for row in read_toml(printed.PACKING)["packing"]}
    for canner in (BOILING_WATER, PRESSURE):
        for row in printed.rows(canner):
            assert set(row.packs) <= {"hot", "raw"}
            assert set(row.jars) <= set(sizes())
            assert not row.style or row.style in packing
