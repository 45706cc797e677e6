"""The command line: Typer for the commands, Rich in a terminal, plain text in a pipe."""

from assistant.cli.app import create_app, main

__all__ = ["create_app", "main"]
