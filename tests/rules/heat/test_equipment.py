"""Equipment that changes the advice."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from assistant.replies.worded import answer
from rules.foods.methods import methods
from rules.heat import equipment
from rules.model import Request
from rules.tables import read_toml

KNOWN = {row["id"] for row in read_toml("lexicon/equipment.toml")["equipment"]}
USED = [(id, method.id) for method in methods().values() for id in method.equipment]


def ask(method, *owned, elevation_m=2133.6):
    return answer(Request(topic="time", method=method, dish_class="general", elevation_m=elevation_m, equipment=owned))


def told(answered):
    return [b for b in answered.because if b.rule == "equipment.note"]


def test_advice_is_about_known_equipment_that_some_method_uses():
    assert set(equipment.ADVICE) <= KNOWN
    assert {id for id, _ in USED} == set(equipment.ADVICE)


@pytest.mark.parametrize(
    ("id", "method"), [(i, m) for i, m in USED if m in ("boil", "braise", "steam", "pressure_cook", "brew")]
)
def test_a_method_hears_of_its_equipment(id, method):
    assert told(ask(method, id))


def test_nothing_is_said_of_equipment_that_is_not_used():
    assert not told(ask("boil", "espresso_machine", "smoker", "none_such"))


def test_what_is_owned_adds_and_takes_nothing_away():
    plain, owned = ask("boil"), ask("boil", "gas_burner")
    assert owned.figures == plain.figures
    assert owned.because[: len(plain.because)] == plain.because


@given(st.floats(-430, 5500))
def test_gas_is_derated_from_two_thousand_feet(elevation_m):
    less, more = equipment.derated_percent(elevation_m)
    assert (more == 0) == (elevation_m / 0.3048 <= 2000)
    assert 0 <= less <= more < 75


def test_gas_at_sea_level_says_nothing():
    assert not told(ask("boil", "gas_burner", elevation_m=0.0))


def test_gas_warns_of_carbon_monoxide():
    assert any("carbon monoxide" in c.text for c in ask("boil", "gas_burner").cautions)


def test_a_pressure_cooker_is_told_by_its_own_marks():
    text = told(ask("pressure_cook", "electric_pressure_cooker"))[0].text
    assert "LOW (5 psi)" in text
    assert "HIGH (12 psi)" in text


def test_an_electric_cooker_is_no_canner():
    asked = Request(
        topic="preserve", dish_class="tender_vegetable", elevation_m=2000, equipment=("electric_pressure_cooker",)
    )
    assert any("not a pressure canner" in c.text for c in answer(asked).cautions if c.level == "stop")


@pytest.mark.parametrize(("elevation_m", "out_of_reach"), [(1900, False), (2100, True)])
def test_a_slow_cooker_cannot_hold_200_f_high_up(elevation_m, out_of_reach):
    """The advice fails from about 6,600 ft, where water boils at 200 degF."""
    given = ask("slow_cook", "slow_cooker", elevation_m=elevation_m)
    assert ("cannot be met" in told(given)[0].text) is out_of_reach


@pytest.mark.parametrize(
    ("owned", "subject", "gauge"),
    [
        (("dial_gauge_canner",), None, "14 psi"),
        (("weighted_gauge_canner",), None, "15 psi"),
        (("dial_gauge_canner",), "weighted_gauge", "15 psi"),
    ],
)
def test_a_canner_is_told_by_its_own_gauge(owned, subject, gauge):
    asked = Request(topic="preserve", dish="stock", elevation_m=2133.6, equipment=owned, subject=subject)
    assert gauge in answer(asked).headline
    assert ("14 psi" in answer(asked).headline) == (gauge == "14 psi")


def test_a_steam_canner_is_taken_for_acid_food():
    asked = Request(topic="preserve", dish="peaches", elevation_m=2000, time_min=20, equipment=("steam_canner",))
    assert "open steam" in answer(asked).headline
