"""Which tokens of an utterance a component has claimed: the one place that takes the spans from the Doc."""

from __future__ import annotations

from spacy.tokens import Doc

from assistant.reading.ages import is_age
from assistant.reading.spans import Number
from assistant.reading.tokens import norms


def claimed(doc: Doc) -> set[int]:
    """Tokens that some component has understood."""
    return _tokens(doc._.numbers, doc._.measures, doc._.elevations, doc._.found, doc._.clock, doc._.packed)


def timed(doc: Doc) -> set[int]:
    """Tokens of measures and times of day."""
    return _tokens(doc._.measures, doc._.clock)


def plain_numbers(doc: Doc) -> list[Number]:
    """The numbers that nothing else has claimed, without how old somebody is."""
    taken, words = _tokens(doc._.measures, doc._.elevations, doc._.clock), norms(doc)
    plain = (number for number in doc._.numbers if number.start not in taken)
    return [n for n in plain if not is_age(words, n.start, n.end, n.value)]


def _tokens(*spans: tuple[object, ...]) -> set[int]:
    return {i for kind in spans for span in kind for i in range(span.start, span.end)}  # type: ignore[attr-defined]
