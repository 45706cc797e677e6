"""Two columns that were pasted side by side -> one below the other: a list beside its method, or two lists."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

from assistant.recipes.looks import like_step
from assistant.recipes.pasting.tables import is_amount, is_whole_line, share

FEWEST_ROWS, FEWEST_WORDS, LONGEST_HEADING = 2, 3, 3
# of the cells of a column, how many have to be what the column is taken for
MOST = 0.5
_GAP = re.compile(r"(?<=\S)[ ]{2,}(?=\S)")
_TAB = -1


@dataclass
class _Region:
    """Lines that keep to one cut, and where it is: a column of the text, or _TAB."""

    at: int
    rows: list[tuple[str, str]] = field(default_factory=list)
    lines: list[str] = field(default_factory=list)


def side_by_side(text: str) -> str:
    """A text with its columns one below the other.

    >>> print(side_by_side("200 g oats      Melt the butter and\\n80 g butter     stir in the oats."))
    200 g oats
    80 g butter
    <BLANKLINE>
    Melt the butter and
    stir in the oats.
    """
    if not _GAP.search(text) and "\t" not in text:
        return text
    return "\n".join(line for region in _regions(text.splitlines()) for line in _below_another(region))


def _regions(lines: Sequence[str]) -> Iterator[_Region]:
    region = _Region(0)
    for line in lines:
        cells = _cells(line, region.at) if region.at else None
        if cells is None:
            yield from [region] if region.lines else []
            region = _Region(_cut(line))
            cells = _cells(line, region.at) or (line, "")
        region.rows.append(cells)
        region.lines.append(line)
    yield region


def _cut(line: str) -> int:
    """Where the second column of a line begins; 0 where it has none."""
    if line.strip().count("\t") == 1:
        return _TAB
    gaps = [] if "\t" in line else [gap.end() for gap in _GAP.finditer(line)]
    return gaps[0] if len(gaps) == 1 else 0


def _cells(line: str, at: int) -> tuple[str, str] | None:
    """A line in its two cells, either of them empty; None where it does not keep to the cut."""
    if not line.strip():
        return None
    if at == _TAB:
        left, tab, right = line.partition("\t")
        return (left.strip(), right.strip()) if tab and "\t" not in right else None
    if "\t" in line or at == 0:
        return None
    if len(line) <= at:
        return (line.strip(), "") if not _GAP.search(line.strip()) else None
    left, right = line[:at], line[at:]
    # what hangs under a step stands a little further in
    return (left.strip(), right.strip()) if left.endswith("  ") else None


def _below_another(region: _Region) -> list[str]:
    left, right = ([cell for cell in column if cell] for column in zip(*region.rows, strict=True))
    if min(len(left), len(right)) < FEWEST_ROWS:
        return region.lines
    headed = _is_heading(left[0]) and _is_heading(right[0])
    if not _are_columns(left[headed:], right[headed:]):
        return region.lines
    if headed:
        left, right = ([f"{column[0].rstrip(': ')}:", *column[1:]] for column in (left, right))
    return ["", *left, "", *right, ""]


def _is_heading(cell: str) -> bool:
    return len(cell.split()) <= LONGEST_HEADING and not any(char.isdigit() for char in cell) and cell[:1].isupper()


def _are_columns(left: Sequence[str], right: Sequence[str]) -> bool:
    """Whether a list stands beside a method or another list, and no table is cut in two."""
    if not left or not right or share(left, is_whole_line) <= MOST or share(right, is_amount) > 0:
        return False
    words = sum(len(cell.split()) for cell in right) / len(right)
    return share(right, is_whole_line) > MOST or (words >= FEWEST_WORDS and any(map(_is_told, right)))


def _is_told(cell: str) -> bool:
    return len(cell.split()) >= FEWEST_WORDS and like_step(re.sub(r"^\W*\d+[.)]\s+", "", cell))
