"""Several servers on one database: a conversation goes from one to the other, and outlives the one it began on."""

from __future__ import annotations

import os
import signal
import time
from collections.abc import Callable, Iterator
from contextlib import suppress
from datetime import datetime, timedelta
from itertools import cycle
from threading import Thread

import httpx
import pytest

from tests.assistant.store.conftest import empty
from tests.assistant.web.conftest import Person, Server

TURNS = (
    "how long to braise short ribs at 7,000 feet",
    "and at 9,000?",
    "what about lamb shanks",
    "how much water for rice for 20",
    "and for 60",
    "what did I ask about first",
)


@pytest.fixture(scope="module")
def another_server(
    started: Callable[..., Server], cluster: str, tmp_path_factory: pytest.TempPathFactory
) -> Callable[[], Server]:
    """Starts servers as on machines of their own: nothing but the database is common to them."""
    empty(cluster)

    def start() -> Server:
        home = str(tmp_path_factory.mktemp("home"))
        return started(SIMMERLINE_DB=cluster, XDG_DATA_HOME=home, HOME=home)

    return start


@pytest.fixture(scope="module")
def two(another_server: Callable[[], Server]) -> tuple[Server, Server]:
    return another_server(), another_server()


@pytest.fixture
def cook() -> Iterator[Person]:
    """Somebody whose browser is sent now to one server, now to another."""
    with Person(timeout=60) as client:
        yield client


def at(server: Server, cook: Person) -> Person:
    cook.base_url = httpx.URL(server.url)
    return cook


def timers(page: httpx.Response) -> list[tuple[str, datetime]]:
    """The timers of a person, each with when it ends."""
    return [(one["name"], datetime.fromisoformat(one["ends"])) for one in page.json()]


def test_turn_by_turn_they_answer_as_one(two: tuple[Server, Server], cook: Person, person: Person) -> None:
    alone = [person.ask(text) for text in TURNS]
    assert [at(server, cook).ask(text) for server, text in zip(cycle(two), TURNS, strict=False)] == alone
    assert len(cook.cookies) == 1


def test_a_timer_that_one_has_set_runs_on_the_other(two: tuple[Server, Server], cook: Person) -> None:
    first, second = two
    at(first, cook).ask("set a timer for the beans for 90 minutes")
    before = timers(at(first, cook).get("/timers/running"))
    assert [name for name, _ in before] == ["beans"]
    assert timers(at(second, cook).get("/timers/running")) == before
    at(second, cook).form("/timers", do="more", name="beans")
    later = timers(at(first, cook).get("/timers/running"))
    assert later == [("beans", before[0][1] + timedelta(minutes=5))]
    at(first, cook).ask("stop the beans timer")
    assert timers(at(second, cook).get("/timers/running")) == []


def test_one_is_killed_and_the_other_goes_on(
    two: tuple[Server, Server], another_server: Callable[[], Server], cook: Person
) -> None:
    first, (second, _) = another_server(), two
    at(first, cook).ask("how long to braise short ribs at 7,000 feet")
    at(first, cook).ask("set a timer for the ribs for 90 minutes")
    running = timers(at(first, cook).get("/timers/running"))
    cookie, key = dict(cook.cookies), cook.key("/")

    def asks_and_hears_nothing() -> None:
        with Person(base_url=first.url, timeout=60, cookies=cookie) as same, suppress(httpx.TransportError):
            for _ in range(1000):
                same.post("/ask", data={"form_key": key, "text": "and at 9,000?"}, follow_redirects=True)

    asking = Thread(target=asks_and_hears_nothing)
    asking.start()
    time.sleep(0.5)
    os.kill(first.pid, signal.SIGKILL)
    asking.join(timeout=60)

    told = at(second, cook).ask("and at 8,000?")
    assert "short ribs at 8,000 ft" in told
    assert timers(cook.get("/timers/running")) == running
    assert "lamb shanks at 8,000 ft" in cook.ask("what about lamb shanks")
