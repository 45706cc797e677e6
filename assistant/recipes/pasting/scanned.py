"""The slips of a scanner put right: l for 1, O for 0, figures inside words."""

from __future__ import annotations

import re
from functools import cache
from itertools import product

from assistant.reading.units import spellings, unit_of
from rules import tables

_FRACTION = re.compile(r"(?<![A-Za-z\d])[lI|](?=\s?/\s?\d)")
_LONE = re.compile(r"(?:^|(?<![\w/])(?<!\d[ -]))[lI](?=\s+(?P<next>[A-Za-z]+\b|\d))", re.MULTILINE)
_FIGURES = re.compile(r"(?<![A-Za-z\d])(?:[lI](?=[\dOo])[\dOo]*|\d[\dOo]*[Oo][\dOo]*)(?=\s|[°.,;:)-]|$)")
_WORD = re.compile(r"(?<![\w/.#@-])[A-Za-z]+[01][A-Za-z01]*(?![\w/])")
_RN = re.compile(r"\b[A-Za-z]*rn[A-Za-z]*\b|\b[A-Za-z]*vv[A-Za-z]*\b")
FEWEST_LETTERS = 3


def mended(text: str) -> str:
    """A text with the slips of a scanner put right; any other text as it is.

    >>> mended("1 l/2 cups f1our, l hour at 35O° for 1O rninutes, 1 l milk")
    '1 1/2 cups flour, 1 hour at 350° for 10 minutes, 1 l milk'
    """
    found = _FRACTION.sub("1", text)
    found = _FIGURES.sub(lambda m: m[0].translate(str.maketrans("lIOo", "1100")), found)
    found = _LONE.sub(lambda m: "1" if _counts(m) else m[0], found)
    found = _WORD.sub(lambda m: _spelled(m[0]), found)
    return _RN.sub(lambda m: _narrowed(m[0]), found) if found != text else text


def _counts(found: re.Match[str]) -> bool:
    """Whether a lone l stands before a unit: l cup."""
    word = found["next"].lower()
    begins = found.start() == 0 or found.string[found.start() - 1] == "\n"
    return (begins and found[0] == "l") or word in spellings() if found[0] == "l" else unit_of(word) is not None


def _spelled(word: str) -> str:
    """A word with letters in the place of its figures, where it has letters enough."""
    letters = sum(char.isalpha() for char in word)
    forms = ["".join(form) for form in product(*(_letters(char, word) for char in word))] if len(word) < 16 else []
    known = next((form for form in forms if form.lower() in kitchen_words()), None)
    if known:
        return known
    ends_so = word[-1].isdigit()
    return word if letters < FEWEST_LETTERS or ends_so or not forms else forms[0]


def _letters(char: str, word: str) -> str:
    upper = word.replace("0", "").replace("1", "").isupper() and len(word) > 2
    return {"0": "O" if upper else "o", "1": "LI" if upper else "li"}.get(char, char)


def _narrowed(word: str) -> str:
    """A word with m for rn, where only that is a word of the kitchen."""
    narrow = word.replace("rn", "m").replace("vv", "w")
    right = narrow.lower() in kitchen_words() or narrow.lower() in spellings()
    return narrow if word.lower() not in kitchen_words() and right else word


@cache
def hyphened_words() -> frozenset[str]:
    """Words that are written with a hyphen: all-purpose."""
    rows = tables.read_toml("lexicon/ingredients.toml")["ingredient"]
    listed = tables.read_toml("lexicon/recipe_words.toml")["lines"].values()
    phrases = [name for row in rows for name in (row["name"], *row["heard_as"])] + [
        w for names in listed for w in names
    ]
    return frozenset(word for phrase in phrases for word in re.findall(r"[a-z]+-[a-z]+", phrase.lower()))


@cache
def kitchen_words() -> frozenset[str]:
    """The words that recipes are known by."""
    listed = tables.read_toml("lexicon/recipe_words.toml")
    rows = tables.read_toml("lexicon/ingredients.toml")["ingredient"]
    phrases = [phrase for section in listed.values() for names in section.values() for phrase in names]
    phrases += [name for row in rows for name in (row["name"], *row["heard_as"])]
    return frozenset(word for phrase in phrases for word in re.findall(r"[a-z]{2,}", phrase.lower()))
