from assistant.replies.worded import answer
from rules.model import Request

SEVEN_THOUSAND_FT_M = 2133.6


def ask(**fields):
    return answer(Request(**{"topic": "time", "method": "proof", "elevation_m": SEVEN_THOUSAND_FT_M, **fields}))


BREAD = {"dish": "bread", "dish_class": "yeast_bread"}


def test_dough_doubles_sooner():
    given = ask(**BREAD, time_min=90.0)
    assert given.figure("cook_time").value < 90
    assert given.figure("gas_volume").value > 1.25


def test_a_cold_rise_stays():
    given = ask(**BREAD, time_min=720.0)
    assert given.figure("cook_time").value == 720
    assert "in the cold" in given.headline


def test_a_second_rise_from_5000_ft():
    assert any("Punch it down" in s for s in ask(**BREAD).steps)
    assert not any("Punch it down" in s for s in ask(**BREAD, elevation_m=1200.0).steps)


def test_coming_down_it_takes_longer():
    down = ask(**BREAD, time_min=60.0, elevation_m=0.0, from_elevation_m=SEVEN_THOUSAND_FT_M)
    assert down.figure("cook_time").value > 60


def test_sourdough_is_stopped_early():
    assert any("half to three quarters" in s for s in ask(dish="sourdough", dish_class="yeast_bread").steps)
