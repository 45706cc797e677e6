"""python -m assistant.contributing: validate, heard, rules, gaps, scaffold, licences, pronounce, rasa-domain."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Annotated

import typer

app = typer.Typer(help="Helpers for contributors.", no_args_is_help=True, add_completion=False)


@app.command()
def validate() -> None:
    """Check all data files; print every fault as `file: row: fault`; exit 1 where there is one."""
    from assistant.contributing.validate import faults

    found = faults()
    for fault in found:
        typer.echo(str(fault))
    typer.echo(f"{len(found)} faults" if found else "data is sound")
    raise typer.Exit(bool(found))


@app.command()
def heard(text: str) -> None:
    """Print what was heard in a sentence, and by which component, as JSON."""
    from assistant.understanding import trace

    typer.echo(json.dumps(trace(text), ensure_ascii=False, indent=2, default=str))


@app.command()
def rules() -> None:
    """Print every rule with its room, purpose and sources, a line each."""
    from rules.book import every_rule

    for room, rule in every_rule():
        typer.echo(f"{room}\t{rule.id}\t{', '.join(rule.sources)}\t{rule.purpose}")


@app.command()
def gaps() -> None:
    """List dish classes, methods and topics that no utterance mentions yet."""
    from assistant.contributing.gaps import unspoken

    for line in unspoken():
        typer.echo(line)


@app.command()
def scaffold(
    method: Annotated[str, typer.Argument(help="The method word, snake_case: it becomes file name and registry id.")],
    gerund: Annotated[
        str, typer.Option(help='What doing it is called, * where the dish stands: "cooking * in a clay pot".')
    ],
    said: Annotated[list[str], typer.Option(help="What cooks say for it; once for each wording.")],
    description: Annotated[str, typer.Option(help='What it is, in a line: "In soaked, covered clay in the oven."')],
) -> None:
    """Make the files of a new cooking method: module, lexicon row, wording, test; validate tells what to write."""
    from assistant.contributing.scaffold import make_method

    try:
        made = make_method(method, gerund, said, description)
    except (ValueError, FileExistsError) as fault:
        raise typer.BadParameter(str(fault)) from fault
    for path in made:
        typer.echo(str(path))


@app.command()
def licences() -> None:
    """List the licence of every package that is installed here; exit 1 where one may not be used."""
    from assistant.contributing.licences import licences as found

    listed = list(found())
    for one in listed:
        typer.echo("\t".join(filter(None, (f"{one.name} {one.version}", one.licence, one.fault))))
    raise typer.Exit(any(one.fault for one in listed))


@app.command("rasa-domain")
def rasa_domain() -> None:
    """Make data/rasa/domain.yml and rules.yml anew from the catalogue of questions."""
    from assistant.dialogue.domain import write

    for path in write():
        typer.echo(str(path))


@app.command()
def pronounce(
    add: Annotated[Path | None, typer.Option(help="A file of further words, one a line.")] = None,
) -> None:
    """Make data/lexicon/pronounced.csv anew, with the words of the lexicon; it takes espeak-ng."""
    from assistant.contributing.pronounce import write

    typer.echo(str(write(add.read_text(encoding="utf-8").split() if add else ())))


if __name__ == "__main__":
    app()
