"""Component: the times of day of a text, from assistant.reading.times_of_day."""

from __future__ import annotations

from spacy.language import Language
from spacy.tokens import Doc

from assistant.reading.groups import keep, shown
from assistant.reading.times_of_day import hear
from assistant.reading.tokens import norms

shown("clock", "time_of_day")


@Language.component("kitchen_clock", requires=["doc._.numbers", "doc._.measures"], assigns=["doc.spans", "doc._.clock"])
def kitchen_clock(doc: Doc) -> Doc:
    """Hear every time of day."""
    keep(doc, "clock", hear(norms(doc), doc._.numbers, doc._.measures))
    return doc
