"""The one way from words to an answer; every front end goes through here."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from assistant.listeners import given
from rules.model import Answer, Kitchen, Request

if TYPE_CHECKING:
    from assistant.dialogue.turn import Turn

LONGEST_CONTEXT = 20


def reply_to(
    text: str, context: Sequence[str] = (), kitchen: Kitchen | None = None, depth: int | None = None
) -> Answer:
    """Answer a question in free text.

    text: the question, any text whatsoever; context: earlier utterances of the conversation, oldest first
    kitchen: what to take for granted where the cook does not say; depth: of the answer, None leaves it to the cook
    returns: the Answer with its text and spoken line; never raises because of what the text says
    """
    return given(_last_turn(text, context, kitchen, depth).answer)


def understand(text: str, context: Sequence[str] = (), kitchen: Kitchen | None = None) -> Request:
    """What is asked, as it is put to the rules. Never raises, whatever the text; arguments as those of reply_to.

    >>> request = understand("how long to braise short ribs at 7,000 feet")
    >>> request.topic, request.dish, request.method, request.elevation_m
    ('time', 'short ribs', 'braise', 2133.6)
    """
    return _last_turn(text, context, kitchen, None).reply.request


def reply_to_request(request: Request) -> Answer:
    """Answer a request that is already taken apart, text and spoken line included."""
    from assistant.worked_out import work_out

    return work_out(request).answer


def _last_turn(text: str, context: Sequence[str], kitchen: Kitchen | None, depth: int | None) -> Turn:
    """The last turn of a conversation; of those before it only what they leave in the memory is worked out."""
    from assistant.dialogue.memory import Memory
    from assistant.dialogue.turn import take_turn

    memory = Memory(kitchen=kitchen or Kitchen())
    for earlier in tuple(context)[-LONGEST_CONTEXT:]:
        memory = take_turn(str(earlier), memory).memory
    return take_turn(str(text), memory, depth)
