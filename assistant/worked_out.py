"""A request worked out by whoever knows about it, and put into words only when somebody wants to read it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import cached_property, partial

from assistant.replies.wording import dress
from rules import engine
from rules.model import Answer, Request


@dataclass(frozen=True)
class WorkedOut:
    """A request worked out.

    request: as it was put; missing: what must be asked first; word: puts the answer into words
    """

    request: Request
    missing: tuple[str, ...]
    word: Callable[[], Answer]

    @cached_property
    def answer(self) -> Answer:
        """The answer in words, text and spoken line included."""
        return self.word()

    def asked_as(self, text: str) -> WorkedOut:
        """The same, as the answer to other words."""
        return replace(self, request=replace(self.request, text=text), word=partial(_asked_as, self, text))


def work_out(request: Request) -> WorkedOut:
    """Work out any request."""
    if request.danger:
        return told(engine.answer(request), request)
    if request.topic == "convert_recipe" and not engine.asks_to_bother(request):
        return _recipe(request)
    found = engine.answer(request)
    if request.topic == "schedule":
        return WorkedOut(request, found.missing, partial(_clocked, found))
    if request.topic == "order" and request.menu:
        return WorkedOut(request, found.missing, partial(_in_packs, found))
    return told(found, request)


def told(answer: Answer, request: Request | None = None) -> WorkedOut:
    """What an answer says, yet to be put into words."""
    return WorkedOut(request or answer.request, answer.missing, lambda: dress(answer))


def _recipe(request: Request) -> WorkedOut:
    from assistant.recipes.recipe_answer import convert, tell

    found = convert(request)
    missing = found.missing if isinstance(found, Answer) else ()
    return WorkedOut(request, missing, lambda: tell(request, found))


def _clocked(found: Answer) -> Answer:
    from assistant.planning.schedule import with_clock

    return dress(with_clock(found))


def _in_packs(found: Answer) -> Answer:
    from assistant.planning.ordered import with_packs

    return dress(with_packs(found))


def _asked_as(worked: WorkedOut, text: str) -> Answer:
    return replace(worked.answer, request=replace(worked.answer.request, text=text))
