"""Who wants to know of each answer as it is given, such as the counters of a server. Nobody, unless they say so."""

from __future__ import annotations

from collections.abc import Callable

from rules.model import Answer

LISTENERS: list[Callable[[Answer], None]] = []


def given(answer: Answer) -> Answer:
    """The answer, after everybody who listens was told of it."""
    for listen in LISTENERS:
        listen(answer)
    return answer
