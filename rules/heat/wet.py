"""Time in wet heat: what boil, simmer, poach, braise, stew, steam and the pressure cooker have in common.

The food is at the temperature of the liquid or steam, so the time follows the rate of softening at that temperature.
"""

from __future__ import annotations

from dataclasses import dataclass

from rules import safety
from rules.book import Case, Part, Rule, celsius, rule
from rules.foods import beans, dishes
from rules.heat import burner
from rules.heat.cook_times import stated_span, time_figures
from rules.heat.headline import takes
from rules.model import Caution, Figure
from rules.physics import evaporation, kinetics
from rules.physics.ambient import Ambient
from rules.physics.units import FT_PER_M, round_to
from rules.say import duration_span, number

NOTICEABLE_K = 0.05
LEAST_EXTRA_ML = 20.0
RICE_FROM_K = 3.0
LONGER_AS_PERCENT = 1.9
TIMES = {2.0: "twice", 3.0: "three times", 4.0: "four times", 5.0: "five times"}
PUBLISHED_PERCENT_PER_1000_FT = (4, 11)
PUBLISHED_FROM_FT = 2000
TESTED_BOILED = (
    "pasta", "noodle", "dumpling", "rice", "whole_grain", "porridge", "dried_bean", "lentil", "starchy_root",
    "root_vegetable", "tender_vegetable", "leafy_green", "mushroom", "fruit", "dried_fruit", "general",
)  # fmt: skip
BOILED_DOWN = ("syrup", "candy", "jam")
OPEN_POTS = ("sauce", "stock", "soup", "syrup", "jam")


@dataclass(frozen=True, slots=True)
class Pot:
    """How a wet method holds its food.

    method: the method word; heat: what surrounds the food, in words ("the liquid")
    below_boil_k: how far under the boil it is kept [K]
    hold_c: the temperature it is kept at where the boil allows [degC]; None where the boil decides
    area_m2: surface of the liquid that is reckoned with [m2]; size: the same pot in words
    """

    method: str
    heat: str
    below_boil_k: float = 0.0
    hold_c: float | None = None
    area_m2: float = 0.04
    size: str = "22 cm (9 in)"

    def working_c(self, air: Ambient) -> float:
        """Temperature around the food in this air [degC]."""
        ceiling_c = air.boiling_c - self.below_boil_k
        return ceiling_c if self.hold_c is None else min(self.hold_c, ceiling_c)

    def heats(self, case: Case) -> Heats:
        """The temperatures that decide the time in one case."""
        return Heats(self.method, self.heat, *(self.working_c(air) for air in (case.here, case.there, case.sea)))


@dataclass(frozen=True, slots=True)
class Heats:
    """What surrounds the food, and its temperature [degC] here, at the baseline, and where the table's time holds."""

    method: str
    heat: str
    here_c: float
    there_c: float
    table_c: float


@dataclass(frozen=True, slots=True)
class WetTime:
    """A time in wet heat [min] here and at the baseline, each with its range.

    factor: time here over time at the baseline; stated: whether the cook gave the baseline time
    """

    base_low_min: float
    base_high_min: float
    low_min: float
    likely_min: float
    high_min: float
    factor: float
    source: str
    stated: bool

    @property
    def base_mid_min(self) -> float:
        """Middle of the baseline range [min]."""
        return (self.base_low_min + self.base_high_min) / 2


def wet_time(case: Case, heats: Heats) -> WetTime | None:
    """Time here from the time at the baseline; None where neither the cook nor the table gives one.

    The range spans both the baseline range and the range of z: a stubborn piece (small z) at the top when climbing.
    """
    soft = kinetics.softening(case.dish_class)
    stated = stated_span(case)
    if stated:
        (low, high), source = stated, "common-practice"
    else:
        food = (case.request.dish, case.dish_class, heats.method)
        span = (beans.unsoaked_time(*food) if case.request.soaked is False else None) or dishes.sea_level_time(*food)
        if span is None:
            return None
        moved = kinetics.rate_factor(heats.there_c, heats.table_c, soft.z_k)
        low, high, source = span.low_min * moved, span.high_min * moved, span.source
    ends = [kinetics.rate_factor(heats.here_c, heats.there_c, z) for z in (soft.z_low_k, soft.z_high_k)]
    factor = kinetics.rate_factor(heats.here_c, heats.there_c, soft.z_k)
    likely = (low + high) / 2 * factor
    return WetTime(low, high, low * min(ends), likely, high * max(ends), factor, source, stated is not None)


def time_part(case: Case, heats: Heats) -> Part:
    """The time with its reason; where no tested time is known, by how much to lengthen the cook's own.

    What is boiled down goes by the burner and not by softening.
    """
    if case.dish_class in BOILED_DOWN and heats.method in ("boil", "simmer"):
        return burner.boiled_down(case, heats.method)
    time = wet_time(case, heats)
    soft = kinetics.softening(case.dish_class)
    maths = (
        f"Factor = 10^(({number(heats.there_c, 1)} − {number(heats.here_c, 1)})/z) with z = {number(soft.z_k)} K "
        f"({number(soft.z_low_k)}–{number(soft.z_high_k)} K)"
    )
    if time is None:
        return _no_time(case, heats, soft, maths)
    figures = time_figures(
        case, (time.base_low_min, time.base_high_min), (time.low_min, time.likely_min, time.high_min)
    )
    return Part(
        figures=figures,
        headline=takes(case, heats.method, figures) if case.request.topic == "time" else "",
        because=_why(case, time, heats),
        maths=f"{maths}: ×{number(time.factor)}.",
        sources=tuple(dict.fromkeys((soft.source, time.source))),
    )


def _no_time(case: Case, heats: Heats, soft: kinetics.Softening, maths: str) -> Part:
    ends = [kinetics.rate_factor(heats.here_c, heats.there_c, z) for z in (soft.z_low_k, soft.z_high_k)]
    likely = kinetics.rate_factor(heats.here_c, heats.there_c, soft.z_k)
    low, mid, high = (round_to(f, 0.01) for f in (min(ends), likely, max(ends)))
    return Part(
        figures=(Figure("time_factor", f"Time against {case.baseline}", mid, "factor", low, high),),
        because=f"No tested time is known for this. {_pace(case, heats, likely)} Work from the time you know at "
        f"{case.baseline}.",
        maths=f"{maths}: ×{number(likely)}.",
        sources=(soft.source,),
    )


def _pace(case: Case, heats: Heats, factor: float) -> str:
    """How much slower or quicker it goes here than at the baseline, in one sentence."""
    drop = heats.there_c - heats.here_c
    if abs(drop) < NOTICEABLE_K:
        stands = f"{heats.heat.capitalize()} stands at {case.say.temp(heats.here_c)}"
        return f"{stands} here as at {case.baseline}, so the time stays."
    way = "cooler" if drop > 0 else "hotter"
    return (
        f"{heats.heat.capitalize()} is {case.say.temp_drop(abs(drop))} {way} than at {case.baseline}, and cooking "
        f"takes {pace_words(factor)} at that heat."
    )


def pace_words(factor: float) -> str:
    """How much longer, as a cook says it, to stand after "takes".

    >>> pace_words(1.43), pace_words(3.22), pace_words(2.02), pace_words(0.8), pace_words(1.004)
    ('about 43 % longer', 'about three times as long', 'about twice as long', 'about 20 % less time', 'as long')
    """
    percent = number(abs(factor - 1) * 100, 0)
    if percent == "0":
        return "as long"
    if factor < 1:
        return f"about {percent} % less time"
    if factor < LONGER_AS_PERCENT:
        return f"about {percent} % longer"
    halves = round_to(factor, 0.5)
    return f"about {TIMES.get(halves, number(halves, 1).replace('.5', '½') + ' times')} as long"


def _why(case: Case, time: WetTime, heats: Heats) -> str:
    moved = abs(heats.there_c - heats.here_c) >= NOTICEABLE_K
    strongly = f"how strongly the {'cooler' if heats.there_c > heats.here_c else 'hotter'} heat tells on the food"
    if time.stated:
        base = duration_span(time.base_low_min, time.base_high_min)
        of_what = f" The range around the {base} you gave is {strongly}." if moved else ""
    else:
        varies = dishes.classes()[case.dish_class].varies
        of_what = f" The range covers {varies}{f', and {strongly}' if moved else ''}."
    return f"{_pace(case, heats, time.factor)}{of_what}"


def published_rule(pot: Pot) -> Rule:
    """A rule for what extension tests found for boiled and steamed food, beside the softening rate."""

    @rule(f"{pot.method}.published", "uwyo-altitude-adjusters")
    def published(case: Case) -> Part | None:
        """The published rule for boiled food, 4 to 11 % more for each 1,000 ft, beside the softening rate."""
        times = wet_time(case, pot.heats(case)) if case.dish_class in TESTED_BOILED else None
        thousands_ft = case.here.elevation_m * FT_PER_M / 1000
        if times is None or case.there.elevation_m or thousands_ft < PUBLISHED_FROM_FT / 1000:
            return None
        low, high = (percent * thousands_ft for percent in PUBLISHED_PERCENT_PER_1000_FT)
        ours = (times.factor - 1) * 100
        relation = "inside that" if low <= ours <= high else "under that" if ours < low else "above that"
        return Part(
            figures=(
                Figure(
                    "published_percent", "Published rule adds", round((low + high) / 2), "percent", round(low),
                    round(high),
                ),
            ),
            because=f"Extension tests on boiled foods found 4 to 11 % more time for each 1,000 ft, {number(low, 0)} to "
            f"{number(high, 0)} % here. By its softening rate it takes {pace_words(times.factor)}, {relation}.",
        )  # fmt: skip

    return published


def temperature_rule(pot: Pot, label: str, step: str) -> Rule:
    """A rule for the temperature around the food. step: what to do, with {temp} for the temperature."""

    @rule(f"{pot.method}.liquid_temperature", "common-practice")
    def liquid_temperature(case: Case) -> Part:
        """The temperature around the food, which the boiling point carries down with it."""
        here_c = pot.working_c(case.here)
        return Part(
            figures=(celsius("liquid_temperature", label, here_c, pot.working_c(case.sea)),),
            steps=(step.format(temp=case.say.temp(here_c)),),
        )

    return liquid_temperature


def time_rule(pot: Pot) -> Rule:
    """A rule for the time: from the baseline, by the class's softening rate."""

    @rule(f"{pot.method}.time", "common-practice")
    def time(case: Case) -> Part:
        """How long it takes here, from the time at the baseline and the softening rate of the class."""
        return time_part(case, pot.heats(case))

    return time


def extra_liquid_rule(pot: Pot) -> Rule:
    """A rule for the liquid that a longer simmer boils off."""

    @rule(f"{pot.method}.extra_liquid", "ashrae-applications", "common-practice")
    def extra_liquid(case: Case) -> Part | None:
        """How much more liquid to start with, for the longer time."""
        times = wet_time(case, pot.heats(case))
        if times is None or case.dish_class in BOILED_DOWN:
            return None
        covered = case.dish_class not in OPEN_POTS if case.request.covered is None else case.request.covered
        extra_ml = evaporation.extra_liquid_ml(
            times.likely_min,
            times.base_mid_min,
            pot.area_m2,
            covered=covered,
            elevation_m=case.here.elevation_m,
            from_elevation_m=case.there.elevation_m,
        )
        extra_ml = round_to(extra_ml, 10)
        if extra_ml < LEAST_EXTRA_ML:
            return None
        return Part(
            figures=(Figure("extra_liquid", "Extra liquid to start with", extra_ml, "ml"),),
            steps=(f"Start with about {case.say.volume(extra_ml)} more liquid than the recipe says.",),
            because=f"The longer time boils off about {case.say.volume(extra_ml)} more, reckoned for "
            f"{'a covered' if covered else 'an open'} pot of {pot.size}.",
        )

    return extra_liquid


@rule("wet.check", "common-practice", "usda-fsis-safe-temperatures")
def check(case: Case) -> Part | None:
    """What to check for, since the clock is only a guide, and the safe temperature where one counts."""
    if case.dish_class == "water":
        return None
    check_for = dishes.classes()[case.dish_class].check_for(case.request.method)
    safe = safety.safe_temperature(case.request.dish, case.dish_class)
    return Part(
        steps=(f"Start checking at the early end of the range. {check_for}",),
        cautions=(safety.caution(case, safe),) if safe and safe.always_said else (),
    )


@rule("wet.threshold", "common-practice")
def threshold(case: Case) -> Part | None:
    """A food that practically does not soften where water boils this cool: say so, and offer the pressure cooker."""
    soft = kinetics.softening(case.dish_class)
    if soft.threshold_c is None or case.here.boiling_c >= soft.threshold_c:
        return None
    text = (
        f"Where water boils below {case.say.temp(soft.threshold_c)}, cooks find that {case.food} practically will not "
        "soften in an open pot. The time given is what the softening rate leads to; old beans may never get there. Use "
        "a pressure cooker."
    )
    return Part(
        headline=f"{case.food.capitalize()} practically will not soften in an open pot at {case.place}: use a "
        "pressure cooker.",
        cautions=(Caution("warn", text, ("common-practice",)),),
        because=f"Under {case.say.temp(soft.threshold_c)} the skins and walls of dried beans hold out, and even a full "
        "boil here is cooler than that.",
    )


@rule("wet.rice", "common-practice", "rice-cooking-kinetics")
def rice(case: Case) -> Part | None:
    """Rice where water boils cooler: soaked before, left to stand after, in a pot or a rice cooker."""
    if case.dish_class != "rice" or case.sea.boiling_c - case.here.boiling_c < RICE_FROM_K:
        return None
    return Part(
        steps=("Soak the rice 20 to 30 min first, and let it stand covered 10 min off the heat before you fluff it.",),
        because="A grain needs its middle wet before it can soften. A soak does that without heat, so the pot, or a "
        "rice cooker that stops as soon as it is dry, comes out less firm. Cooks at elevation often add only a tenth "
        "to the time: after a soak and a rest that may do, so taste a grain from then on.",
    )


@rule("wet.kidney_beans", "usu-ask-extension", "fda-bad-bug-book")
def kidney_beans(case: Case) -> Part | None:
    """The natural poison of kidney beans and their kin, which a slow simmer does not destroy."""
    if case.dish_class != "dried_bean" or "lectin" not in case.traits:
        return None
    least, full = beans.BOIL_MIN
    longer = "; where water boils this cool take the longer" if case.sea.boiling_c - case.here.boiling_c > 3 else ""
    text = (
        "Beans of this kind, kidney beans above all, carry a natural poison until they have boiled: soak them, pour "
        f"the water away, and boil hard in fresh water, {full:.0f} min by FDA, {least:.0f} min at the very least by "
        f"extension advice{longer}, before any gentler cooking. Never start them in a slow cooker."
    )
    return Part(cautions=(Caution("warn", text, ("usu-ask-extension", "fda-bad-bug-book")),))
