"""Understanding of kitchen language: free text -> Request. Cheap to import; the pipeline is made at first use."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from rules.model import Kitchen, Request


def understand(text: str, context: Sequence[str] = (), kitchen: Kitchen | None = None) -> Request:
    """Take a question apart. Never raises, whatever the text.

    text: what the cook said; of a very long text the first 2,000 characters are read
    context: what the cook said before in this conversation, oldest first
    kitchen: what to take for granted where the cook does not say

    >>> request = understand("how long to braise short ribs at 7,000 feet")
    >>> request.topic, request.dish, request.method, request.elevation_m
    ('time', 'short ribs', 'braise', 2133.6)
    """
    from assistant.understanding.conversation import fold_in

    return fold_in(text, context, kitchen or Kitchen())


def trace(text: str) -> dict[str, Any]:
    """What was heard in a text, component by component, as plain JSON-able values."""
    from assistant.understanding.tracing import heard_by

    return heard_by(text)
