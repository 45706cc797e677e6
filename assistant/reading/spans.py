"""What the components hear in a text. Positions are token numbers, end exclusive."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal


@dataclass(frozen=True, slots=True)
class Number:
    """A number in digits or words."""

    start: int
    end: int
    value: float


@dataclass(frozen=True, slots=True)
class Measure:
    """A number with its unit, or a range of them.

    kind: length, time, temperature, degree, pressure, mass, volume, portion or clock
    low, high: in m, min, degC, Pa, g or ml; for `degree` and `portion` as said, for `clock` minutes after midnight
    said, unit: lower end as the cook said it, and the symbol of its unit
    """

    start: int
    end: int
    kind: str
    low: float
    high: float
    said: float
    unit: str


# plain: an everyday phrase that means nothing in a kitchen
Kind = Literal["dish", "method", "equipment", "symptom", "place", "ingredient", "plain"]


@dataclass(frozen=True, slots=True)
class Found:
    """A phrase of the lexicon. sure: 1.0 as spelled, less where the spelling was mended."""

    start: int
    end: int
    kind: Kind
    id: str
    sure: float = 1.0

    def __len__(self) -> int:
        return self.end - self.start


Role = Literal["here", "from", "rejected", "apart"]


@dataclass(frozen=True, slots=True)
class Elevation:
    """A mention of an elevation and the part it plays: where the cook is, where the baseline was, none, or taken back.

    said, unit: the figure as said; unit is "" for a bare number, whose unit the kitchen decides
    place: id of the place where one was named; sure: whether a word told its part, and not only the order
    compared: whether it is asked about together with another one
    """

    start: int
    end: int
    said: float
    unit: str
    role: Role
    place: str | None = None
    sure: bool = False
    compared: bool = False
