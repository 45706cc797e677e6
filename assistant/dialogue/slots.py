"""The memory of a conversation as slots of a rasa tracker, and back."""

from __future__ import annotations

from collections.abc import Hashable, Mapping
from functools import cache
from typing import Any, TypeVar, cast

from assistant.dialogue.memory import Memory
from assistant.drill import Sitting
from assistant.errors import AssistantError
from rules.model import MISSING_WORDS, Answer, Kitchen, Request

T = TypeVar("T")

# what the memory is read from
CARRIED = ("request", "asked", "kitchen", "drill")
# the reply to what was asked for, until it has been used
PIECE = "piece"
# what people who write rules and stories of their own may look at
SHOWN = ("topic", "dish", "method", "elevation_m", "missing", "figures")
NAMES = (*CARRIED, PIECE, *SHOWN)


class BadSlot(AssistantError, ValueError):
    """A slot that holds what simmerline never put there. slot: its name; problem: what is wrong with it."""

    def __init__(self, slot: str, problem: str) -> None:
        super().__init__(slot, problem)
        self.slot, self.problem = slot, problem

    def __str__(self) -> str:
        return (
            f'the slot "{self.slot}" does not hold what simmerline left in it ({self.problem}); '
            "restart the conversation, or set the slot to null"
        )


def memory_of(slots: Mapping[str, Any]) -> Memory:
    """The memory that slots hold; slots that are empty or not there are those of a new conversation.

    raises: BadSlot
    """
    asked = slots.get("asked")
    if asked is not None and asked not in MISSING_WORDS:
        raise BadSlot("asked", f"{asked!r:.40} is none of {', '.join(MISSING_WORDS)}")
    return Memory(
        request=_read("request", Request, slots.get("request")),
        asked=asked,
        kitchen=_read("kitchen", Kitchen, slots.get("kitchen")) or Kitchen(),
        drill=_read("drill", Sitting, slots.get("drill")),
    )


def slots_of(memory: Memory) -> dict[str, Any]:
    """The slots a memory is read from, as JSON-able values."""
    return {
        "request": None if memory.request is None else _adapter(Request).dump_python(memory.request, mode="json"),
        "asked": memory.asked,
        "kitchen": _adapter(Kitchen).dump_python(memory.kitchen, mode="json"),
        "drill": None if memory.drill is None else _adapter(Sitting).dump_python(memory.drill, mode="json"),
    }


def shown(answer: Answer) -> dict[str, Any]:
    """The slots that show what was understood and answered last."""
    from assistant.replies import as_json

    contract = as_json(answer)
    heard = contract["heard"]
    return {name: heard[name] if name in heard else contract[name] for name in SHOWN}


@cache
def _adapter(kind: Hashable) -> Any:
    from pydantic import TypeAdapter

    return TypeAdapter(kind)


def _read(slot: str, kind: type[T], value: Any) -> T | None:
    """A dataclass from the value of a slot."""
    from pydantic import ValidationError

    if value is None:
        return None
    try:
        return cast(T, _adapter(cast(Hashable, kind)).validate_python(value))
    except ValidationError as fault:
        first = fault.errors()[0]
        where = ".".join(map(str, first["loc"]))
        raise BadSlot(slot, f"{where}: {first['msg']}" if where else first["msg"]) from None
