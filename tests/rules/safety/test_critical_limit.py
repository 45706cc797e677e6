"""The critical limit of a plan that says `boil`."""

from __future__ import annotations

import pytest

from assistant.answering import reply_to, understand


@pytest.mark.parametrize(
    "text",
    [
        "our HACCP plan has boiling at 100 C as the critical limit, what should it say at 3,300 m",
        "what do I put as the critical limit for soup at 9,500 ft",
        "CCP on the sheet: 212 F in the pot, kitchen at 8,800 ft, what do I write",
        "haccp: limit for reheated stew at 2,900 m?",
    ],
)
def test_the_temperature_of_the_food_takes_the_place_of_the_boil(text: str) -> None:
    """FDA Food Code 2022: reheating 165 degF (3-403.11), hot holding 135 degF (3-501.16), elsewhere the same."""
    answer = reply_to(text)
    assert understand(text).subject == "critical_limit"
    assert "165 °F" in answer.text.splitlines()[0]
    assert "135 °F" in answer.text.splitlines()[0]
    assert answer.figure("boiling_point").value > answer.figure("reheat_temperature").value


def test_without_a_place_no_boil_is_told() -> None:
    answer = reply_to("what critical limit do I write for dal")
    assert answer.missing == ()
    assert answer.figure("boiling_point") is None


def test_a_bath_under_the_boil_is_its_own_limit() -> None:
    answer = reply_to("sous vide pork shoulder 20 h at 70 C at 2,500 m, does altitude change the HACCP limit")
    assert answer.headline.startswith("No")
    assert answer.figure("bath_temperature").value == pytest.approx(70)


def test_a_bath_that_is_too_cool_is_no_limit() -> None:
    answer = reply_to("HACCP limit for sous vide chicken at 50 C for 2 h at 2,500 m")
    assert not answer.headline.startswith("No, elevation")
