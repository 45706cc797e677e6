"""What other programs build on, and what `from assistant import ...` gives: these names, and what they take, stay.

    from assistant import ask, convert, kitchen

    lodge = kitchen("7,000 ft", name="Timberfold Lodge")
    print(ask("how long to braise short ribs", lodge).text)
    print(as_text(convert(recipe, lodge)))

Everything else in the packages may change. What is wrong with what was given is raised as AssistantError or RulesError,
whose text says how to put it right; what an answer holds as plain JSON values is laid down by `assistant.schemas`.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from assistant.errors import AssistantError
from rules.errors import RulesError
from rules.model import Answer, Because, Caution, Figure, Kitchen, Request, Units
from rules.recipes.convert import Converted

__all__ = [
    "Answer",
    "AssistantError",
    "Because",
    "Caution",
    "Converted",
    "Figure",
    "Kitchen",
    "Request",
    "RulesError",
    "as_json",
    "as_text",
    "ask",
    "convert",
    "kitchen",
]
SEA_LEVEL = Kitchen(elevation_m=0.0)


class NowhereToCook(AssistantError, ValueError):
    """A kitchen of which nobody has said how high it stands."""

    def __str__(self) -> str:
        return 'this kitchen has no elevation; make it by kitchen("7,000 ft"), or give it an elevation_m'


def kitchen(at: str, *, name: str = "", units: Units | None = None, equipment: Sequence[str] = ()) -> Kitchen:
    """A kitchen, as questions take it for granted.

    at: its elevation, a figure with its unit or a town; units: which come first, by default those of the elevation
    equipment: in a cook's words, such as "electric pressure cooker"
    raises: AssistantError for what is no elevation, RulesError for equipment that is not known

    >>> lodge = kitchen("7,000 ft", name="Timberfold Lodge", equipment=["electric pressure cooker"])
    >>> lodge.elevation_m, lodge.units, lodge.equipment
    (2133.6, 'us', ('electric_pressure_cooker',))
    """
    from assistant.understanding.elevation_told import elevation_told
    from assistant.understanding.kitchen_fields import equipment_id

    heard = elevation_told(at)
    owned = tuple(dict.fromkeys(equipment_id(words) for words in equipment))
    return Kitchen(name=name, elevation_m=heard.elevation_m, units=units or heard.units, equipment=owned)


def ask(
    question: str, kitchen: Kitchen | None = None, *, before: Sequence[str] = (), depth: int | None = None
) -> Answer:
    """The answer to a question in a cook's own words; `text` is the reply, `spoken` the line to be read aloud.

    kitchen: where it is cooked, where the question does not say; before: what was said before, oldest first
    depth: 1 one line, 2 a paragraph, 3 the equations; None as the question asks
    Never raises, whatever the question: what is not understood is asked back (`missing`), what is unsafe refused.

    >>> answer = ask("how long to braise short ribs", kitchen("7,000 ft"), depth=1)
    >>> answer.text.partition(" for ")[0], answer.figure("cook_time").unit
    ('About 4 h (3 h 35 min to 4 h 40 min)', 'min')
    >>> ask("and at 9,000?", before=["how long to braise short ribs at 7,000 feet"]).request.dish
    'short ribs'
    """
    from assistant.answering import reply_to

    return reply_to(question, before, kitchen, depth)


def convert(
    recipe: str | bytes, kitchen: Kitchen, *, right_at: Kitchen = SEA_LEVEL, style: str = "",
    servings: float | None = None,
) -> Converted:  # fmt: skip
    """A recipe taken to another elevation.

    recipe: plain text, JSON-LD or a saved page; kitchen: where it is cooked; right_at: where it is right as written
    style: an id of a style, "" to recognise it; servings: for how many, None as it is written
    raises: AssistantError where it is no recipe, or a kitchen has no elevation; RulesError for an unknown style

    >>> rolls = "Drop biscuits\\n2 cups flour\\n1 tbsp baking powder\\n1 cup milk\\nBake 15 minutes at 425 F."
    >>> [(change.what, change.way) for change in convert(rolls, kitchen("7,000 ft")).changes][:2]
    [('leavening', 'less'), ('liquid', 'more')]
    """
    from assistant.recipes.converting import convert_recipe

    if kitchen.elevation_m is None or right_at.elevation_m is None:
        raise NowhereToCook
    return convert_recipe(
        recipe, from_elevation_m=right_at.elevation_m, to_elevation_m=kitchen.elevation_m, style=style or None,
        servings=servings, units=kitchen.units, name="the recipe",
    )  # fmt: skip


def as_text(found: Answer | Converted, units: Units = "us") -> str:
    """What was found as it is shown. units: which come first in a recipe; an answer has its own"""
    from assistant.replies.recipe.forms.text import as_text as recipe_text

    return found.text if isinstance(found, Answer) else recipe_text(found, units)


def as_json(found: Answer | Converted, units: Units = "us") -> dict[str, Any]:
    """What was found as plain JSON values, by the schema `answer` or `recipe`. units: as those of as_text

    >>> as_json(ask("what does water boil at in Santa Fe"))["heard"]["topic"]
    'boiling_point'
    """
    from assistant.replies.contract import as_json as answer_json
    from assistant.replies.recipe.forms.json import as_json as recipe_json

    return answer_json(found) if isinstance(found, Answer) else recipe_json(found, units)
