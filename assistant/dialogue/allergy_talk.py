"""A guest with an allergy is told of: what of the dishes holds it, and how it is kept apart; kept for later turns."""

from __future__ import annotations

from dataclasses import replace

from assistant.dialogue.heard import Heard
from assistant.dialogue.memory import Memory
from assistant.dialogue.plans import dishes_of
from assistant.dialogue.thread import after, question_of
from assistant.understanding.conversation import settle_in
from assistant.worked_out import WorkedOut, work_out
from rules.model import Request

SUBJECT, TOPIC = "allergy", "doneness"
# forms that ask for a figure of the cooking, which is answered with the allergy named after it
ASKS_A_FIGURE = frozenset(("how_long", "how_hot", "how_much", "start", "remaining", "factor"))


def told(heard: Heard, memory: Memory) -> tuple[WorkedOut, Memory] | None:
    """The reply to an utterance that tells of a guest's allergy and asks for no figure; None for any other."""
    now = heard.hearing.request
    if not heard.doc._.allergies or now.recipe or heard.doc._.clock or not ASKS_A_FIGURE.isdisjoint(now.forms):
        return None
    question = question_of(heard.in_context(memory), memory, back_to_recipe=False)
    last, plan = memory.request, memory.menu
    dish = now.dish or (last.dish if last else None)
    ids = tuple(told.id for told in heard.doc._.allergies)
    request = replace(
        Request(topic=TOPIC, text=now.text, units=question.units, depth=heard.depth or question.depth),
        subject=SUBJECT,
        dish=dish,
        dish_class=now.dish_class if now.dish else last.dish_class if last and dish else None,
        dishes=_others(now, last, plan),
        allergens=ids,
        dangers_too=heard.warned_beside,
    )
    kept = memory if now.dish is None else after(question, memory)
    return work_out(settle_in(request, memory.kitchen)), replace(kept, asked=None if now.dish else memory.asked)


def _others(now: Request, last: Request | None, plan: Request | None) -> tuple[str, ...]:
    """The dishes beside the first: those that are named now, else of the plan, else of the last question."""
    if now.dish or last is None:
        return now.dishes_too
    if plan:
        return tuple(one.dish for one in dishes_of(plan) if one.dish)
    return (*last.dishes_too, *last.dishes)
