"""Text as it came -> text that the pipeline can read: bounded, printable, plain letters, one way to write a thing."""

from __future__ import annotations

import re
import unicodedata
from dataclasses import dataclass

LONGEST = 2000
PUNCTUATION = re.compile(r"[^a-z0-9 ]|^ | $|  ")

_FRACTIONS = {c: unicodedata.normalize("NFKC", c).replace("\u2044", "/") for c in "¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞"}
_SIGNS = str.maketrans(
    {
        **dict.fromkeys("‘’‛ʼ′´`", "'"),
        **dict.fromkeys("“”„‟″", '"'),
        **dict.fromkeys("‐‑‒–—―−", "-"),
        "º": "°",
        "˚": "°",
        "\u2044": "/",
        "×": "x",
        "…": " ",
    }
)
_REWRITES = tuple(
    (re.compile(pattern, re.IGNORECASE), to)
    for pattern, to in (
        (r"°\s*([CF])\b", r" deg\1 "),
        (r"°", " degrees "),
        (r"(?<=\d)\s?'(?![\w'])", " ft "),
        (r"(?<=\d)\s?\"(?!\w)", " in "),
        (r"(?<=\d)[ -](?=\d/\d)", " "),
        (r"(?<![\d.,])(\d{1,2}) (\d{3})(?= ?(?:ft|feet|foot|m|metres|meters)\b)", r"\1\2"),
        (r"(?<=[a-z])-(?=[a-z])", " "),
        (r"(?<=\d)-(?=[a-z])", " "),
        (r"\b([ap])\.\s?m\b\.?", r"\1m"),
        (r"(?:^|(?<=[a-z,(:;] ))-(?=\.?\d)", "minus "),
        (r"\s+", " "),
    )
)


@dataclass(frozen=True, slots=True)
class Cleaned:
    """text: what will be read, at most LONGEST characters; dropped: how many characters were left out at the end."""

    text: str
    dropped: int


def clean(text: str) -> Cleaned:
    """Bring any text whatsoever into the form the pipeline reads.

    Control characters and lone surrogates become spaces, accents go, vulgar fractions are spelled with digits, primes
    become units, hyphens between words become spaces. Only the first LONGEST characters are read.

    >>> clean("1½ hrs at 7,000′, sautéed").text
    '1 1/2 hrs at 7,000 ft , sauteed'
    """
    kept = text[:LONGEST]
    for sign, digits in _FRACTIONS.items():
        if sign in kept:
            kept = kept.replace(sign, f" {digits} ")
    kept = plain_letters(kept.translate(_SIGNS))
    for pattern, to in _REWRITES:
        kept = pattern.sub(to, kept)
    return Cleaned(kept.strip()[:LONGEST], max(0, len(text) - LONGEST))


def plain_letters(text: str) -> str:
    """Letters without accents; whatever is not printable becomes a space.

    >>> plain_letters("crème\\x00brûlée")
    'creme brulee'
    """
    if text.isascii() and text.isprintable():
        return text
    spread = unicodedata.normalize("NFKD", text)
    return "".join(c if c.isprintable() else " " for c in spread if not unicodedata.combining(c))


def fold(text: str) -> str:
    """A phrase of the lexicon in the form in which words are compared: lower case, no hyphens, no apostrophes.

    >>> fold("Shepherd's-Pie")
    'shepherds pie'
    """
    if text.isascii() and text.islower() and not PUNCTUATION.search(text):
        return text
    return " ".join(plain_letters(text).lower().replace("-", " ").replace("'", "").replace("’", "").split())
