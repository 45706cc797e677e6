"""The headings of a recipe, and how a line of one looks: measured, like a step, the name of a part."""

from __future__ import annotations

import re
from functools import cache, lru_cache
from typing import Literal

from assistant.recipes.lines import any_of, read_line, words
from assistant.recipes.listing import begins_measured, run_together
from assistant.recipes.pantry import find
from assistant.recipes.pasting.marks import Line
from assistant.recipes.steps import read_step
from assistant.recipes.times import TERSE
from assistant.recipes.yields import read_yields
from rules import tables
from rules.recipe import IngredientLine

Section = Literal["head", "ingredients", "steps", "notes"]
LONGEST_HEADING, LONGEST_PART, LONGEST_NAME, LONGEST_TITLE, LONGEST_UNIT = 80, 60, 5, 12, 3
# how many words of a title have capitals, where it could be a step: Brown Butter Cake with Nuts
CAPITALS = 0.7
_FLAGS = re.IGNORECASE
_ASIDE = re.compile(r"\s*\([^()]*\)\s*(?=:?\s*$)")
_ARTICLE = re.compile(r"^(?:the|our|my|an?)\b(?!.*[.!?]\s+\S)", _FLAGS)
# an oven and nothing before it: 180C 25 min
_HEAT_FIRST = re.compile(
    r"^(?:9\d|[1-5]\d\d)\s*[°º]?\s*(?:[cf]\b|degrees\b)|^gas\s+(?:mark\s+)?\d"
    r"|^\d+(?:\s*(?:-|–|to)\s*\d+)?\s*(?:min(?:ute)?s?|hours?|hrs?)\b",
    _FLAGS,
)
_TIME = re.compile(r"\d\s*(?:min(?:ute)?s?|hours?|hrs?)\b", _FLAGS)
_FIGURE = re.compile(r"(?=[\d½¼¾⅐-⅞])")
# the amount behind its item, and no sign between: Lime 1, Onion 1 small
_TURNED = re.compile(r"(?P<name>[A-Za-z][A-Za-z -]{1,30}?)\s+(?P<amount>\d{1,2}(?:[./]\d)?(?:\s+[a-z]{1,6})?)")
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
    if len(word) > LONGEST_HEADING or (rest.strip() and not colon):
        return None
    name = " ".join(re.sub(r"\s*\(.*?\)\s*$", "", word).strip(" .*-–—").lower().split())
    section = _headings().get(name)
    if section is None and (of_part := _of_part().match(word.strip())) and of_part["head"]:
        section = _headings().get(" ".join(of_part["head"].lower().split()))
        section = section if section == "ingredients" or (section == "steps" and names_part(of_part["part"])) else None
    return (section, rest.strip()) if section else None


@cache
def _step_start() -> re.Pattern[str]:
    return re.compile(any_of("steps", "verbs"), _FLAGS)


@lru_cache(maxsize=4096)
def like_step(line: str) -> bool:
    """Whether a line reads as a sentence of a method rather than as an ingredient."""
    led = _led_in().match(line)
    verb = _step_start().match(line)
    if led and (spoken := _step_start().match(line, led.end())) and spoken[0].lower() not in _no_deeds():
        verb = spoken
    sentences = len(re.findall(r"[a-z)][.!?](?:\s|$)", _SHORTENED.sub("", line), _FLAGS))
    if _HEAT_FIRST.match(line) or (verb and _on_what().match(line, verb.end())):
        return True
    if verb and not sentences and (measured(line, known=True) or _unmeasured().search(line)) and len(line.split()) < 9:
        return _is_deed(line, verb.end())
    return (
        bool(TERSE.match(line))
        or (len(_TIME.findall(line)) > 1 and bool(_verb_inside().search(line)))
        or bool(verb and (len(line.split()) > 3 or sentences))
        or sentences > 1
        or (sentences > 0 and len(line.split()) > 9)
    )


@cache
def _led_in() -> re.Pattern[str]:
    """Little words before the verb of somebody who speaks: so first turn the oven on."""
    return re.compile(rf"(?:{any_of('lines', 'spoken_fillers')}[\s,]+|first\s+)+", _FLAGS)


def _is_deed(line: str, end: int) -> bool:
    """Whether a short line with an amount begins with what is done, and no name: "Beat in 1 egg", but "Cream 1 cup"."""
    told = _FIGURE.split(line, maxsplit=1)[0]
    words_before = told.split()
    names_one = find(told) is not None or find(line[:end]) is not None or line[end:].lstrip().lower().startswith("of ")
    return bool(words_before) and told != line and not names_one and words_before[0].lower() not in _no_deeds()


def is_done(text: str) -> bool:
    """Whether a sentence says what is done in a kitchen: it begins with a deed, or tells a time or a heat."""
    verb = _step_start().match(text)
    deed = verb is not None and verb[0].lower() not in _no_deeds()
    step = read_step(text)
    return deed or bool(step.times or step.temperatures)


@cache
def _on_what() -> re.Pattern[str]:
    return re.compile(rf"\s+{any_of('steps', 'objects')}", _FLAGS)


@cache
def _verb_inside() -> re.Pattern[str]:
    return re.compile(rf"[,.;]\s+{any_of('steps', 'verbs')}", _FLAGS)


@cache
def _no_deeds() -> frozenset[str]:
    """Verbs of steps that begin an ingredient as well: for dusting, pinch of salt."""
    return frozenset(words("steps", "no_deeds"))


@cache
def _unmeasured() -> re.Pattern[str]:
    return re.compile(rf"(?<!\w){any_of('lines', 'unmeasured')}", _FLAGS)


def is_unmeasured(line: str) -> bool:
    """Whether a line is of something that is taken without an amount: "salt, to taste"."""
    return bool(_unmeasured().search(line))


def as_ingredient(line: str, component: str, sure: bool) -> IngredientLine | None:
    """The line as an ingredient; sure: it stands under a heading that says so."""
    read = read_line(line, component)
    if read and read.amount is None and (turned := _TURNED.fullmatch(line)):
        form = f"{turned['amount']} {turned['name']}"
        read = read_line(form, component) if begins_measured(form) else read
    if read is None or ("|" in line and read.amount is None):
        return None
    if read.amount is not None:
        return read if sure or not like_step(line) else None
    if read.known or (sure and not like_step(line)):
        return read
    return read if _unmeasured().search(line) and not like_step(line) and len(line.split()) < 9 else None


def part_opened(line: Line, following: Line | None, section: Section) -> str | None:
    """The sub-recipe that a line opens ("For the frosting:", or "Dumplings" over their list), or None."""
    text = _ASIDE.sub("", line.text).strip()
    if not text or len(text) > LONGEST_PART or SENTENCE_END.search(text) or following is None:
        return None
    if line.mark in ("number", "step") or measured(text):
        return None
    found = _FOR_PART.match(text)
    if not found or read_yields(text) or "," in found["name"]:
        return None
    listed = measured(following.text) and not like_step(following.text) and following.mark != "number"
    explicit = text.endswith(":") or text.lower().startswith("for the ")
    called = names_part(text) and (listed if section != "steps" else listed or not line.mark)
    shouted = text.isupper() and len(text) > LONGEST_UNIT and section != "head"
    over = listed and _stands_over(line, text, following)
    return found["name"].strip().lower() if explicit or called or shouted or over else None


def _stands_over(line: Line, text: str, following: Line) -> bool:
    """Whether a short line stands at the head of a list, rather than being the first thing in it."""
    named = len(text.split()) < LONGEST_UNIT and re.search(rf"\b{re.escape(text)}\b", following.text, _FLAGS)
    alone = (line.apart or bool(named)) and not following.apart and not line.mark
    return alone and text[:1].isupper() and len(text.split()) <= LONGEST_NAME and not _unmeasured().search(text)


def is_subheading(line: Line, following: Line | None) -> bool:
    """Whether a short line stands over a paragraph of the method: "Getting ready"."""
    if following is None or line.mark or following.apart or not line.apart or SENTENCE_END.search(line.text):
        return False
    short = len(line.text.split()) < LONGEST_NAME and not any(char.isdigit() for char in line.text)
    return short and line.text[:1].isupper() and len(following.text) > len(line.text) and not like_step(line.text)


def is_title(line: Line, following: Line | None, *, first: bool) -> bool:
    """Whether a line can be what a recipe is called: words without a measure, or words before one that name no food."""
    text = line.text
    if (
        line.mark in ("note", "step", "said")
        or text.endswith("?")
        or (line.mark == "bullet" and not first)
        or (line.mark == "number" and like_step(text))
        or read_yields(text)
    ):
        return False
    if measured(text):
        name = re.split(r"\d", text, maxsplit=1)[0].strip(" -–—:,.(#")
        apart = following is None or following.apart or name.isupper()
        return apart and len(name.split()) > 1 and text[:1].isalpha() and find(name) is None and not like_step(text)
    if not like_step(text) or (_ARTICLE.match(text) and len(text.split()) < LONGEST_TITLE):
        return True
    names = [word for word in text.split() if len(word) > LONGEST_UNIT]
    return (
        not SENTENCE_END.search(text)
        and len(names) > 1
        and sum(word[:1].isupper() for word in names) >= CAPITALS * len(names)
    )


def inline_part(line: str) -> tuple[str, list[str]] | None:
    """A sub-recipe told on one line, with its ingredients: "Crust: 2 cups crumbs, 6 tbsp butter, 1/4 cup sugar"."""
    name, colon, rest = line.partition(":")
    name = re.sub(r"^(?:for\s+)?(?:the\s+)?", "", _ASIDE.sub("", name).strip(), flags=_FLAGS)
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


@cache
def _afterword() -> re.Pattern[str]:
    return re.compile(rf"^(?:#\w|{any_of('headings', 'afterword')})", _FLAGS)


def is_afterword(line: str) -> bool:
    """Whether a line is what is said when all is done: "Keeps 3 days", tags, a call to rate."""
    return bool(_afterword().match(line))


@cache
def _of_part() -> re.Pattern[str]:
    heads = "|".join(re.escape(word).replace(r"\ ", r"\s+") for word in sorted(_headings(), key=len, reverse=True))
    return re.compile(
        rf"^(?:(?P<head>{heads})\s+(?:(?:for|in|into|of)\s+(?:(?:the|your)\s+)?|(?:the|your)\s+))?(?:(?:the|your)\s+)?(?P<part>[^\W\d_][^:.!?\d(]{{1,40}}?)\s*(?:\(.*\))?:?$",
        _FLAGS,
    )


def part_of_heading(line: str) -> str:
    """The part that a heading speaks of: "Ingredients for the glaze", "The sauce"; "" where it is of all.

    >>> part_of_heading("What goes in the glaze"), part_of_heading("Ingredients"), part_of_heading("The sauce")
    ('glaze', '', 'sauce')
    """
    found = _of_part().match(line)
    part = found["part"].strip().lower() if found else ""
    return "" if part in _headings() or (found and not found["head"] and part == line.lower().strip(": ")) else part
