"""`simmerline batch report`: the log of batches as a table and a plot."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from assistant.cli import exits
from assistant.cli.saying import show
from assistant.cli.taken_for_granted import Units, kitchen_for, opened
from rules.said import sentences

if TYPE_CHECKING:
    from assistant.printing.batch_report import Report
    from assistant.store.batches import Batch

TABLES = ("csv", "md")
say = sentences("cli/batch")


def report(
    name: Annotated[
        str | None,
        typer.Argument(metavar="[NAME]", help="A recipe's title or a kitchen's name, in any case; else the whole log."),
    ] = None,
    units: Annotated[Units | None, typer.Option("--units", help="Unit system shown first.")] = None,
    out: Annotated[
        Path, typer.Option("--out", metavar="FILE", help="What to write, .pdf, .png, .svg, .csv or .md.")
    ] = Path("report.pdf"),
    force: Annotated[bool, typer.Option("--force", help="Write over files that are there.")] = False,
) -> None:
    """Print the log: what was changed each time and how it came out, a plot and a table for each recipe.

    simmerline batch report "butter cake" --out cake.pdf
    """
    from assistant.printing.batch_report import reports
    from assistant.store import batches

    shown = kitchen_for(None, units).units
    with opened() as store:
        found = of_name(batches.every(store), name)
    if not found:
        show(say("none-of-it", recipe=name) if name else say("none"))
        return
    with exits.kindly():
        exits.write(written(reports(found, shown), out), force)


def of_name(every: tuple[Batch, ...], name: str | None) -> tuple[Batch, ...]:
    """The batches of a recipe, else those of a kitchen, by a name in any case; all of them without one."""
    if name is None:
        return every
    wanted = " ".join(name.split()).casefold()
    of_recipe = tuple(batch for batch in every if batch.recipe.casefold() == wanted)
    return of_recipe or tuple(batch for batch in every if batch.kitchen.casefold() == wanted)


def written(made: tuple[Report, ...], out: Path) -> dict[Path, bytes]:
    """The files of reports, by their paths.

    raises: BadPicture for an ending that is none, NothingDraws where matplotlib is not installed
    """
    from assistant.printing.batch_report import as_csv, as_markdown
    from assistant.printing.drawing import FORMATS, BadPicture, as_files

    ending = out.suffix.lower()
    if ending.lstrip(".") not in (*FORMATS, *TABLES):
        raise BadPicture(out, (*FORMATS, *TABLES))
    if ending == ".csv":
        return {out: as_csv(made).encode()}
    from assistant.printing import batch_report_drawn as drawn

    if ending == ".md":
        plots = {out.with_name(f"{out.stem}-{n}.svg"): drawn.plot(one) for n, one in enumerate(made, start=1)}
        return {out: as_markdown(made, [path.name for path in plots]).encode(), **plots}
    return as_files(drawn.pages(made), out)
