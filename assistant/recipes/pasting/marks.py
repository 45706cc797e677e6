"""The marks of a list on a line of text, taken off: bullets, numbers, emoji, emphasis, brackets round a heading."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from typing import Literal

from assistant.recipes.lines import read_line

Mark = Literal["", "bullet", "number", "note", "title", "step", "said"]
FEWEST_NUMBERED, MOST_WORDS_OF_FOOD = 2, 5
_FLAGS = re.IGNORECASE
# pictures, arrows and ticks; not the stars of a rating
_PICTURE = (
    r"[\u2190-\u21ff\u2300-\u23ff\u2600-\u2604\u2607-\u2775\u2780-\u27bf\u2b00-\u2bff\U0001f000-\U0001faff\ufe0f\u200d]"
)
_PICTURES = re.compile(rf"^(?:{_PICTURE}\s*)+|\s*{_PICTURE}+\s*$")
_BULLET = re.compile(r"^\s*(?:[•*·●▪◦▢☐□✓–—>»‣]\s*|-\s+|-(?=[A-Z])|\[\s?[x ]?\]\s*)+", _FLAGS)
_KEYCAP = re.compile(r"^\s*(\d{1,2})\ufe0f?\u20e3\s*")
# figures in a ring, white and black
_RINGS = {chr(first + i): str(i + 1) for first, count in ((0x2460, 20), (0x2776, 10)) for i in range(count)}
_RINGED = re.compile(rf"^\s*([{''.join(_RINGS)}])\s*")
_ENUMERATED = re.compile(
    r"^\s*(?:step\s+\d{1,3}\s*[.:)\-–]?(?!\w)|\(?\d{1,3}[.):](?!\d)|\(\d{1,3}\)|\d{1,2}\.?\s*[-–]\s+(?=[A-Z][a-z]))\s*",
    _FLAGS,
)
_ALONE = re.compile(r"^\s*step\s+\d{1,3}\s*[.:)]?\s*$", _FLAGS)
_BARE_NUMBER = re.compile(r"^(?P<number>\d{1,2})\s+(?P<rest>[A-Z][a-zé]*\b.*)$")
# a gap parts columns; how wide it is says nothing, and patterns would run over it at every place
_WIDE = re.compile(r"[^\S\t\n]{4,}")
_MARKUP = re.compile(r"^\s*#{1,6}\s+")
# a line in bold or slanted type, and the star of a footnote at its end; a star within a sentence stays
_BOLD, _SLANTED, _STARRED = (
    re.compile(r"\*\*|__"),
    re.compile(r"^\s*\*(\S[^*]*)\*\s*$"),
    re.compile(r"^([^*]*[^\s*])\*\s*$"),
)
_FRAMED = re.compile(
    r"^\s*(?:【(.{2,60})】|\[([^\[\]\d]{2,40})\]|={2,}\s*(.{2,60}?)\s*={2,}|~+\s*(.{2,60}?)\s*~+)\s*:?\s*$"
)
_FOOT = re.compile(r"^\s*(?:[-–—]\s*(?:page\s*)?\d{1,4}\s*[-–—]|page\s+\d{1,4}(?:\s*(?:of|/)\s*\d{1,4})?)\s*$", _FLAGS)
RULE = re.compile(r"^[\s|:=_*~+-]{3,}$")


def _unslanted(line: str) -> str:
    """The line without the marks of its type."""
    plain = _BOLD.sub("", line)
    found = _SLANTED.match(plain) or _STARRED.match(plain)
    return found[1] if found else plain


@dataclass(frozen=True, slots=True)
class Line:
    """A line without its marks. mark: what it bore, or what it is known to be: a title, a step, a note, said in a chat

    apart: whether a blank line or a rule stood before it
    """

    text: str
    mark: Mark = ""
    apart: bool = False


def unmarked(line: str) -> Line:
    """A line without its marks.

    >>> unmarked("- [ ] **2 eggs**"), unmarked("③ Bake."), unmarked("【Icing】").text
    (Line(text='2 eggs', mark='bullet', apart=False), Line(text='Bake.', mark='number', apart=False), 'Icing:')
    """
    if framed := _FRAMED.match(line):
        return Line(f"{next(filter(None, framed.groups()))}:")
    line = _unslanted(_MARKUP.sub("", line))
    for pattern in (_KEYCAP, _RINGED):
        line = pattern.sub(lambda found: f"{_RINGS.get(found[1], found[1])}. ", line)
    bare = _PICTURES.sub("", line)
    pictured = bare != line and bool(_PICTURES.match(line.lstrip()))
    if not re.search(r"\w", bare):
        return Line(line.strip())
    listed = _BULLET.sub("", bare)
    plain = _ENUMERATED.sub("", listed)
    if plain.strip() and plain != listed:
        return Line(plain.strip(" |"), "number")
    return Line(listed.strip().strip("|").strip(), "bullet" if listed != bare or pictured else "")


def lines_of(text: str) -> Iterator[Line]:
    """The lines of a text that hold anything, as they stand; the foot of a page is a note."""
    apart = True
    for line in text.splitlines():
        if not line.strip() or RULE.match(line):
            apart = apart or "|" not in line
        else:
            yield Line(_WIDE.sub("   ", line.rstrip()), "note" if _FOOT.match(line) else "", apart)
            apart = False


def bared(lines: Iterable[Line]) -> list[Line]:
    """Lines without their marks; what another has marked stays as it is."""
    found = (line if line.mark else replace(unmarked(line.text), apart=line.apart) for line in lines)
    kept: list[Line] = []
    alone = False
    for line in found:
        # "Step 2" on a line of its own numbers the line below it
        if not line.mark and _ALONE.match(line.text):
            alone = True
        elif line.text.strip():
            kept.append(replace(line, text=line.text.strip(), mark="number" if alone else line.mark))
            alone = False
    return kept


def _counts_food(found: re.Match[str]) -> bool:
    """Whether the number is an amount: "2 Large eggs", "1 Tbsp oil"."""
    read = read_line(found[0])
    short = len(found[0].split()) <= MOST_WORDS_OF_FOOD
    return read is not None and (read.unit is not None or (read.known and short))


def numbered(lines: list[Line]) -> list[Line]:
    """Lines with a number in front and no sign behind it, where such numbers count up from one: "2 Sift the flour"."""
    matches = ((i, _BARE_NUMBER.match(line.text)) for i, line in enumerate(lines))
    found = {i: (int(m["number"]), m["rest"]) for i, m in matches if m and not _counts_food(m)}
    run: list[int] = []
    for i, (number, _) in found.items():
        if number == len(run) + 1:
            run.append(i)
        elif number == 1:
            run = [i] if len(run) < FEWEST_NUMBERED else run
    if len(run) < FEWEST_NUMBERED:
        return lines
    return [replace(line, text=found[i][1], mark="number") if i in run else line for i, line in enumerate(lines)]
