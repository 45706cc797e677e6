"""Times of day."""

import pytest

from assistant.answering import understand
from assistant.reading.times_of_day import is_now
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
        ("twenty past six", "18:20"),
        ("twenty to twelve", "11:40"),
        ("quarter past 12", "12:15"),
        ("half past one", "13:30"),
        ("serve at 12 pm", "12:00"),
        ("serve at 12 am", "00:00"),
        ("serve at 1 am", "01:00"),
        ("serve at 1 pm", "13:00"),
        ("six thirty pm", "18:30"),
        ("six thirty am", "06:30"),
        ("dinner at 9", "21:00"),
        ("dinner at 10", "10:00"),
        ("dinner at 0:30", "00:30"),
        ("dinner at 23:59", "23:59"),
        ("dinner for 12", "12:00"),
        ("a 7 o'clock service for 90", "19:00"),
        ("out by 1745", "17:45"),
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
        "dinner at 24:00",
        "dinner at 18:60",
        "five to seven hours",
        "ten to twelve",
        "six thirty potatoes",
        "dinner at 7 tables",
    ],
)
def test_hears_none(text: str) -> None:
    assert read(text)._.clock == ()


def test_a_time_of_day_is_in_minutes_and_stands_where_it_was_said() -> None:
    (time,) = read("dinner is at six thirty pm sharp")._.clock
    assert (time.start, time.end, time.kind, time.unit) == (3, 6, "clock", "min")
    assert time.low == time.high == time.said == 18.5 * 60


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("dinner at half six", "18:30"),
        ("guests come for half seven", "19:30"),
        ("supper is half eight", "20:30"),
        ("we eat at six in the evening", "18:00"),
        ("doors open at eight at night", "20:00"),
        ("stew for ten tonight", "22:00"),
        ("brunch is at ten in the morning", "10:00"),
        ("plating at 7: short ribs and polenta", "19:00"),
        ("customers at 1.", "13:00"),
        ("lunch at 12 so when do I start", "12:00"),
    ],
)
def test_hears_as_it_is_said(text: str, expected: str) -> None:
    (time,) = read(text)._.clock
    assert f"{int(time.low) // 60:02d}:{int(time.low) % 60:02d}" == expected


@pytest.mark.parametrize(
    "text", ["half six eggs", "half a dozen eggs", "serve it at 140", "plate at 145", "30 in the evening"]
)
def test_half_of_something_and_a_serving_temperature_are_no_time(text: str) -> None:
    assert read(text)._.clock == ()


def test_guests_at_an_hour_are_no_second_hour() -> None:
    (time,) = read("dinner at 7 for 8")._.clock
    assert time.low == 19 * 60


@pytest.mark.parametrize(
    ("text", "now"), [("doors at 6 its 345 now", 945), ("it's ten now and lunch is at one", 600), ("dinner at 8", None)]
)
def test_the_time_it_is_now_is_told_from_that_of_the_meal(text: str, now: float | None) -> None:
    doc = read(text)
    words = [token.norm_ for token in doc]
    assert [time.low for time in doc._.clock if is_now(words, time)] == ([] if now is None else [now])


def test_a_time_since_which_it_cooks_is_no_time_of_service() -> None:
    assert understand("the beans are on since ten this morning, at 7,000 ft").service_time is None
    assert understand("put in at 2, doors at 6, lamb shanks at 8,000 ft, when are they done").service_time == "18:00"
