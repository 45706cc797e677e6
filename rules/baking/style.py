"""Which style a recipe is: by its ratios first, then by its method, and by its title."""

from __future__ import annotations

import re
from collections import defaultdict
from dataclasses import dataclass
from functools import cache, lru_cache
from typing import Any

from rules import tables
from rules.baking.division import batter, divided, left_steps
from rules.baking.formula import Ratios, ratios
from rules.baking.part_names import is_left, listed
from rules.baking.parts import LIQUIDS, Placed, placed
from rules.baking.styles import OTHER, UNKNOWN_BAKE, YEASTED, is_a, rows
from rules.recipe import Recipe
from rules.recipes.phrases import says, stems
from rules.remembered import all_of_them, remembered

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
# A name is found this near the beginning of what introduces a recipe.
LONGEST_INTRODUCTION = 90
_SENTENCE = re.compile(r"[.:](?:\s|$)")
# From this share of meat or fish on, flour and leavening are only its coat.
MOST_MEAT = 0.25
# Shares of eggs and sugar from which a thing without flour can still be a cake.
LEAST_EGG, LEAST_SUGAR = 0.05, 0.12
# What a title that names a style in its last words does to the style's fit: so much of what it wants of 1 is given.
NAMED_LIFT = 0.6
# How far the ratios a style must have rule it out: alone, where the title names it, and where masses are missing too.
MUST, MUST_NAMED, MUST_UNWEIGHED = 0.75, 0.4, 0.15
# How sharply the best fit is set against the others when saying how sure it is.
CONTRAST = 8
# How many times the upper end of its span a ratio has to be before the title counts no more.
FAR = 4
# From this share of flour on, what is worked out against it counts so strictly.
LEAST_FLOUR = 0.05
MEATS = ("collagen_cut", "tender_cut", "ground_meat", "sausage", "poultry_pieces", "whole_bird", "offal", "cured_meat")
FOODS = {"bean": ("dried_bean", "lentil"), "rice": ("rice",), "pasta": ("pasta", "noodle"), "meat": MEATS}
_WET_TIMES = ("braise", "simmer", "boil", "pressure", "cook", "bake", "roast")
# An hour under pressure does the work of three in an open pot.
_PACE = {"pressure": 3}
_HOT_TIMES = (*_WET_TIMES, "fry", "steam", "poach", "grill", "reduce", "air_fry", "slow_cook", "smoke", "toast")
# What is worked out against the flour.
_PER_FLOUR = ("flour_share", "sugar", "fat", "egg", "liquid", "leavening", "cocoa")
# Features that no title can explain away.
_NEVER = ("yeast", "cooked", "steamed_hours", "leavened", "heated", "frying", "griddled")
_GRIDDLE = re.compile(
    r"\b(?:(?:griddle|waffle (?:iron|maker)|skillet|fr(?:ying|y) ?pan|(?:hot|non-?stick|cr[eê]pe) pan|tawa|comal)s?\b"
    r"|pan over (?:[\w-]+ ){0,3}heat\b)",
    re.I,
)
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
    """Parts of the mass of the recipe by what the ingredient is, where a flat list was cut those of its main part."""
    grams: dict[str, float] = defaultdict(float)
    for p in _main(recipe):
        mass = _weight(p)
        grams["all"] += mass
        for kind in _kinds(p):
            grams[kind] += mass
    return {f"{kind}_share": mass / grams["all"] for kind, mass in grams.items() if grams["all"]}


def _main(recipe: Recipe) -> tuple[Placed, ...]:
    """The lines that tell what is made: all of them, but for the fillings and finishes of a list without headings."""
    lines = placed(divided(recipe))
    if any(line.component for line in recipe.ingredients):
        return lines
    return tuple(p for p in lines if not is_left(p.line.component))


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
    hot = [t for t in times if t.what in _HOT_TIMES and t.high_min >= 1]
    found["baked"] = float(any(t.what in ("bake", "roast") for t in times) or marks.count("oven"))
    found["steamed_hours"] = sum(t.high_min for t in times if t.what in ("steam", "boil", "simmer")) / 60
    found["steamed_hours"] *= not found["baked"]
    found["cooked"] = float(bool(hot) or bool(marks.count("oven")))
    found["heated"] = float(bool(found["cooked"] or found["frying"] or _GRIDDLE.search(_method(recipe))))
    found["griddled"] = float(not found["baked"] and bool(_GRIDDLE.search(_method(recipe))))
    names = {p.part.name for p in batter(recipe)}
    rises = bool(names & {"powder", "soda", "yeast", "starter"}) or any(p.self_rising for p in batter(recipe))
    found["leavened"] = float(rises and found["meat_share"] < MOST_MEAT)
    found["yeasted"] = float(bool(names & {"yeast", "starter"}) and not names & {"powder", "soda"})
    bought = any(says(" ".join(stems(p.line.line)), listed("kinds", "bought")) for p in batter(recipe))
    found["floured"] = float(bought or _is_floured(names, found))
    if formula.leavening_tsp_per_cup and "yeast" not in names and not any(t.what == "rise" for t in times):
        # a starter beside powder or soda is there for its flavour
        found["yeast"] = 0.0
    return found


def _is_floured(names: set[str], found: dict[str, float]) -> bool:
    """Whether it holds what a crumb is made of: flour or its like, leavening, or eggs enough with sugar or cocoa."""
    made_of = {"flour", "starch", "nut_meal", "cocoa", "powder", "soda", "yeast", "starter"}
    return bool(names & made_of) or (found["egg_share"] > LEAST_EGG and found["sugar_share"] > LEAST_SUGAR)


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
        "flour_g": flour_g,
        "unweighed": float(formula.unweighed_core),
        "oil": per["oil"],
        "starter": per["starter"],
        "cocoa": per["cocoa"] + per["chocolate"],
        "yeast": 100 * (per["yeast"] + per["starter"] / 20) or float(any(p.part.name == "yeast" for p in lines)),
        "rich": (formula.fat or 0) + (formula.egg or 0) / 4 + (formula.sugar or 0) / 2,
        "white_only": float(bool(eggs) and grams["white"] == eggs),
    }


@remembered(by=all_of_them)
def _method(recipe: Recipe) -> str:
    """The lines and steps that tell what is made: those of fillings and finishes are left out."""
    left = left_steps(recipe)
    steps = (step.text for index, step in enumerate(recipe.steps) if index not in left)
    return "\n".join((*(p.line.line for p in _main(recipe)), *steps))


@cache
def _title_words() -> tuple[re.Pattern[str], dict[str, frozenset[str]]]:
    """Every word of a title that names a style, as a pattern, and the styles that each names."""
    styles: dict[str, set[str]] = defaultdict(set)
    for row in rows().values():
        for word in row["title"]:
            styles[word.lower()].add(row["id"])
    return _pattern(tuple(styles)), {word: frozenset(found) for word, found in styles.items()}


_WITH = re.compile(r"\s{2,}|\s(?:with|in|on|from|for|over|of|topped)\s|\s[-–—|:/]\s?|[:|({\[/]", re.I)
_AND = re.compile(r"\s(?:and|&|\+)\s", re.I)
_MAKES = re.compile(r"\s*(?:makes|serves|yields?)\b", re.I)
_VESSEL = re.compile(r"\s+(?:pans?|tins?|dish|sheet|mix)\b", re.I)
_ENDED = re.compile(r"\W*(?:recipes?)?\W*$", re.I)


# the title of the recipe at hand is asked about again and again
@lru_cache(maxsize=256)
def named_by(title: str) -> frozenset[str]:
    """The styles that a title names: by the last word it has for one, before what is only with it.

    >>> sorted(named_by("Carrot cake muffins with walnuts")), sorted(named_by("Braised beans and rice"))
    (['quick_bread'], ['beans', 'rice'])
    >>> sorted(named_by("Caramel pork"))
    []
    """
    if anywhere := [id for id, row in rows().items() if says(title, row.get("anywhere", ()))]:
        return frozenset(anywhere)
    for at, piece in enumerate(p for p in _WITH.split(title) if not _MAKES.match(p)):
        # "Rib roast, gravy and peas" is the roast; "Corn, feta and bacon muffins" are muffins
        if named := _named_in(piece.split(",")[0], first=at == 0) or _named_in(piece, first=at == 0):
            return named
    return frozenset()


def _named_in(piece: str, *, first: bool) -> frozenset[str]:
    pattern, _ = _title_words()
    whole = any(_AND.search(m.group()) for m in pattern.finditer(piece))
    named: frozenset[str] = frozenset()
    for part in [piece] if whole else _AND.split(piece):
        if matches := [m for m in pattern.finditer(part) if not _VESSEL.match(part, m.end())]:
            named |= _named_last(matches[-1], part, first=first)
    return named


def _named_last(found: re.Match[str], part: str, *, first: bool) -> frozenset[str]:
    """The styles of a word of a title; those that only a last word names where it is that."""
    styles = _title_words()[1][found.group().lower()]
    ends = first and _ENDED.match(part, found.end())
    return frozenset(style for style in styles if ends or not rows()[style].get("last"))


def _fit(row: dict[str, Any], features: dict[str, float], title: str, method: str, measured: bool) -> float:
    """How well a style fits, 0 to 1: by its ratios, by the words of the method, and by the title before all."""
    naming = named_by(title)
    against = _pattern(tuple(row["against"])).search(title) is not None
    named = row["id"] in naming and not against
    told_words = {m.group().lower() for m in _pattern(tuple(row["steps"])).finditer(method)}
    told = min(1.0, len(told_words) / STEP_WORDS_ENOUGH)
    spans = _spans()[row["id"]] if measured else ()
    if named and not features["flour_g"]:
        spans = tuple(s for s in spans if s.feature not in (*_PER_FLOUR, *(() if features["leavened"] else ("yeast",))))
    points = (
        TITLE_POINTS * named + STEP_POINTS * told + sum(s.weight * s.fit(features.get(s.feature, 0.0)) for s in spans)
    )
    of = TITLE_POINTS + STEP_POINTS + sum(s.weight for s in spans)
    weight = MUST_UNWEIGHED if named and features["unweighed"] else MUST_NAMED if named else MUST
    for span in spans:
        if span.must:
            strict = MUST if _rules_out(span, features) else weight
            points *= 1 - strict + strict * span.fit(features.get(span.feature, 0.0))
    if not named and len(told_words) < row.get("needs_words", 0):
        points *= 0.5
    fit = points / of
    if is_a(row["id"], "floured") and not features["floured"]:
        fit *= NAMED_OTHERWISE**2
    elif named:
        fit += NAMED_LIFT * (1 - fit) * _allowed(spans, features)
    return fit * (NAMED_OTHERWISE if against or (naming and not named) else 1.0)


def _is_roasted(features: dict[str, float]) -> bool:
    """Whether it goes into the oven without a batter, a dough or much sugar."""
    plain = not features["leavened"] and not features["yeasted"] and features["sugar_share"] < LEAST_SUGAR
    return bool(features["baked"]) and plain and features["flour_share"] < LEAST_SUGAR


def _otherwise(row: dict[str, Any], text: str) -> float:
    """How well a style fits that only its way of cooking tells: a little better than none, where its words stand."""
    return LEAST_FIT + 0.01 if says(text, row["otherwise"]) and not says(text, row["against"]) else 0.0


def _allowed(spans: tuple[_Span, ...], features: dict[str, float]) -> float:
    """0 where a title names what it cannot be: a cold dish that is cooked, a cake with yeast, a cookie that pours."""
    told = (s for s in spans if s.must and _rules_out(s, features))
    return min((s.fit(features.get(s.feature, 0.0)) for s in told), default=1.0)


def _rules_out(span: _Span, features: dict[str, float]) -> bool:
    """Whether no title explains a feature away that does not fit; a spoon of flour in a filling says nothing."""
    value, weighs = features.get(span.feature, 0.0), features["flour_share"] > LEAST_FLOUR
    return span.feature in _NEVER or (weighs and value > FAR * max(span.high, 0.1))


def _variety(row: dict[str, Any], features: dict[str, float], title: str, method: str) -> str:
    for kind in row.get("variety", ()):
        ratio, words = kind.get("ratio"), tuple(kind.get("words", ()))
        by_ratio = ratio and ratio["low"] <= features.get(ratio["feature"], 0.0) <= ratio["high"]
        if by_ratio or (words and _pattern(words).search(f"{title}\n{method}")) or not (ratio or words):
            return str(kind["id"])
    return ""


def _introduced(recipe: Recipe) -> str:
    """What a recipe without a title is introduced as: "here is the orange cake from the café"."""
    return next((_SENTENCE.split(note, maxsplit=1)[0][:LONGEST_INTRODUCTION] for note in recipe.notes), "")


@remembered(by=all_of_them)
def ranked(recipe: Recipe) -> tuple[Style, ...]:
    """Every style with how sure it is, surest first: its share of all fits, times how well it fits by itself.

    Ratios by mass weigh most, then the words of the method, then the title. A recipe without masses goes by its words.
    source: common-practice
    """
    title, method = recipe.title or _introduced(recipe), _method(recipe)
    features = _features(recipe)
    measured = any(p.mass_g for p in placed(recipe))
    fits = {
        row["id"]: _otherwise(row, f"{title}\n{method}")
        if row.get("otherwise")
        else _fit(row, features, title, method, measured)
        for row in rows().values()
    }
    fits[OTHER] = LEAST_FIT
    # what rises in an oven and is like nothing that is known still gets what is right for all that rises
    fits[UNKNOWN_BAKE] = 0.0
    fallback = YEASTED if features["yeasted"] and features["baked"] else UNKNOWN_BAKE
    if features["leavened"] and features["heated"]:
        fits[fallback] = max(fits[fallback], LEAST_FIT + 0.01)
    for row in rows().values():
        if row.get("unless_heated") and recipe.steps and not says(method, row["unless_heated"]):
            fits[row["id"]] = max(fits[row["id"]], LEAST_FIT + 0.01)
    for row in rows().values():
        if row.get("if_roasted") and _is_roasted(features):
            fits[row["id"]] = max(fits[row["id"]], LEAST_FIT + 0.005)
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
