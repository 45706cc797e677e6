"""A plan as a picture: a bar a stage, a row a dish, time from left to right up to service; black on white."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import TYPE_CHECKING, Any

from assistant.planning.clock import clock
from assistant.planning.plan import TAKEN, Plan, Work
from assistant.planning.plan_view import place_name, view
from assistant.printing.drawing import as_files, new_figure
from assistant.printing.pen import Pen, width_mm, wrapped
from assistant.replies.sentences import worded
from rules.model import Units
from rules.said import sentences

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

WIDTH_MM, MARGIN_MM, HEAD_MM, FOOT_MM, ROW_MM, NAMES_MM = 279.4, 12.0, 30.0, 24.0, 9.0, 42.0
TITLE_PT, NOTE_PT, NAME_PT, TICK_PT, BAR_PT = 15, 9, 10, 9, 7.5
HIGH, HANDS_HIGH, HANDS_AT = 0.62, 0.12, 0.37
# what is longer than this is cut on the left, with a mark: soaks and chills of the day before would leave no room [min]
MOST_MIN = 16 * 60
# from how much time on the marks of the axis stand so far apart [min]
MARKS = ((90, 10), (4 * 60, 30), (8 * 60, 60), (100 * 60, 120))
COOKING, GETTING_HOT = TAKEN[-1], TAKEN[0]
say = sentences("planning/plan")


def picture(plan: Plan, units: Units, form: str) -> bytes:
    """The picture in a format of `drawing`.

    raises: NothingDraws where matplotlib is not installed
    """
    (content,) = as_files([drawn(plan, units)], Path(f"plan.{form}")).values()
    return content


def drawn(plan: Plan, units: Units) -> Figure:
    """The plan on a sheet as high as it has dishes; those that go on first are on top."""
    rows = sorted(range(len(plan.courses)), key=lambda i: (-_begins(plan, i), i))
    high = HEAD_MM + FOOT_MM + ROW_MM * max(len(rows), 1)
    figure = new_figure(WIDTH_MM, high)
    pen, shown = Pen(figure, WIDTH_MM, high, 1.0), view(plan, units)
    (title, *_) = wrapped(shown.title, TITLE_PT, WIDTH_MM - 2 * MARGIN_MM, bold=True)
    pen.write(MARGIN_MM, high - 10, title, TITLE_PT, bold=True)
    pen.write(MARGIN_MM, high - 15.5, "; ".join(shown.summary), NOTE_PT)
    for n, line in enumerate(wrapped(shown.verdict, NOTE_PT, WIDTH_MM - 2 * MARGIN_MM, bold=True)[:2]):
        pen.write(MARGIN_MM, high - 20.5 - 4.2 * n, line, NOTE_PT, bold=True)
    axes = pen.axes(MARGIN_MM + NAMES_MM, FOOT_MM, WIDTH_MM - 2 * MARGIN_MM - NAMES_MM, ROW_MM * max(len(rows), 1))
    per_mm = _scaled(axes, plan, len(rows), units) / (WIDTH_MM - 2 * MARGIN_MM - NAMES_MM)
    for at, i in enumerate(rows):
        course, early = plan.courses[i], plan.early_min[i]
        for work in (w for w in plan.work if w.course is course and w.from_min > w.to_min):
            _bar(axes, at, work, plan, units, per_mm)
        if early:
            axes.plot((-early, 0), (at, at), color="black", linewidth=1.2, linestyle=(0, (1, 1.5)))
        (name, *more) = wrapped(course.name, NAME_PT, NAMES_MM - 4, bold=i in plan.late)
        late = i in plan.late
        axes.text(-0.006, at, f"{name}{'…' if more else ''}", transform=axes.get_yaxis_transform(), ha="right",
                  va="center", size=NAME_PT, weight="bold" if late else "normal", parse_math=False)  # fmt: skip
    pen.write(MARGIN_MM, 5, worded(say("legend"), units), NOTE_PT)
    return figure


def _begins(plan: Plan, at: int) -> int:
    return max((work.from_min for work in plan.work if work.course is plan.courses[at]), default=0)


def _scaled(axes: Axes, plan: Plan, rows: int, units: Units) -> float:
    """The axes for a plan; how much time they span [min]."""
    first = min(plan.work[0].from_min if plan.work else 60, MOST_MIN)
    span = first * 1.02 + 5
    axes.set_xlim(-span, span * 0.01)
    axes.set_ylim(max(rows, 1) - 0.5, -0.5)
    apart = next(apart for most, apart in MARKS if span <= most)
    moments = list(_marks(plan, span, apart))
    axes.set_xticks([-before for before, _ in moments], [clock(moment, units) for _, moment in moments])
    axes.tick_params(labelsize=TICK_PT)
    axes.tick_params(axis="y", left=False, labelleft=False)
    axes.grid(axis="x", linewidth=0.4, color="0.8")
    axes.set_axisbelow(True)
    axes.spines[["top", "right", "left"]].set_visible(False)
    axes.axvline(0, color="black", linewidth=1.8)
    axes.text(0, 1.01, clock(plan.service, units), transform=axes.get_xaxis_transform(), ha="right", va="bottom",
              size=TICK_PT, weight="bold")  # fmt: skip
    return span


def _marks(plan: Plan, span: float, apart: int) -> list[tuple[float, datetime]]:
    """The round times of day in the span, with how long before service they are [min]: as they pass, not as told."""
    moment = plan.at(span).replace(minute=0, second=0)
    found = []
    while moment <= plan.service:
        before = (plan.service.astimezone(UTC) - moment.astimezone(UTC)).total_seconds() / 60
        if before <= span and (moment.hour * 60 + moment.minute) % apart == 0:
            found.append((before, moment))
        moment = (moment.astimezone(UTC) + timedelta(minutes=10)).astimezone(plan.service.tzinfo)
    return found


def _bar(axes: Axes, at: int, work: Work, plan: Plan, units: Units, per_mm: float) -> None:
    """A stage: cooking grey, getting up to heat hatched, what goes on by itself white; hands are black."""
    left, wide = -work.from_min, work.from_min - work.to_min
    look: dict[str, Any] = {
        COOKING: {"facecolor": "0.75"},
        GETTING_HOT: {"facecolor": "white", "hatch": "////"},
    }.get(work.stage.id, {"facecolor": "white"})
    axes.barh(at, wide, left=left, height=HIGH, edgecolor="black", linewidth=0.8, zorder=2, **look)
    if work.hands_min:
        axes.barh(at + HANDS_AT, work.hands_min, left=left, height=HANDS_HIGH, color="black", zorder=3)
    text = ", ".join(place_name(unit, plan) for unit in work.units)
    if work.stage.id == COOKING and text and width_mm(text, BAR_PT) < wide / per_mm - 1:
        axes.text(left + wide / 2, at, text, size=BAR_PT, ha="center", va="center", zorder=4, parse_math=False)
