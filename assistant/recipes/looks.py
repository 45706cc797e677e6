"""The headings of a recipe, and how a line of one looks: measured, like a step, the name of a part."""

from __future__ import annotations

import re
from functools import cache
from typing import Literal

from assistant.recipes.lines import any_of, read_line
from assistant.recipes.times import TERSE
from assistant.recipes.yields import read_yields
from rules import tables
from rules.recipe import IngredientLine

Section = Literal["head", "ingredients", "steps", "notes"]
LONGEST_HEADING = 80
_FLAGS = re.IGNORECASE
_FOR_PART = re.compile(r"^(?:for\s+(?:the\s+)?|the\s+)?(?P<name>[^:.!?\d]{2,50}?)\s*:?$", _FLAGS)
SENTENCE_END = re.compile(r"[.!?]\s*$")
_SHORTENED = re.compile(
    r"\b(?:[a-z]|tsps?|tbsps?|tbs|tb|oz|lbs?|pts?|qts?|gal|pkgs?|env|doz|med|lg|sm|br|cinn|van|choc|conf|approx|mins?|hrs?)"
    r"\.(?=\s|$)",
    _FLAGS,
)


@cache
def _headings() -> dict[str, Section]:
    listed = tables.read_toml("lexicon/recipe_words.toml")["headings"]
    sections: dict[str, Section] = {"ingredients": "ingredients", "steps": "steps", "notes": "notes"}
    return {word: section for key, section in sections.items() for word in listed[key]}


def heading(line: str) -> tuple[Section, str] | None:
    """The section a heading opens, and what stands behind its colon on the same line."""
    word, colon, rest = line.partition(":")
    if len(word) > LONGEST_HEADING:
        return None
    name = re.sub(r"\s*\(.*?\)\s*$", "", word).strip().lower()
    section = _headings().get(name)
    if section is None or (rest.strip() and not colon):
        return None
    return section, rest.strip()


@cache
def _step_start() -> re.Pattern[str]:
    return re.compile(rf"^{any_of('steps', 'verbs')}", _FLAGS)


def like_step(line: str) -> bool:
    """Whether a line reads as a sentence of a method rather than as an ingredient."""
    verb = _step_start().match(line)
    sentences = len(re.findall(r"[a-z)][.!?](?:\s|$)", _SHORTENED.sub("", line), _FLAGS))
    if verb and not sentences and (measured(line, known=True) or _unmeasured().search(line)) and len(line.split()) < 9:
        return False
    return (
        bool(TERSE.match(line))
        or bool(verb and (len(line.split()) > 3 or sentences))
        or sentences > 1
        or (sentences > 0 and len(line.split()) > 9)
    )


@cache
def _unmeasured() -> re.Pattern[str]:
    return re.compile(rf"(?<!\w){any_of('lines', 'unmeasured')}", _FLAGS)


def as_ingredient(line: str, component: str, sure: bool) -> IngredientLine | None:
    """The line as an ingredient; sure: it stands under a heading that says so."""
    read = read_line(line, component)
    if read is None or ("|" in line and read.amount is None):
        return None
    if read.amount is not None:
        return read if sure or not like_step(line) else None
    if read.known or (sure and not like_step(line)):
        return read
    return read if _unmeasured().search(line) and not like_step(line) and len(line.split()) < 9 else None


def part_opened(line: str, following: str | None, section: Section) -> str | None:
    """The sub-recipe that a line opens ("For the frosting:"), or None."""
    if len(line) > 60 or SENTENCE_END.search(line) or following is None:
        return None
    found = _FOR_PART.match(line)
    explicit = line.endswith(":") or line.lower().startswith("for the ")
    explicit |= section != "steps" and names_part(line)
    shouted = line.isupper() and len(line) > 3 and section != "head"
    if not found or not (explicit or shouted) or read_yields(line) or "," in found["name"]:
        return None
    return found["name"].strip().lower()


def inline_part(line: str) -> tuple[str, list[str]] | None:
    """A sub-recipe told on one line, with its ingredients: "Crust: 2 cups crumbs, 6 tbsp butter, 1/4 cup sugar"."""
    name, colon, rest = line.partition(":")
    if not colon or not names_part(name.strip()) or not all(map(measured, listed := run_together(rest.strip()))):
        return None
    return name.strip().lower(), listed


def measured(line: str, known: bool = False) -> bool:
    """Whether a line has a measure, and, where that is asked, names an ingredient that we know."""
    read = read_line(line)
    return read is not None and read.amount is not None and (read.known or not known)


def names_part(line: str) -> bool:
    """Whether a line says no more than "Frosting" or "Lemon glaze"."""
    return len(line.split()) <= 3 and bool(re.search(rf"\b{any_of('headings', 'parts')}$", line, _FLAGS))


def run_together(line: str) -> list[str]:
    """The ingredients of a line that lists several, each with its measure: "1 cup flour, 2 eggs, 1 tsp salt"."""
    parts = re.split(r",\s+(?=[\d.¼½¾⅐-⅞]|(?:an?|one)\s)", line)
    return parts if len(parts) > 2 and all(measured(part) for part in parts) else [line]
