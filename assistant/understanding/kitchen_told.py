"""Whether an utterance tells where the cook's own kitchen is or what is in it. A question tells nothing, nor a task."""

from __future__ import annotations

from spacy.tokens import Doc

from assistant.reading.tokens import norms
from assistant.understanding import forms, unclaimed
from assistant.understanding.cue_words import cues, said

HEIGHT = cues("kitchen_told", "height")
OWN, ASKED_BACK = cues("kitchen_told", "own"), cues("kitchen_told", "asked_back")
ASKING, OPENING, TASKS = (frozenset(cues("kitchen_told", name)) for name in ("asking", "opening", "tasks"))
# what is measured of a place and of those who eat there
OF_A_PLACE = ("length", "portion")
# words of those who tell where they are
SELF = frozenset(cues("kitchen_told", "self"))
POLITE, GOING_ON = cues("kitchen_told", "polite"), cues("kitchen_told", "going_on")


def tells(doc: Doc) -> bool:
    """Whether something is told of the kitchen that holds from now on, and nothing is asked.

    >>> from assistant.understanding.pipeline import read
    >>> [tells(read(t)) for t in ("we moved to Leadville", "how high is Leadville", "name a bar in Leadville")]
    [True, False, False]
    """
    words = norms(doc)
    if asks(doc) or any(found.kind == "symptom" for found in doc._.found):
        return False
    return said(words, OWN) or unclaimed.is_elliptical(doc) or is_only_where(doc)


def is_only_where(doc: Doc) -> bool:
    """Whether an utterance tells how high its cook is and names nothing of the kitchen: started at a lodge, 2,874 m.

    >>> from assistant.understanding.pipeline import read
    >>> [is_only_where(read(t)) for t in ("started at a lodge, 2,874 m", "beans at a lodge, 2,874 m", "I love Aspen")]
    [True, False, False]
    """
    heights = [height for height in doc._.elevations if height.role == "here"]
    told = any(height.sure or (height.unit and not SELF.isdisjoint(norms(doc))) for height in heights)
    of_food = any(found.kind != "place" for found in doc._.found)
    return told and not of_food and not any(m.kind not in OF_A_PLACE for m in doc._.measures) and not asks(doc)


def asks(doc: Doc) -> bool:
    """Whether something is asked or set as a task, be it without a mark of question."""
    text = " ".join(norms(doc))
    return asks_outright(doc) or (not _is_polite(text) and any(text.startswith(lead) for lead in GOING_ON))


def asks_outright(doc: Doc) -> bool:
    """Whether something is asked in so many words, and not only gone on with: and for buckwheat."""
    words = norms(doc)
    if _is_polite(" ".join(words)):
        return False
    asked = "?" in words or not ASKING.isdisjoint(words) or not TASKS.isdisjoint(words)
    return asked or any(words[at] in OPENING for at in forms.clause_starts(doc))


def _is_polite(text: str) -> bool:
    return any(text.startswith(f"{polite} ") for polite in POLITE)


def asks_back(doc: Doc) -> bool:
    """Whether it is asked how high a place is, or what is taken for granted."""
    return said(norms(doc), ASKED_BACK)


def asks_height(doc: Doc) -> bool:
    """Whether it is asked how high a place is."""
    return said(norms(doc), HEIGHT)
