import pytest

from assistant.replies.worded import answer
from rules.model import Request
from rules.physics.units import to_c

SEVEN_THOUSAND_FT_M = 2133.6


def ask(**fields):
    return answer(Request(**{"topic": "time", "method": "bake", "elevation_m": SEVEN_THOUSAND_FT_M, **fields}))


def test_the_oven_of_a_casserole_stays():
    oven = ask(dish="lasagna", dish_class="casserole").figure("oven")
    assert oven.value == oven.sea_level


def test_the_oven_of_a_cake_moves_up_and_its_time_down():
    cake = ask(dish="yellow cake", dish_class="layer_cake")
    assert cake.figure("oven").value > cake.figure("oven").sea_level
    assert cake.figure("cook_time").value < cake.figure("baseline_time").value


def test_going_home_undoes_it():
    up = ask(dish_class="layer_cake", time_min=40.0, temperature_c=175.0)
    down = ask(
        dish_class="layer_cake", elevation_m=0.0, from_elevation_m=SEVEN_THOUSAND_FT_M,
        time_min=up.figure("cook_time").value, temperature_c=up.figure("oven").value,
    )  # fmt: skip
    assert down.figure("cook_time").value == pytest.approx(40, abs=1)
    assert down.figure("oven").value == pytest.approx(175, abs=0.1)


def test_a_covered_pot_goes_by_its_liquid():
    beans = ask(dish="baked beans", dish_class="dried_bean")
    assert beans.figure("liquid_temperature").value < 92
    assert beans.figure("cook_time").value > 1.5 * beans.figure("baseline_time").value


@pytest.mark.parametrize(("dish", "covered"), [("scalloped potatoes", True), ("baked potatoes", False)])
def test_gratins_are_covered_and_whole_potatoes_are_not(dish, covered):
    given = ask(dish=dish, dish_class="starchy_root")
    assert any("Cover it" in s for s in given.steps) is covered
    assert (given.figure("done_temperature") is None) is covered


def test_a_custard_stands_in_its_bath():
    given = ask(dish="creme brulee", dish_class="custard")
    assert any("pan of hot water" in s for s in given.steps)


def test_jerky_dries_sooner():
    given = ask(dish="beef jerky", dish_class="cured_meat")
    assert given.figure("cook_time").value < given.figure("baseline_time").value


def test_a_bird_in_a_cool_oven_is_refused_and_confit_is_not():
    pieces = {"dish_class": "poultry_pieces", "temperature_c": to_c(225)}
    assert ask(dish="chicken thighs", **pieces).headline.startswith("No.")
    assert not ask(dish="duck confit", **pieces).headline.startswith("No.")


def test_jerky_dries_as_cool_as_it_is_meant_to():
    given = ask(dish="beef jerky", dish_class="cured_meat", temperature_c=to_c(165))
    assert not given.headline.startswith("No.")
    assert any("before drying" in c.text for c in given.cautions)


@pytest.mark.parametrize(("dish", "dish_class"), [("meringues", "meringue"), ("custard", "custard")])
def test_what_is_no_meat_bakes_as_cool_as_it_likes(dish, dish_class):
    assert not ask(dish=dish, dish_class=dish_class, temperature_c=to_c(200)).headline.startswith("No.")
