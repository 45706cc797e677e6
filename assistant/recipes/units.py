"""Units of ingredient lines: which word is which unit, and how large it is."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import TYPE_CHECKING, Literal

from rules import tables

if TYPE_CHECKING:
    import pint

Kind = Literal["volume", "mass", "count", "percent"]
_KINDS: dict[str, Kind] = {"[volume]": "volume", "[mass]": "mass", "[count]": "count", "[percent]": "percent"}
_BASE = {"volume": "milliliter", "mass": "gram", "count": "piece", "percent": "percent"}
_WRITTEN_SHORT = {"%": "percent", "c": "cup", "heads": "head", "pkt": "packet", "#": "lb"}


@dataclass(frozen=True, slots=True)
class Unit:
    """One unit. size is in ml for a volume, g for a mass, 1 for counts and percent."""

    name: str
    kind: Kind
    size: float = 1.0


@cache
def _registry() -> pint.UnitRegistry:
    import pint

    registry: pint.UnitRegistry = pint.UnitRegistry(
        tables.data_path("units.txt").read_text(encoding="utf-8").splitlines()
    )
    registry.load_definitions(tables.data_path("units_of_recipes.txt").read_text(encoding="utf-8").splitlines())
    return registry


@cache
def _spellings() -> frozenset[str]:
    return frozenset(_registry())


@cache
def unit_of(word: str) -> Unit | None:
    """The unit a word or two stand for, or None. Only "T" and "t" depend on the case of the letter.

    >>> unit_of("Tbsp.").name, unit_of("T").name, unit_of("t").name, unit_of("fl. oz.").name, unit_of("flour")
    ('tbsp', 'tbsp', 'tsp', 'fl_oz', None)
    """
    spelling = "_".join(word.replace(".", " ").split())
    if short := _WRITTEN_SHORT.get(spelling.lower()):
        return _unit(short)
    forms = (form for form in (spelling, spelling.lower()) if form.replace("_", "").isalpha() and form in _spellings())
    return next(map(_unit, forms), None)


def _unit(spelling: str) -> Unit | None:
    registry = _registry()
    name = registry.get_name(spelling)
    kind = _KINDS.get(str(registry.get_dimensionality(name)))
    if kind is None:
        return None
    size = float(registry.Quantity(1, name).to(_BASE[kind]).magnitude)
    return Unit(registry.get_symbol(name), kind, size)
