"""`simmerline bulk`: every recipe for every kitchen, into a table."""

from __future__ import annotations

import signal
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from threading import Event
from typing import TYPE_CHECKING, Annotated

import typer

from assistant.cli import exits
from assistant.cli.taken_for_granted import elevation_heard
from assistant.machine import cores

if TYPE_CHECKING:
    from assistant.bulk.kitchens import Kitchens
    from assistant.bulk.manifest import Manifest
    from assistant.bulk.parts import Options, Source
    from assistant.bulk.run import Tally

MOST_WORKERS = 512
LIMIT_S, TRIES = 30.0, 3


def register(app: typer.Typer) -> None:
    """Add the command to the app."""
    app.command("bulk", epilog=exits.EPILOG)(bulk)


def bulk(
    recipes: Annotated[
        list[str], typer.Argument(metavar="FILE|FOLDER...", help="Recipes, as `simmerline convert` reads them.")
    ],
    kitchens: Annotated[
        Path,
        typer.Option(
            "--kitchens",
            metavar="FILE.csv",
            help="The kitchens: columns name, elevation (7000 ft, 2134 m, a town) and, if wanted, units (us, metric).",
        ),
    ],
    out: Annotated[Path, typer.Option("--out", metavar="FOLDER", help="Where the tables go.")],
    written_for: Annotated[
        str | None,
        typer.Option("--from", help="The elevation the recipes were written for: 1600m, a town; sea level by default."),
    ] = None,
    with_text: Annotated[
        bool, typer.Option("--text", help="With each recipe as text to read; takes about twice as long.")
    ] = False,
    workers: Annotated[
        int | None, typer.Option("--workers", min=1, max=MOST_WORKERS, help="Processes; by default one a core.")
    ] = None,
    scheduler: Annotated[
        str | None,
        typer.Option(
            "--scheduler",
            metavar="ADDRESS",
            help="A Dask cluster that does it instead, such as tcp://10.0.0.5:8786; its workers have to see the "
            "recipes and the folder under the same names.",
        ),
    ] = None,
    limit_s: Annotated[
        float,
        typer.Option("--limit", min=0.1, metavar="SECONDS", help="For one recipe, and as long again a 1,000 places."),
    ] = LIMIT_S,
    tries: Annotated[
        int, typer.Option("--tries", min=1, max=100, help="How often a recipe is tried that stops or kills a worker.")
    ] = TRIES,
) -> None:
    """Convert every recipe for every kitchen: a row a pair, in Parquet, in FOLDER/conversions.

    Each recipe is read once, and kitchens at one elevation share its conversion. A row holds recipe, kitchen,
    elevation_m, units, title, style, oven_from_c, oven_to_c, rules, and nested as in the JSON of `convert`: changes,
    cautions, ingredients, steps. What could not be done is in FOLDER/errors.parquet, whatever it was: a row of the
    kitchens, a recipe, a pair.

    It can be stopped (Ctrl-C) or killed: said again, it goes on. Parts are done anew where a recipe, a kitchen, an
    option, the data or simmerline itself has changed.

    simmerline bulk recipes/ --kitchens kitchens.csv --out converted
    """
    _ready(scheduler)
    from assistant.bulk.kitchens import BadKitchens, read_kitchens
    from assistant.bulk.manifest import Manifest, Taken
    from assistant.bulk.parts import Options
    from assistant.bulk.run import CONVERSIONS

    from_m = elevation_heard(written_for, "--from").elevation_m if written_for is not None else 0.0
    try:
        read = read_kitchens(kitchens)
    except BadKitchens as fault:
        exits.leave(str(fault))
    found = _sources(recipes, out)
    with exits.kindly():
        (out / CONVERSIONS).mkdir(parents=True, exist_ok=True)
        try:
            manifest = Manifest(out, out.resolve() / CONVERSIONS)
        except Taken as fault:
            exits.leave(str(fault), exits.FAILED)
        options = Options(from_elevation_m=from_m or 0.0, with_text=with_text)
        try:
            tally = _done(found, read, options, manifest, workers, scheduler, limit_s, tries)
        finally:
            manifest.close()
        _tell(tally, read, found, out)
    raise typer.Exit(exits.ANSWERED if tally.whole and not tally.faults else exits.FAILED)


def _ready(scheduler: str | None) -> None:
    """Leaves with code 1 where what it needs is not installed."""
    from assistant import parts

    lacks = parts.lacks(parts.part("bulk"))
    if "pyarrow" in lacks or (scheduler and lacks):
        exits.leave(f"tables need {' and '.join(lacks)}: {parts.part('bulk').get}", exits.FAILED)


def _sources(recipes: list[str], out: Path) -> tuple[Source, ...]:
    """The recipes; leaves with code 2 where there are none. What lies in the folder of results is none."""
    from assistant.bulk.parts import sources
    from assistant.cli.convert import recipe_files

    files = dict.fromkeys(Path(name) for name in recipe_files(recipes))
    own = out.resolve()
    kept = [path.resolve() for path in files if own not in path.resolve().parents]
    if not kept:
        exits.leave(f"there are no recipes in {', '.join(recipes)}")
    alone = Path(recipes[0]).resolve() if len(recipes) == 1 and Path(recipes[0]).is_dir() else None
    return sources(kept, alone)


def _done(
    sources: tuple[Source, ...], kitchens: Kitchens, options: Options, manifest: Manifest, workers: int | None,
    scheduler: str | None, limit_s: float, tries: int,
) -> Tally:  # fmt: skip
    from assistant.bulk import crews, parts
    from assistant.bulk.progress import shown
    from assistant.bulk.run import Run, write_errors

    every, in_order = parts.parts(sources, kitchens, options), parts.in_place_order(kitchens)
    if anew := manifest.clear(every):
        typer.echo(f"{anew} parts of another run were taken away: other recipes, kitchens, options or data", err=True)

    def order(part: parts.Part) -> parts.Order:
        return parts.Order(
            part=part, kitchens=in_order, options=options, folder=str(manifest.results), limit_s=limit_s, tries=tries,
            made_by=parts.made_by(),
        )  # fmt: skip

    crew = crews.of_cluster(scheduler) if scheduler else crews.here(workers or cores())
    with crew as hands, _stopping() as stop, shown(stop) as told:
        tally = Run(parts=every, order=order, manifest=manifest, crew=hands, told=told, stop=stop).through()
    write_errors([*kitchens.faults, *tally.faults], manifest.results.parent)
    tally.faults[:0] = kitchens.faults
    return tally


@contextmanager
def _stopping() -> Iterator[Event]:
    """An event that the first Ctrl-C or SIGTERM sets; the second ends everything at once."""
    stop = Event()

    def asked(signum: int, _: object) -> None:
        if stop.is_set():
            raise KeyboardInterrupt
        stop.set()
        typer.echo("Stopping when what was begun is finished; once more stops at once.", err=True)

    before = {number: signal.signal(number, asked) for number in (signal.SIGINT, signal.SIGTERM)}
    try:
        yield stop
    finally:
        for number, handler in before.items():
            signal.signal(number, handler)


def _tell(tally: Tally, kitchens: Kitchens, sources: tuple[Source, ...], out: Path) -> None:
    from assistant.bulk.run import CONVERSIONS, ERRORS

    pairs, recipes = _counted(tally.rows, "pair"), _counted(len(sources), "recipe")
    cooks_in, places = _counted(len(kitchens.names), "kitchen"), _counted(len(kitchens.distinct), "place")
    typer.echo(f"{pairs} of {recipes} and {cooks_in} at {places}: {out / CONVERSIONS}")
    if tally.faults:
        typer.echo(f"{len(tally.faults):,} could not be done, each with its reason: {out / ERRORS}")
    if not tally.whole:
        left = tally.pairs - tally.kept - tally.done
        typer.echo(f"Stopped with {left:,} pairs left; say the same again to go on.")


def _counted(number: int, thing: str) -> str:
    return f"{number:,} {thing}" if number == 1 else f"{number:,} {thing}s"
