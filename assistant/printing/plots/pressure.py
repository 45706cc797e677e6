"""How hot it is inside a pressure cooker, against elevation, a line for each gauge reading."""

from __future__ import annotations

from typing import TYPE_CHECKING

from assistant.printing.plots import COLOURS, DASHES, Asked
from assistant.printing.sheet import elevations_below, hot, mark_here, sheet, steps_m, temperatures_beside, up
from assistant.replies.sentences import worded
from rules.heat.pressure import inside_c
from rules.physics.ambient import ambient
from rules.physics.units import PSI_PER_PA
from rules.said import Said, elevation, listed, sentences, temp

if TYPE_CHECKING:
    from matplotlib.figure import Figure

GAUGES_PSI = (15.0, 12.0, 10.0, 7.0, 5.0, 0.0)
LEAST_TOP_M = 4500.0
# what keeps a name readable where its line runs under it
OVER_LINES = {"facecolor": "white", "edgecolor": "none", "pad": 0.5}
say = sentences("printing/plots")


def draw(asked: Asked) -> Figure:
    """Lines of equal gauge pressure. source: iapws-if97, us-standard-atmosphere-1976"""
    units = asked.units
    figure, axes = sheet(asked, worded(say("pressure"), units), worded(say("pressure-note"), units))
    heights = steps_m(max(LEAST_TOP_M, asked.elevation_m))
    for psi, colour, dash in zip(GAUGES_PSI, COLOURS, DASHES, strict=False):
        inside = [hot(inside_c(ambient(h), psi / PSI_PER_PA), units) for h in heights]
        axes.plot([up(h, units) for h in heights], inside, color=colour, linestyle=dash)
        name = worded(_name(psi), units)
        axes.annotate(name, (up(heights[-1], units), inside[-1]), xytext=(-4, 6), textcoords="offset points",
                      ha="right", size=9, color=colour, bbox=OVER_LINES)  # fmt: skip
    mark_here(axes, asked, worded(say("here", elevation=elevation(asked.elevation_m)), units))
    elevations_below(axes, asked)
    temperatures_beside(axes, units)
    return figure


def told(asked: Asked) -> str:
    """How hot each line is at sea level and in the kitchen."""
    sea, here = ambient(0.0), ambient(asked.elevation_m)
    lines = [
        say("pressure-line", name=_name(psi), sea=temp(inside_c(sea, psi / PSI_PER_PA)),
            here=temp(inside_c(here, psi / PSI_PER_PA)))
        for psi in GAUGES_PSI
    ]  # fmt: skip
    place = elevation(asked.elevation_m)
    return worded(say("pressure-told", elevation=place, lines=listed(lines, "semicolons")), asked.units)


def _name(psi: float) -> Said:
    return say("gauge", psi=f"{psi:g}") if psi else say("open-pot")
