"""The shorthand of cooks in a recipe that is told -> the same in the words that lines are read by."""

from __future__ import annotations

import re

from rules import tables

# up to here a bare oven figure is in degrees Celsius; ovens in Fahrenheit begin above
HOTTEST_C = 260
WORDS = "lexicon/recipe_talk.toml"
_STICK = re.compile(
    r"(?:(?<=^)|(?<=[,;.:+&\n])|(?<=\band))(?P<gap>\s*)(?P<half>half )?(?:a )?stick(?: of)? (?=[a-z])", re.I
)
_EACH = re.compile(
    r"(?P<amount>\d+(?:\.\d+)?\s*(?:g|kg|oz|ml|cups?|tsp|tbsp)?)\s+each(?:\s+of)?[: ]\s*"
    r"(?P<names>[a-z][a-z -]*(?:,\s*[a-z][a-z -]*)*(?:,?\s+and\s+[a-z][a-z -]*))",
    re.I,
)
_BAKED = re.compile(
    r"(?:(?<=^)|(?<=[,;.:\n]))(?P<gap>\s*)(?:then\s+|and\s+|at\s+)*(?P<oven>1[2-9]0|2[0-9][05]|1[2-9]5|3[0-9][05]|4[0-9][05])"
    r"\s*(?P<scale>[cf]\b)?\s*(?:for|x|,)\s*(?P<time>\d{1,3})(?:\s*(?:min|mins|minutes))?"
    r"(?P<rest>(?:\s+in\b[^.;\n]*)?)(?=\s*(?:[.;\n]|,\s*\d|$))",
    re.I,
)


def spelled_out(text: str) -> str:
    """A text with its shorthand written out.

    >>> spelled_out("stick of butter, 2 eggs. 350 for 45 in a 9x9")
    '1 stick butter, 2 eggs. bake at 350 F for 45 minutes in a 9x9'
    >>> spelled_out("200 g each of butter, sugar and flour")
    '200 g butter, 200 g sugar, 200 g flour'
    """
    text = _STICK.sub(lambda m: f"{m['gap']}{'1/2' if m['half'] else '1'} stick ", text)
    return _BAKED.sub(_step, _EACH.sub(_one_by_one, text))


def _step(found: re.Match[str]) -> str:
    oven = int(found["oven"])
    scale = (found["scale"] or ("C" if oven <= HOTTEST_C else "F")).upper()
    return f"{found['gap']}bake at {oven} {scale} for {found['time']} minutes{found['rest']}"


def _one_by_one(found: re.Match[str]) -> str:
    """An amount of each of several, one line each; a name that stands short for its ingredient is written out."""
    short = dict(pair.split(": ") for pair in tables.read_toml(WORDS)["short_names"])
    names = (name.strip() for name in re.split(r",|\band\b", found["names"]))
    return ", ".join(f"{found['amount'].strip()} {short.get(name.lower(), name)}" for name in names if name)
