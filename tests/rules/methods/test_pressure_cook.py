import pytest

from assistant.replies.worded import answer
from rules.foods.dishes import dishes
from rules.model import Request
from rules.physics.units import PSI_PER_PA

SEVEN_THOUSAND_FT_M = 2133.6


def ask(**fields):
    return answer(Request(topic="time", method="pressure_cook", **fields))


def test_fifteen_psi_is_cooler_up_here():
    inside = ask(dish_class="collagen_cut", elevation_m=SEVEN_THOUSAND_FT_M).figure("inside_temperature")
    assert inside.value < inside.sea_level
    assert inside.value > 115


def test_ten_psi_takes_longer_than_fifteen():
    ten, fifteen = (
        ask(dish_class="collagen_cut", elevation_m=SEVEN_THOUSAND_FT_M, gauge_pa=psi / PSI_PER_PA).figure("cook_time")
        for psi in (10, 15)
    )
    assert ten.value > fifteen.value


def test_the_gauge_can_be_raised_instead():
    steps = ask(dish_class="dried_bean", elevation_m=SEVEN_THOUSAND_FT_M, gauge_pa=10 / PSI_PER_PA).steps
    assert any("13.5 psi" in step for step in steps)


def test_a_cooker_at_its_top_is_not_raised():
    assert not any("keep to the time" in step for step in ask(dish_class="rice", elevation_m=SEVEN_THOUSAND_FT_M).steps)


@pytest.mark.parametrize(("elevation_m", "release"), [(1524, "for 5 min"), (2438.4, "for 10 min")])
def test_tested_beans_rest_longer_above_seven_thousand_feet(elevation_m, release):
    given = ask(dish="black beans", dish_class="dried_bean", elevation_m=elevation_m)
    assert given.figure("tested_low_pressure_time").value == 6
    assert any(release in step for step in given.steps)


@pytest.mark.parametrize("gauge_pa", [-1.0, 1e6, float("nan")])
def test_an_impossible_gauge_is_refused_kindly(gauge_pa):
    given = ask(dish_class="rice", elevation_m=1500.0, gauge_pa=gauge_pa)
    assert "5 to 15 psi" in given.cautions[0].text
    assert given.figures == ()


def test_poultry_is_checked_by_thermometer():
    given = ask(dish="chicken thighs", dish_class="poultry_pieces", elevation_m=1828.8)
    assert any("165 °F" in c.text for c in given.cautions)
    assert any("electric pressure cookers" in c.text for c in given.cautions)


def test_the_usual_cautions_are_always_given():
    assert any("two thirds" in c.text for c in ask(dish_class="rice", elevation_m=0.0).cautions)


BLACK = {"dish": "black beans", "dish_class": "dried_bean", "elevation_m": SEVEN_THOUSAND_FT_M}


def test_unsoaked_beans_get_the_time_of_unsoaked_ones():
    """Common practice: black beans 20 to 25 min at 15 psi unsoaked, about twice as long as soaked."""
    soaked, unsoaked = (ask(**BLACK, soaked=s) for s in (True, False))
    assert (unsoaked.figure("baseline_time").low, unsoaked.figure("baseline_time").high) == (20, 25)
    assert unsoaked.figure("cook_time").low > soaked.figure("cook_time").high
    assert "unsoaked black beans" in unsoaked.headline
    assert unsoaked.figure("tested_low_pressure_time") is None


def test_where_nothing_is_said_both_are_told():
    given = ask(**BLACK)
    told = next(b.text for b in given.because if b.rule == "pressure_cook.soak")
    assert "unsoaked" in told
    assert given.figure("cook_time") == ask(**BLACK, soaked=True).figure("cook_time")


def test_every_bean_takes_longer_unsoaked():
    for dish in dishes().values():
        if dish.dish_class == "dried_bean" and "pressure_cook" in dish.methods:
            of = {"dish": dish.name, "dish_class": "dried_bean", "elevation_m": 0.0}
            soaked, unsoaked = (ask(**of, soaked=s).figure("cook_time") for s in (True, False))
            assert unsoaked.high >= soaked.high, dish.name


def test_a_soak_says_nothing_of_other_food():
    rice = {"dish": "white rice", "dish_class": "rice", "elevation_m": 0.0}
    assert ask(**rice, soaked=False).figures == ask(**rice).figures
