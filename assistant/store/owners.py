"""Whose a row is. The house's own rows are those of the command line; others belong to one person of the page.

Names are looked up by a key. That of a person's row begins with their opaque id and a sign that no name can hold.
"""

from __future__ import annotations

from sqlalchemy import Column, ColumnElement

HOUSE = ""
LONGEST_KEY = 200
SIGN = "\x1f"


def key_of(name: str, owner: str = HOUSE) -> str:
    """What a name is known by, whatever its case and spacing. owner: whose it is

    >>> key_of("  Timberfold  LODGE ")
    'timberfold lodge'
    """
    key = " ".join(name.split()).casefold()
    return (f"{owner}{SIGN}{key}" if owner else key)[:LONGEST_KEY]


def belongs_to(key: Column[str], owner: str) -> ColumnElement[bool]:
    """The condition that a row with this key is the owner's."""
    return key.startswith(f"{owner}{SIGN}", autoescape=True) if owner else ~key.contains(SIGN)
