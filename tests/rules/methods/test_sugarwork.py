import pytest

from assistant.replies.worded import answer
from rules.model import Request


def ask(**fields):
    return answer(Request(topic="time", method="sugarwork", **fields))


def test_a_sweet_is_cooked_to_its_stage():
    given = ask(dish="fudge", dish_class="candy", elevation_m=1524.0)
    assert given.figure("soft_ball_temperature")
    assert given.figure("hard_crack_temperature") is None
    assert "soft ball" in given.headline


def test_a_recipe_from_another_kitchen_is_carried_over():
    given = ask(dish="caramels", dish_class="candy", elevation_m=2133.6, from_elevation_m=1609.3, temperature_c=113.0)
    moved = given.figure("recipe_temperature").value - 113.0
    assert moved == pytest.approx(92.87 - 94.62, abs=0.02)


def test_dry_sugar_does_not_move():
    given = ask(dish="caramel", dish_class="syrup", elevation_m=2133.6, temperature_c=170.0)
    assert given.figure("recipe_temperature").value == 170
    assert given.figure("caramel_temperature").value == given.figure("caramel_temperature").sea_level


def test_a_thermometer_that_reads_high_is_read_higher():
    given = ask(dish="fudge", dish_class="candy", elevation_m=0.0, thermometer_offset_c=2.0)
    assert given.figure("soft_ball_reading").low - given.figure("soft_ball_temperature").low == pytest.approx(
        2, abs=0.01
    )


def test_maple_syrup_follows_the_boil():
    given = ask(dish="maple syrup", dish_class="syrup", elevation_m=2133.6)
    assert given.figure("syrup_temperature").value - given.figure("boiling_point").value == pytest.approx(
        3.94, abs=0.02
    )
    assert given.figure("thread_temperature") is None


def test_hot_sugar_is_warned_of():
    assert any(c.level == "warn" for c in ask(dish_class="candy", elevation_m=0.0).cautions)
