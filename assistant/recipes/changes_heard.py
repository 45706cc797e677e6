"""What a cook writes of a batch, heard by data/lexicon/batch_changes.toml: which fault is meant, what was changed."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from itertools import pairwise
from typing import TYPE_CHECKING, Any

from assistant.errors import AssistantError
from assistant.recipes.batches import as_kept
from assistant.replies.sentences import worded
from rules.said import Said, listed, sentences
from rules.tables import read_toml

if TYPE_CHECKING:
    from assistant.reading.spans import Measure, Number
    from rules.mending import Ranked
    from rules.model import Units

WORDS = "lexicon/batch_changes.toml"
say = sentences("recipes/changes_heard")
SAID_AS_SUGGESTED = 78.0
BY_SIZE = {"amount": ("less", "more"), "temperature": ("cooler", "hotter"), "time": ("shorter", "longer")}
KINDS = {"temperature": "temperature", "degree": "temperature", "time": "time"}
# a bare figure of an oven that is its setting, in either unit
LEAST_OVEN = 80


class UnknownSymptom(AssistantError, LookupError):
    """A fault in words that no row of the catalogue is heard as."""


class NoChange(AssistantError, ValueError):
    """Words of a change that say none. The message says what is wanted."""


@dataclass(frozen=True, slots=True)
class Figure:
    """A figure of a change with its unit and what kind of figure it is: amount, temperature or time."""

    value: float
    unit: str | None
    kind: str


def symptom_heard(words: str, dish_class: str | None = None) -> str:
    """The id of the fault that is meant, for a dish of this class.

    raises: UnknownSymptom that names the nearest

    >>> symptom_heard("sank in the middle"), symptom_heard("came out dry", "yeast_bread")
    ('sank_in_the_middle', 'loaf_dry')
    """
    from rapidfuzz import process

    from assistant.reading.text import fold
    from assistant.understanding.faults import heard_in, nearest
    from rules.mending import catalogue, meant

    text = fold(words)
    id = words if words in catalogue() else next(iter(heard_in(text)), None) or nearest(text)
    if id is None:
        titles = [row.title for row in catalogue().values() if not row.usual]
        near = [title for title, _, _ in process.extract(text, titles, limit=3)]
        raise UnknownSymptom(_text(say("unknown-fault", words=repr(words), near=listed(near, "semicolons"))))
    return meant(id, dish_class).id


def change_heard(words: str, suggested: Sequence[Ranked] = (), units: Units = "us") -> dict[str, Any]:
    """A change as it is written down, in the shape of the changes of a converted recipe.

    words: "baking powder 2 tsp to 1 1/2 tsp", "oven 350F to 370F", "less sugar", "suggested", or any words
    suggested: what was suggested before, the next change first; words that mean one of them are kept as that one
    units: which scale those were told in
    raises: NoChange for no words at all, or "suggested" where nothing was

    >>> kept = change_heard("baking powder 2 tsp to 1 1/2 tsp")
    >>> kept["what"], kept["way"], kept["from"], kept["to"]["value"]
    ('leavening', 'less', {'value': 2.0, 'unit': 'tsp'}, 1.5)
    """
    text = " ".join(words.split())
    if not text:
        raise NoChange(_text(say("what-changed")))
    if text.casefold().rstrip(".") in read_toml(WORDS)["as_suggested"]:
        if not suggested:
            raise NoChange(_text(say("nothing-suggested")))
        return as_kept(suggested[0].change, suggested[0].line, units)
    return _with_figures(text) or _said_before(text, suggested, units) or _by_words(text)


def _text(said: Said) -> str:
    return worded(said, "us")


def _with_figures(text: str) -> dict[str, Any] | None:
    """What has a figure before and a figure after."""
    from assistant.reading.reader import hear
    from assistant.reading.units import CHANGES

    heard = hear(text, CHANGES, ranges=False)
    found: list[Measure | Number] = [*heard.measures, *heard.alone()]
    for first, second in pairwise(sorted(found, key=lambda figure: figure.start)):
        (start, end), (begin, stop) = heard.place(first), heard.place(second)
        between = _moved().fullmatch(text, end, begin)
        if between is None:
            continue
        named, behind = between["named"].strip(), text[stop:].removeprefix(".")
        same = bool(named) and behind.strip().lower().startswith(named.lower())
        rest = " ".join([text[:start], "" if same else named, behind])
        return _changed(text, rest, first, second)
    return None


def _changed(text: str, rest: str, first: Measure | Number, second: Measure | Number) -> dict[str, Any]:
    """The change from a first figure to a second; a figure without a unit has that of the other."""
    before, after = _figure(first, second, text), _figure(second, first, text)
    item = " ".join(_any_of("fillers").sub(" ", rest).split()).strip(" :,-")
    less, more = BY_SIZE[before.kind]
    way = less if _in_the_unit_of(before, after) < before.value else more
    return {
        "what": _what(text, item, before.kind), "way": way, "at": "recipe", "item": item,
        "from": {"value": before.value, "unit": before.unit}, "to": {"value": after.value, "unit": after.unit},
        "rule": "",
    }  # fmt: skip


@cache
def _moved() -> re.Pattern[str]:
    """What stands between two figures of a change: up to four words, and what means "to"."""
    to = "|".join(map(re.escape, read_toml(WORDS)["to"]))
    return re.compile(rf"\.?(?P<named>(?:\s+[A-Za-z-]+){{0,4}}?)\s*(?:{to})\s*", re.I)


@cache
def _any_of(*names: str) -> re.Pattern[str]:
    """Any word of a list of the lexicon, by the names that lead to it."""
    words: Any = read_toml(WORDS)
    for name in names:
        words = words[name]
    return re.compile(rf"\b(?:{'|'.join(map(re.escape, words))})\b", re.I)


@cache
def _meaning(name: str) -> dict[str, str]:
    """What each word of a table of the lexicon means."""
    return {word: meaning for meaning, words in read_toml(WORDS)[name].items() for word in words}


def _figure(figure: Measure | Number, other: Measure | Number, text: str) -> Figure:
    from assistant.reading.spans import Measure
    from assistant.reading.units import to_si

    unit = figure if isinstance(figure, Measure) else other
    said = figure.said if isinstance(figure, Measure) else figure.value
    if not isinstance(unit, Measure):
        return Figure(
            said, None, "temperature" if _any_of("of", "oven").search(text) and said >= LEAST_OVEN else "amount"
        )
    kind = KINDS.get(unit.kind, "amount")
    if kind == "time":
        return Figure(figure.low if isinstance(figure, Measure) else to_si(said, unit.unit), "min", kind)
    return Figure(said, None if unit.kind == "degree" else unit.unit, kind)


def _in_the_unit_of(before: Figure, after: Figure) -> float:
    from rules.baking.rounding import in_unit

    converted = in_unit(after.value, after.unit, before.unit)
    return after.value if converted is None else converted


def _what(text: str, item: str, kind: str) -> str:
    """What a change is of, as changes of a recipe name it; "method" for what is no part of a formula."""
    if kind == "temperature":
        return next((of for of in ("fat_temp", "sugar_temp") if _any_of("of", of).search(text)), "oven")
    if kind == "time":
        return "proof" if _any_of("of", "proof").search(text) else "time"
    from rules.baking.change import WHATS
    from rules.baking.parts import part_of
    from rules.topics.bake_adjust import COMPONENT_OF

    named = item.split()[-1].casefold() if item else ""
    component = item if item in WHATS else named if named in WHATS else COMPONENT_OF.get(part_of(item).name, "method")
    return component if component in WHATS else "method"


def _said_before(text: str, suggested: Sequence[Ranked], units: Units) -> dict[str, Any] | None:
    """A change in words that means one that was suggested."""
    from rapidfuzz import fuzz

    lines = [worded(row.line, units).casefold() for row in suggested]
    likeness = {i: fuzz.token_set_ratio(text.casefold(), line) for i, line in enumerate(lines)}
    best = max(likeness, key=lambda i: likeness[i], default=None)
    if best is None or likeness[best] < SAID_AS_SUGGESTED:
        return None
    return as_kept(suggested[best].change, suggested[best].line, units)


def _by_words(text: str) -> dict[str, Any]:
    """A change without figures: less of something, or plain words."""
    ways = _meaning("ways")
    way = next((ways[word] for word in text.casefold().split() if word in ways), "different")
    item = " ".join(word for word in text.split() if word.casefold() not in ways)
    what = _what_of_words(text, item, way)
    return {"what": what, "way": way, "at": "recipe", "item": text if what == "method" else item, "rule": ""}


def _what_of_words(text: str, item: str, way: str) -> str:
    if way in BY_SIZE["temperature"]:
        named = _any_of("of", "oven").search(text) or _any_of("of", "fat_temp").search(text)
        return _what(text, item, "temperature") if named else "method"
    if way in BY_SIZE["time"]:
        return _what(text, item, "time")
    return _what(text, item, "amount") if way in BY_SIZE["amount"] else "method"
