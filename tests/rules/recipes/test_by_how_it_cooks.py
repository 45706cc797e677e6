"""What a time or style is told by: an iron, a warming, a can, a reading of the centre, hot fat, pressure, a wok."""

import pytest

from assistant.recipes.converting import convert_recipe
from assistant.recipes.text import read_text
from rules.baking.style import recognise
from rules.recipe import IngredientLine
from rules.recipes.convert import Converted
from rules.recipes.foods import ready

LODGE_M = 2133.6
WAFFLES = "2 cups flour|2 tsp baking powder|2 eggs|1 1/2 cups milk|1/3 cup butter|2 tbsp sugar"


def made(title: str, listed: str, *steps: str) -> Converted:
    told = "\n".join(f"{i}. {text}" for i, text in enumerate(steps, 1))
    lines = listed.replace("|", "\n")
    return convert_recipe(f"{title}\nIngredients\n{lines}\nMethod\n{told}\n", to_elevation_m=LODGE_M)


@pytest.mark.parametrize(
    "told",
    [
        "Ladle the batter into the waffle iron and bake for 6 to 7 minutes.",
        "Heat the waffle maker. Bake each waffle 5 minutes, until deep gold.",
        "Pour some into the hot waffle iron. Close it. Bake until gold, which takes about 6 minutes.",
    ],
)
def test_an_iron_bakes_as_long_anywhere(told: str) -> None:
    step = made("Sunday Waffles", WAFFLES, "Whisk the batter.", told).steps[-1]
    assert step.text == told


@pytest.mark.parametrize(
    "told",
    [
        "Frozen waffles: bake at 325 °F for 9 minutes, until warmed through.",
        "Another day, bake them at 325 °F for 9 minutes until hot again.",
    ],
)
def test_what_is_only_warmed_stays(told: str) -> None:
    step = made("Sunday Waffles", WAFFLES, "Whisk the batter.", "Cook in the waffle iron.", told).steps[-1]
    assert step.text == told


@pytest.mark.parametrize(
    "line",
    [
        "1 (14-ounce) can navy beans",
        "1 15-oz can pinto beans",
        "2 14-oz tins butter beans",
        "400 g tin of borlotti beans",
    ],
)
def test_beans_of_a_can_are_cooked(line: str) -> None:
    assert ready(read_text(f"Beans\nIngredients\n{line}\nMethod\n1. Stir.").ingredients[0])


@pytest.mark.parametrize("line", ["1 lb dried navy beans, or 3 cans", "2 cups dry chickpeas (or canned)"])
def test_dried_beans_are_raw_whatever_else_would_do(line: str) -> None:
    assert not ready(IngredientLine(line=line, item="beans"))


def test_a_time_told_for_the_canned_ones_stays() -> None:
    done = made(
        "Oven Beans",
        "1 lb dried navy beans|6 cups chicken stock|1 onion",
        "Put everything into a Dutch oven and cover it. For canned navy beans: bake 20 minutes. "
        "For soaked dried navy beans: bake 70 minutes.",
    )
    assert [t.to_high_min > t.mark.high_min for t in done.steps[0].times] == [False, True]


def test_meat_that_is_only_to_be_done_goes_by_its_centre() -> None:
    """ln((93 - 4) / (93 - 63)) over ln((100 - 4) / (100 - 63)) is about 1.14; softening would ask for more than 1.3."""
    told = "Return the chops to the broth, cover and simmer for 30 minutes{}."
    listed = "4 pork chops|1 onion|2 cups chicken broth"
    first = made("Smothered Chops", listed, "Brown the chops.", told.format(" or until the centre reads 145 °F"))
    soft = made("Smothered Chops", listed, "Brown the chops.", told.format(" or until fork-tender"))
    assert first.steps[1].times[0].to_high_min == pytest.approx(30 * 1.14, abs=1)
    assert soft.steps[1].times[0].to_high_min > 37


def test_tough_meat_read_far_beyond_done_goes_by_how_it_softens() -> None:
    told = "Cover and simmer for 2 hours, until the centre reads 195 °F."
    step = made("Pot Roast", "3 lb beef chuck|3 cups beef broth", "Brown the beef.", told).steps[1]
    assert step.times[0].to_high_min > 165


@pytest.mark.parametrize(
    ("title", "listed", "step", "style"),
    [
        (
            "Golden Okra",
            "1 lb okra|1 egg|1 cup cornstarch|oil",
            "Heat 2 inches of oil and fry in batches.",
            "deep_fried",
        ),
        ("Taco Meat", "2 lb chicken thighs|1 cup salsa", "Cook at high pressure for 12 minutes.", "pressed"),
        ("Pineapple Fried Rice", "3 cups cooked rice|2 eggs|2 tbsp oil", "Stir-fry all of it 3 minutes.", "other"),
    ],
)
def test_a_way_of_cooking_names_what_nothing_else_does(title: str, listed: str, step: str, style: str) -> None:
    assert recognise(made(title, listed, step).recipe).id == style


def test_fried_rice_stays_as_it_is() -> None:
    told = "Add the cold cooked rice and stir-fry over high heat for 4 minutes, until heated through."
    assert made("Prawn Fried Rice", "3 cups cooked rice|2 eggs|2 tbsp oil", told).steps[0].text == told


def test_a_choice_in_brackets_is_not_what_is_cooked_in() -> None:
    told = "In a heavy pot (or a pan, if you have a slow cooker), brown the beef. Add the broth and simmer for 3 hours."
    pot = made("Shredded Beef", "3 lb beef chuck|2 cups broth", told).steps[0]
    bare = made(
        "Shredded Beef", "3 lb beef chuck|2 cups broth", told.replace(" (or a pan, if you have a slow cooker)", "")
    )
    assert pot.times[0].to_high_min == bare.steps[0].times[0].to_high_min
