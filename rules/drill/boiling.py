"""Questions about the boil: where it stands, what moves it, what does not, and what a thermometer says of it."""

from __future__ import annotations

from rules.drill.draw import BAKERY, BAKERY_M, LODGE, LODGE_M, Draw, kinds
from rules.drill.question import Question
from rules.heat.pressure import inside_c
from rules.physics import air, water
from rules.physics.ambient import ambient
from rules.physics.units import FT_PER_M, PSI_PER_PA, round_to, to_c
from rules.safety.holding_limits import limit_c
from rules.said import elevation as height
from rules.said import gauge, listed, number, pressure, sentences, temp, temp_drop, yes
from rules.topics.calibrate import DEEP_LOW_PA

say = sentences("drill/boiling")
BOIL = ("iapws-r7-97", "us-std-atm-1976")
SALT_G_PER_L = 10.0
CLEARLY_K = 5 / 1.8


def point(draw: Draw) -> Question:
    """Where water boils."""
    place = draw.place(1000, 13_000)
    here = draw.case(place).here
    why = say(
        "point-why", boil=temp(here.boiling_c), place=place.words, pressure=pressure(here.pressure_pa),
        sea=pressure(air.SEA_LEVEL_PA),
    )  # fmt: skip
    return draw.temperature(say("point", place=place.words), here.boiling_c, why, BOIL)


def fall(draw: Draw) -> Question:
    """How far the boil falls."""
    place = draw.place(2000, 13_000)
    case = draw.case(place)
    drop_k = case.sea.boiling_c - case.here.boiling_c
    why = say("fall-why", boil=temp(case.here.boiling_c), place=place.words, drop=temp_drop(drop_k))
    return draw.difference(say("fall", place=place.words), drop_k, why, BOIL, within_f=2.0)


def elevation(draw: Draw) -> Question:
    """How high a kitchen is, by its boil."""
    reading_c = _reading_c(draw)
    found_m = water.elevation_from_boiling_m(reading_c)
    shown = height(round_to(found_m, 30))
    return draw.figure(
        say("elevation", reading=temp(reading_c), units=draw.units), found_m, "m",
        within=(found_m * 0.9, found_m * 1.1), tolerance=say("elevation-counts"), shown=shown,
        why=say("elevation-why", reading=temp(reading_c), elevation=shown), sources=BOIL,
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
    why = say("thermometer-why", place=place.words, boil=temp(boil_c), off=temp_drop(off_k), way=way)
    text = say("thermometer", reading=temp(reading_c), place=place.words, way=way)
    return draw.difference(text, off_k, why, BOIL, within_f=1.0)


def _whole(draw: Draw, temp_c: float) -> float:
    """The nearest reading that a thermometer in these units shows [degC]."""
    return to_c(round_to(temp_c * 1.8 + 32, 1)) if draw.units == "us" else round_to(temp_c, 0.5)


def ice(draw: Draw) -> Question:
    """The ice point, which stays."""
    place = draw.place(3000, 12_000)
    why = say("ice-why", ice=temp(0.0), place=place.words, boil=temp(draw.case(place).here.boiling_c))
    text = say("ice", place=place.words)
    return draw.temperature(text, 0.0, why, ("crc-handbook", "common-practice"), under_f=1.0, over_f=1.0)


def harder(draw: Draw) -> Question:
    """A harder boil is no hotter."""
    place = draw.place(3000, 12_000)
    case = draw.case(place)
    pot = "potatoes" if draw.rng.random() < 0.5 else "stock"
    text = say("harder", place=place.words, pot=pot, sea=temp(case.sea.boiling_c))
    why = say("harder-why", boil=temp(case.here.boiling_c), place=place.words)
    return draw.yes_no(text, False, why, BOIL)


def salt(draw: Draw) -> Question:
    """What salt does to the boil."""
    place = draw.place(4000, 10_000)
    case = draw.case(place)
    rise_k, drop_k = water.salt_elevation_k(SALT_G_PER_L), case.sea.boiling_c - case.here.boiling_c
    why = say(
        "salt-why", salt=number(SALT_G_PER_L), rise_f=number(rise_k * 1.8, 1), rise_c=number(rise_k, 1),
        drop=temp_drop(drop_k),
    )  # fmt: skip
    text = say("salt", place=place.words, salt=number(SALT_G_PER_L))
    clearly = temp_drop(CLEARLY_K)
    wrong = (say("salt-restores"), say("salt-hotter", by=clearly), say("salt-cooler", by=clearly))
    return draw.choice(text, say("salt-nothing"), wrong, why, ("atkins-ebullioscopic", *BOIL))


def weather(draw: Draw) -> Question:
    """A deep low takes something off the boil."""
    place = draw.place(3000, 10_000)
    here = draw.case(place).here
    low_c = water.saturation_temp_c(here.pressure_pa - DEEP_LOW_PA)
    why = say(
        "weather-why", low=pressure(DEEP_LOW_PA), drop=temp_drop(here.boiling_c - low_c), place=place.words,
        usual=temp(here.boiling_c), under_it=temp(low_c),
    )  # fmt: skip
    wrong = (say("weather-hotter"), say("weather-stays"))
    return draw.choice(say("weather", place=place.words), say("weather-cooler"), wrong, why, BOIL)


def hottest_first(draw: Draw) -> Question:
    """Places in order of their boil."""
    pass_m = draw.one_of((9000, 10_000, 11_000)) / FT_PER_M
    kitchens = (
        (0.0, say("harbour", elevation=height(0))),
        (BAKERY_M, say("kitchen", name=BAKERY, elevation=height(BAKERY_M))),
        (LODGE_M, say("kitchen", name=LODGE, elevation=height(LODGE_M))),
        (pass_m, say("hut", elevation=height(pass_m))),
    )
    downwards = sorted(((ambient(at_m).boiling_c, kitchen) for at_m, kitchen in kitchens), key=lambda row: -row[0])
    told = listed([say("boil-in", boil=temp(boil_c), kitchen=kitchen) for boil_c, kitchen in downwards], "semicolons")
    order = [kitchen for _, kitchen in downwards]
    return draw.order(say("hottest-first"), order, say("hottest-first-why", kitchens=told), BOIL)


def steam(draw: Draw) -> Question:
    """Steam is as hot as the boil."""
    place = draw.place(3000, 12_000)
    why = say("steam-why", boil=temp(draw.case(place).here.boiling_c), place=place.words)
    return draw.yes_no(say("steam", place=place.words), False, why, BOIL)


def pressure_cooker(draw: Draw) -> Question:
    """How hot it gets under pressure."""
    place = draw.place(2000, 10_000)
    case = draw.case(place)
    gauge_pa = draw.one_of((10.0, 12.0, 15.0)) / PSI_PER_PA
    here_c, sea_c = inside_c(case.here, gauge_pa), inside_c(case.sea, gauge_pa)
    why = say("pressure-cooker-why", gauge=gauge(gauge_pa), inside=temp(here_c), place=place.words, at_sea=temp(sea_c))
    text = say("pressure-cooker", gauge=gauge(gauge_pa), place=place.words)
    return draw.temperature(text, here_c, why, BOIL, under_f=3.0, over_f=3.0)


def same_pressure(draw: Draw) -> Question:
    """What gauge gives the heat of sea level."""
    place = draw.place(2000, 9000)
    case = draw.case(place)
    sea_psi = draw.one_of((8.0, 10.0, 11.0))
    missing_psi = (case.sea.pressure_pa - case.here.pressure_pa) * PSI_PER_PA
    needed_psi = sea_psi + missing_psi
    shown = gauge(round_to(needed_psi, 0.5) / PSI_PER_PA)
    return draw.figure(
        say("same-pressure", sea=gauge(sea_psi / PSI_PER_PA), place=place.words, units=draw.units),
        needed_psi, "psi", within=(needed_psi - 0.5, needed_psi + 0.5), tolerance=say("same-pressure-counts"),
        shown=shown, why=say("same-pressure-why", less=number(missing_psi, 1), place=place.words, gauge=shown),
        sources=BOIL,
    )  # fmt: skip


def two_hundred(draw: Draw) -> Question:
    """Whether an open pot can be held at 200 degF."""
    target_c = to_c(200)
    edge_m = water.elevation_from_boiling_m(target_c)
    place = draw.place(3000, 11_000, edges_m=(edge_m, LODGE_M))
    boil_c = draw.case(place).here.boiling_c
    can = boil_c > target_c
    why = say(
        "two-hundred-why", can=yes(can), boil=temp(boil_c), place=place.words, target=temp(target_c),
        edge=height(round_to(edge_m, 30)), hot=temp(limit_c("hot_hold")),
    )  # fmt: skip
    text = say("two-hundred", target=temp(target_c), place=place.words)
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
