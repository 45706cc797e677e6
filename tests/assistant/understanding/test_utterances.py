"""Every test question of data/utterances/test, one item a sentence: what is heard is what was written."""

from __future__ import annotations

import runpy
from pathlib import Path
from typing import Any

import pytest

accuracy = runpy.run_path(str(Path(__file__).with_name("accuracy.py")))


def items() -> list[Any]:
    """The cases as pytest items, named by topic and sentence; a known miss is a strict xfail with its reason."""
    return [
        pytest.param(case, id=f"{case['topic']}: {case['text']}", marks=known_miss(case))
        for case in accuracy["load_cases"]()
    ]


def known_miss(case: dict[str, Any]) -> list[pytest.MarkDecorator]:
    """The mark of a case that carries `xfail`."""
    return [pytest.mark.xfail(reason=case["xfail"], strict=True)] if "xfail" in case else []


@pytest.mark.parametrize("case", items())
def test_is_heard(case: dict[str, Any]) -> None:
    """Fields that the case lists come out as listed."""
    from assistant.answering import understand

    fields = accuracy["compare"](case, understand(case["text"], case.get("context", ())))
    misses = [f"{field}: expected {expected}, heard {heard}"
              for field, (expected, heard, agree) in fields.items() if not agree]  # fmt: skip
    assert not misses, "; ".join(misses)


def test_a_wrong_field_is_a_miss() -> None:
    """The comparison itself tells right from wrong, unit by unit."""
    from rules.model import Quantity, Request

    case = {"text": "", "topic": "time", "dish": None, "elevation_ft": 7000, "temperature_f": 325,
            "quantity": {"value": 2, "unit": "quart"}, "pressure_psi": 15, "time_min": 90}  # fmt: skip
    right = Request(topic="time", elevation_m=2140.0, temperature_c=162.8, quantity=Quantity(2.0, "qt"),
                    gauge_pa=103421.0, time_min=90.0)  # fmt: skip
    wrong = Request(topic="why", dish="rice", elevation_m=2190.0, temperature_c=325.0, quantity=Quantity(2.0, "pint"),
                    gauge_pa=15.0)  # fmt: skip
    assert all(agree for _, _, agree in accuracy["compare"](case, right).values())
    assert not any(agree for _, _, agree in accuracy["compare"](case, wrong).values())


def test_an_elevation_that_nobody_gave_is_a_miss() -> None:
    """`elevation: null` means that none must be found."""
    from rules.model import Request

    case = {"text": "", "topic": "timer", "elevation": None}
    assert accuracy["compare"](case, Request(topic="timer"))["elevation"][2]
    assert not accuracy["compare"](case, Request(topic="timer", elevation_m=0.0))["elevation"][2]
