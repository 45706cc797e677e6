"""What talks to people: language, dialogue, replies, recipes, storage and the front ends.

Programs import the names of `assistant.public` from here; each is loaded when it is first asked for.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from assistant.public import (
        Answer,
        AssistantError,
        Because,
        Caution,
        Converted,
        Figure,
        Kitchen,
        Request,
        RulesError,
        as_json,
        as_text,
        ask,
        convert,
        kitchen,
    )

__all__ = [
    "Answer",
    "AssistantError",
    "Because",
    "Caution",
    "Converted",
    "Figure",
    "Kitchen",
    "Request",
    "RulesError",
    "as_json",
    "as_text",
    "ask",
    "convert",
    "kitchen",
]


def __getattr__(name: str) -> object:
    if name not in __all__:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    from importlib import import_module

    return getattr(import_module("assistant.public"), name)


def __dir__() -> list[str]:
    return [*globals(), *__all__]
