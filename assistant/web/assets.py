"""Styles, scripts and pictures of the pages, named by what is in them so that a browser may keep them."""

from __future__ import annotations

import mimetypes
from dataclasses import dataclass
from functools import cache
from hashlib import sha256
from importlib.resources import files
from importlib.resources.abc import Traversable

from sanic import HTTPResponse, Request
from sanic_ext import openapi

from assistant.web.problems import Problem

FOLDER = "static"
FOR_EVER = "public, max-age=31536000, immutable"
KINDS = {".js": "text/javascript", ".webmanifest": "application/manifest+json"}


@dataclass(frozen=True, slots=True)
class Assets:
    """All of them by name. version: changes with what is in any of them"""

    content: dict[str, bytes]
    version: str


@cache
def assets() -> Assets:
    """The assets of the package."""
    content = {path.name: path.read_bytes() for path in _files() if path.is_file()}
    digest = sha256(b"".join(name.encode() + content[name] for name in sorted(content))).hexdigest()
    return Assets(content, digest[:12])


def url(name: str) -> str:
    """Where an asset is found."""
    return f"/static/{assets().version}/{name}"


@openapi.exclude()
async def serve(request: Request, version: str, name: str) -> HTTPResponse:
    """One of them."""
    content = assets().content.get(name)
    if content is None:
        raise Problem(404, "There is no such file.")
    kept = FOR_EVER if version == assets().version else "no-cache"
    return HTTPResponse(content, content_type=_kind(name), headers={"Cache-Control": kept})


def _kind(name: str) -> str:
    ending = name[name.rfind(".") :]
    kind = KINDS.get(ending) or mimetypes.guess_type(name)[0] or "application/octet-stream"
    return f"{kind}; charset=utf-8" if kind.startswith("text/") else kind


def _files() -> list[Traversable]:
    return list((files("assistant.web") / FOLDER).iterdir())
