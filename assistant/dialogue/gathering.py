"""A recipe told in pieces: how many lines there are so far, and the conversion once it is whole."""

from __future__ import annotations

from dataclasses import replace

from assistant.dialogue import made
from assistant.dialogue.heard import Heard
from assistant.dialogue.memory import Memory, moved
from assistant.dialogue.moves import words as words_of
from assistant.dialogue.thread import after
from assistant.dialogue.workbench import RecipeTalk
from assistant.errors import AssistantError
from assistant.recipes.amended import amended, with_correction, with_line
from assistant.recipes.dictated import Dictated, added, among_lines, as_title, dictated, ends_it, listed
from assistant.recipes.sheet import Sheet, sheet_of
from assistant.understanding.conversation import merge, settle_in
from assistant.understanding.cue_words import said as said_among
from assistant.understanding.request import Hearing
from assistant.understanding.utterance import listen
from assistant.worked_out import WorkedOut, work_out
from rules.catalogue import marked
from rules.model import PLACE_SLOTS, Request
from rules.said import Words, sentences, yes

say = sentences("dialogue/gathering")
OF_KITCHEN = "set_kitchen"
CONVERT, RECIPE = "convert_recipe", "recipe"
# told at once, so many ingredients are a recipe and are not waited with
A_RECIPE = 4
# told behind a conversion, so many are a recipe of their own
A_NEW_ONE = 3
Taken = tuple[WorkedOut, Memory]


def gathered(heard: Heard, memory: Memory) -> Taken | None:
    """What comes of an utterance that tells lines of a recipe, or says that it is whole; None for any other."""
    talk = memory.talk
    if heard.is_refused or memory.asked not in (None, RECIPE):
        return None
    said = words_of(heard.text)
    if talk and talk.open:
        return _going_on(heard, memory, talk, said)
    told = dictated(heard.text)
    begins = "\n" not in heard.text and said_among(said.split(), listed("begins"))
    if begins and not told.has_lines:
        # the first line may stand behind all that is said of the place: here goes: 200 g sugar
        told = dictated(heard.text.rpartition(":")[2])
    if begins or memory.asked == RECIPE:
        return _begun(heard, memory, told, begins=begins)
    if in_hand(memory) and is_another(heard, told, sheet_in_hand(memory) or Sheet()):
        return _another(heard, memory, told)
    if told.has_lines and in_hand(memory) and is_addition(heard, memory, told, said):
        return _further(heard, memory, told)
    return _unasked(heard, memory, told)


def in_hand(memory: Memory) -> Request | None:
    """The recipe that is talked of, where the last question was about it, at the place of the last question."""
    last, recipe = memory.request, memory.recipe
    if recipe is None or last is None or not (last.topic == CONVERT or last.recipe):
        return None
    return moved(recipe, last)


def sheet_in_hand(memory: Memory) -> Sheet | None:
    """The lines of the recipe that is talked of; None where there is none, or it cannot be read."""
    recipe = memory.recipe
    if recipe is None or not recipe.recipe:
        return None
    if memory.talk and memory.talk.sheet.text == recipe.recipe:
        return memory.talk.sheet
    try:
        return sheet_of(recipe.recipe)
    except AssistantError:
        return None


def is_addition(heard: Heard, memory: Memory, told: Dictated, said: str) -> bool:
    """Whether lines go on with the recipe that is talked of, and are no new one."""
    if amended(sheet_in_hand(memory) or Sheet(), heard.text):
        return False
    left_out = bool(told.of("part")) or said_among(said.split(), listed("adds"))
    few = len(told.of("ingredient")) < A_NEW_ONE and "\n" not in heard.text
    steps_alone = not told.of("ingredient")
    asks = bool(heard.hearing.request.forms) and "?" in heard.text
    return not asks and (left_out or ((few or steps_alone) and not told.around))


def _going_on(heard: Heard, memory: Memory, talk: RecipeTalk, said: str) -> Taken | None:
    """A turn while lines are awaited: the end, a title, further lines, how far it is; a question is left to others."""
    if is_whole(said) or said_among(said.split(), listed("write_out")):
        return _closed(heard.text, memory, talk)
    if said in listed("dropped") or (heard.move and heard.move.id == "drop"):
        return made.said(heard.text, say("dropped"), memory), replace(memory, talk=None)
    if said in listed("progress"):
        return _so_far(heard.text, memory, talk, read=True), memory
    if heard.move:
        return None
    if taken_back := with_correction(talk.sheet, heard.text):
        talk = replace(talk, sheet=taken_back[0])
        return _told(heard.text, memory, talk, say("put-right", line=taken_back[1], out=yes(False))), _keeping(
            memory, talk
        )
    amendment = amended(talk.sheet, heard.text)
    if amendment:
        told_so = say("put-right", line=amendment.line or amendment.was, out=yes(not amendment.line))
        talk = replace(talk, sheet=with_line(talk.sheet, amendment))
        return _told(heard.text, memory, talk, told_so), _keeping(memory, talk)
    told = among_lines(dictated(heard.text)) if talk.sheet.ingredients else dictated(heard.text)
    if is_another(heard, told, talk.sheet):
        return _another(heard, memory, told)
    if told.has_lines or told.of("makes", "part", "heading"):
        return _with_lines(heard, memory, talk, told)
    title = as_title(heard.text)
    if title and not talk.sheet.title and not talk.sheet.steps:
        titled = replace(talk, sheet=replace(talk.sheet, title=title), question=_named(talk.question, heard))
        return _waits(heard.text, memory, titled)
    here = heard.hearing.request
    if here.elevation_m is not None and here.dish is None and here.topic in marked("of_a_recipe"):
        return _waits(heard.text, memory, replace(talk, question=_placed(talk.question, heard.hearing)))
    return None


def is_whole(said: str) -> bool:
    """Whether plain words say that the recipe is told to its end: that's it, what do I change.

    >>> is_whole("thats it what do i change"), is_whole("ok whole thing back with the changes"), is_whole("2 eggs")
    (True, True, False)
    """
    if said in listed("done"):
        return True
    rest, found = f" {said} ", False
    for phrase in sorted(listed("done_with"), key=len, reverse=True):
        if f" {phrase} " in rest:
            rest, found = rest.replace(f" {phrase} ", " "), True
    return found and set(rest.split()) <= set(listed("done_fillers"))


def is_another(heard: Heard, told: Dictated, sheet: Sheet) -> bool:
    """Whether the lines are a recipe of their own behind another one: they are of another dish, and so many."""
    dish = heard.hearing.request.dish
    other = dish is not None and dish not in sheet.title.casefold() and dish in heard.text.casefold().split(":")[0]
    many = len(told.of("ingredient")) >= A_RECIPE and bool(told.around)
    return bool(sheet.ingredients) and other and many and "\n" not in heard.text


def _another(heard: Heard, memory: Memory, told: Dictated) -> Taken | None:
    """A recipe of its own behind another one, at the place of the last question unless one is told with it."""
    now, last = heard.hearing.request, memory.request
    base = Request(topic=CONVERT, units=last.units if last else now.units, text=heard.text)
    if last:
        base = replace(base, **{slot: getattr(last, slot) for slot in PLACE_SLOTS})
    sheet = Sheet(title=(now.dish or "").title())
    question = replace(base, dish=now.dish, dish_class=now.dish_class)
    return _with_lines(heard, memory, RecipeTalk(sheet=sheet, question=_placed(question, heard.hearing)), told)


def _named(question: Request, heard: Heard) -> Request:
    """The question with the dish that a title names."""
    now = heard.hearing.request
    return replace(question, dish=now.dish, dish_class=now.dish_class) if now.dish else question


def _placed(question: Request, hearing: Hearing) -> Request:
    """The question with the place, baseline and units that were said with the lines."""
    laid = merge(question, replace(hearing, elliptical=True))
    slots = (*PLACE_SLOTS, "from_elevation_m", "units")
    return replace(question, **{slot: getattr(laid, slot) for slot in slots})


def _begun(heard: Heard, memory: Memory, told: Dictated, *, begins: bool) -> Taken | None:
    """The first lines of a recipe that was asked for, or that somebody sets out to tell line by line."""
    last = memory.request
    base = last if last and last.topic == CONVERT else Request(topic=CONVERT, units=memory.kitchen.units)
    if last and last.topic != CONVERT:
        base = replace(base, **{slot: getattr(last, slot) for slot in (*PLACE_SLOTS, "units")})
    if base.recipe and not begins:
        return None
    talk = RecipeTalk(question=replace(base, recipe="", text=heard.text, choices=(), subject=None), open=True)
    if not begins and "\n" in heard.text and heard.hearing.request.recipe:
        return None
    if told.has_lines:
        at = replace(talk, question=_placed(talk.question, heard.hearing)) if begins else talk
        return _with_lines(heard, memory, at, told)
    if begins:
        now = heard.hearing.request
        dish = now.dish.title() if now.dish else ""
        talk = replace(talk, sheet=Sheet(title=dish), question=_named(_placed(talk.question, heard.hearing), heard))
        return made.said(heard.text, say("ready"), memory, CONVERT), _keeping(memory, talk)
    title = as_title(heard.text)
    titled = title and heard.move is None and heard.hearing.request.elevation_m is None
    if not titled or heard.hearing.request.small_talk or told.of("makes"):
        return None
    return _waits(heard.text, memory, replace(talk, sheet=Sheet(title=title), question=_named(talk.question, heard)))


def _unasked(heard: Heard, memory: Memory, told: Dictated) -> Taken | None:
    """Lines of a baker's formula at the very beginning, without a word around them: a recipe begins."""
    last, now = memory.request, heard.hearing.request
    if last and last.topic not in (CONVERT, OF_KITCHEN, *marked("of_nothing")):
        return None
    unheard = now.topic in marked("of_nothing") and len(told.of("ingredient")) >= A_NEW_ONE
    bare = not told.around and now.forms in ((), ("bare",)) and not (now.dish and now.elevation_m is not None)
    if now.recipe or not told.of("ingredient") or not (bare or unheard) or "?" in heard.text:
        return None
    if not unheard and not all(map(_of_a_formula, told.of("ingredient"))):
        return None
    base = Request(topic=CONVERT, units=now.units, text=heard.text)
    if last:
        base = replace(base, **{slot: getattr(last, slot) for slot in (*PLACE_SLOTS, "units")})
    return _with_lines(heard, memory, RecipeTalk(question=base, open=True), told)


def _of_a_formula(line: str) -> bool:
    from assistant.recipes.lines import read_line

    read = read_line(line)
    return read is not None and read.role in ("flour", "sugar", "leavening", "yeast", "fat", "salt")


def _further(heard: Heard, memory: Memory, told: Dictated) -> Taken | None:
    """Lines that come after the conversion: they are added, and the whole is converted again."""
    sheet, recipe = sheet_in_hand(memory), in_hand(memory)
    if sheet is None or recipe is None:
        return None
    talk = RecipeTalk(sheet=replace(sheet, part=""), question=recipe, before=recipe)
    return converted(heard.text, memory, replace(talk, sheet=added(talk.sheet, told)))


def _with_lines(heard: Heard, memory: Memory, talk: RecipeTalk, told: Dictated) -> Taken | None:
    """The lines put down; converted at once where a step ends the recipe, else how many there are."""
    question = replace(talk.question, units=heard.hearing.units or talk.question.units)
    sheet = talk.sheet
    if told.around:
        around = listen(told.around, memory.kitchen).hearing
        question = _placed(question, around)
        named = around.request.dish
        if named and not sheet.title:
            sheet = replace(sheet, title=named.title())
            question = replace(question, dish=named, dish_class=around.request.dish_class)
    fresh = not talk.sheet.ingredients
    talk = replace(talk, question=question, sheet=added(sheet, told))
    whole = any(ends_it(step.casefold()) for step in told.of("step")) and talk.sheet.ingredients
    at_once = fresh and len(told.of("ingredient")) >= A_RECIPE
    if whole or at_once:
        return converted(heard.text, memory, replace(talk, open=False))
    return _waits(heard.text, memory, talk)


def _closed(text: str, memory: Memory, talk: RecipeTalk) -> Taken:
    """The recipe converted as it stands; one without an ingredient is waited for."""
    if not talk.sheet.ingredients:
        return made.said(text, say("no-lines"), memory, CONVERT), memory
    return converted(text, memory, replace(talk, open=False))


def converted(text: str, memory: Memory, talk: RecipeTalk) -> Taken:
    """The recipe of a talk, converted."""
    return answered(replace(talk.question, recipe=talk.sheet.text, text=text), memory, talk)


def answered(question: Request, memory: Memory, talk: RecipeTalk) -> Taken:
    """The answer to a question about a whole recipe, and the memory after it."""
    question = replace(question, topic=CONVERT, subject=None, method=None, choices=(), small_talk=None)
    reply = work_out(settle_in(question, memory.kitchen))
    asked = next(iter(reply.missing), None)
    return reply, replace(after(question, memory), asked=asked, talk=replace(talk, question=question))


def _waits(text: str, memory: Memory, talk: RecipeTalk) -> Taken:
    return _so_far(text, memory, talk), _keeping(memory, talk)


def _keeping(memory: Memory, talk: RecipeTalk) -> Memory:
    """The memory while lines are awaited: nothing is asked, and the question is where it will be cooked."""
    return replace(memory, talk=talk, asked=None, request=talk.question)


def _so_far(text: str, memory: Memory, talk: RecipeTalk, *, read: bool = False) -> WorkedOut:
    """How many lines there are; read out where that was asked."""
    count = talk.sheet.count
    if not read:
        told = say("so-far", count=count) if count else say("titled", title=talk.sheet.title)
    else:
        lines = (talk.sheet.title, *(e.line for e in talk.sheet.ingredients), *(e.line for e in talk.sheet.steps))
        told = say("read-out", lines="; ".join(line.rstrip(".") for line in lines if line))
    return _told(text, memory, talk, told)


def _told(text: str, memory: Memory, talk: RecipeTalk, headline: Words) -> WorkedOut:
    """A sentence about the recipe so far, under the place it will be made at."""
    reply = made.said(text, headline, memory, CONVERT)
    request = replace(settle_in(talk.question, memory.kitchen), text=text)
    return replace(reply, request=request, word=lambda: replace(reply.answer, request=request))
