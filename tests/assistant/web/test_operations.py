"""What whoever runs a server sees of it, and how it stops."""

from __future__ import annotations

import asyncio
import os
import signal
import subprocess
import sys
import threading
import time
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import httpx
import pytest
from prometheus_client.parser import text_string_to_metric_families

from assistant.answering import reply_to
from assistant.dialogue.domain import domain
from assistant.serving.counters import came_of
from assistant.store import open_store
from tests.assistant.web.conftest import TOKEN, Server, answers, free_port

SAID = "aunt wilhelmina and her goulash at 7,000 ft"
FAULT = "no salt"
PROGRAM = {"authorization": f"Bearer {TOKEN}"}
# the work for a call writes that it has begun, and then takes so long
SLOW_PAGE = """
import sys, time
from pathlib import Path
from assistant.web import asked
begun, takes_s, order = Path(sys.argv.pop(1)), float(sys.argv.pop(1)), asked.ordered
def slowly(*a):
    begun.touch()
    time.sleep(takes_s)
    return order(*a)
asked.ordered = slowly
from assistant.cli import main
main()
"""
SLOW_ACTION = """
import sys, time
from pathlib import Path
from assistant.dialogue import actions
begun, takes_s, take = Path(sys.argv.pop(1)), float(sys.argv.pop(1)), actions.take
def slowly(keeper, tracker, *more):
    if tracker.latest_message["text"].endswith("no salt"):
        raise ValueError(tracker.latest_message)
    begun.touch()
    time.sleep(takes_s)
    return take(keeper, tracker, *more)
actions.take = slowly
from assistant.cli import main
main()
"""


@pytest.fixture(scope="module")
def watched(started: Callable[..., Server]) -> Server:
    """A server that is watched, and wants a token."""
    return started("--metrics", "--log-requests", SIMMERLINE_TOKEN=TOKEN)


def counters(server: Server) -> dict[tuple[str, ...], float]:
    """Every sample by its name and the values of its labels, in the order of the labels' names."""
    told = httpx.get(f"{server.url}/metrics", headers=PROGRAM)
    assert told.headers["content-type"].startswith("text/plain; version=")
    return {
        (sample.name, *(value for _, value in sorted(sample.labels.items()))): sample.value
        for family in text_string_to_metric_families(told.text)
        for sample in family.samples
    }


def test_nobody_sees_counters_that_were_not_asked_for(server: Server) -> None:
    assert httpx.get(f"{server.url}/metrics").status_code == 404


def test_counters_want_the_token_like_everything_else(watched: Server) -> None:
    assert httpx.get(f"{watched.url}/metrics").status_code == 401


def test_requests_and_answers_are_counted_without_words(watched: Server) -> None:
    before = counters(watched)
    for text in (SAID, "how long to braise short ribs", "can green beans in a water bath at 7,000 ft"):
        assert httpx.post(f"{watched.url}/api/ask", json={"text": text}, headers=PROGRAM).status_code == 200
    httpx.post(f"{watched.url}/api/ask", json={"text": SAID, "depth": 9}, headers=PROGRAM)
    httpx.get(f"{watched.url}/api/{SAID}", headers=PROGRAM)
    httpx.get(f"{watched.url}/?{SAID}", headers=PROGRAM)
    after = counters(watched)
    more = {key: after[key] - before.get(key, 0.0) for key in after}
    assert more["simmerline_requests_total", "POST", "/api/ask", "200"] == 3
    assert more["simmerline_requests_total", "POST", "/api/ask", "422"] == 1
    assert more["simmerline_requests_total", "GET", "none", "404"] == 1
    assert more["simmerline_request_seconds_count", "/api/ask"] == 4
    answers = {key[1:]: value for key, value in more.items() if key[0] == "simmerline_answers_total" and value}
    assert sum(answers.values()) == 3
    # labels by name: what came of it, form, topic
    assert answers["asked_back", "how_long", "time"] == 1
    assert sum(value for (came, _, topic), value in answers.items() if (came, topic) == ("refused", "preserve")) == 1
    assert "wilhelmina" not in str(after)


def test_the_log_tells_routes_and_no_words(watched: Server) -> None:
    httpx.post(f"{watched.url}/api/ask", json={"text": SAID}, headers=PROGRAM)
    httpx.request("WILHELMINA", f"{watched.url}/{SAID}", headers=PROGRAM)
    log = watched.log.read_text()
    assert "simmerline.requests POST /api/ask 200 0." in log
    assert "wilhelmina" not in log.lower()


@pytest.mark.parametrize(
    ("text", "came"),
    [
        ("how long to braise short ribs at 7,000 ft", "answered"),
        ("how long to braise short ribs", "asked_back"),
        ("is chicken left out overnight safe to eat", "refused"),
        ("hello", "answered"),
        ("who won the match last night", "not_covered"),
    ],
)
def test_what_came_of_a_question(text: str, came: str) -> None:
    assert came_of(reply_to(text)) == came


class Slow:
    """A server whose work takes its time, and one call to it that was begun."""

    def __init__(self, code: str, command: str, folder: Path, takes_s: float, *options: str) -> None:
        self.begun, self.log, port = folder / "begun", folder / "log", free_port()
        self.url, self.database = f"http://localhost:{port}", f"sqlite:///{folder}/simmerline.db"
        arguments = [sys.executable, "-c", code, str(self.begun), str(takes_s), command, "--port", str(port), *options]
        with self.log.open("wb") as log:
            variables = {**os.environ, "SIMMERLINE_DB": self.database}
            self.process = subprocess.Popen(arguments, stdout=log, stderr=log, env=variables)
        self.came: list[httpx.Response | httpx.HTTPError] = []

    def call(self, path: str, body: dict[str, Any]) -> None:
        """Call, and come back when the work for it has begun."""
        self.calling = threading.Thread(target=self._call, args=(path, body))
        self.calling.start()
        wait_until(self.begun.exists, self)

    def _call(self, path: str, body: dict[str, Any]) -> None:
        try:
            self.came.append(httpx.post(f"{self.url}{path}", json=body, timeout=120))
        except httpx.HTTPError as fault:
            self.came.append(fault)

    def stop(self) -> int:
        """Tell it to stop, and how it ended."""
        self.process.send_signal(signal.SIGTERM)
        code = self.process.wait(timeout=60)
        self.calling.join(timeout=60)
        return code


@pytest.fixture
def slow(tmp_path: Path) -> Iterator[Callable[..., Slow]]:
    """Starts slow servers, and sees that they are gone."""
    running: list[Slow] = []

    def start(code: str, command: str, takes_s: float) -> Slow:
        running.append(Slow(code, command, tmp_path, takes_s, "--metrics", "--log-requests"))
        return running[-1]

    yield start
    for one in running:
        one.process.kill()


def wait_until(holds: Callable[[], bool], slow: Slow) -> None:
    for _ in range(1800):
        if holds():
            return
        assert slow.process.poll() is None, slow.log.read_text()
        time.sleep(0.1)
    raise AssertionError(slow.log.read_text())


def test_a_page_that_is_told_to_stop_finishes_what_is_under_way(slow: Callable[..., Slow]) -> None:
    server = slow(SLOW_PAGE, "serve", 1.0)
    wait_until(lambda: answers(server.url), server)
    kept = httpx.post(f"{server.url}/api/kitchens", json={"name": "Timberfold Lodge", "at": "7000ft"}, timeout=60)
    assert kept.status_code == 200
    # a line that is held open by somebody who asks nothing does not keep it
    with httpx.Client(base_url=server.url) as idle:
        idle.get("/api/health")
        server.call("/api/order", {"menu": "short ribs", "at": "7000ft", "covers": 90})
        assert server.stop() == 0
    (answer,) = server.came
    assert isinstance(answer, httpx.Response)
    assert "short ribs" in answer.text
    assert "Traceback" not in server.log.read_text()
    # the store was let go of whole: nothing is left beside it
    assert [path.name for path in server.log.parent.glob("simmerline.db*")] == ["simmerline.db"]
    store = open_store(server.database)
    with store.read() as connection:
        assert connection.exec_driver_sql("SELECT count(*) FROM kitchens").scalar() == 1
    store.close()


def test_a_page_does_not_wait_for_ever(slow: Callable[..., Slow]) -> None:
    server = slow(SLOW_PAGE, "serve", 3600.0)
    wait_until(lambda: answers(server.url), server)
    server.call("/api/order", {"menu": "short ribs", "at": "7000ft", "covers": 90})
    assert server.stop() == 0
    # by then whoever called was told that it took too long, or was hung up on
    (answer,) = server.came
    assert isinstance(answer, httpx.HTTPError) or answer.status_code == 503


def action(text: str) -> dict[str, Any]:
    tracker = {"sender_id": "r", "slots": {}, "latest_message": {"text": text}, "events": []}
    return {"next_action": "action_answer", "tracker": tracker, "domain": domain()}


def test_actions_are_watched_and_finish_what_is_under_way(slow: Callable[..., Slow]) -> None:
    server = slow(SLOW_ACTION, "actions", 1.0)
    wait_until(lambda: answers(server.url, "/health"), server)
    fault = httpx.post(f"{server.url}/webhook", json=action(f"{SAID} {FAULT}"), timeout=60)
    assert (fault.status_code, "wilhelmina" in fault.text) == (500, False)
    assert httpx.get(f"{server.url}/webhook").status_code == 405
    counted = httpx.get(f"{server.url}/metrics").text
    assert 'simmerline_requests_total{method="POST",route="/webhook",status="500"} 1.0' in counted.splitlines()
    server.call("/webhook", action(SAID))
    assert server.stop() == 0
    (answer,) = server.came
    assert isinstance(answer, httpx.Response)
    assert answer.json()["responses"][0]["text"]
    log = server.log.read_text()
    assert "simmerline.requests POST /webhook 200 " in log
    assert "ValueError at " in log
    assert "wilhelmina" not in log.lower()
    assert "Traceback" not in log


def test_words_of_people_stand_in_no_log_whoever_writes_it(caplog: pytest.LogCaptureFixture) -> None:
    """By way of rasa-sdk's executor too, which logs a good deal."""
    from assistant.dialogue.embedded import Conversation

    caplog.set_level("INFO")
    conversation = Conversation()
    for text in (SAID, f"{SAID}: 2 cups flour, bake 20 min at 400 F", "wilhelmina?", "timer for wilhelmina"):
        asyncio.run(conversation.say(text))
    assert "wilhelmina" not in caplog.text.lower()
