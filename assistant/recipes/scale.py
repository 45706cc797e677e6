"""A recipe for more or fewer: every amount times one factor, rounded to what a cook can measure."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from functools import partial

from assistant.reading.figures import ONES, TEENS, is_plain
from assistant.reading.reader import hear, value
from assistant.recipes.facts import states_flour
from assistant.recipes.lines import figure_at, measure_at
from rules.baking.batch import amount_of
from rules.baking.rounding import ML, G, fraction, in_unit, kitchen, measure
from rules.physics.units import round_to
from rules.recipe import Amount, IngredientLine, Recipe, Step
from rules.recipes.lines import PIECES
from rules.recipes.steps import Edit, amended

FINE_ROLES = ("leavening", "yeast", "salt")
SPOONED = ("pinch", "dash", "tsp", "tbsp", "cup", "pt", "qt", "gal")
SMALL_TSP = {"pinch": 1 / 16, "dash": 1 / 8}
# How far a number of eggs may be off when it is rounded to a whole one [share].
EGG_SLACK = 0.06
SPELLED = (*ONES, *TEENS)
_FLAGS = re.IGNORECASE
_GRAMS = re.compile(r"(?<=\()(?P<about>about\s+|~)?[\d.,]+(?=\s*(?:g|grams?)\s*\))", _FLAGS)
_TOTAL = re.compile(
    r"(?<=\()(?P<about>about\s+|approx\.?\s+|~)?(?P<figure>[^()a-z]{1,12}?)"
    r"(?=\s*(?P<unit>g|grams?|kg|ml|oz|ounces?|lbs?|pounds?)\.?\s*\))",
    _FLAGS,
)
_VAGUE = re.compile(r"^\s*(?:few|little|bit|couple|touch|splash|drizzle)\b", _FLAGS)
# A figure of a yield that is the size of a pan or piece, not how many there are.
_SIZE = re.compile(r"^\s*-?\s*(?:inch(?:es)?|in\b|cm|mm|[x×\"”]|by\b|g\b|grams?|ml|oz|ounce)", _FLAGS)


def scaled(recipe: Recipe, factor: float) -> Recipe:
    """The recipe times a factor: ingredient lines, amounts in the steps, yields and flour weight.

    Times and temperatures stay: they go by the pan and the piece, not by the batch.
    raises: ValueError where the factor is not above zero

    >>> from assistant.recipes.text import read_text
    >>> half = scaled(read_text("Rolls\\nMakes 12 rolls\\n2 tbsp oil\\n2 eggs\\n500 g flour\\nBake 20 minutes."), 0.5)
    >>> [line.line for line in half.ingredients], half.yields.line
    (['1 tbsp oil', '1 egg', '250 g flour'], 'Makes 6 rolls')
    """
    if not factor > 0:
        raise ValueError(f"a factor of {factor:g} leaves nothing to cook; give one above zero")
    if factor == 1:
        return recipe
    return replace(
        recipe,
        ingredients=tuple(_line(line, factor) for line in recipe.ingredients),
        steps=tuple(_step(one, factor) for one in recipe.steps),
        yields=recipe.yields and _yields(recipe.yields, factor),
        notes=tuple(_flour(note, factor) if states_flour(note) else note for note in recipe.notes),
        flour_g=recipe.flour_g and recipe.flour_g * factor,
    )


def _line(line: IngredientLine, factor: float) -> IngredientLine:
    mass = line.mass_g and round(line.mass_g * factor, 3)
    if line.unit == "percent" or line.amount is None or line.end <= line.start:
        return replace(line, mass_g=mass)
    work = _poured if line.unit in (*SPOONED, *ML, *G) and amount_of(line) is not None else _counted
    return work(line, factor, mass)


def _poured(line: IngredientLine, factor: float, mass_g: float | None) -> IngredientLine:
    """A volume or weight, in the measure a cook would reach for."""
    amount, high = (amount_of(line) or 0.0) * factor, line.amount_high and line.amount_high * factor
    unit = _unit_for(amount, line.unit, fine=line.role in FINE_ROLES)
    fit: Callable[[float], float] = partial(_fitted, unit=line.unit, to=unit, fine=line.role in FINE_ROLES)
    low, top = fit(amount), None if high is None else fit(high)
    old = line.line[line.start : line.end]
    text = measure(low, unit, high=top, quarts=line.unit in ("qt", "gal"))
    if mass_g and unit not in G and "(" in old:
        text += f" ({_grams(mass_g)} g)"
    return _with_measure(line, text + (" " if old[-1:].isspace() else ""), low, top, unit, mass_g)


def _unit_for(amount: float, unit: str | None, *, fine: bool) -> str | None:
    """Tablespoons where they come out even, teaspoons below, cups above; leavening and salt never by the cup."""
    small = SMALL_TSP.get(unit or "")
    spoons = amount * small if small else in_unit(amount, unit, "tsp") if unit in SPOONED else None
    if spoons is None:
        return unit
    even = spoons > 2.99 and abs(spoons / 1.5 - round_to(spoons / 1.5, 1)) < 0.01
    if spoons < 5.99 or fine:
        return "tbsp" if even else "tsp"
    return "tbsp" if spoons < 11.99 else "cup"


def _fitted(amount: float, *, unit: str | None, to: str | None, fine: bool) -> float:
    small = SMALL_TSP.get(unit or "")
    value = in_unit(amount * small, "tsp", to) if small else in_unit(amount, unit, to)
    return _thirds(kitchen(value or amount, to, fine=fine), value or amount, to)


def _thirds(rounded: float, exact: float, unit: str | None) -> float:
    """A third of a cup is a measure too, where it is nearer."""
    third = round_to(exact * 3, 1) / 3
    return third if unit == "cup" and third and abs(third - exact) < abs(rounded - exact) else rounded


def _counted(line: IngredientLine, factor: float, mass_g: float | None) -> IngredientLine:
    """A number of pieces or packs: its figures replaced, the word behind them in the number that goes with it."""
    old, rest = line.line[line.start : line.end], line.line[line.end :]
    opened = figure_at(old, 0, spelled=True)
    if opened is None or _VAGUE.match(rest) or not line.amount:
        return line
    low = _pieces(line.amount * factor, line.role)
    high = None if line.amount_high is None else _pieces(line.amount_high * factor, line.role)
    text, behind = measure(low, None, high=high), old[opened[2] :]
    many = (high or low) > 1
    if line.unit not in (None, "piece"):
        pack = r"^(\s*)([a-z]+)" if re.match(r"\s*(?![x×]\s)[a-z]", behind, _FLAGS) else r"(.*\W)([a-z]+)(?=\s*$)"
        behind = re.sub(pack, lambda m: m[1] + numbered(m[2], many), behind, count=1, flags=_FLAGS)
    else:
        rest = _head_noun(rest, many)
    if not re.match(r"\s*(?:[x×]|\()", behind):
        behind, rest = (_TOTAL.sub(partial(_times, factor=low / line.amount), part) for part in (behind, rest))
    elif line.unit in (None, "piece"):
        rest = _TOTAL.sub(partial(_times, factor=low / line.amount), rest)
    for more in line.further:
        rest = rest.replace(more.line, _replaced_figure(more.line, factor), 1) if more.line else rest
    joined = f"{line.line[: line.start]}{text}{behind}{rest}"
    return replace(
        line, line=joined, amount=low, amount_high=high, mass_g=_per_piece(line, low, factor),
        further=tuple(replace(m, value=m.value * factor, high=m.high and m.high * factor) for m in line.further),
        end=line.start + len(text) + len(behind),
    )  # fmt: skip


def _times(found: re.Match[str], factor: float) -> str:
    """A total in brackets times a factor: "(150 g)", "(about 4 lb)"; what is said of each piece is none."""
    figure, metric = value(found["figure"]), found["unit"].lower()[:1] in "gmk"
    if figure is None:
        return found[0]
    amount = figure * factor
    text = f"{round(amount, 1 if amount < 10 else 0):g}" if metric else fraction(round_to(amount, 0.25) or 0.25)
    return f"{found['about'] or ''}{text}"


def _per_piece(line: IngredientLine, count: float, factor: float) -> float | None:
    """The mass goes with the pieces there are after rounding, unless it was added up from several."""
    if line.mass_g is None or not line.amount or line.further:
        return line.mass_g and round(line.mass_g * factor, 3)
    return round(line.mass_g / line.amount * count, 3)


def _pieces(count: float, role: str | None) -> float:
    whole = round_to(count, 1)
    if role == "egg" and whole and abs(whole - count) <= EGG_SLACK * count:
        return whole
    return max(round_to(count, 0.25 if count < 2 else 0.5 if count < 10 else 1), 0.25)


def _head_noun(rest: str, many: bool) -> str:
    """The words behind a bare count with their noun, the last before a comma or bracket, in the right number."""
    found = re.match(r"^(?P<before>[^,(;]*?)(?P<noun>[A-Za-zé-]{3,})(?P<after>\s*(?:[,(;].*)?)$", rest, re.DOTALL)
    if not found or re.search(r"\b(?:of|in|with|for|or|and|plus)\b", found["before"], _FLAGS):
        return re.sub(r"\beggs?\b", "eggs" if many else "egg", rest, count=1)
    return f"{found['before']}{numbered(found['noun'], many)}{found['after']}"


def numbered(noun: str, many: bool) -> str:
    """A noun in the plural or the singular.

    >>> [numbered(word, True) for word in ("egg", "potato", "cherry", "leaf", "eggs")]
    ['eggs', 'potatoes', 'cherries', 'leaves', 'eggs']
    >>> [numbered(word, False) for word in ("onions", "tomatoes", "berries", "molasses")]
    ['onion', 'tomato', 'berry', 'molasses']
    """
    low = noun.lower()
    if many:
        if low.endswith(("s", "x", "ch", "sh")) or low in ("garlic", "fish"):
            return noun if low.endswith("s") or low in ("garlic", "fish") else noun + "es"
        if low.endswith(("leaf", "loaf", "half")):
            return noun[:-1] + "ves"
        if low.endswith("y") and low[-2:-1] not in "aeiou":
            return noun[:-1] + "ies"
        return noun + ("es" if low.endswith(("tato", "mato", "mango")) else "s")
    if low.endswith("ies") and len(low) > 4:
        return noun[:-3] + "y"
    if low.endswith(("leaves", "loaves", "halves")):
        return noun[:-3] + "f"
    if low.endswith(("toes", "goes", "ches", "shes", "xes")):
        return noun[:-2]
    return noun[:-1] if low.endswith("s") and not low.endswith(("ss", "us", "is", "asses")) else noun


def _with_measure(
    line: IngredientLine, text: str, low: float, high: float | None, unit: str | None, mass_g: float | None
) -> IngredientLine:
    rest, was = line.line[line.end :], in_unit(amount_of(line) or 0.0, line.unit, unit)
    if mass_g and line.mass_from == "stated":
        rest = _GRAMS.sub(lambda m: (m["about"] or "") + _grams(mass_g), rest, count=1)
    rest = PIECES.sub(lambda m: fraction(_pieces(float(m[0]) * low / was, "")), rest, count=1) if was else rest
    return replace(
        line, line=line.line[: line.start] + text + rest, amount=low, amount_high=high, unit=unit, further=(),
        mass_g=mass_g, end=line.start + len(text.rstrip()),
    )  # fmt: skip


def _grams(mass_g: float) -> str:
    return f"{round(mass_g, 1 if mass_g < 10 else 0):g}" if mass_g < 1e6 else f"{mass_g:.0f}"


def _step(one: Step, factor: float) -> Step:
    """The step with the amounts it names taken along."""
    edits = []
    for mark in one.amounts:
        unit = _unit_for(mark.value * factor, mark.unit, fine=False)
        fit: Callable[[float], float] = partial(_fitted, unit=mark.unit, to=unit, fine=False)
        high = None if mark.high is None else fit(mark.high * factor)
        text = measure(fit(mark.value * factor), unit, high=high)
        edits.append((Edit(mark.start, mark.end, text), unit, fit(mark.value * factor), high))
    new = amended(one, [edit for edit, *_ in edits])
    marks = (
        replace(mark, unit=unit or mark.unit, value=value, high=high)
        for mark, (_, unit, value, high) in zip(new.amounts, edits, strict=True)
    )
    return replace(new, amounts=tuple(marks))


def _yields(yields: Amount, factor: float) -> Amount:
    """The yield with each number of pieces in its line multiplied; sizes of pans and pieces stay."""

    amount = yields.value * factor
    line = yields.line
    for start, end, figure in reversed(_counts(yields.line)):
        if not _SIZE.match(yields.line[end:]) and not re.search(r"[x×]\s*$|\d-$", yields.line[:start]):
            line = line[:start] + fraction(round_to(figure * factor, 0.25) or 0.25) + line[end:]
    if yields.unit:
        word = re.compile(rf"\b(?:{numbered(yields.unit, False)}|{numbered(yields.unit, True)})\b", _FLAGS)
        line = word.sub(lambda m: numbered(m.group(), (yields.high or 0) * factor > 1 or amount > 1), line, count=1)
    return replace(yields, value=amount, high=yields.high and yields.high * factor, line=line)


def _counts(line: str) -> list[tuple[int, int, float]]:
    """The numbers of a line with where they stand, apart from their dozen; "half sheet" and "24cm" count nothing."""
    heard = hear(line)
    found = []
    for number in heard.numbers:
        words = [word.norm for word in heard.words[number.start : number.end]]
        dozen = len(words) > 1 and words[-1] == "dozen"
        start, end = heard.words[number.start].start, heard.words[number.end - 1 - dozen].end
        if (words[0] in SPELLED or words[0][0].isdigit()) and not line[end : end + 1].isalnum():
            found.append((start, end, number.value / (12 if dozen else 1)))
    return found


def _replaced_figure(text: str, factor: float) -> str:
    for start, end, figure in _counts(text)[:1]:
        return text[:start] + fraction(round_to(figure * factor, 0.25) or 0.25) + text[end:]
    return text


def _flour(note: str, factor: float) -> str:
    """A note that states the weight of the flour, which percentages refer to."""
    heard = hear(note)
    for figure in heard.numbers:
        plain = is_plain(figure, [word.norm for word in heard.words])
        found = measure_at(note, heard.place(figure)[0]) if plain else None
        if found and found.unit and found.unit.kind == "mass":
            text = measure(kitchen(found.low * factor, found.unit.name), found.unit.name)
            return note[: found.start] + text + note[found.end :]
    return note
