"""The one way from words to an answer; every front end goes through here."""

from __future__ import annotations

from collections.abc import Sequence

from rules.engine import answer
from rules.model import Answer, Kitchen, Request


def reply_to(text: str, context: Sequence[str] = (), kitchen: Kitchen | None = None) -> Answer:
    """Answer a question in free text.

    text: the question, any text whatsoever; context: earlier utterances of the conversation, oldest first
    kitchen: what to take for granted where the cook does not say
    returns: the Answer with its text and spoken line; never raises because of what the text says
    """
    from assistant.language import understand

    return reply_to_request(understand(text, context, kitchen or Kitchen()))


def reply_to_request(request: Request) -> Answer:
    """Answer a request that is already taken apart, text and spoken line included."""
    from assistant.replies import dress

    return dress(answer(request))
