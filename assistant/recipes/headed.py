"""Headings among the steps of a page: "Glaze", "For the filling:", "Knead the dough" over what they are of."""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import zip_longest

from assistant.recipes.lines import any_of
from assistant.recipes.looks import SENTENCE_END, is_done, measured
from rules.baking.part_names import named
from rules.tables import read_toml

WORDS = "lexicon/recipe_words.toml"
# A heading has no more words, what stands under it has more, and so many of the steps are whole sentences.
MOST_WORDS, MOST_WORDS_MARKED, WHOLE_SENTENCES = 5, 9, 0.8
# So many deeds must stand over their steps, the first of the method among them or more.
DEEDS, DEEDS_WITHOUT_FIRST = 2, 4
_FLAGS = re.IGNORECASE
_FIGURES = re.compile(r"\d(?!(?:st|nd|rd|th)\b)", _FLAGS)
_ENDED = re.compile(r"[.!?)\]]\W*$")
_FOR = re.compile(r"^(?:for|to)\s+(?:the\s+|your\s+)?", _FLAGS)


def headed(lines: Sequence[tuple[str, str]]) -> tuple[list[tuple[str, str]], list[str]]:
    """The steps of a page, each in the part that the heading over it names, and the headings that name none.

    lines: (text, component), as the page has them; a component that the page itself gives stays

    >>> headed([("Glaze", ""), ("Whisk the sugar with the lemon juice until smooth.", "")])
    ([('Whisk the sugar with the lemon juice until smooth.', 'glaze')], [])
    >>> headed([("Mix the dough.", ""), ("Bake", "")])
    ([('Mix the dough.', ''), ('Bake', '')], [])
    """
    over = _headings([text for text, _ in lines])
    steps, unnamed, part = [], [], ""
    for at, (text, component) in enumerate(lines):
        if at not in over or component:
            steps.append((text, component or part))
            continue
        part = part_told(text)
        unnamed += [] if part else [text]
    return steps, unnamed


def part_told(text: str) -> str:
    """The part that a heading opens, in its own words; "" for one that only says what is done next.

    >>> part_told("For the swirl"), part_told("Make the Filling:"), part_told("Shred")
    ('swirl', 'filling', '')
    """
    bare = text.strip(" :*#-–—").lower()
    if opened := _opened().match(bare):
        return _called(bare[opened.end() :])
    if _FOR.match(bare):
        return _called(_FOR.sub("", bare))
    return _called(bare) if named(bare) and not _is_deed(text) else ""


def _called(name: str) -> str:
    """What a part is called: "the top" is a topping."""
    names: dict[str, str] = read_toml(WORDS)["headings"]["called"]
    return names.get(name, name)


def _opened() -> re.Pattern[str]:
    return re.compile(rf"{any_of('headings', 'opened')}\s+(?:the\s+|your\s+|a\s+|an\s+)?", _FLAGS)


def _headings(texts: Sequence[str]) -> frozenset[int]:
    """The places of the headings, from zero: short lines that end no sentence, over steps that are whole sentences."""
    found = [at for at, (text, under) in enumerate(zip_longest(texts, texts[1:], fillvalue="")) if _over(text, under)]
    steps = [text for at, text in enumerate(texts) if at not in found]
    whole = sum(bool(_ENDED.search(text)) for text in steps) >= WHOLE_SENTENCES * len(steps)
    deeds = [at for at in found if _is_deed(texts[at])]
    several = len(deeds) >= (DEEDS if 0 in found else DEEDS_WITHOUT_FIRST)
    return frozenset(at for at in found if whole and (at not in deeds or several))


def _over(text: str, under: str) -> bool:
    """Whether a line can be the heading of the one under it."""
    marked = text.rstrip().endswith(":")
    words = len(text.split())
    if not text.strip() or not under or _FIGURES.search(text) or SENTENCE_END.search(text) or measured(text):
        return False
    short = words <= (MOST_WORDS_MARKED if marked or text.isupper() or _opens(text) else MOST_WORDS)
    return short and "," not in text and len(under.split()) > max(words, MOST_WORDS)


def _opens(text: str) -> bool:
    return bool(_opened().match(text.strip().lower()) or _FOR.match(text))


def _is_deed(text: str) -> bool:
    """Whether a line could be a step itself: "Brown the butter", but no "For the cake" and no "Make the filling:"."""
    if text.rstrip().endswith(":") or text.isupper() or _FOR.match(text):
        return False
    return is_done(text) and not (named(text) and len(text.split()) == 1)
