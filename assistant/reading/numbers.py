"""Component: numbers in digits and words, fractions and dozens."""

from __future__ import annotations

import math
import re
from collections.abc import Sequence
from itertools import takewhile

from spacy.language import Language
from spacy.tokens import Doc

from assistant.reading.spans import Number

ONES = {
    "zero": 0, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9,
}  # fmt: skip
TEENS = {
    "ten": 10, "eleven": 11, "twelve": 12, "thirteen": 13, "fourteen": 14, "fifteen": 15, "sixteen": 16,
    "seventeen": 17, "eighteen": 18, "nineteen": 19,
}  # fmt: skip
TENS = {
    "twenty": 20, "thirty": 30, "forty": 40, "fourty": 40, "fifty": 50, "sixty": 60, "seventy": 70, "eighty": 80,
    "ninety": 90,
}  # fmt: skip
SCALES = {"hundred": 100, "thousand": 1000, "thousands": 1000}
THOUSANDS = {**SCALES, "k": 1000}
PARTS = {"half": 1 / 2, "third": 1 / 3, "quarter": 1 / 4, "eighth": 1 / 8}
PARTS |= {f"{word}s": part for word, part in PARTS.items()}
DIGITS = re.compile(r"(?:\d|\.\d)[\d.,/]*k?", re.IGNORECASE)

Doc.set_extension("numbers", default=(), force=True)


@Language.component("kitchen_numbers", assigns=["doc._.numbers"])
def kitchen_numbers(doc: Doc) -> Doc:
    """Hear every number of the text."""
    doc._.numbers = hear([token.norm_ for token in doc])
    return doc


def hear(words: Sequence[str]) -> tuple[Number, ...]:
    """The numbers among lower-case words, in order, not overlapping.

    >>> hear("bake at three seventy five for one and a half hours".split())
    (Number(start=2, end=5, value=375.0), Number(start=6, end=10, value=1.5))
    """
    found: list[Number] = []
    at = 0
    while at < len(words):
        number = _fraction(words, at) or _whole(words, at)
        if number:
            number = _signed(words, _and_a_part(words, _pointed(words, number)))
            found.append(number)
        at = number.end if number else at + 1
    return tuple(found)


def digits(word: str) -> float | None:
    """The value of a number in digits, or None: 7,000; 7.5k; 3/4; 2,5.

    >>> digits("7,000"), digits("7.5k"), digits("3/4"), digits("2,5"), digits("seven")
    (7000.0, 7500.0, 0.75, 2.5, None)
    """
    if not DIGITS.fullmatch(word):
        return None
    body, scale = (word[:-1], 1000.0) if word.endswith("k") else (word, 1.0)
    if re.fullmatch(r"\d{1,3}(,\d{3})+(\.\d+)?", body):
        body = body.replace(",", "")
    top, _, under = body.replace(",", ".").partition("/")
    try:
        value = float(top) / (float(under) if under else 1.0) * scale
    except (ValueError, ZeroDivisionError):
        return None
    return value if math.isfinite(value) else None


def _word(words: Sequence[str], at: int) -> str:
    return words[at] if 0 <= at < len(words) else ""


def _fraction(words: Sequence[str], at: int) -> Number | None:
    """half, a half, three quarters, quarter of an, half a dozen."""
    times, end = 1.0, at
    if _word(words, at) in ONES and _word(words, at + 1) in PARTS:
        times, end = float(ONES[words[at]]), at + 1
    elif words[at] == "a" and _word(words, at + 1) in PARTS:
        end = at + 1
    if _word(words, end) not in PARTS:
        return None
    value, end = times * PARTS[words[end]], end + 1
    for tail in (("of", "a"), ("of", "an"), ("a",), ("an",)):
        if tuple(words[end : end + len(tail)]) == tail:
            end += len(tail)
            break
    if _word(words, end) == "dozen":
        return Number(at, end + 1, value * 12)
    return Number(at, end, value)


def _whole(words: Sequence[str], at: int) -> Number | None:
    """Digits, number words and their mixture: 7 thousand, seventy two hundred, fifty two eighty, a dozen, a couple."""
    if words[at] in ("a", "an") and _word(words, at + 1) in ("dozen", "couple", "hundred", "thousand"):
        number = _whole(words, at + 1)
        return number and Number(at, number.end, number.value)
    if words[at] in ("dozen", "dozens"):
        return Number(at, at + 1, 12.0)
    if words[at] == "couple":
        return Number(at, at + (2 if _word(words, at + 1) == "of" else 1), 2.0)
    total, group, end, scaled = 0.0, None, at, math.inf
    while end < len(words):
        word = words[end]
        if word in SCALES and SCALES[word] < scaled:
            group = (1.0 if group is None else group) * SCALES[word]
            if SCALES[word] == 1000:
                total, group, scaled = total + group, None, 1000
        elif word == "and" and end > at and words[end - 1] in SCALES and _is_small(_word(words, end + 1)):
            pass
        elif (value := _small(word)) is not None and (joined := _join(group, value, words, end, at)) is not None:
            group = joined
        else:
            break
        end += 1
    if end == at:
        return None
    value = total + (group or 0.0)
    if _word(words, end) == "dozen":
        value, end = value * 12, end + 1
    if digits(words[at]) is not None and end == at + 1 and "/" in _word(words, end) and (part := digits(words[end])):
        value, end = value + part, end + 1
    return Number(at, end, value) if math.isfinite(value) else None


def _small(word: str) -> float | None:
    for table in (ONES, TEENS, TENS):
        if word in table:
            return float(table[word])
    return digits(word)


def _is_small(word: str) -> bool:
    return word in ONES or word in TEENS or word in TENS


def _join(group: float | None, value: float, words: Sequence[str], at: int, first: int) -> float | None:
    """A further number word: after a scale it adds, after tens a digit adds, and otherwise pilots' pairs multiply."""
    before = words[at - 1] if at > first else ""
    if group is None:
        return value if at == first or before in SCALES or before == "and" else None
    if before in SCALES or before == "and":
        return group + value if value < 100 else None
    if digits(words[at]) is not None or digits(before) is not None:
        return None
    if before in TENS and words[at] in ONES and words[at] != "zero":
        return group + value
    if 1 <= group <= 99 and 10 <= value <= 99:
        return group * 100 + value
    if 1 <= group <= 99 and before == "oh":
        return group * 100 + value
    return None


def _and_a_part(words: Sequence[str], number: Number) -> Number:
    """Two and a half, one and three quarters, five and a half thousand."""
    if _word(words, number.end) != "and" or number.value != int(number.value):
        return number
    part = _fraction(words, number.end + 1) if number.end + 1 < len(words) else None
    if part is None or words[part.end - 1] in ("a", "an", "dozen"):
        return number
    return _scaled(words, Number(number.start, part.end, number.value + part.value))


def _pointed(words: Sequence[str], number: Number) -> Number:
    """Seven point two, seven point two five thousand."""
    if _word(words, number.end) != "point" or number.value != int(number.value):
        return number
    digits_said = list(takewhile(lambda value: value in range(100), map(_small, words[number.end + 1 :])))
    if not digits_said:
        return number
    part = float("0." + "".join(f"{digit:.0f}" for digit in digits_said))
    return _scaled(words, Number(number.start, number.end + 1 + len(digits_said), number.value + part))


def _scaled(words: Sequence[str], number: Number) -> Number:
    """Five and a half THOUSAND, seven point two K."""
    scale = THOUSANDS.get(_word(words, number.end))
    return Number(number.start, number.end + 1, number.value * scale) if scale and number.value < scale else number


def _signed(words: Sequence[str], number: Number) -> Number:
    below = _word(words, number.start - 1) in ("minus", "negative")
    return Number(number.start - 1, number.end, -number.value) if below else number
