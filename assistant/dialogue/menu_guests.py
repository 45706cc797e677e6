"""Guests of a plan who eat otherwise: those who get no wheat, and those who want their meat done through."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from assistant.dialogue.heard import Heard
from assistant.dialogue.memory import Memory
from assistant.dialogue.plans import dishes_of, with_dishes
from assistant.reading.tokens import norms
from assistant.understanding import menu_parts, menu_said
from assistant.understanding.cue_words import cues, said
from rules.amounts.eaters import is_of_meat
from rules.model import PLACE_SLOTS, Kitchen, Request
from rules.said import Words, listed, sentences
from rules.topics.schedule.menu import name_of

say = sentences("dialogue/menu")

NO_WHEAT, WELL_DONE, NAMES = (cues("menu_turns", name) for name in ("no_wheat", "well_done", "wheat_names"))
# what is made with wheat flour as a rule, and what often is thickened with it
OF_WHEAT = frozenset((
    "pasta", "noodle", "dumpling", "souffle", "layer_cake", "foam_cake", "pound_cake", "quick_bread", "biscuit",
    "cookie", "brownie", "yeast_bread", "flatbread", "laminated", "pizza", "pie", "choux", "cheesecake",
    "fried_dough", "battered",
))  # fmt: skip
MAY_BE = frozenset(("sauce", "soup", "mixed_stew", "casserole", "sausage", "ground_meat", "cured_meat", "stock"))
LONGEST = 16


def notes(heard: Heard, memory: Memory, every: tuple[Request, ...]) -> tuple[Words, ...]:
    """What the guests who eat otherwise are served of a plan; empty where none are spoken of."""
    words = norms(heard.doc)
    if len(words) > LONGEST or menu_parts.mentions(heard.doc):
        return ()
    meat = [one for one in every if is_of_meat(one)]
    through = (say("well-done", food=listed(name_of(one) for one in meat)),) if meat and said(words, WELL_DONE) else ()
    return (*through, *(without_wheat(every) if said(words, NO_WHEAT) else ()))


def dish_of_meatless(heard: Heard, plan: Request) -> tuple[Request, Request] | None:
    """The plan with a dish for those who eat no meat, and the question how much of it they want; None without one."""
    new = [m for m in menu_parts.mentions(heard.doc) if menu_parts.known_at(m, dishes_of(plan)) is None]
    count = menu_said.covers(heard.doc, plan.portions, in_focus=False)
    if len(new) != 1 or count.meatless is None or count.all is not None or not plan.portions or heard.doc._.clock:
        return None
    one = menu_parts.told(new[0], Kitchen(units=plan.units), plan.units)
    held: dict[str, Any] = {slot: getattr(plan, slot) for slot in (*PLACE_SLOTS, "units")}
    about = replace(one, topic="order", text=heard.text, portions=count.meatless, **held)
    return replace(with_dishes(plan, (*dishes_of(plan), one)), meatless=count.meatless), about


def without_wheat(every: tuple[Request, ...]) -> tuple[Words, ...]:
    """Which dishes hold wheat flour, which may, and how the rest is kept apart from them."""
    sure = [one for one in every if is_of_wheat(one)]
    maybe = [one for one in every if one not in sure and (one.dish_class in MAY_BE or one.dish is None)]
    holds = (say("wheat", foods=listed(name_of(one) for one in sure)),) if sure else (say("no-wheat-known"),)
    may = (say("wheat-maybe", foods=listed(name_of(one) for one in maybe)),) if maybe else ()
    return (*holds, *may, say("wheat-apart"))


def is_of_wheat(one: Request) -> bool:
    """Whether a dish holds wheat flour as it is commonly made, by its class or the words of its name."""
    return one.dish_class in OF_WHEAT or said((one.dish or "").split(), NAMES)
