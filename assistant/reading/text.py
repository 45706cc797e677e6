"""Text as it came -> text that the pipeline can read: bounded, printable, plain letters, one way to write a thing."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from functools import partial

LONGEST = 2000
WORD = re.compile(r"[^\W\d_]+")
PUNCTUATION = re.compile(r"[^a-z0-9 ]|^ | $|  ")

_FRACTIONS = {c: unicodedata.normalize("NFKC", c).replace("\u2044", "/") for c in "¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞"}
_VULGAR = re.compile(f"[{''.join(_FRACTIONS)}]")
_SIGNS = str.maketrans(
    {
        **dict.fromkeys("‘’‛ʼ′´`", "'"),
        **dict.fromkeys("“”„‟″", '"'),
        **dict.fromkeys("‐‑‒–—―−", "-"),
        "º": "°",
        "˚": "°",
        "∘": "°",
        "\u2044": "/",
        "×": "x",
        "…": " ",
    }
)
# letters that are no plain letter with a mark: Turkish, Serbian, Nordic, Polish, German
_LETTERS = str.maketrans({**dict(zip("ıđøłĐØŁ", "idolDOL", strict=True)), "ß": "ss", "ẞ": "SS"})
# "1 200 g milk" is 1,200 g; "1 400 g can" is one can
_PACKS = (
    r"cans?|tins?|packs?|packages?|packets?|jars?|bags?|boxe?s?|blocks?|bottles?|cartons?|tubs?|bars?|fillets?|"
    r"steaks?|pieces?|portions?|balls?"
)
# what has to stand in a text before a pattern is tried on it (one of these signs), the pattern, and what is written
_DIGITS = "0123456789"
_REWRITES = tuple(
    (frozenset(signs), re.compile(pattern, re.IGNORECASE), to)
    for signs, pattern, to in (
        ("°", r"°\s*([CF])\b", r" deg\1 "),
        ("°", r"°", " degrees "),
        (
            _DIGITS,
            rf"(?<![\d.,/])(\d{{1,3}})[ '](\d{{3}})(?= ?(?:g|grams?|ml)\b(?!\.?\s+(?:{_PACKS})\b))",
            r"\1\2",
        ),
        ("'", r"(?<=\d)\s?'(?![\w'])", " ft "),
        ('"', r"(?<=\d)\s?\"(?!\w)", " in "),
        ("/", r"(?<![\d.,/])(\d{1,2}) ?/ ?(\d{1,2})(?![\d/])", r"\1/\2"),
        ("/", r"(?<![\d.,/])(\d+)(?: ?- ?| )(?=\d+/\d)", r"\1 "),
        (_DIGITS, r"(?<![\d.,])(\d{1,2}) (\d{3})(?= ?(?:ft|feet|foot|m|metres|meters)\b)", r"\1\2"),
        ("-", r"(?<=[a-z])-(?=[a-z])", " "),
        ("-", r"(?<=\d) ?-(?=[a-z])", " "),
        (".", r"\b([ap])\.\s?m\b\.?", r"\1m"),
        # St. Moritz, Mt. Abu: the dot ends no sentence
        (".", r"(?<![\w.])(st|mt)\. ?(?=[a-z]{3})", r"\1 "),
        (".", r"(?<![a-z])p\.\s?s\.\s?i\b", "psi"),
        ("/", r"(?<![a-z])(?:lbs?|pounds?)\.? ?/ ?(?:sq(?:uare)?\.? ?in(?:ch(?:es)?)?|in(?:ch)?\^?2)\b", " psi "),
        ("/", r"(?<![a-z])kgf? ?/ ?cm\^?2\b", " ksc "),
        ("-", r"(?:^|(?<=[a-z,(:;] )(?<!deg[cf] )(?<!degrees ))-(?=\.?\d)", "minus "),
        ("", r"\s\s+|[^\S ]", " "),
    )
)


@dataclass(frozen=True, slots=True)
class Cleaned:
    """text: what will be read, at most LONGEST characters; dropped: how many characters were left out at the end.

    accented: the words that came with accents, in plain letters and lower case; they are no slips of plain ones
    """

    text: str
    dropped: int
    accented: frozenset[str] = frozenset()


@dataclass(frozen=True, slots=True)
class Traced:
    """A cleaned text, and which characters of the given text each of its own was made of: from starts to ends."""

    text: str
    starts: Sequence[int]
    ends: Sequence[int]


def clean(text: str) -> Cleaned:
    """Bring any text whatsoever into the form the pipeline reads.

    Control characters and lone surrogates become spaces, accents go, vulgar fractions are spelled with digits, primes
    become units, hyphens between words become spaces. Only the first LONGEST characters are read.

    >>> clean("1½ hrs at 7,000′, sautéed").text
    '1 1/2 hrs at 7,000 ft , sauteed'
    """
    kept = text[:LONGEST]
    return Cleaned(traced(kept).text.strip()[:LONGEST], max(0, len(text) - LONGEST), accented(kept))


def accented(text: str) -> frozenset[str]:
    """The words of a text that have letters with accents, in plain letters.

    >>> sorted(accented("Crème anglaise in Bogotá"))
    ['bogota', 'creme']
    """
    if text.isascii():
        return frozenset()
    words = (word for word in WORD.findall(text) if not word.isascii())
    return frozenset(plain_letters(word).lower() for word in words)


def traced(text: str) -> Traced:
    """A text of any length, cleaned, with the way back to the text as it was given.

    >>> seen = traced("at 350°F")
    >>> seen.text[7:11], seen.starts[7], seen.ends[10]
    ('degF', 6, 8)
    """
    seen = Traced(text, range(len(text)), range(1, len(text) + 1))
    seen = _rewritten(seen, _VULGAR, lambda match: f" {_FRACTIONS[match.group()]} ")
    seen = _in_plain_letters(replace(seen, text=seen.text.translate(_SIGNS)))
    there = set(seen.text)
    for signs, pattern, to in _REWRITES:
        if not signs or not signs.isdisjoint(there):
            seen = _rewritten(seen, pattern, partial(_expanded, to))
    return seen


def _rewritten(seen: Traced, pattern: re.Pattern[str], to: Callable[[re.Match[str]], str]) -> Traced:
    texts: list[str] = []
    starts: list[int] = []
    ends: list[int] = []
    at = 0
    for match in pattern.finditer(seen.text):
        begin, end = match.span()
        new = to(match)
        alike = len(new) == end - begin
        texts += (seen.text[at:begin], new)
        starts += seen.starts[at:begin]
        ends += seen.ends[at:begin]
        starts += seen.starts[begin:end] if alike else [seen.starts[begin]] * len(new)
        ends += seen.ends[begin:end] if alike else [seen.ends[end - 1]] * len(new)
        at = end
    if not texts:
        return seen
    return Traced("".join((*texts, seen.text[at:])), [*starts, *seen.starts[at:]], [*ends, *seen.ends[at:]])


def _expanded(to: str, match: re.Match[str]) -> str:
    return match.expand(to)


def _in_plain_letters(seen: Traced) -> Traced:
    if seen.text.isascii() and seen.text.isprintable():
        return seen
    letters = [plain_letters(c) for c in seen.text]
    return Traced(
        "".join(letters),
        [start for start, new in zip(seen.starts, letters, strict=True) for _ in new],
        [end for end, new in zip(seen.ends, letters, strict=True) for _ in new],
    )


def plain_letters(text: str) -> str:
    """Letters without accents; whatever is not printable becomes a space.

    >>> plain_letters("crème\\x00brûlée"), plain_letters("klöße")
    ('creme brulee', 'klosse')
    """
    if text.isascii() and text.isprintable():
        return text
    spread = unicodedata.normalize("NFKD", text).translate(_LETTERS)
    return "".join(c if c.isprintable() else " " for c in spread if not unicodedata.combining(c))


def fold(text: str) -> str:
    """A phrase of the lexicon in the form in which words are compared: lower case, no hyphens, no apostrophes.

    >>> fold("Shepherd's-Pie")
    'shepherds pie'
    """
    if text.isascii() and text.islower() and not PUNCTUATION.search(text):
        return text
    return " ".join(plain_letters(text).lower().replace("-", " ").replace("'", "").replace("’", "").split())
