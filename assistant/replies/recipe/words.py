"""The short phrases of a converted recipe, worded by templates/words/<name>.j2."""

from __future__ import annotations

import re
from functools import cache
from typing import Any

from jinja2 import Environment

from assistant.recipes.scale import numbered
from assistant.replies import template_files
from assistant.replies.quantities import Say, duration, duration_span
from assistant.replies.sentences import worded as text_of
from rules.baking.change import Change
from rules.baking.eggs import sizes
from rules.baking.rounding import QUARTS, fraction, measure, number
from rules.baking.styles import called
from rules.recipe import Amount
from rules.recipes.convert import Converted
from rules.recipes.sheet import sheet
from rules.recipes.steps import TimeTo

_ASIDE = re.compile(r"(\(was [^()]*\))")


@cache
def environment() -> Environment:
    """The templates of a recipe, with what they call."""
    made = template_files.environment("assistant.replies.recipe")
    made.filters |= {"md": markdown_safe, "pieces": pieces, "opening": opening, "number": number}
    return made


def worded(name: str, /, **values: Any) -> str:
    """A phrase on one line."""
    return " ".join(environment().get_template(f"words/{name}.j2").render(**values).split())


def markdown_safe(text: str) -> str:
    """Text in which nothing is taken for Markdown or HTML.

    >>> markdown_safe("Butter | 1 *cup* <b>")
    'Butter \\\\| 1 \\\\*cup\\\\* &lt;b&gt;'
    """
    for sign in "\\`*_{}[]#|~":
        text = text.replace(sign, "\\" + sign)
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")


def part_title(name: str) -> str:
    """The heading of a sub-recipe.

    >>> part_title("frosting"), part_title("to fill"), part_title("")
    ('For the frosting', 'To fill', '')
    """
    return opening(name) if not name or name.startswith(("to ", "for ", "the ")) else f"For the {name}"


def opening(text: str) -> str:
    """The text as it opens a line."""
    return text[:1].upper() + text[1:]


def pieces(text: str) -> list[tuple[str, bool]]:
    """A rewritten step cut at its asides, each piece with whether it is one.

    >>> pieces("Bake 24 minutes (was 30 minutes).")
    [('Bake 24 minutes ', False), ('(was 30 minutes)', True), ('.', False)]
    """
    return [(part, part.startswith("(was ")) for part in _ASIDE.split(text) if part]


def summary(converted: Converted, say: Say) -> tuple[str, ...]:
    """Whence and whither, the style, and for how many."""
    lines = environment().get_template("words/summary.j2").render(
        moved=converted.from_elevation_m != converted.to_elevation_m,
        there=say.elevation(converted.from_elevation_m),
        here=say.elevation(converted.to_elevation_m),
        canning=converted.canning,
        gel=any(c.what == "sugar_temp" and c.way != "same" for c in converted.changes),
        style=converted.style,
        called=text_of(called(converted.style), say.units),
        sure=converted.sure,
        makes=_makes(converted.plain.yields),
        read=_makes(converted.recipe.yields),
    )  # fmt: skip
    return tuple(line.strip() for line in lines.splitlines() if line.strip())


def _makes(yields: Amount | None) -> str:
    """The yield as its line has it; one that begins with its figure as a sentence."""
    line = yields.line if yields else ""
    if yields and yields.unit and line.isdecimal():
        line = f"{line} {numbered(yields.unit, yields.value > 1)}"
    return f"Makes {line}" if line[:1].isdigit() else line


def added(change: Change) -> str:
    """An ingredient that the recipe does not list.

    >>> added(Change(what="liquid", way="more", at="recipe", item="water", to_value=2.0, to_unit="tbsp", rule="",
    ...              because="", sources=()))
    '2 tbsp water'
    """
    return f"{figure(change.to_value, change.to_unit)} {change.item}"


def head(converted: Converted, change: Change) -> str:
    """A change in a few words: what, where, from and to, and its range."""
    time = _time(converted, change) if change.to_unit == "min" else None
    was, now, low, high = (
        figure(value, unit, quarts=change.from_unit in QUARTS)
        for value, unit in (
            (change.from_value, change.from_unit),
            (change.to_value, change.to_unit),
            (change.to_low, change.to_unit),
            (change.to_high, change.to_unit),
        )
    )
    if time:
        was = duration_span(time.mark.low_min, time.mark.high_min)
        now = duration_span(time.to_low_min, time.to_high_min)
    return worded(
        "change", change=change, was=was, now=now, low=low, high=high, place=change.at,
        ranged=change.to_low is not None and change.to_low != change.to_high and change.to_unit not in sizes(),
    )  # fmt: skip


def formula(converted: Converted) -> tuple[str, ...]:
    """The formula against the flour, a few words to each part of it; () for what is no floured bake."""
    found = sheet(converted)
    if found is None:
        return ()
    made = environment().get_template("words/formula.j2").render(sheet=found)
    return tuple(" ".join(line.split()) for line in made.splitlines() if line.strip())


def _time(converted: Converted, change: Change) -> TimeTo | None:
    """The time of a step that a change is about."""
    word, _, place = change.at.partition(" ")
    if word != "step" or change.from_value is None:
        return None
    times = converted.steps[int(place) - 1].times
    return next((t for t in times if (t.mark.low_min + t.mark.high_min) / 2 == change.from_value), None)


def figure(value: float | None, unit: str | None, *, quarts: bool = False) -> str:
    """A figure of a change in the cook's words; "" for none. quarts: whether large amounts of cups are told in them.

    >>> figure(370.0, "degF"), figure(26.0, "min"), figure(4.0, "extra-large"), figure(2.25, "tsp")
    ('370 °F', '26 min', '4 extra-large', '2 1/4 tsp')
    """
    if value is None:
        return ""
    if unit in ("degF", "degC"):
        return f"{number(value, 1)} °{unit[-1]}"
    if unit == "min":
        return duration(value)
    if unit == "psi":
        return f"{number(value, 1)} psi"
    if unit and (unit.split(" plus ")[0] in sizes()):
        return f"{fraction(value)} {unit}"
    return measure(value, unit, quarts=quarts)
