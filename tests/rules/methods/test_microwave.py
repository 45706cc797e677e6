import pytest

from assistant.replies.worded import answer
from rules.model import Request

SEVEN_THOUSAND_FT_M = 2133.6


def ask(**fields):
    return answer(Request(**{"topic": "time", "method": "microwave", "elevation_m": SEVEN_THOUSAND_FT_M, **fields}))


@pytest.mark.parametrize(("dish_class", "words"), [("rice", "longest"), ("tender_vegetable", "shortest")])
def test_the_headline_says_which_end_of_the_range(dish_class, words):
    assert words in ask(dish_class=dish_class, time_min=4.0, time_high_min=6.0).headline


def test_low_down_the_package_is_right():
    given = ask(dish_class="rice", elevation_m=300.0, time_min=10.0)
    assert given.figure("cook_time").value == 10


def test_eggs_burst():
    assert any("shell" in c.text for c in ask(dish="scrambled eggs", dish_class="egg").cautions)


def test_there_is_no_temperature_to_set():
    assert "no temperature" in ask(topic="temperature", dish="milk", dish_class="dairy").headline


def test_a_dish_without_a_time_is_given_a_factor():
    given = ask(dish_class="meringue")
    assert given.figure("time_factor") or given.figure("cook_time")


def test_water_to_drink_goes_by_the_health_agencies():
    given = ask(dish="drinking water", dish_class="water")
    assert "3 min" in given.headline
