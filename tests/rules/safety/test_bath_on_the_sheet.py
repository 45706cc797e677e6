"""A plan for food that is cooked in a bath: the bath and its time are judged, and the boil is left out of it."""

from __future__ import annotations

import pytest

from assistant.answering import reply_to, understand


def first(text: str) -> str:
    return reply_to(text).text.splitlines()[0]


@pytest.mark.parametrize(
    ("text", "opens"),
    [
        ("HACCP: beef cheeks sous vide 30 h at 70 C, 2,300 m, does the elevation change it", "No, 2,300 m"),
        ("HACCP: is 45 min at 60 C in the bath enough for chicken breast at 9,000 ft", "No: 45 min is short"),
        ("critical limit for duck breast sous vide at 60 C, 7,000 ft", "Write 140 °F (60 °C) for 1 h 30 min"),
    ],
)
def test_bath_and_time_are_judged(text: str, opens: str) -> None:
    """Baldwin: poultry 25 mm thick from the refrigerator, 1 h 30 min in a bath at 60 degC."""
    assert understand(text).subject == "critical_limit"
    assert first(text).startswith(opens)


def test_a_bath_that_is_too_cool_stays_refused() -> None:
    assert first("ccp for chicken thighs sous vide at 52 C for 2 hours").startswith("No.")


def test_without_a_bath_the_centre_is_written() -> None:
    assert "165 °F" in first("critical limit for reheated stew at 8,000 ft")
