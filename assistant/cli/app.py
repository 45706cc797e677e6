"""The `simmerline` command: its subcommands, gathered."""

from __future__ import annotations

import gc
import importlib
import sys
from collections.abc import Iterable

import typer

from assistant.cli import exits

# in the order in which --help lists them; each is a module beside this one
COMMANDS = (
    "ask",
    "chat",
    "listen",
    "say",
    "convert",
    "bulk",
    "order",
    "schedule",
    "batch",
    "kitchen",
    "card",
    "plot",
    "lesson",
    "drill",
    "sources",
    "serve",
    "actions",
    "doctor",
)


def create_app(commands: Iterable[str] = COMMANDS) -> typer.Typer:
    """The app with these commands, whose modules are imported here."""
    app = typer.Typer(
        name="simmerline",
        help="Times, temperatures and quantities for cooks above sea level, with the reason and the source.\n\n"
        'Begin with: simmerline ask "how long to braise short ribs at 7,000 feet"',
        epilog=exits.EPILOG,
        no_args_is_help=True,
        add_completion=False,
        pretty_exceptions_enable=False,
    )
    # with a callback Typer keeps the command's name on the line, however few commands there are
    app.callback()(lambda: None)
    for name in commands:
        importlib.import_module(f"assistant.cli.{name}").register(app)
    return app


def main() -> None:
    """Entry point of the `simmerline` command: only the module of the command that is asked for is imported."""
    if sys.argv[1:2] == ["ask"] and "--jsonl" not in sys.argv:
        gc.disable()  # one answer and the process ends: sweeping what was just loaded would cost a tenth of the time
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(encoding="utf-8", errors="replace")
    wanted = [name for name in COMMANDS if sys.argv[1:2] == [name]]
    try:
        create_app(wanted or COMMANDS)()
    except BrokenPipeError:
        sys.stderr.close()
        sys.exit(exits.FAILED)
