"""Pressure canning: the time stays, the pressure goes up with the elevation.

The gate (rules/preserving/gate.py) has let the question in: the food has a tested pressure process, or none was named.
"""

from __future__ import annotations

from functools import cache

from rules.book import Case, Part, rule
from rules.heat.pressure import inside_c
from rules.model import Caution, Figure, Request
from rules.physics.units import PSI_PER_PA
from rules.preserving import process_times, tested, times_here
from rules.preserving.bands import Band, bands, in_band, whole_feet
from rules.preserving.boiling_water import band_figure
from rules.preserving.times_here import Time
from rules.preserving.vessel import PRESSURE, called, food_of, gauge, named, vessel
from rules.said import Listed, Said, Words, listed, number, sentences, temp, together, yes
from rules.said import gauge as gauge_reading

TABLE = "canning_pressure_usda-aib-539"
USDA_DIAL_TO_FT = 8000
BOTULISM_C = 115.56
ROUNDING_PSI = 0.05
# from so much over what is printed food is cooked softer than it need be
MORE_PSI = 3.5
say = sentences("preserving/pressure")


@cache
def _bands(gauge: str, food: str) -> tuple[Band, ...]:
    return bands(TABLE, "psi", gauge=gauge, food=food)


def canner_psi(gauge: str, food: str, elevation_m: float) -> Band | None:
    """The band of the printed table with its gauge pressure [psi], or None where the table has none so high.

    gauge: "dial" or "weighted"; food: "low_acid" (vegetables, meat, fish) or "high_acid" (fruit)
    source: usda-aib-539; the dial gauge over 8,000 ft extension-canning-8000

    >>> canner_psi("dial", "low_acid", 2133.6).value, canner_psi("weighted", "low_acid", 2133.6).value
    (14.0, 15.0)
    """
    return in_band(_bands(gauge, food), whole_feet(elevation_m))


def _table(case: Case) -> str:
    """Which table the food is read in; tomatoes in the higher one, which is right for either time of their pairs."""
    food = food_of(case.request)
    return "high_acid" if food.acid and not food.paired else "low_acid"


@rule("preserve.pressure", "usda-aib-539", "iapws-r7-97")
def pressure(case: Case) -> Part | None:
    """The gauge pressure here, dial and weighted, and the check of a pressure the cook named."""
    if vessel(case.request) != PRESSURE:
        return None
    found = {kind: canner_psi(kind, _table(case), case.here.elevation_m) for kind in ("dial", "weighted")}
    known = {kind: band for kind, band in found.items() if band}
    if not known:
        return None
    times = _printed(case)
    return Part(
        headline=_headline(case, known, times),
        figures=(
            *(_figure(case, kind, band) for kind, band in _of_gauge(case, known).items()),
            *_time(case, times),
            *(() if times else (band_figure(known.get("dial") or known["weighted"]),)),
        ),
        steps=(
            *(() if times else (say("same-time"),)),
            say("vent"),
            say("pressure-falls"),
            *_pairs(case),
        ),
        because=_why(case, known),
        cautions=(
            *_left_out(case),
            *_dial_beyond_usda(case, known),
            *_dial_check(case),
            *filter(None, (tested.holds_for(case.request, times) if times else None,)),
        ),
        sources=tuple(dict.fromkeys((*(band.source for band in known.values()), "iapws-r7-97"))),
    )


def _printed(case: Case) -> tuple[Time, ...]:
    """The printed times, where the cook brings none of a tested recipe."""
    return () if process_times.base_min(case.request) is not None else times_here.times(case.request, PRESSURE)


def _of_gauge(case: Case, known: dict[str, Band]) -> dict[str, Band]:
    """The gauge that the cook has, or both where nothing tells."""
    kind = gauge(case.request)
    return {kind: known[kind]} if kind in known else known


def wanted(case: Case) -> Listed | None:
    """The pressure here on the gauge that the cook has, or on either; None where no table has one."""
    found = {kind: canner_psi(kind, _table(case), case.here.elevation_m) for kind in ("dial", "weighted")}
    known = _of_gauge(case, {kind: band for kind, band in found.items() if band})
    placed = case.request.elevation_m is not None and known
    return listed([_on(kind, band.value) for kind, band in known.items()], "or") if placed else None


def least_psi(case: Case) -> float | None:
    """The lowest pressure that is printed here, on the gauge that the cook has or on either [psi]."""
    found = {kind: canner_psi(kind, _table(case), case.here.elevation_m) for kind in ("dial", "weighted")}
    known = _of_gauge(case, {kind: band for kind, band in found.items() if band})
    return min((band.value for band in known.values()), default=None)


def low_acid_gauges(request: Request) -> Listed:
    """The pressures of low-acid food here, on either gauge; empty above every table."""
    found = {kind: canner_psi(kind, "low_acid", request.elevation_m or 0.0) for kind in ("dial", "weighted")}
    return listed([_on(kind, band.value) for kind, band in found.items() if band], "or")


def on_gauge(kind: str, gauge_pa: float) -> Said:
    """A gauge pressure [Pa] as it is read on a gauge of this kind."""
    return say("on-gauge", gauge=kind, pressure=gauge_reading(gauge_pa))


def _on(kind: str, psi: float) -> Said:
    return on_gauge(kind, psi / PSI_PER_PA)


def _headline(case: Case, known: dict[str, Band], times: tuple[Time, ...]) -> Words:
    kind, food = gauge(case.request), food_of(case.request)
    asked = _of_gauge(case, known)
    wanted = listed([_on(of, band.value) for of, band in asked.items()], "or")
    if case.request.gauge_pa is not None:
        return together(_judged(case, asked, wanted), say("takes", each=tested.each(times)) if times else None)
    none = say("no-table", gauge=kind) if kind and kind not in known else None
    if not food.named:
        return together(none, say("unnamed", place=case.place, wanted=wanted))
    if times:
        return together(none, _process(case, times, wanted), tested.notes(case.request, times, PRESSURE))
    takes = say(
        "headline",
        way="never_boiled" if _way_unsaid(case) else "here",
        place=case.place,
        food=called(case.request),
        wanted=wanted,
        time="left_out" if _is_left_out(case) else "unchanged",
    )
    return together(none, takes)


def _process(case: Case, times: tuple[Time, ...], wanted: Listed) -> Said:
    """Minutes and pressure in one sentence."""
    request = case.request
    said = {
        "way": "never_boiled" if _way_unsaid(case) else "here",
        "food": tested.packed_food(request, times),
        "wanted": wanted,
        "place": case.place,
    }
    if not tested.is_one(times):
        return say("process-each", each=tested.each(times), **said)
    jars = tested.asked_jars(request, dict.fromkeys(time.jar for time in times))
    return say("process-one", jars=jars, named=yes(request.jars), time=number(times[0].most_min), **said)


def _judged(case: Case, asked: dict[str, Band], wanted: Listed) -> Said:
    """Whether the pressure the cook named is enough."""
    gauge_pa = case.request.gauge_pa or 0.0
    psi = gauge_pa * PSI_PER_PA + ROUNDING_PSI
    needed = [band.value for band in asked.values()]
    enough = "more" if psi >= max(needed) + MORE_PSI else "enough"
    return say(
        "judged",
        pressure=gauge_reading(gauge_pa),
        verdict="too_low" if psi < min(needed) else enough if psi >= max(needed) else "dial_only",
        place=case.place,
        named="yes" if food_of(case.request).named else "no",
        wanted=wanted,
    )


def _way_unsaid(case: Case) -> bool:
    """Whether a low-acid food is to be canned and the cook has not said under pressure."""
    return food_of(case.request).kind == "low_acid" and named(case.request) is None and not case.request.equipment


def _figure(case: Case, kind: str, band: Band) -> Figure:
    sea = canner_psi(kind, _table(case), 0.0)
    label = say("gauge-label", gauge=kind)
    return Figure(f"{kind}_gauge", label, band.value, "psi", sea_level=sea.value if sea else None)


def _time(case: Case, times: tuple[Time, ...]) -> tuple[Figure, ...]:
    """The cook's own time, where it was read for a pressure canner and is one that is printed for the food; else the
    printed one, where there is only one."""
    printed = times[0].most_min if times and tested.is_one(times) else None
    time = process_times.base_min(case.request) or printed
    return (Figure("process_time", say("process-label"), time, "min", sea_level=time),) if time else ()


def _is_left_out(case: Case) -> bool:
    told = {time.most_min for time in _printed(case)}
    time = case.request.time_high_min or case.request.time_min
    return process_times.given(case.request) and process_times.base_min(case.request) is None and time not in told


def _left_out(case: Case) -> tuple[Caution, ...]:
    """That a time was left out, without saying it again."""
    if not _is_left_out(case):
        return ()
    text = say("left-out", food=called(case.request), why=_why_left_out(case))
    return (Caution("warn", text, ("usda-aib-539",)),)


def _why_left_out(case: Case) -> str:
    if not food_of(case.request).named:
        return "unnamed"
    return "not_printed" if process_times.named_pressure(case.request) else "other_canner"


def _why(case: Case, known: dict[str, Band]) -> Words:
    each = [say("printed", gauge=kind, psi=number(band.value), band=band.said) for kind, band in known.items()]
    text = say("as-printed", each=listed(each, "semicolons"))
    if _table(case) == "high_acid":
        return together(text, say("acid-food"))
    psi = max(known.values(), key=lambda band: band.value).value
    gauge_pa = psi / PSI_PER_PA
    inside = temp(inside_c(case.here, gauge_pa))
    return together(text, say("botulism", dies=temp(BOTULISM_C), pressure=gauge_reading(gauge_pa), inside=inside))


def _pairs(case: Case) -> tuple[Said, ...]:
    """Tomatoes and their kin: a longer time goes with a lower pressure, and the two columns may not be crossed."""
    if not food_of(case.request).paired:
        return ()
    lower = {kind: canner_psi(kind, "high_acid", case.here.elevation_m) for kind in ("dial", "weighted")}
    here = listed([_on(kind, band.value) for kind, band in lower.items() if band], "or")
    return (say("pairs", here=here),)


def _dial_beyond_usda(case: Case, known: dict[str, Band]) -> tuple[Caution, ...]:
    if whole_feet(case.here.elevation_m) <= USDA_DIAL_TO_FT:
        return ()
    text = say("beyond-usda", dial="printed" if "dial" in known else "none")
    return (Caution("warn", text, ("usda-aib-539", "extension-canning-8000")),)


def _dial_check(case: Case) -> tuple[Caution, ...]:
    weighted = gauge(case.request) == "weighted"
    return () if weighted else (Caution("warn", say("dial-check"), ("usda-aib-539", "nchfp")),)


@rule("preserve.low_acid", "usda-aib-539")
def low_acid(case: Case) -> Part | None:
    """Low-acid food under pressure: that it never goes into boiling water or open steam."""
    if food_of(case.request).kind != "low_acid":
        return None
    return Part(cautions=(Caution("stop", say("never-boiled", food=called(case.request)), ("usda-aib-539",)),))


@rule("preserve.other_canner", "usda-aib-539")
def other_canner(case: Case) -> Part | None:
    """Where neither food nor canner was named: the pressure for all that does not go in boiling water."""
    if food_of(case.request).named or case.request.subject is not None or vessel(case.request) == PRESSURE:
        return None
    wanted_here = low_acid_gauges(case.request)
    return Part(steps=(say("other-canner", wanted=wanted_here),)) if wanted_here.items else None
