"""A why by itself: it means the last answer."""

from __future__ import annotations

import pytest

from assistant.answering import reply_to, understand

BEANS = "how long to simmer pinto beans at 6,500 ft"
WHYS = ["why?", "why is that", "how come", "but why", "ok and why is that?", "how do you know that", "why so long"]


@pytest.mark.parametrize("why", WHYS)
def test_gives_the_reasons_of_the_last_answer(why: str) -> None:
    given, asked = reply_to(why, [BEANS]), reply_to(BEANS)
    assert given.headline == asked.because[0].text
    assert {b.rule for b in given.because} <= {b.rule for b in asked.because}
    assert given.request.topic == "why"
    assert given.request.dish == asked.request.dish
    assert given.figures == ()


def test_of_a_reason_asks_for_the_deeper_one() -> None:
    question = "why does pasta take longer at 7,000 ft"
    assert "T_sat(p)" in reply_to("why is that", [question]).text
    assert "T_sat(p)" not in reply_to(question).text


def test_of_what_was_refused_gives_the_refusal_again_with_its_reason() -> None:
    question = "can i water bath green beans for 3 hours"
    refused, given = reply_to(question), reply_to("why not?", [question])
    assert given.headline == refused.headline
    assert given.headline.startswith("No")
    assert {b.text for b in given.because} == {b.text for b in refused.because}
    assert "longer time printed" not in given.text


def test_while_a_piece_is_awaited_tells_what_it_is_needed_for_and_asks_again() -> None:
    given = reply_to("why?", ["how long do I boil fettuccine"])
    assert "What elevation" in given.text
    assert given.text.index("Water boils cooler") < given.text.index("What elevation")


def test_with_nothing_before_it_tells_no_reason_of_anything() -> None:
    assert understand("why?").subject is None
    assert understand("how come").subject is None


def test_goes_back_to_the_question_after_it() -> None:
    request = understand("and at 9,000 ft?", [BEANS, "why?"])
    assert request.elevation_m == pytest.approx(2743.2)
    assert request.dish == "pinto beans"


def test_a_why_that_says_more_is_a_question_of_its_own() -> None:
    assert understand("why does the lid matter", [BEANS]).subject == "lid_matters"
