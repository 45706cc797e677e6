import pytest

from assistant.replies.worded import answer
from rules.foods import eggs
from rules.model import Request

SEVEN_THOUSAND_FT_M = 2133.6


def ask(**fields):
    return answer(Request(topic="time", method="boil", **fields))


def test_soft_and_hard_eggs_are_told_apart():
    given = ask(dish="eggs", dish_class="egg", elevation_m=SEVEN_THOUSAND_FT_M)
    soft, medium, hard = (given.figure(f"{done}_egg_time") for done in ("soft", "medium", "hard"))
    assert soft.value < medium.value < hard.value
    assert soft.low < soft.value < soft.high
    assert "soft yolk" in given.headline
    assert "hard yolk" in given.headline


@pytest.mark.parametrize("dish", ["soft-boiled eggs", "hard-boiled eggs"])
def test_a_named_egg_is_answered_alone(dish):
    given = ask(dish=dish, dish_class="egg", elevation_m=SEVEN_THOUSAND_FT_M)
    assert sum(f.id.endswith("_egg_time") for f in given.figures) == 1


@pytest.mark.parametrize("minutes", [3.0, 6.0, 12.0])
def test_an_egg_taken_up_and_down_comes_back(minutes):
    yolk_c = eggs.yolk_edge_c(minutes, 99.97)
    up = minutes * eggs.slowdown(92.87, 99.97, yolk_c)
    assert up > minutes
    assert up * eggs.slowdown(99.97, 92.87, eggs.yolk_edge_c(up, 92.87)) == pytest.approx(minutes)


def test_a_runny_yolk_is_warned_of():
    assert any("runny yolk" in c.text for c in ask(dish_class="egg", elevation_m=0.0).cautions)


def test_heat_reaches_the_centre_of_a_potato_later():
    centre = ask(dish="potatoes", dish_class="starchy_root", elevation_m=SEVEN_THOUSAND_FT_M).figure("centre_time")
    assert centre.value > centre.sea_level


def test_salt_hardly_moves_the_boil():
    salt = next(b.text for b in ask(dish_class="pasta", elevation_m=1500.0).because if b.rule == "boil.salt")
    assert "0.18 °C" in salt


@pytest.mark.parametrize("dish", ["kidney beans", "white beans", "rajma", None])
def test_kidney_beans_are_boiled_hard_first(dish):
    given = ask(dish=dish, dish_class="dried_bean", elevation_m=1524.0)
    assert any(c.level == "warn" and "boil hard" in c.text for c in given.cautions)


def test_chickpeas_carry_no_such_poison():
    assert not any(
        "poison" in c.text for c in ask(dish="chickpeas", dish_class="dried_bean", elevation_m=1524.0).cautions
    )


def test_beans_above_their_threshold_go_to_the_pressure_cooker():
    low, high = (ask(dish="pinto beans", dish_class="dried_bean", elevation_m=m) for m in (1500.0, 3048.0))
    assert "only very slowly" not in low.headline
    assert "only very slowly" in high.headline
    assert high.figure("pressure_time").high < 60
    assert any(c.level == "warn" and "pressure cooker" in c.text for c in high.cautions)


def test_instant_food_stands_longer():
    given = answer(
        Request(topic="time", method="boil", dish="couscous", dish_class="instant_dried", elevation_m=2743.2)
    )
    assert given.headline.startswith("Pour boiling water on couscous and let it stand")
    assert not any("plenty of water" in s for s in given.steps)


def test_wort_keeps_its_time_and_takes_more_hops():
    given = answer(Request(topic="time", method="boil", dish="beer wort", dish_class="wort", elevation_m=2133.6))
    assert "more bittering hops" in given.headline
    assert given.figure("bitterness_rate").value < 0.6
