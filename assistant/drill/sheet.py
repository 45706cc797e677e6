"""A set on paper: the questions on a sheet, and the answer key for the teacher on a page of its own."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from assistant.drill import wording
from rules.drill import Question

BLANKS = {"figure": "Answer: ____________________", "choice": "Answer: ____", "yes_no": "Yes ____  No ____",
          "order": "Order: ____________________"}  # fmt: skip
NEW_PAGE = "\f"
NEW_PAGE_MARKDOWN = '<div style="page-break-before: always"></div>'


def sheet(questions: Sequence[Question], seed: int, *, markdown: bool = False) -> str:
    """The questions with room for the answers."""
    title = f"Cooking at elevation: set {seed}, {len(questions)} questions"
    rows = [(question.text, _listed(question, markdown), BLANKS[question.form]) for question in questions]
    return _page(title, "Name: ______________________________", rows, markdown)


def key(questions: Sequence[Question], seed: int, *, markdown: bool = False) -> str:
    """The answers with what else counts, why, and where they come from."""
    title = f"Answer key: set {seed}, {len(questions)} questions"
    rows = [(_bold(question.shown, markdown), (_room(question),), _reason(question)) for question in questions]
    return _page(title, "For the teacher.", rows, markdown)


def both(questions: Sequence[Question], seed: int, *, markdown: bool = False) -> str:
    """The sheet, and the key on a new page."""
    pages = (sheet(questions, seed, markdown=markdown), key(questions, seed, markdown=markdown))
    return f"\n{NEW_PAGE_MARKDOWN}\n\n".join(pages) if markdown else NEW_PAGE.join(pages)


def _page(title: str, under: str, rows: Iterable[tuple[str, Iterable[str], str]], markdown: bool) -> str:
    """A page: its title, a line under it, and a numbered block for each question."""
    head = f"# {title}" if markdown else f"{title}\n{'=' * len(title)}"
    blocks = [
        "\n".join(f"{'   ' if at else f'{number}. '}{line}".rstrip() for at, line in enumerate(_lines(row, markdown)))
        for number, row in enumerate(rows, start=1)
    ]
    return "\n\n".join((head, under, *blocks)) + "\n"


def _lines(row: tuple[str, Iterable[str], str], markdown: bool) -> list[str]:
    first, middle, last = row
    lines = [line for line in (first, *middle) if line]
    return [*lines, "", last] if markdown else [*lines, last]


def _listed(question: Question, markdown: bool) -> tuple[str, ...]:
    """The options; in Markdown as a list of their own."""
    lines = tuple(line.strip() for line in wording.options(question))
    return ("", *(f"- {line}" for line in lines)) if markdown and lines else lines


def _room(question: Question) -> str:
    return f"What counts: {question.tolerance}." if question.tolerance else ""


def _reason(question: Question) -> str:
    return f"{question.why} Source: {wording.sources(question)}."


def _bold(text: str, markdown: bool) -> str:
    return f"**{text}**" if markdown else text
