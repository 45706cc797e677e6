"""What a cook says of a batch -> which one, what went wrong, what was changed, how it was against the one before."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import cache
from typing import Any

from assistant.reading.text import fold
from assistant.recipes.amended import place_of, with_amount
from assistant.recipes.batch import Compared
from assistant.recipes.lines import read_line
from assistant.recipes.sheet import Entry, Sheet
from rules import tables

WORDS = "lexicon/batch_talk.toml"
LONGEST_TEXT, LONGEST_CLAUSE = 400, 4
FLAT = "flat"
_CLAUSE = re.compile(r"[,;.!?:]|\bbut\b|\band\b|\bthough\b|\bexcept\b")
_BUT = re.compile(r"[,;.]?\s+(?:but|though)\s+", re.I)
_AMOUNT = re.compile(
    r"(?P<figure>\d+\s+\d/\d|\d/\d|\d+(?:\.\d+)?|[½¼¾])\s*(?P<unit>kg|g|ml|l|cups?|tsp|tbsp|teaspoons?|tablespoons?|oz)?\b"
)


@dataclass(frozen=True, slots=True)
class Told:
    """What was said of a batch.

    number: which one, None where it is the next; symptoms: ids; good: nothing is wrong; did: the change given was made
    unchanged: nothing was changed; compared: with the one before
    """

    number: int | None = None
    is_next: bool = False
    symptoms: tuple[str, ...] = ()
    good: bool = False
    did: bool = False
    unchanged: bool = False
    compared: Compared = ""

    @property
    def came_out(self) -> bool:
        """Whether it is told how it came out."""
        return bool(self.symptoms) or self.good


@cache
def listed(name: str) -> tuple[str, ...]:
    """A list of words by which batches are told of."""
    return tuple(tables.read_toml(WORDS)["words"][name])


@cache
def _numbers() -> dict[str, int]:
    return {word: int(number) for number, words in tables.read_toml(WORDS)["numbers"].items() for word in words}


def has(low: str, name: str) -> bool:
    """Whether a phrase of a list stands in a text of plain words."""
    return any(f" {phrase} " in f" {low} " for phrase in listed(name))


def plain(text: str) -> str:
    """A text as its words are compared.

    >>> plain("The third one: didn't sink!")
    'the third one didnt sink'
    """
    return " ".join(re.sub(r"[^\w\s/.½¼¾]|\.(?!\d)", " ", fold(text[:LONGEST_TEXT]).replace("'", "")).split())


def numbered(low: str) -> int | None:
    """Which batch is told of.

    >>> numbered("second batch still sank"), numbered("batch 3 was dry"), numbered("the third fell"), numbered("2 eggs")
    (2, 3, 3, None)
    """
    words = low.split()
    for at, word in enumerate(words):
        number = _numbers().get(word)
        behind = words[at + 1] if at + 1 < len(words) else ""
        before = words[at - 1] if at else ""
        if number is None:
            continue
        ordinal = word[-2:] in ("st", "nd", "rd", "th") or word in ("first", "second", "third") or word.endswith("th")
        if before in ("batch", "try", "attempt", "number") or (ordinal and behind in listed("batch")):
            return number
        if ordinal and at <= 2 and behind not in ("rise", "proof", "layer", "time", "floor"):
            return number
    return None


def told_of(text: str, dish_class: str | None) -> Told | None:
    """What an utterance tells of a batch; None where it tells of none.

    >>> told_of("second batch still sank a little", "layer_cake").compared
    'better'
    """
    low = plain(text)
    number, is_next, did = numbered(low), has(low, "next"), has(low, "did")
    if number is None and not is_next and not did:
        return None
    good = has(low, "good") and not has(low, "not_good")
    symptoms = faults_in(text, dish_class)
    good = good and not symptoms
    return Told(number, is_next, symptoms, good, did, has(low, "unchanged"), _compared(low))


def _compared(low: str) -> Compared:
    if has(low, "worse"):
        return "worse"
    if has(low, "better"):
        return "better"
    return "same" if has(low, "same") else ""


def faults_in(text: str, dish_class: str | None) -> tuple[str, ...]:
    """What went wrong, as it is meant of a dish of this class: the faults told, and plain words by themselves.

    >>> faults_in("level but dry", "layer_cake"), faults_in("it is flat as a board", "layer_cake")
    (('crumb_dry',), ('crumb_dense',))
    """
    from assistant.understanding import faults
    from assistant.understanding.pipeline import read
    from rules.mending import catalogue, meant

    # what was denied before a but is no word of what stands behind it: did not sink, but dry
    told = [id for part in _BUT.split(text) for id in faults.told(read(part))]
    low = plain(text)
    told += [FLAT] if has(low, "flat_as") else []
    for clause in filter(None, (part.strip() for part in _CLAUSE.split(fold(text)))):
        if len(clause.split()) <= LONGEST_CLAUSE and (not told or is_plain_fault(clause)):
            told += [id for id in faults.heard_in(f"came out {clause}") if f" {clause} " not in " level even flat top "]
    return tuple(dict.fromkeys(meant(id, dish_class).id for id in told if id in catalogue()))


def is_plain_fault(clause: str) -> bool:
    """Whether a few words tell a fault beside another: dry at the sides.

    >>> is_plain_fault("dry at the sides"), is_plain_fault("it is brown")
    (True, False)
    """
    return clause.split()[0] in listed("plain_faults")


def changes_in(text: str, sheet: Sheet, oven_f: float | None = None) -> tuple[dict[str, Any], ...]:
    """What the cook says was changed, against the recipe as it stood: removed the powder, with 1 tsp powder, at 375.

    >>> cake = Sheet(ingredients=(Entry("2 tsp baking powder"), Entry("250 g flour")))
    >>> [(c["what"], c["way"], c["to"]["value"]) for c in changes_in("I used 1 tsp baking powder", cake)]
    [('leavening', 'less', 1.0)]
    """
    found = [*_other_kinds(plain(text)), *_amounts(text, sheet)]
    return tuple(found)


def _other_kinds(low: str) -> Iterator[dict[str, Any]]:
    kind = next((kind for kind in listed("other_kinds") if f" {kind} " in f" {low} "), None)
    if kind:
        item = kind if "flour" in kind or "instead" in kind else f"{kind} flour"
        yield {"what": "flour", "way": "different", "at": "recipe", "item": item, "rule": "", "apart": True}


def _amounts(text: str, sheet: Sheet) -> Iterator[dict[str, Any]]:
    """Amounts that differ from those of the recipe, clause by clause."""
    from assistant.recipes.changes_heard import change_heard

    for clause in filter(None, (part.strip() for part in re.split(r"[,;!?:]|\.(?!\d)|\bbut\b|\band\b", fold(text)))):
        at = place_of(sheet, clause)
        read = read_line(sheet.ingredients[at].line) if at is not None else None
        if at is None or read is None or read.amount is None:
            continue
        unit = "" if read.unit is None else read.unit
        if has(plain(clause), "left_out") and not _AMOUNT.search(clause):
            change = change_heard(f"{read.item} {read.amount:g} {unit} to 0 {unit}")
            yield {**change, "item": read.item, "to": {"value": 0.0, "unit": read.unit}, "way": "less"}
            continue
        figure = _AMOUNT.search(clause)
        if figure is None or not has(plain(clause), "used"):
            continue
        now = read_line(with_amount(read.line, figure["figure"], figure["unit"] or ""))
        if now is None or now.amount is None or (now.amount, now.unit) == (read.amount, read.unit):
            continue
        change = change_heard(f"{read.item} {read.amount:g} {unit} to {now.amount:g} {now.unit or ''}")
        yield {**change, "item": read.item}


def applied(sheet: Sheet, changes: Sequence[dict[str, Any]]) -> Sheet:
    """The recipe with changes made that name their amounts; others are left to the cook."""
    for change in changes:
        sheet = _with_change(sheet, change)
    return sheet


def _with_change(sheet: Sheet, change: dict[str, Any]) -> Sheet:
    from rules.baking.rounding import measure

    to = change.get("to") or {}
    value, unit = to.get("value"), to.get("unit")
    if change.get("apart") or value is None or unit in ("percent", "K"):
        return sheet
    if change["what"] == "oven" and unit in ("degC", "degF"):
        return _with_oven(sheet, float(value), unit)
    if change["what"] == "time":
        return sheet
    at = place_of(sheet, str(change.get("item", "")))
    if at is None:
        return sheet
    entry = sheet.ingredients[at]
    if not value:
        return replace(sheet, ingredients=(*sheet.ingredients[:at], *sheet.ingredients[at + 1 :]))
    read = read_line(entry.line)
    if read is None:
        return sheet
    line = f"{entry.line[: read.start]}{measure(value, unit)} {entry.line[read.end :].lstrip()}"
    return replace(sheet, ingredients=(*sheet.ingredients[:at], Entry(line, entry.part), *sheet.ingredients[at + 1 :]))


def _with_oven(sheet: Sheet, value: float, unit: str) -> Sheet:
    setting = f"{value:.0f} {'F' if unit == 'degF' else 'C'}"
    pattern = re.compile(r"\b\d{3}\s*(?:°\s*)?[FC]\b|\b\d{3}(?=\s+for\b)", re.I)
    steps = tuple(replace(step, line=pattern.sub(setting, step.line, count=1)) for step in sheet.steps)
    return replace(sheet, steps=steps)


def summed(batches: Sequence[Sequence[dict[str, Any]]]) -> tuple[dict[str, Any], ...]:
    """The changes of all batches as one from the first to the last of each thing; what was put back is none.

    >>> less = {"what": "sugar", "item": "sugar", "way": "less", "from": {"value": 2}, "to": {"value": 1.5}}
    >>> again = {**less, "from": {"value": 1.5}, "to": {"value": 1}}
    >>> [(c["from"]["value"], c["to"]["value"]) for c in summed([[less], [again]])]
    [(2, 1)]
    """
    net: dict[tuple[str, str], dict[str, Any]] = {}
    for change in (change for batch in batches for change in batch if not change.get("apart")):
        key = (str(change["what"]), "" if change.get("from") else str(change.get("item", "")))
        before = net.get(key)
        net[key] = {**change, "from": before["from"]} if before and before.get("from") and change.get("to") else change
    return tuple(c for c in net.values() if not _is_put_back(c))


def _is_put_back(change: dict[str, Any]) -> bool:
    before, after = change.get("from") or {}, change.get("to") or {}
    return bool(before) and before.get("value") == after.get("value") and before.get("unit") == after.get("unit")
