"""A recipe as the rules see it: lines with masses, steps with their times and temperatures marked.

Offsets (`start`, `end`) count characters of the text that holds the mark, so that a writer can replace it in place.
Everything is immutable; make a changed copy with dataclasses.replace.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from typing import Literal

MassFrom = Literal["stated", "unit", "density", "each", "percent"]
TimeOf = Literal[
    "bake", "roast", "boil", "simmer", "braise", "poach", "steam", "pressure", "fry", "reduce", "rise", "chill", "rest",
    "cool", "soak", "steep", "mix", "knead", "toast", "grill", "preheat", "microwave", "process",
    "hold", "cook", "other", "interval", "ahead", "relative", "limit", "doneness", "thaw", "reheat", "marinate",
    "pasteurise", "smoke", "air_fry", "slow_cook", "sous_vide",
]  # fmt: skip
TempOf = Literal[
    "oven", "food", "sugar", "fat", "proof", "water", "hold", "other", "fridge", "thaw", "reheat", "pasteurise", "bath",
    "canner", "smoker", "grill", "air_fryer", "slow_cooker",
]  # fmt: skip
CueOf = Literal["boil", "simmer", "doubled", "soft_peaks", "stiff_peaks", "per_side", "overnight"]


@dataclass(frozen=True, slots=True)
class Amount:
    """A quantity as written. high is the upper end of a range; unit is canonical ("cup"), or None for a bare count."""

    value: float
    unit: str | None = None
    high: float | None = None
    line: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class IngredientLine:
    """One ingredient, as read and as understood.

    line: the text as read, whole
    start, end: where the measure ("2 1/4 cups plus 2 tbsp (280 g)") stands in it; equal where there is none
    component: the sub-recipe it belongs to ("frosting"), "" for the only or the first unnamed one
    item: the name the lexicon gives the ingredient, else the words as read; `known` says which
    role: what it does in a formula, by the lexicon ("flour", "sugar", "fat", "liquid", ...); None where unknown
    amount, amount_high, unit: as written; unit None for a count ("3 eggs"), "percent" for baker's percentages
    further: measures added to it ("plus 2 tbsp"), folded into the mass
    mass_g: mass of the whole line [g] at `amount`, the lower end of a range; None where nothing gives it
    mass_from: whether the mass was stated, is the unit itself, or comes from density, a piece's weight or a percentage
    preparation: what is done to it ("sifted", "cut in cubes")
    divided, optional: as the line says
    written: the whole line as the recipe has it, where it told of several: "1 tsp each salt and pepper"; else ""
    """

    line: str
    item: str
    component: str = ""
    known: bool = False
    role: str | None = None
    amount: float | None = None
    amount_high: float | None = None
    unit: str | None = None
    further: tuple[Amount, ...] = ()
    mass_g: float | None = None
    mass_from: MassFrom | None = None
    preparation: str = ""
    divided: bool = False
    optional: bool = False
    start: int = 0
    end: int = 0
    written: str = ""

    @property
    def mass_high_g(self) -> float | None:
        """Mass [g] at the upper end of a range, or `mass_g` where there is no range."""
        if self.mass_g is None or not self.amount or self.amount_high is None or self.mass_from == "stated":
            return self.mass_g
        return self.mass_g * self.amount_high / self.amount

    @property
    def mass_mid_g(self) -> float | None:
        """Mass [g] in the middle of the range: what ratios are worked with."""
        return None if self.mass_g is None or self.mass_high_g is None else (self.mass_g + self.mass_high_g) / 2


@dataclass(frozen=True, slots=True)
class TimeMark:
    """A time in a step [min]; `approx` where it says "about", `at_least` for "at least" or "or more"."""

    start: int
    end: int
    low_min: float
    high_min: float
    what: TimeOf
    approx: bool = False
    at_least: bool = False


@dataclass(frozen=True, slots=True)
class TempMark:
    """A temperature in a step [degC]. unit is the one it was written in; `what` says what is at that temperature.

    The same temperature written twice ("350 °F (180 °C)") is one mark with the first figure; start and end span both.
    """

    start: int
    end: int
    low_c: float
    high_c: float
    unit: Literal["degF", "degC"]
    what: TempOf


@dataclass(frozen=True, slots=True)
class PressureMark:
    """A gauge pressure in a step [Pa]."""

    start: int
    end: int
    gauge_pa: float


@dataclass(frozen=True, slots=True)
class Cue:
    """Words that stand for a state rather than a figure: "bring to a boil", "until doubled", "stiff peaks"."""

    start: int
    end: int
    what: CueOf


@dataclass(frozen=True, slots=True)
class Vessel:
    """A pan or pot named in a step; `name` is its usual word ("cake pan"), size as written ("9-inch")."""

    start: int
    end: int
    name: str
    size: str = ""


@dataclass(frozen=True, slots=True)
class AmountMark:
    """An amount of a listed ingredient in a step: "1/2 cup of the sugar". line: its place in the list, from zero."""

    start: int
    end: int
    value: float
    high: float | None
    unit: str
    line: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """One step of the method, with what is marked in it, each kind in order of appearance."""

    text: str
    component: str = ""
    times: tuple[TimeMark, ...] = ()
    temperatures: tuple[TempMark, ...] = ()
    pressures: tuple[PressureMark, ...] = ()
    cues: tuple[Cue, ...] = ()
    vessels: tuple[Vessel, ...] = ()
    amounts: tuple[AmountMark, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Recipe:
    """A recipe as read.

    notes: lines that belong to the recipe but are neither ingredient nor step (introduction, storage, tips)
    unread: lines that could not be understood, verbatim; they are never dropped
    prep_min, cook_min, total_min: times of the whole recipe [min] where it states them
    flour_g: total flour weight [g] that baker's percentages refer to, where the recipe states it
    jsonld: the schema.org document it came from, as JSON text and untouched; "" for plain text
    """

    title: str = ""
    yields: Amount | None = None
    ingredients: tuple[IngredientLine, ...] = ()
    steps: tuple[Step, ...] = ()
    notes: tuple[str, ...] = ()
    unread: tuple[str, ...] = ()
    prep_min: float | None = None
    cook_min: float | None = None
    total_min: float | None = None
    flour_g: float | None = None
    jsonld: str = field(default="", repr=False)

    @property
    def components(self) -> tuple[str, ...]:
        """Names of the sub-recipes in order of appearance; ("",) for a recipe in one piece.

        >>> Recipe(ingredients=(IngredientLine(line="1 egg", item="egg", component="cake"),)).components
        ('cake',)
        """
        parts: Iterable[str] = [i.component for i in self.ingredients] or [s.component for s in self.steps]
        return tuple(dict.fromkeys(parts)) or ("",)

    def of(self, component: str) -> tuple[IngredientLine, ...]:
        """The ingredient lines of one sub-recipe."""
        return tuple(i for i in self.ingredients if i.component == component)
