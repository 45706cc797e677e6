"""A sheet of a plot: one pair of axes with its title, its labels in both unit systems and quiet lines."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from assistant.printing.drawing import new_figure
from assistant.printing.pen import width_mm, wrapped
from assistant.printing.plots import Asked
from rules.model import Units
from rules.physics.units import FT_PER_M, to_c, to_f

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

TITLE_PT, LABEL_PT, TICK_PT, NOTE_PT = 14, 11, 10, 8
LINE_MM, NOTE_LINE_MM = 6.5, 3.8
# the step between elevations along the foot, on a wide sheet and on a narrow one
STEP = {("us", False): 2000, ("metric", False): 500, ("us", True): 4000, ("metric", True): 1000}


@dataclass(frozen=True, slots=True)
class Size:
    """A sheet and its margins round the axes [mm], beside the lines of its title and its note."""

    width: float
    height: float
    left: float
    right: float
    head: float
    foot: float


WIDE = Size(width=200, height=130, left=22, right=22, head=9, foot=18)
NARROW = Size(width=100, height=110, left=18, right=20, head=5, foot=15)
# what stays white at the right of a line of text [mm]
EDGE_MM = 5


def size_of(asked: Asked) -> Size:
    """The sheet that a plot is drawn on."""
    return NARROW if asked.narrow else WIDE


def sheet(asked: Asked, title: str, note: str = "", left_mm: float | None = None) -> tuple[Figure, Axes]:
    """A blank sheet with its title, and lines in small type at its foot. left_mm: for names beside the axes"""
    size = size_of(asked)
    left_mm = left_mm or size.left
    wide = size.width - left_mm - size.right
    heads = wrapped(title, TITLE_PT, size.width - left_mm - EDGE_MM, bold=True)
    notes = wrapped(note, NOTE_PT, size.width - size.left - EDGE_MM) if note else []
    over, under = size.head + len(heads) * LINE_MM, size.foot + len(notes) * NOTE_LINE_MM
    figure = new_figure(size.width, size.height)
    box = (left_mm / size.width, under / size.height, wide / size.width, (size.height - over - under) / size.height)
    axes = figure.add_axes(box)
    axes.set_title("\n".join(heads), size=TITLE_PT, weight="bold", loc="left", parse_math=False)
    axes.tick_params(labelsize=TICK_PT)
    axes.grid(linewidth=0.4, color="0.8")
    axes.set_axisbelow(True)
    axes.spines[["top", "right"]].set_visible(False)
    if notes:
        figure.text(size.left / size.width, 2.5 / size.height, "\n".join(notes), size=NOTE_PT, color="0.25",
                    parse_math=False)  # fmt: skip
    return figure, axes


def elevations_below(axes: Axes, asked: Asked) -> None:
    """Elevations along the foot, in the units of the asker."""
    from matplotlib.ticker import MultipleLocator

    axes.xaxis.set_major_locator(MultipleLocator(STEP[asked.units, asked.narrow]))
    axes.xaxis.set_major_formatter(lambda value, _: f"{value:,.0f}")
    axes.set_xlabel("ft" if asked.units == "us" else "m", size=LABEL_PT)


def up(elevation_m: float, units: Units) -> float:
    """An elevation as it is plotted."""
    return elevation_m * FT_PER_M if units == "us" else elevation_m


def hot(temp_c: float, units: Units) -> float:
    """A temperature as it is plotted."""
    return to_f(temp_c) if units == "us" else temp_c


def temperatures_beside(axes: Axes, units: Units) -> None:
    """Temperatures on the left in the units of the asker, on the right in the others."""
    first, second = ("°F", "°C") if units == "us" else ("°C", "°F")
    there, back = (to_c, to_f) if units == "us" else (to_f, to_c)
    axes.set_ylabel(first, size=LABEL_PT, rotation=0, labelpad=14)
    other = axes.secondary_yaxis("right", functions=(_each(there), _each(back)))
    other.set_ylabel(second, size=LABEL_PT, rotation=0, labelpad=14)
    other.tick_params(labelsize=TICK_PT)
    other.spines["right"].set_visible(True)


def _each(of):  # type: ignore[no-untyped-def]
    """A conversion of one figure, of as many as the axis asks for."""
    import numpy

    return numpy.vectorize(of, otypes=[float])


def mark_here(axes: Axes, asked: Asked, label: str) -> None:
    """An upright line where the kitchen is, its label on the side that has more room.

    label: broken behind its colon first, where it has one and is too long
    """
    x = up(asked.elevation_m, asked.units)
    low, high = axes.get_xlim()
    share = min(max((x - low) / (high - low), 0.0), 1.0)
    wide_mm = axes.get_position().width * size_of(asked).width
    room_mm = max(share, 1 - share) * wide_mm - 2
    label_pt = NOTE_PT if asked.narrow else TICK_PT
    parts = [label] if width_mm(label, label_pt) <= room_mm else label.split(": ")
    lines = [line for part in parts for line in wrapped(part, label_pt, room_mm)]
    axes.axvline(x, color="black", linewidth=0.8, linestyle=(0, (2, 2)))
    axes.annotate("\n".join(lines), (x, 1.0), xycoords=("data", "axes fraction"),
                  xytext=(4 if share < 0.5 else -4, -2), textcoords="offset points", size=label_pt,
                  ha="left" if share < 0.5 else "right", va="top", parse_math=False)  # fmt: skip


def steps_m(highest_m: float, count: int = 60) -> list[float]:
    """Elevations from sea level to the highest, evenly."""
    return [highest_m * n / count for n in range(count + 1)]
