"""The executor that runs our actions, in this process and behind the action server alike."""

from __future__ import annotations

import json
from asyncio import Queue
from typing import Any

from rasa_sdk.executor import ActionExecutor, ActionExecutorRunResult, CollectingDispatcher
from rasa_sdk.interfaces import ActionExecutionRejection, ActionMissingDomainException

from assistant.dialogue.actions import actions
from assistant.dialogue.domain import domain
from assistant.dialogue.keeper import Keeper

MOST_DIGESTS = 100
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
    depth: of the answers, whatever the cook says about it; None leaves it to the cook
    """

    def __init__(self, keeper: Keeper | None = None, depth: int | None = None) -> None:
        super().__init__()
        # digests of domains that were sent, the latest last
        self.known: tuple[str, ...] = ()
        for action in actions(keeper, depth):
            self.register_action(action)

    async def run(
        self,
        action_call: dict[str, Any],
        sink: Queue[Any] | None = None,
        dispatcher: CollectingDispatcher | None = None,
    ) -> ActionExecutorRunResult | None:
        """Run the action that is called for.

        A call that brings no domain to remember in, empty or none at all, is answered without memory.

        raises: ActionExecutionRejection for a malformed call, ActionNotFoundException, ActionMissingDomainException
        """
        action_call = readable(action_call)
        if problem := fault_of(action_call):
            raise ActionExecutionRejection(str(action_call.get("next_action") or ""), problem)
        result = await super().run({**action_call, "tracker": whole(action_call["tracker"])}, sink, dispatcher)
        if result is not None and is_bare(action_call):
            result.events = []
        return result

    def update_and_return_domain(self, payload: dict[str, Any], action_name: str) -> dict[str, Any]:
        """The domain of this call, which no other call ever sees: that which it brings, else ours.

        Rasa sends the digest of its domain alone; one that nobody has sent with its domain yet is asked for it.
        raises: ActionMissingDomainException where it is asked for
        """
        brought, digest = payload.get("domain"), payload.get("domain_digest")
        if brought:
            own: dict[str, Any] = brought
            self.known = (*self.known, digest)[-MOST_DIGESTS:] if digest and digest not in self.known else self.known
            return own
        if brought is None and digest is not None and digest not in self.known:
            raise ActionMissingDomainException(action_name)
        return domain()


def readable(call: dict[str, Any]) -> dict[str, Any]:
    """A call as it came, but for halves of letters, which no file, database or reply can hold: question marks."""
    text = json.dumps(call, ensure_ascii=False)
    try:
        text.encode()
    except UnicodeEncodeError:
        found: dict[str, Any] = json.loads(text.encode(errors="replace"))
        return found
    return call


def is_bare(call: dict[str, Any]) -> bool:
    """Whether a call brings no domain, so that no slot that is set would be kept."""
    return not call.get("domain") and call.get("domain_digest") is None


def whole(tracker: dict[str, Any]) -> dict[str, Any]:
    """A tracker with what rasa-sdk takes for granted, empty where it was left out."""
    return {**tracker, **{name: tracker.get(name, kind()) for name, kind, _ in WANTED}}


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
    if not all(map(_is_event, tracker.get("events", []))):
        return 'Malformed tracker: each of "events" must name its "event", that of a slot its "name" and "value" too.'
    if not isinstance(tracker.get("latest_message", {}).get("text") or "", str):
        return 'Malformed tracker: "text" of "latest_message" must be a string.'
    if domain is not None and not isinstance(domain, dict):
        return '"domain" must be an object, as Rasa sends it; leave it out to be asked for it.'
    if domain is not None and not isinstance(domain.get("slots", {}), dict):
        return 'Malformed domain: "slots" must be an object.'
    return None


def _is_event(event: Any) -> bool:
    if not isinstance(event, dict) or not isinstance(event.get("event"), str):
        return False
    return event["event"] != "slot" or (isinstance(event.get("name"), str) and "value" in event)
