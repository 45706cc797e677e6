import pytest

from assistant.replies.worded import answer
from rules.heat.burner import boil_off_ml_min_kw, gas_share
from rules.model import Request
from rules.physics.ambient import ambient

SEVEN_THOUSAND_FT_M = 2133.6


def ask(**fields):
    return answer(Request(topic="time", method="reduce", **fields))


def test_an_electric_burner_takes_the_same_time_and_gas_longer():
    given = ask(dish_class="sauce", elevation_m=SEVEN_THOUSAND_FT_M)
    here, base = given.figure("cook_time"), given.figure("baseline_time")
    assert here.low == base.low
    assert here.high > 1.3 * base.high


def test_a_kilowatt_boils_off_a_litre_in_under_forty_minutes():
    assert 1000 / boil_off_ml_min_kw(ambient(0)) == pytest.approx(37.6, abs=0.1)


def test_gas_is_not_derated_below_two_thousand_feet():
    assert gas_share(600) == 1
    assert gas_share(3048) == pytest.approx(0.6)


def test_the_volume_is_the_measure():
    assert any("Go by volume" in step for step in ask(dish_class="stock", elevation_m=1500.0).steps)
