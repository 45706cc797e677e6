"""A baker's formula in a conversation: held as it is told, put right, and weighed out for so much dough."""

from __future__ import annotations

import re
from dataclasses import replace

from assistant.dialogue import made
from assistant.dialogue.gathering import CONVERT, Taken, sheet_in_hand
from assistant.dialogue.heard import Heard
from assistant.dialogue.memory import Memory, moved
from assistant.dialogue.thread import after
from assistant.dialogue.workbench import RecipeTalk
from assistant.recipes.amended import Amendment, amended, with_line
from assistant.recipes.bakers import formula, parts_of, wanted
from assistant.recipes.sheet import Sheet
from assistant.understanding.conversation import settle_in
from assistant.worked_out import told
from rules.baking.dough import weighed
from rules.model import PLACE_SLOTS, Answer, Request
from rules.said import listed, number, sentences

say = sentences("dialogue/dough_talk")
_SENTENCE = re.compile(r"(?<=[.!?])\s+")


def with_formula(heard: Heard, memory: Memory) -> Memory:
    """The memory with the formula that an utterance tells in bare figures, beside whatever it asks."""
    now = heard.hearing.request
    if now.recipe or not any(char.isdigit() for char in heard.text):
        return memory
    sheet = formula(heard.text, now.dish.title() if now.dish else "")
    if sheet is None:
        return memory
    place = {slot: getattr(now, slot) for slot in (*PLACE_SLOTS, "from_elevation_m", "units")}
    question = Request(topic=CONVERT, recipe=sheet.text, dish=now.dish, dish_class=now.dish_class, **place)
    return replace(memory, recipe=question, talk=RecipeTalk(sheet=sheet, question=question))


def is_formula(sheet: Sheet | None) -> bool:
    """Whether the lines of a recipe are percentages."""
    return sheet is not None and bool(sheet.ingredients) and "%" in sheet.ingredients[0].line


def put_right(heard: Heard, memory: Memory) -> tuple[Amendment, Memory] | None:
    """A part of the formula put right, and the memory after it: levain down to 12 then."""
    sheet, recipe = sheet_in_hand(memory), memory.recipe
    if sheet is None or recipe is None or not is_formula(sheet) or memory.asked:
        return None
    said = next((one for sentence in _SENTENCE.split(heard.text) if (one := amended(sheet, sentence))), None)
    if said is None or not said.line:
        return None
    now = with_line(sheet, said)
    question = replace(recipe, recipe=now.text)
    return said, replace(memory, recipe=question, talk=RecipeTalk(sheet=now, question=question, before=recipe))


def weighed_out(heard: Heard, memory: Memory) -> Taken | None:
    """The formula that is talked of for so much dough: 12 loaves, 900 g dough each."""
    asked, sheet, recipe = wanted(heard.text), sheet_in_hand(memory), memory.recipe
    parts = parts_of(sheet) if asked and sheet else []
    if asked is None or recipe is None or not parts or memory.asked or heard.is_refused:
        return None
    here = moved(recipe, memory.request) if memory.request else recipe
    request = replace(settle_in(here, memory.kitchen), text=heard.text)
    weights = weighed(tuple(part for _, part in parts), asked.dough_g)
    lines = [say("part", item=name, grams=number(grams, 1)) for (name, _), grams in zip(parts, weights, strict=True)]
    headline = say(
        "weights", title=recipe.dish or say("dough"), count=asked.count, each=number(asked.each_g, 1),
        parts=listed(lines, "commas"), all=number(asked.dough_g, 1),
    )  # fmt: skip
    kept = replace(after(here, memory), asked=None)
    return told(Answer(request=request, headline=headline)), kept


def alone(heard: Heard, memory: Memory, amendment: Amendment) -> Taken:
    """The reply to a formula that was put right, where nothing else is said."""
    return made.said(heard.text, say("put-right", line=amendment.line), memory, CONVERT), memory
