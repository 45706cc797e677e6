"""What wet heat says of time, in words."""

import pytest

from assistant.replies.sentences import worded
from assistant.replies.worded import answer
from rules.heat.wet import pace_words
from rules.model import Request


@pytest.mark.parametrize(
    ("factor", "said"),
    [
        (1.004, "as long"),
        (0.8, "about 20 % less time"),
        (1.43, "about 43 % longer"),
        (2.02, "about twice as long"),
        (2.47, "about 2½ times as long"),
        (3.22, "about three times as long"),
        (7.1, "about 7 times as long"),
    ],
)
def test_how_much_longer_is_said_as_cooks_say_it(factor, said):
    assert worded(pace_words(factor), "us") == said


@pytest.mark.parametrize(
    ("dish", "dish_class", "lid"),
    [("chicken stock", "stock", "an open pot"), ("beef stew", "mixed_stew", "a covered pot")],
)
def test_the_pot_that_is_reckoned_with_is_told(dish, dish_class, lid):
    asked = Request(topic="time", method="simmer", dish=dish, dish_class=dish_class, elevation_m=2133.6, time_min=180)
    told = next(b.text for b in answer(asked).because if b.rule == "simmer.extra_liquid")
    assert f"{lid} of 22 cm (9 in)" in told
