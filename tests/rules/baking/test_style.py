"""The style by its title, and what a recipe gets that fits none."""

from __future__ import annotations

import pytest

from assistant.recipes.read import read
from rules.baking.style import named_by, recognise
from rules.recipes.convert import Converted, convert

KITCHEN_M = 2133.6


def up(text: str) -> Converted:
    return convert(read(text), to_elevation_m=KITCHEN_M)


@pytest.mark.parametrize(
    ("title", "styles"),
    [
        ("Pear cheesecake brownies", {"brownie"}),
        ("Brownie cheesecake", {"cheesecake"}),
        ("Spelt carrot muffins with brown butter icing", {"quick_bread"}),
        ("Quark and plum tart", {"pie"}),
        ("Rib roast, peas and gravy", {"savoury_bake"}),
        ("Caramel chicken", set()),
        ("Grilled halloumi", set()),
        ("No-bake lime cheesecake", {"cold"}),
        ("Bean and barley soup", {"beans", "soup"}),
        ("Sheet cake for a jelly roll pan", {"layer_cake"}),
    ],
)
def test_a_title_names_styles_by_its_last_word(title: str, styles: set[str]) -> None:
    found = named_by(title)
    assert found == styles or (styles and found & styles == styles)


def test_a_cake_without_weights_is_a_cake_by_its_name() -> None:
    assert recognise(read("Hazelnut cake\nsome flour\nsugar\nbaking powder\n4 eggs\nBake 30 minutes at 350 F.")).id == (
        "layer_cake"
    )


def test_yeast_is_not_explained_away_by_a_name() -> None:
    text = "Crumb cake from a dough\n400 g flour\n7 g dried yeast\n200 ml milk\n60 g sugar\n60 g butter\n"
    assert recognise(read(text + "Knead, let rise 1 hour, top and bake at 190 C for 30 minutes.")).id == "yeast_bread"


def test_nutritional_yeast_raises_nothing() -> None:
    text = "Kale chips\n1 bunch kale\n1/4 cup nutritional yeast\n1 tbsp oil\nBake at 300 F for 25 minutes."
    assert recognise(read(text)).id == "savoury_bake"


def test_what_rises_and_is_like_nothing_gets_general_changes() -> None:
    text = "Thing\nIngredients\n2 cups flour\n3 tsp baking powder\n1 lb leeks\n4 eggs\n"
    converted = up(text + "Method\nMix and bake at 350 F for 40 minutes.")
    assert converted.style == "bake"
    assert converted.ingredients[1].text == "2 1/4 tsp baking powder"
    assert any("general" in str(caution) for caution in converted.notes)


def test_nothing_changes_and_it_is_said_why() -> None:
    roast = up("Baked carrots\nIngredients\n1 kg carrots\n2 tbsp oil\nMethod\nRoast at 200 C for 35 minutes.")
    assert any("nothing-changes" in str(caution) for caution in roast.notes)
    cake = up("Sponge\nIngredients\n100 g flour\n100 g sugar\n4 eggs\nMethod\nWhisk and bake 20 minutes at 180 C.")
    assert not any("nothing-changes" in str(caution) for caution in cake.notes)


def test_dumplings_on_a_stew_get_less_powder() -> None:
    text = (
        "Mutton stew\nIngredients\n1 kg mutton shoulder\n600 ml stock\n120 g flour\n2 tsp baking powder\n90 ml milk\n"
    )
    text += "Method\nBrown the meat, add stock and simmer 2 hours. Drop in the dumplings, cover and cook 15 minutes."
    converted = up(text)
    assert converted.style == "braise"
    assert converted.ingredients[3].text == "1 1/2 tsp baking powder"
    assert converted.ingredients[2].text == "120 g flour"


def test_a_bought_crust_leaves_the_milk_of_the_filling() -> None:
    text = "Squash pie\nIngredients\n1 baked pie shell\n400 g squash\n2 eggs\n1 cup evaporated milk\n"
    converted = up(text + "Method\nMix, fill and bake at 350 F for 45 minutes.")
    assert converted.style == "pie"
    assert converted.ingredients[3].text == "1 cup evaporated milk"


def test_the_butter_of_a_cookie_stays() -> None:
    text = "Ginger cookies\nIngredients\n150 g butter\n150 g brown sugar\n250 g flour\n1 tsp baking soda\n1 egg\n"
    converted = up(text + "Method\nCream, scoop on baking sheets and bake at 180 C for 11 minutes.")
    assert converted.ingredients[0].text == "150 g butter"


def test_yolks_beside_the_eggs_do_not_make_the_eggs_heavier() -> None:
    text = "Gold cake\nIngredients\n250 g flour\n2 tsp baking powder\n150 g butter\n220 g sugar\n"
    converted = up(
        text + "3 eggs plus 2 yolks\n200 ml milk\nMethod\nCream and bake in cake pans at 180 C for 25 minutes."
    )
    assert converted.ingredients[4].text == "3 extra-large eggs plus 2 yolks"


def test_a_recipe_without_a_title_is_what_it_is_introduced_as() -> None:
    text = (
        "Hello, this is the seed cake I promised you, it keeps for days.\n\n250 g ground almonds\n5 eggs\n220 g sugar\n"
    )
    recipe = read(text + "1 tsp baking powder\n\nWhisk it all and bake at 170 C for 45 minutes.")
    assert recipe.title == ""
    assert recognise(recipe).id == "layer_cake"


def test_a_batter_for_the_griddle_gets_no_pan_and_no_oven() -> None:
    text = "Oat pancakes\n200 g flour\n2 tsp baking powder\n2 eggs\n250 ml milk\nWhisk. Heat a griddle to 190 C. "
    converted = up(text + "Cook 2 minutes a side. Keep warm in the oven at 95 C.")
    assert converted.ingredients[1].text == "1 1/2 tsp baking powder"
    assert all(to.text == to.step.text for to in converted.steps)
    assert {change.what for change in converted.changes} <= {"leavening", "liquid"}
