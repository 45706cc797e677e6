"""Component: the quantities of a text, from assistant.reading.quantities."""

from __future__ import annotations

from spacy.language import Language
from spacy.tokens import Doc

from assistant.reading.groups import keep, shown
from assistant.reading.quantities import hear
from assistant.reading.tokens import norms

shown("measures", "measure")


@Language.component("kitchen_measures", requires=["doc._.numbers"], assigns=["doc.spans", "doc._.measures"])
def kitchen_measures(doc: Doc) -> Doc:
    """Hear every quantity of the text."""
    keep(doc, "measures", hear(norms(doc), [token.text for token in doc], doc._.numbers))
    return doc
