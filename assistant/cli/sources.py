"""`simmerline sources`: which rule rests on which publication."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Annotated

import typer

from assistant.cli import exits

NOTHING = 'no rule and no publication has "{word}" in its name; say a part of one, such as braise or usda'


def register(app: typer.Typer) -> None:
    """Add the command to the app."""
    app.command("sources", epilog=exits.EPILOG)(sources)


def sources(
    word: Annotated[
        str | None, typer.Argument(help="Only rules and publications whose id holds this word, say braise or usda.")
    ] = None,
    markdown: Annotated[bool, typer.Option("--markdown", help="As two Markdown tables.")] = False,
) -> None:
    """List every rule with its sources, then the bibliography with the basis of each entry."""
    lines = list(markdown_lines() if markdown else plain_lines(word or ""))
    if not any(lines):
        exits.leave(NOTHING.format(word=word), exits.ASKS_BACK)
    for line in lines:
        typer.echo(line)


def plain_lines(word: str) -> Iterator[str]:
    """Rules, then publications, a line each."""
    from rules.book import every_rule
    from rules.tables import sources as bibliography

    wanted = word.casefold()
    for _, rule in every_rule():
        if wanted in f"{rule.id} {' '.join(rule.sources)}".casefold():
            yield f"{rule.id}: {rule.purpose} [{', '.join(rule.sources)}]"
    yield ""
    for entry in bibliography().values():
        if wanted in f"{entry.id} {entry.title} {entry.publisher}".casefold():
            yield f"{entry.id}: {entry.publisher}, {entry.title}, {entry.year}. {entry.where}. Basis: {entry.basis}."


def markdown_lines() -> Iterator[str]:
    """The same as two tables, for DEVELOPERS.md."""
    from rules.book import every_rule
    from rules.tables import sources as bibliography

    yield "| rule | what it does | sources |"
    yield "|---|---|---|"
    for _, rule in sorted(every_rule(), key=lambda row: row[1].id):
        yield f"| `{rule.id}` | {rule.purpose} | {', '.join(rule.sources)} |"
    yield ""
    yield "| source | publication | basis |"
    yield "|---|---|---|"
    for entry in sorted(bibliography().values(), key=lambda row: row.id):
        yield f"| `{entry.id}` | {entry.publisher}, {entry.title}, {entry.year} | {entry.basis} |"
