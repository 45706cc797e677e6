"""All that is said of recipes and batches in a conversation, in the order in which it is taken."""

from __future__ import annotations

from assistant.dialogue import dough_talk
from assistant.dialogue.batch_talk import batches_told
from assistant.dialogue.gathering import gathered
from assistant.dialogue.heard import Heard
from assistant.dialogue.leavening_signs import signs_asked
from assistant.dialogue.memory import Memory
from assistant.dialogue.recipe_talk import Told, noted, recipe_told
from assistant.worked_out import WorkedOut
from rules.said import Words


def of_recipes(heard: Heard, memory: Memory) -> Told | None:
    """What comes of an utterance about a recipe or a batch of one; None for any other."""
    righted = None if "?" in heard.text else dough_talk.put_right(heard, memory)
    if righted:
        return Told(*dough_talk.alone(heard, righted[1], righted[0]))
    taken = signs_asked(heard, memory) or dough_talk.weighed_out(heard, memory) or dough_talk.outright(heard, memory)
    taken = (
        taken or dough_talk.for_flour(heard, memory) or dough_talk.kind_told(heard, memory) or gathered(heard, memory)
    )
    if taken:
        return Told(*taken)
    return batches_told(heard, memory) or recipe_told(heard, memory)


def beside(heard: Heard, memory: Memory) -> tuple[Memory, Words]:
    """The memory with what is told of a formula beside a question, and the sentence that says so."""
    righted = dough_talk.put_right(heard, memory)
    if righted is None:
        return dough_talk.with_formula(heard, memory), ""
    return righted[1], dough_talk.say("put-right", line=righted[0].line)


def with_note(reply: WorkedOut, note: Words) -> WorkedOut:
    """A reply that says first what was put right."""
    return noted(reply, note)
