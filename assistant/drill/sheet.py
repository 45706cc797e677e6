"""A set on paper: the questions on a sheet, and the answer key for the teacher on a page of its own."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from assistant.drill import wording
from assistant.replies.sentences import worded
from rules.drill import Question
from rules.said import Said, sentences

say = sentences("drill/sheet")
NEW_PAGE = "\f"
NEW_PAGE_MARKDOWN = '<div style="page-break-before: always"></div>'


def sheet(questions: Sequence[Question], seed: int, *, markdown: bool = False) -> str:
    """The questions, which are in words, with room for the answers."""
    title = say("title", seed=str(seed), count=len(questions))
    rows = [(question.text, _listed(question, markdown), blank(question)) for question in questions]
    return _page(title, say("name"), rows, markdown)


def key(questions: Sequence[Question], seed: int, *, markdown: bool = False) -> str:
    """The answers with what else counts, why, and where they come from."""
    title = say("key-title", seed=str(seed), count=len(questions))
    rows = [(_bold(question.shown, markdown), (room(question),), reason(question)) for question in questions]
    return _page(title, say("for-the-teacher"), rows, markdown)


def both(questions: Sequence[Question], seed: int, *, markdown: bool = False) -> str:
    """The sheet, and the key on a new page."""
    pages = (sheet(questions, seed, markdown=markdown), key(questions, seed, markdown=markdown))
    return f"\n{NEW_PAGE_MARKDOWN}\n\n".join(pages) if markdown else NEW_PAGE.join(pages)


def _page(title: Said, under: Said, rows: Iterable[tuple[str, Iterable[str], str]], markdown: bool) -> str:
    """A page: its title, a line under it, and a numbered block for each question."""
    text = worded(title, "us")
    head = f"# {text}" if markdown else f"{text}\n{'=' * len(text)}"
    blocks = [
        "\n".join(f"{'   ' if at else f'{number}. '}{line}".rstrip() for at, line in enumerate(_lines(row, markdown)))
        for number, row in enumerate(rows, start=1)
    ]
    return "\n\n".join((head, worded(under, "us"), *blocks)) + "\n"


def _lines(row: tuple[str, Iterable[str], str], markdown: bool) -> list[str]:
    first, middle, last = row
    lines = [line for line in (first, *middle) if line]
    return [*lines, "", last] if markdown else [*lines, last]


def _listed(question: Question, markdown: bool) -> tuple[str, ...]:
    """The options; in Markdown as a list of their own."""
    lines = tuple(line.strip() for line in wording.options(question))
    return ("", *(f"- {line}" for line in lines)) if markdown and lines else lines


def blank(question: Question) -> str:
    """What the trainee writes on."""
    return worded(say("blank", form=question.form), question.asked_in)


def room(question: Question) -> str:
    """What else counts, "" where there is one right answer only."""
    return worded(say("counts", tolerance=question.tolerance), question.asked_in) if question.tolerance else ""


def reason(question: Question) -> str:
    """Why, and where it comes from."""
    return worded(say("reason", why=question.why, sources=wording.sources(question)), question.asked_in)


def _bold(text: str, markdown: bool) -> str:
    return f"**{text}**" if markdown else text
