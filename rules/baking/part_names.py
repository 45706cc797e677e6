"""What the parts of a recipe are called, in headings, in a method and beside a line: data/lexicon/recipe_parts.toml."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache, lru_cache
from typing import Any

from rules.recipes.phrases import pattern
from rules.tables import read_toml

WORDS = "lexicon/recipe_parts.toml"
_PLURAL = r"(?:e?s)?"


@dataclass(frozen=True, slots=True)
class PartKind:
    """A kind of part. baked: its formula is converted; the others are left as they are written."""

    id: str
    baked: bool


@cache
def _file() -> dict[str, Any]:
    return read_toml(WORDS)


def listed(section: str, key: str) -> tuple[str, ...]:
    """A list of words of the file."""
    return tuple(_file()[section][key])


@cache
def kinds() -> dict[str, PartKind]:
    """Every word of the file with the kind of part that it names."""
    return {w: PartKind(row["id"], bool(row.get("baked"))) for row in _file()["part"] for w in row["words"]}


def any_of(words: tuple[str, ...]) -> str:
    """A pattern for any of these words, the longest first; for none where there are none."""
    ordered = sorted(words, key=len, reverse=True)
    return "(?:" + "|".join(re.escape(word).replace(r"\ ", r"[\s-]+") for word in ordered) + ")" if words else "(?!)"


@cache
def _names() -> re.Pattern[str]:
    return re.compile(rf"(?<![\w-])(?P<name>{any_of(tuple(kinds()))}){_PLURAL}(?![\w-])", re.I)


def _kind(name: str) -> PartKind:
    return kinds()[re.sub(r"[\s-]+", " ", name.lower())] if name.lower() not in kinds() else kinds()[name.lower()]


@lru_cache(maxsize=2048)
def named(text: str) -> PartKind | None:
    """The part that a heading names: by its last word, before what is only with it.

    >>> named("cream cheese pound cake").id, named("cake filling").id, named("cake with lemon glaze").id
    ('batter', 'filling', 'batter')
    >>> named("ingredients") is None
    True
    """
    head = re.split(rf"\s(?:{any_of(listed('names', 'before'))})\s", f" {text} ", maxsplit=1, flags=re.I)[0]
    found = list(_names().finditer(head)) or list(_names().finditer(text))
    return _kind(found[-1]["name"]) if found else None


def is_left(component: str) -> bool:
    """Whether a part of this name is left as it is written.

    >>> is_left("lemon glaze"), is_left("sponge"), is_left("")
    (True, False, False)
    """
    kind = named(component)
    return kind is not None and not kind.baked


def first_left(text: str) -> PartKind | None:
    """The first part that a text names, or is busy with ("frost the cake"), of those that are left; None for none."""
    found = [(m.start(), _kind(m["name"])) for m in _names().finditer(text)]
    for part_id, verbs in _file()["method"]["uses"].items():
        busy = rf"(?<![\w-]){any_of(tuple(verbs))}(?=\s+(?:the|it|them|over|on|with|each|one|top|cooled|cold)\b)"
        found += [(m.start(), PartKind(part_id, baked=False)) for m in re.finditer(busy, text, re.I)]
    left = sorted((at, kind.id) for at, kind in found if not kind.baked)
    return PartKind(left[0][1], baked=False) if left else None


@cache
def _announcing() -> tuple[re.Pattern[str], ...]:
    part = rf"(?P<name>{any_of(tuple(kinds()))}){_PLURAL}"
    # no noun follows that makes another thing of it: "cream cheese", "cake pan"
    name = rf"{part}(?![\w-])(?=\s*(?:[,.:;()!–—-]|$)|\s+{any_of(listed('method', 'follows'))}(?![\w-]))"
    articles = rf"(?:{any_of(listed('method', 'articles'))}\s+)?"
    between = r"(?:(?!and\b|into\b|to\b)[\w'’&-]+\s+){0,3}?"
    strong = rf"(?<![\w-]){any_of(listed('method', 'openers'))}\s+{articles}{between}{name}"
    head = rf"^[\W\d]*(?:the\s+)?(?:[\w'’-]+\s+){{0,3}}?{part}\s*(?:[:–—]|\s-\s|is\b|are\b)"
    verbs = rf"(?<![\w-]){any_of(listed('method', 'verbs'))}\s+{articles}{between}{name}"
    return tuple(re.compile(p, re.I) for p in (strong, head, verbs))


@cache
def _kept_back() -> re.Pattern[str]:
    return re.compile(rf"(?<![\w-]){any_of(listed('method', 'keeps'))}(?![\w-])", re.I)


@dataclass(frozen=True, slots=True)
class Announced:
    """A part that a sentence announces. plainly: by more than the verb that works on it."""

    kind: PartKind
    plainly: bool


def announced(sentence: str) -> Announced | None:
    """The part that a sentence of the method begins to make.

    >>> announced("For the frosting, beat the butter.").kind.id, announced("Icing - melt the butter.").kind.id
    ('frosting', 'frosting')
    >>> announced("Pour the filling over the crust.") is None, announced("Save 2 tbsp for the topping.") is None
    (True, True)
    """
    strong, head, verbs = _announcing()
    for way in (head, strong, verbs):
        found = way.search(sentence)
        if found is None or _kept_back().search(sentence[: found.start()]):
            continue
        kind = _kind(found["name"])
        if way is not verbs or not kind.baked:
            return Announced(kind, way is not verbs)
    return None


@cache
def _heading() -> re.Pattern[str]:
    names = any_of(listed("lines", "headings"))
    return re.compile(rf"\W*(?:for\s+(?:the\s+)?(?:[\w'’-]+\s+){{0,3}}?|the\s+)?(?P<name>{names}){_PLURAL}\W*", re.I)


def heads(line: str) -> PartKind | None:
    """The part that a line of the list opens where it is no more than the part's name.

    >>> heads("Glaze").id, heads("For the lemon filling:").id, heads("1 cup icing") is None
    ('glaze', 'filling', True)
    """
    found = _heading().fullmatch(line)
    return _kind(found["name"]) if found else None


def laid(sentence: str) -> tuple[str, int] | None:
    """The part of what a sentence lays on or into the batter that is not baked yet, and where it says so; or None.

    >>> laid("Sprinkle over the batter."), laid("Spread the figs over the dough."), laid("Fold into the batter.")
    (('topping', 9), ('filling', 16), None)
    """
    for part, phrases in _file()["method"]["laid"].items():
        if found := pattern(tuple(phrases)).search(sentence):
            return part, found.start()
    return None


@cache
def _tied() -> re.Pattern[str]:
    unless = "".join(rf"(?<!\b{re.escape(word)}\s)" for word in listed("lines", "unless"))
    ties = any_of(listed("lines", "ties"))
    return re.compile(
        rf"{unless}(?<![\w-]){ties}\s+(?:the\s+)?(?:[\w'’-]+\s+){{0,2}}?(?P<name>{any_of(tuple(kinds()))}){_PLURAL}\s*(?:$|[,.;)(])",
        re.I,
    )


def tied(line: str) -> PartKind | None:
    """The part that an ingredient line says it is for.

    >>> tied("50 g caster sugar, for the custard").id, tied("2 cups flour") is None
    ('custard', True)
    """
    found = _tied().search(line)
    return _kind(found["name"]) if found else None


@cache
def _apart() -> re.Pattern[str]:
    unless = "".join(rf"(?<!\b{re.escape(word)}\s)" for word in listed("lines", "unless"))
    return re.compile(rf"{unless}(?<![\w-]){any_of(listed('lines', 'apart'))}(?![\w-])", re.I)


def is_apart(line: str) -> bool:
    """Whether a line is for the board, the pan or the table, and so in no formula.

    >>> is_apart("icing sugar, for dusting"), is_apart("2 cups flour, plus more for dusting")
    (True, False)
    """
    return bool(_apart().search(line))
