"""How much, how much liquid, and when: heard in many words, and answered with figures."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
import tomli

from assistant.answering import reply_to, understand
from rules.model import Request

PHRASES = tomli.loads(Path(__file__).with_name("amounts.toml").read_text("utf-8"))
NOT_THESE = ("order", "liquid", "schedule")
FEWEST = {"order": 60, "liquid": 40, "schedule": 40, "other": 40}


def rows(kind: str) -> list[Any]:
    return [pytest.param(row, id=row["text"]) for row in PHRASES[kind]]


def heard(request: Request) -> dict[str, Any]:
    """What a row can name, as it was heard."""
    return {
        "dish": request.dish,
        "portions": request.portions,
        "count": request.count,
        "quantity": request.quantity and request.quantity.value,
        "service": request.service_time,
        "start": request.start_time,
        "slack": request.slack_min,
        "rest": request.rest_min,
        "dishes": len(request.dishes),
    }


@pytest.mark.parametrize("kind", FEWEST)
def test_there_are_phrases_enough(kind: str) -> None:
    texts = [row["text"] for row in PHRASES[kind]]
    assert len(set(texts)) == len(texts) >= FEWEST[kind]


@pytest.mark.parametrize(
    ("topic", "row"),
    [(topic, *param.values) for topic in NOT_THESE for param in rows(topic)],
    ids=lambda v: str(v)[:60],
)
def test_is_heard_and_answered(topic: str, row: dict[str, Any]) -> None:
    request = understand(row["text"])
    assert request.topic == topic
    got = heard(request)
    assert {key: got[key] for key in row if key in got} == {key: row[key] for key in row if key in got}
    answer = reply_to(row["text"])
    if "missing" in row:
        assert answer.missing[:1] == (row["missing"],)
    else:
        assert answer.missing == ()
        assert answer.figures or answer.steps
        assert any(character.isdigit() for character in answer.text.splitlines()[0])


@pytest.mark.parametrize("row", rows("other"))
def test_what_only_counts_or_pours_is_heard_as_what_it_is(row: dict[str, Any]) -> None:
    topic = understand(row["text"]).topic
    assert topic not in NOT_THESE
    assert topic == row["topic"]


def test_a_pan_on_the_stove_is_no_pan_of_a_steamer() -> None:
    told = reply_to("how much water for rice in a pan with a lid at 9,000 ft").text.splitlines()[0]
    assert "2 cups (470 ml) as at sea level" in told


def test_a_pan_of_a_cake_is_no_hotel_pan() -> None:
    assert "fills" not in reply_to("cake for 40 in 9 inch pans, how many pans").text.splitlines()[0]


@pytest.mark.parametrize(
    ("text", "share"),
    [
        ("4 kg of dry quinoa gives 11 kg cooked in Lima, what about Cusco", 2.75),
        ("we get 24 lb of cooked rice out of 10 lb of dry in Miami, same at 7,000 ft?", 2.4),
        ("I have 10 kg of chicken and 5 kg of rice, enough for 60 at 2,600 m", None),
    ],
)
def test_a_yield_of_the_cooks_own(text: str, share: float | None) -> None:
    asked = understand(text)
    assert asked.own_yield == (pytest.approx(share) if share else None)
    if share:
        assert reply_to(text).headline.startswith("The same")


@pytest.mark.parametrize(
    "text",
    [
        "which is better for the lunch service, beans in the pressure cooker or in the pot, at 2,200 m",
        "the Saturday wedding takes 300 covers of penne, 12 min on the box, will two pots do at 9,000 ft",
    ],
)
def test_no_hour_is_asked_where_nobody_spoke_of_time_of_day(text: str) -> None:
    assert reply_to(text).missing != ("service_time",)


@pytest.mark.parametrize(
    ("text", "eaters"),
    [
        ("put me down for 35 lunches, how many kilos of lentils", 35),
        ("35 breakfast tomorrow, a third with lentils, how many kilos", 35),
        ("lentils for 20 porters, 4 dinners, how many kilos", 80),
        ("lentils for 20 guests and 4 breakfasts, how many kilos", 80),
    ],
)
def test_meals_count_those_who_eat_where_nothing_else_does(text: str, eaters: int) -> None:
    assert understand(text).portions == eaters
