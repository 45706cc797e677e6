"""What a package holds: its modules are named as what stands in them, so that a new one is found by its name."""

from __future__ import annotations

import importlib
import pkgutil
from functools import cache


@cache
def module_names(package: str) -> tuple[str, ...]:
    """The names of the modules of a package, sorted; none of them is imported for it.

    package: its dotted name

    >>> "braise" in module_names("rules.methods")
    True
    """
    return tuple(sorted(module.name for module in pkgutil.iter_modules(importlib.import_module(package).__path__)))
