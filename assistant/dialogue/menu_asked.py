"""What is asked of a plan that does not change it: the list, one line, an amount, will it be done."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import timedelta
from typing import Any

from assistant.dialogue import menu_guests
from assistant.dialogue.heard import Heard
from assistant.dialogue.memory import Memory
from assistant.dialogue.plans import DAY_MIN, FIRE, PLAN, dishes_of, minute_of
from assistant.planning.clock import clock
from assistant.planning.schedule import service_moment
from assistant.reading import instruments
from assistant.reading import times_of_day as clock_words
from assistant.reading.spans import Measure, Number
from assistant.reading.tokens import norms
from assistant.understanding import menu_parts, menu_said
from assistant.understanding.claims import plain_numbers
from assistant.understanding.conversation import settle_in
from assistant.understanding.cue_words import cues, said
from assistant.understanding.serving import began
from assistant.worked_out import WorkedOut, work_out
from rules.amounts.eaters import is_of_meat
from rules.model import PLACE_SLOTS, Request
from rules.said import Words, duration, duration_span, sentences, together, yes
from rules.topics.schedule.menu import firing_order, name_of, of_menu, starts_of
from rules.topics.schedule.stages import method_of, stages

say = sentences("dialogue/menu")

NOW_MIN, WHY = 3.0, "why"
ORDER, BRIEF, LONGEST, HOW_MUCH = "order", 1, 16, "how_much"
LISTS, FIRST, NEXT, GOES_ON = (cues("menu_turns", name) for name in ("lists", "first", "next", "goes_on"))
IN_TIME, READING = cues("menu_turns", "in_time"), cues("menu_turns", "reading")
ITS, HALF_DAY_MIN = clock_words.NOW_LEADS, 12 * 60
# so soon after it went in no heat has reached the middle: what reads warm went in earlier than the list says
JUST_IN_MIN = 15.0
PARBOIL, PARBOILED = cues("menu_turns", "parboil"), "starchy_root"
IN_AN_OVEN = ("roast", "bake", "smoke", "grill")
# what a probe can read in a roast [degC]
READS_C = (0.0, 98.0)


@dataclass(frozen=True, slots=True)
class Asked:
    """What is asked of a plan. reply: where it is not the list; notes: what is said over the list"""

    plan: Request
    reply: WorkedOut | None = None
    notes: tuple[Words, ...] = ()


def answer(heard: Heard, memory: Memory, plan: Request) -> Asked | None:
    """The answer to what is asked of a plan; None where nothing is."""
    request, words = heard.hearing.request, norms(heard.doc)
    read = reading(heard, memory, plan) if plan.service_time else None
    if read or len(words) > LONGEST:
        return read
    meatless = menu_guests.dish_of_meatless(heard, plan)
    if meatless:
        new, about = meatless
        return Asked(new, work_out(settle_in(about, memory.kitchen)))
    guests = menu_guests.notes(heard, memory, dishes_of(plan))
    if guests:
        return Asked(plan, told_only(heard, memory, plan, together(*guests)))
    if plan.service_time and said(words, PARBOIL) and (boiled := parboil_told(heard, memory, plan)):
        return Asked(plan, boiled)
    if request.topic == ORDER or HOW_MUCH in request.forms:
        return amount(heard, memory, plan)
    if plan.service_time is None:
        return Asked(plan) if plan.menu and said(words, FIRST) else None
    if plan.menu and (said(words, FIRST) or said(words, NEXT)):
        return in_turn(heard, memory, plan)
    at = menu_parts.named_at(heard.doc, dishes_of(plan))
    if plan.menu and said(words, GOES_ON) and len(at) == 1 and request.service_time is None:
        return Asked(plan, one_line(heard, memory, of_menu(plan)[at[0]]))
    return Asked(plan) if is_list(heard, memory, plan) and not at else None


def parboil_told(heard: Heard, memory: Memory, plan: Request) -> WorkedOut | None:
    """How long the dish of the plan that is parboiled is in the water, and from when; None where it has none."""
    settled = settle_in(plan, memory.kitchen)
    every = of_menu(settled) if settled.menu else (settled,)
    named = menu_parts.named_at(heard.doc, dishes_of(plan))
    those = [every[i] for i in named] or [one for one in every if one.dish_class == PARBOILED]
    for one in those:
        work = stages(replace(one, ahead=True))
        at = next((i for i, stage in enumerate(work) if stage.id == "parboil"), None)
        if at is not None:
            when = clock(
                service_moment(plan.service_time or "", "") - timedelta(minutes=starts_of(work)[at]), plan.units
            )
            span = duration_span(work[at].low_min, work[at].high_min)
            return told_only(heard, memory, plan, say("parboil-again", food=name_of(one), span=span, time=when))
    return None


def is_list(heard: Heard, memory: Memory, plan: Request) -> bool:
    """Whether the list is asked for as it stands; the time of its service may be said with it."""
    request, words = heard.hearing.request, norms(heard.doc)
    again = said(words, LISTS) or (heard.move is not None and heard.move.id == "repeat" and is_focus(memory))
    moved = any(int(time.low) != minute_of(plan) for time in heard.doc._.clock)
    changes = moved or request.elevation_m is not None or request.portions or heard.doc._.measures
    return again and not changes and not menu_parts.mentions(heard.doc)


def is_focus(memory: Memory) -> bool:
    """Whether the plan was talked of last, timers for it were set, or a why was asked beside it."""
    last = memory.request
    if last is not None and last.topic == WHY and memory.before is not None:
        last = memory.before
    return last is not None and (last.topic == PLAN or last.timer_action == FIRE or is_ordered(memory))


def is_ordered(memory: Memory) -> bool:
    """Whether the order of the plan was talked of last."""
    last = memory.request
    return last is not None and last.topic == ORDER and bool(last.menu)


def one_line(heard: Heard, memory: Memory, one: Request) -> WorkedOut:
    """When one dish of the menu goes on."""
    return work_out(settle_in(replace(one, text=heard.text, depth=BRIEF), memory.kitchen))


def in_turn(heard: Heard, memory: Memory, plan: Request) -> Asked | None:
    """Which dish goes on first, or next after the time that it is now."""
    order = firing_order(of_menu(settle_in(plan, memory.kitchen)))
    if not order:
        return None
    now = now_of(heard, minute_of(plan))
    if now is None or said(norms(heard.doc), FIRST):
        return Asked(plan, notes=(say("first", food=order[0].food),))
    left = (minute_of(plan) - now) % DAY_MIN
    coming = next((one for one in order if one.at_min <= left), None)
    if coming is None:
        return Asked(plan, notes=(say("all-on"),))
    wait = left - coming.at_min
    return Asked(plan, notes=(say("next", food=coming.food, time=duration(wait), soon=yes(wait < NOW_MIN)),))


def now_of(heard: Heard, service_min: int) -> float | None:
    """The minute of the day that it is now, where that is said; a bare hour is the last one before service."""
    words = norms(heard.doc)
    opens = menu_said.opening_time(heard.doc) if menu_said.is_probed(heard.doc) else None
    if opens is not None:
        return before_service(opens, service_min) if opens < HALF_DAY_MIN + 60 else opens
    told = next((m for m in heard.doc._.clock if is_now(words, m)), None)
    if told:
        return before_service(told.low, service_min) if menu_said.is_bare(words, told) else told.low
    hour = hour_now(heard)
    return None if hour is None else before_service(hour.value * 60, service_min)


def before_service(minute: float, service_min: int) -> float:
    """A time whose half of the day is open, on the half by which it is nearer before service."""
    halves = (minute % HALF_DAY_MIN, minute % HALF_DAY_MIN + HALF_DAY_MIN)
    return min(halves, key=lambda at: (service_min - at) % DAY_MIN)


def hour_now(heard: Heard) -> Number | None:
    """A bare hour that it is now: it's 5 and it reads 120."""
    words = norms(heard.doc)
    for number in plain_numbers(heard.doc):
        led = any(words[max(0, number.start - len(lead.split())) : number.start] == lead.split() for lead in ITS)
        follows = number.end >= len(words) or words[number.end] in ("and", ",", ".", ";", "now", "-")
        if led and follows and number.value in menu_said.HOURS:
            return number
    return None


def is_now(words: list[str], time: Measure) -> bool:
    """Whether a time is the one it is now: its 12:30 and the roast reads 90."""
    led = any(words[max(0, time.start - len(lead.split())) : time.start] == lead.split() for lead in ITS)
    return led or clock_words.is_now(words, time)


def amount(heard: Heard, memory: Memory, plan: Request) -> Asked | None:
    """How much of a dish of the plan its covers want; covers that are said with it change the plan."""
    request, every = heard.hearing.request, dishes_of(plan)
    at = menu_parts.named_at(heard.doc, every)
    if request.quantity or HOW_MUCH not in request.forms or request.topic != ORDER or len(at) != 1:
        return None
    count = menu_said.covers(heard.doc, plan.portions, in_focus=True)
    plan = replace(plan, portions=count.all or plan.portions, meatless=count.meatless or plan.meatless)
    one = of_menu(plan)[at[0]] if plan.menu else plan
    if one.portions is None or (request.portions and not count.all):
        return None
    place: dict[str, Any] = {slot: getattr(plan, slot) for slot in (*PLACE_SLOTS, "units")}
    about = replace(request, dish=one.dish, dish_class=one.dish_class, portions=one.portions, dishes=(), **place)
    about = replace(about, subject=None, choices=(), small_talk=None)
    return Asked(plan, work_out(settle_in(about, memory.kitchen)))


def reading(heard: Heard, memory: Memory, plan: Request) -> Asked | None:
    """Whether a roast will be done, by the time it is now and what its middle reads."""
    words = norms(heard.doc)
    now = now_of(heard, minute_of(plan))
    read_c = core_read_c(heard, plan)
    wants = said(words, IN_TIME)
    if read_c is None or not (wants or now is not None) or not (said(words, READING) or wants):
        return None
    one = roast_of(heard, memory, plan)
    if one is None or (now is None and not wants):
        return None
    if now is None:
        return Asked(plan, told_only(heard, memory, plan, say("what-time")))
    work = stages(one)
    at = next((start for stage, start in zip(work, starts_of(work), strict=True) if stage.id == "cook"), None)
    went_in = next((m.low for m in heard.doc._.clock if began(words, m)), None)
    begun = went_in if went_in is not None else minute_of(plan) - (at or 0.0)
    had = (now - begun) % DAY_MIN
    left = (minute_of(plan) - now) % DAY_MIN
    if at is None or had > DAY_MIN / 2 or had < JUST_IN_MIN:
        return Asked(plan, told_only(heard, memory, plan, say("not-in-yet")))
    question = replace(one, text=heard.text, elapsed_min=had, core_c=read_c, left_min=left, unused=())
    return Asked(plan, work_out(settle_in(question, memory.kitchen)))


def told_only(heard: Heard, memory: Memory, plan: Request, headline: Words) -> WorkedOut:
    """One sentence about the plan."""
    from assistant.dialogue.made import said as one_sentence

    return one_sentence(heard.text, headline, replace(memory, kitchen=replace(memory.kitchen, units=plan.units)), PLAN)


def core_read_c(heard: Heard, plan: Request) -> float | None:
    """What the middle of a roast reads: with its unit, or a bare figure in the scale of the plan."""
    words = norms(heard.doc)
    given = next((m.low for m in heard.doc._.measures if m.kind == "temperature"), None)
    if given is not None:
        return given
    # the time that opens it is none of them
    first = 1 if menu_said.is_probed(heard.doc) else 0
    figures = [n.value for n in plain_numbers(heard.doc) if n != hour_now(heard) and n.start >= first]
    bare = [m.said for m in heard.doc._.measures if m.kind == "degree"] + figures
    read = [instruments.unscaled_c(figure, words, plan.units) for figure in bare]
    return next((temp_c for temp_c in read if READS_C[0] < temp_c < READS_C[1]), None)


def roast_of(heard: Heard, memory: Memory, plan: Request) -> Request | None:
    """The roast that is read: the one that is named, else the only one of the plan, or the one talked of last."""
    settled = settle_in(plan, memory.kitchen)
    every = of_menu(settled) if settled.menu else (settled,)
    at = menu_parts.named_at(heard.doc, dishes_of(plan))
    named = tuple(every[i] for i in at) or every
    roasts = [one for one in named if method_of(one) in IN_AN_OVEN and (at or is_of_meat(one))]
    last = memory.request.dish if memory.request else None
    return next((one for one in roasts if one.dish == last), next(iter(roasts), None))
