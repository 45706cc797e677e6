"""Canning in boiling water or open steam: the tested time and what the elevation adds to it.

The gate (rules/preserving/gate.py) has let the question in: the food is acid and has a tested process, or none was
named.
"""

from __future__ import annotations

from dataclasses import replace

from rules.book import Case, Part, rule
from rules.model import Caution, Figure
from rules.preserving import process_times
from rules.preserving.bands import Band
from rules.preserving.gate import STEAM_LIMIT_MIN
from rules.preserving.vessel import PRESSURE, STEAM, called, food_of, vessel
from rules.say import exact_duration

STERILE_UNDER_MIN = 10.0
# over this process the guide asks for two inches of water over the jars instead of one
DEEP_WATER_OVER_MIN = 30.0


def band_figure(band: Band) -> Figure:
    """Where the printed band begins."""
    return Figure("band", "Printed band begins at", float(band.low_ft), "ft")


@rule("preserve.process_time", "usda-aib-539")
def process_time(case: Case) -> Part | None:
    """The process time here, for a known food, from the one the cook read in a tested recipe."""
    if vessel(case.request) == PRESSURE or not food_of(case.request).named:
        return None
    found = process_times.process(case.request)
    return _given(case, found) if found else None


def _given(case: Case, found: process_times.Process) -> Part:
    base, time = found.base_min, found.most_min
    where = "in open steam" if vessel(case.request) == STEAM else "in boiling water"
    headline = f"Process {called(case.request)} for {exact_duration(time)} {where} at {case.place}"
    headline += (
        f": {exact_duration(base)} by the recipe and {exact_duration(time - base)} for the elevation."
        if time > base
        else ", as the recipe says."
    )
    return Part(
        headline=headline,
        figures=(
            Figure("process_time", "Process time here", time, "min", found.least_min, time),
            Figure("added_time", "Of that, for the elevation", time - base, "min", found.least_min - base, time - base),
            band_figure(found.added.usda),
        ),
        steps=_steps(case, time),
        because=_why(case, found.added),
        sources=_sources(found.added),
    )


@rule("preserve.added_time", "usda-aib-539", "usu-canning-bands")
def added_time(case: Case) -> Part | None:
    """What the tables add at this elevation, where there is no time to add it to or no food was named."""
    food = food_of(case.request)
    if vessel(case.request) == PRESSURE or (food.named and process_times.base_min(case.request) is not None):
        return None
    found = [added for kind in _kinds(case) if (added := process_times.added(kind, case.here.elevation_m))]
    if not found:
        return None
    least, most = found[0].most_min, found[-1].most_min
    return Part(
        headline=_sentence(case, least, most),
        figures=(*_additions(found), band_figure(found[-1].usda)),
        steps=(
            f"Tell me {'' if food.named else 'the food, and '}the time that its tested recipe prints for 0–1,000 ft "
            "with the jar size, and I give the time here. If it prints a column for your elevation, use that and add "
            "nothing.",
            *_steps(case, None),
        ),
        because=_why(case, found[-1]),
        sources=_sources(found[-1]),
    )


def _additions(found: list[process_times.Added]) -> tuple[Figure, ...]:
    """What is added, a figure for each length of process that can be meant."""
    most = Figure("added_time", "Add for the elevation", found[-1].most_min, "min")
    if found[0].most_min == found[-1].most_min:
        return (most,)
    return (
        replace(most, label="Add to a process of 20 min or more"),
        Figure("added_time_short", "Add to a process of 15 min or less", found[0].most_min, "min"),
    )


def _kinds(case: Case) -> tuple[str, ...]:
    """Whether the short tables, the long ones or both can be meant, short first."""
    food, base = food_of(case.request), process_times.base_min(case.request)
    if base is not None:
        return (process_times.kind_of(base),)
    if food.kind == "jam":
        return (process_times.SHORT,)
    return (
        (process_times.LONG,)
        if process_times.kind_of(food.water_min or 0.0) == process_times.LONG
        else (process_times.SHORT, process_times.LONG)
    )


def _sentence(case: Case, least_min: float, most_min: float) -> str:
    named = food_of(case.request).named
    of = f" for {called(case.request)}" if named else ""
    recipe = f"your tested recipe{of}" if named else "it"
    if most_min == 0:
        what = f"process for the time {recipe} prints for 0–1,000 ft; nothing is added"
    elif least_min == most_min:
        what = f"add {exact_duration(most_min)} to the time {recipe} prints for 0–1,000 ft"
    else:
        what = (
            f"add {exact_duration(most_min)} to a tested process{of} of 20 min or more, {exact_duration(least_min)} to "
            "one of 15 min or less"
        )
    if named:
        return f"At {case.place} {what}."
    return f"Only if you have a tested recipe for an acid food: at {case.place} {what}."


def _why(case: Case, added: process_times.Added) -> str:
    boil = case.say.temp(case.here.boiling_c)
    text = (
        f"Water boils at {boil} here, so jars need longer to get the same kill. The USDA guide prints the band "
        f"{added.usda.words}, {_plus(added.usda.value)}."
    )
    if added.usu and added.differ:
        return (
            f"{text} Utah State's tables split that band and print {added.usu.words}, {_plus(added.usu.value)}. The "
            "two differ; the longer is given."
        )
    return f"{text} Utah State's {added.usu.words} agrees." if added.usu else text


def _plus(minutes: float) -> str:
    return f"{exact_duration(minutes)} more" if minutes else "nothing more"


def _sources(added: process_times.Added) -> tuple[str, ...]:
    return tuple(dict.fromkeys(band.source for band in (added.usda, added.usu) if band))


def _steps(case: Case, time_min: float | None) -> tuple[str, ...]:
    """What to do at the canner. time_min: the process time [min], None where it is not known yet."""
    boil = case.say.temp(case.here.boiling_c)
    if vessel(case.request) == STEAM:
        first = f"Vent until the steam reads {boil}, the boil here, then start the clock; it must hold to the end."
    else:
        first = f"Start the clock at a full rolling boil, {boil} here, lid on, {_depth(time_min)}."
    again = "If the boil stops, bring it back and start the time again from nothing."
    base = process_times.base_min(case.request)
    sterile = (
        ("For a recipe of less than 10 min fill sterile jars, or process for 10 min before the elevation is added.",)
        if time_min is not None and base is not None and base < STERILE_UNDER_MIN
        else ()
    )
    return (first, again, *sterile)


def _depth(time_min: float | None) -> str:
    """How deep the water must stand over the jars in a process of this length [min], or of one not known yet."""
    either, deep = "1 to 2 in (2.5 to 5 cm) of water over the jars", f"over {exact_duration(DEEP_WATER_OVER_MIN)}"
    if time_min is None:
        return f"{either}, 2 in (5 cm) where the process is {deep}"
    return f"2 in (5 cm) of water over the jars, since it is {deep}" if time_min > DEEP_WATER_OVER_MIN else either


@rule("preserve.water_over_jars", "from-memory", "usda-aib-539")
def water_over_jars(case: Case) -> Part | None:
    """Why the water stands so deep; the depth itself is carried from memory."""
    if vessel(case.request) in (PRESSURE, STEAM):
        return None
    return Part(because="The lids must stay covered to the end, and a long boil takes more water off.")


@rule("preserve.acid", "csu-9-341", "usda-aib-539")
def acid(case: Case) -> Part | None:
    """Foods on the border of acid: why the acid in the jar makes boiling water enough."""
    if food_of(case.request).kind != "acidify":
        return None
    return Part(
        because="It stands on the border of acid, about pH 4.6. Below that botulism spores cannot grow, so with its "
        "acid boiling water is enough."
    )


@rule("preserve.acid_by_recipe", "usda-aib-539")
def acid_by_recipe(case: Case) -> Part | None:
    """Pickles, relish and salsa: it is the vinegar of the recipe that makes them safe."""
    if food_of(case.request).kind != "pickle":
        return None
    return Part(
        cautions=(
            Caution(
                "warn",
                "The recipe's vinegar, 5 % acid, or its bottled lemon or lime juice is what makes it safe: never less "
                "of it, never weaker, never more vegetables to the same acid.",
                ("usda-aib-539",),
            ),
        )
    )


@rule("preserve.acid_by_fermenting", "usda-aib-539")
def acid_by_fermenting(case: Case) -> Part | None:
    """Ferments: their salt and their time make the acid."""
    if food_of(case.request).kind != "ferment":
        return None
    return Part(because="The acid that makes a ferment safe comes of its salt and its time.")


@rule("preserve.steam", "nchfp-steam-canners")
def steam(case: Case) -> Part | None:
    """The atmospheric steam canner: same times as boiling water, acid foods only, 45 min at most."""
    if vessel(case.request) != STEAM:
        return None
    return Part(
        because="A steam canner takes the times of boiling water for tested acid recipes, "
        f"{exact_duration(STEAM_LIMIT_MIN)} at most with the elevation.",
        cautions=(
            Caution(
                "warn",
                "An atmospheric steam canner is for acid foods only, pH 4.6 or less. Heat the jars first and do not "
                "open it while the clock runs.",
                ("nchfp-steam-canners",),
            ),
        ),
    )
