"""Liquid of a batter: several share what thin air takes, and what larger eggs bring is taken off."""

import pytest

from assistant.recipes.text import read_text
from rules.baking.division import batter
from rules.recipes.convert import Converted, convert

LODGE_M = 2133.6


def cake(*liquids: str, eggs: str = "", to_m: float = LODGE_M, from_m: float = 0.0) -> Converted:
    listed = "\n".join(
        filter(None, ("3 cups cake flour", "2 cups sugar", "1 tbsp baking powder", "1 cup oil", eggs, *liquids))
    )
    text = f"Plain layer cake\nIngredients\n{listed}\nMethod\n1. Mix all of it.\n2. Bake at 350 °F for 30 minutes.\n"
    return convert(read_text(text), from_elevation_m=from_m, to_elevation_m=to_m, style="layer_cake")


def poured_g(done: Converted) -> float:
    """How much more is poured into the batter [g]."""
    of = [to for to in done.ingredients if to.line.role in ("liquid", "dairy")]
    return sum((to.mass_g or 0.0) - (to.line.mass_g or 0.0) for to in of)


def test_two_liquids_are_given_less_than_twice_one() -> None:
    one, two = poured_g(cake("2 cups milk")), poured_g(cake("2 cups milk", "2 cups water"))
    assert one < two < 2 * one


def test_larger_eggs_leave_less_to_pour() -> None:
    plain, with_eggs = cake("1 1/2 cups milk"), cake("1 1/2 cups milk", eggs="5 large eggs")
    assert any(to.changed and to.line.role == "egg" for to in with_eggs.ingredients)
    assert 0 < poured_g(with_eggs) < poured_g(plain)


@pytest.mark.parametrize("eggs", ["", "4 large eggs"])
def test_down_again_it_is_itself(eggs: str) -> None:
    up = cake("2 cups milk", "1 1/2 cups water", eggs=eggs)
    back = convert(up.plain, from_elevation_m=LODGE_M, to_elevation_m=0.0, style="layer_cake")
    for first, last in zip(up.ingredients, back.ingredients, strict=True):
        if first.line.role in ("liquid", "dairy"):
            assert last.mass_g == pytest.approx(first.line.mass_g, rel=0.05)


def test_a_dough_takes_the_share_of_its_table() -> None:
    text = (
        "Rolls\n"
        "Ingredients\n"
        "4 cups bread flour\n"
        "1 cup milk\n"
        "1 cup water\n"
        "2 tsp instant yeast\n"
        "2 tsp salt\n"
        "Method\n"
        "1. Knead.\n"
        "2. Bake at 400 °F for 20 minutes.\n"
    )
    both = convert(read_text(text), to_elevation_m=LODGE_M, style="yeast_bread")
    alone = convert(read_text(text.replace("1 cup milk\n", "")), to_elevation_m=LODGE_M, style="yeast_bread")
    assert both.ingredients[2].text == alone.ingredients[1].text


SPICED = """Plum tray cake
Ingredients
2 1/2 cups all-purpose flour
1 1/4 cups granulated sugar
2 tsp baking powder
3 large eggs
3/4 cup butter
3/4 cup milk
1/3 cup granulated sugar
1 tsp ground nutmeg
Method
1. Cream the butter with 1 1/4 cups of the sugar. Beat in the eggs, then the flour, baking powder and milk.
2. Stir the remaining 1/3 cup sugar with the nutmeg in a cup. Spread half of the batter in the pan. \
Sprinkle with half of the nutmeg-sugar mixture, and cover with the rest of the batter. \
Scatter the remaining nutmeg-sugar mixture over the batter.
3. Bake at 350 °F for 40 minutes.
"""


def test_a_spiced_sugar_between_is_no_batter() -> None:
    done = convert(read_text(SPICED), to_elevation_m=LODGE_M)
    first, second = (to for to in done.ingredients if to.line.item == "granulated sugar")
    assert first.changed
    assert not second.changed
    assert "1/3 cup sugar" in done.steps[1].text


def test_browned_butter_is_counted_once() -> None:
    listed = ["1 cup unsalted butter", "2 cups all-purpose flour", "1 cup brown sugar", "1 tsp baking soda", "1 egg"]
    steps = ["Brown the butter and let it cool.", "Mix the dough.", "Bake at 350 °F for 11 minutes."]

    def fat_g(*more: str) -> float:
        recipe = read_text("\n".join(("Drop cookies", "Ingredients", *listed, *more, "Method", *steps)))
        return sum(p.mass_g for p in batter(recipe) if p.part.name == "fat")

    assert fat_g("3/4 cup browned butter") == pytest.approx(fat_g() * 0.75, rel=0.02)
    assert fat_g("1/4 cup browned butter") == pytest.approx(fat_g() * 1.25, rel=0.02)
