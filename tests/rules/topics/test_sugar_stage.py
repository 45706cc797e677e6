import pytest

from rules.engine import answer
from rules.model import Request
from rules.sugar import stages


def ask(**fields):
    return answer(Request(topic="sugar_stage", **fields))


@pytest.mark.parametrize("stage", list(stages()))
def test_a_stage_is_answered_alone(stage):
    given = ask(subject=stage, elevation_m=2286.0)
    told = [f.id for f in given.figures if f.id.endswith("_temperature")]
    assert told == [f"{stage}_temperature"]
    assert stages()[stage].label in given.headline


def test_all_stages_are_told_in_order_when_none_is_named():
    given = ask(elevation_m=2286.0)
    lows = [f.low for f in given.figures if f.id.endswith("_temperature")]
    assert len(lows) == len(stages())
    assert lows == sorted(lows)


def test_every_stage_has_a_test_without_a_thermometer():
    steps = " ".join(ask(elevation_m=2286.0).steps)
    assert all(stage.label.capitalize() in steps for stage in stages().values())


def test_stages_stand_as_printed_at_sea_level():
    for figure in ask(elevation_m=0.0).figures:
        if figure.id.endswith("_temperature"):
            assert figure.value == figure.sea_level
