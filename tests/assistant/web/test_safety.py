"""What a server is safe from, whoever calls it."""

from __future__ import annotations

import re
import socket
import stat
import zlib
from pathlib import Path

import httpx
import pytest

from assistant.dialogue.server import MOST_BYTES, inflated
from assistant.web import foreign
from assistant.web.app import said_of
from assistant.web.people import person_of, signed
from assistant.web.secret import secret
from assistant.web.settings import Settings
from tests.assistant.web.conftest import ELSEWHERE, TOKEN, Person, Server

PAGES = ("/", "/recipe", "/menu", "/timers", "/card", "/batches", "/training", "/place", "/parts", "/programs")
LOCAL = Settings(secret=b"s" * 32)
OPEN = Settings(secret=b"s" * 32, host="0.0.0.0", names=("kitchen.lodge",))


@pytest.mark.parametrize("path", PAGES)
def test_a_page_runs_no_script_that_stands_in_it(path: str, person: Person) -> None:
    page = person.get(path)
    policy = page.headers["content-security-policy"]
    assert page.status_code == 200
    assert "script-src 'self';" in policy
    assert "unsafe" not in policy
    assert not re.search(r"<script(?![^>]*src=)|\son\w+=|style=|javascript:", page.text)
    assert page.headers["x-content-type-options"] == "nosniff"
    assert page.headers["cache-control"] == "no-store"


@pytest.mark.parametrize("path", PAGES)
def test_a_page_asks_nobody_elsewhere(path: str, person: Person) -> None:
    addresses = re.findall(r'(?:href|src|action)="([^"]+)"', person.get(path).text)
    assert addresses
    assert [address for address in addresses if not address.startswith(("/", "#"))] == []


@pytest.mark.parametrize(
    ("method", "path", "status"),
    [
        ("GET", "/nothing", 404), ("GET", "/api/nothing", 404), ("POST", "/nothing", 404), ("GET", "/ask", 405),
        ("PUT", "/api/ask", 405), ("DELETE", "/", 405), ("GET", "/static/1/../../app.py", 404),
        ("GET", "/static/1/%2e%2e%2fapp.py", 404),
    ],
)  # fmt: skip
def test_unknown_paths_and_wrong_methods(method: str, path: str, status: int, person: Person) -> None:
    assert person.request(method, path).status_code == status


def test_a_wrong_method_is_told_which_would_do(person: Person) -> None:
    assert "POST" in person.get("/api/ask").headers["allow"]


def test_problems_are_told_as_the_rfc_has_it(person: Person) -> None:
    problem = person.post("/api/ask", json={"text": 1, "colour": "red"})
    assert problem.headers["content-type"] == "application/problem+json"
    told = problem.json()
    assert (told["type"], told["title"], told["status"]) == ("about:blank", "Unprocessable Entity", 422)
    assert {fault["at"] for fault in told["errors"]} == {"text", "colour"}


@pytest.mark.parametrize("path", ["/ask", "/timers", "/kitchens", "/batches", "/place", "/forget"])
def test_a_form_without_its_key_changes_nothing(path: str, person: Person, another: Person) -> None:
    person.get("/")
    assert person.post(path, data={"text": "x", "name": "x"}).status_code == 403
    # the key of somebody else is none
    assert person.post(path, data={"form_key": another.key("/"), "text": "x"}).status_code == 403


@pytest.mark.parametrize(
    "headers",
    [{"origin": "https://elsewhere.example"}, {"sec-fetch-site": "cross-site"}, {"sec-fetch-site": "same-site"}],
)
def test_a_page_elsewhere_may_not_send_a_form_or_a_call(headers: dict[str, str], person: Person) -> None:
    assert person.post("/ask", data={"form_key": person.key("/"), "text": "x"}, headers=headers).status_code == 403
    assert person.post("/api/ask", json={"text": "x"}, headers=headers).status_code == 403


def test_a_call_has_to_be_json_which_no_form_elsewhere_sends(person: Person) -> None:
    plain = person.post("/api/ask", content='{"text": "x"}', headers={"content-type": "text/plain"})
    assert plain.status_code == 415


def test_no_page_elsewhere_reads_what_is_said_here(server: Server) -> None:
    answer = httpx.get(f"{server.url}/api/health", headers={"origin": ELSEWHERE})
    assert "access-control-allow-origin" not in answer.headers


def test_a_page_that_was_named_may_call_the_api(guarded: Server) -> None:
    asked = {"origin": ELSEWHERE, "access-control-request-method": "POST"}
    answer = httpx.options(f"{guarded.url}/api/ask", headers=asked)
    assert answer.headers["access-control-allow-origin"] == ELSEWHERE
    other = httpx.options(f"{guarded.url}/api/ask", headers={**asked, "origin": "https://elsewhere.example"})
    assert "access-control-allow-origin" not in other.headers


@pytest.mark.parametrize("host", ["elsewhere.example", "localhost.elsewhere.example", "192.168.0.9", ""])
def test_a_name_that_is_not_ours_is_refused(host: str, person: Person) -> None:
    """Or a page elsewhere could point a name of its own at this machine."""
    assert person.get("/", headers={"host": host}).status_code in (400, 421)


@pytest.mark.parametrize(
    ("settings", "host", "ours"),
    [
        (LOCAL, "localhost:8080", True), (LOCAL, "127.0.0.1", True), (LOCAL, "[::1]:8080", True),
        (LOCAL, "10.0.0.4", False), (OPEN, "10.0.0.4:8080", True), (OPEN, "kitchen.lodge:8080", True),
        (OPEN, f"{socket.gethostname()}:1", True), (OPEN, "elsewhere.example", False),
    ],
)  # fmt: skip
def test_which_names_are_ours(settings: Settings, host: str, ours: bool) -> None:
    assert settings.answers_to(host) is ours


@pytest.mark.parametrize("path", ["/", "/menu", "/api/order", "/api/kitchens", "/webhook", "/actions"])
def test_a_token_keeps_everybody_else_out(path: str, guarded: Server) -> None:
    answer = httpx.get(f"{guarded.url}{path}")
    assert answer.status_code in (302, 401, 405)
    assert "ribs" not in answer.text


def test_the_token_lets_people_and_programs_in(guarded: Server) -> None:
    with Person(base_url=guarded.url, timeout=60) as person:
        assert person.post("/enter", data={"token": "guess"}).status_code == 403
        assert person.post("/enter", data={"token": TOKEN}, follow_redirects=True).url.path == "/"
        assert person.get("/menu").status_code == 200
    program = {"authorization": f"Bearer {TOKEN}"}
    assert httpx.post(f"{guarded.url}/api/ask", json={"text": "hello"}, headers=program).status_code == 200
    assert httpx.post(f"{guarded.url}/api/ask", json={"text": "hello"}).status_code == 401


@pytest.mark.parametrize(
    ("path", "kind", "size"),
    [
        ("/api/ask", "application/json", 2**20), ("/api/convert", "application/json", 2**24),
        ("/timers", "application/x-www-form-urlencoded", 2**16), ("/webhook", "application/json", 20 * 2**20),
    ],
)  # fmt: skip
def test_more_than_is_taken_is_not_taken(path: str, kind: str, size: int, person: Person) -> None:
    try:
        status = person.post(path, content=b" " * (size + 2**16), headers={"content-type": kind}).status_code
    except httpx.WriteError:
        # the server may hang up on what goes on and on
        status = 413
    assert status == 413


def test_a_packed_body_is_unpacked_no_further_than_is_taken() -> None:
    packed = zlib.compress(b" " * (MOST_BYTES + 1))
    assert len(packed) < 50_000
    with pytest.raises(ValueError, match="larger"):
        inflated(packed)
    assert inflated(zlib.compress(b"{}")) == b"{}"


def test_the_webhook_unpacks_no_bomb(person: Person) -> None:
    headers = {"content-type": "application/json", "content-encoding": "deflate"}
    call = b'{"next_action": "action_answer", "tracker": {"sender_id": "a"}, "domain": {}}'
    assert person.post("/webhook", content=zlib.compress(call), headers=headers).status_code == 200
    bomb = zlib.compress(call + b" " * (8 * MOST_BYTES))
    assert len(bomb) < 200_000
    assert person.post("/webhook", content=bomb, headers=headers).status_code == 400
    assert person.post("/webhook", content=b"not packed", headers=headers).status_code == 400


def test_a_picture_runs_nothing_and_calls_nobody(person: Person) -> None:
    found = re.search(r'<img src="(/picture/[^"]+)"', person.get("/card", params={"at": "7000ft"}).text)
    assert found
    for address in (found[1].replace("&amp;", "&"), "/card/plot/boil/svg?at=7000ft", "/card/wall/svg?at=7000ft"):
        drawn = person.get(address)
        assert drawn.status_code == 200
        assert "default-src 'none'" in drawn.headers["content-security-policy"]
        assert "sandbox" in drawn.headers["content-security-policy"]
        assert drawn.headers["x-content-type-options"] == "nosniff"
        assert b"<script" not in drawn.content


def test_what_a_store_cannot_hold_is_left_out_of_a_form(person: Person) -> None:
    assert "7,000 ft" in person.ask("how long for pasta\0 at 7000 ft")
    assert person.form("/timers", do="set", name="be\0ans", minutes="20").status_code == 200
    assert [timer["name"] for timer in person.get("/timers/running").json()] == ["beans"]


def test_no_other_path_takes_a_packed_body(person: Person) -> None:
    headers = {"content-type": "application/json", "content-encoding": "gzip"}
    assert person.post("/api/ask", content=b"x", headers=headers).status_code == 415


def test_words_of_people_stand_in_no_log(server: Server, person: Person) -> None:
    said = "aunt wilhelmina and her goulash"
    person.ask(said)
    person.get("/card", params={"at": said})
    person.post("/api/ask", json={"text": said, "at": said})
    person.post("/api/ask", content=said, headers={"content-type": "application/json"})
    person.get(f"/api/{said}")
    tracker = {"sender_id": said, "latest_message": {"text": said}}
    person.post("/webhook", json={"next_action": "action_answer", "tracker": tracker, "domain": {}})
    person.form("/recipe", recipe=f"{said}\n2 cups flour\n1 tsp baking powder\nBake 20 minutes at 350 F.", at="7000ft")
    person.form("/batches", title=said, symptom="sank in the middle")
    assert "wilhelmina" not in server.log.read_text()


def test_a_fault_of_ours_is_noted_by_its_place_alone(caplog: pytest.LogCaptureFixture) -> None:
    try:
        raise KeyError("aunt wilhelmina")
    except KeyError as fault:
        status, told, _ = said_of(fault)
    assert status == 500
    assert "wilhelmina" not in told + caplog.text
    assert "KeyError at test_safety.py:" in caplog.text


def test_what_is_typed_stands_in_a_page_as_text(person: Person) -> None:
    said = '<img src=x onerror="alert(1)"> how long for pasta'
    page = person.form("/", "/ask", text=said).text
    assert "<img" not in page
    assert "&lt;img" in page


def test_a_saved_page_is_shown_without_anything_that_acts() -> None:
    page = (
        "<!doctype html><html><head><title>t</title><style>p { top: 0 }</style></head><body>"
        "<h1 onclick='x()'>Rolls</h1><script>steal()</script>"
        "<p style='position:fixed'>2 cups <a href='javascript:x()'>flour</a></p><iframe src='//x'></iframe></body>"
    )
    assert foreign.as_page(page) == "<h1>Rolls</h1><p>2 cups flour</p>"
    assert foreign.as_page("2 cups <b>flour</b>") == ""


@pytest.mark.parametrize("cookie", [None, "", "abc", "abc.def", ".", "ü.ü", f".{signed(b's', 'person', '')}"])
def test_a_cookie_that_is_not_ours_names_nobody(cookie: str | None) -> None:
    assert person_of(cookie, b"s") is None
    assert person_of(f"abc.{signed(b's', 'person', 'abc')}", b"s") == "abc"
    assert person_of(f"abc.{signed(b's', 'form', 'abc')}", b"s") is None


def test_the_secret_is_kept_for_its_owner_alone(tmp_path: Path) -> None:
    told: list[str] = []
    made = secret(told.append, tmp_path / "data")
    assert made == secret(told.append, tmp_path / "data")
    assert stat.S_IMODE((tmp_path / "data" / "web.key").stat().st_mode) == 0o600
    (tmp_path / "file").write_text("")
    assert secret(told.append, tmp_path / "file") != made
    assert len(told) == 1
