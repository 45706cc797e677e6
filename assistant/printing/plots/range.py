"""The range of a time as a bar, here and at sea level, for the dish of a question."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from assistant.errors import AssistantError
from assistant.printing.pen import wrapped
from assistant.printing.plots import COLOURS, Asked
from assistant.printing.sheet import TICK_PT, sheet, size_of
from assistant.replies.headline import doing_of
from assistant.replies.quantities import duration
from assistant.replies.sentences import worded
from assistant.worked_out import work_out
from rules.model import Answer, Kitchen, Request
from rules.model import Figure as AnswerFigure
from rules.said import Said, duration_span, elevation, listed, sentences
from rules.said import duration as duration_of

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

LONG_MIN, HOUR_MIN = 150.0, 60.0
say = sentences("printing/plots")


@dataclass(frozen=True, slots=True)
class Timed:
    """A question for a time, what is done to which dish, and its times [min] here and at sea level."""

    question: Request
    title: str
    here: AnswerFigure
    sea: AnswerFigure


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
    timed = timed_of(asked)
    figure, axes = sheet(asked, timed.title, worded(say("range-note"), asked.units))
    name = worded(say("range-here", elevation=elevation(asked.elevation_m)), asked.units)
    _bar(axes, asked, 1, timed.here, name, COLOURS[1])
    _bar(axes, asked, 0, timed.sea, worded(say("range-sea"), asked.units), COLOURS[2])
    _minutes_below(axes, timed.here.high or timed.here.value)
    return figure


def told(asked: Asked) -> str:
    """Both times with their ranges.

    raises: NoRange where the words ask for no time
    """
    timed = timed_of(asked)
    places = ((asked.elevation_m, timed.here), (0.0, timed.sea))
    lines = listed((at(elevation_m, time) for elevation_m, time in places), "semicolons")
    return worded(say("range-told", title=timed.title, lines=lines), asked.units)


def at(elevation_m: float, time: AnswerFigure) -> Said:
    """A time with its range, and where it is."""
    span = duration_span(*ends(time))
    return say("time-at", elevation=elevation(elevation_m), time=duration_of(time.value), span=span)


def ends(time: AnswerFigure) -> tuple[float, float]:
    """The ends of its range [min]; the time itself where it has none."""
    return time.low or time.value, time.high or time.value


def timed_of(asked: Asked) -> Timed:
    """What a question for a time comes to.

    raises: NoRange where there is none
    """
    answer = _answer(asked)
    here = answer.figure("cook_time") if answer else None
    sea = answer.figure("baseline_time") if answer else None
    if answer is None or here is None or sea is None:
        raise NoRange(asked.words or (asked.question.dish or "" if asked.question else ""))
    words = asked.words or worded(doing_of(answer.request), asked.units)
    return Timed(answer.request, words[:1].upper() + words[1:], here, sea)


def _answer(asked: Asked) -> Answer | None:
    """What the bars are of: the question that was asked in talk, or the words on the line."""
    from assistant.answering import reply_to

    if asked.question:
        return work_out(asked.question).answer
    kitchen = Kitchen(elevation_m=asked.elevation_m, units=asked.units)
    return reply_to(f"how long to {asked.words}", kitchen=kitchen) if asked.words else None


def _bar(axes: Axes, asked: Asked, level: int, time: AnswerFigure, name: str, colour: str) -> None:
    low, high = ends(time)
    hatch = "//" if level else ""
    axes.barh(level, high - low, left=low, height=0.42, color="white", edgecolor=colour, hatch=hatch, linewidth=1.5)
    axes.plot([time.value] * 2, [level - 0.28, level + 0.28], color="black", linewidth=3)
    middle, span = duration(time.value), f"{duration(low)} – {duration(high)}"
    # from the left edge, where there is room for it however late the bar begins
    wide_mm = axes.get_position().width * size_of(asked).width
    lines = wrapped(f"{name}: {middle}  ({span})", TICK_PT + 1, wide_mm)
    axes.annotate("\n".join(lines), (0.01, level + 0.33), xycoords=("axes fraction", "data"), size=TICK_PT + 1,
                  va="bottom", parse_math=False)  # fmt: skip


def _minutes_below(axes: Axes, most_min: float) -> None:
    from matplotlib.ticker import MultipleLocator

    axes.set_ylim(-0.5, 1.8)
    axes.set_xlim(0, most_min * 1.08)
    axes.set_yticks([])
    if most_min > LONG_MIN:
        axes.xaxis.set_major_locator(MultipleLocator(HOUR_MIN))
    axes.xaxis.set_major_formatter(lambda value, _: duration(value) if value else "0")
