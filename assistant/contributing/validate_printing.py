"""The validator's part on what is printed: the sentences of its rows, and figures that the rules really give."""

from __future__ import annotations

from collections.abc import Iterator

from assistant.contributing.validate_wording import Call
from assistant.printing import card
from assistant.printing.plots import time
from rules import engine, tables
from rules.model import Request

Problem = tuple[str, str, str]
PLOTS = "printing/plots"
# Where every row of a card has a figure [m].
HIGH_M = 2133.6


def calls() -> Iterator[Call]:
    """What the rows of the card and the lines of the plots are called, as if the code called for it."""
    for section in tables.read_toml(card.ROWS)["section"]:
        yield Call("printing/card", f"section-{section['id']}", frozenset(), card.ROWS)
        yield from (Call("printing/card", f"row-{row['id']}", frozenset(), card.ROWS) for row in section["rows"])
    for name in time.classes():
        yield Call(PLOTS, f"class-{name.replace('_', '-')}", frozenset(), f"{PLOTS}.toml")


def problems() -> Iterator[Problem]:
    """Rows of the card whose question has no such figure, or that are shown in a way that is none."""
    for section in tables.read_toml(card.ROWS)["section"]:
        for row in section["rows"]:
            if row["shows"] not in card.SHOWN:
                yield card.ROWS, row["id"], f'shows "{row["shows"]}" is none of {", ".join(card.SHOWN)}'
            if engine.answer(Request(**row["ask"], elevation_m=HIGH_M)).figure(row["figure"]) is None:
                yield card.ROWS, row["id"], f'its question has no figure "{row["figure"]}"'
