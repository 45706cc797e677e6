"""The spaCy pipeline: which components there are, and their order."""

from __future__ import annotations

from functools import cache, lru_cache

from spacy.lang.en import English
from spacy.language import Language
from spacy.tokens import Doc

# importing a component registers it
from assistant.reading.text import Cleaned, clean
from assistant.reading.tokens import KitchenTokenizer
from assistant.understanding import (
    allergens,  # noqa: F401
    asked_ways,  # noqa: F401
    complaints,  # noqa: F401
    concepts,  # noqa: F401
    cooker_time,  # noqa: F401
    faults,  # noqa: F401
    forms,  # noqa: F401
    frames,  # noqa: F401
    packed,  # noqa: F401
    place_names,  # noqa: F401
    time_roles,  # noqa: F401
)

COMPONENTS = (
    "kitchen_numbers",
    "kitchen_measures",
    "kitchen_clock",
    "kitchen_spelling",
    "kitchen_lexicon",
    "kitchen_allergens",
    "kitchen_places",
    "kitchen_packed",
    "kitchen_elevation",
    "kitchen_concepts",
    "kitchen_faults",
    "kitchen_forms",
    "kitchen_times",
    "kitchen_ways",
    "kitchen_frames",
    "kitchen_topic",
    "kitchen_cooker_time",
    "kitchen_complaints",
    "kitchen_safety",
    "kitchen_subject",
)


@cache
def pipeline() -> Language:
    """The one pipeline of the process. English without a trained model: words, units and topics are all data."""
    nlp = English(create_tokenizer=KitchenTokenizer)
    for name in COMPONENTS:
        nlp.add_pipe(name)
    return nlp


def read(text: str) -> Doc:
    """Run any text through the pipeline."""
    return read_clean(clean(text))


@lru_cache(maxsize=8)
def read_clean(cleaned: Cleaned) -> Doc:
    """Run a cleaned text through the pipeline. The last few are kept."""
    doc = pipeline().make_doc(cleaned.text)
    doc._.accented = cleaned.accented
    return pipeline()(doc)
