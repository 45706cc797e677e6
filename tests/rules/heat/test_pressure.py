"""The figures of pressure cookers are one set, whoever uses them."""

from assistant.reading import instruments
from assistant.replies.worded import answer
from rules.heat import pressure
from rules.model import Request
from rules.physics.units import PSI_PER_PA
from rules.tables import read_toml

MARKS = {row["id"]: row.get("gauge_psi") for row in read_toml("lexicon/equipment.toml")["equipment"]}


def test_the_low_setting_lies_between_the_low_marks_of_both_cookers():
    electric, stove_top = (MARKS[f"{kind}_pressure_cooker"][0] for kind in ("electric", "stovetop"))
    assert electric <= pressure.LOW_SETTING_GAUGE_PA * PSI_PER_PA <= stove_top


def test_the_usual_gauge_is_the_high_mark_of_a_stove_top_cooker():
    assert round(pressure.STOVE_TOP_GAUGE_PA * PSI_PER_PA, 6) == MARKS["stovetop_pressure_cooker"][-1]


def test_the_reader_takes_the_same_gauges():
    assert round(instruments.LOW_SETTING_PA) == round(pressure.LOW_SETTING_GAUGE_PA)
    assert round(instruments.HIGHEST_GAUGE_PA) == round(pressure.HIGHEST_GAUGE_PA)


def test_the_way_out_is_the_cooks_own_cooker():
    asked = Request(
        topic="time", method="simmer", dish="pinto beans", dish_class="dried_bean", elevation_m=2133.6,
        equipment=("electric_pressure_cooker",),
    )  # fmt: skip
    given = answer(asked)
    assert "at 12 psi" in given.figure("pressure_time").label
    assert any(step.startswith("Short of time: your electric pressure cooker at 12 psi") for step in given.steps)
