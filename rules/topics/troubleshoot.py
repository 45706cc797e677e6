"""Troubleshoot: the likeliest cause of what went wrong and the first thing to change, by how much; then the next.

Published advice changes one thing at a time, leavening first, then sugar, then liquid. Where nobody has said where it
was cooked, the cause and the change are told in general, and the elevation is asked for at the end.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import lru_cache

from rules import mending
from rules.book import Case, Part, rule
from rules.explanations.air import dries
from rules.explanations.boil import boils
from rules.explanations.rise import gas_swells
from rules.foods.methods import usual_class
from rules.mending import Failed, Mending, Ranked, Symptom
from rules.mending.causes import behind
from rules.mending.choice import chosen
from rules.mending.failed_dish import Base
from rules.mending.formula import resized
from rules.mending.safety import cautions
from rules.mending.symptoms import RESCUE
from rules.model import Caution, Figure, Request
from rules.said import Said, listed, measure, sentences

say = sentences("topics/troubleshoot")
RUNNERS_UP, MOST_OFFERED = 2, 4
ELSEWHERE_M = 2133.6
CHANGES_LITTLE_M = 900.0
FIGURE_IDS = {"degC": "to", "K": "change", "percent": "factor", "min": "to"}
WITHOUT_START = ("K", "degC", "min")
GAS, WATER = ("leavening", "yeast", "proof", "pan"), ("boil", "cooker", "stage", "gel", "fat", "brew")
# roles of ingredients that a change can be of
COMPONENTS = {role: role for role in ("leavening", "sugar", "flour", "fat", "yeast", "liquid", "salt")}
COMPONENTS |= {"dairy": "liquid"}
# readings that books give for the middle of a bake [degC]
CORES_C = (85.0, 102.0)
# shorter than this it tells when it went wrong, not how long it was cooked
SHORTEST_MIN = 3.0
# a sponge with powder and fat in it is no foam: it is creamed
FOAM, CREAMED, CREAMED_CLASS = "foam_cake", {"leavening", "fat"}, "layer_cake"
# causes by which a foam is whipped less or more
LESS, MORE = ("whites_too_stiff", "eggs_whipped_far", "overbeaten_air"), ("whites_too_soft", "underbeaten")


def worked_out(request: Request, elevation_m: float | None) -> Mending:
    """What mending has to say to a request at an elevation [m], None where it is not known.

    raises: UnknownWord for a symptom that is not in the catalogue
    """
    return _worked_out(request, elevation_m)


@lru_cache(maxsize=64)
def _worked_out(request: Request, elevation_m: float | None) -> Mending:
    given_min = request.elapsed_min or request.time_min
    found = mending.suggest(
        symptoms(request), dish_class=_class(request), dish=request.dish, method=request.method,
        equipment=request.equipment, elevation_m=elevation_m, from_elevation_m=request.from_elevation_m or 0.0,
        time_min=given_min if given_min and given_min >= SHORTEST_MIN else None, units=request.units,
        # what it has had already is no recipe's time
        written_min=request.time_min if request.elapsed_min and request.elapsed_min != request.time_min else None,
        amounts=amounts(request), said_c=request.temperature_c,
        wanted_c=wanted_core_c(request), struck=request.struck,
    )  # fmt: skip
    return replace(found, causes=chosen(found.causes, request.either)[1])


def wanted_core_c(request: Request) -> float | None:
    """The highest temperature that was said and can be meant of the middle of a bake [degC]."""
    said = () if request.elevation_from == "boil_test" else (request.temperature_c, *request.temperatures_c)
    return max((c for c in said if c is not None and CORES_C[0] <= c <= CORES_C[1]), default=None)


def symptoms(request: Request) -> list[str]:
    """Everything that went wrong, the first fault first."""
    told = (request.subject or "", *request.symptoms_too)
    return [id for id in told if id in mending.catalogue()]


def amounts(request: Request) -> dict[str, Base]:
    """What the cook says is in it, by the component that a change is of."""
    found: dict[str, Base] = {}
    for amount in request.amounts:
        if amount.role in COMPONENTS:
            own = Base(amount.value, amount.unit, amount.ingredient, True)
            found.setdefault(COMPONENTS[amount.role], own)
    return found


def failed(request: Request) -> Failed:
    """The dish that failed, as far as it was told."""
    return Failed.of(_class(request), request.dish, request.method, request.equipment)


def _class(request: Request) -> str | None:
    """The class of the dish; where none was named, what is usually cooked by the method that was."""
    if request.dish_class in (None, "general"):
        return usual_class(request.method)
    roles = {amount.role for amount in request.amounts}
    if request.dish_class == FOAM and roles >= CREAMED:
        return CREAMED_CLASS
    return request.dish_class


def meant(request: Request) -> tuple[Symptom, ...]:
    """What went wrong, as it is meant of the dish."""
    return mending.all_meant(symptoms(request), failed(request))


def needs(request: Request) -> tuple[str, ...]:
    """What went wrong; and the dish, where the words fit any."""
    if not symptoms(request):
        return ("symptom",) if request.subject is None else ()
    return ("dish",) if _is_of_any(request) else ()


def _is_of_any(request: Request) -> bool:
    """Whether the words mean something else of every dish, and no dish, method or cooker tells which."""
    known = failed(request)
    general = all(mending.catalogue()[id].usual for id in symptoms(request))
    return general and not known.is_known and not any(row.singles_out(known) for row in meant(request))


def mended(case: Case) -> Mending | None:
    """The mending of this request; in general where the elevation is not known."""
    if not symptoms(case.request) or _is_of_another(case.request):
        return None
    return worked_out(case.request, case.request.elevation_m)


def _is_of_another(request: Request) -> bool:
    """Whether none of what went wrong can go wrong with the dish, as far as the catalogue knows."""
    known = failed(request)
    return known.is_known and not any(row.befalls(known) for row in meant(request))


def which_fault(request: Request) -> Said | None:
    """The question what went wrong with a dish, with what usually does; None where nothing is known of it."""
    usual = mending.of_dish(failed(request))[:MOST_OFFERED]
    if not usual or request.dish is None:
        return None
    return say("which-fault", food=request.dish, faults=listed((row.title for row in usual), "semicolons"))


@rule("troubleshoot.next_change", "common-practice", "uwyo-baking-high-altitudes")
def next_change(case: Case) -> Part | None:
    """The likeliest cause, and the one change to make first."""
    found = mended(case)
    if found is None or found.next is None:
        return None
    first, refused = found.next, any(symptom.discard for symptom in found.symptoms)
    told = _told(case, found, first)
    row = next((symptom for symptom in found.symptoms if symptom.rescue), None)
    asked = row is not None and case.request.saving
    headline = say("saved", verdict=row.rescue, how=rescue(row), then=told) if row and asked else told
    batch = (say("this-batch", verdict=row.rescue, how=rescue(row)),) if row and not asked else ()
    return Part(
        headline=say("discard") if refused else headline,
        figures=figures(first),
        steps=(first.line, say("nothing-else")) if refused else batch,
        because=first.change.because,
        sources=first.change.sources,
    )


def _told(case: Case, found: Mending, first: Ranked) -> Said:
    """The first change with its cause; before them the one that was chosen, or what the elevation has to do with it."""
    chosen_one, _ = chosen(found.causes, case.request.either)
    if chosen_one:
        way = "less" if first.cause.id in LESS else "more" if first.cause.id in MORE else "none"
        return say("chosen", thing=chosen_one, way=way, change=first.line, cause=first.change.because)
    if case.request.asked_way == "hotter" and first.cause.what == "fat_temp":
        return say("fat-as-set", change=first.line, cause=first.change.because)
    plain = say("cause-and-change", cause=first.change.because, change=first.line)
    if not case.request.blames_place:
        return plain
    return say("blamed", verdict=_blame(case, found), then=plain)


def _blame(case: Case, found: Mending) -> str:
    """Whether the elevation is behind a fault: no, unknown where no place was said, low, or in part."""
    row = found.symptoms[0]
    grows = any(w.per_kft > 0 for w in behind(row, found.bench.dish_class))
    if row.everywhere or not (grows or any(r.cause.by in WATER for r in found.causes)):
        return "no"
    if case.request.elevation_m is None:
        return "may"
    return "partly" if case.here.elevation_m >= CHANGES_LITTLE_M else "low"


def rescue(symptom: Symptom) -> Said:
    """How what has failed can still be used."""
    return Said(RESCUE, symptom.id.replace("_", "-"))


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
    """The second and third cause, each with its change."""
    found = mended(case)
    if found is None or len(found.causes) < 2:
        return None
    second, *others = found.causes[1 : 1 + RUNNERS_UP]
    first = say("if-not", change=second.line, cause=second.change.because)
    return Part(steps=(first, *(say("after-that", change=row.line, cause=row.change.because) for row in others)))


@rule("troubleshoot.formula", "uwyo-altitude-adjusters", "common-practice")
def formula(case: Case) -> Part | None:
    """The formula that was told with the fault, each amount as the tables change it."""
    found = mended(case)
    changes = resized(found.bench) if found and case.here.elevation_m >= CHANGES_LITTLE_M else ()
    return Part(steps=(say("formula", place=case.place, changes=listed(changes, "and")),)) if changes else None


@rule("troubleshoot.air", "us-std-atm-1976", "iapws-r7-97", "ashrae-fundamentals")
def air(case: Case) -> Part | None:
    """What the air of the place has to do with the first cause."""
    found = mended(case)
    if found is None or found.next is None or case.request.elevation_m is None:
        return None
    if abs(case.here.elevation_m) < CHANGES_LITTLE_M or _is_the_same_everywhere(found):
        return None
    cause = found.next.cause
    told: list[tuple[bool, Callable[[Case], Said], str]] = [
        (cause.by in WATER, boils, "iapws-r7-97"),
        (cause.what in GAS or cause.id.startswith("whites"), gas_swells, "us-std-atm-1976"),
        (cause.what == "liquid", dries, "ashrae-fundamentals"),
    ]
    return next((Part(because=tell(case), sources=(source,)) for fits, tell, source in told if fits), None)


@rule("troubleshoot.where", "common-practice")
def where(case: Case) -> Part | None:
    """The elevation asked for, where it is not known and the change goes by it."""
    found = mended(case)
    if found is None or found.next is None or case.request.elevation_m is not None or _is_the_same_everywhere(found):
        return None
    there = worked_out(case.request, ELSEWHERE_M).next
    if not found.next.cause.by or there is None or there.line == found.next.line:
        return None
    return Part(cautions=(Caution("note", say("where")),))


def _is_the_same_everywhere(found: Mending) -> bool:
    return bool(found.symptoms) and found.symptoms[0].everywhere


@rule("troubleshoot.taken_for", "common-practice")
def taken_for(case: Case) -> Part | None:
    """Which dish was assumed, where the words mean something else of every dish and the one named is not known."""
    found = mended(case)
    if found is None or not _is_of_any(case.request):
        return None
    from rules.foods.dishes import classes

    label = classes()[found.bench.dish_class].label
    return Part(cautions=(Caution("note", say("taken-for", dish=label)),))


@rule("troubleshoot.one_at_a_time", "uwyo-altitude-adjusters", "uwyo-baking-high-altitudes")
def one_at_a_time(case: Case) -> Part | None:
    """The order of changes that is published for bakes."""
    found = mended(case)
    formula = found is not None and found.next is not None and found.next.cause.by == "formula"
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
    """A symptom by an id of another catalogue, or one that this dish cannot have."""
    if mended(case) is not None:
        return None
    asked = which_fault(case.request)
    return Part(headline=asked) if asked else Part(headline=say("unknown"), steps=(say("describe"),))


RULES = (safety, next_change, runners_up, formula, air, where, taken_for, one_at_a_time, not_in_the_catalogue)
