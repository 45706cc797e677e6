"""Whether it is told how far a syrup is boiled: the syrup to 118, sugar cooked to 240 F."""

from __future__ import annotations

from spacy.tokens import Doc

from assistant.reading.tokens import norms

SYRUPS, NAMED = ("syrup", "sugar"), ("maple", "golden", "corn", "glucose", "agave")
BETWEEN = frozenset((
    "to", "at", "is", "cooked", "boiled", "cook", "boil", "heated", "heat", "taken", "take", "brought", "bring", "goes",
    "go", "up", "reaches", "reach", "hits", "until", "till", "about", "around", "the", "it", "temp", "temperature",
))  # fmt: skip
TEST, VERDICTS = "cold water", frozenset(("changes", "is_ok", "is_true", "can_it", "enough"))
REACH = 4
# [degC]
STAGES_C = (100.0, 180.0)


def boiled_to(doc: Doc) -> bool:
    """Whether an utterance says to what temperature a syrup is boiled.

    >>> from assistant.understanding.pipeline import read
    >>> boiled_to(read("syrup to 118 C for the nougat")), boiled_to(read("200 g sugar, oven at 180 C"))
    (True, False)
    """
    for measure in doc._.measures:
        if measure.kind != "temperature" or not STAGES_C[0] <= measure.low <= STAGES_C[1]:
            continue
        for at in range(measure.start - 1, max(measure.start - 1 - REACH, -1), -1):
            word = norms(doc)[at]
            if word in SYRUPS:
                return at < measure.start - 1 and not (at and norms(doc)[at - 1] in NAMED)
            if word not in BETWEEN:
                break
    return False


def judges_the_test(doc: Doc) -> bool:
    """Whether it is asked if the test in cold water holds, and no temperature.

    >>> from assistant.understanding.pipeline import read
    >>> judges_the_test(read("is the cold water test for fudge still right at 9,000 ft"))
    True
    """
    heated = any(measure.kind in ("temperature", "degree") for measure in doc._.measures)
    asked = any(form.id in VERDICTS for form in doc._.forms)
    return not heated and asked and f" {TEST} " in f" {' '.join(norms(doc))} "
