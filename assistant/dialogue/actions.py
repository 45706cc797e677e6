"""The rasa-sdk actions. Each takes a tracker apart, calls one function of turn, and dresses what it gives."""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Iterator, Mapping
from dataclasses import replace
from typing import Any

from rasa_sdk import Action, Tracker
from rasa_sdk.events import ActiveLoop, EventType, ReminderCancelled, ReminderScheduled, SlotSet
from rasa_sdk.executor import CollectingDispatcher
from rasa_sdk.interfaces import ActionExecutionRejection

from assistant.dialogue.deeds import Draw, LogRun, WriteFile
from assistant.dialogue.domain import FORM, TIMER_UP
from assistant.dialogue.keeper import Keeper
from assistant.dialogue.made import ask
from assistant.dialogue.memory import Memory
from assistant.dialogue.slots import MISSED, NAMES, PIECE, PUT, BadSlot, memory_of, shown, slots_of
from assistant.dialogue.timer import Timer
from assistant.dialogue.timers import Outcome
from assistant.dialogue.turn import Turn, take_turn, timers_asked
from assistant.listeners import given
from assistant.replies.contract import as_json
from assistant.replies.sentences import worded
from assistant.replies.shown import first_sentence
from assistant.worked_out import WorkedOut, told
from rules.model import Answer
from rules.said import Words, listed, sentences

say = sentences("dialogue/actions")
of_batches = sentences("dialogue/batch_talk")
Domain = Mapping[str, Any]


class KitchenAction(Action, ABC):
    """An action that speaks from the memory of the conversation, and before that lets its timers ring.

    keeper: keeps timers and progress; None where nothing is kept
    depth: of the answers, whatever the cook says about it; None leaves it to the cook
    """

    def __init__(self, keeper: Keeper | None = None, depth: int | None = None) -> None:
        self.keeper, self.depth = keeper, depth

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
    """Answer, all in one message; where a piece is missing, open the form that takes the reply."""

    def name(self) -> str:
        """The action's name in the domain."""
        return "action_answer"

    def speak(self, dispatcher: CollectingDispatcher, tracker: Tracker, memory: Memory) -> list[EventType]:
        """Take the turn, and have kept what is to be kept of it."""
        taken, reminders = take(self.keeper, tracker, memory, self.depth)
        utter(dispatcher, taken.answer)
        awaiting = taken.memory.asked is not None
        events = set_slots({**slots_after(taken), PIECE: None, PUT: awaiting or None})
        return [*events, *reminders, *([ActiveLoop(FORM)] if awaiting else ())]


class ActionAskPiece(KitchenAction):
    """Ask for the one piece that is missing most, where that was not said with the reply."""

    def name(self) -> str:
        """The action's name in the domain; Rasa finds it by the slot of the form."""
        return f"action_ask_{PIECE}"

    def speak(self, dispatcher: CollectingDispatcher, tracker: Tracker, memory: Memory) -> list[EventType]:
        """Ask."""
        if not tracker.slots.get(PUT):
            utter(dispatcher, ask(memory).answer)
        return [SlotSet(PUT, None)]


class ValidatePieceForm(KitchenAction):
    """Take the turn while a piece is awaited; the form stays open as long as one is."""

    def name(self) -> str:
        """The action's name in the domain; Rasa finds it by the name of the form."""
        return f"validate_{FORM}"

    def speak(self, dispatcher: CollectingDispatcher, tracker: Tracker, memory: Memory) -> list[EventType]:
        """Answer what the cook said, and ask in the same message for what is still missing."""
        if PIECE not in tracker.slots_to_validate():
            return []
        taken, reminders = take(self.keeper, tracker, memory, self.depth)
        utter(dispatcher, taken.answer)
        if taken.aside:
            return [*set_slots({PIECE: None, PUT: True, MISSED: taken.memory.missed}), *reminders]
        awaiting = taken.memory.asked is not None
        piece = {PIECE: None if awaiting else heard(tracker), PUT: awaiting or None}
        return [*set_slots({**slots_after(taken), **piece}), *reminders]


class ActionRing(KitchenAction):
    """Say which timers are up; Rasa runs it by the reminder that was left when the timer was set."""

    def name(self) -> str:
        """The action's name in the domain."""
        return "action_ring"

    def speak(self, dispatcher: CollectingDispatcher, tracker: Tracker, memory: Memory) -> list[EventType]:
        """Nothing beside the timers; what is awaited stays awaited, and is not asked for again."""
        return [SlotSet(PUT, True)] if memory.asked else []


def take(keeper: Keeper | None, tracker: Tracker, memory: Memory, depth: int | None) -> tuple[Turn, list[EventType]]:
    """Take what the cook said last, have kept what is to be kept of it, and the reminders of its timers."""
    taken = done(keeper, take_turn(heard(tracker), memory, depth))
    reminders: list[EventType] = []
    if keeper:
        taken, reminders = kept(keeper, tracker.sender_id, taken)
        keeper.drilled(memory.drill, taken.memory.drill)
    return taken, reminders


def set_slots(values: Mapping[str, Any]) -> list[EventType]:
    """Slots to be set, as events."""
    return [SlotSet(name, value) for name, value in values.items()]


def slots_after(taken: Turn) -> dict[str, Any]:
    """The slots of the memory after a turn, and those that show what was understood and answered."""
    return {**slots_of(taken.memory), **shown(taken.reply.answer)}


def ring(keeper: Keeper | None, dispatcher: CollectingDispatcher, tracker: Tracker) -> None:
    """Let the timers of the conversation ring."""
    for text in keeper.rings(tracker.sender_id) if keeper else ():
        dispatcher.utter_message(text=text)


def actions(keeper: Keeper | None = None, depth: int | None = None) -> tuple[Action, ...]:
    """All of them, with what keeps timers and progress, and the depth of their answers."""
    kinds: tuple[type[KitchenAction], ...] = (ActionAnswer, ActionAskPiece, ValidatePieceForm, ActionRing)
    return tuple(kind(keeper, depth) for kind in kinds)


def done(keeper: Keeper | None, taken: Turn) -> Turn:
    """The turn with what came of what it asks to be done beside: a file written, batches kept, or that they are not."""
    match taken.deed:
        case WriteFile() | Draw():
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


def kept(keeper: Keeper, conversation: str, taken: Turn) -> tuple[Turn, list[EventType]]:
    """The turn with what came of a request about timers, and their reminders; other turns as they are."""
    requests = timers_asked(taken)
    if not requests:
        return followed(keeper, conversation, taken)
    answered = [keeper.timed(request, conversation) for request in requests]
    outcomes = [outcome for outcome in answered if outcome]
    told_so = say("no-timers") if len(outcomes) < len(answered) else " ".join(outcome.text for outcome in outcomes)
    reply = told(replace(taken.reply.answer, headline=told_so, figures=(), cautions=()))
    return replace(taken, reply=reply), [event for outcome in outcomes for event in reminders_of(outcome)]


def followed(keeper: Keeper, conversation: str, taken: Turn) -> tuple[Turn, list[EventType]]:
    """The turn with what becomes of the timers of a plan that it has changed."""
    outcome = keeper.timed(taken.follow, conversation) if taken.follow else None
    if outcome is None or not outcome.text:
        return taken, []
    answer = _and_also(taken, outcome.text).answer
    answer = replace(answer, spoken=f"{answer.spoken} {first_sentence(outcome.text)}")
    return replace(taken, reply=replace(taken.reply, word=lambda: answer)), list(reminders_of(outcome))


def reminders_of(outcome: Outcome) -> Iterator[EventType]:
    """What Rasa is to be reminded of, so that a timer rings without anybody speaking, and what no longer."""
    for timer in (*outcome.gone, *outcome.changed):
        yield ReminderCancelled(name=reminder(timer))
    for timer in (*([outcome.new] if outcome.new else []), *outcome.changed):
        yield ReminderScheduled(TIMER_UP, timer.ends_at, name=reminder(timer), kill_on_user_message=False)


def reminder(timer: Timer) -> str:
    """What the reminder of a timer is called; no two timers that run in a conversation have one name."""
    return f"timer {timer.name}"


def utter(dispatcher: CollectingDispatcher, answer: Answer) -> None:
    """The reply as text, with the answer of the JSON contract beside it."""
    given(answer)
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
