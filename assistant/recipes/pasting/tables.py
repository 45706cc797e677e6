"""Rows of a table that was pasted, by bars, tabs or wide gaps -> lines as cooks write them: amount, then item."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from itertools import zip_longest

from assistant.reading.units import unit_of
from assistant.recipes.lines import figure_at, measure_at, read_line
from assistant.recipes.pantry import find
from assistant.recipes.pasting.marks import Line

FEWEST_ROWS, MOST_WORDS_BESIDE = 2, 2
_BAR = re.compile(r"[^\S\t\n]*[|\t][^\S\t\n]*")
_GAP = re.compile(r"(?<=\S)\s{3,}(?=\S)")
_NOTHING = re.compile(r"^[\s–—-]*$")
_DOTTED = re.compile(r"\s*\.(?:\s?\.)+\s+|\s*…+\s*|\s*_{3,}\s*")


def rows_written(lines: Sequence[Line]) -> list[Line]:
    """Lines with the rows of tables among them written as lines.

    >>> table = [Line("Flour | 2 cups"), Line("Eggs, beaten | 3"), Line("Bake it.")]
    >>> [line.text for line in rows_written(table)]
    ['2 cups Flour', '3 Eggs, beaten', 'Bake it.']
    """
    found: list[Line] = []
    for table in _tables(lines):
        found += _written(table) if len(table) >= FEWEST_ROWS else [_dotted(line) for line, _ in table]
    return found


def _tables(lines: Sequence[Line]) -> Iterator[list[tuple[Line, list[str]]]]:
    """Runs of lines with cells, none between them without; every other line by itself."""
    run: list[tuple[Line, list[str]]] = []
    kind = ""
    for line in lines:
        sign, cells = _cells(line.text)
        if run and (sign != kind or not sign or line.apart):
            yield run
            run = []
        run.append((line, cells))
        kind = sign
    if run:
        yield run


def _cells(text: str) -> tuple[str, list[str]]:
    """What parts the cells of a line, and the cells; ("", [text]) for a line that is no row."""
    bare = text.strip()
    for sign, pattern in (("bar", _BAR), ("gap", _GAP)):
        cells = [cell.strip() for cell in pattern.split(bare.strip("|") if sign == "bar" else bare)]
        if len(cells) > 1:
            return sign, cells
    return "", [text]


def _dotted(line: Line) -> Line:
    """A line whose amount stands behind dots, with a gap in their place: flour ..... 2 cups."""
    cells = _DOTTED.split(line.text.strip(), maxsplit=1)
    if len(cells) != 2 or not is_amount(cells[1]):
        return line
    measure = measure_at(cells[1], 0, spelled=True)
    end = measure.end if measure else 0
    return replace(line, text=f"{cells[1][:end]} {cells[0]}{cells[1][end:]}")


def _written(table: list[tuple[Line, list[str]]]) -> list[Line]:
    rows = [cells for _, cells in table]
    first = table[0][0]
    head = _head(rows)
    body = rows[1:] if head else [[cell for cell in row if cell] or row for row in rows]
    above = [replace(first, text=" | ".join(filter(None, rows[0])), mark="note")] if head else []
    marks = [line for line, _ in table][len(above) :]
    columns = [list(column) for column in zip_longest(*body, fillvalue="")]
    measured = [i for i, column in enumerate(columns) if share(column, is_amount) > 0.6]
    if _counted(columns[0]) and len(columns) > 1:
        return above + [replace(m, text=_step(row[1:]), mark="number") for m, row in zip(marks, body, strict=True)]
    if _are_lists(columns, measured):
        return above + [replace(marks[0], text=cell) for column in columns for cell in column if cell]
    if not measured or len(measured) == len(columns):
        return [line for line, _ in table]
    units = [_unit(cell) for cell in head]
    return above + [replace(m, text=_line(row, measured, units)) for m, row in zip(marks, body, strict=True)]


def _head(rows: list[list[str]]) -> list[str]:
    """The row that names the columns, where the first one does: no figure in it, and figures below."""
    figures = [any(char.isdigit() for cell in row for char in cell) for row in rows]
    named = all(len(cell.split()) <= MOST_WORDS_BESIDE + 1 for cell in rows[0]) and sum(map(bool, rows[0])) > 1
    known = any((line := read_line(cell)) and line.known for cell in rows[0] if cell)
    return rows[0] if named and not figures[0] and not known and sum(figures[1:]) * 2 > len(figures) - 1 else []


def share(cells: Sequence[str], holds: Callable[[str], bool]) -> float:
    """Which part of the cells that hold anything hold this."""
    told = [cell for cell in cells if not _NOTHING.match(cell)]
    return sum(map(holds, told)) / len(told) if told else 0.0


def is_amount(cell: str) -> bool:
    """Whether a cell is an amount and little more: 2 large, 1 cup (226 g)."""
    bare = re.sub(r"\([^()]*\)", "", cell).strip()
    measure = measure_at(bare, 0, spelled=True)
    beside = bare[measure.end :].split() if measure else []
    return measure is not None and len(beside) < MOST_WORDS_BESIDE and find(" ".join(beside)) is None


def _counted(column: Sequence[str]) -> bool:
    """Whether a column numbers its rows."""
    told = [cell.strip(" .):") for cell in column if cell]
    return len(told) > 1 and told == [str(i + 1) for i in range(len(told))]


def _are_lists(columns: list[list[str]], measured: Sequence[int]) -> bool:
    """Whether two lists stand side by side, whole lines in each."""
    return len(columns) == 2 and not measured and all(share(column, is_whole_line) > 0.6 for column in columns)


def is_whole_line(cell: str) -> bool:
    """Whether a cell is an ingredient with its amount, and not an amount alone."""
    line = read_line(cell)
    return line is not None and line.amount is not None and not is_amount(cell)


def _unit(cell: str) -> str:
    """The unit that the head of a column names: Grams."""
    word = cell.strip(" ()").rpartition("(")[2]
    unit = unit_of(word.lower())
    return unit.name if unit and unit.name != "percent" else "%" if unit else ""


def _step(cells: Sequence[str]) -> str:
    told = [cell for cell in cells if not _NOTHING.match(cell)]
    return ", ".join(told)


def _line(cells: Sequence[str], measured: Sequence[int], units: Sequence[str]) -> str:
    """A row as a line: its amounts, its item, and what else is said of it; a row of one cell is a heading."""
    told = [cell for cell in cells if not _NOTHING.match(cell)]
    if len(told) == 1:
        return f"{told[0].rstrip(':')}:" if not is_whole_line(told[0]) else told[0]
    amounts = [
        _with_unit(cell, units[i] if i < len(units) else "")
        for i, cell in enumerate(cells)
        if i in measured and not _NOTHING.match(cell)
    ]
    weighed = [amount for amount in amounts if not amount.endswith("%")]
    amounts = [*weighed, *(amount for amount in amounts if amount not in weighed)]
    item, *more = [cell for i, cell in enumerate(cells) if i not in measured and not _NOTHING.match(cell)] or [""]
    beside = [cell for cell in amounts[1:] if cell]
    measure = " ".join([*amounts[:1], *([f"({', '.join(beside)})"] if beside else [])])
    return ", ".join(filter(None, (f"{measure} {item}".strip(), *more)))


def _with_unit(cell: str, unit: str) -> str:
    """An amount with the unit of its column, where it has none of its own."""
    figure = figure_at(cell, 0)
    bare = figure is not None and not cell[figure[2] :].strip()
    return f"{cell}{unit}" if bare and unit == "%" else f"{cell} {unit}" if bare and unit else cell
