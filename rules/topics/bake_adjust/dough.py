"""How fast a dough rises here, and what to do about it."""

from __future__ import annotations

from rules.baking import yeast
from rules.baking.batch import Batch, percent_apart
from rules.book import Case, Part, rule
from rules.model import Figure
from rules.recipes.steps import scaled_min
from rules.said import Said, duration, number, sentences, yes
from rules.topics.bake_adjust.asked import asked, batch, percents, wanted

# doughs that a starter raises
SOURED = ("sourdough", "panettone")
say = sentences("topics/bake_adjust/dough")


@rule("bake_adjust.proof", "uwyo-altitude-adjusters", "usu-faq-204", "computed")
def proof_rule(case: Case) -> Part | None:
    """How fast a dough rises here, and what to do about it."""
    if not wanted(case, "proof"):
        return None
    work, told = batch(case), asked(case) == "proof"
    if told and case.request.time_min is not None:
        return _timed(case, work, case.request.time_min)
    low, way = yeast.proof_ratio(work).low, _way(work)
    headline = say("look", percent=percent_apart(low), way=way, place=case.place)
    return Part(
        figures=(_change(work),),
        steps=_steps(),
        because=_because(case, work),
        headline=headline if told else "",
    )


def _timed(case: Case, work: Batch, time_min: float) -> Part:
    """What a rising time that the cook named is at the baseline, and what a recipe's comes to here."""
    there_min = time_min / work.pressure_ratio
    less = work.ratio("yeast")
    low, to = (scaled_min(time_min, r) for r in (work.pressure_ratio, yeast.proof_ratio(work).value))
    here, there = duration(time_min), duration(there_min)
    headline = (
        say("doubles-less-yeast", here=here, place=case.place, there=there, baseline=case.baseline,
            percent=percent_apart(less.value), starter=yes(case.request.dish in SOURED))
        if work.up and less.value < 1
        else say("doubles", here=here, there=there, baseline=case.baseline)
    )  # fmt: skip
    return Part(
        figures=(
            Figure("proof_baseline", say("at-the-baseline", baseline=case.baseline), round(there_min, 1), "min"),
            Figure("proof_to", say("recipes-time"), to, "min", low, time_min),
            Figure("yeast_change", say("yeast-change"), *percents(less)),
            _change(work),
        ),
        steps=(say("recipe-step", time=here, baseline=case.baseline, low=duration(low)), *_steps()),
        because=_because(case, work),
        headline=headline,
    )


def _way(work: Batch) -> str:
    return "less" if work.up else "more"


def _change(work: Batch) -> Figure:
    return Figure("proof_change", say("change"), *percents(yeast.proof_ratio(work)))


def _steps() -> tuple[Said, ...]:
    return say("until-doubled"), say("for-flavour")


def _because(case: Case, work: Batch) -> Said:
    return say(
        "because", swell=number(1 / work.pressure_ratio), place=case.place, baseline=case.baseline,
        percent=percent_apart(work.pressure_ratio), way=_way(work),
    )  # fmt: skip
