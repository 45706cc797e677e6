"""How many recipes and questions a second, on one core and on two."""

from __future__ import annotations

import os
import time
from concurrent.futures import ProcessPoolExecutor
from multiprocessing import get_context

import convert
from tables_shown import show

from assistant.answering import reply_to

RECIPES, QUESTIONS = 200, 400
ASKED = (
    "how long to braise short ribs at 7,000 feet",
    "why does water boil cooler in leadville",
    "soft ball stage at 5280 ft",
    "how long do i boil pasta at seven thousand feet",
    "what psi do I need at 6,000 ft to match 15 at sea level",
)


def answered(count: int) -> float:
    """Answer so many questions, each read anew, and give the processor time that they took [s]."""
    for question in ASKED:
        reply_to(question)
    start = time.process_time()
    for number in range(count):
        # another height each time, so that nothing is remembered
        reply_to(ASKED[number % len(ASKED)].replace("000", f"{number % 1000:03d}"))
    return time.process_time() - start


def questions() -> list[tuple[object, ...]]:
    """Questions a second of processor time, in one process and in two at once."""
    alone_s = answered(QUESTIONS)
    with ProcessPoolExecutor(2, mp_context=get_context("spawn")) as pool:
        each_s = list(pool.map(answered, (QUESTIONS, QUESTIONS)))
    together = sum(QUESTIONS / s for s in each_s)
    one = QUESTIONS / alone_s
    return [
        ("questions, warm, one process", f"{one:.0f}", "1.00"),
        ("questions, warm, two processes", f"{together:.0f}", f"{together / one:.2f}"),
    ]


def recipes() -> list[tuple[object, ...]]:
    """Recipes a second by the clock, the command's start and its writing included."""
    convert.RECIPES = RECIPES
    alone_s, alone_cpu_s = convert.folder_s(1)
    cores = min(2, len(os.sched_getaffinity(0)))
    shared_s, shared_cpu_s = convert.folder_s(cores)
    return [
        ("recipes, one core", f"{RECIPES / alone_s:.0f} ({RECIPES / alone_cpu_s:.0f} a second of processor)", "1.00"),
        (
            f"recipes, {cores} cores",
            f"{RECIPES / shared_s:.0f} ({RECIPES / shared_cpu_s:.0f} a second of processor)",
            f"{alone_s / shared_s:.2f}",
        ),
    ]


def table() -> None:
    """Print the table."""
    show(
        "Pace", ("what", "a second", "times one"), [*questions(), *recipes()],
        "Questions by processor time, recipes by the clock, which other work on the machine slows.",
    )  # fmt: skip


if __name__ == "__main__":
    table()
