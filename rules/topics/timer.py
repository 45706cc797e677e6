"""A timer: what it needs. Timers run where somebody can ring them, so the rules keep none."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.model import Figure, Request
from rules.say import duration

# what is asked of timers that needs a length of time; None is plain setting
LENGTHS = (None, "set", "extend")


@rule("timer.length", "computed")
def length(case: Case) -> Part:
    """The length that was understood, and where timers are kept."""
    minutes = case.request.time_min
    if minutes is None:
        return Part(headline="Timers are kept in a conversation: begin one, and ask there.")
    return Part(
        figures=(Figure("timer", "Timer", minutes, "min"),),
        headline=f"A timer of {duration(minutes)}: timers are kept in a conversation, so begin one and say this there.",
    )


def needs(request: Request) -> tuple[str, ...]:
    """How long, where a timer is to be set or made longer."""
    return ("time",) if request.timer_action in LENGTHS else ()


RULES = (length,)
