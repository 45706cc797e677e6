"""Timers in conversation: what is said, what is kept, what rings."""

from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest
from dateutil import tz
from hypothesis import given
from hypothesis import strategies as st

from assistant.dialogue import timers
from assistant.dialogue.timer import Timer
from assistant.dialogue.timers import decide, matching, obey, rings
from assistant.planning.clock import clock, stretch
from assistant.store import open_store
from assistant.store import timers as stored
from assistant.store.database import Store
from assistant.understanding import timer_words
from assistant.understanding.pipeline import read
from rules.model import Request

LODGE = tz.gettz("America/Denver")
FOUR = datetime(2026, 3, 7, 16, 0, tzinfo=LODGE)


def timer(name: str, minutes: float, dish: str | None = None, id: int = 0) -> Timer:
    return Timer(name=name, dish=dish, starts_at=FOUR, ends_at=FOUR + timedelta(minutes=minutes), id=id)


def asked(text: str, minutes: float | None = None, dish: str | None = None) -> Request:
    words = {"timer_action": timer_words.action(text), "timer_name": timer_words.name(read(text))}
    return Request(text=text, topic="timer", time_min=minutes, dish=dish, **words)


@pytest.fixture
def store(database: str) -> Iterator[Store]:
    opened = open_store()
    yield opened
    opened.close()


@pytest.mark.parametrize(
    ("text", "what"),
    [
        ("set a timer for the beans 90 minutes", "set"),
        ("timer 2h30 short ribs", "set"),
        ("remind me in an hour and a half to check the oxtail", "set"),
        ("start the clock, 35 min, banana bread", "set"),
        ("set another timer, 10 minutes", "set"),
        ("how long left on the beans", "left"),
        ("Time remaining on the veal stock?", "left"),
        ("what timers are running", "left"),
        ("when will the rice be done", "left"),
        ("add ten minutes to the rice timer", "extend"),
        ("five more minutes on the bread", "extend"),
        ("cancel the egg timer", "stop"),
        ("turn off the timer", "stop"),
        ("clear all timers", "stop_all"),
        ("stop everything", "stop_all"),
    ],
)
def test_what_is_to_be_done(text: str, what: str) -> None:
    assert (timer_words.action(text) or "set") == what


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("set a timer for the beans 90 minutes", "beans"),
        ("start a 12 minute timer for the pasta", "pasta"),
        ("timer for 1½ hrs lamb shanks", "lamb shanks"),
        ("ping me in 20 minutes to flip the flank steak", "flank steak"),
        ("give me a 45 min timer on the focaccia", "focaccia"),
        ("how much time is left on the turkey timer", "turkey"),
        ("set a tmer for 8 minuts eggs", "eggs"),
        ("set a timer for the thyme sauce", "thyme sauce"),
        ("Time remaining on the veal stock?", "veal stock"),
        ("set timer three quarters of an hour", ""),
        ("what timers are running", ""),
    ],
)
def test_a_timer_is_named_as_the_cook_names_it(text: str, name: str) -> None:
    assert timer_words.name(read(text)) == name


def test_a_timer_is_set_and_asked_after() -> None:
    outcome = decide(asked("set a timer for the beans 90 minutes", 90, "dried beans"), (), FOUR)
    assert outcome.text == "Timer for the beans set: 1 h 30 min, until 5:30 pm."
    assert outcome.new == timer("beans", 90, "dried beans")
    later = FOUR + timedelta(minutes=18)
    left = decide(asked("how long left on the beans"), (outcome.new,), later)
    assert left.text == "Beans: 1 h 12 min left, until 5:30 pm."
    assert (left.new, left.changed, left.gone) == (None, (), ())


def test_a_timer_without_a_time_is_asked_back() -> None:
    outcome = decide(asked("set a timer for the beans"), (), FOUR)
    assert (outcome.text, outcome.missing, outcome.new) == ("How long for the beans?", ("time",), None)
    assert decide(asked("set a timer"), (), FOUR).text == "For how long?"


@pytest.mark.parametrize("minutes", [0.0, -5.0, float("nan"), float("inf"), 1e9])
def test_an_impossible_time_is_asked_back(minutes: float) -> None:
    for text in ("set a timer for the beans", "add some time to the beans"):
        outcome = decide(asked(text, minutes), (timer("beans", 90),), FOUR)
        assert outcome.missing == ("time",)
        assert (outcome.new, outcome.changed) == (None, ())


def test_several_run_at_once_and_are_told_apart() -> None:
    running = (timer("eggs", 9, id=1), timer("beans", 90, id=2))
    assert decide(asked("what timers are running"), running, FOUR).text == (
        "Eggs: 9 min left, until 4:09 pm. Beans: 1 h 30 min left, until 5:30 pm."
    )
    unclear = decide(asked("stop the timer"), running, FOUR)
    assert (unclear.text, unclear.gone) == ("Which one: eggs or beans?", ())
    assert decide(asked("stop the beans"), running, FOUR).gone == (running[1],)
    unknown = decide(asked("cancel the rice timer"), running, FOUR)
    assert (unknown.text, unknown.gone) == ("There is no timer for rice. Which one: eggs or beans?", ())
    assert decide(asked("clear all timers"), running, FOUR).gone == running


def test_the_only_timer_needs_no_name() -> None:
    assert decide(asked("stop the timer"), (timer("beans", 90),), FOUR).text == "Stopped: beans."


def test_a_second_timer_of_a_name_gets_a_number() -> None:
    first = timer("beans", 90)
    second = decide(asked("set another timer for the beans, 20 minutes", 20), (first,), FOUR).new
    assert second is not None
    assert second.name == "beans 2"
    third = decide(asked("set a timer for the beans", 5), (first, second), FOUR).new
    assert third is not None
    assert third.name == "beans 3"
    assert matching("beans", None, (first, second)) == (first,)
    assert matching("beans 2", None, (first, second)) == (second,)


@pytest.mark.parametrize(
    ("said", "dish", "meant"),
    [
        ("bean", None, "beans"),
        ("veal stock", "beef stock", "stock"),
        ("ribs", None, "short ribs"),
        ("rice", None, None),
    ],
)
def test_a_timer_is_found_by_its_name_its_words_or_its_dish(said: str, dish: str | None, meant: str | None) -> None:
    running = (timer("beans", 90), timer("stock", 360, "beef stock"), timer("short ribs", 200))
    assert [t.name for t in matching(said, dish, running)] == ([meant] if meant else [])


def test_more_time_runs_from_the_end_or_from_now_where_that_is_past() -> None:
    beans = timer("beans", 30)
    soon = decide(asked("add ten minutes to the beans", 10), (beans,), FOUR).changed[0]
    assert soon == replace(beans, ends_at=FOUR + timedelta(minutes=40))
    late = FOUR + timedelta(minutes=45)
    again = decide(asked("ten more minutes for the beans", 10), (replace(beans, rang=True),), late).changed[0]
    assert again == replace(beans, ends_at=late + timedelta(minutes=10))


def test_a_timer_that_ended_says_so() -> None:
    beans = timer("beans", 30)
    assert timers.left(beans, FOUR + timedelta(minutes=30), "us") == "The timer for the beans is up."
    assert timers.left(beans, FOUR + timedelta(minutes=42), "us") == "The timer for the beans ended 12 min ago."


def test_a_timer_that_has_rung_is_no_longer_told_of_nor_in_the_way_of_the_next() -> None:
    """It is still found by its name, until another one is set."""
    rung = replace(timer("eggs", 6, id=1), rang=True)
    now = FOUR + timedelta(minutes=10)
    both = (rung, timer("beans", 90, id=2))
    assert decide(asked("how long left"), both, now).text == "Beans: 1 h 20 min left, until 5:30 pm."
    assert decide(asked("how long left on the eggs"), both, now).text == "The timer for the eggs ended 4 min ago."
    assert decide(asked("how long left"), (rung,), now).text == "No timer is running."
    again = decide(asked("set a timer for the eggs", 6), both, now)
    assert (again.new and again.new.name, again.gone) == ("eggs", (rung,))


def test_a_timer_keeps_its_length_when_the_clocks_change() -> None:
    """In 2026 clocks in America/Denver go from 2 am to 3 am on 8 March (U.S. Energy Policy Act of 2005)."""
    night = datetime(2026, 3, 8, 1, 30, tzinfo=LODGE)
    new = decide(asked("set a timer for the dough 60 minutes", 60), (), night).new
    assert new is not None
    assert new.ends_at - night.astimezone(UTC) == timedelta(hours=1)
    assert clock(new.ends_at) == "3:30 am"


def test_timers_survive_a_restart(store: Store) -> None:
    obey(store, asked("set a timer for the beans 90 minutes", 90), FOUR, "a")
    obey(store, asked("set a timer for the eggs", 9), FOUR, "a")
    store.close()
    again = open_store()
    late = FOUR + timedelta(minutes=21)
    assert rings(again, late, "b") == ()
    assert rings(again, late, "a") == ("The timer for the eggs ended 12 min ago.",)
    assert rings(again, late, "a") == ()
    assert obey(again, asked("how long left on the beans"), late, "a").text == "Beans: 1 h 9 min left, until 5:30 pm."
    assert obey(again, asked("how long left on the beans"), late, "b").text == "No timer is running."
    obey(again, asked("five more minutes for the eggs", 5), late, "a")
    assert rings(again, late + timedelta(minutes=5), "a") == ("The timer for the eggs is up.",)
    obey(again, asked("clear all timers"), late, "a")
    assert obey(again, asked("what timers are running"), late, "a").text == "No timer is running."


@given(st.integers(0, 8 * 24 * 3600))
def test_a_stretch_in_words_is_as_long_as_it_was(seconds: int) -> None:
    """To the second under two minutes, to the minute under a day, to the hour beyond."""
    words = stretch(timedelta(seconds=seconds)).split()
    size = {"days": 86400, "day": 86400, "h": 3600, "min": 60, "s": 1}
    said = sum(int(n) * size[unit] for n, unit in zip(words[::2], words[1::2], strict=True))
    assert abs(said - seconds) <= (0 if seconds < 120 else 30 if seconds < 86400 - 30 else 3600)


def fired(dish: str, left_min: float, time: str = "18:30", day: str | None = None) -> Request:
    """A timer for the start of a dish of a plan."""
    return Request(
        topic="timer", timer_action="fire", timer_name=dish, dish=dish, left_min=left_min, service_time=time,
        service_day=day,
    )  # fmt: skip


def test_a_timer_of_a_plan_rings_when_its_dish_is_begun() -> None:
    """7 March 2026 is a Saturday: at 6:30 pm less 50 min the polenta goes on."""
    outcome = decide(fired("polenta", 50), (), FOUR)
    assert outcome.new is not None
    assert outcome.new.ends_at == FOUR.replace(hour=17, minute=40)
    assert outcome.text == "Timer for the start of polenta: 5:40 pm, in 1 h 40 min."


def test_a_timer_of_a_plan_for_another_day_crosses_the_change_of_the_clocks() -> None:
    """On 8 March 2026 the clocks of Colorado leap from 2 to 3 am: 12 h before 10 am it is 9 pm."""
    outcome = decide(fired("pork shoulder", 12 * 60, time="10:00", day="sunday"), (), FOUR)
    assert outcome.new is not None
    assert outcome.new.ends_at == FOUR.replace(hour=21)
    assert "in 5 h" in outcome.text


def test_what_should_be_on_already_gets_no_timer() -> None:
    outcome = decide(fired("short ribs", 6 * 60), (), FOUR)
    assert outcome.new is None
    assert outcome.text == "Short ribs should be on already: no timer."


def follow(*begun: tuple[str, float | None], time: str = "19:00") -> Request:
    """The timers of a plan are to follow it. begun: the dishes, each with how long before service it is begun [min]"""
    menu = tuple(Request(topic="timer", timer_name=dish, left_min=left_min) for dish, left_min in begun)
    return Request(topic="timer", timer_action="follow", service_time=time, menu=menu)


def planned(dish: str, left_min: float, id: int, rang: bool = False) -> Timer:
    """The timer of a dish for a service at 6:30 pm."""
    ends = FOUR.replace(hour=18, minute=30) - timedelta(minutes=left_min)
    return Timer(name=f"start of {dish}", dish=dish, starts_at=FOUR, ends_at=ends, id=id, rang=rang)


def test_the_timers_of_a_plan_move_with_its_service() -> None:
    running = (planned("short ribs", 120, 1), planned("polenta", 50, 2), timer("eggs", 12, id=3))
    outcome = decide(follow(("short ribs", 120), ("polenta", 50)), running, FOUR)
    assert [(one.id, one.ends_at) for one in outcome.changed] == [
        (1, FOUR.replace(hour=17)),
        (2, FOUR.replace(hour=18, minute=10)),
    ]
    assert (outcome.new, outcome.gone) == (None, ())
    assert outcome.text == (
        "The timers move with it. Timer for the start of short ribs: 5 pm, in 1 h. "
        "Timer for the start of polenta: 6:10 pm, in 2 h 10 min."
    )


def test_timers_that_need_not_move_are_not_spoken_of() -> None:
    assert decide(follow(("polenta", 50), time="18:30"), (planned("polenta", 50, 1),), FOUR).text == ""
    assert decide(follow(("polenta", 50)), (timer("polenta", 20),), FOUR).text == ""
    over = planned("polenta", 160, 1, rang=True)
    assert decide(follow(("polenta", 50)), (over,), FOUR).changed == ()


def test_a_timer_of_a_dish_that_should_be_on_by_now_or_is_off_the_plan_is_stopped() -> None:
    running = (planned("short ribs", 120, 1), planned("polenta", 50, 2))
    outcome = decide(follow(("short ribs", 200), ("polenta", None)), running, FOUR)
    assert [one.id for one in outcome.gone] == [1, 2]
    assert outcome.text == (
        "Short ribs should be on by now: its timer is stopped. Polenta is off the plan: its timer is stopped."
    )


def test_the_soak_has_rung_and_the_pot_moves() -> None:
    """Beans have two beginnings; the timer that is left is the second's."""
    outcome = decide(follow(("beans", 700), ("beans", 100)), (planned("beans", 100, 7),), FOUR)
    assert [(one.id, one.ends_at) for one in outcome.changed] == [(7, FOUR.replace(hour=17, minute=20))]
    both = (planned("beans", 140, 7), replace(planned("beans", 100, 8), name="start of beans 2"))
    assert [one.id for one in decide(follow(("beans", 100)), both, FOUR).gone] == [7]


def test_timers_of_a_plan_that_moved_are_kept_so(store: Store) -> None:
    obey(store, fired("polenta", 50), FOUR, "line")
    obey(store, follow(("polenta", 50)), FOUR, "line")
    (kept,) = stored.of_conversation(store, "line")
    assert kept.ends_at == FOUR.replace(hour=18, minute=10)
    assert obey(store, follow(("polenta", 50)), FOUR, "somebody else").text == ""
