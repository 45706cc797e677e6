"""Liquid: what thin, dry air takes out of a batter, and out of stored flour, has to be put in."""

from __future__ import annotations

from collections.abc import Iterator

from rules.baking import components
from rules.baking.bands import AS_IS, Span
from rules.baking.batch import Batch, changed, percent_apart, scale_lines
from rules.baking.change import Change
from rules.baking.formula import liquid_lines, water_g
from rules.baking.parts import Placed
from rules.baking.rounding import kitchen
from rules.baking.styles import is_a
from rules.book import Part, rule
from rules.physics import evaporation
from rules.physics.units import ML_PER_TBSP, ML_PER_TSP
from rules.said import Words, number, sentences, together

LEAST_ML = ML_PER_TBSP / 2
# Whites are thinned by nothing: a foam that gets water falls.
FOAM = "foam_cake"
# What is left to a liquid beside larger eggs, as a share of what the table gives it.
LEAST_LEFT = 0.4
# The flour from which a pie's liquid is its crust's: a spoon of it thickens a filling, and a bought crust has none [g].
CRUST_G = 60.0
say = sentences("baking/liquid")


@rule("baking.liquid", "uwyo-altitude-adjusters", "usu-faq-204", "csu-high-altitude-food-prep", "common-practice")
def scaled(batch: Batch) -> Part | None:
    """Every liquid of the batter times the style's ratio; where none is poured, a spoon of water for the eggs.

    What stands in a pot is not a batter: `wet.liquid` sees to it.
    """
    return changed(_changes(batch))


def _changes(batch: Batch) -> Iterator[Change]:
    lines = liquid_lines(batch.lines)
    if is_a(batch.style, "pot") or (is_a(batch.style, "crust") and not batch.parts("flour", least_g=CRUST_G)):
        return
    if lines:
        ratio = shared(batch, lines)
        yield from scale_lines(batch, lines, "liquid", "liquid", why(batch, ratio), ratio=ratio)
    else:
        yield from added(batch)


def shared(batch: Batch, lines: tuple[Placed, ...]) -> Span:
    """What each liquid of a batter is multiplied by: several share more than the largest would be given.

    What larger eggs bring is taken off, as far as a share of it. A dough takes the table's.
    source: common-practice
    """
    ratio, all_g = batch.ratio("liquid"), sum(p.mass_g for p in lines)
    if not is_a(batch.style, "batter") or not all_g:
        return ratio
    # between what each would be given alone and what the largest would be given for all of them
    shared_g = (max(p.mass_g for p in lines) * all_g) ** 0.5
    eggs_g = water_g(batch.parts("egg"))
    part = components.share(batch.style, "egg")
    enlarged = batch.ratio("egg") if part and part.value else AS_IS

    def each(liquid: float, egg: float) -> float:
        """A ratio upwards; downwards it is the same way back."""
        if liquid < 1:
            return 1 / each(1 / liquid, 1 / egg)
        whole_g = (liquid - 1) * shared_g
        return 1 + max(whole_g * LEAST_LEFT, whole_g - max(0.0, egg - 1) * eggs_g) / all_g

    return ratio.against(enlarged, each)


def why(batch: Batch, ratio: Span | None = None) -> Words:
    """The reason, with how much it comes to and how fast thin air dries.

    ratio: what the liquids are multiplied by, where that is not the table's figure
    """
    percent = percent_apart((ratio or batch.ratio("liquid")).value)
    if not batch.up:
        return say("less", place=batch.place, percent=percent)
    drying = number(evaporation.drying_ratio(batch.to_m) / evaporation.drying_ratio(batch.from_m))
    if is_a(batch.style, "yeasted"):
        return say("dough", drying=drying)
    if is_a(batch.style, "griddled"):
        return say("griddle", drying=drying, place=batch.place, baseline=batch.baseline)
    return say("more", drying=drying, place=batch.place, baseline=batch.baseline, percent=percent)


def added(batch: Batch) -> Iterator[Change]:
    """A batter without a poured liquid: the share of the water in its eggs and fat, where that makes a spoon.

    What larger eggs bring is taken off.
    """
    part = components.share(batch.style, "liquid")
    ratio = batch.ratio("liquid")
    extra = ratio.map(lambda r: (r - 1) * water_g(batch.parts("egg", "white", "yolk", "fat")))
    eggs = batch.ratio("egg")
    in_eggs = eggs.map(lambda r: (r - 1) * water_g(batch.parts("egg")))
    extra = extra.against(in_eggs, lambda whole_ml, egg_ml: whole_ml - egg_ml)
    if part is None or not part.value or not batch.up or extra.value < LEAST_ML or batch.style == FOAM:
        return
    unit = "tbsp" if batch.units == "us" else "ml"
    size = ML_PER_TBSP if unit == "tbsp" else 1.0
    value, low, high = (
        kitchen(ml / size, unit) if ml >= ML_PER_TSP else 0.0 for ml in (extra.value, extra.low, extra.high)
    )
    yield Change(
        what="liquid", way="more", at="recipe", item="water", from_value=0.0, from_unit=unit,
        to_value=value, to_low=low, to_high=high, to_unit=unit,
        sources=components.sources(batch.style, "liquid"),
        because=together(why(batch), say("none-poured", eggs="larger" if eggs.value > 1 else "same")),
    )  # fmt: skip
