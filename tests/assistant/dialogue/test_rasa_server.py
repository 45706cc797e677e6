"""A Rasa server, trained on data/rasa, says through our action server what the embedded chat says."""

from __future__ import annotations

import asyncio
import os
import shutil
import socket
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import ExitStack, contextmanager
from pathlib import Path

import httpx
import pytest

ROOT = Path(__file__).parents[3]
RASA = os.environ.get("SIMMERLINE_RASA", "")
ENVIRONMENT = {**os.environ, "RASA_TELEMETRY_ENABLED": "false", "TF_CPP_MIN_LOG_LEVEL": "3", "PYTHONWARNINGS": "ignore"}
TRAIN_S, START_S = 300, 120
SAID = (
    "how long to braise short ribs",
    "why do you need that?",
    "7,000",
    "and at 9,000?",
    "what about lamb shanks",
    "in Celsius",
    "why not just boil harder",
    "say it again",
    "what does water boil at in Santa Fe",
    "who won the match last night",
)

pytestmark = [
    pytest.mark.rasa,
    pytest.mark.skipif(
        not shutil.which(RASA), reason="SIMMERLINE_RASA does not name the rasa command of a Python 3.10 with rasa 3.6"
    ),
]


@pytest.fixture(scope="module")
def rest_url(tmp_path_factory: pytest.TempPathFactory) -> Iterator[str]:
    """The REST channel of a Rasa server, trained and started for this module, with our action server behind it."""
    folder = tmp_path_factory.mktemp("rasa")
    train(folder)
    action_port, rasa_port = free_port(), free_port()
    (folder / "endpoints.yml").write_text(f"action_endpoint:\n  url: http://127.0.0.1:{action_port}/webhook\n")
    command = "from assistant.cli import main; main()"
    actions = [sys.executable, "-c", command, "actions", "--port", str(action_port)]
    rasa = [
        RASA, "run", "--model", str(folder / "models"), "--endpoints", str(folder / "endpoints.yml"),
        "--credentials", str(ROOT / "data/rasa/credentials.yml"), "--interface", "127.0.0.1", "--port", str(rasa_port),
    ]  # fmt: skip
    with ExitStack() as running:
        running.enter_context(process(actions, ROOT, folder / "actions.log"))
        running.enter_context(process(rasa, folder, folder / "rasa.log"))
        wait_for(f"http://127.0.0.1:{action_port}/health", folder / "actions.log")
        wait_for(f"http://127.0.0.1:{rasa_port}/status", folder / "rasa.log", or_status=(401, 404, 409))
        wait_for(f"http://127.0.0.1:{rasa_port}/webhooks/rest/", folder / "rasa.log")
        yield f"http://127.0.0.1:{rasa_port}/webhooks/rest/webhook"


def train(folder: Path) -> None:
    """Train a model on data/rasa into a folder."""
    data = ROOT / "data"
    command = [
        RASA, "train", "--domain", str(data / "rasa/domain.yml"), "--config", str(data / "rasa/config.yml"),
        "--data", str(data / "rasa/rules.yml"), str(data / "utterances/train"), "--out", str(folder / "models"),
    ]  # fmt: skip
    done = subprocess.run(command, cwd=folder, env=ENVIRONMENT, capture_output=True, text=True, timeout=TRAIN_S)
    assert done.returncode == 0, done.stdout[-2000:] + done.stderr[-4000:]


def free_port() -> int:
    """A port that nobody listens on."""
    with socket.socket() as sock:
        sock.bind(("127.0.0.1", 0))
        port: int = sock.getsockname()[1]
    return port


@contextmanager
def process(command: list[str], folder: Path, log: Path) -> Iterator[None]:
    """A process that runs as long as the block."""
    environment = {**ENVIRONMENT, "PYTHONPATH": str(ROOT)} if command[0] == sys.executable else ENVIRONMENT
    with log.open("w") as out:
        running = subprocess.Popen(command, cwd=folder, env=environment, stdout=out, stderr=subprocess.STDOUT)
        try:
            yield
        finally:
            running.terminate()
            try:
                running.wait(20)
            except subprocess.TimeoutExpired:
                running.kill()
                running.wait()


def wait_for(url: str, log: Path, or_status: tuple[int, ...] = ()) -> None:
    """Wait until a server answers."""
    end = time.monotonic() + START_S
    while time.monotonic() < end:
        try:
            status = httpx.get(url, timeout=5).status_code
        except httpx.HTTPError:
            status = 0
        if status == 200 or status in or_status:
            return
        time.sleep(0.3)
    pytest.fail(f"{url} does not answer\n{log.read_text()[-4000:]}")


def test_rasa_says_what_the_embedded_chat_says(rest_url: str) -> None:
    """Ten utterances of one conversation, among them a piece that is asked for, an aside and follow-ups."""
    from assistant.dialogue.embedded import Conversation

    conversation = Conversation("embedded")
    embedded = [asyncio.run(conversation.say(text)) for text in SAID]
    for text, expected in zip(SAID, embedded, strict=True):
        parts = httpx.post(rest_url, json={"sender": "lodge", "message": text}, timeout=60).json()
        assert "\n\n".join(p["text"] for p in parts if "text" in p) == expected.text, text
        assert [p["custom"] for p in parts if "custom" in p] == list(expected.answers), text
