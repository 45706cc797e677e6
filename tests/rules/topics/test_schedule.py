"""When to start: the stages counted back from service."""

from dataclasses import replace

import pytest

from assistant.replies.worded import answer
from rules.foods import dishes
from rules.model import Answer, Quantity, Request
from rules.tables import read_csv, read_toml
from rules.topics.schedule import one as one_room
from rules.topics.schedule import stages as stages_room
from rules.topics.schedule.stages import AFTER, BEFORE, LEADS, stages

RIBS = Request(topic="schedule", dish="short ribs", dish_class="collagen_cut", elevation_m=2133.6, service_time="18:00")


def ask(**changes: object) -> Request:
    return replace(RIBS, **changes)


@pytest.mark.parametrize("row", read_csv(LEADS).rows, ids=lambda r: f"{r['stage']} {r['dish_class']} {r['method']}")
def test_a_row_names_what_there_is(row: dict[str, str]) -> None:
    methods = {m["id"] for m in read_toml("lexicon/methods.toml")["method"]}
    assert row["stage"] in (*BEFORE, *AFTER)
    assert row["dish_class"] in (*dishes.classes(), "any")
    assert row["method"] in (*methods, "any")
    assert 0 < float(row["low_min"]) <= float(row["high_min"])
    assert row["step"].endswith(".")
    assert ": " not in row["step"]


def test_the_start_is_the_sum_of_the_stages() -> None:
    found = answer(RIBS)
    total = found.figure("start_before_service")
    parts = [f for f in found.figures if f is not total]
    assert [f.id for f in parts] == ["heat_up_time", "cook_time", "rest_time"]
    assert total.low == sum(f.low for f in parts)
    assert total.high == sum(f.high for f in parts)
    assert total.value == pytest.approx(sum(f.value for f in parts), abs=2.5)
    assert len(found.steps) == len(parts)


def test_the_cooking_is_the_methods_own_time_here() -> None:
    cook = answer(replace(RIBS, topic="time", method="braise")).figure("cook_time")
    planned = answer(RIBS).figure("cook_time")
    assert (planned.low, planned.high) == (cook.low, cook.high)
    assert planned.value == cook.high


def test_what_does_not_wait_is_planned_by_the_middle() -> None:
    rice = answer(ask(dish="basmati rice", dish_class="rice")).figure("cook_time")
    assert rice.low < rice.value < rice.high


def test_one_starts_earlier_the_higher_one_cooks() -> None:
    starts = [answer(ask(elevation_m=m)).figure("start_before_service").value for m in (0, 1000, 2000, 3000)]
    assert starts == sorted(starts)
    assert starts[0] < starts[-1]


def test_dried_beans_are_soaked_first_and_keep_their_caution() -> None:
    """Soak 8 to 12 h: common practice; the natural poison of kidney beans: U.S. FDA, Bad Bug Book (from memory)."""
    found = answer(ask(dish="kidney beans", dish_class="dried_bean"))
    assert found.figure("soak_time").low == 480
    assert "soak" in found.steps[0].lower()
    assert any("poison" in c.text for c in found.cautions)


def test_under_pressure_the_release_counts() -> None:
    assert [s.id for s in stages(ask(method="pressure_cook"))] == ["heat_up", "cook", "release"]


def test_food_that_waits_is_held_hot_as_the_food_code_asks() -> None:
    """FDA Food Code 2022, 3-501.16: hot holding at 57 degC (135 degF) or above."""
    assert any("135 °F (57 °C)" in c.text for c in answer(RIBS).cautions)


def test_a_time_of_sea_level_is_said_to_be_one(monkeypatch: pytest.MonkeyPatch) -> None:
    for room in (stages_room, one_room):
        monkeypatch.setattr(room, "cooking_answer", lambda request, method: Answer(request=request))
    found = answer(RIBS)
    at_sea = dishes.sea_level_time("short ribs", "collagen_cut", "braise")
    assert (found.figure("cook_time").low, found.figure("cook_time").high) == (at_sea.low_min, at_sea.high_min)
    assert any("sea level" in c.text for c in found.cautions)


@pytest.mark.parametrize(
    ("lacking", "missing"),
    [
        ({"dish": None, "dish_class": None}, ("dish",)),
        ({"service_time": None}, ("service_time",)),
        ({"elevation_m": None}, ("elevation",)),
        ({"service_time": None, "elevation_m": None}, ("service_time", "elevation")),
        ({"dish": None, "dish_class": "water", "method": "hold"}, ("time",)),
    ],
)
def test_what_is_missing_is_asked_for(lacking: dict[str, object], missing: tuple[str, ...]) -> None:
    assert answer(ask(**lacking)).missing == missing


def test_the_cooks_own_time_is_taken() -> None:
    cook = answer(ask(time_min=180.0, method="braise")).figure("cook_time")
    assert cook.high > 180


def test_a_big_pot_is_given_longer_to_come_to_the_boil() -> None:
    few, many = (answer(ask(portions=n)).figure("heat_up_time") for n in (8, 140))
    assert (many.low, many.high) == (few.low * 1.5, few.high * 2)


def test_time_in_hand_is_a_stage_and_plans_by_the_middle() -> None:
    found = answer(ask(slack_min=60.0))
    assert found.figure("slack_time").value == 60
    cook = found.figure("cook_time")
    assert cook.low < cook.value < cook.high


def test_the_rest_is_as_long_as_the_cook_wants_it() -> None:
    assert answer(ask(dish="turkey", dish_class="whole_bird", rest_min=45.0)).figure("rest_time").value == 45


def test_a_braise_in_the_oven_is_no_baking() -> None:
    assert (
        answer(ask(method="bake")).figure("cook_time").value == answer(ask(method="braise")).figure("cook_time").value
    )


def test_several_dishes_are_fired_the_earliest_first() -> None:
    found = answer(ask(dishes=("basmati rice", "beef cheeks", "chickpeas")))
    before = [f.value for f in found.figures if f.id.startswith("at_")]
    assert before == sorted(before, reverse=True)
    assert len(found.steps) == len(before) == 4
    assert "soak" in found.steps[0].lower()


def test_more_birds_than_the_ovens_hold_go_in_by_turns() -> None:
    """Two birds of 18 lb to a full-size convection oven: common practice."""
    birds = ask(dish="turkey", dish_class="whole_bird", count=12, ovens=2, quantity=Quantity(18, "lb"))
    found = answer(birds)
    at = [f.value for f in found.figures if f.id.startswith("at_")]
    assert found.figure("loads").value == 3
    assert at == sorted(at, reverse=True)
    assert any("135 °F" in c.text for c in found.cautions)
    assert answer(replace(birds, count=4)).figure("loads") is None


def test_without_a_number_of_ovens_one_is_reckoned_with_and_said() -> None:
    found = answer(ask(dish="turkey", dish_class="whole_bird", count=4, quantity=Quantity(18, "lb")))
    assert found.figure("loads").value == 2
    assert any("did not say how many ovens" in b.text for b in found.because)


def test_a_time_of_the_cooks_own_does_without_the_dish() -> None:
    lone = Request(topic="schedule", method="braise", time_min=240.0, service_time="18:00", elevation_m=0.0)
    assert answer(lone).figure("cook_time").value >= 240
