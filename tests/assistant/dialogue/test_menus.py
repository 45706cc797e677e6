"""A plan over several turns: what is said moves, and nothing else does."""

from __future__ import annotations

import re
from datetime import datetime, timedelta

import pytest

from assistant.dialogue.memory import Memory
from assistant.dialogue.slots import memory_of, slots_of
from assistant.dialogue.turn import Turn, take_turn

MENU = "Lodge at 7,000 ft. Friday 48 covers, plates at 6:30 pm: lamb shanks, polenta, carrots and apple crisp"
LINE = re.compile(r"^\d+\. (\S+(?: [ap]m)?): Fire (\D+?)\.", re.MULTILINE)


def talk(*said: str) -> list[Turn]:
    memory, turns = Memory(), []
    for text in said:
        turns.append(take_turn(text, memory))
        memory = turns[-1].memory
    return turns


def starts(turn: Turn) -> dict[str, datetime]:
    """When each dish is fired."""
    return {food: at(time) for time, food in LINE.findall(turn.answer.text)}


def at(time: str) -> datetime:
    if time == "noon":
        return datetime(1900, 1, 1, 12)
    return datetime.strptime(time, "%I:%M %p" if ":" in time else "%I %p")


@pytest.mark.parametrize(
    ("said", "by_min"),
    [
        ("we serve at 7 now", 30),
        ("push it by 45 minutes", 45),
        ("half an hour earlier", -30),
        ("bring it forward 20 minutes", -20),
        ("service is 7:15, everything", 45),
        ("no, 6", -30),
        ("dinner is at 8", 90),
    ],
)
def test_a_moved_service_moves_every_start_alike(said: str, by_min: int) -> None:
    before, after = (starts(turn) for turn in talk(MENU, said))
    assert before.keys() == after.keys()
    assert len(before) == 4
    assert {after[food] - before[food] for food in before} == {timedelta(minutes=by_min)}


@pytest.mark.parametrize(
    "said",
    [
        "thanks", "what does water boil at here", "make it 52", "how long for the carrots", "why", "drop the carrots",
        "how much polenta", "add green beans", "whole list again", "what internal temp for the shanks",
        "set a timer for 25 min",
        "the shanks are bone in", "is 165 safe for chicken",
    ],
)  # fmt: skip
def test_the_service_the_day_and_the_place_change_only_when_they_are_said(said: str) -> None:
    plan = talk(MENU, said)[-1].memory.menu
    assert plan is not None
    assert (plan.service_time, plan.service_day, round(plan.elevation_m or 0)) == ("18:30", "friday", 2134)


def test_a_plan_travels_through_json() -> None:
    memory = talk(MENU)[-1].memory
    assert memory.menu is not None
    assert memory_of(slots_of(memory)) == memory


def test_each_dish_can_be_asked_for_by_those_who_set_timers() -> None:
    memory = talk(MENU)[-1].memory
    known = {one.dish: one for one in memory.earlier}
    assert set(known) == {"lamb shanks", "polenta", "carrots", "apple crisp"}
    assert {one.topic for one in known.values()} == {"time"}
    assert {round(one.elevation_m or 0) for one in known.values()} == {2134}


def test_a_change_is_told_in_short() -> None:
    first, again = talk(MENU, "we serve at 7 now")
    assert len(again.answer.text) < len(first.answer.text)
    assert "Sources" not in again.answer.text


def test_what_one_says_of_a_dish_is_not_said_of_another() -> None:
    plan = talk("Serve at 7 at night, 7,000 ft: lamb shanks 4 lb, soaked pinto beans, plain rice")[-1].memory.menu
    assert plan is not None
    assert [one.soaked for one in plan.menu] == [None, True, None]
    assert [one.quantity is not None for one in plan.menu] == [True, False, False]
