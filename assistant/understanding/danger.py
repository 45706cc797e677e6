"""Danger in an utterance, heard before any topic: combinations of concepts, and figures of the wrong size."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from itertools import product
from typing import Any

from spacy.tokens import Doc

from assistant.language import unknown
from assistant.understanding import concepts, temperatures
from assistant.understanding.concepts import Heard
from rules import tables
from rules.say import PSI_PER_PA

FOLDER = "lexicon/danger"
# topics in which a short utterance asks on about what was refused
ASKING_ON = ("time", "temperature", "preserve", "pressure", "out_of_scope", "doneness", "sugar_stage", "help")
SHORT = 12
SAFE_WAY, MOVES_ON = "safe_way", "moves_on"
# dishes that take any food, and words so wide that they may mean the food before
MADE_DISH, ANY_FOOD = "made_dish", "any_food"
# topics that leave what was refused behind
ASIDE = ("set_kitchen", "calibrate", "help")


@dataclass(frozen=True, slots=True)
class Hazard:
    """A row of the catalogue; see its head. Ranges are half open."""

    id: str
    family: str
    when: tuple[tuple[str, ...], ...]
    unless: tuple[str, ...] = ()
    temps_f: tuple[tuple[str, float, float], ...] = ()
    psi: tuple[float, float] | None = None
    hours: float | None = None
    subject: str | None = None
    beside: bool = False
    within: int | None = None
    lasting: bool = False

    def __post_init__(self) -> None:
        named = {c for group in self.when for c in group} | set(self.unless)
        unheard = sorted(named - concepts.concepts().keys())
        if unheard:
            raise tables.BadTable(f"data/{FOLDER}: {self.id}: no such concept: {', '.join(unheard)}")


@dataclass(frozen=True, slots=True)
class Scene:
    """What a conversation holds of foods, acts, vessels, people and circumstances, and what it was warned of last."""

    concepts: tuple[str, ...] = ()
    danger: str | None = None
    food: str | None = None


@dataclass(frozen=True, slots=True)
class Listened:
    """What one utterance means for safety. hazard: None where there is none; scene: after the utterance."""

    hazard: Hazard | None
    scene: Scene


@cache
def hazards() -> tuple[Hazard, ...]:
    """Every hazard, the gravest first, those that leave the question its answer behind all others."""
    rows = (_hazard(row, name) for name in concepts.families() for row in concepts.family(name)["hazard"])
    return tuple(sorted(rows, key=lambda hazard: hazard.beside))


def _hazard(row: dict[str, Any], family: str) -> Hazard:
    temps = tuple((role, *row[f"{role}_f"]) for role in temperatures.ROLES if f"{role}_f" in row)
    return Hazard(
        row["id"],
        family,
        tuple(tuple(group.split("|")) for group in row["when"]),
        tuple(row.get("unless", ())),
        temps,
        tuple(row["psi"]) if "psi" in row else None,
        row.get("hours"),
        row.get("subject"),
        row.get("beside", False),
        row.get("within"),
        row.get("lasting", False),
    )


def listen(doc: Doc, scene: Scene) -> Listened:
    """Hear the danger in an utterance, in the light of what was said before.

    A food stays until another is named, and what was refused stays refused for it however the cook asks on.
    """
    heard = concepts.hear(doc)
    own = frozenset(h.concept for h in heard)
    dish = next((f.id for f in doc._.found if f.kind == "dish"), None)
    names_food = _names_food(doc, heard)
    carried = _carried(own, scene, names_food, elliptical=unknown.is_elliptical(doc))
    held = own | carried
    figures = _Figures.of(doc)
    hazard = next((h for h in hazards() if _holds(h, own, held, figures) and _together(h, heard)), None)
    before = _refused_before(own, scene)
    goes_on = _asks_on(doc, own, names_food, scene) or (before is not None and _stays_on(doc, before, heard, own))
    if before and goes_on and (hazard is None or hazard.beside):
        hazard = before
    kept = tuple(sorted(c for c in held if _kind(c) != "circumstance" or concepts.concepts()[c].stays))
    food = (dish or None) if names_food else scene.food
    left = before is None or (_names_other(doc, heard) if before.lasting else names_food)
    danger = hazard.id if hazard and not hazard.beside else None if left else scene.danger
    return Listened(hazard, Scene(kept, danger, food))


def _kind(id: str) -> str:
    return concepts.concepts()[id].kind


def _names_food(doc: Doc, heard: Sequence[Heard]) -> bool:
    """Whether another food is named: a dish that takes any food, a soup or a salad, leaves the one before in place."""
    made = _tokens(heard, MADE_DISH)
    foods = (range(h.start, h.end) for h in heard if _kind(h.concept) == "food")
    dishes = (range(f.start, f.end) for f in doc._.found if f.kind == "dish")
    return any(not made.issuperset(span) for span in (*foods, *dishes))


def _tokens(heard: Sequence[Heard], *ids: str) -> frozenset[int]:
    """The tokens that tell some concepts."""
    return frozenset(i for h in heard if h.concept in ids for i in range(h.start, h.end))


def _carried(own: frozenset[str], scene: Scene, names_food: bool, *, elliptical: bool) -> frozenset[str]:
    """What was said before and still stands: of each kind until another of it is named; people for good."""
    said = {_kind(c) for c in own}
    anew = names_food and bool(said & {"act", "vessel"}) and not elliptical
    dropped = {"food"} if names_food else set()
    dropped |= {"act", "vessel", "thing", "circumstance"} if anew else said & {"vessel", "thing"}
    return frozenset(c for c in scene.concepts if _kind(c) not in dropped)


@dataclass(frozen=True, slots=True)
class _Figures:
    temps: tuple[temperatures.Said, ...]
    psi: tuple[float, ...]
    hours: float

    @classmethod
    def of(cls, doc: Doc) -> _Figures:
        times = [m.high / 60 for m in doc._.measures if m.kind == "time"]
        psi = tuple(m.low * PSI_PER_PA for m in doc._.measures if m.kind == "pressure" and m.unit == "psi")
        return cls(temperatures.said(doc), psi, max(times, default=0.0))

    def fit(self, hazard: Hazard) -> bool:
        """Whether the figures that a hazard asks for were said."""
        roles = all(any(t.role == role and low <= t.temp_f < high for t in self.temps) for role, low, high in hazard.temps_f)
        pressed = hazard.psi is None or any(hazard.psi[0] <= p < hazard.psi[1] for p in self.psi)
        return roles and pressed and self.hours >= (hazard.hours or 0.0)


def _holds(hazard: Hazard, own: frozenset[str], held: frozenset[str], figures: _Figures) -> bool:
    """Whether all that makes a hazard was said, some of it now."""
    numeric = bool(hazard.temps_f or hazard.psi or hazard.hours)
    now = numeric or any(c in own for group in hazard.when for c in group)
    all_there = all(any(c in held for c in group) for group in hazard.when)
    return now and all_there and not held & set(hazard.unless) and figures.fit(hazard)


def _together(hazard: Hazard, heard: Sequence[Heard]) -> bool:
    """Whether what makes a hazard stands close enough together, where all of it was said now."""
    if hazard.within is None:
        return True
    places = [[h for h in heard if h.concept in group] for group in hazard.when]
    if not all(places):
        return True
    return any(
        max(h.end for h in chosen) - min(h.start for h in chosen) <= hazard.within for chosen in product(*places)
    )


def _refused_before(own: frozenset[str], scene: Scene) -> Hazard | None:
    """What was refused last, unless the cook now says what takes the danger away."""
    rows = [h for h in hazards() if h.id == scene.danger]
    return next(iter(rows), None) if not any(own & set(h.unless) for h in rows) else None


def _asks_on(doc: Doc, own: frozenset[str], names_food: bool, scene: Scene) -> bool:
    """Whether a short utterance without a food of its own goes on about what was refused."""
    if scene.danger is None or names_food or SAFE_WAY in own or len(doc) > SHORT:
        return False
    return doc._.topic.id in ASKING_ON and (bool(doc._.numbers) or bool(own) or unknown.is_elliptical(doc))


def _stays_on(doc: Doc, before: Hazard, heard: Sequence[Heard], own: frozenset[str]) -> bool:
    """Whether an utterance may still be about what no cooking mends: it names no dish but one that is made of such.

    A cook who turns to something else says so: instead, bought, thrown out.
    """
    if not before.lasting or own & {SAFE_WAY, MOVES_ON} or doc._.topic.id in ASIDE:
        return False
    return not _names_other(doc, heard)


def _names_other(doc: Doc, heard: Sequence[Heard]) -> bool:
    """Whether a dish is named that is not made of the food before, and is no word for it."""
    taking = _tokens(heard, MADE_DISH, ANY_FOOD)
    return any(f.kind == "dish" and not taking.issuperset(range(f.start, f.end)) for f in doc._.found)
