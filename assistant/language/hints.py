"""Small words that steer the answer: how deep, which units, lid on or off."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from assistant.language.heard import Measure
from rules.model import Units

DEPTHS: dict[int, tuple[str, ...]] = {
    1: (
        "in one line", "one line", "one liner", "in one sentence", "one sentence", "in a sentence", "briefly", "in brief",
        "short answer", "in short", "quick answer", "tldr", "keep it short", "just the number", "short version",
    ),
    3: (
        "equation", "equations", "maths", "math", "mathematics", "show the formula", "show me the formula", "the formulas", "show your work",
        "show the numbers", "derivation", "in depth", "in detail", "in full detail", "full physics", "show the physics", "calculations", "the calculation", "show me the numbers", "with numbers", "with the numbers",
    ),
}  # fmt: skip
LIDS: dict[bool, tuple[str, ...]] = {
    False: ("uncovered", "lid off", "without a lid", "without the lid", "no lid", "without lid", "lidless", "open pot", "open pan", "with the lid off"),
    True: ("covered", "lid on", "with the lid", "with a lid", "lidded", "under a lid", "closed pot", "tightly covered", "cover on", "with lid"),
}  # fmt: skip
SYSTEMS: dict[Units, tuple[str, ...]] = {
    "metric": ("metric", "celsius", "centigrade", "in metres", "in meters", "in grams", "in kilos", "grams and metres", "in c", "in degrees c"),
    "us": ("fahrenheit", "us units", "imperial", "american units", "in feet", "pounds and ounces", "us customary", "in f", "in pounds", "customary units", "in degrees f"),
}  # fmt: skip
METRIC_UNITS = ("m", "km", "degC", "kg", "g", "ml", "l", "dl", "hPa", "kPa", "cm", "mm")
US_UNITS = ("ft", "mi", "degF", "lb", "oz", "inHg", "qt", "gal", "pt", "in", "fl_oz", "psi")


def said(words: Sequence[str], phrases: Iterable[str]) -> bool:
    """Whether one of the phrases stands among the words."""
    text = f" {' '.join(words)} "
    return any(f" {phrase} " in text for phrase in phrases)


def depth(words: Sequence[str]) -> int | None:
    """How deep the asker wants it: 1, 3, or None where nothing is said."""
    return next((level for level, phrases in DEPTHS.items() if said(words, phrases)), None)


def covered(words: Sequence[str]) -> bool | None:
    """Whether the lid is on; None where nothing is said, or both are compared."""
    heard = [lid for lid, phrases in LIDS.items() if said(words, phrases)]
    return heard[0] if len(heard) == 1 else None


def system(words: Sequence[str]) -> Units | None:
    """The unit system that is asked for by name."""
    heard: list[Units] = [system for system, phrases in SYSTEMS.items() if said(words, phrases)]
    return heard[0] if len(heard) == 1 else None


def spoken_system(words: Sequence[str], measures: Iterable[Measure]) -> Units | None:
    """The system asked for by name, or metric where all that was measured is metric."""
    units = {m.unit for m in measures}
    metric = units.intersection(METRIC_UNITS) and not units.intersection(US_UNITS)
    return system(words) or ("metric" if metric else None)
