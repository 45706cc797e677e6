"""The tested way for a food of which another way was refused: its printed time in the canner that it is printed for."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

from rules.book import Case, Part, rule
from rules.preserving import tested
from rules.preserving.pressure import low_acid_gauges
from rules.preserving.printed import of_food, too_big
from rules.preserving.times_here import times
from rules.preserving.vessel import BOILING_WATER, PRESSURE, food_of
from rules.safety.danger import FREEZE
from rules.said import Said, sentences
from rules.tables import read_toml

WAYS = "lexicon/tested_ways.toml"
say = sentences("preserving/tested_way")


@cache
def open_after(kind: str) -> frozenset[str]:
    """The refusals, or the dangers, after which the food may be canned in its tested way."""
    return frozenset(read_toml(WAYS)[kind])


def tested_way(case: Case) -> Said | None:
    """The tested process of the food here; None where none is printed, and where the elevation is not known."""
    request = replace(case.request, subject=None, time_min=None, time_high_min=None, gauge_pa=None)
    known = food_of(request)
    if request.elevation_m is None or not known.process:
        return None
    canner = BOILING_WATER if known.acid else PRESSURE
    if too_big(request, canner):
        request = replace(request, jars=())
    found = times(request, canner)
    if not found or not of_food(request, canner):
        return None
    each = tested.each(found)
    food = tested.packed_food(request, found)
    if canner == BOILING_WATER:
        return say("water", food=food, each=each, place=case.place)
    wanted = low_acid_gauges(request)
    return say("pressure", food=food, each=each, place=case.place, wanted=wanted) if wanted.items else None


@rule("preserve.tested_way", "usda-aib-539")
def after_danger(case: Case) -> Part | None:
    """After a way of canning was warned of: the tested way for that food, with its time here."""
    if case.request.danger not in open_after("dangers") or case.request.pressed == FREEZE:
        return None
    way = tested_way(case)
    return Part(steps=(way,)) if way else None
