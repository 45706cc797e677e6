"""Boiling water to make it safe to drink: the health agencies differ, and most ask for longer where it boils cooler."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.heat.cook_times import time_figures
from rules.heat.where_water_boils import boiling_point
from rules.model import Caution, Figure
from rules.said import duration, listed, sentences, temp
from rules.tables import read_csv

AGENCIES = "tables/drinking_water_cdc-eid-2025-boil.csv"
say = sentences("safety/subjects/drinking_water")


def agency_times(elevation_m: float) -> dict[str, float]:
    """Minutes at a full rolling boil that each agency asks for; 0 where it asks for the boil alone.

    The longer time is given from the elevation that the agency names, that elevation included.

    source: cdc-eid-2025-boil

    >>> agency_times(1700)
    {'CDC': 1.0, 'EPA': 3.0, 'Health Canada': 1.0, 'WHO': 0.0}
    """
    return {row["agency"]: _agency_min(row, elevation_m) for row in read_csv(AGENCIES).rows}


def _agency_min(row: dict[str, str], elevation_m: float) -> float:
    above = row["above_m"] and elevation_m >= float(row["above_m"])
    return float(row["high_min"] if above else row["boil_min"])


@rule("safety.drinking_water", "cdc-eid-2025-boil", "epa-boil", "health-canada-boil", "who-boil")
def drinking_water(case: Case) -> Part:
    """How long to boil water to make it safe to drink, agency by agency; the longest is the answer."""
    times = agency_times(case.here.elevation_m)
    most = max(times.values())
    asked = {agency: minutes for agency, minutes in times.items() if minutes}
    told = listed([say("asks", agency=name, time=duration(time)) for name, time in asked.items()], "semicolons")
    each = tuple(
        Figure(f"boil_{agency.casefold().replace(' ', '_')}", say("label", agency=agency), minutes, "min")
        for agency, minutes in asked.items()
    )
    return Part(
        figures=(*time_figures(case, (1.0, 1.0), (min(asked.values()), most, most)), *each),
        headline=say("headline", asked=_asked(case), place=case.place, time=duration(most)),
        steps=(say("count", time=duration(most)), say("cool")),
        because=say("because", each=told, boil=temp(case.here.boiling_c)),
        cautions=(Caution("warn", say("only-germs", boil=temp(case.here.boiling_c)), ("cdc-eid-2025-boil",)),),
    )


def _asked(case: Case) -> str:
    """Whether it is asked if boiled water is safe, and not how long it boils."""
    forms = set(case.request.forms)
    whether = not forms.isdisjoint(("safe", "is_ok")) and forms.isdisjoint(("how_long", "how_to", "which"))
    return "whether" if whether and case.request.time_min is None else "how-long"


NEEDS = ("elevation",)
RULES = (drinking_water, boiling_point)
