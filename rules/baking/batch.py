"""A recipe on its way from one elevation to another: the case that every rule of the formula works on."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import cached_property

from rules.baking import bands, components
from rules.baking.bands import Span
from rules.baking.change import Change, Way, What, ingredient
from rules.baking.components import Share
from rules.baking.division import batter
from rules.baking.parts import Placed
from rules.baking.rounding import ML, PACKETS, G, in_unit, kitchen, same_measure
from rules.book import Case, Part
from rules.model import Request, Units
from rules.recipe import IngredientLine, Recipe
from rules.said import Measure, Words, number, sentences

MEASURED = (*ML, *G, "percent")
say = sentences("baking/batch")


@dataclass(frozen=True)
class Batch(Case):
    """One recipe and its style, on the way from the place it was written for to the cook's own.

    canning: it is a recipe for jars that are kept, of which nothing is converted but the gel point
    """

    recipe: Recipe
    style: str
    canning: bool = False

    @classmethod
    def of(
        cls, recipe: Recipe, style: str, from_m: float, to_m: float, units: Units = "us", canning: bool = False
    ) -> Batch:
        """A recipe between two elevations [m]: the one it was written for, and the one it goes to."""
        return cls(Request(elevation_m=to_m, from_elevation_m=from_m, units=units), recipe, style, canning)

    @cached_property
    def lines(self) -> tuple[Placed, ...]:
        """The lines of the dough or batter itself."""
        return batter(self.recipe)

    @property
    def units(self) -> Units:
        """Which unit system stands first in the explanations."""
        return self.request.units

    @property
    def from_m(self) -> float:
        """The elevation it was written for [m]."""
        return self.there.elevation_m

    @property
    def to_m(self) -> float:
        """The elevation it goes to [m]."""
        return self.here.elevation_m

    @property
    def up(self) -> bool:
        """Whether the recipe climbs."""
        return self.to_m > self.from_m

    @property
    def way(self) -> str:
        """The same as a word that a sentence chooses by: `up` or `down`."""
        return "up" if self.up else "down"

    @property
    def pressure_ratio(self) -> float:
        """Air pressure here against there."""
        return self.here.pressure_pa / self.there.pressure_pa

    @property
    def boil_shift_k(self) -> float:
        """How much hotter water boils here than there [K], negative on the way up."""
        return self.here.boiling_c - self.there.boiling_c

    def stays(self, part: Share) -> Words:
        """Why a component stays: the style's note speaks of the way up."""
        return say("note", note=part.note) if self.up else say("same-everywhere")

    def parts(self, *names: str, least_g: float = 0.0) -> tuple[Placed, ...]:
        """Lines of the batter that play one of these parts, leaving out those known to weigh less than least_g."""
        return tuple(
            p for p in self.lines if p.part.name in names and (p.line.mass_g is None or p.line.mass_g >= least_g)
        )

    def ratio(self, component: str) -> Span:
        """How many times the baseline's amount is right here."""
        return components.ratio(self.style, component, self.from_m, self.to_m)

    def expects(self, component: str) -> bool:
        """Whether a baker would look for a change of this component between the two elevations."""
        tables = component if component in bands.TABLES else "leavening"
        return bands.change(tables, self.to_m) != bands.change(tables, self.from_m)


def amount_of(line: IngredientLine) -> float | None:
    """The amount of a line with what is added to it ("plus 2 tbsp") in its own unit; None where it cannot be told."""
    total = line.amount
    for more in line.further:
        added = in_unit(more.value, more.unit, line.unit)
        total = None if total is None or added is None else total + added
    return total


def changed(changes: Iterable[Change]) -> Part | None:
    """What a rule says that changes these lines or steps; None where it changes nothing."""
    found = tuple(changes)
    return Part(changes=found) if found else None


def rescaled(
    line: Placed,
    ratio: Span,
    what: What,
    *,
    because: Words,
    sources: tuple[str, ...] = (),
    fine: bool = False,
    coarse: bool = False,
) -> Change | None:
    """One ingredient line times a ratio, rounded to what a cook can measure; None where it has no measure.

    Where the rounding swallows the change, the change is listed as `same` with that reason.
    """
    amount, unit = measured(line, what)
    if amount is None:
        return None
    base, to_unit = same_measure(amount, unit, fine=fine)
    to, low, high = (towards(base, r, to_unit, fine=fine, coarse=coarse) for r in (ratio.value, ratio.low, ratio.high))
    was = in_unit(amount, unit, to_unit)
    if was is None or abs(to - was) < 1e-6:
        to, low, high, to_unit = amount, amount, amount, unit
        way: Way = "same"
        because = say("too-small-to-measure")
    else:
        way = "less" if to < was else "more"
    return Change(
        what=what, way=way, at=ingredient(line.index), item=line.line.item,
        from_value=amount, from_unit=unit, to_value=to, to_low=min(low, to), to_high=max(high, to), to_unit=to_unit,
        because=because, sources=sources,
    )  # fmt: skip


def measured(line: Placed, what: What) -> tuple[float | None, str | None]:
    """The amount of a line in a unit that can be divided: a can or packet by its weight, a packet of yeast as it is."""
    amount, unit = amount_of(line.line), line.line.unit
    if unit in MEASURED or (unit in PACKETS and what == "yeast"):
        return amount, unit
    return (line.line.mass_g, "g") if unit is not None else (None, None)


def towards(amount: float, ratio: float, unit: str | None, *, fine: bool = False, coarse: bool = False) -> float:
    """An amount times a ratio, rounded to what a cook can measure; the rounding never turns less into more.

    >>> towards(1 / 3, 0.99, "cup") == 1 / 3, towards(2, 0.75, "tsp", fine=True)
    (True, 1.5)
    """
    if abs(ratio - 1) < 1e-9:
        return amount
    rounded = kitchen(amount * ratio, unit, fine=fine, coarse=coarse)
    return max(rounded, amount) if ratio > 1 else min(rounded, amount)


def scale_lines(
    batch: Batch,
    lines: tuple[Placed, ...],
    component: str,
    what: What,
    because: Words,
    *,
    fine: bool = False,
    ratio: Span | None = None,
) -> Iterator[Change]:
    """Lines of one component times the style's ratio, or `same` with the style's reason.

    ratio: what they are multiplied by, where it is not the style's own
    """
    part = components.share(batch.style, component)
    if part is None or not lines or not batch.expects(component):
        return
    sources = components.sources(batch.style, component)
    if not part.value:
        yield kept(what, ingredient(lines[0].index), batch.stays(part), sources, item=lines[0].line.item)
        return
    times = ratio or batch.ratio(component)
    for line in lines:
        change = rescaled(line, times, what, because=because, sources=sources, fine=fine)
        if change:
            yield change


def kept(what: What, at: str, because: Words, sources: tuple[str, ...], *, item: str = "") -> Change:
    """Something that stays although a baker might expect a change, with its reason."""
    return Change(what=what, way="same", at=at, because=because, sources=sources, item=item)


def percent_apart(ratio: float) -> Measure:
    """How far a ratio is from one, in whole percent, to be said.

    >>> percent_apart(0.75).values
    (25.0,)
    """
    return number(abs(ratio - 1) * 100, 0)
