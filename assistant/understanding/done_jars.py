"""Jars that were processed already and are to be judged: did the peaches 25 min last night, eat, redo or bin?"""

from __future__ import annotations

from spacy.tokens import Doc

from assistant.reading.tokens import norms
from assistant.understanding.cue_words import cues, said
from rules.foods.dishes import dishes
from rules.preserving.foods import CANNED, food

DONE, OF_JARS, OF_SETTING, FRESH, OLD, GAUGES = (
    cues("done_jars", name) for name in ("done", "of_jars", "of_setting", "fresh", "old", "gauges")
)
VERDICTS = ("verdict", "safe", "enough", "is_ok")
FRESH_MIN, OLD_MIN = 8 * 60.0, 7 * 24 * 60.0


def told(doc: Doc) -> bool:
    """Whether somebody tells what jars of a food had, and asks what becomes of them.

    >>> from assistant.understanding.pipeline import read
    >>> told(read("i only gave the peach jars 25 minutes last night at 6000 ft, toss or keep"))
    True
    """
    words = norms(doc)
    asked = any(form.id in VERDICTS for form in doc._.forms)
    return asked and is_timed(doc) and (of_jars(doc) or is_put_up(doc)) and said(words, DONE)


def is_put_up(doc: Doc) -> bool:
    """Whether pickles or jam that stand there are asked about, which are in jars without a word of them.

    Not jam that is asked about for its set.
    """
    kinds = {dishes()[f.id].dish_class for f in doc._.found if f.kind == "dish"}
    return "verdict" in {form.id for form in doc._.forms} and (
        "pickle" in kinds or ("jam" in kinds and not said(norms(doc), OF_SETTING))
    )


def is_timed(doc: Doc) -> bool:
    """Whether a time or a pressure stands beside a food that is put up in jars."""
    kept = (food(one.id, dishes()[one.id].dish_class).kind for one in doc._.found if one.kind == "dish")
    return any(m.kind in ("time", "pressure") for m in doc._.measures) and any(kind in CANNED for kind in kept)


def of_jars(doc: Doc) -> bool:
    """Whether jars, their lids or a canner are spoken of."""
    return any(packed.jar for packed in doc._.packed) or said(norms(doc), OF_JARS)


def under_gauge(doc: Doc) -> bool:
    """Whether jars by their size stand beside a canner's gauge and a time, and no way to cook."""
    cooked = any(one.kind == "method" and one.id not in ("preserve", "pressure_cook") for one in doc._.found)
    sized = any(packed.jar for packed in doc._.packed)
    return sized and not cooked and is_timed(doc) and said(norms(doc), GAUGES)


def ago_min(doc: Doc) -> float | None:
    """How long ago they came out [min]: less than a day, or a week and more; None where that is not told."""
    words = norms(doc)
    if said(words, OLD):
        return OLD_MIN
    return FRESH_MIN if said(words, FRESH) else None
