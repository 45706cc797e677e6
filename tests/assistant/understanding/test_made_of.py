"""An ingredient and the dish it is for, in questions of amounts."""

from __future__ import annotations

from typing import Any

import pytest

from assistant.answering import reply_to, understand
from rules.amounts.makings import share_of
from rules.model import Quantity
from rules.physics.units import G_PER_LB


@pytest.mark.parametrize(
    ("text", "slots"),
    [
        ("how much flour goes into 24 loaves", {"ingredient": "all-purpose flour", "dish": "bread", "count": 24}),
        (
            "flour for 30 loaves, 900 g dough each",
            {"count": 30, "quantity": Quantity(900, "g"), "quantity_of": "each", "dish": "bread"},
        ),
        ("butter for 15 dozen scones", {"ingredient": "butter", "dish": "scones", "count": 180}),
        ("how many eggs for 150 waffles at 6500 ft", {"ingredient": "eggs", "dish": "waffles", "count": 150}),
        ("cornmeal for 6 pans of cornbread", {"count": 6, "counted_in": ("pan",), "dish": "cornbread"}),
        ("how many #10 cans of tomatoes for 80 bowls of soup", {"dish": "tomato soup", "portions": 80}),
        (
            "10 kg of bread flour makes how many bagels",
            {"ingredient": "bread flour", "dish": "bagels", "quantity": Quantity(10, "kg"), "count": None},
        ),
        ("how many pancakes from a 20 lb bag of flour", {"ingredient": "all-purpose flour", "dish": "pancakes"}),
    ],
)
def test_ingredient_and_dish_are_told_apart(text: str, slots: dict[str, Any]) -> None:
    request = understand(text)
    assert request.topic == "order"
    assert {name: getattr(request, name) for name in slots} == slots


@pytest.mark.parametrize(
    "text",
    [
        "how much flour for bread at 7000 ft",
        "how much more flour for 40 cookies at 8000 ft",
        "2 cups sugar in my pound cake, we are at 6,800 ft, how much here",
        "how much baking soda for two cakes at 6,200 ft",
        "rice for 60",
        "how long do I boil potatoes for 40",
        "short ribs for 85",
    ],
)
def test_what_is_no_such_question_stays_what_it_was(text: str) -> None:
    assert understand(text).ingredient is None


def test_flour_of_dough_by_the_loaf() -> None:
    """25 loaves of 900 g are 22.5 kg of dough, 59.5 % of it flour by the usual formula: 13.4 kg."""
    figure = reply_to("flour for 25 loaves of bread at 900 g dough").figure("buy")
    assert figure is not None
    assert figure.value == pytest.approx(25 * 0.9 * 0.595)


def test_a_bag_makes_as_much_as_it_is_a_share_of() -> None:
    answer = reply_to("a 30 lb bag of cornmeal makes how many trays of cornbread")
    made = answer.figure("made")
    share = share_of("cornmeal", "cornbread", "quick_bread")
    assert made is not None
    assert share is not None
    assert made.value == pytest.approx(30 * G_PER_LB / share / 1000)
    assert "full 2.5-inch pans" in answer.headline


def test_cans_are_counted_up() -> None:
    headline = reply_to("how many #10 cans of tomatoes for 90 bowls of soup").headline
    figure = reply_to("how many #10 cans of tomatoes for 90 bowls of soup").figure("buy")
    assert figure is not None
    assert f"{-int(-figure.value * 1000 / 2892 // 1)} #10 cans" in headline


def test_elevation_is_counted_in_where_it_changes_the_ingredient() -> None:
    high, low = (reply_to(f"baking powder for 200 muffins{where}") for where in (" at 8,000 ft", ""))
    assert high.figure("buy").value < low.figure("buy").value  # type: ignore[union-attr]
    assert "the recipe takes" in high.headline
    assert "the recipe takes" not in low.headline


@pytest.mark.parametrize("text", ["cases of penne for 250 at 6 oz cooked", "penne for 250, 170 g cooked"])
def test_a_weight_that_feeds_nobody_is_that_of_one(text: str) -> None:
    figure = reply_to(text).figure("buy")
    assert figure is not None
    assert figure.value == pytest.approx(250 * 0.17 * 115 / 260, rel=0.01)


def test_a_weight_that_may_be_all_of_it_is_all_of_it() -> None:
    assert reply_to("is 20 lb of penne enough for 90").headline.startswith(("Yes", "Just", "No"))
    assert reply_to("9 lb pulled pork for 20").figure("enough_for") is not None


def test_cases_cover_what_is_wanted() -> None:
    """19 kg of spaghetti are a little more than two cases of 20 lb."""
    assert "3 cases of 20 lb" in reply_to("how many cases of spaghetti for 300 at 5 oz cooked").headline


@pytest.mark.parametrize(
    ("context", "text", "slots"),
    [
        (["flour for 24 loaves"], "and for 36?", {"ingredient": "all-purpose flour", "count": 36, "dish": "bread"}),
        (["flour for 24 loaves"], "and the salt?", {"ingredient": "salt", "count": 24, "dish": "bread"}),
        (["butter for 60 scones"], "at 8000 ft?", {"ingredient": "butter", "count": 60, "elevation_m": 2438.4}),
        (["flour for 24 loaves"], "butter for 60 scones", {"ingredient": "butter", "dish": "scones", "count": 60}),
        (["how much sugar for banana bread at 7000 ft"], "butter for 60 scones", {"topic": "order", "dish": "scones"}),
        (["flour for 24 loaves"], "how long does bread bake at 7000 ft", {"topic": "time", "dish": "bread"}),
        (["flour for 24 loaves"], "short ribs for 80, how much", {"ingredient": None, "dish": "short ribs"}),
    ],
)
def test_it_is_gone_on_with(context: list[str], text: str, slots: dict[str, Any]) -> None:
    request = understand(text, context)
    assert {name: getattr(request, name) for name in slots} == slots


def test_cans_are_told_only_of_what_comes_in_them() -> None:
    assert "bag" not in reply_to("how many cans of flour for 40 loaves").headline
    assert "bags of 50 lb" in reply_to("how many bags of flour for 400 loaves").headline
