"""The baker's formula of a recipe: every part against the flour, and the ratios that decide how it behaves.

Flour counts starch and cocoa with it, as a batter feels them. Liquid is the water that milk, eggs and the rest bring.
"""

from __future__ import annotations

import re
from collections import defaultdict
from dataclasses import dataclass

from rules.baking.division import batter
from rules.baking.parts import FLOURS, LEAVENINGS, LIQUIDS, Placed
from rules.recipe import Recipe

IN_PIECES = re.compile(r"berr(?:y|ies)\b|\bcherr(?:y|ies)\b|\b(?:diced|chopped|sliced)\b.*\bapples?\b", re.I)
CORE = (*FLOURS, *LIQUIDS, "sugar", "icing_sugar", "syrup", "fat", "egg", "white", "yolk")
CUP_FLOUR_G = 125.0
TSP_LEAVENING_G = 4.6
# What a self-rising flour has inside: 1 1/2 tsp of powder to the cup.
SELF_RISING_SHARE = 1.5 * TSP_LEAVENING_G / CUP_FLOUR_G
# Carbon dioxide as millilitres at 25 degC and 101,325 Pa. Powders are made to give at least 12 % of their weight (US
# standard, from memory), usually about 14 %; soda with acid enough gives 44/84 of its weight.
ML_PER_G_CO2 = 24.47 / 44.01 * 1000
CO2_SHARE = {"powder": 0.14, "soda": 44.01 / 84.01}


@dataclass(frozen=True, slots=True)
class Ratios:
    """Ratios of one formula by mass; None where the recipe has no flour, or masses are not known.

    flour_g: flour with starch and cocoa [g], 100 where the recipe gives percentages of flour nobody weighed
    percent: each part as a percentage of the flour (baker's percentage), largest first; the powder inside a
        self-rising flour counts as powder too
    sugar, liquid, fat, egg: grams to a gram of flour; liquid is all water, that of milk and eggs counted
    leavening_tsp_per_cup: teaspoons of powder and of soda to a cup of flour (125 g)
    gas_ml_per_g: carbon dioxide the leavening can give [ml at 25 degC, sea level] to a gram of flour
    unweighed: how many lines of the formula have no mass
    unweighed_core: how many of those are flour, sugar, fat, egg or liquid, without which the ratios are none
    """

    flour_g: float
    percent: dict[str, float]
    sugar: float | None
    liquid: float | None
    fat: float | None
    egg: float | None
    leavening_tsp_per_cup: dict[str, float]
    gas_ml_per_g: float | None
    unweighed: int
    unweighed_core: int


def ratios(recipe: Recipe) -> Ratios:
    """The baker's percentages and ratios of a recipe's dough or batter.

    source: common-practice (the baker's percentage), usda-sr28 (water in the ingredients, from memory)
    """
    lines = batter(recipe)
    grams: dict[str, float] = defaultdict(float)
    for p in lines:
        grams[p.part.name] += p.mass_g
        grams["powder"] += p.mass_g * SELF_RISING_SHARE if p.self_rising else 0.0
    flour_g = sum(grams[name] for name in FLOURS) or recipe.flour_g or 0.0
    return Ratios(
        flour_g=round(flour_g, 1),
        percent=_percent(grams, flour_g),
        sugar=_to_flour(grams["sugar"] + grams["icing_sugar"] + grams["syrup"], flour_g),
        liquid=_to_flour(water_g(lines), flour_g),
        fat=_to_flour(grams["fat"], flour_g),
        egg=_to_flour(grams["egg"] + grams["white"] + grams["yolk"], flour_g),
        leavening_tsp_per_cup={
            name: round(grams[name] / TSP_LEAVENING_G / (flour_g / CUP_FLOUR_G), 2)
            for name in LEAVENINGS
            if flour_g and grams[name]
        },
        gas_ml_per_g=_to_flour(sum(grams[n] * CO2_SHARE[n] * ML_PER_G_CO2 for n in LEAVENINGS), flour_g),
        unweighed=sum(1 for p in lines if not p.mass_g),
        unweighed_core=sum(1 for p in lines if not p.mass_g and p.line.amount and p.part.name in CORE),
    )


def _percent(grams: dict[str, float], flour_g: float) -> dict[str, float]:
    shares = {name: round(100 * mass / flour_g, 1) for name, mass in grams.items() if mass} if flour_g else {}
    return dict(sorted(shares.items(), key=lambda item: (-item[1], item[0])))


def _to_flour(mass: float, flour_g: float) -> float | None:
    return round(mass / flour_g, 3) if flour_g else None


def water_g(lines: tuple[Placed, ...]) -> float:
    """Water in the liquids, eggs, fats and syrups of a formula [g]; flour and fruit in pieces keep theirs."""
    return sum(p.water_g for p in lines if p.part.name not in FLOURS and not IN_PIECES.search(p.line.line))


def liquid_lines(lines: tuple[Placed, ...], least_g: float = 25.0) -> tuple[Placed, ...]:
    """The lines that pour: water, milk, juice. A spoon of one, for flavour, is not counted."""
    return tuple(p for p in lines if p.part.name in LIQUIDS and p.mass_g >= least_g)
