"""The record of a conversation in the store: what was said, and what is remembered after each utterance."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field, replace
from datetime import UTC, datetime
from typing import TYPE_CHECKING
from uuid import uuid4

from assistant.dialogue.keeper import Keeper
from assistant.dialogue.memory import Memory, without_place
from assistant.dialogue.slots import BadSlot, memory_of, slots_of
from rules.model import Kitchen

if TYPE_CHECKING:
    from assistant.store.conversations import Utterance
    from assistant.store.database import Store

FRONT_END = "chat"
LOOKED_BACK = 200


@dataclass(kw_only=True)
class Record(Keeper):
    """The record of one conversation, and what it has kept beside.

    id: of the conversation; earlier: what was said in it before; front_end: where it is held
    """

    id: str
    earlier: tuple[Utterance, ...] = field(default=())
    front_end: str = FRONT_END

    @classmethod
    def resume(cls, *, new: bool, warn: Callable[[str], None]) -> Record:
        """The record of the last conversation, or of a new one.

        warn: is told what is wrong with the store, if anything is
        """
        record = cls(id=uuid4().hex, warn=warn)
        record.reopen()
        from assistant.store import conversations

        last = None if new else record.kept(lambda store: conversations.latest(store, FRONT_END))
        if last:
            record.id = last.id
            record.earlier = record.kept(lambda store: conversations.said(store, last.id, LOOKED_BACK)) or ()
        return record

    def memory(self, kitchen: Kitchen, *, stated: bool = False) -> Memory:
        """What is remembered of the conversation; all there is of a new one is the kitchen.

        stated: whether the kitchen was named for this conversation, and so wins over what was said in it before
        """
        memory = self.left() or Memory(kitchen=kitchen)
        if stated:
            return replace(without_place(memory), kitchen=kitchen)
        return replace(memory, kitchen=kitchen) if memory.kitchen.name else memory

    def left(self) -> Memory | None:
        """What was remembered when the conversation was left; None where it is new, or that cannot be read."""
        kept = next((u.request for u in reversed(self.earlier) if u.who == "cook" and u.request), None)
        try:
            return memory_of(kept) if kept else None
        except BadSlot:
            self.warn("what was remembered of the last conversation cannot be read; starting over")
            return None

    def said_by_cook(self) -> tuple[str, ...]:
        """What the cook said before, oldest first."""
        return tuple(u.text for u in self.earlier if u.who == "cook")

    def keep(self, line: str, reply: str, memory: Memory) -> None:
        """Keep an utterance, the reply to it, and what is remembered after it: all of them, or none."""
        from assistant.store import conversations

        now = datetime.now(UTC)
        said = (
            conversations.Utterance("cook", line, now, slots_of(memory)),
            conversations.Utterance("assistant", reply, now),
        )

        def write(store: Store) -> None:
            conversations.begin(store, self.id, self.front_end, now)
            conversations.say(store, self.id, *said)

        self.kept(write)
