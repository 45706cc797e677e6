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

from assistant.dialogue.deeds import LogRun, WriteFile
from assistant.dialogue.domain import FORM
from assistant.dialogue.keeper import Keeper
from assistant.dialogue.made import ask
from assistant.dialogue.memory import Memory
from assistant.dialogue.slots import NAMES, PIECE, BadSlot, memory_of, shown, slots_of
from assistant.dialogue.turn import Turn, take_turn, timers_asked
from assistant.replies.contract import as_json
from assistant.replies.sentences import worded
from assistant.worked_out import WorkedOut, told
from rules.model import Answer
from rules.said import Words, listed, sentences

say = sentences("dialogue/actions")
of_batches = sentences("dialogue/batch_talk")
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
        ring(self.keeper, dispatcher, tracker)
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
        taken = take(self.keeper, tracker, memory)
        events = [SlotSet(name, value) for name, value in {**slots_after(taken), PIECE: None}.items()]
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
        utter(dispatcher, ask(memory).answer)
        return []


class ValidatePieceForm(FormValidationAction):
    """Take the turn while a piece is awaited; the form stays open as long as one is.

    keeper: keeps timers and progress; None where nothing is kept
    """

    def __init__(self, keeper: Keeper | None = None) -> None:
        super().__init__()
        self.keeper = keeper

    def name(self) -> str:
        """The action's name in the domain; Rasa finds it by the name of the form."""
        return f"validate_{FORM}"

    def validate_piece(
        self, value: Any, dispatcher: CollectingDispatcher, tracker: Tracker, domain: Domain
    ) -> dict[str, Any]:
        """Answer what the cook said, unless it leaves a piece to be asked for; an aside is answered before that.

        raises: ActionExecutionRejection where the domain lacks a slot of ours, or a slot holds what is not ours
        """
        memory = remembered(self.name(), tracker, domain)
        ring(self.keeper, dispatcher, tracker)
        taken = take(self.keeper, tracker, memory)
        if taken.aside:
            utter(dispatcher, taken.reply.answer)
            return {PIECE: None}
        if not taken.memory.asked:
            utter(dispatcher, taken.answer)
        return {**slots_after(taken), PIECE: None if taken.memory.asked else heard(tracker)}


def take(keeper: Keeper | None, tracker: Tracker, memory: Memory) -> Turn:
    """Take what the cook said last, and have kept what is to be kept of it."""
    taken = done(keeper, take_turn(heard(tracker), memory))
    if keeper:
        taken = kept(keeper, tracker.sender_id, taken)
        keeper.drilled(memory.drill, taken.memory.drill)
    return taken


def slots_after(taken: Turn) -> dict[str, Any]:
    """The slots of the memory after a turn, and those that show what was understood and answered."""
    return {**slots_of(taken.memory), **shown(taken.reply.answer)}


def ring(keeper: Keeper | None, dispatcher: CollectingDispatcher, tracker: Tracker) -> None:
    """Let the timers of the conversation ring."""
    for text in keeper.rings(tracker.sender_id) if keeper else ():
        dispatcher.utter_message(text=text)


def actions(keeper: Keeper | None = None) -> tuple[Action, ...]:
    """All of them, with what keeps timers and progress."""
    return ActionAnswer(keeper), ActionAskPiece(keeper), ValidatePieceForm(keeper)


def done(keeper: Keeper | None, taken: Turn) -> Turn:
    """The turn with what came of what it asks to be done beside: a file written, batches kept, or that they are not."""
    match taken.deed:
        case WriteFile():
            text = keeper.wrote(taken.deed) if keeper else None
            return replace(taken, reply=_instead(taken, text)) if text else taken
        case LogRun():
            run = keeper.logged(taken.deed) if keeper else None
            if run is None:
                return replace(taken, reply=_and_also(taken, of_batches("not-logged")))
            memory = replace(taken.memory, run=replace(run, suggested=taken.deed.run.suggested))
            numbers = listed([str(batch.id) for batch in run.batches])
            also = of_batches("logged", batches=numbers)
            return replace(taken, reply=_and_also(taken, also), memory=memory)
    return taken


def _instead(taken: Turn, text: str) -> WorkedOut:
    answer = replace(taken.reply.answer, headline=text, text=text, spoken=text)
    return replace(taken.reply, word=lambda: answer)


def _and_also(taken: Turn, words: Words) -> WorkedOut:
    answer = taken.reply.answer
    answer = replace(answer, text=f"{answer.text}\n\n{worded(words, answer.request.units)}")
    return replace(taken.reply, word=lambda: answer)


def kept(keeper: Keeper, conversation: str, taken: Turn) -> Turn:
    """The turn with what came of a request about timers; other turns as they are."""
    request = timers_asked(taken)
    if request is None:
        return taken
    text = keeper.timed(request, conversation) or say("no-timers")
    return replace(taken, reply=told(replace(taken.reply.answer, headline=text, figures=())))


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
