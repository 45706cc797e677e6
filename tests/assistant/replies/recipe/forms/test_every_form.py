"""What holds for every form a converted recipe is written in, whichever there are."""

from __future__ import annotations

import re

import pytest

from assistant.replies.recipe.forms import form, names

# they give back what they were given, for a program to read
DOCUMENTS = ("json", "jsonld")


@pytest.mark.parametrize("name", names())
def test_no_form_leaves_a_gap(each_sample, name) -> None:
    text = form(name).write(each_sample, "us")
    assert not re.search(r"\bNone\b|\{\{|\{%|Undefined|\n\n\n", text)
    assert text.endswith("\n")


@pytest.mark.parametrize("name", [name for name in names() if name not in DOCUMENTS])
def test_nothing_drives_a_terminal_or_turns_the_reading_direction(nasty, name) -> None:
    assert not re.search(r"[\x00-\x08\x0b-\x1f\x7f\u202e]", form(name).write(nasty, "us"))


@pytest.mark.parametrize("name", ["text", "markdown", "html"])
def test_a_bake_has_its_formula_beside_it(sample, name) -> None:
    assert "Formula: flour 375 g = 100 %; sugar" in form(name).write(sample("yellow_layer_cake"), "us")
    assert "Formula" not in form(name).write(sample("beef_chili"), "us")


# JSON-LD gives the document of a recipe back, with what its own words say
@pytest.mark.parametrize("name", [name for name in names() if name != "jsonld"])
def test_what_is_stopped_is_said_in_every_form(sample, name) -> None:
    assert "A recipe for canning is not converted" in form(name).write(sample("strawberry_jam"), "us")


@pytest.mark.parametrize("name", names())
def test_a_form_says_how_its_files_end(name) -> None:
    assert re.fullmatch(r"\.[a-z]+", form(name).ending)
