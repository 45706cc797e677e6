"""The executor that runs our actions, in this process and behind the action server alike."""

from __future__ import annotations

from asyncio import Queue
from typing import Any

from rasa_sdk.executor import ActionExecutor, ActionExecutorRunResult, CollectingDispatcher
from rasa_sdk.interfaces import ActionExecutionRejection

from assistant.dialogue.actions import actions
from assistant.dialogue.keeper import Keeper

# part of a tracker, its type, and the type's name in JSON
WANTED: tuple[tuple[str, type, str], ...] = (
    ("sender_id", str, "a string"),
    ("slots", dict, "an object"),
    ("latest_message", dict, "an object"),
    ("events", list, "a list"),
)


class KitchenExecutor(ActionExecutor):
    """rasa-sdk's executor with our actions, which says what is wrong with a call before anything is run.

    keeper: keeps timers and progress; None where nothing is kept
    """

    def __init__(self, keeper: Keeper | None = None) -> None:
        super().__init__()
        for action in actions(keeper):
            self.register_action(action)

    async def run(
        self,
        action_call: dict[str, Any],
        sink: Queue[Any] | None = None,
        dispatcher: CollectingDispatcher | None = None,
    ) -> ActionExecutorRunResult | None:
        """Run the action that is called for.

        raises: ActionExecutionRejection for a malformed call, ActionNotFoundException, ActionMissingDomainException
        """
        if problem := fault_of(action_call):
            raise ActionExecutionRejection(str(action_call.get("next_action") or ""), problem)
        return await super().run(action_call, sink, dispatcher)


def fault_of(call: Any) -> str | None:
    """What is wrong with an action call, in a sentence; None where nothing is."""
    if not isinstance(call, dict):
        return 'An action call must be a JSON object: {"next_action": ..., "tracker": {...}, "domain": {...}}.'
    if not isinstance(call.get("next_action"), str) or not call["next_action"]:
        return 'The call names no action; say which one in "next_action", such as "action_answer".'
    tracker, domain = call.get("tracker"), call.get("domain")
    if not isinstance(tracker, dict):
        return 'The call has no tracker; "tracker" must be an object with sender_id, slots, latest_message and events.'
    for name, kind, json_name in WANTED:
        value = tracker.get(name, kind())
        if not isinstance(value, kind) or (name == "sender_id" and name not in tracker):
            return f'Malformed tracker: "{name}" must be {json_name}.'
    if not isinstance(tracker.get("latest_message", {}).get("text") or "", str):
        return 'Malformed tracker: "text" of "latest_message" must be a string.'
    if domain is not None and not isinstance(domain, dict):
        return '"domain" must be an object, as Rasa sends it; leave it out to be asked for it.'
    if domain is not None and not isinstance(domain.get("slots", {}), dict):
        return 'Malformed domain: "slots" must be an object.'
    return None
