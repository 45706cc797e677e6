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
_OVEN = r"(?P<oven>1[2-9]0|2[0-9][05]|1[2-9]5|3[0-9][05]|4[0-9][05])\s*(?:°\s*)?(?:degrees?|deg)?\s*(?P<scale>[cf]\b)?"
_BEGINS = r"(?:(?<=^)|(?<=[,;.:\n]))(?P<gap>\s*)(?:then\s+|and\s+)*"
_AT = r"(?:the\s+)?(?P<named>oven)(?:\s+at|\s+to|\s+is|\s*:|\s*=)?\s*"
_MINUTES = r"min|mins|minutes|minute|m\b|'"
_REST = r"(?P<rest>(?:\s+in\b[^.;\n]*)?)(?=\s*(?:[.;\n]|,\s*\d|$))"
# an oven and a time: 350 for 45; 180C/25 min; oven 400, 20 min; 375 F 1 h
_BAKED = re.compile(
    rf"{_BEGINS}(?:{_AT}|at\s+)?{_OVEN}"
    rf"(?:\s*(?:for|x|,|/|@)\s*(?P<time>\d{{1,3}})(?:\s*(?:{_MINUTES}|(?P<hours>h|hr|hrs|hour|hours)\b))?"
    rf"|\s+(?P<time_too>\d{{1,3}})\s*(?:{_MINUTES}|(?P<hours_too>h|hr|hrs|hour|hours)\b)){_REST}",
    re.I,
)
# the time first: 25 min at 180C
_TURNED = re.compile(
    rf"{_BEGINS}(?P<time>\d{{1,3}})\s*(?:{_MINUTES}|(?P<hours>h|hr|hrs|hour|hours)\b)\s*(?:,|/|@|at|in)?\s*"
    rf"(?:{_AT})?{_OVEN}{_REST}",
    re.I,
)
# an oven and nothing else: oven 350
_SET = re.compile(rf"{_BEGINS}{_AT}{_OVEN}(?=\s*(?:[.;\n]|,|$))", re.I)


def spelled_out(text: str) -> str:
    """A text with its shorthand written out.

    >>> spelled_out("stick of butter, 2 eggs. 350 for 45 in a 9x9")
    '1 stick butter, 2 eggs. bake at 350 F for 45 minutes in a 9x9'
    >>> spelled_out("2 eggs, oven 400, 20 min"), spelled_out("180C/1 h"), spelled_out("25 min at 375 F")
    ('2 eggs, bake at 400 F for 20 minutes', 'bake at 180 C for 1 hours', 'bake at 375 F for 25 minutes')
    >>> spelled_out("200 g each of butter, sugar and flour")
    '200 g butter, 200 g sugar, 200 g flour'
    """
    text = _STICK.sub(lambda m: f"{m['gap']}{'1/2' if m['half'] else '1'} stick ", text)
    text = _EACH.sub(_one_by_one, text)
    for pattern in (_BAKED, _TURNED, _SET):
        text = pattern.sub(_step, text)
    return text


def _step(found: re.Match[str]) -> str:
    """An oven with its time, where one is told, as a step."""
    said, oven = found.groupdict(), int(found["oven"])
    scale = (found["scale"] or ("C" if oven <= HOTTEST_C else "F")).upper()
    time, hours = (said.get(key) or said.get(f"{key}_too") for key in ("time", "hours"))
    lasts = f" for {time} {'hours' if hours else 'minutes'}" if time else ""
    return f"{found['gap']}bake at {oven} {scale}{lasts}{said.get('rest') or ''}"


def _one_by_one(found: re.Match[str]) -> str:
    """An amount of each of several, one line each; a name that stands short for its ingredient is written out."""
    short = dict(pair.split(": ") for pair in tables.read_toml(WORDS)["short_names"])
    names = (name.strip() for name in re.split(r",|\band\b", found["names"]))
    return ", ".join(f"{found['amount'].strip()} {short.get(name.lower(), name)}" for name in names if name)
