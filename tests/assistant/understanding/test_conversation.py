"""Follow-ups."""

from __future__ import annotations

from typing import Any

import pytest

from assistant.answering import understand

FT_M = 0.3048
BRAISE = "how long to braise short ribs at 7,000 feet"


@pytest.mark.parametrize(
    ("utterances", "expected"),
    [
        ([BRAISE, "and at 9,000?"], {"dish": "short ribs", "method": "braise", "feet": 9000}),
        ([BRAISE, "what about lamb shanks"], {"dish": "lamb shanks", "method": "braise", "feet": 7000}),
        ([BRAISE, "what about rice"], {"dish": "white rice", "method": None, "feet": 7000}),
        ([BRAISE, "and in the pressure cooker"], {"dish": "short ribs", "method": "pressure_cook"}),
        ([BRAISE, "in Celsius"], {"dish": "short ribs", "units": "metric", "topic": "time"}),
        ([BRAISE, "use metric"], {"dish": "short ribs", "units": "metric", "topic": "time"}),
        ([BRAISE, "in one line"], {"dish": "short ribs", "depth": 1, "topic": "time"}),
        ([BRAISE, "covered?"], {"dish": "short ribs", "covered": True, "topic": "time"}),
        ([BRAISE, "why?"], {"topic": "why", "dish": "short ribs", "feet": 7000}),
        ([BRAISE, "no, 6,000"], {"dish": "short ribs", "feet": 6000}),
        ([BRAISE, "no, 6,000 not 7,000"], {"dish": "short ribs", "feet": 6000}),
        ([BRAISE, "sorry 6500 i meant"], {"dish": "short ribs", "feet": 6500}),
        ([BRAISE, "thanks", "and at 9,000"], {"dish": "short ribs", "feet": 9000, "topic": "time"}),
        ([BRAISE, "what oven temperature"], {"topic": "temperature", "dish": "short ribs", "method": "braise"}),
        ([BRAISE, "how will I know they are done"], {"topic": "doneness", "dish": "short ribs"}),
        ([BRAISE, "when do I start for dinner at 6:30"], {"topic": "schedule", "service_time": "18:30"}),
        (["how long to braise short ribs", "7,000 ft"], {"topic": "time", "dish": "short ribs", "feet": 7000}),
        (["how long to braise short ribs", "I'm at 7,000 feet"], {"topic": "time", "dish": "short ribs", "feet": 7000}),
        (["how long to braise short ribs", "7000"], {"topic": "time", "feet": 7000}),
        (["braise short ribs at 70,000 ft", "yes 7,000"], {"dish": "short ribs", "feet": 7000, "unused": ()}),
        (["I'm at 7,000 ft", "how long to braise short ribs"], {"topic": "time", "feet": 7000}),
        (["soft ball at 7,000", "and hard crack?"], {"subject": "hard_crack", "feet": 7000}),
        (["baking powder for 2 tsp at 6500", "what about sugar"], {"topic": "bake_adjust", "feet": 6500}),
        (["less sugar in muffins at 6500?", "and the eggs, one more?"], {"topic": "bake_adjust", "dish": "muffins"}),
        (["less sugar in muffins at 6500?", "what about brownies"], {"topic": "bake_adjust", "dish": "brownies"}),
        (["less sugar in muffins at 6500?", "how long do I boil eggs"], {"topic": "time", "dish": "eggs"}),
        (["how much brisket for 60 covers", "make it 75"], {"topic": "order", "dish": "beef brisket", "portions": 75}),
        (["how much brisket for 60 covers", "and rice"], {"topic": "order", "dish": "white rice", "portions": 60}),
        (["it takes 3 hours at 5,000 ft, short ribs", "how long at 9,000"], {"feet": 9000, "time_min": 180}),
    ],
)
def test_follow_up(utterances: list[str], expected: dict[str, Any]) -> None:
    request = understand(utterances[-1], utterances[:-1])
    feet = None if request.elevation_m is None else round(request.elevation_m / FT_M)
    heard = {name: feet if name == "feet" else getattr(request, name) for name in expected}
    assert heard == expected


def test_the_baseline_stays_with_its_question() -> None:
    request = understand("how long at 9,000", ["it takes 3 hours at 5,000 ft, short ribs"])
    assert request.from_elevation_m == pytest.approx(1524)
    assert understand("what does water boil at", ["it takes 3 hours at 5,000 ft"]).from_elevation_m is None


def test_an_endless_conversation_is_bounded() -> None:
    assert understand("and at 9,000?", ["hello"] * 100_000).elevation_m == pytest.approx(2743.2)


@pytest.mark.parametrize(
    ("utterances", "metres"),
    [
        (["how long to boil potatoes at 2100 m", "and at 3,000"], 3000),
        (["how long to boil potatoes at 7,000 ft", "and at 3,000"], 914.4),
        (["how long to boil potatoes at 7,000 ft, show celsius", "and at 3,000"], 914.4),
        (["rice at 3200 ft", "sorry, I meant metres"], 3200),
        (["pasta at 2400 m how long", "no, feet"], 731.52),
        (["braise lamb shanks at 7000 m", "ok feet"], 2133.6),
        (["rice in Leadville", "i mean metres"], 3094.3),
        (["dal bhat at 3530 m", "no wait, 3875, redo it pls"], 3875),
    ],
)
def test_the_unit_of_an_elevation_goes_on(utterances: list[str], metres: float) -> None:
    *context, last = utterances
    assert understand(last, context).elevation_m == pytest.approx(metres, abs=1)


def test_an_elevation_in_the_other_unit_that_cannot_be_is_asked_back() -> None:
    request = understand("I mean metres", ["braise lamb shanks at 7000 feet"])
    assert request.elevation_m is None
    assert [u.reason for u in request.unused] == ["7,000 m is above any kitchen. Did you mean 7,000 ft (2,130 m)?"]
