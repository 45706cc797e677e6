"""One line of a recipe put right, taken out or asked about, by the words in which a cook says so."""

from __future__ import annotations

import re
from dataclasses import dataclass, replace

from assistant.reading.text import fold
from assistant.recipes.corrected import corrected, marks
from assistant.recipes.dictated import listed
from assistant.recipes.lines import read_line
from assistant.recipes.sheet import Entry, Sheet
from rules.recipes.phrases import stems

_AMOUNT = re.compile(
    r"(?P<figure>\d+(?:[.,]\d+)?(?:\s+\d/\d)?|\d/\d|[½¼¾⅓⅔]|\b(?:one|two|three|four|five|six)\b)"
    r"(?:\s*(?P<unit>kg|g|grams?|ml|l|cups?|tsp|tbsp|teaspoons?|tablespoons?|oz|lbs?|sticks?)\b)?",
    re.I,
)
_HALF = re.compile(
    r"\bhalf (?:of )?(?:the )?(?P<was>[a-z]+) (?:was|were|is|as|with|in|into|for|by) (?:a )?"
    r"(?P<other>[a-z]+(?: [a-z]+)?)"
)
# how much it tells that a line has the amount that is denied
HAS_IT = 0.5


@dataclass(frozen=True, slots=True)
class Amendment:
    """What is done to a line. at: its place among the ingredients; line: as it reads now, "" where it is taken out"""

    at: int
    line: str
    was: str


def place_of(sheet: Sheet, words: str, amount: str = "") -> int | None:
    """The ingredient of a recipe that words name, the one of which most is said; None where none is.

    amount: what it was taken for; of two that are named alike the one that has it

    >>> rolls = Sheet(ingredients=(Entry("500 g bread flour"), Entry("50 g rye flour"), Entry("10 g salt")))
    >>> place_of(rolls, "the rye flour was 100"), place_of(rolls, "how much salt"), place_of(rolls, "the eggs")
    (1, 2, None)
    """
    said = set(stems(fold(words)))
    best, most = None, 0.0
    for at, entry in enumerate(sheet.ingredients):
        read = read_line(entry.line)
        named = [*stems(read.item), *stems(fold(entry.line[read.end :]).split(",")[0])] if read else []
        hits: float = len({word for word in named if len(word) > 2} & said)
        hits += HAS_IT if amount and entry.line.startswith(amount) else 0
        item = stems(read.item) if read else ()
        last = bool(named) and (named[-1] in said or (bool(item) and item[-1] in said))
        if last and hits > most:
            best, most = at, hits
    return best


def amended(sheet: Sheet, text: str) -> Amendment | None:
    """A line put right or taken out: the sugar was 200 not 250, leave out the nuts.

    >>> cake = Sheet(ingredients=(Entry("250 g sugar"), Entry("2 eggs")))
    >>> amended(cake, "the sugar was 200 not 250").line, amended(cake, "take out the eggs").line
    ('200 g sugar', '')
    """
    low = fold(text)
    at = place_of(sheet, low, _denied(low))
    if at is None or "?" in text or any(low.startswith(f"{word} ") for word in ("how", "why", "what", "is", "can")):
        return None
    was = sheet.ingredients[at].line
    if _said(low, "removes") and not _AMOUNT.search(low):
        return Amendment(at, "", was)
    figure = _meant(low)
    if figure is None or not (_said(low, "was") or _said(low, "not_words")):
        return None
    line = with_amount(was, figure["figure"], figure["unit"] or "")
    return Amendment(at, line, was) if line and line != was else None


def swapped(sheet: Sheet, text: str) -> tuple[Sheet, str] | None:
    """The recipe with half of an ingredient as another, and what the other is: half the flour as rye.

    >>> swapped(Sheet(ingredients=(Entry("600 g flour"),)), "and if half the flour was rye?")[0].ingredients
    (Entry(line='300 g flour', part=''), Entry(line='300 g rye flour', part=''))
    """
    found = _HALF.search(fold(text))
    at = place_of(sheet, found["was"]) if found else None
    read = None if at is None else read_line(sheet.ingredients[at].line)
    if found is None or at is None or read is None or not read.amount:
        return None
    entry, half = sheet.ingredients[at], f"{read.amount / 2:g}"
    other = found["other"] if found["other"].endswith(found["was"]) else f"{found['other']} {found['was']}"
    kept = with_amount(entry.line, half)
    lines = (Entry(kept, entry.part), Entry(kept[: kept.find(entry.line[read.end :].strip())] + other, entry.part))
    ingredients = (*sheet.ingredients[:at], *lines, *sheet.ingredients[at + 1 :])
    return replace(sheet, ingredients=ingredients), other


def _said(low: str, name: str) -> bool:
    return any(f" {phrase} " in f" {low} " for phrase in listed(name))


def _meant(low: str) -> re.Match[str] | None:
    """The amount that holds: the one that does not stand behind a not."""
    behind = tuple(listed("not_words"))
    found = [m for m in _AMOUNT.finditer(low) if not low[: m.start()].rstrip().endswith(behind)]
    return found[-1] if found else None


def _denied(low: str) -> str:
    """The amount behind a not, "" for none."""
    behind = tuple(listed("not_words"))
    return next((m["figure"] for m in _AMOUNT.finditer(low) if low[: m.start()].rstrip().endswith(behind)), "")


def with_amount(line: str, figure: str, unit: str = "") -> str:
    """An ingredient line with another amount, in its own unit where none is said.

    >>> with_amount("250 g sugar", "200"), with_amount("2 cups milk", "300", "ml")
    ('200 g sugar', '300 ml milk')
    """
    read = read_line(line)
    if read is None or read.end <= read.start:
        return ""
    old = line[read.start : read.end]
    kept = re.sub(r"^[\d\s./½¼¾⅓⅔,–-]+", "", old) if not unit else f" {unit}"
    gap = " " if kept and not unit and old[: len(old) - len(kept)].endswith(" ") else ""
    return f"{line[: read.start]}{figure}{gap}{kept} {line[read.end :].lstrip()}".rstrip()


def with_line(sheet: Sheet, amendment: Amendment) -> Sheet:
    """The recipe with a line put right or taken out."""
    before, behind = sheet.ingredients[: amendment.at], sheet.ingredients[amendment.at + 1 :]
    part = sheet.ingredients[amendment.at].part
    now = (Entry(amendment.line, part),) if amendment.line else ()
    return replace(sheet, ingredients=(*before, *now, *behind))


def with_correction(sheet: Sheet, text: str) -> tuple[Sheet, str] | None:
    """The recipe with its last line put right by words that take it back, and the line; None for any other words.

    >>> cake = Sheet(ingredients=(Entry("250 g sugar"), Entry("2 eggs")))
    >>> with_correction(cake, "no, make that 3")[1], with_correction(cake, "3 eggs")
    ('3 eggs', None)
    """
    name = "steps" if sheet.steps else "ingredients"
    told: tuple[Entry, ...] = getattr(sheet, name)
    if not told or not marks().match(text.strip()):
        return None
    line = corrected(f"{told[-1].line}\n{text.strip(' .!')}")
    if "\n" in line or line == told[-1].line:
        return None
    last = (*told[:-1], replace(told[-1], line=line))
    return (replace(sheet, steps=last) if sheet.steps else replace(sheet, ingredients=last)), line
