"""Small words that steer the answer: how deep, which units, lid on or off, beans soaked or not."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from assistant.reading.spans import Measure
from assistant.understanding.cue_words import cues, said
from rules.model import Units

DEPTHS = {1: cues("depth", "brief"), 3: cues("depth", "full")}
LIDS = {False: cues("lid", "off"), True: cues("lid", "on")}
SOAKS = {False: cues("soak", "off"), True: cues("soak", "on")}
SYSTEMS: dict[Units, tuple[str, ...]] = {"metric": cues("units", "metric"), "us": cues("units", "us")}
METRIC_UNITS = ("m", "km", "degC", "kg", "g", "ml", "l", "dl", "hPa", "kPa", "cm", "mm")
# what cookers and gauges are marked in everywhere
EVERYWHERE = {"psi"}
US_UNITS = ("ft", "mi", "degF", "lb", "oz", "inHg", "qt", "gal", "pt", "in", "fl_oz", "psi")


# the letter of a scale, said alone: C?
SCALES: dict[str, Units] = {"c": "metric", "f": "us"}


def depth(words: Sequence[str]) -> int | None:
    """How deep the asker wants it: 1, 3, or None where nothing is said."""
    return next((level for level, phrases in DEPTHS.items() if said(words, phrases)), None)


def covered(words: Sequence[str]) -> bool | None:
    """Whether the lid is on; None where nothing is said, or both are compared."""
    heard = [lid for lid, phrases in LIDS.items() if said(words, phrases)]
    return heard[0] if len(heard) == 1 and "or" not in words else None


def soaked(words: Sequence[str]) -> bool | None:
    """Whether dry beans were soaked before; None where nothing is said. "Not soaked" holds "soaked" as well."""
    return next((soak for soak, phrases in SOAKS.items() if said(words, phrases)), None)


def system(words: Sequence[str]) -> Units | None:
    """The unit system that is asked for by name; of two the one it is wanted in: in Celsius, it has no Fahrenheit."""
    heard: list[Units] = [system for system, phrases in SYSTEMS.items() if said(words, phrases)]
    if len(heard) > 1:
        heard = [system for system in heard if said(words, tuple(f"in {phrase}" for phrase in SYSTEMS[system]))]
    letters = [word for word in words if word.isalpha()]
    alone = SCALES.get(letters[0]) if len(letters) == 1 else None
    return heard[0] if len(heard) == 1 else alone


def spoken_system(words: Sequence[str], measures: Iterable[Measure]) -> Units | None:
    """The system asked for by name, or metric where all that was measured is metric."""
    units = {m.unit for m in measures}
    metric = units.intersection(METRIC_UNITS) and not (units - EVERYWHERE).intersection(US_UNITS)
    return system(words) or ("metric" if metric else None)
