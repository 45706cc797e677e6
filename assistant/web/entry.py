"""The access token: told once by a person, in every call by a program."""

from __future__ import annotations

import asyncio
import hmac

from sanic import HTTPResponse, Request
from sanic.response import redirect

from assistant.web.people import KEPT_S, signed
from assistant.web.problems import Problem, for_programs
from assistant.web.settings import Settings

COOKIE = "simmerline_entry"
OPEN = ("/enter", "/api/health")
OPEN_BELOW = "/static/"
# so long a wrong token waits, that guessing takes for ever [s]
WRONG_WAITS_S = 1.0


async def let_in(request: Request) -> HTTPResponse | None:
    """Nothing for whoever has told the token; people are led to where it is asked for.

    raises: Problem for a program without it
    """
    settings: Settings = request.app.ctx.settings
    if not settings.token or request.path in OPEN or request.path.startswith(OPEN_BELOW):
        return None
    if has_entry(request, settings):
        return None
    if for_programs(request):
        raise Problem(401, "This server wants its access token: Authorization: Bearer and the token.")
    return redirect("/enter")


def has_entry(request: Request, settings: Settings) -> bool:
    """Whether a request brings the token, or the cookie that was given for it."""
    brought = request.headers.get("authorization", "").removeprefix("Bearer ")
    cookie = request.cookies.get(COOKIE) or ""
    return is_token(brought, settings) or hmac.compare_digest(cookie.encode(), _pass(settings).encode())


def is_token(told: str, settings: Settings) -> bool:
    """Whether a text is the token."""
    return hmac.compare_digest(told.encode(), settings.token.encode())


def give_pass(response: HTTPResponse, settings: Settings) -> HTTPResponse:
    """The response with the cookie that lets in from now on."""
    response.add_cookie(
        COOKIE, _pass(settings), path="/", httponly=True, samesite="Lax", secure=settings.secure, max_age=KEPT_S
    )
    return response


async def refuse() -> None:
    """Let whoever told a wrong token wait."""
    await asyncio.sleep(WRONG_WAITS_S)


def _pass(settings: Settings) -> str:
    return signed(settings.secret, "entry", settings.token)
