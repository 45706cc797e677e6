"""Eggs: protein to set the crumb and water to keep it moist, by the size of the egg."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import cache

from rules.baking import components
from rules.baking.batch import Batch, changed, kept, percent_apart, rescaled
from rules.baking.change import Change, ingredient
from rules.baking.parts import Placed, pantry
from rules.book import Part, rule
from rules.said import Words, sentences

EGGS = ("egg", "medium egg", "extra large egg", "jumbo egg")
EXTRA_YOLK_G, EXTRA_WHITE_G = 17.0, 33.0
# What stands beside whole eggs ("plus 2 yolks") weighs in the line, but not in the egg.
ODD = re.compile(r"\b(?:yolk|white)s?\b", re.I)
say = sentences("baking/eggs")


@cache
def sizes() -> dict[str, float]:
    """Mass of an egg without its shell by size [g], as the lexicon has it; plain `egg` is large.

    source: usda-sr28

    >>> sizes()["extra-large"]
    56.0
    """
    eggs = {name.removesuffix("egg").strip(): row["each_g"] for name, row in pantry().items() if name in EGGS}
    return {(size or "large").replace(" ", "-"): float(grams) for size, grams in eggs.items()}


def nearest(mass_g: float, count: int) -> tuple[int, str, float]:
    """The eggs nearest to a mass: so many of a size, or large ones with a yolk or a white more.

    mass_g: mass wanted, without shells [g]; count: how many the recipe has
    returns: count, size in words, their mass [g]; a larger size wins over an odd yolk where it comes as near
    source: usda-sr28

    >>> nearest(168, 3), nearest(150, 3), nearest(215, 4)
    ((3, 'extra-large', 168.0), (3, 'large', 150.0), (4, 'large plus 1 yolk', 217.0))
    """
    sized = [(count, size, count * grams) for size, grams in sizes().items()]
    odd = [
        (count, "large plus 1 yolk", count * sizes()["large"] + EXTRA_YOLK_G),
        (count, "large plus 1 white", count * sizes()["large"] + EXTRA_WHITE_G),
        (count + 1, "large", (count + 1) * sizes()["large"]),
    ]
    best = min(sized, key=lambda eggs: abs(eggs[2] - mass_g))
    second = min(odd, key=lambda eggs: abs(eggs[2] - mass_g))
    return second if abs(best[2] - mass_g) > abs(second[2] - mass_g) + 3.0 else best


def mass_g(count: int, size: str) -> float:
    """Mass of so many eggs of a size, in the words of `nearest` [g].

    >>> mass_g(4, "large plus 1 yolk")
    217.0
    """
    name, _, extra = size.partition(" plus 1 ")
    return count * sizes()[name] + {"": 0.0, "yolk": EXTRA_YOLK_G, "white": EXTRA_WHITE_G}[extra]


def size_of(line: Placed) -> str:
    """The size of the eggs of a line, by their mass; large where it is not known.

    source: usda-sr28
    """
    beside = ODD.search(line.line.line) is not None
    if not line.line.amount or not line.line.mass_g or beside:
        return "large"
    each = line.line.mass_g / line.line.amount
    return min(sizes(), key=lambda size: abs(sizes()[size] - each))


@rule("baking.egg", "csu-high-altitude-food-prep", "usda-sr28", "common-practice")
def resized(batch: Batch) -> Part | None:
    """Whole eggs a size larger where the style wants it."""
    return changed(_changes(batch))


def _changes(batch: Batch) -> Iterator[Change]:
    part = components.share(batch.style, "egg")
    eggs = batch.parts("egg")
    if part is None or not eggs or not batch.expects("egg"):
        return
    sources = components.sources(batch.style, "egg")
    if not part.value:
        yield kept("egg", ingredient(eggs[0].index), batch.stays(part), sources, item=eggs[0].line.item)
        return
    ratio = batch.ratio("egg")
    because = why(batch, ratio.value)
    for line in eggs:
        counted = line.line.unit in (None, "piece") and line.line.amount and float(line.line.amount).is_integer()
        change = counted_eggs(line, ratio.value, because, sources) if counted else rescaled(
            line, ratio, "egg", because=because, sources=sources
        )  # fmt: skip
        if change:
            yield change


def why(batch: Batch, ratio: float) -> Words:
    """The reason."""
    if not batch.up:
        return say("lighter", place=batch.place, percent=percent_apart(ratio))
    return say("larger", percent=percent_apart(ratio))


def counted_eggs(line: Placed, ratio: float, because: Words, sources: tuple[str, ...]) -> Change:
    """Eggs by number: the same number of another size, where that is nearer than the size there is.

    Nobody shops for eggs smaller than large, so on the way down those stay.
    """
    count, size = int(line.line.amount or 0), size_of(line)
    smaller = ratio < 1 and sizes()[size] <= sizes()["large"]
    to_count, to_size = (count, size) if smaller else nearest(count * sizes()[size] * ratio, count)[:2]
    same = (to_count, to_size) == (count, size)
    more = ratio > 1
    return Change(
        what="egg", way="same" if same else "more" if more else "less", at=ingredient(line.index), item=line.line.item,
        from_value=float(count), from_unit=size, to_value=float(to_count), to_low=float(count),
        to_high=float(max(count, to_count)),
        to_unit=to_size, sources=sources, because=say("no-size-between") if same and not smaller else because,
    )  # fmt: skip
