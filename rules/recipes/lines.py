"""The ingredient lines rewritten: the measure of a line that changes is replaced in place."""

from __future__ import annotations

import re
import unicodedata
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import cache

from rules.baking import eggs
from rules.baking.batch import amount_of
from rules.baking.change import Change, ingredient
from rules.baking.rounding import PACKETS, QUARTS, in_unit, kitchen, measure, number
from rules.recipe import IngredientLine
from rules.tables import read_toml

BESIDE = re.compile(
    r"(?:(?P<low>\d[\d.,]*)\s*(?:g|grams?|ml)?\s*(?:-|–|to)\s*)?(?P<high>\d[\d.,]*)\s*(?P<unit>g|grams?|ml|millilit(?:er|re)s?)\b",
    re.I,
)
# "1 lb eggs (9 large)", "1 1/2 cups (12 large) egg whites"
PIECES = re.compile(r"(?<=\()\d{1,4}(?=\s+(?:small|medium|large|extra|jumbo|whole|egg)\b)", re.I)
STATED = re.compile(r"\(\s*[\d.,]+\s*(?:g|grams?)\s*\)", re.I)
# "(3 sticks)", "(about 1.25 cups)", "(1 standard packet)": an amount and no more.
AGAIN = re.compile(
    r"(?P<open>\s*\((?:about\s+|or\s+|~\s*)?)(?P<low>\d[\d./\s½¼¾⅓⅔⅛]*|[½¼¾⅓⅔⅛])[\s-]*(?:[a-z]+\s+)?(?P<unit>[a-z]+)\.?\s*\)",
    re.I,
)
WORDS = "lexicon/recipe_words.toml"
# How far an amount that is told once more may be from the first, as a share of it.
NEAR = 0.15
EGG_SIZE = re.compile(r"\b(?:extra[- ]large|small|medium|large|jumbo)\b", re.I)


@dataclass(frozen=True, slots=True, kw_only=True)
class LineTo:
    """An ingredient line and what becomes of it.

    amount, amount_high, unit: the new measure, rounded to what a cook can measure; None where the line has none
    mass_g: its mass [g], 0.1 g under 10 g, else 1 g; None where the mass is not known
    text: the line with its measure replaced; byte for byte as read where nothing changes
    """

    line: IngredientLine
    amount: float | None
    amount_high: float | None
    unit: str | None
    mass_g: float | None
    text: str

    @property
    def changed(self) -> bool:
        """Whether the cook measures something else than the recipe said."""
        return self.text != self.line.line

    @property
    def ratio(self) -> float:
        """What the line was multiplied by."""
        if not self.changed:
            return 1.0
        was = in_unit(amount_of(self.line) or 0.0, self.line.unit, self.unit)
        if was and self.amount is not None:
            return self.amount / was
        return self.mass_g / self.line.mass_g if self.changed and self.mass_g and self.line.mass_g else 1.0


def rewritten(index: int, line: IngredientLine, changes: tuple[Change, ...]) -> LineTo:
    """One line with what the changes make of it. index: its place in the recipe, from zero."""
    here = ingredient(index)
    change = next((c for c in changes if c.at == here and c.way != "same" and c.to_value is not None), None)
    if change is None:
        mass = None if line.mass_g is None else round_mass(line.mass_g)
        return LineTo(
            line=line, amount=line.amount, amount_high=line.amount_high, unit=line.unit, mass_g=mass, text=line.line
        )
    if change.what == "egg" and line.unit in (None, "piece"):
        return _eggs(line, change)
    return _measured(line, change)


def round_mass(mass_g: float) -> float:
    """A mass to 0.1 g under 10 g, else to 1 g.

    >>> round_mass(6.94), round_mass(281.3)
    (6.9, 281.0)
    """
    return round(mass_g, 1 if mass_g < 10 else 0)


def _measured(line: IngredientLine, change: Change) -> LineTo:
    to, unit = change.to_value or 0.0, change.to_unit
    was = in_unit(amount_of(line) or 0.0, line.unit, unit) or line.mass_g or 0.0
    ratio = to / was if was else 1.0
    more = None if line.amount_high is None else in_unit(line.amount_high, line.unit, unit)
    high = kitchen(more * ratio, unit) if more else None
    mass = None if line.mass_g is None else round_mass(line.mass_g * ratio)
    old = line.line[line.start : line.end]
    text = measure(to, unit, high=high, quarts=line.unit in QUARTS)
    if unit not in ("g", "kg", "ml", "l"):
        text += _beside(old, ratio)
    new = _replaced(line, text, mass)
    new = told_again(new, line.unit, amount_of(line) or 0.0, ratio)
    if PIECES.search(line.line):
        new = PIECES.sub(lambda m: number(int(m[0]) * ratio, 0), new, count=1)
    return LineTo(line=line, amount=to, amount_high=high, unit=unit, mass_g=mass, text=new)


def _beside(old: str, ratio: float) -> str:
    """The weight or volume that a measure has beside it in metric units, changed along; "" where it has none.

    >>> _beside("3/4 to 1 cup (170g to 227g)", 1.06), _beside("3 cups (710 ml) ", 1.1), _beside("2 cups", 1.1)
    (' (180 to 241 g)', ' (781 ml)', '')
    """
    told = list(BESIDE.finditer(old))
    if not told:
        return ""
    low, high, unit = told[-1]["low"], told[-1]["high"], "ml" if told[-1]["unit"].lower().startswith("m") else "g"
    figures = [f"{round_mass(float(figure.replace(',', '')) * ratio):g}" for figure in (low, high) if figure]
    return f" ({' to '.join(figures)} {unit})"


@cache
def _units() -> dict[str, str]:
    """The spellings of units that a bracket may tell an amount in once more, and what each is."""
    told: dict[str, list[str]] = read_toml(WORDS)["told_again"]
    return {spelling: unit for unit, spellings in told.items() for spelling in spellings}


def told_again(text: str, unit: str | None, amount: float, ratio: float) -> str:
    """A line whose brackets tell its amount once more, "(3 sticks)", changed along; an opened packet is left out.

    >>> told_again("1 cup soft butter (2 sticks)", "cup", 1.0, 0.875), told_again("5 g yeast (1 packet)", "g", 7.0, 0.7)
    ('1 cup soft butter (1 3/4 sticks)', '5 g yeast')
    >>> told_again("2 cups flour (1 cup for dusting)", "cup", 2.0, 1.1), told_again("3 lb jam (2 cups)", "lb", 3.0, 1.0)
    ('2 cups flour (1 cup for dusting)', '3 lb jam (2 cups)')
    """

    def again(found: re.Match[str]) -> str:
        other, value = _units().get(found["unit"].lower()), figure(found["low"])
        if other is None or value is None or ratio == 1 or unit is None:
            return found[0]
        same = in_unit(value, other, unit)
        if same is not None and abs(same - amount) > NEAR * amount:
            return found[0]
        if other in PACKETS:
            return ""
        return f"{found['open']}{measure(kitchen(value * ratio, other), other)})"

    return AGAIN.sub(again, text)


def figure(text: str) -> float | None:
    """A number as a recipe writes it, in figures: "1 1/2", "1.25", "1½"; None for anything else.

    >>> figure("1 1/2"), figure("1.25"), figure("2½"), figure("a few")
    (1.5, 1.25, 2.5, None)
    """
    try:
        parts = unicodedata.normalize("NFKD", re.sub(r"(?<=\d)(?=[½¼¾⅓⅔⅛])", " ", text)).replace("⁄", "/").split()
        return float(sum(Fraction(part) for part in parts)) if parts else None
    except (ValueError, ZeroDivisionError):
        return None


def _replaced(line: IngredientLine, text: str, mass_g: float | None) -> str:
    """The line with its measure replaced, and with a weight that stands behind the name brought along."""
    if line.end <= line.start:
        return line.line
    space = " " if line.line[line.start : line.end][-1:].isspace() else ""
    rest = line.line[line.end :]
    if mass_g is not None and line.mass_from == "stated":
        rest = STATED.sub(f"({mass_g:g} g)", rest, count=1)
    return line.line[: line.start] + text + space + rest


def _eggs(line: IngredientLine, change: Change) -> LineTo:
    count, size = int(change.to_value or 0), change.to_unit or "large"
    mass = round_mass(eggs.mass_g(count, size))
    rest = line.line[line.end :]
    plain_size = size.split(" plus ")[0]
    named = EGG_SIZE.sub(plain_size, rest, count=1) if EGG_SIZE.search(rest) else f" {plain_size}{rest}"
    extra = f" plus {size.split(' plus ')[1]}" if " plus " in size else ""
    if line.mass_from == "stated":
        named = STATED.sub(f"({mass:g} g)", named, count=1)
    text = f"{line.line[: line.start]}{count}{named}{extra}"
    if EGG_SIZE.search(line.line[line.start : line.end]):
        text = f"{line.line[: line.start]}{count} {plain_size}{rest}{extra}"
    return LineTo(line=line, amount=float(count), amount_high=None, unit=size, mass_g=mass, text=text)


def plain(to: LineTo) -> IngredientLine:
    """The line as one of a recipe of its own."""
    if not to.changed:
        return to.line
    counted = to.line.unit in (None, "piece")
    end = to.line.end + len(to.text) - len(to.line.line)
    return replace(
        to.line, line=to.text, amount=to.amount, amount_high=to.amount_high, unit=None if counted else to.unit,
        further=(), mass_g=to.mass_g, end=to.line.end if counted else max(end, to.line.start),
    )  # fmt: skip
