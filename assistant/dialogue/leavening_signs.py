"""By what a bake shows that it had too much or too little of what raises it."""

from __future__ import annotations

from dataclasses import replace

from assistant.dialogue.gathering import Taken
from assistant.dialogue.heard import Heard
from assistant.dialogue.memory import Memory
from assistant.dialogue.moves import words as words_of
from assistant.recipes.dictated import listed
from assistant.understanding.conversation import settle_in
from assistant.understanding.cue_words import said as said_among
from assistant.worked_out import told
from rules.model import PLACE_SLOTS, Answer, Because
from rules.said import sentences

say = sentences("dialogue/leavening_signs")
ADJUSTED, COMMON = "bake_adjust", ("common-practice",)
LONGEST = 24


def signs_asked(heard: Heard, memory: Memory) -> Taken | None:
    """The signs of too little and too much, where they are asked for: how would I know if I cut the soda too far."""
    words = words_of(heard.text).split()
    asks = said_among(words, listed("signs_asked")) and said_among(words, listed("overdone"))
    agent = leavening_in(words) if asks and len(words) <= LONGEST else None
    if agent is None or memory.asked not in (None, "elevation"):
        return None
    last, now = memory.request, heard.hearing.request
    base = last if last and now.dish in (None, last.dish) else now
    if base.elevation_m is None and last:
        base = replace(base, **{slot: getattr(last, slot) for slot in PLACE_SLOTS})
    question = replace(base, topic=ADJUSTED, subject=None, text=heard.text, recipe="", small_talk=None, choices=())
    steps = (say("too-little", agent=agent), say("too-much", agent=agent), say("step", agent=agent))
    because = (Because("baking.leavening", say("why", agent=agent), COMMON),)
    answer = Answer(
        request=settle_in(question, memory.kitchen), headline=say("signs", agent=agent), steps=steps, because=because
    )
    return told(answer), replace(memory, asked=None)


def leavening_in(words: list[str]) -> str | None:
    """What raises the bake, of those that are named: soda, powder or yeast.

    >>> leavening_in("did i cut the baking powder too far".split()), leavening_in("too much flour".split())
    ('powder', None)
    """
    pairs = (row.split(": ") for row in listed("leavenings"))
    return next((agent for name, agent in pairs if said_among(words, (name,))), None)
