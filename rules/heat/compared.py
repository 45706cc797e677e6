"""A temperature of an answer held against the baseline's: which it is, and how far it has moved."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from rules.heat.heat_settings import setting
from rules.model import Answer, Figure, Request
from rules.said import Measure, oven_span, temp_span

# which temperature is asked about, the first that there is, and what it is of
THINGS = {
    "oven": "oven", "fat_temperature": "fat", "cooker_setting": "grate", "bath_temperature": "bath",
    "brew_temperature": "water", "hold_temperature": "hold", "inside_temperature": "inside",
    "liquid_temperature": "liquid", "boiling_point": "boil",
}  # fmt: skip
# what a cook sets, and does not find
SET = ("oven", "fat", "pan", "grate", "smoker", "bath", "hold")
NOTICED_K = 1.2


@dataclass(frozen=True, slots=True)
class Compared:
    """A temperature here and at the baseline [degC].

    thing: what it is of, as a sentence chooses by it; low_c, high_c: its range here
    """

    thing: str
    low_c: float
    high_c: float
    moved_k: float

    @property
    def way(self) -> str:
        """Which way it has moved: hotter, cooler or same."""
        return "same" if abs(self.moved_k) < NOTICED_K else "hotter" if self.moved_k > 0 else "cooler"

    @property
    def span(self) -> Measure:
        """Both ends of it, to be written: a setting coarser than a reading."""
        if self.thing not in SET:
            return temp_span(self.low_c, self.high_c)
        return oven_span(self.low_c, self.high_c)

    @property
    def middle_c(self) -> float:
        """The middle of the range here [degC]."""
        return (self.low_c + self.high_c) / 2


def compared(answer: Answer, base: Answer | None = None, ids: Iterable[str] = THINGS) -> Compared | None:
    """The temperature that an answer is about, against sea level's, or against that of the answer at the baseline."""
    here = next((f for id in ids if (f := answer.figure(id))), None)
    if here is None:
        return None
    there = base.figure(here.id) if base else None
    base_c = there.value if there else here.value if here.sea_level is None else here.sea_level
    one = here.id == "oven" and answer.request.method == "braise"
    low_c, high_c = (here.value, here.value) if one else ends(here)
    return Compared(thing_of(here, answer.request), low_c, high_c, here.value - base_c)


def ends(figure: Figure) -> tuple[float, float]:
    """The range of a figure, or twice its value."""
    return (figure.value if figure.low is None else figure.low, figure.value if figure.high is None else figure.high)


def thing_of(figure: Figure, request: Request) -> str:
    """What a temperature is of."""
    thing = THINGS.get(figure.id, "core")
    if thing == "fat":
        deep = setting(request.dish, request.dish_class or "general", "fry").way == "deep"
        return "fat" if deep else "pan"
    return "smoker" if thing == "grate" and request.method == "smoke" else thing
