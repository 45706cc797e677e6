"""What was asked before in a conversation: kept step by step, found again by what is said of it, and answered again."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from dataclasses import replace
from typing import Any

from assistant.dialogue.memory import Memory, Step
from assistant.understanding.conversation import settle_in
from assistant.worked_out import WorkedOut, work_out
from rules.catalogue import marked
from rules.model import PLACE_SLOTS, Kitchen, Request

MOST_STEPS = 10
TIMER = "timer"


def kept(before: Memory, after: Memory, put: Request) -> Memory:
    """The memory after a turn, with the question that was put in it as the latest step.

    put: the question as the rules were asked it. What fills a missing piece takes the place of the question it fills.
    """
    question = after.request
    if question is None or question.topic in marked("passing") or after.past != before.past:
        return after
    if question == before.request and after.kitchen == before.kitchen:
        return after
    own = put.topic == question.topic and put.dish == question.dish
    step = Step(
        request=_placed(question, after.kitchen),
        kitchen=after.kitchen,
        danger=put.danger,
        subject=put.subject if own else question.subject,
    )
    # what fills a missing piece is no question of its own
    filled = before.asked is not None and bool(before.past) and before.past[-1].request.topic == question.topic
    if filled:
        step = replace(step, request=replace(step.request, text=before.past[-1].request.text))
    past = (*(before.past[:-1] if filled else before.past), step)
    return replace(after, past=past if len(past) <= MOST_STEPS else (past[0], *past[-MOST_STEPS + 1 :]))


def _placed(question: Request, kitchen: Kitchen) -> Request:
    """A question with the place where it was asked, which may be another one when it is asked again."""
    if question.elevation_m is not None or kitchen.elevation_m is None:
        return question
    here = settle_in(question, kitchen)
    return replace(question, **{slot: getattr(here, slot) for slot in PLACE_SLOTS})


def of_dishes(memory: Memory) -> tuple[Step, ...]:
    """The steps about a dish that were no aside, the latest last."""
    past = tuple(s for s in memory.past if s.request.dish and s.request.topic not in marked("by_the_way"))
    known = {step.request.dish for step in past}
    beside = (Step(request=question) for question in memory.earlier if question.dish not in known)
    return (*beside, *past)


def latest_each(steps: Sequence[Step]) -> tuple[Step, ...]:
    """The latest step about each dish, in the order in which they were first talked of."""
    return tuple({step.request.dish: step for step in steps}.values())


def named(words: Collection[str], dish: str | None, steps: Sequence[Step]) -> Step | None:
    """The latest step about a dish that is named by its id, or by one of its words: the ribs, after short ribs.

    words: of the utterance; dish: that was heard in it
    """
    exact = [step for step in steps if dish and step.request.dish == dish]
    by_word = [step for step in steps if not stems(words).isdisjoint(stems((step.request.dish or "").split()))]
    return next(iter([*reversed(exact), *reversed(by_word)]), None)


def stems(words: Collection[str]) -> frozenset[str]:
    """Words without the s of their plural.

    >>> sorted(stems(["ribs", "tomatoes", "rice"]))
    ['rib', 'rice', 'tomato']
    """
    return frozenset(_stem(word) for word in words)


def _stem(word: str) -> str:
    if word.endswith("oes"):
        return word[:-2]
    return word[:-1] if word.endswith("s") and not word.endswith("ss") else word


def put_again(step: Step, kitchen: Kitchen, **slots: Any) -> WorkedOut:
    """A question answered again where it was asked; what was refused is refused again."""
    request = replace(settle_in(step.request, kitchen), danger=step.danger, subject=step.subject, **slots)
    return work_out(request)


def gone_back(memory: Memory) -> Memory | None:
    """The memory before its last change; None where nothing was before."""
    questions = tuple(step for step in memory.past if step.request.topic != TIMER)
    if len(questions) < 2:
        return None
    rest = questions[:-1]
    last = rest[-1]
    question = replace(last.request, subject=last.subject) if last.danger is None else last.request
    before = next((s.request for s in reversed(rest) if s.request.topic not in marked("by_the_way")), None)
    by_the_way = question.topic in marked("by_the_way")
    return replace(
        memory,
        request=question,
        before=before if by_the_way else None,
        kitchen=last.kitchen,
        earlier=tuple(s.request for s in latest_each(of_dishes(replace(memory, past=rest, earlier=())))),
        past=rest,
        asked=None,
    )


def places(steps: Sequence[Step]) -> Iterator[tuple[str, float]]:
    """The places of the talk by name, empty where none was said, and their elevations [m], each once."""
    seen: dict[int, tuple[str, float]] = {}
    for step in steps:
        request = step.request
        heights = [*((request.place, h) for h in (request.elevation_m,)), *(("", h) for h in request.elevations_m)]
        for name, height_m in (*heights, ("", request.from_elevation_m)):
            if height_m:
                seen.setdefault(round(height_m), (name, height_m))
    yield from seen.values()
