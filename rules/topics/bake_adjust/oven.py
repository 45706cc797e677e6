"""The oven of a bake: how it is set here, and how long the bake takes in it."""

from __future__ import annotations

from dataclasses import replace

from rules.baking import components, oven
from rules.baking.bands import Span
from rules.baking.batch import Batch, percent_apart
from rules.baking.change import Shift
from rules.book import Case, Part, rule
from rules.heat.heat_settings import setting as usual_setting
from rules.model import Figure
from rules.physics.units import round_to
from rules.recipes.steps import scaled_min, shifted_c
from rules.said import Measure, Said, Words, duration_span, number, oven_span, sentences, together
from rules.said import oven as setting
from rules.topics.bake_adjust.asked import asked, baked, batch, percents, style, wanted
from rules.topics.bake_adjust.unchanged import no_need, stays

say = sentences("topics/bake_adjust/oven")


@rule("bake_adjust.oven", "uwyo-altitude-adjusters")
def oven_rule(case: Case) -> Part | None:
    """The oven setting here."""
    if not wanted(case, "oven"):
        return None
    work = batch(case)
    moved = oven.shift(work)
    if moved is None and components.share(style(case), "oven") is not None:
        return no_need(case, "oven")
    if moved is None or moved.shift is None or moved.shift.stays:
        part = stays(case, "oven", "oven")
        return part and replace(part, headline=together(part.headline, usual(case, Span(0.0, 0.0, 0.0))))
    told = _by if case.request.temperature_c is None else _to
    return told(case, work, moved.shift, moved.sources)


def usual(case: Case, more: Span) -> Words:
    """What such a bake is usually set to, so much hotter [K]; empty where the cook named a setting, or no dish."""
    request = case.request
    if request.temperature_c is not None or request.dish is None or request.dish_class is None:
        return ""
    heat = usual_setting(request.dish, request.dish_class, "bake")
    return say("usual", setting=oven_span(heat.low_c + more.low, heat.high_c + more.value))


def _by(case: Case, work: Batch, shift: Shift, sources: tuple[str, ...]) -> Part:
    """By how many degrees the oven is set hotter or cooler."""
    by, way = _degrees_more(case, shift), "hotter" if shift.span.value > 0 else "cooler"
    told = asked(case) == "oven"
    return Part(
        figures=(_change(shift),),
        steps=() if told else (say("by", by=by, way=way),),
        because=oven.why(work),
        headline=together(
            say("by-headline", by=by, way=way, baked=baked(case), place=case.place), usual(case, shift.span)
        )
        if told
        else "",
        sources=sources,
    )


def _to(case: Case, work: Batch, shift: Shift, sources: tuple[str, ...]) -> Part:
    """What becomes of the setting that the cook named."""
    base_c, span, told = case.request.temperature_c or 0.0, shift.span, asked(case) == "oven"
    unit, size = ("degF", 5.0) if case.request.units == "us" else ("degC", 2.0)
    to_c, low_c, high_c = (shifted_c(base_c, k, unit, size) for k in (span.value, span.low, span.high))
    now, was = setting(to_c), setting(base_c)
    here = Figure(
        "oven_to", say("to-label"), round(to_c, 1), "degC", round(min(low_c, to_c), 1), round(max(high_c, to_c), 1)
    )
    return Part(
        figures=(here, _change(shift)),
        steps=() if told else (say("to", now=now, was=was),),
        because=oven.why(work),
        headline=say("to-headline", now=now, was=was, baked=baked(case), place=case.place) if told else "",
        sources=sources,
    )


def _change(shift: Shift) -> Figure:
    value, low, high = (round(k, 1) for k in (shift.span.value, shift.span.low, shift.span.high))
    return Figure("oven_change", say("change-label"), value, "K", low, high)


def _degrees_more(case: Case, shift: Shift) -> Said:
    """15 to 25 °F (8 to 14 °C); about 10, at most 25 where the range begins at nothing."""
    value_f, *ends_f = (abs(round_to(k * 1.8, 5)) for k in (shift.span.value, shift.span.low, shift.span.high))
    low_f, high_f = sorted(ends_f)
    if low_f:
        return _degrees(case, low_f, high_f)
    return say("at-most", about=_degrees(case, value_f, value_f), most=_degrees(case, high_f, high_f))


def _degrees(case: Case, low_f: float, high_f: float) -> Said:
    fahrenheit = _span(number(low_f), number(high_f))
    celsius = _span(*(number(round_to(f / 1.8, 1)) for f in (low_f, high_f)))
    return say("degrees", units=case.request.units, fahrenheit=fahrenheit, celsius=celsius)


def _span(low: Measure, high: Measure) -> Measure | Said:
    return low if low == high else say("span", low=low, high=high)


@rule("bake_adjust.time", "egg-producers-cakes")
def time_rule(case: Case) -> Part | None:
    """The baking time here."""
    if not wanted(case, "time"):
        return None
    share, work = components.share(style(case), "time"), batch(case)
    if share is None or not share.value:
        return stays(case, "time", "time")
    if not work.expects("time"):
        return no_need(case, "time")
    ratio, base_min, told = work.ratio("time"), case.request.time_min, asked(case) == "time"
    percent, oven_way = percent_apart(ratio.value), "hotter" if work.up else "cooler"
    pace = "shorter" if ratio.value < 1 else "longer"
    change = Figure("time_change", say("time-change"), *percents(ratio))
    because = say("time-because", oven=oven_way, percent=percent, pace=pace)
    if base_min is None or not told:
        line = say("look-in", percent=percent, pace=pace) if work.up else say("more-time", percent=percent)
        return Part(figures=(change,), steps=() if told else (line,), because=because, headline=line if told else "")
    high_min = case.request.time_high_min or base_min
    low, high = scaled_min(base_min, ratio.value), scaled_min(high_min, ratio.value)
    headline = say(
        "time", now=duration_span(low, high), was=duration_span(base_min, high_min), place=case.place, oven=oven_way
    )
    here = Figure("time_to", say("time-to"), (low + high) / 2, "min", low, high)
    return Part(figures=(here, change), because=because, headline=headline)
