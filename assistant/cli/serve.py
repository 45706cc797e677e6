"""`simmerline serve`: the page for the kitchen tablet and the API for programs."""

from __future__ import annotations

import os
from pathlib import Path
from typing import Annotated

import typer

from assistant.cli import exits
from assistant.cli.taken_for_granted import warner

PORT, MOST_WORKERS, LONGEST_TOKEN = 8080, 64, 4096
TOKEN_VARIABLE = "SIMMERLINE_TOKEN"
METRICS = "Count requests and answers at /metrics, in the text format of Prometheus; never with words of anybody."
LINES = "Write a line for each request: its route, status and seconds; never words of anybody."


def register(app: typer.Typer) -> None:
    """Add the command to the app."""
    app.command("serve", epilog=exits.EPILOG)(serve)


def serve(
    port: Annotated[int, typer.Option("--port", min=1, max=65535, help="Port to listen on.")] = PORT,
    host: Annotated[
        str, typer.Option("--host", help="Address to listen on; 0.0.0.0 lets other machines in.")
    ] = "127.0.0.1",
    workers: Annotated[
        int, typer.Option("--workers", min=1, max=MOST_WORKERS, help="Processes that answer, one a core at the most.")
    ] = 1,
    names: Annotated[
        list[str] | None,
        typer.Option("--name", metavar="NAME", help="A further name that browsers find it by; may be repeated."),
    ] = None,
    origins: Annotated[
        list[str] | None,
        typer.Option("--allow-origin", metavar="URL", help="A page elsewhere that may call the API; may be repeated."),
    ] = None,
    token_file: Annotated[
        Path | None,
        typer.Option(
            "--token-file", metavar="FILE", help=f"Holds an access token that has to be told; or set {TOKEN_VARIABLE}."
        ),
    ] = None,
    certificate: Annotated[
        Path | None, typer.Option("--cert", metavar="FILE", help="Certificate for https, which tablets want for voice.")
    ] = None,
    key: Annotated[Path | None, typer.Option("--key", metavar="FILE", help="Key of the certificate.")] = None,
    metrics: Annotated[bool, typer.Option("--metrics", help=METRICS)] = False,
    lines: Annotated[bool, typer.Option("--log-requests", help=LINES)] = False,
) -> None:
    """Serve the page for the kitchen tablet, on this machine alone unless --host says otherwise.

    simmerline serve

    simmerline serve --host 0.0.0.0 --token-file token.txt --cert kitchen.pem --key kitchen.key
    """
    from assistant.serving.watched import Watch
    from assistant.web.secret import secret
    from assistant.web.serving import BadCertificate, check_certificate
    from assistant.web.serving import serve as serve_until_interrupted
    from assistant.web.settings import Settings

    if (certificate is None) != (key is None):
        exits.leave("https needs both --cert and --key")
    warn = warner()
    settings = Settings(
        secret=secret(warn),
        host=host,
        port=port,
        token=_token(token_file),
        origins=tuple(origin.rstrip("/") for origin in origins or ()),
        names=tuple(name.lower() for name in names or ()),
        certificate=str(certificate or ""),
        key=str(key or ""),
        watch=Watch(metrics=metrics, lines=lines),
    )
    try:
        check_certificate(settings)
    except BadCertificate as fault:
        exits.leave(str(fault))
    if not settings.is_local and not settings.token:
        warn("whoever reaches this address can use it; --token-file lets only those in who know the token")
    typer.echo(f"simmerline: {settings.address}; Ctrl-C ends it", err=True)
    try:
        serve_until_interrupted(settings, workers)
    except OSError as fault:
        listens = f"cannot listen on {host}:{port}: {fault.strerror}"
        exits.leave(listens if fault.strerror else str(fault), exits.FAILED)


def _token(file: Path | None) -> str:
    """The access token; leaves with code 2 where its file cannot be read or holds none."""
    from assistant.files import content_of

    if file is None:
        return os.environ.get(TOKEN_VARIABLE, "").strip()
    try:
        content = content_of(file, LONGEST_TOKEN)
        token = content.decode().strip()
    except (OSError, UnicodeDecodeError) as fault:
        exits.leave(f"cannot read {file}: {(getattr(fault, 'strerror', None) or 'that is no text').lower()}")
    if not token or len(content) > LONGEST_TOKEN:
        exits.leave(f"{file} holds no token" if not token else f"{file} is longer than any token")
    return token
