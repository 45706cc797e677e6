"""What a bake leaves as it is, and where the tables have nothing to say yet."""

from __future__ import annotations

from typing import Literal

from rules.baking import bands, components
from rules.book import Case, Part
from rules.heat.verdict import opened
from rules.said import Said, elevation, oven, sentences
from rules.topics.bake_adjust.asked import FIRST_BAND_M, asked, baked, style, verdict_on_way

say = sentences("topics/bake_adjust/unchanged")
# the traits of a bake that holds none of a component
NOT_IN_IT = {"leavening": {"no_leavener", "yeast_alone"}, "liquid": {"no_added_liquid"}}
Noun = Literal["eggs", "oven", "time", "pan", "item"]


def stays(case: Case, component: str, noun: Noun, item: str = "") -> Part | None:
    """A component the style leaves alone, or has no advice on: said only where it was asked about.

    noun: what to call it, by its item where it is an ingredient
    """
    if asked(case) != component:
        return None
    part, set_c = components.share(style(case), component), case.request.temperature_c
    own = component == "oven" and set_c is not None
    kept = say("leave-at", setting=oven(set_c or 0.0), baked=baked(case), place=case.place) if own else None
    return Part(
        headline=kept or _judged(case, say("leave", noun=noun, item=item, baked=baked(case), place=case.place)),
        because=say("note", note=part.note) if part and part.note else say("no-advice", baked=baked(case)),
        sources=(part.source,) if part else ("common-practice",),
    )


def _judged(case: Case, headline: Said) -> Said:
    verdict = verdict_on_way(case.request, "")
    return opened(verdict, headline) if verdict else headline


def lacks(case: Case, component: str) -> bool:
    """Whether such a bake usually holds none of a component."""
    return not NOT_IN_IT.get(component, set()).isdisjoint(case.traits)


def has_none(case: Case, component: str, item: str) -> Part | None:
    """A component that such a bake does not hold, said only where it was asked about."""
    if asked(case) != component:
        return None
    return Part(
        headline=say("has-none", item=item, baked=baked(case), place=case.place),
        because=say("has-none-because"),
        sources=("common-practice",),
    )


def no_need(case: Case, component: str) -> Part | None:
    """Nothing to change between two places, said only where it was asked about."""
    if asked(case) != component:
        return None
    return Part(
        headline=_judged(case, say("nothing", place=case.place, begin=elevation(FIRST_BAND_M))),
        because=say("dense-enough"),
        sources=bands.sources(component) if component in bands.TABLES else ("uwyo-altitude-adjusters",),
    )


def no_need_at_all(case: Case) -> Part:
    """Nothing to change in the whole bake."""
    headline = say("as-written", place=case.place, begin=elevation(FIRST_BAND_M))
    return Part(headline=headline, because=say("dense-enough"))
