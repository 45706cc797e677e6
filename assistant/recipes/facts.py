"""What a line states of a recipe as a whole: its times, and the flour that percentages refer to."""

from __future__ import annotations

import re
from functools import cache

from assistant.recipes.lines import any_of, measure_at
from assistant.recipes.steps import read_step
from rules.recipe import Recipe
from rules.recipes.steps import in_words

LONGEST_FACT = 6
_FLAGS = re.IGNORECASE


@cache
def _loose_facts() -> tuple[tuple[str, re.Pattern[str]], ...]:
    """Facts without a sign behind their name: "Prep 20 min"."""
    return tuple(
        (key, re.compile(rf"(?:^|[|;•·]\s*){any_of('facts', key)}\s+(?P<what>\d[^|;•·]{{1,40}})", _FLAGS))
        for key in ("prep", "cook", "total")
    )


@cache
def _facts() -> tuple[tuple[str, re.Pattern[str]], ...]:
    keys = ("prep", "cook", "total", "flour", "dough")
    return tuple(
        (key, re.compile(rf"(?<!\w){any_of('facts', key)}{_sign(key)}(?P<what>[^|;•]{{1,40}})", _FLAGS)) for key in keys
    )


def _sign(key: str) -> str:
    """What stands between a fact and its figure: a sign; behind "dough weight" none is needed."""
    return r"\s*[:=–-]\s*" if key != "dough" else r"\s*(?:[:=–-]|\bis\b)?\s*(?=\d)"


def fact(line: str, *, loose: bool = False) -> dict[str, float]:
    """Times of the whole recipe [min], and the weights of flour and dough [g], that a line states.

    loose: also without a sign between: "Prep 20 min"
    """
    found: dict[str, float] = {}
    for key, pattern in (*_facts(), *(_loose_facts() if loose else ())):
        if match := pattern.search(line):
            if key in ("flour", "dough"):
                measure = measure_at(match["what"], 0)
                if measure and measure.unit and measure.unit.kind == "mass":
                    found[key] = measure.low * measure.unit.size
            elif times := read_step(match["what"]).times:
                found[key] = times[0].low_min
    return found


def retimed(note: str, before: Recipe, after: Recipe) -> str:
    """A note with a time of the whole recipe ("Bake time: 30 minutes"), with the time it has after a change."""
    for key, pattern in _facts():
        was, now = getattr(before, f"{key}_min", None), getattr(after, f"{key}_min", None)
        found = pattern.search(note)
        times = read_step(found["what"]).times if found else ()
        if found and times and was is not None and now is not None and was != now:
            start, end = (found.start("what") + at for at in (times[0].start, times[0].end))
            note = note[:start] + in_words(now, now, note[start:end]) + note[end:]
    return note


def states_flour(line: str) -> bool:
    """Whether a line states the flour weight that percentages refer to: "Total flour: 5 kg"."""
    return "flour" in fact(line)


def bare_fact(line: str, *, loose: bool = False) -> bool:
    """Whether a line begins with a fact and says little more: "Bake time: 30 minutes", which is no step."""
    return len(line.split()) <= LONGEST_FACT and any(
        pattern.match(line) for _, pattern in (*_facts(), *(_loose_facts() if loose else ()))
    )


def is_time(text: str) -> bool:
    """Whether a text says no more than a time: "20 min"."""
    times = read_step(text).times
    return bool(times) and not (text[: times[0].start] + text[times[0].end :]).strip(" .")
