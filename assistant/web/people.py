"""Who is who: a browser gets an opaque id in a signed cookie, and what it says and keeps is found by that id alone."""

from __future__ import annotations

import hmac
import secrets
from hashlib import sha256

from sanic import HTTPResponse, Request

from assistant.web.settings import Settings

COOKIE = "simmerline"
KEPT_S = 400 * 24 * 3600
ID_BYTES = 16


def signed(secret: bytes, purpose: str, text: str) -> str:
    """The signature of a text for one purpose."""
    return hmac.new(secret, f"{purpose}\x00{text}".encode(), sha256).hexdigest()


def person_of(cookie: str | None, secret: bytes) -> str | None:
    """The id in a cookie of ours; None for any other."""
    id, _, signature = (cookie or "").partition(".")
    # compared as bytes: a cookie may hold letters that a comparison of texts refuses
    right = hmac.compare_digest(signature.encode(), signed(secret, "person", id).encode())
    return id if id and right else None


async def meet(request: Request) -> None:
    """Tell the request who is there: the person of its cookie, or a new one."""
    settings: Settings = request.app.ctx.settings
    known = person_of(request.cookies.get(COOKIE), settings.secret)
    request.ctx.is_new = known is None
    request.ctx.person = known or secrets.token_hex(ID_BYTES)


async def remember(request: Request, response: HTTPResponse) -> None:
    """Give a new person their cookie, where a page or something of theirs was asked for."""
    if not getattr(request.ctx, "is_new", False) or not getattr(request.ctx, "known_from_now_on", False):
        return
    settings: Settings = request.app.ctx.settings
    person = request.ctx.person
    response.add_cookie(
        COOKIE, f"{person}.{signed(settings.secret, 'person', person)}", path="/", httponly=True, samesite="Lax",
        secure=settings.secure, max_age=KEPT_S,
    )  # fmt: skip


def form_key(request: Request) -> str:
    """What a form of this person has to bring back."""
    settings: Settings = request.app.ctx.settings
    return signed(settings.secret, "form", request.ctx.person)
