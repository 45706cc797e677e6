"""In boiling water and steam: the time and its parts, the water over the jars, sterile jars, which refusal is given."""

import pytest

from assistant.replies.worded import answer
from rules.foods.dishes import dishes
from rules.model import Quantity, Request
from rules.physics.units import to_f
from rules.preserving import gate

FT_M = 0.3048


def can(dish=None, feet=7000, **fields):
    known = dishes().get(dish or "")
    dish_class = known.dish_class if known else None
    return answer(Request(topic="preserve", dish=dish, dish_class=dish_class, elevation_m=feet * FT_M, **fields))


def texts(answered):
    return " ".join((*answered.steps, *(b.text for b in answered.because), *(c.text for c in answered.cautions)))


def sources(answered):
    return {source for because in answered.because for source in because.sources}


@pytest.mark.parametrize(
    ("dish", "base", "feet", "time", "band"),
    [
        ("peaches", 25, 0, (25, 25, 25), 0),
        ("peaches", 25, 1001, (30, 30, 30), 1001),
        ("peaches", 25, 6001, (40, 40, 40), 6001),
        ("peaches", 25, 8001, (40, 45, 45), 6001),
        ("jam", 5, 9000, (15, 20, 20), 6001),
        ("jam", 5, 3001, (10, 10, 10), 3001),
    ],
)
def test_the_time_and_what_the_elevation_adds(dish, base, feet, time, band):
    """The guide's cells, and above 8,000 ft those of Utah State, of which the longer is told."""
    given = can(dish, feet, time_min=base)
    process, more = given.figure("process_time"), given.figure("added_time")
    assert (process.low, process.value, process.high, process.unit) == (*time, "min")
    assert (more.low, more.value, more.high, more.unit) == (*(t - base for t in time), "min")
    assert given.figure("band").value == band
    assert f"{time[1]} min" in given.headline
    assert ("as the recipe says" in given.headline) is (time[1] == base)
    assert time[1] == base or f"{base} min by the recipe and {time[1] - base} min for the elevation" in given.headline


@pytest.mark.parametrize(("feet", "both"), [(2000, False), (3001, True), (9000, True)])
def test_each_table_that_was_read_is_cited(feet, both):
    given = can("peaches", feet, time_min=25)
    assert "usda-aib-539" in sources(given)
    assert ("usu-canning-bands" in sources(given)) is both
    assert ("Utah State" in texts(given)) is both
    assert ("The two differ; the longer is given" in texts(given)) is (feet > 8000)


@pytest.mark.parametrize(
    ("dish", "feet", "added", "short"),
    [
        ("tomato puree", 0, 0, None),
        ("tomato puree", 9000, 20, None),
        ("canned pie filling", 2000, 5, None),
        ("canned pie filling", 9000, 20, None),
        ("chutney", 9000, 20, 15),
        ("chutney", 5000, 10, 5),
        ("chutney", 2000, 5, None),
        (None, 9000, 20, 15),
        (None, 500, 0, None),
    ],
)
def test_without_a_time_the_addition_of_each_length_is_told(dish, feet, added, short):
    """Of food of which no process is printed here."""
    given = can(dish, feet)
    assert given.figure("process_time") is None
    assert given.figure("added_time").value == added
    found = given.figure("added_time_short")
    assert (found and found.value) == short
    assert given.figure("band")
    assert "usda-aib-539" in sources(given)
    told = "nothing is added" if added == 0 else f"add {added} min"
    assert told in given.headline
    assert short is None or f"{short} min to one of 15 min or less" in given.headline


@pytest.mark.parametrize(
    ("dish", "base", "sterile"), [("jam", 5, True), ("jam", 9, True), ("jam", 10, False), ("dill pickles", 10, False)]
)
def test_jars_are_sterile_where_the_process_is_under_ten_minutes(dish, base, sterile):
    """Before the elevation is added: jam of 5 min takes 15 at 7,000 ft and still wants sterile jars."""
    assert any("fill sterile jars" in step for step in can(dish, time_min=base).steps) is sterile


@pytest.mark.parametrize(("feet", "boiled", "clean"), [(0, 10, 10), (5000, 15, 15), (7000, 17, 20)])
def test_jars_that_are_only_clean_take_a_ten_minute_process(feet, boiled, clean):
    step = next(step for step in can("jam", feet, jars=(Quantity(0.5, "pt"),)).steps if "sterile jars" in step)
    assert f"boiled empty for {boiled} min" in step
    assert f"clean hot jars for {clean} min" in step


def test_the_depth_of_water_without_a_time_is_told_for_both():
    assert "2 in (5 cm) where the process is over 30 min" in texts(can("chutney"))


@pytest.mark.parametrize(("feet", "boil"), [(0, "212 °F"), (7000, "199 °F")])
@pytest.mark.parametrize(
    ("way", "begins"), [("steam_canning", "Vent until"), ("boiling_water_canning", "Start the clock")]
)
def test_the_clock_starts_at_the_boil_here(way, begins, feet, boil):
    given = can("peaches", feet, subject=way, time_min=25)
    assert any(step.startswith(begins) and boil in step for step in given.steps)
    assert any("start the time again from nothing" in step for step in given.steps)


def test_steam_is_for_acid_food_and_45_minutes():
    given = can("peaches", subject="steam_canning", time_min=25)
    assert "in open steam" in given.headline
    assert "45 min at most" in texts(given)
    assert any(c.level == "warn" and "acid foods only" in c.text for c in given.cautions)
    assert "nchfp-steam-canners" in sources(given)
    assert "acid foods only" not in texts(can("peaches", time_min=25))
    assert "over the jars" not in texts(given)


@pytest.mark.parametrize(
    ("dish", "words"),
    [
        ("figs", "border of acid"),
        ("dill pickles", "never less of it, never weaker"),
        ("sauerkraut", "its salt and its time"),
    ],
)
def test_what_makes_the_jar_acid_is_told_for_its_own_foods(dish, words):
    assert words in texts(can(dish))
    assert words not in texts(can("peaches"))


@pytest.mark.parametrize(
    ("dish", "reason"),
    [
        ("melons", "low_acid_fruit"),
        ("persimmons", "low_acid_fruit"),
        ("fish", "group"),
        ("vegetables", "group"),
        ("milk", "untested"),
        ("meatloaf", "untested"),
        ("octopus", "unknown"),
    ],
)
@pytest.mark.parametrize("way", [None, "boiling_water_canning", "pressure_canning"])
def test_food_without_a_process_is_refused_as_what_it_is(dish, reason, way):
    """Never as one that only wants the other canner."""
    request = Request(topic="preserve", dish=dish, dish_class=dishes()[dish].dish_class, subject=way, elevation_m=0)
    assert gate.refusal(request) == reason


@pytest.mark.parametrize(
    ("feet", "base", "less", "more"),
    [
        (0, None, 0, 0),
        (3000, None, 0, 0.5),
        (4999, None, 0, 1.5),
        (5000, None, 1, 1.5),
        (7000, 2, 1, 2.5),
        (9000, 3, 1, 3.5),
    ],
)
def test_blanching_for_the_freezer(feet, base, less, more):
    """A minute from 5,000 ft, or half a minute for each 1,000 ft over 2,000 ft."""
    given = can("artichokes", feet, subject="blanching", time_min=base)
    added, time = given.figure("blanch_more"), given.figure("blanch_time")
    assert (added.low, added.value, added.high, added.unit) == (less, more, more, "min")
    assert (time is None) is (base is None)
    assert time is None or (time.low, time.value, time.high) == (base + less, base + more, base + more)
    assert ("no longer" in given.headline) is (more == 0)


@pytest.mark.parametrize(
    ("dish", "feet", "low", "high"),
    [
        ("green beans", 4999, 3, 4.5),
        ("green beans", 6000, 4, 5),
        ("peas", 5000, 2.5, 3),
        ("corn on the cob", 7000, 8, 13.5),
    ],
)
def test_a_vegetable_of_the_table_is_blanched_for_its_own_time(dish, feet, low, high):
    time = can(dish, feet, subject="blanching").figure("blanch_time")
    assert (time.low, time.high) == (low, high)


@pytest.mark.parametrize(("minutes", "fits"), [(0.2, False), (0.25, True), (30, True), (31, False)])
def test_a_blanch_is_short(minutes, fits):
    assert bool(can("green beans", subject="blanching", time_min=minutes).figure("blanch_time")) is fits


@pytest.mark.parametrize(("feet", "gel_f"), [(0, 220), (5000, 211), (7000, 207)])
def test_jam_sets_8_f_over_the_boil(feet, gel_f):
    point = can("jam", feet, subject="gel_point").figure("gel_point")
    assert to_f(point.value) == pytest.approx(gel_f, abs=0.6)
    assert to_f(point.sea_level) == pytest.approx(220, abs=0.1)
    boil = can("jam", feet, subject="gel_point").figure("boiling_point")
    assert to_f(point.value) - to_f(boil.value) == pytest.approx(8, abs=0.05)
    assert to_f(point.low) - to_f(boil.value) == pytest.approx(7.02, abs=0.05)


@pytest.mark.parametrize(
    ("fields", "asked"),
    [
        ({"feet": 5801}, True),
        ({"feet": 4500}, False),
        ({"feet": 4500, "elevation_from": "barometer"}, True),
        ({"feet": 4500, "elevation_from": "boil_test"}, True),
        ({"feet": 4500, "elevation_from": "place"}, True),
        ({"feet": 4500, "elevation_from": "assumed"}, True),
        ({"feet": 4500, "elevation_from": "stated"}, False),
        ({"feet": 4500, "pressure_pa": 85_000.0}, True),
    ],
)
def test_an_elevation_that_is_not_sure_is_asked_from_a_map(fields, asked):
    assert ("from a map or survey" in texts(can("peaches", **fields))) is asked
    assert ("just under the band above 6,000 ft" in texts(can("peaches", **fields))) is (fields["feet"] == 5801)


@pytest.mark.parametrize(
    ("dish", "fields", "stop"),
    [
        (None, {}, True),
        (None, {"subject": "steam_canning"}, True),
        (None, {"subject": "pressure_canning"}, False),
        ("peaches", {}, False),
    ],
)
def test_where_no_food_is_named_boiling_water_is_for_acid_food_only(dish, fields, stop):
    given = can(dish, **fields)
    assert any(c.level == "stop" and "acid food only" in c.text for c in given.cautions) is stop
