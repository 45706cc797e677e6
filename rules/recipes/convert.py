"""Convert a recipe from one elevation to another: every ingredient, time and temperature, every change explained."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from itertools import chain

from rules.baking import bands, eggs, fat, flour, foam, leavening, liquid, pan, salt, sugar, yeast
from rules.baking.batch import Batch, amount_of
from rules.baking.change import Change, ingredient
from rules.baking.rounding import QUARTS, in_unit, kitchen, measure
from rules.errors import UnknownWord, within
from rules.heat.pressure import STOVE_TOP_GAUGE_PA
from rules.model import Caution, Units
from rules.physics import kinetics
from rules.physics.air import HIGHEST_M, LOWEST_M
from rules.physics.units import round_time_min
from rules.recipe import IngredientLine, Recipe
from rules.recipes import canning, dangers, keeping, steps, wet_dish
from rules.recipes.steps import StepTo
from rules.say import duration_span, number

# In the order in which the published advice wants them tried.
COMPONENTS = (leavening, yeast, sugar, liquid, flour, eggs, fat, salt, foam, pan, wet_dish)
BATTERS = ("layer_cake", "foam_cake", "pound_cake", "quick_bread", "cookie", "brownie", "biscuit")
GRAMS = re.compile(r"\d\s*(?:g|grams?)\b", re.I)
# "1 lb eggs (9 large)", "1 1/2 cups (12 large) egg whites"
PIECES = re.compile(r"(?<=\()\d{1,4}(?=\s+(?:small|medium|large|extra|jumbo|whole|egg)\b)", re.I)
STATED = re.compile(r"\(\s*[\d.,]+\s*(?:g|grams?)\s*\)", re.I)
OTHER = "other"
MEASURED_ROLES = ("flour", "starch", "sugar", "fat", "liquid", "dairy", "leavening", "yeast", "salt")
SEASON_FROM_M = 2133.0
EGG_SIZE = re.compile(r"\b(?:extra[- ]large|small|medium|large|jumbo)\b", re.I)


@dataclass(frozen=True, slots=True, kw_only=True)
class LineTo:
    """An ingredient line and what becomes of it.

    amount, amount_high, unit: the new measure, rounded to what a cook can measure; None where the line has none
    mass_g: its mass [g], 0.1 g under 10 g, else 1 g; None where the mass is not known
    text: the line with its measure replaced; byte for byte as read where nothing changes
    """

    line: IngredientLine
    amount: float | None
    amount_high: float | None
    unit: str | None
    mass_g: float | None
    text: str

    @property
    def changed(self) -> bool:
        """Whether the cook measures something else than the recipe said."""
        return self.text != self.line.line

    @property
    def ratio(self) -> float:
        """What the line was multiplied by."""
        was = in_unit(amount_of(self.line) or 0.0, self.line.unit, self.unit)
        if was and self.amount is not None:
            return self.amount / was
        return self.mass_g / self.line.mass_g if self.changed and self.mass_g and self.line.mass_g else 1.0


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
    cautions: tuple[Caution, ...]
    plain: Recipe = field(repr=False)
    canning: bool = False


def convert(
    recipe: Recipe,
    *,
    from_elevation_m: float = 0.0,
    to_elevation_m: float,
    style: str | None = None,
    units: Units = "us",
) -> Converted:
    """Convert a recipe from the elevation it was written for to another, up or down.

    Every component has its own amount at every elevation, against sea level; a line is multiplied by the ratio of the
    two (the oven and hot fat by their difference), so that a recipe taken up and down again is itself within rounding.

    from_elevation_m, to_elevation_m: height above sea level [m], -430 to 5500
    style: a style id; recognised from ingredients and ratios where not given
    units: which unit system stands first in the explanations
    raises: OutOfRange outside those elevations; UnknownWord for an unknown style
    source: the tables and rules named by every change
    """
    hint = "It is the height of the kitchen above sea level; check the figure and whether it is feet or metres."
    for name, elevation_m in (("elevation", to_elevation_m), ("elevation it was written for", from_elevation_m)):
        within(name, elevation_m, LOWEST_M, HIGHEST_M, "m", hint)
    name, sure = _style(recipe, style)
    canned = canning.is_canning(recipe)
    batch = Batch(recipe, name, from_elevation_m, to_elevation_m, units, canned)
    moved = from_elevation_m != to_elevation_m
    found = tuple(chain.from_iterable(part.changes(batch) for part in COMPONENTS)) if moved and not canned else ()
    lines = tuple(_line(i, line, found) for i, line in enumerate(recipe.ingredients))
    ratios = {i: to.ratio for i, to in enumerate(lines)}
    rewritten = [steps.rewrite(batch, i, one, ratios) for i, one in enumerate(recipe.steps)]
    new_steps = tuple(step for step, _ in rewritten)
    changes = (*found, *_in_order(chain.from_iterable(c for _, c in rewritten)))
    return Converted(
        recipe=recipe, style=name, sure=sure, from_elevation_m=from_elevation_m, to_elevation_m=to_elevation_m,
        ingredients=lines, oven=_oven(new_steps), steps=new_steps, changes=changes, unread=recipe.unread,
        cautions=(*dangers.found(batch), *(_cautions(batch, changes, lines) if moved else ())),
        plain=_plain(recipe, lines, new_steps), canning=canned,
    )  # fmt: skip


def _style(recipe: Recipe, style: str | None) -> tuple[str, float]:
    from rules.baking.style import ids, recognise

    if style is None:
        known = recognise(recipe)
        return known.id, known.sure
    if style not in ids():
        raise UnknownWord.among("style", style, ids())
    return style, 1.0


def _in_order(changes: Iterator[Change]) -> list[Change]:
    order = ("oven", "time")
    return sorted(changes, key=lambda c: order.index(c.what) if c.what in order else len(order))


# Ingredient lines


def _line(index: int, line: IngredientLine, changes: tuple[Change, ...]) -> LineTo:
    here = ingredient(index)
    change = next((c for c in changes if c.at == here and c.way != "same" and c.to_value is not None), None)
    if change is None:
        mass = None if line.mass_g is None else round_mass(line.mass_g)
        return LineTo(
            line=line, amount=line.amount, amount_high=line.amount_high, unit=line.unit, mass_g=mass, text=line.line
        )
    if change.what == "egg" and line.unit in (None, "piece"):
        return _eggs(line, change)
    return _measured(line, change)


def round_mass(mass_g: float) -> float:
    """A mass to 0.1 g under 10 g, else to 1 g.

    >>> round_mass(6.94), round_mass(281.3)
    (6.9, 281.0)
    """
    return round(mass_g, 1 if mass_g < 10 else 0)


def _measured(line: IngredientLine, change: Change) -> LineTo:
    to, unit = change.to_value or 0.0, change.to_unit
    was = in_unit(amount_of(line) or 0.0, line.unit, unit) or line.mass_g or 0.0
    ratio = to / was if was else 1.0
    more = None if line.amount_high is None else in_unit(line.amount_high, line.unit, unit)
    high = kitchen(more * ratio, unit) if more else None
    mass = None if line.mass_g is None else round_mass(line.mass_g * ratio)
    old = line.line[line.start : line.end]
    text = measure(to, unit, high=high, quarts=line.unit in QUARTS)
    if mass is not None and unit not in ("g", "kg") and GRAMS.search(old):
        text += f" ({mass:g} g)"
    new = _replaced(line, text, mass)
    if PIECES.search(line.line):
        new = PIECES.sub(lambda m: number(int(m[0]) * ratio, 0), new, count=1)
    return LineTo(line=line, amount=to, amount_high=high, unit=unit, mass_g=mass, text=new)


def _replaced(line: IngredientLine, text: str, mass_g: float | None) -> str:
    """The line with its measure replaced, and with a weight that stands behind the name brought along."""
    if line.end <= line.start:
        return line.line
    space = " " if line.line[line.start : line.end][-1:].isspace() else ""
    rest = line.line[line.end :]
    if mass_g is not None and line.mass_from == "stated":
        rest = STATED.sub(f"({mass_g:g} g)", rest, count=1)
    return line.line[: line.start] + text + space + rest


def _eggs(line: IngredientLine, change: Change) -> LineTo:
    count, size = int(change.to_value or 0), change.to_unit or "large"
    mass = round_mass(eggs.mass_g(count, size))
    rest = line.line[line.end :]
    plain_size = size.split(" plus ")[0]
    named = EGG_SIZE.sub(plain_size, rest, count=1) if EGG_SIZE.search(rest) else f" {plain_size}{rest}"
    extra = f" plus {size.split(' plus ')[1]}" if " plus " in size else ""
    if line.mass_from == "stated":
        named = STATED.sub(f"({mass:g} g)", named, count=1)
    text = f"{line.line[: line.start]}{count}{named}{extra}"
    if EGG_SIZE.search(line.line[line.start : line.end]):
        text = f"{line.line[: line.start]}{count} {plain_size}{rest}{extra}"
    return LineTo(line=line, amount=float(count), amount_high=None, unit=size, mass_g=mass, text=text)


# The oven, the cautions and the recipe as it then reads


def _oven(new: tuple[StepTo, ...]) -> OvenTo | None:
    """The setting of the step that bakes, else the first that is named."""
    held = [
        (one, t)
        for one in new
        for t in one.temperatures
        if t.mark.what == "oven" and t.mark.low_c >= steps.BAKED_OVEN_C
    ]
    if not held:
        return None
    baking = [t for one, t in held if any(m.what in ("bake", "roast", "braise") for m in one.step.times)]
    main = (baking or [t for _, t in held])[0]
    return OvenTo(*(round(c, 1) for c in (main.mark.low_c, main.to_c, main.low_c, main.high_c)))


def _cautions(batch: Batch, changes: tuple[Change, ...], lines: tuple[LineTo, ...]) -> Iterator[Caution]:
    touched: set[str] = {c.what for c in changes if c.way != "same"}
    if batch.canning:
        yield canning.caution(batch)
        return
    yield from keeping.cautions(batch)
    if batch.style in BATTERS and touched & {"leavening", "sugar", "liquid"} and batch.up:
        yield Caution(
            "note",
            "Change one thing at a time, in this order: leavening, sugar, liquid, then the rest. Keep a note of each "
            "batch.",
            ("uwyo-altitude-adjusters",),
        )
    if batch.style in BATTERS and "pan" in touched and batch.up:
        yield Caution(
            "note",
            "Pan overflow: fill half full, and set a sheet pan beneath for the first batch.",
            ("egg-producers-cakes",),
        )
    yield from _beyond(batch, touched)
    yield from _doubtful(batch.recipe)
    if "oven" in touched and batch.up and re.search(r"\bglass\b", _words(batch.recipe), re.I):
        yield Caution(
            "note",
            "In a glass pan leave the oven at the recipe's setting: glass already browns the edges.",
            ("egg-producers-cakes",),
        )
    yield from _pot_cautions(batch, touched)
    told = {mark.line for one in batch.recipe.steps for mark in one.amounts}
    divided = [to.line.item for i, to in enumerate(lines) if to.line.divided and to.changed and i not in told]
    if divided:
        text = f"Divide the new amount of {' and '.join(dict.fromkeys(divided))} in the shares the recipe has."
        yield Caution("note", text, ("common-practice",))
    if batch.style == OTHER:
        text = "This fits no style known here, so the formula stays; only simmering, sugar and hot fat are converted."
        yield Caution("note", f"{text} Name the style to convert the rest.", ("common-practice",))


def _words(recipe: Recipe) -> str:
    return " ".join(one.text for one in recipe.steps)


def _doubtful(recipe: Recipe) -> Iterator[Caution]:
    """Lines that a cook should look at: no unit where one is needed, or the same line twice."""
    bare = [
        line.line
        for line in recipe.ingredients
        if line.amount is not None and line.unit is None and line.mass_g is None and line.role in MEASURED_ROLES
    ]
    if bare:
        text = f"No unit is given, so these stay as they are: {'; '.join(bare)}."
        yield Caution("note", text, ("common-practice",))
    seen = Counter((line.component, " ".join(line.line.lower().split())) for line in recipe.ingredients)
    twice = [line for (_, line), times in seen.items() if times > 1]
    if twice:
        text = f"Listed more than once, and counted each time: {'; '.join(twice)}."
        yield Caution("note", text, ("common-practice",))


def _beyond(batch: Batch, touched: set[str]) -> Iterator[Caution]:
    highest, top = max(batch.from_m, batch.to_m), bands.highest_m("leavening")
    if highest <= top or not touched & {"leavening", "sugar", "liquid"}:
        return
    law = leavening.gas_ratio(0, highest)
    yield Caution(
        "warn" if highest > 3048 else "note",
        f"The published tables end at {batch.say.elevation(top)}; their last step is held above it. The gas law "
        "alone would take "
        f"{100 - 100 / law:.0f} % of the leavening off at {batch.say.elevation(highest)}: bake a small trial before "
        "the batch.",
        ("uwyo-altitude-adjusters", "computed"),
    )


def _pot_cautions(batch: Batch, touched: set[str]) -> Iterator[Caution]:
    pot = wet_dish.dish_class(batch)
    soft = kinetics.softening(pot or kinetics.GENERAL)
    under_pressure = any(t.what == "pressure" for one in batch.recipe.steps for t in one.times)
    if batch.style == "beans" and pot and soft.threshold_c is not None and batch.boil_here_c < soft.threshold_c:
        yield Caution(
            "warn",
            f"Below {batch.say.temp(soft.threshold_c)} dried beans practically will not soften, however long they "
            "cook. Use a pressure cooker.",
            (soft.source,),
        )
    elif (
        pot
        and wet_dish.pot_minutes(batch)
        and batch.style in ("beans", "braise")
        and batch.boil_shift_k < -1.5
        and not under_pressure
    ):
        span, gauge = wet_dish.pressure_option(batch), STOVE_TOP_GAUGE_PA
        time = f" in {duration_span(*span)}, after it has come to pressure" if span else ""
        yield Caution(
            "note",
            f"The quick way here: a stove-top pressure cooker at {batch.say.gauge(gauge)} does it{time}."
            " Follow its maker's instructions.",
            ("common-practice",),
        )
    if dangers.holds_lectin(batch.recipe) and not dangers.lectin(batch.recipe):
        yield Caution(
            "warn",
            "Kidney beans and their like: soak, then boil hard for at least 10 minutes before any slow cooking.",
            ("usu-ask-extension",),
        )
    if under_pressure:
        yield Caution(
            "warn",
            "Never fill a pressure cooker past two thirds, half for beans and grains; keep the vent clear and let "
            "the pressure "
            "fall before opening.",
            ("common-practice",),
        )
    if "fat_temp" in touched:
        yield Caution(
            "warn", "Hot fat: never past half the pot, a lid within reach, and no water near it.", ("common-practice",)
        )
    if batch.style in wet_dish.POTS and batch.to_m > SEASON_FROM_M > batch.from_m:
        yield Caution(
            "note", "Food can taste flatter up here; taste and season at the end.", ("csu-high-altitude-food-prep",)
        )


def _plain(recipe: Recipe, lines: tuple[LineTo, ...], new: tuple[StepTo, ...]) -> Recipe:
    gained = [(t.mark.what, t.to_low_min - t.mark.low_min) for one in new for t in one.times]
    return replace(
        recipe,
        ingredients=tuple(_plain_line(to) for to in lines),
        steps=tuple(one.plain for one in new),
        cook_min=_more(recipe.cook_min, sum(minutes for what, minutes in gained if what != "rise")),
        total_min=_more(recipe.total_min, sum(minutes for _, minutes in gained)),
    )


def _more(time_min: float | None, minutes: float) -> float | None:
    """A stated time of the whole recipe with what its steps gained; None where it states none."""
    return time_min if time_min is None or not minutes else max(1.0, round_time_min(time_min + minutes))


def _plain_line(to: LineTo) -> IngredientLine:
    if not to.changed:
        return to.line
    counted = to.line.unit in (None, "piece")
    end = to.line.end + len(to.text) - len(to.line.line)
    return replace(
        to.line, line=to.text, amount=to.amount, amount_high=to.amount_high, unit=None if counted else to.unit,
        further=(), mass_g=to.mass_g, end=to.line.end if counted else max(end, to.line.start),
    )  # fmt: skip
