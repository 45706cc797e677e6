"""`simmerline batch`: the log of what was baked, how it came out, and the one change to make next."""

from __future__ import annotations

import json
from dataclasses import asdict
from enum import StrEnum
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, Any

import typer

from assistant.cli import exits
from assistant.cli.batch_report import report
from assistant.cli.saying import show, tell, text_of
from assistant.cli.taken_for_granted import Units, elevation_heard, kitchen_for, opened
from assistant.recipes.batch_lines import changes_of, line, next_lines
from rules.said import elevation, listed, sentences

if TYPE_CHECKING:
    from assistant.store.batches import Batch
    from rules.mending import Mending
    from rules.model import Units as UnitSystem
    from rules.recipe import Recipe
    from rules.said import Said, Value

say = sentences("cli/batch")
app = typer.Typer(
    name="batch",
    help="The log of your batches: what was changed, how it came out, and the one change to make next.",
    no_args_is_help=True,
)


class Compared(StrEnum):
    """How a batch came out against the one before."""

    better = "better"
    worse = "worse"
    same = "same"


Title = Annotated[str, typer.Argument(metavar="RECIPE", help="The recipe's title, in any case.")]
RecipeFile = Annotated[
    Path | None, typer.Option("--recipe", help="The recipe itself, so that the change is worked out on its lines.")
]
UnitsShown = Annotated[Units | None, typer.Option("--units", help="Unit system shown first.")]


def register(main: typer.Typer) -> None:
    """Add the commands to the app."""
    main.add_typer(app)


app.command("report")(report)


@app.command("note")
def note(
    title: Title,
    symptom: Annotated[
        list[str] | None,
        typer.Option(
            "--symptom", help='What went wrong: "sank in the middle"; may be repeated. None: it came out well.'
        ),
    ] = None,
    changed: Annotated[
        list[str] | None,
        typer.Option(
            "--changed",
            help='What was changed against the batch before: "baking powder 2 tsp to 1 1/2 tsp", "less sugar", or '
            '"suggested"; may be repeated.',
        ),
    ] = None,
    rating: Annotated[int | None, typer.Option("--rating", help="1 poor to 5 excellent.")] = None,
    compared: Annotated[
        Compared | None, typer.Option("--than-before", help="How it came out against the batch before.")
    ] = None,
    text: Annotated[str, typer.Option("--note", help="Anything else worth keeping.")] = "",
    recipe: RecipeFile = None,
    dish: Annotated[str, typer.Option("--dish", help="What it is, where the title does not tell: muffins.")] = "",
    at: Annotated[str | None, typer.Option("--at", help="Elevation, by default that of the kitchen in use.")] = None,
    written_for: Annotated[
        str | None,
        typer.Option(
            "--from",
            help="Where the recipe is right: 7000ft for a converted one. By default as noted before, or sea level.",
        ),
    ] = None,
    kitchen_name: Annotated[
        str | None, typer.Option("--kitchen", metavar="NAME", help="A kitchen of yours instead of the one in use.")
    ] = None,
    units: UnitsShown = None,
) -> None:
    """Keep a batch, and say what to change next.

    simmerline batch note "butter cake" --symptom "sank in the middle" --rating 2
    """
    from assistant.planning.clock import now_here
    from assistant.recipes.changes_heard import UnknownSymptom
    from assistant.store import noting
    from rules.errors import OutOfRange

    kitchen, whole = kitchen_for(at, units, kitchen_name), read_recipe(recipe)
    told = noting.Told(
        title=title, symptoms=symptom or (), changed=changed or (), rating=rating, note=text, dish=dish, recipe=whole,
        compared=compared.value if compared else "",
        from_elevation_m=elevation_heard(written_for, "--from").elevation_m if written_for is not None else None,
    )  # fmt: skip
    with opened() as store:
        try:
            kept, found = noting.note(store, told, kitchen, now_here().date())
        except (UnknownSymptom, OutOfRange, ValueError) as fault:
            exits.leave(str(fault))
    show(say("kept", batch=line(kept, kitchen.units)))
    show_next(found, kept, kitchen.units)


@app.command("list")
def show_all(
    title: Annotated[
        str | None, typer.Argument(metavar="[RECIPE]", help="Only the batches of this recipe, in any case.")
    ] = None,
    as_json: Annotated[bool, typer.Option("--json", help="Print as JSON.")] = False,
    units: UnitsShown = None,
) -> None:
    """List the batches, oldest first."""
    from assistant.store import batches

    shown = kitchen_for(None, units).units
    with opened() as store:
        found = batches.of_recipe(store, title) if title else batches.every(store)
    if as_json:
        rows = [{**asdict(b), "made_on": b.made_on.isoformat()} for b in found]
        typer.echo(json.dumps(rows, ensure_ascii=False, indent=2))
    elif not found:
        show(say("none-of-it", recipe=title) if title else say("none"))
    for batch in () if as_json else found:
        tell(line(batch, shown))


@app.command("compare")
def compare(
    which: Annotated[
        list[str], typer.Argument(metavar="RECIPE | NUMBER NUMBER", help="A recipe, for its last two; or two batches.")
    ],
    recipe: RecipeFile = None,
    units: UnitsShown = None,
) -> None:
    """Set two batches of a recipe side by side, and say what to change next.

    simmerline batch compare "butter cake"
    """
    from assistant.recipes.batches import mending
    from assistant.store import batches

    shown, whole = kitchen_for(None, units).units, read_recipe(recipe)
    with opened() as store:
        numbers = [int(word) for word in which if word.isdecimal()]
        if len(numbers) == len(which) == 2:
            first, second = (batches.by_id(store, n) or unknown(n) for n in numbers)
            every = batches.of_recipe(store, second.recipe)
        else:
            every = batches.of_recipe(store, " ".join(which))
            if len(every) < 2:
                exits.leave(text_of(say("not-two", recipe=repr(" ".join(which)))))
            first, second = every[-2:]
    if not any(b.id == first.id for b in every):
        one, other = str(first.id), str(second.id)
        exits.leave(text_of(say("of-two", first=one, recipe=first.recipe, second=other, another=second.recipe)))
    side_by_side(first, second, shown)
    show(verdict(first, second, every, shown), shown)
    typer.echo("")
    show_next(mending(every, recipe=whole, units=shown), every[-1], shown)


@app.command("show")
def show_one(
    number: Annotated[int, typer.Argument(help="The batch's number, as the list shows it.")],
    units: UnitsShown = None,
) -> None:
    """Show one batch with the recipe it began from, and what to change next where it is the last of its recipe."""
    from assistant.recipes.batches import mending
    from assistant.store import batches

    shown = kitchen_for(None, units).units
    with opened() as store:
        batch = batches.by_id(store, number) or unknown(number)
        every = batches.of_recipe(store, batch.recipe)
    typer.echo(line(batch, shown))
    if batch.formula:
        typer.echo(f"\n{batch.formula.rstrip()}\n")
    if every[-1].id == batch.id:
        show_next(mending(every, units=shown), batch, shown)


@app.command("undo")
def undo() -> None:
    """Forget the batch that was noted last."""
    from assistant.store import batches

    with opened() as store:
        noted = batches.every(store)
        if not noted:
            exits.leave(text_of(say("none")))
        last = max(noted, key=lambda batch: batch.id)
        batches.remove(store, last.id)
    show(say("forgotten", batch=str(last.id)))


@app.command("remove")
def remove(number: Annotated[int, typer.Argument(help="The batch's number, as the list shows it.")]) -> None:
    """Forget a batch."""
    from assistant.store import batches

    with opened() as store:
        if not batches.remove(store, number):
            unknown(number)
    show(say("forgotten", batch=str(number)))


def unknown(number: int) -> Any:
    """Leave: there is no batch of this number."""
    exits.leave(text_of(say("no-such", batch=str(number))))


def read_recipe(file: Path | None) -> Recipe | None:
    """The recipe of --recipe; leaves with code 2 where it cannot be read."""
    from assistant.recipes.errors import RecipeError
    from assistant.recipes.read import bytes_of, read

    if file is None:
        return None
    try:
        return read(bytes_of(file), name=file.name)
    except OSError as fault:
        exits.leave(text_of(say("cannot-open", file=str(file), reason=fault.strerror or "")))
    except RecipeError as fault:
        exits.leave(str(fault))


def show_next(found: Mending | None, batch: Batch, units: UnitSystem) -> None:
    """The one change to make next, why, what comes after it, and what to take care of."""
    for words in next_lines(found, batch, units):
        tell(words)


def side_by_side(first: Batch, second: Batch, units: UnitSystem) -> None:
    """Two batches in two columns."""
    from rich.console import Console
    from rich.table import Table

    table = Table(box=None, pad_edge=False, title=second.recipe, title_justify="left", title_style="bold")
    for head in ("", *(text_of(say("column", batch=str(batch.id))) for batch in (first, second))):
        table.add_column(head)
    for label, one, other in zip(_labels(), _column(first, units), _column(second, units), strict=True):
        if one or other:
            table.add_row(text_of(label), one, other)
    Console(highlight=False).print(table)


def _labels() -> tuple[Said, ...]:
    """What stands before the rows of two batches side by side."""
    return (
        say("made"), say("kitchen"), say("elevation"), say("was-changed"), say("went-wrong"), say("rating"),
        say("note"),
    )  # fmt: skip


def _column(batch: Batch, units: UnitSystem) -> list[str]:
    from assistant.recipes.batches import titles

    cells: tuple[Value, ...] = (
        batch.made_on.isoformat(),
        batch.kitchen or say("no-kitchen"),
        elevation(batch.elevation_m) if batch.elevation_m is not None else say("not-known"),
        changes_of(batch, units) if batch.changes else say("nothing"),
        listed(titles(batch), "semicolons") if batch.symptoms else say("nothing"),
        say("no-rating") if batch.rating is None else say("of-five", rating=batch.rating),
        batch.note,
    )
    return [text_of(cell, units) for cell in cells]


def verdict(first: Batch, second: Batch, every: tuple[Batch, ...], units: UnitSystem) -> Said:
    """What became of the changes between two batches."""
    from assistant.recipes.batches import in_words, trials
    from rules.mending.log import Log

    places = [b.id for b in every]
    between = every[places.index(first.id) + 1 : places.index(second.id) + 1]
    made = [in_words(change, units) for batch in between for change in batch.changes]
    outcome = Log(trials((first, second))).outcome(1)
    came_out = say("came-out", second=str(second.id), outcome=outcome, first=str(first.id))
    if len(made) > 1:
        return say("by-several", came_out=came_out, count=len(made), changes=listed(made, "semicolons"))
    return say("by-one", came_out=came_out, change=made[0]) if made else say("by-nothing", came_out=came_out)
