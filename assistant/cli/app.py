"""The `simmerline` command: its subcommands, gathered."""

from __future__ import annotations

import gc
import sys

import typer

from assistant.cli import actions, ask, batch, chat, convert, drill, exits, kitchen, sources

app = typer.Typer(
    name="simmerline",
    help="Times, temperatures and quantities for cooks above sea level, with the reason and the source.\n\n"
    'Begin with: simmerline ask "how long to braise short ribs at 7,000 feet"',
    epilog=exits.EPILOG,
    no_args_is_help=True,
    add_completion=False,
    pretty_exceptions_enable=False,
)
ask.register(app)
batch.register(app)
chat.register(app)
convert.register(app)
drill.register(app)
kitchen.register(app)
sources.register(app)
actions.register(app)


def main() -> None:
    """Entry point of the `simmerline` command."""
    if sys.argv[1:2] == ["ask"] and "--jsonl" not in sys.argv:
        gc.disable()  # one answer and the process ends: sweeping what was just loaded would cost a tenth of the time
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(encoding="utf-8", errors="replace")
    try:
        app()
    except BrokenPipeError:
        sys.stderr.close()
        sys.exit(exits.FAILED)
