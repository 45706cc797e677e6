"""Baking powder and soda: the gas they give swells more where the air presses less."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from rules.baking import bands, components
from rules.baking.bands import Span
from rules.baking.batch import Batch, changed, kept, percent_apart, rescaled
from rules.baking.change import Change, ingredient
from rules.baking.formula import CUP_FLOUR_G
from rules.baking.parts import Placed
from rules.baking.rounding import in_unit, kitchen
from rules.baking.styles import UNKNOWN_BAKE, is_a
from rules.book import Part, rule
from rules.physics import air, water
from rules.said import Words, measure, number, sentences, together

say = sentences("baking/leavening")
# A spoon or two of flour thickens a stew; from here on it makes dumplings [g].
DUMPLINGS_G = 60.0
SODA_TSP_PER_CUP_SOUR_MILK = 0.5
SOUR_MILK_G_PER_CUP = 245.0
SODA_G_PER_TSP = 4.6
SETTING_C = 60.0
NMSU = "nmsu-circular-293"


def gas_ratio(from_m: float, to_m: float, batter_c: float | None = None) -> float:
    """How many times larger the same gas is here than there, at the same temperature.

    V is in proportion to n T / p. In a warm batter water vapour joins the gas and takes its own share of the
    pressure, so the rest has less to push against: V is then in proportion to 1 / (p - p_water).

    from_m, to_m: elevation there and here [m]
    batter_c: temperature of the batter [degC], 0 to 90; None for dry gas
    returns: ratio [-]
    source: computed

    >>> round(gas_ratio(0, 2133.6), 2), round(gas_ratio(0, 2133.6, 60), 2)
    (1.3, 1.4)
    """
    vapour_pa = 0.0 if batter_c is None else water.saturation_pressure_pa(batter_c)
    return (air.pressure_pa(from_m) - vapour_pa) / (air.pressure_pa(to_m) - vapour_pa)


@rule(
    "baking.leavening", "uwyo-altitude-adjusters", "usu-faq-204", "csu-cakes-2002", "csu-high-altitude-food-prep",
    "nmsu-circular-293", "common-practice", "computed",
)  # fmt: skip
def scaled(batch: Batch) -> Part | None:
    """Powder and soda times the style's ratio; soda keeps what its sour milk needs."""
    return changed(_changes(batch))


@rule("baking.leavening_beside", "uwyo-altitude-adjusters", "common-practice")
def beside(batch: Batch) -> Part | None:
    """Powder and soda of what is cooked on a stew or under a bake: dumplings, a scone top."""
    flour_g = sum(line.mass_g for line in batch.parts("flour"))
    dish = is_a(batch.style, "pot") or is_a(batch.style, "dry")
    return changed(_changes(replace(batch, style=UNKNOWN_BAKE))) if dish and flour_g >= DUMPLINGS_G else None


def _changes(batch: Batch) -> Iterator[Change]:
    part = components.share(batch.style, "leavening")
    if part is None or not batch.expects("leavening"):
        return
    ratio, sources = batch.ratio("leavening"), components.sources(batch.style, "leavening")
    beside = other_rule(batch)
    because, cited = together(why(batch, ratio), beside), (*sources, NMSU) if beside else sources
    for line in batch.parts("powder", "soda"):
        span = soda_ratio(batch, line, ratio) if line.part.name == "soda" else ratio
        if line.part.name == "soda" and abs(span.value - 1) < 1e-9:
            reason = say("soda-for-sour-milk")
            floor = (*sources, "csu-high-altitude-food-prep", "from-memory")
            yield kept("leavening", ingredient(line.index), reason, floor, item=line.line.item)
            continue
        change = rescaled(line, span, "leavening", because=because, sources=cited, fine=True)
        if change:
            yield change
    yield from self_rising(batch, ratio, sources)


def why(batch: Batch, ratio: Span) -> Words:
    """The table's figure and the gas law's, in a sentence."""
    swell = gas_ratio(batch.from_m, batch.to_m)
    wet = gas_ratio(batch.from_m, batch.to_m, SETTING_C)
    low, high = sorted(round(abs(1 / x - 1) * 100) for x in (swell, wet))
    return say(
        "why",
        way=batch.way,
        swell=number(swell),
        place=batch.place,
        baseline=batch.baseline,
        percent=percent_apart(ratio.value),
        change="less" if ratio.value < 1 else "more",
        law_low=number(low, 0),
        law_high=number(high, 0),
    )


def other_rule(batch: Batch) -> Words:
    """What the other published rule comes to for a shortening cake with powder; "" where it has nothing to say.

    source: nmsu-circular-293
    """
    cups = sum(p.mass_g for p in batch.parts("flour")) / CUP_FLOUR_G
    if batch.style != "layer_cake" or not cups or not batch.parts("powder") or batch.parts("soda"):
        return ""
    here, there = (nmsu_tsp(cups, m) for m in (batch.to_m, batch.from_m))
    low, high = sorted(kitchen(abs(a - b), "tsp") for a, b in ((here.low, there.low), (here.high, there.high)))
    return say("other-rule", way=batch.way, amount=measure(low, "tsp", high)) if low else ""


def soda_ratio(batch: Batch, line: Placed, ratio: Span) -> Span:
    """The ratio for a line of soda. The 1/2 tsp that each cup of sour milk needs stays; only what is above it scales.

    source: csu-high-altitude-food-prep (never below 1/2 tsp a cup of sour milk)
    """
    soda_tsp = soda_in_tsp(line)
    cups = sum(p.mass_g for p in batch.lines if p.part.name == "sour_liquid") / SOUR_MILK_G_PER_CUP
    tied = min(soda_tsp, SODA_TSP_PER_CUP_SOUR_MILK * cups)
    if not soda_tsp or not tied:
        return ratio
    free = soda_tsp - tied
    value = (tied + free * ratio.value) / soda_tsp
    ends = [max(tied, soda_tsp * end) / soda_tsp for end in (ratio.low, ratio.high)] if free else [1.0, 1.0]
    return Span(value, min(*ends, value), max(*ends, value))


def soda_in_tsp(line: Placed) -> float:
    """Teaspoons of soda in a line, by its measure or its mass; 0 where neither is known."""
    if line.line.amount is not None and (tsp := in_unit(line.line.amount, line.line.unit, "tsp")) is not None:
        return tsp
    return line.mass_g / SODA_G_PER_TSP


def self_rising(batch: Batch, ratio: Span, sources: tuple[str, ...]) -> Iterator[Change]:
    """Self-rising flour has its powder inside: on the way up part of it gives way to plain flour."""
    for line in (flour for flour in batch.parts("flour") if flour.self_rising):
        because = say("self-rising")
        change = rescaled(line, ratio, "leavening", because=because, sources=sources)
        if change and change.way == "less":
            ends = (c or 0.0 for c in (change.to_value, change.to_high, change.to_low))
            value, low, high = ((change.from_value or 0.0) - end for end in ends)
            yield change
            yield replace(
                change, what="flour", way="more", at="recipe", item="all-purpose flour", from_value=0.0,
                to_value=value, to_low=low, to_high=high,
            )  # fmt: skip


def nmsu_tsp(cups_flour: float, elevation_m: float) -> Span:
    """The other published rule for shortening cakes: teaspoons of powder taken off for the flour there is.

    source: nmsu-circular-293

    >>> nmsu_tsp(2, 5000 * 0.3048).low, nmsu_tsp(2, 5000 * 0.3048).high
    (-1.0, -0.5)
    """
    return bands.change("powder_per_flour", elevation_m).map(lambda x: x * cups_flour)
