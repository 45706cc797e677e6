"""Plots: one module a kind, whose name is its word in `simmerline plot`; each draws what the rules work out, and tells
the same in words for those who do not see it."""

from __future__ import annotations

import importlib
from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, cast

from rules.errors import UnknownWord
from rules.model import Request, Units
from rules.modules import module_names

if TYPE_CHECKING:
    from matplotlib.figure import Figure

# Lines that are told apart without colour: a colour that the colour-blind see apart, a dash and a mark each.
COLOURS = ("#000000", "#0072B2", "#D55E00", "#009E73", "#CC79A7", "#E69F00", "#56B4E9")
DASHES = ("-", "--", "-.", ":", (0, (5, 1)), (0, (1, 1)), (0, (3, 1, 1, 1)))
MARKS = ("o", "s", "^", "D", "v", "P", "X")


@dataclass(frozen=True, slots=True)
class Asked:
    """What a plot is asked for. elevation_m: of the kitchen [m]; words: what follows the kind on the line

    question: what it is of, where it was asked in talk; shares: what becomes of a recipe that is converted already
    narrow: whether it is for a sheet as wide as a hand
    """

    elevation_m: float
    units: Units
    words: str = ""
    question: Request | None = None
    shares: Shares | None = None
    narrow: bool = False


@dataclass(frozen=True, slots=True)
class Shares:
    """What becomes of the amounts of a recipe. moved: those that change, by name, each over what was written"""

    title: str
    style: str
    from_elevation_m: float
    moved: tuple[tuple[str, float], ...]


def kinds() -> tuple[str, ...]:
    """The kinds of plots there are."""
    return module_names(__name__)


def drawer(kind: str) -> Callable[[Asked], Figure]:
    """What draws a kind of plot.

    raises: UnknownWord for a kind that is none
    """
    return cast("Callable[[Asked], Figure]", _module(kind).draw)


def told(kind: str, asked: Asked) -> str:
    """What a plot shows, in words with its figures.

    raises: UnknownWord for a kind that is none, and what its drawer raises
    """
    return cast("Callable[[Asked], str]", _module(kind).told)(asked)


def _module(kind: str) -> Any:
    if kind not in kinds():
        raise UnknownWord.among("plot", kind, kinds())
    return importlib.import_module(f"{__name__}.{kind}")
