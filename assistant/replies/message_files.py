"""The files of the wording, message by message: a message is parsed when it is first wanted, since parsing is slow."""

from __future__ import annotations

import re
from functools import cache
from typing import TYPE_CHECKING

from rules import tables

if TYPE_CHECKING:
    from fluent.syntax.ast import Resource

SHARED = "shared"
# a message or a term opens a line; all else that belongs to it is indented, or closes a brace
_OPENING = re.compile(r"^(?=-?[a-zA-Z][\w-]*[ ]*=)", re.MULTILINE)
_REFERENCE = re.compile(r"\{\s*(-?[a-zA-Z][\w-]*)")


@cache
def messages(file: str, language: str) -> dict[str, str]:
    """The text of every message and term of a file and of what its folder shares, by its name; its own go first.

    >>> messages("common", "en")["or"].strip()
    'or = { $a } or { $b }'
    """
    return _messages(f"{file.rpartition('/')[0]}/{SHARED}", language) | _messages(file, language)


def _messages(file: str, language: str) -> dict[str, str]:
    path = tables.data_path(f"wording/{language}/{file}.ftl")
    entries = _OPENING.split(path.read_text(encoding="utf-8")) if path.is_file() else []
    return {entry.partition("=")[0].rstrip(): entry for entry in entries if _OPENING.match(entry)}


@cache
def parsed(file: str, name: str, language: str) -> Resource:
    """A message with the messages and terms that it refers to; an empty resource where there is none of that name."""
    from fluent.runtime import FluentResource

    texts = messages(file, language)
    wanted = dict.fromkeys(_with_references(name, texts, frozenset()))
    return FluentResource("".join(texts[name] for name in wanted))


def _with_references(name: str, texts: dict[str, str], seen: frozenset[str]) -> list[str]:
    """Its own name and those of what it refers to, as far as they stand in the file."""
    if name not in texts or name in seen:
        return []
    further = (_with_references(to, texts, seen | {name}) for to in _REFERENCE.findall(texts[name]))
    return [name, *(to for found in further for to in found)]
