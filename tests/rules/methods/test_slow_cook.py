from rules.engine import answer
from rules.model import Request

SEVEN_THOUSAND_FT_M = 2133.6


def ask(**fields):
    return answer(Request(**{"topic": "time", "method": "slow_cook", "elevation_m": SEVEN_THOUSAND_FT_M, **fields}))


CHILI = {"dish": "chili", "dish_class": "mixed_stew"}


def test_heat_up_is_not_slowed():
    pot = answer(Request(method="simmer", dish_class="mixed_stew", elevation_m=SEVEN_THOUSAND_FT_M, time_min=420.0))
    crock = ask(**CHILI, time_min=420.0)
    assert 420 < crock.figure("cook_time").value < pot.figure("cook_time").value


def test_beans_are_boiled_first():
    given = ask(dish="pinto beans", dish_class="dried_bean")
    assert any("boil them hard" in s for s in given.steps)
    assert any("poison" in c.text for c in given.cautions)


def test_poison_is_told_of_once_for_kidney_beans():
    given = ask(dish="kidney beans", dish_class="dried_bean")
    assert sum("poison" in c.text for c in given.cautions) == 1


def test_frozen_meat_is_warned_of():
    assert any("frozen" in c.text for c in ask(**CHILI).cautions)


def test_the_pressure_cooker_is_offered():
    assert ask(**CHILI).figure("pressure_time").value < 60


def test_yogurt_is_cultured_in_any_pot():
    given = ask(dish="yogurt", dish_class="dairy")
    assert given.figure("incubation_temperature").value < 45
    assert given.figure("cook_time") is None
