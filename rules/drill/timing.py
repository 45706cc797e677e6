"""Questions about time: what a cooler boil does to it, dish by dish, and what leaves it alone."""

from __future__ import annotations

from dataclasses import replace

from rules.book import Case
from rules.drill.draw import BAKERY, BAKERY_M, LODGE, LODGE_M, Draw, Place, kinds, spot
from rules.drill.foods import Food, foods
from rules.drill.question import Question
from rules.engine import answer
from rules.errors import RulesError
from rules.foods import eggs
from rules.heat import pots
from rules.heat.pressure import published_percent
from rules.heat.wet import pace_here, wet_time
from rules.model import Answer, Figure, Request
from rules.physics import kinetics, water
from rules.physics.units import FT_PER_M, round_time_min, round_to
from rules.said import (
    Said,
    Words,
    duration,
    duration_span,
    elevation,
    listed,
    number,
    oven,
    sentences,
    temp,
    temp_drop,
    together,
)

say = sentences("drill/timing")
GUIDE_M, ROAST_C = 1524.0, 162.8
POTS = {"boil": pots.BOIL, "braise": pots.BRAISE}
WRONG_EGG_PERCENTS = (150.0, 200.0, 300.0)
STEPS_F = (25, 50)


def pasta(draw: Draw) -> Question:
    """The time on the box of pasta."""
    place, box_min = draw.place(4000, 10_000), draw.one_of((8.0, 9.0, 10.0, 11.0, 12.0))
    asked = Request(topic="time", dish="spaghetti", dish_class="pasta", method="boil", time_min=box_min)
    return _longer(draw, place, asked, say("pasta", time=duration(box_min), place=place.words))


def in_water(draw: Draw) -> Question:
    """A time of what is boiled in water."""
    food = draw.one_of(foods("boiled"))
    place, base_min = draw.place(4000, 9000), draw.one_of(food.figures)
    asked = Request(topic="time", dish=food.name, dish_class=food.of, method="boil", time_min=base_min)
    return _longer(draw, place, asked, say("in-water", food=food.name, time=duration(base_min), place=place.words))


def braised(draw: Draw) -> Question:
    """A braise carried up from sea level."""
    food = draw.one_of(foods("tough"))
    place, base_min = draw.place(4000, 9000), draw.one_of((150.0, 180.0, 210.0))
    text = say("braised", food=food.name, time=duration(base_min), place=place.words)
    return _longer(draw, place, _braise(food, base_min), text)


def bakery_to_lodge(draw: Draw) -> Question:
    """A braise carried from the bakery to the lodge."""
    food, base_min = draw.one_of(foods("tough")), draw.one_of((150.0, 165.0, 180.0, 210.0, 240.0))
    place = spot(LODGE_M, LODGE)
    text = say(
        "bakery-to-lodge", bakery=BAKERY, elevation=elevation(BAKERY_M), food=food.name, time=duration(base_min),
        place=place.words,
    )  # fmt: skip
    return _longer(draw, place, replace(_braise(food, base_min), from_elevation_m=BAKERY_M), text)


def _braise(food: Food, base_min: float) -> Request:
    return Request(topic="time", dish=food.name, dish_class=food.of, method="braise", time_min=base_min)


def _longer(draw: Draw, place: Place, asked: Request, text: Words) -> Question:
    """A question for a time in wet heat; the whole range of the rules counts, and a tenth beside the likely time."""
    worked = _worked(asked, place, draw)
    time = _figure(worked, "cook_time")
    low, high = time.low or time.value, time.high or time.value
    span = (min(low, round_to(time.value * 0.9, 0.1)), max(high, round_to(time.value * 1.1, 0.1)))
    told = next(b for b in worked.because if b.rule == f"{asked.method}.time")
    shown = say("about", time=duration(time.value), span=duration_span(low, high))
    why = say(
        "longer-why", time=shown, boil=temp(_boil_c(worked)), place=place.words, slower=_slower(Case(worked.request))
    )
    return draw.figure(
        together(text, say("in-hours-or-minutes")), time.value, "min", within=span,
        tolerance=say("anything-from", span=duration_span(*span)), shown=shown, why=why,
        sources=(*told.sources, "iapws-r7-97"),
    )  # fmt: skip


def _slower(case: Case) -> Said:
    """By how much a cooler pot slows the food.

    raises: RulesError where no time is known for it
    """
    heats = POTS[case.request.method or ""].heats(case)
    time = wet_time(case, heats)
    if time is None:
        raise RulesError(f"no time for {case.request.dish}")
    return pace_here(case, heats, time.factor)


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
    food, base_min = draw.one_of(foods("tough")), draw.one_of((120.0, 180.0, 240.0))
    place = draw.place(4000, 8000)
    worked = _worked(_braise(food, base_min), place, draw)
    time_min = _figure(worked, "extension_time").value
    text = say("by-the-guide", guide=elevation(GUIDE_M), time=duration(base_min), place=place.words)
    why = say(
        "by-the-guide-why", percent=number((time_min / base_min - 1) * 100, 0), place=place.words,
        time=duration(base_min), longer=duration(time_min), by_heat=duration(_figure(worked, "cook_time").value),
    )  # fmt: skip
    return draw.figure(
        together(text, say("in-hours-or-minutes")), time_min, "min", within=(time_min * 0.94, time_min * 1.06),
        tolerance=say("within-percent", percent=6), shown=duration(time_min), why=why,
        sources=("csu-high-altitude-food-prep",),
    )  # fmt: skip


def murmur(draw: Draw) -> Question:
    """The liquid of a braise."""
    place = draw.place(3000, 11_000)
    case = draw.case(place)
    liquid_c = pots.BRAISE.working_c(case.here)
    under = temp_drop(pots.BRAISE.below_boil_k)
    why = say(
        "murmur-why", boil=temp(case.here.boiling_c), place=place.words, under=under, liquid=temp(liquid_c),
        sea=temp(pots.BRAISE.working_c(case.sea)),
    )  # fmt: skip
    text = say("murmur", under=under, place=place.words)
    return draw.temperature(text, liquid_c, why, ("common-practice", "iapws-r7-97"))


def braise_oven(draw: Draw) -> Question:
    """The oven of a braise, which stays."""
    place = draw.place(3000, 10_000)
    setting, liquid = oven(pots.BRAISE_OVEN_C), temp(pots.BRAISE.working_c(draw.case(place).here))
    why = say("braise-oven-why", setting=setting, liquid=liquid, place=place.words)
    text = say("braise-oven", setting=setting, place=place.words)
    little, much = (temp_drop(step_f / 1.8) for step_f in STEPS_F)
    wrong = (say("hotter", by=little), say("hotter", by=much), say("cooler", by=little))
    return draw.choice(text, say("as-at-sea-level"), wrong, why, ("csu-high-altitude-food-prep", "common-practice"))


def soft_egg(draw: Draw) -> Question:
    """How much longer a soft-boiled egg takes by heat."""
    place = draw.place(5000, 9000)
    case = draw.case(place)
    yolk_c = eggs.YOLK_C["soft"]
    slower = eggs.slowdown(case.here.boiling_c, case.sea.boiling_c, yolk_c)
    percent = round_to((slower - 1) * 100, 5)
    options = {p: say("percent-longer", percent=number(p, 0)) for p in sorted((percent, *WRONG_EGG_PERCENTS))}
    right = options[percent]
    why = say("soft-egg-why", longer=right, place=place.words, yolk=temp(yolk_c), boil=temp(case.here.boiling_c))
    sources = ("williams-egg", "csu-high-altitude-food-prep")
    return draw.among(say("soft-egg", place=place.words), right, tuple(options.values()), why, sources)


def open_pot_beans(draw: Draw) -> Question:
    """Whether dried beans soften in an open pot."""
    soft = kinetics.softening("dried_bean")
    threshold_c = soft.threshold_c or 0.0
    edge_m = water.elevation_from_boiling_m(threshold_c)
    place = draw.place(3000, 12_500, edges_m=(edge_m, edge_m - 400, edge_m + 400))
    boil_c, beans = draw.case(place).here.boiling_c, draw.one_of(foods("beans")).name
    will = boil_c > threshold_c
    times = number(kinetics.rate_factor(boil_c, water.boiling_point_c(0), soft.z_k), 1)
    why = (
        say("beans-soften-why", boil=temp(boil_c), place=place.words, times=times)
        if will
        else say("beans-stay-hard-why", boil=temp(boil_c), place=place.words, threshold=temp(threshold_c))
    )
    text = say("open-pot-beans", beans=beans, place=place.words)
    return draw.yes_no(text, will, why, ("quast-1977-beans", "common-practice"))


def under_pressure(draw: Draw) -> Question:
    """The published rule for times under pressure."""
    place = spot(draw.one_of((3, 4, 5, 6, 7, 8)) * 1000 / FT_PER_M)
    base_min = draw.one_of((20.0, 30.0, 40.0, 60.0))
    percent = published_percent(place.elevation_m)
    time_min = base_min * (1 + percent / 100)
    shown = duration(time_min)
    return draw.figure(
        say("under-pressure", time=duration(base_min), place=place.words), time_min, "min",
        within=(time_min * 0.97 - 0.3, time_min * 1.03 + 0.3), tolerance=say("within-percent", percent=3), shown=shown,
        why=say("under-pressure-why", percent=percent, place=place.words, time=shown),
        sources=("anderson-1980-altitude",),
    )  # fmt: skip


def most_longer(draw: Draw) -> Question:
    """Which dish a cooler boil slows most."""
    place = draw.place(5000, 9000)
    case = draw.case(place)
    slowed = foods("slowed")
    slower = {
        food.name: kinetics.rate_factor(case.here.boiling_c, case.sea.boiling_c, kinetics.softening(food.of).z_k)
        for food in slowed
    }
    names = sorted(slower, key=lambda name: slower[name])
    told = [say("slowed", food=name, times=number(round_to(slower[name], 0.1), 1)) for name in names]
    foods_told = listed(told, "semicolons")
    why = say("most-longer-why", boil=temp(case.here.boiling_c), place=place.words, foods=foods_told)
    sources = (kinetics.softening(food.of).source for food in slowed)
    return draw.order(say("most-longer", place=place.words), names, why, sources)


def roast(draw: Draw) -> Question:
    """The oven of a roast."""
    place = draw.place(3000, 9000)
    base_min = draw.one_of((80.0, 120.0, 160.0))
    time_min = base_min * 1.25
    why = say("roast-why", setting=oven(ROAST_C), time=duration(base_min), longer=duration(time_min))
    text = say("roast", setting=oven(ROAST_C), time=duration(base_min), place=place.words)
    return draw.figure(
        together(text, say("in-hours-or-minutes")), time_min, "min", within=(time_min - 5, time_min + 5),
        tolerance=say("roast-counts"), shown=duration(time_min), why=why,
        sources=("usda-roast-325", "csu-high-altitude-food-prep"),
    )  # fmt: skip


def dinner(draw: Draw) -> Question:
    """Counting back from service."""
    food = draw.one_of(foods("tough"))
    place = spot(LODGE_M, LODGE)
    base_min, rest_min = draw.one_of((150.0, 180.0)), draw.one_of((15.0, 20.0, 30.0))
    high_min = _figure(_worked(_braise(food, base_min), place, draw), "cook_time").high or base_min
    needed_min = round_time_min(high_min + rest_min)
    tender, rest = duration(high_min), duration(rest_min)
    text = say("dinner", lodge=LODGE, elevation=elevation(LODGE_M), food=food.name, tender=tender, rest=rest)
    return draw.figure(
        together(text, say("in-hours-or-minutes")), needed_min, "min", within=(needed_min - 5, needed_min + 15),
        tolerance=say("dinner-counts"), shown=duration(needed_min),
        why=say("dinner-why", tender=tender, rest=rest, needed=duration(needed_min)), sources=("common-practice",),
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
