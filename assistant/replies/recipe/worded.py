"""A converted recipe in words: every reason and caution as text, its quantities in the asker's units."""

from __future__ import annotations

from dataclasses import replace

from assistant.replies.sentences import worded
from rules.model import Caution, Units
from rules.recipes.convert import Converted


def in_words(converted: Converted, units: Units = "us") -> Converted:
    """The conversion with text for every sentence; one that is in words already stays as it is."""
    return replace(
        converted,
        changes=tuple(replace(c, because=worded(c.because, units)) for c in converted.changes),
        dangers=tuple(_caution(c, units) for c in converted.dangers),
        notes=tuple(_caution(c, units) for c in converted.notes),
    )


def _caution(caution: Caution, units: Units) -> Caution:
    return replace(caution, text=worded(caution.text, units))
