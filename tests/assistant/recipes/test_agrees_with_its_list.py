"""A converted recipe agrees with itself: where a line has changed, no step still tells its old amount."""

import re
from pathlib import Path

import pytest

from assistant.recipes.converting import convert_recipe
from assistant.recipes.read import read
from rules.recipes.convert import Converted, convert
from rules.recipes.phrases import stems

FIGURE = re.compile(r"[\d\s./¼½¾⅓⅔⅛-]+(?=[a-z%])", re.I)
UNITS_M = (2134.0, 3000.0, 0.0)


def left_behind(done: Converted) -> list[str]:
    """Every step that tells the amount that a line had before, right before the line's name."""
    found = []
    for to in done.ingredients:
        old = re.split(r"\s*[(]", to.line.line[to.line.start : to.line.end].strip())[0]
        if not to.changed or not FIGURE.match(old):
            continue
        told = re.compile(
            rf"(?<![\d/.])(?<!plus\s){re.escape(old)}\s+(?P<of>(?:of\s+)?(?:the\s+)?(?:[\w-]+\s+)?[\w-]+)"
        )
        for one in done.steps:
            named = (m for m in told.finditer(one.plain.text) if stems(to.line.item)[-1] in stems(m["of"]))
            found += [f"{to.text!r}, but {m.group()!r}" for m in named if f"{m.group()}" not in to.text]
    return found


@pytest.mark.parametrize("elevation_m", UNITS_M)
def test_no_sample_contradicts_its_list(sample_path: Path, elevation_m: float) -> None:
    start_m = 0.0 if elevation_m else 2134.0
    recipe = read(sample_path.read_bytes(), name=sample_path.name)
    assert not left_behind(convert(recipe, from_elevation_m=start_m, to_elevation_m=elevation_m))


BROTH = """Bean Pot
Ingredients
1 lb dried cranberry beans
5 cups chicken broth
1 onion, chopped
Method
1. Boil the beans in 5 cups broth, uncovered, for 1 hour, until tender.
2. Stir in the onion.
"""


def test_a_short_name_is_the_one_line_that_ends_in_it() -> None:
    done = convert_recipe(BROTH, to_elevation_m=2134.0)
    assert done.ingredients[1].changed
    assert "was 5 cups" in done.steps[0].text
    assert not left_behind(done)


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("1 1/2 cups sugar (300 g)", None),
        ("12 oz sugar (1 2/3 cups)", "1 2/3 cups"),
        ("2 cups sugar (14 ounces)", "14 ounces"),
        ("1 cup butter, soft (2 sticks)", None),
    ],
)
def test_what_a_bracket_says_once_more_goes_along(line: str, told: str | None) -> None:
    text = (
        "Plain layer cake\n"
        "Ingredients\n"
        "2 cups cake flour\n"
        f"{line}\n"
        "1 tbsp baking powder\n"
        "1 cup milk\n"
        "3 eggs\n"
        "1/2 cup oil\n"
        "Method\n"
        "1. Mix it all.\n"
        "2. Bake at 350 °F for 30 minutes.\n"
    )
    to = convert_recipe(text, to_elevation_m=2500.0).ingredients[1]
    assert not to.changed or told is None or told not in to.text


def test_a_packet_that_is_opened_is_no_packet_any_more() -> None:
    text = (
        "Loaf\n"
        "Ingredients\n"
        "4 cups bread flour\n"
        "1 1/2 cups water\n"
        "2 1/4 tsp instant yeast (1 packet)\n"
        "2 tsp salt\n"
        "Method\n"
        "1. Knead 10 minutes.\n"
        "2. Let rise 1 hour.\n"
        "3. Bake at 425 °F for 35 minutes.\n"
    )
    to = convert_recipe(text, to_elevation_m=2500.0).ingredients[2]
    assert to.changed
    assert "packet" not in to.text


@pytest.mark.parametrize(
    ("told", "becomes"),
    [
        ("Bake for 1 hour and 5 to 20 minutes.", 1),
        ("Bake 1 h 10 to 25 minutes.", 1),
        ("Bake 50 minutes (shallow tin) to 70 minutes (deep tin).", 2),
        ("Bake 1 hour (60 minutes).", 2),
        ("Bake for 60 to 70 minutes. Lay foil over it after the first 40 minutes.", 2),
        ("Bake for 60 to 70 minutes. Start checking after 55 minutes.", 2),
        ("Bake for 60 to 70 minutes. (Check at 50 minutes, as tins differ.)", 2),
    ],
)
def test_all_figures_of_a_time_change_together(told: str, becomes: int) -> None:
    text = (
        "Almond pound cake\n"
        "Ingredients\n"
        "2 cups flour\n"
        "2 cups sugar\n"
        "1 cup butter\n"
        "4 eggs\n"
        "1 tsp baking powder\n"
        "1/2 cup milk\n"
        "Method\n"
        "1. Cream the butter and sugar.\n"
        f"2. Heat the oven to 325 °F. {told}\n"
    )
    step = convert_recipe(text, to_elevation_m=2134.0).steps[-1]
    assert len(step.times) == becomes
    assert all(t.to_high_min < t.mark.high_min for t in step.times)


def test_two_foods_of_one_sentence_take_longer_together() -> None:
    text = (
        "Noodle soup\n"
        "Ingredients\n"
        "6 oz soba noodles or rice noodles\n"
        "6 cups water\n"
        "Method\n"
        "1. Bring the water to a boil, then add the noodles. Soba noodles cook fast, within 4 to 5 "
        "minutes, while rice noodles will take 8 minutes.\n"
    )
    step = convert_recipe(text, to_elevation_m=2134.0).steps[-1]
    assert all(t.to_high_min > t.mark.high_min for t in step.times)


def test_the_shares_of_a_line_that_stays_stay() -> None:
    text = "Cheesecake\n1 lb cream cheese\n1 cup plus 4 tablespoons sugar\n3 eggs\n1 cup crushed crackers\n"
    text += (
        "Mix crackers with 2 tablespoons of the sugar. Beat cheese with 1 cup of the sugar and the eggs. Bake at 325 F."
    )
    done = convert_recipe(text, to_elevation_m=2134.0)
    assert all(one.text == one.step.text for one in done.steps)
