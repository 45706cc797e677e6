"""A schedule by the clock."""

from datetime import datetime, timedelta
from itertools import pairwise

import pytest

from assistant.answering import reply_to_request
from assistant.planning.schedule import day_name, down_to_step, service_moment, weekday
from assistant.replies.sentences import worded
from rules.model import Quantity, Request


def ask(text: str, service_time: str, **changes: object) -> Request:
    given: dict[str, object] = {"dish": "short ribs", "dish_class": "collagen_cut", "elevation_m": 2133.6}
    return Request(text=text, topic="schedule", service_time=service_time, **{**given, **changes})


def moments(steps: tuple[str, ...]) -> list[datetime]:
    return [datetime.strptime(step.split(": ")[0], "%H:%M") for step in steps]


def test_the_steps_add_up_to_the_figures() -> None:
    answer = reply_to_request(ask("to serve at 18:00", "18:00", units="metric"))
    times = moments(answer.steps)
    planned = [answer.figure(f"{stage}_time").value for stage in ("heat_up", "cook", "rest")]
    for at, (begin, end) in zip(planned, pairwise(times), strict=True):
        assert end - begin == pytest.approx(timedelta(minutes=at), abs=timedelta(minutes=5))
    assert answer.steps[-1] == "18:00: Serve."
    begun = (
        f"Start short ribs by {times[0]:%H:%M}, cooking by {times[1]:%H:%M}, to serve at 18:00 at 2,134 m (7,000 ft)."
    )
    assert answer.headline == begun


def test_the_window_is_told_in_the_reason() -> None:
    answer = reply_to_request(ask("to serve at 6 pm", "18:00"))
    total = answer.figure("start_before_service")
    six = datetime(2001, 1, 1, 18)
    latest = down_to_step(six - timedelta(minutes=total.low))
    assert f"and {latest:%-I:%M %p}".lower() in answer.because[0].text.lower()


def test_what_begins_the_day_before_says_so() -> None:
    beans = {"dish": "white beans", "dish_class": "dried_bean"}
    assert "the day before: Soak" in reply_to_request(ask("serve at noon", "12:00", **beans)).steps[0]
    assert "on Friday: Soak" in reply_to_request(ask("saturday lunch at 12", "12:00", **beans)).steps[0]
    assert "today: Soak" in reply_to_request(ask("tomorrow at noon", "12:00", **beans)).steps[0]


def test_an_iso_date_is_read() -> None:
    answer = reply_to_request(ask("to serve", "2026-03-07T18:00", units="metric"))
    assert answer.steps[-1] == "18:00: Serve."


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("Saturday at 7", 5),
        ("on Tues", 1),
        ("next Wednesday", 2),
        ("Sundays", 6),
        ("sunny-side eggs at 8", None),
        ("it sat in the sun", None),
        ("a month from now", None),
    ],
)
def test_a_day_of_the_week_is_heard(text: str, day: int | None) -> None:
    assert weekday(text) == day


def test_service_on_a_named_day_falls_on_that_day() -> None:
    assert service_moment("07:15", "Thursday breakfast").strftime("%A %H:%M") == "Thursday 07:15"


@pytest.mark.parametrize(
    ("text", "days_before", "named"),
    [
        ("Monday", 1, "on Sunday"),
        ("Saturday at 7", 1, "on Friday"),
        ("tomorrow at 7", 1, "today"),
        ("tomorrow at 7", 0, "tomorrow"),
        ("at 7", 2, "2 days before"),
        ("at 7", 1, "the day before"),
        ("at 7", 0, ""),
    ],
)
def test_a_day_is_named_from_the_day_of_service(text: str, days_before: int, named: str) -> None:
    assert worded(day_name(text, days_before), "us") == named


def test_a_schedule_that_lacks_something_is_asked_back() -> None:
    answer = reply_to_request(Request(text="when do I start", topic="schedule"))
    assert answer.missing == ("dish", "service_time", "elevation")
    assert answer.headline.endswith("?")


def test_advice_of_another_rule_has_no_time_of_day() -> None:
    smoked = ask("brisket out by 5 pm", "17:00", dish="beef brisket", method="smoke")
    steps = reply_to_request(smoked).steps
    assert steps[0].endswith("Light the smoker and let it settle.")
    assert [step for step in steps if step.startswith("5 pm")] == ["5 pm: Serve."]


def test_a_time_of_the_cooks_own_is_planned_as_it_is() -> None:
    fudge = reply_to_request(ask("fudge takes 30 minutes", "17:00", dish="fudge", dish_class="candy", time_min=30.0))
    assert fudge.headline == "Start fudge by 4:30 pm to serve at 5 pm at 7,000 ft (2,130 m)."


@pytest.mark.parametrize(
    ("start", "opens"),
    [("08:00", "Yes, 8 am is early enough."), ("13:00", "1 pm can do"), ("15:00", "No, 3 pm is too late: ")],
)
def test_the_start_that_the_cook_named_is_judged(start: str, opens: str) -> None:
    assert reply_to_request(ask("for 6 pm", "18:00", start_time=start)).headline.startswith(opens)


def test_several_dishes_each_have_their_time() -> None:
    answer = reply_to_request(ask("all for 7:30", "19:30", dishes=("beef cheeks", "basmati rice"), units="metric"))
    assert answer.headline.startswith("To serve at 19:30 at 2,134 m (7,000 ft): beef cheeks at ")
    assert "; basmati rice at 18:" in answer.headline
    times = moments(answer.steps)
    assert times == sorted(times)


def test_loads_have_their_times() -> None:
    birds = {"dish": "turkey", "dish_class": "whole_bird", "count": 8, "ovens": 2, "quantity": Quantity(18.0, "lb")}
    answer = reply_to_request(ask("at 4", "16:00", **birds))
    assert "in 2 loads, the first in at " in answer.headline
    assert answer.steps[-1] == "4 pm: Serve."
