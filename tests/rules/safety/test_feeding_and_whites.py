"""How warm a bottle is fed, for how long its water boils, and whether syrup makes whites safe."""

from __future__ import annotations

import pytest

from assistant.answering import reply_to, understand


@pytest.mark.parametrize(
    "text",
    [
        "how warm should his bottle be at 2,600 m",
        "what temp do I warm expressed milk to",
        "how hot should the formula be when she gets it",
    ],
)
def test_a_bottle_is_fed_body_warm(text: str) -> None:
    answer = reply_to(text)
    assert answer.figure("feed_temperature").value == 37.0
    assert "37 °C" in answer.text.splitlines()[0]


def test_keeping_is_still_told_where_it_is_asked() -> None:
    assert "4 h" in reply_to("how long does breast milk keep at room temperature").text.splitlines()[0]


def test_the_time_is_told_where_the_time_is_asked() -> None:
    headline = reply_to("how long to boil the water for baby formula at 9,000 ft").text.splitlines()[0]
    assert headline.startswith("Boil the water hard for 3 min")
    assert "158 °F (70 °C)" in headline


def test_syrup_falls_with_the_boil_and_the_whites_do_not() -> None:
    """118 degC at sea level less what water boils cooler: 12 K at 3,640 m."""
    text = "Italian meringue at 3,640 m: book says syrup to 118 C. What here, and are the whites still safe?"
    assert understand(text).subject == "cooked_meringue"
    answer = reply_to(text)
    drop = 100.0 - answer.figure("syrup_temperature").value + 18.0
    assert drop == pytest.approx(12.0, abs=0.6)
    assert answer.figure("safe_temperature").value == pytest.approx(71.1, abs=0.1)


def test_a_meringue_that_weeps_is_no_question_of_safety() -> None:
    assert understand("Italian meringue weeps at 7,000 ft").subject != "cooked_meringue"


@pytest.mark.parametrize(
    ("text", "opens"),
    [
        ("gyoza with raw pork filling, steam 12 min at 2,500 m, safe?", "No:"),
        ("is 25 minutes in the oven safe for chicken thighs at 7,000 ft", "No:"),
    ],
)
def test_a_time_that_is_asked_to_be_safe_is_judged_by_the_middle(text: str, opens: str) -> None:
    headline = reply_to(text).text.splitlines()[0]
    assert headline.startswith(opens)
    assert "165 °F" in headline


def test_the_box_behind_an_elevation_is_not_where_the_recipe_is_from() -> None:
    asked = understand("how long to simmer stew at 9,000 ft, box says 2 hours")
    assert asked.elevation_m == pytest.approx(2743, abs=1)
    assert asked.time_min == 120
