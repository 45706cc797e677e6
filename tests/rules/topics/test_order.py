"""How much to buy, and how many an amount feeds."""

from __future__ import annotations

from dataclasses import replace

import pytest

from assistant.replies.worded import answer
from rules.foods.dishes import dishes
from rules.model import Quantity, Request


def of(dish: str, **changes: object) -> Request:
    named = {"topic": "order", "dish": dish, "dish_class": dishes()[dish].dish_class}
    return replace(Request(**named), **changes)  # type: ignore[arg-type]


def kg(found, figure: str = "buy") -> float:
    return found.figure(figure).value


def test_the_headline_gives_both_weights_and_the_head() -> None:
    told = answer(of("white rice", portions=240)).headline
    assert told.startswith("About 22 lb (9.9 kg) of dry white rice for 240 as a side: 1½ oz (41 g) each")


def test_twice_the_guests_take_twice_as_much() -> None:
    few, many = (kg(answer(of("salmon", portions=n))) for n in (20, 40))
    assert many == pytest.approx(2 * few)


def test_the_middle_stands_in_its_range() -> None:
    figure = answer(of("lentils", portions=60)).figure("buy")
    assert figure.low < figure.value < figure.high


@pytest.mark.parametrize(
    ("amount", "verdict"),
    [(5, "No:"), (19.5, "Just:"), (21, "Yes:"), (40, "Yes:")],
    ids=["no", "just", "yes", "plenty"],
)
def test_the_cooks_own_amount_is_judged(amount: float, verdict: str) -> None:
    """90 sides of 225 g of potatoes are 20 kg."""
    found = answer(of("potatoes", portions=90, quantity=Quantity(amount, "kg")))
    assert found.headline.startswith(verdict)
    assert found.figure("enough_for").value == pytest.approx(amount / 0.225, rel=0.12)


def test_an_amount_alone_is_told_cooked_and_in_guests() -> None:
    found = answer(of("pork shoulder", quantity=Quantity(20, "lb")))
    assert found.missing == ()
    assert kg(found, "cooked") == pytest.approx(kg(found) * 0.52, rel=0.01)
    assert found.figure("enough_for").value == 24


def test_what_is_wanted_cooked_is_begun_with_more() -> None:
    found = answer(of("pork shoulder", quantity=Quantity(20, "lb"), quantity_of="cooked"))
    assert found.headline.startswith("Start with about 38 lb")


def test_pieces_are_reckoned_at_their_usual_size_or_the_cooks() -> None:
    usual, small = (answer(of("turkey", count=12, **more)) for more in ({}, {"quantity": Quantity(10, "lb")}))
    assert usual.figure("enough_for").value > small.figure("enough_for").value
    assert "12 birds of 14 lb" in usual.headline
    assert "12 birds of 10 lb" in small.headline


def test_eggs_are_counted_and_loaves_shared() -> None:
    assert answer(of("eggs", portions=90)).headline == "About 180 eggs (15 dozen) for 90."
    assert answer(of("bread", portions=64)).headline == "About 8 loaves of bread for 64, 8 portions to each."


def test_soup_is_told_by_the_gallon() -> None:
    assert answer(of("tomato soup", portions=60)).headline.startswith("About 5½ gal (21 L) of tomato soup for 60")


def test_packs_and_pans_where_they_were_asked() -> None:
    told = answer(of("chicken thighs", portions=130, counted_in=("pack",))).headline
    assert told.endswith("That is 2 cases of 40 lb (18 kg), as they usually come.")
    found = answer(of("white rice", portions=240, counted_in=("pan", "pan_2in", "pan_4in"), elevation_m=2900.0))
    assert found.headline.endswith("That fills 6 full 2.5-inch pans or 4 full 4-inch pans.")
    assert found.figure("liquid_pan_2in").value * 6 == pytest.approx(found.figure("liquid").value)


def test_a_buffet_takes_less_of_each_and_a_tenth_over() -> None:
    plate, buffet = (kg(answer(of("beef brisket", portions=100, course=way))) for way in ("main", "buffet"))
    assert buffet == pytest.approx(plate * 0.7 * 1.1)


def test_a_menu_has_a_line_for_each_dish_and_sides_beside_meat() -> None:
    found = answer(of("short ribs", portions=90, dishes=("short ribs", "polenta")))
    assert found.headline.startswith("For 90: 89 lb (40.5 kg) of bone-in short ribs as a main course;")
    assert "polenta as a side" in found.headline
    assert [f.id for f in found.figures] == ["buy_short_ribs", "buy_polenta"]


def test_a_yield_without_an_amount() -> None:
    assert answer(of("beef brisket", quantity_of="yield")).headline.startswith("About 53 % of untrimmed brisket")


def test_elevation_changes_no_amount_and_says_so() -> None:
    low, high = (answer(of("white rice", portions=80, elevation_m=m)) for m in (0.0, 3000.0))
    assert kg(low) == kg(high)
    assert any("only the liquid and the time" in b.text for b in high.because)
    assert not any("Elevation" in b.text for b in low.because)


@pytest.mark.parametrize(
    ("request_", "missing"),
    [
        (of("salmon"), ("portions",)),
        (Request(topic="order"), ("dish", "portions")),
        (Request(topic="order", portions=40), ("dish",)),
        (Request(topic="order", quantity=Quantity(10, "kg")), ("dish",)),
        (of("salmon", portions=1), ()),
    ],
)
def test_what_is_missing_is_asked_for(request_: Request, missing: tuple[str, ...]) -> None:
    assert answer(request_).missing == missing


@pytest.mark.parametrize("dish", dishes())
def test_every_dish_can_be_ordered(dish: str) -> None:
    found = answer(of(dish, portions=40))
    assert found.missing == ()
    assert found.headline.endswith(".")
    assert kg(found) > 0


def test_loads_of_an_oven() -> None:
    """300 portions of lasagna at 24 a pan are 13 pans, two on a shelf: seven shelves, two loads of five."""
    told = answer(of("lasagna", portions=300, counted_in=("load",)))
    assert "13 full pans: 7 shelves, so 2 loads of a full-size oven of 5 shelves" in told.headline
    assert (
        "one load of 2 full-size ovens" in answer(of("lasagna", portions=300, counted_in=("load",), ovens=2)).headline
    )


def test_what_fits_an_oven_is_told_without_covers() -> None:
    told = answer(of("lasagna", counted_in=("load",)))
    assert told.missing == ()
    assert "10 full pans, of lasagna at a time" in told.headline
    assert told.figure("enough_for").value == pytest.approx(240, rel=0.02)  # type: ignore[union-attr]


@pytest.mark.source("usda-recipes-for-schools")
def test_a_bag_of_mix_makes_so_many_trays() -> None:
    """Cornbread for a hundred, a full sheet: 2 lb flour, 2 lb meal, 12 oz sugar, 4.75 lb dry: ten and a half of 50."""
    asked = of("cornbread", quantity=Quantity(50, "lb"), counted_in=("pan",))
    told = answer(asked)
    assert told.figure("trays").value == pytest.approx(50 / 4.75, rel=0.2)  # type: ignore[union-attr]
    assert "cornmeal alone makes 27" in told.headline
    twice = answer(replace(asked, quantity=Quantity(100, "lb")))
    assert twice.figure("trays").value >= 2 * told.figure("trays").value  # type: ignore[union-attr]
