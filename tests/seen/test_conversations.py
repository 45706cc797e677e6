"""Conversations that strangers wrote and that were held once before anybody here had read them.

Each line of conversations.jsonl has the grades of its first replies, turn by turn, given by a reader who saw what was
said and nothing else: right, clumsy, wrong, lost (the thread) or unsafe. They are seen now, so nothing here measures
how well strangers are answered; it holds that every turn gets a whole reply, the same each time, and that no two
conversations mix.
"""

from __future__ import annotations

import json
import re
from collections import Counter
from pathlib import Path
from typing import Any

import pytest

from assistant.dialogue.memory import Memory
from assistant.dialogue.turn import take_turn

HELD = [json.loads(line) for line in (Path(__file__).parent / "conversations.jsonl").read_text("utf-8").splitlines()]
BROKEN = re.compile(r"[{}]|\bNone\b|\bnan\b|\binf\b|Traceback|<<|>>")
GRADES = {"right", "clumsy", "wrong", "lost", "unsafe"}


def replies(turns: list[str]) -> list[str]:
    """What is said to each turn of a conversation."""
    memory, said = Memory(), []
    for text in turns:
        turn = take_turn(text, memory)
        memory = turn.memory
        said.append(turn.answer.text)
    return said


@pytest.mark.parametrize("row", HELD, ids=lambda row: row["id"])
def test_every_turn_gets_a_whole_reply_and_the_same_again(row: dict[str, Any]) -> None:
    said = replies(row["turns"])
    assert all(text.strip() and not BROKEN.search(text) for text in said), said
    assert replies(row["turns"]) == said


def test_conversations_held_side_by_side_do_not_mix() -> None:
    alone = [replies(row["turns"]) for row in HELD[:20]]
    memories, beside = [Memory()] * 20, [[] for _ in range(20)]  # type: ignore[var-annotated]
    for at in range(8):
        for i, row in enumerate(HELD[:20]):
            if at < len(row["turns"]):
                turn = take_turn(row["turns"][at], memories[i])
                memories[i] = turn.memory
                beside[i].append(turn.answer.text)
    assert beside == alone


def test_the_first_grades_are_kept() -> None:
    """As they were given; a grade is never made better afterwards."""
    grades = Counter(grade for row in HELD for grade in row["first_grades"])
    assert set(grades) <= GRADES
    assert all(len(row["turns"]) == len(row["first_grades"]) for row in HELD)
