"""A baker's formula told in bare figures against 100 of flour, and how much dough of it is wanted."""

from __future__ import annotations

import re
from dataclasses import dataclass

from assistant.reading.text import fold
from assistant.recipes.dictated import listed
from assistant.recipes.lines import read_line
from assistant.recipes.pantry import find
from assistant.recipes.sheet import Entry, Sheet
from assistant.recipes.told import WEIGHED

FEWEST, FLOUR, LONGEST_TEXT = 3, 100.0, 1_000
# flours together, and all the parts, in percent of the flour
LEAST, MOST = 120.0, 400.0
_PART = re.compile(
    r"(?P<name>[a-z][a-z ]{0,24}?(?:\s?[a-z]?\d{2,4})?)\s+(?P<figure>\d{1,3}(?:\.\d+)?)\s*(?:%|percent)?"
    r"(?:\s+(?:at|in|for)\b.*)?",
    re.I,
)
_TURNED = re.compile(r"(?P<figure>\d{1,3}(?:\.\d+)?)\s*(?:%|percent)\s+(?:of\s+)?(?P<name>[a-z][a-z ]{0,24})", re.I)
_CUT = re.compile(r"\s*(?:,(?!\d{3}\b)|[;:\n]|\.(?=\s|$)|\band\b)\s*")
_EACH = re.compile(
    r"\b(?P<count>\d{1,4})\s*(?:x|×|[a-z]+)?\s*(?:,|of|at|@|with)?\s*(?P<mass>\d+(?:\.\d+)?)\s*(?P<unit>kg|g|grams?)\b"
)
_FLOUR_WEIGHED = re.compile(r"\b(?P<name>[a-z]*\s?flour)\s+(?P<mass>\d+(?:\.\d+)?)\s*(?P<unit>kg|g|grams?)\b", re.I)
_FOR_FLOUR = re.compile(r"\b(?:for|make it|with|of)\s+(?P<mass>\d+(?:\.\d+)?)\s*(?P<unit>kg|kilos?|g|grams?)\b")
_OF_FLOUR = re.compile(r"\b(?P<mass>\d+(?:\.\d+)?)\s*(?P<unit>kg|kilos?|g|grams?)\s+(?:of\s+)?flour\b")
_UNITS = re.compile(r"\d\s*(?:kg|g|grams?|ml|l|oz|lb|cups?|tsp|tbsp)\b", re.I)
_OF_DOUGH = re.compile(r"\b(?P<mass>\d+(?:\.\d+)?)\s*(?P<unit>kg|g|grams?)\s+(?:of\s+)?dough\b")
_SPOKEN = re.compile(r"\b(?:dough|each|apiece)\b|\d\s*[x×]\s*\d")


@dataclass(frozen=True, slots=True)
class Wanted:
    """So many pieces of so much dough each [g]."""

    count: int
    each_g: float

    @property
    def dough_g(self) -> float:
        """All the dough [g]."""
        return self.count * self.each_g


def formula(text: str, title: str = "") -> Sheet | None:
    """The formula in a text, its lines in percent; None where fewer than three parts stand against 100 of flour.

    >>> [entry.line for entry in formula("flour 100, water 68, salt 2, yeast 0.5").ingredients]
    ['100% flour', '68% water', '2% salt', '0.5% yeast']
    >>> formula("oven 230, then 200, 40 min") is None
    True
    """
    if len(text) > LONGEST_TEXT:
        return None
    text = against_flour(text)
    cuts = {cut: _PART.fullmatch(cut) or _TURNED.fullmatch(cut) for cut in _CUT.split(text) if cut}
    if any(found is None and _names_one(cut) for cut, found in cuts.items()):
        # a part that is not understood is not left out
        return None
    ends = listed("no_name_ends")
    parts = [found for found in cuts.values() if found and found["name"].split()[-1].lower() not in ends]
    figures = [float(part["figure"]) for part in parts]
    if len(parts) < FEWEST or FLOUR not in figures or not LEAST <= sum(figures) <= MOST:
        return None
    told = zip(parts, figures, strict=True)
    entries = [Entry(f"{part['figure']}% {_named(part['name'], figure)}") for part, figure in told]
    known = [read for entry in entries if (read := read_line(entry.line)) and read.known]
    return Sheet(title=title, ingredients=tuple(entries)) if len(known) >= FEWEST else None


def against_flour(text: str) -> str:
    """A formula whose flour is weighed and whose other parts are percent, with its flour as a hundred.

    >>> against_flour("flour 10 kg, water 60, salt 2"), against_flour("10 kg flour, 6 kg water")
    ('flour 100, water 60, salt 2', '10 kg flour, 6 kg water')
    """
    found = _FLOUR_WEIGHED.search(text)
    rest = text[found.end() :] if found else ""
    bare = found and not _UNITS.search(rest.split(". ")[0])
    return f"{text[: found.start()]}{found['name']} 100{rest}" if found and bare else text


def flour_g(text: str) -> float | None:
    """How much flour a formula in percent is told for [g]; None where that is not said."""
    found = _FLOUR_WEIGHED.search(text)
    return _grams(found) if found and against_flour(text) != text else None


def flour_wanted(low: str) -> float | None:
    """For how much flour a formula is wanted [g]: in grams for 10 kg, make it 14 kilos; dough is told by that word.

    >>> flour_wanted("in grams for 10 kg"), flour_wanted("make it 14 kilos"), flour_wanted("for 6 kg of dough")
    (10000.0, 14000.0, None)
    """
    found = _FOR_FLOUR.search(low) or _OF_FLOUR.search(low)
    return _grams(found) if found and "dough" not in low else None


def _names_one(text: str) -> bool:
    """Whether an ingredient is named with a figure in words that are no part of a formula."""
    names = [word for word in re.findall(r"[a-z]+", fold(text)) if len(word) > 2]
    weighed = any((item := find(word)) and item.role in WEIGHED for word in names)
    return weighed and any(char.isdigit() for char in text)


def _named(name: str, figure: float) -> str:
    """The name of a part; what stands at 100 is a flour, by whatever number it is called: T65."""
    name = name.strip()
    return f"{name} flour" if figure == FLOUR and "flour" not in name.lower() else name


def wanted(text: str) -> Wanted | None:
    """How much dough is wanted: 12 loaves, 900 g dough each.

    >>> wanted("8 rolls at 95 g each"), wanted("make me 6 kg of dough"), wanted("2 cups and 300 g flour")
    (Wanted(count=8, each_g=95.0), Wanted(count=1, each_g=6000.0), None)
    """
    low = fold(text)
    if not _SPOKEN.search(low):
        return None
    found = _EACH.search(low)
    if found:
        return Wanted(int(found["count"]), _grams(found)) if int(found["count"]) else None
    whole = _OF_DOUGH.search(low)
    return Wanted(1, _grams(whole)) if whole else None


def _grams(found: re.Match[str]) -> float:
    return float(found["mass"]) * (1000.0 if found["unit"].startswith("k") else 1.0)


def is_leavened(sheet: Sheet) -> bool:
    """Whether yeast or a sourdough is among the parts."""
    reads = filter(None, (read_line(entry.line) for entry in sheet.ingredients))
    return any(read.role in ("yeast", "yeast_bread") for read in reads)


def parts_of(sheet: Sheet) -> list[tuple[str, float]]:
    """Every line of a formula by what it is called and its part, in percent or grams; none where one has no weight."""
    found: list[tuple[str, float]] = []
    for entry in sheet.ingredients:
        read = read_line(entry.line)
        part = None if read is None else read.amount if read.unit == "percent" else read.mass_g
        if read is None or not part:
            return []
        found.append((entry.line[read.end :].strip(" %") or read.item, part))
    return found
