"""The values and figures that explanations speak of, by name; a module for each thing that a cook knows.

A row of data/lexicon/explanations.toml lists by these names what its text, data/wording/<language>/why/<id>.ftl, speaks
of. A value fills a sentence (`rules.said`); a figure stands beside the text, which has the label for it. Both are
functions of a case, and serve any explanation.
"""

from __future__ import annotations

import importlib
from collections.abc import Iterator
from types import ModuleType
from typing import Any

from rules.errors import UnknownWord
from rules.explanations.named import FigureOf, ValueOf

# what most explanations speak of comes first: a module is imported when none before it has the name
MODULES = (
    *("boil", "pace", "air", "rise", "liquid", "steam", "oven", "safety", "sugar", "weather", "cup", "eggs"),
    *("pressure", "drinking", "flame", "cold", "other_air"),
)


def value(name: str) -> ValueOf:
    """How a value is worked out.

    raises: UnknownWord for a name that no module has

    >>> from rules.book import Case
    >>> from rules.model import Request
    >>> value("side")(Case(Request(elevation_m=2133.6)))
    'above'
    """
    found: ValueOf = _named("VALUES", name)
    return found


def figure(name: str) -> FigureOf:
    """How a figure is worked out; None where it does not apply.

    raises: UnknownWord for a name that no module has
    """
    found: FigureOf = _named("FIGURES", name)
    return found


def names(kind: str) -> frozenset[str]:
    """Every name of a kind: `VALUES` or `FIGURES`."""
    return frozenset(name for module in _modules() for name in getattr(module, kind))


def _named(kind: str, name: str) -> Any:
    held = (getattr(module, kind) for module in _modules())
    found = next((of[name] for of in held if name in of), None)
    if found is None:
        raise UnknownWord.among(kind.removesuffix("S").lower(), name, sorted(names(kind)))
    return found


def _modules() -> Iterator[ModuleType]:
    return (importlib.import_module(f"{__name__}.{name}") for name in MODULES)
