"""A batter that goes into other tins: how deep it stands there, and how long it bakes."""

from __future__ import annotations

from math import pi

from rules.baking.batch import percent_apart
from rules.book import Case, Part, rule
from rules.model import Figure, Tin
from rules.physics.units import CM_PER_IN
from rules.recipes.steps import scaled_min
from rules.said import Said, Words, duration, number, sentences, together, yes
from rules.topics.bake_adjust import whole
from rules.topics.bake_adjust.asked import TIN_SWAP, asked, batch

say = sentences("topics/bake_adjust/tins")
# a wider tin has its middle further from the rim, and takes a little longer for the same depth
WIDER, FARTHER, NEARER = 1.3, 1.1, 0.95
SAME, TOO_DEEP = 0.08, 1.25
# deeper than this nobody fills a tin: it takes a part of the batter
TAKES_PART = 1.7


def area_cm2(tin: Tin) -> float:
    """The floor of all of them together [cm2]."""
    return tin.count * one_cm2(tin)


def one_cm2(tin: Tin) -> float:
    """The floor of one [cm2].

    >>> round(one_cm2(Tin(1, 20.0, None)))
    314
    """
    return tin.across_cm * tin.along_cm if tin.along_cm else pi / 4 * tin.across_cm**2


def time_ratio(old: Tin, new: Tin) -> float:
    """How many times as long a batter bakes in new tins, by how deep it stands and how wide they are.

    source: common practice
    """
    wide = one_cm2(new) / one_cm2(old)
    return area_cm2(old) / area_cm2(new) * (FARTHER if wide > WIDER else NEARER if wide < 1 / WIDER else 1.0)


@rule("bake_adjust.tins", "common-practice")
def tins_rule(case: Case) -> Part | None:
    """Other tins for the same batter."""
    if asked(case) != TIN_SWAP:
        return None
    old, new = case.request.tins[:2]
    depth, pace, base_min = area_cm2(old) / area_cm2(new), time_ratio(old, new), case.request.time_min
    if depth > TAKES_PART:
        headline = say("part", new=label(new), old=label(old), percent=number(100 / depth, 0))
        return Part(headline=together(headline, whole.in_short(case, batch(case))), because=say("because"))
    way = "same" if abs(depth - 1) < SAME else "deeper" if depth > 1 else "shallower"
    headline = say(
        "swap", new=label(new), old=label(old), way=way, percent=percent_apart(depth), time=_time(pace, base_min)
    )
    figures = [Figure("depth", say("depth"), round(depth, 2), "factor")]
    if base_min:
        figures.append(Figure("time_to", say("time"), scaled_min(base_min, pace), "min"))
    steps = (say("too-deep"),) if depth > TOO_DEEP else ()
    return Part(
        figures=tuple(figures), headline=together(headline, whole.in_short(case, batch(case))),
        steps=(*steps, say("look-early")), because=say("because"),
    )  # fmt: skip


def _time(pace: float, base_min: float | None) -> Words:
    if base_min:
        return say("time-to", now=duration(scaled_min(base_min, pace)), was=duration(base_min))
    way = "same" if abs(pace - 1) < SAME else "longer" if pace > 1 else "shorter"
    return say("time-by", way=way, percent=percent_apart(pace))


def label(tin: Tin) -> Said:
    """What it is called, in inches and centimetres."""
    across, along = tin.across_cm, tin.along_cm or 0.0
    return say(
        "tin", count=number(tin.count), one=yes(tin.count == 1), shape="round" if tin.along_cm is None else "other",
        inch=number(across / CM_PER_IN, 0), cm=number(across, 0), inch_too=number(along / CM_PER_IN, 0),
        cm_too=number(along, 0),
    )  # fmt: skip
