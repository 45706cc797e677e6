"""Boiling water to make it safe to drink: the health agencies differ, and most ask for longer where it boils cooler."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.heat.cook_times import time_figures
from rules.heat.where_water_boils import boiling_point
from rules.model import Caution, Figure
from rules.say import duration
from rules.tables import read_csv

AGENCIES = "tables/drinking_water_cdc-eid-2025-boil.csv"


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
    told = "; ".join(f"{agency} {duration(minutes)}" for agency, minutes in asked.items())
    each = tuple(
        Figure(f"boil_{agency.casefold().replace(' ', '_')}", f"{agency} asks for", minutes, "min")
        for agency, minutes in asked.items()
    )
    return Part(
        figures=(*time_figures(case, (1.0, 1.0), (min(asked.values()), most, most)), *each),
        headline=f"To make water safe to drink at {case.place}, keep it at a full rolling boil for {duration(most)}.",
        steps=(
            f"Start the clock once it boils hard, and count {duration(most)}. Cloudy water: let it settle and filter "
            "it first.",
            "Let it cool by itself, covered, in the clean vessel you will keep it in.",
        ),
        because=f"The agencies differ: {told}; WHO asks only for a rolling boil. Where they differ the longest is "
        f"given, since a boil at {case.say.temp(case.here.boiling_c)} is cooler.",
        cautions=(
            Caution(
                "warn",
                "Boiling kills germs. It does not take out fuel, metals or salts; follow the local notice.",
                ("cdc-eid-2025-boil",),
            ),
        ),
    )


NEEDS = ("elevation",)
RULES = (drinking_water, boiling_point)
