"""Licences: what packages tell of theirs in different ways, and that nothing unknown or binding is installed."""

from __future__ import annotations

import re
from email.message import Message
from importlib.metadata import Distribution
from pathlib import Path

import pytest

from assistant.contributing.licences import UNKNOWN, licences

PINNED = Path(__file__).parents[3] / ".ci" / "constraints.txt"


class Package(Distribution):
    """A package with nothing but metadata."""

    def __init__(self, **fields: str | list[str]) -> None:
        self.told = Message()
        self.told["Name"], self.told["Version"] = "stock-pot", "1.0"
        for name, values in fields.items():
            for value in [values] if isinstance(values, str) else values:
                self.told[name.replace("_", "-")] = value

    @property
    def metadata(self) -> Message:  # type: ignore[override]
        """What it tells of itself."""
        return self.told

    def read_text(self, filename: str) -> None:
        """No files."""

    def locate_file(self, path: object) -> None:  # type: ignore[override]
        """No files."""


# as metadata of packages is written (core metadata specification, PEP 639; SPDX licence list)
@pytest.mark.parametrize(
    ("fields", "licence", "may_be_used"),
    [
        ({"License_Expression": "MIT"}, "MIT", True),
        ({"License_Expression": "GPL-3.0-or-later OR MIT"}, "GPL-3.0-or-later OR MIT", True),
        ({"License_Expression": "MIT AND GPL-3.0-only"}, "MIT AND GPL-3.0-only", False),
        ({"License_Expression": "AGPL-3.0-only"}, "AGPL-3.0-only", False),
        ({"Classifier": ["License :: OSI Approved :: BSD License"], "License": "see the file"}, "BSD-3-Clause", True),
        ({"Classifier": ["License :: OSI Approved", "License :: OSI Approved :: MIT License"]}, "MIT", True),
        ({"License": "Apache License 2.0"}, "Apache-2.0", True),
        ({"Classifier": ["License :: OSI Approved :: GNU General Public License v3 (GPLv3)"]},
         "GNU General Public License v3 (GPLv3)", False),
        ({"License": "a poem"}, "a poem", False),
        ({"License": "Permission is hereby granted\n        to anybody"}, UNKNOWN, False),
        ({}, UNKNOWN, False),
    ],
)  # fmt: skip
def test_what_a_package_tells(fields: dict[str, str | list[str]], licence: str, may_be_used: bool) -> None:
    (found,) = licences([Package(**fields)])
    assert (found.licence, not found.fault) == (licence, may_be_used)


def test_nothing_that_is_pinned_is_unknown_or_binding() -> None:
    pinned = set(re.findall(r"^([a-z0-9-]+)==", PINNED.read_text(encoding="utf-8"), re.MULTILINE))
    found = [one for one in licences() if one.name in pinned]
    assert len(found) > 80
    assert [(one.name, one.fault) for one in found if one.fault] == []
