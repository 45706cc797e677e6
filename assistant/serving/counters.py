"""What a server counts, in the text format of Prometheus. Labels are names of ours alone: no words of anybody.

Importing this makes the counters, added up with those of other processes inside `processes.added_up`.
"""

from __future__ import annotations

import os

from prometheus_client import (
    CONTENT_TYPE_LATEST,
    CollectorRegistry,
    Counter,
    Histogram,
    PlatformCollector,
    ProcessCollector,
    generate_latest,
)
from prometheus_client.multiprocess import MultiProcessCollector

from assistant.serving.processes import SEVERAL
from rules.catalogue import marked
from rules.model import Answer

CONTENT_TYPE = CONTENT_TYPE_LATEST
NONE = "none"
# [s]
BUCKETS = (0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1.0, 2.5, 5.0, 10.0, 30.0)

_registry = CollectorRegistry()
if SEVERAL in os.environ:
    MultiProcessCollector(_registry)
else:
    ProcessCollector(registry=_registry)
    PlatformCollector(registry=_registry)
# where processes are added up, the registry holds their sum alone
_own = None if SEVERAL in os.environ else _registry
_requests = Counter(
    "simmerline_requests", "Requests, by route, method and status.", ("route", "method", "status"), registry=_own
)
_seconds = Histogram(
    "simmerline_request_seconds", "Seconds from a request to its response.", ("route",), registry=_own, buckets=BUCKETS
)
_answers = Counter(
    "simmerline_answers",
    "Answers, by topic, form of the question, and what came of it: answered, refused, asked_back, not_covered.",
    ("topic", "form", "came_of_it"),
    registry=_own,
)


def count_request(route: str, method: str, status: int, seconds: float) -> None:
    """Count a request. route: as it is laid out, never as it was called"""
    _requests.labels(route, method, str(status)).inc()
    _seconds.labels(route).observe(seconds)


def count_answer(answer: Answer) -> None:
    """Count an answer, or each of several that were given in one."""
    for part in answer.parts or (answer,):
        request = part.request
        _answers.labels(request.topic or NONE, request.forms[0] if request.forms else NONE, came_of(part)).inc()


def came_of(answer: Answer) -> str:
    """What came of a question: answered, refused, asked_back or not_covered."""
    if answer.request.danger or any(caution.level == "stop" for caution in answer.cautions):
        return "refused"
    if answer.missing:
        return "asked_back"
    return "answered" if answer.covered or answer.request.topic in marked("by_words") else "not_covered"


def exposition() -> bytes:
    """All counters as text."""
    return generate_latest(_registry)
