"""A recipe on its way from one elevation to another: what every component of the formula works on."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property

from rules.baking import bands, components
from rules.baking.bands import Span
from rules.baking.change import Change, Way, What, ingredient
from rules.baking.components import Share
from rules.baking.parts import Placed, batter
from rules.baking.rounding import ML, PACKETS, G, in_unit, kitchen, same_measure
from rules.model import Units
from rules.physics import air, water
from rules.recipe import IngredientLine, Recipe
from rules.said import Measure
from rules.said import number as said_number
from rules.say import Say, number

MEASURED = (*ML, *G, "percent")


@dataclass(frozen=True)
class Batch:
    """One recipe, its style, the elevation it was written for and the one it goes to [m].

    canning: it is a recipe for jars that are kept, of which nothing is converted but the gel point
    """

    recipe: Recipe
    style: str
    from_m: float
    to_m: float
    units: Units = "us"
    canning: bool = False

    @cached_property
    def lines(self) -> tuple[Placed, ...]:
        """The lines of the dough or batter itself."""
        return batter(self.recipe)

    @cached_property
    def say(self) -> Say:
        """Words quantities in the cook's units."""
        return Say(self.units)

    @property
    def up(self) -> bool:
        """Whether the recipe climbs."""
        return self.to_m > self.from_m

    @property
    def here(self) -> str:
        """Where it goes, in words."""
        return self.say.elevation(self.to_m)

    @property
    def there(self) -> str:
        """Where it was written for, in words."""
        return self.say.elevation(self.from_m)

    @cached_property
    def pressure_ratio(self) -> float:
        """Air pressure here against there."""
        return air.pressure_pa(self.to_m) / air.pressure_pa(self.from_m)

    @cached_property
    def boil_here_c(self) -> float:
        """Boiling point of water where it goes [degC]."""
        return water.boiling_point_c(self.to_m)

    @cached_property
    def boil_there_c(self) -> float:
        """Boiling point of water where it was written for [degC]."""
        return water.boiling_point_c(self.from_m)

    @property
    def boil_shift_k(self) -> float:
        """How much hotter water boils here than there [K], negative on the way up."""
        return self.boil_here_c - self.boil_there_c

    def stays(self, part: Share) -> str:
        """Why a component stays: the style's note speaks of the way up."""
        return part.note if self.up else "It is the same at every elevation in this kind of bake"

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


def rescaled(
    line: Placed,
    ratio: Span,
    what: What,
    *,
    rule: str,
    because: str,
    sources: tuple[str, ...],
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
        because = "The change is smaller than a cook can measure."
    else:
        way = "less" if to < was else "more"
    return Change(
        what=what, way=way, at=ingredient(line.index), item=line.line.item,
        from_value=amount, from_unit=unit, to_value=to, to_low=min(low, to), to_high=max(high, to), to_unit=to_unit,
        rule=rule, because=because, sources=sources,
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
    batch: Batch, lines: tuple[Placed, ...], component: str, what: What, because: str, *, fine: bool = False
) -> Iterator[Change]:
    """Lines of one component times the style's ratio, or `same` with the style's reason."""
    part = components.share(batch.style, component)
    if part is None or not lines or not batch.expects(component):
        return
    rule, sources = f"baking.{component}", components.sources(batch.style, component)
    if not part.value:
        yield kept(what, ingredient(lines[0].index), rule, batch.stays(part), sources, item=lines[0].line.item)
        return
    ratio = batch.ratio(component)
    for line in lines:
        change = rescaled(line, ratio, what, rule=rule, because=because, sources=sources, fine=fine)
        if change:
            yield change


def kept(what: What, at: str, rule: str, because: str, sources: tuple[str, ...], *, item: str = "") -> Change:
    """Something that stays although a baker might expect a change, with its reason."""
    return Change(what=what, way="same", at=at, rule=rule, because=f"{because}.", sources=sources, item=item)


def longer(ratio: float) -> str:
    """How a time changes, in words.

    >>> longer(1.25), longer(0.8), longer(2.48)
    ('about 25 % more time', 'about 20 % less time', 'about 2.5 times as long')
    """
    if ratio >= 1.95:
        return f"about {number(ratio, 1)} times as long"
    return f"about {percent(ratio)} {'more' if ratio > 1 else 'less'} time"


def percent(ratio: float) -> str:
    """How far a ratio is from one, in whole percent.

    >>> percent(0.75), percent(1.219)
    ('25 %', '22 %')
    """
    return f"{number(abs(ratio - 1) * 100, 0)} %"


def percent_apart(ratio: float) -> Measure:
    """How far a ratio is from one, in whole percent, to be said.

    >>> percent_apart(0.75).values
    (25.0,)
    """
    return said_number(abs(ratio - 1) * 100, 0)
