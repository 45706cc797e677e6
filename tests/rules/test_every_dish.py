"""Every dish of the lexicon answers every one of its methods, at sea level and high up, and says something of use."""

from itertools import groupby, pairwise

import pytest

from assistant.replies.worded import answer
from rules.foods.dishes import dishes
from rules.model import Request

ELEVATIONS_M = (0.0, 1524.0, 2743.2)
WET = ("boil", "simmer", "poach", "braise", "stew", "steam", "pressure_cook", "slow_cook", "sous_vide")
BY_CLASS = {
    name: tuple(rows)
    for name, rows in groupby(sorted(dishes().values(), key=lambda d: (d.dish_class, d.name)), lambda d: d.dish_class)
}


def asked(dish, method, elevation_m, topic="time"):
    return answer(
        Request(topic=topic, dish=dish.name, dish_class=dish.dish_class, method=method, elevation_m=elevation_m)
    )


@pytest.fixture(scope="module")
def answers():
    """Answers by dish, method and elevation, worked out once for all the tests of a class."""
    kept = {}

    def at(dish, method, elevation_m):
        key = (dish.name, method, elevation_m)
        if key not in kept:
            kept[key] = asked(dish, method, elevation_m)
        return kept[key]

    return at


@pytest.mark.parametrize("dish_class", BY_CLASS)
def test_every_method_of_every_dish_is_answered(dish_class, answers):
    for dish in BY_CLASS[dish_class]:
        for method in dish.methods:
            for elevation_m in ELEVATIONS_M:
                given = answers(dish, method, elevation_m)
                told = (dish.name, method, elevation_m)
                assert given.covered, told
                assert not given.missing, told
                assert given.headline or given.figures, told
                assert given.because or given.steps, told


@pytest.mark.parametrize("dish_class", BY_CLASS)
def test_figures_lie_in_their_ranges(dish_class, answers):
    for dish in BY_CLASS[dish_class]:
        for method in dish.methods:
            for figure in answers(dish, method, ELEVATIONS_M[-1]).figures:
                if figure.low is not None:
                    assert figure.low <= figure.value <= figure.high, (dish.name, method, figure)


@pytest.mark.parametrize("dish_class", BY_CLASS)
def test_wet_heat_takes_no_less_time_the_higher_one_is(dish_class, answers):
    for dish in BY_CLASS[dish_class]:
        for method in set(WET) & set(dish.methods):
            times = [answers(dish, method, m).figure("cook_time") for m in ELEVATIONS_M]
            for lower, higher in pairwise(t for t in times if t):
                ends = [(getattr(lower, end), getattr(higher, end)) for end in ("low", "value", "high")]
                assert all(low <= high for low, high in ends), (dish.name, method, ends)


@pytest.mark.parametrize("dish_class", BY_CLASS)
def test_times_are_those_of_a_kitchen(dish_class, answers):
    for dish in BY_CLASS[dish_class]:
        for method in dish.methods:
            sea, high = (answers(dish, method, m).figure("cook_time") for m in (0.0, ELEVATIONS_M[-1]))
            if sea is None or high is None:
                continue
            assert sea.low >= 0.25, (dish.name, method)
            ratio = high.value / sea.value
            assert 0.6 <= ratio <= 5, (dish.name, method, ratio)


@pytest.mark.parametrize("dish_class", BY_CLASS)
def test_the_temperature_and_doneness_of_every_dish_are_answered(dish_class):
    for dish in BY_CLASS[dish_class]:
        for topic in ("temperature", "doneness"):
            given = asked(dish, dish.methods[0], 2133.6, topic)
            assert given.covered, (dish.name, topic)
            assert given.headline or given.figures or given.steps, (dish.name, topic)
