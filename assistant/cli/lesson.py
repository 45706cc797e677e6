"""`simmerline lesson`: a sheet for a class of cooks, and its key apart."""

from __future__ import annotations

import shlex
from pathlib import Path
from typing import Annotated

import typer

from assistant.cli import exits
from assistant.cli.taken_for_granted import Units, elevation_heard, kitchen_for

ASK_ELEVATION = "where is the class? Say --at 7000ft or a town, or --kitchen with the name of one of yours"
LARGEST_CLASS, MOST_ELEVATIONS, HIGHEST_SEED = 200, 5, 2**31 - 1
CLASS = 20


def register(app: typer.Typer) -> None:
    """Add the command to the app."""
    app.command("lesson", epilog=exits.EPILOG)(lesson)


def lesson(
    theme: Annotated[
        str,
        typer.Argument(
            metavar="THEME",
            help="boiling, braising, baking, sugar, pressure, frying, eggs-and-poaching, beans-and-grains or "
            "drying-and-air.",
        ),
    ],
    at: Annotated[
        list[str] | None,
        typer.Option(
            "--at", help="Where the class cooks: 7000ft, 2130m, a town; said more than once, more columns in the table."
        ),
    ] = None,
    kitchen_name: Annotated[
        str | None, typer.Option("--kitchen", metavar="NAME", help="A kitchen of yours instead of the one in use.")
    ] = None,
    class_size: Annotated[int, typer.Option("--class", min=1, max=LARGEST_CLASS, help="How many are taught.")] = CLASS,
    count: Annotated[
        int | None,
        typer.Option("--questions", min=1, max=20, help="How many questions; by default one for two of the class."),
    ] = None,
    seed: Annotated[
        int, typer.Option("--seed", metavar="N", min=0, max=HIGHEST_SEED, help="Number of the set of questions.")
    ] = 1,
    units: Annotated[Units | None, typer.Option("--units", help="Unit system shown first.")] = None,
    paper: Annotated[str, typer.Option("--paper", help="letter or a4.")] = "letter",
    out: Annotated[
        Path, typer.Option("--out", metavar="FILE", help="What to write, .pdf, .html or .md; the key is FILE-key.")
    ] = Path("lesson.pdf"),
    force: Annotated[bool, typer.Option("--force", help="Write over files that are there.")] = False,
) -> None:
    """Print a lesson: the why, a table, worked examples, an experiment and questions; the key is a file of its own.

    simmerline lesson braising --at 7000ft --class 20

    simmerline lesson baking --at 7000ft --at 5300ft --seed 7 --out baking.html
    """
    from assistant.printing.lesson.drilled import enough_for
    from assistant.printing.lesson.forms import PAPERS_MM, form_of
    from assistant.printing.lesson.sheets import Lesson, handout, key
    from assistant.printing.lesson.themes import catalogue

    if theme not in catalogue():
        exits.leave(f"there is no lesson {theme!r}; say one of {', '.join(catalogue())}")
    if paper not in PAPERS_MM:
        exits.leave(f"--paper {paper} is none of {', '.join(PAPERS_MM)}")
    first, others = (at[0], at[1:]) if at else (None, [])
    if len(others) >= MOST_ELEVATIONS:
        exits.leave(f"--at was said {len(others) + 1} times; a table holds {MOST_ELEVATIONS} at most")
    kitchen = kitchen_for(first, units, kitchen_name)
    if kitchen.elevation_m is None:
        exits.leave(ASK_ELEVATION, exits.ASKS_BACK)
    heard = (elevation_heard(other).elevation_m for other in others)
    asked = Lesson(
        theme=theme,
        elevations_m=(kitchen.elevation_m, *(height for height in heard if height is not None)),
        class_size=class_size,
        count=count or enough_for(class_size),
        seed=seed,
        units=kitchen.units,
        command=again(theme, at, kitchen_name, class_size, count, seed, kitchen.units),
    )
    with exits.kindly():
        form = form_of(out)
        files = form.write(handout(asked), out, paper)
        files |= form.write(key(asked), out.with_stem(f"{out.stem}-key"), paper)
        exits.write(files, force)


def again(
    theme: str, at: list[str] | None, kitchen: str | None, class_size: int, count: int | None, seed: int, units: str
) -> str:
    """The command that prints the same lesson, whatever kitchen is in use then only where none was named."""
    words = ["simmerline", "lesson", theme]
    words += [word for place in at or () for word in ("--at", place)]
    words += ["--kitchen", kitchen] if kitchen else []
    words += ["--class", str(class_size)]
    words += ["--questions", str(count)] if count else []
    return shlex.join([*words, "--seed", str(seed), "--units", units])
