"""How much liquid: the total, or the difference, told as it was asked."""

from __future__ import annotations

from dataclasses import replace

import pytest

from assistant.replies.worded import answer
from rules.foods.dishes import dishes
from rules.model import Quantity, Request


def of(dish: str, **changes: object) -> Request:
    named = {"topic": "liquid", "dish": dish, "dish_class": dishes()[dish].dish_class, "elevation_m": 2743.2}
    return replace(Request(**named), **changes)  # type: ignore[arg-type]


def test_the_difference_is_told_first_where_it_is_asked() -> None:
    found = answer(of("white rice", portions=80, forms=("more", "how_much")))
    assert found.headline.startswith("About 4 cups (950 ml) more water at 9,000 ft")
    assert "2½ gal (9.4 L) in all for 7 lb (3.3 kg) of dry white rice" in found.headline


def test_else_all_of_it() -> None:
    found = answer(of("white rice", portions=80, forms=("how_much",)))
    assert found.headline.startswith("About 2½ gal (9.4 L) of water")
    assert found.figure("extra_liquid").value == pytest.approx(0.94, abs=0.02)


def test_without_an_amount_it_is_told_by_the_cup() -> None:
    assert answer(of("quinoa")).headline.startswith("About 2½ cups (580 ml) of water for each cup of dry quinoa")


@pytest.mark.parametrize(
    ("own", "verdict"), [(1.5, "No, 1.5 to 1"), (2.5, "Yes, 2.5 to 1 does"), (4, "Yes, 4 to 1 is more")]
)
def test_the_cooks_own_ratio_is_judged(own: float, verdict: str) -> None:
    assert answer(of("white rice", liquid_per=own)).headline.startswith(verdict)


def test_pasta_takes_no_more_up_high() -> None:
    found = answer(of("penne", quantity=Quantity(1, "lb")))
    assert found.headline == "About 4 qt (3.8 L) of water for 1 lb (450 g) of dry penne."
    assert found.figure("extra_liquid") is None


def test_what_the_liquid_is_called() -> None:
    assert " of stock for " in answer(of("risotto", portions=30)).headline
    assert " of wine for " in answer(of("fondue", portions=30)).headline
    assert " of milk for " in answer(of("oatmeal", portions=30, subject="milk")).headline


def test_the_elevation_is_asked_for_only_where_the_difference_is_wanted() -> None:
    assert answer(of("quinoa", elevation_m=None)).missing == ()
    assert answer(of("quinoa", elevation_m=None, forms=("more",))).missing == ("elevation",)
    assert answer(Request(topic="liquid")).missing == ("dish",)


def test_a_dough_is_asked_of_the_room_of_baking() -> None:
    assert answer(of("bread", subject="water")).request.topic == "bake_adjust"


def test_a_pot_is_not_asked_of_the_room_of_baking() -> None:
    found = answer(replace(of("white rice", subject="water"), topic="bake_adjust"))
    assert found.request.topic == "liquid"
    assert found.figure("liquid").value > 0


def test_a_dish_without_a_ratio_is_not_guessed() -> None:
    found = answer(of("hollandaise"))
    assert found.headline.startswith("I know no usual amount of liquid for hollandaise")
    assert found.figures == ()


@pytest.mark.parametrize("dish", [name for name, dish in dishes().items() if dish.dish_class not in ("water",)][::3])
def test_every_dish_is_answered(dish: str) -> None:
    found = answer(of(dish, portions=40))
    assert found.headline.endswith(".") or found.missing
