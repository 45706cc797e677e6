"""The figures of the rooms of safety at their edges, typed from what the agencies print."""

import pytest

from assistant.replies.worded import answer
from rules.foods.dishes import dishes
from rules.model import Quantity, Request
from rules.physics.units import to_c, to_f
from rules.safety.holding_limits import limit_c, limit_min

FT_M = 0.3048


def ask(subject, feet=None, **fields):
    elevation_m = None if feet is None else feet * FT_M
    return answer(Request(topic="doneness", subject=subject, elevation_m=elevation_m, **fields))


def value(answered, figure):
    found = answered.figure(figure)
    return None if found is None else found.value


def degrees_f(answered, figure):
    return to_f(answered.figure(figure).value)


def said(answered):
    because = [b.text for b in answered.because]
    return " ".join((answered.headline, *answered.steps, *because, *(c.text for c in answered.cautions)))


# water to drink


@pytest.mark.parametrize(
    ("feet", "cdc", "epa", "canada", "most"),
    [
        (0, 1, 1, 1, 1),
        (4999, 1, 1, 1, 1),
        (5000, 1, 3, 1, 3),
        (6499, 1, 3, 1, 3),
        (6500, 3, 3, 1, 3),
        (6562, 3, 3, 2, 3),
        (14_000, 3, 3, 2, 3),
    ],
)
def test_the_longest_boil_of_the_agencies_is_the_answer(feet, cdc, epa, canada, most):
    """CDC 3 min from 6,500 ft, EPA 3 min from 5,000 ft, Health Canada 2 min from 2,000 m."""
    given = ask("drinking_water", feet)
    assert [value(given, f"boil_{name}") for name in ("cdc", "epa", "health_canada")] == [cdc, epa, canada]
    assert value(given, "boil_who") is None
    time = given.figures[0]
    assert (time.low, time.value, time.high) == (min(cdc, epa, canada), most, most)
    assert given.headline.endswith(f"rolling boil for {most} min.")
    assert any(f"count {most} min" in step for step in given.steps)


# formula


@pytest.mark.parametrize(("feet", "boil"), [(None, None), (1000, "1 min"), (5000, "3 min"), (7000, "3 min")])
def test_formula_is_mixed_no_cooler_than_70_c(feet, boil):
    given = ask("formula", feet)
    assert given.figure("mix_temperature").value == pytest.approx(70, abs=0.01)
    assert "158 °F (70 °C)" in given.headline
    assert any("boil it hard for" in step for step in given.steps) is (boil is not None)
    assert boil is None or any(f"boil it hard for {boil}" in step for step in given.steps)


def test_baby_bottles_are_boiled_for_the_longer_of_the_two_times():
    time = ask("bottle_sterilising", 7000).figure("boil_time")
    assert (time.low, time.value, time.high, time.unit) == (5, 10, 10, "min")


# hot and cold


@pytest.mark.parametrize(
    ("limit", "temp_f"),
    [("hot_hold", 135), ("roast_hold", 130), ("cold_hold", 41), ("reheat", 165), ("cool_first", 70), ("cool_last", 41)],
)
def test_a_limit_of_the_food_code(limit, temp_f):
    assert limit_c(limit) == pytest.approx(to_c(temp_f))


@pytest.mark.parametrize(
    ("limit", "minutes"), [("reheat", 120), ("cool_first", 120), ("cool_last", 360), ("time_control", 240)]
)
def test_a_time_of_the_food_code(limit, minutes):
    assert limit_min(limit) == minutes


def test_reheating_is_to_165_f_within_two_hours():
    given = ask("reheating")
    assert "165 °F (74 °C)" in given.headline
    assert "2 h" in given.headline
    assert any("Do not reheat in a slow cooker" in c.text for c in given.cautions)


def test_cold_food_stands_no_longer_than_four_hours():
    given = ask("holding")
    stands = next(step for step in given.steps if "41 °F" in step)
    assert "70 °F" in stands
    assert "4 h at most" in stands


@pytest.mark.parametrize(("fields", "placed"), [({"feet": 7000}, True), ({"pressure_pa": 78_000.0}, True), ({}, False)])
def test_the_boil_here_is_told_to_a_kitchen_that_is_known(fields, placed):
    text = said(ask("holding", **fields))
    assert ("still above every one of these limits" in text) is placed
    assert ("Slow-cooker advice" in text) is placed
    assert "germs die or grow by temperature" in text
    if "feet" in fields:
        assert "Water boils at 199 °F (93 °C) at 7,000 ft" in text


def test_at_the_sea_the_boil_is_no_news():
    assert "still above" not in said(ask("reheating", 0))
    assert "still above" in said(ask("reheating", 1000))


# thawing


@pytest.mark.parametrize(
    ("quantity", "low_h", "high_h", "wet_min"),
    [
        (Quantity(20, "lb"), 96, 120, 600),
        (Quantity(20, "pounds"), 96, 120, 600),
        (Quantity(9.07185, "kg"), 96, 120, 600),
        (Quantity(9071.85, "g"), 96, 120, 600),
        (Quantity(320, "oz"), 96, 120, 600),
        (Quantity(1, "lb"), 24, 24, 30),
        (Quantity(0.5, "lb"), 24, 24, 30),
        (Quantity(60, "lb"), 288, 360, 1800),
        (Quantity(61, "lb"), None, None, None),
        (Quantity(0, "lb"), None, None, None),
    ],
)
def test_thawing_by_weight(quantity, low_h, high_h, wet_min):
    """USDA: a day for every 4 to 5 lb and a day at the least, half an hour a pound in cold water."""
    given = ask("thawing", quantity=quantity)
    cold = given.figure("refrigerator_time")
    if low_h is None:
        assert cold is None
        return
    assert (cold.low / 60, cold.value / 60, cold.high / 60) == (low_h, high_h, high_h)
    assert value(given, "cold_water_time") == pytest.approx(wet_min, rel=1e-4)


def test_nothing_is_thawed_on_the_counter():
    assert "Never thaw on the counter or in warm water" in said(ask("thawing"))


# milk


@pytest.mark.parametrize(
    ("feet", "lost", "kept"),
    [
        (None, (), ("191 °F", "204 °F", "212 °F")),
        (-500, (), ("212 °F", "204 °F")),
        (1000, ("212 °F",), ("204 °F", "191 °F")),
        (7000, ("212 °F", "204 °F"), ("191 °F",)),
        (14_000, ("212 °F", "204 °F", "191 °F"), ("161 °F", "145 °F")),
    ],
)
def test_the_rows_that_an_open_pan_does_not_reach(feet, lost, kept):
    """21 CFR 131.3: 191 degF for 1 s, 204 for 0.05 s, 212 for 0.01 s."""
    text = " ".join(b.text for b in ask("pasteurise_milk", feet).because)
    assert all(row in text for row in lost)
    assert ("cannot reach" in text) is bool(lost)
    reach = text.partition("cannot reach")[2]
    assert not any(row in reach for row in kept)


def test_milk_is_held_for_half_an_hour_or_a_quarter_of_a_minute():
    given = ask("pasteurise_milk", 7000)
    assert "145 °F (63 °C) for 30 min" in given.headline
    assert "161 °F (71.5 °C) for 15 s" in given.headline
    assert any("5 °F" in step and "hotter" in step for step in given.steps)


@pytest.mark.parametrize("feet", [None, 0, 7000, 12_000, 14_000, 18_000])
def test_curd_is_heated_under_the_boil(feet):
    """Ricotta and paneer at 185 to 195 degF, and never to a temperature that water does not reach."""
    given = ask("cheese_curd", feet)
    acid = given.figure("acid_curd_temperature")
    boil_c = answer(Request(topic="boiling_point", elevation_m=(feet or 0) * FT_M)).figure("boiling_point").value
    assert acid.low <= acid.high < boil_c
    assert to_f(acid.high) <= 195.01
    assert acid.value == acid.low
    if feet in (None, 0):
        assert (to_f(acid.low), to_f(acid.high)) == pytest.approx((185, 195), abs=0.05)
    assert degrees_f(given, "rennet_temperature") == pytest.approx(86, abs=0.05)


def test_yogurt_is_kept_between_105_and_112_f():
    given = ask("yogurt", 7000)
    keep, time = given.figure("incubation_temperature"), given.figure("incubation_time")
    assert (to_f(keep.low), to_f(keep.value), to_f(keep.high)) == pytest.approx((105, 110, 112), abs=0.05)
    assert (time.low / 60, time.value / 60, time.high / 60) == (4, 6, 8)


# sanitising


@pytest.mark.parametrize(
    ("feet", "reached", "flashes"), [(0, True, False), (7000, True, False), (10_000, True, True), (18_000, False, True)]
)
def test_a_rinse_of_180_f_is_reached_or_the_cook_is_sent_to_chemicals(feet, reached, flashes):
    """Water boils at 194 degF at about 10,000 ft and at 180 degF at about 17,400 ft."""
    given = ask("sanitising", feet)
    assert ("use chemical sanitiser" in given.headline) is not reached
    assert any("comes out as steam" in c.text for c in given.cautions) is flashes


# the ice point


@pytest.mark.parametrize(
    ("reading_c", "right", "words"),
    [
        (0.0, True, ()),
        (0.5, True, ()),
        (-0.5, True, ()),
        (0.6, False, ("too high", "reset", "take 1 °F")),
        (-0.6, False, ("too low", "reset", "add 1 °F")),
        (5.0, False, ("too high", "reset", "take 9 °F")),
        (-5.0, False, ("too low", "reset", "add 9 °F")),
        (5.1, False, ("too high", "Replace it", "take 9 °F")),
        (-5.1, False, ("too low", "Replace it", "add 9 °F")),
        (15.0, False, ("too high", "Replace it")),
        (-15.0, False, ("too low", "Replace it")),
    ],
)
def test_a_thermometer_in_melting_ice(reading_c, right, words):
    """A reading over 0 degC is too high, and what it reads too high is taken off."""
    given = ask("thermometer_ice_point", temperature_c=reading_c)
    assert value(given, "thermometer_offset") == pytest.approx(reading_c)
    assert given.headline.startswith("Your thermometer is right") is right
    assert any("Do not judge meat" in c.text for c in given.cautions) is not right
    for word in words:
        assert word in said(given), word


# a temperature held for a time


@pytest.mark.parametrize(
    ("dish", "temp_f", "time_min", "verdict", "hold"),
    [
        ("chicken thighs", 140, None, "", 35),
        ("chicken thighs", 140, 35.0, "Yes.", 35),
        ("chicken thighs", 140, 34.9, "No.", 35),
        ("chicken thighs", 165, None, "", None),
        ("chicken thighs", 165, 1.0, "Yes.", None),
        ("steak", 130, None, "", 121),
        ("steak", 130, 120.0, "No.", 121),
        ("steak", 145, 3.0, "Yes.", 3),
        ("steak", 145, 2.9, "No.", 3),
        ("ground beef", 155, 0.25, "No.", 0.2833),
        ("ground beef", 155, 0.3, "Yes.", 0.2833),
        ("ground beef", 144, 600.0, "No.", None),
        ("eggs", 135, 75.0, "Yes.", 75),
        ("eggs", 135, 74.0, "No.", 75),
        ("rabbit", 155, 600.0, "No.", None),
        ("rabbit", 160, 1.0, "Yes.", None),
        ("wild boar", 160, 600.0, "No.", None),
        ("shrimp", 144, 60.0, "No.", None),
        ("shrimp", 145, 1.0, "Yes.", None),
    ],
)
def test_what_is_held_is_judged_by_the_printed_rows(dish, temp_f, time_min, verdict, hold):
    dish_class = dishes()[dish].dish_class
    given = ask("time_temperature", dish=dish, dish_class=dish_class, temperature_c=to_c(temp_f), time_min=time_min)
    assert given.headline.startswith(verdict)
    assert given.headline.startswith(("Yes.", "No.")) is bool(verdict)
    assert value(given, "hold_time") == (None if hold is None else pytest.approx(hold, abs=1e-3))
    assert any(c.level == "stop" for c in given.cautions) is (verdict == "No.")
    assert all(c.sources for c in given.cautions)


@pytest.mark.parametrize(("temp_c", "asked"), [(-40.0, True), (150.0, True), (-41.0, False), (151.0, False)])
def test_a_centre_is_as_hot_as_food_can_be(temp_c, asked):
    given = ask("time_temperature", dish_class="fish", temperature_c=temp_c, time_min=10.0)
    assert any("centre of the food" in c.text for c in given.cautions) is not asked


@pytest.mark.parametrize(
    ("dish_class", "temp_f", "minutes"),
    [
        ("fish", 145, 0.25),
        ("shellfish", 145, 0.25),
        ("egg", 145, 0.25),
        ("casserole", 165, None),
        ("custard", 160, None),
    ],
)
def test_food_without_a_table_has_the_row_of_the_code(dish_class, temp_f, minutes):
    """Food Code 3-401.11: fish and eggs to order 145 degF for 15 s."""
    given = ask("time_temperature", dish_class=dish_class)
    assert degrees_f(given, "safe_temperature") == pytest.approx(temp_f, abs=0.05)
    assert value(given, "hold_time") == minutes


@pytest.mark.parametrize(
    ("dish_class", "temp_f", "low", "high"),
    [
        ("tender_cut", 130, 112, 121),
        ("tender_cut", 140, 12, 12),
        ("tender_cut", 145, 3.5, 4),
        ("poultry_pieces", 140, 33.7, 35),
        ("poultry_pieces", 145, 13, 13.8),
        ("poultry_pieces", 150, 4.2, 4.9),
        ("ground_meat", 145, 3, 3),
        ("ground_meat", 150, 1, 1),
        ("ground_meat", 155, 0.2833, 0.2833),
    ],
)
def test_the_chart_tells_the_longer_of_two_tables(dish_class, temp_f, low, high):
    hold = ask("time_temperature", dish_class=dish_class).figure(f"hold_at_{temp_f}_f")
    assert hold.value == hold.high == pytest.approx(high, abs=1e-3)
    assert hold.low == pytest.approx(low, abs=0.6)
    assert hold.low <= hold.high
    assert hold.unit == "min"


# home-canned food, before anybody tastes it


@pytest.mark.parametrize(
    ("feet", "minutes"),
    [(-200, 10), (0, 10), (999, 10), (1000, 11), (1001, 12), (1500, 12), (5000, 15), (5001, 16), (9999, 20)],
)
def test_ten_minutes_and_one_for_each_thousand_feet_begun(feet, minutes):
    _boils("home_canned_tasting", "boil_before_tasting", feet, minutes)


@pytest.mark.parametrize(
    ("feet", "minutes"),
    [(-200, 10), (0, 10), (999, 10), (1000, 11), (1500, 11), (1999, 11), (2000, 12), (5001, 15), (9999, 19)],
)
def test_empty_jars_one_minute_more_for_each_additional_thousand(feet, minutes):
    """10 min below 1,000 ft, one more for each additional 1,000 ft."""
    _boils("jar_sterilising", "sterilising_time", feet, minutes)


def _boils(subject, figure, feet, minutes):
    given = answer(Request(topic="preserve", subject=subject, elevation_m=feet * FT_M))
    time = given.figure(figure)
    assert (time.value, time.sea_level, time.unit) == (minutes, 10, "min")
    assert f"{minutes} min" in given.headline


def test_a_spoiled_jar_is_a_stop():
    assert any(c.level == "stop" for c in ask("home_canned_tasting", 5000).cautions)
