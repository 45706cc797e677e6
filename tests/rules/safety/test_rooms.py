"""Every room of food safety."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from assistant.replies.worded import answer
from rules import book
from rules.model import Quantity, Request
from rules.physics.units import to_c
from rules.safety import lethality
from rules.tables import read_toml

ROOMS = book.names("safety")
TABLES = sorted({file for kind in lethality.kinds().values() for file in kind.tables})
ROWS = {row["id"]: row for row in read_toml("lexicon/safety_subjects.toml")["subject"]}


def ask(subject, **fields):
    return answer(Request(topic=ROWS[subject]["topic"], subject=subject, **fields))


@pytest.mark.parametrize("subject", ROOMS)
def test_a_room_stands_in_the_catalogue(subject):
    assert subject in ROWS


@pytest.mark.parametrize("subject", ROOMS)
@pytest.mark.parametrize("elevation_m", [None, -400.0, 0.0, 2133.6, 5500.0])
def test_a_room_answers_or_asks(subject, elevation_m):
    answered = ask(subject, elevation_m=elevation_m)
    assert answered.headline or answered.missing == ("elevation",)


@pytest.mark.parametrize("subject", [s for s in ROOMS if s not in ("distilling", "thermometer_ice_point")])
def test_a_room_cautions_and_cites(subject):
    answered = ask(subject, elevation_m=2000.0)
    assert answered.cautions
    assert all(b.sources for b in answered.because)


def test_spirits_are_refused_in_one_sentence():
    answered = ask("distilling", elevation_m=2000.0)
    assert answered.headline.startswith("I do not help with distilling")
    assert answered.headline.count(".") == 1
    assert not answered.figures
    assert not answered.steps


@given(st.floats(-10, 12))
def test_the_ice_point_shows_the_offset_at_any_elevation(reading):
    found = ask("thermometer_ice_point", temperature_c=reading).figure("thermometer_offset")
    assert found.value == pytest.approx(reading, abs=0.0051)


@pytest.mark.parametrize("reading", [99.0, -40.0, math.nan])
def test_a_reading_that_is_no_ice_is_refused_kindly(reading):
    assert "melting ice" in ask("thermometer_ice_point", temperature_c=reading).cautions[0].text


@pytest.mark.parametrize(
    "quantity", [None, Quantity(3, "cup"), Quantity(-2, "lb"), Quantity(1e9, "lb"), Quantity(math.nan, "lb")]
)
def test_a_weight_that_cannot_thaw_gives_the_rule_alone(quantity):
    answered = ask("thawing", quantity=quantity)
    assert not answered.figures
    assert "4 to 5 lb" in answered.headline


@settings(max_examples=60, deadline=None)
@given(temp_c=st.floats(40, 80), table=st.sampled_from(TABLES))
def test_a_held_time_is_printed_or_there_is_none(temp_c, table):
    row = lethality.printed(table, temp_c)
    assert row in lethality.rows(table) if row else temp_c * 1.8 + 32 < lethality.rows(table)[0].temp_f


@pytest.mark.parametrize("temperature_c", [-5.0, 40.0, 54.0])
def test_too_cool_for_any_time_is_a_stop(temperature_c):
    answered = ask("time_temperature", temperature_c=temperature_c)
    assert any(c.level == "stop" for c in answered.cautions)


@pytest.mark.parametrize("file", TABLES)
def test_hotter_is_shorter(file):
    printed = lethality.rows(file)
    assert [row.temp_f for row in printed] == sorted(row.temp_f for row in printed)
    assert [row.time_min for row in printed] == sorted((row.time_min for row in printed), reverse=True)


@pytest.mark.parametrize("temperature_c", [math.nan, math.inf, 900.0])
def test_a_temperature_that_cannot_be_is_refused_kindly(temperature_c):
    assert "centre of the food" in ask("time_temperature", temperature_c=temperature_c).cautions[0].text


@pytest.mark.parametrize(
    ("dish_class", "temp_f", "time_min", "said"),
    [
        ("poultry_pieces", 130, 120.0, "No."),
        ("poultry_pieces", 140, 35.0, "Yes."),
        ("poultry_pieces", 140, 20.0, "No."),
        ("tender_cut", 130, 121.0, "Yes."),
        ("tender_cut", 130, 60.0, "No."),
        ("ground_meat", 125, 600.0, "No."),
        ("shellfish", 145, 5.0, "Yes."),
    ],
)
def test_a_time_and_a_temperature_are_judged(dish_class, temp_f, time_min, said):
    answered = ask("time_temperature", dish_class=dish_class, temperature_c=to_c(temp_f), time_min=time_min)
    assert answered.headline.startswith(said), answered.headline
    assert any(c.level == "stop" for c in answered.cautions) is (said == "No.")


def test_the_poultry_chart_is_told():
    answered = ask("time_temperature", dish_class="poultry_pieces")
    assert answered.figure("hold_at_140_f").value == 35
    assert answered.figure("safe_temperature").value == pytest.approx(to_c(165), abs=0.01)
