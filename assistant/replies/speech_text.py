"""A reply line made fit to be read aloud: symbols become words."""

from __future__ import annotations

import re

_WORDS = (
    (r"\s*\([^()]*\)", ""),
    (r"(\d)–(\d)", r"\1 to \2"),
    (r"(\d)½", r"\1 and a half"),
    (r"(\d)¼", r"\1 and a quarter"),
    (r"(\d)¾", r"\1 and three quarters"),
    ("½", "half"),
    ("¼", "a quarter"),
    ("¾", "three quarters"),
    ("⅛", "an eighth"),
    ("⅜", "three eighths"),
    ("⅝", "five eighths"),
    ("⅞", "seven eighths"),
    ("⅓", "a third"),
    ("⅔", "two thirds"),
    (r"°F\b", "degrees Fahrenheit"),
    (r"°C\b", "degrees Celsius"),
    (r"\bft\b", "feet"),
    (r"(\d) m\b", r"\1 metres"),
    (r"\b1 h\b", "1 hour"),
    (r"(\d) h\b", r"\1 hours"),
    (r"\b1 min\b", "1 minute"),
    (r"(\d|half) min\b", r"\1 minutes"),
    (r"(\d) s\b", r"\1 seconds"),
    (r"\bpsi\b", "p s i"),
    (r"\btsp\b", "teaspoons"),
    (r"\btbsp\b", "tablespoons"),
    (r" %", " percent"),
    (r"×", "times "),
    (r"\s+−(\d)", r" minus \1"),
)
_RULES = tuple((re.compile(pattern), word) for pattern, word in _WORDS)


def speakable(line: str) -> str:
    """Symbols and units as words; the second unit system in brackets is left out.

    >>> speakable("Water boils at 199 °F (93 °C) at 7,000 ft (2,130 m).")
    'Water boils at 199 degrees Fahrenheit at 7,000 feet.'
    """
    for pattern, word in _RULES:
        line = pattern.sub(word, line)
    return " ".join(line.split())
