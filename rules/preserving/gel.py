"""The gel point of jam and jelly: so far above the boil of water, wherever that is."""

from __future__ import annotations

from dataclasses import replace

from rules.book import Case, Part, celsius, rule
from rules.model import Figure, Request
from rules.physics.units import FT_PER_M, to_c
from rules.preserving import tested
from rules.preserving.gate import printed_here
from rules.preserving.vessel import food_of
from rules.said import Said, fixed, number, sentences, temp, temp_drop, together
from rules.tables import read_csv

TABLE = "tables/gel_point_usda-aib-539.csv"
RISE_K = 8 / 1.8
# a syrup of 65 Brix, which is where a pectin gel forms, boils so far above water (Cruess and McNair)
LABORATORY_RISE_K = 3.9
TABLE_STEP_FT = 1000
OF_TIME, UNREAD = ("longer", "shorter"), "thermometer"
say = sentences("preserving/gel")


def printed_f(elevation_ft: float) -> tuple[int, float] | None:
    """The row of the printed table nearest to an elevation [ft] and its temperature [degF]; None beyond the table.

    source: usda-aib-539, guide 7

    >>> printed_f(5280), printed_f(9000)
    ((5000, 211.0), None)
    """
    rows = {int(row["elevation_ft"]): float(row["temp_f"]) for row in read_csv(TABLE).rows}
    nearest = min(rows, key=lambda ft: abs(ft - elevation_ft))
    return (nearest, rows[nearest]) if abs(nearest - elevation_ft) <= TABLE_STEP_FT / 2 else None


def gels(request: Request) -> bool:
    """Whether the food is jam or jelly, which sets; a fruit butter is only thick."""
    food = food_of(request)
    return food.kind == "jam" and food.process != "fruit butter"


def about_jars(request: Request) -> bool:
    """Whether a question about jam is how long its jars are processed, and not where it sets."""
    if request.subject == "gel_point" or request.temperature_c is not None:
        return False
    in_canner = request.subject in ("boiling_water_canning", "steam_canning")
    return bool(request.jars) or in_canner or request.time_min is not None or "how_long" in request.forms


@rule("preserve.gel_point", "usda-aib-539", "lowe-experimental-cookery")
def gel_point(case: Case) -> Part | None:
    """Where jam sets: 8 degF over the boil of water here."""
    request = case.request
    if not (request.subject == "gel_point" or gels(request)):
        return None
    if about_jars(request):
        return Part(steps=(say("beside", temperature=temp(case.here.boiling_c + RISE_K), rise=temp_drop(RISE_K)),))
    if request.elevation_m is None and request.pressure_pa is None:
        return _anywhere(case)
    here_c, sea = case.here.boiling_c + RISE_K, case.sea.boiling_c + RISE_K
    here = round(here_c, 2)
    low = case.here.boiling_c + LABORATORY_RISE_K
    food = case.request.dish if gels(request) and request.dish else say("jam")
    boil = temp(case.here.boiling_c)
    return Part(
        figures=(
            Figure("gel_point", say("label"), here, "degC", round(low, 2), here, sea_level=round(sea, 2)),
            celsius("boiling_point", say("boil-label"), case.here.boiling_c, case.sea.boiling_c),
        ),
        headline=(
            say("headline-time", food=food, temperature=temp(here_c), place=case.place)
            if request.asked_way in OF_TIME
            else say("headline", food=food, temperature=temp(here_c), place=case.place)
        ),
        steps=(say("tests"),) if UNREAD in request.lacking else (say("thermometer"), say("tests")),
        because=together(
            say("because", rise=temp_drop(RISE_K), boil=boil),
            _printed(case),
            say("laboratory", rise=temp_drop(LABORATORY_RISE_K)),
        ),
        maths=say("maths", boil=fixed(case.here.boiling_c), rise=fixed(RISE_K), here=fixed(here_c)),
    )


def _anywhere(case: Case) -> Part:
    """Where jam sets, told by the boil of the cook's own water; and what the elevation would tell beside it."""
    food = case.request.dish if gels(case.request) and case.request.dish else say("jam")
    headline = say("anywhere", food=food, rise=temp_drop(RISE_K), sea=temp(case.sea.boiling_c + RISE_K))
    return Part(headline=headline, steps=(say("thermometer"), say("tests")))


def _printed(case: Case) -> Said | None:
    row = printed_f(case.here.elevation_m * FT_PER_M)
    return say("printed", temperature=temp(to_c(row[1])), elevation_ft=number(row[0])) if row else None


@rule("preserve.jars_of_jam", "usda-aib-539")
def jars_after(case: Case) -> Part | None:
    """After the pan: how long the jars are processed here."""
    request = replace(case.request, time_min=None, time_high_min=None, subject=None)
    times = printed_here(request)
    if case.request.subject == "gel_point" or not times or case.request.elevation_m is None:
        return None
    holds = tested.holds_for(request, times)
    return Part(steps=(say("jars-after", each=tested.each(times)),), cautions=(holds,) if holds else ())
