"""`simmerline actions`: the action server for people who run Rasa."""

from __future__ import annotations

from typing import Annotated

import typer

from assistant.cli import exits
from assistant.cli.serve import LINES, METRICS
from assistant.cli.taken_for_granted import warner

PORT = 5055


def register(app: typer.Typer) -> None:
    """Add the command to the app."""
    app.command("actions", epilog=exits.EPILOG)(actions)


def actions(
    port: Annotated[int, typer.Option("--port", min=1, max=65535, help="Port to listen on.")] = PORT,
    host: Annotated[
        str, typer.Option("--host", help="Address to listen on; 0.0.0.0 lets other machines in.")
    ] = "127.0.0.1",
    metrics: Annotated[bool, typer.Option("--metrics", help=METRICS)] = False,
    lines: Annotated[bool, typer.Option("--log-requests", help=LINES)] = False,
) -> None:
    """Serve simmerline's actions to a Rasa server, until told to stop.

    simmerline actions --port 5055
    """
    from assistant.dialogue.server import serve
    from assistant.serving.watched import Watch

    typer.echo(f"simmerline actions: http://{host}:{port}/webhook; Ctrl-C ends it", err=True)
    try:
        serve(host, port, warner(), Watch(metrics=metrics, lines=lines))
    except OSError as fault:
        exits.leave(f"cannot listen on {host}:{port}: {fault.strerror or fault}", exits.FAILED)
