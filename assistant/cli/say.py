"""`simmerline say`: an answer said aloud."""

from __future__ import annotations

import shutil
import subprocess
from pathlib import Path
from typing import Annotated

import typer

from assistant.cli import exits
from assistant.cli.ask import answer_one, read_question
from assistant.cli.taken_for_granted import Units, kitchen_for

PLAYERS = (("pw-play", "-"), ("aplay", "-q", "-"), ("paplay",), ("play", "-q", "-t", "wav", "-"))


def register(app: typer.Typer) -> None:
    """Add the command to the app."""
    app.command("say", epilog=exits.EPILOG)(say)


def say(
    text: Annotated[list[str] | None, typer.Argument(help="The question; - reads it from standard input.")] = None,
    at: Annotated[str | None, typer.Option("--at", help="Your elevation: 7000ft, 2130m, a town.")] = None,
    kitchen_name: Annotated[
        str | None, typer.Option("--kitchen", metavar="NAME", help="A kitchen of yours instead of the one in use.")
    ] = None,
    units: Annotated[Units | None, typer.Option("--units", help="Unit system said first.")] = None,
    out: Annotated[
        Path | None, typer.Option("--out", metavar="FILE", help="Write a WAV file instead of playing it.")
    ] = None,
    force: Annotated[bool, typer.Option("--force", help="Write over a file that is there.")] = False,
) -> None:
    """Answer a question aloud, by espeak-ng where it is installed.

    simmerline say "how long to braise short ribs at 7,000 feet"

    simmerline say --out answer.wav --at "Santa Fe" "soft ball for fudge"
    """
    from assistant.voice import spoken

    answer = answer_one(read_question(text), (), kitchen_for(at, units, kitchen_name), None)
    typer.echo(answer.spoken)
    with exits.kindly():
        sound = spoken(answer.spoken)
        if out is not None:
            exits.write({out: sound}, force)
        else:
            play(sound)
    raise typer.Exit(exits.of(answer))


def play(sound: bytes) -> None:
    """Play a WAV by the first player of the machine; leaves with code 1 where there is none."""
    player = next((player for player in PLAYERS if shutil.which(player[0])), None)
    if player is None:
        names = ", ".join(name for name, *_ in PLAYERS)
        exits.leave(f"nothing here can play sound (tried {names}); --out FILE writes it instead", exits.FAILED)
    run = subprocess.run(player, input=sound, capture_output=True, check=False)
    if run.returncode:
        exits.leave(f"{player[0]} could not play it; --out FILE writes it instead", exits.FAILED)
