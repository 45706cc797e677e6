"""What is said of the recipe that was converted last: more or less of it, another place, a part, a line put right."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from assistant.dialogue import made
from assistant.dialogue.deeds import Deed, WriteFile, safe_name
from assistant.dialogue.gathering import CONVERT, answered, in_hand, sheet_in_hand
from assistant.dialogue.heard import Heard
from assistant.dialogue.memory import Memory, moved
from assistant.dialogue.moves import words as words_of
from assistant.dialogue.recipe_pans import note_on_pan
from assistant.dialogue.thread import after
from assistant.dialogue.workbench import RecipeTalk
from assistant.recipes.amended import amended, place_of, swapped, with_line
from assistant.recipes.dictated import listed
from assistant.recipes.sheet import Sheet
from assistant.replies.sentences import worded
from assistant.understanding.conversation import settle_in
from assistant.understanding.cue_words import said as said_among
from assistant.worked_out import WorkedOut
from rules.catalogue import marked
from rules.heat.batch_size import BATCH
from rules.model import PLACE_SLOTS, Answer, Quantity, Request
from rules.said import Words, elevation, number, oven, sentences, together, yes
from rules.said import listed as in_a_row

if TYPE_CHECKING:
    from rules.recipes.convert import Converted

say = sentences("dialogue/recipe_talk")
FACTORS = {"whole": 1.0, "half": 0.5, "double": 2.0, "triple": 3.0}
# a number that counts pieces or people, and is no measure
_MEASURED = r"(?:ft|feet|foot|m|metres?|meters?|min|mins|minutes|hours?|g|kg|ml|l|f|c|oz|lb|cups?)"
_COUNT = re.compile(rf"\b(\d{{1,4}})\b(?!\s*{_MEASURED}\b)(?![,.]\d)")
_FOR = re.compile(rf"\bfor (\d{{1,4}})\b(?!\s*{_MEASURED}\b)(?![,.]\d)")
LONGEST, SHORT, SHORTEST = 24, 8, 5


@dataclass(frozen=True, slots=True)
class Told:
    """What comes of it. deed: what is to be done beside"""

    reply: WorkedOut
    memory: Memory
    deed: Deed | None = None


@dataclass(frozen=True, slots=True)
class Said:
    """An utterance about a recipe. question: the recipe at the place of the last question; words: as compared"""

    heard: Heard
    memory: Memory
    question: Request
    words: tuple[str, ...]

    def has(self, *names: str) -> bool:
        """Whether a phrase of one of the lists is among the words."""
        return any(said_among(self.words, listed(name)) for name in names)

    @property
    def talk(self) -> RecipeTalk:
        """The talk, with the recipe as it stands to go back to."""
        sheet = sheet_in_hand(self.memory) or Sheet()
        return RecipeTalk(sheet=sheet, question=self.question, before=self.question)


def recipe_told(heard: Heard, memory: Memory) -> Told | None:
    """What is said of the last recipe; None for an utterance that is about something else."""
    words = tuple(words_of(heard.text).split())
    if heard.is_refused or memory.asked not in (None, CONVERT) or memory.recipe is None or len(words) > LONGEST:
        return None
    if heard.hearing.request.recipe or (memory.talk and memory.talk.open):
        return None
    question = in_hand(memory)
    about = question or (moved(memory.recipe, memory.request) if memory.request else memory.recipe)
    said = Said(heard, memory, about, words)
    ways = (*IN_HAND, *NAMED) if question or _goes_back(said) else NAMED
    return next(filter(None, (way(said) for way in ways)), None)


def _goes_back(said: Said) -> bool:
    """Whether the recipe is spoken of behind a why, or by its name."""
    last, recipe = said.memory.request, said.memory.recipe
    behind = last is not None and last.topic == "why" and bool(said.memory.before and said.memory.before.recipe)
    named = bool(recipe and recipe.dish and said.heard.hearing.request.dish == recipe.dish and said.has("makes"))
    return said.heard.back_to_recipe or behind or named or "recipe" in said.words


def _redone(said: Said, question: Request, sheet: Sheet | None = None, note: Words = "") -> Told:
    """The recipe converted once more. note: what was done to it, said first"""
    talk = said.talk if sheet is None else replace(said.talk, sheet=sheet)
    recipe = question.recipe if sheet is None else sheet.text
    reply, left = answered(replace(question, recipe=recipe, text=said.heard.text), said.memory, talk)
    pan = note_on_pan(said.words)
    note = together(note, pan) if note and pan else note
    return Told(noted(reply, note) if note and not reply.missing else reply, left)


def noted(reply: WorkedOut, note: Words) -> WorkedOut:
    """A reply that says first what was done."""

    def word() -> Answer:
        answer, told = reply.answer, worded(note, reply.request.units)
        headline, text, spoken = (f"{told} {words}" for words in (answer.headline, answer.text, answer.spoken))
        return replace(answer, headline=headline, text=text, spoken=spoken)

    return replace(reply, word=word)


def _one_line(said: Said, headline: Words, units: str | None = None, topic: str = CONVERT) -> Told:
    """A sentence about the recipe, under its place."""
    request = replace(settle_in(said.question, said.memory.kitchen), text=said.heard.text)
    request = replace(request, units=units) if units in ("us", "metric") else request  # type: ignore[arg-type]
    request = replace(request, topic=topic)
    reply = made.said(said.heard.text, headline, said.memory, topic)
    answer = reply.answer
    text = worded(headline, request.units)
    shown = replace(answer, request=request, headline=text, text=text, spoken=text)
    question = replace(said.question, text=said.heard.text)
    return Told(replace(reply, request=request, word=lambda: shown), replace(after(question, said.memory), asked=None))


def _conversion(said: Said) -> Converted | None:
    from assistant.recipes.recipe_answer import convert
    from assistant.replies.recipe.worded import in_words
    from rules.recipes.convert import Converted

    settled = settle_in(said.question, said.memory.kitchen)
    found = convert(settled)
    return in_words(found, settled.units) if isinstance(found, Converted) else None


def written_out(said: Said) -> Told | None:
    """The converted recipe once more, whole."""
    return _redone(said, said.question) if said.has("write_out") and not said.has("write") else None


def rescaled(said: Said) -> Told | None:
    """How much of it, where it is made, or both: half of it, the whole thing at 2,660 m, for 40."""
    now, move = said.heard.hearing.request, said.heard.move
    if move:
        return _by(said, move.factor) if move.id == "scale" else None
    loose = now.topic in marked("of_a_recipe") and (now.dish in (None, said.question.dish) or said.has("makes"))
    if not loose or "kitchen" in said.words or (said.words[:1] in (("why",), ("how",)) and not _counted(said)):
        return None
    question, changed = said.question, False
    factor = next((FACTORS[name] for name in FACTORS if said.has(name)), None)
    if now.elevation_m is not None:
        question = replace(question, **{slot: getattr(now, slot) for slot in (*PLACE_SLOTS,)})
        changed = True
    if factor is not None and now.topic != "time":
        question = replace(question, quantity=Quantity(factor, BATCH), portions=None)
        name = next(name for name in FACTORS if FACTORS[name] == factor)
        return _redone(said, question, note=say("amount", by=name))
    wanted = _counted(said)
    if wanted:
        return _for_so_many(said, question, wanted)
    return _redone(said, question) if changed else None


def _by(said: Said, factor: float) -> Told:
    """So many times what it stands at."""
    question = said.question
    if question.portions:
        many = max(1, round(question.portions * factor))
        return _redone(said, replace(question, portions=many), note=say("so-many", count=many))
    now = factor * (question.quantity.value if question.quantity and question.quantity.unit == BATCH else 1.0)
    name = next((name for name in FACTORS if FACTORS[name] == now), None)
    note = say("amount", by=name) if name else say("times", factor=number(now))
    return _redone(said, replace(question, quantity=Quantity(now, BATCH)), note=note)


def _counted(said: Said) -> int | None:
    """For how many it is wanted."""
    text = " ".join(said.words)
    found = _FOR.search(text)
    return int(found[1]) if found else None


def _makes(said: Said) -> int | None:
    """How many it makes as it stands, where that is said."""
    text = " ".join(said.words)
    for phrase in listed("makes"):
        if f" {phrase} " in f" {text} ":
            found = _COUNT.search(text.split(phrase, 1)[1])
            if found:
                return int(found[1])
    return None


def _for_so_many(said: Said, question: Request, wanted: int) -> Told:
    """The recipe for so many; where it does not say how many it makes, that is asked."""
    sheet, makes = sheet_in_hand(said.memory) or Sheet(), _makes(said)
    if makes:
        sheet = replace(sheet, makes=f"Makes {makes}")
    elif not sheet.makes:
        told = _one_line(said, say("how-many", wanted=wanted))
        return replace(told, memory=replace(told.memory, talk=replace(said.talk, portions=wanted)))
    return _redone(said, replace(question, portions=wanted, quantity=None), sheet, say("so-many", count=wanted))


def yield_told(said: Said) -> Told | None:
    """How many it makes, where that was asked: 16."""
    talk = said.memory.talk
    found = _COUNT.search(" ".join(said.words))
    if not talk or talk.portions is None or not found or len(said.words) > SHORT:
        return None
    sheet = replace(sheet_in_hand(said.memory) or Sheet(), makes=f"Makes {int(found[1])}")
    many = say("so-many", count=talk.portions)
    return _redone(said, replace(said.question, portions=talk.portions, quantity=None), sheet, many)


def put_right(said: Said) -> Told | None:
    """A line put right or taken out."""
    sheet = sheet_in_hand(said.memory)
    amendment = amended(sheet, said.heard.text) if sheet else None
    if sheet is None or amendment is None:
        return None
    note = say("put-right", line=amendment.line) if amendment.line else say("taken-out", line=amendment.was)
    return _redone(said, said.question, with_line(sheet, amendment), note)


def half_swapped(said: Said) -> Told | None:
    """Half of an ingredient as another: and if half the flour was rye?"""
    sheet = sheet_in_hand(said.memory)
    found = swapped(sheet, said.heard.text) if sheet else None
    return _redone(said, said.question, found[0], say("swapped", item=found[1])) if found else None


def undone(said: Said) -> Told | None:
    """The recipe as it was before the last change."""
    talk = said.memory.talk
    if not talk or talk.before is None or talk.before == talk.question:
        return None
    if not (said.has("undo") and len(said.words) <= SHORTEST) and not _forgets(said, talk.before):
        return None
    now = said.heard.hearing.request
    place = {slot: getattr(now, slot) for slot in PLACE_SLOTS} if now.elevation_m is not None else {}
    before = replace(talk.before, text=said.heard.text, **place)
    here = replace(said, question=before, memory=replace(said.memory, talk=None, recipe=before))
    return _redone(here, before, note=say("undone"))


def _forgets(said: Said, before: Request) -> bool:
    """Whether what was put in last is to be forgotten, by its name: forget the rye."""
    found = re.search(r"\b(?:forget|scrap|drop|skip) the (\w+)", " ".join(said.words))
    return found is not None and found[1] in said.question.recipe.lower() and found[1] not in before.recipe.lower()


def of_a_part(said: Said) -> Told | None:
    """What changes in one part of it: what changes in the icing."""
    sheet = sheet_in_hand(said.memory)
    part = next((p for p in sheet.parts if p and p.split()[-1] in said.words), None) if sheet else None
    if part is None or not said.has("changes"):
        return None
    found = _conversion(said)
    if found is None:
        return None
    lines = [line for line in found.ingredients if line.line.component == part]
    steps = [step.text for step in found.steps if step.step.component == part and step.text != step.step.text]
    changed = [*(line.text for line in lines if line.changed), *steps]
    place = elevation(found.to_elevation_m)
    if not changed:
        return _one_line(said, say("part-stays", part=part, place=place))
    return _one_line(said, say("part", part=part, place=place, changes=in_a_row(changed, "semicolons")))


def oven_alone(said: Said) -> Told | None:
    """The oven, in the scale that is asked for."""
    scale = "us" if said.has("in_fahrenheit") else "metric" if said.has("in_celsius") else None
    asks = said.has("oven") and said.has("only") and len(said.words) <= SHORT
    if scale is None and not asks:
        return None
    found = _conversion(said)
    if found is None:
        return None
    if found.oven is None:
        return _one_line(said, say("no-oven"))
    place = elevation(found.to_elevation_m)
    same = abs(found.oven.to_c - found.oven.from_c) < 1
    told = say("oven", setting=oven(found.oven.to_c), was=oven(found.oven.from_c), place=place, same=yes(same))
    return _one_line(said, told, scale)


def in_grams(said: Said) -> Told | None:
    """Every ingredient by weight."""
    if not said.has("in_grams") or len(said.words) > SHORT:
        return None
    found = _conversion(said)
    if found is None:
        return None
    title = found.recipe.title or worded(say("the-recipe"), "us")
    rows = in_a_row(tuple(_weighed(found)), "semicolons")
    return _one_line(said, say("grams", title=title, place=elevation(found.to_elevation_m), rows=rows))


def _weighed(found: Converted) -> Iterator[Words]:
    for to in found.ingredients:
        if to.mass_g is None:
            yield to.text
        else:
            yield say("weighed", grams=number(to.mass_g, 1 if to.mass_g < 10 else 0), item=to.line.item)


def why_a_line(said: Said) -> Told | None:
    """Why one ingredient, or the oven, changes or stays."""
    sheet = sheet_in_hand(said.memory)
    if sheet is None or "why" not in said.words[:2]:
        return None
    at, found = place_of(sheet, said.heard.text), _conversion(said)
    if found is None:
        return None
    place = f"ingredient {(at or 0) + 1}"
    of_oven = "oven" in said.words or "hotter" in said.words
    change = next(
        (c for c in found.changes if (c.what == "oven" if of_oven else at is not None and c.at == place)), None
    )
    return _one_line(said, str(change.because), topic="why") if change else None


def how_much_of(said: Said) -> Told | None:
    """How much of one ingredient it takes here: how much sugar now."""
    sheet = sheet_in_hand(said.memory)
    text = " ".join(said.words)
    if sheet is None or not ("how much" in text or "how many" in text) or len(said.words) > SHORT:
        return None
    at, found = place_of(sheet, text), _conversion(said)
    if at is None or found is None or at >= len(found.ingredients):
        return None
    to = found.ingredients[at]
    place = elevation(found.to_elevation_m)
    return _one_line(said, say("line", line=to.text, place=place, same=yes(not to.changed)))


def step_of(said: Said) -> Told | None:
    """How long, or how hot, a step of it is here: how long does it bake."""
    text, now = " ".join(said.words), said.heard.hearing.request
    asks = any(f"how {word}" in text for word in ("long", "hot")) or "what temp" in text
    if not asks or now.dish not in (None, said.question.dish) or len(said.words) > SHORT:
        return None
    verbs = [verb for verb in listed("step_words") if verb.split()[0] in text]
    found = _conversion(said) if verbs else None
    steps = (
        [step.text.rstrip(".") for step in found.steps if verbs[0].split()[0] in step.step.text.lower()]
        if found
        else []
    )
    if not found or not steps:
        return None
    return _one_line(said, say("step", steps=in_a_row(steps, "semicolons"), place=elevation(found.to_elevation_m)))


def to_file(said: Said) -> Told | None:
    """The converted recipe into a file, which whoever holds the conversation writes."""
    if not said.has("write"):
        return None
    from assistant.recipes.recipe_answer import convert
    from assistant.replies.recipe.forms.text import as_text
    from rules.recipes.convert import Converted

    settled = settle_in(said.question, said.memory.kitchen)
    found = convert(settled)
    if not isinstance(found, Converted):
        return None
    named = re.search(r"\b(?:as|to|called|named)\s+([\w-]+\.(?:txt|md))\b", said.heard.text, re.I)
    title = found.recipe.title or "recipe"
    name = safe_name(named[1].rpartition(".")[0]) if named else safe_name(f"{title} {found.to_elevation_m:.0f}m")
    told = _one_line(said, say("no-files"))
    return replace(told, deed=WriteFile(name, as_text(found, settled.units)))


Way = Callable[[Said], Told | None]
# what is taken for the recipe while it is what is talked of, and what names it
IN_HAND: tuple[Way, ...] = (
    written_out, yield_told, undone, half_swapped, put_right, why_a_line, how_much_of, step_of, in_grams,
    oven_alone, rescaled,
)  # fmt: skip
NAMED: tuple[Way, ...] = (to_file, of_a_part)
