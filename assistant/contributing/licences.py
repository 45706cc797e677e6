"""The licence of everything that is installed beside simmerline, and whether it may be used."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from functools import cache
from importlib.metadata import Distribution, distributions
from typing import Any

from rules import tables

FILE = "licences.toml"
OURS = "simmerline"
CLASSIFIER, APPROVED = "License :: ", "OSI Approved"
UNKNOWN = "unknown"
# a licence is named in a line; what is longer is its text
LONGEST_NAME = 60


@dataclass(frozen=True, slots=True)
class Licensed:
    """A package. licence: as an SPDX expression, or UNKNOWN; fault: why it may not be used, "" where it may"""

    name: str
    version: str
    licence: str
    fault: str = ""


def licences(installed: Iterable[Distribution] | None = None) -> Iterator[Licensed]:
    """Every package but ours, by name. installed: by default all that Python finds"""
    found = {normal(one.metadata["Name"]): one for one in (distributions() if installed is None else installed)}
    for name in sorted(found.keys() - {OURS}):
        licence = licence_of(found[name])
        yield Licensed(name, found[name].version, licence, fault_of(name, licence))


def licence_of(package: Distribution) -> str:
    """What a package says of its licence, else what we know of it, as an SPDX expression.

    Classifiers go before the free text, which may hold anything; where there are several, all are taken to hold.
    """
    told = package.metadata
    for expression in told.get_all("License-Expression") or ():
        return str(expression)
    lines = [c.rpartition(" :: ")[2] for c in told.get_all("Classifier") or () if c.startswith(CLASSIFIER)]
    classifiers = [line for line in lines if line != APPROVED]
    text = " ".join(told.get_all("License") or ()).strip()
    named = [text] if "\n" not in text and 0 < len(text) <= LONGEST_NAME else []
    for words in (classifiers, named):
        if words and all(_is_known(_read_as(word)) for word in words):
            return _all(map(_read_as, words))
    known = _listed().get(normal(told["Name"]))
    return known["licence"] if known else (_all(classifiers or named) or UNKNOWN)


def _all(words: Iterable[str]) -> str:
    return " AND ".join(dict.fromkeys(words))


def fault_of(name: str, licence: str) -> str:
    """Why a package of a licence may not be used; "" where it may."""
    if name in _listed() and _listed()[name]["licence"] == licence:
        return ""
    if licence == UNKNOWN:
        return f"tells no licence; look it up, and list it in data/{FILE}"
    if any(all(one in _free() for one in parts(way)) for way in licence.split(" OR ")):
        return ""
    return f"is under {licence}; do without it, or list it in data/{FILE} with why it may be used"


def parts(expression: str) -> list[str]:
    """The licences that all hold at once.

    >>> parts("(MIT AND PSF-2.0)")
    ['MIT', 'PSF-2.0']
    """
    return [one.strip("() ") for one in expression.split(" AND ")]


def normal(name: str) -> str:
    """The name of a package as registries compare it.

    >>> normal("ruamel.yaml"), normal("Py_Stemmer")
    ('ruamel-yaml', 'py-stemmer')
    """
    return re.sub(r"[-_.]+", "-", name).lower()


def _read_as(word: str) -> str:
    return str(_file()["read_as"].get(word, word))


def _is_known(licence: str) -> bool:
    return all(one in _free() for one in parts(licence))


@cache
def _file() -> Mapping[str, Any]:
    return tables.read_toml(FILE)


def _free() -> frozenset[str]:
    return frozenset(_file()["free"])


@cache
def _listed() -> Mapping[str, Mapping[str, str]]:
    return {row["name"]: row for row in _file()["package"]}
