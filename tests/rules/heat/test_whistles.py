"""Whistles of a pressure cooker: the minutes they stand for, and how many it takes where the air is thinner."""

from __future__ import annotations

import math

import pytest

from rules import engine
from rules.heat.whistles import MIDDLE_MIN, WHISTLE_MIN, count_of
from rules.model import Answer, Request

LEH_M, DELHI_M = 3500.0, 240.0


def ask(dish: str, dish_class: str, whistles: int | None, elevation_m: float = LEH_M, **slots: object) -> Answer:
    slots = {"method": "pressure_cook", **slots}
    request = Request(dish=dish, dish_class=dish_class, whistles=whistles, elevation_m=elevation_m, **slots)  # type: ignore[arg-type]
    return engine.answer(request)


def inside_c(elevation_m: float) -> float:
    """The steam inside at 15 psi, a second way: the barometric formula and Antoine's equation for water [degC]."""
    air_pa = 101_325 * (1 - 0.0065 * elevation_m / 288.15) ** 5.25588
    mmhg = (air_pa + 15 * 6894.757) / 133.322
    return 1810.94 / (8.14019 - math.log10(mmhg)) - 244.485


@pytest.mark.parametrize(
    ("dish", "dish_class", "at_home", "home_m", "expected"),
    [
        ("rajma", "dried_bean", 6, 0.0, 6 * 1.474),
        ("toor dal", "lentil", 3, 0.0, 3 * 1.474),
        ("toor dal", "lentil", 6, DELHI_M, 6 * 1.474),
        ("mutton curry", "mixed_stew", 5, 0.0, 5 * 1.474),
        ("white rice", "rice", 2, 0.0, 2 * 1.474),
    ],
)
def test_as_many_more_as_the_published_rule_for_pressure_cookers_has_it(dish, dish_class, at_home, home_m, expected):
    """5 % for each 1,000 ft above 2,000 ft: Leh at 11,480 ft is 9.48 of them above, Delhi lies under it."""
    figure = ask(dish, dish_class, at_home, from_elevation_m=home_m or None).figure("whistles")
    assert figure is not None
    assert figure.value == pytest.approx(expected, abs=0.75)
    assert figure.low <= figure.value <= figure.high
    assert figure.low >= at_home


def test_the_steam_inside_is_cooler_by_what_the_formula_says():
    assert inside_c(0) - inside_c(LEH_M) == pytest.approx(6.0, abs=0.4)


def test_asked_how_many_the_minutes_of_the_table_are_counted():
    answer = ask("rajma", "dried_bean", 0)
    time, whistles = answer.figure("cook_time"), answer.figure("whistles")
    assert time
    assert whistles
    assert whistles.value == pytest.approx(time.value / 3.5, abs=1)
    assert whistles.sea_level == 7  # 25 min at sea level, by the table


def test_the_fewest_are_those_of_the_published_rule_where_it_says_less():
    """5 % more for each 1,000 ft above 2,000 ft: 45 % at 11,480 ft, so 6 become 8.7."""
    assert ask("rajma", "dried_bean", 6).figure("whistles").low == 9


def test_where_the_whistles_were_counted_they_stay():
    figure = ask("rajma", "dried_bean", 6, elevation_m=0.0).figure("whistles")
    assert (figure.low, figure.value, figure.high) == (6, 6, 6)
    assert ask("rajma", "dried_bean", 6, elevation_m=100.0).figure("whistles").value == 6


def test_fewer_in_the_valley():
    down = ask("toor dal", "lentil", 8, elevation_m=DELHI_M, from_elevation_m=LEH_M).figure("whistles")
    assert down.value < 8


def test_minutes_told_beside_them_are_added():
    """2 whistles and 10 min low: 16 to 18 min at pressure."""
    baseline = ask("chole", "dried_bean", 2, elevation_m=0.0, time_min=10.0).figure("baseline_time")
    assert (baseline.low, baseline.high) == (16, 18)


def test_an_electric_cooker_has_no_whistle():
    answer = ask("rajma", "dried_bean", 0, equipment=("electric_pressure_cooker",))
    assert answer.figure("whistles") is None
    assert answer.figure("cook_time")


def test_nobody_counts_whistles_unasked():
    assert ask("rajma", "dried_bean", None).figure("whistles") is None


@pytest.mark.parametrize("topic", ["time", "pressure", "doneness"])
def test_a_count_is_answered_whatever_else_is_asked_of_the_cooker(topic):
    assert ask("toor dal", "lentil", 4, topic=topic, method=None).figure("whistles")


def test_never_less_than_one():
    assert count_of(0.1) == 1
    assert sum(WHISTLE_MIN) / 2 == MIDDLE_MIN


def test_nobody_counts_a_million():
    answer = ask("rajma", "dried_bean", 10**9)
    assert answer.figure("whistles") is None


@pytest.mark.parametrize("elevation_m", [0, 500, 1000, 1500, 2000, 2500, 3000, 3500, 4000, 4500])
def test_higher_never_means_fewer(elevation_m):
    lower, higher = (
        ask("toor dal", "lentil", 5, elevation_m=e).figure("whistles").value for e in (elevation_m, elevation_m + 500)
    )
    assert lower <= higher


def test_beans_that_poison_are_still_warned_of():
    assert "kidney-beans" in [getattr(caution.text, "id", "") for caution in ask("rajma", "dried_bean", 6).cautions]
