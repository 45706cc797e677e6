"""The log of batches, recipe by recipe: what was changed each time, and how it came out."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from assistant.recipes.batch import Batch
from assistant.recipes.batches import in_words, titles, trials
from assistant.replies.one_line import cell, clean
from assistant.replies.sentences import worded
from rules.mending.log import Log, Outcome
from rules.model import Units
from rules.said import Said, elevation, listed, sentences

WORDING = "printing/batches"
COLUMNS = ("batch", "day", "place", "changed", "came-out", "rating", "note")
CSV_COLUMNS = ("recipe", "batch", "day", "kitchen", "elevation_m", "changed", "went_wrong", "outcome", "rating", "note")
say = sentences("printing/batches")


@dataclass(frozen=True, slots=True)
class Row:
    """A batch. outcome: against the batch before, None for the first; changed, wrong: in words; place: where"""

    batch: Batch
    outcome: Outcome | None
    changed: str
    wrong: str
    place: str


@dataclass(frozen=True, slots=True)
class Report:
    """The batches of a recipe, oldest first."""

    recipe: str
    rows: tuple[Row, ...]
    units: Units


def reports(batches: Iterable[Batch], units: Units) -> tuple[Report, ...]:
    """A report for each recipe, in the order in which they were first made; titles that differ in case are one."""
    by_recipe: dict[str, list[Batch]] = {}
    for batch in batches:
        by_recipe.setdefault(batch.recipe.casefold(), []).append(batch)
    return tuple(_report(made, units) for made in by_recipe.values())


def _report(made: Sequence[Batch], units: Units) -> Report:
    log = Log(trials(made))
    rows = (
        Row(
            batch=batch,
            outcome=log.outcome(at) if at else None,
            changed=clean(worded(listed([in_words(change, units) for change in batch.changes], "semicolons"), units)),
            wrong=worded(listed(titles(batch), "semicolons"), units),
            place=_place(batch, units),
        )
        for at, batch in enumerate(made)
    )
    return Report(clean(made[0].recipe), tuple(rows), units)


def _place(batch: Batch, units: Units) -> str:
    height = worded(elevation(batch.elevation_m), units) if batch.elevation_m is not None else ""
    return clean(", ".join(filter(None, (batch.kitchen, height))))


def heads(units: Units) -> tuple[str, ...]:
    """What stands over the columns."""
    return tuple(worded(Said(WORDING, f"column-{name}"), units) for name in COLUMNS)


def cells(row: Row, units: Units) -> tuple[str, ...]:
    """A batch as a row of the table, in the order of COLUMNS."""
    none = worded(say("none"), units)
    rating = worded(say("of-five", rating=str(row.batch.rating)), units) if row.batch.rating is not None else none
    return (
        str(row.batch.id), row.batch.made_on.isoformat(), row.place or none, row.changed or none,
        came_out(row, units), rating, clean(row.batch.note) or none,
    )  # fmt: skip


def came_out(row: Row, units: Units) -> str:
    """How a batch came out: against the one before, where there is one, and what went wrong."""
    wrong = row.wrong or say("went-well")
    return worded(say("came-out", outcome=_outcome(row), wrong=wrong) if row.outcome else wrong, units)


def _outcome(row: Row) -> Said | str:
    return say("outcome", outcome=row.outcome) if row.outcome else ""


def title(report: Report) -> str:
    """The title of a report."""
    return worded(say("title", recipe=report.recipe), report.units)


def told(report: Report) -> str:
    """What the plot of a report shows, in words with its figures."""
    lines = listed((_told(row, report.units) for row in report.rows), "semicolons")
    return worded(say("told", title=title(report), lines=lines), report.units)


def _told(row: Row, units: Units) -> Said:
    changed = say("told-changed", text=row.changed) if row.changed else None
    rated = say("told-rating", rating=str(row.batch.rating)) if row.batch.rating is not None else None
    about = listed(filter(None, (changed, came_out(row, units), rated)), "commas")
    return say("told-row", number=str(row.batch.id), day=row.batch.made_on.isoformat(), about=about)


def as_csv(made: Iterable[Report]) -> str:
    """A row a batch under a row of CSV_COLUMNS."""
    out = io.StringIO()
    table = csv.writer(out, lineterminator="\n")
    table.writerow(CSV_COLUMNS)
    for report in made:
        for row in report.rows:
            batch = row.batch
            height = "" if batch.elevation_m is None else f"{batch.elevation_m:.10g}"
            rating = "" if batch.rating is None else str(batch.rating)
            words = (report.recipe, str(batch.id), batch.made_on.isoformat(), batch.kitchen)
            told = (row.changed, row.wrong, worded(_outcome(row), report.units), rating, batch.note)
            # an elevation below the sea is a number, and stays one
            table.writerow([*map(cell, words), height, *map(cell, told)])
    return out.getvalue()


def as_markdown(made: Iterable[Report], pictures: Sequence[str]) -> str:
    """A table a recipe, each under the plot beside this file. pictures: the names of their files"""
    parts = []
    for report, picture in zip(made, pictures, strict=True):
        rows = [heads(report.units), ("---",) * len(COLUMNS), *(cells(row, report.units) for row in report.rows)]
        table = "\n".join(f"| {' | '.join(_plain(text) for text in row)} |" for row in rows)
        name = _plain(title(report))
        parts.append(f"# {name}\n\n![{name}](<{picture}>)\n\n{table}\n")
    return "\n".join(parts)


def _plain(text: str) -> str:
    from assistant.printing.lesson.forms.md import plain

    return text if text == "---" else plain(text)
