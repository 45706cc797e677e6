"""Pages whose recipe stands in the marks of their text (microdata of schema.org), and what is read from them."""

import json

import pytest

from assistant.recipes.converting import convert_recipe
from assistant.recipes.errors import RecipeError
from assistant.recipes.html_tree import tree
from assistant.recipes.jsonld_written import to_jsonld
from assistant.recipes.microdata import MOST_NODES, recipes
from assistant.recipes.read import read
from assistant.replies.recipe.forms.jsonld import as_jsonld

LODGE_M = 2133.6
SCOPE = '<div itemscope itemtype="https://schema.org/Recipe">'
PAGE = """<!doctype html><html><head><title>Timberfold bakery</title></head><body>
<article itemscope itemtype="http://schema.org/Recipe">
  <h1 itemprop="name">Bakery
     seed buns</h1>
  <p>By <span itemprop="author" itemscope itemtype="http://schema.org/Person">
    <b itemprop="name">the night shift</b></span>
  <img itemprop="image" src="buns.jpg"> <meta itemprop="prepTime" content="PT25M">
  <time itemprop="cookTime" datetime="PT18M">18 minutes</time> <span itemprop="totalTime">45 min</span>
  <p>Makes <span itemprop="recipeYield">16 buns</span>
  <ul>
    <li itemprop="recipeIngredient"><span>600&nbsp;g</span> <a href="/flour">bread
        flour</a></li>
    <li itemprop="recipeIngredient">390 g water</li>
    <li itemprop="recipeIngredient">&frac12; tsp instant yeast</li>
  </ul>
  %s
</article></body></html>"""
STEPS = ["Knead the dough for 12 minutes.", "Bake the buns at 425°F for 18 minutes."]


@pytest.mark.parametrize(
    "method",
    [
        """<div itemprop="recipeInstructions">
             Knead the dough for 12 minutes.
             Bake the buns at 425&deg;F for 18 minutes.
        </div>""",
        """<ol itemprop=recipeInstructions><li>Knead the dough
             for 12 minutes.<li>Bake the buns at
             425&deg;F for 18 minutes.</ol>""",
        """<p itemprop=recipeInstructions>Knead the dough for 12 minutes.</p>
           <p itemprop=recipeInstructions>Bake the buns at 425°F for
             18 minutes.</p>""",
        """<div itemprop=recipeInstructions><p>Knead the dough for 12 minutes.</p>
           <p>2. Bake the buns at 425°F for 18 minutes.</p></div>""",
        """<div itemprop=recipeInstructions>Knead the dough for 12 minutes.<br>
           Bake the buns at 425°F for 18 minutes.</div>""",
        """<ol><li itemprop=recipeInstructions itemscope itemtype="https://schema.org/HowToStep">
             <b itemprop=text>Knead the dough
             for 12 minutes.</b></li>
           <li itemprop=recipeInstructions itemscope itemtype="https://schema.org/HowToStep">
             Bake the buns at 425°F for 18 minutes.</li></ol>""",
    ],
    ids=["block", "list", "paragraphs", "inside", "breaks", "nested"],
)  # fmt: skip
def test_a_page_with_marks_is_read_whole(method):
    recipe = read(PAGE % method)
    assert recipe.title == "Bakery seed buns"
    assert [i.line for i in recipe.ingredients] == ["600 g bread flour", "390 g water", "½ tsp instant yeast"]
    assert [s.text for s in recipe.steps] == STEPS
    assert (recipe.yields.value, recipe.yields.unit) == (16, "bun")
    assert (recipe.prep_min, recipe.cook_min, recipe.total_min) == (25, 18, 45)
    assert recipe.unread == ()


def test_sections_name_their_part():
    recipe = read(f"""{SCOPE}<ul itemprop="ingredients"><li>2 cups flour<li>1 cup milk</ul>
        <section itemprop="recipeInstructions" itemscope itemtype="https://schema.org/HowToSection">
          <h3 itemprop="name">For the glaze</h3>
          <p itemprop="itemListElement" itemscope itemtype="https://schema.org/HowToStep">Stir the sugar in.</p>
        </section>""")
    assert [i.line for i in recipe.ingredients] == ["2 cups flour", "1 cup milk"]
    assert [(s.text, s.component) for s in recipe.steps] == [("Stir the sugar in.", "glaze")]


def test_every_property_is_kept():
    (node,) = recipes(tree(PAGE % ""))
    assert node["author"] == {"@type": "Person", "name": "the night shift"}
    assert (node["image"], node["prepTime"], node["cookTime"]) == ("buns.jpg", "PT25M", "PT18M")
    assert to_jsonld(read(PAGE % "")) == node


def test_what_was_changed_is_written_as_jsonld():
    page = PAGE % "<p itemprop=recipeInstructions>Bake the buns at 425°F for 18 minutes."
    written = as_jsonld(convert_recipe(page, to_elevation_m=LODGE_M, servings=32))
    assert (written["@type"], written["author"]["name"]) == ("Recipe", "the night shift")
    assert written["recipeIngredient"][0].startswith("1,200 g bread flour")


def test_scripts_come_first_where_they_hold_as_much():
    script = json.dumps(
        {"@type": "Recipe", "name": "In the script", "recipeIngredient": ["1 egg"], "recipeInstructions": "Boil."}
    )
    bare = json.dumps({"@type": "Recipe", "name": "In the script"})
    marked = (
        f"{SCOPE}<p itemprop=name>On the page<p itemprop=ingredients>2 eggs<p itemprop=recipeInstructions>Fry.</div>"
    )
    for data, title in (
        (script, "In the script"),
        (json.dumps(bare), "On the page"),
        ('{"@type": "WebPage"}', "On the page"),
    ):
        assert read(f'<script type="application/ld+json">{data}</script>{marked}').title == title


def test_the_fullest_of_several_is_read():
    teaser = f"{SCOPE}<b itemprop=name>Teaser</b><b itemprop=ingredients>1 egg</b></div>"
    whole = teaser.replace("Teaser", "Whole").replace("</div>", "<p itemprop=recipeInstructions>Boil it.</div>")
    assert read(f"<html>{teaser}{whole}{teaser}").title == "Whole"


def test_a_scope_in_a_scope_keeps_its_own_properties():
    page = f"""{SCOPE}<b itemprop=name>Stew</b>
        <div itemprop=nutrition itemscope itemtype="https://schema.org/NutritionInformation">
        <b itemprop=name>No title</b></div><p itemprop=recipeIngredient>1 kg beef</div>"""
    recipe = read(page)
    assert (recipe.title, [i.item for i in recipe.ingredients]) == ("Stew", ["beef"])


def test_each_node_is_walked_once(monkeypatch):
    from assistant.recipes import microdata

    walked = []
    step = microdata._walked
    monkeypatch.setattr(microdata, "_walked", lambda *a: (walked.append(one) or one for one in step(*a)))
    for count in (200, 400):
        walked.clear()
        recipes(tree("<html>" + f"{SCOPE}<p itemprop=ingredients>1 egg</p>" * count))
        assert len(walked) < 8 * count


def test_a_scope_that_never_ends_is_refused():
    with pytest.raises(RecipeError, match="longer than any page"):
        read(SCOPE + "<p itemprop=name>x" * MOST_NODES)
