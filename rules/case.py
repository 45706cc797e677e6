"""One question on the bench: the request, the air here, at the baseline and at sea level, and how to word figures."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

from rules import air, water
from rules.dishes import classes, traits_of
from rules.model import Figure, Request
from rules.say import Say


@dataclass(frozen=True, slots=True)
class Ambient:
    """The air of one place: elevation [m], absolute pressure [Pa] and the boiling point of pure water [degC]."""

    elevation_m: float
    pressure_pa: float
    boiling_c: float


def ambient(elevation_m: float, pressure_pa: float | None = None) -> Ambient:
    """The air at an elevation [m], by the standard atmosphere or by the station pressure [Pa] that was measured.

    raises: OutOfRange outside -430 to 5,500 m
    source: us-std-atm-1976, iapws-r7-97

    >>> round(ambient(2133.6).boiling_c, 2)
    92.87
    """
    pressure = air.pressure_pa(elevation_m) if pressure_pa is None else pressure_pa
    return Ambient(elevation_m, pressure, water.saturation_temp_c(pressure))


@dataclass(frozen=True)
class Case:
    """What a rule works on. Every value is derived from the request; nothing is changed on the way."""

    request: Request

    @cached_property
    def here(self) -> Ambient:
        """The asker's air."""
        return ambient(self.request.elevation_m or 0.0, self.request.pressure_pa)

    @cached_property
    def there(self) -> Ambient:
        """The air of the baseline: where the time or recipe that is being scaled was right."""
        return ambient(self.request.from_elevation_m or 0.0)

    @cached_property
    def sea(self) -> Ambient:
        """Standard air at sea level, which published tables take for granted."""
        return ambient(0.0)

    @cached_property
    def say(self) -> Say:
        """Words quantities in the asker's units."""
        return Say(self.request.units)

    @property
    def dish_class(self) -> str:
        """The dish class, or `general` where the dish or the class is unknown."""
        named = self.request.dish_class
        return named if named in classes() else "general"

    @cached_property
    def traits(self) -> tuple[str, ...]:
        """What the food is: ids of data/lexicon/traits.toml."""
        return traits_of(self.request.dish, self.request.dish_class)

    @property
    def food(self) -> str:
        """What to call the dish in a sentence."""
        return self.request.dish or "it"

    @property
    def place(self) -> str:
        """The asker's elevation in words."""
        return self.say.elevation(self.here.elevation_m)

    @property
    def baseline(self) -> str:
        """The baseline's elevation in words."""
        return self.say.elevation(self.there.elevation_m)

    @property
    def moved(self) -> bool:
        """Whether the asker's air differs from the baseline's by more than a cook could notice."""
        return abs(self.here.boiling_c - self.there.boiling_c) >= 0.1


def celsius(figure_id: str, label: str, temp_c: float, sea_level_c: float | None = None) -> Figure:
    """A temperature figure, to a hundredth of a degree: text rounds further."""
    return Figure(
        figure_id, label, round(temp_c, 2), "degC", sea_level=None if sea_level_c is None else round(sea_level_c, 2)
    )
