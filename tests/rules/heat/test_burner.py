"""Boiling down: the burner against the heat that water takes, by a reference library, and the fuel-gas rule."""

import pytest
from CoolProp.CoolProp import PropsSI

from assistant.replies.sentences import worded
from rules.book import Case
from rules.heat import burner
from rules.model import Request
from rules.physics.ambient import ambient

FT_M = 0.3048


def boiled_down(feet=7000.0, method="reduce", **fields):
    return burner.boiled_down(Case(Request(topic="time", method=method, elevation_m=feet * FT_M, **fields)), method)


@pytest.mark.parametrize(
    ("feet", "share"), [(0, 1), (-1000, 1), (1999.9, 1), (2001, 0.92), (5000, 0.8), (7000, 0.72), (10_000, 0.6)]
)
def test_gas_loses_four_percent_a_thousand_feet_above_two_thousand(feet, share):
    assert burner.gas_share(feet * FT_M) == pytest.approx(share, abs=1e-3)


@pytest.mark.parametrize("elevation_m", [-300, 0, 1500, 3000, 5000])
def test_a_kilowatt_boils_off_what_the_reference_library_says(elevation_m):
    air = ambient(elevation_m)
    vapour, liquid = (PropsSI("H", "P", air.pressure_pa, "Q", quality, "Water") for quality in (1, 0))
    assert burner.boil_off_ml_min_kw(air) == pytest.approx(60 * 1e6 / (vapour - liquid), rel=2e-3)


def test_a_time_of_the_cooks_is_kept_on_an_electric_burner_and_grows_on_gas():
    here, base = boiled_down(time_min=100.0).figures
    assert (here.id, base.id) == ("cook_time", "baseline_time")
    assert (base.low, base.value, base.high) == (100, 100, 100)
    # 0.8 % more heat a litre at 92.9 degC by the steam tables, and 0.72 of the gas
    assert here.low == pytest.approx(100, abs=2.5)
    assert here.high == pytest.approx(100 * 1.008 / 0.72, abs=2.5)
    assert here.value == pytest.approx(100 * (1.008 + 1.4) / 2, abs=2.5)


def test_it_rests_on_the_heat_of_steam_and_on_the_fuel_gas_rule():
    assert set(boiled_down(time_min=100.0).sources) == {"crc-handbook", "nfpa-54"}


def test_gas_of_the_baseline_counts_too():
    """From 7,000 ft down to sea level a gas burner gains what it lost."""
    here, base = boiled_down(feet=0.0, from_elevation_m=7000 * FT_M, time_min=100.0).figures
    assert (here.low, here.high) == pytest.approx((71, 99), abs=2.6)
    assert base.value == 100
    assert base.sea_level is None


def test_without_any_time_it_is_told_by_how_much():
    part = boiled_down(dish_class="tender_cut")
    (factor,) = part.figures
    assert (factor.id, factor.unit) == ("time_factor", "factor")
    assert (factor.low, factor.value, factor.high) == pytest.approx((1.01, 1.2, 1.4), abs=0.011)
    assert worded(factor.label, "us") == "Time against sea level"
    why = worded(part.because, "us")
    assert why.startswith("No tested time is known for this. The burner sets the pace")
    assert "takes up to 40 % more time" in why
    assert "takes 0.8 % more heat" in why


def test_the_headline_answers_a_question_about_time():
    case = Case(Request(topic="time", method="reduce", dish_class="sauce", elevation_m=7000 * FT_M, time_min=30))
    assert burner.boiled_down(case, "reduce").headline
    other = Case(Request(topic="doneness", method="reduce", dish_class="sauce", elevation_m=7000 * FT_M, time_min=30))
    assert burner.boiled_down(other, "reduce").headline == ""


def test_at_the_baseline_nothing_changes():
    part = boiled_down(feet=0.0, time_min=45.0)
    here, base = part.figures
    assert (here.low, here.value, here.high) == (base.low, base.value, base.high) == (45, 45, 45)
    assert "as at sea level, so the time stays" in worded(part.because, "us")


def test_going_down_it_is_less_time_and_less_heat():
    why = worded(boiled_down(feet=0.0, from_elevation_m=7000 * FT_M, time_min=100.0).because, "us")
    assert "0.8 % less heat" in why
    assert "takes up to 29 % less time" in why
