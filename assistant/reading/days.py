"""The day that words name: a day of the week, today, tomorrow."""

from __future__ import annotations

import re
from typing import Final

DAYS: Final = re.compile(r"\b(?:(?:mon|tues?|wed|thu(?:rs)?|fri)(?:day|nesday)?|saturday|sunday)s?\b", re.IGNORECASE)
WEEK: Final = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
TOMORROW, TODAY = "tomorrow", "today"
NEAR_DAYS: Final = {"tomorrow": TOMORROW, "tonight": TODAY, "today": TODAY, "tonights": TODAY}


def named(text: str) -> str | None:
    """The day that a text names.

    >>> named("for Thurs at 7"), named("tonight, 60 covers"), named("at 7")
    ('thursday', 'today', None)
    """
    found = DAYS.search(text)
    if found:
        return next(day for day in WEEK if day.startswith(found[0].lower()[:3]))
    words = re.findall(r"[a-z]+", text.lower())
    return next((NEAR_DAYS[word] for word in words if word in NEAR_DAYS), None)
