import pytest

from assistant.replies.worded import answer
from rules.foods.sugar import stages
from rules.model import Request


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


def test_a_reading_in_boiling_water_given_with_a_stage_corrects_the_thermometer():
    """199 degF boils at 7,000 ft, so a thermometer that reads 203 there shows every stage 4 degF high."""
    given = ask(subject="soft_ball", elevation_m=2133.6, temperature_c=95.0)
    assert given.figure("recipe_temperature") is None
    shift_k = given.figure("soft_ball_reading").value - given.figure("soft_ball_temperature").value
    assert shift_k == pytest.approx((203 - 199.2) / 1.8, abs=0.05)


def test_a_recipe_temperature_is_still_carried():
    given = ask(subject="soft_ball", elevation_m=2133.6, temperature_c=113.0)
    assert given.figure("recipe_temperature").value == pytest.approx(113 - 7.1, abs=0.05)
