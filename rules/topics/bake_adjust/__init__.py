"""Bake adjust: one thing in a bake changed for the elevation, or the whole set of changes for its kind.

The subject is an ingredient by name ("baking powder") or one of SUBJECTS ("oven", "proof"); without one all are given.
The dish class decides how much of the published change applies; without one the tables for cakes do.
"""

from __future__ import annotations

from rules.book import Rule
from rules.topics.bake_adjust import dough, eggs, ingredients, oven, pan, starch, tins, whole
from rules.topics.bake_adjust.asked import COMPONENT_OF, SUBJECTS

__all__ = ["COMPONENT_OF", "RULES", "SUBJECTS"]

RULES: tuple[Rule, ...] = (
    whole.whole_set, dough.paced_yeast, ingredients.leavening_rule, ingredients.yeast_rule, ingredients.sugar_rule,
    ingredients.liquid_rule, ingredients.flour_rule, starch.starch_rule, eggs.egg_rule, ingredients.fat_rule,
    ingredients.salt_rule, oven.oven_rule, oven.time_rule, dough.proof_rule, pan.pan_rule, eggs.foam_rule,
    tins.tins_rule,
)  # fmt: skip
