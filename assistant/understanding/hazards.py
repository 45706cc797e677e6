"""The catalogue of hazards, and whether one holds: combinations of concepts, and figures of the wrong size."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from itertools import product
from typing import Any

from spacy.tokens import Doc

from assistant.reading.elevation_mentions import height_m
from assistant.understanding import concepts, stretches, temperatures
from assistant.understanding.concepts import Heard
from rules import tables
from rules.kept import kept
from rules.physics.units import PSI_PER_PA

FOLDER = "lexicon/danger"
ANY = ""
ANY_ROLE = "any"
# what holds on while the food goes in and out
STANDING = ("fridge", "drier")


@dataclass(frozen=True, slots=True, kw_only=True)
class Hazard:
    """A row of the catalogue; see the head of data/lexicon/danger/shared.toml. Ranges are half open."""

    id: str
    family: str
    when: tuple[frozenset[str], ...] = ()
    unless: frozenset[str] = frozenset()
    temps_f: tuple[tuple[str, float, float], ...] = ()
    unless_f: tuple[tuple[str, float, float], ...] = ()
    elevation_m: tuple[float, float] | None = None
    psi: tuple[float, float] | None = None
    hours: float | None = None
    minutes: tuple[float, float] | None = None
    subject: str | None = None
    beside: bool = False
    within: int | None = None
    lasting: bool = False
    sure: bool = False
    advises: bool = False

    def __post_init__(self) -> None:
        unheard = sorted(self.unless.union(*self.when) - concepts.concepts().keys())
        if unheard:
            raise tables.BadTable(f"data/{FOLDER}: {self.id}: no such concept: {', '.join(unheard)}")

    @property
    def in_general(self) -> bool:
        """Whether it is the rule of a family in general words, of which no row says what is wrong."""
        return not self.when

    def fit_heat(self, figures: Figures) -> bool:
        """Whether a temperature that was said is one of the wrong ones."""
        return all(figures.has(role, low, high) for role, low, high in self.temps_f)

    def fit_pressure(self, figures: Figures) -> bool:
        """Whether a pressure that was said is one of the wrong ones."""
        return self.psi is None or any(self.psi[0] <= psi < self.psi[1] for psi in figures.psi)

    @property
    def by_height(self) -> bool:
        """Whether an elevation is the only figure that is part of it."""
        return bool(self.elevation_m) and not (self.temps_f or self.psi or self.hours or self.minutes)

    @property
    def numeric(self) -> bool:
        """Whether a figure is part of it."""
        return bool(self.temps_f or self.psi or self.hours or self.minutes or self.elevation_m)


@kept
def hazards() -> tuple[Hazard, ...]:
    """Every hazard, the gravest first, those that leave the question its answer behind all others."""
    rows = (_hazard(row, name) for name in concepts.families() for row in concepts.family(name)["hazard"])
    return tuple(sorted(rows, key=lambda hazard: hazard.beside))


def _hazard(row: dict[str, Any], family: str) -> Hazard:
    roles = (*temperatures.ROLES, ANY_ROLE)
    return Hazard(
        id=row["id"],
        family=family,
        when=tuple(frozenset(group.split("|")) for group in row["when"]),
        unless=frozenset(row.get("unless", ())),
        temps_f=tuple((role, *row[f"{role}_f"]) for role in roles if f"{role}_f" in row),
        unless_f=tuple((role, *row[f"unless_{role}_f"]) for role in roles if f"unless_{role}_f" in row),
        elevation_m=tuple(row["elevation_m"]) if "elevation_m" in row else None,
        psi=tuple(row["psi"]) if "psi" in row else None,
        minutes=tuple(row["minutes"]) if "minutes" in row else None,
        **{
            key: row[key]
            for key in ("hours", "subject", "beside", "within", "lasting", "sure", "advises")
            if key in row
        },
    )


def hazard_of(id: str) -> Hazard:
    """The hazard that a warning was given of, one of the catalogue or one in general words."""
    found = next((h for h in hazards() if h.id == id), None)
    return found or Hazard(id=id, family=id.removeprefix("general_"))


@cache
def rows_of(id: str) -> tuple[Hazard, ...]:
    """The rows of a hazard; none of one in general words."""
    return tuple(hazard for hazard in hazards() if hazard.id == id)


def pieces(rows: Sequence[Hazard]) -> frozenset[str]:
    """Every concept that is a part of a hazard."""
    return frozenset[str]().union(*(group for hazard in rows for group in hazard.when))


@dataclass(frozen=True, slots=True)
class Figures:
    """The figures of an utterance that bear on hazards.

    temps: temperatures with their role; psi: of a gauge; hours: the longest time [h]; minutes: every time [min]
    elevations_m: every elevation that is not taken back [m]
    new_height, told_heat: whether they, or temperatures, were said now
    """

    temps: tuple[temperatures.Said, ...]
    psi: tuple[float, ...]
    hours: float
    minutes: tuple[float, ...]
    elevations_m: tuple[float, ...] = ()
    new_height: bool = True
    told_heat: bool = False

    @classmethod
    def of(
        cls,
        doc: Doc,
        last: temperatures.Said | None = None,
        elevation_m: float | None = None,
        *,
        celsius: bool = False,
    ) -> Figures:
        """The figures of an utterance.

        last, elevation_m: the temperature and the elevation that were said before it; celsius: see temperatures.said
        """
        minutes = tuple(m.high for m in doc._.measures if m.kind == "time")
        longest = max(stretches.hours(doc), *(m / 60 for m in minutes), 0.0)
        psi = tuple(m.low * PSI_PER_PA for m in doc._.measures if m.kind == "pressure" and m.unit == "psi")
        standing = (last,) if last and last.role in STANDING else ()
        heights = (height_m(e, "us") for e in doc._.elevations if e.role != "rejected")
        told_m = tuple(height for height in heights if height is not None)
        known_m = () if told_m or elevation_m is None else (elevation_m,)
        temps, new = temperatures.said(doc, last, celsius=celsius), not known_m
        return cls(temps or standing, psi, longest, minutes, told_m or known_m, new_height=new, told_heat=bool(temps))

    def fit(self, hazard: Hazard) -> bool:
        """Whether the figures that a hazard asks for were said."""
        roles, pressed = hazard.fit_heat(self), hazard.fit_pressure(self)
        brief = hazard.minutes is None or any(hazard.minutes[0] <= m < hazard.minutes[1] for m in self.minutes)
        right = any(self.has(role, low, high) for role, low, high in hazard.unless_f)
        high = hazard.elevation_m is None or any(
            hazard.elevation_m[0] <= e < hazard.elevation_m[1] for e in self.elevations_m
        )
        return not right and high and roles and pressed and brief and self.hours >= (hazard.hours or 0.0)

    def has(self, role: str, low: float, high: float) -> bool:
        """Whether a temperature of a role was said in a range [degF]."""
        return any(role in (said.role, ANY_ROLE) and low <= said.temp_f < high for said in self.temps)


def holding(own: frozenset[str], held: frozenset[str], heard: Sequence[Heard], figures: Figures) -> tuple[Hazard, ...]:
    """The hazards that hold, the gravest first.

    own: concepts that are said now; held: those and what still stands; heard: where they are said
    """
    every = hazards()
    near = sorted({i for concept in held for i in _by_concept().get(concept, ())} | set(_by_concept()[ANY]))
    return tuple(h for i in near if _holds(h := every[i], own, held, figures) and _together(h, heard))


@cache
def _by_concept() -> dict[str, tuple[int, ...]]:
    """Concept -> places of the hazards whose first group it is in; under ANY those that ask for no concept."""
    found: dict[str, list[int]] = {ANY: []}
    for i, hazard in enumerate(hazards()):
        for concept in hazard.when[0] if hazard.when else (ANY,):
            found.setdefault(concept, []).append(i)
    return {concept: tuple(places) for concept, places in found.items()}


def _holds(hazard: Hazard, own: frozenset[str], held: frozenset[str], figures: Figures) -> bool:
    """Whether all that makes a hazard was said, some of it now."""
    figure_now = hazard.numeric and (figures.new_height or not hazard.by_height)
    now = figure_now or not all(map(own.isdisjoint, hazard.when))
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


def nearly(held: frozenset[str]) -> tuple[str, ...]:
    """Ids of the hazards that lack one concept."""
    return tuple(h.id for h in hazards() if len(h.when) > 1 and sum(map(held.isdisjoint, h.when)) == 1)
