"""The converted recipe as schema.org JSON-LD: the document it came from, brought up to date."""

from __future__ import annotations

import json
from typing import Any

from assistant.recipes.jsonld_written import insert_lines, recipe_node, to_jsonld
from assistant.replies.quantities import Say
from assistant.replies.recipe.forms import Form
from assistant.replies.recipe.worded import in_words
from assistant.replies.recipe.words import added, environment
from rules.baking.change import adds
from rules.model import Units
from rules.recipes.convert import Converted
from rules.recipes.sheet import stands_after


def as_jsonld(converted: Converted, units: Units = "us") -> dict[str, Any] | list[Any]:
    """The converted recipe as a schema.org document; a document that is read is given back with every key it had.

    What the recipe has no line for (how full the pan) stands in the description; what is added has a line there and
    in the list. Where nothing changes the document is as it was.
    """
    document = to_jsonld(converted.plain)
    if converted.plain == converted.recipe:
        return document
    say = Say(units)
    loose = [c for c in in_words(converted, units).changes if c.at == "recipe" and c.way != "same"]
    if new := [added(c) for c in loose if adds(c)]:
        insert_lines(recipe_node(document), converted.plain.ingredients[stands_after(converted.recipe)].line, new)
    note = environment().get_template("words/description.j2").render(
        there=say.elevation(converted.from_elevation_m),
        here=say.elevation(converted.to_elevation_m),
        moved=converted.from_elevation_m != converted.to_elevation_m,
        loose=[(added(c) if adds(c) else "", c.because) for c in loose],
    )  # fmt: skip
    node = recipe_node(document)
    said = node.get("description")
    node["description"] = "\n".join(filter(None, (said if isinstance(said, str) else "", note.strip())))
    return document


def _written(converted: Converted, units: Units) -> str:
    return json.dumps(as_jsonld(converted, units), ensure_ascii=False, indent=2) + "\n"


FORM = Form(ending=".jsonld", write=_written)
