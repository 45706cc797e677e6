"""What conversion leaves alone for safety's sake, in both directions and both unit systems."""

from __future__ import annotations

import pytest

from assistant.recipes.text import read_text
from assistant.replies.recipe.worded import in_words
from rules.recipes.convert import Converted, convert
from rules.recipes.foods import foods_in, hazard, raw_foods

LODGE_M = 2133.6
WAYS = [(0, LODGE_M), (LODGE_M, 0)]
STYLES = ("layer_cake", "cookie", "braise", "beans", "soup", "sugarwork", "fried_dough", "other")


def made(steps: str, *ingredients: str, title: str = "Supper", style: str | None = None, way=WAYS[0]) -> Converted:
    listed = "\n".join(ingredients or ("1 onion",))
    recipe = read_text(f"{title}\nIngredients\n{listed}\nMethod\n{steps}")
    return in_words(convert(recipe, from_elevation_m=way[0], to_elevation_m=way[1], style=style))


# Steps of our own that hold no figure that may move: each stays as it is in every style.
KEPT = [
    "Cook chicken to a minimum of 165°.",
    "Cook the chicken to 165 degrees.",
    "Fry the chicken until it is 165 °F inside.",
    "Cook the pork until a thermometer reads 63 °C.",
    "The centre must read 74℃ or 165℉.",
    "The thickest part should register 175 ºF.",
    "Take the turkey out of the refrigerator 1 1/2 hours before cooking.",
    "Remove the chops from the fridge 30 minutes before frying.",
    "Bring the eggs to room temperature, 1 hour.",
    "Air fry at 350 F to 165 F inside.",
    "Air fry at 200 °C for 12 minutes.",
    "Heat the smoker to 225 °F and smoke for 6 hours.",
    "Rub with brown sugar and smoke at 225 °F until 203 °F inside.",
    "Brush with syrup and grill over charcoal at 350 °F for 20 minutes.",
    "Keep warm in a 200 °F oven for up to 30 minutes.",
    "Hold above 135 °F.",
    "Hold at 60 °C for 2 hours.",
    "Rotate the pan 180°.",
    "Stir every 7 minutes.",
    "Thaw in the refrigerator at 38 °F for 24 hours.",
    "Reheat to 165 °F, 15 minutes.",
    "Reheat at 350 °F for 20 minutes.",
    "Marinate for 4 hours.",
    "Brine 12 hours at 4 °C.",
    "Cook sous vide at 140 °F for 2 hours.",
    "Pasteurise at 72 °C for 15 seconds.",
    "Cook the ground turkey until no longer pink, 6 minutes.",
    "Simmer 10 minutes, until the juices run clear.",
    "Brown the beef, 6 to 8 minutes.",
    "Sear 3 minutes per side.",
    "Let rest 10 minutes.",
    "Chill at least 2 hours.",
    "Microwave 3 minutes.",
    "Boil the pasta 3 minutes less than the packet says.",
    "Cool from 135 °F to 70 °F within 2 hours.",
    "Scald the milk at 180 °F.",
]


@pytest.mark.parametrize("text", KEPT)
@pytest.mark.parametrize("style", STYLES)
@pytest.mark.parametrize("way", WAYS, ids=["up", "down"])
def test_what_keeps_is_kept_to_the_byte(text, style, way) -> None:
    assert [one.text for one in made(text, style=style, way=way).steps] == [text]


# Beside a figure that moves stands one that does not.
BESIDE = [
    ("Bake at 350 °F for 30 minutes, to 165 °F inside.", "layer_cake", "to 165 °F inside", "(was 350 °F)"),
    ("Deep-fry in 365 °F oil until 165 °F inside.", "other", "until 165 °F inside", "(was 365 °F)"),
    ("Sear 4 minutes, add stock and braise the chuck 3 hours.", "braise", "Sear 4 minutes,", "was 3 hours"),
    ("Marinate 2 hours, then simmer 40 minutes.", "soup", "Marinate 2 hours,", "was 40 minutes"),
    ("Cook the syrup to 240 °F; keep the pears at 140 °F.", "sugarwork", "at 140 °F", "was 240 °F"),
]


@pytest.mark.parametrize(("text", "style", "kept", "moved"), BESIDE)
def test_what_moves_still_moves(text, style, kept, moved) -> None:
    said = made(text, "1 lb beef chuck", style=style).steps[0].text
    assert kept in said
    assert moved in said


# food, wet step
SAFE = [
    ("1 lb ground chicken", "Add the broth and simmer 15 minutes."),
    ("4 chicken thighs", "Cover and simmer 45 minutes."),
    ("2 lb pork shoulder", "Braise 3 hours."),
    ("1 lb cod", "Simmer in the sauce 12 minutes."),
    ("1 lb Italian sausage", "Add the beans and simmer 20 minutes."),
    ("1 whole chicken", "Pressure-cook 30 minutes."),
    ("6 eggs", "Boil the eggs 12 minutes."),
]


@pytest.mark.parametrize(("food", "step"), SAFE)
@pytest.mark.parametrize("style", ["soup", "braise", "beans", "other"])
def test_what_makes_food_safe_is_never_shortened(food, step, style) -> None:
    down = made(step, food, style=style, way=WAYS[1])
    assert down.steps[0].text == step
    up = made(step, food, style=style)
    assert all(t.to_low_min >= t.mark.low_min for one in up.steps for t in one.times)


def test_what_softens_for_texture_still_comes_down() -> None:
    down = made("Boil the noodles 8 minutes.", "1 lb ground beef", "1 lb egg noodles", style="pasta", way=WAYS[1])
    assert down.steps[0].times[0].to_low_min < 8
    ribs = made("Braise 4 hours.", "4 lb short ribs", style="braise", way=WAYS[1])
    assert ribs.steps[0].times[0].to_low_min < 240


@pytest.mark.parametrize(
    ("line", "reads"),
    [
        ("1 lb ground beef", "160 °F (71 °C)"),
        ("4 chicken breasts", "165 °F (74 °C)"),
        ("2 lb pork loin", "145 °F (63 °C)"),
        ("1 lb salmon", "145 °F (63 °C)"),
    ],
)
@pytest.mark.parametrize("way", WAYS, ids=["up", "down"])
def test_the_thermometer_is_named_where_the_recipe_names_none(line, reads, way) -> None:
    said = [c.text for c in made("Cook 20 minutes.", line, way=way).cautions if "thermometer" in c.text]
    assert [reads in text for text in said] == [True]
    told = made("Cook to 170 °F inside, 20 minutes.", line, way=way).cautions
    assert not any("thermometer" in c.text for c in told)


def test_cakes_are_not_taken_for_dishes_of_egg() -> None:
    cake = made("Bake at 350 °F, 30 minutes.", "2 cups flour", "3 eggs", style="layer_cake")
    assert not any("thermometer" in c.text for c in cake.cautions)
    flan = made("Bake in a water bath 40 minutes.", "2 cups milk", "5 eggs", title="Flan", style="custard")
    assert any("160 °F" in c.text for c in flan.cautions)


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("2 lb chicken thighs", "poultry"), ("1 lb ground turkey", "poultry"), ("1 lb ground pork", "ground_meat"),
        ("3 cups chicken stock", None), ("2 cups shredded cooked chicken", None), ("8 oz egg noodles", None),
        ("1 tbsp fish sauce", None), ("3 lb short ribs", None), ("1 eggplant", None), ("2 cups stuffing", "poultry"),
    ],
)  # fmt: skip
def test_what_heat_must_make_safe(text, kind) -> None:
    found = [safe.kind for food in foods_in(text) if (safe := hazard(food, "soup"))]
    assert found == ([kind] if kind else [])


def test_what_comes_from_a_can_is_not_raw() -> None:
    recipe = read_text("Chili\nIngredients\n2 (15 oz) cans kidney beans\n1 lb ground beef\nMethod\nCook 5 minutes.")
    assert [food.name for food in raw_foods(recipe)] == ["ground beef"]


@pytest.mark.parametrize("line", ["2 (15 oz) cans pinto beans, drained", "2 cups cooked black beans"])
def test_beans_that_are_cooked_take_no_longer(line) -> None:
    step = "Add the beans and the broth and simmer 20 minutes."
    assert made(step, line, "1 cup vegetable broth", title="Beans", style="beans").steps[0].text == step


def test_a_pot_is_never_given_far_more_liquid() -> None:
    pot = made("Bring to a boil and simmer 3 hours.", "1 lb dried black beans", "2 cups water", style="beans")
    water = pot.ingredients[1]
    assert water.line.amount < water.amount <= 3


def test_the_boil_that_rids_beans_of_their_poison_stays() -> None:
    step = "Boil hard for 10 minutes, then simmer 1 1/2 hours."
    for way in WAYS:
        assert (
            made(step, "1 lb dried kidney beans", style="beans", way=way)
            .steps[0]
            .text.startswith("Boil hard for 10 minutes,")
        )
