"""The elevation that is taken as an example where nobody gave one, and the question can do with one."""

from __future__ import annotations

from dataclasses import replace

from rules.catalogue import marked
from rules.model import Answer, Caution, Figure, Request
from rules.said import Words, elevation, sentences, together

EXAMPLE_M = 1524.0
# forms that ask what elevation does, wherever it is
OF_ANY_PLACE = frozenset(("changes", "more", "factor", "differ", "is_true"))
say = sentences("example")

ASK = Caution("note", say("caution"))
LABEL = say("label")


def serves(request: Request) -> bool:
    """Whether an example answers the question: what elevation changes, and not what to do in one kitchen."""
    return request.topic in marked("by_example") and not OF_ANY_PLACE.isdisjoint(request.forms)


def told(headline: Words, request: Request | None = None) -> Words:
    """The headline, and that it is about the example: because nobody gave an elevation, or named a place not known."""
    named = next((u.text for u in request.unused if u.kind == "elevation" and u.text), "") if request else ""
    return together(headline, say("note", example=elevation(EXAMPLE_M), unknown=named or "none"))


def figure() -> Figure:
    """The example as a figure."""
    return Figure("example_elevation", LABEL, EXAMPLE_M, "m")


def of_example(request: Request, answer: Answer) -> Answer:
    """The answer for the example as that of the request, which names no place."""
    return replace(
        answer,
        request=request,
        headline=told(answer.headline, request),
        figures=(figure(), *answer.figures),
        cautions=(*answer.cautions, ASK),
    )
