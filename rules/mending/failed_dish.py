"""The dish on the bench: what is known of it when the size of a change is worked out."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace
from functools import cached_property

from rules.baking import components, leavening
from rules.baking.bands import TABLES, Span
from rules.baking.batch import Batch, measured
from rules.baking.change import What
from rules.baking.formula import ratios
from rules.baking.parts import Placed
from rules.baking.usual import usual
from rules.errors import UnknownWord
from rules.foods import dishes
from rules.mending.causes import Cause
from rules.mending.log import Log
from rules.model import Units
from rules.physics import air, water
from rules.preserving.gel import RISE_K
from rules.recipe import Recipe, TempMark, TimeMark
from rules.said import Said, Value, Words, elevation, number, temp, yes

PARTS: dict[str, tuple[str, ...]] = {
    "leavening": ("powder", "soda"), "sugar": ("sugar", "icing_sugar"), "liquid": ("liquid", "sour_liquid"),
    "flour": ("flour",), "fat": ("fat",), "yeast": ("yeast",), "salt": ("salt",),
}  # fmt: skip
CLASSES = {
    "braise": "collagen_cut", "beans": "dried_bean", "sugarwork": "candy", "reduction": "sauce", "other": "general",
}  # fmt: skip
FEATURES: dict[str, Callable[[Recipe], float | None]] = {
    "leavening": lambda r: sum(ratios(r).leavening_tsp_per_cup.values()),
    "sugar": lambda r: ratios(r).sugar,
    "liquid": lambda r: ratios(r).liquid,
    "fat": lambda r: ratios(r).fat,
    "yeast": lambda r: ratios(r).percent.get("yeast", 0.0),
}
DOWN = ("less", "cooler", "shorter")
# A hundredth of an amount, or of a degree: what the tables change by less, they leave.
LEAST_CHANGE = 0.01
SAID = ("bake", "roast", "fry")
# from here on the air makes a difference that a cook can see; and where cooks above sea level mostly are
HIGH_M, USUAL_M = 600.0, 1800.0
PRESSURE = "pressure_cook"
# what only a dough with yeast in it has, the trait of one without, and what raises it in the place of yeast
OF_YEAST, UNYEASTED, RAISED_BY = ("yeast", "proof"), "unyeasted", "leavening"
# told so many, the amounts are a formula, and what is not among them is not in the dish
A_FORMULA, NAMED = 3, ("leavening", "yeast", "sugar", "fat")
# how far under the boil the middle of a loaf that is done stands [K]
CRUMB_UNDER_K = 2.8
# settings that an oven is baked at [degC]
OVEN_C = (135.0, 290.0)


@dataclass(frozen=True, slots=True)
class Base:
    """An amount to change. own: whether it is the cook's own, or a round one to show the change on."""

    value: float
    unit: str | None
    item: str
    own: bool
    at: str = "recipe"


@dataclass(frozen=True)
class Bench:
    """A dish that failed: its recipe where there is one, its class, where it is cooked [m], and what was tried.

    from_m: where the recipe is right [m]; time_min: how long it was cooked [min], as far as said
    written_min: how long the recipe or the packet says where it is right [min]
    placed: whether it is known where; where not, here_m is sea level, and no figure of the place is told
    amounts: what the cook says is in it, by component: not the whole recipe; said_c: a temperature that was said [degC]
    wanted_c: the reading of its middle that a book asks for [degC]
    """

    dish_class: str
    here_m: float
    recipe: Recipe | None = None
    style: str = "layer_cake"
    dish: str | None = None
    method: str | None = None
    from_m: float = 0.0
    units: Units = "us"
    time_min: float | None = None
    written_min: float | None = None
    log: Log = Log()
    placed: bool = True
    said_c: float | None = None
    wanted_c: float | None = None
    amounts: Mapping[str, Base] = field(default_factory=dict)

    @property
    def ranked_m(self) -> float:
        """The elevation by which causes are ranked [m]: an asker who does not say is above sea level all the same."""
        return self.here_m if self.placed else USUAL_M

    def told(self, words: Words) -> Words:
        """A sentence of a cause, filled with the figures of the place."""
        return replace(words, values=self._values) if isinstance(words, Said) else words

    @cached_property
    def _values(self) -> tuple[tuple[str, Value], ...]:
        high = self.placed and self.here_m >= HIGH_M
        gas = air.SEA_LEVEL_PA / air.pressure_pa(self.here_m)
        return (
            ("high", yes(high)),
            ("pressed", yes(high and self.method == PRESSURE)),
            ("place", elevation(self.here_m)),
            ("boil", temp(self.boil_c)),
            ("gas", number(gas, 1)),
            ("gel", temp(self.boil_c + RISE_K)),
            ("crumb", temp(self.boil_c - CRUMB_UNDER_K)),
        )

    @cached_property
    def batch(self) -> Batch:
        """The recipe on its way up here, for the tables of its components."""
        return Batch.of(self.recipe or Recipe(), self.style, self.from_m, self.here_m, self.units)

    @property
    def boil_c(self) -> float:
        """Boiling point of water here [degC]."""
        return water.boiling_point_c(self.here_m)

    @property
    def sea_boil_c(self) -> float:
        """Boiling point of water at sea level [degC]."""
        return water.boiling_point_c(0.0)

    @cached_property
    def features(self) -> dict[str, float]:
        """The ratios of the formula that are known, as they would be at sea level."""
        if self.recipe is None or not ratios(self.recipe).flour_g:
            return {}
        found = {name: ratio(self.recipe) for name, ratio in FEATURES.items()}
        there = {name: components.ratio(self.style, name, 0.0, self.from_m).value for name in found}
        return {name: value / there[name] for name, value in found.items() if value is not None}

    @cached_property
    def usual_method(self) -> str | None:
        """The method that was said, else the one the dish is usually cooked by."""
        return self.method or dishes.usual_method(self.dish, self.dish_class)

    def lines(self, what: str) -> tuple[Placed, ...]:
        """The lines of the recipe that a component stands for, the largest first."""
        found = self.batch.parts(*PARTS.get(what, ()))
        return tuple(sorted(found, key=lambda p: -p.mass_g))

    def asks(self, cause: Cause) -> bool:
        """Whether the tables make a cause's change on the way from where the recipe is right to here."""
        if cause.by != "formula" or cause.what not in TABLES:
            return False
        table = components.difference if cause.what == "oven" else components.ratio
        change = table(self.style, cause.what, self.from_m, self.here_m).value - (cause.what != "oven")
        return abs(change) > LEAST_CHANGE and (change < 0) == (cause.way in DOWN)

    def cannot(self, cause: Cause) -> bool:
        """Whether the recipe leaves nothing to change: it has none of it, or its sour milk needs all of its soda."""
        if self._lacks(cause.what):
            return True
        if self.recipe is None or cause.what not in PARTS or cause.what == "liquid":
            return False
        lines = self.lines(cause.what)
        tied = cause.way == "less" and lines and lines[0].part.name == "soda" and self._is_tied(lines[0])
        return not lines or bool(tied)

    def _lacks(self, what: str) -> bool:
        """Whether the cook's own amounts, or the dish itself, leave a thing out: there is no yeast in a soda dough."""
        if what in OF_YEAST and "yeast" not in self.amounts:
            return RAISED_BY in self.amounts or UNYEASTED in dishes.traits_of(self.dish, self.dish_class)
        return len(self.amounts) >= A_FORMULA and what in NAMED and what not in self.amounts

    def _is_tied(self, soda: Placed) -> bool:
        return leavening.soda_ratio(self.batch, soda, Span(0.5, 0.5, 0.5)).value > 1 - 1e-9

    def base(self, what: What) -> Base:
        """The amount a change begins from: the recipe's, else the one in the log, else a round one."""
        if what in self.amounts:
            return self.amounts[what]
        for line in self.lines(what):
            amount, unit = measured(line, what)
            if amount:
                return Base(amount, unit, line.line.item, True, f"ingredient {line.index + 1}")
        if (first := self.log.first(what)) and first.from_value:
            return Base(first.from_value, first.from_unit, first.item or self.name(what), True)
        found = usual("mend", what, self.style)
        if found is None:
            raise UnknownWord.among("component", what, PARTS)
        return Base(*found.amount(self.units), found.item, False)

    @staticmethod
    def name(what: str) -> str:
        """What to call a component in a sentence."""
        found = usual("mend", what)
        return found.item if found else what

    @cached_property
    def oven_c(self) -> float | None:
        """The oven setting of the recipe [degC], or the last one in the log, or what the cook says."""
        last = next((t for _, t in reversed(self.log.steps) if t.what == "oven" and t.to_value is not None), None)
        if last and last.to_value is not None and last.to_unit in ("degF", "degC"):
            return (last.to_value - 32) / 1.8 if last.to_unit == "degF" else last.to_value
        mark = next((t for t in self._temperatures() if t.what == "oven"), None)
        said_c = self.said_c if self.said_c and OVEN_C[0] <= self.said_c <= OVEN_C[1] else None
        return mark.low_c if mark else said_c

    @cached_property
    def baked_min(self) -> float | None:
        """How long it is baked, by the recipe or as the cook said [min]."""
        mark = next((t for t in self._times() if t.what in SAID), None)
        return self.time_min or (mark.low_min if mark else None)

    def _times(self) -> tuple[TimeMark, ...]:
        return tuple(t for step in self.recipe.steps for t in step.times) if self.recipe else ()

    def _temperatures(self) -> tuple[TempMark, ...]:
        return tuple(t for step in self.recipe.steps for t in step.temperatures) if self.recipe else ()
