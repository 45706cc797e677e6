"""The range of a time as a bar, here and at sea level, for the dish of a question."""

from __future__ import annotations

from typing import TYPE_CHECKING

from assistant.errors import AssistantError
from assistant.printing.plots import COLOURS, Asked
from assistant.printing.sheet import TICK_PT, sheet
from assistant.replies.headline import doing_of
from assistant.replies.quantities import duration
from assistant.replies.sentences import worded
from assistant.worked_out import work_out
from rules.model import Answer, Kitchen
from rules.model import Figure as AnswerFigure
from rules.said import elevation, sentences

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

LONG_MIN, HOUR_MIN = 150.0, 60.0
say = sentences("printing/plots")


class NoRange(AssistantError, ValueError):
    """A question without a time to draw. words: as they were said"""

    def __init__(self, words: str) -> None:
        super().__init__(words)
        self.words = words

    def __str__(self) -> str:
        asked = f"{self.words!r} has" if self.words else "a range needs"
        return f'{asked} no dish and method that take a time; say one, such as "braise short ribs"'


def draw(asked: Asked) -> Figure:
    """Two bars, the middle marked.

    raises: NoRange where the words ask for no time
    """
    answer = _answer(asked)
    here = answer.figure("cook_time") if answer else None
    sea = answer.figure("baseline_time") if answer else None
    if here is None or sea is None:
        raise NoRange(asked.words or (asked.question.dish or "" if asked.question else ""))
    words = asked.words or worded(doing_of(asked.question), asked.units) if asked.question else asked.words
    title = words[:1].upper() + words[1:]
    figure, axes = sheet(title, worded(say("range-note"), asked.units))
    _bar(axes, 1, here, worded(say("range-here", elevation=elevation(asked.elevation_m)), asked.units), COLOURS[1])
    _bar(axes, 0, sea, worded(say("range-sea"), asked.units), COLOURS[2])
    _minutes_below(axes, here.high or here.value)
    return figure


def _answer(asked: Asked) -> Answer | None:
    """What the bars are of: the question that was asked in talk, or the words on the line."""
    from assistant.answering import reply_to

    if asked.question:
        return work_out(asked.question).answer
    kitchen = Kitchen(elevation_m=asked.elevation_m, units=asked.units)
    return reply_to(f"how long to {asked.words}", kitchen=kitchen) if asked.words else None


def _bar(axes: Axes, level: int, time: AnswerFigure, name: str, colour: str) -> None:
    low, high = time.low or time.value, time.high or time.value
    hatch = "//" if level else ""
    axes.barh(level, high - low, left=low, height=0.42, color="white", edgecolor=colour, hatch=hatch, linewidth=1.5)
    axes.plot([time.value] * 2, [level - 0.28, level + 0.28], color="black", linewidth=3)
    middle, ends = duration(time.value), f"{duration(low)} – {duration(high)}"
    # from the left edge, where there is room for it however late the bar begins
    axes.annotate(
        f"{name}: {middle}  ({ends})", (0.01, level + 0.33), xycoords=("axes fraction", "data"), size=TICK_PT + 1
    )


def _minutes_below(axes: Axes, most_min: float) -> None:
    from matplotlib.ticker import MultipleLocator

    axes.set_ylim(-0.5, 1.8)
    axes.set_xlim(0, most_min * 1.08)
    axes.set_yticks([])
    if most_min > LONG_MIN:
        axes.xaxis.set_major_locator(MultipleLocator(HOUR_MIN))
    axes.xaxis.set_major_formatter(lambda value, _: duration(value) if value else "0")
