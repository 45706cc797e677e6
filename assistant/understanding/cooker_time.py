"""Component: a question of a pressure cooker that is about its time, though its words speak for the setting."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

from spacy.language import Language
from spacy.tokens import Doc

from assistant.reading.tokens import norms
from assistant.understanding import faults, whistles
from assistant.understanding.topics import UNSURE

PRESSURE = "pressure"
TIME = "time"
WHY = "why"
TROUBLE = "troubleshoot"
ORDER = "order"
LIQUID = "liquid"
DIFFER = "differ"
COOKER, RELEASE, WHISTLE = "pressure_cook", "release", "whistle"
ELECTRIC = "electric_pressure_cooker"
OF_PRESSURE = frozenset(("pressure", "psi", "pot", "kpa", "instant"))
OF_TIME = ("longer", "shorter")
AMOUNT, POURED = ("how_much", "more"), ("water", "liquid", "cups", "cup", "broth", "ratio")
# what asks for the pressure itself: what psi, how many pounds, which weight
ASKS, ASKED = (
    ("what", "which", "many", "much", "whats"),
    ("psi", "psig", "pressure", "pounds", "weight", "kpa", "bar", "lb", "lbs"),
)


@Language.component(
    "kitchen_cooker_time", requires=["doc._.topic", "doc._.found", "doc._.asked_way"], assigns=["doc._.topic"]
)
def kitchen_cooker_time(doc: Doc) -> Doc:
    """Take a question of pressure for one of time where a time is told or asked.

    How much longer it takes with no dish named is told by the room of pressure.
    """
    counted = doc._.topic.id == ORDER and whistles.heard(doc) is not None
    told = doc._.topic.id == LIQUID and speaks_of_cooker(doc) and not asks_amount(doc)
    if doc._.topic.id == PRESSURE and is_of_rice_cooker(doc):
        doc._.topic = replace(doc._.topic, id=LIQUID, margin=max(doc._.topic.margin, UNSURE))
        return doc
    sure = counted or told or doc._.topic.id == PRESSURE or (doc._.topic.id == TIME and speaks_of_cooker(doc))
    if sure and asks_time(doc):
        doc._.topic = replace(doc._.topic, id=TIME, margin=max(doc._.topic.margin, UNSURE))
    elif (doc._.topic.id == WHY and checks_time(doc)) or (doc._.topic.id == TROUBLE and may_be_done(doc)):
        doc._.topic = replace(doc._.topic, id=TIME, margin=UNSURE)
    elif doc._.topic.id == TIME and asks_in_general(doc):
        doc._.topic = replace(doc._.topic, id=PRESSURE, margin=UNSURE)
    return doc


def is_of_rice_cooker(doc: Doc) -> bool:
    """Whether the cooker is one for rice, which has no pressure: it is asked what water it takes."""
    words = norms(doc)
    return "rice cooker" in " ".join(words) and OF_PRESSURE.isdisjoint(words)


def speaks_of_cooker(doc: Doc) -> bool:
    """Whether a pressure cooker or its whistles are named."""
    cooker = any((one.kind, one.id) in (("method", COOKER), ("equipment", ELECTRIC)) for one in doc._.found)
    return cooker or whistles.heard(doc) is not None


def _is_in_cooker(doc: Doc) -> bool:
    return any((one.kind, one.id) == ("method", COOKER) for one in doc._.found)


def asks_amount(doc: Doc) -> bool:
    """Whether it is asked how much: water by the cup, or more of it."""
    words = norms(doc)
    return any(form.id in AMOUNT for form in doc._.forms) or any(word in POURED for word in words)


def checks_time(doc: Doc) -> bool:
    """Whether the minutes of the book for a dish in a pressure cooker are to be judged, and nobody asks why."""
    kinds = {one.kind for one in doc._.found} | {measure.kind for measure in doc._.measures}
    cooker = _is_in_cooker(doc)
    return cooker and {"dish", TIME} <= kinds and all(form.id not in (WHY, "is_true") for form in doc._.forms)


def may_be_done(doc: Doc) -> bool:
    """Whether it is asked if a dish may go into a pressure cooker, and nothing is told that went wrong."""
    found = {one.kind for one in doc._.found}
    cooker = _is_in_cooker(doc)
    asked = any(form.id in ("is_ok", "can_it") for form in doc._.forms)
    wrong = any(form.id == "wrong" for form in doc._.forms) or bool(faults.told(doc))
    return cooker and "dish" in found and asked and not wrong


def asks_in_general(doc: Doc) -> bool:
    """Whether it is asked how much longer a pressure cooker takes, whatever is in it."""
    kinds = {one.kind for one in doc._.found}
    cooker = _is_in_cooker(doc)
    counted = any(measure.kind in (TIME, WHISTLE) for measure in doc._.measures)
    return cooker and doc._.asked_way in OF_TIME and "dish" not in kinds and not counted


def asks_time(doc: Doc) -> bool:
    """Whether the time under pressure is asked about: a dish with its minutes, more of them, or the release.

    >>> from assistant.understanding.pipeline import read
    >>> asks_time(read("chicken 10 minutes high pressure in Denver")), asks_time(read("what does 15 psi reach"))
    (True, False)
    """
    words = norms(doc)
    if not any(one.kind == "dish" for one in doc._.found) or any(
        one in ASKS and other in ASKED for one, other in pairwise(words)
    ):
        return False
    kinds = {measure.kind for measure in doc._.measures}
    released = any(form.id == RELEASE for form in doc._.forms) or whistles.heard(doc) is not None
    against = any(form.id == DIFFER for form in doc._.forms)
    return (
        "time" in kinds
        or doc._.times.first is not None
        or against
        or released
        or (doc._.asked_way in OF_TIME and PRESSURE not in kinds)
    )
