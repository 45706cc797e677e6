"""A conversation held in this process: the part of Rasa's policies that our rules need, over a rasa-sdk tracker."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from rasa_sdk import Tracker
from rasa_sdk.events import ActionExecuted, BotUttered, EventType, SlotSet, UserUttered

from assistant.dialogue.domain import ACTIONS, FORM, domain
from assistant.dialogue.executor import KitchenExecutor
from assistant.dialogue.memory import Memory
from assistant.dialogue.slots import NAMES, PIECE, memory_of, slots_of

ANSWER, ASK, VALIDATE, _ = ACTIONS
REQUESTED = "requested_slot"
EVENTS_KEPT = 50


@dataclass(frozen=True, slots=True)
class Said:
    """What the assistant says to one utterance. text: as shown; answers: the JSON contract of each part of it."""

    text: str
    answers: tuple[dict[str, Any], ...]


class Conversation:
    """One conversation. Not to be shared by two that speak at once; any number of them may share an executor.

    sender: its name in the tracker; memory: what to begin with; executor: one of its own where none is given
    """

    def __init__(
        self, sender: str = "cook", memory: Memory | None = None, executor: KitchenExecutor | None = None
    ) -> None:
        self._executor = executor or KitchenExecutor()
        self._domain = domain()
        slots = {**dict.fromkeys((*NAMES, REQUESTED)), **slots_of(memory or Memory())}
        self.tracker = Tracker(sender, slots, {}, [], False, None, {}, None)
        if memory and memory.asked:
            self._await_piece()

    @property
    def memory(self) -> Memory:
        """What is remembered so far."""
        return memory_of(self.tracker.slots)

    async def say(self, text: str) -> Said:
        """Take what the cook says, and give what is said to it."""
        self.tracker.latest_message = {"text": text, "intent": {}, "entities": []}
        self._apply(UserUttered(text, dict(self.tracker.latest_message)))
        said = await self._reply(text)
        return Said("\n\n".join(m["text"] for m in said), tuple(m["custom"] for m in said if m["custom"]))

    async def _reply(self, text: str) -> list[dict[str, Any]]:
        """The rules of data/rasa: the form takes the turn where it is open, else the answer; then what is missing."""
        if self._awaits_piece():
            self._apply(SlotSet(PIECE, text))
            said = await self._run(VALIDATE)
            if self.tracker.slots[PIECE] is not None:
                self._apply({"event": "active_loop", "name": None}, SlotSet(REQUESTED, None))
        else:
            said = await self._run(ANSWER)
        if self._awaits_piece():
            self._await_piece()
            said += await self._run(ASK)
        return said

    async def _run(self, action: str) -> list[dict[str, Any]]:
        """Run one action, apply its events, and give its messages."""
        call = {"next_action": action, "tracker": self.tracker.current_state(), "domain": self._domain}
        result = await self._executor.run(call)
        if result is None:
            return []
        self._apply(*result.events, ActionExecuted(action), *(BotUttered(m["text"]) for m in result.responses))
        return result.responses

    def _awaits_piece(self) -> bool:
        return (self.tracker.active_loop or {}).get("name") == FORM

    def _await_piece(self) -> None:
        self._apply({"event": "active_loop", "name": FORM}, SlotSet(REQUESTED, PIECE))

    def _apply(self, *events: EventType) -> None:
        """Let events change the tracker, as Rasa's own would."""
        for event in events:
            if event["event"] == "slot":
                self.tracker.slots[event["name"]] = event["value"]
            elif event["event"] == "active_loop":
                self.tracker.active_loop = {"name": event["name"]} if event["name"] else {}
            elif event["event"] == "action":
                self.tracker.latest_action_name = event["name"]
        self.tracker.events = [*self.tracker.events, *events][-EVENTS_KEPT:]
