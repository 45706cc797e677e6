"""Which way a cook asks whether a time or a temperature goes: longer or shorter, hotter or cooler, or the same."""

from __future__ import annotations

from spacy.tokens import Doc

from assistant.understanding import forms

FILE = "lexicon/asked_ways.toml"
EITHER, ANY = "either", "any"


def asked_way(doc: Doc) -> str | None:
    """The way that is asked about, an id of data/lexicon/asked_ways.toml; `either` where it is several.

    >>> from assistant.understanding.pipeline import read
    >>> asked_way(read("is the oven hotter up here")), asked_way(read("hotter or cooler oil")), asked_way(read("stew"))
    ('hotter', 'either', None)
    >>> asked_way(read("does the time change")), asked_way(read("any change, or is it longer"))
    ('any', 'longer')
    """
    found = {doc.vocab.strings[id] for id, _, _ in forms.matcher(doc.vocab, FILE, "way")(doc)}
    told = found - {ANY} or found
    return EITHER if len(told) > 1 else next(iter(told), None)
