"""One step of the method -> Step: its times, temperatures, pressures, cues and vessels, each marked where it stands."""

from __future__ import annotations

import re
from functools import cache
from itertools import islice
from typing import cast

from assistant.reading.instruments import GAUGE_UNITS
from assistant.reading.reader import hear
from assistant.recipes.clauses import Word, outermost
from assistant.recipes.lines import any_of
from assistant.recipes.temperatures import Habits, temperatures
from assistant.recipes.times import MOST_TIMES, times
from rules import tables
from rules.recipe import Cue, CueOf, PressureMark, Step, Vessel

LONGEST = 8_000

_FLAGS = re.IGNORECASE


@cache
def _cue_patterns() -> tuple[tuple[str, re.Pattern[str]], ...]:
    kinds = tables.read_toml("lexicon/recipe_words.toml")["cues"]
    return tuple((kind, re.compile(rf"(?<![\w-]){any_of('cues', kind)}", _FLAGS)) for kind in kinds)


def _cues(text: str) -> tuple[Cue, ...]:
    found = [Word(kind, m.start(), m.end()) for kind, pattern in _cue_patterns() for m in pattern.finditer(text)]
    return tuple(Cue(w.start, w.end, cast(CueOf, w.what)) for w in outermost(found))


@cache
def _vessel() -> re.Pattern[str]:
    side = r"\d[\d./ ]{0,11}(?:\s?(?:x|×|by|-)\s?\d[\d./]{0,7}){0,3}"
    size = rf"(?P<size>{side}[\s-]*(?:inch(?:es)?|in\.|cm|quart|qt\.?|liter|litre|cup|\"|”)[\s-]*)?"
    kind = r"(?:(?:round|square|deep|heavy|nonstick|metal|glass|greased)\s+)*"
    return re.compile(rf"(?<![\w/]){size}{kind}(?P<name>{any_of('vessels', 'names')})", _FLAGS)


def vessels(text: str) -> tuple[Vessel, ...]:
    """The pans and pots that a text names."""
    return tuple(
        Vessel(m.start(), m.end(), " ".join(m["name"].lower().split()), (m["size"] or "").strip(" -"))
        for m in _vessel().finditer(text[:LONGEST])
    )


def read_step(text: str, component: str = "", *, habits: Habits | None = None, apparatus: str = "") -> Step:
    """Read one step of a method.

    text: the step, any text; what lies beyond 8,000 characters or a hundred times and temperatures is
        kept but not marked
    habits: what the recipe as a whole says, for a bare "bake at 220" or "cook to 240"
    apparatus: what it cooked in before this step
    returns: the step with its text unchanged

    >>> step = read_step("Bake at 350 for 30 to 35 minutes.")
    >>> [(t.low_min, t.high_min, t.what) for t in step.times], [(round(t.low_c), t.what) for t in step.temperatures]
    ([(30.0, 35.0, 'bake')], [(177, 'oven')])
    """
    seen = text[:LONGEST]
    heard = hear(seen)
    pressures = (PressureMark(*heard.place(m), m.low) for m in heard.measures if m.unit in GAUGE_UNITS)
    return Step(
        text=text,
        component=component,
        times=tuple(islice(times(seen, apparatus), MOST_TIMES)),
        temperatures=tuple(islice(temperatures(seen, habits or Habits(), apparatus), MOST_TIMES)),
        pressures=tuple(pressures),
        cues=_cues(seen),
        vessels=vessels(seen),
    )
