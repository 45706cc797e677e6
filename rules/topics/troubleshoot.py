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
from rules.mending import Mending, Ranked
from rules.mending.safety import cautions
from rules.model import Caution, Figure, Request
from rules.said import Said

RUNNERS_UP = 3
ELSEWHERE_M = 2133.6
CHANGES_LITTLE_M = 900.0
FIGURE_IDS = {"degC": "to", "K": "change", "percent": "factor", "min": "to"}
LABELS = {
    "oven": "Oven", "sugar_temp": "Sugar, at the end", "fat_temp": "Hot fat", "time": "Time", "proof": "Rising time",
    "pressure": "Under pressure, 15 psi", "temperature": "Water",
}  # fmt: skip
OF_METHOD = {
    "roast": "tender_cut", "grill": "tender_cut", "smoke": "collagen_cut", "braise": "collagen_cut",
    "stew": "mixed_stew", "fry": "battered", "proof": "yeast_bread", "sugarwork": "candy", "brew": "coffee",
}  # fmt: skip
GAS, WATER = ("leavening", "yeast", "proof", "pan"), ("boil", "cooker", "stage", "gel", "fat", "brew")
ONE_AT_A_TIME = "Change nothing else in that batch, and keep a note of how it comes out."


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
        return OF_METHOD.get(request.method or "")
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
    first, where = found.next, f" at {case.place}" if case.request.elevation_m is not None else ""
    line = first.line.rstrip(".")
    return Part(
        headline=_refusal(found) or f"Next change{where}: {line[:1].lower()}{line[1:]}.",
        figures=figures(first),
        steps=(first.line, ONE_AT_A_TIME) if _refusal(found) else (ONE_AT_A_TIME,),
        because=first.cause.because,
        sources=first.change.sources,
    )


def _refusal(found: Mending) -> str:
    """The sentence that must come first where the food is not to be eaten."""
    jars = {s.id for s in found.symptoms} & {"jar_lost_seal", "jar_cloudy"}
    return "Do not taste it: throw that jar out, and mend the next batch." if jars else ""


def figures(row: Ranked) -> tuple[Figure, ...]:
    """The size of a change as a figure; none for a change in words."""
    change = row.change
    if change.to_value is None or change.to_unit is None:
        return ()
    label = LABELS.get(change.what, change.item.capitalize() or change.what.capitalize())
    end = FIGURE_IDS.get(change.to_unit, "to")
    if change.to_unit == "percent":
        parts = [None if v is None else round(v / 100, 2) for v in (change.to_value, change.to_low, change.to_high)]
        return (Figure(f"{change.what}_{end}", f"{label} against what it was", parts[0] or 0.0, "factor", *parts[1:]),)
    was = ""
    if change.from_value is not None and change.to_unit not in ("K", "degC", "min"):
        from rules.baking.rounding import measure

        was = f" for {measure(change.from_value, change.from_unit)}"
    unit = change.to_unit
    label = f"Change of {label[:1].lower()}{label[1:]}" if unit == "K" else label
    return (Figure(f"{change.what}_{end}", f"{label}{was}", change.to_value, unit, change.to_low, change.to_high),)


@rule("troubleshoot.runners_up", "common-practice")
def runners_up(case: Case) -> Part | None:
    """What to try after that, one at a time."""
    found = mended(case)
    if found is None or len(found.causes) < 2:
        return None
    lines = [row.line for row in found.causes[1 : 1 + RUNNERS_UP]]
    return Part(
        steps=tuple(f"{'If that is not it' if not i else 'After that'}, {_inside(x)}" for i, x in enumerate(lines))
    )


def _inside(line: str) -> str:
    return line[:1].lower() + line[1:]


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
    return Part(
        cautions=(
            Caution("note", f"No dish was named, so this is for one kind: {label}. Say what it was, and I go by that."),
        )
    )


@rule("troubleshoot.one_at_a_time", "uwyo-altitude-adjusters", "uwyo-baking-high-altitudes")
def one_at_a_time(case: Case) -> Part | None:
    """The order of changes that is published for bakes."""
    found = mended(case)
    formula = found is not None and any(row.cause.by == "formula" for row in found.causes)
    if not formula:
        return None
    text = (
        "One change a batch, in the published order: leavening, sugar, liquid, then the rest. simmerline batch note "
        "keeps the log and goes on from it."
    )
    return Part(cautions=(Caution("note", text, ("uwyo-altitude-adjusters",)),))


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
        headline="That fault is not among those I can mend yet.",
        steps=("Say what it looks like and how it feels to cut: did it sink, spread, stay hard, dry out?",),
    )


NEEDS = ("symptom",)
RULES = (safety, next_change, runners_up, air, taken_for, one_at_a_time, not_in_the_catalogue)
