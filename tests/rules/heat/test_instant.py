"""Dried food that boiling water is poured on."""

import pytest

from assistant.replies.sentences import worded
from rules.book import Case
from rules.heat import instant
from rules.model import Request


def stand(elevation_m=2133.6, dish_class="instant_dried", **fields):
    asked = {"topic": "time", "method": "boil", "dish": "couscous"} | fields
    return instant.stand.work(Case(Request(dish_class=dish_class, elevation_m=elevation_m, **asked)))


def test_high_up_it_is_wrapped_and_given_longer():
    """Water boils at 199 degF at 7,000 ft by the extension tables."""
    part = stand(time_min=10.0)
    headline, because = worded(part.headline, "us"), worded(part.because, "us")
    assert headline.startswith("Pour boiling water on couscous and let it stand ")
    assert headline.endswith("at 7,000 ft (2,130 m), against 10 min at sea level.")
    assert len(part.steps) == 3
    assert "212 °F" in because
    assert "199 °F" in because


@pytest.mark.parametrize(("elevation_m", "from_m"), [(0.0, None), (500.0, 2000.0)])
def test_where_the_water_is_as_hot_it_is_just_poured_on(elevation_m, from_m):
    part = stand(elevation_m, from_elevation_m=from_m)
    assert len(part.steps) == 1
    assert part.because == ""


@pytest.mark.parametrize("fields", [{"method": "simmer"}, {"topic": "doneness"}])
def test_the_headline_is_of_a_time_that_is_poured_on(fields):
    assert stand(**fields).headline == ""


def test_food_that_is_cooked_is_not_poured_on():
    assert stand(dish_class="pasta") is None
