"""Explanations for trainees: one module each, its file name being its id.

A module holds TITLE, SOURCES (ids of data/sources.toml) and explain(case) -> Explanation. The phrases by which it is
asked for stand in data/lexicon/explanations.toml.
"""

from __future__ import annotations

import importlib
import pkgutil
from collections.abc import Callable
from dataclasses import dataclass
from functools import cache
from types import ModuleType

from rules.book import Case
from rules.model import Caution, Figure


@dataclass(frozen=True, slots=True, kw_only=True)
class Explanation:
    """Why something is so, at three depths, with the figures of the asker's elevation in the words.

    line: one sentence
    paragraph: three to six short sentences
    equations: the equations with the numbers put in, each a sentence
    """

    line: str
    paragraph: str
    equations: tuple[str, ...]
    figures: tuple[Figure, ...]
    cautions: tuple[Caution, ...] = ()


Explain = Callable[[Case], Explanation]


@cache
def names() -> tuple[str, ...]:
    """Ids of all explanations, sorted.

    >>> "lid_matters" in names()
    True
    """
    return tuple(sorted(m.name for m in pkgutil.iter_modules(__path__) if not m.name.startswith("_")))


def module(name: str) -> ModuleType:
    """The module of an explanation, imported at first use.

    raises: ModuleNotFoundError for a name that is not in names()
    """
    return importlib.import_module(f"rules.why.{name}")
