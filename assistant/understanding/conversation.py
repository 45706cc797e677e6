"""Follow-ups: an utterance laid over what the conversation has said so far."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from assistant.reading import elevation_mentions, places
from assistant.reading.elevation_mentions import METRIC_BARE
from assistant.reading.reader import hear
from assistant.reading.spans import Elevation
from assistant.understanding.cue_words import cues, said
from assistant.understanding.request import TROUBLE, WHY, Hearing
from assistant.understanding.short_turns import FEWEST, SETTINGS, setting_c
from rules import book
from rules.amounts.makings import share_of
from rules.baking.styles import is_baked
from rules.catalogue import marked, topics
from rules.foods.dishes import dishes
from rules.model import PLACE_SLOTS, Kitchen, Request, Units
from rules.physics.units import M_PER_FT

# an elevation told in metres is a round one of them, and none in feet
ROUND_M, ROUND_FT = 10, 50
BAKED, BATH = "bake", "sous_vide"
BAKING, OVEN = "bake_adjust", "oven"
LIQUID, OF_AN_AMOUNT = "liquid", ("quantity", "quantity_of", "count", "amounts")
BEFORE_COOKING = ("soaking",)
SLOTS_OF_A_DISH = (
    "time_min",
    "time_high_min",
    "temperature_c",
    "temperature_of",
    "quantity",
    "quantity_of",
    "count",
    "portions",
    "course",
    "gauge_pa",
    "service_time",
    "service_day",
    "start_time",
    "slack_min",
    "rest_min",
    "ovens",
    "covered",
    "soaked",
    "frozen",
    "ahead",
    "jars",
    "packing",
    "symptoms_too",
    "wanted_doneness",
    "amounts",
    "equipment",
    "lacking",
    "menu",
    "meatless",
    "size",
    "cut",
    "stuffed",
    "precooked",
)


TIME, TIME_SAID = "time", cues("turning", "time_said")
# figures that may be minutes
SHORTEST_MIN, LONGEST_MIN = 1, 240
# which way it is asked whether a thing goes, and the forms of a question that wants a verdict of it
AGAIN = cues("turning", "again")
SAME, JUDGED, OWN_TIME_JUDGED = "same", ("changes", "is_ok", "can_it"), "is_ok"
# what is not so unless it was said
NOT_UNLESS_SAID = ("frozen", "ahead", "stuffed", "precooked")


def merge(previous: Request | None, heard: Hearing) -> Request:
    """Lay an utterance over the request before it.

    An elliptical utterance goes on with the question before; a whole question keeps the place, and the dish where
    it names none but needs one. What is said anew always wins.
    """
    now = _in_unit_meant(previous, heard) or _in_metres(previous, heard) if previous else heard.request
    units = heard.units or (previous.units if previous else None)
    stated: dict[str, Any] = {"units": now.units if heard.unit_meant else units} if units else {}
    if heard.depth:
        stated["depth"] = heard.depth
    if previous is None:
        return replace(now, **stated)
    goes_on = heard.elliptical and previous.topic not in marked("ends_there") and not _is_of_no_dish(previous, now)
    if heard.elliptical and not goes_on and now.dish and now.topic in marked("of_nothing") | marked("feeding"):
        now = replace(now, topic=TIME, small_talk=None, choices=())
    # an ingredient with its dish and how many is a question of its own; one that is named alone goes on with such a one
    goes_on = (goes_on and not now.ingredient) or _names_another(previous, heard)
    if previous.topic == "bake_adjust" and not now.ingredient and (goes_on or heard.changes_a_bake):
        goes_on, dish = True, heard.dish_of_a_bake
        now = replace(now, dish=dish, dish_class=dishes()[dish].dish_class if dish else None)
    if goes_on:
        turned = (to for slot, to in topics()[previous.topic].turns_to.items() if getattr(now, slot))
        stated["topic"] = next(turned, previous.topic)
        if stated["topic"] != TIME and is_timed_anew(previous, heard):
            stated["topic"] = TIME
        named = None if stated["topic"] == TROUBLE else now.subject
        kept = None if _is_done_with(previous, now) else previous.subject
        stated["subject"] = heard.subject_for(stated["topic"]) or named or kept
        if previous.portions and heard.plain and now.portions is None and heard.plain >= FEWEST:
            now = replace(now, portions=int(heard.plain))
        told_min = _time_told(previous, heard, stated["topic"])
        now = replace(now, time_min=told_min) if told_min else now
        setting = None if now.temperature_c or now.dish or previous.portions else _setting(previous, heard.plain)
        now = replace(now, temperature_c=setting) if setting else now
        stated["nearest"] = now.nearest or previous.nearest
    if goes_on or (now.topic == previous.topic and now.dish in (None, previous.dish)):
        stated["recipe"] = now.recipe or previous.recipe
    of_before = previous.topic == TROUBLE or (now.saving and previous.subject)
    if now.topic == TROUBLE and now.subject is None and of_before:
        stated |= {"topic": previous.topic, "subject": previous.subject}
    again = now.topic == previous.topic and now.topic in marked("keeps_dish")
    nameless = now.dish is None and now.dish_class is None
    bake = now.topic == "bake_adjust" and is_baked(previous.dish_class)
    same_there = _is_same_elsewhere(previous, now)
    about_it = (
        goes_on or heard.of_dish or same_there or (nameless and (again or bake or now.topic in marked("same_dish")))
    )
    if about_it:
        stated |= _dish(previous, now)
        feeding = {now.topic, previous.topic} <= marked("feeding")
        if goes_on or feeding or now.topic == previous.topic or previous.topic in marked("by_method"):
            same = stated.get("dish", now.dish) == previous.dish
            keep: tuple[str, ...] = SLOTS_OF_A_DISH if same else ("portions", "service_time", "service_day")
            keep = keep if same else (*keep, *_amount_of_kind(previous, now))
            if previous.topic == LIQUID and now.portions and not previous.portions:
                # so many people take the place of the amount that was said
                keep = tuple(slot for slot in keep if slot not in OF_AN_AMOUNT)
            stated |= {slot: getattr(previous, slot) for slot in keep if is_unsaid(now, slot)}
            stated |= _whistles(previous, now) if same else {}
        stated |= _unjudged(previous, now, stated)
    eaters = previous.portions if now.topic in marked("feeding") and now.portions is None else None
    if eaters and (previous.topic in marked("giving") or now.dish in (None, previous.dish)):
        stated.setdefault("portions", eaters)
    if goes_on and previous.ingredient and stated["topic"] == previous.topic:
        stated |= _of_the_ingredient(previous, now, heard)
    return replace(now, **(_place(previous, now, goes_on) | stated))


def _is_same_elsewhere(previous: Request, now: Request) -> bool:
    """Whether the same is asked of the same dish in another place: she runs the same fudge at 4,600."""
    same = now.dish is not None and (now.topic, now.dish) == (previous.topic, previous.dish)
    return same and now.elevation_m not in (None, previous.elevation_m) and said(_words(now), AGAIN)


def _names_another(previous: Request, heard: Hearing) -> bool:
    """Whether nothing but another ingredient of the dish is named: and the salt?"""
    alone = heard.changes_a_bake and heard.request.dish in (None, previous.dish) and not heard.request.ingredient
    return bool(previous.ingredient) and alone and _another(previous, heard) is not None


def _another(previous: Request, heard: Hearing) -> str | None:
    named = heard.subject_for("bake_adjust")
    return named if named and share_of(named, previous.dish, previous.dish_class or "") else None


def _of_the_ingredient(previous: Request, now: Request, heard: Hearing) -> dict[str, Any]:
    """A question about an ingredient gone on with: another one of the same dish, or for another number of it."""
    other = _another(previous, heard)
    kept: dict[str, Any] = {"ingredient": other or previous.ingredient, "subject": None}
    if now.portions and previous.count:
        kept |= {"count": now.portions, "portions": None}
    if other:
        kept |= {"dish": previous.dish, "dish_class": previous.dish_class}
        kept |= {slot: getattr(previous, slot) for slot in (*OF_AN_AMOUNT, "portions", "counted_in")}
    return kept


def _is_of_no_dish(previous: Request, now: Request) -> bool:
    """Whether a dish is named behind a question that has no place for one: where water boils, what a reading means."""
    of_safety = previous.subject in book.names("safety")
    return now.dish is not None and previous.dish is None and (previous.topic in marked("without_a_dish") or of_safety)


def _amount_of_kind(previous: Request, now: Request) -> tuple[str, ...]:
    """The slots of the amount, where another kind of the same thing takes its place: brown rice for white."""
    kind = previous.dish and now.dish and previous.dish.split()[-1] == now.dish.split()[-1]
    return ("quantity", "quantity_of", "count") if kind else ()


def is_timed_anew(previous: Request, heard: Hearing) -> bool:
    """Whether another dish is told with its time, or how far it is cooked: rigatoni too, the box says 11."""
    now = heard.request
    other = now.dish not in (None, previous.dish) and previous.topic in marked("beside_the_main")
    timed = now.ahead or now.time_min is not None or (heard.plain and said(_words(now), TIME_SAID))
    return other and bool(timed)


def _words(now: Request) -> list[str]:
    return [word.strip(".,;:!?") for word in now.text.casefold().split()]


def _time_told(previous: Request, heard: Hearing, topic: str) -> float | None:
    """A bare figure beside another dish as the time that somebody gives it [min]: penne 11; lentils, book says 20."""
    now, figure = heard.request, heard.plain
    if topic != TIME or figure is None or now.dish is None or now.time_min is not None or now.portions or now.count:
        return None
    told = previous.time_min is not None or said(_words(now), TIME_SAID)
    return figure if told and SHORTEST_MIN <= figure <= LONGEST_MIN and now.quantity is None else None


def _whistles(previous: Request, now: Request) -> dict[str, Any]:
    """The whistles that were counted, where no minutes and no other count take their place; 0 asks for them again."""
    if not previous.whistles or now.whistles or now.time_min is not None:
        return {}
    return {"whistles": previous.whistles}


def _unjudged(previous: Request, now: Request, stated: dict[str, Any]) -> dict[str, Any]:
    """The forms without a verdict that would be on what nobody asked about.

    Whether another dish is the same asks to have it held against the one before, and not against sea level; and what
    is asked about the answer is not asked about the time that was told before it.
    """
    if now.topic != TIME and stated.get("topic") != TIME:
        return {}
    other_dish = now.dish and previous.dish not in (None, now.dish) and now.elevation_m is None
    if other_dish and (now.asked_way == SAME or (now.asked_way is None and said(_words(now), AGAIN))):
        return {"asked_way": None, "forms": tuple(form for form in now.forms if form not in JUDGED)}
    told_before = now.time_min is None and stated.get("time_min") is not None
    if told_before and now.asked_way is None:
        return {"forms": tuple(form for form in now.forms if form != OWN_TIME_JUDGED)}
    return {}


def is_unsaid(now: Request, slot: str) -> bool:
    """Whether nothing was said that fills a slot; that a lid is off is said."""
    return getattr(now, slot) in (None, ()) or (slot in NOT_UNLESS_SAID and not getattr(now, slot))


def _setting(previous: Request, figure: float | None) -> float | None:
    """A bare figure behind a question of an oven as another setting of it [degC]: make it 375."""
    of_ovens = previous.temperature_c is not None or (previous.topic == BAKING and previous.subject == OVEN)
    if not of_ovens or figure is None:
        return None
    least_c = setting_c(SETTINGS[previous.units][0], previous.units)
    cooler = previous.temperature_c is not None and least_c is not None and previous.temperature_c < least_c
    return None if cooler else setting_c(figure, previous.units)


def _is_done_with(previous: Request, now: Request) -> bool:
    """Whether a question of what comes before the cooking gives way to the cooking: how long to soak; and to cook?"""
    cooks = now.method is not None or "cook" in now.text.casefold()
    return previous.subject in BEFORE_COOKING and cooks


def _in_unit_meant(previous: Request, heard: Hearing) -> Request | None:
    """The elevation before with its figure in another unit: I meant metres."""
    said = _figure_said(previous, heard.unit_meant) if heard.unit_meant else None
    if said is None or heard.unit_meant is None:
        return None
    words = (f"{said:g}", heard.unit_meant)
    height = elevation_mentions.settle([Elevation(0, 2, said, heard.unit_meant, "here")], words, previous.units)
    units: Units = "metric" if heard.unit_meant == "m" else "us"
    unused = (*heard.request.unused, *height.unused)
    return replace(
        heard.request, elevation_m=height.here_m, elevation_from=height.known_from, units=units, unused=unused
    )


def _figure_said(previous: Request, unit: str) -> float | None:
    """The figure of the elevation before, said in the other unit, or of one that could not be right."""
    if previous.elevation_m is not None and previous.elevation_from == "stated":
        return round(previous.elevation_m / M_PER_FT if unit == "m" else previous.elevation_m, 1)
    doubted = next((u.text for u in previous.unused if u.kind == "elevation" and u.text), "")
    return next((number.value for number in hear(doubted).numbers), None)


def _in_metres(previous: Request, heard: Hearing) -> Request:
    """What is said now; a bare elevation is in metres where the one before was told in round metres."""
    bare = heard.bare_elevation
    if bare is None or heard.units == "us" or not METRIC_BARE[0] <= bare <= METRIC_BARE[1]:
        return heard.request
    return replace(heard.request, elevation_m=bare) if told_in_metres(previous) else heard.request


def told_in_metres(request: Request) -> bool:
    """Whether where the cook is was told in metres, or is a place of a land that is measured in them.

    >>> told_in_metres(Request(elevation_m=2400.0, elevation_from="stated"))
    True
    >>> told_in_metres(Request(elevation_m=2133.6, elevation_from="stated", units="metric"))
    False
    """
    height_m = request.elevation_m
    if height_m is None or request.elevation_from not in ("stated", "kitchen", "place", None):
        return False
    if request.elevation_from == "place":
        return request.units == "metric" and bool(request.place) and places.height_unit(request.place) == "m"
    odd_in_feet = abs((height_m / M_PER_FT) % ROUND_FT) > 1 and abs((height_m / M_PER_FT) % ROUND_FT - ROUND_FT) > 1
    return in_round_metres(height_m) or (request.units == "metric" and odd_in_feet)


def in_round_metres(elevation_m: float | None) -> bool:
    """Whether an elevation was told in metres, as its figure is a round one of them and none of feet.

    >>> in_round_metres(2400.0), in_round_metres(2133.6)
    (True, False)
    """
    return elevation_m is not None and not elevation_m % ROUND_M and bool((elevation_m / M_PER_FT) % ROUND_FT)


def _dish(previous: Request, now: Request) -> dict[str, Any]:
    """Dish and method of the question before, as far as they are not said anew and go together."""
    if now.dish or now.dish_class:
        # what is put up in jars stays in jars, whatever else is put up
        usual: tuple[str | None, ...] = (previous.method,)
        usual = (*dishes()[now.dish].methods, "preserve") if now.dish else usual
        # rice that went into the oven puts no pasta there
        usual = tuple(way for way in usual if way != BAKED or now.dish_class == previous.dish_class)
        in_bath = previous.method == BATH and now.temperature_c is not None
        return {"method": now.method or (previous.method if in_bath or previous.method in usual else None)}
    unknown = tuple(u for u in previous.unused if u.kind == "dish")
    return {
        "dish": previous.dish,
        "dish_class": previous.dish_class,
        "method": now.method or previous.method,
        "unused": (*unknown, *now.unused),
    }


def _place(previous: Request, now: Request, goes_on: bool) -> dict[str, Any]:
    """The elevation said before, unless a new one is; the baseline stays with the question it belongs to."""
    told = now.elevation_m is not None or now.pressure_pa is not None
    doubted = any(u.kind == "elevation" for u in now.unused) and now.elevation_m is None
    place = {} if told or doubted else {slot: getattr(previous, slot) for slot in PLACE_SLOTS}
    doubts = tuple(u for u in previous.unused if u.kind == "elevation")
    if place and not goes_on:
        # what was asked of two places is asked of one again
        place["elevations_m"] = ()
    if not told and not doubted and previous.elevation_m is None and doubts:
        place["unused"] = (*doubts, *now.unused)
    own_time = previous.time_min is not None and now.dish not in (None, previous.dish)
    same = goes_on or (now.topic == previous.topic and now.topic != WHY)
    if now.from_elevation_m is None and not own_time and same:
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
