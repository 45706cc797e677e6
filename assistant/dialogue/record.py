"""The record of a conversation in the store: what was said, and what is remembered after each utterance."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field, replace
from datetime import UTC, datetime
from typing import TYPE_CHECKING, TypeVar
from uuid import uuid4

from assistant.dialogue.memory import Memory, without_place
from assistant.dialogue.slots import BadSlot, memory_of, slots_of
from assistant.store import StoreError, open_store
from rules.model import Kitchen, Request

if TYPE_CHECKING:
    from assistant.store.conversations import Utterance
    from assistant.store.database import Store

T = TypeVar("T")

FRONT_END = "chat"
LOOKED_BACK = 200


@dataclass
class Record:
    """The record of one conversation. A store that fails is said once, and the conversation goes on without it.

    id: of the conversation; earlier: what was said in it before; store: None where there is none to be had
    """

    id: str
    warn: Callable[[str], None]
    store: Store | None = None
    earlier: tuple[Utterance, ...] = field(default=())

    @classmethod
    def open(cls, *, new: bool, warn: Callable[[str], None]) -> Record:
        """The record of the last conversation, or of a new one.

        warn: is told what is wrong with the store, if anything is
        """
        record = cls(uuid4().hex, warn)
        try:
            record.store = open_store()
            from assistant.store import conversations

            last = None if new else conversations.latest(record.store, FRONT_END)
            if last:
                record.id = last.id
                record.earlier = conversations.said(record.store, last.id, LOOKED_BACK)
        except StoreError as fault:
            record._do_without(fault)
        return record

    def memory(self, kitchen: Kitchen, *, stated: bool = False) -> Memory:
        """What is remembered of the conversation; all there is of a new one is the kitchen.

        stated: whether the kitchen was named for this conversation, and so wins over what was said in it before
        """
        kept = next((u.request for u in reversed(self.earlier) if u.who == "cook" and u.request), None)
        try:
            memory = memory_of(kept) if kept else Memory(kitchen=kitchen)
        except BadSlot:
            self.warn("what was remembered of the last conversation cannot be read; starting over")
            return Memory(kitchen=kitchen)
        if stated:
            return replace(without_place(memory), kitchen=kitchen)
        return replace(memory, kitchen=kitchen) if memory.kitchen.name else memory

    def said_by_cook(self) -> tuple[str, ...]:
        """What the cook said before, oldest first."""
        return tuple(u.text for u in self.earlier if u.who == "cook")

    def keep(self, line: str, reply: str, memory: Memory) -> None:
        """Keep an utterance, the reply to it, and what is remembered after it: all of them, or none."""
        if self.store is None:
            return
        from assistant.store import conversations

        now = datetime.now(UTC)
        said = (
            conversations.Utterance("cook", line, now, slots_of(memory)),
            conversations.Utterance("assistant", reply, now),
        )

        def write(store: Store) -> None:
            conversations.begin(store, self.id, FRONT_END, now)
            conversations.say(store, self.id, *said)

        self._kept(write)

    def timed(self, request: Request) -> str | None:
        """Do what is asked about timers, and say what came of it; None where there is no store to keep them."""
        from assistant.timers import obey

        return self._kept(lambda store: obey(store, request, datetime.now(UTC), self.id).text)

    def rings(self) -> tuple[str, ...]:
        """What the timers of this conversation have to announce by now."""
        from assistant.timers import rings

        return self._kept(lambda store: rings(store, datetime.now(UTC), self.id)) or ()

    def close(self) -> None:
        """Let go of the store."""
        if self.store:
            self.store.close()

    def _kept(self, work: Callable[[Store], T]) -> T | None:
        """What some work with the store gives; None where there is none, or no longer."""
        if self.store is None:
            return None
        try:
            return work(self.store)
        except StoreError as fault:
            self._do_without(fault)
            return None

    def _do_without(self, fault: StoreError) -> None:
        self.close()
        self.store = None
        self.warn(fault.going_on)
