"""What holds for the service that is talked of, whatever is asked between: for how many, and when it is served."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from spacy.tokens import Doc

from assistant.reading.tokens import norms
from assistant.understanding import menu_said
from assistant.understanding.claims import plain_numbers
from assistant.understanding.conversation import settle_in
from assistant.understanding.cue_words import cues, said
from assistant.worked_out import WorkedOut, work_out
from rules.catalogue import marked
from rules.model import Request

if TYPE_CHECKING:
    from assistant.dialogue.heard import Heard
    from assistant.dialogue.memory import Memory

BEFORE, BEHIND, COUPLES = (cues("tonight", name) for name in ("before", "behind", "couples"))
ORDER, PLAN, SHORT = "order", "schedule", 9
# fewer are counted in words only: just the two of us
LEAST, COUPLE = 2, 2


@dataclass(frozen=True, slots=True, kw_only=True)
class Tonight:
    """The service that is talked of. covers: how many eat; service_time: ISO 8601; None where that was never said"""

    covers: int | None = None
    service_time: str | None = None
    service_day: str | None = None


def covers_said(doc: Doc, before: int | None = None) -> int | None:
    """How many eat, where that is said: 48 people, we are 44 now, only 80, 84 not 80, just the two of us.

    before: how many they were
    """
    told = menu_said.covers(doc, before, in_focus=False).all
    if told is not None:
        return told
    words = norms(doc)
    for number in plain_numbers(doc):
        ahead, behind = words[: number.start], words[number.end :]
        whole = number.value == int(number.value) and number.value >= LEAST
        led = any(ahead[-len(phrase.split()) :] == phrase.split() for phrase in BEFORE)
        free = not behind or not behind[0][0].isalnum() or behind[0] in BEHIND
        if (whole and (led and free)) or (whole and ahead[-1:] != ["at"] and behind[:2] == ["not", str(before)]):
            return int(number.value)
    return COUPLE if said(words, COUPLES) else None


def noted(heard: Heard, before: Tonight) -> Tonight:
    """The service with what an utterance says of it."""
    request = heard.hearing.request
    if request.recipe or heard.drill or heard.answers_drill:
        return before
    of_service = request.topic in (ORDER, PLAN) or not request.portions
    covers = (request.portions if of_service else None) or covers_said(heard.doc, before.covers)
    return replace(
        before,
        covers=covers or before.covers,
        service_time=request.service_time or before.service_time,
        service_day=request.service_day or before.service_day,
    )


def of_plan(before: Tonight, plan: Request | None, old: Request | None) -> Tonight:
    """The service as the plan has it, where the plan was changed."""
    if plan is None or plan == old:
        return before
    return Tonight(
        covers=plan.portions or before.covers,
        service_time=plan.service_time or before.service_time,
        service_day=plan.service_day or before.service_day,
    )


def filled(reply: WorkedOut, question: Request, memory: Memory) -> tuple[WorkedOut, Request]:
    """The answer with what was said of the service before in the place of a question for it."""
    tonight, asked = memory.tonight, next(iter(reply.missing), None)
    if asked == "portions" and tonight.covers:
        known = replace(question, portions=tonight.covers)
    elif asked == "service_time" and tonight.service_time:
        day = question.service_day or tonight.service_day
        known = replace(question, service_time=tonight.service_time, service_day=day)
    else:
        return reply, question
    whole = replace(reply.request, portions=known.portions, service_time=known.service_time)
    return work_out(replace(settle_in(known, memory.kitchen), dangers_too=whole.dangers_too, depth=whole.depth)), known


def recounted(heard: Heard, memory: Memory) -> Request | None:
    """The amount that was asked for last, for other covers that are told and nothing more; None for anything else."""
    last, now = memory.request, heard.hearing.request
    if last is None or last.topic != ORDER or last.dish is None or len(heard.doc) > SHORT or heard.move:
        return None
    covers = covers_said(heard.doc, last.portions)
    other = now.dish not in (None, last.dish) or now.elevation_m is not None or now.recipe
    loose = heard.hearing.elliptical or now.topic in (ORDER, PLAN, *marked("of_nothing"))
    if covers is None or other or not loose or covers == last.portions or now.small_talk in ("thanks", "bye"):
        return None
    return replace(last, portions=covers, quantity=None, text=heard.text)
