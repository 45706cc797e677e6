"""`simmerline serve` and `simmerline doctor`, and that nobody else pays for them."""

from __future__ import annotations

import json
import os
import signal
import subprocess
import sys
import time
from pathlib import Path

import httpx
import pytest
from typer.testing import CliRunner

from assistant import parts
from assistant.cli.app import create_app
from tests.assistant.web.conftest import START, free_port


def test_no_other_command_loads_the_server() -> None:
    program = (
        "import sys; from assistant.cli.app import create_app; create_app(); import assistant.answering; "
        "from assistant.answering import reply_to; reply_to('pasta at 7,000 ft'); "
        "print([name for name in ('sanic', 'sanic_ext', 'nh3', 'assistant.web') if name in sys.modules])"
    )
    shown = subprocess.run([sys.executable, "-c", program], capture_output=True, text=True, check=True)
    assert shown.stdout.strip() == "[]"


@pytest.mark.parametrize(
    ("options", "said"),
    [
        (("--cert", "kitchen.pem"), "both --cert and --key"),
        (("--cert", "nowhere.pem", "--key", "nowhere.key"), "will not do"),
        (("--token-file", "nowhere.txt"), "cannot read nowhere.txt"),
        (("--workers", "0"), "workers"),
        (("--port", "70000"), "port"),
    ],
)
def test_what_does_not_do_is_told(options: tuple[str, ...], said: str) -> None:
    done = CliRunner().invoke(create_app(["serve"]), ["serve", *options])
    assert done.exit_code == 2
    assert said in done.stderr


def test_a_port_that_is_taken_is_told(tmp_path: Path) -> None:
    import socket

    with socket.socket() as taken:
        taken.bind(("127.0.0.1", 0))
        taken.listen()
        command = [sys.executable, "-c", START, "serve", "--port", str(taken.getsockname()[1])]
        variables = {**os.environ, "SIMMERLINE_DB": f"sqlite:///{tmp_path}/simmerline.db"}
        done = subprocess.run(command, capture_output=True, text=True, env=variables, timeout=60, check=False)
    assert done.returncode == 1
    assert "cannot listen on" in done.stderr
    assert "Traceback" not in done.stderr


def test_several_workers_know_each_other_s_people(tmp_path: Path) -> None:
    port = free_port()
    variables = {**os.environ, "SIMMERLINE_DB": f"sqlite:///{tmp_path}/simmerline.db"}
    command = [sys.executable, "-c", START, "serve", "--port", str(port), "--workers", "2", "--metrics"]
    with (tmp_path / "log").open("wb") as log:
        process = subprocess.Popen(command, env=variables, stdout=log, stderr=log)
    try:
        wait_for(port)
        kitchen = {"name": "Timberfold Lodge", "at": "7000ft"}
        with httpx.Client(base_url=f"http://localhost:{port}", timeout=60) as first:
            assert first.post("/api/kitchens", json=kitchen).status_code == 200
            cookies = dict(first.cookies)
        # whichever of the two answers a new line
        for _ in range(8):
            answer = httpx.get(f"http://localhost:{port}/api/kitchens", cookies=cookies, timeout=60)
            kept = answer.json()["kitchens"]
            assert [one["name"] for one in kept] == ["Timberfold Lodge"]
        # whichever of the two is asked tells of both
        counted = 'simmerline_requests_total{method="GET",route="/api/kitchens",status="200"} 8.0'
        assert counted in httpx.get(f"http://localhost:{port}/metrics", timeout=60).text.splitlines()
    finally:
        process.send_signal(signal.SIGINT)
        assert process.wait(timeout=120) in (0, -signal.SIGINT)


def wait_for(port: int) -> None:
    for _ in range(900):
        try:
            if httpx.get(f"http://localhost:{port}/api/health").status_code == 200:
                return
        except httpx.TransportError:
            time.sleep(0.2)
    raise AssertionError("the server did not start")


def test_the_doctor_lists_what_is_there_and_how_to_get_the_rest(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(parts, "_importable", lambda name: name != "scipy")
    done = CliRunner().invoke(create_app(["doctor"]), ["doctor"])
    assert 'plan: missing (scipy); get it: pip install "simmerline[plan]"' in done.stdout
    assert "print: installed" in done.stdout
    report = json.loads(CliRunner().invoke(create_app(["doctor"]), ["doctor", "--json"]).stdout)
    assert {part["id"] for part in report["parts"]} == {part.id for part in parts.PARTS}
    assert report["libraries"]["spacy"]


def test_a_store_that_is_broken_is_found(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "simmerline.db").write_bytes(b"no database" * 100)
    monkeypatch.setenv("SIMMERLINE_DB", f"sqlite:///{tmp_path}/simmerline.db")
    done = CliRunner().invoke(create_app(["doctor"]), ["doctor"])
    assert done.exit_code == 1
    assert "move that file away" in " ".join(done.stdout.split())
