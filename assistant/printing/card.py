"""The card for a kitchen's wall: what stands on it, row by row, worked out by the rules for its elevation."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

from assistant.replies.quantities import Say, duration
from assistant.replies.sentences import worded
from rules import engine, tables
from rules.baking.rounding import number
from rules.model import Answer, Figure, Request, Units
from rules.said import Said, elevation, sentences

ROWS = "printing/card.toml"
# A change smaller than this is none on a wall [percent]
LEAST_PERCENT = 1.0
MOST_SOURCES = 6
WORDING = "printing/card"
say = sentences("printing/card")


@dataclass(frozen=True, slots=True)
class Row:
    """A line of the card: what it is, its figure, and the same in the other unit or what it was at sea level."""

    label: str
    value: str
    aside: str = ""


@dataclass(frozen=True, slots=True)
class Section:
    """A block of the card."""

    id: str
    title: str
    rows: tuple[Row, ...]


@dataclass(frozen=True, slots=True)
class Card:
    """A card. elevation_m above sea level [m]; boils_c: where water boils there [degC]."""

    name: str
    elevation_m: float
    place: str
    boils: str
    boils_c: float
    sections: tuple[Section, ...]
    foot: str
    units: Units


def card_for(name: str, elevation_m: float, units: Units = "us") -> Card:
    """The card of a kitchen.

    name: what it is called, or ""; elevation_m: above sea level [m], -430 to 5500

    >>> card_for("Timberfold Lodge", 2133.6).sections[0].rows[0]
    Row(label='A rolling boil', value='199 °F', aside='93 °C')
    """
    boil = _answer((("topic", "boiling_point"),), elevation_m, units)
    boils = boil.figures[0]
    sections = tuple(_section(row, elevation_m, units) for row in tables.read_toml(ROWS)["section"])
    place = worded(say("at", elevation=elevation(elevation_m)), units)
    return Card(
        name=name or place,
        elevation_m=elevation_m,
        place=place,
        boils=worded(say("boils", temp=Say(units).temp(boils.value)), units),
        boils_c=boils.value,
        sections=tuple(section for section in sections if section.rows),
        foot=worded(say("foot", sources=_sources(elevation_m, units)), units),
        units=units,
    )


def _section(row: dict[str, Any], elevation_m: float, units: Units) -> Section:
    lines = (_row(line, elevation_m, units) for line in row["rows"])
    return Section(
        row["id"], worded(Said(WORDING, f"section-{row['id']}"), units), tuple(line for line in lines if line)
    )


def _row(line: dict[str, Any], elevation_m: float, units: Units) -> Row | None:
    """A row with its figure; None where nothing is known of it here."""
    answer = _answer(tuple(sorted(line["ask"].items())), elevation_m, units)
    figure = answer.figure(line["figure"])
    if figure is None:
        return None
    value, _, aside = SHOWN[line["shows"]](figure, units).partition(" (")
    return Row(worded(Said(WORDING, f"row-{line['id']}"), units), value, aside.removesuffix(")"))


# the rows of a card or two; there is no end of elevations
@lru_cache(maxsize=256)
def _answer(ask: tuple[tuple[str, Any], ...], elevation_m: float, units: Units) -> Answer:
    return engine.answer(Request(**dict(ask), elevation_m=elevation_m, units=units))


def _sources(elevation_m: float, units: Units) -> str:
    """The publications behind the rows, those of most rows first."""
    counted: dict[str, int] = {}
    for section in tables.read_toml(ROWS)["section"]:
        for line in section["rows"]:
            for source in _said_of(_answer(tuple(sorted(line["ask"].items())), elevation_m, units)):
                counted[source] = counted.get(source, 0) + 1
    first = sorted(counted, key=lambda source: (-counted[source], source))[:MOST_SOURCES]
    return "; ".join(tables.sources()[source].short for source in first)


def _said_of(answer: Answer) -> Iterator[str]:
    yield from dict.fromkeys(source for because in answer.because for source in because.sources)


def _temp(figure: Figure, units: Units) -> str:
    return Say(units).temp(figure.value)


def _span(figure: Figure, units: Units) -> str:
    low, high = figure.low or figure.value, figure.high or figure.value
    return Say(units).temp_span(low, high)


def _times(figure: Figure, units: Units) -> str:
    here, sea = duration(figure.value), duration(figure.sea_level or figure.value)
    return here if here == sea else f"{here} ({sea})"


def _percent(figure: Figure, units: Units) -> str:
    if abs(figure.value) < LEAST_PERCENT:
        return worded(say("as-it-is"), units)
    size = number(abs(figure.value), 0)
    return worded(say("more", percent=size) if figure.value > 0 else say("less", percent=size), units)


def _shift(figure: Figure, units: Units) -> str:
    if not round(figure.value):
        return worded(say("as-it-is"), units)
    shift, _, other = Say(units).temp_drop(figure.value).partition(" (")
    return f"{worded(say('hotter', shift=shift), units)} ({other}"


def _gauge(figure: Figure, units: Units) -> str:
    return f"{number(figure.value, 1)} psi"


SHOWN = {"temp": _temp, "span": _span, "times": _times, "percent": _percent, "shift": _shift, "gauge": _gauge}
