"""Understanding of kitchen language: an utterance -> what it says. Cheap to import; the pipeline comes at first use."""

from __future__ import annotations

from typing import Any


def trace(text: str) -> dict[str, Any]:
    """What was heard in a text, component by component, as plain JSON-able values."""
    from assistant.understanding.tracing import heard_by

    return heard_by(text)
