"""What a cook says in a few words behind an answer: firmer please; no thermometer; 9 on the box; make that 630.

Each goes on with the question before, and gives it the one thing that was said.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Any

from spacy.tokens import Doc

from assistant.reading import times_of_day
from assistant.reading.spans import Number
from assistant.reading.tokens import norms
from assistant.understanding import wanted
from assistant.understanding.amounts import MOST_PORTIONS
from assistant.understanding.claims import plain_numbers
from assistant.understanding.complaints import TROUBLE, complains
from assistant.understanding.cue_words import cues, said
from assistant.understanding.request import TIMER, Hearing, service_time
from rules.catalogue import marked
from rules.model import Request, Units
from rules.physics.units import to_c

TIME, PLAN, EGG = "time", "schedule", "egg"
HEAT = "temperature"
# settings of ovens, smokers and fryers in the scale of the units, and their step
SETTINGS, SETTING_STEP = {"us": (200.0, 550.0), "metric": (95.0, 300.0)}, 5
BAKE, DONENESS, BLANCHED, DONE = "bake_adjust", "doneness", "blanched", "done"
UNREAD = "thermometer"
HARDER, SOFTER = "firmer", "softer"
PACKETS, OF_PACKET = frozenset(cues("short_turns", "packets")), frozenset(cues("short_turns", "of_packet"))
OF_SERVICE, OF_NEITHER = cues("short_turns", "of_service"), frozenset(cues("short_turns", "of_neither"))
WANTS, CAME_OUT = cues("short_turns", "wants"), cues("short_turns", "came_out")
MORE_DONE, LESS_DONE = cues("short_turns", "more_done"), cues("short_turns", "less_done")
WIDE, PANS, REDUCED = (cues("short_turns", name) for name in ("wide", "pans", "reduced"))
WHY, REDUCE, WIDE_PAN = "why", "reduce", "wide_pan_reduces"
LONGEST, LONGEST_FIGURE = 12, 8
# figures that may be minutes on a packet, and that may count those who eat
SHORTEST_MIN, LONGEST_MIN, FEWEST = 1, 90, 2
# what a figure that is put right may count, and how it is said that it was another
TOLD_TIME, COUNTED, NOT_THIS = "time_min", ("time_min", "portions", "count"), cues("corrected", "not_this")
# what an utterance of a few words may not fill beside the one thing
OTHERWISE = ("method", "elevation_m", "pressure_pa", "temperature_c", "recipe", "jars", "terms")
# a figure near the covers that were said counts them, and no hour
NEAR_COVERS = 3
# hours are told to the quarter: 630, not 610
HOUR, QUARTER = 100, 15


def taken(doc: Doc, hearing: Hearing, last: Request | None) -> Hearing | None:
    """An utterance of a few words that goes on with the question before; None for any other."""
    if last is None or last.menu or len(norms(doc)) > LONGEST or last.topic in (TIMER, *marked("ends_there")):
        return None
    now = hearing.request
    if now.dish not in (None, last.dish) and last.dish_class != EGG:
        return None
    # soft-boiled is a kind of egg, and no other way to cook
    ignored = {"method"} if last.dish_class == EGG else set()
    # a figure without a degree may count anything
    ignored |= set() if doc._.measures else {"temperature_c"}
    otherwise = (slot for slot in OTHERWISE if slot not in ignored)
    if any(getattr(now, slot) not in (None, (), "") for slot in otherwise):
        return None
    if now.quantity is not None:
        return amount_told(hearing, last)
    return (
        without_thermometer(doc, hearing, last)
        or other_figure(doc, hearing, last)
        or recipe_setting(doc, hearing, last)
        or figure_alone(doc, hearing, last)
        or other_yolk(doc, hearing, last)
        or other_firmness(doc, hearing, last)
        or how_far(hearing, last)
        or wide_pan(doc, hearing, last)
    )


def without_thermometer(doc: Doc, hearing: Hearing, last: Request) -> Hearing | None:
    """The question before, for a cook who has nothing to read it with."""
    lacking = any(UNREAD in id for id in hearing.request.lacking)
    if not lacking or (last.dish is None and last.method is None):
        return None
    # of a bake it is asked how to tell that it is done
    about = DONENESS if last.topic == BAKE and last.dish else None
    if (about or last.topic) not in marked("by_hand"):
        return None
    return _going_on(hearing, last, about, lacking=(UNREAD,), forms=(DONE,) if about else (), equipment=())


def recipe_setting(doc: Doc, hearing: Hearing, last: Request) -> Hearing | None:
    """A bare figure behind a question of heat as the setting that the recipe has: 350 on the recipe."""
    figures, now = plain_numbers(doc), hearing.request
    if last.topic != HEAT or last.temperature_c is not None or len(figures) != 1 or len(norms(doc)) > LONGEST_FIGURE:
        return None
    setting = None if now.time_min or now.portions else setting_c(figures[0].value, last.units)
    return None if setting is None else _going_on(hearing, last, temperature_c=setting, temperature_of=None, recipe="")


def setting_c(figure: float, units: Units) -> float | None:
    """A bare figure as a setting of an oven, a smoker or a fryer [degC]; None where nothing is set to it.

    >>> setting_c(350, "us"), setting_c(352, "us"), setting_c(175, "metric")
    (176.67, None, 175)
    """
    low, high = SETTINGS[units]
    if figure % SETTING_STEP or not low <= figure <= high:
        return None
    return to_c(figure) if units == "us" else figure


def figure_alone(doc: Doc, hearing: Hearing, last: Request) -> Hearing | None:
    """A figure and little beside it: the packet's minutes, the hour of service or how many eat, by what was asked."""
    figures, words = plain_numbers(doc), [word for word in norms(doc) if word.isalpha()]
    now = hearing.request
    if len(figures) != 1 or len(norms(doc)) > LONGEST_FIGURE or now.dish or now.time_min or now.portions:
        return None
    figure = figures[0]
    if last.topic == TIME and last.dish_class in PACKETS and not last.portions and set(words) <= OF_PACKET:
        fits = SHORTEST_MIN <= figure.value <= LONGEST_MIN
        return _going_on(hearing, last, time_min=figure.value, portions=None) if fits else None
    loose = marked("of_nothing") | marked("of_readings_told")
    if "?" in now.text or doc._.measures or not OF_NEITHER.isdisjoint(words) or now.topic not in loose:
        return None
    return of_service(doc, hearing, last, figure)


def other_figure(doc: Doc, hearing: Hearing, last: Request) -> Hearing | None:
    """One figure in the place of another that was told, which names what it is: at 7, not 9; for 30 rather than 45."""
    figures, now = plain_numbers(doc), hearing.request
    if len(figures) != 2 or len(norms(doc)) > LONGEST_FIGURE or now.dish or now.time_min:
        return None
    right, wrong = figures
    if not said(norms(doc)[right.end : wrong.start], NOT_THIS):
        return None
    slots = [slot for slot in COUNTED if getattr(last, slot) == wrong.value]
    if len(slots) != 1 or right.value <= 0:
        return None
    whole = slots[0] == TOLD_TIME or right.value == int(right.value)
    value = right.value if slots[0] == TOLD_TIME else int(right.value)
    told: dict[str, Any] = {
        "portions": None,
        "temperature_c": None,
        "temperature_of": None,
        "forms": (),
        slots[0]: value,
    }
    return _going_on(hearing, last, **told) if whole else None


def of_service(doc: Doc, hearing: Hearing, last: Request, figure: Number) -> Hearing | None:
    """A figure that is the hour of service, where one is planned or named, else how many eat, where they are known."""
    words = norms(doc)
    hour = service_time(times_of_day.of_figure(words, figure))
    eaters = last.portions
    if hour and figure.value % HOUR % QUARTER:
        hour = None
    near = eaters is not None and eaters / NEAR_COVERS <= figure.value <= eaters * NEAR_COVERS
    if hour and (said(words, OF_SERVICE) or (last.topic == PLAN and last.service_time and not near)):
        about = None if last.topic == PLAN else PLAN
        return _going_on(
            hearing, last, about, service_time=hour, portions=last.portions if about else None, temperature_c=None
        )
    whole = figure.value == int(figure.value) and FEWEST <= figure.value <= MOST_PORTIONS
    if not near or not whole:
        return None
    return _going_on(hearing, last, portions=int(figure.value), forms=(), temperature_c=None, temperature_of=None)


def other_yolk(doc: Doc, hearing: Hearing, last: Request) -> Hearing | None:
    """The eggs that are wanted in the place of those before: no, I mean the runny kind; firmer; a bit less done."""
    if last.dish_class != EGG or last.topic not in (TIME, TROUBLE) or tells_of_a_fault(doc, last):
        return None
    words = [word for word in norms(doc) if word.isalpha()]
    dish = wanted.next_yolk(last.dish, _step(words))
    if dish is None and said(words, WANTS):
        dish = wanted.other_yolk(words, last.dish, last.dish_class, longest=LONGEST)
    if dish is None:
        return None
    eggs = replace(hearing, request=replace(hearing.request, dish=dish, dish_class=EGG))
    about = None if last.topic == TIME else TIME
    return _going_on(eggs, last, about, forms=(), symptoms_too=(), dish=dish, dish_class=EGG)


def _step(words: Sequence[str]) -> int:
    """How far the yolk is to go on: 1 firmer, -1 softer, 0 where neither is said, or both."""
    return int(said(words, MORE_DONE)) - int(said(words, LESS_DONE))


def other_firmness(doc: Doc, hearing: Hearing, last: Request) -> Hearing | None:
    """The dish before, firmer or softer than it was told."""
    form = next((form for form in hearing.request.forms if form in (HARDER, SOFTER)), None)
    if last.dish_class == EGG and form is None:
        form = {1: HARDER, -1: SOFTER}.get(_step([word for word in norms(doc) if word.isalpha()]))
    if form is None or last.topic != TIME or last.dish is None or tells_of_a_fault(doc, last):
        return None
    return _going_on(hearing, last, forms=(form,))


def how_far(hearing: Hearing, last: Request) -> Hearing | None:
    """How far to take what is cooked part of the way, or blanched; None for any other question."""
    partly = last.ahead or last.subject == BLANCHED
    if not partly or last.topic != TIME or DONE not in hearing.request.forms or hearing.request.time_min:
        return None
    told = _going_on(hearing, last, forms=(DONE,), subject=last.subject)
    return replace(told, subject_for=lambda topic: last.subject)


def wide_pan(doc: Doc, hearing: Hearing, last: Request) -> Hearing | None:
    """Why, or whether, a wide pan, asked of what is boiled down."""
    words = norms(doc)
    boiled_down = last.method == REDUCE or last.dish_class in REDUCED
    if not boiled_down or not (said(words, WIDE) and said(words, PANS)) or hearing.request.time_min:
        return None
    told = _going_on(hearing, last, WHY, forms=(WHY,))
    return replace(told, request=replace(told.request, subject=WIDE_PAN), subject_for=lambda topic: WIDE_PAN)


def tells_of_a_fault(doc: Doc, last: Request) -> bool:
    """Whether it is told how a dish came out, and no other way of it is wanted."""
    words = norms(doc)
    return said(words, CAME_OUT) or (complains(doc) and not said(words, WANTS) and not said(words, LESS_DONE))


def amount_told(hearing: Hearing, last: Request) -> Hearing | None:
    """How much of the dish there is, told and nothing asked: I have 2 kg of it."""
    now = hearing.request
    told = now.quantity is not None and not now.forms and now.dish in (None, last.dish) and not now.equipment
    if not told or last.dish is None or now.topic not in marked("slots_alone"):
        return None
    return _going_on(hearing, last, dish=None, dish_class=None)


def _going_on(hearing: Hearing, last: Request, about: str | None = None, **slots: Any) -> Hearing:
    """What is said as going on with a question, with some slots filled.

    about: the topic, where it is another than that of the question
    """
    plain: dict[str, Any] = {
        "topic": about or last.topic, "subject": None, "choices": (), "small_talk": None, "asked_way": None,
        "belief": None, "nearest": (), "sets_kitchen": False,
    }  # fmt: skip
    if about:
        plain |= {"dish": last.dish, "dish_class": last.dish_class, "method": last.method}
    request = replace(hearing.request, unused=(), **{**plain, **slots})
    return replace(hearing, request=request, elliptical=not about, plain=None, subject_for=lambda topic: None)
