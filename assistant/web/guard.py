"""What every request has to pass, and what every response carries."""

from __future__ import annotations

import hmac
from urllib.parse import urlsplit

from sanic import HTTPResponse, Request

from assistant.web import bodies
from assistant.web.forms import field
from assistant.web.people import form_key
from assistant.web.problems import Problem, for_programs
from assistant.web.settings import Settings

SAFE_METHODS = ("GET", "HEAD", "OPTIONS")
FORM_KEY = "form_key"
OWN_PAGE = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self'; "
    "font-src 'self'; media-src 'self'; manifest-src 'self'; form-action 'self'; base-uri 'none'; "
    "frame-ancestors 'none'"
)
# a sheet that was made to be printed carries its style in itself; it runs nothing and calls nobody
MADE_SHEET = (
    "default-src 'none'; style-src 'unsafe-inline'; img-src data:; sandbox; base-uri 'none'; frame-ancestors 'none'"
)
HEADERS = {
    "X-Content-Type-Options": "nosniff",
    "X-Frame-Options": "DENY",
    # "no-referrer" would have browsers hide from where a form comes
    "Referrer-Policy": "same-origin",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Permissions-Policy": "geolocation=(self), microphone=(self), screen-wake-lock=(self), camera=(), payment=()",
}


async def check(request: Request) -> None:
    """Let a request pass.

    raises: Problem for one that is not for this server, comes from a page elsewhere, or brings what is not taken
    """
    settings: Settings = request.app.ctx.settings
    if not settings.answers_to(request.headers.get("host", "")):
        raise Problem(421, "This server is not called by that name; start it with --name to let it be.")
    if bodies.is_too_large(request):
        raise Problem(413, "That is more than is taken here.")
    if request.headers.get("content-encoding", "identity") != "identity" and request.path != "/webhook":
        raise Problem(415, "Send the body as it is, not packed.")
    if request.method not in SAFE_METHODS:
        _check_origin(request, settings)
        if request.route is not None:
            _check_body(request, getattr(request.route.ctx, "takes", "application/json"))


def _check_origin(request: Request, settings: Settings) -> None:
    """A page elsewhere may change nothing here, unless its origin was named."""
    origin = request.headers.get("origin", "")
    if origin and origin in settings.origins and for_programs(request):
        return
    elsewhere = request.headers.get("sec-fetch-site", "none") not in ("same-origin", "none")
    if elsewhere or (origin and urlsplit(origin).netloc != request.headers.get("host", "")):
        raise Problem(403, "That came from a page elsewhere, which may not do this here.")


def _check_body(request: Request, wanted: str) -> None:
    """Programs send JSON, which no form elsewhere can; a form brings back its key. wanted: the kind for programs"""
    kind = request.headers.get("content-type", "").partition(";")[0].strip().lower()
    if for_programs(request):
        if request.method != "DELETE" and kind != wanted:
            raise Problem(415, f"Send {wanted}.")
        return
    if request.path == "/enter":
        return
    brought = field(request, FORM_KEY)
    if not hmac.compare_digest(brought.encode(), form_key(request).encode()):
        raise Problem(
            403, "The form is older than this page knows, or came from elsewhere. Go back, reload and send it again."
        )


async def harden(request: Request, response: HTTPResponse) -> None:
    """Put the headers of safety on a response."""
    for name, value in HEADERS.items():
        response.headers.setdefault(name, value)
    response.headers.setdefault("Content-Security-Policy", OWN_PAGE)
    response.headers.setdefault("Cache-Control", "no-store")
    if not request.app.ctx.settings.origins:
        response.headers.setdefault("Cross-Origin-Resource-Policy", "same-origin")
