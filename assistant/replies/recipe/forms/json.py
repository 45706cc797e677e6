"""The JSON contract of a converted recipe: `simmerline convert --json`."""

from __future__ import annotations

import json
from collections.abc import Iterator
from typing import Any

from assistant.replies.contract import cautions
from assistant.replies.recipe.forms import Form
from assistant.replies.recipe.forms.text import as_text
from assistant.replies.recipe.worded import in_words
from rules.baking.change import Change, adds
from rules.model import Units
from rules.recipes.convert import Converted
from rules.recipes.lines import LineTo, round_mass
from rules.recipes.sheet import line_added, stands_after
from rules.recipes.steps import StepTo

SCHEMA = 1


def as_json(converted: Converted, units: Units = "us") -> dict[str, Any]:
    """The conversion as plain JSON values, keys in the order of the contract."""
    converted = in_words(converted, units)
    return {**without_text(converted), "text": as_text(converted, units)}


def without_text(converted: Converted) -> dict[str, Any]:
    """The same of a conversion in words, but for its last value, which takes longer to lay out than all the others.

    Temperatures are in degC, times in minutes, masses in grams; `from` and `to` of a change in the units they name.
    What the conversion puts in that the recipe does not list stands behind its ingredients, with an empty `line`.
    """
    yields, oven = converted.plain.yields, converted.oven
    return {
        "schema": SCHEMA,
        "title": converted.recipe.title,
        "style": {"id": converted.style, "sure": converted.sure},
        "from_elevation_m": round(converted.from_elevation_m, 1),
        "to_elevation_m": round(converted.to_elevation_m, 1),
        "yields": {"value": yields.value, "unit": yields.unit} if yields else None,
        "ingredients": [*map(_ingredient, converted.ingredients), *_new(converted)],
        "oven": {k: getattr(oven, k) for k in ("from_c", "to_c", "low_c", "high_c")} if oven else None,
        "steps": [_step(one) for one in converted.steps],
        "changes": [_change(change) for change in converted.changes],
        "unread": list(converted.unread),
        "cautions": cautions(converted.cautions),
    }


def _ingredient(to: LineTo) -> dict[str, Any]:
    line = to.line
    return {
        "line": line.line,
        "component": line.component,
        "item": line.item,
        "amount": line.amount,
        "amount_high": line.amount_high,
        "unit": line.unit,
        "mass_g": None if line.mass_g is None else round_mass(line.mass_g),
        "to": {"amount": to.amount, "unit": to.unit, "mass_g": to.mass_g},
    }


def _new(converted: Converted) -> Iterator[dict[str, Any]]:
    for change in filter(adds, converted.changes):
        line, after = line_added(change), converted.recipe.ingredients[stands_after(converted.recipe)]
        mass_g = line.mass_g if line else None
        yield {
            "line": "",
            "component": after.component,
            "item": change.item,
            "amount": None,
            "amount_high": None,
            "unit": None,
            "mass_g": None,
            "to": {
                "amount": change.to_value,
                "unit": change.to_unit,
                "mass_g": None if mass_g is None else round_mass(mass_g),
            },
        }


def _step(one: StepTo) -> dict[str, Any]:
    times = [
        {
            "low_min": t.mark.low_min,
            "high_min": t.mark.high_min,
            "to_low_min": t.to_low_min,
            "to_high_min": t.to_high_min,
            "what": t.mark.what,
        }
        for t in one.times
    ]
    temperatures = [
        {"c": round(t.mark.low_c, 1), "to_c": round(t.to_c, 1), "what": t.mark.what} for t in one.temperatures
    ]
    return {"text": one.step.text, "to": one.text, "times": times, "temperatures": temperatures}


def _change(change: Change) -> dict[str, Any]:
    return {
        "what": change.what,
        "way": change.way,
        "at": change.at,
        "from": {"value": change.from_value, "unit": change.from_unit},
        "to": {"value": change.to_value, "low": change.to_low, "high": change.to_high, "unit": change.to_unit},
        "rule": change.rule,
        "because": change.because,
        "sources": list(change.sources),
    }


def _written(converted: Converted, units: Units) -> str:
    return json.dumps(as_json(converted, units), ensure_ascii=False, indent=2) + "\n"


FORM = Form(ending=".json", write=_written)
