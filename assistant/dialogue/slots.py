"""The memory of a conversation as slots of a rasa tracker, and back."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from typing import Any

from assistant.dialogue.memory import Memory, Step
from assistant.dialogue.tonight import Tonight
from assistant.dialogue.whereabouts import Whereabouts
from assistant.dialogue.workbench import RecipeTalk, Run
from assistant.drill import Sitting
from assistant.errors import AssistantError
from assistant.understanding.scene import Scene
from rules.model import MISSING_WORDS, Answer, Kitchen, Request

# what the memory holds beside `asked`, and of which kind it is
KINDS: dict[str, Any] = {
    "request": Request,
    "before": Request,
    "recipe": Request,
    "menu": Request,
    "tonight": Tonight,
    "earlier": tuple[Request, ...],
    "kitchen": Kitchen,
    "places": tuple[Whereabouts, ...],
    "drill": Sitting,
    "talk": RecipeTalk,
    "run": Run,
    "scene": Scene,
    "past": tuple[Step, ...],
    "missed": int,
}
# the long memory is kept short: what stands as it is by itself is left out
PAST, MISSED = "past", "missed"
# what the memory is read from
CARRIED = (*KINDS, "asked")
# the reply to what was asked for, until it has been used
PIECE = "piece"
# whether the question for the piece was said with the reply, so that the form has nothing to add
PUT = "put"
# what people who write rules and stories of their own may look at
SHOWN = ("topic", "dish", "method", "elevation_m", "missing", "figures")
NAMES = (*CARRIED, PIECE, PUT, *SHOWN)


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
    held = {name: _read(name, kind, slots.get(name)) for name, kind in KINDS.items()}
    return Memory(asked=asked, **{name: value for name, value in held.items() if value is not None})


def slots_of(memory: Memory) -> dict[str, Any]:
    """The slots a memory is read from, as JSON-able values."""
    held = {name: (kind, getattr(memory, name)) for name, kind in KINDS.items()}
    return {"asked": memory.asked} | {
        name: None if value is None else _adapter(kind).dump_python(value, mode="json", exclude_defaults=name == PAST)
        for name, (kind, value) in held.items()
    }


def shown(answer: Answer) -> dict[str, Any]:
    """The slots that show what was understood and answered last."""
    from assistant.replies.contract import as_json

    contract = as_json(answer)
    heard = contract["heard"]
    return {name: heard[name] if name in heard else contract[name] for name in SHOWN}


@cache
def _adapter(kind: Any) -> Any:
    from pydantic import TypeAdapter

    return TypeAdapter(kind)


def _read(slot: str, kind: Any, value: Any) -> Any:
    """A dataclass from the value of a slot; None where it is empty."""
    from pydantic import ValidationError

    if value is None:
        return None
    try:
        return _adapter(kind).validate_python(value)
    except ValidationError as fault:
        first = fault.errors()[0]
        where = ".".join(map(str, first["loc"]))
        raise BadSlot(slot, f"{where}: {first['msg']}" if where else first["msg"]) from None
