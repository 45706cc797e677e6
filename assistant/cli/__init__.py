"""The command line: Typer for the commands, Rich in a terminal, plain text in a pipe."""

import gc

# what is loaded at the start is kept for good: looking for rubbish among it costs a sixth of a cold answer
gc.set_threshold(100_000, 50, 50)

from assistant.cli.app import create_app, main  # noqa: E402

__all__ = ["create_app", "main"]
