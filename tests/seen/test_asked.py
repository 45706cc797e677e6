"""Questions that strangers wrote and that were asked once before anybody here had read them.

Each line of asked.jsonl has the grade of its first reply, given by a reader who saw question and reply only: A right,
B clumsy, C not understood, D wrong, E unsafe. They are seen now, so nothing here measures how well strangers are
answered; it holds that every one gets a whole reply, the same each time, and that no question moves the kitchen.
"""

from __future__ import annotations

import json
import re
from collections import Counter
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest

from assistant.answering import reply_to
from assistant.dialogue.memory import Memory
from assistant.dialogue.turn import take_turn
from assistant.replies.contract import as_json
from tests.contracts import faults

ASKED = [json.loads(line) for line in (Path(__file__).parent / "asked.jsonl").read_text("utf-8").splitlines()]
BROKEN = re.compile(r"[{}]|\bNone\b|\bnan\b|\binf\b|Traceback|<<|>>")


@pytest.mark.parametrize("row", ASKED, ids=lambda row: row["id"])
def test_gets_a_whole_reply_and_the_same_again(row: dict[str, Any]) -> None:
    replies = [reply_to(row["text"], tuple(row["context"])) for _ in range(2)]
    first = replies[0].text
    assert first.strip()
    assert first[0].isupper() or first[0].isdigit()
    assert not BROKEN.search(first)
    assert replies[1].text == first
    assert replies[0].spoken.strip()
    assert faults("answer", as_json(replies[0])) == []


@pytest.mark.parametrize("row", [row for row in ASKED if row["text"].rstrip().endswith("?")], ids=lambda row: row["id"])
def test_a_question_moves_no_kitchen(row: dict[str, Any]) -> None:
    memory = take_turn("my kitchen is at 7,000 ft", Memory()).memory
    after = take_turn(row["text"], memory).memory
    # what a thermometer was read to be off by is told, though the rest be asked
    assert replace(after.kitchen, thermometer_offset_c=0.0) == memory.kitchen


def test_the_first_grades_are_kept() -> None:
    """As they were given; a grade is never made better afterwards."""
    grades = Counter(row["first_grade"] for row in ASKED)
    assert set(grades) == set("ABCDE")
    assert sum(grades.values()) == len(ASKED) > 300
