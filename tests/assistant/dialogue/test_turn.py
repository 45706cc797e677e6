"""One turn: an utterance is read once, worked out once, and worded only for who reads the reply."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

from assistant import worked_out
from assistant.answering import reply_to, understand
from assistant.dialogue.memory import Memory
from assistant.dialogue.turn import take_turn
from assistant.understanding.pipeline import read_clean
from rules import engine
from rules.model import Kitchen, Request

AWAITING = Memory(
    request=Request(text="how long to braise ribs", method="braise", dish="short ribs"), asked="elevation"
)


def counted(monkeypatch: pytest.MonkeyPatch, module: Any, name: str) -> list[Any]:
    """What a function of a module is called with from now on."""
    calls: list[Any] = []
    real: Callable[..., Any] = getattr(module, name)

    def counting(*given: Any) -> Any:
        calls.append(given)
        return real(*given)

    monkeypatch.setattr(module, name, counting)
    return calls


@pytest.mark.parametrize(
    "text", ["7,000", "thanks", "and at 9,000?", "double it", "zorgon", "quiz me", "why do you ask"]
)
@pytest.mark.parametrize("memory", [Memory(), AWAITING], ids=["new", "awaiting"])
def test_an_utterance_is_read_once(text: str, memory: Memory) -> None:
    read_clean.cache_clear()
    assert take_turn(text, memory).answer.text
    info = read_clean.cache_info()
    assert (info.hits, info.misses) == (0, 1)


def test_a_question_is_worked_out_once_and_worded_when_it_is_read(monkeypatch: pytest.MonkeyPatch) -> None:
    worked, worded = counted(monkeypatch, engine, "answer"), counted(monkeypatch, worked_out, "dress")
    turn = take_turn("how long to braise short ribs at 7,000 ft", Memory())
    assert (len(worked), len(worded)) == (1, 0)
    assert turn.answer is turn.answer
    assert (len(worked), len(worded)) == (1, 1)


def test_earlier_utterances_are_not_worded(monkeypatch: pytest.MonkeyPatch) -> None:
    worded = counted(monkeypatch, worked_out, "dress")
    assert reply_to("and at 9,000?", ["how long to braise short ribs", "7,000", "thanks", "double it"]).figures
    assert len(worded) == 1


def test_what_is_measured_is_what_users_get() -> None:
    """A reply to what was asked is understood as one, also from the outside."""
    context = ["how many short ribs for 60 covers", "when do I start the short ribs, braised, at 7,000 ft"]
    assert understand("for 6", context).service_time == "18:00"
    assert understand("rice", kitchen=Kitchen(elevation_m=1600.0)).elevation_from == "kitchen"


def test_more_time_that_was_asked_back_is_added() -> None:
    """The reply to how much longer sets no new timer."""
    memory = take_turn("add some time to the beans timer", Memory()).memory
    assert memory.asked == "time"
    assert take_turn("10 minutes", memory).reply.request.timer_action == "extend"
