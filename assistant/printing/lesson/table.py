"""The table of elevations: one column a kitchen, sea level first, both systems of units in each cell."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from assistant.printing.card import SHOWN as ON_THE_CARD
from assistant.printing.lesson.asking import answer_at
from assistant.printing.lesson.blocks import Grid
from assistant.printing.lesson.themes import TableRow, Theme, always
from assistant.replies.quantities import Say, duration
from assistant.replies.sentences import worded
from rules import example
from rules.model import Figure, Units
from rules.physics.units import PSI_PER_PA
from rules.said import Said, elevation, fixed, sentences

WORDING = "printing/lesson"
# Two kitchens nearer than this stand in one column [m].
SAME_M = 1.0
PA_PER_KPA = 1000.0
CHANGES = ("percent", "shift")
say = sentences("printing/lesson")


def table(theme: Theme, elevations_m: Sequence[float], units: Units) -> Grid:
    """The table of a theme for kitchens at these elevations [m], whatever their order."""
    columns = kitchens(elevations_m)
    head = (worded(say("what"), units), *(worded(_placed(at_m), units) for at_m in columns))
    return Grid(head, tuple(_row(row, columns, units) for row in (*always(), *theme.rows)))


def kitchens(elevations_m: Sequence[float]) -> tuple[float, ...]:
    """Sea level and the elevations, each once, from the lowest up [m]; sea level alone is set beside an example.

    >>> kitchens((2133.6, 0.0, 1615.4, 2133.6))
    (0.0, 1615.4, 2133.6)
    """
    columns = [0.0]
    for at_m in sorted(elevations_m):
        if all(abs(at_m - other) >= SAME_M for other in columns):
            columns.append(at_m)
    return tuple(sorted(columns)) if columns[1:] else (0.0, example.EXAMPLE_M)


def _placed(elevation_m: float) -> Said:
    return say("place", elevation=elevation(elevation_m)) if abs(elevation_m) >= SAME_M else say("sea-level")


def _row(row: TableRow, columns: tuple[float, ...], units: Units) -> tuple[str, ...]:
    label = worded(Said(WORDING, f"row-{row.id}"), units)
    return (label, *(cell(row, at_m, units) for at_m in columns))


def cell(row: TableRow, elevation_m: float, units: Units) -> str:
    """What a row has at an elevation [m]."""
    figure = answer_at(row.ask, elevation_m, units, depth=2).figure(row.figure)
    if figure is not None:
        return SHOWN[row.shows](figure, units)
    return worded(say("as-it-is") if row.shows in CHANGES else say("none"), units)


def _air(figure: Figure, units: Units) -> str:
    return Say(units).pressure(figure.value * PA_PER_KPA)


def _gauge(figure: Figure, units: Units) -> str:
    return Say(units).gauge(figure.value / PSI_PER_PA)


def _oven(figure: Figure, units: Units) -> str:
    return Say(units).oven_span(figure.low or figure.value, figure.high or figure.value)


def _time(figure: Figure, units: Units) -> str:
    return duration(figure.value)


def _factor(figure: Figure, units: Units) -> str:
    return worded(say("times", factor=fixed(figure.value, 2)), units)


SHOWN: dict[str, Callable[[Figure, Units], str]] = {
    **ON_THE_CARD,
    "air": _air,
    "gauge": _gauge,
    "oven": _oven,
    "time": _time,
    "factor": _factor,
}
