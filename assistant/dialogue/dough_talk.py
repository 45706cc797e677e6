"""A baker's formula in a conversation: held as it is told, put right, and weighed out for so much dough."""

from __future__ import annotations

import re
from dataclasses import replace

from assistant.dialogue.gathering import CONVERT, Taken, answered, sheet_in_hand
from assistant.dialogue.heard import Heard
from assistant.dialogue.memory import Memory, moved
from assistant.dialogue.recipe_talk import noted
from assistant.dialogue.thread import after
from assistant.dialogue.workbench import RecipeTalk
from assistant.reading.text import fold
from assistant.recipes import bakers
from assistant.recipes.amended import Amendment, amended, with_line
from assistant.recipes.bakers import formula, is_leavened, parts_of, wanted
from assistant.recipes.dictated import listed as listed_words
from assistant.recipes.sheet import Entry, Sheet
from assistant.replies.sentences import worded
from assistant.understanding.conversation import settle_in
from assistant.worked_out import told
from rules.baking.dough import weighed
from rules.catalogue import marked
from rules.model import PLACE_SLOTS, Answer, Request
from rules.said import elevation, listed, mass, number, sentences

say = sentences("dialogue/dough_talk")
# what may be awaited while a formula is weighed out or put right
NO_MATTER = (None, "elevation")
LEAVENED, SHORT = "yeast_bread", 10
_SENTENCE = re.compile(r"(?<=[.!?])\s+")


def with_formula(heard: Heard, memory: Memory) -> Memory:
    """The memory with the formula that an utterance tells in bare figures, beside whatever it asks."""
    talk = _formula_talk(heard)
    return replace(memory, recipe=talk.question, talk=talk) if talk else memory


def _formula_talk(heard: Heard) -> RecipeTalk | None:
    now = heard.hearing.request
    sheet = formula(heard.text, now.dish.title() if now.dish else "")
    if sheet is None:
        return None
    place = {slot: getattr(now, slot) for slot in (*PLACE_SLOTS, "from_elevation_m", "units")}
    dish_class = now.dish_class or (LEAVENED if is_leavened(sheet) else None)
    question = Request(topic=CONVERT, recipe=sheet.text, dish=now.dish, dish_class=dish_class, text=heard.text, **place)
    return RecipeTalk(sheet=sheet, question=question)


def outright(heard: Heard, memory: Memory) -> Taken | None:
    """The formula converted, where it is told and nothing else is asked."""
    now = heard.hearing.request
    formulas = now.topic in marked("of_a_formula") | marked("of_nothing")
    # a question behind a formula that was taken for a recipe is about its figures
    asks_else = "?" in heard.text and not now.recipe
    talk = _formula_talk(heard) if formulas and not asks_else and memory.asked in (None, "recipe") else None
    if talk is None:
        return None
    last = memory.request
    if talk.question.elevation_m is None and last is not None:
        place = {slot: getattr(last, slot) for slot in PLACE_SLOTS}
        talk = replace(talk, question=replace(talk.question, **place))
    return answered(talk.question, memory, talk)


def is_formula(sheet: Sheet | None) -> bool:
    """Whether the lines of a recipe are percentages."""
    return sheet is not None and bool(sheet.ingredients) and "%" in sheet.ingredients[0].line


def put_right(heard: Heard, memory: Memory) -> tuple[Amendment, Memory] | None:
    """A part of the formula put right, and the memory after it: levain down to 12 then."""
    sheet, recipe = sheet_in_hand(memory), memory.recipe
    if sheet is None or recipe is None or not is_formula(sheet) or memory.asked not in NO_MATTER:
        return None
    said = next((one for sentence in _SENTENCE.split(heard.text) if (one := amended(sheet, sentence))), None)
    if said is None or not said.line:
        return None
    now = with_line(sheet, said)
    question = replace(recipe, recipe=now.text)
    return said, replace(memory, recipe=question, talk=RecipeTalk(sheet=now, question=question, before=recipe))


def kind_told(heard: Heard, memory: Memory) -> Taken | None:
    """The recipe with the kind of its yeast put right: the yeast is fresh, not instant."""
    sheet, recipe = sheet_in_hand(memory), memory.recipe
    low = fold(heard.text)
    found = re.search(rf"\b(?P<kind>{any_of_words(listed_words('yeast_kinds'))})\b", low)
    if sheet is None or recipe is None or found is None or "yeast" not in low or "?" in heard.text:
        return None
    at = next((i for i, entry in enumerate(sheet.ingredients) if "yeast" in fold(entry.line)), None)
    if at is None or len(low.split()) > SHORT or memory.asked not in NO_MATTER:
        return None
    old = sheet.ingredients[at]
    plain = re.sub(rf"\b(?:{any_of_words(listed_words('yeast_kinds'))})\s+", "", old.line, flags=re.I)
    line = re.sub(r"\byeast\b", f"{found['kind']} yeast", plain, count=1, flags=re.I)
    now = with_line(sheet, Amendment(at, line, old.line))
    here = moved(recipe, memory.request) if memory.request else recipe
    question = replace(here, recipe=now.text, text=heard.text)
    reply, left = answered(question, memory, RecipeTalk(sheet=now, question=question, before=recipe))
    return noted(reply, say("put-right", line=line)), left


def for_flour(heard: Heard, memory: Memory) -> Taken | None:
    """The converted formula in grams, for the flour that is told or was told with it: in grams for 10 kg."""
    sheet, recipe, low = sheet_in_hand(memory), memory.recipe, fold(heard.text)
    told_g = (bakers.flour_g(step.request.text) for step in reversed(memory.past))
    grams = bakers.flour_wanted(low) or next(filter(None, told_g), None)
    asks = any(
        f" {phrase} " in f" {low.strip(' .?!')} " for phrase in (*listed_words("in_grams"), *listed_words("of_flour"))
    )
    if not (sheet and recipe and grams and asks) or not is_formula(sheet) or "%" in low or len(low.split()) > SHORT:
        return None
    from assistant.recipes.recipe_answer import convert
    from rules.recipes.convert import Converted

    here = moved(recipe, memory.request) if memory.request else recipe
    found = convert(settle_in(here, memory.kitchen))
    lines = found.ingredients if isinstance(found, Converted) else ()
    parts = parts_of(replace(sheet, ingredients=tuple(Entry(worded(one.text, here.units)) for one in lines)))
    if not parts or not isinstance(found, Converted):
        return None
    rows = [say("part", item=name, grams=number(part * grams / 100.0, 1)) for name, part in parts]
    place = elevation(found.to_elevation_m)
    headline = say(
        "for-flour", title=recipe.dish or say("dough"), place=place, flour=mass(grams), parts=listed(rows, "commas")
    )
    request = replace(settle_in(here, memory.kitchen), text=heard.text)
    return told(Answer(request=request, headline=headline)), replace(after(here, memory), asked=None)


def any_of_words(words: tuple[str, ...]) -> str:
    """A pattern for any of some words."""
    return "|".join(map(re.escape, words))


def weighed_out(heard: Heard, memory: Memory) -> Taken | None:
    """The formula that is talked of for so much dough: 12 loaves, 900 g dough each."""
    asked, sheet, recipe = wanted(heard.text), sheet_in_hand(memory), memory.recipe
    parts = parts_of(sheet) if asked and sheet else []
    if asked is None or recipe is None or not parts or memory.asked not in NO_MATTER or heard.is_refused:
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
    here = moved(memory.recipe, memory.request) if memory.recipe and memory.request else memory.recipe or Request()
    request = replace(settle_in(here, memory.kitchen), text=heard.text)
    return told(Answer(request=request, headline=say("put-right", line=amendment.line))), memory
