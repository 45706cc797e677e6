"""Several dishes for one service: nothing lands late, nothing is dropped, and what clashes is said."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from assistant.replies.worded import answer
from rules.foods.dishes import dishes
from rules.model import Request
from rules.topics.schedule.menu import firing_order, of_menu
from rules.topics.schedule.stages import Stage, stages

NAMES = (
    "lamb shanks",
    "beef stew",
    "white rice",
    "polenta",
    "pinto beans",
    "roast potatoes",
    "whole chicken",
    "lasagna",
)


def dish(name: str, **slots: object) -> Request:
    return Request(topic="schedule", text=name, dish=name, dish_class=dishes()[name].dish_class, **slots)


def menu(*every: Request, **slots: object) -> Request:
    given: dict[str, object] = {"elevation_m": 2133.6, "service_time": "18:30", "units": "us"}
    return Request(topic="schedule", menu=every, dish=every[0].dish, dish_class=every[0].dish_class, **(given | slots))


MENUS = st.lists(st.sampled_from(NAMES), min_size=2, max_size=6, unique=True).map(lambda names: menu(*map(dish, names)))


@settings(deadline=None, max_examples=30)
@given(MENUS, st.floats(0, 4000))
def test_every_dish_is_begun_before_service_and_in_order(question: Request, elevation_m: float) -> None:
    order = firing_order(of_menu(replace(question, elevation_m=elevation_m)))
    assert [one.at_min for one in order] == sorted((one.at_min for one in order), reverse=True)
    assert all(one.at_min > 0 for one in order)
    assert {one.dish for one in question.menu} == {one.food for one in order}


@settings(deadline=None, max_examples=20)
@given(MENUS, st.integers(2, 400), st.integers(2, 400))
def test_covers_move_nothing_but_the_coming_up(question: Request, few: int, many: int) -> None:
    for one, other in zip(
        of_menu(replace(question, portions=few)), of_menu(replace(question, portions=many)), strict=True
    ):
        but_heat_up = [
            [(s.id, s.low_min, s.plan_min, s.high_min) for s in stages(of) if s.id != "heat_up"] for of in (one, other)
        ]
        assert but_heat_up[0] == but_heat_up[1]


def test_one_pressure_cooker_is_said() -> None:
    both = menu(dish("pinto beans", method="pressure_cook", soaked=True), dish("lamb shanks", method="pressure_cook"))
    assert any("One pressure cooker" in str(c.text) for c in answer(both).cautions)
    one = menu(dish("pinto beans", method="pressure_cook", soaked=True), dish("lamb shanks", method="braise"))
    assert not any("pressure cooker:" in str(c.text) for c in answer(one).cautions)


def test_two_heats_in_one_oven_are_said_and_two_ovens_are_not() -> None:
    both = menu(dish("prime rib", method="roast", temperature_c=120.0), dish("roast potatoes"))
    assert any("One oven" in str(c.text) for c in answer(both).cautions)
    assert not any("One oven" in str(c.text) for c in answer(replace(both, ovens=2)).cautions)


def test_meat_is_counted_for_those_who_eat_it() -> None:
    stew, rice = of_menu(menu(dish("beef stew"), dish("white rice"), portions=66, meatless=5))
    assert (stew.portions, rice.portions) == (61, 66)


def test_what_is_soaked_is_not_soaked_again() -> None:
    dry, soaked = dish("pinto beans"), dish("pinto beans", soaked=True)
    assert "soak" in {s.id for s in stages(dry)}
    assert "soak" not in {s.id for s in stages(soaked)}
    assert "soak" in {s.id for s in stages(dish("pinto beans", soaked=False))}


def test_what_comes_cooked_takes_little_more_than_its_label() -> None:
    """20 min in boiling water at 2,035 m: 93 degC instead of 100 from 5 to 74 degC is about an eighth more."""
    (cook,) = (
        s for s in stages(dish("cotechino", precooked=True, time_min=20.0, elevation_m=2035.0)) if s.id == "cook"
    )
    assert 21.0 <= cook.plan_min <= 25.0
    assert cook.low_min == 20.0


def test_stuffed_and_cut_smaller_change_the_cooking() -> None:
    plain, filled = (stage_of(dish("whole chicken", stuffed=told)) for told in (False, True))
    assert (filled.low_min - plain.low_min, filled.high_min - plain.high_min) == (15.0, 45.0)
    assert stage_of(dish("roast potatoes", size=0.5)).plan_min < stage_of(dish("roast potatoes")).plan_min / 1.5
    tough = stage_of(dish("lamb shanks", size=0.5)).plan_min / stage_of(dish("lamb shanks")).plan_min
    assert 0.55 < tough < 0.9


def stage_of(request: Request) -> Stage:
    return next(s for s in stages(replace(request, elevation_m=2133.6)) if s.id == "cook")


def read(core_f: float, had_min: float, left_min: float) -> Request:
    core_c = (core_f - 32) / 1.8
    one = dish("turkey", elevation_m=2133.6, service_time="16:00", method="roast")
    return replace(one, core_c=core_c, elapsed_min=had_min, left_min=left_min)


def test_a_reading_tells_how_long_it_still_takes() -> None:
    """By hand: boil 92.9 degC, 32.2 after 75 min; sphere: k = ln(2 * 87.9 / 60.7) / 75, left ln(60.7 / 19) / k."""
    left = answer(read(90, 75, 210)).figure("time_left")
    assert left.low < left.value < left.high
    assert left.low == pytest.approx(55, abs=10)
    assert left.high == pytest.approx(105, abs=10)


@pytest.mark.parametrize(("core_f", "left_min", "opens"), [(90, 30, "No"), (160, 400, "Yes"), (40, 200, "Too early")])
def test_the_verdict_goes_by_the_time_there_is(core_f: float, left_min: float, opens: str) -> None:
    assert str(answer(read(core_f, 300, left_min)).headline).startswith(opens)


def test_never_out_under_the_safe_temperature() -> None:
    found = answer(read(150, 200, 60))
    assert "165 °F" in " ".join([*map(str, found.steps), *(str(c.text) for c in found.cautions)])
    assert "take it out" in str(answer(read(166, 200, 60)).headline)


def test_a_dish_that_is_more_than_an_oven_takes_is_told_by_its_loads() -> None:
    """300 portions of lasagna at 24 a pan, two pans on a shelf: seven shelves of five."""
    menu = tuple(
        Request(topic="schedule", dish=name, dish_class=dishes()[name].dish_class)
        for name in ("lasagna", "green beans")
    )
    asked = Request(topic="schedule", menu=menu, portions=300, elevation_m=2134.0, service_time="18:30")
    told = [str(c.text) for c in answer(asked).cautions]
    assert any("Lasagna fills 7 shelves" in text and "2 loads" in text for text in told)
    assert not any("shelves" in str(c.text) for c in answer(replace(asked, ovens=2)).cautions)
    assert not any("shelves" in str(c.text) for c in answer(replace(asked, portions=90)).cautions)
