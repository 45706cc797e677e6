import pytest

from assistant.replies.worded import answer
from rules.methods.chill import air_cooling_share
from rules.model import Request


def ask(**fields):
    return answer(Request(topic="time", method="chill", **fields))


def test_chilling_needs_no_elevation():
    given = ask(dish="chicken soup", dish_class="soup")
    assert given.missing == ()
    assert "within 2 h" in given.headline


def test_the_limits_do_not_move():
    assert ask(dish_class="soup").figures == ask(dish_class="soup", elevation_m=3048.0).figures


def test_thin_air_cools_slower_and_ice_does_not_mind():
    told = next(b.text for b in ask(dish_class="soup", elevation_m=2133.6).because if b.rule == "chill.thin_air")
    assert "11 % slower" in told
    assert "Ice" in told or "ice" in told


def test_air_carries_less_heat_the_higher():
    assert air_cooling_share(0) == pytest.approx(1)
    assert air_cooling_share(3048) < air_cooling_share(1524) < 1


def test_rice_is_chilled_at_once():
    assert any("spores" in c.text for c in ask(dish_class="rice").cautions)


@pytest.mark.parametrize(
    ("dish", "told"), [("garlic in oil", "Garlic in oil grows"), ("herbs in oil", "Herbs in oil grow ")]
)
def test_what_lies_in_oil_is_kept_cold_and_not_long(dish, told):
    given = ask(dish=dish, dish_class="canned_low_acid")
    assert any(c.level == "stop" and "4 days" in c.text and c.text.startswith(told) for c in given.cautions)
    assert given.figure("first_temperature") is None


@pytest.mark.parametrize(("dish", "dish_class"), [("lox", "fish"), ("tiradito", "fish"), ("tiramisu", "general")])
def test_what_was_never_hot_is_not_cooled_down(dish, dish_class):
    given = ask(dish=dish, dish_class=dish_class)
    assert given.figure("first_temperature") is None
    assert given.figure("cold_temperature").value <= 5
