"""What each component heard in a text, for contributors."""

from __future__ import annotations

from dataclasses import asdict
from typing import Any

from assistant.reading.tokens import norms
from assistant.understanding.pipeline import COMPONENTS, read
from assistant.understanding.request import hear
from rules.model import Kitchen

HEARS = {
    "kitchen_numbers": "numbers",
    "kitchen_measures": "measures",
    "kitchen_clock": "clock",
    "kitchen_spelling": "mended",
    "kitchen_lexicon": "found",
    "kitchen_elevation": "elevations",
    "kitchen_faults": "faults",
}
BEST = 5


def heard_by(text: str) -> dict[str, Any]:
    """Tokens, what each component heard, and the request that came of it; JSON-able."""
    doc = read(text)
    heard: dict[str, Any] = {"text": doc.text, "tokens": norms(doc)}
    for component in COMPONENTS:
        if component in HEARS:
            heard[component] = [_plain(item, heard["tokens"]) for item in getattr(doc._, HEARS[component])]
    topic = doc._.topic
    heard["kitchen_topic"] = {"topic": topic.id, "margin": round(topic.margin, 2), "scores": dict(topic.scores[:BEST])}
    heard["kitchen_subject"] = doc._.subject
    hearing = hear(doc, Kitchen())
    return {**heard, "elliptical": hearing.elliptical, "request": asdict(hearing.request)}


def _plain(item: Any, tokens: list[str]) -> Any:
    if isinstance(item, tuple):
        return list(item)
    return {"words": " ".join(tokens[item.start : item.end])} | asdict(item)
