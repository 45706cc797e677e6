"""The thread of a conversation: what an utterance goes on with, and what is remembered of a question after it."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from assistant.dialogue import plans
from assistant.dialogue.memory import Memory, moved
from assistant.dialogue.moves import words as words_of
from assistant.dialogue.whereabouts import Whereabouts
from assistant.understanding.conversation import merge
from assistant.understanding.cue_words import cues
from assistant.understanding.cue_words import said as said_among
from assistant.understanding.leaning import BESIDE, main_question
from assistant.understanding.never_read import as_never_read
from assistant.understanding.request import TIMER, TROUBLE, Hearing
from rules.catalogue import marked
from rules.foods.dishes import usual_method
from rules.model import PLACE_SLOTS, Request

WHY = "why"
# what a cook says after a word by the way to go back to the work
TO_DO = (
    "dish",
    "dish_class",
    "method",
    "quantity",
    "portions",
    "time_min",
    "temperature_c",
    "service_time",
    "gauge_pa",
    "covered",
    "soaked",
)
MOST_DISHES = 8
# behind these a dish alone asks after its timer
ASKING_AFTER = ("left", "extend")
ACTIONS = ("set", "change", "move", "left", "extend", "stop")
AFTER, MADE, ANOTHER = (cues("timers", name) for name in ("after", "made", "another"))
SHORT = 6
TIME, BY_HOW_MUCH = "time", cues("turning", "by_how_much")
ORDER, VOLUMES = "order", ("l", "qt", "gal")
READ_OFF = "calibrate"
PLAN = "schedule"
SUGAR = "sugar_stage"
# what was said of one way to cook and does not hold for another
OF_A_METHOD: dict[str, Any] = dict.fromkeys(
    ("time_min", "time_high_min", "temperature_c", "temperature_of", "gauge_pa", "covered", "soaked")
)


def question_of(heard: Hearing, memory: Memory, *, back_to_recipe: bool) -> Request:
    """The question that an utterance puts, laid over what it goes on with; nothing is taken from the kitchen.

    back_to_recipe: whether it speaks of a recipe as of one that is known
    """
    return merge(basis(heard, memory, back_to_recipe=back_to_recipe), heard)


def basis(heard: Hearing, memory: Memory, *, back_to_recipe: bool) -> Request | None:
    """The question that an utterance goes on with.

    After a timer it is the question before it; after a why, or after something about the kitchen, too, unless only the
    place or the units are another; and where the cook comes back to a recipe, it is the last question about that.
    """
    last, now = memory.request, heard.request
    if last is None:
        return None
    if memory.recipe and not now.recipe and back_to_recipe:
        return moved(memory.recipe, last)
    if heard.unit_meant is None:
        last = kept_in_place(last, memory.places[-1] if memory.places else None)
    leaves = now.topic != last.topic
    if heard.elliptical and last.topic != "timer":
        leaves = (
            any(getattr(now, slot) for slot in TO_DO if "enough" not in now.forms)
            or _is_read_off(last, now)
            or is_why_of_answer(last)
        )
    question = moved(memory.before, last) if memory.before and leaves else last
    question = main_of(question, heard, memory)
    return replace(question, **OF_A_METHOD) if now.method not in (None, way_of(question)) else question


def way_of(question: Request) -> str | None:
    """The way a dish is cooked, said or usual: the braise, of short ribs."""
    usual = usual_method(question.dish, question.dish_class or "") if question.dish else None
    return question.method or usual


def is_why_of_answer(last: Request) -> bool:
    """Whether the last question was no more than the why of an answer."""
    return last.topic == WHY and last.subject is None and last.dish is not None


def main_of(question: Request, heard: Hearing, memory: Memory) -> Request:
    """The question itself; where another way to cook, or a detail of it, is said behind one beside it, the main one.

    A dish that was talked of before is gone on with as it was asked about.
    """
    now = heard.request
    named = next((q for q in reversed(memory.earlier) if q.dish == now.dish), None)
    if named and now.dish != question.dish and (heard.elliptical or now.topic == named.topic):
        return moved(named, question)
    if not heard.elliptical:
        return question
    leaves_fault = question.topic == TROUBLE and now.dish not in (None, question.dish)
    other_way = now.method not in (None, question.method) or any(u.kind == "detail" for u in now.unused)
    elsewhere = now.elevation_m is not None and question.subject in BESIDE
    main = main_question(question, memory.earlier) if other_way or elsewhere or leaves_fault else question
    return question if main is question else moved(main, question)


def _is_read_off(last: Request, now: Request) -> bool:
    """Whether a thermometer was read, and nothing more is said of it: redo it."""
    return last.topic == READ_OFF and now.temperature_c is None and now.elevation_m is None


def in_context(heard: Hearing, last: Request | None, before: Request | None = None) -> Hearing:
    """An utterance as the question before makes it plain.

    A dish alone, after timers that are running, asks after its timer; a length of time without a word of timers, and a
    baseline without a kitchen, belong to the question.
    """
    now = heard.request
    if last is None:
        return heard
    if last.topic == TIMER:
        heard = of_timer(heard, last)
        now = heard.request
    heard = as_never_read(heard, words_of(now.text).split(), last)
    now = heard.request
    if last.topic in now.choices and last.topic != READ_OFF:
        # of two that are as likely the one that is talked of
        return heard.about(last.topic, choices=())
    if now.topic == WHY and now.subject and last.topic == PLAN:
        # what is asked beside a plan is no part of it
        return replace(heard, elliptical=False)
    ground = before if before and last.topic == READ_OFF else last
    hot = now.topic == "temperature" or (now.topic in marked("hot") and "how_hot" in now.forms)
    if hot and now.dish is None and now.method is None and ground.topic == SUGAR:
        return replace(heard.about(SUGAR, subject=heard.subject_for(SUGAR) or ground.subject), elliptical=False)
    running = last.topic == TIMER and last.timer_action in ASKING_AFTER
    if running and heard.elliptical and now.dish and not now.method:
        return heard.about("timer")
    no_timer = now.topic == "timer" and last.topic != "timer" and not heard.timers.spoken
    no_order = now.topic == ORDER and last.topic not in marked("feeding") and not heard.elliptical and is_no_order(now)
    if no_order and last.dish and last.topic not in marked("by_the_way"):
        # nothing is bought: the same number for the brioche?
        return replace(heard.about(last.topic, choices=()), elliptical=True)
    no_kitchen = now.topic == "set_kitchen" and now.from_elevation_m is not None and now.elevation_m is None
    # a time that nobody asked to be planned goes on with the question before: and for 40, same time?
    no_plan = now.topic == PLAN != last.topic and not (now.service_time or now.start_time or "start" in now.forms)
    if no_plan and last.dish and (now.dish is None or last.dish.endswith(now.dish)):
        goes_on = replace(heard.about(last.topic, choices=()), elliptical=True)
        return replace(goes_on, request=replace(goes_on.request, dish=None, dish_class=None))
    of_time = now.topic == ORDER and last.topic == TIME and said_among(words_of(now.text).split(), BY_HOW_MUCH)
    if of_time and last.dish and now.dish in (None, last.dish) and now.portions is None and now.quantity is None:
        # by how much a time changes, and nothing that is bought: it goes in the sauce after, so how much less
        return replace(heard.about(last.topic, choices=()), elliptical=True)
    volume = now.quantity is not None and now.quantity.unit in VOLUMES
    if volume and now.dish is None and "enough" in now.forms and last.dish and last.portions:
        # whether pots do for those who eat: and two 60 l pots, enough?
        return replace(heard.about(ORDER, choices=(), small_talk=None), elliptical=False)
    if no_timer or no_kitchen:
        return replace(heard.about(last.topic), elliptical=True)
    return heard


def is_no_order(now: Request) -> bool:
    """Whether nothing tells how many eat, how much there is or is wanted, so that what is bought is not asked."""
    counted = (now.portions, now.quantity, now.count, now.course, now.ingredient)
    return not any(counted) and not {"how_much", "enough"}.intersection(now.forms) and not now.menu


def of_timer(heard: Hearing, last: Request) -> Hearing:
    """An utterance behind one about timers: another one so much after that, a timer made longer, one that is stopped.

    What counts from the end of a timer that was just set is as long as both.
    """
    now, words = heard.request, words_of(heard.request.text).split()
    fault = now.topic == TROUBLE and now.subject is not None
    if fault or last.timer_action not in (None, *ACTIONS):
        return heard
    action = heard.timers.action
    minutes = now.time_min
    if minutes is None and heard.plain and said_among(words, MADE):
        minutes = heard.plain
    if minutes is not None and now.method is None and said_among(words, (*AFTER, *MADE, *ANOTHER)):
        follows = said_among(words, AFTER) and last.time_min is not None
        action = None if follows else action
        total = minutes + last.time_min if follows and last.time_min is not None else minutes
        return replace(heard.about(TIMER, time_min=total, timer_action=action, choices=()), elliptical=False)
    stops = action in ("stop", "stop_all") and now.method is None and len(words) <= SHORT
    return heard.about(TIMER, choices=()) if stops and now.topic != TIMER else heard


def after(question: Request, memory: Memory) -> Memory:
    """The memory after a question of any consequence."""
    by_the_way, before = marked("by_the_way"), None
    if question.topic in by_the_way:
        before = memory.before if memory.request and memory.request.topic in by_the_way else memory.request
    recipe = question if question.topic == "convert_recipe" and question.recipe else memory.recipe
    placed = kept_in_place(question, memory.request)
    earlier, menu = _with(memory.earlier, placed), plans.kept(placed, memory.menu)
    return replace(memory, request=question, before=before, recipe=recipe, menu=menu, earlier=earlier)


def kept_in_place(question: Request, last: Request | Whereabouts | None) -> Request:
    """A question as it is gone on with: a place that nobody knows takes nobody away from where they cook."""
    lost = question.elevation_m is None and any(u.kind == "elevation" for u in question.unused)
    if not lost or last is None or last.elevation_m is None:
        return question
    place: dict[str, Any] = {slot: getattr(last, slot, ()) for slot in PLACE_SLOTS}
    return replace(question, **place, unused=tuple(u for u in question.unused if u.kind != "elevation"))


def talked_of(memory: Memory) -> Request | None:
    """The last question that was no word by the way."""
    last = memory.request
    return memory.before if last and memory.before and last.topic in marked("by_the_way") else last


def _with(earlier: tuple[Request, ...], question: Request) -> tuple[Request, ...]:
    """The last questions about each dish, with one more; only the latest few are kept."""
    if question.menu:
        return plans.with_dishes_of(earlier, question)
    if question.dish is None or question.topic in marked("by_the_way"):
        return earlier
    others = tuple(one for one in earlier if one.dish != question.dish)
    main = main_question(question, earlier)
    kept = question if main is question else moved(main, question)
    return (*others, kept)[-MOST_DISHES:]
