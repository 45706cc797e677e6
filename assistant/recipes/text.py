"""A recipe as people paste it -> Recipe, and a Recipe as plain text.

Each line of the text ends up somewhere: in the title, the yields, an ingredient, a step, a note, or unread.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field, replace
from functools import cache
from itertools import zip_longest
from typing import Literal

from assistant.recipes.amounts import amounts
from assistant.recipes.evidence import says
from assistant.recipes.lines import any_of, figure_at, measure_at, read_line, words
from assistant.recipes.steps import read_step, vessels
from assistant.recipes.temperatures import Habits, units_named
from assistant.recipes.times import TERSE, named_last
from rules import tables
from rules.recipe import Amount, IngredientLine, Recipe, Step
from rules.recipes.steps import in_words

Section = Literal["head", "ingredients", "steps", "notes"]
LONGEST_HEADING = 80
LONGEST_FACT = 6
LONGEST_YIELD = 80
_FLAGS = re.IGNORECASE
_BULLET = re.compile(r"^\s*(?:[•*·●▪◦▢☐□✓–—]\s*|-\s+|\[\s?[x ]?\]\s*)+", _FLAGS)
_ENUMERATED = re.compile(r"^\s*(?:step\s+\d{1,3}\s*[.:)\-–]?|\(?\d{1,3}[.):](?!\d)|\(\d{1,3}\))\s*", _FLAGS)
_MARKUP = re.compile(r"^\s*#{1,6}\s+")
_RULE = re.compile(r"^[\s|:=_*~-]{3,}$")
_EMPHASIS = re.compile(r"\*\*|__")
_FOR_PART = re.compile(r"^(?:for\s+(?:the\s+)?|the\s+)?(?P<name>[^:.!?\d]{2,50}?)\s*:?$", _FLAGS)
_SENTENCE_END = re.compile(r"[.!?]\s*$")
_SHORTENED = re.compile(
    r"\b(?:[a-z]|tsps?|tbsps?|tbs|tb|oz|lbs?|pts?|qts?|gal|pkgs?|env|doz|med|lg|sm|br|cinn|van|choc|conf|approx|mins?|hrs?)"
    r"\.(?=\s|$)",
    _FLAGS,
)
_ARTICLE = re.compile(r"^(?:the|our|my|an?)\b(?!.*[.!?]\s+\S)", _FLAGS)


@dataclass
class _Reading:
    """What has been read so far, line by line."""

    title: str = ""
    yields: Amount | None = None
    ingredients: list[IngredientLine] = field(default_factory=list)
    steps: list[tuple[str, str]] = field(default_factory=list)
    notes: list[str] = field(default_factory=list)
    unread: list[str] = field(default_factory=list)
    facts: dict[str, float] = field(default_factory=dict)
    section: Section = "head"
    headed: bool = False
    component: str = ""
    introducing: bool = False

    def open_part(self, name: str) -> None:
        """Begin a sub-recipe; one that was opened and held nothing is kept as unread."""
        used = {i.component for i in self.ingredients} | {component for _, component in self.steps}
        if self.component and self.component not in used:
            self.unread.append(self.component)
        self.component = name


@cache
def _headings() -> dict[str, Section]:
    listed = tables.read_toml("lexicon/recipe_words.toml")["headings"]
    sections: dict[str, Section] = {"ingredients": "ingredients", "steps": "steps", "notes": "notes"}
    return {word: section for key, section in sections.items() for word in listed[key]}


@cache
def _yields() -> re.Pattern[str]:
    about = r"(?:about\s+|approximately\s+|approx\.?\s+)?"
    return re.compile(rf"(?P<lead>{any_of('yields', 'lead')})\s*:?\s*{about}", _FLAGS)


@cache
def _facts() -> tuple[tuple[str, re.Pattern[str]], ...]:
    keys = ("prep", "cook", "total", "flour")
    return tuple(
        (key, re.compile(rf"(?<!\w){any_of('facts', key)}\s*[:=–-]\s*(?P<what>[^|;•]{{1,40}})", _FLAGS)) for key in keys
    )


def read_yields(line: str) -> Amount | None:
    """How much a recipe makes: "Makes about 24 cookies", "Serves 6 to 8".

    returns: the amount with its unit in the singular as the line has it, or None

    >>> read_yields("Yield: 2 loaves"), read_yields("Serves 6 to 8").high
    (Amount(value=2.0, unit='loaf', high=None, line='Yield: 2 loaves'), 8.0)
    """
    line = line.strip()
    found = _yields().match(line)
    figure = figure_at(line, found.end(), spelled=True) if found else None
    if not found or not figure:
        return None
    low, high, end = figure
    lead, rest = found["lead"].lower(), line[end:].strip()
    if len(rest) > LONGEST_YIELD or (lead == "for" and not re.match(r"people|persons|covers|servings", rest)):
        return None
    said = [_singular(word) for word in re.findall(r"[a-zé-]+", rest.lower())[:4]]
    unit = next((word for word in said if word in _yield_units()), None)
    if unit is None and lead in ("serves", "servings", "portions", "feeds", "for"):
        unit = "serving"
    if unit is None and line[found.end() : end].lower() in ("a", "an"):
        return None
    return Amount(low, unit, high, line)


@cache
def _yield_units() -> frozenset[str]:
    return frozenset(_singular(word) for word in words("yields", "units"))


def _singular(word: str) -> str:
    if word.endswith("ves"):
        return word[:-3] + "f"
    if word.endswith("ies") and word not in ("cookies", "brownies", "pies", "smoothies"):
        return word[:-3] + "y"
    if word == "people":
        return "person"
    return word[:-1] if word.endswith("s") and len(word) > 2 else word


def _bare(line: str) -> str:
    """A line without the marks of a list or of markup."""
    line = _EMPHASIS.sub("", _MARKUP.sub("", line))
    return _BULLET.sub("", line).strip().strip("|").strip()


def _heading(line: str) -> tuple[Section, str] | None:
    """The section a heading opens, and what stands behind its colon on the same line."""
    word, colon, rest = line.partition(":")
    if len(word) > LONGEST_HEADING:
        return None
    name = re.sub(r"\s*\(.*?\)\s*$", "", word).strip().lower()
    section = _headings().get(name)
    if section is None or (rest.strip() and not colon):
        return None
    return section, rest.strip()


def _fact(line: str) -> dict[str, float]:
    """Times of the whole recipe [min] and the flour weight [g] that a line states."""
    found: dict[str, float] = {}
    for key, pattern in _facts():
        if match := pattern.search(line):
            if key == "flour":
                measure = measure_at(match["what"], 0)
                if measure and measure.unit and measure.unit.kind == "mass":
                    found[key] = measure.low * measure.unit.size
            elif times := read_step(match["what"]).times:
                found[key] = times[0].low_min
    return found


def retimed(note: str, before: Recipe, after: Recipe) -> str:
    """A note with a time of the whole recipe ("Bake time: 30 minutes"), with the time it has after a change."""
    for key, pattern in _facts():
        was, now = getattr(before, f"{key}_min", None), getattr(after, f"{key}_min", None)
        found = pattern.search(note)
        times = read_step(found["what"]).times if found else ()
        if found and times and was is not None and now is not None and was != now:
            start, end = (found.start("what") + at for at in (times[0].start, times[0].end))
            note = note[:start] + in_words(now, now, note[start:end]) + note[end:]
    return note


def states_flour(line: str) -> bool:
    """Whether a line states the flour weight that percentages refer to: "Total flour: 5 kg"."""
    return "flour" in _fact(line)


def _bare_fact(line: str) -> bool:
    """Whether a line begins with a fact and says little more: "Bake time: 30 minutes", which is no step."""
    return len(line.split()) <= LONGEST_FACT and any(pattern.match(line) for _, pattern in _facts())


@cache
def _step_start() -> re.Pattern[str]:
    return re.compile(rf"^{any_of('steps', 'verbs')}", _FLAGS)


def _like_step(line: str) -> bool:
    """Whether a line reads as a sentence of a method rather than as an ingredient."""
    verb = _step_start().match(line)
    sentences = len(re.findall(r"[a-z)][.!?](?:\s|$)", _SHORTENED.sub("", line), _FLAGS))
    if verb and not sentences and (_measured(line, known=True) or _unmeasured().search(line)) and len(line.split()) < 9:
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


def _as_ingredient(line: str, component: str, sure: bool) -> IngredientLine | None:
    """The line as an ingredient; sure: it stands under a heading that says so."""
    read = read_line(line, component)
    if read is None or ("|" in line and read.amount is None):
        return None
    if read.amount is not None:
        return read if sure or not _like_step(line) else None
    if read.known or (sure and not _like_step(line)):
        return read
    return read if _unmeasured().search(line) and not _like_step(line) and len(line.split()) < 9 else None


def _part(line: str, following: str | None, section: Section) -> str | None:
    """The sub-recipe that a line opens ("For the frosting:"), or None."""
    if len(line) > 60 or _SENTENCE_END.search(line) or following is None:
        return None
    found = _FOR_PART.match(line)
    explicit = line.endswith(":") or line.lower().startswith("for the ")
    explicit |= section != "steps" and _names_part(line)
    shouted = line.isupper() and len(line) > 3 and section != "head"
    if not found or not (explicit or shouted) or read_yields(line) or "," in found["name"]:
        return None
    return found["name"].strip().lower()


def _inline_part(line: str) -> tuple[str, list[str]] | None:
    """A sub-recipe told on one line, with its ingredients: "Crust: 2 cups crumbs, 6 tbsp butter, 1/4 cup sugar"."""
    name, colon, rest = line.partition(":")
    if not colon or not _names_part(name.strip()) or not all(map(_measured, listed := _run_together(rest.strip()))):
        return None
    return name.strip().lower(), listed


def _is_time(text: str) -> bool:
    """Whether a text says no more than a time: "20 min"."""
    times = read_step(text).times
    return bool(times) and not (text[: times[0].start] + text[times[0].end :]).strip(" .")


def _introduction(lines: Sequence[str]) -> int:
    """How many lines stand before a heading for the ingredients and only lead up to it.

    None do where a recipe begins among them: one that lists two ingredients and gives its headings later.
    """
    at = next((i for i, line in enumerate(lines) if (h := _heading(line)) and h[0] == "ingredients" and not h[1]), 0)
    listed = sum(_measured(line, known=True) and len(line.split()) < 12 for line in lines[:at])
    return at if listed < 2 else 0


def _told_yields(steps: Sequence[tuple[str, str]]) -> Amount | None:
    """How much a recipe makes where its last step says so: "Bake 12 minutes. Makes 4 dozen."."""
    sentences = re.split(r"(?<=[.!])\s+", steps[-1][0]) if steps else []
    found = (read_yields(s) or bare_yields(s) for s in sentences if s[:5].lower() not in ("make ", "for t"))
    return next((amount for amount in found if amount and (amount.unit or amount.value >= 12)), None)


def _measured(line: str, known: bool = False) -> bool:
    """Whether a line has a measure, and, where that is asked, names an ingredient that we know."""
    read = read_line(line)
    return read is not None and read.amount is not None and (read.known or not known)


def _names_part(line: str) -> bool:
    """Whether a line says no more than "Frosting" or "Lemon glaze"."""
    return len(line.split()) <= 3 and bool(re.search(rf"\b{any_of('headings', 'parts')}$", line, _FLAGS))


def _take(line: str, following: str | None, so_far: _Reading) -> None:
    """Put one line where it belongs."""
    if (heading := _heading(line)) and not _is_time(heading[1]):
        so_far.section, rest = heading
        so_far.headed = True
        so_far.open_part("")
        if (said := re.search(r"\((.+?)\)\s*:?\s*$", line)) and not rest:
            _take_aside(said[1], so_far)
        if so_far.section == "notes" and not rest:
            so_far.notes.append(line)
        if rest:
            _take_rest(rest, line, so_far)
        return
    called = not _measured(line) and (not _like_step(line) or (_ARTICLE.match(line) and len(line.split()) < 12))
    if not so_far.title and so_far.section == "head" and called:
        so_far.title = line.strip(" #*")
        so_far.yields = next(filter(None, map(read_yields, re.split(r"[,(;|–—]\s*", line)[1:])), None)
        return
    if so_far.section != "notes" and so_far.yields is None and (amount := read_yields(line)):
        so_far.yields = amount
        return
    if (
        so_far.section in ("head", "ingredients")
        and (facts := _fact(line))
        and (_bare_fact(line) or not _like_step(line))
    ):
        so_far.facts |= facts
        so_far.notes.append(line)
        return
    if so_far.introducing and so_far.yields is None and (amount := bare_yields(line)):
        so_far.yields = amount
    elif so_far.section == "notes" or so_far.introducing:
        so_far.notes.append(line)
    elif (named := _inline_part(line)) and so_far.section != "steps":
        so_far.open_part(named[0])
        so_far.section = "ingredients"
        so_far.ingredients += filter(None, (read_line(part, named[0]) for part in named[1]))
    elif part := _part(line, following, so_far.section):
        so_far.open_part(part)
        so_far.section = "ingredients" if so_far.section == "head" else so_far.section
    elif so_far.section == "steps":
        _take_step(line, so_far)
    elif so_far.yields is None and not so_far.ingredients and (amount := bare_yields(line)):
        so_far.yields = amount
    elif not so_far.ingredients and vessels(line) and not _measured(line, known=True) and not _like_step(line):
        so_far.notes.append(line)
    else:
        for part_line in _run_together(line):
            _take_early(part_line, so_far)


def bare_yields(line: str) -> Amount | None:
    """A yield with no word in front: "1 loaf", "One 9-inch pie, serves 8"."""
    named = line.split(",")[0].strip(" .")
    found = read_yields(f"Makes {named}")
    bare = found and found.unit in _bare_yield_units() and _singular(named.split()[-1].lower()) == found.unit
    return replace(found, line=line) if found and bare else None


@cache
def _bare_yield_units() -> frozenset[str]:
    return frozenset(_singular(word) for word in words("yields", "bare"))


def _run_together(line: str) -> list[str]:
    """The ingredients of a line that lists several, each with its measure: "1 cup flour, 2 eggs, 1 tsp salt"."""
    parts = re.split(r",\s+(?=[\d.¼½¾⅐-⅞]|(?:an?|one)\s)", line)
    return parts if len(parts) > 2 and all(_measured(part) for part in parts) else [line]


def _take_aside(text: str, so_far: _Reading) -> None:
    """What a heading says in brackets: "Ingredients (makes 2 loaves)"."""
    so_far.yields = so_far.yields or read_yields(text)
    if so_far.yields is None or so_far.yields.line != text:
        so_far.notes.append(text)


def _take_rest(rest: str, line: str, so_far: _Reading) -> None:
    """What stands on the line of a heading itself: "Ingredients: flour, water", "Note: keeps a week"."""
    if so_far.section == "notes":
        so_far.notes.append(line)
    elif so_far.section == "steps":
        _take_step(rest, so_far)
    else:
        for part in _run_together(rest):
            _take_early(part, so_far)


def _take_early(line: str, so_far: _Reading) -> None:
    """A line before the method has begun: an ingredient, the first step, or introduction."""
    numbered = _ENUMERATED.match(line)
    if so_far.ingredients and (numbered or _like_step(line)) and not (so_far.headed and not _like_step(line)):
        so_far.section = "steps"
        so_far.open_part("")
        _take_step(line, so_far)
        return
    ingredient = _as_ingredient(line, so_far.component, so_far.section == "ingredients")
    if ingredient:
        so_far.section = "ingredients"
        so_far.ingredients.append(ingredient)
    elif (so_far.section == "head" and len(line.split()) >= 4) or (so_far.ingredients and _SENTENCE_END.search(line)):
        so_far.notes.append(line)
    else:
        so_far.unread.append(line)


def _take_step(line: str, so_far: _Reading) -> None:
    text = _ENUMERATED.sub("", line).strip()
    if text:
        so_far.steps.append((text, so_far.component))


def _lines(text: str) -> list[str]:
    plain = (_bare(line) for line in text.replace("\u00a0", " ").splitlines() if not _RULE.match(line))
    return [line for line in plain if line]


def read_text(text: str) -> Recipe:
    """Read a plain-text recipe.

    text: any text whatsoever, headings or none
    returns: the Recipe; every line is in its title, yields, ingredients, steps, notes or unread

    >>> recipe = read_text("Plain rolls\\nMakes 12 rolls\\n500 g bread flour\\n340 g water\\nMix and knead 10 minutes.")
    >>> recipe.title, recipe.yields.value, len(recipe.ingredients), recipe.steps[0].times[0].what
    ('Plain rolls', 12.0, 2, 'knead')
    """
    lines = _lines(text)
    so_far, introduction = _Reading(), _introduction(lines)
    for index, (line, following) in enumerate(zip_longest(lines, lines[1:])):
        so_far.introducing = index < introduction
        _take(line, following, so_far)
    so_far.open_part("")
    so_far.yields = so_far.yields or _told_yields(so_far.steps)
    if not so_far.ingredients and not so_far.steps:
        so_far.steps = [(note, "") for note in so_far.notes if _like_step(note)]
        so_far.notes = [note for note in so_far.notes if not _like_step(note)]
    return assembled(
        title=so_far.title,
        yields=so_far.yields,
        ingredients=so_far.ingredients,
        steps=so_far.steps,
        notes=so_far.notes,
        unread=so_far.unread,
        facts=so_far.facts,
    )


def assembled(
    *,
    title: str,
    yields: Amount | None,
    ingredients: Sequence[IngredientLine],
    steps: Iterable[tuple[str, str]],
    notes: Iterable[str] = (),
    unread: Iterable[str] = (),
    facts: dict[str, float],
    jsonld: str = "",
) -> Recipe:
    """A Recipe from its lines. Steps are (text, component); what the recipe as a whole says settles a bare "to 240".

    facts: prep, cook, total [min] and flour [g], each where known
    """
    marked = tuple(_marked(list(steps), ingredients, title))
    flour_g = facts.get("flour") or _flour_weighed(ingredients)
    return Recipe(
        title=title,
        yields=yields,
        ingredients=_percentages(ingredients, flour_g),
        steps=marked,
        notes=tuple(notes),
        unread=tuple(unread),
        prep_min=facts.get("prep"),
        cook_min=facts.get("cook"),
        total_min=facts.get("total"),
        flour_g=flour_g,
        jsonld=jsonld,
    )


def _marked(texts: list[tuple[str, str]], ingredients: Sequence[IngredientLine], title: str) -> Iterator[Step]:
    """The steps, read: each knows what the recipe as a whole says, and what was cooked in before it."""
    habits = _habits(" ".join(text for text, _ in texts), ingredients)
    apparatus = named_last(title, "")
    for text, component in texts:
        told = tuple(amounts(text, component, ingredients))
        yield replace(read_step(text, component, habits=habits, apparatus=apparatus), amounts=told)
        apparatus = named_last(text, apparatus)


def _habits(every: str, ingredients: Sequence[IngredientLine]) -> Habits:
    units = units_named(every)
    only = next(iter(units)) if len(units) == 1 else None
    metric = only == "degC" or (not units and _weighed_in_grams(ingredients))
    return Habits(only, metric, sweet=says("sweet", every), warm=says("warm", every))


def _weighed_in_grams(ingredients: Sequence[IngredientLine]) -> bool:
    units = [i.unit for i in ingredients if i.unit]
    return bool(units) and sum(u in ("g", "kg", "ml", "l", "dl", "cl") for u in units) * 2 > len(units)


def _flour_weighed(ingredients: Sequence[IngredientLine]) -> float | None:
    """The flour that percentages refer to [g], where the list weighs the flour and gives the rest in percent."""
    if not any(i.unit == "percent" for i in ingredients):
        return None
    return sum(i.mass_g for i in ingredients if i.role == "flour" and i.mass_g) or None


def _percentages(ingredients: Sequence[IngredientLine], flour_g: float | None) -> tuple[IngredientLine, ...]:
    """Baker's percentages turned to grams, where the flour weight is known."""
    if flour_g is None:
        return tuple(ingredients)
    return tuple(
        replace(i, mass_g=round(i.amount * flour_g / 100, 3), mass_from="percent")
        if i.unit == "percent" and i.amount is not None and i.mass_g is None
        else i
        for i in ingredients
    )


def to_text(recipe: Recipe) -> str:
    """The recipe as plain text that read_text reads back to the same lines.

    >>> print(to_text(read_text("Rolls\\nIngredients\\nMethod\\nBake 20 minutes.")), end="")
    Rolls
    <BLANKLINE>
    Method
    1. Bake 20 minutes.
    """
    blocks = [[recipe.title] if recipe.title else [], [recipe.yields.line] if recipe.yields else []]
    blocks[0] += blocks.pop()
    facts = [n for n in recipe.notes if _fact(n)]
    blocks[0] += facts
    if recipe.ingredients:
        blocks.append(["Ingredients", *_grouped((i.component, f"- {i.line}") for i in recipe.ingredients)])
    if recipe.steps:
        numbered = enumerate(recipe.steps, start=1)
        blocks.append(["Method", *_grouped((s.component, f"{n}. {' '.join(s.text.split())}") for n, s in numbered)])
    rest = [n for n in recipe.notes if n not in facts and n.strip(" :").lower() not in ("notes", "note")]
    if rest or recipe.unread:
        blocks.append(["Notes", *rest, *recipe.unread])
    return "\n\n".join("\n".join(block) for block in blocks if block) + "\n"


def _grouped(lines: Iterable[tuple[str, str]]) -> list[str]:
    """Lines with a heading wherever the sub-recipe changes."""
    written, current = list[str](), ""
    for component, line in lines:
        if component != current and component:
            written.append(f"For the {component}:")
        current = component
        written.append(line)
    return written
