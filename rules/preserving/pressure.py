"""Pressure canning: the time stays, the pressure goes up with the elevation.

The gate (rules/preserving/gate.py) has let the question in: the food has a tested pressure process, or none was named.
"""

from __future__ import annotations

from functools import cache

from rules.book import Case, Part, rule
from rules.heat.pressure import inside_c
from rules.model import Caution, Figure
from rules.physics.units import PSI_PER_PA
from rules.preserving import process_times
from rules.preserving.bands import Band, bands, in_band, whole_feet
from rules.preserving.boiling_water import band_figure
from rules.preserving.vessel import PRESSURE, called, food_of, gauge, named, vessel
from rules.say import number

TABLE = "canning_pressure_usda-aib-539"
USDA_DIAL_TO_FT = 8000
BOTULISM_C = 115.56
ROUNDING_PSI = 0.05


@cache
def _bands(gauge: str, food: str) -> tuple[Band, ...]:
    return bands(TABLE, "psi", gauge=gauge, food=food)


def canner_psi(gauge: str, food: str, elevation_m: float) -> Band | None:
    """The band of the printed table with its gauge pressure [psi], or None where the table has none so high.

    gauge: "dial" or "weighted"; food: "low_acid" (vegetables, meat, fish) or "high_acid" (fruit)
    source: usda-aib-539; the dial gauge over 8,000 ft extension-canning-8000

    >>> canner_psi("dial", "low_acid", 2133.6).value, canner_psi("weighted", "low_acid", 2133.6).value
    (14.0, 15.0)
    """
    return in_band(_bands(gauge, food), whole_feet(elevation_m))


def _table(case: Case) -> str:
    """Which table the food is read in; tomatoes in the higher one, which is right for either time of their pairs."""
    food = food_of(case.request)
    return "high_acid" if food.acid and not food.paired else "low_acid"


@rule("preserve.pressure", "usda-aib-539", "iapws-r7-97")
def pressure(case: Case) -> Part | None:
    """The gauge pressure here, dial and weighted, and the check of a pressure the cook named."""
    if vessel(case.request) != PRESSURE:
        return None
    found = {kind: canner_psi(kind, _table(case), case.here.elevation_m) for kind in ("dial", "weighted")}
    known = {kind: band for kind, band in found.items() if band}
    if not known:
        return None
    return Part(
        headline=_headline(case, known),
        figures=(
            *(_figure(case, kind, band) for kind, band in known.items()),
            *_time(case),
            band_figure(known.get("dial") or known["weighted"]),
        ),
        steps=(
            "Process for the time in the tested recipe: it is the same at every elevation. Only the pressure changes.",
            "Let steam pour out of the vent for 10 min before you close it, and start the clock at pressure.",
            "If the pressure falls under the mark, bring it back and start the time again from nothing.",
            *_pairs(case),
        ),
        because=_why(case, known),
        cautions=(*_left_out(case), *_dial_beyond_usda(case, known), *_dial_check(case)),
        sources=tuple(dict.fromkeys((*(band.source for band in known.values()), "iapws-r7-97"))),
    )


def _said(case: Case, kind: str, psi: float) -> str:
    shown = case.say.gauge(psi / PSI_PER_PA)
    return f"{shown} on a dial gauge" if kind == "dial" else f"the {shown} weight on a weighted gauge"


def _headline(case: Case, known: dict[str, Band]) -> str:
    kind, food = gauge(case.request), food_of(case.request)
    asked = {kind: known[kind]} if kind in known else known
    wanted = " or ".join(_said(case, of, band.value) for of, band in asked.items())
    if case.request.gauge_pa is not None:
        return _judged(case, asked, wanted)
    none = f"No table gives a {kind} gauge pressure here. " if kind and kind not in known else ""
    if not food.named:
        return (
            f"{none}Only if you have a tested recipe for a pressure canner: at {case.place} low-acid food takes "
            f"{wanted}."
        )
    never = "Never in boiling water, only under pressure: " if _way_unsaid(case) else ""
    at = f"at {case.place}" if never else f"At {case.place}"
    time = (
        "take the time from a tested recipe for a pressure canner"
        if _is_left_out(case)
        else "the process time does not change"
    )
    return f"{none}{never}{at} pressure-can {called(case.request)} at {wanted}; {time}."


def _judged(case: Case, asked: dict[str, Band], wanted: str) -> str:
    """Whether the pressure the cook named is enough."""
    psi = (case.request.gauge_pa or 0.0) * PSI_PER_PA + ROUNDING_PSI
    needed = [band.value for band in asked.values()]
    verdict = (
        "is too low" if psi < min(needed) else "is enough" if psi >= max(needed) else "is enough on a dial gauge only"
    )
    food = food_of(case.request)
    takes = "it takes" if food.named else "by a tested recipe low-acid food takes"
    return f"{case.say.gauge(case.request.gauge_pa or 0.0)} {verdict} at {case.place}: {takes} {wanted}."


def _way_unsaid(case: Case) -> bool:
    """Whether a low-acid food is to be canned and the cook has not said under pressure."""
    return food_of(case.request).kind == "low_acid" and named(case.request) is None and not case.request.equipment


def _figure(case: Case, kind: str, band: Band) -> Figure:
    sea = canner_psi(kind, _table(case), 0.0)
    label = "Dial gauge" if kind == "dial" else "Weighted gauge"
    return Figure(f"{kind}_gauge", label, band.value, "psi", sea_level=sea.value if sea else None)


def _time(case: Case) -> tuple[Figure, ...]:
    """The cook's own time, where it was read for a pressure canner and is one that is printed for the food."""
    time = process_times.base_min(case.request)
    return (Figure("process_time", "Process time, unchanged", time, "min", sea_level=time),) if time else ()


def _is_left_out(case: Case) -> bool:
    return process_times.given(case.request) and process_times.base_min(case.request) is None


def _left_out(case: Case) -> tuple[Caution, ...]:
    """That a time was left out, without saying it again."""
    if not _is_left_out(case):
        return ()
    if not food_of(case.request).named:
        why = "name the food, since each has its own"
    elif process_times.named_pressure(case.request):
        why = f"it is none that is printed for {called(case.request)} in a pressure canner"
    else:
        why = "nothing says that it was read for a pressure canner"
    text = f"The time you gave is left out: {why}. A time for boiling water is never carried into a pressure canner."
    return (Caution("warn", text, ("usda-aib-539",)),)


def _why(case: Case, known: dict[str, Band]) -> str:
    printed = "; ".join(f"{kind} gauge {number(band.value)} psi for {band.words}" for kind, band in known.items())
    text = f"As printed: {printed}."
    if _table(case) == "high_acid":
        return f"{text} Acid food in a pressure canner needs less pressure than vegetables and meat."
    psi = max(known.values(), key=lambda band: band.value).value
    here_c = inside_c(case.here, psi / PSI_PER_PA)
    return (
        f"{text} Botulism spores in low-acid food die at {case.say.temp(BOTULISM_C)}, which takes pressure: a gauge "
        f"reads what is added to the thinner air outside, and {case.say.gauge(psi / PSI_PER_PA)} gives "
        f"{case.say.temp(here_c)} here."
    )


def _pairs(case: Case) -> tuple[str, ...]:
    """Tomatoes and their kin: a longer time goes with a lower pressure, and the two columns may not be crossed."""
    if not food_of(case.request).paired:
        return ()
    lower = {kind: canner_psi(kind, "high_acid", case.here.elevation_m) for kind in ("dial", "weighted")}
    here = " or ".join(_said(case, kind, band.value) for kind, band in lower.items() if band)
    return (
        "The tables print pairs of time and pressure; take one pair whole. The pressure above is right for every pair. "
        f"Only a time printed beside 6 psi (dial) or 5 psi (weight) may go at {here}.",
    )


def _dial_beyond_usda(case: Case, known: dict[str, Band]) -> tuple[Caution, ...]:
    if whole_feet(case.here.elevation_m) <= USDA_DIAL_TO_FT:
        return ()
    goes_on = (
        "extension texts go on to 10,000 ft with 15 psi, which is given here. Confirm it with your extension office"
        if "dial" in known
        else "there is no tested dial pressure for this food here. Use a weighted gauge or boiling water, by a tested "
        "recipe"
    )
    text = f"The USDA dial-gauge table ends at 8,000 ft; {goes_on}."
    return (Caution("warn", text, ("usda-aib-539", "extension-canning-8000")),)


def _dial_check(case: Case) -> tuple[Caution, ...]:
    text = "Have a dial gauge checked every year; extension offices do it. Follow the canner's own instructions."
    return () if gauge(case.request) == "weighted" else (Caution("warn", text, ("usda-aib-539", "nchfp")),)


@rule("preserve.low_acid", "usda-aib-539")
def low_acid(case: Case) -> Part | None:
    """Low-acid food under pressure: that it never goes into boiling water or open steam."""
    if food_of(case.request).kind != "low_acid":
        return None
    text = (
        f"Never can {called(case.request)} in boiling water or open steam, at any elevation and for any length of "
        "time: it is low in acid, and botulism spores live through the boil."
    )
    return Part(cautions=(Caution("stop", text, ("usda-aib-539",)),))
