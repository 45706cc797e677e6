"""Several recipes at once: a folder of results and one report of them."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import asdict, replace
from pathlib import Path
from typing import Any

import typer

from assistant.cli import exits
from assistant.cli.convert_each import Done, Worked, in_order
from assistant.cli.watching import watched
from assistant.replies.recipe import forms
from assistant.replies.recipe.forms import Form

REPORT = "report"


def many(sources: Sequence[str], asked: dict[str, Any], name: str, out: Path) -> int:
    """Convert every file, write the results and the report; a file that cannot be read is told, the rest are done.

    name: of the form
    returns: exit code 0, or 1 where one of them failed
    """
    taken = {Path(source).resolve() for source in sources if source != "-"}
    taken |= {(out / f"{REPORT}{ending}").resolve() for ending in (".txt", ".json")}
    _make(out)
    work = zip(sources, in_order(sources, asked, name), strict=True)
    shown = watched(work, "Converting", count=len(sources))
    done = [_written(found, source, forms.form(name), out, taken) for source, found in shown]
    summary = as_report(done, asked)
    text = report_text(done, asked)
    _put(out / f"{REPORT}.json", json.dumps(summary, ensure_ascii=False, indent=2) + "\n")
    _put(out / f"{REPORT}.txt", text)
    typer.echo(json.dumps(summary, ensure_ascii=False, indent=2) if name == "json" else text.rstrip())
    return exits.FAILED if any(d.error for d in done) else exits.ANSWERED


def _written(found: Worked, source: str, form: Form, out: Path, taken: set[Path]) -> Done:
    """What came of one file once its result is written."""
    if found.done.error:
        return found.done
    try:
        return replace(found.done, written=str(put(found.text, Path(source), form, out, taken)))
    except OSError as fault:
        return Done(file=source, error=str(fault).removeprefix(f"{source}: "))


def put(text: str, source: Path, form: Form, out: Path, taken: set[Path]) -> Path:
    """Write a result under the name of its recipe, numbered where two have the same; never over a recipe.

    taken: resolved paths that are not to be written, the new one is added
    """
    _make(out)
    taken.add(source.resolve())
    stem = source.stem if source.name != "-" else "recipe"
    names = (out / f"{stem}{f'-{n}' if n > 1 else ''}{form.ending}" for n in range(1, 1_000_000))
    path = next(name for name in names if name.resolve() not in taken)
    taken.add(path.resolve())
    _put(path, text)
    return path


def _make(out: Path) -> None:
    try:
        out.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        exits.leave(f"cannot make the folder {out}: {(error.strerror or 'no such place').lower()}")


def _put(path: Path, text: str) -> None:
    path.write_text(text, encoding="utf-8", errors="replace", newline="\n")


def as_report(done: Sequence[Done], asked: dict[str, Any]) -> dict[str, Any]:
    """The report as plain JSON values."""
    return {
        "schema": 1,
        "from_elevation_m": round(asked["from_elevation_m"], 1),
        "to_elevation_m": round(asked["to_elevation_m"], 1),
        "converted": sum(d.error is None for d in done),
        "failed": sum(d.error is not None for d in done),
        "recipes": [asdict(d) for d in done],
    }


def report_text(done: Sequence[Done], asked: dict[str, Any]) -> str:
    """The report to read: what was converted, and what was not and why."""
    from assistant.replies.quantities import Say
    from assistant.replies.recipe.words import environment

    say = Say(asked["units"])
    return environment().get_template("report.j2").render(
        there=say.elevation(asked["from_elevation_m"]),
        here=say.elevation(asked["to_elevation_m"]),
        good=[d for d in done if d.error is None],
        bad=[d for d in done if d.error is not None],
    )  # fmt: skip
