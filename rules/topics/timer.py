"""A timer: what it needs. Timers run where somebody can ring them, so the rules keep none."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.model import Figure, Request
from rules.said import Measure, Said, exact_duration, sentences

say = sentences("topics/timer")

# what is asked of timers that needs a length of time; None is plain setting
LENGTHS = (None, "set", "extend", "each", "move", "change")


@rule("timer.length", "computed")
def length(case: Case) -> Part:
    """The length that was understood, and where timers are kept."""
    minutes = case.request.time_min
    if minutes is None:
        return Part(headline=say("kept-in-a-conversation"))
    return Part(
        figures=(Figure("timer", say("label"), minutes, "min"),),
        headline=headline(case.request.dish or case.request.timer_name, exact_duration(minutes)),
    )


def headline(name: str, time: Measure) -> Said:
    """The length, and what the timer is for where that was said."""
    return say("headline-for", time=time, name=name) if name else say("headline", time=time)


def needs(request: Request) -> tuple[str, ...]:
    """How long, where a timer is to be set or made longer."""
    return ("time",) if request.timer_action in LENGTHS else ()


RULES = (length,)
