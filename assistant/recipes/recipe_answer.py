"""A recipe that came in a conversation, converted -> Answer."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from functools import partial

from assistant.errors import AssistantError
from assistant.recipes.converting import NoYield, convert_recipe
from assistant.recipes.read import read
from assistant.replies.recipe.forms.text import as_text
from assistant.replies.recipe.worded import in_words
from assistant.replies.recipe.words import opening
from assistant.replies.wording import dress
from rules.baking.change import Change
from rules.baking.style import recognise
from rules.baking.styles import OTHER, UNKNOWN_BAKE, is_a, style_of
from rules.errors import OutOfRange
from rules.heat.batch_size import BATCH
from rules.model import Answer, Because, Caution, Figure, Request
from rules.recipes.convert import Converted
from rules.said import Words, elevation, listed, sentences, together

BRIEF = 1
GENERAL = "general"
say = sentences("recipes/recipe_answer")
_FIRST_SENTENCE = re.compile(r"(?<=[.:])\s+(?=[A-Z])")


def convert(request: Request) -> Converted | Answer:
    """The recipe converted, or the answer that asks for what is missing, yet to be put into words.

    Never raises for anything a Request can hold.
    """
    known = {"recipe": request.recipe, "elevation": request.elevation_m is not None}
    missing = tuple(word for word, held in known.items() if not held)
    if missing:
        return Answer(request=request, missing=missing)
    try:
        return _converted(request)
    except (AssistantError, OutOfRange) as fault:
        word = "elevation" if isinstance(fault, OutOfRange) else "recipe"
        return Answer(request=request, missing=(word,), cautions=(Caution("note", str(fault)),))


def tell(request: Request, found: Converted | Answer) -> Answer:
    """What convert found, in words."""
    return dress(found) if isinstance(found, Answer) else _told(request, found)


def _converted(request: Request) -> Converted:
    """The recipe at the elevation of the request, for its portions where the recipe says how much it makes."""
    amount = request.quantity
    convert = partial(
        convert_recipe,
        request.recipe,
        batches=amount.value if amount and amount.unit == BATCH else 1.0,
        from_elevation_m=request.from_elevation_m or 0.0,
        to_elevation_m=request.elevation_m or 0.0,
        style=_style(request),
        units=request.units,
        name="the recipe",
    )
    try:
        return convert(servings=request.portions)
    except NoYield as fault:
        found = convert()
        said = str(fault).partition(". ")[0]
        return replace(found, notes=(*found.notes, Caution("note", say("by-batches", fault=opening(said)))))


def _style(request: Request) -> str | None:
    """The style of what the cook says is baked; None leaves it to the recipe.

    A batter of flour that is like none that is known is taken for a cake, whose tables say the most.
    """
    if request.dish_class is None or request.dish_class == GENERAL:
        return style_of(GENERAL) if _is_unlike_any(request.recipe) else None
    style = style_of(request.dish_class)
    return style if is_a(style, "baked") else None


def _is_unlike_any(text: str) -> bool:
    """Whether a recipe has flour and sugar in it but no yeast, and fits no style."""
    recipe = read(text, name="the recipe")
    has = {line.role for line in recipe.ingredients}
    return {"flour", "sugar"} <= has and "yeast" not in has and recognise(recipe).id in (OTHER, UNKNOWN_BAKE)


def _told(request: Request, found: Converted) -> Answer:
    converted = in_words(found, request.units)
    moved = [change for change in converted.changes if change.way != "same"]
    answer = dress(
        Answer(
            request=request,
            headline=_headline(converted, moved),
            figures=tuple(_figures(converted, moved)),
            steps=tuple(one.text for one in converted.steps),
            because=tuple(dict.fromkeys(Because(c.rule, c.because, c.sources) for c in converted.changes)),
            cautions=converted.cautions,
        )
    )
    if request.depth <= BRIEF:
        return answer
    return replace(answer, text=f"{answer.headline}\n\n{as_text(converted, request.units).rstrip()}")


def _headline(converted: Converted, moved: list[Change]) -> Words:
    """What was done in a sentence; before it whatever is stopped, and for canning that alone."""
    title = converted.recipe.title or say("your-recipe")
    place, baseline = elevation(converted.to_elevation_m), elevation(converted.from_elevation_m)
    unsafe = [say("not-safe", why=_FIRST_SENTENCE.split(danger.text)[0]) for danger in converted.dangers]
    if converted.canning:
        gel = say("for-canning-but-gel", title=title, place=place) if moved else None
        return together(gel or say("for-canning", title=title, place=place), *unsafe)
    ways = dict.fromkeys((c.way, c.what) for c in moved if c.way != "different" and c.what != "pan")
    changes = listed(say("change", way=way, what=what) for way, what in ways)
    if not ways:
        return together(*unsafe, say("unchanged", title=title, baseline=baseline, place=place))
    return together(*unsafe, say("changed", title=title, baseline=baseline, place=place, changes=changes))


def _figures(converted: Converted, moved: list[Change]) -> Iterator[Figure]:
    """The oven, and each ingredient that changes in the unit it is measured in."""
    if oven := converted.oven:
        sea = oven.from_c if abs(converted.from_elevation_m) < 1 else None
        yield Figure("oven", say("oven-label"), oven.to_c, "degC", oven.low_c, oven.high_c, sea)
    for change in moved:
        if change.item and change.to_value is not None and change.what != "egg":
            id = f"{change.what}_{change.at.replace(' ', '_')}"
            yield Figure(id, change.item, change.to_value, change.to_unit or "count", change.to_low, change.to_high)
