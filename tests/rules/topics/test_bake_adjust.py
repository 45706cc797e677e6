"""One thing in a bake, as the engine answers it."""

from __future__ import annotations

import pytest

from assistant.replies.worded import answer
from rules.model import Answer, Quantity, Request
from rules.tables import sources
from rules.topics.bake_adjust import SUBJECTS

FT = 0.3048


def ask(feet: float | None = 7000, **fields) -> Answer:
    return answer(Request(topic="bake_adjust", elevation_m=None if feet is None else feet * FT, **fields))


def test_the_elevation_is_asked_for() -> None:
    assert ask(None, subject="baking powder").missing == ("elevation",)


@pytest.mark.parametrize("amount", [0.25, 0.5, 1, 1.5, 2, 4])
def test_powder_falls_as_the_kitchen_climbs(amount) -> None:
    quantity = Quantity(amount, "tsp")
    climb = [
        ask(ft, subject="baking powder", quantity=quantity).figure("leavening_to").value
        for ft in (3000, 4000, 5000, 6000, 7000, 9000)
    ]
    assert climb == sorted(climb, reverse=True)
    assert 0.6 * amount <= climb[-1] < amount


def test_a_tablespoon_is_answered_in_teaspoons() -> None:
    to = ask(subject="baking powder", quantity=Quantity(1, "tbsp")).figure("leavening_to")
    assert (to.value, to.unit) == (2.25, "tsp")


def test_grams_stay_grams() -> None:
    to = ask(subject="baking powder", quantity=Quantity(16, "g"), units="metric").figure("leavening_to")
    assert (to.value, to.unit) == (12, "g")


def test_the_way_down_asks_for_more() -> None:
    down = ask(0, from_elevation_m=7000 * FT, subject="baking powder", quantity=Quantity(1.5, "tsp"))
    assert down.figure("leavening_to").value == 2
    assert "more" in down.headline or "instead of 1 1/2 tsp" in down.headline


@pytest.mark.parametrize("subject", SUBJECTS)
@pytest.mark.parametrize(
    "dish_class", [None, "layer_cake", "foam_cake", "cookie", "yeast_bread", "pie", "meringue", "choux", "collagen_cut"]
)
@pytest.mark.parametrize("feet", [0, 2500, 7000, 11_000])
def test_every_subject_has_an_answer_in_one_sentence(subject, dish_class, feet) -> None:
    found = ask(feet, subject=subject, dish_class=dish_class)
    assert found.covered
    assert found.headline.endswith((".", "%."))
    assert found.because
    assert all(set(b.sources) <= set(sources()) and b.sources for b in found.because)


@pytest.mark.parametrize("feet", [0, 1000, 2000])
def test_low_kitchens_bake_as_written(feet) -> None:
    assert "as written" in ask(feet, dish="white cake", dish_class="layer_cake").headline


def test_the_whole_set_for_a_cake() -> None:
    found = ask(dish="white cake", dish_class="layer_cake")
    assert found.headline.startswith("For white cake at 7,000 ft (2,130 m): 25 % less leavening")
    assert {f.id for f in found.figures} >= {"leavening_to", "sugar_to", "liquid_to", "oven_change", "pan_fill"}
    assert any("one thing at a time" in c.text for c in found.cautions)


def test_the_class_decides() -> None:
    def less(name: str) -> float:
        return ask(subject="baking powder", dish_class=name).figure("leavening_change").value

    assert less("layer_cake") < less("biscuit") < 0


def test_an_oven_setting_that_was_given() -> None:
    found = ask(8000, dish="muffins", dish_class="quick_bread", temperature_c=204.4)
    assert found.headline.startswith("Set the oven to 420 °F")
    assert found.figure("oven_to").value == pytest.approx(215.6, abs=0.1)


def test_dough_that_doubles_too_fast() -> None:
    found = ask(subject="proof", dish_class="yeast_bread", time_min=30)
    assert found.figure("proof_baseline").value == pytest.approx(39, abs=1)
    assert found.figure("yeast_change").value < -20
    assert "doubled" in found.headline


def test_soda_and_sour_milk() -> None:
    found = ask(subject="baking soda", quantity=Quantity(1, "tsp"))
    assert any("1/2 tsp" in step and "buttermilk" in step for step in found.steps)


def test_above_the_table_it_is_said() -> None:
    assert any("ends at" in c.text for c in ask(10_000, subject="baking powder").cautions)
    assert not ask(6900, subject="baking powder").cautions


def test_a_barometer_instead_of_an_elevation() -> None:
    by_air = answer(Request(topic="bake_adjust", subject="baking powder", pressure_pa=78_185))
    assert by_air.figure("leavening_change").value == pytest.approx(-25, abs=0.5)


def test_units_stand_in_the_asker_s_order() -> None:
    us, metric = (ask(8000, subject="oven", dish_class="quick_bread", units=u).headline for u in ("us", "metric"))
    assert "15 to 25 °F (8 to 14 °C)" in us
    assert "8 to 14 °C (15 to 25 °F)" in metric


@pytest.mark.parametrize(
    ("dish", "dish_class"), [("angel food cake", "foam_cake"), ("basque cheesecake", "cheesecake")]
)
def test_a_bake_without_powder_is_told_of_none(dish, dish_class) -> None:
    whole = ask(8500, dish=dish, dish_class=dish_class)
    assert "leavening" not in whole.headline
    assert all(figure.id != "leavening_to" for figure in whole.figures)
    asked = ask(8500, dish=dish, dish_class=dish_class, subject="baking powder")
    assert "none to change" in asked.headline


def test_a_sponge_that_holds_powder_is_told_of_it() -> None:
    assert "leavening" in ask(8500, dish="chiffon cake", dish_class="foam_cake").headline


def test_a_few_seconds_are_no_rise() -> None:
    found = ask(subject="proof", dish_class="yeast_bread", time_min=0.05, from_elevation_m=1000.0)
    assert found.figure("proof_to") is None
    assert "0 s" not in found.text
