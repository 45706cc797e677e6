"""Which temperature is meant: of the food, the oven, a smoker, something held hot, or a refrigerator."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from spacy.tokens import Doc

from assistant.language.cues import cues
from assistant.language.request import plain_numbers
from rules.say import to_f

ROLES = ("core", "oven", "hold", "fridge")
CORE, TO_CORE, AROUND = cues("temperature_role", "core"), cues("temperature_role", "to"), cues("temperature_role", "at")
OVEN, HOLD, FRIDGE = (cues("temperature_role", role) for role in ("oven", "hold", "fridge"))
BARE_F, BARE_C, COLD_BARE_F = (85, 212), (40, 85), (41, 76)
COOL_F, HOT_F, COLD_F = 176.0, 212.0, 76.0


@dataclass(frozen=True, slots=True)
class Said:
    """A temperature of an utterance with its role; temp_f in degF."""

    role: str
    temp_f: float


def said(doc: Doc) -> tuple[Said, ...]:
    """Every temperature that was said, with a degree sign, a unit or bare, and what it is of."""
    return tuple(Said(_role(doc, at, temp_f), temp_f) for at, temp_f in _temperatures(doc))


def _temperatures(doc: Doc) -> Iterator[tuple[int, float]]:
    for m in doc._.measures:
        if m.kind == "temperature":
            yield m.start, to_f(m.low)
        elif m.kind == "degree":
            yield m.start, m.said if m.said > BARE_C[1] else to_f(m.said)
    cold = any(token.norm_ in FRIDGE for token in doc)
    for number in plain_numbers(doc):
        if cold and COLD_BARE_F[0] < number.value < COLD_F and not _counts(doc, number.start, number.end):
            yield number.start, number.value
        elif BARE_F[0] < number.value <= BARE_F[1] and not _counts(doc, number.start, number.end):
            yield number.start, number.value


def _counts(doc: Doc, start: int, at: int) -> bool:
    """Whether the number counts people or things: for 120, 100 eggs."""
    behind = at < len(doc) and doc[at].norm_.endswith("s") and doc[at].norm_ not in ("is", "as", "degrees")
    return behind or (start > 0 and doc[start - 1].norm_ in ("for", "feed", "feeding", "about", "of", "x"))


def _role(doc: Doc, at: int, temp_f: float) -> str:
    """By the word before it first, then by the words of the utterance, then by what it can be."""
    words = [token.norm_ for token in doc]
    near = [w for w in words[max(0, at - 3) : at]]
    after = words[at + 1 : at + 4]
    if temp_f < COLD_F and any(w in FRIDGE for w in words):
        return "fridge"
    if any(w in CORE for w in (*near, *after)) or any(w in TO_CORE for w in near[-1:]):
        return "core"
    if any(w in HOLD for w in words) and temp_f < HOT_F:
        return "hold"
    if any(w in AROUND for w in near[-2:]) or temp_f >= COOL_F:
        methods = {f.id for f in doc._.found if f.kind == "method"}
        if methods & {"sous_vide", "smoke", "grill", "slow_cook"}:
            return "chamber"
        if temp_f >= COOL_F or methods & {"roast", "bake"} or any(w in OVEN for w in words):
            return "oven"
    return "chamber" if {f.id for f in doc._.found if f.kind == "method"} & {"sous_vide"} else "core"
