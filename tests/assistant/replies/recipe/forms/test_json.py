"""The JSON of a converted recipe: its keys are fixed, its values agree with each other."""

from __future__ import annotations

import json

import pytest

from assistant.recipes.converting import convert_recipe
from assistant.replies.recipe.forms.json import as_json
from rules.baking.change import WAYS, WHATS
from rules.baking.styles import ids
from rules.tables import sources
from tests.contracts import faults

LODGE_M = 2133.6
KEYS = [
    "schema", "title", "style", "from_elevation_m", "to_elevation_m", "yields", "ingredients", "oven", "steps",
    "changes", "unread", "cautions", "text",
]  # fmt: skip
INGREDIENT = ["line", "component", "item", "amount", "amount_high", "unit", "mass_g", "to"]
TIME = ["low_min", "high_min", "to_low_min", "to_high_min", "what"]


@pytest.fixture
def told(each_sample) -> dict:
    return json.loads(json.dumps(as_json(each_sample), allow_nan=False))


def test_it_keeps_its_contract(told) -> None:
    assert faults("recipe", told) == []


def test_the_keys_are_those_of_the_contract(told) -> None:
    assert list(told) == KEYS
    assert told["schema"] == 1
    assert told["style"]["id"] in ids()
    assert 0 <= told["style"]["sure"] <= 1
    assert (told["from_elevation_m"], told["to_elevation_m"]) == (0, LODGE_M)
    assert told["oven"] is None or list(told["oven"]) == ["from_c", "to_c", "low_c", "high_c"]
    for line in told["ingredients"]:
        assert list(line) == INGREDIENT
        assert list(line["to"]) == ["amount", "unit", "mass_g"]
    for step in told["steps"]:
        assert list(step) == ["text", "to", "times", "temperatures"]
        assert all(list(time) == TIME for time in step["times"])
        assert all(list(temp) == ["c", "to_c", "what"] for temp in step["temperatures"])


def test_each_change_has_its_place_reason_and_known_sources(told) -> None:
    for change in told["changes"]:
        assert list(change) == ["what", "way", "at", "from", "to", "rule", "because", "sources"]
        assert change["what"] in WHATS
        assert change["way"] in WAYS
        kind, _, number = change["at"].partition(" ")
        places = {"ingredient": told["ingredients"], "step": told["steps"]}
        assert kind == "recipe" or 1 <= int(number) <= len(places[kind])
        assert change["because"].endswith((".", "?"))
        assert change["sources"]
        assert set(change["sources"]) <= set(sources())
        if change["to"]["value"] is not None and change["to"]["low"] is not None:
            assert change["to"]["low"] <= change["to"]["value"] <= change["to"]["high"]


def test_nothing_that_was_read_disappears(told) -> None:
    """Every line and step stands in the text, changed or as it was."""
    words = " ".join(told["text"].split())
    for line in told["ingredients"]:
        assert " ".join(line["line"].split()) in words
    for step in told["steps"]:
        assert " ".join(step["to"].split()) in words
    assert all(line in told["text"] for line in told["unread"])


def test_the_yield_is_that_of_the_scaled_recipe() -> None:
    text = "Rolls\nMakes 12 rolls\n2 cups flour\n\nBake 20 minutes."
    told = as_json(convert_recipe(text, to_elevation_m=0, servings=24))
    assert told["yields"] == {"value": 24, "unit": "roll"}
    assert told["ingredients"][0]["amount"] == 2
    assert told["ingredients"][0]["to"]["amount"] == 4


def test_flour_that_stands_in_for_self_raising_is_listed_too() -> None:
    text = (
        "Scones\n300 g self-raising flour\n80 g butter\n160 ml milk\nRub in, mix, cut out and bake 14 minutes at 220 C."
    )
    converted = convert_recipe(text, to_elevation_m=LODGE_M)
    was, *_, new = as_json(converted)["ingredients"]
    assert (new["line"], new["item"], new["amount"]) == ("", "all-purpose flour", None)
    assert was["to"]["mass_g"] + new["to"]["mass_g"] == was["mass_g"] == 300
