"""Boiling water to make it safe to drink."""

from __future__ import annotations

from rules.book import Case
from rules.explanations.named import Figures, Values
from rules.model import Figure
from rules.safety.subjects.drinking_water import agency_times
from rules.said import Listed, duration, listed, sentences, yes

say = sentences("why/shared")


def longest_min(elevation_m: float) -> float:
    """The longest time that an agency asks for [min]."""
    return max(agency_times(elevation_m).values())


def agencies(case: Case) -> Listed:
    """What each agency asks for that asks for more than the boil alone."""
    times = agency_times(case.here.elevation_m).items()
    return listed((say("agency", name=name, time=duration(minutes)) for name, minutes in times if minutes), "commas")


def boil_time(case: Case) -> Figure:
    """The longest time here and at sea level."""
    return Figure(
        "boil_time", "", longest_min(case.here.elevation_m), "min", sea_level=longest_min(case.sea.elevation_m)
    )


def grows(case: Case) -> str:
    """Whether the agencies ask for more here than at sea level, as a word."""
    return yes(longest_min(case.here.elevation_m) > longest_min(case.sea.elevation_m))


VALUES: Values = {
    "agencies": agencies,
    "boil_time": lambda case: duration(longest_min(case.here.elevation_m)),
    "boil_time_at_sea": lambda case: duration(longest_min(case.sea.elevation_m)),
    "boil_time_grows": grows,
}
FIGURES: Figures = {"boil_time": boil_time}
