"""What an utterance changes of a plan: service, place, covers, a dish more or less, the state of one."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from assistant.dialogue.heard import Heard
from assistant.dialogue.memory import Memory
from assistant.dialogue.menu_asked import IN_AN_OVEN, is_focus
from assistant.dialogue.plans import as_clock, dishes_of, minute_of, moved_to, of_place, with_dishes
from assistant.dialogue.tonight import covers_said
from assistant.planning.clock import clock
from assistant.planning.schedule import STEP_MIN, service_moment
from assistant.reading.tokens import norms
from assistant.understanding import details, menu_parts, menu_said, serving
from assistant.understanding.conversation import merge
from assistant.understanding.cue_words import cues, said
from assistant.understanding.menu_parts import Mention
from rules.amounts.eaters import is_of_meat
from rules.catalogue import marked
from rules.foods.dishes import traits_of
from rules.heat.heat_settings import setting
from rules.model import PLACE_SLOTS, Request
from rules.physics.units import round_time_min
from rules.said import Words, duration, elevation, listed, number, oven, sentences
from rules.topics.schedule.menu import name_of, of_menu
from rules.topics.schedule.stages import method_of, stages

say = sentences("dialogue/menu")

ADDS, DROPS, WITH_THEM = (cues("menu_turns", name) for name in ("adds", "drops", "with_them"))
MOVES, SERVICE, SAME, LISTS = (cues("menu_turns", name) for name in ("moves", "service", "same", "lists"))
RATHER = cues("turning", "righted")
INSTEAD, IT, NONE = cues("menu_turns", "instead"), cues("menu_turns", "it"), cues("menu_turns", "none")
SAME_MENU, SEATED_TWICE = cues("menu_turns", "same_menu"), cues("menu_turns", "seated_twice")
# forms that ask for something else
ASKING = frozenset((
    "how_long", "how_hot", "how_much", "why", "wrong", "is_true", "is_ok", "safe", "can_it", "remaining", "worth",
    "enough",
))  # fmt: skip
# of a dish of the plan, and the same at any height
SAME_ANYWHERE, RESTING = ("doneness",), ("resting",)
# on whose half of the day a bare hour of a first service stands
EVENING_MIN = 18 * 60
SHORT, ALL = 9, ("all", "everything", "them all")
Change = tuple[Request, tuple[Words, ...]]


def change(heard: Heard, memory: Memory, plan: Request) -> Change | None:
    """The plan with what an utterance changes of it, and what is said of that; None where it changes nothing."""
    if not may_change(heard, memory):
        return None
    if is_moved_nowhere(heard) and plan.service_time:
        return replace(plan, service_time=None), ()
    new, notes = service_changed(heard, memory, plan)
    new, where = place_changed(heard, memory, new)
    still = new.service_time == plan.service_time and not only_counts(heard, plan)
    new, what = dishes_changed(heard, memory, new) if still or named(heard, plan) else (new, ())
    new = ovens_changed(heard, memory, covers_changed(heard, memory, new))
    oven_alone = one_oven(new) if new.ovens == 1 and new.service_time else ()
    counted = (
        () if new.menu or new.portions in (None, plan.portions) else (say("covers-now", count=number(new.portions, 0)),)
    )
    notes = (*notes, *where, *what, *counted, *without_meat(new, plan))
    return (new, (*notes, *oven_alone)) if notes or new != plan else None


def may_change(heard: Heard, memory: Memory) -> bool:
    """Whether an utterance may change the plan: it asks for nothing else."""
    request = heard.hearing.request
    if heard.move is not None:
        return False
    if memory.menu and named(heard, memory.menu) and serving.length(heard.doc, serving.SLACK) and not asks(heard):
        # have the ham ready half an hour early
        return True
    if tells_ovens(heard, memory) or moves_it(heard, memory) or counts_alone(heard, memory):
        return True
    if not ASKING.isdisjoint(request.forms):
        return False
    adds = said(norms(heard.doc)[:1], ADDS) and is_focus(memory)
    return request.topic in marked("for_plan") or heard.hearing.elliptical or adds or said(norms(heard.doc), SAME_MENU)


def only_counts(heard: Heard, plan: Request) -> bool:
    """Whether the figures of an utterance are those who eat, or a second seating, and of no dish."""
    if menu_parts.mentions(heard.doc):
        return False
    return said(norms(heard.doc), SEATED_TWICE) or covers_said(heard.doc, plan.portions) is not None


def asks(heard: Heard) -> bool:
    """Whether an utterance is put as a question."""
    return "?" in norms(heard.doc)


def named(heard: Heard, plan: Request) -> tuple[int, ...]:
    """The dishes of the plan that an utterance names."""
    return menu_parts.named_at(heard.doc, dishes_of(plan))


def others(heard: Heard, plan: Request) -> tuple[Mention, ...]:
    """The dishes that an utterance names and the plan has not."""
    every = dishes_of(plan)
    return tuple(m for m in menu_parts.mentions(heard.doc) if menu_parts.known_at(m, every) is None)


def is_moved_nowhere(heard: Heard) -> bool:
    """Whether all is to be moved, and nobody says by how much or to what time."""
    words = norms(heard.doc)
    told = heard.doc._.clock or heard.doc._.measures or heard.doc._.numbers
    return not told and said(words, MOVES) and said(words, (*ALL, *SERVICE)) and len(words) <= SHORT


def service_changed(heard: Heard, memory: Memory, plan: Request) -> Change:
    """The plan for another time or day of service, and by how much it was moved."""
    request = heard.hearing.request
    if others(heard, plan) and not said(norms(heard.doc), ADDS):
        return plan, ()
    new = plan
    if request.service_day and (is_focus(memory) or new_place(heard, memory, plan)):
        new = replace(plan, service_day=request.service_day)
    if named(heard, plan):
        return new, ()
    if plan.service_time is None:
        hour = menu_said.service_moved(heard.doc, EVENING_MIN, in_focus=is_focus(memory))
        return (new if hour is None else replace(new, service_time=as_clock(hour))), ()
    before = minute_of(plan)
    now = menu_said.service_moved(heard.doc, before, in_focus=is_focus(memory))
    if now is None or now == before:
        return new, ()
    if said(norms(heard.doc), SEATED_TWICE):
        return new, (second_seating(new, now),)
    told = menu_said.moved_by(heard.doc)
    by = now - before if told is None else int(told)
    way = "later" if by > 0 else "earlier"
    moved = moved_to(new, now, by) if new.service_day == plan.service_day else replace(new, service_time=as_clock(now))
    return moved, (say("moved", way=way, time=duration(abs(by))),)


def second_seating(plan: Request, minute: int) -> Words:
    """When each dish is begun once more for a second seating at a minute of the day; the first stays."""
    lines = (
        say("again-at", food=food, time=clock_of(replace(plan, service_time=as_clock(minute - before_min))))
        for food, before_min in starts(plan).items()
    )
    return say("second", time=clock_of(replace(plan, service_time=as_clock(minute))), lines=listed(lines, "semicolons"))


def new_place(heard: Heard, memory: Memory, plan: Request) -> Request | None:
    """The plan at another place, where one is said for it."""
    request, words, last = heard.hearing.request, norms(heard.doc), memory.request
    if request.elevation_m is None and request.pressure_pa is None:
        return None
    about_a_dish = last is not None and last.dish in {one.dish for one in dishes_of(plan)}
    rested = about_a_dish and last is not None and (last.topic in SAME_ANYWHERE or last.subject in RESTING)
    if not (is_focus(memory) or (rested and said(words, SAME)) or said(words, (*SAME_MENU, *LISTS))):
        return None
    if others(heard, plan) or named(heard, plan):
        return None
    only = replace(
        Request(units=request.units), **{slot: getattr(request, slot) for slot in PLACE_SLOTS}, unused=request.unused
    )
    at = merge(plan, replace(heard.hearing, elliptical=True, request=only))
    held: dict[str, Any] = {slot: getattr(at, slot) for slot in PLACE_SLOTS}
    return replace(plan, units=at.units, unused=of_place(at), **held)


def place_changed(heard: Heard, memory: Memory, plan: Request) -> Change:
    """The plan where the cook is to be, and how far that is from where it was."""
    moved = new_place(heard, memory, plan)
    if moved is None or moved.elevation_m == plan.elevation_m or moved.elevation_m is None:
        return plan, ()
    was = plan.elevation_m if plan.elevation_m is not None else memory.kitchen.elevation_m
    if was is None:
        return moved, ()
    before, now = starts(replace(plan, elevation_m=was)), starts(moved)
    lines = listed((start_moved(food, before[food] - now[food]) for food in now if food in before), "commas")
    note = say("other-place", here=elevation(moved.elevation_m), was=elevation(was), lines=lines)
    unmoved = heard.doc._.clock or not moved.service_time
    service = () if unmoved else (say("same-service", time=clock_of(moved)),)
    return moved, (note, *service)


def starts(plan: Request) -> dict[str, float]:
    """How long before service each dish is begun [min], by its name."""
    works = {one.dish or "": stages(one) for one in (of_menu(plan) if plan.menu else (plan,))}
    return {dish: round_time_min(sum(stage.plan_min for stage in work)) for dish, work in works.items() if work}


def start_moved(food: str, by_min: float) -> Words:
    """By how much a dish goes on later, or earlier."""
    way = "same" if abs(by_min) < STEP_MIN else "later" if by_min > 0 else "earlier"
    return say("start-moved", food=food, way=way, time=duration(abs(by_min)))


def clock_of(plan: Request) -> Words:
    """The time of service as it is said."""
    return clock(service_moment(plan.service_time or "", ""), plan.units)


def ovens_changed(heard: Heard, memory: Memory, plan: Request) -> Request:
    """The plan for as many ovens as are told behind it: one oven only."""
    count = serving.ovens(heard.doc)
    plan = replace(plan, ovens=count) if count and tells_ovens(heard, memory) else plan
    wanted_c, at = menu_said.oven_wanted_c(heard.doc), named(heard, plan)
    if wanted_c is None or len(at) != 1 or not plan.menu or method_of(plan.menu[at[0]]) not in IN_AN_OVEN:
        return plan
    every = tuple(replace(one, temperature_c=wanted_c) if i == at[0] else one for i, one in enumerate(plan.menu))
    return with_dishes(plan, every)


def one_oven(plan: Request) -> tuple[Words, ...]:
    """How a roast and what wants the oven hotter share it: that goes hot while the roast rests."""
    every = [one for one in of_menu(plan) if (method_of(one) or "") in IN_AN_OVEN] if plan.menu else []
    roast = next((one for one in every if is_of_meat(one) and any(s.id == "rest" for s in stages(one))), None)
    others = [one for one in every if one is not roast]
    if roast is None or not others:
        return ()
    rest_min = next(stage.plan_min for stage in stages(roast) if stage.id == "rest")
    heats = [setting(one.dish, one.dish_class or "general", method_of(one) or "") for one in others]
    out = clock_of(replace(plan, service_time=as_clock(minute_of(plan) - rest_min)))
    names = listed(name_of(one) for one in others)
    # as hot as the cook wants it, where that was said
    hot = oven(max(one.temperature_c or heat.low_c for one, heat in zip(others, heats, strict=True)))
    return (say("one-oven", food=name_of(roast), time=out, others=names, heat=hot),)


def moves_it(heard: Heard, memory: Memory) -> bool:
    """Whether the service of the plan that is talked of is moved to an hour, in a few words."""
    words = norms(heard.doc)
    told = heard.doc._.clock or heard.doc._.numbers
    return bool(told) and said(words, MOVES) and len(words) <= SHORT and is_focus(memory) and not asks(heard)


def tells_ovens(heard: Heard, memory: Memory) -> bool:
    """Whether nothing is said but how many ovens there are for the plan that is talked of."""
    words = norms(heard.doc)
    return serving.ovens(heard.doc) is not None and len(words) <= SHORT and is_focus(memory) and not asks(heard)


def counts_alone(heard: Heard, memory: Memory) -> bool:
    """Whether nothing but a figure is told that can be the covers of the plan that is talked of."""
    if not is_focus(memory) or len(norms(heard.doc)) > SHORT or asks(heard) or menu_parts.mentions(heard.doc):
        return False
    plan = memory.menu or memory.request
    return plan is not None and menu_said.figure_alone(heard.doc, plan.portions) is not None


def covers_changed(heard: Heard, memory: Memory, plan: Request) -> Request:
    """The plan for other covers; they are those of the plan where it was talked of last, or is named."""
    if not is_focus(memory) and not said(norms(heard.doc), (*SERVICE, *LISTS, *SAME_MENU)):
        return plan
    if menu_said.is_probed(heard.doc):
        return plan
    count = menu_said.covers(heard.doc, plan.portions, in_focus=is_focus(memory))
    if named(heard, plan) and not count.all:
        return plan
    asked = heard.hearing.request.portions if len(heard.doc) <= SHORT and not heard.doc._.clock else None
    alone = menu_said.figure_alone(heard.doc, plan.portions) if counts_alone(heard, memory) else None
    told = count.all or covers_said(heard.doc, plan.portions) or alone or asked
    return replace(plan, portions=told or plan.portions, meatless=count.meatless or plan.meatless)


def without_meat(plan: Request, before: Request) -> tuple[Words, ...]:
    """For how many the meat is counted, where that was said."""
    if plan.meatless in (None, before.meatless) or plan.portions is None or plan.meatless is None:
        return ()
    others = number(max(0, plan.portions - plan.meatless), 0)
    return (say("meatless", count=number(plan.meatless, 0), others=others),)


def dishes_changed(heard: Heard, memory: Memory, plan: Request) -> Change:
    """The plan with a dish more or less, or with one in another state."""
    words, every = norms(heard.doc), dishes_of(plan)
    at, new = named(heard, plan), others(heard, plan)
    more = tuple(menu_parts.told(mention, memory.kitchen, plan.units) for mention in new)
    if at and new and said(words, INSTEAD):
        left = tuple(one for i, one in enumerate(every) if i not in at)
        return with_dishes(in_focus(plan, more[-1]), (*left, *more)), ()
    rather = said(words, INSTEAD) or said(words[:1], RATHER)
    if new and not at and rather and is_focus(memory) and not asks(heard):
        kept = tuple(one for one in every if one.dish != plan.dish)
        return with_dishes(in_focus(plan, more[-1]), (*kept, *more)), ()
    adds = said(words, ADDS) and (is_focus(memory) or said(words[:1], ADDS) or said(words, WITH_THEM))
    # what is asked of another dish puts it on no menu
    adds = adds and not (asks(heard) and heard.hearing.request.topic not in marked("for_plan"))
    if new:
        joins = adds and (not at or said(words[:1], ADDS))
        return (with_dishes(in_focus(plan, more[-1]), (*every, *more)), ()) if joins else (plan, ())
    state = {i: new_state(heard, every[i]) for i in at}
    # no, chickpeas: they are meant; no chickpeas: they are left out
    drops = said(words, DROPS) or (said(words[:1], NONE) and words[1:2] != [","])
    if at and len(every) > len(at) and drops and not any(state.values()):
        left = tuple(one for i, one in enumerate(every) if i not in at)
        return with_dishes(plan, left), (say("dropped", food=name_of(every[at[0]])),)
    which = at[0] if len(at) == 1 else None if at else focus_of(heard, memory, every)
    return in_state(heard, plan, which) if which is not None else (plan, ())


def in_state(heard: Heard, plan: Request, which: int) -> Change:
    """The plan with one dish in another state, and what is to be known of that."""
    every = dishes_of(plan)
    one, state = every[which], new_state(heard, every[which])
    if not state:
        return plan, ()
    notes = tuple(u.reason for u in details.heard(norms(heard.doc), one) if u.reason) if "stuffed" in state else ()
    changed = (*every[:which], replace(one, **state), *every[which + 1 :])
    if state.get("soaked") and round_start(one) == round_start(replace(one, **state)):
        notes = (*notes, say("soaked-already", food=name_of(one)))
    return with_dishes(in_focus(plan, one), changed), notes


def in_focus(plan: Request, one: Request) -> Request:
    """The plan with a dish as the one that is talked of."""
    return replace(plan, dish=one.dish, dish_class=one.dish_class)


def round_start(one: Request) -> float:
    """How long before service a dish is begun, soaking and all [min]."""
    return sum(stage.plan_min for stage in stages(one))


def new_state(heard: Heard, one: Request) -> dict[str, Any]:
    """What an utterance says of a dish that was not so before."""
    told = menu_parts.state(heard.hearing.request, heard.doc, one)
    return {slot: value for slot, value in told.items() if getattr(one, slot) != value}


def focus_of(heard: Heard, memory: Memory, every: tuple[Request, ...]) -> int | None:
    """The dish that is meant where none is named: the only one that can be so, or the one that was talked of last."""
    if not is_focus(memory):
        return None
    if len(every) == 1:
        return 0
    told = menu_parts.state(heard.hearing.request, heard.doc, every[0])
    fits = {"stuffed": "whole_bird", "soaked": "dried_bean"}
    for slot, kind in fits.items():
        of_kind = [i for i, one in enumerate(every) if kind in (one.dish_class, *traits_of(one.dish, one.dish_class))]
        if slot in told and len(of_kind) == 1:
            return of_kind[0]
    last = memory.request.dish if memory.request else None
    it = said(norms(heard.doc), IT) or heard.hearing.elliptical
    return next((i for i, one in enumerate(every) if it and one.dish == last), None)
