"""Plots: one module a kind, whose name is its word in `simmerline plot`; each draws what the rules work out."""

from __future__ import annotations

import importlib
from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING, cast

from rules.errors import UnknownWord
from rules.model import Request, Units
from rules.modules import module_names

if TYPE_CHECKING:
    from matplotlib.figure import Figure

# The sheet that is drawn on [mm].
WIDTH_MM, HEIGHT_MM = 200.0, 130.0
# Lines that are told apart without colour: a colour that the colour-blind see apart, a dash and a mark each.
COLOURS = ("#000000", "#0072B2", "#D55E00", "#009E73", "#CC79A7", "#E69F00", "#56B4E9")
DASHES = ("-", "--", "-.", ":", (0, (5, 1)), (0, (1, 1)), (0, (3, 1, 1, 1)))
MARKS = ("o", "s", "^", "D", "v", "P", "X")


@dataclass(frozen=True, slots=True)
class Asked:
    """What a plot is asked for. elevation_m: of the kitchen [m]; words: what follows the kind on the line

    question: what it is of, where it was asked in talk
    """

    elevation_m: float
    units: Units
    words: str = ""
    question: Request | None = None


def kinds() -> tuple[str, ...]:
    """The kinds of plots there are."""
    return module_names(__name__)


def drawer(kind: str) -> Callable[[Asked], Figure]:
    """What draws a kind of plot.

    raises: UnknownWord for a kind that is none
    """
    if kind not in kinds():
        raise UnknownWord.among("plot", kind, kinds())
    module = importlib.import_module(f"{__name__}.{kind}")
    return cast("Callable[[Asked], Figure]", module.draw)
