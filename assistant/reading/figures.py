"""Numbers in digits and words, fractions and dozens, each at the word where it begins. Nothing is read twice."""

from __future__ import annotations

import math
import re
from collections.abc import Sequence
from dataclasses import replace
from itertools import dropwhile

from assistant.reading.spans import Number

ONES = {
    "zero": 0, "nought": 0, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8,
    "nine": 9,
}  # fmt: skip
TEENS = {
    "ten": 10, "eleven": 11, "twelve": 12, "thirteen": 13, "fourteen": 14, "fifteen": 15, "sixteen": 16,
    "seventeen": 17, "eighteen": 18, "nineteen": 19,
}  # fmt: skip
TENS = {
    "twenty": 20, "thirty": 30, "forty": 40, "fourty": 40, "fifty": 50, "sixty": 60, "seventy": 70, "eighty": 80,
    "ninety": 90,
}  # fmt: skip
# thousands as they are said in the Andes, the Pyrenees and the Alps
ABROAD = {"dos": 2, "tres": 3, "cuatro": 4, "cinco": 5, "deux": 2, "trois": 3, "quatre": 4, "due": 2, "quattro": 4}
ABROAD_THOUSAND = ("mil", "mille", "mila")
ABROAD_HUNDREDS = {
    "doscientos": 200, "trescientos": 300, "cuatrocientos": 400, "quinientos": 500, "seiscientos": 600,
    "setecientos": 700, "ochocientos": 800, "novecientos": 900,
}  # fmt: skip
SCALES = {"hundred": 100, "thousand": 1000, "thousands": 1000, "thou": 1000}
THOUSANDS = {**SCALES, "k": 1000}
# between a number and its scale: 7ish thousand; behind ten k, and behind 7 k only where heights are told
ISH, HEIGHT_UNITS, MOST_K = "ish", ("ft", "feet", "foot", "m", "metres", "meters"), 30
PARTS = {"half": 1 / 2, "third": 1 / 3, "quarter": 1 / 4, "eighth": 1 / 8}
PARTS |= {f"{word}s": part for word, part in PARTS.items()}
# parts only where they are counted: a fourth time is no quarter
COUNTED = {"fourth": 1 / 4, "fifth": 1 / 5, "sixth": 1 / 6}
COUNTED |= {f"{word}s": part for word, part in COUNTED.items()}
GROUPED = r"[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?"
DIGITS = re.compile(rf"(?P<grouped>{GROUPED})(?P<k>k?)|(?P<plain>\d+(?:[.,]\d+)?|\.\d+)(?P<kk>k?)", re.IGNORECASE)
POINTED, METRES = re.compile(r"[1-9]\.\d{3}"), ("m", "metres", "meters", "metre", "meter", "metros", "msnm", "meteren")
RATIO = re.compile(r"(\d+)/(\d+)")
FIRST_WORDS = frozenset(("a", "an", "dozen", "dozens", "couple")).union(ONES, TEENS, TENS, SCALES, ABROAD, PARTS)
# digit by digit, as numbers are read out: five two eight oh
FEWEST_READ_OUT, MOST_READ_OUT = 3, 5
NOUGHTS = ("oh", "o")
# what recognisers write for a figure in a height, and the words by which it is one
SOUND_ALIKE = {"for": "four", "ate": "eight", "fore": "four"}
SCALES_OF_HEIGHTS = frozenset(("hundred", "thousand"))
UNITS_OF_HEIGHTS = frozenset(("feet", "foot", "ft", *METRES))
OF_HEIGHTS = frozenset(("and", *SOUND_ALIKE, *SCALES_OF_HEIGHTS, *ONES, *TEENS, *TENS))


def hear(words: Sequence[str]) -> tuple[Number, ...]:
    """The numbers among lower-case words, in order, not overlapping.

    >>> hear("bake at three seventy five for one and a half hours".split())
    (Number(start=2, end=5, value=375.0), Number(start=6, end=10, value=1.5))
    """
    words = _as_meant(words)
    found: list[Number] = []
    at = 0
    while at < len(words):
        if number := number_from(words, at):
            found.append(_signed(words, number))
        at = number.end if number else at + 1
    return tuple(found)


def _as_meant(words: Sequence[str]) -> Sequence[str]:
    """The words with figures for what only sounds otherwise in a height: at for thousand ate hundred feet."""
    if SCALES_OF_HEIGHTS.isdisjoint(words) or UNITS_OF_HEIGHTS.isdisjoint(words):
        return words
    behind = [words[i + 1 : i + 7] for i in range(len(words))]
    return [
        SOUND_ALIKE[word] if word in SOUND_ALIKE and _is_height(after) else word
        for word, after in zip(words, behind, strict=True)
    ]


def _is_height(words: Sequence[str]) -> bool:
    """Whether words go on as a height does: thousand feet, hundred and fifty metres."""
    behind = dropwhile(lambda word: word in OF_HEIGHTS, words[1:])
    return bool(words) and words[0] in SCALES_OF_HEIGHTS and next(behind, "") in UNITS_OF_HEIGHTS


def number_from(words: Sequence[str], at: int) -> Number | None:
    """The longest number that begins at a word, without its sign; None where none does.

    >>> number_from("1 1/4 + 1/8 tsp".split(), 0), number_from("five two eight oh".split(), 0)
    (Number(start=0, end=4, value=1.375), Number(start=0, end=4, value=5280.0))
    """
    if not _begins_one(words[at]):
        return None
    number = _pointed_thousands(words, at) or _read_out(words, at) or _fraction(words, at) or _whole(words, at)
    return number and _summed(words, _dozens(words, _and_a_part(words, _pointed(words, _roughly(words, number)))))


def _begins_one(word: str) -> bool:
    """Whether a number can begin with a word: most words are passed over by this alone."""
    return word in FIRST_WORDS or word[0] == "." or word[0].isdigit()


def _pointed_thousands(words: Sequence[str], at: int) -> Number | None:
    """Thousands of metres with a point, as they are written in much of the world: 3.200 meter."""
    if not POINTED.fullmatch(words[at]) or _word(words, at + 1) not in METRES:
        return None
    return Number(at, at + 1, float(words[at].replace(".", "")))


def digits(word: str) -> float | None:
    """The value of a number in digits, or None: 7,000; 7.5k; 3/4; 2,5.

    >>> digits("7,000"), digits("7.5k"), digits("3/4"), digits("2,5"), digits("1e3"), digits("1,2,3")
    (7000.0, 7500.0, 0.75, 2.5, None, None)
    """
    if ratio := RATIO.fullmatch(word):
        over, under = float(ratio[1]), float(ratio[2])
        value = over / under if under and math.isfinite(over) else math.inf
    elif figure := DIGITS.fullmatch(word):
        body = figure["grouped"].replace(",", "") if figure["grouped"] else figure["plain"].replace(",", ".")
        value = float(body) * (1000.0 if figure["k"] or figure["kk"] else 1.0)
    else:
        return None
    return value if math.isfinite(value) else None


def is_plain(number: Number, words: Sequence[str]) -> bool:
    """Whether a number is written in digits, and not in words."""
    return digits(words[number.start]) is not None


def _word(words: Sequence[str], at: int) -> str:
    return words[at] if 0 <= at < len(words) else ""


def _read_out(words: Sequence[str], at: int) -> Number | None:
    """Digit by digit: seven five zero zero; from three digits on."""
    end = at
    while end - at <= MOST_READ_OUT and (_word(words, end) in ONES or (end > at and _word(words, end) in NOUGHTS)):
        end += 1
    if not FEWEST_READ_OUT <= end - at <= MOST_READ_OUT or _word(words, end) in (*SCALES, *PARTS, "point"):
        return None
    return Number(at, end, float("".join(str(ONES.get(word, 0)) for word in words[at:end])))


def _fraction(words: Sequence[str], at: int) -> Number | None:
    """half, a half, three quarters, quarter of an."""
    times, end = 1.0, at
    part = PARTS.get(_word(words, at))
    if _word(words, at) in ONES and (part := _part(words, at + 1)):
        times, end = float(ONES[words[at]]), at + 1
    elif words[at] in ("a", "an") and (part := PARTS.get(_word(words, at + 1))):
        end = at + 1
    if part is None:
        return None
    value, end = times * part, end + 1
    for tail in (("of", "a"), ("of", "an"), ("a",), ("an",)):
        if tuple(words[end : end + len(tail)]) == tail:
            return Number(at, end + len(tail), value)
    return Number(at, end, value)


def _part(words: Sequence[str], at: int) -> float | None:
    word = _word(words, at)
    return PARTS.get(word) or COUNTED.get(word)


def _whole(words: Sequence[str], at: int) -> Number | None:
    """Digits, number words and their mixture: 7 thousand, seventy two hundred, fifty two eighty, a dozen, a couple."""
    if words[at] in ("a", "an") and _word(words, at + 1) in ("dozen", "couple", "hundred", "thousand"):
        number = _whole(words, at + 1)
        return number and Number(at, number.end, number.value)
    if words[at] in ABROAD and _word(words, at + 1) in ABROAD_THOUSAND:
        more = ABROAD_HUNDREDS.get(_word(words, at + 2), 0)
        return Number(at, at + (3 if more else 2), 1000.0 * ABROAD[words[at]] + more)
    if words[at] in ("dozen", "dozens"):
        return Number(at, at + 1, 12.0)
    if words[at] == "couple":
        return Number(at, at + (2 if _word(words, at + 1) == "of" else 1), 2.0)
    total, group, end, scaled = 0.0, None, at, math.inf
    while end < len(words):
        word = words[end]
        if word in SCALES and SCALES[word] < scaled and (group is None or group < SCALES[word]):
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
    if words[at].isdigit() and end == at + 1 and (part := _ratio(_word(words, end))):
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
    return None


def _ratio(word: str) -> float | None:
    """The value of a fraction in digits."""
    return digits(word) if "/" in word else None


def _and_a_part(words: Sequence[str], number: Number) -> Number:
    """Two and a half, one and three quarters, 1 and 1/2, five and a half thousand."""
    if _word(words, number.end) not in ("and", "&") or number.value != int(number.value):
        return number
    at = number.end + 1
    if (ratio := _ratio(_word(words, at))) and ratio < 1 and words[number.end - 1].isdigit():
        return Number(number.start, at + 1, number.value + ratio)
    part = _fraction(words, at) if at < len(words) else None
    if part is None or words[part.end - 1] in ("a", "an") or _word(words, part.end) == "dozen":
        return number
    return _scaled(words, Number(number.start, part.end, number.value + part.value))


def _pointed(words: Sequence[str], number: Number) -> Number:
    """Seven point two, seven point two five thousand."""
    if _word(words, number.end) != "point" or number.value != int(number.value):
        return number
    end, said = number.end + 1, ""
    while (digit := _small(_word(words, end))) is not None and digit in range(100):
        end, said = end + 1, f"{said}{digit:.0f}"
    if not said:
        return number
    return _scaled(words, Number(number.start, end, number.value + float(f"0.{said}")))


def _roughly(words: Sequence[str], number: Number) -> Number:
    """7ish thousand; ten k; 7 k ft. A temperature rises by 3 K."""
    behind = _word(words, number.end)
    if behind == ISH and _word(words, number.end + 1) in THOUSANDS:
        return _scaled(words, replace(number, end=number.end + 1))
    told = not is_plain(number, words) or _word(words, number.end + 1) in HEIGHT_UNITS
    return _scaled(words, number) if behind == "k" and number.value <= MOST_K and told else number


def _dozens(words: Sequence[str], number: Number) -> Number:
    """Two dozen, 1 1/2 dozen, half a dozen."""
    if _word(words, number.end) not in ("dozen", "doz") or words[number.end - 1] in ("dozen", "dozens"):
        return number
    return Number(number.start, number.end + 1, number.value * 12)


def _summed(words: Sequence[str], number: Number) -> Number:
    """1 1/4 + 1/8: a spoonful written as the sum of two that there are."""
    while _word(words, number.end) in ("+", "plus") and (part := _ratio(_word(words, number.end + 1))) and part < 1:
        number = replace(number, end=number.end + 2, value=number.value + part)
    return number


def _scaled(words: Sequence[str], number: Number) -> Number:
    """Five and a half THOUSAND, seven point two K."""
    scale = THOUSANDS.get(_word(words, number.end))
    return Number(number.start, number.end + 1, number.value * scale) if scale and number.value < scale else number


def _signed(words: Sequence[str], number: Number) -> Number:
    below = _word(words, number.start - 1) in ("minus", "negative")
    return Number(number.start - 1, number.end, -number.value) if below else number
