"""Where pages and resources find what they answer with: the conversation of a person, and what is kept of theirs.

All of it is done in the workroom, never on the loop. A store that fails is told on the page, which goes on without.
"""

from __future__ import annotations

import asyncio
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime
from typing import TypeVar

from assistant.dialogue.deeds import Draw
from assistant.dialogue.embedded import Conversation, Said
from assistant.dialogue.executor import KitchenExecutor
from assistant.dialogue.keeper import Keeper, shown
from assistant.dialogue.memory import Memory, without_place
from assistant.dialogue.pictures import shown_again
from assistant.dialogue.record import Record
from assistant.dialogue.timer import Timer
from assistant.dialogue.timers import Outcome, obey
from assistant.planning.clock import now_here
from assistant.store import StoreError
from assistant.store import conversations as kept_talk
from assistant.store import timers as kept_timers
from assistant.store.conversations import Utterance
from assistant.store.database import Store
from assistant.store.quick import kitchen_in_use
from assistant.understanding.conversation import settle_in
from rules.model import Kitchen, Request

FRONT_END = "web"
SHOWN_UTTERANCES = 24
Result = TypeVar("Result")


@dataclass(frozen=True, slots=True)
class Exchange:
    """A question and what was said to it; said "" where nothing was."""

    asked: str
    said: str
    at: datetime


@dataclass(frozen=True, slots=True)
class Desk:
    """What one worker answers with. keeper: holds the store; faults: what is wrong with it, the latest only"""

    keeper: Keeper
    faults: list[str] = field(default_factory=list)

    @classmethod
    def open(cls) -> Desk:
        """A desk with the store that open_store finds."""
        faults: list[str] = []
        return cls(Keeper.open(lambda fault: faults.__setitem__(slice(None), [fault])), faults)

    @property
    def fault(self) -> str:
        """What is wrong with the store; "" where nothing is."""
        return self.faults[0] if self.faults and self.keeper.store is None else ""

    def kept(self, work: Callable[[Store], Result]) -> Result:
        """What some work with the store gives.

        raises: StoreError where there is none
        """
        self.keeper.reopen()
        if self.keeper.store is None:
            raise StoreError("unreachable", self.fault or "Nothing can be kept at the moment.")
        return work(self.keeper.store)

    # a conversation

    def record(self, person: str, last: int = 2) -> Record:
        """The record of a person's conversation. last: how many of its utterances are looked at"""
        self.keeper.reopen()
        record = Record(
            id=talk_of(person), warn=self.keeper.warn, store=self.keeper.store, owner=person, front_end=FRONT_END,
            pictures=True,
        )  # fmt: skip
        record.earlier = record.kept(lambda store: kept_talk.said(store, record.id, last)) or ()
        return record

    def memory(self, record: Record) -> Memory:
        """What is remembered of a conversation; a new one begins in the kitchen of the house."""
        if left := record.left():
            return left
        try:
            return Memory(kitchen=kitchen_in_use() or Kitchen())
        except StoreError:
            return Memory()

    def kitchen(self, person: str) -> Kitchen:
        """What a person's questions take for granted: their kitchen, or else the place of the question before."""
        memory = self.memory(self.record(person))
        kitchen, before = memory.kitchen, memory.request
        if kitchen.elevation_m is not None or before is None or before.elevation_m is None:
            return kitchen
        return replace(kitchen, elevation_m=before.elevation_m, pressure_pa=before.pressure_pa, units=before.units)

    def question(self, person: str) -> Request | None:
        """The question of a person that was answered last, with what their kitchen adds to it; None where none was."""
        memory = self.memory(self.record(person))
        if memory.request is None or memory.asked or (memory.past and memory.past[-1].danger):
            return None
        return settle_in(memory.request, memory.kitchen)

    def wanted_picture(self, person: str, latest: Exchange) -> Draw | None:
        """What somebody asked to be shown in the latest exchange; None where they asked for something else."""
        return shown_again(latest.asked, self.memory(self.record(person))) if latest.said == shown() else None

    def say(self, person: str, text: str) -> Said:
        """Take what somebody says, and keep it with what is said to it."""
        record = self.record(person)
        conversation = Conversation(record.id, self.memory(record), KitchenExecutor(record))
        said = asyncio.run(conversation.say(text))
        record.keep(text, said.text, conversation.memory)
        return said

    def settle(self, person: str, kitchen: Kitchen, words: str, told: str) -> None:
        """From now on a person cooks in a kitchen. words, told: how that stands in their conversation"""
        record = self.record(person)
        memory = replace(without_place(self.memory(record)), kitchen=kitchen)
        record.keep(words, told, memory)

    def exchanges(self, person: str) -> tuple[Exchange, ...]:
        """What was said last, the latest first."""
        return tuple(_paired(self.record(person, SHOWN_UTTERANCES).earlier))[::-1]

    def forget(self, person: str) -> None:
        """Forget a conversation and its timers.

        raises: StoreError
        """
        own = talk_of(person)
        self.kept(lambda store: kept_talk.forget(store, own))
        timers = self.kept(lambda store: kept_timers.of_conversation(store, own))
        self.kept(lambda store: kept_timers.remove(store, [timer.id for timer in timers]))

    # timers

    def timers(self, person: str) -> tuple[Timer, ...]:
        """A person's timers, the one that ends first before the others."""
        record = self.record(person, 0)
        return record.kept(lambda store: kept_timers.of_conversation(store, record.id)) or ()

    def timed(self, person: str, request: Request) -> Outcome:
        """Do what is asked about timers, and what came of it.

        raises: StoreError where there is no store to keep them
        """
        return self.kept(lambda store: obey(store, request, now_here(), talk_of(person)))


def talk_of(person: str) -> str:
    """The name of a person's conversation."""
    return f"{FRONT_END}-{person}"


def _paired(said: Sequence[Utterance]) -> list[Exchange]:
    pairs: list[Exchange] = []
    for one in said:
        if one.who == "cook":
            pairs.append(Exchange(one.text, "", one.said_at))
        elif pairs:
            pairs[-1] = replace(pairs[-1], said="\n\n".join(filter(None, (pairs[-1].said, one.text))))
    return pairs
