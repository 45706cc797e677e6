"""Eggs in a bake: whole ones a size larger, whites beaten less stiff."""

from __future__ import annotations

from rules.baking import components, eggs
from rules.book import Case, Part, rule
from rules.model import Figure
from rules.said import number, sentences
from rules.topics.bake_adjust.asked import FIRST_BAND_M, asked, batch, percents, style, wanted
from rules.topics.bake_adjust.unchanged import no_need, stays

say = sentences("topics/bake_adjust/eggs")
USUAL_EGGS = 3
FOAMS = ("foam_cake", "souffle")


@rule("bake_adjust.egg", "csu-high-altitude-food-prep")
def egg_rule(case: Case) -> Part | None:
    """Eggs here: a size larger."""
    if not wanted(case, "egg"):
        return None
    share, work = components.share(style(case), "egg"), batch(case)
    if share is None or not share.value:
        return stays(case, "egg", "eggs")
    if not work.expects("egg"):
        return no_need(case, "egg")
    said, told = case.request.quantity, asked(case) == "egg"
    count = int(said.value) if said and told and said.value >= 1 else USUAL_EGGS
    ratio = work.ratio("egg")
    to_count, size, mass_g = eggs.nearest(count * eggs.sizes()["large"] * ratio.value, count)
    line = say("egg", count=number(count), eggs=number(to_count), size=size, grams=number(mass_g, 0))
    return Part(
        figures=(
            Figure("egg_to", say("egg-to", count=number(count)), mass_g, "g"),
            Figure("egg_change", say("egg-change"), *percents(ratio)),
        ),
        steps=() if told else (say("egg-step", change=line),),
        because=eggs.why(work, ratio.value),
        headline=say("egg-headline", change=line, place=case.place) if told else "",
        sources=components.sources(style(case), "egg"),
    )


@rule("bake_adjust.foam", "csu-high-altitude-food-prep", "nmsu-circular-293")
def foam_rule(case: Case) -> Part | None:
    """How far to whip egg whites."""
    told = asked(case) == "foam"
    if not told and not (asked(case) is None and style(case) in FOAMS):
        return None
    work = batch(case)
    if work.to_m < FIRST_BAND_M:
        return no_need(case, "foam")
    return Part(
        steps=() if told else (say("foam-step"),),
        because=say("foam-because", swell=number(1 / work.pressure_ratio), baseline=case.baseline),
        headline=say("foam-headline", place=case.place) if told else "",
    )
