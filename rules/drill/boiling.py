"""Questions about the boil: where it stands, what moves it, what does not, and what a thermometer says of it."""

from __future__ import annotations

from rules.drill.draw import BAKERY, BAKERY_M, LODGE, LODGE_M, Draw, kinds
from rules.drill.question import Question
from rules.heat.pressure import inside_c
from rules.physics import air, water
from rules.physics.ambient import ambient
from rules.physics.units import PSI_PER_PA, round_to, to_c
from rules.safety.holding_limits import limit_c
from rules.say import Say, number
from rules.topics.calibrate import DEEP_LOW_PA

BOIL = ("iapws-r7-97", "us-std-atm-1976")
SALT_G_PER_L = 10.0


def point(draw: Draw) -> Question:
    """Where water boils."""
    place = draw.place(1000, 13_000)
    here = draw.case(place).here
    why = (
        f"Water boils at {draw.say.temp(here.boiling_c)} {place.words}: the air presses with "
        f"{draw.say.pressure(here.pressure_pa)} there, against {draw.say.pressure(air.SEA_LEVEL_PA)} at sea level, and "
        "steam gets away sooner."
    )
    return draw.temperature(f"At what temperature does plain water boil {place.words}?", here.boiling_c, why, BOIL)


def fall(draw: Draw) -> Question:
    """How far the boil falls."""
    place = draw.place(2000, 13_000)
    case = draw.case(place)
    drop_k = case.sea.boiling_c - case.here.boiling_c
    why = (
        f"Water boils at {draw.say.temp(case.here.boiling_c)} {place.words}, {draw.say.temp_drop(drop_k)} under sea "
        "level's. The boil falls a little under 2 °F for each 1,000 ft, 1 °C for each 300 m."
    )
    text = f"How much cooler than at sea level does water boil {place.words}?"
    return draw.difference(text, drop_k, why, BOIL, within_f=2.0)


def elevation(draw: Draw) -> Question:
    """How high a kitchen is, by its boil."""
    reading_c = _reading_c(draw)
    found_m = water.elevation_from_boiling_m(reading_c)
    unit = "feet" if draw.units == "us" else "metres"
    why = (
        f"Standard air boils water at {draw.say.temp(reading_c)} at about {draw.say.elevation(round_to(found_m, 30))}. "
        "A thermometer 2 °F (1 °C) off would move that by 1,000 ft (300 m), so check it in melting ice first."
    )
    return draw.figure(
        f"A cook on the road boils plain water and a true thermometer reads {draw.say.temp(reading_c)} in it. About "
        f"how high is that kitchen? Answer in {unit}.",
        found_m, "m", within=(found_m * 0.9, found_m * 1.1), tolerance="within a tenth",
        shown=draw.say.elevation(round_to(found_m, 30)), why=why, sources=BOIL,
    )  # fmt: skip


def _reading_c(draw: Draw) -> float:
    """A whole reading in the degrees that are asked in, of a boil between some 5,000 and 11,000 ft [degC]."""
    if draw.units == "us":
        return to_c(draw.one_of(range(192, 203)))
    return draw.one_of([89.0 + half / 2 for half in range(12)])


def thermometer(draw: Draw) -> Question:
    """How far off a thermometer is, by the boil."""
    place = draw.place(2000, 10_000)
    boil_c = draw.case(place).here.boiling_c
    off_f = draw.one_of((3, 4, 5, 6, 7))
    way = draw.one_of(("high", "low"))
    reading_c = _whole(draw, boil_c + (off_f if way == "high" else -off_f) / 1.8)
    off_k = abs(reading_c - boil_c)
    why = (
        f"A full boil {place.words} is {draw.say.temp(boil_c)}, so the thermometer reads {draw.say.temp_drop(off_k)} "
        f"too {way}. {'Take that off' if way == 'high' else 'Add that to'} every reading near the boil, or mend it."
    )
    text = (
        f"Your thermometer reads {draw.say.temp(reading_c)} in water at a full boil {place.words}. How much too {way} "
        "does it read?"
    )
    return draw.difference(text, off_k, why, BOIL, within_f=1.0)


def _whole(draw: Draw, temp_c: float) -> float:
    """The nearest reading that a thermometer in these units shows [degC]."""
    return to_c(round_to(temp_c * 1.8 + 32, 1)) if draw.units == "us" else round_to(temp_c, 0.5)


def ice(draw: Draw) -> Question:
    """The ice point, which stays."""
    place = draw.place(3000, 12_000)
    why = (
        f"Melting ice is {draw.say.temp(0.0)} at every elevation, while the boil {place.words} stands at "
        f"{draw.say.temp(draw.case(place).here.boiling_c)}. That is why ice finds the error of a thermometer and the "
        "boil only checks it."
    )
    text = f"What must a true thermometer read in a glass of melting ice {place.words}?"
    return draw.temperature(text, 0.0, why, ("crc-handbook", "common-practice"), under_f=1.0, over_f=1.0)


def harder(draw: Draw) -> Question:
    """A harder boil is no hotter."""
    place = draw.place(3000, 12_000)
    boil_c = draw.case(place).here.boiling_c
    rolling = draw.rng.random() < 0.5
    sea = draw.say.temp(draw.case(place).sea.boiling_c)
    says = (
        "turns the flame up under an open pot that already boils, to cook the potatoes hotter"
        if rolling
        else f"turns the flame up under an open pot of stock at a full boil, to get it back to {sea}"
    )
    why = (
        f"No. An open pot stops at {draw.say.temp(boil_c)} {place.words} however hard it boils: more flame makes more "
        "steam, not more heat in the water. A pressure cooker is the way to get hotter."
    )
    return draw.yes_no(f"A trainee {place.words} {says}. Will that work?", False, why, BOIL)


def salt(draw: Draw) -> Question:
    """What salt does to the boil."""
    place = draw.place(4000, 10_000)
    case = draw.case(place)
    rise_k, drop_k = water.salt_elevation_k(SALT_G_PER_L), case.sea.boiling_c - case.here.boiling_c
    why = (
        f"Salted as for pasta, {number(SALT_G_PER_L)} g to the litre, water boils a mere {number(rise_k * 1.8, 1)} °F "
        f"({number(rise_k, 1)} °C) hotter. The elevation took {draw.say.temp_drop(drop_k)}. Salt is for the taste."
    )
    text = f"You salt the pasta water {place.words}, 10 g to the litre. What does that do to its boil?"
    clearly = draw.say.temp_drop(5 / 1.8)
    wrong = ("it brings back the sea-level boil", f"it boils {clearly} hotter", f"it boils {clearly} cooler")
    return draw.choice(text, "nothing a cook could notice", wrong, why, ("atkins-ebullioscopic", *BOIL))


def weather(draw: Draw) -> Question:
    """A deep low takes something off the boil."""
    place = draw.place(3000, 10_000)
    here = draw.case(place).here
    low_c = water.saturation_temp_c(here.pressure_pa - DEEP_LOW_PA)
    why = (
        f"A low of {draw.say.pressure(DEEP_LOW_PA)} under the usual takes {draw.say.temp_drop(here.boiling_c - low_c)} "
        f"off the boil {place.words}, from {draw.say.temp(here.boiling_c)} to {draw.say.temp(low_c)}. Less weight of "
        "air, cooler boil: it is as if the kitchen had climbed."
    )
    text = f"A deep low comes in with a storm {place.words}. What does the boil do?"
    wrong = ("it gets a little hotter", "it stays just as it was")
    return draw.choice(text, "it gets a little cooler", wrong, why, BOIL)


def hottest_first(draw: Draw) -> Question:
    """Places in order of their boil."""
    say = Say(draw.units)
    pass_m = draw.one_of((9000, 10_000, 11_000)) / 3.28084
    there = {
        f"a harbour kitchen at {say.elevation(0)}": 0.0,
        f"{BAKERY} at {say.elevation(BAKERY_M)}": BAKERY_M,
        f"{LODGE} at {say.elevation(LODGE_M)}": LODGE_M,
        f"a hut on the pass at {say.elevation(pass_m)}": pass_m,
    }
    boils = {name: ambient(elevation_m).boiling_c for name, elevation_m in there.items()}
    names = sorted(boils, key=lambda name: -boils[name])
    told = "; ".join(f"{say.temp(boils[name])} in {name}" for name in names)
    why = f"The boil falls all the way up: {told}."
    return draw.order("Put these kitchens in order of their boiling water, hottest first.", names, why, BOIL)


def steam(draw: Draw) -> Question:
    """Steam is as hot as the boil."""
    place = draw.place(3000, 12_000)
    boil_c = draw.case(place).here.boiling_c
    why = (
        f"No. Steam over an open pot is as hot as the boil, {draw.say.temp(boil_c)} {place.words}. Only under pressure "
        "does it get hotter."
    )
    return draw.yes_no(
        f"Is the steam in a lidded steamer {place.words} hotter than water at the boil there?", False, why, BOIL
    )


def pressure_cooker(draw: Draw) -> Question:
    """How hot it gets under pressure."""
    place = draw.place(2000, 10_000)
    case = draw.case(place)
    gauge_pa = draw.one_of((10.0, 12.0, 15.0)) / PSI_PER_PA
    here_c, sea_c = inside_c(case.here, gauge_pa), inside_c(case.sea, gauge_pa)
    why = (
        f"The gauge reads what the cooker adds to the air outside. At {draw.say.gauge(gauge_pa)} the steam inside is "
        f"{draw.say.temp(here_c)} {place.words}, against {draw.say.temp(sea_c)} at sea level."
    )
    text = f"A pressure cooker holds {draw.say.gauge(gauge_pa)} on its gauge {place.words}. How hot is it inside?"
    return draw.temperature(text, here_c, why, BOIL, under_f=3.0, over_f=3.0)


def same_pressure(draw: Draw) -> Question:
    """What gauge gives the heat of sea level."""
    place = draw.place(2000, 9000)
    case = draw.case(place)
    sea_psi = draw.one_of((8.0, 10.0, 11.0))
    needed_psi = sea_psi + (case.sea.pressure_pa - case.here.pressure_pa) * PSI_PER_PA
    shown = draw.say.gauge(round_to(needed_psi, 0.5) / PSI_PER_PA)
    why = (
        f"The air outside gives {number((case.sea.pressure_pa - case.here.pressure_pa) * PSI_PER_PA, 1)} psi less "
        f"{place.words}, so the gauge must read {shown} to be as hot inside. That is half a pound for each 1,000 ft. "
        "Never run a cooker over the pressure it was made for: cook longer instead."
    )
    return draw.figure(
        f"A cooker is run at {draw.say.gauge(sea_psi / PSI_PER_PA)} at sea level. What must the gauge read to be just "
        f"as hot inside {place.words}? Answer in {'psi' if draw.units == 'us' else 'psi or kPa'}.",
        needed_psi, "psi", within=(needed_psi - 0.5, needed_psi + 0.5), tolerance="within half a pound (3.4 kPa)",
        shown=shown, why=why, sources=BOIL,
    )  # fmt: skip


def two_hundred(draw: Draw) -> Question:
    """Whether an open pot can be held at 200 degF."""
    target_c = to_c(200)
    edge_m = water.elevation_from_boiling_m(target_c)
    place = draw.place(3000, 11_000, edges_m=(edge_m, LODGE_M))
    boil_c = draw.case(place).here.boiling_c
    can = boil_c > target_c
    why = (
        f"{'Yes' if can else 'No'}. Water boils at {draw.say.temp(boil_c)} {place.words}, "
        f"{'over' if can else 'under'} {draw.say.temp(target_c)}; from about "
        f"{draw.say.elevation(round_to(edge_m, 30))} up no open pot gets there. "
        f"Over {draw.say.temp(limit_c('hot_hold'))} the food is held safely all the same."
    )
    text = f"Can an open pot of soup be kept at {draw.say.temp(target_c)} {place.words}?"
    return draw.yes_no(text, can, why, ("csu-high-altitude-food-prep", *BOIL))


KINDS = kinds(
    (1, point),
    (1, fall),
    (2, elevation),
    (2, thermometer),
    (1, ice),
    (1, harder),
    (2, salt),
    (3, weather),
    (1, hottest_first),
    (1, steam),
    (3, pressure_cooker),
    (3, same_pressure),
    (2, two_hundred),
)
