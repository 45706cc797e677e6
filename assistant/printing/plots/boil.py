"""Where water boils, against elevation, with the kitchen marked."""

from __future__ import annotations

from typing import TYPE_CHECKING

from assistant.printing.plots import COLOURS, Asked
from assistant.printing.sheet import elevations_below, hot, mark_here, sheet, steps_m, temperatures_beside, up
from assistant.replies.quantities import Say
from assistant.replies.sentences import worded
from rules.physics.water import boiling_point_c
from rules.said import elevation, listed, sentences, temp

if TYPE_CHECKING:
    from matplotlib.figure import Figure

LEAST_TOP_M = 4500.0
say = sentences("printing/plots")


def draw(asked: Asked) -> Figure:
    """The curve of the boil from sea level up past the kitchen. source: iapws-if97, us-standard-atmosphere-1976"""
    units = asked.units
    figure, axes = sheet(asked, worded(say("boil"), units), worded(say("boil-note"), units))
    heights = steps_m(max(LEAST_TOP_M, asked.elevation_m))
    axes.plot([up(h, units) for h in heights], [hot(boiling_point_c(h), units) for h in heights], color=COLOURS[0])
    here_c = boiling_point_c(asked.elevation_m)
    axes.plot(up(asked.elevation_m, units), hot(here_c, units), marker="o", color=COLOURS[0], markersize=8)
    label = worded(say("boil-here", elevation=elevation(asked.elevation_m), temp=Say(units).temp(here_c)), units)
    mark_here(axes, asked, label)
    elevations_below(axes, asked)
    temperatures_beside(axes, units)
    return figure


def told(asked: Asked) -> str:
    """The boil at sea level, in the kitchen, and at the top of the curve."""
    places = sorted({0.0, asked.elevation_m, max(LEAST_TOP_M, asked.elevation_m)})
    lines = [say("boil-at", temp=temp(boiling_point_c(h)), elevation=elevation(h)) for h in places]
    return worded(say("boil-told", lines=listed(lines, "commas")), asked.units)
