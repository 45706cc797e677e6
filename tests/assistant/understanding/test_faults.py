"""What went wrong, heard in cooks' own words: which fault is meant of which dish, and what is no complaint at all."""

from functools import cache
from pathlib import Path

import pytest
import tomli

from assistant.answering import understand
from assistant.understanding.faults import Fault, heard_in, phrases
from assistant.understanding.pipeline import read
from rules.mending import Failed, all_meant, catalogue
from rules.model import Request

CASES = tomli.loads((Path(__file__).parent / "complaints.toml").read_text(encoding="utf-8"))
COMPLAINTS = [(text, id) for id, texts in CASES["complaints"].items() for text in texts]
ELSEWHERE = {subject: id for id, subject in CASES["answered_elsewhere"].items()}
LEAST = 0.95


@cache
def heard(text: str) -> Request:
    return understand(text)


def led_by(request: Request) -> str | None:
    """The row that leads the answer; of what another room answers the row it stands for."""
    if request.subject in ELSEWHERE:
        return ELSEWHERE[request.subject]
    if request.topic != "troubleshoot" or request.subject is None:
        return None
    failed = Failed(
        dish_class=request.dish_class, dish=request.dish, method=request.method, equipment=request.equipment
    )  # fmt: skip
    return all_meant([request.subject, *request.symptoms_too], failed)[0].id


def test_complaints_are_heard_as_the_fault_of_the_dish() -> None:
    assert len(COMPLAINTS) >= 150
    missed = [f"{text}: {got}, not {id}" for text, id in COMPLAINTS if (got := led_by(heard(text))) != id]
    assert len(missed) <= (1 - LEAST) * len(COMPLAINTS), "\n".join(missed)


@pytest.mark.parametrize("text", CASES["ordinary"]["texts"])
def test_an_ordinary_question_is_no_complaint(text: str) -> None:
    assert heard(text).topic != "troubleshoot"
