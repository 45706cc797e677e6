"""The JSON API gives what the command line gives, and is what its document says."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from typing import Any

import httpx
import pytest
from typer.testing import CliRunner

from assistant.cli.app import create_app as create_command
from assistant.dialogue.domain import domain
from assistant.web.documented import Call, calls
from tests.assistant.web.conftest import Person, Server

MENU = "Title: Saturday\nshort ribs 40%\npolenta, side, all\ngreen beans, side, all\n"
ROLLS = "Rolls\nMakes 12 rolls\n2 tsp baking powder\n2 cups flour\n1 cup milk\nBake 20 minutes at 400 F.\n"


@pytest.fixture(scope="module")
def program(server: Server) -> Iterator[Person]:
    """A program that keeps its cookie; the calls of the document come in their order."""
    with Person(base_url=server.url, timeout=60) as client:
        yield client


def send(client: httpx.Client, call: Call) -> httpx.Response:
    if call.method == "POST":
        return client.post(call.path, content=call.send, headers={"content-type": "application/json"})
    return client.request(call.method, f"{call.path}?{call.send}" if call.send else call.path)


@pytest.mark.parametrize("call", calls(), ids=lambda call: call.id)
def test_every_example_of_the_document_runs(call: Call, program: Person) -> None:
    answer = send(program, call)
    assert answer.status_code == 200, answer.text
    assert set(call.gives) <= set(answer.json())


def test_the_document_tells_every_call_with_its_example(program: Person) -> None:
    document = program.get("/programs/openapi.json").json()
    operations = {
        operation["operationId"]: operation for path in document["paths"].values() for operation in path.values()
    }
    assert set(operations) == {call.id for call in calls()}
    for call in calls():
        if call.method == "POST":
            body = operations[call.id]["requestBody"]["content"]["application/json"]
            assert body["example"] == json.loads(call.send)
            assert set(body["example"]) <= set(body["schema"]["properties"])
            assert body["schema"]["additionalProperties"] is False


def test_the_page_for_programs_shows_every_call(program: Person) -> None:
    page = program.get("/programs").text
    assert [call.id for call in calls() if call.path not in page] == []


def by_command(*arguments: str, given: str = "") -> Any:
    done = CliRunner().invoke(create_command(), list(arguments), input=given or None)
    return json.loads(done.stdout)


@pytest.mark.parametrize(
    ("text", "more"),
    [
        ("how long to braise short ribs", {"at": "7000ft"}),
        ("how long to braise short ribs", {}),
        ("soft ball stage", {"at": "2130m", "units": "us", "depth": 3}),
        ("can green beans in a water bath", {"at": "7000ft"}),
    ],
)
def test_ask_as_the_command_line(text: str, more: dict[str, Any], program: Person) -> None:
    options = [word for name, value in more.items() for word in (f"--{name}", str(value))]
    assert program.post("/api/ask", json={"text": text, **more}).json() == by_command("ask", "--json", *options, text)


def test_ask_leans_on_what_was_said_before(program: Person) -> None:
    context = ["how long to braise short ribs at 7,000 feet"]
    heard = program.post("/api/ask", json={"text": "and at 9,000?", "context": context}).json()["heard"]
    assert (heard["dish"], round(heard["elevation_m"])) == ("short ribs", 2743)


def test_convert_as_the_command_line(program: Person, tmp_path: Path) -> None:
    file = tmp_path / "rolls.txt"
    file.write_text(ROLLS, encoding="utf-8")
    options = ("--from", "5300ft", "--to", "7000ft", "--servings", "24", "--json")
    asked = {"recipe": ROLLS, "from": "5300ft", "to": "7000ft", "servings": 24}
    assert program.post("/api/convert", json=asked).json() == by_command("convert", str(file), *options)


def test_order_and_schedule_as_the_command_line(program: Person, monkeypatch: pytest.MonkeyPatch) -> None:
    asked = {"menu": MENU, "at": "7000ft", "covers": 90}
    order = by_command("order", "-", "--at", "7000ft", "--covers", "90", "--format", "json", given=MENU)
    assert program.post("/api/order", json=asked).json() == order
    when = {"serve": "2030-03-09 18:30", "zone": "America/Denver", "ovens": 2}
    options = ("--serve", when["serve"], "--zone", when["zone"], "--ovens", "2", "--format", "json")
    plan = by_command("schedule", "-", "--at", "7000ft", "--covers", "90", *options, given=MENU)
    assert program.post("/api/schedule", json={**asked, **when}).json() == plan


@pytest.mark.parametrize(
    ("path", "body", "said"),
    [
        ("/api/ask", {}, "text"),
        ("/api/ask", {"text": "pasta", "at": "xyzzy"}, "not an elevation"),
        ("/api/ask", {"text": "pasta", "depth": 4}, "depth"),
        ("/api/ask", {"text": "pasta", "kitchen": "Nowhere"}, "no kitchen"),
        ("/api/convert", {"recipe": "hello", "to": "7000ft"}, "neither an ingredient"),
        ("/api/convert", {"recipe": ROLLS}, "Where is the kitchen"),
        ("/api/convert", {"recipe": ROLLS, "to": "7000ft", "style": "gravel"}, "no style"),
        ("/api/convert", {"recipe": ROLLS, "to": "7000ft", "servings": -1}, "greater than 0"),
        ("/api/order", {"menu": "short ribs", "at": "7000ft"}, "For how many"),
        ("/api/order", {"menu": MENU, "at": "7000ft", "covers": 0}, "nobody to cook for"),
        ("/api/order", {"menu": MENU, "at": "7000ft", "covers": 9, "margin": "lots"}, "no margin"),
        ("/api/schedule", {"menu": MENU, "at": "7000ft"}, "When is service"),
        ("/api/schedule", {"menu": MENU, "at": "7000ft", "serve": "soon"}, "no time of day"),
        ("/api/schedule", {"menu": MENU, "at": "7000ft", "serve": "6 pm", "zone": "Nowhere/Here"}, "no time zone"),
        ("/api/schedule", {"menu": MENU, "at": "7000ft", "serve": "6 pm", "ovens": 1000}, "no kitchen"),
        ("/api/kitchens", {"name": "Lodge", "at": "30000ft"}, "higher than any mountain"),
        ("/api/kitchens", {"name": "Lodge", "at": "7000ft", "equipment": ["flux capacitor"]}, "no equipment"),
        ("/api/batches", {"recipe": "butter cake", "symptoms": ["sang a song"]}, "sang a song"),
    ],
)
def test_what_does_not_do_is_told(path: str, body: dict[str, Any], said: str, program: Person) -> None:
    answer = program.post(path, json=body)
    assert answer.status_code in (404, 422), answer.text
    assert said.lower() in answer.json()["detail"].lower()


@pytest.mark.parametrize("body", ["", "{", "[1]", '"text"', "[" * 100_000])
def test_a_body_that_is_no_object(body: str, program: Person) -> None:
    answer = program.post("/api/ask", content=body, headers={"content-type": "application/json"})
    assert answer.status_code in (400, 422)


def test_many_at_once_are_answered_as_each_alone(program: Person) -> None:
    """Questions, and beside them recipes and menus for places that have to be heard."""
    calls = [
        ("/api/ask", {"text": "how long to braise short ribs in Leadville"}),
        ("/api/convert", {"recipe": ROLLS, "to": "Santa Fe"}),
        ("/api/ask", {"text": "my cake sank in the middle at 7000 ft"}),
        ("/api/order", {"menu": MENU, "at": "Breckenridge", "covers": 90}),
        ("/api/ask", {"text": "soft ball for fudge in Santa Fe"}),
        ("/api/convert", {"recipe": ROLLS, "to": "La Paz"}),
    ]
    alone = [program.post(path, json=body).text for path, body in calls]
    with ThreadPoolExecutor(12) as people:
        asked = [people.submit(program.post, path, json=body) for path, body in calls * 6]
        together = [answer.result().text for answer in asked]
    assert together == alone * 6


def test_a_menu_may_name_no_file_of_the_server(program: Person, tmp_path: Path) -> None:
    recipe = tmp_path / "rolls.txt"
    recipe.write_text(ROLLS, encoding="utf-8")
    order = program.post("/api/order", json={"menu": f"{recipe} 10", "at": "7000ft", "covers": 9})
    assert "baking powder" not in order.text


def test_the_webhook_of_rasa_is_on_the_same_server(program: Person) -> None:
    tracker = {"sender_id": "r", "slots": {}, "latest_message": {"text": "boil pasta at 7,000 ft"}, "events": []}
    call = {"next_action": "action_answer", "tracker": tracker, "domain": domain()}
    answer = program.post("/webhook", json=call).json()
    assert "pasta" in answer["responses"][0]["text"]
    assert {"name": "action_answer"} in program.get("/actions").json()
    assert program.post("/webhook", json={**call, "next_action": "nothing"}).status_code == 404
    assert program.post("/webhook", json={"next_action": "action_answer"}).status_code == 400


def test_a_bare_tracker_is_answered_by_a_server_that_knows_no_domain_yet(started: Callable[..., Server]) -> None:
    fresh = started()
    tracker = {"sender_id": "r", "latest_message": {"text": "boil pasta at 7,000 ft"}}
    call = {"next_action": "action_answer", "tracker": tracker, "domain": {}}
    first = httpx.post(f"{fresh.url}/webhook", json=call, timeout=60)
    assert "pasta" in first.json()["responses"][0]["text"]
    # what another caller brings is that caller's alone
    other = {**call, "domain": {"slots": {"colour": {"type": "text"}}}}
    assert httpx.post(f"{fresh.url}/webhook", json=other, timeout=60).status_code == 400
    assert httpx.post(f"{fresh.url}/webhook", json=call, timeout=60).text == first.text


def test_the_webhook_is_posted_to(program: Person) -> None:
    assert program.get("/webhook").status_code == 405
    assert program.get("/webhook").headers["allow"].split(", ") in (["POST", "OPTIONS"], ["OPTIONS", "POST"])


@pytest.mark.parametrize("text", ["\\ud800", "a \\udfff", "\\u0000"])
@pytest.mark.parametrize(
    ("path", "body"),
    [
        ("/webhook", '{"next_action": "action_answer", "tracker": {"sender_id": "TEXT"}, "domain": {}}'),
        ("/webhook", '{"next_action": "action_answer", "tracker": {"sender_id": "a", "slots": {"piece": "TEXT"}}}'),
        ("/api/ask", '{"text": "boil pasta TEXT"}'),
        ("/api/kitchens", '{"name": "TEXT", "at": "7000ft"}'),
        ("/api/batches", '{"recipe": "TEXT"}'),
        ("/api/convert", '{"recipe": "TEXT", "to": "7000ft"}'),
        ("/api/order", '{"menu": "TEXT", "at": "7000ft"}'),
    ],
)  # fmt: skip
def test_what_is_no_text_is_refused(path: str, body: str, text: str, program: Person) -> None:
    answer = program.post(path, content=body.replace("TEXT", text), headers={"content-type": "application/json"})
    assert 400 <= answer.status_code < 500
    assert "no text" in answer.text


def test_speech_is_heard_or_it_is_told_how_to_get_that(program: Person) -> None:
    answer = program.post("/api/heard", content=b"RIFF", headers={"content-type": "audio/wav"})
    assert answer.status_code in (422, 501)
    assert answer.status_code == 422 or "simmerline[voice]" in answer.json()["detail"]
    aloud = program.post("/api/said", json={"text": "About 4 hours."})
    assert aloud.content.startswith(b"RIFF") or "espeak-ng" in aloud.json()["detail"]


def test_a_kitchen_of_that_name_is_a_conflict_and_none_is_not_found(program: Person) -> None:
    kitchen = {"name": "Timberfold Bakery", "at": "5300ft"}
    assert program.post("/api/kitchens", json=kitchen).status_code == 200
    assert program.post("/api/kitchens", json=kitchen).status_code == 409
    assert program.post("/api/kitchens", json={**kitchen, "replace": True}).status_code == 200
    assert program.delete("/api/kitchens/Nowhere").status_code == 404
    heard = program.post("/api/ask", json={"text": "how long to boil pasta", "kitchen": "timberfold bakery"}).json()
    assert round(heard["heard"]["elevation_m"]) == 1615


def test_a_change_that_says_nothing_is_no_fault_of_the_server(program: Person) -> None:
    told = {"recipe": "butter cake", "symptoms": ["sank in the middle"], "changed": [""], "rating": 2}
    answer = program.post("/api/batches", json=told)
    assert answer.status_code == 422
    assert "say what was changed" in answer.json()["detail"].lower()


@pytest.mark.parametrize("call", [call for call in calls() if call.method == "POST"], ids=lambda call: call.id)
def test_half_a_character_is_no_fault_of_the_server(call: Call, program: Person) -> None:
    example = json.loads(call.send)
    for name, value in example.items():
        if isinstance(value, str):
            body = json.dumps(example | {name: f"{value} \ud800"})
            answer = program.post(call.path, content=body, headers={"content-type": "application/json"})
            assert answer.status_code < 500, (name, answer.text)
            assert answer.json()
