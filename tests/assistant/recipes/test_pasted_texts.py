"""Texts as people paste them: every line, part and step that a cook reads in them; and any text whatsoever."""

import json
import re
import time
import tomllib
from contextlib import suppress
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from assistant.recipes.converting import convert_recipe
from assistant.recipes.each import each_of
from assistant.recipes.errors import NoRecipe, RecipeError
from assistant.recipes.jsonld_written import to_jsonld
from assistant.recipes.read import read
from assistant.recipes.text import read_text

TEXTS = tomllib.loads((Path(__file__).parent / "pasted.toml").read_text(encoding="utf-8"))["text"]


@pytest.fixture(params=TEXTS, ids=lambda case: case["id"])
def case(request):
    return request.param


def _told(line):
    amount = "" if line.amount is None else f"{line.amount:g}"
    part = f"@{line.component}" if line.component else ""
    return f"{amount}|{line.unit or ''}|{line.item}{part}".lower()


def test_every_ingredient(case):
    assert [_told(line) for line in read_text(case["text"]).ingredients] == [line.lower() for line in case["lines"]]


def test_every_step(case):
    steps = [step.text for step in read_text(case["text"]).steps]
    ends = [told.split(" … ") for told in case["steps"]]
    assert len(steps) == len(ends), steps
    for text, told in zip(steps, ends, strict=True):
        assert text.startswith(told[0]), (text, told)
        assert text.endswith(told[-1]), (text, told)


def test_title_yield_and_notes(case):
    recipe = read_text(case["text"])
    assert recipe.title == case.get("title", "")
    assert (recipe.yields.value if recipe.yields else None) == case.get("yields")
    missing = [note for note in case.get("notes", ()) if note not in (*recipe.notes, *recipe.unread)]
    assert missing == [], (recipe.notes, recipe.unread)


def test_weights(case):
    recipe = read_text(case["text"])
    if "flour_g" in case:
        assert recipe.flour_g == pytest.approx(case["flour_g"])
    if "masses" in case:
        assert [line.mass_g for line in recipe.ingredients] == pytest.approx(case["masses"])


def test_the_line_that_told_of_several_is_kept():
    recipe = read_text("Rub\n1 tsp each salt and ground cumin\n2 tbsp oil\nRoast for 20 minutes at 400 F.")
    assert [line.written for line in recipe.ingredients] == ["1 tsp each salt and ground cumin"] * 2 + [""]


def test_json_tells_of_each_too_and_is_written_back_whole():
    page = {
        "@type": "Recipe",
        "name": "Rub",
        "recipeIngredient": ["2 tbsp oil", "1 tsp each salt and ground cumin"],
        "recipeInstructions": "Roast for 20 minutes.",
    }
    recipe = read(json.dumps(page))
    assert [line.line for line in recipe.ingredients] == ["2 tbsp oil", "1 tsp salt", "1 tsp ground cumin"]
    assert to_jsonld(recipe)["recipeIngredient"] == page["recipeIngredient"]
    less = replace(recipe.ingredients[1], line="3/4 tsp salt")
    changed = replace(recipe, ingredients=(recipe.ingredients[0], less, recipe.ingredients[2]))
    assert to_jsonld(changed)["recipeIngredient"] == ["2 tbsp oil", "3/4 tsp salt, 1 tsp ground cumin"]


@pytest.mark.parametrize("line", ["salt and pepper", "2 chicken breasts (200 g each)", "2 cans, 400 g each", "4 eggs"])
def test_what_is_one_line_stays_one(line):
    assert each_of(line) == (line,)


@pytest.mark.parametrize("text", ["Dear all,\nthe kitchen is closed on Monday.\nMira", "Ingredients", "???"])
def test_a_text_without_a_recipe_is_refused(text):
    with pytest.raises(NoRecipe, match="neither an ingredient nor a step"):
        convert_recipe(text, to_elevation_m=2000, name="letter.txt")


PIECES = """\
2 cups flour
Beat in 1 egg
Mo: 180C 25 min
Mo: 2 eggs, 1 cup milk
Al: how long?
Ingredients: 2 cups flour; 3 eggs. Method: Mix. Bake 20 minutes.
1 l/2 cups f1our
Water 68%
Dough weight 1800 g
| flour | 2 cups |
| Item | Amount |
sugar\t1 cup\t200
onion - 2 nos
1 tsp each salt and pepper
FOR THE GLAZE
Heat the oven to
350 F and bake for 20
minutes.
- 47 -
STEP 2
③ Bake 12 minutes.
2 cups flour            1 cup milk
Total time: 45 min""".splitlines()
LINES = st.one_of(
    st.sampled_from([*PIECES, ""]), st.text(st.characters(blacklist_categories=("Cs", "Cc")), max_size=80)
)


def _kept(recipe):
    lines = [recipe.title, recipe.yields.line if recipe.yields else "", *recipe.notes, *recipe.unread]
    lines += [f"{i.component} {i.line}" for i in recipe.ingredients] + [f"{s.component} {s.text}" for s in recipe.steps]
    return "\n".join(lines)


@settings(max_examples=150, deadline=None)
@given(st.lists(LINES, max_size=14).map("\n".join))
def test_reading_raises_nothing_but_its_own_error(text):
    with suppress(RecipeError):
        assert read(text) is not None


@settings(max_examples=150, deadline=None)
@given(st.lists(st.sampled_from(PIECES), max_size=14).map("\n".join))
def test_every_figure_is_kept(text):
    kept = set(re.findall(r"\d+", _kept(read_text(text))))
    # the numbers of steps and figures that a scanner read wrongly
    plain = re.sub(r"^(?:STEP \d|③)|1 l/2|f1our", "", text, flags=re.M)
    assert [figure for figure in re.findall(r"\d+", plain) if figure not in kept] == []


@pytest.mark.parametrize(
    "piece", ["2 cups flour, 3 eggs and ", "Beat until pale and ", "Mo: 2 eggs\n", "1 l/2 f1our rn "]
)
def test_time_grows_with_the_length_of_the_text(piece):
    def seconds(count):
        begun = time.perf_counter()
        read_text(piece * count)
        return time.perf_counter() - begun

    seconds(50)
    assert seconds(1600) < 12 * max(seconds(400), 0.02)
