"""An answer of the rules in words: every sentence of it as text, its quantities in the asker's units."""

from __future__ import annotations

from dataclasses import replace

from assistant.replies.sentences import worded
from rules import engine
from rules.model import Answer, Request


def in_words(answer: Answer) -> Answer:
    """The answer with text for every sentence; one that is in words already stays as it is."""
    units = answer.request.units
    return replace(
        answer,
        headline=worded(answer.headline, units),
        figures=tuple(replace(f, label=worded(f.label, units)) for f in answer.figures),
        steps=tuple(dict.fromkeys(worded(step, units) for step in answer.steps)),
        because=tuple(replace(b, text=worded(b.text, units)) for b in answer.because),
        cautions=tuple(dict.fromkeys(replace(c, text=worded(c.text, units)) for c in answer.cautions)),
    )


def answer(request: Request) -> Answer:
    """What the rules answer, in words."""
    return in_words(engine.answer(request))
