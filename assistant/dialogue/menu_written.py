"""A menu that is pasted or read out in talk: a line a dish, or a list behind a word for it -> a plan to be ordered or
worked back.

It is read as `simmerline order` reads a file; what is said around it tells the covers, the service and what is wanted.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cache
from typing import TYPE_CHECKING, Any

from assistant.dialogue.heard import Heard, spoken_in
from assistant.dialogue.memory import Memory
from assistant.dialogue.moves import words as words_of
from assistant.dialogue.plans import PLAN, as_service, of_place, with_dishes
from assistant.dialogue.tonight import covers_said
from assistant.reading.reader import hear
from assistant.reading.words import cut
from assistant.understanding import lexicon
from assistant.understanding.cue_words import cues
from assistant.understanding.utterance import listen
from rules import tables
from rules.amounts.portion import PORTION
from rules.foods.dishes import dishes
from rules.model import PLACE_SLOTS, Quantity, Request, Unused

if TYPE_CHECKING:
    from assistant.planning.menu import Menu, MenuLine

LEAST_DISHES = 2
# a text with more lines that are no dish is something else
MOST_OTHERS, MOST_AMOUNTS = 0.5, 0.34
ORDER = "order"
SCHEDULE = "schedule"
# what stands before a list in one line, and how its items are divided
_LEAD = re.compile(r"^(?P<lead>[^:\n]{0,120}):\s+(?P<rest>\S.*)$", re.DOTALL)
_SENTENCES = re.compile(r"(?<=[a-z)%][.?!])\s+|(?<=\d[.?!])\s+(?=[A-Z])")
_ITEMS = re.compile(r"\s*[,;]\s*|\s+/\s+")


@dataclass(frozen=True, slots=True)
class Written:
    """A menu that was told as it is written. wanted: order, schedule, or "" where it is only told"""

    plan: Request
    wanted: str


def wanted(text: str) -> str:
    """What is to be done with a menu, by the words: order or schedule; "" where nothing is said of it.

    >>> wanted("order that for 90"), wanted("can you work it back from 6:30"), wanted("how long for rice")
    ('order', 'schedule', '')
    """
    said = [words_of(line) for line in text.splitlines()]
    found = (what for what in (ORDER, SCHEDULE) if any(p.search(line) for p in _patterns(what) for line in said))
    return next(found, "")


def _led(around: str) -> str:
    """What is to be done with the list that a line leads up to: order for Saturday, ..; schedule for 6:30, .."""
    said = words_of(around)
    return next((what for what in (ORDER, SCHEDULE) if re.search(chat("leads")[what], said)), "")


def written(heard: Heard, memory: Memory) -> Written | None:
    """The menu that an utterance is; None for anything else."""
    if heard.answers_drill or (memory.talk and memory.talk.open):
        return None
    rows, around = _in_lines(heard.text) if "\n" in heard.text.strip() else _in_one_line(heard.text)
    if len(rows) < LEAST_DISHES:
        return None
    from assistant.planning.menu import read_menu

    read = read_menu("\n".join(rows).encode(errors="replace"))
    others = len(read.faults)
    if len(read.lines) < LEAST_DISHES or others > MOST_OTHERS * len(rows) or _is_recipe(rows):
        return None
    return Written(_plan(heard, memory, read, around), wanted(around) or _led(around))


def _in_lines(text: str) -> tuple[list[str], str]:
    """The lines of a menu, and what is said around them."""
    lines = [line.strip() for line in text.splitlines() if line.strip()]
    around = [line for line in lines if _is_said(line)]
    return [line for line in lines if line not in around], "\n".join(around)


def _in_one_line(text: str) -> tuple[list[str], str]:
    """The items of a list behind a word for a menu or for what is wanted of it, and what is said around it."""
    found = _LEAD.match(text.strip())
    if found is None:
        return [], ""
    sentences = _SENTENCES.split(found["rest"])
    told = [sentence for sentence in sentences if _has_dish(sentence)]
    around = "\n".join((found["lead"], *(s for s in sentences if s not in told)))
    named = not set(words_of(found["lead"]).split()).isdisjoint(chat("names"))
    if not (named or wanted(around) or _led(around)):
        return [], ""
    rows: list[str] = []
    for item in (item.strip(" .") for sentence in told for item in _ITEMS.split(sentence)):
        if rows and item and not _has_dish(item):
            rows[-1] = f"{rows[-1]}, {item}"
        elif item:
            rows.append(item)
    return rows, around


def _is_said(line: str) -> bool:
    """Whether a line is what somebody says, and none of a menu."""
    return not _has_dish(line) and (bool(wanted(line)) or line.endswith(("?", ":")))


def _has_dish(text: str) -> bool:
    return any(found.kind == "dish" for found in lexicon.hear(list(cut(text).norms)))


def _is_recipe(rows: Sequence[str]) -> bool:
    """Whether lines begin with amounts as those of a recipe do, or tell how long something is done."""
    amounts = sum(bool(_amount().match(row)) for row in rows)
    times = (m for row in rows for m in hear(row, ("time",)).measures if m.kind == "time")
    return amounts > MOST_AMOUNTS * len(rows) or any(times)


@cache
def _amount() -> re.Pattern[str]:
    units = "|".join(map(re.escape, sorted(chat("amounts"), key=len, reverse=True)))
    return re.compile(rf"^\W*(?:[\d¼½¾⅓⅔./ -]+\s*(?:{units})\b|[\d¼½¾⅓⅔]\s)", re.IGNORECASE)


def _plan(heard: Heard, memory: Memory, read: Menu, around: str) -> Request:
    """The plan that a menu is. around: what stands around it"""
    whole, last = heard.hearing.request, memory.request
    about = listen(around, spoken_in(memory)) if around else None
    said = about.hearing.request if about else Request()
    where = next((one for one in (said, whole, last) if one and one.elevation_m is not None), said)
    served = said if said.service_time or not read.service else _served(read.service, memory)
    covers = said.portions or (covers_said(about.doc) if about else None)
    held: dict[str, Any] = {slot: getattr(where, slot) for slot in PLACE_SLOTS}
    notes = tuple(Unused("menu", "", note) for note in (*read.notes, *read.faults))
    plan = Request(
        topic=PLAN,
        text=heard.text,
        units=whole.units,
        portions=covers or read.covers or memory.tonight.covers,
        service_time=served.service_time or (as_service(about.doc) if about else None),
        service_day=served.service_day,
        ovens=said.ovens,
        unused=(*of_place(where), *notes),
        sets_kitchen=whole.sets_kitchen,
        **held,
    )
    return with_dishes(plan, tuple(map(_dish, read.lines)))


def _served(service: str, memory: Memory) -> Request:
    lead = cues("clock", "meals")[0]
    return listen(f"{lead} at {service}", spoken_in(memory)).hearing.request


def _dish(line: MenuLine) -> Request:
    known = dishes()[line.dish]
    methods = [f.id for f in lexicon.hear(list(cut(line.text).norms)) if f.kind == "method" and f.id in known.methods]
    one = Request(
        topic=PLAN, text=line.text, dish=line.dish, dish_class=known.dish_class, method=next(iter(methods), None),
        portions=line.covers, share=line.share if line.share != 1.0 else None, course=line.course,
    )  # fmt: skip
    return replace(one, quantity=Quantity(line.portion_g, "g"), quantity_of=PORTION) if line.portion_g else one


@cache
def _patterns(what: str) -> tuple[re.Pattern[str], ...]:
    return tuple(map(re.compile, chat(what)))


def chat(name: str) -> Any:
    """The words of a menu in talk, by the name of their list."""
    return tables.read_toml("lexicon/menus.toml")["chat"][name]
