"""The part of DEVELOPERS.md that the program writes itself: topics, methods, rules and their sources."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from rules import tables

PAGE = Path(__file__).resolve().parents[2] / "DEVELOPERS.md"
MARK = "<!-- from here on written by: python -m assistant.contributing document -->"


def page() -> str:
    """The whole page as it should stand: what people wrote, then what the program knows."""
    written = PAGE.read_text(encoding="utf-8").partition(MARK)[0].rstrip()
    return f"{written}\n\n{MARK}\n\n" + "\n".join(lines()) + "\n"


def lines() -> Iterator[str]:
    """The tables, heading by heading."""
    from assistant.cli.sources import markdown_lines

    yield "## Topics of questions"
    yield ""
    yield from rows("lexicon/topics.toml", "topic", ("id", "description", "example"))
    yield ""
    yield "## Methods"
    yield ""
    yield from rows("lexicon/methods.toml", "method", ("id", "description"))
    yield ""
    yield "## Rules and their sources"
    yield ""
    yield "The same as `simmerline sources --markdown`."
    yield ""
    yield from markdown_lines()


def rows(file: str, key: str, columns: tuple[str, ...]) -> Iterator[str]:
    """Some columns of a lexicon file as a table."""
    yield f"| {' | '.join(columns)} |"
    yield "|" + "---|" * len(columns)
    for row in tables.read_toml(file)[key]:
        yield f"| {' | '.join(str(row[column]) for column in columns)} |"


def write() -> Path:
    """Bring the page up to date."""
    PAGE.write_text(page(), encoding="utf-8")
    return PAGE
