"""Follow-ups: each utterance is heard by itself and laid over what the conversation has said so far."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import TYPE_CHECKING, Any

from spacy.tokens import Doc

from assistant.reading.text import clean
from assistant.understanding import temperatures
from assistant.understanding.pipeline import read
from assistant.understanding.request import PASSING, Hearing, capped, hear
from rules.foods.dishes import dishes
from rules.model import Kitchen, Request
from rules.physics.units import to_f

if TYPE_CHECKING:
    from assistant.recipes.pasted import Pasted

LONGEST_CONTEXT = 20
SAME_F = 1.0
# a recipe comes in lines, behind a colon, or machine-made
RECIPE_SIGNS = ("\n", ":", "{", "[", "<")
# what a recipe without a word around it asks for
CONVERT = "convert this recipe"
# topics that an utterance of mere slots does not go on with
NOT_CONTINUED = (*PASSING, "set_kitchen", "timer")
# new questions that are still about the dish of the question before
SAME_DISH = ("time", "temperature", "doneness", "order", "schedule", "troubleshoot", "pressure", "why", "timer")
# what turns the question before into another one when it is said by itself: make it by 6 pm
TURNS_TO = (("service_time", ("time", "temperature"), "schedule"),)
SLOTS_OF_A_DISH = (
    "time_min",
    "time_high_min",
    "temperature_c",
    "temperature_of",
    "quantity",
    "portions",
    "gauge_pa",
    "service_time",
    "covered",
    "soaked",
)
PLACE_SLOTS = ("elevation_m", "elevation_from", "pressure_pa")


def fold_in(text: str, context: Sequence[str], kitchen: Kitchen) -> Request:
    """Understand a text after the utterances before it, and take from the kitchen what nobody said."""
    request: Request | None = None
    for earlier in tuple(context)[-LONGEST_CONTEXT:]:
        request = remember(request, listen(str(earlier), kitchen))
    return settle_in(merge(request, listen(str(text), kitchen)), kitchen)


def listen(text: str, kitchen: Kitchen) -> Hearing:
    """What one utterance says by itself; of a very long one the beginning, and a note that says so.

    A recipe pasted into it is set apart, and only what is said around it is heard.
    """
    found = _pasted(text)
    if found is None:
        return _listen(text, kitchen)
    around = _listen(found.question or CONVERT, kitchen)
    request = replace(around.request, text=text, recipe=found.recipe)
    if around.elliptical:
        request = replace(request, topic="convert_recipe", method=None)
    return replace(around, elliptical=False, request=request)


def spoken(text: str) -> str:
    """What is said around a recipe that was pasted, or the whole text where there is none."""
    found = _pasted(text)
    return found.question if found else text


def _pasted(text: str) -> Pasted | None:
    """The recipe in a text; the reader of recipes is imported only where a text can hold one."""
    if not any(sign in text for sign in RECIPE_SIGNS):
        return None
    from assistant.recipes.pasted import pasted

    return pasted(text)


def _listen(text: str, kitchen: Kitchen) -> Hearing:
    cleaned = clean(text)
    doc = read(cleaned.text)
    hearing = hear(doc, kitchen)
    kept = text[: len(cleaned.text) + 1] if cleaned.dropped else text
    request = replace(capped(hearing.request, cleaned.dropped), text=kept, temperature_of=temperature_of(doc, hearing))
    return replace(hearing, request=request)


def temperature_of(doc: Doc, hearing: Hearing) -> str | None:
    """What the temperature of a request is of, where the words tell: core, oven, bath and so on."""
    asked_c = hearing.request.temperature_c
    if asked_c is None:
        return None
    return next((said.role for said in temperatures.said(doc) if abs(said.temp_f - to_f(asked_c)) < SAME_F), None)


def remember(previous: Request | None, heard: Hearing) -> Request | None:
    """What later utterances are laid over: thanks, greetings and the like leave it as it was."""
    return previous if heard.request.topic in PASSING and not heard.elliptical else merge(previous, heard)


def merge(previous: Request | None, heard: Hearing) -> Request:
    """Lay an utterance over the request before it.

    An elliptical utterance goes on with the question before; a whole question keeps the place, and the dish where
    it names none but needs one. What is said anew always wins.
    """
    now = heard.request
    units = heard.units or (previous.units if previous else None)
    stated: dict[str, Any] = {"units": units} if units else {}
    if heard.depth:
        stated["depth"] = heard.depth
    if previous is None:
        return replace(now, **stated)
    goes_on = heard.elliptical and previous.topic not in NOT_CONTINUED
    if previous.topic == "bake_adjust" and (goes_on or heard.changes_a_bake):
        goes_on, dish = True, heard.dish_of_a_bake
        now = replace(now, dish=dish, dish_class=dishes()[dish].dish_class if dish else None)
    if goes_on:
        turned = (to for slot, topics, to in TURNS_TO if previous.topic in topics and getattr(now, slot))
        stated["topic"] = next(turned, previous.topic)
        stated["subject"] = heard.subject_for(stated["topic"]) or now.subject or previous.subject
        if previous.portions and heard.plain and now.portions is None and heard.plain >= 1:
            now = replace(now, portions=int(heard.plain))
    if goes_on or (now.topic == previous.topic and now.dish in (None, previous.dish)):
        stated["recipe"] = now.recipe or previous.recipe
    about_it = goes_on or (now.dish is None and now.dish_class is None and now.topic in SAME_DISH)
    if about_it:
        stated |= _dish(previous, now)
        if goes_on or now.topic == previous.topic or previous.topic in ("time", "temperature"):
            same = stated.get("dish") == previous.dish
            keep = SLOTS_OF_A_DISH if same else ("portions", "service_time")
            stated |= {slot: getattr(previous, slot) for slot in keep if getattr(now, slot) is None}
    return replace(now, **(_place(previous, now, goes_on) | stated))


def _dish(previous: Request, now: Request) -> dict[str, Any]:
    """Dish and method of the question before, as far as they are not said anew and go together."""
    if now.dish or now.dish_class:
        usual = dishes()[now.dish].methods if now.dish else (previous.method,)
        return {"method": now.method or (previous.method if previous.method in usual else None)}
    unknown = tuple(u for u in previous.unused if u.kind == "dish")
    return {
        "dish": previous.dish,
        "dish_class": previous.dish_class,
        "method": now.method or previous.method,
        "unused": (*unknown, *now.unused),
    }


def _place(previous: Request, now: Request, goes_on: bool) -> dict[str, Any]:
    """The elevation said before, unless a new one is; the baseline stays with the question it belongs to."""
    said = now.elevation_m is not None or now.pressure_pa is not None
    doubted = any(u.kind == "elevation" for u in now.unused) and now.elevation_m is None
    place = {} if said or doubted else {slot: getattr(previous, slot) for slot in PLACE_SLOTS}
    doubts = tuple(u for u in previous.unused if u.kind == "elevation")
    if not said and not doubted and previous.elevation_m is None and doubts:
        place["unused"] = (*doubts, *now.unused)
    if now.from_elevation_m is None and (goes_on or now.topic == previous.topic):
        place["from_elevation_m"] = previous.from_elevation_m
    return place


def settle_in(request: Request, kitchen: Kitchen) -> Request:
    """Take from the kitchen what nobody said: elevation, barometer, units, equipment, thermometer."""
    known: dict[str, Any] = {
        "equipment": tuple(dict.fromkeys((*request.equipment, *kitchen.equipment))),
        "thermometer_offset_c": kitchen.thermometer_offset_c,
    }
    doubted = any(u.kind == "elevation" for u in request.unused)
    if request.elevation_m is None and kitchen.elevation_m is not None and not doubted:
        known |= {"elevation_m": kitchen.elevation_m, "elevation_from": "kitchen"}
        if request.pressure_pa is None:
            known["pressure_pa"] = kitchen.pressure_pa
    return replace(request, **known)
