"""Canning in boiling water or open steam: the tested time and what the elevation adds to it.

The gate (rules/preserving/gate.py) has let the question in: the food is acid and has a tested process, or none was
named.
"""

from __future__ import annotations

from dataclasses import replace

from rules.book import Case, Part, rule
from rules.model import Caution, Figure
from rules.preserving import process_times, tested
from rules.preserving.bands import Band, empty_jars_min
from rules.preserving.gate import STEAM_LIMIT_MIN, printed_here
from rules.preserving.times_here import Time
from rules.preserving.vessel import PRESSURE, STEAM, called, food_of, vessel
from rules.said import Said, Words, exact_duration, number, sentences, temp, together, yes

STERILE_UNDER_MIN = 10.0
# over this process the guide asks for two inches of water over the jars instead of one
DEEP_WATER_OVER_MIN = 30.0
say = sentences("preserving/boiling_water")
tell = sentences("preserving/tested")


def band_figure(band: Band) -> Figure:
    """Where the printed band begins."""
    return Figure("band", say("band-label"), float(band.low_ft), "ft")


@rule("preserve.process_time", "usda-aib-539")
def process_time(case: Case) -> Part | None:
    """The process time here, for a known food, from the one the cook read in a tested recipe."""
    if vessel(case.request) == PRESSURE or not food_of(case.request).named:
        return None
    found = process_times.process(case.request)
    return _given(case, found) if found else None


def _verdict(case: Case, *, enough: bool) -> str:
    """Whether the printed time will do here, where that was asked; none where it was not."""
    asked = "enough" in case.request.forms and case.request.asked_way != "either"
    return ("yes" if enough else "no") if asked else "none"


def _given(case: Case, found: process_times.Process) -> Part:
    base, time = found.base_min, found.most_min
    return Part(
        headline=say(
            "process",
            verdict=_verdict(case, enough=time <= base),
            food=called(case.request),
            time=exact_duration(time),
            vessel=vessel(case.request),
            place=case.place,
            way="longer" if time > base else "same",
            base=exact_duration(base),
            more=exact_duration(time - base),
        ),
        figures=(
            Figure("process_time", say("process-label"), time, "min", found.least_min, time),
            Figure("added_time", say("of-that-label"), time - base, "min", found.least_min - base, time - base),
            band_figure(found.added.usda),
        ),
        steps=_steps(case, time),
        because=_why(case, found.added),
        sources=_sources(found.added),
    )


@rule("preserve.printed_time", "usda-aib-539", "usu-canning-bands")
def printed_time(case: Case) -> Part | None:
    """The process time here as it is printed, by style, pack and jar, for a known food of which no time was given."""
    if vessel(case.request) == PRESSURE or process_times.base_min(case.request) is not None:
        return None
    times = printed_here(case.request)
    if not times:
        return None
    holds = tested.holds_for(case.request, times)
    return Part(
        headline=together(_printed(case, times), tested.notes(case.request, times)),
        figures=_one_figure(times),
        steps=_steps(case, max(t.most_min for t in times), min(t.base_min for t in times)),
        because=_why_printed(case, times),
        cautions=(holds,) if holds else (),
        sources=_sources_printed(case, times),
    )


def _printed(case: Case, times: tuple[Time, ...]) -> Said:
    request = case.request
    may = request.forms[:1] == ("can_it",) and request.subject in ("steam_canning", "boiling_water_canning")
    said = {
        "lead": yes(may),
        "food": tested.packed_food(request, times),
        "vessel": vessel(request),
        "place": case.place,
    }
    if not tested.is_one(times):
        return tell("water-each", each=tested.each(times), **said)
    sizes = dict.fromkeys(time.jar for time in times)
    named = "yes" if request.jars else "no"
    jars, time = tested.asked_jars(request, sizes), number(times[0].most_min)
    return tell("water-one", jars=jars, named=named, time=time, **said)


def _one_figure(times: tuple[Time, ...]) -> tuple[Figure, ...]:
    """The time, where it is one whatever is meant."""
    if not tested.is_one(times):
        return ()
    least, most = min(t.least_min for t in times), times[0].most_min
    return (Figure("process_time", say("process-label"), most, "min", least, most, times[0].base_min),)


def _why_printed(case: Case, times: tuple[Time, ...]) -> Words:
    added = process_times.added(process_times.LONG, case.here.elevation_m)
    if added is None:
        return ""
    beyond = added.usu and any(time.most_min > time.least_min for time in times)
    return together(
        tell("because", boil=temp(case.here.boiling_c), band=added.usda.said),
        tell("beyond", band=added.usu.said) if beyond and added.usu else None,
    )


def _sources_printed(case: Case, times: tuple[Time, ...]) -> tuple[str, ...]:
    beyond = ("usu-canning-bands",) if any(time.most_min > time.least_min for time in times) else ()
    return ("usda-aib-539", *beyond, *(("from-memory",) if any(time.memory for time in times) else ()))


@rule("preserve.added_time", "usda-aib-539", "usu-canning-bands")
def added_time(case: Case) -> Part | None:
    """What the tables add at this elevation, where there is no time to add it to or no food was named."""
    food = food_of(case.request)
    if vessel(case.request) == PRESSURE or (food.named and process_times.base_min(case.request) is not None):
        return None
    if printed_here(case.request):
        return None
    found = [added for kind in _kinds(case) if (added := process_times.added(kind, case.here.elevation_m))]
    if not found:
        return None
    least, most = found[0].most_min, found[-1].most_min
    return Part(
        headline=_sentence(case, least, most),
        figures=(*_additions(found), band_figure(found[-1].usda)),
        steps=(say("tell-me", named="yes" if food.named else "no"), *_steps(case, None)),
        because=_why(case, found[-1]),
        sources=_sources(found[-1]),
    )


def _additions(found: list[process_times.Added]) -> tuple[Figure, ...]:
    """What is added, a figure for each length of process that can be meant."""
    most = Figure("added_time", say("add-label"), found[-1].most_min, "min")
    if found[0].most_min == found[-1].most_min:
        return (most,)
    return (
        replace(most, label=say("add-long-label")),
        Figure("added_time_short", say("add-short-label"), found[0].most_min, "min"),
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


def _sentence(case: Case, least_min: float, most_min: float) -> Said:
    return say(
        "added",
        named="yes" if food_of(case.request).named else "no",
        food=called(case.request),
        place=case.place,
        way="nothing" if most_min == 0 else "same" if least_min == most_min else "by_length",
        most=exact_duration(most_min),
        least=exact_duration(least_min),
    )


def _why(case: Case, added: process_times.Added) -> Words:
    usda, usu = added.usda, added.usu
    boil = temp(case.here.boiling_c)
    text = say("because", boil=boil, band=usda.said, more=_plus(usda.value))
    if not usu:
        return text
    differ = say("differ", band=usu.said, more=_plus(usu.value)) if added.differ else say("agree", band=usu.said)
    return together(text, differ)


def _plus(minutes: float) -> Said:
    return say("plus", way="more" if minutes else "nothing", time=exact_duration(minutes))


def _sources(added: process_times.Added) -> tuple[str, ...]:
    return tuple(dict.fromkeys(band.source for band in (added.usda, added.usu) if band))


def _steps(case: Case, time_min: float | None, base_min: float | None = None) -> tuple[Said, ...]:
    """What to do at the canner.

    time_min: the process time [min], the longest that can be meant; None where it is not known yet
    base_min: the shortest in the first column, where it was read there
    """
    boil = temp(case.here.boiling_c)
    if vessel(case.request) == STEAM:
        first = say("start-steam", boil=boil)
    else:
        first = say("start-boil", boil=boil, depth=_depth(time_min), deep_over=exact_duration(DEEP_WATER_OVER_MIN))
    base = base_min or process_times.base_min(case.request)
    return (first, say("start-again"), *_sterile(case, time_min, base))


def _sterile(case: Case, time_min: float | None, base_min: float | None) -> tuple[Said, ...]:
    """Jars that a short process does not sterilise: boiled before, or processed as long as one that does."""
    if time_min is None or base_min is None or base_min >= STERILE_UNDER_MIN:
        return ()
    boiled = exact_duration(empty_jars_min(case.here.elevation_m))
    clean = exact_duration(time_min + STERILE_UNDER_MIN - base_min)
    return (say("sterile-jars", boiled=boiled, clean=clean),)


def _depth(time_min: float | None) -> str:
    """How deep the water must stand over the jars in a process of this length [min], or of one not known yet."""
    if time_min is None:
        return "unknown"
    return "deep" if time_min > DEEP_WATER_OVER_MIN else "either"


@rule("preserve.water_over_jars", "from-memory", "usda-aib-539")
def water_over_jars(case: Case) -> Part | None:
    """Why the water stands so deep; the depth itself is carried from memory."""
    if vessel(case.request) in (PRESSURE, STEAM):
        return None
    return Part(because=say("lids-covered"))


@rule("preserve.acid", "csu-9-341", "usda-aib-539")
def acid(case: Case) -> Part | None:
    """Foods on the border of acid: why the acid in the jar makes boiling water enough."""
    if food_of(case.request).kind != "acidify":
        return None
    return Part(because=say("acid"))


@rule("preserve.acid_by_recipe", "usda-aib-539")
def acid_by_recipe(case: Case) -> Part | None:
    """Pickles, relish and salsa: it is the vinegar of the recipe that makes them safe."""
    if food_of(case.request).kind != "pickle":
        return None
    return Part(cautions=(Caution("warn", say("acid-by-recipe"), ("usda-aib-539",)),))


@rule("preserve.acid_by_fermenting", "usda-aib-539")
def acid_by_fermenting(case: Case) -> Part | None:
    """Ferments: their salt and their time make the acid."""
    if food_of(case.request).kind != "ferment":
        return None
    return Part(because=say("acid-by-fermenting"))


@rule("preserve.steam", "nchfp-steam-canners")
def steam(case: Case) -> Part | None:
    """The atmospheric steam canner: same times as boiling water, acid foods only, 45 min at most."""
    if vessel(case.request) != STEAM:
        return None
    return Part(
        because=say("steam", limit=exact_duration(STEAM_LIMIT_MIN)),
        cautions=(Caution("warn", say("steam-acid-only"), ("nchfp-steam-canners",)),),
    )
