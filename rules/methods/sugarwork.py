"""Sugarwork: syrup boiled to a stage, from thread to caramel."""

from __future__ import annotations

from rules.foods import sugar
from rules.heat.where_water_boils import boiling_point

NEEDS = ("elevation",)
RULES = (
    sugar.syrup,
    sugar.recipe_temperature,
    sugar.stage_temperature,
    boiling_point,
    sugar.thermometer,
    sugar.published,
    sugar.cold_water,
    sugar.burns,
)
