"""Troubleshoot: what went wrong, and the one change to make next, by how much; then what to try after it.

Published advice changes one thing at a time, leavening first, then sugar, then liquid. The elevation is asked for where
it would change the answer.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache

from rules import mending
from rules.book import Case, Part, rule
from rules.explanations.air import dries
from rules.explanations.boil import boils
from rules.explanations.rise import gas_swells
from rules.foods.methods import usual_class
from rules.mending import Mending, Ranked
from rules.mending.safety import cautions
from rules.model import Caution, Figure, Request
from rules.said import Said, measure, sentences, yes

say = sentences("topics/troubleshoot")
RUNNERS_UP = 3
ELSEWHERE_M = 2133.6
CHANGES_LITTLE_M = 900.0
FIGURE_IDS = {"degC": "to", "K": "change", "percent": "factor", "min": "to"}
WITHOUT_START = ("K", "degC", "min")
GAS, WATER = ("leavening", "yeast", "proof", "pan"), ("boil", "cooker", "stage", "gel", "fat", "brew")


@lru_cache(maxsize=64)
def worked_out(request: Request, elevation_m: float) -> Mending:
    """What mending has to say to a request at an elevation [m].

    raises: UnknownWord for a symptom that is not in the catalogue
    """
    return mending.suggest(
        [request.subject or ""], dish_class=_class(request), dish=request.dish, method=request.method,
        elevation_m=elevation_m, from_elevation_m=request.from_elevation_m or 0.0, time_min=request.time_min,
        units=request.units,
    )  # fmt: skip


def _class(request: Request) -> str | None:
    """The class of the dish; where none was named, what is usually cooked by the method that was."""
    if request.dish_class in (None, "general"):
        return usual_class(request.method)
    return request.dish_class


def needs(request: Request) -> tuple[str, ...]:
    """What went wrong; and the elevation, where the next change is another one higher up."""
    if request.subject not in mending.catalogue():
        return ("symptom",) if request.subject is None else ()
    low, high = (worked_out(request, m).next for m in (0.0, ELSEWHERE_M))
    return () if low and high and low.line == high.line else ("elevation",)


def mended(case: Case) -> Mending | None:
    """The mending of this request, at sea level where the elevation is not known and does not matter."""
    if case.request.subject not in mending.catalogue():
        return None
    return worked_out(case.request, case.request.elevation_m or 0.0)


@rule("troubleshoot.next_change", "common-practice", "uwyo-baking-high-altitudes")
def next_change(case: Case) -> Part | None:
    """The one change to make next, and by how much."""
    found = mended(case)
    if found is None or found.next is None:
        return None
    first, refused = found.next, any(symptom.discard for symptom in found.symptoms)
    placed = yes(case.request.elevation_m is not None)
    return Part(
        headline=say("discard") if refused else say("next", placed=placed, place=case.place, change=first.line),
        figures=figures(first),
        steps=(first.line, say("nothing-else")) if refused else (say("nothing-else"),),
        because=first.cause.because,
        sources=first.change.sources,
    )


def figures(row: Ranked) -> tuple[Figure, ...]:
    """The size of a change as a figure; none for a change in words."""
    change = row.change
    if change.to_value is None or change.to_unit is None:
        return ()
    of, unit = say("of", what=change.what, item=change.item or change.what), change.to_unit
    figure_id = f"{change.what}_{FIGURE_IDS.get(unit, 'to')}"
    if unit == "percent":
        parts = [None if v is None else round(v / 100, 2) for v in (change.to_value, change.to_low, change.to_high)]
        return (Figure(figure_id, say("against", of=of), parts[0] or 0.0, "factor", *parts[1:]),)
    return (Figure(figure_id, _label(row, of), change.to_value, unit, change.to_low, change.to_high),)


def _label(row: Ranked, of: Said) -> Said:
    """What the figure of a change is called; with the amount it begins from, where it begins from one."""
    change = row.change
    if change.to_unit == "K":
        return say("change-of", of=of)
    if change.from_value is None or change.to_unit in WITHOUT_START:
        return of
    return say("of-amount", of=of, was=measure(change.from_value, change.from_unit or ""))


@rule("troubleshoot.runners_up", "common-practice")
def runners_up(case: Case) -> Part | None:
    """What to try after that, one at a time."""
    found = mended(case)
    if found is None or len(found.causes) < 2:
        return None
    second, *others = (row.line for row in found.causes[1 : 1 + RUNNERS_UP])
    return Part(steps=(say("if-not", change=second), *(say("after-that", change=line) for line in others)))


@rule("troubleshoot.air", "us-std-atm-1976", "iapws-r7-97", "ashrae-fundamentals")
def air(case: Case) -> Part | None:
    """What the air of the place has to do with the first cause."""
    found = mended(case)
    if found is None or found.next is None or case.request.elevation_m is None:
        return None
    if abs(case.here.elevation_m) < CHANGES_LITTLE_M:
        return None
    cause = found.next.cause
    told: list[tuple[bool, Callable[[Case], Said], str]] = [
        (cause.by in WATER, boils, "iapws-r7-97"),
        (cause.what in GAS or cause.id.startswith("whites"), gas_swells, "us-std-atm-1976"),
        (cause.what == "liquid", dries, "ashrae-fundamentals"),
    ]
    return next((Part(because=tell(case), sources=(source,)) for fits, tell, source in told if fits), None)


@rule("troubleshoot.taken_for", "common-practice")
def taken_for(case: Case) -> Part | None:
    """Which dish was assumed, where the words mean something else of every dish and none was named."""
    found = mended(case)
    if found is None or _class(case.request) is not None:
        return None
    if not mending.catalogue()[case.request.subject or ""].usual:
        return None
    from rules.foods.dishes import classes

    label = classes()[found.bench.dish_class].label
    return Part(cautions=(Caution("note", say("taken-for", dish=label)),))


@rule("troubleshoot.one_at_a_time", "uwyo-altitude-adjusters", "uwyo-baking-high-altitudes")
def one_at_a_time(case: Case) -> Part | None:
    """The order of changes that is published for bakes."""
    found = mended(case)
    formula = found is not None and any(row.cause.by == "formula" for row in found.causes)
    if not formula:
        return None
    return Part(cautions=(Caution("note", say("one-at-a-time"), ("uwyo-altitude-adjusters",)),))


@rule("troubleshoot.safety", "usda-fsis-safe-temperatures", "usda-aib-539", "common-practice")
def safety(case: Case) -> Part | None:
    """What the failed dish may do to somebody."""
    found = mended(case)
    return Part(cautions=cautions(found)) if found else None


@rule("troubleshoot.not_in_the_catalogue", "common-practice")
def not_in_the_catalogue(case: Case) -> Part | None:
    """A symptom by an id of another catalogue."""
    if mended(case) is not None:
        return None
    return Part(
        headline=say("unknown"),
        steps=(say("describe"),),
    )


RULES = (safety, next_change, runners_up, air, taken_for, one_at_a_time, not_in_the_catalogue)
