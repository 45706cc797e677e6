"""Several recipes at once: a folder of results and one report of them."""

from __future__ import annotations

import json
from collections.abc import Iterable, Sequence
from dataclasses import asdict, replace
from itertools import count
from pathlib import Path
from typing import Any

import typer

from assistant.cli import exits
from assistant.cli.convert_each import Done, Worked, in_order
from assistant.cli.watching import watched
from assistant.files import AlreadyThere, NotWritten, check_free, write_all
from assistant.replies.recipe import forms
from assistant.replies.recipe.forms import Form

REPORT = "report"
# how many files are named where more are there
NAMED = 3


def many(sources: Sequence[str], asked: dict[str, Any], name: str, out: Path, *, force: bool) -> int:
    """Convert every file, write the results and the report; a file that cannot be read is told, the rest are done.

    name: of the form; force: whether files that are there are written over
    returns: exit code 0, or 1 where one of them failed
    """
    places = free_places(sources, forms.form(name), out, (f"{REPORT}.json", f"{REPORT}.txt"), force=force)
    work = zip(sources, places, in_order(sources, asked, name), strict=True)
    shown = watched(work, "Converting", count=len(sources))
    done = [_written(found, path, source, force=force) for source, path, found in shown]
    summary = json.dumps(as_report(done, asked), ensure_ascii=False, indent=2) + "\n"
    text = report_text(done, asked)
    typer.echo(summary if name == "json" else f"{text.rstrip()}\n", nl=False)
    with exits.kindly():
        reports = {out / f"{REPORT}.json": encoded(summary), out / f"{REPORT}.txt": encoded(text)}
        write_all(reports, over=force)
    return exits.FAILED if any(d.error for d in done) else exits.ANSWERED


def _written(found: Worked, path: Path, source: str, *, force: bool) -> Done:
    """What came of one file once its result is written."""
    if found.done.error:
        return found.done
    try:
        write_all({path: encoded(found.text)}, over=force)
    except NotWritten as fault:
        return Done(file=source, error=f"the result cannot be written: {fault}")
    return replace(found.done, written=str(path))


def free_places(
    sources: Sequence[str], form: Form, out: Path, besides: Sequence[str] = (), *, force: bool
) -> list[Path]:
    """Where the result of each recipe goes: under its name, numbered where two have the same; never over a recipe.

    besides: further files that are written there

    Leaves with code 1 where one is there already and may not be written over, with 2 where out can be no folder.
    """
    if out.exists() and not out.is_dir():
        exits.leave(f"{out} is a file; --out names a folder for the results")
    reports = [out / name for name in besides]
    taken = {Path(source).resolve() for source in sources if source != "-"} | {path.resolve() for path in reports}
    places = []
    for source in map(Path, sources):
        stem = source.stem if source.name != "-" else "recipe"
        names = (out / f"{stem}{f'-{n}' if n > 1 else ''}{form.ending}" for n in count(1))
        places.append(next(name for name in names if name.resolve() not in taken))
        taken.add(places[-1].resolve())
    _check_free([*places, *reports], force=force)
    return places


def _check_free(places: Iterable[Path], *, force: bool) -> None:
    there = []
    for path in places:
        try:
            check_free(path, over=force)
        except AlreadyThere:
            there.append(str(path))
        except NotWritten as fault:
            exits.leave(str(fault), exits.FAILED)
    if there:
        more = f" and {len(there) - NAMED} more" if len(there) > NAMED else ""
        named = ", ".join(there[:NAMED])
        are = "is" if len(there) == 1 else "are"
        exits.leave(f"{named}{more} {are} there already; --force writes over, --out names another folder", exits.FAILED)


def encoded(text: str) -> bytes:
    """A text as it is written into a file."""
    return text.encode("utf-8", errors="replace")


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
