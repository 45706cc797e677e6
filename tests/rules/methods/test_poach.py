import pytest

from assistant.replies.worded import answer
from rules.model import Request


def ask(**fields):
    return answer(Request(topic="time", method="poach", **fields))


@pytest.mark.parametrize("elevation_m", [0.0, 1609.3, 3048.0, 4500.0])
def test_poaching_does_not_move_while_the_boil_is_above_it(elevation_m):
    given = ask(dish="salmon", dish_class="fish", elevation_m=elevation_m)
    assert given.figure("cook_time").value == given.figure("baseline_time").value
    assert given.figure("liquid_temperature").value == given.figure("liquid_temperature").sea_level


def test_a_hot_poach_moves_once_the_boil_comes_down_to_it():
    given = ask(dish_class="fish", elevation_m=3962.4, temperature_c=90.0)
    assert given.figure("liquid_temperature").value == given.figure("boiling_point").value
    assert given.figure("cook_time").high > given.figure("baseline_time").high


def test_a_thermometer_rules_not_the_look_of_the_surface():
    assert any("by thermometer" in step for step in ask(dish_class="fish", elevation_m=1500.0).steps)


def test_a_temperature_that_is_no_poach_is_refused_kindly():
    assert "160 and 180 °F" in ask(dish_class="fish", elevation_m=0.0, temperature_c=400.0).cautions[0].text
