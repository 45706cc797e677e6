"""Dishes of one menu that need the same thing at the same time: one oven at two heats, one pressure cooker."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import combinations

from rules.heat.heat_settings import Setting, setting
from rules.model import Request
from rules.safety.holding_limits import limit_c
from rules.said import Measure, Words, duration, oven, oven_span, sentences, temp

say = sentences("topics/schedule")

# methods that share one thing, and within what they can share it [K]; None where nothing else goes in
SHARED: dict[str, tuple[str, float | None]] = {
    "roast": ("oven", 15.0), "bake": ("oven", 15.0), "smoke": ("smoker", 10.0), "pressure_cook": ("cooker", None),
    "slow_cook": ("crock", None), "sous_vide": ("bath", 1.0), "fry": ("fryer", 10.0),
}  # fmt: skip
# what does not hinder: the tail of one and the head of the other [min]
IN_PASSING_MIN = 10.0


@dataclass(frozen=True, slots=True)
class Use:
    """A dish on the heat, from so long before service to so long before it [min]."""

    food: Words
    request: Request
    method: str
    from_min: float
    to_min: float

    @property
    def thing(self) -> str | None:
        """What it needs for itself, or shares with what wants the same heat."""
        return SHARED.get(self.method, (None, None))[0]

    @property
    def heat(self) -> Setting:
        """The heat it wants: what the cook set, else the usual."""
        set_c = self.request.temperature_c
        usual = setting(self.request.dish, self.request.dish_class or "general", self.method)
        return usual if set_c is None else Setting(set_c, set_c, usual.way)


def clashes(uses: Iterable[Use], ovens: int) -> Iterator[Words]:
    """What is said of each two dishes that cannot have the same thing at the same time. ovens: how many there are"""
    found: Sequence[Use] = [use for use in uses if use.thing]
    for one, other in combinations(sorted(found, key=lambda use: -use.from_min), 2):
        overlap = min(one.from_min, other.from_min) - max(one.to_min, other.to_min)
        if one.thing != other.thing or overlap <= IN_PASSING_MIN or (one.thing == "oven" and ovens > 1):
            continue
        if share(one, other):
            continue
        if SHARED[one.method][1] is None:
            yield say("clash-alone", thing=one.thing, one=one.food, other=other.food, time=duration(overlap))
            continue
        yield say(
            "clash",
            thing=one.thing,
            one=one.food,
            other=other.food,
            heat=span(one.heat),
            heat_other=span(other.heat),
            time=duration(overlap),
            hot=temp(limit_c("hot_hold")),
        )


def share(one: Use, other: Use) -> bool:
    """Whether there is a heat that does for both."""
    within_k = SHARED[one.method][1]
    if within_k is None:
        return False
    a, b = one.heat, other.heat
    return max(a.low_c, b.low_c) - min(a.high_c, b.high_c) <= within_k


def span(heat: Setting) -> Measure:
    """A setting as it is said."""
    return oven(heat.low_c) if heat.low_c == heat.high_c else oven_span(heat.low_c, heat.high_c)
