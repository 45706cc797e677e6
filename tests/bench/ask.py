"""How long one question takes: cold start of the command, warm reply in one process. Run: python tests/bench/ask.py"""

from __future__ import annotations

import statistics
import subprocess
import sys
import time
from pathlib import Path

from assistant.answering import reply_to

QUESTIONS = (
    "how long to braise short ribs at 7,000 feet",
    "why does water boil cooler in leadville",
    "soft ball stage at 5280 ft",
    "how long do i boil pasta at seven thousand feet",
    "what psi do I need at 6,000 ft to match 15 at sea level",
    "brase shrot ribs at 7k ft, it takes 3 hours at home",
    "my water boils at 199, how long for hard boiled eggs",
)
COLD_RUNS = 7
WARM_ROUNDS = 60


def cold_s() -> list[float]:
    """Wall time of the whole command, process start included [s]."""
    command = [str(Path(sys.executable).with_name("simmerline")), "ask", QUESTIONS[0]]
    times = []
    for _ in range(COLD_RUNS):
        start = time.perf_counter()
        subprocess.run(command, check=True, capture_output=True)
        times.append(time.perf_counter() - start)
    return times


def warm_ms() -> list[float]:
    """Time of a reply once everything is loaded [ms]."""
    for question in QUESTIONS:
        reply_to(question)
    times = []
    for _ in range(WARM_ROUNDS):
        for question in QUESTIONS:
            start = time.perf_counter()
            reply_to(question)
            times.append((time.perf_counter() - start) * 1000)
    return times


if __name__ == "__main__":
    cold, warm = cold_s(), warm_ms()
    slow = statistics.quantiles(warm, n=20)[-1]
    print(f"cold start of ask: median {statistics.median(cold):.2f} s, slowest {max(cold):.2f} s, of {len(cold)} runs")
    print(f"warm reply: median {statistics.median(warm):.2f} ms, 95 % under {slow:.2f} ms, of {len(warm)}")
