"""What a rule says: the id of a sentence and the values that fill it. The sentences stand in data/wording.

A module that says something opens with `say = sentences("methods/braise")`; `say("oven-step", setting=oven(163))` is
the message `oven-step` of data/wording/<language>/methods/braise.ftl, filled at its { $setting }. The id and the names
of the values are written out in the call, so that the validator can hold both against the file.

A value is one of: what a function of this module makes (a quantity, written in the asker's units by whoever words the
reply); the name of a dish or a thing from the data; a word that the message chooses by (`way="cooler"`); a plain number
where a message chooses by count; another sentence; `listed(...)` of any of these.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from typing import Any, Literal, Protocol

from rules.physics.units import round_time_min

Kind = Literal[
    "temp", "temp_span", "oven", "oven_span", "temp_drop", "fine_drop", "elevation", "volume", "mass", "pressure",
    "bulk", "liquid", "gauge", "duration", "exact_duration", "duration_span", "number", "fixed", "measure",
]  # fmt: skip
Join = Literal["and", "or", "commas", "semicolons", "sentences", "then"]


@dataclass(frozen=True, slots=True)
class Measure:
    """A quantity to be written in the asker's units: what it is, and its one or two values in SI.

    by: the digits of a number, or the kitchen unit of a measured amount
    """

    kind: Kind
    values: tuple[float, ...]
    by: str = ""


@dataclass(frozen=True, slots=True)
class Said:
    """One sentence: the file of the wording it stands in, its id there, and what fills it."""

    file: str
    id: str
    values: tuple[tuple[str, Value], ...] = ()


@dataclass(frozen=True, slots=True)
class Listed:
    """Several sentences or values, joined by the words of the language."""

    items: tuple[Value, ...]
    join: Join


Words = str | Said | Listed
Value = str | int | float | Measure | Said | Listed


class Say(Protocol):
    """Says a sentence of one file."""

    def __call__(self, id: str, /, **values: Any) -> Said: ...


def sentences(file: str) -> Say:
    """What says the sentences of data/wording/<language>/<file>.ftl.

    >>> say = sentences("methods/braise")
    >>> say("set-the-oven", setting=oven(163)).values[0][1].kind
    'oven'
    """

    def say(id: str, /, **values: Value) -> Said:
        return Said(file, id, tuple(values.items()))

    return say


def listed(items: Iterable[Value], join: Join = "and") -> Listed:
    """Several things: "a, b and c", "a or b", "a, b", "a; b", sentences one after the other, or steps "a, then b"."""
    return Listed(tuple(items), join)


def refilled(said: Said, **values: Value) -> Said:
    """The sentence with other values in the place of its own.

    >>> refilled(Said("methods/braise", "oven-step", (("setting", 1),)), setting=2).values
    (('setting', 2),)
    """
    return replace(said, values=tuple((name, values.get(name, value)) for name, value in said.values))


def together(*parts: Words | None) -> Words:
    """Sentences one after the other; those that are none are left out, and a single one stays as it is.

    >>> together("", None, "Stir.")
    'Stir.'
    """
    said = tuple(part for part in parts if part)
    return said[0] if len(said) == 1 else Listed(said, "sentences") if said else ""


def yes(holds: object) -> str:
    """A word that a sentence chooses by: `yes` or `no`."""
    return "yes" if holds else "no"


def temp(temp_c: float) -> Measure:
    """A food or water temperature [degC], to 1 degF and 0.5 degC."""
    return Measure("temp", (temp_c,))


def temp_span(low_c: float, high_c: float) -> Measure:
    """A range of temperatures [degC]."""
    return Measure("temp_span", (low_c, high_c))


def oven(temp_c: float) -> Measure:
    """An oven or fat setting [degC], to 5 degF and 2 degC."""
    return Measure("oven", (temp_c,))


def oven_span(low_c: float, high_c: float) -> Measure:
    """A range of oven or fat settings [degC]; one setting where both ends read alike."""
    return Measure("oven_span", (low_c, high_c))


def temp_drop(kelvin: float) -> Measure:
    """A temperature difference [K], a small one to a tenth."""
    return Measure("temp_drop", (kelvin,))


def fine_drop(kelvin: float) -> Measure:
    """A temperature difference [K] too small for whole degrees: to 0.1 degF and 0.01 degC."""
    return Measure("fine_drop", (kelvin,))


def elevation(elevation_m: float) -> Measure:
    """An elevation [m]; sea level by name."""
    return Measure("elevation", (elevation_m,))


def volume(ml: float) -> Measure:
    """A volume of liquid [ml], in kitchen measures."""
    return Measure("volume", (ml,))


def mass(grams: float) -> Measure:
    """A weight [g]."""
    return Measure("mass", (grams,))


def bulk(grams: float) -> Measure:
    """A weight that is bought or cooked for many [g], to what a scale of that size shows."""
    return Measure("bulk", (grams,))


def liquid(ml: float) -> Measure:
    """A volume of liquid [ml], from cups to gallons."""
    return Measure("liquid", (ml,))


def pressure(pressure_pa: float) -> Measure:
    """An absolute air pressure [Pa]."""
    return Measure("pressure", (pressure_pa,))


def gauge(gauge_pa: float) -> Measure:
    """A gauge pressure [Pa] as cookers and canners are marked."""
    return Measure("gauge", (gauge_pa,))


def duration(time_min: float) -> Measure:
    """A time [min] at the precision that a cook can use.

    >>> duration(252) == duration(250)
    True
    """
    return Measure("duration", (round_time_min(time_min),))


def exact_duration(time_min: float) -> Measure:
    """A time [min] that must not be rounded down: to the second, and upwards."""
    return Measure("exact_duration", (time_min,))


def duration_span(low_min: float, high_min: float) -> Measure:
    """A range of times [min]; one time where both ends round to the same."""
    return Measure("duration_span", (round_time_min(low_min), round_time_min(high_min)))


def number(value: float, digits: int = 2) -> Measure:
    """A number without useless zeros, thousands set apart; two that are written alike are equal.

    >>> number(7000.001) == number(7000)
    True
    """
    return Measure("number", (round(value, digits) + 0.0,), str(digits))


def fixed(value: float, digits: int = 2) -> Measure:
    """A number of an equation, with just so many digits and nothing between thousands."""
    return Measure("fixed", (value,), str(digits))


def measure(amount: float, unit: str, high: float | None = None) -> Measure:
    """An amount in a kitchen unit, as a cook measures it out: 1 3/4 tsp, 6.9 g; with a higher one a range of them."""
    return Measure("measure", (amount,) if high is None else (amount, high), unit)
