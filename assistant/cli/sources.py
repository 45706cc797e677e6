"""`simmerline sources`: which rule rests on which publication."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING, Annotated

import typer

from assistant.cli import exits

if TYPE_CHECKING:
    from rules.book import Rule
    from rules.tables import Source

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
    from rules.book import every_rule
    from rules.tables import sources as bibliography

    wanted = (word or "").casefold()
    rules = [rule for _, rule in every_rule() if wanted in f"{rule.id} {' '.join(rule.sources)}".casefold()]
    entries = [e for e in bibliography().values() if wanted in f"{e.id} {e.title} {e.publisher}".casefold()]
    if not rules and not entries:
        exits.leave(NOTHING.format(word=word), exits.ASKS_BACK)
    for line in markdown_lines(rules, entries) if markdown else plain_lines(rules, entries):
        typer.echo(line)


def plain_lines(rules: Sequence[Rule], entries: Sequence[Source]) -> Iterator[str]:
    """Rules, then publications, a line each."""
    for rule in rules:
        yield f"{rule.id}: {rule.purpose} [{', '.join(rule.sources)}]"
    yield ""
    for entry in entries:
        yield f"{entry.id}: {entry.publisher}, {entry.title}, {entry.year}. {entry.where}. Basis: {entry.basis}."


def markdown_lines(rules: Sequence[Rule], entries: Sequence[Source]) -> Iterator[str]:
    """The same as two tables."""
    yield "| rule | what it does | sources |"
    yield "|---|---|---|"
    for rule in sorted(rules, key=lambda rule: rule.id):
        yield f"| `{rule.id}` | {rule.purpose} | {', '.join(rule.sources)} |"
    yield ""
    yield "| source | publication | basis |"
    yield "|---|---|---|"
    for entry in sorted(entries, key=lambda entry: entry.id):
        yield f"| `{entry.id}` | {entry.publisher}, {entry.title}, {entry.year} | {entry.basis} |"
