"""Bake: doughs by the published tables, covered wet dishes by the boil, the rest by heat on its way to the middle."""

from __future__ import annotations

from functools import lru_cache

from rules.book import Case, Part, Rule, rule
from rules.foods.dishes import traits_of
from rules.heat import chamber, done_readings, dry
from rules.heat.dry import Pace, PaceOf, core_c, dries, heated_through, oven_stays, set_to, setting_figure
from rules.heat.heat_settings import Setting
from rules.heat.pots import BAKE
from rules.heat.way_out import way_out
from rules.heat.wet import (
    bean_boil,
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
from rules.said import Words, number, sentences, temp, temp_drop, temp_span

say = sentences("methods/bake")

DOUGHS = {
    "layer_cake": "layer_cake", "foam_cake": "foam_cake", "pound_cake": "pound_cake", "quick_bread": "quick_bread",
    "biscuit": "biscuit", "cookie": "cookie", "brownie": "brownie", "yeast_bread": "yeast_bread",
    "flatbread": "yeast_bread", "laminated": "laminated", "pizza": "pizza", "pie": "pie", "choux": "choux",
    "souffle": "souffle", "meringue": "meringue",
}  # fmt: skip

ONE_DIFFERENCE_K = 0.5
# from here on beans in a pot of the oven want half as long again and more
TENDER_FIRST_K = 4.0


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
    if case.dish_class in DOUGHS and abs(dough_oven_k(case)[0]) > 1:
        return _oven_moved(case, here, there)
    why = say("tables-leave-oven") if case.dish_class in DOUGHS else say("oven-as-written")
    return oven_stays(case, here, case.baseline, why)


def _oven_moved(case: Case, here: Setting, there: Setting) -> Part:
    asked = case.request.topic == "temperature"
    _, low_k, high_k = dough_oven_k(case)
    least, most = sorted((abs(low_k), abs(high_k)))
    headline = say(
        "oven-moved",
        setting=here.span,
        food=case.food,
        place=case.place,
        usual=there.span,
        baseline=case.baseline,
    )
    return Part(
        figures=(setting_figure("oven", say("oven"), here, there),),
        headline=headline if asked else "",
        steps=(say("oven-moved-step", setting=here.span),),
        because=say(
            "oven-moved-because",
            least=temp_drop(least),
            most=temp_drop(most),
            ends="two" if most - least >= ONE_DIFFERENCE_K else "one",
            way="up" if low_k + high_k > 0 else "down",
        ),
        sources=("uwyo-altitude-adjusters",),
    )


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
    return (
        ("carslaw-jaeger",)
        if heated_through(case.dish_class, case.request.dish)
        else (kinetics.softening(case.dish_class).source,)
    )


def _why(case: Case) -> Words:
    if not case.moved:
        return dry.nothing_differs(case)
    if case.dish_class in DOUGHS:
        return _dough_why(pace_of(case)(case.here).likely / pace_of(case)(case.there).likely)
    if drying(case):
        return say("until-dry")
    if "toasted" in case.traits:
        return dry.by_colour()
    boil = temp(case.here.boiling_c)
    pace = "slower" if case.here.boiling_c < case.there.boiling_c else "sooner"
    if "root" in case.traits:
        return say("root-softens", boil=boil, pace=pace, baseline=case.baseline)
    if heated_through(case.dish_class, case.request.dish):
        core = temp(core_c(case.request.dish, case.dish_class))
        return say("heated-through", core=core, boil=boil, pace=pace, baseline=case.baseline)
    return say("softens", boil=boil, pace=pace, baseline=case.baseline)


def _dough_why(ratio: float) -> Words:
    if abs(ratio - 1) <= 0.01:
        return say("tables-leave-time")
    return say("dough-time", oven="hotter" if ratio < 1 else "cooler", pace=pace_words(ratio))


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
        steps=(say("covered-step"),),
        because=say("covered-because", percent=number(percent)),
    )


@rule("bake.water_bath", "common-practice", "computed")
def water_bath(case: Case) -> Part | None:
    """Custards in a water bath."""
    if "water_bath" not in case.traits:
        return None
    return Part(
        steps=(say("water-bath"),),
        because=say("custard-because", boil=temp(case.here.boiling_c)),
    )


@rule("bake.core", "common-practice", "iapws-r7-97")
def centre(case: Case) -> Part | None:
    """What the centre of bread, cake or a whole potato reads when it is done: just under the boil, which is lower."""
    of = done_readings.reading(case.request.dish, case.dish_class)
    if of is None or of.bound != "boil" or gratin(case):
        return None
    low, high = of.here(case.here, case.sea)
    figure = Figure(
        "done_temperature", say("done-label"), round((low + high) / 2, 2), "degC", round(low, 2), round(high, 2),
        round((of.low_c + of.high_c) / 2, 2),
    )  # fmt: skip
    if high >= of.high_c - 0.3:
        return Part(figures=(figure,))
    return Part(
        figures=(figure,),
        steps=(say("done-step", done=temp_span(low, high), sea=temp(of.high_c)),),
    )


@rule("bake.reach", "usda-fsis-safe-temperatures")
def leftovers(case: Case) -> Part | None:
    """Casseroles: hot in the middle before they are served."""
    if case.dish_class != "casserole":
        return None
    return Part(cautions=(Caution("note", say("put-together-cold"), ("usda-fsis-safe-temperatures",)),))


@rule("bake.kept_liquid", "common-practice")
def kept(case: Case) -> Part:
    """A covered pot in the oven is held by its liquid."""
    return Part(steps=(say("kept-step"),), because=say("kept-because"))


@rule("bake.tender_first", "common-practice")
def tender_first(case: Case) -> Part | None:
    """Dry beans where water boils cooler: made tender in a pot, since the oven is for their crust and taste."""
    if case.dish_class != "dried_bean" or case.sea.boiling_c - case.here.boiling_c < TENDER_FIRST_K:
        return None
    return Part(steps=(say("tender-first"),))


WET_RULES: tuple[Rule, ...] = (
    boiling_point,
    threshold,
    bean_boil,
    tender_first,
    temperature_rule(BAKE, say("liquid-label"), lambda _, liquid: say("liquid-step", liquid=liquid)),
    time_rule(BAKE),
    oven,
    kept,
    extra_liquid_rule(BAKE),
    rice,
    dry.check,
    kidney_beans,
    way_out,
)
DRY_RULES: tuple[Rule, ...] = (
    bean_boil, oven, time, water_bath, covered, centre, boiling_point, dry.core, dry.check, kidney_beans, leftovers,
    jerky,
)  # fmt: skip
NEEDS = ("elevation", "dish")


def rules_for(request: Request | None) -> tuple[Rule, ...]:
    """The rules of a covered wet dish, of anything else, or all of them."""
    if request is None:
        return tuple(dict.fromkeys((*WET_RULES, *DRY_RULES, *chamber.RULES)))
    wet = "in_liquid" in traits_of(request.dish, request.dish_class)
    return WET_RULES if wet else chamber.guarded(request, DRY_RULES)


def needs(request: Request) -> tuple[str, ...]:
    """What must be known first; nothing for a refusal."""
    return chamber.needs(request, NEEDS)
