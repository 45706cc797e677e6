"""A timer as it is talked of and kept."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime


@dataclass(frozen=True, slots=True, kw_only=True)
class Timer:
    """A timer. conversation: whose it is; rang: whether its end has been announced; id: 0 until it is kept."""

    name: str
    starts_at: datetime
    ends_at: datetime
    dish: str | None = None
    conversation: str = ""
    rang: bool = False
    id: int = 0
