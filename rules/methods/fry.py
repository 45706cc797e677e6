"""Fry: in deep fat or in a film of it. Deep fat runs cooler the higher one climbs, and the frying takes longer."""

from __future__ import annotations

from rules.baking import frying
from rules.book import Case, Part, rule
from rules.foods import eggs, popcorn
from rules.heat import dry
from rules.heat.dry import Pace, PaceOf, heated_through, set_to, setting_figure, span, wet_surface_pace
from rules.heat.heat_settings import Setting
from rules.heat.where_water_boils import boiling_point
from rules.model import Caution
from rules.physics.ambient import Ambient
from rules.say import number

HIGHEST_ADVICE_M = 3048.0
BATCHES = (
    "Let it come back between batches, and keep them small: wet food brings the fat down and boils up.",
    "Fry one dry piece first and cut it open: brown outside and raw inside, the fat is still too hot.",
)
THIN_SHARE = (1 / 3, 2 / 3)
BARELY_COOKED = (
    "egg", "leafy_green", "nuts", "popcorn", "flatbread", "dried_bean", "lentil", "rice", "noodle", "pasta",
    "yeast_bread", "cured_meat",
)  # fmt: skip
MEATS = ("tender_cut", "ground_meat", "sausage", "poultry_pieces", "whole_bird", "fish", "shellfish", "offal")


def drop_k(elevation_m: float) -> tuple[float, float, float]:
    """How far deep fat is turned down at an elevation [m] against sea level [K]: least, as published, most.

    Held above 10,000 ft, where the advice ends.
    source: uwyo-altitude-adjusters

    >>> [round(k * 1.8) for k in drop_k(1524)]
    [10, 15, 15]
    """
    fall = frying.difference_k(0.0, min(max(elevation_m, 0.0), HIGHEST_ADVICE_M))
    return -fall.high + 0.0, -fall.value + 0.0, -fall.low + 0.0


def fat(case: Case) -> tuple[Setting, Setting]:
    """The fat here and at sea level: what the cook gave holds at the baseline; a pan stays as it is."""
    there, stated = set_to(case, "fry")
    if there.way != "deep":
        return there, there
    at_baseline = drop_k(case.there.elevation_m)[1] if stated else 0.0
    sea = Setting(there.low_c + at_baseline, there.high_c + at_baseline, there.way)
    _, down, most = drop_k(case.here.elevation_m)
    low = sea.low_c - (most if not stated else down)
    return Setting(low, sea.high_c - down, sea.way), sea


@rule("fry.fat", "uwyo-altitude-adjusters", "csu-high-altitude-food-prep", "common-practice")
def fat_temperature(case: Case) -> Part:
    """The temperature of the fat here, by the published rule for deep fat."""
    here, sea = fat(case)
    hot = span(case, here)
    if case.dish_class == "popcorn":
        return Part(figures=(setting_figure("fat_temperature", "Pan and oil", here, sea),))
    if here.way != "deep":
        return Part(
            figures=(setting_figure("fat_temperature", "Pan, by surface thermometer", here, sea),),
            headline=f"Heat the pan to {hot} for {case.food} at {case.place}, as at sea level."
            if case.request.topic == "temperature"
            else "",
            steps=(
                "Heat the pan before the fat and the fat before the food; pat the food dry, so that it browns at once.",
            ),
            because="A pan is as hot as the burner makes it, and browning goes by that heat, so a film of fat needs no "
            "change. Only deep fat has a published rule, which turns it down.",
            sources=("common-practice",),
        )
    lower = sea.middle_c - here.middle_c
    turned = case.say.temp_drop(lower)
    return Part(
        figures=(setting_figure("fat_temperature", "Deep fat", here, sea),),
        headline=_headline(case, here, sea),
        steps=(f"Hold the fat at {hot} by thermometer.", *(() if case.dish_class == "whole_bird" else BATCHES)),
        because=(
            f"Published advice turns deep fat down about 3 °F (1.7 °C) for every 1,000 ft (305 m), {turned} here, and "
            f"fries longer. The water in the food boils away at {case.say.temp(case.here.boiling_c)} and keeps the "
            "middle at that, while the crust browns at the old pace: hotter fat would burn the outside first."
        )
        if lower > 0.5
        else "At this elevation the fat needs no change.",
    )


def _headline(case: Case, here: Setting, sea: Setting) -> str:
    if case.request.topic != "temperature":
        return ""
    if sea.middle_c - here.middle_c < 0.5:
        return f"Hold the fat at {span(case, here)} for {case.food} at {case.place}, as at sea level."
    return (
        f"Hold the fat at {span(case, here)} for {case.food} at {case.place}, against {span(case, sea)} at sea level."
    )


def pace_of(case: Case) -> PaceOf:
    """How much longer frying takes: the cooler fat drives less heat, and the wet middle cooks at a cooler boil.

    What is fried is thin and half of it crust, so one to two thirds of the slowing by the boil is counted.
    """
    wet = wet_surface_pace(case)
    here, sea = fat(case)
    asked_drop = here.way == "deep"

    def pace(air: Ambient) -> Pace:
        if case.dish_class in BARELY_COOKED:
            return Pace(1.0, 1.0, 1.0)
        full = wet(air)
        whole = full.high if full.high > 1 else full.low
        of = Pace(*sorted((1.0, *(whole**share for share in THIN_SHARE))))
        if not asked_drop:
            return of
        at_sea_k = sea.middle_c - case.sea.boiling_c
        drive = at_sea_k / (at_sea_k - drop_k(air.elevation_m)[1] + case.sea.boiling_c - air.boiling_c)
        return Pace(*sorted((of.low * drive, of.likely * drive, of.high * drive)))

    return pace


@rule("fry.time", "computed", "uwyo-altitude-adjusters")
def time(case: Case) -> Part:
    """How long it fries here."""
    if case.dish_class in BARELY_COOKED:
        return dry.time_part(
            case, "fry", pace_of(case), "It is done by the heat of the pan, well before the boil counts: go by eye.",
            "common-practice",
        )  # fmt: skip
    done = "gets hot through" if heated_through(case.dish_class) else "softens"
    pace = pace_of(case)
    ratio = pace(case.here).likely / pace(case.there).likely
    much = f"about {number((ratio - 1) * 100, 0)} % longer" if ratio > 1.015 else "hardly longer"
    why = (
        f"Until it is dry the middle cannot pass the boil, so it {done} a little more slowly: {much}, reckoned by "
        "heat. The published rule says only to fry longer; colour and a cut piece decide."
    )
    if not case.moved:
        why = f"Water boils here as at {case.baseline}, so the time stays."
    elif ratio < 1:
        why = f"The boil is hotter here than at {case.baseline}, so the middle {done} a little sooner."
    return dry.time_part(case, "fry", pace, why, "computed", "uwyo-altitude-adjusters")


@rule("fry.smoke_point", "from-memory", "computed")
def smoke_point(case: Case) -> Part | None:
    """What thin air does to the fat itself: nothing; to the water in the food, more."""
    if case.here.elevation_m < 600 or case.dish_class in BARELY_COOKED:
        return None
    return Part(
        because="The smoke point belongs to the oil and does not move with elevation that a cook would see. Moisture "
        f"does: it boils off at {case.say.temp(case.here.boiling_c)} and takes more room as steam, so a full kettle "
        "foams higher than at sea level. Leave more headroom."
    )


@rule("fry.hot_fat", "common-practice")
def hot_fat(case: Case) -> Part | None:
    """The usual cautions with hot fat."""
    here, _ = fat(case)
    if here.way != "deep":
        text = "Keep a lid beside the pan and smother burning fat with it; never throw water on it."
        return Part(cautions=(Caution("note", text, ("common-practice",)),)) if case.dish_class in MEATS else None
    text = (
        "Never fill a kettle past half, never leave it, and keep water and wet food away from hot fat. If it smokes, "
        "turn it off; if it burns, put the lid on and the heat off, never water."
    )
    cautions = [Caution("warn", text, ("common-practice",))]
    if case.dish_class == "whole_bird":
        bird = (
            "Fry a whole bird outdoors only, on level ground away from walls, fully thawed and dry: a frozen or wet "
            "bird throws burning fat."
        )
        cautions.insert(0, Caution("warn", bird, ("common-practice",)))
    return Part(cautions=tuple(cautions))


RULES = (
    popcorn.pops, fat_temperature, time, boiling_point, dry.core, dry.check, smoke_point, popcorn.larger, eggs.safety,
    hot_fat,
    popcorn.hot_fat,
)  # fmt: skip
