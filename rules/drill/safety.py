"""Questions about safety: what never moves with elevation, and what does, read from the printed tables."""

from __future__ import annotations

from rules import safety as chart
from rules.drill.draw import BAKERY, BAKERY_M, LODGE, LODGE_M, Draw, Place, kinds
from rules.drill.question import Question
from rules.physics.units import FT_PER_M, PSI_PER_PA, to_c
from rules.preserving import process_times
from rules.preserving.bands import ten_minutes_and_more, whole_feet
from rules.preserving.pressure import canner_psi
from rules.safety import holding_limits as limits
from rules.safety.subjects.drinking_water import agency_times
from rules.say import duration, number

FOOD_CODE, CHART = "fda-food-code-2022", "usda-fsis-safe-temperatures"
# ends of the bands of every canning table, and where the agencies change their minutes [m]
BANDS_M = tuple(feet / FT_PER_M for feet in (1000, 2000, 3000, 4000, 6000, 8000))
AGENCIES_M = (1524.0, 1981.2, 2000.0)
AGENCIES = {"CDC": "cdc-eid-2025-boil", "EPA": "epa-boil", "Health Canada": "health-canada-boil"}
PLAIN_FOODS = {
    "poultry": ("chicken thighs", "a roast turkey", "ground turkey"),
    "ground_meat": ("a hamburger", "meat loaf"),
    "whole_cut": ("a pork chop", "a lamb roast"),
    "fish": ("a trout fillet", "baked salmon"),
    "leftover": ("a reheated casserole",),
}
LOW_ACID = ("green beans", "sweet corn", "beets", "carrots", "venison", "chicken stock")
HIGH_ACID = (("peaches, hot pack, pints", 20.0), ("pears, hot pack, pints", 20.0), ("whole tomatoes, quarts", 85.0))
COOLED = ("chili", "beef stock", "bean soup", "gravy", "lamb curry")
# what 15 psi or 103 kPa may be off by when one is turned into the other
ROUNDING_PSI = 0.15
ON_COURSE_F, LATE_F = (55, 60, 65), (78, 85, 95)


def centre(draw: Draw) -> Question:
    """The safe temperature of a food."""
    kind = draw.one_of(tuple(PLAIN_FOODS))
    food, place = draw.one_of(PLAIN_FOODS[kind]), draw.place(3000, 12_000)
    safe = next(row for row in chart.chart() if row.kind == kind)
    rest = f", then {duration(safe.rest_min)} of rest" if safe.rest_min else ""
    why = (
        f"{draw.say.temp(safe.temp_c)} in the centre{rest}, {place.words} as anywhere: germs die by the heat of the "
        f"food, not by the weight of the air. Water boils at {draw.say.temp(draw.case(place).here.boiling_c)} there, "
        "still far over it."
    )
    text = f"To what temperature must the centre of {food} come {place.words} to be safe?"
    return draw.temperature(text, safe.temp_c, why, (CHART,), under_f=0.5, over_f=2.0)


def moves(draw: Draw) -> Question:
    """Whether a safe temperature moves."""
    kind = draw.one_of(("poultry", "ground_meat", "fish"))
    food, place = draw.one_of(PLAIN_FOODS[kind]), draw.place(3000, 12_000)
    safe = next(row for row in chart.chart() if row.kind == kind)
    why = (
        f"No. It is {draw.say.temp(safe.temp_c)} {place.words} too. The boil falls to "
        f"{draw.say.temp(draw.case(place).here.boiling_c)}, so food gets there more slowly in a pot, but no earlier is "
        "it safe."
    )
    text = f"Water boils cooler {place.words}. Is {food} safe at a lower temperature there, too?"
    return draw.yes_no(text, False, why, (CHART,))


def boil_water(draw: Draw) -> Question:
    """How long an agency wants water boiled."""
    agency = draw.one_of(tuple(AGENCIES))
    place = draw.place(1000, 10_000, edges_m=AGENCIES_M)
    asked = agency_times(place.elevation_m)
    minutes = asked[agency]
    told = "; ".join(f"{name} {duration(time)}" for name, time in asked.items() if time)
    why = (
        f"{agency} asks for {duration(minutes)} {place.words}. The agencies differ: {told}; WHO only for a rolling "
        "boil. Where they differ keep to the longest."
    )
    return draw.figure(
        f"How many minutes at a rolling boil does {agency} ask for {place.words}, to make water safe to drink?",
        minutes, "min", within=(minutes, minutes), tolerance="", shown=duration(minutes), why=why,
        sources=(AGENCIES[agency], "cdc-eid-2025-boil"),
    )  # fmt: skip


def which_agency(draw: Draw) -> Question:
    """Which agency wants so many minutes."""
    elevation_m, name = draw.one_of(((LODGE_M, LODGE), (BAKERY_M, BAKERY)))
    place = Place(elevation_m, f"at {name}, {draw.say.elevation(elevation_m)}")
    asked = {agency: agency_times(elevation_m)[agency] for agency in AGENCIES}
    right = next(agency for agency, time in asked.items() if list(asked.values()).count(time) == 1)
    told = "; ".join(f"{agency} {duration(time)}" for agency, time in asked.items())
    why = f"For {draw.say.elevation(elevation_m)} they ask for: {told}. Keep to the longest."
    text = f"Which agency asks for {duration(asked[right])} of boiling {place.words}, to make water safe to drink?"
    return draw.choice(text, right, (agency for agency in asked if agency != right), why, tuple(AGENCIES.values()))


def cool_first(draw: Draw) -> Question:
    """The first stage of cooling."""
    food = draw.one_of(COOLED)
    hot, warm, cold = (draw.say.temp(limits.limit_c(name)) for name in ("hot_hold", "cool_first", "cool_last"))
    minutes = limits.limit_min("cool_first")
    why = (
        f"{duration(minutes)}: that is the stretch in which germs grow fastest. Then it has until "
        f"{duration(limits.limit_min('cool_last'))} in all to come to {cold}. At every elevation."
    )
    return draw.figure(
        f"Within how long must cooked {food} cool from {hot} to {warm}? Answer in hours.",
        minutes, "min", within=(minutes, minutes), tolerance="", shown=duration(minutes), why=why, sources=(FOOD_CODE,),
    )  # fmt: skip


def cool_in_all(draw: Draw) -> Question:
    """Both stages of cooling."""
    food = draw.one_of(COOLED)
    hot, warm, cold = (draw.say.temp(limits.limit_c(name)) for name in ("hot_hold", "cool_first", "cool_last"))
    minutes = limits.limit_min("cool_last")
    why = (
        f"{duration(minutes)} in all, of which no more than {duration(limits.limit_min('cool_first'))} down to "
        f"{warm}. Thin air cools a pan a little more slowly, so use ice, which melts at "
        f"{draw.say.temp(0.0)} everywhere."
    )
    return draw.figure(
        f"Within how long in all must cooked {food} come from {hot} to {cold}? Answer in hours.",
        minutes, "min", within=(minutes, minutes), tolerance="", shown=duration(minutes), why=why, sources=(FOOD_CODE,),
    )  # fmt: skip


def on_course(draw: Draw) -> Question:
    """Whether a pot is cooling fast enough."""
    food, good = draw.one_of(COOLED), draw.rng.random() < 0.5
    reading_c = to_c(draw.one_of(ON_COURSE_F if good else LATE_F))
    limit = draw.say.temp(limits.limit_c("cool_first"))
    first = duration(limits.limit_min("cool_first"))
    why = (
        f"Yes. It had to be at {limit} or under within {first}, and it is. Go on, to "
        f"{draw.say.temp(limits.limit_c('cool_last'))} within {duration(limits.limit_min('cool_last'))} in all."
        if good
        else f"No. It had to be at {limit} within {first}. Reheat it to {draw.say.temp(limits.limit_c('reheat'))} at "
        "once and start again in ice, or throw it away."
    )
    text = (
        f"{LODGE}: {first} after it stood at {draw.say.temp(limits.limit_c('hot_hold'))} the {food} reads "
        f"{draw.say.temp(reading_c)}. May it go on cooling?"
    )
    return draw.yes_no(text, good, why, (FOOD_CODE,))


def hold_hot(draw: Draw) -> Question:
    """Hot holding."""
    place, limit_c = draw.place(3000, 12_000), limits.limit_c("hot_hold")
    why = (
        f"At or over {draw.say.temp(limit_c)}, {place.words} as anywhere. Water boils at "
        f"{draw.say.temp(draw.case(place).here.boiling_c)} there, so a steam table still reaches it with ease."
    )
    text = f"No lower than which temperature is hot food held for service {place.words}?"
    return draw.temperature(text, limit_c, why, (FOOD_CODE,), under_f=0.5, over_f=2.0)


def hold_cold(draw: Draw) -> Question:
    """Cold holding."""
    place, limit_c = draw.place(3000, 12_000), limits.limit_c("cold_hold")
    why = f"At or under {draw.say.temp(limit_c)}, {place.words} as anywhere: germs go by the heat of the food alone."
    shown = draw.say.temp(limit_c)
    return draw.figure(
        f"No warmer than which temperature is cold food held for service {place.words}? Answer in {draw.degrees}.",
        limit_c, "degC", within=(limit_c - 2 / 1.8, limit_c + 0.5 / 1.8),
        tolerance=f"no higher, and at most {draw.say.temp_drop(2 / 1.8)} lower", shown=shown, why=why,
        sources=(FOOD_CODE,),
    )  # fmt: skip


def reheat(draw: Draw) -> Question:
    """Reheating."""
    food, place, limit_c = draw.one_of(COOLED), draw.place(3000, 12_000), limits.limit_c("reheat")
    why = (
        f"{draw.say.temp(limit_c)} within {duration(limits.limit_min('reheat'))}, {place.words} as anywhere. A full "
        f"boil, {draw.say.temp(draw.case(place).here.boiling_c)} there, is well over it."
    )
    text = f"To what temperature is yesterday's {food} reheated for hot holding {place.words}?"
    return draw.temperature(text, limit_c, why, (FOOD_CODE,), under_f=0.5, over_f=2.0)


def dial_gauge(draw: Draw) -> Question:
    """The dial gauge of a pressure canner."""
    return _canner(draw, "dial", draw.place(500, 9500, edges_m=BANDS_M))


def weighted_gauge(draw: Draw) -> Question:
    """The weight of a pressure canner."""
    return _canner(draw, "weighted", draw.place(500, 9500, edges_m=BANDS_M))


def _canner(draw: Draw, gauge: str, place: Place) -> Question:
    food, band = draw.one_of(LOW_ACID), canner_psi(gauge, "low_acid", place.elevation_m)
    if band is None:
        raise ValueError(f"no printed band {place.words}")
    shown = draw.say.gauge(band.value / PSI_PER_PA)
    marked = "on a dial gauge" if gauge == "dial" else "with a weighted gauge"
    why = (
        f"{shown} {marked}: the printed band is {band.words}, and {place.words} a kitchen stands in it. The time stays "
        "as the tested recipe prints it. Bands are read as printed, never in between."
    )
    return draw.figure(
        f"You pressure-can {food} by a tested recipe {place.words}. What pressure {marked}? Answer in psi.",
        band.value, "psi", within=(band.value - ROUNDING_PSI, band.value + ROUNDING_PSI),
        tolerance="the printed figure", shown=shown, why=why, sources=(band.source,),
    )  # fmt: skip


def boiling_water_time(draw: Draw) -> Question:
    """The process time in a boiling-water canner."""
    food, base_min = draw.one_of(HIGH_ACID)
    place = draw.place(1500, 7500, edges_m=BANDS_M)
    added = process_times.added(process_times.LONG, place.elevation_m)
    if added is None or added.differ:
        raise ValueError(f"the canning tables differ {place.words}")
    time_min = base_min + added.most_min
    shown = duration(time_min) if time_min < 60 else f"{number(time_min)} min"
    why = (
        f"{shown}. The band {added.usda.words} adds {number(added.most_min)} min to a process of 20 min or more, "
        f"because the water around the jars boils at {draw.say.temp(draw.case(place).here.boiling_c)} {place.words}. "
        "Never shorten it, and can only by a tested recipe."
    )
    return draw.figure(
        f"The tested recipe for {food} prints {number(base_min)} min in boiling water for 0 to 1,000 ft. How long by "
        f"the USDA guide {place.words}? Answer in minutes.",
        time_min, "min", within=(time_min, time_min), tolerance="", shown=shown, why=why,
        sources=("usda-aib-539",),
    )  # fmt: skip


def between_bands(draw: Draw) -> Question:
    """Whether a band may be read in between."""
    over_ft = draw.one_of((100, 200, 300))
    elevation_m = (6000 + over_ft) / FT_PER_M
    here, under = (process_times.added(process_times.LONG, m) for m in (elevation_m, 5900 / FT_PER_M))
    if here is None or under is None:
        raise ValueError("no printed band")
    low, high = 20 + under.usda.value, 20 + here.usda.value
    why = (
        f"No. {number(whole_feet(elevation_m))} ft is in the band {here.usda.words}, so it is {number(high)} min. "
        "The printed times were tested band by band; a time in between was not. If in doubt take the higher band."
    )
    text = (
        f"A recipe prints {number(low)} min for 3,001 to 6,000 ft and {number(high)} min above. A kitchen stands "
        f"{draw.say.elevation(elevation_m)} high, only just over. May it process for {number(low + 1)} min?"
    )
    return draw.yes_no(text, False, why, ("usda-aib-539",))


def low_acid(draw: Draw) -> Question:
    """How low-acid food is canned."""
    food, place = draw.one_of(LOW_ACID), draw.place(3000, 9500, edges_m=BANDS_M)
    band = canner_psi("weighted", "low_acid", place.elevation_m)
    if band is None:
        raise ValueError(f"no printed band {place.words}")
    why = (
        f"The spores of botulism live through any boil, and the boil {place.words} is only "
        f"{draw.say.temp(draw.case(place).here.boiling_c)}. Low-acid food goes into a pressure canner, "
        f"{draw.say.gauge(band.value / PSI_PER_PA)} with a weighted gauge there, for the time of a tested recipe."
    )
    text = f"How do you put up jars of {food} {place.words}, to keep on the shelf?"
    wrong = (
        "in boiling water, for twice the time",
        "hot into hot jars, turned upside down",
        f"in the oven at {draw.say.oven(to_c(250))}",
    )
    return draw.choice(text, "in a pressure canner, by a tested recipe", wrong, why, ("usda-aib-539", band.source))


def empty_jars(draw: Draw) -> Question:
    """Sterilising empty jars."""
    thousands = draw.one_of(range(2, 10))
    elevation_m = thousands * 1000 / FT_PER_M
    minutes = ten_minutes_and_more(elevation_m)
    said = draw.say.elevation(elevation_m)
    why = f"{duration(minutes)}: 10 min, and one more for each 1,000 ft (305 m), at {said} as in the guide's own words."
    return draw.figure(
        f"The guide sterilises empty jars in boiling water for 10 min at sea level. How long at {said}? Answer in "
        "minutes.",
        minutes, "min", within=(minutes, minutes), tolerance="", shown=duration(minutes), why=why,
        sources=("usda-aib-539",),
    )  # fmt: skip


def kidney_beans(draw: Draw) -> Question:
    """Kidney beans in a slow cooker."""
    place = draw.place(3000, 10_000)
    why = (
        "No. Raw kidney beans hold a poison that only a hard boil destroys, and a slow cooker never gets there; even a "
        f"full boil {place.words} is only {draw.say.temp(draw.case(place).here.boiling_c)}. Soak them, pour the water "
        "away, boil them hard for 30 min in fresh water, then cook on."
    )
    text = f"May soaked raw red kidney beans go straight into a slow cooker {place.words}?"
    return draw.yes_no(text, False, why, ("usu-ask-extension", "fda-bad-bug-book"))


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
