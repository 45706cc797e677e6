"""The topic of a question, settled by what is told beside the words that chose it."""

from __future__ import annotations

from spacy.tokens import Doc

from assistant.reading.instruments import is_boiling
from assistant.reading.tokens import norms
from assistant.understanding import packed
from assistant.understanding.cue_words import cues, said
from rules.foods.dishes import dishes

TIME = "time"
PRESSURE_ASKED = (*cues("turning", "pressure_asked"), *cues("turning", "setting_asked"))
BOIL = "boiling_point"
DONE = "doneness"
READ_BY = ("thermometer", "probe", "reads", "reading", "dial", "gauge", "show", "shows", "showing", "scale")
TROUBLE = "troubleshoot"
THICKENED = ("custard", "sauce")
LIKE, PRESERVED = "like", "preserve"
SUGAR, SUGARED, READINGS, SYRUP_FROM_C = "sugar_stage", ("candy", "syrup"), ("temperature", "degree"), 104.0
HOW_HOT, HOW_MUCH = "how_hot", "how_much"
# forms in which a length is asked for, and those that ask for a reason or a verdict
LENGTHS = frozenset(("how_long", "remaining", HOW_MUCH))
ASKS_WHY = frozenset(("why", "explain", "wrong"))
REASONS = frozenset(
    ("why", "is_true", "changes", "differ", "what_if", "what_is", "can_it", "is_ok", "folly", "explain")
)


def settled(doc: Doc, topic: str) -> str:
    """The topic, where it is not the time of a dish that is meant after all."""
    if not any(found.kind == "dish" for found in doc._.found):
        return BOIL if topic == TROUBLE and _stops_at_the_boil(doc) else topic
    forms = {form.id for form in doc._.forms}
    timed = doc._.times.baseline is not None
    match topic:
        case "pressure" if _is_way_to_cook(doc, forms):
            return TIME
        case "order" if timed and doc._.times.printed and HOW_MUCH not in forms:
            return TIME
        case "preserve" if _is_only_likened(doc):
            return TIME
        case "calibrate" if _is_thickened(doc) and not said(norms(doc), READ_BY):
            return DONE
        case "why" if _reads_sugar(doc) and forms.isdisjoint(ASKS_WHY):
            return SUGAR
        case "why" if timed and not forms.isdisjoint(LENGTHS) and forms.isdisjoint(REASONS):
            return TIME
    return topic


def _names(doc: Doc, classes: tuple[str, ...]) -> bool:
    """Whether a dish of one of these classes is named."""
    return any(f.kind == "dish" and dishes()[f.id].dish_class in classes for f in doc._.found)


def _is_thickened(doc: Doc) -> bool:
    """Whether a custard or a sauce is named, which is done at a reading of its own."""
    return _names(doc, THICKENED)


def _stops_at_the_boil(doc: Doc) -> bool:
    """Whether water gets no hotter than a reading, which is its boil and no fault: the wells won't go past 196."""
    return any(found.kind == "method" and found.id == "hold" for found in doc._.found) and is_boiling(norms(doc))


def _reads_sugar(doc: Doc) -> bool:
    """Whether a syrup or a candy is named with a reading of its own: should I still go to 300."""
    return _names(doc, SUGARED) and any(m.kind in READINGS and m.low >= SYRUP_FROM_C for m in doc._.measures)


def _is_way_to_cook(doc: Doc, forms: set[str]) -> bool:
    """Whether pressure is named as the way a dish is cooked, and no pressure is told or asked about."""
    gauged = any(measure.kind == "pressure" for measure in doc._.measures)
    return not gauged and HOW_HOT not in forms and not said(norms(doc), PRESSURE_ASKED)


def _is_only_likened(doc: Doc) -> bool:
    """Whether what is put up is only what a dish is like: the yolk is like jelly."""
    words = norms(doc)
    likened = any(f.kind == "dish" and f.start and words[f.start - 1] == LIKE for f in doc._.found)
    put_up = any(f.kind == "method" and f.id == PRESERVED for f in doc._.found) or bool(packed.jars(doc))
    return likened and not put_up
