import pytest

from assistant.replies.worded import answer
from rules.model import Request
from rules.physics.units import PSI_PER_PA


def ask(**fields):
    return answer(Request(topic="pressure", **fields))


def test_ten_and_fifteen_are_told_when_nothing_is_asked():
    given = ask(elevation_m=2133.6)
    assert given.figure("gauge_for_10_psi").value == pytest.approx(13.4, abs=0.05)
    assert given.figure("gauge_for_15_psi").value == pytest.approx(18.4, abs=0.05)


def test_the_cooks_own_gauge_is_answered_alone():
    given = ask(elevation_m=2133.6, gauge_pa=11 / PSI_PER_PA)
    assert [f.id for f in given.figures if f.id.startswith("gauge_for")] == ["gauge_for_11_psi"]


def test_a_cooker_is_never_run_over_its_pressure():
    assert any("Never run a cooker above" in c.text for c in ask(elevation_m=2133.6).cautions)


def test_canning_goes_to_its_tables():
    assert any("tested table" in c.text for c in ask(elevation_m=1000.0).cautions)


def test_the_same_gauge_at_the_same_place():
    given = ask(elevation_m=1500.0, from_elevation_m=1500.0)
    assert given.figure("gauge_for_10_psi").value == 10
