"""The rasa-sdk actions. Each takes a tracker apart, calls one function of turn, and dresses what it gives."""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from rasa_sdk import Action, FormValidationAction, Tracker
from rasa_sdk.events import ActiveLoop, EventType, SlotSet
from rasa_sdk.executor import CollectingDispatcher
from rasa_sdk.interfaces import ActionExecutionRejection

from assistant.dialogue import turn
from assistant.dialogue.domain import FORM
from assistant.dialogue.keeper import Keeper
from assistant.dialogue.memory import Memory
from assistant.dialogue.slots import NAMES, PIECE, BadSlot, memory_of, shown, slots_of
from assistant.dialogue.turn import Turn
from assistant.replies import as_json, dress, line
from rules.model import Answer

Domain = Mapping[str, Any]


class KitchenAction(Action, ABC):
    """An action that speaks from the memory of the conversation, and before that lets its timers ring.

    keeper: keeps timers and progress; None where nothing is kept
    """

    def __init__(self, keeper: Keeper | None = None) -> None:
        self.keeper = keeper

    async def run(self, dispatcher: CollectingDispatcher, tracker: Tracker, domain: Domain) -> list[EventType]:
        """Say what there is to say.

        raises: ActionExecutionRejection where the domain lacks a slot of ours, or a slot holds what is not ours
        """
        memory = remembered(self.name(), tracker, domain)
        for text in self.keeper.rings(tracker.sender_id) if self.keeper else ():
            dispatcher.utter_message(text=text)
        return self.speak(dispatcher, tracker, memory)

    @abstractmethod
    def speak(self, dispatcher: CollectingDispatcher, tracker: Tracker, memory: Memory) -> list[EventType]:
        """Put the reply to what the cook said last in the dispatcher, and give the events that follow."""


class ActionAnswer(KitchenAction):
    """Answer; where a piece is missing, open the form that asks for it."""

    def name(self) -> str:
        """The action's name in the domain."""
        return "action_answer"

    def speak(self, dispatcher: CollectingDispatcher, tracker: Tracker, memory: Memory) -> list[EventType]:
        """Take the turn, and have kept what is to be kept of it."""
        taken = turn.go_on(heard(tracker), memory)
        if self.keeper:
            taken = kept(self.keeper, tracker.sender_id, taken)
            self.keeper.drilled(memory.drill, taken.memory.drill)
        slots = {**slots_of(taken.memory), **shown(taken.answer), PIECE: None}
        events = [SlotSet(name, value) for name, value in slots.items()]
        if taken.memory.asked:
            return [*events, ActiveLoop(FORM)]
        utter(dispatcher, taken.answer)
        return events


class ActionAskPiece(KitchenAction):
    """Ask for the one piece that is missing most."""

    def name(self) -> str:
        """The action's name in the domain; Rasa finds it by the slot of the form."""
        return f"action_ask_{PIECE}"

    def speak(self, dispatcher: CollectingDispatcher, tracker: Tracker, memory: Memory) -> list[EventType]:
        """Ask."""
        utter(dispatcher, turn.ask(memory))
        return []


class ValidatePieceForm(FormValidationAction):
    """Tell the reply to what was asked from an aside, which is answered, and after which the form asks again."""

    def name(self) -> str:
        """The action's name in the domain; Rasa finds it by the name of the form."""
        return f"validate_{FORM}"

    def validate_piece(
        self, value: Any, dispatcher: CollectingDispatcher, tracker: Tracker, domain: Domain
    ) -> dict[str, Any]:
        """Keep what the cook said as the piece, unless it is an aside.

        raises: ActionExecutionRejection where the domain lacks a slot of ours, or a slot holds what is not ours
        """
        answer = turn.aside(heard(tracker), remembered(self.name(), tracker, domain))
        if answer is None:
            return {PIECE: heard(tracker)}
        utter(dispatcher, answer)
        return {PIECE: None}


def actions(keeper: Keeper | None = None) -> tuple[Action, ...]:
    """All of them, with what keeps timers and progress."""
    return ActionAnswer(keeper), ActionAskPiece(keeper), ValidatePieceForm()


def kept(keeper: Keeper, conversation: str, taken: Turn) -> Turn:
    """The turn with what came of a request about timers; other turns as they are."""
    request = turn.timers_asked(taken)
    if request is None:
        return taken
    text = keeper.timed(request, conversation) or line("no_timers")
    return replace(taken, answer=dress(replace(taken.answer, headline=text, figures=())))


def utter(dispatcher: CollectingDispatcher, answer: Answer) -> None:
    """The reply as text, with the answer of the JSON contract beside it."""
    dispatcher.utter_message(text=answer.text, json_message=as_json(answer))


def heard(tracker: Tracker) -> str:
    """What the cook said last."""
    return str(tracker.latest_message.get("text") or "")


def remembered(action: str, tracker: Tracker, domain: Domain) -> Memory:
    """The memory in the tracker.

    raises: ActionExecutionRejection where the domain lacks a slot of ours, or a slot holds what is not ours
    """
    lacking = [name for name in NAMES if name not in domain.get("slots", {})]
    if lacking:
        raise ActionExecutionRejection(
            action,
            f"The domain lacks the slots {', '.join(lacking)}, so nothing would be remembered; "
            "train with the domain.yml of data/rasa.",
        )
    try:
        return memory_of(tracker.slots)
    except BadSlot as fault:
        raise ActionExecutionRejection(action, f"Malformed tracker: {fault}.") from fault
