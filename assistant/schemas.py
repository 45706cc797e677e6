"""The JSON contracts as JSON Schema (draft 2020-12): what programs may rely on, a file each in data/schemas."""

from __future__ import annotations

import json
from typing import Any

from assistant.errors import AssistantError
from rules import tables

NAMES = ("answer", "recipe", "order", "schedule")


class UnknownSchema(AssistantError, ValueError):
    """A name that no contract has. name: as it was given"""

    def __init__(self, name: str) -> None:
        super().__init__(name)
        self.name = name

    def __str__(self) -> str:
        return f"there is no contract {self.name!r}; there are {', '.join(NAMES)}"


def schema(name: str) -> dict[str, Any]:
    """The schema of a contract, one of NAMES.

    raises: UnknownSchema

    >>> schema("answer")["$id"]
    'urn:simmerline:answer:1'
    """
    if name not in NAMES:
        raise UnknownSchema(name)
    found: dict[str, Any] = json.loads(tables.data_path(f"schemas/{name}.json").read_text(encoding="utf-8"))
    return found
