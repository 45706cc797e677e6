"""One answer behind every front end, and conversations that do not mix."""

from __future__ import annotations

import asyncio
import json
import re
import time
from collections.abc import Callable, Iterator
from contextlib import ExitStack, contextmanager
from typing import Any

import httpx
import pytest
from rasa_sdk import __version__
from sanic import Sanic
from typer.testing import CliRunner

from assistant.answering import reply_to
from assistant.cli.app import create_app as create_command
from assistant.dialogue.domain import domain
from assistant.dialogue.embedded import Conversation, Said
from assistant.dialogue.executor import KitchenExecutor
from assistant.dialogue.keeper import Keeper
from assistant.dialogue.memory import Memory
from assistant.dialogue.server import create_app
from assistant.dialogue.slots import slots_of
from assistant.drill import Sitting
from assistant.replies.contract import as_json
from assistant.store import open_store, progress
from rules.model import Kitchen

FT_M = 0.3048
Batch = Callable[..., dict[str, Any]]
QUESTIONS = (
    "how long to braise short ribs at 7,000 feet",
    "how long to braise short ribs",
    "what does water boil at in Santa Fe",
    "why does pasta take longer at 2,100 m",
    "what temperature is soft ball at 7,500 ft",
    "how long do I process pints of tomatoes at 5,500 ft",
    "my kitchen is at 7,000 ft",
    "who won the match last night",
    "good morning, chef",
)
TALK = ("how long to braise short ribs", "why do you need that?", "7,000", "and in the pressure cooker", "in Celsius")


def by_action(text: str) -> dict[str, Any]:
    """The answer of a new conversation through the actions; the question that is asked, where a piece is missing."""
    return asyncio.run(Conversation().say(text)).answers[-1]


def by_command(*arguments: str) -> dict[str, Any]:
    """The answer of the command line."""
    done = CliRunner().invoke(create_command(), ["ask", "--json", *arguments])
    answer: dict[str, Any] = json.loads(done.stdout)
    return answer


@pytest.mark.parametrize("text", QUESTIONS)
def test_the_same_answer_by_command_line_action_and_batch(text: str, by_batch: Batch) -> None:
    """To the byte."""
    answers = [by_command(text), by_action(text), by_batch(text), as_json(reply_to(text))]
    assert len({json.dumps(answer) for answer in answers}) == 1


@pytest.mark.parametrize("turn", range(1, len(TALK)), ids=lambda turn: TALK[turn])
def test_the_same_conversation_by_context_and_by_actions(turn: int, by_batch: Batch) -> None:
    """A line with its context is answered as the conversation that it stands for."""

    async def held() -> Any:
        conversation = Conversation()
        return [await conversation.say(text) for text in TALK[: turn + 1]][-1]

    said, batch = asyncio.run(held()), by_batch(TALK[turn], TALK[:turn])
    assert batch["text"] == said.text
    assert batch["figures"] == said.answers[-1]["figures"]
    assert batch["missing"] == said.answers[-1]["missing"]


def test_fifty_conversations_at_once_do_not_mix() -> None:
    """Each at an elevation of its own, on one executor, turn by turn."""
    executor = KitchenExecutor()

    async def hold(number: int) -> list[float | None]:
        conversation, feet = Conversation(f"cook {number}", executor=executor), 1000 + 100 * number
        heard = []
        for text in ("how long to braise short ribs", f"{feet:,}", "what about lamb shanks", "start over", "rice"):
            said = await conversation.say(text)
            heard.append(said.answers[-1]["heard"]["elevation_m"])
            await asyncio.sleep(0)
        assert conversation.memory.kitchen.elevation_m == pytest.approx(feet * FT_M)
        return heard[:3]

    async def all_of_them() -> list[list[float | None]]:
        return await asyncio.gather(*(hold(number) for number in range(50)))

    for number, heard in enumerate(asyncio.run(all_of_them())):
        expected = pytest.approx((1000 + 100 * number) * FT_M, abs=0.06)
        assert heard == [None, expected, expected]


@pytest.mark.usefixtures("database")
def test_the_timers_of_fifty_conversations_do_not_mix() -> None:
    """On one executor and one store, each hears of its own alone."""
    keeper = Keeper.open(pytest.fail)
    executor = KitchenExecutor(keeper)

    async def hold(number: int) -> str:
        conversation = Conversation(f"cook {number}", executor=executor)
        await conversation.say(f"set a timer for the beans, {number + 100} minutes")
        await asyncio.sleep(0)
        return (await conversation.say("how long left")).text

    async def all_of_them() -> list[str]:
        return await asyncio.gather(*(hold(number) for number in range(50)))

    for number, left in enumerate(asyncio.run(all_of_them())):
        hours, minutes = divmod(number + 100, 60)
        assert left.startswith(f"Beans: {hours} h {minutes} min left," if minutes else f"Beans: {hours} h left,")
        assert left.count("left") == 1
    keeper.close()


@pytest.mark.parametrize("over", ["process", "http"])
def test_one_call_is_the_same_over_either_transport(over: str, client: Send) -> None:
    """Action authors write no branch for the transport."""
    call = good_call(tracker=tracker("how long to boil rice at 7,000 ft"))
    if over == "process":
        result = asyncio.run(KitchenExecutor().run(call))
        assert result is not None
        body = result.model_dump()
    else:
        response = client("/webhook", json=call)
        assert response.status_code == 200
        body = response.json()
    assert [r["text"] for r in body["responses"]] == [reply_to("how long to boil rice at 7,000 ft").text]
    slots = {e["name"]: e["value"] for e in body["events"] if e["event"] == "slot"}
    assert (slots["dish"], slots["method"]) == ("white rice", "boil")


def tracker(text: str, **slots: Any) -> dict[str, Any]:
    """A tracker as Rasa sends it."""
    held = {**slots_of(Memory()), **slots}
    return {"sender_id": "lodge", "slots": held, "latest_message": {"text": text}, "events": []}


Send = Callable[..., httpx.Response]


@contextmanager
def serving(app: Sanic) -> Iterator[Send]:
    """A function that sends to an action server's app, in this process and without a socket."""
    messages, up = asyncio.Queue[dict[str, str]](), asyncio.Event()

    async def started(message: Any) -> None:
        up.set()

    async def start() -> asyncio.Task[None]:
        lifespan = asyncio.create_task(app({"type": "lifespan"}, messages.get, started))  # type: ignore[arg-type]
        await messages.put({"type": "lifespan.startup"})
        await up.wait()
        return lifespan

    async def stop(lifespan: asyncio.Task[None]) -> None:
        await messages.put({"type": "lifespan.shutdown"})
        await lifespan

    async def go(path: str, method: str, what: dict[str, Any]) -> httpx.Response:
        async with httpx.AsyncClient(transport=httpx.ASGITransport(app=app), base_url="http://kitchen") as session:
            return await session.request(method, path, **what)

    with asyncio.Runner() as runner:
        lifespan = runner.run(start())
        yield lambda path, method="POST", **what: runner.run(go(path, method, what))
        runner.run(stop(lifespan))


@pytest.fixture(autouse=True)
def _many_apps() -> None:
    """Sanic allows several apps of one name in tests alone."""
    Sanic.test_mode = True


@pytest.fixture
def client() -> Iterator[Send]:
    """A function that sends to an action server that keeps nothing."""
    with serving(create_app()) as send:
        yield send


@pytest.mark.parametrize("part", ["sender_id", "text"])
def test_half_a_letter_from_elsewhere_is_refused_in_words(part: str, served: Callable[[], Send]) -> None:
    """A lone surrogate, which JSON can spell and no text can hold."""
    text = "set a timer for 5 minutes"
    heard = {**tracker(f"{text} \ud800" if part == "text" else text), **({part: "\ud800"} if part != "text" else {})}
    response = served()("/webhook", content=json.dumps(good_call(tracker=heard)))
    assert response.status_code == 400
    assert "character" in response.json()["error"]


def test_no_page_elsewhere_may_call_the_actions(client: Send) -> None:
    response = client("/health", method="GET", headers={"Origin": "http://elsewhere.example"})
    assert "access-control-allow-origin" not in response.headers


def good_call(**changed: Any) -> dict[str, Any]:
    """A call that can be run, with parts of it changed."""
    call = {"next_action": "action_answer", "tracker": tracker("hello"), "domain": domain(), "version": __version__}
    return {**call, **changed}


BAD_TRACKER = tracker("hello")
FAULTS = {
    "not JSON": ({"content": b"{"}, 400, "not JSON"),
    "empty": ({"content": b""}, 400, "not JSON"),
    "not UTF-8": ({"content": b"\xff\xfe\xff"}, 400, "not JSON"),
    "not deflated": ({"content": b"{}", "headers": {"Content-Encoding": "deflate"}}, 400, "not JSON"),
    "a list": ({"json": [1]}, 400, "must be a JSON object"),
    "null": ({"json": None}, 400, ""),
    "no action": ({"json": good_call(next_action=None)}, 400, "names no action"),
    "unknown action": ({"json": good_call(next_action="action_flambe")}, 404, "action_flambe"),
    "no tracker": ({"json": good_call(tracker=None)}, 400, "no tracker"),
    "tracker without sender": ({"json": good_call(tracker={"slots": {}})}, 400, "sender_id"),
    "slots that are a list": ({"json": good_call(tracker={**BAD_TRACKER, "slots": []})}, 400, '"slots" must be'),
    "text that is a number": (
        {"json": good_call(tracker={**BAD_TRACKER, "latest_message": {"text": 7}})}, 400, "must be a string",
    ),
    "half a character in the sender": (
        {"content": json.dumps(good_call(tracker={**BAD_TRACKER, "sender_id": "\ud800"}))}, 400, "half a character",
    ),
    "events that are a string": ({"json": good_call(tracker={**BAD_TRACKER, "events": "x"})}, 400, '"events" must be'),
    "a domain that is a list": ({"json": good_call(domain=[])}, 400, "must be an object"),
    "another domain": ({"json": good_call(domain={"slots": {"colour": {}}})}, 400, "lacks the slots request"),
    "a request of another kind": (
        {"json": good_call(tracker=tracker("hello", request={"topic": 7}))}, 400, 'the slot "request"',
    ),
    "a kitchen with odd units": (
        {"json": good_call(tracker=tracker("hello", kitchen={"units": "cubits"}))}, 400, "cubits|'us' or 'metric'",
    ),
    "a piece nobody asks for": ({"json": good_call(tracker=tracker("hello", asked="money"))}, 400, "money"),
}  # fmt: skip


@pytest.mark.parametrize("fault", FAULTS)
def test_a_faulty_call_is_told_what_is_wrong_and_the_server_stays_up(fault: str, client: Send) -> None:
    """A status of the 400s, a sentence, and the next call is answered."""
    what, status, words = FAULTS[fault]
    response = client("/webhook", **what)
    assert response.status_code == status, response.text
    assert re.search(words, response.json()["error"]), response.text
    assert client("/webhook", json=good_call()).status_code == 200
    assert client("/health", "GET").json() == {"status": "ok"}


def test_a_call_without_domain_is_asked_for_it(client: Send) -> None:
    """Status 449, on which Rasa sends the call again with its domain; after that it is known."""
    call = good_call(domain_digest="a1")
    del call["domain"]
    response = client("/webhook", json=call)
    assert response.status_code == 449
    assert "domain" in response.json()["error"]
    assert client("/webhook", json={**call, "domain": domain()}).status_code == 200
    assert client("/webhook", json=call).status_code == 200


BARE = {
    "an empty domain": {"domain": {}},
    "no domain and no digest": {"domain": None},
}


@pytest.mark.parametrize("bare", BARE)
def test_a_bare_tracker_is_answered_without_memory(bare: str, client: Send) -> None:
    """As it comes from a caller who trained nothing: the answer, and no event that could not be kept."""
    call = {"next_action": "action_answer", "version": __version__, **BARE[bare]}
    heard = {"sender_id": "passer-by", "latest_message": {"text": "how long to boil rice at 7,000 ft"}}
    response = client("/webhook", json={**call, "tracker": heard})
    assert response.status_code == 200, response.text
    assert [r["text"] for r in response.json()["responses"]] == [reply_to("how long to boil rice at 7,000 ft").text]
    assert response.json()["events"] == []
    for name in domain()["actions"]:
        assert client("/webhook", json={**call, "next_action": name, "tracker": {"sender_id": "x"}}).status_code == 200
    nothing = {"sender_id": "x", "latest_message": None, "slots": None}
    assert client("/webhook", json={**call, "tracker": nothing}).status_code == 400


def test_what_one_caller_sends_never_changes_the_answer_of_another(client: Send) -> None:
    """Neither an empty domain nor one of another assistant, under whatever digest."""
    ours = good_call(domain_digest="d1", tracker=tracker("how long to boil rice at 7,000 ft"))
    first = client("/webhook", json=ours).json()
    without = {name: value for name, value in ours.items() if name != "domain"}
    for other in ({}, {"slots": {"colour": {}}}, {"slots": {name: {} for name in domain()["slots"]}, "forms": {}}):
        client("/webhook", json={**ours, "domain": other})
        assert client("/webhook", json=without).json() == first
        assert client("/webhook", json=ours).json() == first


def test_the_server_lists_the_actions_of_the_domain(client: Send) -> None:
    """What Rasa may call is what is served."""
    assert sorted(a["name"] for a in client("/actions", "GET").json()) == sorted(domain()["actions"])


@pytest.fixture
def served(database: str) -> Iterator[Callable[[], Send]]:
    """A function that starts an action server with a store, as `simmerline actions` does; the one before is stopped."""
    with ExitStack() as running:

        def start() -> Send:
            running.close()
            keeper = Keeper.open(pytest.fail)
            running.callback(keeper.close)
            return running.enter_context(serving(create_app(keeper)))

        yield start


def talk_to(send: Send, sender: str, text: str, **slots: Any) -> tuple[list[str], dict[str, Any]]:
    """What the server says to one utterance, and the slots it sets."""
    heard = {**tracker(text, **slots), "sender_id": sender}
    body = send("/webhook", json=good_call(tracker=heard)).json()
    texts = [r["text"] for r in body["responses"]]
    return texts, {e["name"]: e["value"] for e in body["events"] if e["event"] == "slot"}


def test_timers_over_http_are_the_senders_own_and_outlive_the_server(served: Callable[[], Send]) -> None:
    """Set on one server, asked after on the next, and rung there; another sender has none."""
    send = served()
    texts, _ = talk_to(send, "line cook", "set a timer for the beans, 90 minutes")
    assert texts[0].startswith("Timer for the beans set: 1 h 30 min, until ")
    assert talk_to(send, "line cook", "set a timer for 1 second for the eggs")[0][0].startswith("Timer for the eggs")
    time.sleep(1.1)
    send = served()
    assert talk_to(send, "pastry", "how long left") == talk_to(send, "pastry", "how long left")
    assert talk_to(send, "pastry", "how long left")[0] == ["No timer is running."]
    assert talk_to(send, "line cook", "thanks")[0] == ["The timer for the eggs is up.", "You are welcome."]
    assert talk_to(send, "line cook", "thanks")[0] == ["You are welcome."]
    left = talk_to(send, "line cook", "how long left on the beans")[0]
    assert re.match(r"Beans: 1 h (29|30) min left, until ", left[0])


def test_a_timer_leaves_a_reminder_by_which_it_rings_without_the_next_message(served: Callable[[], Send]) -> None:
    """Set, made longer, stopped: what is up is said by action_ring, once, and nothing beside it."""
    send = served()
    events = told(send, "line cook", "set a timer for the beans, 90 minutes")
    assert [(e["event"], e["name"]) for e in events] == [("reminder", "timer beans")]
    assert (events[0]["intent"], events[0]["kill_on_user_msg"]) == ("EXTERNAL_timer_up", False)
    longer = told(send, "line cook", "add ten minutes to the beans timer")
    assert [(e["event"], e["name"]) for e in longer] == [
        ("cancel_reminder", "timer beans"),
        ("reminder", "timer beans"),
    ]
    assert longer[1]["date_time"] > events[0]["date_time"]
    stopped = told(send, "line cook", "cancel the beans timer")
    assert [(e["event"], e["name"]) for e in stopped] == [("cancel_reminder", "timer beans")]
    told(send, "line cook", "set a timer for 1 second for the eggs")
    time.sleep(1.1)
    call = good_call(
        next_action="action_ring", tracker={**tracker("EXTERNAL: EXTERNAL_timer_up"), "sender_id": "line cook"}
    )
    assert [r["text"] for r in send("/webhook", json=call).json()["responses"]] == ["The timer for the eggs is up."]
    assert send("/webhook", json=call).json()["responses"] == []


def told(send: Send, sender: str, text: str) -> list[dict[str, Any]]:
    """The events about reminders that an utterance leaves."""
    body = send("/webhook", json=good_call(tracker={**tracker(text), "sender_id": sender})).json()
    return [event for event in body["events"] if "reminder" in event["event"]]


def test_one_message_for_one_reply() -> None:
    """Also where an aside is answered and the piece asked for again, and where thanks leave it open."""

    async def held() -> list[Said]:
        conversation = Conversation()
        lines = ("how long to braise short ribs", "who won the match", "thanks", "7,000")
        return [await conversation.say(text) for text in lines]

    asked, aside, thanked, answered = asyncio.run(held())
    assert [len(said.answers) for said in (asked, aside, thanked, answered)] == [1, 1, 1, 1]
    assert aside.text.endswith(asked.text)
    assert thanked.text == "You are welcome."
    assert "braising short ribs" in answered.text


def test_what_a_trainee_answers_is_kept_under_the_name_given(served: Callable[[], Send]) -> None:
    """One answer a question, also over HTTP; none for a trainee without a name, nor for what is passed over."""
    send = served()
    _, slots = talk_to(send, "trainee", "quiz me on boiling, I am Ana")
    wrong = "1 psi"
    talk_to(send, "trainee", "next", drill=slots["drill"])
    talk_to(send, "trainee", wrong, drill=slots["drill"])
    _, nameless = talk_to(send, "trainee", "quiz me on boiling")
    talk_to(send, "trainee", wrong, drill=nameless["drill"])
    store = open_store()
    answers = progress.of_trainee(store, "ana")
    store.close()
    assert [(a.name, a.seed, a.right) for a in answers] == [("Ana", 1, False)]
    assert Sitting(themes=("boiling",)).question.id == answers[0].question


def test_without_a_store_a_timer_is_refused_in_words_and_the_rest_goes_on(monkeypatch: pytest.MonkeyPatch) -> None:
    """And once the store is there again, timers are."""
    complaints: list[str] = []
    monkeypatch.setenv("SIMMERLINE_DB", "sqlite:////dev/null/simmerline.db")
    with serving(create_app(Keeper.open(complaints.append))) as send:
        assert "cannot keep a timer" in talk_to(send, "cook", "set a timer for 10 minutes")[0][0]
        assert talk_to(send, "cook", "thanks")[0] == ["You are welcome."]
        monkeypatch.setenv("SIMMERLINE_DB", "sqlite:///:memory:")
        assert talk_to(send, "cook", "set a timer for 10 minutes")[0][0].startswith("Timer set: 10 min")
    first, *_, last = complaints
    assert "without memory" in first
    assert "again" in last


@pytest.mark.usefixtures("database")
def test_rasa_is_reminded_when_the_timers_of_a_plan_ring_now() -> None:
    keeper = Keeper.open(pytest.fail)
    executor = KitchenExecutor(keeper)

    async def talk() -> Any:
        conversation = Conversation("line", Memory(kitchen=Kitchen(elevation_m=2134.0)), executor)
        await conversation.say("short ribs and polenta for 6:30 pm tomorrow")
        await conversation.say("set timers for it")
        heard = {**conversation.tracker.current_state(), "latest_message": {"text": "service moved to 7"}}
        return await executor.run({"next_action": "action_answer", "tracker": heard, "domain": domain()})

    moved = asyncio.run(talk())
    assert "The timers move with it." in moved.responses[0]["text"]
    assert moved.responses[0]["custom"]["spoken"].endswith("The timers move with it.")
    reminded = {
        name: [e["name"] for e in moved.events if e["event"] == name] for name in ("reminder", "cancel_reminder")
    }
    names = ["timer start of short ribs", "timer start of polenta"]
    assert reminded == {"reminder": names, "cancel_reminder": names}
    keeper.close()
