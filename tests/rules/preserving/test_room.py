"""What holds for every question about jars."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from rules import book
from rules.dishes import classes
from rules.engine import answer
from rules.model import Request
from rules.preserving import foods, times
from rules.preserving.refusals import REFUSED
from rules.tables import read_toml

FT_M = 0.3048
ELEVATIONS = st.floats(-430, 5500)
ADDITIONS = {0, 5, 10, 15, 20}
LOW_ACID = sorted(c for c in classes() if foods.food(None, c).kind == "low_acid")


def stops(answered):
    return [c for c in answered.cautions if c.level == "stop"]


def preserve(**asked):
    return answer(Request(topic="preserve", **asked))


@settings(max_examples=60, deadline=None)
@given(elevation_m=ELEVATIONS, base=st.integers(5, 120))
def test_a_time_is_printed_or_there_is_none(elevation_m, base):
    answered = preserve(dish_class="fruit", time_min=base, elevation_m=elevation_m)
    time = answered.figure("process_time")
    assert (time is None) == (round(elevation_m / FT_M) > 10_000)
    assert time.value - base in ADDITIONS if time else stops(answered)


@settings(max_examples=60, deadline=None)
@given(elevation_m=ELEVATIONS, food=st.sampled_from(["fruit", "tender_vegetable"]))
def test_a_pressure_is_printed_or_there_is_none(elevation_m, food):
    answered = preserve(dish_class=food, subject="pressure_canning", elevation_m=elevation_m)
    found = [answered.figure(f"{kind}_gauge") for kind in ("dial", "weighted")]
    assert all(f.value in {5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15} for f in found if f)
    assert any(found) or stops(answered)


@settings(max_examples=60, deadline=None)
@given(
    elevation_m=st.none() | ELEVATIONS,
    dish_class=st.sampled_from(LOW_ACID),
    subject=st.sampled_from(["boiling_water_canning", "steam_canning"]),
    time_min=st.none() | st.integers(5, 180),
)
def test_low_acid_food_in_boiling_water_is_always_a_stop(elevation_m, dish_class, subject, time_min):
    answered = preserve(dish_class=dish_class, subject=subject, elevation_m=elevation_m, time_min=time_min)
    assert stops(answered)
    assert answered.headline.startswith("No.")
    assert answered.figure("process_time") is None


@settings(max_examples=40, deadline=None)
@given(
    feet=st.lists(st.integers(0, 10_000), min_size=2, max_size=2).map(sorted), base=st.sampled_from([5, 10, 15, 20, 40])
)
def test_time_never_falls_as_one_climbs(feet, base):
    low, high = (times.process(Request(time_min=base, elevation_m=f * FT_M)).most_min for f in feet)
    assert low <= high


@settings(max_examples=40, deadline=None)
@given(there=st.integers(0, 12_000), here=st.integers(0, 10_000), base=st.integers(5, 60))
def test_a_process_is_never_shortened(there, here, base):
    found = times.process(Request(time_min=base, elevation_m=here * FT_M, from_elevation_m=there * FT_M))
    assert found.least_min >= base


@pytest.mark.parametrize(
    ("read_at_ft", "base", "here_ft", "time"),
    [(2000, 25, 7000, 35), (2000, 20, 7000, 25), (5000, 30, 7000, 35), (5000, 15, 7000, 20), (7000, 35, 2000, 35)],
)
def test_a_recipe_read_for_another_band(read_at_ft, base, here_ft, time):
    """Cells of the rows 20/25/30/35, 15/20/20/25 and 10/15/15/20."""
    found = times.process(Request(time_min=base, from_elevation_m=read_at_ft * FT_M, elevation_m=here_ft * FT_M))
    assert found.most_min == time


def test_without_a_time_only_the_addition_is_given():
    answered = preserve(dish="peaches", dish_class="fruit", elevation_m=7000 * FT_M)
    assert answered.figure("process_time") is None
    assert answered.figure("added_time").value == 15
    assert any("your tested recipe prints" in step for step in answered.steps)


@pytest.mark.parametrize("time_min", [1, 4.9, 181, math.nan, math.inf])
def test_a_time_that_nobody_tested_is_refused(time_min):
    assert preserve(dish_class="fruit", time_min=time_min, elevation_m=0).figure("process_time") is None


@pytest.mark.parametrize(
    ("psi", "feet", "subject", "verdict"),
    [
        (10, 6300, None, "too low"),
        (15, 6300, None, "is enough at"),
        (14, 6300, None, "dial gauge only"),
        (14, 6300, "dial_gauge", "is enough at"),
        (14, 6300, "weighted_gauge", "too low"),
        (11, 1500, "dial_gauge", "is enough at"),
    ],
)
def test_a_pressure_that_the_cook_names_is_judged(psi, feet, subject, verdict):
    answered = preserve(
        dish="carrots", dish_class="root_vegetable", gauge_pa=psi * 6894.757, elevation_m=feet * FT_M, subject=subject
    )
    assert verdict in answered.headline


@pytest.mark.parametrize("subject", sorted(REFUSED))
def test_a_refusal_needs_no_elevation(subject):
    answered = preserve(subject=subject)
    assert stops(answered)
    assert answered.steps
    assert answered.because
    assert not answered.missing


@pytest.mark.parametrize(
    "dish", ["garlic in oil", "pumpkin puree", "refried beans", "macaroni", "milk", "banana bread"]
)
def test_food_without_a_tested_process(dish):
    from rules.dishes import dishes

    answered = preserve(dish=dish, dish_class=dishes()[dish].dish_class, elevation_m=2000)
    assert stops(answered)
    assert answered.figures == ()


@pytest.mark.parametrize(
    ("dish", "dish_class", "kind"),
    [
        ("canned tomatoes", "canned_high_acid", "acidify"),
        ("canned salsa", "canned_high_acid", "pickle"),
        ("tomato soup", "soup", "low_acid"),
        ("pickled beets", "pickle", "pickle"),
        ("beets", "root_vegetable", "low_acid"),
        ("pumpkin", "root_vegetable", "low_acid"),
        ("apple butter", "jam", "jam"),
        ("spaghetti", "pasta", "untested"),
        (None, "general", "unknown"),
    ],
)
def test_food(dish, dish_class, kind):
    assert foods.food(dish, dish_class).kind == kind


@pytest.mark.parametrize("elevation_from", ["place", "barometer", "boil_test"])
def test_an_elevation_not_from_a_map_is_asked_after(elevation_from):
    answered = preserve(dish_class="fruit", elevation_m=1600, elevation_from=elevation_from)
    assert any("map" in c.text for c in answered.cautions)


def test_the_edge_of_a_band_is_told():
    answered = preserve(dish_class="fruit", elevation_m=5900 * FT_M, elevation_from="stated")
    assert any("just under the band above 6,000 ft" in c.text for c in answered.cautions)


@pytest.mark.parametrize("asked", [{"dish_class": "jam"}, {"subject": "oven_canning"}, {"dish_class": "soup"}])
def test_every_answer_defers_to_a_tested_recipe(asked):
    assert any("tested recipe" in c.text for c in preserve(elevation_m=1500, **asked).cautions)


def test_method_and_topic_are_one_room():
    asked = {"method": "preserve", "dish": "peaches", "dish_class": "fruit", "time_min": 20, "elevation_m": 2000.0}
    by_topic, by_method = (answer(Request(topic=topic, **asked)) for topic in ("preserve", "time"))
    assert by_topic.figures == by_method.figures


def test_every_subject_of_preserving_is_reached():
    rows = read_toml("lexicon/safety_subjects.toml")["subject"]
    for row in (r for r in rows if r["topic"] == "preserve" and r["id"] not in book.names("safety")):
        answered = preserve(subject=row["id"], elevation_m=2000)
        assert answered.headline, row["id"]
        assert not answered.missing


def test_the_gel_point_is_the_answer_where_it_was_asked_for():
    asked = {"dish": "jam", "dish_class": "jam", "elevation_m": 2133.6, "time_min": 10}
    assert "sets at about 207 °F" in preserve(subject="gel_point", **asked).headline
    assert "Process jam for 20 min" in preserve(**asked).headline
