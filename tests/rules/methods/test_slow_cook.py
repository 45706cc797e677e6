import pytest

from assistant.replies.worded import answer
from rules.model import Request
from rules.physics.units import to_c

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


def test_dry_beans_only_if_boiled_first():
    given = ask(dish="kidney beans", dish_class="dried_bean")
    assert given.headline.startswith("Only if boiled first")
    assert given.figures[0].id == "first_boil"
    assert given.figure("cook_time").label == "Then in the crock"
    assert given.cautions[0].level == "stop"


def test_dry_beans_wait_for_no_elevation():
    given = ask(dish="white beans", dish_class="dried_bean", elevation_m=None)
    assert given.missing == ()
    assert given.headline.startswith("Only if boiled first")
    assert given.figure("cook_time") is None


def test_chickpeas_need_no_such_boil():
    given = ask(dish="chickpeas", dish_class="dried_bean")
    assert not given.headline.startswith("Only")
    assert not any("poison" in c.text for c in given.cautions)


def test_beans_in_a_chili_boil_first_if_they_are_dry():
    given = ask(**CHILI)
    assert "dry beans in it boil hard" in given.headline
    assert any(s.startswith("Canned beans go in as they are") for s in given.steps)


@pytest.mark.parametrize(
    ("dish", "dish_class", "temp_f"),
    [
        ("pork shoulder", "collagen_cut", 150),
        ("chicken thighs", "poultry_pieces", 150),
        ("beef stew", "mixed_stew", 150),
    ],
)
def test_nothing_is_cooked_on_warm(dish, dish_class, temp_f):
    given = ask(dish=dish, dish_class=dish_class, temperature_c=to_c(temp_f))
    assert given.headline.startswith("No.")
    assert "WARM" in given.headline
    assert given.cautions[0].level == "stop"


def test_a_temperature_of_the_centre_is_no_setting():
    given = ask(dish="chicken thighs", dish_class="poultry_pieces", temperature_c=to_c(165))
    assert "for the centre" in given.headline
    assert not given.headline.startswith("No.")


def test_beans_of_no_kind_are_not_called_dried_twice():
    given = ask(dish="dried beans", dish_class="dried_bean")
    assert given.headline.startswith("Only if boiled first: soak beans, drain them")
