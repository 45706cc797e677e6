"""What is asked about a recipe as a whole: its lines, in the order in which the published advice wants them tried."""

from __future__ import annotations

from rules.baking import eggs, fat, flour, foam, leavening, liquid, pan, salt, sugar, yeast
from rules.book import Rule
from rules.recipes import wet_dish

RULES: tuple[Rule, ...] = (
    leavening.scaled,
    leavening.beside,
    yeast.scaled,
    yeast.by_eye,
    yeast.second_rise,
    sugar.scaled,
    liquid.scaled,
    flour.scaled,
    eggs.resized,
    fat.scaled,
    salt.same,
    foam.stage,
    pan.filled,
    wet_dish.liquid,
    wet_dish.gauge_note,
)
