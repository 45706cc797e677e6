"""The one way from words to an answer; every front end goes through here."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from rules.model import Answer, Kitchen, Request

LONGEST_CONTEXT = 20


def reply_to(
    text: str, context: Sequence[str] = (), kitchen: Kitchen | None = None, depth: int | None = None
) -> Answer:
    """Answer a question in free text.

    text: the question, any text whatsoever; context: earlier utterances of the conversation, oldest first
    kitchen: what to take for granted where the cook does not say; depth: of the answer, None leaves it to the cook
    returns: the Answer with its text and spoken line; never raises because of what the text says
    """
    from assistant.dialogue.memory import Memory
    from assistant.dialogue.turn import take_turn

    memory = Memory(kitchen=kitchen or Kitchen())
    for earlier in tuple(context)[-LONGEST_CONTEXT:]:
        memory = take_turn(str(earlier), memory).memory
    return take_turn(str(text), memory, depth).answer


def reply_to_request(request: Request) -> Answer:
    """Answer a request that is already taken apart, text and spoken line included."""
    from assistant.replies import dress
    from assistant.replies.worded import answer, in_words

    if request.danger:
        return dress(answer(request))
    if request.topic == "timer":
        from assistant.dialogue.timers import action

        request = replace(request, subject=action(request.text))
    if request.topic == "convert_recipe":
        from assistant.recipes.recipe_answer import answer_recipe

        return answer_recipe(request)
    if request.topic == "schedule":
        from assistant.planning.schedule import with_clock
        from rules import engine

        return dress(in_words(with_clock(engine.answer(request))))
    return dress(answer(request))
