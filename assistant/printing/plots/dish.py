"""The time of a dish against elevation, with its range, and the kitchen marked."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from assistant.printing.plots import COLOURS, Asked
from assistant.printing.plots.range import HOUR_MIN, LONG_MIN, at, ends, timed_of
from assistant.printing.sheet import elevations_below, mark_here, sheet, steps_m, up
from assistant.replies.quantities import duration
from assistant.replies.sentences import worded
from rules import engine
from rules.model import Figure as AnswerFigure
from rules.model import Request
from rules.said import listed, sentences

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

LEAST_TOP_M, STEPS = 4000.0, 16
say = sentences("printing/plots")


def draw(asked: Asked) -> Figure:
    """The middle as a line, the range as a band round it.

    raises: NoRange where the words ask for no time
    """
    timed = timed_of(asked)
    figure, axes = sheet(asked, timed.title, worded(say("dish-note"), asked.units))
    times = list(_times(asked, timed.question))
    heights = [up(h, asked.units) for h, _ in times]
    low, high = zip(*(ends(time) for _, time in times), strict=True)
    axes.fill_between(heights, low, high, color=COLOURS[1], alpha=0.25, linewidth=0)
    axes.plot(heights, [time.value for _, time in times], color=COLOURS[1], linewidth=2)
    axes.errorbar(
        up(asked.elevation_m, asked.units), timed.here.value, yerr=_arms(timed.here), color=COLOURS[0], marker="o",
        markersize=8, capsize=5,
    )  # fmt: skip
    axes.set_ylim(0, max(high) * 1.25)
    mark_here(axes, asked, worded(at(asked.elevation_m, timed.here), asked.units))
    elevations_below(axes, asked)
    _minutes_beside(axes, max(high))
    return figure


def told(asked: Asked) -> str:
    """The time at sea level, in the kitchen and at the top, each with its range.

    raises: NoRange where the words ask for no time
    """
    timed = timed_of(asked)
    *_, top = _times(asked, timed.question)
    places = {0.0: timed.sea, asked.elevation_m: timed.here, top[0]: top[1]}
    lines = listed((at(h, places[h]) for h in sorted(places)), "semicolons")
    return worded(say("dish-told", title=timed.title, lines=lines), asked.units)


def _times(asked: Asked, question: Request):  # type: ignore[no-untyped-def]
    """Elevations [m] and the times there, where there is one."""
    for height_m in steps_m(max(LEAST_TOP_M, asked.elevation_m), STEPS):
        there = replace(question, elevation_m=height_m, elevations_m=(), pressure_pa=None)
        if time := engine.answer(there).figure("cook_time"):
            yield height_m, time


def _arms(time: AnswerFigure) -> tuple[list[float], list[float]]:
    low, high = ends(time)
    return [time.value - low], [high - time.value]


def _minutes_beside(axes: Axes, most_min: float) -> None:
    from matplotlib.ticker import MultipleLocator

    if most_min > LONG_MIN:
        axes.yaxis.set_major_locator(MultipleLocator(HOUR_MIN * max(1, round(most_min / HOUR_MIN / 8))))
    axes.yaxis.set_major_formatter(lambda value, _: duration(value) if value else "0")
