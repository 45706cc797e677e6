"""The sentence that opens a reply about a time, as a cook would say it."""

import pytest

from assistant.replies.sentences import worded
from assistant.replies.speech_text import speakable
from rules.book import Case
from rules.heat import headline
from rules.model import Figure, Quantity, Request


def said(method, dish, dish_class, here=(90, 120), base=(90, 120), elevation_m=2133.6, called="", from_m=None):
    case = Case(
        Request(topic="time", method=method, dish=dish, dish_class=dish_class, elevation_m=elevation_m,
                from_elevation_m=from_m)
    )  # fmt: skip
    figures = (
        Figure("cook_time", "", sum(here) / 2, "min", *here),
        Figure("baseline_time", "", sum(base) / 2, "min", *base),
    )
    return worded(headline.takes(case, method, figures, called), "us")


@pytest.mark.parametrize(
    ("method", "dish", "dish_class", "doing"),
    [
        ("roast", "roast chicken", "whole_bird", "roast chicken"),
        ("roast", "prime rib", "tender_cut", "roasting prime rib"),
        ("roast", "roast potatoes", "starchy_root", "roast potatoes"),
        ("simmer", "custard", "custard", "custard"),
        ("fry", "popcorn", "popcorn", "popcorn"),
        ("roast", None, "tender_cut", "roasting"),
        ("boil", "potatoes", "starchy_root", "boiling potatoes"),
        ("sous_vide", "steak", "tender_cut", "cooking steak sous vide"),
    ],
)
def test_what_is_done_is_not_said_twice(method, dish, dish_class, doing):
    assert said(method, dish, dish_class).startswith(f"About 1 h 45 min (1 h 30 min to 2 h) for {doing} at 7,000 ft")


def test_a_dish_with_several_times_is_called_by_the_one_that_is_meant():
    assert " for boiling large eggs at " in said("boil", "eggs", "egg", called="large eggs")


def test_a_time_that_stays_is_as_at_the_baseline():
    assert "at 7,000 ft (2,130 m), as at sea level." in said("roast", "prime rib", "tender_cut")


def test_a_time_that_changes_is_held_against_the_baselines():
    text = said("roast", "prime rib", "tender_cut", here=(100, 130), from_m=1524.0)
    assert "at 7,000 ft (2,130 m), against " in text
    assert " at 5,000 ft (1,520 m)." in text
    assert text.index("About 1 h 55 min") < text.index("against 1 h 45 min")


def test_the_cooks_own_range_stands_as_it_was_given():
    case = Case(Request(topic="time", method="boil", dish="pasta", dish_class="pasta", elevation_m=2133.6, time_min=8,
                        time_high_min=12))  # fmt: skip
    figures = Figure("cook_time", "", 14, "min", 9, 18), Figure("baseline_time", "", 10, "min", 8, 12)
    text = worded(headline.takes(case, "boil", figures), "us")
    assert (
        text == "About 14 min (9 to 18 min) for boiling pasta at 7,000 ft (2,130 m), against 8 to 12 min at sea level. "
        "It goes by its shape and how firm you like it."
    )


def test_a_narrow_range_needs_no_reason():
    figures = Figure("cook_time", "", 60, "min", 55, 65), Figure("baseline_time", "", 50, "min", 45, 55)
    case = Case(Request(topic="time", method="boil", dish="pasta", dish_class="pasta", elevation_m=2133.6))
    assert "It goes by" not in worded(headline.takes(case, "boil", figures), "us")


def test_read_aloud_the_middle_is_enough():
    assert speakable(said("roast", "prime rib", "tender_cut", here=(100, 130))).startswith(
        "About 1 hour 55 minutes for roasting prime rib at 7,000 feet, against 1 hour 45 minutes at sea level. "
    )


def test_at_the_baseline_there_is_nothing_to_hold_it_against():
    text = said("roast", "prime rib", "tender_cut", elevation_m=0.0)
    assert "as at" not in text
    assert "against" not in text
    assert "at sea level. " in text


def test_a_figure_without_a_range_is_one_time():
    case = Case(Request(topic="time", method="boil", dish="pasta", dish_class="pasta", elevation_m=2133.6))
    figures = Figure("cook_time", "", 12, "min"), Figure("baseline_time", "", 10, "min")
    text = worded(headline.takes(case, "boil", figures), "us")
    assert text == "About 12 min for boiling pasta at 7,000 ft (2,130 m), against 10 min at sea level."


@pytest.mark.parametrize(
    ("method", "dish", "dish_class", "named"),
    [
        ("roast", "roast chicken", "whole_bird", True), ("boil", "roast chicken", "whole_bird", False),
        ("roast", "prime rib", "tender_cut", False), ("simmer", "tomato sauce", "sauce", True),
        ("roast", None, "sauce", False), ("fry", "stir-fry", "tender_vegetable", True),
        ("fry", "french fries", "starchy_root", False),
    ],
)  # fmt: skip
def test_a_dish_whose_name_tells_the_method(method, dish, dish_class, named):
    case = Case(Request(method=method, dish=dish, dish_class=dish_class))
    assert headline.named(case, method) is named


def test_what_is_done_can_be_said_alone():
    case = Case(Request(method="boil", dish="pasta", dish_class="pasta"))
    assert worded(headline.doing(case, "boil"), "us") == "boiling pasta"


def test_a_wide_range_that_is_the_tables_asks_for_the_recipes_own_time():
    figures = Figure("cook_time", "", 14, "min", 9, 18), Figure("baseline_time", "", 10, "min", 8, 12)
    case = Case(Request(topic="time", method="boil", dish="pasta", dish_class="pasta", elevation_m=2133.6))
    assert worded(headline.takes(case, "boil", figures), "us").endswith("; your own recipe's time narrows it.")


@pytest.mark.parametrize(
    ("fields", "asks"),
    [
        ({"method": "roast", "dish": "turkey", "dish_class": "whole_bird"}, "say the weight"),
        ({"method": "roast", "dish": "turkey", "dish_class": "whole_bird", "quantity": Quantity(14, "lb")}, ""),
        ({"method": "simmer", "dish": "turkey", "dish_class": "whole_bird"}, ""),
        ({"method": "simmer", "dish": "pinto beans", "dish_class": "dried_bean"}, "say whether they were soaked"),
        ({"method": "simmer", "dish": "pinto beans", "dish_class": "dried_bean", "soaked": True}, ""),
        ({"method": "simmer", "dish": "pinto beans", "dish_class": "dried_bean", "time_min": 80.0}, ""),
    ],
)
def test_what_would_narrow_the_time_is_asked_for_once(fields, asks):
    case = Case(Request(topic="time", elevation_m=2133.6, **fields))
    figures = Figure("cook_time", "", 60, "min", 58, 62), Figure("baseline_time", "", 50, "min", 48, 52)
    text = worded(headline.takes(case, fields["method"], figures), "us")
    assert text.endswith(f": {asks}." if asks else "at sea level.")
