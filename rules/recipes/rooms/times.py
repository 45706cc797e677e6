"""What is asked about one time of a step; the first rule that speaks moves it."""

from __future__ import annotations

from rules.baking import yeast
from rules.book import Rule
from rules.recipes import bake_times, linked, wet_dish

RULES: tuple[Rule, ...] = (
    yeast.proof,
    linked.linked,
    wet_dish.pressure_time,
    wet_dish.crock_time,
    wet_dish.wet_time,
    wet_dish.boiled_down,
    bake_times.oven_time,
)
