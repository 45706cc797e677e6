"""The engine as a whole: whatever a request holds, there is an answer, and the answers agree with each other."""

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from assistant.replies.worded import answer
from rules import book, tables
from rules.book import Case
from rules.foods import dishes
from rules.heat import pots
from rules.heat.wet import wet_time
from rules.model import MISSING_WORDS, Request
from rules.physics.ambient import ambient

METHODS = book.names("methods")
OWN_TOPICS = ("boiling_point", "sugar_stage", "pressure", "doneness", "calibrate")
CLASSES = tuple(dishes.classes())
POTS = (pots.BOIL, pots.BRAISE, pots.SIMMER, pots.STEAM, pots.STEW)
WET = ("boil", "braise", "pressure_cook", "simmer", "steam", "stew")

elevations = st.floats(-430, 5500)
classes = st.sampled_from(CLASSES)
times = st.floats(0.5, 1000)
anything = st.one_of(st.none(), st.floats())


def ask(**fields):
    return answer(Request(**{"topic": "time", **fields}))


@settings(max_examples=60, deadline=None)
@given(
    topic=st.sampled_from(("time", "temperature", *OWN_TOPICS)),
    method=st.sampled_from((*METHODS, None, "no_such_method")),
    dish_class=st.sampled_from((*CLASSES, None, "no_such_class")),
    elevation_m=anything,
    from_elevation_m=anything,
    pressure_pa=anything,
    time_min=anything,
    time_high_min=anything,
    temperature_c=anything,
    gauge_pa=anything,
    offset=st.floats(-20, 20),
    subject=st.sampled_from((None, "soft_ball", "no_such_stage")),
    units=st.sampled_from(("us", "metric")),
    depth=st.integers(1, 3),
)
def test_any_request_gets_an_answer(offset, **fields):
    given_back = ask(**fields, thermometer_offset_c=offset)
    told = (given_back.headline, given_back.figures, given_back.steps, given_back.cautions, given_back.missing)
    assert any(told) or not given_back.covered
    assert set(given_back.missing) <= set(MISSING_WORDS)


@settings(max_examples=60, deadline=None)
@given(method=st.sampled_from(METHODS), dish_class=classes, elevation_m=elevations, depth=st.integers(1, 3))
def test_every_method_answers_for_every_class(method, dish_class, elevation_m, depth):
    given_back = ask(method=method, dish_class=dish_class, elevation_m=elevation_m, depth=depth)
    assert given_back.figures or given_back.steps or given_back.cautions
    for figure in given_back.figures:
        assert figure.id == figure.id.lower()
        assert (figure.low is None) == (figure.high is None)
        assert figure.low is None or figure.low <= figure.value <= figure.high


@settings(max_examples=40, deadline=None)
@given(elevations, elevations)
def test_the_boil_falls_with_elevation(one_m, other_m):
    lower, higher = sorted((one_m, other_m))
    assert ambient(higher).boiling_c <= ambient(lower).boiling_c


@settings(max_examples=60, deadline=None)
@given(st.sampled_from(WET), classes, elevations, elevations)
def test_times_never_shorten_in_wet_heat_as_one_climbs(method, dish_class, one_m, other_m):
    lower, higher = (
        ask(method=method, dish_class=dish_class, elevation_m=m).figure("cook_time") for m in sorted((one_m, other_m))
    )
    if lower and higher:
        assert (lower.low, lower.value, lower.high) <= (higher.low, higher.value, higher.high)


@settings(max_examples=60, deadline=None)
@given(st.sampled_from(POTS), classes, elevations, elevations, times)
def test_a_time_taken_up_and_down_again_comes_back(pot, dish_class, one_m, other_m, time_min):
    up = Request(
        method=pot.method, dish_class=dish_class, elevation_m=one_m, from_elevation_m=other_m, time_min=time_min
    )
    there = scaled(up, pot)
    back = replace(up, elevation_m=other_m, from_elevation_m=one_m, time_min=there)
    assert scaled(back, pot) == pytest.approx(time_min)


def scaled(request, pot):
    case = Case(request)
    return wet_time(case, pot.heats(case)).likely_min


@settings(max_examples=40, deadline=None)
@given(st.sampled_from(WET), classes, elevations, times)
def test_at_the_baseline_nothing_changes(method, dish_class, elevation_m, time_min):
    if dish_class == "water" and method == "boil":
        return
    same = ask(
        method=method, dish_class=dish_class, elevation_m=elevation_m, from_elevation_m=elevation_m, time_min=time_min
    )
    here, base = same.figure("cook_time"), same.figure("baseline_time")
    assert (here.value, here.low, here.high) == (base.value, base.low, base.high)
    assert same.figure("extra_liquid") is None


@settings(max_examples=40, deadline=None)
@given(st.sampled_from(METHODS), classes, elevations)
def test_units_do_not_change_the_figures(method, dish_class, elevation_m):
    us, metric = (
        ask(method=method, dish_class=dish_class, elevation_m=elevation_m, units=units) for units in ("us", "metric")
    )
    assert [values(f) for f in us.figures] == [values(f) for f in metric.figures]


def values(figure):
    return figure.id, figure.value, figure.unit, figure.low, figure.high, figure.sea_level


@pytest.mark.parametrize("method", METHODS)
def test_the_same_request_gives_the_same_answer(method):
    request = Request(method=method, dish_class="collagen_cut", elevation_m=2133.6, depth=3)
    assert answer(request) == answer(request)


@pytest.mark.parametrize("method", WET)
def test_a_pot_asks_for_the_elevation(method):
    assert ask(method=method, dish_class="pasta").missing == ("elevation",)


@pytest.mark.parametrize("elevation_m", [21336.0, -2000.0, float("nan"), float("inf")])
def test_an_impossible_elevation_is_asked_again(elevation_m):
    given_back = ask(method="boil", dish_class="pasta", elevation_m=elevation_m)
    assert given_back.missing == ("elevation",)
    assert "feet or metres" in given_back.cautions[0].text


@pytest.mark.parametrize("time_min", [0.0, -30.0, float("nan"), 1e9])
def test_an_impossible_time_is_refused_kindly(time_min):
    given_back = ask(method="boil", dish_class="pasta", elevation_m=1500.0, time_min=time_min)
    assert "cooking time" in given_back.cautions[0].text


def test_a_barometer_stands_for_the_elevation():
    by_map = ask(method="boil", dish_class="pasta", elevation_m=1500.0)
    by_barometer = ask(method="boil", dish_class="pasta", pressure_pa=84556.0)
    assert by_barometer.figure("boiling_point").value == pytest.approx(by_map.figure("boiling_point").value, abs=0.01)
    assert by_barometer.request.elevation_m == pytest.approx(1500, abs=1)


@pytest.mark.parametrize(
    ("elevation_m", "from_elevation_m", "way"),
    [(2133.6, 0.0, 1), (0.0, 2133.6, -1), (2743.2, 1828.8, 1), (91.4, 1609.3, -1)],
)
def test_any_pair_of_elevations(elevation_m, from_elevation_m, way):
    given_back = ask(
        method="braise",
        dish_class="collagen_cut",
        elevation_m=elevation_m,
        from_elevation_m=from_elevation_m,
        time_min=180.0,
    )
    change = given_back.figure("cook_time").value - 180
    assert change * way > 15


@pytest.mark.parametrize(("room", "item"), list(book.every_rule()), ids=lambda x: getattr(x, "id", None))
def test_every_rule_says_what_it_is_for_and_where_it_comes_from(room, item):
    assert item.purpose.endswith(".")
    assert set(item.sources) <= set(tables.sources())


@pytest.mark.parametrize("method", METHODS)
@pytest.mark.parametrize("topic", ["time", "temperature"])
def test_every_source_that_is_cited_is_known(topic, method):
    for dish_class in CLASSES:
        given_back = ask(topic=topic, method=method, dish_class=dish_class, elevation_m=3200.4)
        cited = {s for b in given_back.because for s in b.sources} | {s for c in given_back.cautions for s in c.sources}
        assert cited <= set(tables.sources())


@pytest.mark.parametrize("method", METHODS)
def test_sentences_end_once(method):
    for dish_class in CLASSES:
        given_back = ask(method=method, dish_class=dish_class, elevation_m=2895.6, depth=3)
        for text in (*given_back.steps, *(b.text for b in given_back.because), *(c.text for c in given_back.cautions)):
            assert text.endswith(".")
            assert ".." not in text
            assert "  " not in text


def test_a_time_without_a_dish_asks_for_the_dish() -> None:
    assert answer(Request(topic="time", method="braise", elevation_m=2133.6)).missing == ("dish",)


def test_a_time_of_the_cooks_own_needs_no_dish() -> None:
    assert answer(Request(topic="time", method="braise", elevation_m=2133.6, time_min=180)).missing == ()
