"""Which style a recipe is: by its ratios first, then by its method, and by its title."""

from __future__ import annotations

import re
from collections import defaultdict
from dataclasses import dataclass
from functools import cache
from typing import Any

from rules import tables
from rules.baking.formula import Ratios, ratios
from rules.baking.parts import LIQUIDS, Placed, batter, placed
from rules.baking.styles import OTHER, rows
from rules.recipe import Recipe

TABLE = "tables/style_ratios_common-practice.csv"
# Points that the words may bring, beside those of the ratios in the table.
TITLE_POINTS, STEP_POINTS = 2.0, 3.0
# What is left of a fit where the title names another style: "pizza dough" is no loaf.
NAMED_OTHERWISE = 0.6
STEP_WORDS_ENOUGH = 3
# What the unweighed piece of meat, fish or vegetable is taken to weigh where shares are worked out [g].
PIECE_G = 150.0
# A recipe that fits nothing better than this is of no style that we know.
LEAST_FIT = 0.55
# How sharply the best fit is set against the others when saying how sure it is.
CONTRAST = 8
MEATS = ("collagen_cut", "tender_cut", "ground_meat", "sausage", "poultry_pieces", "whole_bird", "offal", "cured_meat")
FOODS = {"bean": ("dried_bean", "lentil"), "rice": ("rice",), "pasta": ("pasta", "noodle"), "meat": MEATS}
_WET_TIMES = ("braise", "simmer", "boil", "pressure", "cook", "bake", "roast")
# An hour under pressure does the work of three in an open pot.
_PACE = {"pressure": 3}
_CHEESES = re.compile(r"cream cheese|ricotta|mascarpone|cottage cheese|quark|farmer cheese", re.I)
_FRYING = re.compile(r"\b(?:deep[- ]?)?fry(?:er|ing)?\b|\bhot (?:oil|fat)\b|\boil (?:at|to|reaches)\b", re.I)
_RIBBON = re.compile(r"\bribbon", re.I)
_REDUCING = re.compile(r"\breduc(?:e|ed|es|ing)\b(?!\s+(?:the\s+)?(?:heat|oven|temperature))", re.I)
_OIL = re.compile(r"\boil$", re.I)


@dataclass(frozen=True, slots=True)
class Style:
    """A style a recipe may be of. sure: 0 to 1; variety: the kind of that style ("chiffon"), "" where it has none."""

    id: str
    sure: float
    variety: str = ""


@dataclass(frozen=True, slots=True)
class _Span:
    style: str
    feature: str
    low: float
    high: float
    weight: float
    must: bool

    def fit(self, value: float) -> float:
        """1 inside the span, falling to 0 over half its nearer end outside."""
        if self.low <= value <= self.high:
            return 1.0
        end = self.low if value < self.low else self.high
        return max(0.0, 1.0 - abs(value - end) / max(end / 2, 0.04))


@cache
def _spans() -> dict[str, tuple[_Span, ...]]:
    found: dict[str, list[_Span]] = defaultdict(list)
    for r in tables.read_csv(TABLE).rows:
        span = _Span(r["style"], r["feature"], float(r["low"]), float(r["high"]), float(r["weight"]), r["must"] == "1")
        found[span.style].append(span)
    return {style: tuple(spans) for style, spans in found.items()}


@cache
def _pattern(words: tuple[str, ...]) -> re.Pattern[str]:
    listed = "|".join(re.escape(w) for w in sorted(words, key=len, reverse=True))
    return re.compile(rf"(?<!\w)(?:{listed})(?!\w)" if words else r"(?!)", re.IGNORECASE)


def _weight(p: Placed) -> float:
    """Mass of a line [g]; a piece of meat or vegetable that is only counted is taken for PIECE_G."""
    if p.line.mass_g is None and p.line.unit in (None, "piece") and p.line.amount and p.part.name == "other":
        return p.line.amount * PIECE_G
    return p.mass_g


def _shares(recipe: Recipe) -> dict[str, float]:
    """Parts of the mass of the whole recipe, by what the ingredient is."""
    grams: dict[str, float] = defaultdict(float)
    for p in placed(recipe):
        mass = _weight(p)
        grams["all"] += mass
        for kind in _kinds(p):
            grams[kind] += mass
    return {f"{kind}_share": mass / grams["all"] for kind, mass in grams.items() if grams["all"]}


def _kinds(p: Placed) -> set[str]:
    part, role = p.part.name, p.line.role
    kinds = {kind for kind, classes in FOODS.items() if role in classes}
    if _CHEESES.search(p.line.item):
        return kinds | {"cheese"}
    kinds |= {"flour"} if part in ("flour", "starch", "nut_meal") else set()
    kinds |= {"sugar"} if part in ("sugar", "icing_sugar", "syrup") else set()
    kinds |= {"egg"} if part in ("egg", "white", "yolk") else set()
    kinds |= {"white"} if part == "white" else set()
    kinds |= {"liquid"} if part in (*LIQUIDS, "acid") or role in ("liquid", "stock") else set()
    kinds |= {"dairy"} if role == "dairy" else set()
    kinds |= {"fat"} if part == "fat" else set()
    return kinds | ({"fruit"} if role == "fruit" or part == "fruit" else set())


def _features(recipe: Recipe) -> dict[str, float]:
    """Every feature the table names, and those the varieties name; 0 where a recipe has none of it."""
    found: dict[str, float] = defaultdict(float)
    found |= _shares(recipe)
    formula = ratios(recipe)
    found |= _per_flour(recipe, formula)
    cues = {cue.what for step in recipe.steps for cue in step.cues}
    found["foam"] = float(bool(cues & {"soft_peaks", "stiff_peaks"}) or bool(_RIBBON.search(_method(recipe))))
    marks = [mark.what for step in recipe.steps for mark in step.temperatures]
    found["sugar_cooked"] = float(marks.count("sugar"))
    times = [mark for step in recipe.steps for mark in step.times]
    found["wet_hours"] = sum(t.high_min * _PACE.get(t.what, 1) for t in times if t.what in _WET_TIMES) / 60
    found["reducing"] = float(bool(_REDUCING.search(_method(recipe))))
    fries = any(_FRYING.search(step.text) for step in recipe.steps)
    found["frying"] = float(marks.count("fat") + (fries and found["fat_share"] > 0))
    return found


def _per_flour(recipe: Recipe, formula: Ratios) -> dict[str, float]:
    lines = batter(recipe)
    flour_g = formula.flour_g
    grams: dict[str, float] = defaultdict(float)
    for p in lines:
        grams[p.part.name] += p.mass_g
        grams["oil"] += p.mass_g if _OIL.search(p.line.item) else 0
        grams["chocolate"] += p.mass_g if p.line.role == "chocolate" and p.part.name != "cocoa" else 0
    found = {
        "sugar": formula.sugar,
        "fat": formula.fat,
        "egg": formula.egg,
        "liquid": formula.liquid,
        "leavening": sum(formula.leavening_tsp_per_cup.values()),
    }
    per = {
        name: grams[name] / flour_g if flour_g else 0.0 for name in ("oil", "starter", "cocoa", "chocolate", "yeast")
    }
    eggs = grams["egg"] + grams["white"] + grams["yolk"]
    return {
        **{name: value or 0.0 for name, value in found.items()},
        "oil": per["oil"],
        "starter": per["starter"],
        "cocoa": per["cocoa"] + per["chocolate"],
        "yeast": 100 * (per["yeast"] + per["starter"] / 20),
        "rich": (formula.fat or 0) + (formula.egg or 0) / 4 + (formula.sugar or 0) / 2,
        "white_only": float(bool(eggs) and grams["white"] == eggs),
    }


def _method(recipe: Recipe) -> str:
    return "\n".join((*(i.line for i in recipe.ingredients), *(s.text for s in recipe.steps)))


def _words_fit(row: dict[str, Any], title: str, method: str) -> tuple[float, float, float]:
    """How well title and method fit a style by their words, each 0 to 1; and what the title leaves of the fit."""
    against = _pattern(tuple(row["against"])).search(title)
    named = 0.0 if against else float(bool(_pattern(tuple(row["title"])).search(title)))
    told = {m.group().lower() for m in _pattern(tuple(row["steps"])).finditer(method)}
    return named, min(1.0, len(told) / STEP_WORDS_ENOUGH), NAMED_OTHERWISE if against else 1.0


def _fit(row: dict[str, Any], features: dict[str, float], title: str, method: str, measured: bool) -> float:
    named, told, left = _words_fit(row, title, method)
    spans = _spans()[row["id"]] if measured else ()
    points = (
        TITLE_POINTS * named + STEP_POINTS * told + sum(s.weight * s.fit(features.get(s.feature, 0.0)) for s in spans)
    )
    of = TITLE_POINTS + STEP_POINTS + sum(s.weight for s in spans)
    for span in spans:
        if span.must:
            points *= 0.25 + 0.75 * span.fit(features.get(span.feature, 0.0))
    if row.get("needs_words") and not named and told < 0.5:
        points *= 0.5
    return left * points / of


def _variety(row: dict[str, Any], features: dict[str, float], title: str, method: str) -> str:
    for kind in row.get("variety", ()):
        ratio, words = kind.get("ratio"), tuple(kind.get("words", ()))
        by_ratio = ratio and ratio["low"] <= features.get(ratio["feature"], 0.0) <= ratio["high"]
        if by_ratio or (words and _pattern(words).search(f"{title}\n{method}")) or not (ratio or words):
            return str(kind["id"])
    return ""


def ranked(recipe: Recipe) -> tuple[Style, ...]:
    """Every style with how sure it is, surest first: its share of all fits, times how well it fits by itself.

    Ratios by mass weigh most, then the words of the method, then the title. A recipe without masses goes by its words.
    source: common-practice
    """
    title, method = recipe.title, _method(recipe)
    features = _features(recipe)
    measured = any(p.mass_g for p in placed(recipe))
    fits = {row["id"]: _fit(row, features, title, method, measured) for row in rows().values()}
    fits[OTHER] = LEAST_FIT
    total = sum(fit**CONTRAST for fit in fits.values())
    styles = [
        Style(id, round(fit * fit**CONTRAST / total, 2), _variety(rows().get(id, {}), features, title, method))
        for id, fit in fits.items()
    ]
    return tuple(sorted(styles, key=lambda s: -s.sure))


def recognise(recipe: Recipe) -> Style:
    """The style a recipe most likely is, `other` where it fits none.

    >>> recognise(Recipe()).id
    'other'
    """
    return ranked(recipe)[0]
