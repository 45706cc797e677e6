"""Jars judged: the time, and the pressure, that they had or are to have, against the ones that are due here."""

from __future__ import annotations

from dataclasses import replace

from rules.book import Case, Part, rule
from rules.model import Caution, Request
from rules.physics.units import PSI_PER_PA
from rules.preserving import pressure, process_times, tested, times_here
from rules.preserving.bands import CEILING_FT, whole_feet
from rules.preserving.foods import CANNED
from rules.preserving.gate import printed_here
from rules.preserving.times_here import Time
from rules.preserving.vessel import PRESSURE, called, food_of, vessel
from rules.said import Words, gauge, number, sentences, together

# forms that ask for a verdict, on a time that is planned and on jars that stand there
ASKED, ASKED_OF_DONE = ("enough", "verdict"), ("enough", "verdict", "safe", "is_ok", "worth", "can_it", "changes")
# refusals that say no more than that the time is wrong
OF_TIME = (None, "time_not_printed", "missed_elevation", "too_high")
DAY_MIN = 24 * 60.0
say = sentences("preserving/judged")


def judges(request: Request) -> bool:
    """Whether a verdict is asked on the time of jars, of a food that has a tested process.

    >>> judges(Request(topic="preserve", dish="peaches", elevation_m=1500.0, time_min=25.0, forms=("enough",)))
    True
    """
    asked = ASKED_OF_DONE if request.jarred else ASKED
    known = food_of(request).kind in CANNED and request.elevation_m is not None
    told = own_min(request) is not None or request.jarred
    return known and told and (not set(asked).isdisjoint(request.forms) or request.forms[:1] == ("is_ok",))


def own_min(request: Request) -> float | None:
    """The time of the cook's own [min]; None for one that no process takes, as how long the jars have stood."""
    told = request.planned_min if request.time_min is None else request.time_high_min or request.time_min
    return told if told is not None and told <= process_times.LONGEST_MIN else None


@rule("preserve.judged", "usda-aib-539", "nchfp")
def judged(case: Case) -> Part | None:
    """Whether jars had, or are to have, the time and the pressure that are due here, and what becomes of them."""
    verdict = verdict_on(case)
    if verdict is None:
        return None
    kind, headline = verdict
    request, short = case.request, kind != "yes"
    if not short:
        return Part(headline=headline, cautions=_holds(case))
    age = age_of(request)
    redo = () if age == "old" else (say("redo"),)
    steps = redo if age == "fresh" else (*redo, say("later"))
    return Part(
        headline=together(headline, say("so", age=age)) if request.jarred else headline,
        steps=steps if request.jarred else (say("full-time"),),
        because=together(say("why", low=_low_acid(request)), _notes(request)),
        cautions=(Caution("stop" if request.jarred else "warn", say("lid-proves-nothing")), *_holds(case)),
    )


def age_of(request: Request) -> str:
    """Whether the jars came out within a day, longer ago, or nobody said."""
    if request.jarred_ago_min is None:
        return "unknown"
    return "fresh" if request.jarred_ago_min < DAY_MIN else "old"


def verdict_on(case: Case) -> tuple[str, Words] | None:
    """The verdict and its sentence: "no", "just" where it goes by the jar or the recipe, "yes"."""
    request = case.request
    # beside what the recipe says, what is judged is what the cook means to give
    minutes = own_min(replace(request, time_min=None) if request.planned_min is not None else request)
    if whole_feet(request.elevation_m or 0.0) > CEILING_FT:
        return ("no", say("beyond", place=case.place)) if request.jarred else None
    under = vessel(request) == PRESSURE
    if minutes is None and not request.jarred and not (under and request.gauge_pa is not None):
        return None
    bare = replace(request, time_min=None, time_high_min=None)
    found = _printed(request)
    if not found:
        return None if under else _by_recipe(case)
    least, most = min(time.most_min for time in found), max(time.most_min for time in found)
    low, short = under and _is_low(case), minutes is not None and minutes < least
    kind = "no" if short or low else "yes" if (minutes or 0.0) >= most else "unsaid" if minutes is None else "just"
    wanted = pressure.wanted(case) if under else None
    text = say(
        "printed",
        kind=kind,
        own=number(minutes or 0.0),
        gauge=gauge(request.gauge_pa or 0.0) if low else "",
        fault=("both" if short else "pressure") if low else "time",
        food=tested.packed_food(bare, found),
        each=tested.each(found),
        place=case.place,
        at=wanted if wanted else "",
        under="yes" if wanted else "no",
    )
    return kind, text


def _is_low(case: Case) -> bool:
    """Whether the pressure of the cook's own is too low here."""
    own = case.request.gauge_pa
    needed = pressure.least_psi(case)
    return own is not None and needed is not None and own * PSI_PER_PA + pressure.ROUNDING_PSI < needed


def _by_recipe(case: Case) -> tuple[str, Words] | None:
    """The verdict where no printed row is held: by the time that the recipe has in its first column."""
    request = case.request
    told = replace(request, time_min=own_min(request), time_high_min=None)
    found = process_times.process(told)
    if found is None:
        return None
    kind = "yes" if found.most_min <= found.base_min else "no"
    text = say(
        "by-recipe",
        kind=kind,
        own=number(found.base_min),
        due=number(found.most_min),
        food=called(request),
        place=case.place,
    )
    return kind, text


def _low_acid(request: Request) -> str:
    return "yes" if food_of(request).kind == "low_acid" else "no"


def _printed(request: Request) -> tuple[Time, ...]:
    """The printed times of the food here, whatever time the cook gave it."""
    bare = replace(request, time_min=None, time_high_min=None)
    return times_here.times(bare, PRESSURE) if vessel(bare) == PRESSURE else printed_here(bare)


def _notes(request: Request) -> Words:
    found = _printed(request)
    return tested.notes(request, found, vessel(request)) if found else ""


def _holds(case: Case) -> tuple[Caution, ...]:
    found = _printed(case.request)
    holds = tested.holds_for(case.request, found) if found else None
    return (holds,) if holds else ()


def short_verdict(case: Case) -> Words:
    """The verdict in figures, where jars that a danger was heard of fell short; empty where it is not known."""
    request = case.request
    known = food_of(request).kind in CANNED and request.elevation_m is not None
    verdict = verdict_on(case) if known else None
    return verdict[1] if verdict and verdict[0] == "no" else ""
