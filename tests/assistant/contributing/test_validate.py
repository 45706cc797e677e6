"""The validator: silent about the data that ships, and not about data with a fault in it."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from assistant.contributing import (
    validate,
    validate_explanations,
    validate_lexicon,
    validate_utterances,
    validate_wording,
)
from rules.foods.dishes import Span, dishes
from rules.topics.why import rows

RIBS = dishes()["short ribs"]
FLOUR = {"name": "flour", "grams_per_cup": 125, "tsp_g": 2.6, "tbsp_g": 7.8}
CASE = {"text": "how long to boil rice at 7,000 ft", "topic": "time", "dish": "white rice", "method": "boil"}


def test_the_data_that_ships_is_sound() -> None:
    assert [str(fault) for fault in validate.faults()] == []


@pytest.mark.parametrize(
    ("changes", "fault"),
    [
        ({"heard_as": ("pasta",)}, "names another dish too"),
        ({"heard_as": ("Short Rib",)}, "is not plain lower case"),
        ({"heard_as": ("beef short ribs", "beef short-ribs")}, "stands twice"),
        ({"heard_as": ("beef short rib", "beef short ribs")}, "follows from"),
        ({"methods": ("braise", "braise")}, "a method stands twice"),
        ({"methods": ("brew",)}, "has no time to brew"),
    ],
)
def test_a_fault_of_a_dish_is_told(changes: dict[str, Any], fault: str) -> None:
    assert any(fault in told for told in validate_lexicon.dish_faults(replace(RIBS, **changes)))


def test_a_sound_dish_has_no_fault() -> None:
    assert list(validate_lexicon.dish_faults(RIBS)) == []


@pytest.mark.parametrize(
    ("times", "fault"),
    [
        ({"simmer": (60, 90), "pressure_cook": (20, 95)}, "as long in the pressure cooker"),
        ({"braise": (60, 90), "slow_cook": (40, 80)}, "no longer in the slow cooker"),
        ({"braise": (60, 90), "slow_cook": (300, 400), "pressure_cook": (20, 30)}, None),
    ],
)
def test_a_time_on_the_wrong_side_of_the_pot_is_told(times: dict[str, tuple[float, float]], fault: str | None) -> None:
    told = list(validate_lexicon.slower_faults({m: Span(*t, "common-practice") for m, t in times.items()}))
    assert not told if fault is None else fault in told[0]


@pytest.mark.parametrize(
    ("changes", "fault"),
    [
        ({"grams_per_cup": 500}, "not plausible"),
        ({"tsp_g": 5.0}, "does not go with the cup"),
        ({"water_pct": 60, "sugar_pct": 60}, "more than the whole"),
        ({"grams_per_cup": None, "tsp_g": 2.0, "tbsp_g": 7.8}, "three teaspoons"),
    ],
)
def test_a_fault_of_an_ingredient_is_told(changes: dict[str, Any], fault: str) -> None:
    assert any(fault in told for told in validate_lexicon.ingredient_faults(FLOUR | changes))


@pytest.mark.parametrize(
    ("row", "fault"),
    [
        ({"name": "Nowhere"}, "an airport or an elevation"),
        ({"name": "Both", "airport": "DEN", "elevation_m": 1600}, "one of them"),
        ({"name": "Unsourced", "elevation_m": 1600, "source": "hearsay"}, 'source "hearsay" unknown'),
        ({"name": "Too high", "elevation_m": 7000, "source": "from-memory"}, "no elevation to cook at"),
    ],
)
def test_a_fault_of_a_place_is_told(row: dict[str, Any], fault: str) -> None:
    assert any(fault in told for told in validate_lexicon.place_faults(row))


@pytest.mark.parametrize(
    ("changes", "fault"),
    [
        ({"topic": "why"}, "topic is why"),
        ({"method": "clay_bake"}, 'method "clay_bake" unknown'),
        ({"dish": "stone soup"}, 'dish "stone soup" unknown'),
        ({"elevation_ft": 7000, "elevation_m": 2134}, "its elevation twice"),
        ({"elevation_ft": "7000"}, "of the wrong kind"),
        ({"colour": "red"}, 'key "colour" unknown'),
        ({"text": " rice "}, "blanks around it"),
        ({"missing": ["oven"]}, 'missing word "oven"'),
        ({"quantity": {"value": 3}}, "a value and a unit"),
    ],
)
def test_a_fault_of_a_question_is_told(changes: dict[str, Any], fault: str) -> None:
    assert any(fault in told for told in validate_utterances.case_faults("time", CASE | changes))


def test_a_question_that_is_sound_has_no_fault() -> None:
    assert list(validate_utterances.case_faults("time", CASE)) == []


def test_a_question_that_stands_twice_or_is_trained_on_is_told() -> None:
    trained = min(validate_utterances.trained_sentences(), key=lambda sentence: (-len(sentence), sentence))
    told = [fault for _, _, fault in validate_utterances.repeated([CASE, CASE, CASE | {"text": trained}])]
    assert told == ["stands 2 times", "is trained on"]


@pytest.mark.parametrize(
    ("call", "fault"),
    [
        (("methods/braise", "no-such-thing", frozenset()), "no such sentence"),
        (("methods/braise", "oven-step", frozenset({"heat"})), "heat, setting"),
    ],
)
def test_a_sentence_that_is_not_there_or_is_filled_wrongly_is_told(call: tuple[Any, ...], fault: str) -> None:
    told = validate_wording.in_language("en", [validate_wording.Call(*call, "somewhere.py:1")])
    assert any(fault in problem for _, _, problem in told)


def test_a_sentence_that_nothing_says_is_told() -> None:
    told = validate_wording.in_language("en", [])
    assert ("wording/en/methods/braise.ftl", "oven-step", "nothing says it") in list(told)


@pytest.mark.parametrize(
    ("changes", "fault"),
    [
        ({"values": ("at", "boil", "side", "jam")}, 'value "jam" is in no module'),
        ({"values": ("at", "boil", "side", "drop")}, 'value "drop" is not named in its text'),
        ({"values": ("at", "side")}, "its text names $boil, which is not among its values"),
        ({"sources": ("somebody",)}, 'source "somebody" unknown'),
        ({"figures": ("boiling",)}, 'figure "boiling" unknown'),
        ({"caution": ("scream", ())}, 'level "scream" unknown'),
        ({"heard_as": ("tea",)}, "1 phrases"),
    ],
)
def test_a_fault_of_an_explanation_is_told(changes: dict[str, Any], fault: str) -> None:
    row = replace(rows()["tea_weak"], **changes)
    texts = [validate_wording.all_messages("en")]
    faults = [*validate_explanations.row_faults(row), *validate_explanations.value_faults(row, texts)]
    assert any(fault in told for told in faults)


def test_an_explanation_without_its_text_is_told() -> None:
    calls = [validate_wording.Call("why/no_such_thing", "line", None, "a row")]
    told = list(validate_wording.in_language("en", calls))
    assert ("wording/en/why/no_such_thing.ftl", "line", "no such sentence; a row says it") in told


def test_a_named_value_that_no_explanation_speaks_of_is_told() -> None:
    assert ("soft_ball", "in VALUES of rules/explanations, but no row has it") in validate_explanations.unused(())


def test_two_explanations_of_one_dish_class_are_told() -> None:
    assert ("tea", "stands in 2 rows") in validate_explanations.twice((rows()["tea_weak"],) * 2)
