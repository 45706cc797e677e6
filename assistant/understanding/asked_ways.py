"""Component: which way it is asked whether a time or a temperature goes: longer, shorter, hotter, cooler, the same."""

from __future__ import annotations

from spacy.language import Language
from spacy.tokens import Doc

from assistant.understanding import forms

FILE = "lexicon/asked_ways.toml"
EITHER, ANY = "either", "any"
# how a verdict is asked for, no way being meant by its no; and the same change, which is a change
NO_WAYS = ("yes_or_no", "same_change")
# the forms that are asked of a way
WITH_A_WAY = frozenset(("changes", "more", "which", "differ", "enough", "is_ok", "can_it", "folly"))


Doc.set_extension("asked_way", default=None, force=True)


@Language.component("kitchen_ways", requires=["doc._.forms"], assigns=["doc._.asked_way"])
def kitchen_ways(doc: Doc) -> Doc:
    """Hear which way is asked about."""
    bare = not doc._.forms and any(token.text == "?" for token in doc)
    if bare or any(form.id in WITH_A_WAY for form in doc._.forms):
        doc._.asked_way = asked_way(doc)
    return doc


def asked_way(doc: Doc) -> str | None:
    """The way that is asked about, an id of data/lexicon/asked_ways.toml; `either` where it is several.

    >>> from assistant.understanding.pipeline import read
    >>> asked_way(read("is the oven hotter up here")), asked_way(read("hotter or cooler oil")), asked_way(read("stew"))
    ('hotter', 'either', None)
    >>> asked_way(read("does the time change")), asked_way(read("any change, or is it longer"))
    ('any', 'longer')
    >>> asked_way(read("do the minutes change, yes or no")), asked_way(read("is it the same correction for a caramel"))
    ('any', 'any')
    """
    heard = tuple(forms.patterns_heard(doc, FILE, "way"))
    wanted = {i for id, start, end in heard if id in NO_WAYS for i in range(start, max(end - 1, start + 1))}
    found = {id for id, start, _ in heard if start not in wanted and id not in NO_WAYS}
    told = found - {ANY} or found
    return EITHER if len(told) > 1 else next(iter(told), None)
