"""A time as it is given and as it is told, before any reckoning."""

import pytest

from assistant.replies.sentences import worded
from rules.book import Case
from rules.errors import OutOfRange
from rules.heat import cook_times
from rules.model import Request


def case(**fields):
    return Case(Request(topic="time", elevation_m=2133.6, **fields))


@pytest.mark.parametrize(
    ("low", "high", "span"),
    [(60.0, 90.0, (60, 90)), (90.0, 60.0, (60, 90)), (45.0, None, (45, 45)), (1 / 60, 20_160.0, (1 / 60, 20_160))],
)
def test_a_time_is_a_span_whichever_end_comes_first(low, high, span):
    assert cook_times.stated_span(case(time_min=low, time_high_min=high)) == span


def test_no_time_is_no_span():
    assert cook_times.stated_span(case()) is None
    assert cook_times.stated_span(case(time_high_min=30.0)) is None


@pytest.mark.parametrize(("low", "high"), [(0.01, None), (20_161.0, None), (10.0, 30_000.0), (float("nan"), None)])
def test_from_a_second_to_two_weeks_and_no_further(low, high):
    with pytest.raises(OutOfRange) as refused:
        cook_times.stated_span(case(time_min=low, time_high_min=high))
    fault = refused.value
    assert (fault.name, fault.low, fault.high, fault.unit) == ("cooking time", 1 / 60, 20_160, "min")
    assert fault.hint == "Give the time it takes where the recipe is right."


def test_two_figures_tell_a_time_rounded_as_a_clock_is_read():
    here, base = cook_times.time_figures(case(), (61.0, 92.0), (73.2, 96.8, 127.4))
    assert (here.id, here.unit, here.low, here.value, here.high) == ("cook_time", "min", 75, 95, 125)
    assert (base.id, base.unit, base.low, base.value, base.high) == ("baseline_time", "min", 60, 75, 90)
    assert (worded(here.label, "us"), worded(base.label, "us")) == ("Time here", "Time at sea level")


def test_what_it_is_at_sea_level_is_known_only_where_the_baseline_is_there():
    at_sea, up = (
        cook_times.time_figures(case(from_elevation_m=m), (60.0, 90.0), (70.0, 90.0, 110.0))[0] for m in (0.0, 1500.0)
    )
    assert (at_sea.sea_level, up.sea_level) == (75, None)


def test_a_time_that_nothing_tells_is_a_factor_with_its_range():
    part = cook_times.no_time(case(), (1.104, 1.299, 1.5012), "Because.", "common-practice")
    (figure,) = part.figures
    assert (figure.id, figure.unit) == ("time_factor", "factor")
    assert (figure.low, figure.value, figure.high) == (1.1, 1.3, 1.5)
    assert worded(figure.label, "us") == "Time against sea level"
    assert worded(part.because, "us") == "No tested time is known for this. Because."
    assert part.sources == ("common-practice",)


def test_the_check_is_that_of_the_class():
    said = worded(cook_times.check_step(case(dish_class="pasta", method="boil")), "us")
    assert said.startswith("Start checking at the early end of the range. ")
    assert len(said) > 60
    assert said != worded(cook_times.check_step(case(dish_class="custard", method="bake")), "us")
