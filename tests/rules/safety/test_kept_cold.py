"""How long food keeps cold: the chart's days, the same wherever the refrigerator stands."""

from __future__ import annotations

import pytest

from assistant.answering import reply_to


@pytest.mark.parametrize(
    ("text", "days"),
    [
        # Cold Food Storage Chart of FoodSafety.gov, from memory
        ("how long does leftover chili keep in the fridge at 7,000 ft", "3 to 4 days"),
        ("braised short ribs, shelf life in the walk in", "3 to 4 days"),
        ("how long does raw chicken keep in the fridge", "1 to 2 days"),
        ("raw ground beef in the refrigerator, how many days is it good", "1 to 2 days"),
        ("how long do hard boiled eggs last in the fridge", "1 week"),
        ("leftover soup in jars in the fridge, how many days", "3 to 4 days"),
    ],
)
def test_the_days_of_the_chart(text: str, days: str) -> None:
    assert days in reply_to(text).headline


def test_is_the_same_at_every_elevation() -> None:
    text = "how long is potato salad good in the fridge at {} ft"
    assert reply_to(text.format("0")).headline == reply_to(text.format("9,000")).headline


@pytest.mark.parametrize(
    "text",
    [
        "how long does bread dough keep in the fridge before it over proofs at 7,000 ft",
        "how long will my canned green beans keep",
        "how many hours does brisket hold in a cooler",
        "how long can chili stay on the counter",
    ],
)
def test_what_only_sounds_like_it(text: str) -> None:
    assert "in the refrigerator:" not in reply_to(text).headline
