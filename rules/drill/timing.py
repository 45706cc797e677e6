"""Questions about time: what a cooler boil does to it, dish by dish, and what leaves it alone."""

from __future__ import annotations

from dataclasses import replace

from rules.drill.draw import BAKERY, BAKERY_M, LODGE, LODGE_M, Draw, Place, kinds
from rules.drill.question import Question
from rules.engine import answer
from rules.errors import RulesError
from rules.foods import eggs
from rules.heat.pressure import published_percent
from rules.methods import braise
from rules.model import Answer, Figure, Request
from rules.physics import kinetics, water
from rules.physics.units import round_time_min, round_to
from rules.say import duration, duration_span, number

# dish, class, method, box or recipe times that suit it [min]
IN_WATER = (
    ("potatoes", "starchy_root", "boil", (20.0, 25.0)),
    ("white rice", "rice", "boil", (15.0, 18.0)),
    ("carrots", "root_vegetable", "boil", (10.0, 12.0)),
    ("polenta", "porridge", "boil", (30.0, 40.0)),
    ("mashed potatoes", "starchy_root", "boil", (15.0, 20.0)),
)
GUIDE_M, ROAST_C = 1524.0, 162.8
TOUGH = ("short ribs", "pot roast", "lamb shanks", "oxtail")
BOILED_DRY_BEANS = ("pinto beans", "black beans", "navy beans", "chickpeas")


def pasta(draw: Draw) -> Question:
    """The time on the box of pasta."""
    place, box_min = draw.place(4000, 10_000), draw.one_of((8.0, 9.0, 10.0, 11.0, 12.0))
    asked = Request(topic="time", dish="spaghetti", dish_class="pasta", method="boil", time_min=box_min)
    text = f"The box of spaghetti says {duration(box_min)}, at sea level. About how long does it take {place.words}?"
    return _longer(draw, place, asked, text)


def in_water(draw: Draw) -> Question:
    """A time of what is boiled in water."""
    dish, dish_class, method, times = draw.one_of(IN_WATER)
    place, base_min = draw.place(4000, 9000), draw.one_of(times)
    asked = Request(topic="time", dish=dish, dish_class=dish_class, method=method, time_min=base_min)
    text = f"In water at the boil {dish} take {duration(base_min)} at sea level. About how long {place.words}?"
    return _longer(draw, place, asked, text.replace("rice take", "rice takes").replace("polenta take", "polenta takes"))


def braised(draw: Draw) -> Question:
    """A braise carried up from sea level."""
    dish = draw.one_of(TOUGH)
    place, base_min = draw.place(4000, 9000), draw.one_of((150.0, 180.0, 210.0))
    asked = Request(topic="time", dish=dish, dish_class="collagen_cut", method="braise", time_min=base_min)
    text = f"A braise of {dish} takes {duration(base_min)} at sea level. About how long {place.words}?"
    return _longer(draw, place, asked, text)


def bakery_to_lodge(draw: Draw) -> Question:
    """A braise carried from the bakery to the lodge."""
    dish, base_min = draw.one_of(TOUGH), draw.one_of((150.0, 165.0, 180.0, 210.0, 240.0))
    place = Place(LODGE_M, f"at {LODGE}, {draw.say.elevation(LODGE_M)}")
    asked = Request(
        topic="time", dish=dish, dish_class="collagen_cut", method="braise", time_min=base_min,
        from_elevation_m=BAKERY_M,
    )  # fmt: skip
    text = (
        f"In the oven of {BAKERY}, {draw.say.elevation(BAKERY_M)}, a braise of {dish} takes {duration(base_min)}. "
        f"About how long {place.words}?"
    )
    return _longer(draw, place, asked, text)


def _longer(draw: Draw, place: Place, asked: Request, text: str) -> Question:
    """A question for a time in wet heat; the whole range of the rules counts, and a tenth beside the likely time."""
    worked = _worked(asked, place, draw)
    time = _figure(worked, "cook_time")
    low, high = time.low or time.value, time.high or time.value
    span = (min(low, round_to(time.value * 0.9, 0.1)), max(high, round_to(time.value * 1.1, 0.1)))
    told = next(b for b in worked.because if b.rule == f"{asked.method}.time")
    shown = f"about {duration(time.value)}, {duration_span(low, high)}"
    return draw.figure(
        f"{text} Answer in hours or minutes.", time.value, "min", within=span,
        tolerance=f"anything from {duration_span(*span)}", shown=shown,
        why=f"It takes {shown}. Water boils at {draw.say.temp(_boil_c(worked))} {place.words}. "
        f"{told.text.partition(' The range')[0]}",
        sources=(*told.sources, "iapws-r7-97"),
    )  # fmt: skip


def _worked(asked: Request, place: Place, draw: Draw) -> Answer:
    """The answer of the engine to a request at a place."""
    return answer(replace(asked, elevation_m=place.elevation_m, elevation_from="stated", units=draw.units))


def _figure(worked: Answer, figure_id: str) -> Figure:
    figure = worked.figure(figure_id)
    if figure is None:
        raise RulesError(f"no {figure_id} for {worked.request.dish}")
    return figure


def _boil_c(worked: Answer) -> float:
    return _figure(worked, "boiling_point").value


def braise_by_the_guide(draw: Draw) -> Question:
    """A braise by the rule of the extension guide."""
    dish, base_min = draw.one_of(TOUGH), draw.one_of((120.0, 180.0, 240.0))
    place = draw.place(4000, 8000)
    asked = Request(topic="time", dish=dish, dish_class="collagen_cut", method="braise", time_min=base_min)
    worked = _worked(asked, place, draw)
    time_min = _figure(worked, "extension_time").value
    percent = (time_min / base_min - 1) * 100
    return draw.figure(
        f"The extension guide gives braised meat one quarter more time at {draw.say.elevation(GUIDE_M)}. Taken in "
        f"proportion, how long is a braise of {duration(base_min)} {place.words}? Answer in hours or minutes.",
        time_min, "min", within=(time_min * 0.94, time_min * 1.06), tolerance="within 6 %", shown=duration(time_min),
        why=f"In proportion that is about {number(percent, 0)} % more {place.words}: {duration(base_min)} become "
        f"{duration(time_min)}. By the heat alone it takes {duration(_figure(worked, 'cook_time').value)}, so start "
        "early and go by the fork.",
        sources=("csu-high-altitude-food-prep",),
    )  # fmt: skip


def murmur(draw: Draw) -> Question:
    """The liquid of a braise."""
    place = draw.place(3000, 11_000)
    case = draw.case(place)
    liquid_c = braise.POT.working_c(case.here)
    under = draw.say.temp_drop(braise.POT.below_boil_k)
    why = (
        f"Water boils at {draw.say.temp(case.here.boiling_c)} {place.words}, so a bare simmer {under} under it stands "
        f"at {draw.say.temp(liquid_c)}. At sea level it stands at {draw.say.temp(braise.POT.working_c(case.sea))}."
    )
    text = f"A braise murmurs about {under} under the boil. How hot is its liquid {place.words}?"
    return draw.temperature(text, liquid_c, why, ("common-practice", "iapws-r7-97"))


def braise_oven(draw: Draw) -> Question:
    """The oven of a braise, which stays."""
    place = draw.place(3000, 10_000)
    oven, liquid_c = draw.say.oven(braise.OVEN_C), braise.POT.working_c(draw.case(place).here)
    why = (
        f"As at sea level, {oven}: the pot is held by its liquid, which stands at {draw.say.temp(liquid_c)} "
        f"{place.words} however hot the oven. A hotter oven only boils it dry; the braise takes more time instead."
    )
    text = f"At sea level a covered braise goes into an oven at {oven}. How is the oven set {place.words}?"
    little, much = (draw.say.temp_drop(step_f / 1.8) for step_f in (25, 50))
    wrong = (f"{little} hotter", f"{much} hotter", f"{little} cooler")
    return draw.choice(text, "as at sea level", wrong, why, ("csu-high-altitude-food-prep", "common-practice"))


def soft_egg(draw: Draw) -> Question:
    """How much longer a soft-boiled egg takes by heat."""
    place = draw.place(5000, 9000)
    case = draw.case(place)
    slower = eggs.slowdown(case.here.boiling_c, case.sea.boiling_c, eggs.YOLK_C["soft"])
    right = f"about {number(round_to((slower - 1) * 100, 5), 0)} % longer"
    why = (
        f"By the heat on its way to the yolk, {right} {place.words}: the yolk sets at "
        f"{draw.say.temp(eggs.YOLK_C['soft'])} everywhere, and water at {draw.say.temp(case.here.boiling_c)} is still "
        "far over that. The extension guide is more generous, so open one to be sure."
    )
    return draw.choice(
        f"By the heat that reaches the yolk, how much longer than at sea level does a soft-boiled egg take "
        f"{place.words}?",
        right, ("about 150 % longer", "about 200 % longer", "about 300 % longer"), why,
        ("williams-egg", "csu-high-altitude-food-prep"), shuffled=False,
    )  # fmt: skip


def open_pot_beans(draw: Draw) -> Question:
    """Whether dried beans soften in an open pot."""
    threshold_c = kinetics.softening("dried_bean").threshold_c or 0.0
    edge_m = water.elevation_from_boiling_m(threshold_c)
    place = draw.place(3000, 12_500, edges_m=(edge_m, edge_m - 400, edge_m + 400))
    boil_c, beans = draw.case(place).here.boiling_c, draw.one_of(BOILED_DRY_BEANS)
    will = boil_c > threshold_c
    shown = "Yes" if will else "No"
    slower = kinetics.rate_factor(boil_c, water.boiling_point_c(0), kinetics.softening("dried_bean").z_k)
    how = (
        f"water boils at {draw.say.temp(boil_c)} {place.words}, and they take about {number(slower, 1)} times as long "
        "as at sea level. The pressure cooker is the better way."
        if will
        else f"water boils at {draw.say.temp(boil_c)} {place.words}, and below about {draw.say.temp(threshold_c)} "
        "their skins hold out however long they cook. Use the pressure cooker."
    )
    text = f"Will soaked {beans} soften in an open pot {place.words}, given the time?"
    return draw.yes_no(text, will, f"{shown}: {how}", ("quast-1977-beans", "common-practice"))


def under_pressure(draw: Draw) -> Question:
    """The published rule for times under pressure."""
    thousands = draw.one_of((3, 4, 5, 6, 7, 8))
    elevation_m = thousands * 304.8
    place = Place(elevation_m, f"at {draw.say.elevation(elevation_m)}")
    base_min = draw.one_of((20.0, 30.0, 40.0, 60.0))
    percent = published_percent(elevation_m)
    time_min = base_min * (1 + percent / 100)
    shown = duration(time_min)
    return draw.figure(
        f"A stew takes {duration(base_min)} under pressure at sea level. How long {place.words} by the published rule "
        "for pressure cookers, which adds time for each 1,000 ft over 2,000 ft? Answer in minutes.",
        time_min, "min", within=(time_min * 0.97 - 0.3, time_min * 1.03 + 0.3), tolerance="within 3 %", shown=shown,
        why=f"The rule is 5 % more for each 1,000 ft over 2,000 ft, so {percent} % {place.words}: {shown}.",
        sources=("usda-fsis-high-altitude",),
    )  # fmt: skip


def most_longer(draw: Draw) -> Question:
    """Which dish a cooler boil slows most."""
    place = draw.place(5000, 9000)
    case = draw.case(place)
    foods = {"pasta": "pasta", "braised short ribs": "collagen_cut", "dried pinto beans": "dried_bean"}
    slower = {
        food: kinetics.rate_factor(case.here.boiling_c, case.sea.boiling_c, kinetics.softening(dish_class).z_k)
        for food, dish_class in foods.items()
    }
    names = sorted(slower, key=lambda food: slower[food])
    told = "; ".join(f"{food} about {number(round_to(slower[food], 0.1), 1)} times as long" for food in names)
    why = (
        f"At {draw.say.temp(case.here.boiling_c)} {place.words}: {told}. Starch needs little more than the heat it "
        "gets; the walls of a bean hold out longest."
    )
    text = f"Put these in order of how much longer they take {place.words} than at sea level, the least longer first."
    sources = (kinetics.softening(dish_class).source for dish_class in foods.values())
    return draw.order(text, names, why, sources)


def roast(draw: Draw) -> Question:
    """The oven of a roast."""
    place = draw.place(3000, 9000)
    base_min = draw.one_of((80.0, 120.0, 160.0))
    time_min = base_min * 1.25
    why = (
        f"USDA's advice adds a quarter at {draw.say.oven(ROAST_C)}: {duration(base_min)} become {duration(time_min)}. "
        "The oven is set as at sea level, and the roast is done when a thermometer in its middle says so."
    )
    return draw.figure(
        f"USDA's advice for meat roasted at {draw.say.oven(ROAST_C)} in high places adds one quarter of the time. What "
        f"becomes of {duration(base_min)} {place.words}? Answer in hours or minutes.",
        time_min, "min", within=(time_min - 5, time_min + 5), tolerance="within 5 min", shown=duration(time_min),
        why=why, sources=("usda-roast-325", "csu-high-altitude-food-prep"),
    )  # fmt: skip


def dinner(draw: Draw) -> Question:
    """Counting back from service."""
    dish = draw.one_of(TOUGH)
    place = Place(LODGE_M, f"at {LODGE}, {draw.say.elevation(LODGE_M)}")
    base_min, rest_min = draw.one_of((150.0, 180.0)), draw.one_of((15.0, 20.0, 30.0))
    asked = Request(topic="time", dish=dish, dish_class="collagen_cut", method="braise", time_min=base_min)
    high_min = _figure(_worked(asked, place, draw), "cook_time").high or base_min
    needed_min = round_time_min(high_min + rest_min)
    why = (
        f"Plan on the late end: {duration(high_min)} to be tender and {duration(rest_min)} to rest make "
        f"{duration(needed_min)} before service. A braise that is ready early waits well; one that is late does not."
    )
    return draw.figure(
        f"At {LODGE}, {draw.say.elevation(LODGE_M)}, a braise of {dish} takes up to "
        f"{duration(high_min)}, then rests {duration(rest_min)}. How long before service must it simmer, to be "
        "safe? Answer in hours or minutes.",
        needed_min, "min", within=(needed_min - 5, needed_min + 15), tolerance="no more than 5 min less or 15 min more",
        shown=duration(needed_min), why=why, sources=("common-practice",),
    )  # fmt: skip


KINDS = kinds(
    (1, pasta),
    (1, in_water),
    (1, braised),
    (2, bakery_to_lodge),
    (2, braise_by_the_guide),
    (2, murmur),
    (1, braise_oven),
    (2, soft_egg),
    (2, open_pot_beans),
    (2, under_pressure),
    (3, most_longer),
    (2, roast),
    (3, dinner),
)
