"""Cooked part of the way ahead."""

from __future__ import annotations

from dataclasses import replace

import pytest

from assistant.answering import reply_to, understand
from assistant.replies.worded import answer
from rules.heat.par_cook import SHARES
from rules.model import Request

PENNE = Request(topic="time", dish="penne", dish_class="pasta", method="boil", elevation_m=2743.2, ahead=True)


def test_it_is_pulled_at_a_share_of_the_time_here() -> None:
    found = answer(PENNE)
    assert found.figure("pull_time").value == pytest.approx(SHARES["pasta"] * found.figure("cook_time").value, abs=1)
    assert found.headline.startswith("Pull penne at about 12 min")


def test_the_time_of_the_pickup_is_not_that_of_the_cooking() -> None:
    assert answer(replace(PENNE, time_min=0.75)).figure("pull_time") == answer(PENNE).figure("pull_time")


def test_the_cooks_own_time_counts() -> None:
    assert answer(replace(PENNE, time_min=20.0)).figure("pull_time").value > 15


def test_it_is_chilled_as_the_food_code_asks() -> None:
    """FDA Food Code 2022, 3-501.14: to 21 degC (70 degF) within 2 h, to 5 degC (41 degF) within 4 h more."""
    assert any("70 °F (21 °C) within 2 h, 41 °F (5 °C) within 4 h more" in step for step in answer(PENNE).steps)


def test_else_nothing_is_said_of_it() -> None:
    assert answer(replace(PENNE, ahead=False)).figure("pull_time") is None


@pytest.mark.parametrize(
    "text",
    [
        "rigatoni par-cooked today for a pickup tomorrow, 8,200 ft, how long do I boil it",
        "how long do I parboil potatoes at 7,000 ft before they go in the oven",
        "fusilli precooked in the morning and dropped 40 seconds at pickup, 9,100 ft, how long",
    ],
)
def test_it_is_heard(text: str) -> None:
    assert understand(text).ahead
    assert reply_to(text).text.startswith("Pull ")
