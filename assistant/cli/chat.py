"""`simmerline chat`: a conversation in the terminal or through a pipe, which goes on where the last one ended."""

from __future__ import annotations

import asyncio
import shutil
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from threading import Event, Thread
from typing import TYPE_CHECKING, Annotated

import typer

from assistant.cli import exits, quick
from assistant.cli.paging import asks_for_more, page
from assistant.cli.saying import WIDEST, text_of, wrapped
from assistant.cli.taken_for_granted import Units, kitchen_for, warner
from assistant.cli.transcript import Transcript
from rules.said import sentences

if TYPE_CHECKING:
    from prompt_toolkit import PromptSession
    from prompt_toolkit.completion import Completer
    from prompt_toolkit.key_binding import KeyBindings

    from assistant.dialogue.embedded import Conversation
    from assistant.dialogue.memory import Memory
    from assistant.dialogue.record import Record

say = sentences("cli/chat")
PROMPT = "you> "
LEAVING = ("quit", "exit")
RING_EVERY_S = 1.0
LONGEST_PHRASE = 4


def register(app: typer.Typer) -> None:
    """Add the command to the app."""
    app.command("chat", epilog=exits.EPILOG)(chat)


def chat(
    new: Annotated[bool, typer.Option("--new", help="Begin a new conversation instead of resuming the last.")] = False,
    at: Annotated[str | None, typer.Option("--at", help="Your elevation: 7000ft, 2130m, a town.")] = None,
    kitchen_name: Annotated[
        str | None, typer.Option("--kitchen", metavar="NAME", help="A kitchen of yours instead of the one in use.")
    ] = None,
    units: Annotated[Units | None, typer.Option("--units", help="Unit system shown first.")] = None,
    depth: Annotated[
        int | None,
        typer.Option("--depth", min=1, max=3, help="1 one line, 2 a paragraph, 3 the equations with numbers."),
    ] = None,
    transcript: Annotated[
        Path | None, typer.Option("--transcript", metavar="FILE", help="Write the whole conversation to this file.")
    ] = None,
    force: Annotated[bool, typer.Option("--force", help="Write over a transcript that is there.")] = False,
) -> None:
    """Talk it over: later questions lean on earlier ones, and what is missing is asked for.

    simmerline chat

    Ctrl-C clears the line and keeps it in the history; Ctrl-D, quit or exit leaves.
    """
    from assistant.dialogue.record import Record

    warn = warner()
    kitchen = kitchen_for(at, units, kitchen_name, warn)
    stated = any(option is not None for option in (at, units, kitchen_name))
    record = Record.resume(new=new, warn=warn)
    record.folder = Path.cwd()
    memory = record.memory(kitchen, stated=stated)
    out = begun(transcript, force, warn)
    try:
        lines = typed(record) if sys.stdin.isatty() else piped()
        greet(record, memory)
        hold(lines, record, memory, out, depth)
    finally:
        record.close()
        if out:
            out.close()
    if out and out.failed:
        raise typer.Exit(exits.FAILED)


def hold(
    lines: Iterator[str], record: Record, memory: Memory, out: Transcript | None, depth: int | None = None
) -> None:
    """Hold the conversation, line by line, until the lines end."""
    if out:
        out.add(*((u.who, u.text) for u in record.earlier))
    conversation, rest = None, ""
    with loading() as loaded, asyncio.Runner() as runner:
        for line in lines:
            if rest and asks_for_more(line):
                rest = show(rest)
                continue
            try:
                loaded()
                conversation = conversation or begin(record, memory, depth)
                said = runner.run(conversation.say(line))
            except KeyboardInterrupt:
                typer.echo("Stopped; the line is in the history.", err=True)
                continue
            rest = show(said.text)
            quick.loaded()
            record.keep(line, said.text, conversation.memory)
            if out:
                out.add(("cook", line), ("assistant", said.text))


@contextmanager
def loading() -> Iterator[Callable[[], None]]:
    """Load in the meantime what a reply takes; gives what waits for it. Nothing is loaded for a pipe, which is there.

    A process that ended before would tear what is being loaded.
    """
    thread = Thread(target=load)
    if sys.stdin.isatty():
        thread.start()

    def wait() -> None:
        if thread.is_alive():
            thread.join()

    try:
        yield wait
    finally:
        wait()


def load() -> None:
    """Load what a reply takes, while the first line is typed."""
    import assistant.dialogue.embedded  # noqa: F401
    from assistant.understanding.utterance import listen
    from rules.model import Kitchen

    listen("", Kitchen())


def begin(record: Record, memory: Memory, depth: int | None = None) -> Conversation:
    """The conversation, where the record left it. depth: of its answers, where one was asked for"""
    from assistant.dialogue.embedded import Conversation
    from assistant.dialogue.executor import KitchenExecutor

    return Conversation(record.id, memory, KitchenExecutor(record, depth))


def greet(record: Record, memory: Memory) -> None:
    """Say in a terminal where the conversation was left, what is known of the kitchen, and how to leave."""
    if not sys.stdin.isatty():
        return
    from assistant.dialogue.memory import place_of
    from assistant.replies.sentences import written

    if record.earlier:
        left_at = record.earlier[-1].text.partition("\n")[0]
        show(f"Going on where we were: {left_at}\nSay start over for a clean slate.")
    place = place_of(memory)
    known = (
        f"Your kitchen is at {written(place, memory.kitchen.units)}." if place else "Tell me a dish and your elevation."
    )
    typer.echo(f"{known} Tab completes, Ctrl-D leaves.")


def show(text: str) -> str:
    """Print a reply and an empty line after it; in a terminal dressed for it, and no more than fits.

    returns: what is still to be shown
    """
    rest = ""
    if sys.stdout.isatty():
        text, rest = dressed(text, *shutil.get_terminal_size())
    typer.echo(f"{text}\n")
    sys.stdout.flush()
    return rest


def dressed(text: str, columns: int, rows: int) -> tuple[str, str]:
    """A reply wrapped to the terminal, its first paragraph bold and the rest as far as it fits; and what does not."""
    fits, rest = page(wrapped(text, min(WIDEST, columns)), rows)
    first, gap, behind = fits.partition("\n\n")
    left = text_of(say("more", count=rest.count("\n") + 1)) if rest else ""
    return f"{typer.style(first, bold=True)}{gap}{behind}" + (f"\n\n{left}" if left else ""), rest


def piped() -> Iterator[str]:
    """The lines of standard input that say something."""
    for raw in sys.stdin.buffer:
        line = raw.decode("utf-8", errors="replace").strip()
        if line.casefold() in LEAVING:
            return
        if line:
            yield line


def typed(record: Record) -> Iterator[str]:
    """Lines typed at a prompt with history and completion, until Ctrl-D; timers ring while it waits."""
    session = prompt_session(record.said_by_cook())
    while True:
        try:
            with ringing(record):
                line = session.prompt(PROMPT).strip()
        except EOFError:
            return
        except KeyboardInterrupt:
            continue
        if line.casefold() in LEAVING:
            return
        if line:
            yield line


@contextmanager
def ringing(record: Record) -> Iterator[None]:
    """Let timers ring above the prompt as long as the block waits for a line."""
    from prompt_toolkit.patch_stdout import patch_stdout

    done = Event()

    def watch() -> None:
        while not done.wait(RING_EVERY_S):
            for text in record.rings(record.id):
                sys.stdout.write(f"\a{typer.style(text, bold=True)}\n\n")

    with patch_stdout(raw=True):
        watcher = Thread(target=watch, daemon=True)
        watcher.start()
        try:
            yield
        finally:
            done.set()
            watcher.join()


def prompt_session(history: tuple[str, ...]) -> PromptSession[str]:
    """The prompt: what was said before under the up arrow, dishes and methods under Tab."""
    from prompt_toolkit import PromptSession
    from prompt_toolkit.history import InMemoryHistory

    return PromptSession(
        history=InMemoryHistory(history),
        completer=completer(),
        key_bindings=keys(),
        complete_while_typing=False,
        enable_history_search=True,
    )


def keys() -> KeyBindings:
    """Ctrl-C clears the line; the up arrow brings it back."""
    from prompt_toolkit.key_binding import KeyBindings, KeyPressEvent

    bindings = KeyBindings()

    @bindings.add("c-c")
    def clear(event: KeyPressEvent) -> None:
        buffer = event.current_buffer
        buffer.append_to_history()
        buffer.reset()

    return bindings


def completer() -> Completer:
    """Completes dishes and methods, by all the words of them that are typed so far."""
    from prompt_toolkit.completion import Completer, Completion
    from prompt_toolkit.document import Document

    class Phrases(Completer):
        def get_completions(self, document: Document, complete_event: object) -> Iterator[Completion]:
            """Phrases that go on with the end of the line; the longest beginning counts."""
            typed_words = document.text_before_cursor.casefold().split(" ")
            for start in range(max(0, len(typed_words) - LONGEST_PHRASE), len(typed_words)):
                begun = " ".join(typed_words[start:])
                fitting = [p for p in phrases() if begun and p.startswith(begun) and p != begun]
                fitting.sort(key=lambda p: unusual(p, typed_words))
                if fitting:
                    yield from (Completion(p, start_position=-len(begun)) for p in fitting)
                    return

    return Phrases()


def unusual(phrase: str, said: list[str]) -> int:
    """How far down among the usual methods of a dish those are that were said; 0 for a method."""
    from rules.foods.dishes import dishes

    dish = dishes().get(phrase)
    return 0 if dish is None else next((i for i, method in enumerate(dish.methods) if method in said), len(dishes()))


def phrases() -> tuple[str, ...]:
    """Every method and every dish by its name: methods first, each in alphabetical order."""
    from rules.foods.dishes import dishes
    from rules.tables import read_toml

    methods = {row["label"] for row in read_toml("lexicon/methods.toml")["method"]}
    return (*sorted(methods), *sorted(dishes().keys() - methods))


def begun(path: Path | None, force: bool, warn: Callable[[str], None]) -> Transcript | None:
    """The transcript; leaves with code 1 where it cannot be written, or is there already without --force."""
    from assistant.files import AlreadyThere, NotWritten, why

    if path is None:
        return None
    try:
        return Transcript.begin(path, over=force, warn=warn)
    except AlreadyThere:
        exits.leave(f"{path} is there already; --force writes over it, --transcript names another", exits.FAILED)
    except NotWritten as fault:
        exits.leave(str(fault), exits.FAILED)
    except OSError as fault:
        exits.leave(f"{path}: {why(fault)}", exits.FAILED)
