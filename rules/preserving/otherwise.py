"""What keeps food without a canner: the dry jar, the freezer, the vinegar of a tested recipe."""

from __future__ import annotations

from collections.abc import Callable

from rules.book import Case, Part, rule
from rules.foods.dishes import dishes
from rules.model import Caution
from rules.preserving import process_times
from rules.preserving.advice import USUAL_PICKLE_MIN
from rules.preserving.foods import food
from rules.preserving.freeze_dry import blanch_more_min, printed_min
from rules.preserving.vessel import called, food_of
from rules.said import Said, duration_span, number, sentences, yes

USDA, NCHFP, MEMORY = "usda-aib-539", "nchfp", "from-memory"
PICKLE, PICKLED = "pickle", "pickled {}"
# what tested pickle recipes are made of
PLANTS = frozenset(("root_vegetable", "tender_vegetable", "leafy_green", "mushroom", "fruit"))
say = sentences("preserving/otherwise")


def _keeps_dry(case: Case) -> Part:
    """Honey, sugar, grains and what is dried through: no canning."""
    return Part(
        headline=say("dry"),
        steps=(say("dry-jar"), say("dry-damp")),
        because=say("dry-why"),
        cautions=(Caution("note", say("dry-honey"), (MEMORY,)),),
        sources=(NCHFP, MEMORY),
    )


def _freezing(case: Case) -> Part:
    """The freezer: for any food that is refused in jars, vegetables blanched first."""
    blanched = _blanched(case)
    return Part(
        headline=say("freeze", food=called(case.request), named=yes(food_of(case.request).named)),
        steps=(*((blanched,) if blanched else ()), say("freeze-pack"), say("freeze-later")),
        because=say("freeze-why"),
        sources=(NCHFP, MEMORY),
    )


def _blanched(case: Case) -> Said | None:
    """How long a vegetable is blanched before it goes into the freezer; None for food that has no printed time."""
    printed = printed_min(case.request.dish or "")
    if printed is None:
        return None
    known = case.request.elevation_m is not None
    less, more = blanch_more_min(case.here.elevation_m) if known else (0.0, 0.0)
    time = duration_span(printed[0] + less, printed[1] + more)
    return say("freeze-blanch", food=case.food, time=time, placed=yes(known), place=case.place)


def _pickled(case: Case) -> Part:
    """The same food in the vinegar of a tested recipe; meat and eggs have none that stands on a shelf."""
    if case.dish_class not in PLANTS:
        return Part(headline=say("pickle-none", food=called(case.request)), because=say("pickle-why"))
    height, own = case.request.elevation_m, _own_pickle(case.request.dish)
    base = own or USUAL_PICKLE_MIN
    added = (
        process_times.added(process_times.SHORT, height) if height is not None and base <= USUAL_PICKLE_MIN else None
    )
    shelf = say(
        "pickle-shelf",
        placed=yes(added is not None),
        base=number(base),
        due=number(base + (added.most_min if added else 0.0)),
        place=case.place,
    )
    return Part(
        headline=say("pickle", food=called(case.request)),
        steps=(say("pickle-vinegar"), shelf, say("pickle-cold")),
        because=say("pickle-why"),
        cautions=(Caution("warn", say("pickle-plain", food=called(case.request)), (USDA,)),),
        sources=(USDA, NCHFP, MEMORY),
    )


def _own_pickle(dish: str | None) -> float | None:
    """The shortest time that is printed for the pickle of a food [min]; None where it has no row of its own.

    >>> _own_pickle("beets"), _own_pickle("green beans"), _own_pickle("chicken stock")
    (30.0, 5.0, None)
    """
    name = PICKLED.format(dish)
    one = PICKLED.format((dish or "").removesuffix("s"))
    named = (d for d in dishes().values() if d.dish_class == PICKLE and (d.name == name or one in d.heard_as))
    return next((food(d.name, PICKLE).water_min for d in named), None)


WAYS: dict[str, Callable[[Case], Part]] = {"keeps_dry": _keeps_dry, "freezing": _freezing, "pickled": _pickled}


@rule("preserve.otherwise", USDA, NCHFP, MEMORY)
def otherwise(case: Case) -> Part | None:
    """What keeps a food without a canner, where that is asked."""
    way = WAYS.get(case.request.subject or "")
    return way(case) if way else None
