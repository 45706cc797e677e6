"""Cleaning: any text becomes bounded, printable, and written in one way."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from assistant.reading.text import LONGEST, clean, fold


@pytest.mark.parametrize(
    ("raw", "cleaned"),
    [
        ("1½ hrs", "1 1/2 hrs"),
        ("½ cup", "1/2 cup"),
        ("1-1/2 hours", "1 1/2 hours"),
        ("7,000′", "7,000 ft"),
        ("5,280'", "5,280 ft"),
        ('9" pan', "9 in pan"),
        ("350 °F", "350 degF"),
        ("93º", "93 degrees"),
        ("25–30 min", "25-30 min"),
        ("7 000 m", "7000 m"),
        ("sautéed crème brûlée", "sauteed creme brulee"),
        ("bone-in", "bone in"),
        ("16-quart", "16 quart"),
        ("6 p.m.", "6 pm"),
        ("I'm at -2,000 ft", "I'm at minus 2,000 ft"),
        ("25 - 30 min", "25 - 30 min"),
        ("short\x00ribs\r\n\x1b[31m", "short ribs [31m"),
        ("\ud800 ribs", "ribs"),
        ("７０００ ft", "7000 ft"),
        ("", ""),
    ],
)
def test_one_way_to_write_a_thing(raw: str, cleaned: str) -> None:
    assert clean(raw).text == cleaned


def test_a_very_long_text_is_cut_and_said_so() -> None:
    cleaned = clean("how long " * 1_000_000)
    assert len(cleaned.text) <= LONGEST
    assert cleaned.dropped == 9_000_000 - LONGEST


@given(st.text())
def test_cleaned_text_is_printable_and_bounded(raw: str) -> None:
    cleaned = clean(raw)
    assert len(cleaned.text) <= LONGEST
    assert all(c.isprintable() for c in cleaned.text)


@given(st.text(max_size=50))
def test_folding_twice_is_folding_once(raw: str) -> None:
    assert fold(fold(raw)) == fold(raw)
