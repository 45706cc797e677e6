"""The judge at its edges: a tenth of a degree, a second, the table that decides, the bath to set instead."""

import pytest

from assistant.replies.sentences import worded
from rules.book import Case
from rules.errors import UnknownWord
from rules.foods.dishes import dishes
from rules.model import Request
from rules.physics.units import to_c, to_f
from rules.safety import caution, chart, kind_of, row_of, safe_temperature
from rules.safety.lethality import bath_min, bath_source, judge, kind, kind_judged, kinds, printed

FSIS, ALASKA, NEW_YORK, EGGS = "fsis-gd-2021-14", "alaska-18-aac-31", "ny-1-nycrr-271", "schuman-1997-eggs"
CODE, CHART = "fda-food-code-2022", "usda-fsis-safe-temperatures"
ROASTS = ("roast_lethality_alaska-18-aac-31", "roast_lethality_ny-1-nycrr-271")


@pytest.mark.parametrize(
    ("of", "temp_c", "needs_min"),
    [
        ("whole_cut", 54.3, None),
        ("whole_cut", 54.4, 121),
        ("whole_cut", 55.5, 97),
        ("whole_cut", 55.6, 89),
        ("poultry", 57.7, None),
        ("poultry", 57.8, 81.4),
        ("poultry", 58.9, 52.9),
        ("poultry", 72.3, 17.7 / 60),
        ("poultry", 73.8, 0),
        ("poultry", 73.9, 0),
        ("fish", 62.6, None),
        ("fish", 62.7, 0),
        ("game", 70.9, None),
        ("game", 71.0, 0),
        ("egg_dish", 70.9, None),
        ("egg_dish", 71.0, 0),
        ("wild_game", 73.7, None),
        ("wild_game", 73.8, 0),
        ("leftover", 73.7, None),
        ("leftover", 73.9, 0),
        ("egg", 56.9, None),
        ("egg", 57.0, 75),
        ("egg", 62.7, 75),
        ("egg", 62.8, 0.25),
        ("egg", 71.0, 0),
    ],
)
def test_the_printed_degree_is_reached_or_it_is_not(of, temp_c, needs_min):
    """Rows of 130 to 132, 134.6, 136, 138, 145, 160, 162 and 165 degF; the chart's 160 degF is its 71 degC.

    Alaska has no row of 132 degF, and its 89 min of 131 degF are longer than New York's 77."""
    found = judge(of, temp_c).needs_min
    assert found == (None if needs_min is None else pytest.approx(needs_min, abs=1e-3))


@pytest.mark.parametrize(
    ("of", "temp_f", "minutes"),
    [("whole_cut", 130, 121), ("poultry", 140, 35), ("ground_meat", 150, 1), ("egg", 134.6, 75), ("raw_ham", 145, 3)],
)
def test_a_second_short_is_not_safe(of, temp_f, minutes):
    assert judge(of, to_c(temp_f), minutes).safe
    assert not judge(of, to_c(temp_f), minutes - 1 / 60).safe
    assert not judge(of, to_c(temp_f), 0.0).safe
    assert not judge(of, to_c(temp_f)).safe


@pytest.mark.parametrize(
    ("of", "temp_f", "source"),
    [
        ("whole_cut", 130, NEW_YORK),
        ("whole_cut", 120, ALASKA),
        ("poultry", 120, FSIS),
        ("poultry", 150, FSIS),
        ("ground_meat", 120, CODE),
        ("ground_meat", 145, CODE),
        ("egg", 120, EGGS),
        ("egg", 145, CODE),
        ("game", 120, "foodsafety-chart"),
        ("wild_game", 120, "cdc-mmwr-trichinella-2024"),
        ("stuffing", 120, CODE),
        ("fish", 120, CHART),
    ],
)
def test_the_table_that_decides_is_named(of, temp_f, source):
    assert judge(of, to_c(temp_f)).source == source


@pytest.mark.parametrize(
    ("dish", "judged"),
    [
        ("pork chops", "pork"),
        ("steak", "whole_cut"),
        ("lamb chops", "whole_cut"),
        ("ground beef", "ground_meat"),
        ("turkey burgers", "poultry"),
        ("chicken thighs", "poultry"),
        ("turkey", "poultry"),
        ("rabbit", "game"),
        ("wild boar", "wild_game"),
        ("eggs", "egg"),
        ("salmon", "fish"),
        ("carrots", None),
        ("bread", None),
    ],
)
def test_the_kind_of_a_dish(dish, judged):
    """As the chart of safe temperatures lists them; bear and boar as the CDC does."""
    assert kind_judged(dish, dishes()[dish].dish_class) == judged


@pytest.mark.parametrize(
    ("dish", "dish_class", "row"),
    [
        ("eggs", "egg", "egg_dish"),
        ("custard", "custard", "egg_dish"),
        ("pork chops", "tender_cut", "whole_cut"),
        (None, "poultry_pieces", "poultry"),
        (None, "ground_meat", "ground_meat"),
        (None, "casserole", "leftover"),
        (None, "fish", "fish"),
        (None, "root_vegetable", None),
        (None, "none_such", None),
    ],
)
def test_the_row_of_a_dish(dish, dish_class, row):
    assert kind_of(dish, dish_class) == row
    safe = safe_temperature(dish, dish_class)
    assert (safe.kind if safe else None) == row


@pytest.mark.parametrize(
    ("row", "temp_f", "rest_min"),
    [
        ("whole_cut", 145, 3),
        ("raw_ham", 145, 3),
        ("fish", 145, 0),
        ("ground_meat", 160, 0),
        ("egg_dish", 160, 0),
        ("game", 160, 0),
        ("poultry", 165, 0),
        ("leftover", 165, 0),
        ("stuffing", 165, 0),
        ("wild_game", 165, 0),
    ],
)
def test_the_chart(row, temp_f, rest_min):
    """Safe Minimum Cooking Temperatures, and the Food Code's 165 degF for stuffed food."""
    found = row_of(row)
    assert to_f(found.temp_c) == pytest.approx(temp_f)
    assert found.rest_min == rest_min
    assert found in chart()
    assert found.source
    assert found.food


@pytest.mark.parametrize(("dish_class", "always"), [("poultry_pieces", True), ("tender_cut", True), ("fish", False)])
def test_raw_meat_and_poultry_are_always_told_their_temperature(dish_class, always):
    assert safe_temperature(None, dish_class).always_said is always


@pytest.mark.parametrize("of", kinds())
def test_the_bath_to_set_instead_is_one_that_makes_safe(of):
    """Never a bath under the coolest row: 140 degF for poultry and pork, 131 degF for beef, 145 degF for mince."""
    assert judge(of, kind(of).bath_c).needs_min is not None
    assert judge(of, kind(of).bath_c).least_c <= kind(of).bath_c
    least_f = {"poultry": 140, "pork": 140, "raw_ham": 140, "whole_cut": 131, "game": 160, "wild_game": 165}
    assert to_f(kind(of).bath_c) >= least_f.get(of, 145) - 0.01


# Baldwin's tables print 57 to 65 degC for poultry and 55 to 66 degC for meat, by thickness.
@pytest.mark.parametrize(
    ("of", "bath_c", "thickness_mm", "minutes"),
    [
        ("poultry", 60.0, 25, 90),
        ("poultry", 60.9, 25, 90),
        ("poultry", 59.96, 25, 90),
        ("poultry", 59.9, 5, 75),
        ("whole_cut", 55.0, 25, 165),
        ("whole_cut", 55.9, 25, 165),
        ("whole_cut", 54.4, 25, 165 + 121 - 97),
        ("whole_cut", 54.4, 5, 120 + 121 - 97),
        ("whole_cut", 54.3, 25, None),
        ("fish", 63.0, 25, None),
        ("egg", 60.0, 25, None),
        ("leftover", 75.0, 25, None),
    ],
)
def test_a_bath_is_read_at_the_printed_one_that_is_no_hotter(of, bath_c, thickness_mm, minutes):
    """Under the coolest printed bath the hold grows as New York prints it: 121 min at 130 degF, 97 at 131."""
    assert bath_min(of, bath_c, thickness_mm) == (None if minutes is None else pytest.approx(minutes))


def test_without_a_thickness_an_inch_is_reckoned_with():
    assert bath_min("poultry", 63) == bath_min("poultry", 63, 25) == pytest.approx(75)


@pytest.mark.parametrize(("of", "source"), [("poultry", "baldwin-sous-vide"), ("fish", ""), ("egg", "")])
def test_the_source_of_a_bath(of, source):
    assert bath_source(of) == source


def test_a_row_names_the_code_it_is_from_where_a_table_has_two():
    assert printed("egg_lethality_schuman-1997-eggs", to_c(134.6)).source == EGGS
    assert printed("egg_lethality_schuman-1997-eggs", to_c(145)).source == CODE
    assert [printed(file, to_c(130)).source for file in ROASTS] == [ALASKA, NEW_YORK]


def test_the_word_that_is_not_known_is_told_with_what_it_should_be():
    with pytest.raises(UnknownWord, match="kind of food") as fault:
        kind("poultri")
    assert "poultri" in str(fault.value)


@pytest.mark.parametrize(
    ("dish", "temp_f"),
    [
        ("venison steak", 160),
        ("elk roast", 160),
        ("venison shank", 160),
        ("beef rouladen", 165),
        ("braciole", 165),
        ("stuffed peppers", 165),
        ("chicken kiev", 165),
        ("chicken nuggets", 165),
        ("scotch eggs", 160),
        ("egg rolls", 160),
        ("venison stew", 160),
        ("quiche", 160),
        ("fish sticks", 145),
        ("schnitzel", 145),
        ("chicken casserole", 165),
        ("ham steak", 145),
        ("turkey burgers", 165),
        ("ground beef", 160),
        ("wild boar", 165),
        ("steak", 145),
    ],
)
def test_the_hottest_row_counts_where_a_dish_falls_under_two(dish, temp_f):
    """A cut of venison is game, a rolled and filled cut of beef is stuffed."""
    assert to_f(safe_temperature(dish, dishes()[dish].dish_class).temp_c) == pytest.approx(temp_f)


@pytest.mark.parametrize(
    ("row", "temperature", "rest"),
    [
        ("whole_cut", "145 °F", ", then let it rest 3 min"),
        ("raw_ham", "145 °F", ", then let it rest 3 min"),
        ("fish", "145 °F", None),
        ("ground_meat", "160 °F", None),
        ("poultry", "165 °F", None),
        ("wild_game", "165 °F", None),
    ],
)
def test_the_caution_names_the_temperature_and_the_rest(row, temperature, rest):
    told = caution(Case(Request()), row_of(row))
    text = worded(told.text, Request().units)
    assert told.level == "warn"
    assert told.sources == (row_of(row).source,)
    assert f"must reach {temperature}" in text
    assert (", then let it rest" in text) is (rest is not None)
    assert rest is None or rest in text
    assert ("Freezing does not make it safe" in text) is (row == "wild_game")
