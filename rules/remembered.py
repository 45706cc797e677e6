"""What is found out about a recipe is found out once, however many kitchens it is converted for.

Results are kept by the identity of what they were asked about, since to hash a recipe takes longer than most of them,
and only for the last few recipes. A result has to follow from what stands in `by`: from no elevation.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import wraps
from typing import Any, ParamSpec, TypeVar

P = ParamSpec("P")
R = TypeVar("R")
# A recipe is often two: as it was read, and in its parts.
RECIPES = 16
# The recipes, each held so that no other takes its identity, with what was found out about them.
_HELD: dict[int, tuple[Any, dict[Any, tuple[list[Any], Any]]]] = {}


def remembered(by: Callable[P, tuple[Any, ...]]) -> Callable[[Callable[P, R]], Callable[P, R]]:
    """Make a function remember what it gave for the same objects.

    by: what its result follows from, of its arguments: a recipe first, then what of it or beside it

    >>> @remembered(by=all_of_them)
    ... def count(words):
    ...     print("counted")
    ...     return len(words)
    >>> words = ("boil", "the", "rice")
    >>> count(words), count(words)
    counted
    (3, 3)
    """

    def wrap(work: Callable[P, R]) -> Callable[P, R]:
        @wraps(work)
        def ask(*args: P.args, **kwargs: P.kwargs) -> R:
            recipe, *more = by(*args, **kwargs)
            found = _found_out(recipe)
            key = (work, *map(id, more))
            known = found.get(key)
            if known is None:
                known = found[key] = (more, work(*args, **kwargs))
            result: R = known[1]
            return result

        return ask

    return wrap


def all_of_them(*of: Any) -> tuple[Any, ...]:
    """By everything that a function was asked about."""
    return of


def _found_out(recipe: Any) -> dict[Any, tuple[list[Any], Any]]:
    """All that is known about one recipe, to be added to."""
    held = _HELD.get(id(recipe))
    if held is None:
        if len(_HELD) >= RECIPES:
            _HELD.clear()
        held = _HELD[id(recipe)] = (recipe, {})
    return held[1]
