"""Questions about the bake shop: batter, dough, hot fat and boiled sugar."""

from __future__ import annotations

from rules.baking import bands, foam, frying
from rules.baking.bands import Span
from rules.baking.batch import Batch
from rules.baking.leavening import gas_ratio
from rules.baking.rounding import fraction, kitchen, measure
from rules.baking.yeast import proof_ratio
from rules.drill.draw import Draw, Place, kinds
from rules.drill.question import Question
from rules.foods import sugar as sweets
from rules.physics.units import M_PER_FT, to_c
from rules.preserving.gel import RISE_K
from rules.recipe import Recipe
from rules.say import duration, duration_span, number

CAKE_TABLES = ("uwyo-altitude-adjusters", "usu-faq-204")
OVENS_F = (325, 350, 375)
FATS_F = {"doughnuts": 370, "fritters": 365, "beignets": 370}
WATERY_STAGES = ("thread", "soft_ball", "firm_ball", "hard_ball", "soft_crack", "hard_crack")
FROM_FT, HELD_FROM_FT = 3000, 7000


def _cake_place(draw: Draw) -> Place:
    """Where the tables for cakes speak: from their first band to their last."""
    return draw.place(FROM_FT, HELD_FROM_FT)


def powder(draw: Draw) -> Question:
    """Baking powder of a layer cake."""
    place, sea_tsp = _cake_place(draw), draw.one_of((1.0, 1.5, 2.0, 3.0, 4.0))
    less = bands.change("leavening", place.elevation_m)
    left = less.map(lambda change: sea_tsp * (1 + change))
    shown = _spoons(left, "tsp")
    why = (
        f"The gas of the powder takes {number(gas_ratio(0, place.elevation_m))} times the room {place.words}. The "
        f"tables take {_percents(less)} off, which leaves {shown}."
    )
    return draw.figure(
        f"A layer cake from sea level has {measure(sea_tsp, 'tsp')} of baking powder. How much {place.words}? Answer "
        "in teaspoons.",
        left.value, "tsp", within=(left.low - 1 / 16, left.high + 1 / 16),
        tolerance="the range of the tables, to 1/16 tsp", shown=shown, why=why, sources=bands.sources("leavening"),
    )  # fmt: skip


def sugar(draw: Draw) -> Question:
    """Sugar of a layer cake."""
    return _tablespoons_a_cup(
        draw, "sugar", "How many tablespoons of sugar come off each cup of a layer cake's",
        "Water leaves the batter faster and what stays is sweeter, which keeps the crumb from setting",
    )  # fmt: skip


def liquid(draw: Draw) -> Question:
    """Liquid of a layer cake."""
    return _tablespoons_a_cup(
        draw, "liquid", "How many tablespoons of liquid are added to each cup of a layer cake's",
        "Thin, dry air takes water out of the batter and out of stored flour",
    )  # fmt: skip


def _tablespoons_a_cup(draw: Draw, component: str, text: str, reason: str) -> Question:
    place = _cake_place(draw)
    spoons = bands.change(component, place.elevation_m).map(lambda change: 16 * abs(change))
    shown = f"{_spoons(spoons, 'tbsp')} a cup"
    return draw.figure(
        f"{text} {place.words}? Answer in tablespoons.", spoons.value, "tbsp",
        within=(max(0.0, spoons.low - 0.25), spoons.high + 0.25), tolerance="the range of the tables, to 1/4 tbsp",
        shown=shown, why=f"{reason}: the tables give {shown} {place.words}.", sources=bands.sources(component),
    )  # fmt: skip


def _spoons(span: Span, unit: str) -> str:
    """A range of spoons as a cook measures them."""
    low, high = (kitchen(end, unit) if end > 0.01 else 0.0 for end in (span.low, span.high))
    return measure(high, unit) if low == high else f"{fraction(low)} to {measure(high, unit)}"


def _percents(span: Span) -> str:
    low, high = (number(100 * end, 1) for end in sorted((abs(span.low), abs(span.high))))
    return f"{low} %" if low == high else f"{low} to {high} %"


def oven(draw: Draw) -> Question:
    """The oven of a cake."""
    place, sea_c = _cake_place(draw), to_c(draw.one_of(OVENS_F))
    hotter = bands.change("oven", place.elevation_m)
    span_c = (sea_c + hotter.low / 1.8, sea_c + hotter.high / 1.8)
    why = (
        f"Set it to {draw.say.temp_span(*span_c)}, {number(hotter.low)} to {number(hotter.high)} °F hotter, so that "
        f"the crumb sets before its gas has swelled to {number(gas_ratio(0, place.elevation_m))} times its room. It "
        "is done sooner, too."
    )
    text = f"A layer cake bakes at {draw.say.oven(sea_c)} at sea level. How hot is the oven set for it {place.words}?"
    sources = bands.sources("oven")
    return draw.temperature(text, sea_c + hotter.value / 1.8, why, sources, span_c=span_c, under_f=1.0, over_f=1.0)


def cake_time(draw: Draw) -> Question:
    """The time of a cake in that hotter oven."""
    place, sea_min = draw.place(5000, HELD_FROM_FT), draw.one_of((25.0, 30.0, 35.0, 40.0))
    time = bands.change("time", place.elevation_m).map(lambda change: sea_min * (1 + change))
    shown = duration_span(time.low, time.high)
    low, high = time.low - sea_min * 0.05, time.high + sea_min * 0.05
    return draw.figure(
        f"A cake takes {number(sea_min)} min at sea level. About how long in the oven that is set hotter for it "
        f"{place.words}? Answer in minutes.",
        time.value, "min", within=(low, high), tolerance=f"anything from {duration_span(low, high)}", shown=shown,
        why=f"In the hotter oven it is done sooner, after {shown} {place.words}. Look in at the early end.",
        sources=bands.sources("time"),
    )  # fmt: skip


def first_change(draw: Draw) -> Question:
    """The order in which a cake is mended."""
    place = _cake_place(draw)
    less = bands.change("leavening", place.elevation_m)
    names = ("less baking powder", "less sugar", "more liquid")
    why = (
        f"{', then '.join(names).capitalize()}: the tables name them in that order, and want one change at a time. The "
        f"powder comes first, since it does most: {_percents(less)} less of it {place.words}."
    )
    text = (
        f"A sea-level cake falls {place.words}. In which order do you try the changes of the tables, one bake at a "
        "time?"
    )
    return draw.order(text, names, why, CAKE_TABLES)


def onset(draw: Draw) -> Question:
    """Where the tables for cakes begin."""
    from_m = FROM_FT * M_PER_FT
    less = bands.change("leavening", from_m)
    shown = draw.say.elevation(from_m)
    bound = 500 * M_PER_FT
    return draw.figure(
        "From about which elevation do the tables change a cake at all? Answer in "
        f"{'feet' if draw.units == 'us' else 'metres'}.",
        from_m, "m", within=(from_m - bound, from_m + bound), tolerance="within 500 ft (150 m)", shown=shown,
        why=f"Their first band is {shown}, with {_percents(less)} less powder. Under it cakes come out as written.",
        sources=CAKE_TABLES,
    )  # fmt: skip


def gas(draw: Draw) -> Question:
    """How far gas swells."""
    place = draw.place(3000, 11_000)
    ratio = gas_ratio(0, place.elevation_m)
    pressures = (draw.case(place).sea.pressure_pa, draw.case(place).here.pressure_pa)
    sea, here = (draw.say.pressure(pressure) for pressure in pressures)
    shown = f"{number(ratio)} times"
    return draw.figure(
        f"How many times the room of sea level does the same gas in a dough take {place.words}?",
        ratio, "factor", within=(ratio * 0.94, ratio * 1.06), tolerance="within 6 %", shown=shown,
        why=f"{shown} the room: gas swells as the air presses less, {here} {place.words} against {sea} at sea level. "
        "Every batter and dough has to live with that.",
        sources=("us-std-atm-1976", "computed"),
    )  # fmt: skip


def proof(draw: Draw) -> Question:
    """How long a dough takes to double."""
    place, sea_min = draw.place(4000, 10_000), draw.one_of((60.0, 75.0, 90.0))
    ratio = proof_ratio(Batch.of(Recipe(), "yeast_bread", 0.0, place.elevation_m))
    low, likely = sea_min * ratio.low, sea_min * ratio.value
    shown = duration(low)
    span = (low * 0.9, likely)
    return draw.figure(
        f"A dough doubles in {number(sea_min)} min at sea level. With no less yeast and just as warm, about how long "
        f"does it take {place.words}? Answer in minutes.",
        low, "min", within=span, tolerance=f"anything from {duration_span(*span)}", shown=shown,
        why=f"About {shown}: yeast works at its old pace, but its gas takes "
        f"{number(gas_ratio(0, place.elevation_m))} times the room {place.words}. Stop when it has doubled, whatever "
        "the clock says.",
        sources=("uwyo-altitude-adjusters", "us-std-atm-1976"),
    )  # fmt: skip


def yeast(draw: Draw) -> Question:
    """How much less yeast."""
    place = draw.place(5000, 9000)
    less = bands.change("yeast", place.elevation_m).map(lambda change: 100 * abs(change))
    shown = f"{number(less.low, 0)} to {number(less.high, 0)} %"
    return draw.figure(
        f"By how many per cent do bakers cut the yeast of a bread {place.words}?",
        less.value, "percent", within=(less.low - 3, less.high + 3), tolerance="the bakers' range, and 3 % beside it",
        shown=shown,
        why=f"About {shown} less {place.words}, so that a dough which swells faster still has time to gather flavour "
        "and strength.",
        sources=bands.sources("yeast"),
    )  # fmt: skip


def whites(draw: Draw) -> Question:
    """How far whites are beaten."""
    place = draw.place(3500, 10_000)
    why = (
        f"The air beaten in swells {number(gas_ratio(0, place.elevation_m))} times as far {place.words} as at sea "
        "level. Soft peaks can stretch; a stiff foam has no stretch left and bursts."
    )
    text = f"A sponge from sea level calls for whites beaten to stiff peaks. How far do you beat them {place.words}?"
    wrong = ("until stiff, as written", "past stiff, until dry", "only until frothy")
    return draw.choice(text, "to soft peaks that just fold over", wrong, why, foam.stage.sources)


def fat(draw: Draw) -> Question:
    """The temperature of deep fat."""
    food = draw.one_of(tuple(FATS_F))
    place, sea_c = draw.place(3000, 10_000), to_c(FATS_F[food])
    down = frying.difference_k(0.0, place.elevation_m)
    span_c = (sea_c + down.low, sea_c + down.high)
    why = (
        f"Turn it down about 3 °F (1.7 °C) for each 1,000 ft (305 m): {draw.say.temp_span(*span_c)} {place.words}. "
        f"The water in the dough boils at {draw.say.temp(draw.case(place).here.boiling_c)}, so in hotter fat the crust "
        "is dark before the middle is done. Fry a little longer."
    )
    text = f"At sea level {food} are fried in fat at {draw.say.temp(sea_c)}. How hot is the fat {place.words}?"
    sources = ("uwyo-altitude-adjusters",)
    return draw.temperature(text, sea_c + down.value, why, sources, span_c=span_c)


def candy(draw: Draw) -> Question:
    """Where a stage of boiled sugar stands."""
    place = draw.place(3000, 10_000)
    case = draw.case(place)
    stage = sweets.stages()[draw.one_of(WATERY_STAGES)]
    span_c = sweets.span_here(case, stage)
    drop = draw.say.temp_drop(case.sea.boiling_c - case.here.boiling_c)
    why = (
        f"{stage.label.capitalize()} stands at {draw.say.temp_span(*span_c)} {place.words}: as far under sea level's "
        f"as the boil, {drop}. Cooked to the sea-level reading it holds too little water and sets too hard."
    )
    text = (
        f"At sea level {stage.label} is {draw.say.temp_span(stage.low_c, stage.high_c)}. Where does it stand "
        f"{place.words}?"
    )
    middle_c = sum(span_c) / 2
    return draw.temperature(text, middle_c, why, ("csu-candy-high-elevation", "usu-faq-453"), span_c=span_c)


def recipe_candy(draw: Draw) -> Question:
    """A recipe's temperature for sugar carried up."""
    place, recipe_c = draw.place(3000, 10_000), to_c(draw.one_of((236, 238, 240, 245, 250, 260, 285, 300)))
    case = draw.case(place)
    here_c = recipe_c - (case.sea.boiling_c - case.here.boiling_c)
    why = (
        f"The boil is {draw.say.temp_drop(recipe_c - here_c)} lower {place.words}, and so is the sugar with the same "
        f"water in it: {draw.say.temp(here_c)}. Boil plain water first and trust what the thermometer reads there."
    )
    text = (
        f"A recipe written at sea level boils sugar to {draw.say.temp(recipe_c)}. To what temperature do you boil it "
        f"{place.words}?"
    )
    return draw.temperature(text, here_c, why, ("csu-candy-high-elevation", "usu-faq-453"))


def caramel(draw: Draw) -> Question:
    """Caramel, which stays."""
    place = draw.place(3000, 11_000)
    stage = sweets.stages()["caramel"]
    why = (
        f"No. By then the water is gone, and sugar melts and browns at its own "
        f"{draw.say.temp_span(*sweets.span_here(draw.case(place), stage))} {place.words} as anywhere. Go by the colour."
    )
    text = f"Soft ball stands lower {place.words} than at sea level. Does dry caramel, cooked to amber?"
    return draw.yes_no(text, False, why, ("common-practice",))


def jam(draw: Draw) -> Question:
    """Where jam sets."""
    place = draw.place(1000, 8000)
    here = draw.case(place).here
    gel_c = here.boiling_c + RISE_K
    why = (
        f"Water boils at {draw.say.temp(here.boiling_c)} {place.words}, and a syrup that sets boils "
        f"{draw.say.temp_drop(RISE_K)} over it: {draw.say.temp(gel_c)}. At sea level that is "
        f"{draw.say.temp(draw.case(place).sea.boiling_c + RISE_K)}."
    )
    text = f"At which temperature does jam without added pectin reach its gel point {place.words}?"
    return draw.temperature(text, gel_c, why, ("usda-aib-539",))


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
