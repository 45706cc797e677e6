"""Component: the numbers of a text, from assistant.reading.figures."""

from __future__ import annotations

from spacy.language import Language
from spacy.tokens import Doc

from assistant.reading.figures import hear
from assistant.reading.groups import keep, shown
from assistant.reading.tokens import norms

shown("numbers", "number")


@Language.component("kitchen_numbers", assigns=["doc.spans", "doc._.numbers"])
def kitchen_numbers(doc: Doc) -> Doc:
    """Hear every number of the text."""
    keep(doc, "numbers", hear(norms(doc)))
    return doc
