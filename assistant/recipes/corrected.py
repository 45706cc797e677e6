"""What a cook takes back while telling a recipe ("two cups, no, make that three") -> the recipe as it was meant."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache

from assistant.reading.units import unit_of
from assistant.recipes.lines import measure_at, words
from rules.tables import read_toml

WORDS = "lexicon/recipe_talk.toml"
# how far back the amount that is taken back may stand
LONGEST_BACK = 160
# nobody tells so much
LONGEST_TOLD = 6_000
_SIGNS = " \t\n\r,.;:(–—-"
_GOES_ON = ("and", "then", "plus")
_WORD = re.compile(r"(?<![\w/.])[\w½¼¾⅓⅔⅛]")
_TIME = re.compile(r"\s*-?(min(?:ute)?s?|h(?:ou)?rs?|seconds?|days?|weeks?|nights?)\b", re.I)
_DEGREES = re.compile(r"\s*(?:°\s*[cf]?|degrees?|deg|[cf])\b", re.I)
_NEXT = re.compile(r"(?P<gap>[^\S\n]+)(?P<word>[a-z][a-z'-]*)", re.I)


@dataclass(frozen=True, slots=True)
class _Amount:
    """A figure with its unit in a text, and what kind of unit it is: "" for a figure alone."""

    start: int
    end: int
    kind: str


@cache
def marks() -> re.Pattern[str]:
    """Words that take back what was said, with the signs behind them."""
    said = sorted(read_toml(WORDS)["takes_back"], key=len, reverse=True)
    told = "|".join(re.escape(phrase).replace(r"\ ", r"[,.]?\s+") for phrase in said)
    return re.compile(rf"(?<!\w)(?P<mark>{told})(?!\w)[\s,.:;–—-]*(?:(?:it's|its|that's)\s+)?", re.I)


def corrected(text: str) -> str:
    """A text with every amount that is taken back replaced by the one that is meant.

    >>> corrected("two cups of flour, no, make that three cups")
    'three cups of flour'
    >>> corrected("2 tsp soda\\nsorry, 1 tsp"), corrected("1 cup milk, i mean 1 cup cream")
    ('1 tsp soda', '1 cup cream')
    >>> corrected("Bake for 20 minutes. No, make that 25 minutes."), corrected("Sorry, no photo. 2 eggs")
    ('Bake for 25 minutes.', 'Sorry, no photo. 2 eggs')
    """
    at = 0
    while len(text) <= LONGEST_TOLD and (found := marks().search(text, at)):
        put_right = _put_right(text, found)
        at = found.end() if put_right is None else 0
        text = text if put_right is None else put_right
    return text


def _put_right(text: str, found: re.Match[str]) -> str | None:
    new = _amount_at(text, found.end())
    if new is None:
        return None
    said_before = text[: found.start()].rstrip(_SIGNS)
    old = _taken_back(said_before, new)
    if old is None:
        return None
    said = text[new.start : new.end]
    # a figure alone leaves the unit that was said
    until = _without_unit(text, old) if not new.kind else old.end
    behind = _item_end(text, new.end)
    meant = text[new.end : behind] or said_before[old.end :]
    bracketed = "(" in text[len(said_before) : found.start()]
    rest = text[behind:].removeprefix(")") if bracketed else text[behind:]
    return f"{text[: old.start]}{said}{text[until : old.end]}{meant.rstrip()}{rest}"


def _item_end(text: str, at: int) -> int:
    """Where the words of an item end that stand behind an amount: at a sign, another amount, what to do."""
    end = at
    for word in _NEXT.finditer(text, at):
        begins, said = word.end("gap"), word["word"].lower()
        # the first word names what is measured, though cooks cream and flour too
        done = said in _GOES_ON or (end > at and said in words("steps", "verbs"))
        if word.start() != end or done or marks().match(text, begins) or _amount_at(text, begins):
            break
        end = word.end()
    return end


def _amount_at(text: str, at: int) -> _Amount | None:
    measure = measure_at(text, at, spelled=True)
    if measure is None:
        return None
    if measure.unit:
        return _Amount(at, measure.end, "piece" if measure.unit.kind == "count" else "measure")
    for kind, pattern in (("time", _TIME), ("degrees", _DEGREES)):
        if unit := pattern.match(text, measure.end):
            return _Amount(at, unit.end(), kind)
    return _Amount(at, measure.end, "")


def _taken_back(before: str, new: _Amount) -> _Amount | None:
    """The last amount of a kind, on the line of the words that take it back or on the one before."""
    line = before.rstrip().rfind("\n") + 1
    amounts: list[_Amount] = []
    for word in _WORD.finditer(before, max(line, len(before) - LONGEST_BACK)):
        if amounts and word.start() < amounts[-1].end:
            continue
        if found := _amount_at(before, word.start()):
            amounts.append(found)
    if not new.kind:
        return amounts[-1] if amounts else None
    return next((found for found in reversed(amounts) if found.kind == new.kind), None)


def _without_unit(text: str, old: _Amount) -> int:
    """Where the figure of an amount ends and its unit begins."""
    if not old.kind:
        return old.end
    said = list(re.finditer(r"[A-Za-z°℃℉]+", text[old.start : old.end]))
    unit = next(
        (word for word in said if unit_of(word[0].lower()) or _TIME.match(word[0]) or _DEGREES.match(word[0])), None
    )
    return old.start + len(text[old.start : old.start + unit.start()].rstrip()) if unit else old.end
