"""A refusal in its conversation: the question that it was of, and what of a later turn goes on with it."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from assistant.dialogue.heard import Heard
from assistant.dialogue.memory import Memory, moved
from assistant.reading.tokens import norms
from assistant.understanding.corrected import takes_back
from assistant.understanding.cue_words import said
from assistant.understanding.danger import foods_of
from assistant.understanding.hazards import Hazard, hazard_of
from assistant.understanding.pressing import ADDED, BOILED, FREEZE, INSTEAD, PRESSURES
from assistant.understanding.request import Hearing
from assistant.understanding.scene import Refusal, Scene, dishes_named, kind
from rules.catalogue import marked
from rules.foods.dishes import dishes
from rules.model import PLACE_SLOTS, Request

# what is said anew of the question that was refused, in the place of what was said before
SAID_ANEW = ("jars", "packing", "place")
# figures of what was refused, which hold for nothing that comes after it
FIGURES: dict[str, Any] = dict.fromkeys(
    ("time_min", "time_high_min", "planned_min", "temperature_c", "temperature_of", "gauge_pa")
)
KITCHEN, CANNING = "kitchen", "canning"
# what is asked of a place beside what was refused, and of jars
PLACE = "boiling_point"
PRESERVE = "preserve"
TIME = "time"
TROUBLE, DRIED, DRY = "troubleshoot", "dried_bean", "dry"
# kinds of concepts that stand when a question is taken back
STANDING = ("person", "place")
ASKS_A_FIGURE = frozenset(("how_long", "how_hot", "how_much"))


def question_pressed(heard: Heard, memory: Memory) -> Request | None:
    """The question that was refused, as an utterance goes on with it; None where it puts one of its own.

    What was said of food, jars and place stands, but for what is said anew.
    """
    taken, now = heard.listened.pressing, heard.hearing.request
    if taken is None or taken.stance == "apart":
        return None
    base, named = refused_of(taken.refusal, memory), dishes_named(heard.doc)
    # what a splash of vinegar would make of it is no other food
    other = bool(named) and taken.how != ADDED
    if base is None or (other and base.dish not in named):
        return None
    anew = {slot: getattr(now, slot) for slot in SAID_ANEW if getattr(now, slot)}
    if now.elevation_m is not None or now.pressure_pa is not None:
        anew |= {slot: getattr(now, slot) for slot in PLACE_SLOTS}
    return replace(base, text=now.text, units=heard.hearing.units or base.units, **anew)


def of_its_food(heard: Heard, question: Request, hazard: Hazard) -> Request:
    """A question about the food that makes the danger, where the utterance names another dish beside it."""
    foods = foods_of(heard.doc, hazard)
    if not foods or question.dish in foods:
        return question
    return replace(question, dish=foods[0], dish_class=dishes()[foods[0]].dish_class)


def refused_of(refusal: Refusal, memory: Memory) -> Request | None:
    """The question that was refused: the last one about its food, else the last of all."""
    questions = (*memory.earlier, *((memory.request,) if memory.request else ()))
    return next((q for q in reversed(questions) if q.dish in refusal.dishes), memory.request)


def remembered(question: Request, hazard: Hazard) -> Request:
    """A question that was refused, without its figures; one of jars stays one of jars; dry beans have not dried out."""
    if hazard.family == CANNING and question.dish is not None and question.topic != PRESERVE:
        question = replace(question, topic=PRESERVE, subject=None)
    elif question.topic == TROUBLE and question.dish_class == DRIED and question.subject in (None, DRY):
        question = replace(question, topic=TIME, subject=None)
    return replace(question, **FIGURES)


def forgotten(heard: Heard, memory: Memory) -> Memory:
    """The memory without what was refused, where the cook takes it back and turns to another food.

    Who eats and where stands; the talk goes on with the last question that was not refused, else with how long.
    """
    last, named = memory.request, set(dishes_named(heard.doc))
    refused = {dish for one in memory.scene.refused for dish in one.dishes}
    if last is None or not memory.scene.refused or not named - refused or named & refused or not takes_back(heard.text):
        return memory
    before = next((q for q in reversed(memory.earlier) if q.dish not in refused and q.topic != PRESERVE), None)
    plain = Request(topic=TIME, units=last.units, depth=last.depth)
    question = moved(before, last) if before else replace(plain, **{slot: getattr(last, slot) for slot in PLACE_SLOTS})
    stands = tuple(c for c in memory.scene.concepts if kind(c) in STANDING)
    held = memory.scene
    scene = Scene(stands, elevation_m=held.elevation_m, celsius=held.celsius, allergens=held.allergens)
    return replace(memory, request=question, before=None, asked=None, scene=scene)


def let_go(heard: Heard, memory: Memory) -> Memory:
    """The memory where another vessel took the place of the one that was refused: the method goes with the vessel."""
    taken, last = heard.listened.pressing, memory.request
    if taken is None or not taken.elsewhere or last is None or _names(heard, "method"):
        return memory
    return replace(memory, request=replace(last, method=None))


def asks_instead(heard: Heard) -> bool:
    """Whether it is asked, or told, what to do in the place of what was refused, and nothing more is asked."""
    taken, now = heard.listened.pressing, heard.hearing.request
    if taken is None or taken.how not in (INSTEAD, FREEZE, BOILED) or heard.listened.hazard:
        return False
    if now.dish is not None and now.dish not in taken.refusal.dishes:
        return False
    if taken.how == BOILED:
        return not dishes_named(heard.doc)
    plain = now.topic == PRESERVE and now.subject is None and ASKS_A_FIGURE.isdisjoint(now.forms)
    return plain or (now.topic in marked("of_nothing") and not now.small_talk)


def _names(heard: Heard, *kinds: str) -> bool:
    """Whether an utterance itself names a thing of some kinds."""
    return any(found.kind in kinds for found in heard.doc._.found)


def goes_on(heard: Heard, question: Request, memory: Memory) -> Hazard | None:
    """What was refused, where the question that an utterance puts is the refused one with little changed.

    question: the utterance, with what it goes on with
    """
    danger = memory.scene.danger
    if danger is None or heard.hearing.request.subject or _names(heard, "dish", "method"):
        return None
    if said(norms(heard.doc), PRESSURES):
        # the pressure of a canner is told anew
        return None
    if hazard_of(danger).family == KITCHEN and not heard.hearing.elliptical:
        # the fire is out, and the food is asked about
        return None
    refusal = next((one for one in reversed(memory.scene.refused) if one.hazard == danger), None)
    base = refused_of(refusal, memory) if refusal else None
    if base is None or memory.request is None or base.dish != memory.request.dish:
        return None
    same = (question.dish, question.method, question.topic) == (base.dish, base.method, base.topic)
    return hazard_of(danger) if same else None


def of_the_place(hearing: Hearing, question: Request) -> Request | None:
    """The question of another place that is told of beside what was refused; None where none is."""
    now = hearing.request
    if now.elevation_m is None:
        return None
    place = {slot: getattr(now, slot) for slot in PLACE_SLOTS}
    return replace(Request(topic=PLACE, text=now.text, units=question.units, depth=question.depth), **place)
