"""The batch log in words: a change as it is kept, and what the log of a recipe says to do next."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

from assistant.replies.sentences import worded
from rules.physics.units import to_c, to_f
from rules.said import duration, measure, number, sentences

if TYPE_CHECKING:
    from assistant.recipes.batch import Logged
    from rules.baking.change import Change
    from rules.mending import Mending, Trial, Tried
    from rules.mending.log import Outcome
    from rules.model import Units
    from rules.recipe import Recipe
    from rules.said import Measure, Said, Words

say = sentences("recipes/batches")
LONGEST_ITEM = 3
OUTCOMES: dict[str, Outcome] = {"better": "helped", "worse": "hurt", "same": "same"}


def as_kept(change: Change, line: Words, units: Units = "us") -> dict[str, Any]:
    """A suggested change in the shape of the changes of a converted recipe, its sentences in words.

    line: the sentence that said it; units: which scale it was told in
    """
    item = change.item or ("" if change.to_value is not None else worded(line, units).rstrip("."))
    kept: dict[str, Any] = {
        "what": change.what, "way": change.way, "at": change.at, "item": item,
        "rule": change.rule, "because": worded(change.because, units), "sources": list(change.sources),
    }  # fmt: skip
    if change.from_value is not None:
        kept["from"] = {"value": change.from_value, "unit": change.from_unit}
    if change.to_value is not None:
        kept["to"] = {
            "value": change.to_value, "low": change.to_low, "high": change.to_high, "unit": change.to_unit,
        }  # fmt: skip
    return kept


def in_words(kept: dict[str, Any], units: Units = "us") -> str:
    """A kept change in a few words. units: which scale its temperatures are told in

    >>> in_words({"what": "sugar", "way": "less", "item": "sugar"})
    'sugar, less'
    """
    before, after = kept.get("from"), kept.get("to")
    item = kept.get("item") or worded(say("name", what=kept["what"]), units)
    if before and after and before.get("unit") != "percent":
        return worded(say("moved", item=item, before=_amount(before, units), after=_amount(after, units)), units)
    plain = kept["way"] == "different" or len(item.split()) > LONGEST_ITEM
    return item if plain else worded(say("changed", item=item, way=kept["way"]), units)


def _amount(of: dict[str, Any], units: Units) -> Said | Measure:
    value, unit = float(of["value"]), of.get("unit")
    if unit in ("degF", "degC"):
        temp_c = to_c(value) if unit == "degF" else value
        fahrenheit, celsius = number(to_f(temp_c), 0), number(temp_c, 0)
        return say("degrees", units=units, fahrenheit=fahrenheit, celsius=celsius)
    return duration(value) if unit == "min" else measure(value, unit or "")


def titles(batch: Logged) -> list[str]:
    """What went wrong with a batch, in words."""
    from rules.mending import catalogue

    return [catalogue()[id].title if id in catalogue() else id.replace("_", " ") for id in batch.symptoms]


def tried(kept: dict[str, Any]) -> Tried:
    """A kept change as mending reads it."""
    from rules.mending import Tried

    before, after = kept.get("from") or {}, kept.get("to") or {}
    return Tried(
        what=str(kept.get("what", "method")), way=str(kept.get("way", "different")), rule=str(kept.get("rule", "")),
        item=str(kept.get("item", "")), from_value=before.get("value"), from_unit=before.get("unit"),
        to_value=after.get("value"), to_unit=after.get("unit"),
    )  # fmt: skip


def trials(batches: Sequence[Logged]) -> tuple[Trial, ...]:
    """A log as mending reads it."""
    from rules.mending import Trial

    return tuple(
        Trial(
            changes=tuple(map(tried, b.changes)), symptoms=tuple(b.symptoms), rating=b.rating,
            told=OUTCOMES.get(b.compared),
        )
        for b in batches
    )  # fmt: skip


def is_apart(batch: Logged) -> bool:
    """Whether a batch was made in a way that cannot be held against the others: with another kind of flour."""
    return any(change.get("apart") for change in batch.changes)


def formula_of(batches: Sequence[Logged]) -> Recipe | None:
    """The recipe that the batches began from, where it is kept and can be read."""
    from assistant.errors import AssistantError
    from assistant.recipes.read import read

    kept = next((b.formula for b in batches if b.formula), "")
    try:
        return read(kept, name="the recipe") if kept else None
    except AssistantError:
        return None


def mending(batches: Sequence[Logged], *, recipe: Recipe | None = None, units: Units = "us") -> Mending | None:
    """What the log of a recipe says to do next: for the faults of its last batch, where that was baked.

    batches: of one recipe, oldest first; what cannot be compared is left out of account
    recipe: None for the one that the log keeps; returns: None where there is no batch yet
    raises: OutOfRange for an elevation that no kitchen has
    """
    from rules.foods.dishes import classes
    from rules.mending import catalogue, suggest

    batches = [b for b in batches if not is_apart(b)] or batches
    if not batches:
        return None
    recipe = recipe or formula_of(batches)
    last = batches[-1]
    known = tuple(id for id in last.symptoms if id in catalogue())
    style = next((b.style for b in reversed(batches) if b.style in classes()), None)
    return suggest(
        known, recipe=recipe, dish_class=None if recipe else style, elevation_m=last.elevation_m or 0.0,
        from_elevation_m=last.from_elevation_m or 0.0, units=units, log=trials(batches),
    )  # fmt: skip
