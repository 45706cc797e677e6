"""Numbers as recipes write them: ½, 1 1/2, 1-1/2, 0,5, 1,000, one, half a."""

from __future__ import annotations

import re
import unicodedata

_DIGITS = r"\d{1,7}"
_VULGAR = "¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞"
_SLASH = r"\s?[/⁄]\s?"
_FRACTION = rf"{_DIGITS}{_SLASH}[1-9]\d{{0,2}}"
WORDS = {
    "a dozen": 12, "half a dozen": 6, "half an": 0.5, "half a": 0.5, "half": 0.5, "a couple of": 2, "an": 1, "a": 1,
    "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9, "ten": 10,
    "eleven": 11, "twelve": 12, "thirteen": 13, "fourteen": 14, "fifteen": 15, "sixteen": 16, "seventeen": 17,
    "eighteen": 18, "nineteen": 19,
}  # fmt: skip
_TENS = {
    "twenty": 20, "thirty": 30, "forty": 40, "fifty": 50, "sixty": 60, "seventy": 70, "eighty": 80, "ninety": 90,
}  # fmt: skip
_UNITS = ("one", "two", "three", "four", "five", "six", "seven", "eight", "nine")
WORDS |= _TENS
WORDS |= {f"{ten}{sign}{one}": _TENS[ten] + n for ten in _TENS for n, one in enumerate(_UNITS, 1) for sign in "- "}

NUMBER = (
    rf"(?:{_DIGITS}(?:\s+(?:and\s+|&\s*)?|\s?-\s?){_FRACTION}(?!\d)"  # 1 1/2, 1-1/2
    rf"|{_DIGITS}\s?(?:-\s?|and\s+|&\s*)?[{_VULGAR}]"  # 1½
    rf"|{_FRACTION}(?!\d)|[{_VULGAR}]"
    r"|[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?(?!\d)"  # 1,000
    rf"|{_DIGITS}(?:[.,]\d{{1,4}})?(?!\d)|\.\d{{1,4}}(?!\d))"
)
NUMBER_WORD = r"(?<![\w-])(?:" + "|".join(sorted(map(re.escape, WORDS), key=len, reverse=True)) + r")(?![\w-])"
RANGE_SIGN = r"\s*(?:-|–|—|~|\bto\b|\bor\b)\s*"

_THOUSANDS = re.compile(r"[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?")
_PARTS = re.compile(
    rf"(?:(?P<whole>\d+)(?=\D)[^\d/⁄]*?)?(?:(?P<over>\d+){_SLASH}(?P<under>\d+)|(?P<vulgar>[{_VULGAR}]))$"
)


def number(text: str) -> float:
    """The value of what NUMBER or NUMBER_WORD matched.

    raises: ValueError for anything else

    >>> number("1 1/2"), number("1-1/2"), number("2½"), number("0,5"), number("1,000"), number("10/4")
    (1.5, 1.5, 2.5, 0.5, 1000.0, 2.5)
    """
    text = " ".join(text.lower().split())
    if text in WORDS:
        return float(WORDS[text])
    if _THOUSANDS.fullmatch(text):
        return float(text.replace(",", ""))
    if parts := _PARTS.match(text):
        over, under = parts["over"], parts["under"]
        part = float(over) / float(under) if over else unicodedata.numeric(parts["vulgar"])
        return float(parts["whole"] or 0) + part
    return float(text.replace(",", "."))
