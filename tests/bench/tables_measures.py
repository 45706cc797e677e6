"""Measures in kitchen English: our reader beside quantulum3, on measures.csv."""

from __future__ import annotations

import csv
import math
from collections.abc import Callable
from pathlib import Path
from types import ModuleType

from tables_shown import cpu_s, library, show

from assistant.reading.reader import hear

PHRASES = Path(__file__).with_name("measures.csv")
ROUNDS, NEAR = 5, 1e-3
# unit -> its dimension, how many of the first of the dimension it is, and where its zero lies; source: NIST SP 811
UNITS: dict[str, tuple[str, float, float]] = {
    "min": ("time", 1.0, 0.0),
    "degC": ("temperature", 1.0, 0.0), "degF": ("temperature", 5 / 9, -160 / 9), "K": ("temperature", 1.0, -273.15),
    "m": ("length", 1.0, 0.0), "km": ("length", 1000.0, 0.0), "ft": ("length", 0.3048, 0.0),
    "mi": ("length", 1609.344, 0.0),
    "Pa": ("pressure", 1.0, 0.0), "hPa": ("pressure", 100.0, 0.0), "mbar": ("pressure", 100.0, 0.0),
    "kPa": ("pressure", 1000.0, 0.0), "bar": ("pressure", 1e5, 0.0), "atm": ("pressure", 101325.0, 0.0),
    "psi": ("pressure", 6894.757, 0.0), "inHg": ("pressure", 3386.389, 0.0), "mmHg": ("pressure", 133.3224, 0.0),
    "g": ("mass", 1.0, 0.0), "kg": ("mass", 1000.0, 0.0), "oz": ("mass", 28.349523, 0.0),
    "lb": ("mass", 453.59237, 0.0),
    "ml": ("volume", 1.0, 0.0), "cl": ("volume", 10.0, 0.0), "dl": ("volume", 100.0, 0.0), "l": ("volume", 1000.0, 0.0),
    "tsp": ("volume", 4.92892, 0.0), "tbsp": ("volume", 14.78676, 0.0), "floz": ("volume", 29.57353, 0.0),
    "cup": ("volume", 236.588, 0.0), "pt": ("volume", 473.176, 0.0), "qt": ("volume", 946.353, 0.0),
    "gal": ("volume", 3785.41, 0.0),
}  # fmt: skip
# what quantulum3 calls them; it knows seconds, hours and days apart
NAMES = {
    "degree Celsius": "degC", "degree fahrenheit": "degF", "degree Fahrenheit": "degF", "kelvin": "K", "metre": "m",
    "kilometre": "km", "foot": "ft", "mile": "mi", "pascal": "Pa", "hectopascal": "hPa", "millibar": "mbar",
    "kilopascal": "kPa", "bar": "bar", "atmosphere": "atm", "standard atmosphere": "atm",
    "pound-force per square inch": "psi",
    "pound per square inch": "psi", "pound force per square inch": "psi", "inch of mercury": "inHg",
    "inch mercury": "inHg",
    "millimetre of mercury": "mmHg", "millimetre mercury": "mmHg", "gram": "g", "kilogram": "kg", "ounce": "oz",
    "pound-mass": "lb", "pound": "lb", "millilitre": "ml", "centilitre": "cl", "decilitre": "dl", "litre": "l",
    "teaspoon": "tsp", "tablespoon": "tbsp", "fluid ounce": "floz", "cup": "cup", "pint": "pt", "quart": "qt",
    "gallon": "gal", "minute": "min",
}  # fmt: skip
MINUTES = {"second": 1 / 60, "hour": 60.0, "day": 1440.0, "week": 10080.0}
# without its classifier it takes units of one sign for those of other trades; in a kitchen one puts that right
MINUTES |= {"second of arc": 1 / 60, "minute of arc": 1.0}
NAMES |= {"farad": "degF", "coulomb": "degC", "degree angle farad": "degF", "degree angle coulomb": "degC"}
Read = tuple[str, float, float]


def phrases() -> list[tuple[str, Read]]:
    """Every phrase with the dimension and the two ends of its measure."""
    lines = [line for line in PHRASES.read_text(encoding="utf-8").splitlines() if not line.startswith("#")]
    rows = csv.DictReader(lines)
    return [(row["phrase"], _in_si(row["unit"], float(row["low"]), float(row["high"]))) for row in rows]


def _in_si(unit: str, low: float, high: float) -> Read:
    dimension, factor, zero = UNITS[unit]
    return dimension, low * factor + zero, high * factor + zero


def ours(text: str) -> list[Read]:
    """What our reader hears, which would else remember what it has read."""
    hear.cache_clear()
    return [(m.kind, m.low, m.high) for m in hear(text).measures]


def theirs(quantulum: ModuleType) -> Callable[[str], list[Read]]:
    """What quantulum3 hears; the two ends of a range are its value with its uncertainty to either side."""

    # its classifier was stored by another scikit-learn than the one installed, and only tells units of one sign apart
    library("quantulum3.classifier", "quantulum3").USE_CLF = False  # type: ignore[union-attr]

    def read(text: str) -> list[Read]:
        found = []
        for quantity in quantulum.parse(text):
            low, high = (quantity.value + side * (quantity.uncertainty or 0.0) for side in (-1, 1))
            name = quantity.unit.name
            if name in MINUTES:
                found.append(("time", low * MINUTES[name], high * MINUTES[name]))
            elif name in NAMES:
                found.append(_in_si(NAMES[name], low, high))
            else:
                found.append((name, low, high))
        return found

    return read


def is_right(heard: list[Read], meant: Read) -> bool:
    """Whether exactly the one measure was heard, to a part in a thousand."""
    return (
        len(heard) == 1
        and heard[0][0] == meant[0]
        and all(math.isclose(a, b, rel_tol=NEAR, abs_tol=0.01) for a, b in zip(heard[0][1:], meant[1:], strict=True))
    )


def missed(read: Callable[[str], list[Read]]) -> list[tuple[str, Read, list[Read]]]:
    """The phrases that are read wrong, with what was meant and what was read."""
    return [(text, meant, heard) for text, meant in phrases() if not is_right(heard := read(text), meant)]


def table(*, misses: bool = False) -> None:
    """Print the table, and on request every phrase of ours that is missed."""
    texts = [text for text, _ in phrases()]
    readers: dict[str, Callable[[str], list[Read]]] = {"simmerline, assistant/reading": ours}
    if parser := library("quantulum3.parser", "quantulum3"):
        readers["quantulum3"] = theirs(parser)
    took = {name: cpu_s(lambda read=read: [read(text) for text in texts], ROUNDS) for name, read in readers.items()}
    wrong = {name: missed(read) for name, read in readers.items()}
    first = next(iter(took.values()))
    rows = [
        (
            name,
            f"{len(texts) - len(wrong[name])} of {len(texts)}",
            f"{took[name] / len(texts) * 1e6:.0f} us",
            f"{took[name] / first:.1f}",
        )
        for name in readers
    ]
    show(f"Measures, {len(texts)} phrases", ("reader", "read right", "a phrase", "times our time"), rows)
    if misses:
        for name, lines in wrong.items():
            for text, meant, heard in lines:
                print(f"{name}: {text!r}: {meant} read as {heard}")


if __name__ == "__main__":
    import sys

    table(misses="--misses" in sys.argv)
