"""How many questions a second the server holds. Run: python tests/bench/serve.py [--asks 200] [--seconds 60]

Starts a server of its own, asks on loopback at an even pace whether or not answers come (so that a slow answer does not
slow the asking), and prints how long answers took from the moment each was due, what failed, and the memory of the
server at the beginning and the end.
"""

from __future__ import annotations

import argparse
import asyncio
import json
import os
import signal
import socket
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

QUESTIONS = (
    "how long to braise short ribs at 7,000 feet",
    "why does water boil cooler in leadville",
    "soft ball stage at 5280 ft",
    "how long do i boil pasta at seven thousand feet",
    "what psi do I need at 6,000 ft to match 15 at sea level",
    "brase shrot ribs at 7k ft, it takes 3 hours at home",
    "my water boils at 199, how long for hard boiled eggs",
)
LINES = 32
WARM_S = 5


@contextmanager
def server(workers: int) -> Iterator[tuple[int, int]]:
    """A server: its port and its process."""
    with socket.socket() as found:
        found.bind(("127.0.0.1", 0))
        port = found.getsockname()[1]
    with tempfile.TemporaryDirectory() as folder:
        variables = {**os.environ, "SIMMERLINE_DB": f"sqlite:///{folder}/simmerline.db"}
        command = [sys.executable, "-c", "from assistant.cli import main; main()", "serve"]
        command += ["--port", str(port), "--workers", str(workers)]
        process = subprocess.Popen(command, env=variables)
        try:
            yield port, process.pid
        finally:
            process.send_signal(signal.SIGINT)
            try:
                process.wait(timeout=60)
            except subprocess.TimeoutExpired:
                process.kill()


async def request(line: tuple[asyncio.StreamReader, asyncio.StreamWriter], text: str) -> int:
    """Ask over an open line, and the status of the answer."""
    reader, writer = line
    body = json.dumps({"text": text}).encode()
    head = f"POST /api/ask HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nContent-Length: {len(body)}"
    writer.write(head.encode() + b"\r\n\r\n" + body)
    status = int((await reader.readline()).split()[1])
    length = 0
    while (header := await reader.readline()) != b"\r\n":
        name, _, value = header.partition(b":")
        length = int(value) if name.lower() == b"content-length" else length
    await reader.readexactly(length)
    return status


async def opened(port: int) -> tuple[asyncio.StreamReader, asyncio.StreamWriter]:
    """A line to the server, as soon as it listens."""
    while True:
        try:
            return await asyncio.open_connection("127.0.0.1", port)
        except OSError:
            await asyncio.sleep(0.1)


async def pace(port: int, asks: int, seconds: int) -> tuple[list[float], list[str]]:
    """Ask at an even pace: how long each answer took from when it was due [s], and what failed."""
    lines: asyncio.Queue[tuple[asyncio.StreamReader, asyncio.StreamWriter]] = asyncio.Queue()
    for _ in range(LINES):
        lines.put_nowait(await opened(port))
    took: list[float] = []
    failed: list[str] = []

    async def one(due: float, text: str) -> None:
        line = await lines.get()
        try:
            status = await request(line, text)
            took.append(time.perf_counter() - due)
            if status != 200:
                failed.append(str(status))
        except (OSError, asyncio.IncompleteReadError, IndexError, ValueError) as fault:
            failed.append(type(fault).__name__)
            line = await opened(port)
        lines.put_nowait(line)

    begun = time.perf_counter()
    waiting = []
    for number in range(asks * seconds):
        due = begun + number / asks
        await asyncio.sleep(max(0.0, due - time.perf_counter()))
        waiting.append(asyncio.create_task(one(due, QUESTIONS[number % len(QUESTIONS)])))
    await asyncio.gather(*waiting)
    return took, failed


def memory_mb(process: int) -> float:
    """The memory of a process and of those it started [MB]."""
    of_each = {}
    for status in Path("/proc").glob("[0-9]*/status"):
        try:
            rows = dict(line.split(":", 1) for line in status.read_text().splitlines() if ":" in line)
        except OSError:
            continue
        of_each[int(status.parent.name)] = (int(rows["PPid"]), int(rows.get("VmRSS", "0 kB").split()[0]) / 1024)
    own = {process}
    for _ in range(3):
        own |= {child for child, (parent, _) in of_each.items() if parent in own}
    return sum(of_each[one][1] for one in own if one in of_each)


def main() -> None:
    """Start, warm, ask, and print."""
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--asks", type=int, default=200, help="a second")
    options.add_argument("--seconds", type=int, default=60)
    options.add_argument("--workers", type=int, default=2)
    given = options.parse_args()
    with server(given.workers) as (port, process):
        asyncio.run(pace(port, max(1, given.asks // 4), WARM_S))
        before = memory_mb(process)
        took, failed = asyncio.run(pace(port, given.asks, given.seconds))
        after = memory_mb(process)
    cut = statistics.quantiles(took, n=100)
    print(f"{given.asks} asks a second for {given.seconds} s, {given.workers} workers")
    print(f"{len(failed)} of {len(took)} failed {sorted(set(failed))}")
    print(f"p50 {cut[49] * 1000:.0f} ms, p95 {cut[94] * 1000:.0f} ms, p99 {cut[98] * 1000:.0f} ms")
    print(f"memory {before:.0f} MB -> {after:.0f} MB")


if __name__ == "__main__":
    main()
