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
from rules.physics.air import HIGHEST_M, LOWEST_M

if TYPE_CHECKING:
    from assistant.store.database import Store


class Units(StrEnum):
    """Which unit system is shown first."""

    us = "us"
    metric = "metric"


def warner() -> Callable[[str], None]:
    """A function that says on standard error what is wrong, each thing once."""
    told: set[str] = set()

    def warn(message: str) -> None:
        if message not in told:
            told.add(message)
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
    if found := plain_elevation(at):
        return found
    from assistant.replies.sentences import worded
    from assistant.understanding.awaited import in_reply

    figure = at.strip().replace("\N{MINUS SIGN}", "-")
    below = f"{figure[1:]} below sea level" if figure.startswith("-") else figure
    heard = in_reply("elevation", below)
    if heard.elevation_m is None:
        doubt = next((u.reason for u in heard.unused if u.kind == "elevation"), "")
        exits.leave(
            worded(doubt, heard.units) or f"{option} {at!r} is not an elevation I know; say 7000ft, 2130m or a town"
        )
    return heard


def plain_elevation(at: str) -> Request | None:
    """An elevation typed as a figure with its unit, without the time it takes to load the language.

    >>> plain_elevation("7,000 ft").elevation_m, plain_elevation("2100m").units, plain_elevation("30000ft")
    (2133.6, 'metric', None)
    """
    from assistant.reading.reader import hear
    from assistant.reading.units import HEIGHTS, tells_heights

    typed = hear(at, HEIGHTS).only()
    if typed is None or not tells_heights(typed.unit) or not LOWEST_M <= typed.low <= HIGHEST_M:
        return None
    return Request(
        text=at,
        topic="set_kitchen",
        elevation_m=round(typed.low, 6),
        elevation_from="stated",
        units="metric" if typed.unit in ("m", "km") else "us",
    )


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
