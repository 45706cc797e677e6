"""Questions about the bake shop: batter, dough, hot fat and boiled sugar."""

from __future__ import annotations

from rules.baking import bands, foam, frying
from rules.baking.bands import Span
from rules.baking.batch import Batch
from rules.baking.leavening import gas_ratio
from rules.baking.rounding import kitchen
from rules.baking.yeast import proof_ratio
from rules.drill.draw import Draw, Place, kinds
from rules.drill.foods import foods
from rules.drill.question import Question
from rules.foods import sugar as sweets
from rules.physics.units import M_PER_FT, to_c
from rules.preserving.gel import RISE_K
from rules.recipe import Recipe
from rules.said import (
    Said,
    Value,
    Words,
    duration,
    duration_span,
    elevation,
    listed,
    measure,
    number,
    pressure,
    sentences,
    temp,
    temp_drop,
    temp_span,
)
from rules.said import oven as setting

say = sentences("drill/baking")
CAKE_TABLES = ("uwyo-altitude-adjusters", "usu-faq-204")
CANDY_TABLES = ("csu-candy-high-elevation", "usu-faq-453")
OVENS_F = (325, 350, 375)
WATERY_STAGES = ("thread", "soft_ball", "firm_ball", "hard_ball", "soft_crack", "hard_crack")
FROM_FT, HELD_FROM_FT = 3000, 7000
NO_SPOON = 0.01


def _cake_place(draw: Draw) -> Place:
    """Where the tables for cakes speak: from their first band to their last."""
    return draw.place(FROM_FT, HELD_FROM_FT)


def powder(draw: Draw) -> Question:
    """Baking powder of a layer cake."""
    place, sea_tsp = _cake_place(draw), draw.one_of((1.0, 1.5, 2.0, 3.0, 4.0))
    less = bands.change("leavening", place.elevation_m)
    left = less.map(lambda change: sea_tsp * (1 + change))
    shown = _spoons(left, "tsp")
    why = say("powder-why", swell=_swell(place), place=place.words, less=_percents(less), left=shown)
    return draw.figure(
        say("powder", powder=measure(sea_tsp, "tsp"), place=place.words), left.value, "tsp",
        within=(left.low - 1 / 16, left.high + 1 / 16), tolerance=say("powder-counts"), shown=shown, why=why,
        sources=bands.sources("leavening"),
    )  # fmt: skip


def _swell(place: Place) -> Value:
    """How many times its room at sea level a gas takes."""
    return number(gas_ratio(0, place.elevation_m))


def sugar(draw: Draw) -> Question:
    """Sugar of a layer cake."""
    place = _cake_place(draw)
    spoons = _tablespoons("sugar", place)
    shown = say("a-cup", spoons=_spoons(spoons, "tbsp"))
    why = say("sugar-why", spoons=shown, place=place.words)
    return _spoons_a_cup(draw, say("sugar", place=place.words), spoons, shown, why, "sugar")


def liquid(draw: Draw) -> Question:
    """Liquid of a layer cake."""
    place = _cake_place(draw)
    spoons = _tablespoons("liquid", place)
    shown = say("a-cup", spoons=_spoons(spoons, "tbsp"))
    why = say("liquid-why", spoons=shown, place=place.words)
    return _spoons_a_cup(draw, say("liquid", place=place.words), spoons, shown, why, "liquid")


def _tablespoons(component: str, place: Place) -> Span:
    """By how many tablespoons a cup of a component changes."""
    return bands.change(component, place.elevation_m).map(lambda change: 16 * abs(change))


def _spoons_a_cup(draw: Draw, text: Said, spoons: Span, shown: Said, why: Said, component: str) -> Question:
    return draw.figure(
        text, spoons.value, "tbsp", within=(max(0.0, spoons.low - 0.25), spoons.high + 0.25),
        tolerance=say("a-cup-counts"), shown=shown, why=why, sources=bands.sources(component),
    )  # fmt: skip


def _spoons(span: Span, unit: str) -> Value:
    """A range of spoons as a cook measures them."""
    low, high = (kitchen(end, unit) if end > NO_SPOON else 0.0 for end in (span.low, span.high))
    return measure(high, unit) if low == high else say("span", low=measure(low, ""), high=measure(high, unit))


def _percents(span: Span) -> Words:
    low, high = (number(100 * end, 1) for end in sorted((abs(span.low), abs(span.high))))
    return say("percent", percent=low) if low == high else say("percents", low=low, high=high)


def oven(draw: Draw) -> Question:
    """The oven of a cake."""
    place, sea_c = _cake_place(draw), to_c(draw.one_of(OVENS_F))
    hotter = bands.change("oven", place.elevation_m)
    span_c = (sea_c + hotter.low / 1.8, sea_c + hotter.high / 1.8)
    why = say(
        "oven-why", settings=temp_span(*span_c), low=number(hotter.low), high=number(hotter.high), swell=_swell(place)
    )
    text = say("oven", setting=setting(sea_c), place=place.words)
    sources = bands.sources("oven")
    return draw.temperature(text, sea_c + hotter.value / 1.8, why, sources, span_c=span_c, under_f=1.0, over_f=1.0)


def cake_time(draw: Draw) -> Question:
    """The time of a cake in that hotter oven."""
    place, sea_min = draw.place(5000, HELD_FROM_FT), draw.one_of((25.0, 30.0, 35.0, 40.0))
    time = bands.change("time", place.elevation_m).map(lambda change: sea_min * (1 + change))
    shown = duration_span(time.low, time.high)
    low, high = time.low - sea_min * 0.05, time.high + sea_min * 0.05
    return draw.figure(
        say("cake-time", minutes=number(sea_min), place=place.words), time.value, "min", within=(low, high),
        tolerance=say("anything-from", span=duration_span(low, high)), shown=shown,
        why=say("cake-time-why", time=shown, place=place.words), sources=bands.sources("time"),
    )  # fmt: skip


def first_change(draw: Draw) -> Question:
    """The order in which a cake is mended."""
    place = _cake_place(draw)
    less = _percents(bands.change("leavening", place.elevation_m))
    order = (say("less-powder"), say("less-sugar"), say("more-liquid"))
    why = say("first-change-why", order=listed(order, "then"), less=less, place=place.words)
    return draw.order(say("first-change", place=place.words), order, why, CAKE_TABLES)


def onset(draw: Draw) -> Question:
    """Where the tables for cakes begin."""
    from_m = FROM_FT * M_PER_FT
    shown = elevation(from_m)
    bound = 500 * M_PER_FT
    return draw.figure(
        say("onset", units=draw.units), from_m, "m", within=(from_m - bound, from_m + bound),
        tolerance=say("onset-counts"), shown=shown,
        why=say("onset-why", begin=shown, less=_percents(bands.change("leavening", from_m))), sources=CAKE_TABLES,
    )  # fmt: skip


def gas(draw: Draw) -> Question:
    """How far gas swells."""
    place = draw.place(3000, 11_000)
    ratio, case = gas_ratio(0, place.elevation_m), draw.case(place)
    shown = say("times", times=number(ratio))
    why = say(
        "gas-why", times=shown, here=pressure(case.here.pressure_pa), place=place.words,
        sea=pressure(case.sea.pressure_pa),
    )  # fmt: skip
    return draw.figure(
        say("gas", place=place.words), ratio, "factor", within=(ratio * 0.94, ratio * 1.06),
        tolerance=say("gas-counts"), shown=shown, why=why, sources=("us-std-atm-1976", "computed"),
    )  # fmt: skip


def proof(draw: Draw) -> Question:
    """How long a dough takes to double."""
    place, sea_min = draw.place(4000, 10_000), draw.one_of((60.0, 75.0, 90.0))
    ratio = proof_ratio(Batch.of(Recipe(), "yeast_bread", 0.0, place.elevation_m))
    low, likely = sea_min * ratio.low, sea_min * ratio.value
    span = (low * 0.9, likely)
    return draw.figure(
        say("proof", minutes=number(sea_min), place=place.words), low, "min", within=span,
        tolerance=say("anything-from", span=duration_span(*span)), shown=duration(low),
        why=say("proof-why", time=duration(low), swell=_swell(place), place=place.words),
        sources=("uwyo-altitude-adjusters", "us-std-atm-1976"),
    )  # fmt: skip


def yeast(draw: Draw) -> Question:
    """How much less yeast."""
    place = draw.place(5000, 9000)
    less = bands.change("yeast", place.elevation_m).map(lambda change: 100 * abs(change))
    shown = say("percents", low=number(less.low, 0), high=number(less.high, 0))
    return draw.figure(
        say("yeast", place=place.words), less.value, "percent", within=(less.low - 3, less.high + 3),
        tolerance=say("yeast-counts"), shown=shown, why=say("yeast-why", less=shown, place=place.words),
        sources=bands.sources("yeast"),
    )  # fmt: skip


def whites(draw: Draw) -> Question:
    """How far whites are beaten."""
    place = draw.place(3500, 10_000)
    why = say("whites-why", swell=_swell(place), place=place.words)
    wrong = (say("whites-stiff"), say("whites-dry"), say("whites-frothy"))
    return draw.choice(say("whites", place=place.words), say("whites-soft"), wrong, why, foam.stage.sources)


def fat(draw: Draw) -> Question:
    """The temperature of deep fat."""
    food = draw.one_of(foods("fried"))
    place, sea_c = draw.place(3000, 10_000), to_c(food.figures[0])
    down = frying.difference_k(0.0, place.elevation_m)
    span_c = (sea_c + down.low, sea_c + down.high)
    boil = temp(draw.case(place).here.boiling_c)
    why = say("fat-why", fat=temp_span(*span_c), place=place.words, boil=boil)
    text = say("fat", food=food.name, fat=temp(sea_c), place=place.words)
    return draw.temperature(text, sea_c + down.value, why, ("uwyo-altitude-adjusters",), span_c=span_c)


def candy(draw: Draw) -> Question:
    """Where a stage of boiled sugar stands."""
    place = draw.place(3000, 10_000)
    case = draw.case(place)
    stage = sweets.stages()[draw.one_of(WATERY_STAGES)]
    span_c = sweets.span_here(case, stage)
    drop = temp_drop(case.sea.boiling_c - case.here.boiling_c)
    why = say("candy-why", stage=stage.label, here=temp_span(*span_c), place=place.words, drop=drop)
    text = say("candy", stage=stage.label, sea=temp_span(stage.low_c, stage.high_c), place=place.words)
    return draw.temperature(text, sum(span_c) / 2, why, CANDY_TABLES, span_c=span_c)


def recipe_candy(draw: Draw) -> Question:
    """A recipe's temperature for sugar carried up."""
    place, recipe_c = draw.place(3000, 10_000), to_c(draw.one_of((236, 238, 240, 245, 250, 260, 285, 300)))
    case = draw.case(place)
    here_c = recipe_c - (case.sea.boiling_c - case.here.boiling_c)
    why = say("recipe-candy-why", drop=temp_drop(recipe_c - here_c), place=place.words, here=temp(here_c))
    return draw.temperature(say("recipe-candy", sea=temp(recipe_c), place=place.words), here_c, why, CANDY_TABLES)


def caramel(draw: Draw) -> Question:
    """Caramel, which stays."""
    place = draw.place(3000, 11_000)
    span_c = sweets.span_here(draw.case(place), sweets.stages()["caramel"])
    why = say("caramel-why", caramel=temp_span(*span_c), place=place.words)
    return draw.yes_no(say("caramel", place=place.words), False, why, ("common-practice",))


def jam(draw: Draw) -> Question:
    """Where jam sets."""
    place = draw.place(1000, 8000)
    case = draw.case(place)
    gel_c = case.here.boiling_c + RISE_K
    why = say(
        "jam-why", boil=temp(case.here.boiling_c), place=place.words, rise=temp_drop(RISE_K), gel=temp(gel_c),
        sea=temp(case.sea.boiling_c + RISE_K),
    )  # fmt: skip
    return draw.temperature(say("jam", place=place.words), gel_c, why, ("usda-aib-539",))


KINDS = kinds(
    (1, powder),
    (2, sugar),
    (2, liquid),
    (1, oven),
    (2, cake_time),
    (2, first_change),
    (1, onset),
    (3, gas),
    (2, proof),
    (3, yeast),
    (1, whites),
    (1, fat),
    (2, candy),
    (1, recipe_candy),
    (3, caramel),
    (2, jam),
)
