"""A sheet of a plot: one pair of axes with its title, its labels in both unit systems and quiet lines."""

from __future__ import annotations

from typing import TYPE_CHECKING

from assistant.printing.drawing import new_figure
from assistant.printing.plots import HEIGHT_MM, WIDTH_MM
from rules.model import Units
from rules.physics.units import FT_PER_M, to_c, to_f

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

TITLE_PT, LABEL_PT, TICK_PT, NOTE_PT = 14, 11, 10, 8
STEP = {"us": 2000, "metric": 500}


def sheet(title: str, note: str = "") -> tuple[Figure, Axes]:
    """A blank sheet with its title, and a line in small type at its foot."""
    figure = new_figure(WIDTH_MM, HEIGHT_MM)
    axes = figure.add_axes((0.11, 0.17, 0.78, 0.7))
    axes.set_title(title, size=TITLE_PT, weight="bold", loc="left")
    axes.tick_params(labelsize=TICK_PT)
    axes.grid(linewidth=0.4, color="0.8")
    axes.set_axisbelow(True)
    axes.spines[["top", "right"]].set_visible(False)
    if note:
        figure.text(0.11, 0.02, note, size=NOTE_PT, color="0.25")
    return figure, axes


def elevations_below(axes: Axes, units: Units) -> None:
    """Elevations along the foot, in the units of the asker."""
    from matplotlib.ticker import MultipleLocator

    axes.xaxis.set_major_locator(MultipleLocator(STEP[units]))
    axes.xaxis.set_major_formatter(lambda value, _: f"{value:,.0f}")
    axes.set_xlabel("ft" if units == "us" else "m", size=LABEL_PT)


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


def mark_here(axes: Axes, elevation_m: float, units: Units, label: str) -> None:
    """An upright line where the kitchen is."""
    x = up(elevation_m, units)
    axes.axvline(x, color="black", linewidth=0.8, linestyle=(0, (2, 2)))
    axes.annotate(label, (x, 1.0), xycoords=("data", "axes fraction"), xytext=(4, -10), textcoords="offset points",
                  size=TICK_PT)  # fmt: skip


def steps_m(highest_m: float, count: int = 60) -> list[float]:
    """Elevations from sea level to the highest, evenly."""
    return [highest_m * n / count for n in range(count + 1)]
