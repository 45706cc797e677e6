"""What a command takes for granted: the kitchen in use or by name, and the elevation of --at."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import replace
from enum import StrEnum
from typing import TYPE_CHECKING

import typer

from assistant.cli import exits
from rules.model import Kitchen, Request

if TYPE_CHECKING:
    from assistant.store.database import Store


class Units(StrEnum):
    """Which unit system is shown first."""

    us = "us"
    metric = "metric"


def warner() -> Callable[[str], None]:
    """A function that says on standard error what is wrong, and the same thing not twice on end."""
    told = [""]

    def warn(message: str) -> None:
        if message != told[0]:
            told[0] = message
            typer.echo(f"simmerline: {message}", err=True)

    return warn


def kitchen_for(
    at: str | None, units: Units | None, name: str | None = None, warn: Callable[[str], None] | None = None
) -> Kitchen:
    """What to take for granted; an elevation by --at and units by --units win over the kitchen's.

    warn: is told where the store fails and no kitchen was named

    Leaves with code 2 where --at is no elevation or no kitchen has the name, with 1 where the store fails.
    """
    kitchen = kitchen_in_use(warn or warner()) if name is None else kitchen_named(name)
    if at is not None:
        heard = elevation_heard(at)
        kitchen = replace(kitchen, name="", elevation_m=heard.elevation_m, units=heard.units)
    return replace(kitchen, units=units.value) if units else kitchen


def elevation_heard(at: str, option: str = "--at") -> Request:
    """An elevation as it is typed after an option: its elevation_m is not None, its units are those of the figure.

    Leaves with code 2 where it is none.
    """
    from assistant.understanding.elevation_told import NotAnElevation, elevation_told

    try:
        return elevation_told(at)
    except NotAnElevation as fault:
        exits.leave(fault.doubt or f"{option} {fault}")


def kitchen_in_use(warn: Callable[[str], None]) -> Kitchen:
    """The kitchen in use; an empty one where there is none, also where the store fails, which is said."""
    from assistant.store.errors import StoreError
    from assistant.store.quick import kitchen_in_use as quickly

    try:
        return quickly() or Kitchen()
    except StoreError as fault:
        warn(fault.going_on)
        return Kitchen()


def kitchen_named(name: str) -> Kitchen:
    """The kitchen of this name; leaves with code 2 where there is none, with 1 where the store fails."""
    from assistant.store import kitchens

    with opened() as store:
        try:
            return kitchens.named(store, name).taken_for_granted()
        except kitchens.UnknownKitchen as fault:
            exits.leave(f"{fault}; see them with: simmerline kitchen list")


@contextmanager
def opened() -> Iterator[Store]:
    """The open store, for a command that is about what is kept; leaves with code 1 where the store fails."""
    from assistant.store import StoreError, open_store

    try:
        store = open_store()
        try:
            yield store
        finally:
            store.close()
    except StoreError as fault:
        exits.leave(str(fault), exits.FAILED)
