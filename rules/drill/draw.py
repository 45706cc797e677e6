"""What a maker of questions draws from: chance that a seed repeats, places to cook at, and the shapes of a question."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from functools import cached_property
from random import Random
from typing import TypeVar

from rules.book import Case
from rules.drill.question import LETTERS, Question
from rules.model import Request, Units
from rules.physics.units import FT_PER_M, to_c, to_f
from rules.say import Say

T = TypeVar("T")

LODGE, LODGE_M = "Timberfold Lodge", 7000 / FT_PER_M
BAKERY, BAKERY_M = "the lodge's bakery", 5300 / FT_PER_M
NAMED_SHARE = 0.35
NEAR_FT = 250

DEGREES = {"us": "°F", "metric": "°C"}


@dataclass(frozen=True, slots=True)
class Place:
    """Where a question plays. words: such as "at Timberfold Lodge, 7,000 ft (2,130 m)"."""

    elevation_m: float
    words: str


@dataclass(frozen=True)
class Draw:
    """What one question is made from. Its id, theme and level are those of the question; say words its figures."""

    id: str
    theme: str
    level: int
    rng: Random
    say: Say

    @cached_property
    def units(self) -> Units:
        """The system of units in which the question asks."""
        return self.say.units

    @property
    def degrees(self) -> str:
        """The degrees in which it asks."""
        return DEGREES[self.units]

    def one_of(self, things: Sequence[T]) -> T:
        """One of several."""
        return self.rng.choice(things)

    def place(self, low_ft: int = 3000, high_ft: int = 10_000, *, edges_m: Iterable[float] = ()) -> Place:
        """Somewhere between two elevations, now and then the lodge or its bakery.

        edges_m: elevations at which the answer changes; the place is 250 ft or more from each [m]
        """
        edges = tuple(edges_m)

        def clear(elevation_m: float) -> bool:
            feet = elevation_m * FT_PER_M
            return low_ft - 1 < feet < high_ft + 1 and all(abs(feet - e * FT_PER_M) >= NEAR_FT for e in edges)

        named = [(m, name) for m, name in ((LODGE_M, LODGE), (BAKERY_M, BAKERY)) if clear(m)]
        if named and self.rng.random() < NAMED_SHARE:
            elevation_m, name = self.one_of(named)
            return Place(elevation_m, f"at {name}, {self.say.elevation(elevation_m)}")
        elevation_m = self.one_of([m for m in self._round_elevations_m() if clear(m)])
        return Place(elevation_m, f"at {self.say.elevation(elevation_m)}")

    def _round_elevations_m(self) -> list[float]:
        if self.units == "us":
            return [feet / FT_PER_M for feet in range(500, 14_500, 500)]
        return [float(metres) for metres in range(200, 4400, 100)]

    def case(self, place: Place) -> Case:
        """The air of a place, and how its figures are worded."""
        return Case(Request(elevation_m=place.elevation_m, units=self.units))

    def figure(
        self,
        text: str,
        answer: float,
        unit: str,
        *,
        within: tuple[float, float],
        tolerance: str,
        shown: str,
        why: str,
        sources: Iterable[str],
    ) -> Question:
        """A question for a figure. within: the figures that count as right [unit]."""
        return Question(
            id=self.id, theme=self.theme, level=self.level, text=text, form="figure", answer=answer, unit=unit,
            low=min(within), high=max(within), tolerance=tolerance, asked_in=self.units, shown=shown, why=why,
            sources=_once(sources),
        )  # fmt: skip

    def temperature(
        self,
        text: str,
        temp_c: float,
        why: str,
        sources: Iterable[str],
        *,
        span_c: tuple[float, float] | None = None,
        under_f: float = 2.0,
        over_f: float = 2.0,
    ) -> Question:
        """A question for a temperature [degC]; a span counts whole.

        under_f, over_f: how far under and over it, or its span, still counts [degF]
        """
        low_c, high_c = span_c or (temp_c, temp_c)
        shown = self.say.temp_span(low_c, high_c)
        return self.figure(
            f"{text} Answer in {self.degrees}.",
            temp_c,
            "degC",
            within=(to_c(to_f(low_c) - under_f), to_c(to_f(high_c) + over_f)),
            tolerance=self._room(under_f, over_f),
            shown=shown,
            why=why,
            sources=sources,
        )

    def _room(self, under_f: float, over_f: float) -> str:
        over = self.say.temp_drop(over_f / 1.8)
        return f"within {over}" if under_f == over_f else f"no lower, and at most {over} higher"

    def difference(self, text: str, kelvin: float, why: str, sources: Iterable[str], *, within_f: float) -> Question:
        """A question for a difference of temperature [K]."""
        room_k = within_f / 1.8
        return self.figure(
            f"{text} Answer in {self.degrees}.", kelvin, "K", within=(kelvin - room_k, kelvin + room_k),
            tolerance=f"within {self.say.temp_drop(room_k)}", shown=self.say.temp_drop(kelvin), why=why,
            sources=sources,
        )  # fmt: skip

    def choice(
        self, text: str, right: str, wrong: Iterable[str], why: str, sources: Iterable[str], *, shuffled: bool = True
    ) -> Question:
        """A question with several answers of which one is right; not shuffled where they stand in an order of size."""
        options = [right, *wrong]
        if shuffled:
            self.rng.shuffle(options)
        else:
            options = sorted(options, key=_first_figure)
        letter = LETTERS[options.index(right)]
        return Question(
            id=self.id, theme=self.theme, level=self.level, text=text, form="choice", answer=letter,
            asked_in=self.units,
            options=tuple(options), shown=f"{letter}, {right}", why=why, sources=_once(sources),
        )  # fmt: skip

    def yes_no(self, text: str, right: bool, why: str, sources: Iterable[str]) -> Question:
        """A question for yes or no."""
        word = "yes" if right else "no"
        return Question(
            id=self.id, theme=self.theme, level=self.level, text=f"{text} Yes or no?", form="yes_no", answer=word,
            asked_in=self.units,
            shown=word, why=why, sources=_once(sources),
        )  # fmt: skip

    def order(self, text: str, right_order: Sequence[str], why: str, sources: Iterable[str]) -> Question:
        """A question for the order of several things."""
        options = list(right_order)
        while options == list(right_order):
            self.rng.shuffle(options)
        letters = "".join(LETTERS[options.index(thing)] for thing in right_order)
        return Question(
            id=self.id, theme=self.theme, level=self.level, text=text, form="order", answer=letters,
            asked_in=self.units,
            options=tuple(options), shown=f"{' '.join(letters)}: {', then '.join(right_order)}", why=why,
            sources=_once(sources),
        )  # fmt: skip


@dataclass(frozen=True, slots=True)
class Kind:
    """A kind of question: its name within the theme, its level, and what makes one."""

    name: str
    level: int
    make: Callable[[Draw], Question]


def kinds(*makers: tuple[int, Callable[[Draw], Question]]) -> tuple[Kind, ...]:
    """Kinds of a theme from pairs of level and function; a kind is named as its function."""
    return tuple(Kind(make.__name__, level, make) for level, make in makers)


def _once(sources: Iterable[str]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(sources))


def _first_figure(option: str) -> float:
    digits = "".join(c if c.isdigit() or c == "." else " " for c in option).split()
    return float(digits[0]) if digits else 0.0
