"""The batch log in words: a change as a cook writes it down, and what the log of a recipe says to do next."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import TYPE_CHECKING, Any

from assistant.errors import AssistantError

if TYPE_CHECKING:
    from assistant.reading.spans import Measure, Number
    from assistant.store.batches import Batch
    from rules.baking.change import Change
    from rules.mending import Mending, Ranked, Trial, Tried
    from rules.model import Units
    from rules.recipe import Recipe

AS_SUGGESTED = ("suggested", "as suggested", "the suggested change")
SAID_AS_SUGGESTED = 78.0
WAYS = {
    "less": "less", "fewer": "less", "reduced": "less", "more": "more", "extra": "more", "increased": "more",
    "hotter": "hotter", "cooler": "cooler", "lower": "cooler", "higher": "hotter", "shorter": "shorter",
    "longer": "longer",
}  # fmt: skip
BY_SIZE = {"amount": ("less", "more"), "temperature": ("cooler", "hotter"), "time": ("shorter", "longer")}
NAMES = {"sugar_temp": "sugar temperature", "fat_temp": "fat", "proof": "rise", "temperature": "inside"}
FILLERS = re.compile(r"\b(?:from|of|the|changed|cut|raised|reduced|use|used)\b", re.I)
HOT_FAT = re.compile(r"\b(?:fat|oil|fryer|frying)\b", re.I)
BOILED_SUGAR = re.compile(r"\b(?:sugar|syrup|candy|caramel|fudge|stage)\b", re.I)
RISE = re.compile(r"\b(?:rise|rising|proof|proofing|proved?|ferment\w*)\b", re.I)
OVEN = re.compile(r"\boven\b", re.I)
# a bare figure of an oven that is its setting, in either unit
LEAST_OVEN = 80
# what stands between the figure before and the figure after, behind at most four words: 2 cups of brown sugar to 1
TO, MOST_BETWEEN = (["to"], ["-", ">"], ["→"]), 4
KINDS = {"temperature": "temperature", "degree": "temperature", "time": "time"}


class UnknownSymptom(AssistantError, LookupError):
    """A fault in words that no row of the catalogue is heard as."""


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
    from assistant.understanding.what_is_asked import SYMPTOMS, nearest
    from rules.mending import catalogue, meant

    text = fold(words)
    id = words if words in catalogue() else nearest(text, SYMPTOMS, "symptom")
    if id is None:
        titles = [row.title for row in catalogue().values() if not row.usual]
        near = [title for title, _, _ in process.extract(text, titles, limit=3)]
        raise UnknownSymptom(f"I do not know the fault {words!r}; near to it: {'; '.join(near)}")
    return meant(id, dish_class).id


def change_heard(words: str, suggested: Sequence[Ranked] = ()) -> dict[str, Any]:
    """A change as it is written down, in the shape of the changes of a converted recipe.

    words: "baking powder 2 tsp to 1 1/2 tsp", "oven 350F to 370F", "less sugar", "suggested", or any words
    suggested: what was suggested before, the next change first; words that mean one of them are kept as that one
    raises: ValueError for no words at all, or "suggested" where nothing was

    >>> kept = change_heard("baking powder 2 tsp to 1 1/2 tsp")
    >>> kept["what"], kept["way"], kept["from"], kept["to"]["value"]
    ('leavening', 'less', {'value': 2.0, 'unit': 'tsp'}, 1.5)
    """
    text = " ".join(words.split())
    if not text:
        raise ValueError("say what was changed, such as: baking powder 2 tsp to 1 1/2 tsp")
    if text.casefold().rstrip(".") in AS_SUGGESTED:
        if not suggested:
            raise ValueError("nothing has been suggested for this recipe yet; say what was changed")
        return as_kept(suggested[0].change, suggested[0].line)
    return _with_figures(text) or _said_before(text, suggested) or _by_words(text)


def _with_figures(text: str) -> dict[str, Any] | None:
    """What has a figure before and a figure after."""
    from assistant.reading.reader import hear
    from assistant.reading.units import CHANGES

    heard = hear(text, CHANGES, ranges=False)
    found: list[Measure | Number] = [*heard.measures, *heard.alone()]
    figures = sorted(found, key=lambda figure: figure.start)
    for first, second in pairwise(figures):
        between = heard.norms(first.end, second.start)
        sign = next((sign for sign in TO if between[-len(sign) :] == sign), None)
        named = [word for word in between[: -len(sign)] if word != "."] if sign else []
        if sign and len(named) <= MOST_BETWEEN and all(word.isalpha() for word in named):
            (start, end), stop = heard.place(first), heard.place(second)[1]
            sign_start = heard.words[second.start - len(sign)].start
            behind = text[stop:].lstrip(".")
            same = bool(named) and behind.lower().split()[: len(named)] == named
            rest = " ".join([text[:start], "" if same else text[end:sign_start].lstrip("."), behind])
            return _changed(text, rest, first, second)
    return None


def _changed(text: str, rest: str, first: Measure | Number, second: Measure | Number) -> dict[str, Any]:
    """The change from a first figure to a second; a figure without a unit has that of the other."""
    before, after = _figure(first, second, text), _figure(second, first, text)
    item = " ".join(FILLERS.sub(" ", rest).split()).strip(" :,.-")
    less, more = BY_SIZE[before.kind]
    way = less if _in_the_unit_of(before, after) < before.value else more
    return {
        "what": _what(text, item, before.kind), "way": way, "at": "recipe", "item": item,
        "from": {"value": before.value, "unit": before.unit}, "to": {"value": after.value, "unit": after.unit},
        "rule": "",
    }  # fmt: skip


def _figure(figure: Measure | Number, other: Measure | Number, text: str) -> Figure:
    from assistant.reading.spans import Measure
    from assistant.reading.units import to_si

    unit = figure if isinstance(figure, Measure) else other
    said = figure.said if isinstance(figure, Measure) else figure.value
    if not isinstance(unit, Measure):
        return Figure(said, None, "temperature" if OVEN.search(text) and said >= LEAST_OVEN else "amount")
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
        return "fat_temp" if HOT_FAT.search(text) else "sugar_temp" if BOILED_SUGAR.search(text) else "oven"
    if kind == "time":
        return "proof" if RISE.search(text) else "time"
    from rules.baking.change import WHATS
    from rules.baking.parts import part_of
    from rules.topics.bake_adjust import COMPONENT_OF

    named = item.split()[-1].casefold() if item else ""
    component = item if item in WHATS else named if named in WHATS else COMPONENT_OF.get(part_of(item).name, "method")
    return component if component in WHATS else "method"


def _said_before(text: str, suggested: Sequence[Ranked]) -> dict[str, Any] | None:
    """A change in words that means one that was suggested."""
    from rapidfuzz import fuzz

    likeness = {i: fuzz.token_set_ratio(text.casefold(), row.line.casefold()) for i, row in enumerate(suggested)}
    best = max(likeness, key=lambda i: likeness[i], default=None)
    if best is None or likeness[best] < SAID_AS_SUGGESTED:
        return None
    return as_kept(suggested[best].change, suggested[best].line)


def _by_words(text: str) -> dict[str, Any]:
    """A change without figures: less of something, or plain words."""
    way = next((WAYS[w] for w in text.casefold().split() if w in WAYS), "different")
    item = " ".join(w for w in text.split() if w.casefold() not in WAYS)
    what = "method"
    if way in ("hotter", "cooler"):
        what = _what(text, item, "temperature") if OVEN.search(text) or HOT_FAT.search(text) else "method"
    elif way in ("shorter", "longer"):
        what = _what(text, item, "time")
    elif way != "different":
        what = _what(text, item, "amount")
    return {"what": what, "way": way, "at": "recipe", "item": text if what == "method" else item, "rule": ""}


def as_kept(change: Change, line: str) -> dict[str, Any]:
    """A suggested change in the shape of the changes of a converted recipe."""
    item = change.item or ("" if change.to_value is not None else line.rstrip("."))
    kept: dict[str, Any] = {
        "what": change.what, "way": change.way, "at": change.at, "item": item,
        "rule": change.rule, "because": change.because, "sources": list(change.sources),
    }  # fmt: skip
    if change.from_value is not None:
        kept["from"] = {"value": change.from_value, "unit": change.from_unit}
    if change.to_value is not None:
        kept["to"] = {
            "value": change.to_value, "low": change.to_low, "high": change.to_high, "unit": change.to_unit,
        }  # fmt: skip
    return kept


def in_words(kept: dict[str, Any], units: Units = "us") -> str:
    """A kept change in a few words. units: which scale its temperatures are told in

    >>> in_words(change_heard("baking powder 2 tsp to 1 1/2 tsp")), in_words(change_heard("less sugar"))
    ('baking powder 2 tsp to 1 1/2 tsp', 'sugar, less')
    """
    before, after = kept.get("from"), kept.get("to")
    item = kept.get("item") or NAMES.get(kept["what"], kept["what"])
    if not before or not after or before.get("unit") == "percent":
        return item if kept["way"] == "different" or len(item.split()) > 3 else f"{item}, {kept['way']}"
    return f"{item} {_amount(before, units)} to {_amount(after, units)}"


def _amount(of: dict[str, Any], units: Units) -> str:
    from rules.baking.rounding import measure
    from rules.physics.units import to_c, to_f
    from rules.say import duration, number

    value, unit = float(of["value"]), of.get("unit")
    if unit in ("degF", "degC"):
        wanted = "degF" if units == "us" else "degC"
        told = value if unit == wanted else to_f(value) if wanted == "degF" else to_c(value)
        return f"{number(told, 0)} °{wanted[-1]}"
    return duration(value) if unit == "min" else measure(value, unit)


def tried(kept: dict[str, Any]) -> Tried:
    """A kept change as mending reads it."""
    from rules.mending import Tried

    before, after = kept.get("from") or {}, kept.get("to") or {}
    return Tried(
        what=str(kept.get("what", "method")), way=str(kept.get("way", "different")), rule=str(kept.get("rule", "")),
        item=str(kept.get("item", "")), from_value=before.get("value"), from_unit=before.get("unit"),
        to_value=after.get("value"), to_unit=after.get("unit"),
    )  # fmt: skip


def trials(batches: Sequence[Batch]) -> tuple[Trial, ...]:
    """A log as mending reads it."""
    from rules.mending import Trial

    return tuple(
        Trial(changes=tuple(map(tried, b.changes)), symptoms=tuple(b.symptoms), rating=b.rating) for b in batches
    )


def mending(batches: Sequence[Batch], *, recipe: Recipe | None = None, units: Units = "us") -> Mending | None:
    """What the log of a recipe says to do next: for the faults of its last batch, where that was baked.

    batches: of one recipe, oldest first; returns: None where there is no batch yet
    raises: OutOfRange for an elevation that no kitchen has
    """
    from rules.foods.dishes import classes
    from rules.mending import catalogue, suggest

    if not batches:
        return None
    last = batches[-1]
    known = tuple(id for id in last.symptoms if id in catalogue())
    style = next((b.style for b in reversed(batches) if b.style in classes()), None)
    return suggest(
        known, recipe=recipe, dish_class=None if recipe else style, elevation_m=last.elevation_m or 0.0,
        from_elevation_m=last.from_elevation_m or 0.0, units=units, log=trials(batches),
    )  # fmt: skip
