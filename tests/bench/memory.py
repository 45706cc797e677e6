"""How memory grows over 100,000 questions with words nobody ever said. Run: python tests/bench/memory.py [COUNT]"""

from __future__ import annotations

import gc
import random
import string
import sys
from pathlib import Path

from assistant.answering import reply_to

WARM, MOST_GROWTH_MIB = 5_000, 20.0


def words(made_from: random.Random, count: int) -> str:
    """So many words that nobody says."""
    letters = (made_from.choices(string.ascii_lowercase, k=made_from.randint(5, 11)) for _ in range(count))
    return " ".join(map("".join, letters))


def ask(made_from: random.Random, count: int) -> None:
    """Ask so many questions, with two new words and a new elevation each."""
    for _ in range(count):
        dish, place, feet = words(made_from, 1), words(made_from, 1), made_from.randint(0, 12_000)
        reply_to(f"how long to braise {dish} in {place} at {feet} feet")


def held_mib() -> float:
    """The memory of this process that is in use [MiB], after what is no more used was given back."""
    gc.collect()
    pages = int(Path("/proc/self/statm").read_text().split()[1])
    return pages * 4096 / 2**20


if __name__ == "__main__":
    asked, made_from = int(sys.argv[1]) if sys.argv[1:] else 100_000, random.Random(7)
    ask(made_from, WARM)
    before_mib = held_mib()
    for part in range(1, 11):
        ask(made_from, asked // 10)
        print(f"{part * asked // 10:7,} questions: {held_mib() - before_mib:+.1f} MiB", flush=True)
    grown_mib = held_mib() - before_mib
    verdict = "" if grown_mib < MOST_GROWTH_MIB else ", TOO MUCH"
    print(f"grown by {grown_mib:.1f} MiB{verdict} (goal {MOST_GROWTH_MIB:g})")
