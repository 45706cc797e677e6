"""How fast a dough rises here, and what to do about it."""

from __future__ import annotations

from rules.baking import yeast
from rules.baking.bands import Span
from rules.baking.batch import Batch, percent_apart
from rules.book import Case, Part, rule
from rules.model import Figure
from rules.recipes.steps import scaled_min
from rules.said import Said, duration, measure, number, sentences, temp, together, yes
from rules.topics.bake_adjust.asked import COOLEST_OVEN_C, asked, batch, percents, wanted

# no more and no less of the recipe's yeast in one step, how exactly it is told, and what a recipe usually has [g]
LEAST_YEAST, MOST_YEAST, MARGIN, USUAL_G = 0.35, 1.4, 0.05, 7.0
# what is shorter is the time of something else, and no rise [min]
SHORTEST_RISE_MIN = 5.0
# a dough with butter in it is not punched down
LAMINATED = "laminated"
# doughs that a starter raises
SOURED = ("sourdough", "panettone")
say = sentences("topics/bake_adjust/dough")


@rule("bake_adjust.proof", "uwyo-altitude-adjusters", "usu-faq-204", "computed")
def proof_rule(case: Case) -> Part | None:
    """How fast a dough rises here, and what to do about it."""
    if not wanted(case, "proof") or case.request.rise_min:
        return None
    work, told = batch(case), asked(case) == "proof"
    own_min = case.request.time_min
    if told and own_min is not None and own_min >= SHORTEST_RISE_MIN:
        return _timed(case, work, own_min)
    low, way = yeast.proof_ratio(work).low, _way(work)
    until = "half" if "no_gluten" in case.traits else "double"
    headline = say("look", percent=percent_apart(low), way=way, place=case.place, until=until)
    return Part(
        figures=(_change(work),),
        steps=_steps(case),
        because=_because(case, work),
        headline=headline if told else "",
    )


def _timed(case: Case, work: Batch, time_min: float) -> Part:
    """What a rising time that the cook named is at the baseline, and what a recipe's comes to here."""
    there_min = time_min / work.pressure_ratio
    less = work.ratio("yeast")
    low, to = (scaled_min(time_min, r) for r in (work.pressure_ratio, yeast.proof_ratio(work).value))
    here, there = duration(time_min), duration(there_min)
    if case.request.from_elevation_m is not None:
        return _carried(case, work, time_min, to, low)
    headline = (
        say("doubles-less-yeast", here=here, place=case.place, there=there, baseline=case.baseline,
            percent=percent_apart(less.value), starter=yes(_is_soured(case)))
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
        steps=(say("recipe-step", time=here, baseline=case.baseline, low=duration(low)), *_steps(case)),
        because=_because(case, work),
        headline=headline,
    )


def _carried(case: Case, work: Batch, time_min: float, to_min: float, low_min: float) -> Part:
    """What a rising time that was told of the baseline comes to here, at the same warmth."""
    temp_c = case.request.temperature_c
    warm = temp_c is not None and temp_c < COOLEST_OVEN_C
    return Part(
        figures=(Figure("proof_to", say("recipes-time"), to_min, "min", low_min, time_min), _change(work)),
        headline=say(
            "rises-here",
            there=duration(time_min),
            baseline=case.baseline,
            here=duration(to_min),
            place=case.place,
            low=duration(low_min),
            warm=yes(warm),
            temperature=temp(temp_c or 0.0),
        ),
        steps=_steps(case)[:1],
        because=_because(case, work),
    )


def _is_soured(case: Case) -> bool:
    """Whether a starter raises it, or it is the starter itself that is timed."""
    return case.request.dish in SOURED or "sourdough" in case.traits or case.request.course == "starter"


def _way(work: Batch) -> str:
    return "less" if work.up else "more"


def _change(work: Batch) -> Figure:
    return Figure("proof_change", say("change"), *percents(yeast.proof_ratio(work)))


def _steps(case: Case) -> tuple[Said, ...]:
    batter = "no_gluten" in case.traits
    of = (
        "layered" if case.dish_class == LAMINATED else "batter" if batter else "soured" if _is_soured(case) else "other"
    )
    return say("until-doubled", of=of), say("for-flavour", of=of)


def _because(case: Case, work: Batch) -> Said:
    return say(
        "because", swell=number(1 / work.pressure_ratio), place=case.place, baseline=case.baseline,
        percent=percent_apart(work.pressure_ratio), way=_way(work),
    )  # fmt: skip


@rule("bake_adjust.paced_yeast", "common-practice", "computed")
def paced_yeast(case: Case) -> Part | None:
    """Yeast for a dough whose own time is known: gas comes in proportion to the yeast, so it goes by the times."""
    request = case.request
    own_min, wanted_min = request.rise_min, request.rise_wanted_min
    if not own_min or not wanted_min:
        return None
    air_min = wanted_min * batch(case).pressure_ratio
    ratio = min(max(own_min / wanted_min, LEAST_YEAST), MOST_YEAST)
    said = request.quantity
    was, unit = (said.value, said.unit) if said and said.unit else (USUAL_G, "g")
    low, high = sorted((max(ratio - MARGIN, LEAST_YEAST), ratio + MARGIN))
    headline = say(
        "paced", way="less" if ratio < 1 else "more", own=duration(own_min), wanted=duration(wanted_min),
        was=measure(was, unit), to=measure(_round(was * ratio, unit), unit), item=request.subject or "yeast",
        span=measure(_round(was * low, unit), unit, _round(was * high, unit)),
    )  # fmt: skip
    far = own_min / wanted_min > MOST_YEAST
    return Part(
        figures=(Figure("yeast_change", say("yeast-change"), *percents(Span(ratio, low, high))),),
        headline=say("warmth-first", own=duration(own_min), wanted=duration(wanted_min), air=duration(air_min),
                     place=case.place, then=headline) if far else headline,
        steps=_steps(case)[:1] if far else (say("paced-trial"), *_steps(case)[:1]),
        because=together(say("paced-because"), _because(case, batch(case)) if case.moved else ""),
    )  # fmt: skip


def _round(amount: float, unit: str) -> float:
    """An amount of yeast as a baker weighs it."""
    return round(amount, 2) if unit == "percent" or amount < 1 else round(amount, 1)
