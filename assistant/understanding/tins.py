"""The tins that are named by their size: two 8 inch rounds, a 13 by 9, 2 x 20 cm."""

from __future__ import annotations

import re
from collections.abc import Iterator

from rules.model import Tin
from rules.physics.units import CM_PER_IN

COUNTS = {"a": 1, "an": 1, "one": 1, "single": 1, "two": 2, "three": 3, "four": 4}
LARGEST_IN, MOST = 20.0, 4
SHEETS = {"half sheet": (18.0, 13.0), "quarter sheet": (13.0, 9.0)}
# which of two stands for the new one: a 13 by 9 instead of two rounds
TURNED = re.compile(r"\b(?:instead of|in place of|rather than|in stead of)\b")
_UNIT = r"(?:-|\s)*(?P<{}>inch(?:es)?|in\b|\"|″|cm)?"
_TIN = re.compile(
    r"(?<![\d,.:/])(?:(?P<count>one|two|three|four|an?|single|[1-4])\s*(?:(?:x|×)\s*|\s))?"
    r"(?P<one>\d{1,2}(?:\.\d+)?)" + _UNIT.format("unit") + r"\s*"
    r"(?:(?:x|by|×)\s*(?P<other>\d{1,2}(?:\.\d+)?)" + _UNIT.format("unit_too") + r")?"
    r"(?![\d.,]*\d|\s*(?:°|degrees|minutes?|mins?|hours?|ft|feet|m\b|g\b|kg|ml|%|eggs?|cups?|tsp|tbsp))"
    r"\s*(?P<shape>(?:round|square|springform|loaf|tube|cake)?\s*(?:rounds?|squares?|tins?|pans?|layers?|springforms?))?",
)
_SHEET = re.compile(r"\b(half|quarter)[- ]sheet\b")


def named(text: str) -> tuple[Tin, ...]:
    """Every tin with its size, in the order of the text; the new one last where two are named.

    >>> [(t.count, t.across_cm, t.along_cm) for t in named("from two 8 inch rounds to one 13 by 9 at 6,300 ft")]
    [(2, 20.3, None), (1, 33.0, 22.9)]
    """
    low = text.lower()
    found = sorted(_found(low), key=lambda pair: pair[0])
    tins = [tin for _, tin in found]
    if len(found) == 2 and TURNED.search(low[found[0][0] : found[1][0]]):
        tins.reverse()
    return tuple(tins)


def swapped(text: str) -> bool:
    """Whether a batter goes from one tin into another: none where it is asked which of two."""
    found = sorted(_found(text.lower()), key=lambda pair: pair[0])
    return len(found) == 2 and " or " not in text.lower()[found[0][0] : found[1][0]]


def _found(text: str) -> Iterator[tuple[int, Tin]]:
    for match in _SHEET.finditer(text):
        along, across = SHEETS[f"{match[1]} sheet"]
        yield match.start(), Tin(1, round(along * CM_PER_IN, 1), round(across * CM_PER_IN, 1))
    read = [(match.start(), *_tin(match)) for match in _TIN.finditer(text)]
    sure = any(tin and plainly for _, tin, plainly in read)
    yield from ((at, tin) for at, tin, plainly in read if tin and (plainly or sure))


def _tin(match: re.Match[str]) -> tuple[Tin | None, bool]:
    """The tin, and whether more than a length tells that it is one."""
    unit, other, shape = match["unit"] or match["unit_too"], match["other"], (match["shape"] or "").strip()
    plainly = bool(other or (unit and (shape or match["count"])) or (shape and match["count"]))
    if not plainly and not unit:
        return None, False
    one, count = float(match["one"]), COUNTS.get(match["count"] or "a") or int(match["count"])
    if other and one <= MOST and not match["count"]:
        # 2 x 20 cm is two tins of 20 cm
        one, other, count = float(other), None, int(one)
    metric = unit == "cm" or (not unit and one > LARGEST_IN)
    scale = 1.0 if metric else CM_PER_IN
    if not 10 <= one * scale <= 60:
        return None, False
    square = "square" in shape
    along = float(other) * scale if other else one * scale if square else None
    return Tin(count, round(one * scale, 1), round(along, 1) if along else None), plainly
