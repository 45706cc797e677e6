"""What a cook is told beside the changes: the order to try them in, what to look at, what to be careful of."""

from __future__ import annotations

import re
from collections import Counter

from rules.baking import bands, leavening
from rules.baking.styles import OTHER, UNKNOWN_BAKE, is_a
from rules.book import Part, rule
from rules.heat.pressure import STOVE_TOP_GAUGE_PA
from rules.model import Caution, Level
from rules.physics import kinetics
from rules.physics.units import M_PER_FT
from rules.recipes import dangers, pace, pot, wet_dish
from rules.recipes.outcome import Outcome
from rules.said import Words, duration_span, elevation, gauge, listed, number, sentences, temp, yes

MEASURED_ROLES = ("flour", "starch", "sugar", "fat", "liquid", "dairy", "leavening", "yeast", "salt")
SEASON_FROM_M = 2133.0
# Above that the tables' last step is far enough below what the gas law would take off to spoil a batch.
FAR_BEYOND_M = 10_000 * M_PER_FT
OF_THE_TABLES = {"leavening", "sugar", "liquid"}
# Roles of figures that tell by what food is heated, and what a style is whose recipes change.
IN_WATER = frozenset(
    ("boil", "simmer", "braise", "poach", "steam", "pressure", "cook", "rise", "process", "sugar", "other")
)
DRY_HEATS = frozenset(("bake", "roast", "grill", "fry", "toast", "air_fry", "smoke", "oven", "fat", "food"))
MOVED = ("batter", "yeasted", "whipped", "pot", "boiled_down")
GLASS = re.compile(r"\bglass\b", re.I)
# So much cooler boils the pot that a cook looks for another way.
QUICK_WAY_BELOW_K = -1.5
say = sentences("recipes/cautions")


def _told(level: Level, text: Words, *sources: str) -> Part:
    return Part(cautions=(Caution(level, text, sources),))


@rule("recipe.one_at_a_time", "uwyo-altitude-adjusters")
def one_at_a_time(done: Outcome) -> Part | None:
    """The order in which to try the changes of a batter."""
    batter = is_a(done.batch.style, "batter") and done.batch.up
    return _told("note", say("one-at-a-time")) if batter and done.touched & OF_THE_TABLES else None


@rule("recipe.overflow", "egg-producers-cakes")
def overflow(done: Outcome) -> Part | None:
    """What to do lest a pan runs over."""
    batter = is_a(done.batch.style, "batter") and done.batch.up
    return _told("note", say("overflow")) if batter and "pan" in done.touched else None


@rule("recipe.beyond_tables", "uwyo-altitude-adjusters", "computed")
def beyond_tables(done: Outcome) -> Part | None:
    """That the tables end below the kitchen, and what the gas law alone would take off there."""
    highest, top = max(done.batch.from_m, done.batch.to_m), bands.highest_m("leavening")
    if highest <= top or not done.touched & OF_THE_TABLES:
        return None
    percent = number(100 - 100 / leavening.gas_ratio(0, highest), 0)
    text = say("beyond-tables", top=elevation(top), percent=percent, highest=elevation(highest))
    return _told("warn" if highest > FAR_BEYOND_M else "note", text)


@rule("recipe.no_unit", "common-practice")
def no_unit(done: Outcome) -> Part | None:
    """Lines that have no unit where one is needed, and so stay as they are."""
    bare = [
        line.line
        for line in done.batch.recipe.ingredients
        if line.amount is not None and line.unit is None and line.mass_g is None and line.role in MEASURED_ROLES
    ]
    return _told("note", say("no-unit", lines=listed(bare, "semicolons"))) if bare else None


@rule("recipe.listed_twice", "common-practice")
def listed_twice(done: Outcome) -> Part | None:
    """The same line twice in one part of the recipe: each is counted."""
    lines = done.batch.recipe.ingredients
    seen = Counter((line.component, " ".join(line.line.lower().split())) for line in lines)
    twice = [line for (_, line), times in seen.items() if times > 1]
    return _told("note", say("listed-twice", lines=listed(twice, "semicolons"))) if twice else None


@rule("recipe.glass", "egg-producers-cakes")
def glass(done: Outcome) -> Part | None:
    """A glass pan in an oven that would be set hotter."""
    if "oven" not in done.touched or not done.batch.up:
        return None
    return _told("note", say("glass")) if any(GLASS.search(one.text) for one in done.batch.recipe.steps) else None


def _never_soft(done: Outcome) -> kinetics.Softening | None:
    """How the beans of a pot soften, where the boil of the place is too cool for it."""
    name = pace.dish_class(done.batch)
    soft = kinetics.softening(name or kinetics.GENERAL)
    cool = soft.threshold_c is not None and done.batch.here.boiling_c < soft.threshold_c
    return soft if name and cool and done.batch.style == "beans" else None


def _under_pressure(done: Outcome) -> bool:
    return any(t.what == "pressure" for one in done.batch.recipe.steps for t in one.times)


@rule("wet.never_soft", "common-practice")
def never_soft(done: Outcome) -> Part | None:
    """Dried beans where the boil is too cool to soften them."""
    soft = _never_soft(done)
    if soft is None or soft.threshold_c is None:
        return None
    return _told("warn", say("never-soft", threshold=temp(soft.threshold_c)), soft.source)


@rule("wet.quick_way", "common-practice")
def quick_way(done: Outcome) -> Part | None:
    """The pressure cooker, for a pot that takes much longer here."""
    batch = done.batch
    slow = (
        is_a(batch.style, "slow_pot")
        and pace.dish_class(batch) is not None
        and next(pot.simmered(batch), None) is not None
    )
    if not slow or batch.boil_shift_k >= QUICK_WAY_BELOW_K or _under_pressure(done) or _never_soft(done):
        return None
    span = wet_dish.pressure_option(batch)
    return _told(
        "note",
        say(
            "quick-way",
            gauge=gauge(STOVE_TOP_GAUGE_PA),
            known=yes(span),
            time=duration_span(*span) if span else "",
        ),
    )


@rule("recipe.kidney_beans", "usu-ask-extension")
def kidney_beans(done: Outcome) -> Part | None:
    """The hard boil that beans of the kidney kind need, where the recipe has it."""
    recipe = done.batch.recipe
    return _told("warn", say("kidney-beans")) if dangers.holds_lectin(recipe) and not dangers.lectin(recipe) else None


@rule("recipe.pressure_cooker", "common-practice")
def pressure_cooker(done: Outcome) -> Part | None:
    """How full a pressure cooker may be, and how it is opened."""
    return _told("warn", say("pressure-cooker")) if _under_pressure(done) else None


@rule("recipe.hot_fat", "common-practice")
def hot_fat(done: Outcome) -> Part | None:
    """Hot fat, where its temperature changes."""
    return _told("warn", say("hot-fat")) if "fat_temp" in done.touched else None


@rule("recipe.season", "csu-high-altitude-food-prep")
def season(done: Outcome) -> Part | None:
    """That food can taste flatter up here."""
    batch = done.batch
    high = is_a(batch.style, "pot") and batch.to_m > SEASON_FROM_M > batch.from_m
    return _told("note", say("season")) if high else None


@rule("recipe.divided", "common-practice")
def divided(done: Outcome) -> Part | None:
    """An amount that changes and is used in shares the steps do not name."""
    shares = {mark.line for one in done.batch.recipe.steps for mark in one.amounts}
    lines = enumerate(done.lines)
    items = [to.line.item for i, to in lines if to.line.divided and to.changed and i not in shares]
    return _told("note", say("divided", items=_and(items))) if items else None


def _and(items: list[str]) -> Words:
    return listed(dict.fromkeys(items), "and")


@rule("recipe.no_style", "common-practice")
def no_style(done: Outcome) -> Part | None:
    """A recipe that fits no style, of which the formula stays."""
    return _told("note", say("no-style")) if done.batch.style == OTHER and not nothing_changes(done) else None


@rule("recipe.general_bake", "common-practice")
def general_bake(done: Outcome) -> Part | None:
    """A bake of no style that is known, which gets what is right for all that rises."""
    return _told("note", say("general-bake")) if done.batch.style == UNKNOWN_BAKE else None


@rule("recipe.nothing_changes", "common-practice")
def nothing_changes(done: Outcome) -> Part | None:
    """Why nothing of a recipe has to change."""
    steps, style = done.batch.recipe.steps, done.batch.style
    heats = {t.what for one in steps for t in one.times} | {t.what for one in steps for t in one.temperatures}
    # what cooks in water or rises and still stays, stays by its figures, not by its kind
    if done.touched or not steps or heats & IN_WATER or any(is_a(style, what) for what in MOVED):
        return None
    kind = "cold" if is_a(style, "cold") or not heats & DRY_HEATS else "dry"
    return _told("note", say("nothing-changes", kind=kind))
