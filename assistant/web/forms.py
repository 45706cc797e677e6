"""Fields of a form as they were typed, and files that came with it."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping
from types import MappingProxyType

from sanic import Request

from assistant.web.problems import Problem

LONGEST = 400


def fields(request: Request, *names: str, long: tuple[str, ...] = ()) -> dict[str, str]:
    """The fields of these names, stripped; "" for one that is not there.

    long: those that hold a text rather than a line
    raises: Problem for a line that is none
    """
    values = {name: field(request, name).strip() for name in (*names, *long)}
    for name in names:
        if len(values[name]) > LONGEST:
            raise Problem(422, f"The field {name} takes {LONGEST} letters at the most.")
    return values


def field(request: Request, name: str) -> str:
    """A field as it was typed; "" where it is not there."""
    # what no keyboard types, and no store holds
    return str(request.form.get(name) or "").replace("\0", "") if request.form else ""


def typed(given: Mapping[str, str] = MappingProxyType({})) -> dict[str, str]:
    """Fields as a template shows them again; "" for one that was not typed."""
    return defaultdict(str, given)


def several(request: Request, name: str) -> list[str]:
    """Every value of a field that may be given more than once."""
    return [str(value).replace("\0", "") for value in request.form.getlist(name) or []] if request.form else []


def upload(request: Request, name: str) -> tuple[str, bytes]:
    """A file that came with a form: its name and content; empty where none did."""
    file = request.files.get(name) if request.files else None
    return (file.name, file.body) if file and file.body else ("", b"")


def whole(text: str, what: str) -> int | None:
    """A whole number of a field; None where it is empty.

    raises: Problem that names the field
    """
    if not text:
        return None
    if not text.isdecimal() or len(text) > 9:
        raise Problem(422, f"{what} has to be a whole number.")
    return int(text)
