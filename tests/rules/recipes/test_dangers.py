"""Recipes that hurt people as they are written are told so; what is like them and safe is not."""

from __future__ import annotations

import pytest

from assistant.answering import reply_to
from assistant.recipes.text import read_text
from assistant.replies.recipe.worded import in_words
from rules.recipes.convert import convert

LODGE_M = 2133.6


def stops(title: str, listed: str, steps: str, way: tuple[float, float] = (0, LODGE_M)) -> list[str]:
    recipe = read_text(f"{title}\nIngredients\n{listed}\nMethod\n{steps}")
    new = in_words(convert(recipe, from_elevation_m=way[0], to_elevation_m=way[1]))
    return [c.text for c in new.cautions if c.level == "stop"]


# title, ingredients, steps, a word of what is told, or None where it is safe
RECIPES = [
    ("Slow cooker beans", "1 lb dried red kidney beans\n6 cups water", "Cook on low for 8 hours.", "never boils"),
    ("Beans", "1 lb cannellini beans\n6 cups water", "Cook in the slow cooker on high for 5 hours.", "never boils"),
    ("Bath beans", "1 lb dried kidney beans", "Cook sous vide at 194 °F for 6 hours.", "never boils"),
    ("Beans", "1 lb dried kidney beans", "Boil hard 15 minutes. Cook in the slow cooker on low 8 hours.", None),
    ("Chili", "2 (15 oz) cans kidney beans\n1 lb ground beef", "Cook in the slow cooker on low 6 hours.", None),
    ("Bowl", "1/2 cup stewed black beans, warmed\n1 cup tomatoes", "Char the tomatoes 3 minutes. Top.", None),
    ("Tacos", "1/2 cup black beans, with liquid\n4 tortillas", "Warm the beans for 6 minutes and fill.", None),
    ("Slow cooker dip", "2 cups refried beans\n1 tbsp chili powder", "Cook on low for 2 hours.", None),
    ("Slow cooker beans", "1 lb dry pinto beans\n6 cups water", "Cook on low for 8 hours.", "never boils"),
    ("Slow cooker lentils", "1 lb lentils\n6 cups water", "Cook on low for 6 hours.", None),
    ("Sprout salad", "1 cup red kidney beans\n2 carrots", "Soak the beans 24 hours. Grind and serve.", "never boiled"),
    ("Beans", "1 lb dried kidney beans\n6 cups water", "Bring to a boil and simmer 1 1/2 hours.", None),
    (
        "Garlic oil",
        "2 heads garlic\n2 cups olive oil",
        "Steep the garlic in the oil. Store at room temperature.",
        "botulism",
    ),
    (
        "Rosemary oil",
        "4 sprigs rosemary\n2 cups olive oil",
        "Infuse a week on the counter, then keep in the pantry.",
        "botulism",
    ),
    (
        "Garlic confit",
        "2 heads garlic\n2 cups olive oil",
        "Cover with the oil, bake 2 hours. Refrigerate up to 4 days.",
        None,
    ),
    (
        "Focaccia",
        "500 g flour\n2 cloves garlic\n1/4 cup olive oil\n7 g yeast",
        "Bake 25 minutes. Store the bread at room temperature.",
        None,
    ),
    ("Carrot puree for babies", "2 carrots\n1 tbsp honey", "Steam 15 minutes and blend.", "infant botulism"),
    (
        "Teething biscuits, 8 months and up",
        "1 cup flour\n2 tbsp honey",
        "Bake at 300 °F, 20 minutes.",
        "infant botulism",
    ),
    (
        "Honey cake",
        "2 cups flour\n1/2 cup honey",
        "Bake at 350 °F, 30 minutes. Keeps for 6 months in the freezer.",
        None,
    ),
    ("Honey cake", "2 cups flour\n1/2 cup honey", "Bake at 350 °F. Not for infants.", None),
    ("Chicken", "4 chicken breasts", "Roast at 400 °F to 150 °F inside.", "165 °F (74 °C)"),
    ("Chicken", "4 chicken breasts", "Roast at 200 °C to a core of 65 °C.", "165 °F (74 °C)"),
    ("Chicken", "4 chicken breasts", "Roast to 160 °F, then rest until it reads 165 °F.", None),
    ("Chicken", "4 chicken thighs", "Roast at 400 °F to 175 °F inside.", None),
    ("Burgers", "1 lb ground beef", "Grill to 140 °F inside.", "160 °F (71 °C)"),
    ("Steak", "2 ribeye steaks", "Grill to 130 °F inside.", None),
    ("Sous vide chicken", "4 chicken breasts", "Cook sous vide at 130 °F for 2 hours.", "never pasteurises"),
    ("Sous vide chicken", "4 chicken breasts", "Cook sous vide at 140 °F for 30 minutes.", "in the time given"),
    ("Sous vide chicken", "4 chicken breasts", "Cook sous vide at 145 °F for 3 hours.", None),
    (
        "Green beans",
        "2 lb green beans\n1 tbsp salt",
        "Process pints 3 hours in a boiling-water bath.",
        "no boiling-water bath",
    ),
    (
        "Dilly beans",
        "2 lb green beans\n3 cups vinegar",
        "Process pints 10 minutes in a boiling-water bath.",
        "not converted",
    ),
    ("Peaches", "8 lb peaches\n3 cups sugar", "Process pints 25 minutes in a boiling-water bath.", "not converted"),
]


@pytest.mark.parametrize(("title", "listed", "steps", "told"), RECIPES)
@pytest.mark.parametrize("way", [(0, LODGE_M), (LODGE_M, 0), (0, 0)], ids=["up", "down", "there"])
def test_what_is_unsafe_is_stopped(title, listed, steps, told, way) -> None:
    found = stops(title, listed, steps, way)
    if told == "not converted":
        assert [told in text for text in found] == ([True] if way[0] != way[1] else [])
    elif told is None:
        assert found == []
    else:
        assert any(told in text for text in found)


def test_unsafe_figures_stay_and_the_rest_is_converted() -> None:
    text = (
        "Chicken and dumplings\nIngredients\n4 chicken thighs\n6 cups chicken stock\n2 carrots\nMethod\n"
        "Cook the thighs to 150 °F inside.\nAdd the stock and carrots and simmer 30 minutes."
    )
    new = in_words(convert(read_text(text), to_elevation_m=LODGE_M, style="soup"))
    assert new.steps[0].text == "Cook the thighs to 150 °F inside."
    assert "(was 30 minutes)" in new.steps[1].text
    assert "150 °F" in next(c.text for c in new.cautions if c.level == "stop")


def test_the_reply_opens_with_the_danger() -> None:
    text = "Garlic oil\n2 heads garlic\n2 cups olive oil\n\nSteep the garlic in the oil. Store at room temperature."
    answer = reply_to(f"convert this to 7,000 ft:\n\n{text}")
    assert answer.headline.startswith("Not safe as written: ")
    assert any(c.level == "stop" for c in answer.cautions)


def warned(listed: str, steps: str = "Simmer 20 minutes.") -> str:
    recipe = read_text(f"Supper\nIngredients\n{listed}\nMethod\n{steps}")
    return " ".join(c.text for c in in_words(convert(recipe, to_elevation_m=LODGE_M)).cautions if c.level == "warn")


def test_ribs_of_celery_and_of_peppers_are_no_pork_and_a_fillet_of_chicken_is_no_fish() -> None:
    assert "pork" not in warned("2 celery ribs, diced\n1 lb carrots\n1 qt broth")
    assert "pork" not in warned("4 chili peppers, ribs removed\n1 lb carrots\n1 qt broth")
    for listed in ("2 chicken breast fillets\n1 qt broth", "1 lb chicken cutlets (sliced to thin fillets)\n1 qt broth"):
        assert "165 °F" in warned(listed)
        assert "145 °F" not in warned(listed)
    assert "145 °F" in warned("2 racks pork ribs\n1 qt broth")
