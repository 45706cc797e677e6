"""The air over a pot at sea level and in the kitchen: what it weighs, where the water boils, and the drawing of it."""

from __future__ import annotations

from dataclasses import dataclass
from io import BytesIO, StringIO
from typing import TYPE_CHECKING

from assistant.printing.drawing import NO_DATE, new_figure
from assistant.replies.sentences import worded
from rules import example
from rules.model import Units
from rules.physics import air
from rules.physics.ambient import ambient
from rules.physics.units import CM_PER_IN, FT_PER_M, G_PER_LB
from rules.said import Said, elevation, fixed, sentences, temp

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

# The drawing [mm], and how much of the air it shows [m]; 10 % of all air lies higher.
WIDTH_MM, HEIGHT_MM = 180.0, 82.0
FOOT_M, TOP_M = -2200.0, 16_000.0
# A column is so wide, and stands so far from the left [mm].
COLUMN_MM, SEA_MM, HERE_MM = 32.0, 22.0, 103.0
DOTS = 330
GOLDEN = 0.618034
POT_M, LID_MM, LEVEL_M = 1250.0, 20.0, 1.0
NAME_PT, FIGURE_PT, NOTE_PT, SMALL_PT = 10, 11, 7.5, 6.5
DOTS_PER_INCH = 300
CM2_PER_M2 = 10_000.0
TICK_FT, TICK_M = 10_000, 3000
say = sentences("printing/lesson")


@dataclass(frozen=True, slots=True)
class AirColumn:
    """The air over a kitchen and over sea level. elevation_m of the kitchen, which is not at sea level [m]"""

    elevation_m: float
    units: Units

    @property
    def pressure_pa(self) -> float:
        """What the air over the kitchen presses with [Pa]."""
        return ambient(self.elevation_m).pressure_pa


def air_column(elevation_m: float, units: Units) -> AirColumn:
    """The air over a kitchen; one at sea level is set beside an example higher up.

    >>> air_column(0.0, "us").elevation_m > 1000
    True
    """
    return AirColumn(elevation_m if abs(elevation_m) >= LEVEL_M else example.EXAMPLE_M, units)


def weight(pressure_pa: float, units: Units) -> Said:
    """What the air weighs that presses so [Pa], on a square inch and on a square centimetre."""
    kg_per_cm2 = air.weight_kg_per_m2(pressure_pa) / CM2_PER_M2
    pounds = kg_per_cm2 * CM_PER_IN**2 * 1000 / G_PER_LB
    return say("air-weight", units=units, pounds=fixed(pounds, 1), kilograms=fixed(kg_per_cm2, 2))


def as_svg(column: AirColumn) -> str:
    """The drawing to stand within a page, its text as text.

    raises: NothingDraws where matplotlib is not installed
    """
    out = StringIO()
    drawn(column).savefig(out, format="svg", metadata=NO_DATE["svg"])
    text = out.getvalue()
    return text[text.index("<svg") :]


def as_png(column: AirColumn) -> bytes:
    """The drawing for paper.

    raises: NothingDraws where matplotlib is not installed
    """
    out = BytesIO()
    drawn(column).savefig(out, format="png", dpi=DOTS_PER_INCH, metadata=NO_DATE["png"])
    return out.getvalue()


def drawn(column: AirColumn) -> Figure:
    """Two columns of dots, each dot the same weight of air; black on white."""
    figure = new_figure(WIDTH_MM, HEIGHT_MM)
    axes = figure.add_axes((0, 0, 1, 1))
    axes.set_xlim(0, WIDTH_MM)
    axes.set_ylim(FOOT_M, TOP_M)
    axes.set_axis_off()
    sea = worded(say("sea-level"), column.units)
    here = worded(say("place", elevation=elevation(column.elevation_m)), column.units)
    _scale(axes, column.units)
    _column(axes, SEA_MM, 0.0, sea, column.units)
    _column(axes, HERE_MM, column.elevation_m, here, column.units)
    _half(axes, column.units)
    return figure


def _column(axes: Axes, x: float, elevation_m: float, name: str, units: Units) -> None:
    """A column over a pot, whose rim is at the elevation, and beside it what it weighs and where water boils."""
    from matplotlib.patches import Rectangle

    right = x + COLUMN_MM
    ground_m = elevation_m - POT_M
    axes.add_patch(
        Rectangle((x - 3, FOOT_M), COLUMN_MM + 6, ground_m - FOOT_M, facecolor="0.85", edgecolor="black", hatch="///",
                  linewidth=0.8)
    )  # fmt: skip
    dots = [dot for dot in dots_m() if dot[1] > elevation_m]
    axes.plot([x + 1 + across * (COLUMN_MM - 2) for across, _ in dots], [high for _, high in dots], linestyle="",
              marker="o", markersize=1.7, color="black")  # fmt: skip
    for edge in (x, right):
        axes.plot([edge, edge], [elevation_m, TOP_M], color="black", linewidth=0.8)
    _pot(axes, x + COLUMN_MM / 2, ground_m)
    here = ambient(elevation_m)
    text = right + 4
    first, _, second = worded(weight(here.pressure_pa, units), units).partition(" (")
    heavy, unit, area = first.split(" ", 2)
    lines = (
        (10_900, name, NAME_PT, "bold"),
        (9450, worded(say("air-weighs"), units), NOTE_PT, "normal"),
        (8150, f"{heavy} {unit}", FIGURE_PT, "bold"),
        (7150, area, NOTE_PT, "normal"),
        (6200, second.removesuffix(")"), NOTE_PT, "normal"),
        (elevation_m - 150, worded(say("air-boils"), units), NOTE_PT, "normal"),
        (elevation_m - 1400, worded(temp(here.boiling_c), units), FIGURE_PT, "bold"),
    )
    for high, line, size, bold in lines:
        axes.text(text, high, line, size=size, weight=bold, va="baseline")


def _pot(axes: Axes, middle: float, ground_m: float) -> None:
    """A pot on the ground, open, its rim POT_M above it, two handles, and water in it."""
    from matplotlib.patches import Rectangle

    left = middle - LID_MM / 2
    axes.add_patch(Rectangle((left, ground_m), LID_MM, POT_M, facecolor="white", edgecolor="none"))
    axes.add_patch(Rectangle((left, ground_m), LID_MM, POT_M * 0.7, facecolor="0.7", edgecolor="none"))
    rim = ground_m + POT_M
    walls = [left, left, left + LID_MM, left + LID_MM]
    axes.plot(walls, [rim, ground_m, ground_m, rim], color="black", linewidth=1.8)
    for side in (left - 3, left + LID_MM):
        axes.plot([side, side + 3], [rim - 300, rim - 300], color="black", linewidth=1.8)


def dots_m() -> list[tuple[float, float]]:
    """Where dots of equal weight lie: across the column [0 to 1], and how high [m]; the same at every call."""
    found = []
    heaviest_pa = air.pressure_pa(air.LOWEST_M)
    for n in range(DOTS):
        pressure_pa = heaviest_pa * (1 - (n + 0.5) / DOTS)
        if pressure_pa > air.ISOTHERMAL_TO_PA and (high_m := air.height_of_m(pressure_pa)) < TOP_M:
            found.append((n * GOLDEN % 1, high_m))
    return found


def _scale(axes: Axes, units: Units) -> None:
    """Heights on the left."""
    step_m = TICK_FT / FT_PER_M if units == "us" else TICK_M
    axes.plot([SEA_MM - 6, SEA_MM - 6], [0, TOP_M], color="0.4", linewidth=0.6)
    n = 0
    while n * step_m < TOP_M - 400:
        label = f"{n * TICK_FT:,} ft" if units == "us" else f"{n * TICK_M:,} m"
        axes.plot([SEA_MM - 7, SEA_MM - 6], [n * step_m] * 2, color="0.4", linewidth=0.6)
        axes.text(SEA_MM - 8, n * step_m, label, size=SMALL_PT, ha="right", va="center", color="0.25")
        n += 1


def _half(axes: Axes, units: Units) -> None:
    """A line under which half of all air lies."""
    half_m = air.height_of_m(air.SEA_LEVEL_PA / 2)
    axes.plot([SEA_MM - 6, HERE_MM + COLUMN_MM + 4], [half_m] * 2, color="black", linewidth=0.8, linestyle=(0, (4, 3)),
              zorder=0)  # fmt: skip
    axes.text(SEA_MM + COLUMN_MM + 4, half_m - 250, worded(say("air-half"), units), size=SMALL_PT, va="top")
