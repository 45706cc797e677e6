"""Convert a recipe from one elevation to another: every ingredient, time and temperature, every change explained."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from itertools import chain

from rules import book
from rules.baking.batch import Batch
from rules.baking.change import Change
from rules.baking.division import divided
from rules.baking.oven import BAKED_FROM_C
from rules.errors import UnknownWord, within
from rules.model import Caution, Units
from rules.physics.air import HIGHEST_M, LOWEST_M
from rules.physics.units import round_time_min
from rules.recipe import Recipe, Step
from rules.recipes import canning, steps
from rules.recipes.lines import LineTo, plain, rewritten
from rules.recipes.outcome import Outcome
from rules.recipes.steps import StepTo


@dataclass(frozen=True, slots=True)
class OvenTo:
    """The main oven setting [degC]: there, here, and the range the sources allow here."""

    from_c: float
    to_c: float
    low_c: float
    high_c: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Converted:
    """A recipe, converted.

    sure: how sure the style is, 0 to 1; 1 where the cook named it
    changes: every change, and what stays although a baker would expect one, in the order in which to try them
    dangers: in which ways the recipe hurts people as it is written; notes: what else to take care of
    plain: the converted recipe as a recipe of its own, without originals in brackets
    canning: it is a recipe for canning, and nothing of it was converted but the gel point
    """

    recipe: Recipe
    style: str
    sure: float
    from_elevation_m: float
    to_elevation_m: float
    ingredients: tuple[LineTo, ...]
    oven: OvenTo | None
    steps: tuple[StepTo, ...]
    changes: tuple[Change, ...]
    unread: tuple[str, ...]
    dangers: tuple[Caution, ...]
    notes: tuple[Caution, ...]
    plain: Recipe = field(repr=False)
    canning: bool = False

    @property
    def cautions(self) -> tuple[Caution, ...]:
        """All there is to take care of, the dangers first."""
        return (*self.dangers, *self.notes)


def convert(
    recipe: Recipe,
    *,
    from_elevation_m: float = 0.0,
    to_elevation_m: float,
    style: str | None = None,
    units: Units = "us",
) -> Converted:
    """Convert a recipe from the elevation it was written for to another, up or down, by the rules of the book.

    Every component has its own amount at every elevation, against sea level; a line is multiplied by the ratio of the
    two (the oven and hot fat by their difference), so that a recipe taken up and down again is itself within rounding.

    from_elevation_m, to_elevation_m: height above sea level [m], -430 to 5500
    style: a style id; recognised from ingredients and ratios where not given
    units: which unit system stands first in the explanations
    raises: OutOfRange outside those elevations; UnknownWord for an unknown style
    source: the tables and rules named by every change
    """
    hint = "It is the height of the kitchen above sea level; check the figure and whether it is feet or metres."
    within("elevation", to_elevation_m, LOWEST_M, HIGHEST_M, "m", hint)
    within("elevation it was written for", from_elevation_m, LOWEST_M, HIGHEST_M, "m", hint)
    name, sure = _style(recipe, style)
    canned = canning.is_canning(recipe)
    in_parts = divided(recipe)
    batch = Batch.of(in_parts, name, from_elevation_m, to_elevation_m, units, canned)
    moved = from_elevation_m != to_elevation_m
    found = tuple(_of_formula(batch)) if moved and not canned else ()
    lines = tuple(rewritten(i, line, found) for i, line in enumerate(recipe.ingredients))
    ratios = {i: to.ratio for i, to in enumerate(lines)}
    told = [steps.rewrite(batch, i, one, ratios) for i, one in enumerate(in_parts.steps)]
    new_steps = tuple(_as_headed(new, one) for (new, _), one in zip(told, recipe.steps, strict=True))
    changes = (*found, *_in_order(chain.from_iterable(c for _, c in told)))
    outcome = Outcome(batch, changes, lines)
    return Converted(
        recipe=recipe, style=name, sure=sure, from_elevation_m=from_elevation_m, to_elevation_m=to_elevation_m,
        ingredients=lines, oven=_oven(new_steps), steps=new_steps, changes=changes, unread=recipe.unread,
        dangers=tuple(_cautions("dangers", outcome)),
        notes=tuple(_cautions("canning" if canned else "cautions", outcome)) if moved else (),
        plain=_plain(recipe, lines, new_steps), canning=canned,
    )  # fmt: skip


def _of_formula(batch: Batch) -> Iterator[Change]:
    """What the rules of the formula change, and what they say stays, in the order in which to try it."""
    for item, part in book.on_recipe("formula", batch):
        yield from (steps.stamped(item, change) for change in part.changes)


def _cautions(room: str, outcome: Outcome) -> Iterator[Caution]:
    """What the rules of a room caution of, each with the sources of its rule where it names none of its own."""
    for item, part in book.on_recipe(room, outcome):
        yield from (replace(caution, sources=caution.sources or item.sources) for caution in part.cautions)


def _as_headed(new: StepTo, one: Step) -> StepTo:
    """A rewritten step under the heading that the recipe itself gives it."""
    plain = new.plain if new.plain.component == one.component else replace(new.plain, component=one.component)
    return replace(new, step=one, plain=plain)


def _style(recipe: Recipe, style: str | None) -> tuple[str, float]:
    from rules.baking.style import recognise
    from rules.baking.styles import ids

    if style is None:
        known = recognise(recipe)
        return known.id, known.sure
    if style not in ids():
        raise UnknownWord.among("style", style, ids())
    return style, 1.0


def _in_order(changes: Iterator[Change]) -> list[Change]:
    order = ("oven", "time")
    return sorted(changes, key=lambda c: order.index(c.what) if c.what in order else len(order))


# The oven, and the recipe as it then reads


def _oven(new: tuple[StepTo, ...]) -> OvenTo | None:
    """The setting of the step that bakes, else the first that is named."""
    held = [(one, t) for one in new for t in one.temperatures if t.mark.what == "oven" and t.mark.low_c >= BAKED_FROM_C]
    if not held:
        return None
    baking = [t for one, t in held if any(m.what in ("bake", "roast", "braise") for m in one.step.times)]
    main = (baking or [t for _, t in held])[0]
    return OvenTo(*(round(c, 1) for c in (main.mark.low_c, main.to_c, main.low_c, main.high_c)))


def _plain(recipe: Recipe, written: tuple[LineTo, ...], new: tuple[StepTo, ...]) -> Recipe:
    gained = [(t.mark.what, t.to_low_min - t.mark.low_min) for one in new for t in one.times]
    return replace(
        recipe,
        ingredients=tuple(plain(to) for to in written),
        steps=tuple(one.plain for one in new),
        cook_min=_more(recipe.cook_min, sum(minutes for what, minutes in gained if what != "rise")),
        total_min=_more(recipe.total_min, sum(minutes for _, minutes in gained)),
    )


def _more(time_min: float | None, minutes: float) -> float | None:
    """A stated time of the whole recipe with what its steps gained; None where it states none."""
    return time_min if time_min is None or not minutes else max(1.0, round_time_min(time_min + minutes))
