"""What a reply must not lose on its way from the question to the cook: tested through the door that cooks use."""

import pytest

from assistant.answering import reply_to
from rules.model import Kitchen

LODGE = Kitchen(elevation_m=2133.6)


def test_a_temperature_goes_with_its_method() -> None:
    bath = reply_to("sous vide steak at 131 F", kitchen=LODGE)
    roast = reply_to("and roasted?", ["sous vide steak at 131 F"], LODGE)
    assert bath.request.temperature_c == pytest.approx(55, abs=0.1)
    assert (roast.request.method, roast.request.temperature_c) == ("roast", None)


def test_a_warning_is_spoken_where_nothing_is_refused() -> None:
    fried = reply_to("how long to deep fry doughnuts", kitchen=LODGE)
    warned = next(c.text for c in fried.cautions if c.level == "warn")
    assert warned.split(". ")[0].casefold() in fried.spoken.casefold()


def test_a_second_elevation_is_not_passed_over_in_silence() -> None:
    both = reply_to("how long to boil white rice at 7,000 ft and how long at 9,000 ft")
    assert both.request.elevations_m == pytest.approx((2133.6, 2743.2))
    assert "9,000" in both.text


@pytest.mark.parametrize(("question", "end"), [("short ribs", "high"), ("brownies", "value")])
def test_what_waits_well_is_planned_by_its_long_end_and_the_rest_by_the_middle(question: str, end: str) -> None:
    planned = reply_to(f"serve {question} at 6 pm, when do I start", kitchen=LODGE)
    cooked = reply_to(f"how long for {question}", kitchen=LODGE)
    stage, cook = planned.figure("cook_time"), cooked.figure("cook_time") or cooked.figures[0]
    assert stage.low < stage.high
    assert stage.value == pytest.approx(getattr(stage, end) if end == "high" else (stage.low + stage.high) / 2, rel=0.1)
    assert cook is not None
