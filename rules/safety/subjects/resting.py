"""Resting meat after the fire: the heat that is in it goes on; elevation has no part in it."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.model import Caution, Figure
from rules.said import duration, duration_span, sentences

SAFE_REST_MIN = 3.0
# steaks and chops, roasts, and what is as big as a brisket; birds from a chicken to a turkey [min]
RESTS = {"steak": (5.0, 10.0), "roast": (15.0, 25.0), "large": (30.0, 60.0), "bird": (15.0, 60.0)}
BIRDS = ("whole_bird",)
LARGE = ("collagen_cut",)
SMALL = ("tender_cut", "poultry_pieces", "ground_meat", "fish")
say = sentences("safety/subjects/resting")


def size_of(dish_class: str | None) -> str:
    """How big a piece a class is.

    >>> size_of("tender_cut"), size_of(None)
    ('steak', 'roast')
    """
    if dish_class in BIRDS:
        return "bird"
    return "large" if dish_class in LARGE else "steak" if dish_class in SMALL else "roast"


@rule("safety.resting", "usda-fsis-safe-temperatures", "common-practice")
def resting(case: Case) -> Part:
    """How long meat rests: for safety, and for the carver."""
    size = size_of(case.dish_class)
    low, high = RESTS[size]
    bird = "poultry" in case.traits
    of = "bird" if bird else "meat"
    return Part(
        headline=say("headline", span=duration_span(low, high), safe=duration(SAFE_REST_MIN), size=size, of=of),
        figures=(Figure("rest_time", say("label"), (low + high) / 2, "min", low, high),),
        steps=(say("tent"),),
        because=say("because"),
        cautions=(Caution("note", say("after-the-reading"), ("usda-fsis-safe-temperatures",)),),
    )


NEEDS: tuple[str, ...] = ()
RULES = (resting,)
