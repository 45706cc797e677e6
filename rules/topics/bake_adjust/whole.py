"""The whole set of changes, where nothing in particular was asked."""

from __future__ import annotations

from rules.baking import components
from rules.baking.batch import Batch, percent_apart
from rules.book import Case, Part, rule
from rules.model import Caution
from rules.physics.units import round_to
from rules.said import Said, listed, number, sentences
from rules.topics.bake_adjust.asked import asked, baked, batch, counted_from
from rules.topics.bake_adjust.unchanged import lacks, no_need_at_all

say = sentences("topics/bake_adjust/whole")
# no oven is set finer than this [degF]
LEAST_OVEN_F = 2.5
IN_SHORT = ("leavening", "yeast", "sugar", "liquid", "flour", "oven")
# in which order one change at a time is tried, the strongest first
ORDER = ("leavening", "yeast", "sugar", "liquid")


@rule("bake_adjust.set", "uwyo-altitude-adjusters")
def whole_set(case: Case) -> Part | None:
    """The headline and the order of work where nothing in particular was asked."""
    if asked(case) is not None:
        return None
    work = batch(case)
    if not work.expects("leavening"):
        return no_need_at_all(case)
    order = [say("component", component=component) for component in ORDER if _changes(case, work, component)]
    several = (
        (Caution("note", say("one-at-a-time", order=listed(order, "commas")), ("uwyo-altitude-adjusters",)),)
        if len(order) > 1
        else ()
    )
    return Part(headline=counted_from(case, in_short(case, work)), cautions=several)


def _changes(case: Case, work: Batch, component: str) -> bool:
    """Whether a component is in such a bake and is changed here."""
    return not lacks(case, component) and _short(work, component) is not None


def in_short(case: Case, work: Batch) -> Said | str:
    """Every change in a sentence; "" where the place asks for none."""
    if not work.expects("leavening"):
        return ""
    changes = [
        short for component in IN_SHORT if _changes(case, work, component) and (short := _short(work, component))
    ]
    told = listed(changes, "and") if changes else say("hardly-anything")
    return say("headline", baked=baked(case), place=case.place, changes=told)


def _short(work: Batch, component: str) -> Said | None:
    """A change in a few words; None where the style makes none."""
    share = components.share(work.style, component)
    if share is None or not share.value:
        return None
    if component == "oven":
        degrees_f = components.difference(work.style, "oven", work.from_m, work.to_m).value
        if abs(degrees_f) < LEAST_OVEN_F:
            return None
        fahrenheit, celsius = number(round_to(abs(degrees_f), 5)), number(round_to(abs(degrees_f) / 1.8, 1))
        way = "hotter" if degrees_f > 0 else "cooler"
        return say("oven", units=work.units, fahrenheit=fahrenheit, celsius=celsius, way=way)
    ratio = work.ratio(component).value
    way = "less" if ratio < 1 else "more"
    return say("amount", percent=percent_apart(ratio), way=way, component=component)
