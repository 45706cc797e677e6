"""When service is: words to a moment in the kitchen's time zone, right on the days on which clocks are changed.

The time of day is heard by the one reader of times, the day of the week by the one reader of days; a date is read by
python-dateutil.
"""

from __future__ import annotations

import os
from datetime import UTC, datetime, timedelta
from functools import cache
from pathlib import Path
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from dateutil import parser
from dateutil.relativedelta import relativedelta

from assistant.errors import AssistantError
from assistant.reading.days import DAYS, NEAR_DAYS, TOMORROW, WEEK, named
from assistant.reading.reader import hear
from assistant.understanding.cue_words import cues

LOCALTIME = Path("/etc/localtime")
MIDNIGHT = relativedelta(hour=0, minute=0, second=0, microsecond=0)
# so far ahead a day without a year is looked for: to the next 29 February
MOST_MONTHS = 8 * 12
DEFAULTS = (datetime(2024, 1, 1), datetime(2028, 3, 2))


class BadServing(AssistantError, ValueError):
    """A time of service that cannot be read. text: as it was told; why: what is wrong with it"""

    def __init__(self, text: str, why: str) -> None:
        super().__init__(text, why)
        self.text, self.why = text, why

    def __str__(self) -> str:
        return f'{self.text!r} {self.why}; say it as "Saturday 6:30 pm" or "2027-03-14 18:30"'


def zone_of(name: str | None = None) -> ZoneInfo:
    """The time zone of a name, such as America/Denver; without one that of this machine, or UTC where it tells none.

    raises: BadServing where there is no such zone
    """
    told = name or os.environ.get("TZ", "").lstrip(":") or _of_this_machine()
    try:
        return ZoneInfo(told)
    except (ZoneInfoNotFoundError, ValueError, OSError):
        if name:
            raise BadServing(name, "is no time zone (America/Denver is one)") from None
        return ZoneInfo("UTC")


@cache
def _of_this_machine() -> str:
    *_, zone = str(LOCALTIME.resolve()).partition("zoneinfo/")
    return zone or "UTC"


def serving(text: str, now: datetime) -> datetime:
    """The moment of service, in the time zone of `now`: on the next such day where no date is told, and after now.

    raises: BadServing where no time or more than one is told, or the day cannot be read

    >>> now = datetime(2027, 3, 12, 9, tzinfo=ZoneInfo("America/Denver"))
    >>> serving("Sunday at half past six", now).isoformat()
    '2027-03-14T18:30:00-06:00'
    """
    zone = now.tzinfo
    if (exact := _iso(text)) is not None:
        return exact.astimezone(zone) if exact.tzinfo else _real(exact.replace(tzinfo=zone))
    text = _days_in_full(text)
    told = text if hear(text).clock else f"{_as_of_a_meal()} {DAYS.sub(' ', text)}"
    heard = hear(told)
    times = {time.low for time in heard.clock}
    if len(times) != 1:
        raise BadServing(text, "tells two times of day" if times else "tells no time of day")
    minutes = int(times.pop())
    start, end = heard.place(heard.clock[0])
    rest = f"{told[:start]} {told[end:]} {'' if told is text else named(text) or ''}"
    day = _day(text, rest, now, minutes)
    return _real(datetime(day.year, day.month, day.day, minutes // 60, minutes % 60, tzinfo=zone))


def _days_in_full(text: str) -> str:
    """The text with the days of the week in full: Sat is no verb here."""
    days = parser.parserinfo()
    found = ((word, days.weekday(word.strip(",."))) for word in text.split())
    return " ".join(word if day is None else WEEK[day].capitalize() for word, day in found)


def _iso(text: str) -> datetime | None:
    """A date with a time as ISO 8601 writes them."""
    try:
        return datetime.fromisoformat(text.strip()) if "T" in text or ":" in text else None
    except ValueError:
        return None


def _day(text: str, rest: str, now: datetime, minutes: int) -> datetime:
    """The day of service. rest: the text without its time of day; minutes: that time, after midnight"""
    midnight = now + MIDNIGHT
    late = minutes <= now.hour * 60 + now.minute
    dated = " ".join(word for word in DAYS.sub(" ", rest).split() if word.strip(",.;").lower() not in _between())
    if any(letter.isalnum() for letter in dated):
        return _dated(text, dated, midnight, now, minutes)
    day = named(rest)
    if day in WEEK:
        ahead = (WEEK.index(day) - now.weekday()) % 7
        return midnight + relativedelta(days=ahead or (7 if late else 0))
    return midnight + relativedelta(days=1 if day == TOMORROW or (day is None and late) else 0)


def _dated(text: str, dated: str, midnight: datetime, now: datetime, minutes: int) -> datetime:
    """The day of a date; without a month or a year the next such day.

    What two defaults leave alike was told.
    """
    try:
        one, other = (parser.parse(dated, default=default) for default in DEFAULTS)
    except (ValueError, OverflowError):
        raise BadServing(text, "tells a day I cannot read") from None
    if one.day != other.day:
        raise BadServing(text, "tells a day I cannot read")
    today = midnight.replace(tzinfo=None)
    ahead = (today + relativedelta(months=n, day=1) for n in range(MOST_MONTHS))
    months = (
        month for month in ahead
        if (month.year == one.year or one.year != other.year) and (month.month == one.month or one.month != other.month)
    )  # fmt: skip
    days = (month + relativedelta(day=one.day) for month in months)
    later = (d for d in days if d.day == one.day and d + timedelta(minutes=minutes) > now.replace(tzinfo=None))
    found = one if one.year == other.year else next(later, None)
    if found is None:
        raise BadServing(text, "tells a day I cannot read")
    if (day := named(text)) in WEEK and WEEK.index(day) != found.weekday():
        raise BadServing(text, f"is a {WEEK[found.weekday()].capitalize()}")
    return found


@cache
def _as_of_a_meal() -> str:
    """What makes a figure behind it a time of day: serve at."""
    return f"{cues('clock', 'meals')[0]} {cues('clock', 'leads')[0]}"


@cache
def _between() -> frozenset[str]:
    """Words that stand between a day and a time and tell neither."""
    small = {word for lead in cues("clock", "leads") for word in lead.split()}
    return frozenset((*small, *cues("clock", "meals"), *cues("clock", "morning"), *NEAR_DAYS, "on", "the", ""))


def _real(moment: datetime) -> datetime:
    """The moment; a time that the clocks leap over is as much later, as they then show."""
    return moment.astimezone(UTC).astimezone(moment.tzinfo)


def before(moment: datetime, minutes: float) -> datetime:
    """So many minutes before a moment, as they pass: clocks that are changed in between do not matter.

    >>> served = datetime(2027, 3, 14, 12, tzinfo=ZoneInfo("America/Denver"))
    >>> before(served, 12 * 60).isoformat()
    '2027-03-13T23:00:00-07:00'
    """
    return (moment.astimezone(UTC) - timedelta(minutes=minutes)).astimezone(moment.tzinfo)
