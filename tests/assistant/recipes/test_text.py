"""Plain text: every line of it ends up somewhere."""

import re

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from assistant.recipes.text import read_text
from assistant.recipes.written import to_text
from assistant.recipes.yields import read_yields
from rules import tables

# Words of headings are what the sections are known by; "for the" opens a sub-recipe.
HEADINGS = {"for", "the"} | {
    word
    for key in ("ingredients", "steps", "notes")
    for phrase in tables.read_toml("lexicon/recipe_words.toml")["headings"][key]
    for word in re.findall(r"[a-z]+", phrase)
}


def _words(text):
    return re.findall(r"[^\W\d_]{2,}", text.lower())


def _everything(recipe):
    lines = [recipe.title, recipe.yields.line if recipe.yields else "", *recipe.notes, *recipe.unread]
    lines += [f"{i.component} {i.line}" for i in recipe.ingredients] + [f"{s.component} {s.text}" for s in recipe.steps]
    return "\n".join(lines)


@pytest.fixture
def plain_text(sample_path):
    if sample_path.suffix != ".txt":
        pytest.skip("not plain text")
    return sample_path.read_text(encoding="utf-8")


def test_nothing_of_a_sample_disappears(plain_text):
    kept = set(_words(_everything(read_text(plain_text)))) | HEADINGS
    assert [w for w in _words(plain_text) if w not in kept] == []


def test_written_out_and_read_again(plain_text):
    recipe = read_text(plain_text)
    again = read_text(to_text(recipe))
    assert again.ingredients == recipe.ingredients
    assert again.steps == recipe.steps
    assert (again.title, again.yields) == (recipe.title, recipe.yields)


WRITTEN = """\
2 cups flour
Ingredients:
Method
For the frosting:
1. Bake 20 minutes at 350.
Makes 12 rolls
- 1 stick butter
Notes
Keeps a week.
salt to taste
Frosting
* * *
1 cup sugar, 2 eggs, 1 tsp salt
Note: best warm
Ingredients (for 2 loaves)
Total flour: 1 kg
water 68%
STEP 2: Mix.
| sugar | 200 g |""".splitlines()
LINES = st.one_of(
    st.sampled_from(WRITTEN),
    st.text(st.characters(blacklist_categories=("Cs", "Cc")), max_size=60),
)


@settings(max_examples=120, deadline=None)
@given(st.lists(LINES, max_size=12))
def test_nothing_disappears(lines):
    text = "\n".join(lines)
    kept = _everything(read_text(text)).lower()
    # heading words, the marks of lists and markup, and the numbering of steps carry no matter of their own
    bare = [re.sub(r"^[\W_]*(?:step\s+\d+|\d+[.:)])?", "", line, flags=re.I) for line in text.splitlines()]
    missing = [w for line in bare for w in _words(line) if w not in kept and w not in HEADINGS | {"notes", "step"}]
    assert missing == []


@settings(max_examples=60, deadline=None)
@given(st.lists(LINES, max_size=8))
def test_marks_lie_inside_their_text(lines):
    recipe = read_text("\n".join(["Rolls", "Ingredients", "1 egg", "Method", *lines]))
    for step in recipe.steps:
        for mark in (*step.times, *step.temperatures, *step.pressures, *step.cues, *step.vessels):
            assert 0 <= mark.start < mark.end <= len(step.text)
    for line in recipe.ingredients:
        assert 0 <= line.start <= line.end <= len(line.line)


@pytest.mark.parametrize(
    ("line", "value", "high", "unit"),
    [
        ("Yield: 2 loaves", 2, None, "loaf"),
        ("Makes about 4 dozen cookies", 48, None, "cookie"),
        ("Serves 6 to 8", 6, 8, "serving"),
        ("Servings: 12", 12, None, "serving"),
        ("Makes one 9-inch pie", 1, None, "pie"),
        ("Yields 1½ quarts", 1.5, None, "quart"),
    ],
)
def test_yields(line, value, high, unit):
    amount = read_yields(line)
    assert (amount.value, amount.high, amount.unit) == (value, high, unit)


@pytest.mark.parametrize("line", ["For the frosting:", "2 cups flour", "Make the dough.", "For 2 minutes, stir."])
def test_not_a_yield(line):
    assert read_yields(line) is None


def test_percentages_from_the_weighed_flour():
    recipe = read_text("Lean dough\nBread flour 2 kg\nWater 65%\nSalt 2%\nKnead for 10 minutes until it is smooth.")
    assert {i.item: i.mass_g for i in recipe.ingredients} == {"bread flour": 2000, "water": 1300, "salt": 40}


def test_percentages_without_a_flour_weight_stay_unweighed():
    recipe = read_text("Lean dough\nFlour 100%\nWater 65%\nMix it well and knead for 10 minutes.")
    assert [(i.amount, i.unit, i.mass_g) for i in recipe.ingredients] == [(100, "percent", None), (65, "percent", None)]


def test_recipe_times():
    recipe = read_text(
        "Rolls\nPrep time: 25 minutes | Bake time: 1 hour\nTotal: 2 h 30 min\n1 egg\nBake the rolls well."
    )
    assert (recipe.prep_min, recipe.cook_min, recipe.total_min) == (25, 60, 150)


def test_a_method_alone_is_steps():
    recipe = read_text("Bring to a boil and simmer 20 minutes.\nCook to 240 F.")
    assert [s.times[0].what if s.times else "" for s in recipe.steps] == ["simmer", ""]


def test_same_ingredient_twice_is_two_lines():
    recipe = read_text("Shortbread\n1 cup butter\n1 cup sugar\n1 cup butter\nMix and bake it for 20 minutes.")
    assert [i.item for i in recipe.ingredients].count("butter") == 2


@pytest.mark.parametrize("text", ["", "\n\n", "???", "1", "Ingredients", "Method:", "a\nb\nc"])
def test_scraps(text):
    recipe = read_text(text)
    assert recipe.steps == ()


BLOG = """The best butter cookies (so crisp!)
Posted in March | Jump to recipe
I bake these every week, and 2 cups of tea go with them. You will want more.
Preparation: 20 min
Makes 4 dozen

INGREDIENTS
2 cups flour
1 cup butter
DIRECTIONS
Mix. Bake at 350 F for 10 minutes.
"""


def test_what_leads_up_to_a_recipe_is_neither_ingredient_nor_step():
    recipe = read_text(BLOG)
    assert recipe.title == "The best butter cookies (so crisp!)"
    assert [line.line for line in recipe.ingredients] == ["2 cups flour", "1 cup butter"]
    assert len(recipe.steps) == 1
    assert (recipe.yields.value, recipe.prep_min) == (48, 20)
    assert len(recipe.notes) == 3


def test_a_list_before_its_headings_is_still_a_list():
    recipe = read_text("Rolls\n500 g flour\n300 g water\nIngredients for the glaze\nIngredients\n1 egg\nMethod\nBake.")
    assert [line.line for line in recipe.ingredients][:2] == ["500 g flour", "300 g water"]


def test_a_part_with_its_ingredients_on_one_line():
    crust = "Crust: 1 1/2 cups crumbs, 6 tbsp butter, 1/4 cup sugar"
    recipe = read_text(f"Cheesecake\n{crust}\nFilling:\n32 oz cream cheese\n")
    assert [(i.component, i.item) for i in recipe.ingredients] == [
        ("crust", "crumbs"), ("crust", "butter"), ("crust", "granulated sugar"), ("filling", "cream cheese"),
    ]  # fmt: skip


def test_a_yield_behind_the_last_step():
    assert read_text("Cookies\n1 c. flour\n1/2 c. butter\n350 - 10 min. Makes 2 doz.").yields.value == 24
