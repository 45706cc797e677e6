"""What a maker of questions draws from: chance that a seed repeats, places to cook at, and the shapes of a question."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from random import Random
from typing import TypeVar

from rules.book import Case
from rules.drill.question import LETTERS, Question
from rules.model import Request, Units
from rules.physics.units import FT_PER_M, to_c, to_f
from rules.said import Said, Value, Words, elevation, listed, sentences, temp_drop, temp_span, together

T = TypeVar("T")

say = sentences("drill/draw")
LODGE, LODGE_M = say("lodge"), 7000 / FT_PER_M
BAKERY, BAKERY_M = say("bakery"), 5300 / FT_PER_M
NAMED_SHARE = 0.35
NEAR_FT = 250


@dataclass(frozen=True, slots=True)
class Place:
    """Where a question plays. words: such as "at Timberfold Lodge, 7,000 ft (2,130 m)"."""

    elevation_m: float
    words: Words


def spot(elevation_m: float, name: Said | None = None) -> Place:
    """A place by its elevation [m], and by its name where it has one."""
    height = elevation(elevation_m)
    return Place(elevation_m, say("at-named", name=name, elevation=height) if name else say("at", elevation=height))


@dataclass(frozen=True)
class Draw:
    """What one question is made from. Its id, theme and level are those of the question; units: what it asks in."""

    id: str
    theme: str
    level: int
    rng: Random
    units: Units

    @property
    def in_degrees(self) -> Said:
        """In which degrees to answer."""
        return say("in-degrees", units=self.units)

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
            return spot(*self.one_of(named))
        return spot(self.one_of([m for m in self._round_elevations_m() if clear(m)]))

    def _round_elevations_m(self) -> list[float]:
        if self.units == "us":
            return [feet / FT_PER_M for feet in range(500, 14_500, 500)]
        return [float(metres) for metres in range(200, 4400, 100)]

    def case(self, place: Place) -> Case:
        """The air of a place."""
        return Case(Request(elevation_m=place.elevation_m, units=self.units))

    def figure(
        self,
        text: Words,
        answer: float,
        unit: str,
        *,
        within: tuple[float, float],
        tolerance: Words,
        shown: Value,
        why: Words,
        sources: Iterable[str],
        in_hours: bool = False,
    ) -> Question:
        """A question for a figure. within: the figures that count as right [unit]."""
        return Question(
            id=self.id, theme=self.theme, level=self.level, text=text, form="figure", answer=answer, unit=unit,
            low=min(within), high=max(within), tolerance=tolerance, asked_in=self.units, shown=shown, why=why,
            sources=_once(sources), in_hours=in_hours,
        )  # fmt: skip

    def temperature(
        self,
        text: Words,
        temp_c: float,
        why: Words,
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
        return self.figure(
            together(text, self.in_degrees),
            temp_c,
            "degC",
            within=(to_c(to_f(low_c) - under_f), to_c(to_f(high_c) + over_f)),
            tolerance=_room(under_f, over_f),
            shown=temp_span(low_c, high_c),
            why=why,
            sources=sources,
        )

    def difference(
        self, text: Words, kelvin: float, why: Words, sources: Iterable[str], *, within_f: float
    ) -> Question:
        """A question for a difference of temperature [K]."""
        room_k = within_f / 1.8
        return self.figure(
            together(text, self.in_degrees), kelvin, "K", within=(kelvin - room_k, kelvin + room_k),
            tolerance=say("within", room=temp_drop(room_k)), shown=temp_drop(kelvin), why=why, sources=sources,
        )  # fmt: skip

    def choice(self, text: Words, right: Words, wrong: Iterable[Words], why: Words, sources: Iterable[str]) -> Question:
        """A question with several answers of which one is right, in any order."""
        options = [right, *wrong]
        self.rng.shuffle(options)
        return self.among(text, right, options, why, sources)

    def among(
        self, text: Words, right: Words, options: Sequence[Words], why: Words, sources: Iterable[str]
    ) -> Question:
        """A question with several answers of which one is right, in the order in which they are to stand."""
        letter = LETTERS[options.index(right)]
        return Question(
            id=self.id, theme=self.theme, level=self.level, text=text, form="choice", answer=letter,
            asked_in=self.units, options=tuple(options), shown=say("option", letter=letter, option=right), why=why,
            sources=_once(sources),
        )  # fmt: skip

    def yes_no(self, text: Words, right: bool, why: Words, sources: Iterable[str]) -> Question:
        """A question for yes or no."""
        return Question(
            id=self.id, theme=self.theme, level=self.level, text=together(text, say("yes-or-no")), form="yes_no",
            answer="yes" if right else "no", asked_in=self.units, shown=say("yes") if right else say("no"), why=why,
            sources=_once(sources),
        )  # fmt: skip

    def order(self, text: Words, right_order: Sequence[Words], why: Words, sources: Iterable[str]) -> Question:
        """A question for the order of several things."""
        options = list(right_order)
        while options == list(right_order):
            self.rng.shuffle(options)
        letters = "".join(LETTERS[options.index(thing)] for thing in right_order)
        return Question(
            id=self.id, theme=self.theme, level=self.level, text=text, form="order", answer=letters,
            asked_in=self.units, options=tuple(options), why=why, sources=_once(sources),
            shown=say("in-order", letters=" ".join(letters), things=listed(right_order, "then")),
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


def _room(under_f: float, over_f: float) -> Said:
    over = temp_drop(over_f / 1.8)
    return say("within", room=over) if under_f == over_f else say("over-only", room=over)


def _once(sources: Iterable[str]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(sources))
