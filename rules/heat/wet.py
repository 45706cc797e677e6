"""Time in wet heat: what boil, simmer, poach, braise, stew, steam and the pressure cooker have in common.

The food is at the temperature of the liquid or steam, so the time follows the rate of softening at that temperature.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

from rules import safety
from rules.book import Case, Part, Rule, celsius, rule
from rules.foods import beans, dishes
from rules.heat import burner
from rules.heat.cook_times import (
    check_step,
    from_frozen,
    frozen_factor,
    moved_span,
    no_time,
    stated_span,
    time_figures,
)
from rules.heat.headline import takes
from rules.model import Caution, Figure
from rules.physics import evaporation, kinetics
from rules.physics.ambient import Ambient
from rules.physics.units import CM_PER_IN, FT_PER_M, round_to
from rules.said import Measure, Said, Words, duration_span, number, sentences, temp, temp_drop, together, volume

NOTICEABLE_K = 0.05
LEAST_EXTRA_ML = 20.0
RICE_FROM_K = 3.0
LONGER_AS_PERCENT = 1.9
PUBLISHED_PERCENT_PER_1000_FT = (4, 11)
PUBLISHED_FROM_FT = 2000
say = sentences("heat/wet")


@dataclass(frozen=True, slots=True)
class Pot:
    """How a wet method holds its food.

    method: the method word; heat: what surrounds the food: liquid, water, steam, crock
    below_boil_k: how far under the boil it is kept [K]
    hold_c: the temperature it is kept at where the boil allows [degC]; None where the boil decides
    area_m2: surface of the liquid that is reckoned with [m2]; across_cm: how wide such a pot is [cm]
    """

    method: str
    heat: str
    below_boil_k: float = 0.0
    hold_c: float | None = None
    area_m2: float = 0.04
    across_cm: float = 22.0

    def working_c(self, air: Ambient) -> float:
        """Temperature around the food in this air [degC]."""
        ceiling_c = air.boiling_c - self.below_boil_k
        return ceiling_c if self.hold_c is None else min(self.hold_c, ceiling_c)

    def heats(self, case: Case) -> Heats:
        """The temperatures that decide the time in one case."""
        return Heats(self.method, self.heat, *(self.working_c(air) for air in (case.here, case.there, case.sea)))


@dataclass(frozen=True, slots=True)
class Heats:
    """What surrounds the food, and its temperature [degC] here, at the baseline, and where the table's time holds.

    heat: as that of a Pot, or steam_inside for a pressure cooker
    published: time here over time at the baseline by a published rule that goes before the rate of softening
    """

    method: str
    heat: str
    here_c: float
    there_c: float
    table_c: float
    published: float | None = None

    def pace(self, dish_class: str) -> tuple[float, float, float]:
        """Time here over time at the baseline: likely, and the ends of its range.

        Where a published rule gives the likely one, the range still takes in how fast the class softens.
        """
        soft = kinetics.softening(dish_class)
        rates = [kinetics.rate_factor(self.here_c, self.there_c, z) for z in (soft.z_low_k, soft.z_k, soft.z_high_k)]
        if self.published is None:
            return rates[1], min(rates), max(rates)
        return self.published, min(*rates, self.published), max(*rates, self.published)


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
        dry = beans.unsoaked_time(*food) if case.request.soaked is False else None
        cut = dishes.cut_times(case.request.dish, heats.method).get(case.request.cut or "")
        span = dry or cut or dishes.sea_level_time(*food)
        if span is None:
            return None
        moved = kinetics.rate_factor(heats.there_c, heats.table_c, soft.z_k)
        moved *= frozen_factor(case, heats.method)
        low, high, source = span.low_min * moved, span.high_min * moved, span.source
    factor, least, most = heats.pace(case.dish_class)
    here = moved_span((low, high), (least, factor, most))
    return WetTime(low, high, *here, factor, source, stated is not None)


def time_part(case: Case, heats: Heats, called: Words = "") -> Part:
    """The time with its reason; where no tested time is known, by how much to lengthen the cook's own.

    What is boiled down goes by the burner and not by softening.
    called: what to call the dish in the headline, if not by its name alone
    """
    if "boiled_down" in case.traits and heats.method in ("boil", "simmer"):
        return burner.boiled_down(case, heats.method)
    time = wet_time(case, heats)
    if time is None:
        return _no_time(case, heats)
    figures = figures_of(case, time)
    return Part(
        figures=figures,
        headline=takes(case, heats.method, figures, called) if case.request.topic == "time" else "",
        because=together(_why(case, time, heats), from_frozen(case, heats.method)),
        maths=_maths(case, heats, time.factor),
        sources=tuple(dict.fromkeys((kinetics.softening(case.dish_class).source, time.source))),
    )


def figures_of(case: Case, time: WetTime) -> tuple[Figure, Figure]:
    """The figures of a time in wet heat, here and at the baseline."""
    return time_figures(case, (time.base_low_min, time.base_high_min), (time.low_min, time.likely_min, time.high_min))


def _maths(case: Case, heats: Heats, factor: float) -> Said:
    soft = kinetics.softening(case.dish_class)
    figures = {
        "there": number(heats.there_c, 1),
        "here": number(heats.here_c, 1),
        "z": number(soft.z_k),
        "z_low": number(soft.z_low_k),
        "z_high": number(soft.z_high_k),
        "factor": number(factor),
    }
    return say("maths", **figures) if heats.published is None else say("maths-published", **figures)


def _no_time(case: Case, heats: Heats) -> Part:
    likely, least, most = heats.pace(case.dish_class)
    why = together(pace_here(case, heats, likely), say("work-from-yours", baseline=case.baseline))
    part = no_time(case, (least, likely, most), why, kinetics.softening(case.dish_class).source)
    return replace(part, maths=_maths(case, heats, likely))


def pace_here(case: Case, heats: Heats, factor: float) -> Said:
    """How much slower or quicker it goes here than at the baseline, in one sentence."""
    drop, heat = heats.there_c - heats.here_c, say("heat", of=heats.heat)
    if abs(drop) < NOTICEABLE_K:
        return say("same-heat", heat=heat, temp=temp(heats.here_c), baseline=case.baseline)
    return say(
        "other-heat",
        heat=heat,
        drop=temp_drop(abs(drop)),
        way="cooler" if drop > 0 else "hotter",
        baseline=case.baseline,
        pace=pace_words(factor),
    )


def pace_words(factor: float) -> Said:
    """How much longer, as a cook says it, to stand after "takes": "about 43 % longer", "about twice as long".

    >>> [dict(pace_words(factor).values)["way"] for factor in (1.004, 0.8, 1.43, 3.22)]
    ['same', 'less', 'more', 'times']
    >>> dict(pace_words(2.47).values)["times"], dict(pace_words(2.47).values)["half"]
    (2, 'yes')
    """
    percent, halves = number(abs(factor - 1) * 100, 0), int(round_to(factor * 2, 1))
    if percent == number(0, 0):
        way = "same"
    elif factor < 1:
        way = "less"
    else:
        way = "more" if factor < LONGER_AS_PERCENT else "times"
    return say("pace", way=way, percent=percent, times=halves // 2, half="yes" if halves % 2 else "no")


def _why(case: Case, time: WetTime, heats: Heats) -> Words:
    moved = abs(heats.there_c - heats.here_c) >= NOTICEABLE_K
    way = "same" if not moved else "cooler" if heats.there_c > heats.here_c else "hotter"
    pace = pace_here(case, heats, time.factor)
    if not time.stated:
        return together(pace, say("range", varies=dishes.classes()[case.dish_class].varies, way=way))
    base = duration_span(time.base_low_min, time.base_high_min)
    return together(pace, say("range-of-yours", base=base, way=way) if moved else "")


def published_rule(pot: Pot) -> Rule:
    """A rule for what extension tests found for boiled and steamed food, beside the softening rate."""

    @rule(f"{pot.method}.published", "uwyo-altitude-adjusters")
    def published(case: Case) -> Part | None:
        """The published rule for boiled food, 4 to 11 % more for each 1,000 ft, beside the softening rate."""
        tested = "plain_boiled" in case.traits or case.dish_class == "general"
        times = wet_time(case, pot.heats(case)) if tested else None
        thousands_ft = case.here.elevation_m * FT_PER_M / 1000
        if times is None or case.there.elevation_m or thousands_ft < PUBLISHED_FROM_FT / 1000:
            return None
        # printed for each 1,000 ft, and set beside our own pace for each: the text does not say how they add up
        low, high = PUBLISHED_PERCENT_PER_1000_FT
        ours = (times.factor ** (1 / thousands_ft) - 1) * 100
        ends = (low + high) / 2, "percent", float(low), float(high)
        return Part(
            figures=(Figure("published_percent", say("published-label"), *ends),),
            because=say(
                "published",
                pace=pace_words(times.factor),
                relation="inside" if low <= ours <= high else "under" if ours < low else "above",
            ),
        )

    return published


def temperature_rule(pot: Pot, label: Said, step: Callable[[Case, Measure], Said]) -> Rule:
    """A rule for the temperature around the food. step: what to do, told of a case with that temperature."""

    @rule(f"{pot.method}.liquid_temperature", "common-practice")
    def liquid_temperature(case: Case) -> Part:
        """The temperature around the food, which the boiling point carries down with it."""
        here_c = pot.working_c(case.here)
        return Part(
            figures=(celsius("liquid_temperature", label, here_c, pot.working_c(case.sea)),),
            steps=(step(case, temp(here_c)),),
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
        if times is None or "boiled_down" in case.traits or hardly_softens(case):
            return None
        covered = "uncovered" not in case.traits if case.request.covered is None else case.request.covered
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
            figures=(Figure("extra_liquid", say("extra-liquid-label"), extra_ml, "ml"),),
            steps=(say("extra-liquid-step", extra=volume(extra_ml)),),
            because=say(
                "extra-liquid",
                extra=volume(extra_ml),
                lid="covered" if covered else "open",
                cm=number(pot.across_cm, 0),
                inches=number(pot.across_cm / CM_PER_IN, 0),
            ),
        )

    return extra_liquid


@rule("wet.check", "common-practice", "usda-fsis-safe-temperatures")
def check(case: Case) -> Part | None:
    """What to check for, since the clock is only a guide, and the safe temperature where one counts."""
    if case.dish_class == "water":
        return None
    safe = safety.safe_temperature(case.request.dish, case.dish_class)
    return Part(
        steps=(check_step(case),),
        cautions=(safety.caution(case, safe),) if safe and safe.always_said else (),
    )


def hardly_softens(case: Case) -> bool:
    """Whether water boils so cool here that such food is better off in a pressure cooker."""
    threshold_c = kinetics.softening(case.dish_class).threshold_c
    return threshold_c is not None and case.here.boiling_c < threshold_c


@rule("wet.threshold", "common-practice")
def threshold(case: Case) -> Part | None:
    """A food that practically does not soften where water boils this cool: say so, and offer the pressure cooker."""
    soft = kinetics.softening(case.dish_class)
    if soft.threshold_c is None or not hardly_softens(case):
        return None
    least = temp(soft.threshold_c)
    return Part(
        headline=say(
            "threshold-headline",
            food=case.food,
            place=case.place,
            poison="yes" if beans.boil_spares_poison(case) else "no",
            oven="yes" if case.request.method == "bake" else "no",
        ),
        cautions=(Caution("warn", say("threshold-caution", least=least, food=case.food), ("common-practice",)),),
        because=say("threshold", least=least),
    )


@rule("wet.rice", "common-practice", "rice-cooking-kinetics")
def rice(case: Case) -> Part | None:
    """Rice where water boils cooler: soaked before, left to stand after, in a pot or a rice cooker."""
    if (
        case.dish_class != "rice"
        or "stirred_rice" in case.traits
        or case.sea.boiling_c - case.here.boiling_c < RICE_FROM_K
    ):
        return None
    return Part(steps=(say("rice-step"),), because=say("rice"))


@rule("wet.bean_boil", "usu-ask-extension", "fda-bad-bug-book")
def bean_boil(case: Case) -> Part | None:
    """What comes first in an open pot with beans that poison until they have boiled: a soak and a hard boil."""
    if "lectin" not in case.traits or case.here.boiling_c < beans.LEAST_BOIL_C:
        return None
    least, full = (number(minutes, 0) for minutes in beans.BOIL_MIN)
    soaked, soak = "yes" if case.request.soaked else "no", number(beans.SOAK_H[0])
    if beans.poisonous_dry(case):
        return Part(steps=(say("boil-beans-first", soaked=soaked, soak=soak, least=least, full=full),))
    return Part(steps=(say("boil-beans-apart", soaked=soaked, soak=soak, least=least, full=full),))


@rule("wet.kidney_beans", "usu-ask-extension", "fda-bad-bug-book")
def kidney_beans(case: Case) -> Part | None:
    """The natural poison of kidney beans and their kin, by themselves or in a dish, which a slow simmer spares."""
    if "lectin" not in case.traits:
        return None
    if case.here.boiling_c < beans.LEAST_BOIL_C:
        poison = say("kidney-beans-cool-boil", boil=temp(case.here.boiling_c), place=case.place)
        return Part(cautions=(Caution("stop", poison, ("fda-bad-bug-book", "from-memory")),))
    if not beans.poisonous_dry(case):
        return Part(cautions=(Caution("warn", say("beans-in-it"), ("usu-ask-extension", "fda-bad-bug-book")),))
    least, full = (number(minutes, 0) for minutes in beans.BOIL_MIN)
    text = say("kidney-beans", least=least, full=full, boil="cool" if beans.boils_cool(case) else "usual")
    return Part(cautions=(Caution("warn", text, ("usu-ask-extension", "fda-bad-bug-book")),))
