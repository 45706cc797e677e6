"""Times of day."""

import pytest

from assistant.understanding.pipeline import read


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("dinner is at 6:30", "18:30"),
        ("serve at 6 pm", "18:00"),
        ("serve at 6 p.m.", "18:00"),
        ("we serve at 18:00", "18:00"),
        ("half past six", "18:30"),
        ("quarter to seven", "18:45"),
        ("dinner at six thirty", "18:30"),
        ("a 6 o'clock dinner", "18:00"),
        ("ready by noon", "12:00"),
        ("brunch at 10", "10:00"),
        ("bread ready at 7 am", "07:00"),
        ("breakfast at 7", "07:00"),
        ("ready by 5:45", "17:45"),
        ("service at 1830", "18:30"),
    ],
)
def test_hears(text: str, expected: str) -> None:
    (time,) = read(text)._.clock
    assert f"{int(time.low) // 60:02d}:{int(time.low) % 60:02d}" == expected


@pytest.mark.parametrize(
    "text",
    [
        "at 7,000",
        "bake at 350",
        "for 12 people",
        "at 15 psi",
        "25:99",
        "2 eggs at 6,500 ft",
        "a staff meal for 14, penne",
    ],
)
def test_hears_none(text: str) -> None:
    assert read(text)._.clock == ()
