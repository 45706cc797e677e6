"""A picture of what is talked of, where a cook says "show me": which one, and of what. Nothing is drawn here.

Whoever holds the conversation draws it into a file, as it writes those that a cook asks for.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cache
from typing import Any

from assistant.dialogue.deeds import Draw, safe_name
from assistant.dialogue.heard import Heard, hear
from assistant.dialogue.made import said
from assistant.dialogue.memory import Memory, moved
from assistant.dialogue.moves import bare
from assistant.dialogue.moves import words as words_of
from assistant.dialogue.thread import talked_of
from assistant.understanding.conversation import settle_in
from assistant.worked_out import WorkedOut
from rules import tables
from rules.model import Request
from rules.said import sentences

say = sentences("dialogue/pictures")
CATALOGUE = "lexicon/pictures.toml"
LONGEST = 120
# kinds that are of a dish, of a recipe, of a plan; every other is of the place alone
PLAN_TOPIC = "schedule"
TIME_TOPIC = "time"
OF_DISH, OF_RECIPE, OF_PLAN, OF_PLACE = "range", "recipe", "plan", "boil"


@dataclass(frozen=True, slots=True)
class Shown:
    """What is said where nothing can be drawn, and what is to be drawn. memory: as it was"""

    reply: WorkedOut
    memory: Memory
    deed: Draw | None


def shown(heard: Heard, memory: Memory) -> Shown | None:
    """The picture that an utterance asks for; None for any other."""
    text = words_of(heard.text)
    if not text or len(text) > LONGEST or heard.hearing.request.recipe or (memory.talk and memory.talk.open):
        return None
    kind = _kind(text, heard, memory)
    if kind is None:
        return None
    question = _question(kind, heard, memory)
    if question is None:
        return Shown(said(heard.text, say("nothing-yet", kind=kind), memory), memory, None)
    if question.elevation_m is None:
        return Shown(said(heard.text, say("where"), memory), memory, None)
    ending = ".png" if any(re.search(pattern, text) for pattern in _patterns("png")) else ".svg"
    name = safe_name(" ".join(filter(None, (kind, question.dish if kind == OF_DISH else ""))), ending)
    told = say("only-in-chat", kind=kind, dish=question.dish or "")
    return Shown(said(heard.text, told, memory), memory, Draw(kind, name, question))


def shown_again(text: str, memory: Memory) -> Draw | None:
    """What an utterance asked to be drawn that left the memory as it is; None for any other."""
    done = shown(hear(text, memory, None), memory)
    return done.deed if done else None


def _kind(text: str, heard: Heard, memory: Memory) -> str | None:
    """Which picture is meant: the one that is named, else the one of what was talked of last."""
    if any(re.search(pattern, bare(text)) for pattern in _patterns("bare")):
        return _of_topic(memory)
    if not any(re.search(pattern, text) for pattern in _patterns("wanted")):
        return None
    named = next((row["id"] for row in _kinds() if any(re.search(p, text) for p in row["named"])), None)
    return named if named and not _asks_else(heard) else None


def _asks_else(heard: Heard) -> bool:
    """Whether a question of its own is put beside the word for a picture."""
    return bool(heard.hearing.request.quantity or heard.hearing.request.portions)


def _of_topic(memory: Memory) -> str:
    last = talked_of(memory)
    if last is None:
        return OF_PLACE
    if last.topic == PLAN_TOPIC and memory.menu is None:
        return OF_DISH
    return next((row["id"] for row in _kinds() if last.topic in row["topics"]), OF_DISH if last.dish else OF_PLACE)


def _question(kind: str, heard: Heard, memory: Memory) -> Request | None:
    """What is to be drawn, at the place that is talked of, or that is told with it; None where nothing is there yet."""
    now, last = heard.hearing.request, talked_of(memory)
    base: Request | None
    if kind == OF_PLAN:
        base = memory.menu if memory.menu and memory.menu.service_time else None
    elif kind == OF_RECIPE:
        base = memory.recipe
    elif kind == OF_DISH:
        base = _of_dish(now, last)
    else:
        base = last or Request(units=memory.kitchen.units)
    if base is None:
        return None
    at = memory.request or base
    placed = moved(base, at) if at.elevation_m is not None else base
    if now.elevation_m is not None:
        placed = replace(placed, elevation_m=now.elevation_m, elevation_from=now.elevation_from, place=now.place)
    return settle_in(placed, memory.kitchen)


def _of_dish(now: Request, last: Request | None) -> Request | None:
    if now.dish and (last is None or now.dish != last.dish):
        return replace(now, topic=TIME_TOPIC, forms=(), subject=None)
    if last is None or last.dish is None:
        return None
    return replace(last, topic=TIME_TOPIC, forms=(), subject=None, menu=(), dishes=(), portions=None, quantity=None)


def _patterns(name: str) -> Sequence[str]:
    told: Sequence[str] = tables.read_toml(CATALOGUE)[name]
    return told


@cache
def _kinds() -> Sequence[dict[str, Any]]:
    rows: Sequence[dict[str, Any]] = tables.read_toml(CATALOGUE)["kind"]
    return rows
