"""A process that runs for months holds no more of what people say than it needs."""

from __future__ import annotations

import gc
import random
import string
import subprocess
import sys
from collections.abc import Callable, Iterator
from functools import _lru_cache_wrapper

import pytest

from assistant.answering import reply_to
from assistant.planning.menu import read_menu
from assistant.planning.order_sheet import order_sheet
from assistant.printing.card import card_for
from assistant.reading.tokens import MOST_STRINGS
from assistant.recipes.converting import convert_recipe
from assistant.understanding.pipeline import read

Asked = Callable[[Iterator[str], float], object]


def unseen() -> Iterator[str]:
    """Words that nobody says."""
    made_from = random.Random(11)
    while True:
        yield "".join(made_from.choices(string.ascii_lowercase, k=made_from.randint(5, 11)))


def ask(word: Iterator[str], elevation_m: float) -> object:
    return reply_to(f"how long to braise {next(word)} with {next(word)} in {next(word)} at {elevation_m:.1f} m")


def find_fault(word: Iterator[str], elevation_m: float) -> object:
    return reply_to(f"my {next(word)} cake {next(word)} and came out {next(word)} at {elevation_m:.1f} m, why")


def convert(word: Iterator[str], elevation_m: float) -> object:
    title, flour, spice = (next(word) for _ in range(3))
    lines = f"2 cups {flour} flour\n1 cup sugar\n3 eggs\n2 tsp {spice}\n1 tsp baking powder"
    return convert_recipe(f"{title} cake\n{lines}\nBake 30 minutes at 350 F.", to_elevation_m=elevation_m)


def order(word: Iterator[str], elevation_m: float) -> object:
    menu = read_menu(f"{next(word)} short ribs\n{next(word)} rice".encode())
    return order_sheet(menu, elevation_m=elevation_m, covers=90)


def hang_up(word: Iterator[str], elevation_m: float) -> object:
    return card_for(next(word), elevation_m)


@pytest.mark.parametrize("asked", [ask, find_fault, convert, order, hang_up], ids=lambda asked: asked.__name__)
def test_what_is_kept_without_end_does_not_depend_on_what_is_said(asked: Asked) -> None:
    word = unseen()
    for at in range(3):
        asked(word, 2000.0 + at / 10)
    before = kept_without_end()
    for at in range(20):
        asked(word, 2001.0 + at / 10)
    assert kept_without_end() == before


def kept_without_end() -> dict[str, int]:
    """How many results each cache holds that forgets none."""
    caches = (found for found in gc.get_objects() if isinstance(found, _lru_cache_wrapper))
    ours = (one for one in caches if getattr(one, "__module__", "").startswith(("assistant", "rules")))
    told = {f"{one.__module__}.{one.__qualname__}": one.cache_info() for one in ours}
    return {name: told[name].currsize for name in sorted(told) if told[name].maxsize is None}


def test_a_text_that_was_read_stays_readable_when_the_vocabulary_makes_way() -> None:
    word = unseen()
    first, last = (f"braise {next(word)} ribs" for _ in range(2))
    early = read(first)
    later = [read(" ".join(next(word) for _ in range(150))).vocab for _ in range(MOST_STRINGS // 150)]
    assert later[-1] is not early.vocab
    assert early.text == first
    assert [token.text for token in read(last)] == last.split()


# a part of what tests/bench/memory.py asks, in a process of its own; words that are kept for ever would take 13 MiB
GROWN = """
from random import Random
from tests.bench.memory import held_mib, words
from assistant.understanding.pipeline import read
made_from = Random(5)
def hear(count):
    for _ in range(count):
        read(words(made_from, 60))
hear(250)
before_mib = held_mib()
hear(250)
print(held_mib() - before_mib)
"""


def test_memory_stays_flat_over_fifteen_thousand_words_nobody_ever_said() -> None:
    told = subprocess.run([sys.executable, "-c", GROWN], check=True, capture_output=True, text=True).stdout
    assert float(told) < 5.0
