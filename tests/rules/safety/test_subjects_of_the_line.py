"""Questions of the line that elevation hardly touches: cans, roux, eggs ahead, a short boil."""

import pytest

from assistant.answering import reply_to


@pytest.mark.parametrize(
    ("text", "subject"),
    [
        ("two tins of black beans, just warming them through, at 2,700 m, how long", "tinned"),
        ("how long does a brick roux take at 6,500 ft", "roux"),
        ("can I do poached eggs ahead and hold them for brunch at 1,900 m", "poached_ahead"),
        ("how long to blanch broccoli at 8,000 ft", "blanched"),
    ],
)
def test_is_heard(text: str, subject: str) -> None:
    assert reply_to(text).request.subject == subject


@pytest.mark.parametrize("text", ["how long to simmer dried black beans at 2,700 m", "how long can I hold rice hot"])
def test_is_not_heard(text: str) -> None:
    assert reply_to(text).request.subject not in ("tinned", "poached_ahead", "roux", "blanched")


def test_food_that_goes_in_frozen_takes_half_as_long_again() -> None:
    fresh, frozen = (reply_to(f"{state} cod baked at 400 F at 5,000 ft how long") for state in ("fresh", "frozen"))
    times = [next(f.value for f in a.figures if f.id == "cook_time") for a in (fresh, frozen)]
    assert 1.35 < times[1] / times[0] < 1.65


def test_two_places_of_which_the_second_is_asked_about_too() -> None:
    assert len(reply_to("Basmati boiled in St. Moritz. And in Naples?").request.elevations_m) == 2


def test_minutes_of_a_kitchen_elsewhere() -> None:
    request = reply_to("pressure cooker pork shoulder in Denver, 50 at home in Boston").request
    assert (request.time_min, request.topic) == (50.0, "time")
