"""Danger in an utterance, heard before any topic: combinations of concepts, and figures of the wrong size."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cache
from itertools import product
from typing import Any

from spacy.tokens import Doc

from assistant.language import unknown
from assistant.understanding import alarm, concepts, temperatures
from assistant.understanding.alarm import Alarm
from assistant.understanding.concepts import Heard
from rules import tables
from rules.say import PSI_PER_PA

FOLDER = "lexicon/danger"
# topics in which a short utterance asks on about what was refused
ASKING_ON = ("time", "temperature", "preserve", "pressure", "out_of_scope", "doneness", "sugar_stage", "help")
# topics in which the net is not asked
SETTLED = ("smalltalk", "set_kitchen", "timer")
SHORT = 12
MOST_WORDS = 40
# what the net must say, 0 to 1: to leave a hazard its own words, to warn beside the answer, and to warn alone
HARMLESS_BELOW, DOUBTFUL_FROM, SURE_FROM = 0.15, 0.5, 0.75
SAFE_WAY = "safe_way"
ANY_ROLE = "any"
SAME_WAY = "same_way"


@dataclass(frozen=True, slots=True)
class Hazard:
    """A row of the catalogue; see its head. Ranges are half open."""

    id: str
    family: str
    when: tuple[frozenset[str], ...]
    unless: frozenset[str] = frozenset()
    temps_f: tuple[tuple[str, float, float], ...] = ()
    psi: tuple[float, float] | None = None
    hours: float | None = None
    subject: str | None = None
    beside: bool = False
    within: int | None = None
    soft: bool = False

    def __post_init__(self) -> None:
        named = self.unless.union(*self.when)
        unheard = sorted(named - concepts.concepts().keys())
        if unheard:
            raise tables.BadTable(f"data/{FOLDER}: {self.id}: no such concept: {', '.join(unheard)}")


@dataclass(frozen=True, slots=True)
class Scene:
    """What a conversation holds of foods, acts, vessels, people and circumstances, and what it was warned of last.

    said: words of the last utterances, as their stems
    """

    concepts: tuple[str, ...] = ()
    danger: str | None = None
    said: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Listened:
    """What one utterance means for safety. hazard: None where there is none; scene: after the utterance."""

    hazard: Hazard | None
    scene: Scene


@cache
def hazards() -> tuple[Hazard, ...]:
    """Every hazard, the gravest first."""
    return tuple(_hazard(row, name) for name in concepts.families() for row in concepts.family(name)["hazard"])


def _hazard(row: dict[str, Any], family: str) -> Hazard:
    temps = tuple((role, *row[f"{role}_f"]) for role in (*temperatures.ROLES, ANY_ROLE) if f"{role}_f" in row)
    return Hazard(
        row["id"],
        family,
        tuple(frozenset(group.split("|")) for group in row["when"]),
        frozenset(row.get("unless", ())),
        temps,
        tuple(row["psi"]) if "psi" in row else None,
        row.get("hours"),
        row.get("subject"),
        row.get("beside", False),
        row.get("within"),
        row.get("soft", False),
    )


def listen(doc: Doc, scene: Scene) -> Listened:
    """Hear the danger in an utterance, in the light of what was said before.

    A food stays until another is named, and what was refused stays refused for it however the cook asks on.
    """
    heard = heard_in(doc, scene)
    hazard = heard.fired[0] if heard.fired else None
    if hazard is None and _asks_on(doc, heard.own, heard.names_food, scene):
        hazard = hazard_of(scene.danger or "")
    if hazard is not None or (heard.own and doc._.topic.id not in SETTLED):
        hazard = weighed(hazard, alarm.sound(heard.features))
    kept = tuple(sorted(c for c in heard.held if _kind(c) != "circumstance" or concepts.concepts()[c].stays))
    danger = hazard.id if hazard else None if heard.names_food else scene.danger
    said = (*scene.said, *(concepts.stem(token.norm_) for token in doc if token.is_alpha))[-MOST_WORDS:]
    return Listened(hazard, Scene(kept, danger, said))


@dataclass(frozen=True, slots=True)
class HeardIn:
    """An utterance in its scene.

    own: concepts said now; held: those and what still stands; fired: hazards that hold; features: what the net looks at
    """

    own: frozenset[str]
    held: frozenset[str]
    names_food: bool
    fired: tuple[Hazard, ...]
    features: tuple[str, ...]


def heard_in(doc: Doc, scene: Scene) -> HeardIn:
    """The concepts of an utterance and of what was said before, and the hazards that they make."""
    own = frozenset(h.concept for h in doc._.concepts)
    names_food = any(f.kind == "dish" for f in doc._.found) or any(_kind(c) == "food" for c in own)
    held = own | _carried(own, scene, names_food, elliptical=unknown.is_elliptical(doc))
    figures = _Figures.of(doc)
    fired = tuple(h for h in hazards() if _holds(h, own, held, figures) and _together(h, doc._.concepts))
    near = [h.id for h in hazards() if len(h.when) > 1 and sum(map(held.isdisjoint, h.when)) == 1]
    scenic = alarm.of_scene(sorted(held), [h.id for h in fired], near, dict.fromkeys(scene.said))
    return HeardIn(own, held, names_food, fired, (*alarm.of_words(doc), *scenic))


def weighed(hazard: Hazard | None, heard: Alarm) -> Hazard | None:
    """What is warned of, with the net asked.

    A soft hazard that the net takes for harmless leaves the question its answer; where no hazard was heard but the net is
    alarmed, the family is warned of in general words, alone or beside the answer.
    """
    if hazard is not None:
        return replace(hazard, beside=True) if hazard.soft and heard.danger < HARMLESS_BELOW else hazard
    if heard.danger < DOUBTFUL_FROM:
        return None
    return Hazard(f"general_{heard.family}", heard.family, (), beside=heard.danger < SURE_FROM)


def hazard_of(id: str) -> Hazard:
    """The hazard that a warning was given of, one of the catalogue or one in general words."""
    return next((h for h in hazards() if h.id == id), Hazard(id, id.removeprefix("general_"), ()))


def _kind(id: str) -> str:
    return concepts.concepts()[id].kind


def _carried(own: frozenset[str], scene: Scene, names_food: bool, *, elliptical: bool) -> frozenset[str]:
    """What was said before and still stands: of each kind until another of it is named; people and places for good."""
    said = {_kind(c) for c in own}
    anew = names_food and bool(said & {"act", "vessel"}) and not elliptical and SAME_WAY not in own
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
        roles = all(self._has(role, low, high) for role, low, high in hazard.temps_f)
        pressed = hazard.psi is None or any(hazard.psi[0] <= p < hazard.psi[1] for p in self.psi)
        return roles and pressed and self.hours >= (hazard.hours or 0.0)

    def _has(self, role: str, low: float, high: float) -> bool:
        return any(role in (said.role, ANY_ROLE) and low <= said.temp_f < high for said in self.temps)


def _holds(hazard: Hazard, own: frozenset[str], held: frozenset[str], figures: _Figures) -> bool:
    """Whether all that makes a hazard was said, some of it now."""
    numeric = bool(hazard.temps_f or hazard.psi or hazard.hours)
    now = numeric or not all(map(own.isdisjoint, hazard.when))
    all_there = not any(map(held.isdisjoint, hazard.when))
    return now and all_there and held.isdisjoint(hazard.unless) and figures.fit(hazard)


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


def _asks_on(doc: Doc, own: frozenset[str], names_food: bool, scene: Scene) -> bool:
    """Whether a short utterance without a food of its own goes on about what was refused."""
    if scene.danger is None or names_food or SAFE_WAY in own or len(doc) > SHORT:
        return False
    return doc._.topic.id in ASKING_ON and (bool(doc._.numbers) or bool(own) or unknown.is_elliptical(doc))
