"""What is asked back of the conversation: where, what, which first; an answer again, the one before, which of these."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from typing import Any

from assistant.dialogue import history, talk
from assistant.dialogue.heard import Heard
from assistant.dialogue.made import BRIEFEST, Made, ask, kitchen_told, said
from assistant.dialogue.memory import Memory, Step, moved
from assistant.dialogue.thread import after, talked_of
from assistant.reading.tokens import norms
from assistant.replies.headline import doing_of
from assistant.replies.together import together
from assistant.understanding.conversation import settle_in
from assistant.understanding.unclaimed import HINT_WORDS
from assistant.worked_out import WorkedOut
from rules.model import Answer, Figure, Request, Unused
from rules.said import Words, duration, elevation, listed, sentences
from rules.said import together as one_after_the_other

say = sentences("dialogue/talk")

COOK_TIME = "cook_time"
# a name that was misheard is at least as like one that was talked of
ALIKE = 60
# what narrows down which of several answers is meant
NARROWING = ("method", "soaked", "covered")


def recalled(heard: Heard, memory: Memory) -> Made | None:
    """What comes of an utterance that asks back, and the memory after it; None for any other."""
    if heard.hearing.request.recipe:
        return None
    what = None if heard.move else talk.recall(heard.doc.text)
    return RECALLS[what](heard, memory) if what else told_again(heard, memory)


def _place(heard: Heard, memory: Memory) -> Made:
    """The elevation that is reckoned with, and where it was said."""
    last = talked_of(memory)
    here = settle_in(last or Request(), memory.kitchen)
    if last is None or here.elevation_m is None or memory.kitchen.elevation_m is not None:
        return said(heard.text, kitchen_told(memory), memory, "set_kitchen"), memory
    place = elevation(here.elevation_m)
    told = say("place-said", place=place, dish=last.dish) if last.dish else say("place-said-alone", place=place)
    return said(heard.text, told, memory, "set_kitchen"), memory


def _dish(heard: Heard, memory: Memory) -> Made:
    """What is being cooked and where, when it is served, and what was talked of before."""
    steps = history.latest_each(history.of_dishes(memory))
    last = talked_of(memory)
    if last is None or not last.dish:
        last = steps[-1].request if steps else None
    if last is None:
        return said(heard.text, say("nothing-made"), memory), memory
    others = [step.request.dish for step in steps if step.request.dish not in (None, last.dish)]
    served = say("served-at", time=last.service_time) if last.service_time else None
    before = say("made-before", dishes=listed(map(str, reversed(others)), "commas")) if others else None
    return said(heard.text, one_after_the_other(_making(last, memory), served, before), memory), memory


def _making(question: Request, memory: Memory) -> Words:
    here = settle_in(question, memory.kitchen).elevation_m
    doing = doing_of(question)
    return say("making", doing=doing) if here is None else say("making-there", doing=doing, place=elevation(here))


def _first(heard: Heard, memory: Memory) -> Made:
    """The first question in the words it was asked in, and its answer."""
    if not memory.past:
        return said(heard.text, say("nothing-said"), memory), memory
    first = memory.past[0]
    intro = said(heard.text, say("first-asked", text=first.request.text), memory)
    again = history.put_again(first, memory.kitchen, depth=BRIEFEST)
    return WorkedOut(intro.request, (), lambda: _behind(intro.answer, again.answer)), memory


def _behind(first: Answer, second: Answer) -> Answer:
    return replace(first, text=f"{first.text}\n\n{second.text}", spoken=f"{first.spoken} {second.spoken}")


def _undo(heard: Heard, memory: Memory) -> Made:
    """The conversation as it was before its last change, and the answer that was given then."""
    back = history.gone_back(memory)
    if back is None:
        return said(heard.text, say("nothing-before"), memory), memory
    reply = history.put_again(back.past[-1], back.kitchen)
    return reply.asked_as(heard.text), replace(back, asked=next(iter(reply.missing), None))


def _redo(heard: Heard, memory: Memory) -> Made:
    """The question that is talked of, answered as things are now."""
    last = talked_of(memory)
    if last is None or memory.request is None:
        return said(heard.text, say("nothing-said"), memory), memory
    if memory.past and memory.past[-1].danger and last == memory.request:
        return history.put_again(memory.past[-1], memory.kitchen).asked_as(heard.text), memory
    left = after(moved(last, memory.request), memory)
    reply = ask(left)
    return reply.asked_as(heard.text), replace(left, asked=next(iter(reply.missing), None))


def _highest(heard: Heard, memory: Memory) -> Made | None:
    return _by_height(heard, memory, "highest")


def _lowest(heard: Heard, memory: Memory) -> Made | None:
    return _by_height(heard, memory, "lowest")


def _by_height(heard: Heard, memory: Memory, end: str) -> Made | None:
    """The places that were named, the highest or the lowest first."""
    ranked = sorted(history.places(memory.past), key=lambda place: place[1], reverse=end == "highest")
    named = [say("place-named", name=name, place=elevation(m)) if name else elevation(m) for name, m in ranked]
    if not named:
        return said(heard.text, say("no-places"), memory), memory
    if len(named) == 1:
        return said(heard.text, say("fewer-places", count=1, places=named[0]), memory), memory
    first, rest = named[0], listed(named[1:], "commas")
    told = say("highest", first=first, rest=rest) if end == "highest" else say("lowest", first=first, rest=rest)
    return said(heard.text, told, memory), memory


def _longest(heard: Heard, memory: Memory) -> Made | None:
    return _by_time(heard, memory, "longest")


def _shortest(heard: Heard, memory: Memory) -> Made | None:
    return _by_time(heard, memory, "shortest")


def _by_time(heard: Heard, memory: Memory, end: str) -> Made:
    """The dishes that were talked of by the time they take where each was asked, the longest or the shortest first."""
    timed = [(step, time) for step in history.latest_each(history.of_dishes(memory)) if (time := _time(step, memory))]
    ranked = sorted(timed, key=lambda one: one[1].value, reverse=end == "longest")
    named = [say("takes", doing=doing_of(s.request), time=duration(time.value)) for s, time in ranked]
    if len(named) < 2:
        told = say("fewer-dishes", dishes=named[0]) if named else say("no-dishes")
        return said(heard.text, told, memory), memory
    first, rest = named[0], listed(named[1:], "semicolons")
    told = say("longest", first=first, rest=rest) if end == "longest" else say("shortest", first=first, rest=rest)
    return said(heard.text, told, memory), memory


def _time(step: Step, memory: Memory) -> Figure | None:
    return None if step.danger else history.put_again(step, memory.kitchen).answer.figure(COOK_TIME)


RECALLS: dict[str, Callable[[Heard, Memory], Made | None]] = {
    "place": _place, "dish": _dish, "first": _first, "undo": _undo, "redo": _redo,
    "highest": _highest, "lowest": _lowest, "longest": _longest, "shortest": _shortest,
}  # fmt: skip


def told_again(heard: Heard, memory: Memory) -> Made | None:
    """The answers about dishes that are asked for again, where each was asked: remind me of the rice."""
    if heard.move or not talk.is_told_again(heard.doc.text):
        return None
    steps = history.of_dishes(memory)
    if not steps or _says_anew(heard, steps) or _left_over(heard, steps):
        return None
    found = _meant(heard, steps)
    if not found:
        return None
    units = memory.request.units if memory.request else memory.kitchen.units
    slots: dict[str, Any] = {"units": units, **({"depth": BRIEFEST} if len(found) > 1 else {})}
    replies = [_noted(history.put_again(step, memory.kitchen, **slots), note) for step, note in found]
    last = found[-1][0]
    left = replace(after(replace(last.request, units=units), memory), asked=None)
    if len(replies) == 1:
        return replies[0].asked_as(heard.text), replace(left, asked=next(iter(replies[0].missing), None))
    word = lambda: together([reply.answer for reply in replies], heard.text)  # noqa: E731
    return WorkedOut(replies[-1].request, (), word), left


def _noted(reply: WorkedOut, note: Unused | None) -> WorkedOut:
    """A reply with what it was taken for where a name was misheard."""
    if note is None:
        return reply
    from assistant.worked_out import work_out

    return work_out(replace(reply.request, unused=(*reply.request.unused, note)))


def _says_anew(heard: Heard, steps: Sequence[Step]) -> bool:
    """Whether a figure or a place is said that was not said before, which makes it a question of its own."""
    doc = heard.doc
    named = {mention.place for mention in doc._.elevations}
    return bool(doc._.measures or doc._.clock) or not named.issubset(step.request.place for step in steps)


def _left_over(heard: Heard, steps: Sequence[Step]) -> bool:
    """Whether more is said than what was asked before, and about which dish."""
    taken = {i for f in heard.doc._.found if f.kind in ("dish", "method") for i in range(f.start, f.end)}
    taken |= {i for mention in heard.doc._.elevations for i in range(mention.start, mention.end)}
    known = history.stems([word for step in steps for word in (step.request.dish or "").split()])
    words = [word for i, word in enumerate(norms(heard.doc)) if i not in taken and word.isalnum()]
    beside = talk.little() | HINT_WORDS
    return any(word not in beside and known.isdisjoint(history.stems([word])) for word in words)


def _meant(heard: Heard, steps: Sequence[Step]) -> list[tuple[Step, Unused | None]]:
    """The steps that are meant, each with a note where its name was misheard; none where it is not clear."""
    there = {mention.place for mention in heard.doc._.elevations}
    at_place = [step for step in steps if not there or step.request.place in there]
    narrowed = [step for step in at_place if _fits(step, heard.hearing.request)]
    found = list(_by_name(heard, narrowed))
    if found:
        meant = {step.request.dish: (step, note) for step, note in found if step is not None}
        return list(meant.values()) if all(step for step, _ in found) else []
    words = [word for word in norms(heard.doc) if word.isalpha() and word not in talk.little()]
    step = history.named(words, None, narrowed)
    step = step or (narrowed[-1] if narrowed and HINT_WORDS.issuperset(words) else None)
    return [(step, None)] if step else []


def _by_name(heard: Heard, steps: Sequence[Step]) -> Iterator[tuple[Step | None, Unused | None]]:
    """The step of every dish that is named, None where it was not talked of and is like none that was."""
    words = norms(heard.doc)
    for f in heard.doc._.found:
        if f.kind == "dish":
            own = words[f.start : f.end]
            step = history.named(own, f.id, steps)
            yield (step, None) if step else _nearest(" ".join(own), steps, heard)


def _nearest(name: str, steps: Sequence[Step], heard: Heard) -> tuple[Step | None, Unused | None]:
    """The step whose dish sounds most like a name, where it was asked what was said of it."""
    from rapidfuzz import fuzz

    best = max(steps, key=lambda s: fuzz.ratio(name, s.request.dish or ""), default=None)
    recalls = any(word in talk.recalling() for word in norms(heard.doc))
    if best is None or not recalls or fuzz.ratio(name, best.request.dish or "") < ALIKE:
        return None, None
    reason = say("nearest-meant", name=name, dish=best.request.dish or "")
    return best, Unused("misheard", name, reason)


def _fits(step: Step, now: Request) -> bool:
    """Whether a step was asked as it is told apart now: the soaked ones; the ribs in the smoker."""
    return all(getattr(now, slot) in (None, getattr(step.request, slot)) for slot in NARROWING)
