"""A form that an order or a plan is written in: what the modules of `order_forms` and `plan_forms` hold as FORM."""

from __future__ import annotations

import importlib
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, Generic, TypeVar

from rules.model import Units

Made = TypeVar("Made")


@dataclass(frozen=True, slots=True, kw_only=True)
class Form(Generic[Made]):
    """One form.

    ending: what its files end with, with the dot; binary: whether it is for a file only
    write: what was made, in it; units: which system it is in
    show: prints it as wide as the screen, for a form that is for screens
    """

    ending: str
    write: Callable[[Made, Units], bytes]
    binary: bool = False
    show: Callable[[Made, Units], None] | None = None


def form_of(package: str, name: str) -> Form[Any]:
    """The form of a name, which is that of a module of the package."""
    found: Form[Any] = importlib.import_module(f"{package}.{name}").FORM
    return found
