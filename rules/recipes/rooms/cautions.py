"""What is asked about a recipe that was converted: what else to take care of."""

from __future__ import annotations

from rules.book import Rule
from rules.recipes import cautions, keeping

RULES: tuple[Rule, ...] = (
    keeping.by_thermometer,
    keeping.out_of_reach,
    cautions.one_at_a_time,
    cautions.overflow,
    cautions.beyond_tables,
    cautions.no_unit,
    cautions.listed_twice,
    cautions.glass,
    cautions.never_soft,
    cautions.quick_way,
    cautions.kidney_beans,
    cautions.pressure_cooker,
    cautions.hot_fat,
    cautions.season,
    cautions.divided,
    cautions.no_style,
    cautions.general_bake,
    cautions.nothing_changes,
)
