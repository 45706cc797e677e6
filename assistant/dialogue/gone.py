"""Equipment that is not there any more: what was to be cooked in it is worked out another way."""

from __future__ import annotations

from dataclasses import replace

from assistant.dialogue.heard import Heard
from assistant.dialogue.made import said
from assistant.dialogue.memory import Memory
from assistant.dialogue.recipe_talk import noted
from assistant.dialogue.thread import after
from assistant.reading.tokens import norms
from assistant.understanding import kitchen_told
from assistant.understanding.conversation import settle_in
from assistant.understanding.cue_words import cues
from assistant.understanding.cue_words import said as said_among
from assistant.understanding.leaning import main_question
from assistant.worked_out import WorkedOut, work_out
from rules.foods.methods import methods
from rules.said import sentences

say = sentences("dialogue/gone")
GONE = cues("gone", "words")
LONGEST = 12


def taken_away(heard: Heard, memory: Memory) -> tuple[WorkedOut, Memory] | None:
    """What comes of an utterance that tells of equipment that is gone, and nothing else; None for any other."""
    away, tool = gone(heard), _called(heard)
    if not away or not tool or memory.request is None:
        return None
    last, kitchen = memory.request, memory.kitchen
    kept = tuple(tool for tool in kitchen.equipment if tool not in away)
    memory = replace(memory, kitchen=replace(kitchen, equipment=kept), asked=None)
    lacking = tuple(dict.fromkeys((*last.lacking, *away)))
    owned = tuple(tool for tool in last.equipment if tool not in away)
    question = replace(last, lacking=lacking, equipment=owned, unused=())
    note = say("noted", what=tool)
    other_way = next((f.id for f in heard.doc._.found if f.kind == "method" and f.id not in away), None)
    used = last.method in away or other_way or not set(away).isdisjoint(last.equipment)
    if not used or last.dish is None:
        return said(heard.text, note, memory), replace(memory, request=question)
    if last.method in away:
        question = replace(question, gauge_pa=None, time_min=None, time_high_min=None)
    question = replace(main_question(question, memory.earlier), method=other_way, lacking=lacking, text=heard.text)
    reply = work_out(settle_in(question, memory.kitchen))
    return noted(reply, note), after(question, memory)


def gone(heard: Heard) -> tuple[str, ...]:
    """Methods and equipment that are told to be gone, and nothing asked."""
    now, words = heard.hearing.request, norms(heard.doc)
    if len(words) > LONGEST or names_a_dish(heard) or now.recipe or kitchen_told.asks_outright(heard.doc):
        return ()
    told = now.equipment if said_among(words, GONE) else ()
    away = (*now.lacking, *told)
    by_method = (method.id for method in methods().values() if set(away).intersection(method.equipment))
    in_it = (now.method,) if told and now.method else ()
    return tuple(dict.fromkeys((*away, *in_it, *(by_method if len(away) == 1 and told else ()))))


def names_a_dish(heard: Heard) -> bool:
    """Whether a dish is said, and not only meant."""
    return any(found.kind == "dish" for found in heard.doc._.found)


def _called(heard: Heard) -> str:
    """The tool by the words that the cook has for it."""
    doc = heard.doc
    named = (doc[f.start : f.end].text for f in doc._.found if f.kind in ("method", "equipment"))
    return next(named, "")
