"""What holds for every question about jars that is answered; what is refused stands in test_gate.py."""

import math
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from assistant.replies.worded import answer
from rules import book
from rules.model import Request
from rules.preserving import process_times
from rules.preserving.foods import foods
from rules.tables import read_toml

FT_M = 0.3048
ELEVATIONS = st.floats(-430, 5500)
ADDITIONS = {0, 5, 10, 15, 20}
IN_WATER = sorted(name for name, row in foods().items() if row.water_min)
IN_PRESSURE = sorted(name for name, row in foods().items() if row.pressure_min)


def stops(answered):
    return [c for c in answered.cautions if c.level == "stop"]


def preserve(**asked):
    return answer(Request(topic="preserve", **asked))


@settings(max_examples=80, deadline=None)
@given(elevation_m=ELEVATIONS, food=st.sampled_from(IN_WATER), more=st.integers(0, 60))
def test_a_time_is_printed_or_there_is_none(elevation_m, food, more):
    base = foods()[food].water_min + more
    answered = preserve(dish=food, time_min=base, elevation_m=elevation_m)
    time = answered.figure("process_time")
    assert (time is None) == (round(elevation_m / FT_M) > 10_000)
    assert time.value - base in ADDITIONS if time else stops(answered)


@settings(max_examples=60, deadline=None)
@given(elevation_m=ELEVATIONS, food=st.sampled_from(IN_PRESSURE))
def test_a_pressure_is_printed_or_there_is_none(elevation_m, food):
    answered = preserve(dish=food, subject="pressure_canning", elevation_m=elevation_m)
    found = [answered.figure(f"{kind}_gauge") for kind in ("dial", "weighted")]
    assert all(f.value in {5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15} for f in found if f)
    assert any(found) or stops(answered)


@settings(max_examples=40, deadline=None)
@given(
    feet=st.lists(st.integers(0, 10_000), min_size=2, max_size=2).map(sorted), base=st.sampled_from([5, 10, 15, 20, 40])
)
def test_time_never_falls_as_one_climbs(feet, base):
    low, high = (process_times.process(Request(time_min=base, elevation_m=f * FT_M)).most_min for f in feet)
    assert low <= high


@settings(max_examples=60, deadline=None)
@given(there=st.integers(0, 12_000), here=st.integers(0, 10_000), base=st.integers(15, 60))
def test_a_process_is_never_shortened(there, here, base):
    found = process_times.process(Request(time_min=base, elevation_m=here * FT_M, from_elevation_m=there * FT_M))
    assert found is None or found.least_min >= base


@settings(max_examples=60, deadline=None)
@given(
    food=st.sampled_from(IN_WATER), there=st.integers(0, 12_000), here=st.integers(0, 10_000), base=st.integers(5, 90)
)
def test_no_process_falls_short_of_what_is_printed_for_the_food(food, there, here, base):
    """The shortest time of the food's own row, and the printed addition for the elevation here."""
    row, here_m = foods()[food], here * FT_M
    asked = Request(topic="preserve", dish=food, time_min=base, elevation_m=here_m, from_elevation_m=there * FT_M)
    time = answer(asked).figure("process_time")
    printed = row.water_min + process_times.added(process_times.kind_of(row.water_min), here_m).usda.value
    assert time is None or time.low >= printed


@pytest.mark.parametrize(
    ("read_at_ft", "base", "here_ft", "time"),
    [(2000, 25, 7000, 35), (2000, 20, 7000, 25), (5000, 30, 7000, 35), (5000, 15, 7000, 20), (7000, 35, 2000, 35)],
)
def test_a_recipe_read_for_another_band(read_at_ft, base, here_ft, time):
    """Cells of the rows 20/25/30/35, 15/20/20/25 and 10/15/15/20."""
    found = process_times.process(
        Request(time_min=base, from_elevation_m=read_at_ft * FT_M, elevation_m=here_ft * FT_M)
    )
    assert found.most_min == time


def test_a_recipe_said_to_be_for_above_every_table_is_taken_for_the_lowest_band():
    found = process_times.process(Request(time_min=25, from_elevation_m=12_000 * FT_M, elevation_m=7000 * FT_M))
    assert found.most_min == 40


def test_without_a_time_or_a_printed_one_only_the_addition_is_given():
    answered = preserve(dish="tomato puree", dish_class="sauce", elevation_m=7000 * FT_M)
    assert answered.figure("process_time") is None
    assert answered.figure("added_time").value == 15
    assert any("its tested recipe prints" in step for step in answered.steps)


@pytest.mark.parametrize(
    ("food", "least", "most"), [("tomato puree", 15, 15), ("chutney", 10, 15), ("canned pie filling", 15, 15)]
)
def test_the_addition_is_that_of_processes_the_food_can_have(food, least, most):
    told = preserve(dish=food, elevation_m=7000 * FT_M)
    added, short = told.figure("added_time"), told.figure("added_time_short")
    assert ((short or added).value, added.value) == (least, most)


@pytest.mark.parametrize("time_min", [1, 4.9, 181, math.nan, math.inf])
def test_a_time_that_nobody_tested_is_refused(time_min):
    answered = preserve(dish="jam", time_min=time_min, elevation_m=0)
    assert answered.headline.startswith("No.")
    assert answered.figures == ()


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


@pytest.mark.parametrize(
    ("minutes", "feet", "deep"), [(15, 1000, False), (20, 5000, False), (20, 7000, True), (25, 7000, True)]
)
def test_the_water_stands_two_inches_over_jars_that_boil_long(minutes, feet, deep):
    """From memory of the guide: an inch at least, two where the process is over 30 min."""
    dish = "applesauce" if minutes < 20 else "peaches"
    answered = preserve(dish=dish, time_min=minutes, elevation_m=feet * FT_M)
    clock = next(step for step in answered.steps if "over the jars" in step)
    assert ("1 to 2 in (2.5 to 5 cm)" in clock) is not deep
    assert "2 in (5 cm)" in clock or not deep
    assert "from-memory" in {i for b in answered.because for i in b.sources}


def test_tomatoes_are_told_the_pressure_that_is_right_for_every_pair():
    answered = preserve(dish="tomatoes", subject="pressure_canning", elevation_m=7000 * FT_M)
    assert answered.figure("dial_gauge").value == 14
    assert any("9 psi (62 kPa) on a dial gauge" in step for step in answered.steps)


@pytest.mark.parametrize("elevation_from", ["place", "barometer", "boil_test"])
def test_an_elevation_not_from_a_map_is_asked_after(elevation_from):
    answered = preserve(dish="peaches", elevation_m=1600, elevation_from=elevation_from)
    assert any("map" in c.text for c in answered.cautions)


def test_the_edge_of_a_band_is_told():
    answered = preserve(dish="peaches", elevation_m=5900 * FT_M, elevation_from="stated")
    assert any("just under the band above 6,000 ft" in c.text for c in answered.cautions)


@pytest.mark.parametrize("asked", [{"dish": "jam"}, {"dish": "soup"}, {"dish": "peaches", "time_min": 25}, {}])
def test_every_answer_defers_to_a_tested_recipe(asked):
    assert any("tested recipe" in c.text for c in preserve(elevation_m=1500, **asked).cautions)


def test_method_and_topic_are_one_room():
    asked = Request(method="preserve", dish="peaches", dish_class="fruit", time_min=20, elevation_m=2000.0)
    by_topic, by_method = (answer(replace(asked, topic=topic)) for topic in ("preserve", "time"))
    assert by_topic.figures == by_method.figures != ()


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


@pytest.mark.parametrize("dish", [None, "onion jam", "quince paste"])
def test_the_gel_point_of_what_is_no_known_jam_adds_nothing_to_a_process(dish):
    answered = preserve(subject="gel_point", dish=dish, elevation_m=2133.6)
    assert answered.figure("gel_point")
    assert answered.figure("added_time") is None
