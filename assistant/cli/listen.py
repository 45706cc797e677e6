"""`simmerline listen`: a question that is spoken, shown as it was heard, put right where need be, and answered."""

from __future__ import annotations

import json
import sys
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from assistant.cli import exits
from assistant.cli.chat import PROMPT, hold, piped, typed
from assistant.cli.saying import tell, text_of
from assistant.cli.taken_for_granted import Units, kitchen_for, warner
from rules.said import sentences

if TYPE_CHECKING:
    from assistant.dialogue.memory import Memory
    from assistant.dialogue.record import Record
    from assistant.voice.hearing import Heard

words = sentences("cli/listen")
YES = ("yes", "y", "yes it is", "right", "that is right", "correct")
NO = ("no", "n", "wrong")


def register(app: typer.Typer) -> None:
    """Add the command to the app."""
    app.command("listen", epilog=exits.EPILOG)(listen)


def listen(
    file: Annotated[
        Path | None,
        typer.Argument(help="A WAV file: 16 kHz, one channel, 16 bit, up to 30 seconds. Without one the microphone."),
    ] = None,
    new: Annotated[bool, typer.Option("--new", help="Begin a new conversation instead of resuming the last.")] = False,
    at: Annotated[str | None, typer.Option("--at", help="Your elevation: 7000ft, 2130m, a town.")] = None,
    kitchen_name: Annotated[
        str | None, typer.Option("--kitchen", metavar="NAME", help="A kitchen of yours instead of the one in use.")
    ] = None,
    units: Annotated[Units | None, typer.Option("--units", help="Unit system shown first.")] = None,
    recogniser: Annotated[
        str, typer.Option("--recogniser", metavar="NAME", help="Which recogniser hears it.")
    ] = "moonshine",
    as_json: Annotated[bool, typer.Option("--json", help="Print what was heard as JSON, and answer nothing.")] = False,
) -> None:
    """Listen to a question, show what was heard, and answer it once it is right.

    simmerline listen question.wav

    simmerline listen --at 7000ft

    In a pipe the next line of standard input confirms what is read back (yes), or says it right; further lines go on.
    """
    from assistant.dialogue.record import Record

    if file is None and not sys.stdin.isatty():
        exits.leave("the microphone is for a terminal; in a pipe give a WAV file: simmerline listen question.wav")
    warn = warner()
    kitchen = kitchen_for(at, units, kitchen_name, warn)
    record = Record.resume(new=new, warn=warn)
    try:
        memory = record.memory(kitchen, stated=any(option is not None for option in (at, units, kitchen_name)))
        hear = _hearing(file, recogniser)
        if as_json:
            typer.echo(json.dumps(hear(memory).as_json(), ensure_ascii=False, indent=2))
            return
        hold(_lines(hear, record, memory, once=file is not None), record, memory, None)
    finally:
        record.close()


def _hearing(file: Path | None, recogniser: str) -> Callable[[Memory], Heard]:
    """A function that hears the file, or the microphone; it leaves with code 1 and says why where it cannot."""

    def hear(memory: Memory) -> Heard:
        from assistant.voice import hearing, microphone, wav

        with exits.kindly():
            speech = wav.of_file(file) if file else microphone.record(lambda: input(text_of(words("speak"))))
            return hearing.hear(speech, memory, recogniser)

    return hear


def _lines(hear: Callable[[Memory], Heard], record: Record, memory: Memory, *, once: bool) -> Iterator[str]:
    """What is said to the conversation: what was heard, once it is right, then further speech or lines."""
    behind = typed(record) if sys.stdin.isatty() else piped()
    first = _settled(hear(memory), behind)
    if first:
        yield first
    if once:
        yield from behind
        return
    while True:
        spoken = _settled(hear(record.memory(memory.kitchen)), behind)
        if spoken:
            yield spoken


def _settled(heard: Heard, behind: Iterator[str]) -> str | None:
    """What was heard, shown, and put right by the cook; None where it is not to be asked.

    Leaves with code 3 where it is to be read back and nobody answers.
    """
    tell(text_of(words("heard", text=heard.text)))
    for mend in heard.mends:
        tell(text_of(words("mended", heard=mend.heard, meant=mend.meant)))
    if heard.to_ask is None:
        tell(text_of(heard.read_back))
    if sys.stdin.isatty():
        return _edited(heard)
    return heard.to_ask or _confirmed(heard, next(behind, None))


def _confirmed(heard: Heard, line: str | None) -> str | None:
    """What a line of a pipe makes of what was read back."""
    if line is None:
        raise typer.Exit(exits.ASKS_BACK)
    said = line.strip().casefold().rstrip(".!")
    if said in YES:
        return heard.text
    return None if said in NO else line


def _edited(heard: Heard) -> str | None:
    """What was heard, as the cook leaves it at a prompt; nothing where it was emptied."""
    from prompt_toolkit import prompt

    try:
        return prompt(PROMPT, default=heard.text).strip() or None
    except EOFError:
        raise typer.Exit(exits.ANSWERED) from None
