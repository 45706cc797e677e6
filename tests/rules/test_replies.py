"""What every answer about a time owes its reader: nothing said twice, nothing warned of that is not at hand."""

import re
from collections import Counter

import pytest

from assistant.replies.worded import answer
from rules import engine
from rules.foods.dishes import classes, dishes
from rules.heat.pressure import PRESSURE_CAUTION
from rules.model import Request

FT = 0.3048


def ask(**fields):
    return answer(Request(topic="time", **{"elevation_m": 7000 * FT, **fields}))


def sentences(given):
    told = (*(b.text for b in given.because), *given.steps, *(c.text for c in given.cautions))
    return [s for text in told for s in re.split(r"(?<=[.:;]) ", text) if len(s) > 12]


def first_of_each_class():
    found = {}
    for dish in dishes().values():
        found.setdefault(dish.dish_class, dish)
    return [pytest.param(dish, id=dish_class) for dish_class, dish in sorted(found.items())]


@pytest.mark.parametrize("dish", first_of_each_class())
def test_nothing_is_said_twice(dish):
    for method in dish.methods:
        given = ask(dish=dish.name, dish_class=dish.dish_class, method=method)
        assert not [s for s, times in Counter(sentences(given)).items() if times > 1], method
        labels = [f.label for f in given.figures]
        assert len(labels) == len(set(labels)), method


@pytest.mark.parametrize("dish", first_of_each_class())
def test_the_full_pressure_caution_stands_only_where_pressure_is_the_method(dish):
    for method in dish.methods:
        asked = Request(topic="time", elevation_m=7000 * FT, dish=dish.name, dish_class=dish.dish_class, method=method)
        assert (PRESSURE_CAUTION in engine.answer(asked).cautions) == (method == "pressure_cook")


@pytest.mark.parametrize("dish_class", classes())
def test_a_class_says_what_its_times_range_over(dish_class):
    varies = classes()[dish_class].varies
    assert varies
    assert not varies.endswith(".")


@pytest.mark.parametrize(
    ("method", "dish", "dish_class", "doing"),
    [
        ("stew", "beef stew", "mixed_stew", "beef stew"),
        ("braise", None, None, "braising"),
        ("poach", "hollandaise", "sauce", "hollandaise"),
        ("boil", "pasta", "pasta", "boiling pasta"),
    ],
)
def test_a_dish_is_not_named_twice(method, dish, dish_class, doing):
    headline = ask(method=method, dish=dish, dish_class=dish_class, time_min=60).headline
    assert f" for {doing} at 7,000 ft" in headline


def test_an_unknown_dish_gets_no_pressure_time():
    assert ask(method="braise", time_min=180).figure("pressure_time") is None


def test_the_way_out_is_by_the_cooks_own_cooker():
    given = ask(method="braise", dish="short ribs", dish_class="collagen_cut", equipment=("electric_pressure_cooker",))
    assert any("your electric pressure cooker at 12 psi" in step for step in given.steps)
    stove_top = ask(method="braise", dish="short ribs", dish_class="collagen_cut")
    assert given.figure("pressure_time").value > stove_top.figure("pressure_time").value


@pytest.mark.parametrize(("dish", "dish_class"), [("maple syrup", "syrup"), ("fudge", "candy")])
def test_what_is_boiled_down_goes_by_the_burner(dish, dish_class):
    given = ask(method="boil", dish=dish, dish_class=dish_class, time_min=30)
    assert given.figure("cook_time").low == 30
    assert given.figure("extra_liquid") is None


def test_wort_boils_as_long_as_the_recipe_says():
    given = ask(method="boil", dish="beer wort", dish_class="wort", time_min=60)
    assert given.figure("cook_time").value == 60
    assert given.figure("bittering_time").value > 60


def test_chips_from_the_oven_are_done_sooner_where_they_dry_sooner():
    given = ask(method="bake", dish="kale chips", dish_class="leafy_green")
    assert given.figure("cook_time").value < given.figure("baseline_time").value
    assert any("Crisp" in step for step in given.steps)


def test_a_roast_has_no_formula_to_adjust():
    given = answer(
        Request(topic="bake_adjust", subject="oven", dish="prime rib", dish_class="tender_cut", elevation_m=8000 * FT)
    )
    assert given.request.topic == "temperature"
    assert given.figure("oven") is not None


def test_low_acid_food_is_refused_the_water_bath_first():
    given = answer(
        Request(
            topic="preserve",
            method="preserve",
            dish="green beans",
            dish_class="tender_vegetable",
            elevation_m=6000 * FT,
        )
    )
    assert "pressure canner, never in boiling water" in given.headline


def test_the_published_rule_stands_beside_rice():
    given = ask(method="simmer", dish="white rice", dish_class="rice")
    percent = given.figure("published_percent")
    thousands = given.request.elevation_m * 3.28084 / 1000
    longer = (given.figure("cook_time").value / given.figure("baseline_time").value) ** (1 / thousands) - 1
    assert percent.low <= 100 * longer <= percent.high


def test_named_equipment_is_told_of_without_a_method():
    given = answer(Request(topic="set_kitchen", elevation_m=9000 * FT, equipment=("espresso_machine",)))
    assert any(b.rule == "equipment.note" for b in given.because)


@pytest.mark.parametrize(
    ("method", "dish", "dish_class"),
    [("roast", "potatoes", "starchy_root"), ("bake", "lasagna", "casserole"), ("grill", "steak", "tender_cut")],
)
def test_going_down_nothing_is_said_to_slow(method, dish, dish_class):
    given = ask(
        method=method, dish=dish, dish_class=dish_class, time_min=60, from_elevation_m=7000 * FT, elevation_m=300 * FT
    )
    assert not any("more slowly" in b.text or "quarter more" in b.text for b in given.because)
    assert any("sooner" in b.text or "dries early" in b.text for b in given.because)


def test_jerky_is_dried_and_not_canned():
    given = answer(
        Request(topic="preserve", method="preserve", dish="beef jerky", dish_class="cured_meat", elevation_m=7000 * FT)
    )
    assert given.figure("meat_first_temperature") is not None
