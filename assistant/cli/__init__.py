"""The command line: Typer for the commands, Rich in a terminal, plain text in a pipe."""

from assistant.cli.app import app, main

__all__ = ["app", "main"]
