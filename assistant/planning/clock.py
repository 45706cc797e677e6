"""Times of day and stretches of time in words; dates and durations by python-dateutil."""

from __future__ import annotations

from datetime import datetime, timedelta

from dateutil import tz
from dateutil.relativedelta import relativedelta

from rules.model import Units


def now_here() -> datetime:
    """The present moment with the time zone of this machine; front ends hand it to what needs the time."""
    return datetime.now(tz.tzlocal())


def clock(moment: datetime, units: Units = "us") -> str:
    """A time of day as it is said where these units are used.

    >>> clock(datetime(2026, 3, 7, 18, 5)), clock(datetime(2026, 3, 7, 18, 5), "metric")
    ('6:05 pm', '18:05')
    """
    if units == "metric":
        return f"{moment:%H:%M}"
    if (moment.hour, moment.minute) in ((0, 0), (12, 0)):
        return "noon" if moment.hour else "midnight"
    half = "pm" if moment.hour >= 12 else "am"
    return f"{moment.hour % 12 or 12}:{moment:%M} {half}" if moment.minute else f"{moment.hour % 12 or 12} {half}"


def stretch(delta: timedelta) -> str:
    """A stretch of time as a cook says it: seconds in the last two minutes, minutes to a day, then days.

    >>> stretch(timedelta(minutes=72, seconds=4)), stretch(timedelta(seconds=95)), stretch(timedelta(days=2, hours=3))
    ('1 h 12 min', '1 min 35 s', '2 days 3 h')
    """
    whole = timedelta(seconds=round(abs(delta).total_seconds()))
    if whole >= timedelta(minutes=2):
        whole = timedelta(minutes=round(whole.total_seconds() / 60))
    parts = relativedelta(seconds=int(whole.total_seconds())).normalized()
    days = f"{parts.days} day{'s' if parts.days > 1 else ''}"
    named = ((parts.days, days), (parts.hours, f"{parts.hours} h"), (parts.minutes, f"{parts.minutes} min"))
    said = [words for count, words in (*named, (parts.seconds, f"{parts.seconds} s")) if count]
    return " ".join(said[:2]) or "0 s"
