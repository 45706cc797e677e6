"""How much longer things take than at sea level, against elevation, a line for each kind of food."""

from __future__ import annotations

from typing import TYPE_CHECKING

from assistant.printing.plots import COLOURS, DASHES, MARKS, Asked
from assistant.printing.sheet import LABEL_PT, NOTE_PT, TICK_PT, elevations_below, mark_here, sheet, steps_m, up
from assistant.replies.sentences import worded
from rules import tables
from rules.physics.kinetics import rate_factor, softening
from rules.physics.water import boiling_point_c
from rules.said import Said, elevation, listed, number, sentences

if TYPE_CHECKING:
    from matplotlib.figure import Figure

LEAST_TOP_M = 4000.0
say = sentences("printing/plots")


def draw(asked: Asked) -> Figure:
    """Time at the local boil over time at the boil of sea level. source: data/tables/softening_z.csv"""
    units = asked.units
    figure, axes = sheet(asked, worded(say("time"), units), worded(say("time-note"), units))
    heights = steps_m(max(LEAST_TOP_M, asked.elevation_m), 8)
    for dish_class, colour, dash, mark in zip(classes(), COLOURS, DASHES, MARKS, strict=False):
        factors = [_factor(dish_class, h) for h in heights]
        name = worded(_name(dish_class), units)
        axes.plot([up(h, units) for h in heights], factors, color=colour, linestyle=dash, marker=mark, label=name)
    mark_here(axes, asked, worded(say("here", elevation=elevation(asked.elevation_m)), units))
    elevations_below(axes, asked)
    axes.set_ylabel("×", size=LABEL_PT, rotation=0, labelpad=14)
    names_pt = NOTE_PT if asked.narrow else TICK_PT
    axes.legend(frameon=False, loc="upper left", bbox_to_anchor=(0.0, 0.95), fontsize=names_pt)
    return figure


def told(asked: Asked) -> str:
    """How many times as long each kind of food takes in the kitchen."""
    lines = [say("time-line", name=_name(one), times=number(_factor(one, asked.elevation_m), 1)) for one in classes()]
    place = elevation(asked.elevation_m)
    return worded(say("time-told", elevation=place, lines=listed(lines, "semicolons")), asked.units)


def _factor(dish_class: str, elevation_m: float) -> float:
    return rate_factor(boiling_point_c(elevation_m), boiling_point_c(0.0), softening(dish_class).z_k)


def _name(dish_class: str) -> Said:
    return Said("printing/plots", f"class-{dish_class.replace('_', '-')}")


def classes() -> tuple[str, ...]:
    """The dish classes that have a line."""
    return tuple(tables.read_toml("printing/plots.toml")["time"]["classes"])
