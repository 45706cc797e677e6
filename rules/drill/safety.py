"""Questions about safety: what never moves with elevation, and what does, read from the printed tables."""

from __future__ import annotations

from rules import safety as chart
from rules.drill.draw import BAKERY, BAKERY_M, LODGE, LODGE_M, Draw, Place, kinds, spot
from rules.drill.foods import Food, foods
from rules.drill.question import Question
from rules.physics.units import FT_PER_M, PSI_PER_PA, to_c
from rules.preserving import process_times
from rules.preserving.bands import empty_jars_min, whole_feet
from rules.preserving.pressure import canner_psi
from rules.safety import SafeTemperature
from rules.safety import holding_limits as limits
from rules.safety.subjects.drinking_water import agency_times
from rules.said import (
    Listed,
    Measure,
    duration,
    elevation,
    gauge,
    listed,
    number,
    oven,
    sentences,
    temp,
    temp_drop,
    together,
    yes,
)

say = sentences("drill/safety")
FOOD_CODE, CHART = "fda-food-code-2022", "usda-fsis-safe-temperatures"
# ends of the bands of every canning table, and where the agencies change their minutes [m]
BANDS_M = tuple(feet / FT_PER_M for feet in (1000, 2000, 3000, 4000, 6000, 8000))
AGENCIES_M = (1524.0, 1981.2, 2000.0)
AGENCIES = {"CDC": "cdc-eid-2025-boil", "EPA": "epa-boil", "Health Canada": "health-canada-boil"}
# what 15 psi or 103 kPa may be off by when one is turned into the other
ROUNDING_PSI = 0.15
ON_COURSE_F, LATE_F = (55, 60, 65), (78, 85, 95)
MOVED = ("poultry", "ground_meat", "fish")
UNDER_F, OVER_F = 0.5, 2.0
CHEATING_OVEN_F = 250


def centre(draw: Draw) -> Question:
    """The safe temperature of a food."""
    food = _plain_food(draw, tuple(dict.fromkeys(food.of for food in foods("safe"))))
    place, safe = draw.place(3000, 12_000), _safe(food)
    why = say(
        "centre-why", safe=temp(safe.temp_c), rests=yes(safe.rest_min), rest=duration(safe.rest_min),
        place=place.words, boil=_boil(draw, place),
    )  # fmt: skip
    text = say("centre", food=food.name, place=place.words)
    return draw.temperature(text, safe.temp_c, why, (CHART,), under_f=UNDER_F, over_f=OVER_F)


def moves(draw: Draw) -> Question:
    """Whether a safe temperature moves."""
    food = _plain_food(draw, MOVED)
    place = draw.place(3000, 12_000)
    why = say("moves-why", safe=temp(_safe(food).temp_c), place=place.words, boil=_boil(draw, place))
    return draw.yes_no(say("moves", food=food.name, place=place.words), False, why, (CHART,))


def _plain_food(draw: Draw, rows: tuple[str, ...]) -> Food:
    """A food of one of these rows of the chart."""
    return draw.one_of(foods("safe", draw.one_of(rows)))


def _safe(food: Food) -> SafeTemperature:
    return next(row for row in chart.chart() if row.kind == food.of)


def _boil(draw: Draw, place: Place) -> Measure:
    return temp(draw.case(place).here.boiling_c)


def boil_water(draw: Draw) -> Question:
    """How long an agency wants water boiled."""
    agency = draw.one_of(tuple(AGENCIES))
    place = draw.place(1000, 10_000, edges_m=AGENCIES_M)
    asked = agency_times(place.elevation_m)
    minutes = asked[agency]
    why = say("boil-water-why", agency=agency, time=duration(minutes), place=place.words, agencies=_by_agency(asked))
    return draw.figure(
        say("boil-water", agency=agency, place=place.words), minutes, "min", within=(minutes, minutes), tolerance="",
        shown=duration(minutes), why=why, sources=(AGENCIES[agency], "cdc-eid-2025-boil"),
    )  # fmt: skip


def _by_agency(asked: dict[str, float]) -> Listed:
    """What each agency asks for that names a time."""
    told = [say("agency-time", agency=name, time=duration(time)) for name, time in asked.items() if time]
    return listed(told, "semicolons")


def which_agency(draw: Draw) -> Question:
    """Which agency wants so many minutes."""
    place = spot(*draw.one_of(((LODGE_M, LODGE), (BAKERY_M, BAKERY))))
    asked = {agency: agency_times(place.elevation_m)[agency] for agency in AGENCIES}
    right = next(agency for agency, time in asked.items() if list(asked.values()).count(time) == 1)
    why = say("which-agency-why", elevation=elevation(place.elevation_m), agencies=_by_agency(asked))
    text = say("which-agency", time=duration(asked[right]), place=place.words)
    return draw.choice(text, right, (agency for agency in asked if agency != right), why, tuple(AGENCIES.values()))


def cool_first(draw: Draw) -> Question:
    """The first stage of cooling."""
    food, minutes = draw.one_of(foods("cooled")), limits.limit_min("cool_first")
    why = say("cool-first-why", time=duration(minutes), in_all=_limit_time("cool_last"), cold=_limit("cool_last"))
    return draw.figure(
        say("cool-first", food=food.name, hot=_limit("hot_hold"), warm=_limit("cool_first")), minutes, "min",
        within=(minutes, minutes), tolerance="", shown=duration(minutes), why=why, sources=(FOOD_CODE,), in_hours=True,
    )  # fmt: skip


def cool_in_all(draw: Draw) -> Question:
    """Both stages of cooling."""
    food, minutes = draw.one_of(foods("cooled")), limits.limit_min("cool_last")
    why = say(
        "cool-in-all-why", time=duration(minutes), first=_limit_time("cool_first"), warm=_limit("cool_first"),
        ice=temp(0.0),
    )  # fmt: skip
    return draw.figure(
        say("cool-in-all", food=food.name, hot=_limit("hot_hold"), cold=_limit("cool_last")), minutes, "min",
        within=(minutes, minutes), tolerance="", shown=duration(minutes), why=why, sources=(FOOD_CODE,), in_hours=True,
    )  # fmt: skip


def _limit(name: str) -> Measure:
    return temp(limits.limit_c(name))


def _limit_time(name: str) -> Measure:
    return duration(limits.limit_min(name))


def on_course(draw: Draw) -> Question:
    """Whether a pot is cooling fast enough."""
    food, good = draw.one_of(foods("cooled")), draw.rng.random() < 0.5
    reading_c = to_c(draw.one_of(ON_COURSE_F if good else LATE_F))
    limit, first = _limit("cool_first"), _limit_time("cool_first")
    why = (
        say("on-course-why", limit=limit, first=first, cold=_limit("cool_last"), in_all=_limit_time("cool_last"))
        if good
        else say("late-why", limit=limit, first=first, hot=_limit("reheat"))
    )
    text = say("on-course", lodge=LODGE, first=first, hot=_limit("hot_hold"), food=food.name, reading=temp(reading_c))
    return draw.yes_no(text, good, why, (FOOD_CODE,))


def hold_hot(draw: Draw) -> Question:
    """Hot holding."""
    place, limit_c = draw.place(3000, 12_000), limits.limit_c("hot_hold")
    why = say("hold-hot-why", limit=temp(limit_c), place=place.words, boil=_boil(draw, place))
    text = say("hold-hot", place=place.words)
    return draw.temperature(text, limit_c, why, (FOOD_CODE,), under_f=UNDER_F, over_f=OVER_F)


def hold_cold(draw: Draw) -> Question:
    """Cold holding."""
    place, limit_c = draw.place(3000, 12_000), limits.limit_c("cold_hold")
    return draw.figure(
        together(say("hold-cold", place=place.words), draw.in_degrees), limit_c, "degC",
        within=(limit_c - OVER_F / 1.8, limit_c + UNDER_F / 1.8),
        tolerance=say("under-only", room=temp_drop(OVER_F / 1.8)), shown=temp(limit_c),
        why=say("hold-cold-why", limit=temp(limit_c), place=place.words), sources=(FOOD_CODE,),
    )  # fmt: skip


def reheat(draw: Draw) -> Question:
    """Reheating."""
    food, place, limit_c = draw.one_of(foods("cooled")), draw.place(3000, 12_000), limits.limit_c("reheat")
    why = say("reheat-why", limit=temp(limit_c), time=_limit_time("reheat"), place=place.words, boil=_boil(draw, place))
    text = say("reheat", food=food.name, place=place.words)
    return draw.temperature(text, limit_c, why, (FOOD_CODE,), under_f=UNDER_F, over_f=OVER_F)


def dial_gauge(draw: Draw) -> Question:
    """The dial gauge of a pressure canner."""
    return _canner(draw, "dial", draw.place(500, 9500, edges_m=BANDS_M))


def weighted_gauge(draw: Draw) -> Question:
    """The weight of a pressure canner."""
    return _canner(draw, "weighted", draw.place(500, 9500, edges_m=BANDS_M))


def _canner(draw: Draw, kind: str, place: Place) -> Question:
    food, band = draw.one_of(foods("low_acid")), canner_psi(kind, "low_acid", place.elevation_m)
    if band is None:
        raise ValueError(f"no printed band at {place.elevation_m:.0f} m")
    shown = gauge(band.value / PSI_PER_PA)
    return draw.figure(
        say("canner", food=food.name, place=place.words, gauge=kind), band.value, "psi",
        within=(band.value - ROUNDING_PSI, band.value + ROUNDING_PSI), tolerance=say("as-printed"), shown=shown,
        why=say("canner-why", pressure=shown, gauge=kind, band=band.said, place=place.words), sources=(band.source,),
    )  # fmt: skip


def boiling_water_time(draw: Draw) -> Question:
    """The process time in a boiling-water canner."""
    food = draw.one_of(foods("high_acid"))
    base_min, place = food.figures[0], draw.place(1500, 7500, edges_m=BANDS_M)
    added = process_times.added(process_times.LONG, place.elevation_m)
    if added is None or added.differ:
        raise ValueError(f"the canning tables differ at {place.elevation_m:.0f} m")
    time_min = base_min + added.most_min
    shown = duration(time_min) if time_min < 60 else say("minutes", minutes=number(time_min))
    why = say(
        "boiling-water-time-why", time=shown, band=added.usda.said, more=number(added.most_min),
        boil=_boil(draw, place), place=place.words,
    )  # fmt: skip
    return draw.figure(
        say("boiling-water-time", food=food.name, minutes=number(base_min), place=place.words), time_min, "min",
        within=(time_min, time_min), tolerance="", shown=shown, why=why, sources=("usda-aib-539",),
    )  # fmt: skip


def between_bands(draw: Draw) -> Question:
    """Whether a band may be read in between."""
    over_ft = draw.one_of((100, 200, 300))
    elevation_m = (6000 + over_ft) / FT_PER_M
    here, under = (process_times.added(process_times.LONG, m) for m in (elevation_m, 5900 / FT_PER_M))
    if here is None or under is None:
        raise ValueError("no printed band")
    low, high = 20 + under.usda.value, 20 + here.usda.value
    why = say("between-bands-why", feet=number(whole_feet(elevation_m)), band=here.usda.said, minutes=number(high))
    text = say(
        "between-bands", low=number(low), high=number(high), elevation=elevation(elevation_m), between=number(low + 1)
    )
    return draw.yes_no(text, False, why, ("usda-aib-539",))


def low_acid(draw: Draw) -> Question:
    """How low-acid food is canned."""
    food, place = draw.one_of(foods("low_acid")), draw.place(3000, 9500, edges_m=BANDS_M)
    band = canner_psi("weighted", "low_acid", place.elevation_m)
    if band is None:
        raise ValueError(f"no printed band at {place.elevation_m:.0f} m")
    why = say("low-acid-why", place=place.words, boil=_boil(draw, place), pressure=gauge(band.value / PSI_PER_PA))
    wrong = (say("boiled-twice"), say("upside-down"), say("in-the-oven", setting=oven(to_c(CHEATING_OVEN_F))))
    text = say("low-acid", food=food.name, place=place.words)
    return draw.choice(text, say("under-pressure"), wrong, why, ("usda-aib-539", band.source))


def empty_jars(draw: Draw) -> Question:
    """Sterilising empty jars."""
    elevation_m = draw.one_of(range(2, 10)) * 1000 / FT_PER_M
    minutes = empty_jars_min(elevation_m)
    why = say("empty-jars-why", time=duration(minutes), elevation=elevation(elevation_m))
    return draw.figure(
        say("empty-jars", elevation=elevation(elevation_m)), minutes, "min", within=(minutes, minutes), tolerance="",
        shown=duration(minutes), why=why, sources=("usda-aib-539",),
    )  # fmt: skip


def kidney_beans(draw: Draw) -> Question:
    """Kidney beans in a slow cooker."""
    place = draw.place(3000, 10_000)
    why = say("kidney-beans-why", place=place.words, boil=_boil(draw, place))
    return draw.yes_no(say("kidney-beans", place=place.words), False, why, ("usu-ask-extension", "fda-bad-bug-book"))


KINDS = kinds(
    (1, centre),
    (1, moves),
    (2, boil_water),
    (3, which_agency),
    (1, cool_first),
    (1, cool_in_all),
    (2, on_course),
    (1, hold_hot),
    (1, hold_cold),
    (1, reheat),
    (2, dial_gauge),
    (2, weighted_gauge),
    (2, boiling_water_time),
    (2, between_bands),
    (1, low_acid),
    (3, empty_jars),
    (1, kidney_beans),
)
