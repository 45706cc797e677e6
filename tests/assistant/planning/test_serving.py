"""When service is: what cooks write, and the days on which clocks are changed."""

from __future__ import annotations

from datetime import UTC, datetime
from zoneinfo import ZoneInfo

import pytest

from assistant.planning.serving import BadServing, before, serving, zone_of

DENVER = ZoneInfo("America/Denver")
# a Friday evening; the clocks go forward on the Sunday
NOW = datetime(2027, 3, 12, 19, 0, tzinfo=DENVER)


@pytest.mark.parametrize(
    ("told", "moment"),
    [
        ("Saturday 5:45 pm", "2027-03-13T17:45:00-07:00"),
        ("Sat 8", "2027-03-13T20:00:00-07:00"),
        ("Friday 6 pm", "2027-03-19T18:00:00-06:00"),
        ("friday 7:30 pm", "2027-03-12T19:30:00-07:00"),
        ("tonight at 8", "2027-03-12T20:00:00-07:00"),
        ("tomorrow noon", "2027-03-13T12:00:00-07:00"),
        ("18:15", "2027-03-13T18:15:00-07:00"),
        ("half past six", "2027-03-13T18:30:00-07:00"),
        ("brunch Sunday 11 am", "2027-03-14T11:00:00-06:00"),
        ("Nov 7 at 5 pm", "2027-11-07T17:00:00-07:00"),
        ("March 8, 6 pm", "2028-03-08T18:00:00-07:00"),
        ("on the 20th at 5 pm", "2027-03-20T17:00:00-06:00"),
        ("2027-05-01T12:00Z", "2027-05-01T06:00:00-06:00"),
    ],
)
def test_what_cooks_write(told: str, moment: str) -> None:
    assert serving(told, NOW).isoformat() == moment


@pytest.mark.parametrize(
    "told", ["Saturday", "5 pm and 7 pm", "the moon 6 pm", "Feb 30 6 pm", "Sunday March 13 6 pm", ""]
)
def test_what_is_no_time_is_told_in_a_line(told: str) -> None:
    with pytest.raises(BadServing) as fault:
        serving(told, NOW)
    assert "\n" not in str(fault.value)


def test_an_hour_that_the_clocks_leap_over_is_the_one_after_it() -> None:
    assert serving("2027-03-14 02:30", NOW).isoformat() == "2027-03-14T03:30:00-06:00"


@pytest.mark.parametrize(
    ("service", "minutes", "start"),
    [
        # twelve hours before noon on the day that has lost an hour: eleven at night
        (datetime(2027, 3, 14, 12, tzinfo=DENVER), 12 * 60, "2027-03-13T23:00:00-07:00"),
        # and on the day that has won one
        (datetime(2027, 11, 7, 12, tzinfo=DENVER), 12 * 60, "2027-11-07T01:00:00-06:00"),
        (datetime(2027, 11, 7, 12, tzinfo=DENVER), 11 * 60, "2027-11-07T01:00:00-07:00"),
    ],
)
def test_stretches_are_as_long_as_they_are(service: datetime, minutes: int, start: str) -> None:
    begun = before(service, minutes)
    assert begun.isoformat() == start
    assert (service.astimezone(UTC) - begun.astimezone(UTC)).total_seconds() == minutes * 60


def test_zones() -> None:
    assert zone_of("America/Denver") == DENVER
    with pytest.raises(BadServing, match="no time zone"):
        zone_of("Timberfold/Lodge")


def test_the_zone_of_the_machine(monkeypatch) -> None:
    monkeypatch.setenv("TZ", "America/La_Paz")
    assert zone_of().key == "America/La_Paz"
