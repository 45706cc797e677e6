"""Amounts against recipes for a hundred, and against printed ratios."""

from __future__ import annotations

from dataclasses import replace

import pytest

from rules.amounts.liquid import ratio
from rules.amounts.makings import share_of
from rules.amounts.oven_room import holder
from rules.amounts.portion import head, portion
from rules.amounts.yields import trimmed
from rules.foods.dishes import dishes
from rules.model import Request
from rules.physics.units import G_PER_LB, ML_PER_CUP

QUART_ML, OZ_G = 4 * ML_PER_CUP, G_PER_LB / 16


def of(dish: str, **more: object) -> Request:
    return replace(Request(dish=dish, dish_class=dishes()[dish].dish_class), **more)  # type: ignore[arg-type]


def cups_per_cup(request: Request) -> tuple[float, float, float]:
    found = ratio(request)
    return tuple(x * found.g_per_cup / ML_PER_CUP for x in (found.low, found.ml_per_g, found.high))  # type: ignore


# dry or raw weight for a hundred portions
@pytest.mark.parametrize(
    ("dish", "course", "pounds", "source"),
    [
        ("white rice", "side", 9, "afrs-tm-10-412"),  # card E-5: 100 portions of 3/4 cup
        ("spaghetti", "side", 12, "afrs-tm-10-412"),  # card E-4: 100 portions of 1 cup
        ("black tea", None, 0.5, "afrs-tm-10-412"),  # card C-4: 100 portions of 8 oz
    ],
)
def test_a_hundred_portions(dish: str, course: str | None, pounds: float, source: str) -> None:
    assert head(of(dish, course=course)).raw_g * 100 / G_PER_LB == pytest.approx(pounds, rel=0.12)


# quarts of water on a weight
@pytest.mark.parametrize(
    ("dish", "more", "quarts", "grams", "source"),
    [
        ("white rice", {}, 11, 9 * G_PER_LB, "afrs-tm-10-412"),  # E-5: 2¾ gal to 9 lb
        ("white rice", {"method": "steam"}, 8.25, 9 * G_PER_LB, "afrs-tm-10-412"),  # E-5, note 2, in a steamer
        ("spaghetti", {}, 48, 12 * G_PER_LB, "afrs-tm-10-412"),  # E-4: 12 gal to 12 lb
        ("black tea", {}, 26, 8 * OZ_G, "afrs-tm-10-412"),  # C-4: 6½ gal to 8 oz
        ("chuck roast", {"method": "simmer"}, 10, 40 * G_PER_LB, "afrs-tm-10-412"),  # L-11: 2½ gal to 40 lb
    ],
)
def test_the_water_of_the_cards(dish: str, more: dict[str, str], quarts: float, grams: float, source: str) -> None:
    found = ratio(of(dish, **more))
    assert found.low * 0.99 <= quarts * QUART_ML / grams <= found.high * 1.02


@pytest.mark.parametrize(
    ("dish", "more", "cups", "source"),
    [
        ("brown rice", {"method": "bake"}, 6 / 4.5, "usda-recipes-for-schools"),  # 1 qt 2 cups on 1 qt ½ cup a pan
        ("pinto beans", {}, 6 / 2, "usda-fns-23"),  # 6 cups on 2 cups dry
        ("black-eyed peas", {}, 5 / 2, "usda-fns-23"),  # 5 cups on 2 cups dry
        ("oatmeal", {}, 6 / 3, "mdek12-recipes"),  # 1 gal 2 qt on 3 qt
        ("grits", {}, 15 / 2.75, "mdek12-recipes"),  # 3¾ gal on 2 qt 3 cups
    ],
)
def test_cups_of_water_to_a_cup(dish: str, more: dict[str, str], cups: float, source: str) -> None:
    low, _, high = cups_per_cup(of(dish, **more))
    assert low * 0.995 <= cups <= high * 1.005


@pytest.mark.source("usda-recipes-for-schools")
def test_brown_rice_comes_to_so_much() -> None:
    """3 lb 10 oz dry give about 8 lb 4 oz cooked, for 50."""
    assert portion("brown rice", "rice").yields == pytest.approx(8.25 / 3.625, rel=0.08)


@pytest.mark.parametrize(
    ("dish", "share", "source"),
    [
        ("ground beef", 0.74, "usda-fbg-2012"),  # section 1: 1 lb AP = 0.74 lb cooked, drained, lean meat
        ("onions", 0.78, "usda-fbg-2012"),  # section 2: 1 lb AP = 0.78 lb cooked
        ("potatoes", 0.81, "usda-ah-102"),  # item 2018, pared
        ("sweet potatoes", 0.80, "usda-ah-102"),  # item 2496, pared
        ("white rice", 365 / 130, "usda-sr-legacy"),  # energy in 100 g, raw over cooked: it takes up water alone
        ("pinto beans", 347 / 143, "usda-sr-legacy"),  # the same of beans
        ("black beans", 341 / 132, "usda-sr-legacy"),
        ("navy beans", 337 / 140, "usda-sr-legacy"),
        ("kidney beans", 337 / 127, "usda-sr-legacy"),
        ("brown rice", 8.25 / 3.625, "usda-recipes-for-schools"),  # 3 lb 10 oz dry give about 8 lb 4 oz
        ("leeks", 0.44, "usda-ah-102"),  # item 1412, without the green
        ("pork shoulder", 0.52, "usda-food-buying-guide"),  # from memory: Boston butt, bone in
        ("chuck roast", 0.61, "usda-food-buying-guide"),  # from memory: without bone
        ("turkey", 0.47, "usda-food-buying-guide"),  # from memory: whole, meat without skin
    ],
)
def test_what_is_bought_gives_what_is_printed(dish: str, share: float, source: str) -> None:
    one = portion(dish, dishes()[dish].dish_class)
    assert one.yields == pytest.approx(share, abs=0.005)
    assert one.source == source


@pytest.mark.source("usda-hg-43")
def test_a_pound_of_bony_ribs_feeds_one_or_two() -> None:
    """Much bone or gristle, short ribs among them: 1 to 2 servings of lean meat to a pound as bought."""
    assert 1 <= G_PER_LB / head(of("short ribs")).raw_g <= 2


@pytest.mark.source("nmsu-e-132")
def test_a_pound_of_coffee_makes_forty_to_fifty_servings() -> None:
    """E-132, by servings of 6 oz: common practice."""
    one = head(of("coffee"))
    assert 40 <= G_PER_LB / (one.raw_g / one.cooked_g * 6 * OZ_G) <= 50


@pytest.mark.source("usda-recipes-for-schools")
def test_a_sheet_takes_nine_pounds_of_cornbread_batter() -> None:
    """Cornbread for a hundred: 9 lb of batter on a full sheet, of which 2 lb cornmeal."""
    one = holder("cornbread", "quick_bread")
    assert (one.id, one.grams) == ("sheet", pytest.approx(9 * G_PER_LB, rel=0.01))
    assert share_of("cornmeal", "cornbread", "quick_bread") == pytest.approx(2 / 9, rel=0.12)


@pytest.mark.source("usda-ah-102")
@pytest.mark.parametrize(
    ("dish", "share"), [("carrots", 0.82), ("cabbage", 0.93), ("apples", 0.78), ("zucchini", 0.93)]
)
def test_no_more_reaches_the_plate_than_trimming_leaves(dish: str, share: float) -> None:
    """Handbook 102, items 481, 440, 17 and 2446."""
    assert trimmed(dish).share == share  # type: ignore[union-attr]
    assert portion(dish, dishes()[dish].dish_class).yields <= share


@pytest.mark.source("usda-sr28")
def test_dry_spaghetti_and_rice_swell_as_their_water_says() -> None:
    """By the solids of the two forms: spaghetti 2.38, white rice 2.80 (computed from water contents, from memory)."""
    assert portion("spaghetti", "pasta").yields == pytest.approx(2.38, rel=0.06)
    assert portion("white rice", "rice").yields == pytest.approx(2.80, rel=0.02)


@pytest.mark.source("scaa-brewing")
def test_coffee_is_brewed_at_55_g_to_the_litre() -> None:
    one = portion("coffee", "coffee")
    assert one.raw_g / one.cooked_g * 1000 == pytest.approx(55, rel=0.10)


@pytest.mark.source("usda-leaflet-326")
def test_a_pound_of_dry_beans_gives_seven_to_nine_servings() -> None:
    assert 7 <= G_PER_LB / head(of("pinto beans", course="side")).raw_g <= 9


@pytest.mark.source("usda-food-buying-guide")
def test_half_a_turkey_is_cooked_meat_at_most() -> None:
    """47 to 53 % of a whole bird is cooked meat with skin, from memory; carved for guests it is less."""
    assert 0.35 <= portion("turkey", "whole_bird").yields <= 0.53
