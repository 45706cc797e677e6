"""A setting of the cook's own: an oven, fat, a grate, the gauge of a pressure cooker."""

from __future__ import annotations

from rules.book import Part, rule
from rules.forms import Asked, opens
from rules.heat.compared import SET, Compared, compared
from rules.heat.headline import about, alike, doing
from rules.heat.pressure import inside_c, plausible_pa
from rules.heat.verdict import opened
from rules.physics.units import PSI_PER_PA
from rules.said import Words, gauge, oven, oven_span, sentences, temp

say = sentences("forms/enough")

# a setting that nobody would call another, and one cooler than any oven, fat or grate
SAME_SETTING_K, SETTING_FROM_C = 14.0, 100.0
COOLER_K = 1.0


@rule("enough.setting", "common-practice", "uwyo-altitude-adjusters")
def setting(asked: Asked) -> Part | None:
    """An oven, fat or a grate at the cook's setting, taken as that of the baseline."""
    asked = heated(asked)
    request, found = asked.request, compared(asked.answer)
    asked_c = request.temperature_c
    if asked_c is None or found is None or found.thing not in SET or request.temperature_of == "core":
        return None
    if asked_c < SETTING_FROM_C or found.thing in ("bath", "hold"):
        return None
    if found.way != "same":
        return Part(headline=opened(opens(asked, "no"), _setting(asked, "moved", asked_c, found)))
    usual = compared(asked.otherwise(temperature_c=None, temperature_of=None).answer)
    off = usual is not None and not usual.low_c - SAME_SETTING_K <= asked_c <= usual.high_c + SAME_SETTING_K
    if usual is not None and off:
        return Part(headline=opened(opens(asked, "no"), _setting(asked, "off", asked_c, usual)))
    return Part(headline=opened(opens(asked, "yes"), _setting(asked, "right", asked_c, found)))


def heated(asked: Asked) -> Asked:
    """The question as that of the heat, where a temperature no food has was taken for that of the food."""
    request = asked.request
    hot = request.temperature_c is not None and request.temperature_c >= SETTING_FROM_C
    if request.topic != "doneness" or not hot or request.dish_class is None:
        return asked
    return asked.otherwise(topic="temperature", temperature_of="oven")


def _setting(asked: Asked, fits: str, asked_c: float, found: Compared) -> Words:
    return say(
        "setting",
        fits=fits,
        thing=found.thing,
        asked=oven(asked_c),
        way="low" if asked_c < found.low_c else "high",
        here=oven_span(found.low_c, found.high_c),
        doing=doing(asked.case, asked.request.method or "bake"),
        place=asked.case.place,
        and_time=_and_time(asked),
    )


def _and_time(asked: Asked) -> Words:
    return "" if asked.time is None or alike(*asked.time) else say("and-time", time=about(asked.time[0]))


@rule("enough.gauge", "iapws-r7-97", "usda-fsis-high-altitude")
def gauge_does(asked: Asked) -> Part | None:
    """A gauge pressure: how hot it gets here, and what would match the baseline's heat."""
    request, case = asked.request, asked.case
    if request.gauge_pa is None or request.topic != "pressure":
        return None
    pa = plausible_pa(request.gauge_pa)
    here_c, there_c = inside_c(case.here, pa), inside_c(case.there, pa)
    cooler = there_c - here_c > COOLER_K
    text = say(
        "gauge",
        cooler="yes" if cooler else "no",
        gauge=gauge(pa),
        inside=temp(here_c),
        place=case.place,
        there=temp(there_c),
        baseline=case.baseline,
        needed=gauge(round((pa + case.there.pressure_pa - case.here.pressure_pa) * PSI_PER_PA, 1) / PSI_PER_PA),
        and_time=_under_pressure(asked),
    )
    return Part(headline=opened(opens(asked, "no" if cooler and not _under_pressure(asked) else "yes"), text))


def _under_pressure(asked: Asked) -> Words:
    return (
        ""
        if asked.time is None or asked.request.dish is None
        else say("and-dish", time=about(asked.time[0]), doing=doing(asked.case, "pressure_cook"))
    )
