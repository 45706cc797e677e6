"""A server of its own process, as a cook starts it, and whoever talks to it."""

from __future__ import annotations

import os
import re
import socket
import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path

import httpx
import pytest

from tests.assistant.store.conftest import cluster as cluster

TOKEN = "seven-thousand-feet"
ELSEWHERE = "https://menus.example"
START = "from assistant.cli import main; main()"
LONGEST_START_S = 180


@dataclass(frozen=True)
class Server:
    """A server that runs. log: what it writes; database: where it keeps things; pid: of its process"""

    url: str
    log: Path
    database: str
    pid: int


def free_port() -> int:
    with socket.socket() as found:
        found.bind(("127.0.0.1", 0))
        port: int = found.getsockname()[1]
        return port


@pytest.fixture(scope="session")
def started(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Callable[..., Server]]:
    """Starts servers, and ends them."""
    running = []

    def start(*options: str, without: str = "", **environment: str) -> Server:
        folder, port = tmp_path_factory.mktemp("server"), free_port()
        database = f"sqlite:///{folder}/simmerline.db"
        variables = {**os.environ, "SIMMERLINE_DB": database, "TZ": "America/Denver", **environment}
        with (folder / "log").open("wb") as log:
            # as if a library were not installed
            lacks = f"import sys; sys.modules[{without!r}] = None; " if without else ""
            command = [sys.executable, "-c", f"{lacks}{START}", "serve", "--port", str(port), *options]
            running.append(subprocess.Popen(command, stdout=log, stderr=log, env=variables))
        url = f"http://localhost:{port}"
        waited_from = time.monotonic()
        while not answers(url):
            assert running[-1].poll() is None, (folder / "log").read_text()
            assert time.monotonic() - waited_from < LONGEST_START_S
            time.sleep(0.1)
        return Server(url, folder / "log", variables["SIMMERLINE_DB"], running[-1].pid)

    yield start
    for process in running:
        process.terminate()
    for process in running:
        process.wait(timeout=60)


def answers(url: str, path: str = "/api/health") -> bool:
    try:
        return httpx.get(f"{url}{path}").status_code == 200
    except httpx.TransportError:
        return False


@pytest.fixture(scope="session")
def server(started: Callable[..., Server]) -> Server:
    """A server as `simmerline serve` starts it."""
    return started()


@pytest.fixture(scope="session")
def guarded(started: Callable[..., Server]) -> Server:
    """A server that wants a token, and lets one page elsewhere call its API."""
    return started("--allow-origin", ELSEWHERE, SIMMERLINE_TOKEN=TOKEN)


class Person(httpx.Client):
    """Somebody with a browser that runs no scripts."""

    def form(self, address: str, path: str | None = None, /, **fields: object) -> httpx.Response:
        """Send a form of the page at an address, with its key."""
        return self.post(path or address, data={"form_key": self.key(address), **fields}, follow_redirects=True)

    def key(self, address: str) -> str:
        """What forms of the page bring back."""
        found = re.search(r'name="form_key" value="(\w+)"', self.get(address).text)
        assert found
        return found[1]

    def ask(self, text: str) -> str:
        """Ask, and the first line of the reply."""
        return headline(self.form("/", "/ask", text=text))


def headline(page: httpx.Response) -> str:
    found = re.search(r'class="headline"[^>]*>(.*?)<', page.text)
    return found[1].replace("\N{NO-BREAK SPACE}", " ") if found else ""


@pytest.fixture
def person(server: Server) -> Iterator[Person]:
    """Somebody who was never here before."""
    with Person(base_url=server.url, timeout=60) as client:
        yield client


@pytest.fixture
def another(server: Server) -> Iterator[Person]:
    """Somebody else."""
    with Person(base_url=server.url, timeout=60) as client:
        yield client
