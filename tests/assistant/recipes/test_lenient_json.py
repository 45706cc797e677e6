"""JSON as pages and people write it: what is forgiven, what is mended and said, what is past mending."""

import json
import sys

import pytest

from assistant.recipes import lenient_json
from assistant.recipes.converting import convert_recipe
from assistant.recipes.errors import RecipeError
from assistant.recipes.read import read
from assistant.replies.recipe.worded import in_words

BAKERY_M = 1615.4
LOAF = (
    '{"@type": "Recipe", "name": "Bakery loaf", "recipeIngredient": ["500 g flour", "350 g water"],'
    ' "recipeInstructions": "Bake 40 minutes."}'
)
LINES = ["500 g flour", "350 g water"]


def cautions(converted) -> str:
    """All that is said with a conversion, in words."""
    return "\n".join(caution.text for caution in in_words(converted).cautions)


def read_both_ways(data: str):
    """The recipe of a file of JSON, and of a page that holds it."""
    return read(data), read(f"<html><script type='application/ld+json'>{data}</script></html>")


@pytest.mark.parametrize(
    "data",
    [
        LOAF + ";",
        LOAF + "\n;\n",
        f"// <![CDATA[\n{LOAF}\n// ]]>",
        f"/*<![CDATA[*/{LOAF}/*]]>*/",
        f"<![CDATA[{LOAF}]]>",
        f"// kept by the bakery\n{LOAF}",
        f"/* kept\nby the bakery */ {LOAF}",
        LOAF.replace("Bakery loaf", "Bakery\n\tloaf"),
        LOAF.replace('"', "&quot;"),
        LOAF.replace("Bakery", "B\\u0061kery"),
    ],
    ids=["semicolon", "line", "cdata", "cdata in comments", "bare cdata", "comment", "long comment", "control",
         "entities", "escape"],
)  # fmt: skip
def test_what_a_browser_forgives_is_not_even_mentioned(data):
    for recipe in read_both_ways(data):
        assert " ".join(recipe.title.split()) == "Bakery loaf"
        assert [i.line for i in recipe.ingredients] == LINES
        assert lenient_json.fault_in(recipe.jsonld) is None


def test_a_comment_of_html_around_the_data():
    assert read(f"<script type='application/ld+json'><!--\n{LOAF}\n//--></script>").title == "Bakery loaf"


@pytest.mark.parametrize(
    "data",
    [
        LOAF.replace('water"]', 'water",]'),
        LOAF.replace('minutes."}', 'minutes.",}'),
        LOAF.replace("Bakery", "B\\akery").replace("\\a", "\\xa"),
        LOAF.replace('"name"', '/* what it is called */ "name"'),
        LOAF.replace('], "', '] "'),
        LOAF.replace("'", "").replace('"', "'"),
        LOAF.replace('"name"', "name"),
        LOAF.replace("Bakery loaf", 'The "old" bakery loaf'),
        LOAF[:-1],
    ],
    ids=["comma", "comma in object", "escape", "comment", "no comma", "quotes", "bare key", "inner quotes", "no end"],
)
def test_what_is_broken_is_mended_and_said(data):
    for recipe in read_both_ways(data):
        assert recipe.title.endswith("loaf") or "kery" in recipe.title
        assert [i.line for i in recipe.ingredients] == LINES
    converted = convert_recipe(data, to_elevation_m=BAKERY_M)
    assert "mended by guess" in cautions(converted)


def test_what_is_whole_is_not_said_to_be_mended():
    assert "mended" not in cautions(convert_recipe(LOAF, to_elevation_m=BAKERY_M))


@pytest.mark.parametrize("data", ['{"@type": "Recipe", "na', '{"@type": "Recipe"; "name": }', '{"@type": "Recipe",'])
def test_what_is_past_mending_says_where_it_breaks(data):
    with pytest.raises(RecipeError, match="breaks off at line 1"):
        read(data, name="loaf.json")


def test_whole_json_loads_no_mender():
    sys.modules.pop("json_repair", None)
    read(LOAF)
    read(LOAF + ";")
    assert "json_repair" not in sys.modules


@pytest.mark.parametrize("sign", ["{", "[", "(", '{"a":', "{//\n"])
def test_brackets_without_end_are_not_handed_to_the_mender(sign, monkeypatch):
    import json_repair

    handed = []
    monkeypatch.setattr(json_repair, "loads", lambda *a, **k: handed.append(a))
    with pytest.raises(RecipeError):
        lenient_json.read(sign * 2_000, "")
    with pytest.raises(RecipeError):
        lenient_json.read(f"[{LOAF}," * (lenient_json.MOST_MENDED // 100), "")
    assert not handed


def test_of_many_broken_blocks_no_more_is_mended_than_of_one(monkeypatch):
    import json_repair

    handed = []
    mend = json_repair.loads
    monkeypatch.setattr(json_repair, "loads", lambda text, **k: handed.append(len(text)) or mend(text, **k))
    broken = LOAF.replace('water"]', 'water",]')
    block = f"<script type='application/ld+json'>{broken}</script>"
    assert read(block * 3_000).title == "Bakery loaf"
    assert 0 < sum(handed) <= lenient_json.MOST_MENDED


def test_strings_that_end_like_a_wrapper_stay():
    text = json.dumps({"a": "end;", "b": "x -->"})
    assert lenient_json.unwrapped(text) == text
