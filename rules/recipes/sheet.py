"""The formula sheet of a converted recipe: baker's percentages and leavening to the cup, there and here."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Literal

from rules.baking.change import Change, adds
from rules.baking.division import batter
from rules.baking.formula import CUP_FLOUR_G, Ratios, ratios
from rules.baking.rounding import in_unit
from rules.baking.styles import is_a
from rules.physics import air
from rules.recipe import IngredientLine, Recipe
from rules.recipes.convert import Converted

Per = Literal["percent", "tsp_per_cup", "ml_per_g"]
LEAVENINGS = {"powder": "baking powder", "soda": "baking soda"}


@dataclass(frozen=True, slots=True)
class Entry:
    """One line of the sheet. per: percent of the flour, teaspoons to a cup of flour, or ml of gas to a gram of it."""

    name: str
    was: float
    now: float
    per: Per


@dataclass(frozen=True, slots=True)
class Sheet:
    """What the flour weighs here [g], and every part against it; weighed is False for percentages of any weight."""

    flour_g: float
    weighed: bool
    entries: tuple[Entry, ...]


def sheet(converted: Converted) -> Sheet | None:
    """The formula of a floured bake as it was and as it is; None for other dishes, or where masses are not known.

    Water counts that of milk, eggs and fat. Gas is what the leavening can give, at 25 °C and the pressure of the place.
    source: common-practice (the baker's percentage), computed (the gas)
    """
    if not is_a(converted.style, "floured"):
        return None
    new = (line for change in converted.changes if (line := line_added(change)))
    before = ratios(converted.recipe)
    after = ratios(replace(converted.plain, ingredients=(*converted.plain.ingredients, *new)))
    if not before.flour_g or not after.flour_g or before.unweighed_core:
        return None
    places = (converted.from_elevation_m, converted.to_elevation_m)
    weighed = any(line.mass_g and line.role == "flour" for line in converted.recipe.ingredients)
    entries = (e for e in _entries(before, after, *places) if e.was or e.now)
    return Sheet(after.flour_g, weighed, tuple(entries))


def _entries(before: Ratios, after: Ratios, from_m: float, to_m: float) -> Iterator[Entry]:
    for name in ("sugar", "fat", "egg", "liquid"):
        was, now = (getattr(r, name) or 0.0 for r in (before, after))
        yield Entry("water" if name == "liquid" else name, was * 100, now * 100, "percent")
    for name in ("yeast", "starter", "salt"):
        yield Entry(name, before.percent.get(name, 0.0), after.percent.get(name, 0.0), "percent")
    for part, name in LEAVENINGS.items():
        was, now = (r.leavening_tsp_per_cup.get(part, 0.0) for r in (before, after))
        yield Entry(name, was, now, "tsp_per_cup")
    swells = (air.pressure_pa(0.0) / air.pressure_pa(m) for m in (from_m, to_m))
    was, now = ((r.gas_ml_per_g or 0.0) * swell for r, swell in zip((before, after), swells, strict=True))
    yield Entry("gas", was, now, "ml_per_g")


def stands_after(recipe: Recipe) -> int:
    """The place of the line behind which what a change puts in is listed: the last of what is mixed."""
    return batter(recipe)[-1].index


def line_added(change: Change) -> IngredientLine | None:
    """What a change puts in, as a line with its mass."""
    if not adds(change) or change.to_value is None:
        return None
    ml = in_unit(change.to_value, change.to_unit, "ml")
    cups = in_unit(change.to_value, change.to_unit, "cup")
    grams = in_unit(change.to_value, change.to_unit, "g")
    if grams is None:
        grams = ml if change.what == "liquid" else None if cups is None else cups * CUP_FLOUR_G
    role = "flour" if change.what == "flour" else "liquid"
    return IngredientLine(line=change.item, item=change.item, role=role, mass_g=grams, amount=grams, unit="g")
