"""The figures of pressure cookers are one set, whoever uses them."""

import pytest

from assistant.reading import instruments
from assistant.replies.worded import answer
from rules.book import Case
from rules.errors import OutOfRange
from rules.heat import pressure
from rules.model import Request
from rules.physics.ambient import ambient
from rules.physics.units import PSI_PER_PA, to_f
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


# a saturated-steam table by gauge at sea level: 5 psi 227 degF, 10 psi 240 degF, 15 psi 250 degF
@pytest.mark.parametrize(("psi", "printed_f"), [(0, 212), (5, 227), (10, 240), (15, 250)])
def test_steam_is_as_hot_as_the_tables_print(psi, printed_f):
    assert to_f(pressure.inside_c(ambient(0), psi / PSI_PER_PA)) == pytest.approx(printed_f, abs=0.7)


# canning: half a pound more for each 1,000 ft keeps a canner at 240 degF, to the degree that its whole pounds allow
@pytest.mark.parametrize(("feet", "psi"), [(2000, 11), (4000, 12), (6000, 13), (8000, 14)])
def test_a_dial_gauge_raised_by_the_published_rule_stays_at_240_f(feet, psi):
    assert to_f(pressure.inside_c(ambient(feet * 0.3048), psi / PSI_PER_PA)) == pytest.approx(240, abs=1.0)


@pytest.mark.parametrize("psi", [0, 0.0001, 5, 15, 30])
def test_a_gauge_of_a_cooker_is_taken_as_it_is(psi):
    assert pressure.plausible_pa(psi / PSI_PER_PA) == psi / PSI_PER_PA


@pytest.mark.parametrize("psi", [-0.1, 30.1, float("nan")])
def test_another_gauge_is_refused_in_so_many_words(psi):
    with pytest.raises(OutOfRange) as refused:
        pressure.plausible_pa(psi / PSI_PER_PA)
    fault = refused.value
    assert (fault.name, fault.low, fault.unit) == ("gauge pressure", 0, "Pa")
    assert fault.high * PSI_PER_PA == pytest.approx(30)
    assert fault.hint == "Domestic cookers run at 5 to 15 psi."


# 5 % for each 1,000 ft above 2,000 ft, nothing up to there
@pytest.mark.parametrize(("feet", "percent"), [(-500, 0), (0, 0), (1999, 0), (2999, 0), (3000, 5), (10_000, 40)])
def test_the_published_rule_begins_above_2000_ft(feet, percent):
    assert pressure.published_percent(feet * 0.3048) == percent


def test_the_cooks_setting_goes_before_their_cooker_and_that_before_the_usual_one():
    electric = ("electric_pressure_cooker",)
    assert pressure.gauge_pa(Case(Request(gauge_pa=50_000, equipment=electric))) == 50_000
    assert pressure.gauge_pa(Case(Request(equipment=electric))) * PSI_PER_PA == pytest.approx(12)
    assert pressure.gauge_pa(Case(Request(equipment=("kettle",)))) * PSI_PER_PA == pytest.approx(15)
    assert pressure.gauge_pa(Case(Request())) * PSI_PER_PA == pytest.approx(15)


def test_the_steam_inside_is_what_is_cooler():
    given = answer(
        Request(topic="time", method="pressure_cook", dish="short ribs", dish_class="collagen_cut", elevation_m=2133.6)
    )
    assert any("The steam inside is" in b.text for b in given.because)
