"""Infant formula: what elevation does to the water; all else is for the label, the doctor and public health."""

from __future__ import annotations

from dataclasses import replace

from rules.book import Case, Part, rule
from rules.foods import infant
from rules.model import Caution
from rules.safety.holding_limits import placed
from rules.safety.subjects.drinking_water import agency_times
from rules.said import Said, duration, sentences, temp

say = sentences("safety/subjects/formula")


@rule("safety.formula", "who-formula-2007")
def formula(case: Case) -> Part | None:
    """How hot the water is for mixing powder."""
    part = infant.formula(Case(replace(case.request, dish=None, dish_class=infant.INFANT)))
    how_long = (case.request.topic == "time" or "how_long" in case.request.forms) and placed(case.request)
    return replace(part, headline=_boil(case) if how_long else _headline(case)) if part else None


def _boil(case: Case) -> Said:
    """For how long the water is boiled, where that is asked."""
    longest = duration(max(agency_times(case.here.elevation_m).values()))
    return say("boil-headline", time=longest, hot=temp(infant.MIX_C), place=case.place)


def _headline(case: Case) -> Said:
    return say(
        "headline",
        hot=temp(infant.MIX_C),
        kitchen="placed" if placed(case.request) else "anywhere",
        boil=temp(case.here.boiling_c),
        place=case.place,
    )


@rule("safety.formula_water", "cdc-eid-2025-boil", "pediatrics-2019-formula")
def water(case: Case) -> Part:
    """Water that has to be made safe first, and that agencies differ."""
    longest = duration(max(agency_times(case.here.elevation_m).values()))
    return Part(
        steps=(say("boil-first", time=longest, place=case.place),) if placed(case.request) else (),
        because=say("because"),
        cautions=(Caution("warn", say("measure"), ("pediatrics-2019-formula", "who-formula-2007")),),
    )


NEEDS: tuple[str, ...] = ()
RULES = (formula, water)
