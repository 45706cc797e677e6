"""Bake: doughs by the published tables, covered wet dishes by the boil, the rest by heat on its way to the middle."""

from __future__ import annotations

from functools import lru_cache

from rules.book import Case, Part, Rule, rule
from rules.heat import chamber, done_readings, dry
from rules.heat.dry import Pace, PaceOf, core_c, dries, heated_through, set_to, setting_figure, span
from rules.heat.heat_settings import Setting
from rules.heat.way_out import way_out
from rules.heat.wet import (
    Pot,
    extra_liquid_rule,
    kidney_beans,
    pace_words,
    rice,
    temperature_rule,
    threshold,
    time_rule,
)
from rules.heat.where_water_boils import boiling_point
from rules.methods.smoke import jerky
from rules.model import Caution, Figure, Request
from rules.physics import kinetics
from rules.physics.ambient import Ambient
from rules.physics.evaporation import drying_ratio

POT = Pot("bake", "the liquid", below_boil_k=3.0, area_m2=0.06, size="28 cm (11 in)")
WET = ("rice", "whole_grain", "porridge", "pasta", "dried_bean", "lentil", "mixed_stew", "soup", "stock", "dried_fruit")
WATER_BATH = ("custard", "cheesecake")
ROOTS = ("starchy_root", "root_vegetable")
DOUGHS = {
    "layer_cake": "layer_cake", "foam_cake": "foam_cake", "pound_cake": "pound_cake", "quick_bread": "quick_bread",
    "biscuit": "biscuit", "cookie": "cookie", "brownie": "brownie", "yeast_bread": "yeast_bread",
    "flatbread": "yeast_bread", "laminated": "laminated", "pizza": "pizza", "pie": "pie", "choux": "choux",
    "souffle": "souffle", "meringue": "meringue",
}  # fmt: skip


@lru_cache(maxsize=64)
def _style_spans(style: str, from_m: float, to_m: float) -> tuple[tuple[float, float, float], ...]:
    """Oven [K] and time [ratio] by the published tables, each as likely, low, high."""
    from rules.baking import components

    oven = components.difference(style, "oven", from_m, to_m).map(lambda f: f * 5 / 9)
    time = components.ratio(style, "time", from_m, to_m)
    return tuple((s.value, s.low, s.high) for s in (oven, time))


def dough_oven_k(case: Case) -> tuple[float, float, float]:
    """How much hotter than at the baseline a dough's oven is set here [K]: likely, least, most."""
    return _style_spans(DOUGHS[case.dish_class], case.there.elevation_m, case.here.elevation_m)[0]


def oven_here(case: Case) -> tuple[Setting, Setting]:
    """The oven here, and at the baseline. Only doughs and batters move it."""
    there, _ = set_to(case, "bake")
    if case.dish_class not in DOUGHS:
        return there, there
    more = dough_oven_k(case)[0]
    return Setting(there.low_c + more, there.high_c + more, there.way), there


@rule("bake.oven", "uwyo-altitude-adjusters", "csu-high-altitude-food-prep", "common-practice")
def oven(case: Case) -> Part:
    """The oven: hotter for doughs by the published tables, as written for everything else."""
    here, there = oven_here(case)
    hot, moved = span(case, here), case.dish_class in DOUGHS and abs(dough_oven_k(case)[0]) > 1
    figure = setting_figure("oven", "Oven", here, there if moved else here)
    topic = case.request.topic == "temperature"
    if moved:
        low, high = sorted(dough_oven_k(case)[1:])
        more = span_k(case, low, high)
        return Part(
            figures=(figure,),
            headline=f"Set the oven to {hot} for {case.food} at {case.place}, against {span(case, there)} at "
            f"{case.baseline}."
            if topic
            else "",
            steps=(f"Set the oven to {hot}; ask for the recipe to be adjusted for its leavening, sugar and liquid.",),
            because=f"Published tables move the oven by {more} for this kind of bake: the crumb has to set before its "
            "gas has swelled too far.",
            sources=("uwyo-altitude-adjusters",),
        )
    return Part(
        figures=(figure,),
        headline=f"Set the oven to {hot} for {case.food} at {case.place}, as at {case.baseline}." if topic else "",
        steps=(f"Set the oven to {hot} and preheat it fully.",),
        because="The oven stays as written: it is as hot as its thermostat says at any elevation."
        if case.dish_class not in DOUGHS
        else "Between these elevations the published tables leave the oven as written for this kind of bake.",
    )


def span_k(case: Case, low_k: float, high_k: float) -> str:
    """A range of temperature differences, with its sign in words."""
    way = "up" if low_k + high_k > 0 else "down"
    least, most = sorted((abs(low_k), abs(high_k)))
    start = f"{case.say.temp_drop(least)} to " if most - least >= 0.5 else ""
    return f"{start}{case.say.temp_drop(most)} {way}"


def pace_of(case: Case) -> PaceOf:
    """The pace of anything that is baked and not held by its liquid."""
    if case.dish_class in DOUGHS:
        style = DOUGHS[case.dish_class]

        def dough(air: Ambient) -> Pace:
            value, low, high = _style_spans(style, 0.0, air.elevation_m)[1]
            return Pace(min(low, value), value, max(high, value))

        return dough
    if drying(case):
        return lambda air: Pace(
            *sorted((1.0, drying_ratio(air.elevation_m) ** -0.5, 1 / drying_ratio(air.elevation_m)))
        )
    return dry.wet_surface_pace(case)


def drying(case: Case) -> bool:
    """Whether the oven is to dry the food, which thin air does faster."""
    return "dried" in case.traits


@rule("bake.time", "computed", "carslaw-jaeger", "egg-producers-cakes")
def time(case: Case) -> Part:
    """How long it bakes here."""
    return dry.time_part(case, "bake", pace_of(case), _why(case), *_time_sources(case))


def _time_sources(case: Case) -> tuple[str, ...]:
    if drying(case):
        return ("computed",)
    if case.dish_class in DOUGHS:
        return ("egg-producers-cakes",)
    return ("carslaw-jaeger",) if heated_through(case.dish_class) else (kinetics.softening(case.dish_class).source,)


def _why(case: Case) -> str:
    if not case.moved:
        return f"Nothing differs from {case.baseline}, so the time stays."
    if case.dish_class in DOUGHS:
        ratio = pace_of(case)(case.here).likely / pace_of(case)(case.there).likely
        return (
            f"In the {'hotter' if ratio < 1 else 'cooler'} oven it takes {pace_words(ratio)}. Look in at the early end "
            "and test before you take it out."
            if abs(ratio - 1) > 0.01
            else "The tables leave the middle of the time alone for this kind of bake; go by colour and touch."
        )
    if drying(case):
        return "It is done when it is dry, and thin, usually dry air takes the water away faster: look at it early."
    if case.dish_class in dry.TOASTED:
        return "It browns and dries by the heat of the oven, as anywhere: go by colour and smell."
    boil = case.say.temp(case.here.boiling_c)
    pace = "more slowly" if case.here.boiling_c < case.there.boiling_c else f"sooner than at {case.baseline}"
    if case.dish_class in ROOTS:
        return (
            f"The oven browns as anywhere, but inside a potato or root it is never hotter than its own boil, {boil} "
            f"here, so it softens {pace}. The range runs from small and covered to whole."
        )
    if heated_through(case.dish_class):
        target = case.say.temp(core_c(case.request.dish, case.dish_class))
        return (
            f"It is done when the middle reaches {target}, and the wet inside never passes {boil}: it gets there a "
            f"little {pace}, while the top browns by the heat of the oven."
        )
    return f"What is wet inside stays under {boil} here and softens {pace}; the outside browns as anywhere."


def gratin(case: Case) -> bool:
    """Whether the dish is roots in a sauce, and not a whole root."""
    return "gratin" in case.traits


@rule("bake.covered", "common-practice", "computed")
def covered(case: Case) -> Part | None:
    """Casseroles and gratins: covered against drying."""
    if not (case.dish_class in ("casserole", "starch_pudding") or gratin(case)) or not dries(case):
        return None
    percent = round((drying_ratio(case.here.elevation_m) - 1) * 20) * 5
    return Part(
        steps=(
            "Cover it for the first two thirds of the time, and start with a few spoonfuls more liquid; uncover it to "
            "brown.",
        ),
        because=f"An open dish loses water about {percent} % faster here, so the top is dry before the middle is hot.",
    )


@rule("bake.water_bath", "common-practice", "computed")
def water_bath(case: Case) -> Part | None:
    """Custards in a water bath."""
    if case.dish_class not in WATER_BATH:
        return None
    return Part(
        steps=(
            "Set the dish in a pan of hot water reaching halfway up, and top it up: it dries away faster in thin air.",
            "Take it out when the edge is set and the middle still trembles, at 170–180 °F (77–82 °C).",
        ),
        because=f"Custard sets at 170–180 °F (77–82 °C), under the boil of {case.say.temp(case.here.boiling_c)} here, "
        "so it sets as anywhere. The bath cannot pass the boil and stands well below it, since it cools as it dries: "
        "a little gentler here, and a little slower.",
    )


@rule("bake.core", "common-practice", "iapws-r7-97")
def centre(case: Case) -> Part | None:
    """What the centre of bread, cake or a whole potato reads when it is done: just under the boil, which is lower."""
    of = done_readings.reading(case.request.dish, case.dish_class)
    if of is None or of.bound != "boil" or gratin(case):
        return None
    low, high = of.here(case.here, case.sea)
    figure = Figure(
        "done_temperature", "Centre when done", round((low + high) / 2, 2), "degC", round(low, 2), round(high, 2),
        round((of.low_c + of.high_c) / 2, 2),
    )  # fmt: skip
    if high >= of.high_c - 0.3:
        return Part(figures=(figure,))
    return Part(
        figures=(figure,),
        steps=(
            f"By thermometer it is done at {case.say.temp_span(low, high)} in the centre; it never reads the "
            f"{case.say.temp(of.high_c)} of sea level here.",
        ),
    )


@rule("bake.reach", "usda-fsis-safe-temperatures")
def leftovers(case: Case) -> Part | None:
    """Casseroles: hot in the middle before they are served."""
    if case.dish_class != "casserole":
        return None
    text = "A casserole put together cold takes longest in the middle: check there, not at the edge."
    return Part(cautions=(Caution("note", text, ("usda-fsis-safe-temperatures",)),))


@rule("bake.kept_liquid", "common-practice")
def kept(case: Case) -> Part:
    """A covered pot in the oven is held by its liquid."""
    return Part(
        steps=("Bring the liquid to the boil before it goes in, and keep the lid on tight.",),
        because="In a covered dish the liquid decides, not the oven air: a hotter oven only boils it away.",
    )


WET_RULES: tuple[Rule, ...] = (
    boiling_point,
    threshold,
    temperature_rule(POT, "Liquid in the covered dish", "Let the liquid come to about {temp}, a bare simmer."),
    time_rule(POT),
    oven,
    kept,
    extra_liquid_rule(POT),
    rice,
    dry.check,
    kidney_beans,
    way_out,
)
DRY_RULES: tuple[Rule, ...] = (
    oven, time, water_bath, covered, centre, boiling_point, dry.core, dry.check, leftovers, jerky,
)  # fmt: skip
NEEDS = ("elevation", "dish")


def rules_for(request: Request | None) -> tuple[Rule, ...]:
    """The rules of a covered wet dish, of anything else, or all of them."""
    if request is None:
        return tuple(dict.fromkeys((*WET_RULES, *DRY_RULES, *chamber.RULES)))
    return WET_RULES if request.dish_class in WET else chamber.guarded(request, DRY_RULES)


def needs(request: Request) -> tuple[str, ...]:
    """What must be known first; nothing for a refusal."""
    return chamber.needs(request, NEEDS)
