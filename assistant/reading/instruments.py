"""Instrument readings: a barometer, a boil test, a gauge, and temperatures that the cook gives."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from assistant.reading.ages import is_age
from assistant.reading.spans import Elevation, Measure, Number
from assistant.reading.units import to_si
from assistant.understanding.cue_words import cues, said
from rules.errors import OutOfRange
from rules.model import Units, Unused
from rules.physics import air, water

BAROMETER_UNITS = ("hPa", "inHg", "mmHg", "kPa", "Pa", "atm", "bar")
GAUGE_UNITS = ("psi", "bar", "kPa", "atm", "Pa", "kgf_cm2")
PSI_PA = 6894.757
HIGHEST_GAUGE_PA = 30 * PSI_PA
POUNDS_OF_GAUGE = (4, 20)
GAUGE_LEADS = ("at", "to", "and", "or", "than", "between", "dial", "gauge", "canner")
GAUGE_TAILS = ("weight", "pressure", "jiggler", "dial", "gauge")
# Common practice: the low setting of stove-top and electric cookers is 6 to 8 psi
LOW_SETTING_PA = 7 * PSI_PA
LOW_SETTING = cues("temperature", "low_setting")
TEMPERATURE_LEADS, BOIL_TEST_THINGS = cues("temperature", "leads"), cues("temperature", "boil_test")
BAKES, SYRUPS, LOW_HEAT = (
    frozenset(cues("temperature", "bakes")),
    frozenset(cues("temperature", "syrups")),
    frozenset(cues("temperature", "low_heat")),
)
# no oven bakes, no oil fries and no sugar boils at these figures in Fahrenheit
BAKED_C, SYRUP_C = (140.0, 230.0), (103.0, 185.0)
# nor does anybody hold a bath so cool in Fahrenheit
BATH_C, BATHS = (40.0, 99.0), frozenset(("bath", "circulator", "vide"))
# but for the low oven of barbecue
LOW_OVEN_F = 225.0
BOILED_C = (81.0, 102.0)
BOILS, LIQUIDS = cues("temperature", "boils"), frozenset(cues("temperature", "liquids"))
FULL_SCALE_F = (150.0, 216.0)
# what is read in the middle of a bake, and the words for it
CRUMB_F, CRUMB_C = (180.0, 212.0), (85.0, 102.0)
MIDDLES, LITTLE = frozenset(("middle", "centre", "center", "inside", "core", "internal", "crumb")), ("in", "the", "at")
BARE_F, BARE_C, OVEN_F = (90.0, 600.0), (30.0, 300.0), (200.0, 500.0)
# bare figures that ovens are set to, where the sentence goes on behind them: meatloaf 350 at sea level
OVEN_STEP_F, AFTER_OVEN = 25, cues("temperature", "after_oven")
# 425 convection, fan 180: what stands beside the figure of such an oven
FANS, FAN_SETTING = ("fan", "convection", "conv"), (120.0, 500.0)
NOT_DEGREES = (["pm"], ["am"], ["people"], [":"], ["%"])


@dataclass(frozen=True, slots=True)
class Barometer:
    """What a pressure reading gave: station pressure [Pa] and elevation [m], or why it was not used."""

    pressure_pa: float | None = None
    elevation_m: float | None = None
    unused: tuple[Unused, ...] = ()


def gauge_pa(measures: Sequence[Measure], words: Sequence[str], in_cooker: bool) -> float | None:
    """Gauge setting of a pressure cooker or canner [Pa].

    in_cooker: whether the talk is of a pressure cooker or canner; then 15 pounds are a pressure
    """
    for m in measures:
        if m.unit in GAUGE_UNITS and 0 < m.low <= HIGHEST_GAUGE_PA and (m.unit == "psi" or in_cooker):
            return m.low
        if in_cooker and is_gauge(m, words):
            return m.said * PSI_PA
    return LOW_SETTING_PA if in_cooker and said(words, LOW_SETTING) else None


def is_gauge(m: Measure, words: Sequence[str]) -> bool:
    """Whether pounds are said as a pressure: at 15 pounds, the 15 pound weight."""
    low, high = POUNDS_OF_GAUGE
    if m.unit != "lb" or not low <= m.said <= high:
        return False
    before, after = words[m.start - 1] if m.start else "", words[m.end] if m.end < len(words) else ""
    return after != "of" and (before in GAUGE_LEADS or after in GAUGE_TAILS)


def barometer(
    measures: Sequence[Measure],
    words: Sequence[str],
    elevation_m: float | None,
    gauge: float | None,
    reads_high_pa: float = 0.0,
    *,
    of_town: bool = False,
) -> Barometer:
    """Station pressure from a barometer; a weather report's figure, reduced to sea level, is noted and not used.

    reads_high_pa: how much the kitchen's barometer reads too high [Pa], taken off
    of_town: the elevation is only that of a town that was named; the kitchen may stand above it, and the reading knows
    """
    reading = next((m for m in measures if _is_barometer(m, gauge)), None)
    if reading is None:
        return Barometer()
    text = " ".join(words[reading.start : reading.end])
    true_pa = reading.low - reads_high_pa
    if elevation_m is not None and air.LOWEST_M <= elevation_m <= air.HIGHEST_M:
        beside = _beside_elevation(true_pa, elevation_m, text)
        above = of_town and beside.pressure_pa is None and true_pa < air.pressure_pa(elevation_m)
        return Barometer(true_pa, air.elevation_m(true_pa)) if above else beside
    if true_pa > air.SEA_LEVEL_PA * 0.965:
        return Barometer(unused=(Unused("elevation", text, WEATHER_REPORT.format(said=text)),))
    try:
        return Barometer(true_pa, air.elevation_m(true_pa))
    except OutOfRange:
        reason = f"{text} is no air pressure of a kitchen on land. What is your elevation?"
        return Barometer(unused=(Unused("elevation", text, reason),))


WEATHER_REPORT = (
    "{said} may be a weather report, which is reduced to sea level and tells nothing of your elevation. "
    "What is your elevation, or what does a barometer in the kitchen read?"
)


def _is_barometer(m: Measure, gauge: float | None) -> bool:
    return m.kind == "pressure" and m.unit in BAROMETER_UNITS and 40_000 <= m.low <= 120_000 and m.low != gauge


def _beside_elevation(pressure_pa: float, elevation_m: float, said: str) -> Barometer:
    reduced = air.looks_sea_level_reduced(pressure_pa, elevation_m)
    if reduced:
        reason = f"{said} is reduced to sea level, as weather reports are; I used your elevation instead."
        return Barometer(unused=(Unused("reading", said, reason),))
    fits = reduced is False or abs(pressure_pa / air.pressure_pa(elevation_m) - 1) <= air.WEATHER_SWING
    if fits:
        return Barometer(pressure_pa)
    return Barometer(unused=(Unused("reading", said, f"{said} does not fit your elevation; I used the elevation."),))


# before the part of a degree to which something is asked
TO_WITHIN = frozenset(("to", "within", "nearest"))


def temperatures_c(
    measures: Sequence[Measure],
    numbers: Sequence[Number],
    elevations: Sequence[Elevation],
    words: Sequence[str],
    units: Units,
    hot: bool,
) -> list[float]:
    """The temperatures the cook gives [degC], in the order of the text.

    units: of the kitchen, for degrees without a scale; hot: whether the talk is of heat, so that a bare number after
    a word like `is` can be a temperature
    """
    measures = [m for m in measures if not is_precision(m, words)]
    found = [(m.start, m.low) for m in measures if m.kind == "temperature"]
    found += [(m.start, unscaled_c(m.low, words, units)) for m in measures if m.kind == "degree"]
    spans: tuple[Measure | Elevation, ...] = (*measures, *elevations)
    taken = {i for span in spans for i in range(span.start, span.end)}
    for number in numbers:
        if number.start in taken or is_age(words, number.start, number.end, number.value):
            continue
        if is_of_the_middle(number, words):
            found.append((number.start, number.value if number.value <= BOILED_C[1] else to_si(number.value, "degF")))
        elif _is_temperature(number, words, units, hot):
            found.append((number.start, unscaled_c(number.value, words, units)))
    return [value for _, value in sorted(found)]


def is_precision(measure: Measure, words: Sequence[str]) -> bool:
    """Whether so much of a degree is how exactly something is asked, and no reading: to half a degree."""
    return (
        measure.kind in ("temperature", "degree")
        and measure.said <= 1
        and not TO_WITHIN.isdisjoint(words[max(0, measure.start - 2) : measure.start])
    )


def _is_temperature(number: Number, words: Sequence[str], units: Units, hot: bool) -> bool:
    before, after = words[number.start - 1] if number.start else "", words[number.end : number.end + 1]
    in_oven = OVEN_F[0] <= number.value <= OVEN_F[1]
    if in_oven and hot and units == "us" and number.value % OVEN_STEP_F == 0 and (not after or after[0] in AFTER_OVEN):
        return True
    if after in (["oven"], ["fryer"], ["oil"]):
        return in_oven
    if before in FANS or (after and after[0] in FANS):
        return FAN_SETTING[0] <= number.value <= FAN_SETTING[1]
    if before not in TEMPERATURE_LEADS or after in NOT_DEGREES:
        return False
    oven = before in ("at", "oven", "to") and in_oven
    low, high = BARE_F if units == "us" else BARE_C
    return oven or (is_boiling(words) and _could_boil(number.value)) or (hot and low <= number.value <= high)


def is_fan_setting(words: Sequence[str]) -> bool:
    """Whether an oven is told to run its fan: 425 convection, 180 C fan, fan at 160, convection on.

    >>> is_fan_setting("thighs 425 convection".split()), is_fan_setting("a fan of rice".split())
    (True, False)
    """
    for i, word in enumerate(words):
        near = [*words[max(0, i - 2) : i], *words[i + 1 : i + 3]]
        if word in FANS and (
            word != "fan" or any(w[:1].isdigit() or w in ("forced", "oven", "assisted") for w in near)
        ):
            return True
    return False


def is_of_the_middle(number: Number, words: Sequence[str]) -> bool:
    """Whether a bare number is told of the middle of what bakes: 205 in the middle, core was 92."""
    low, high = CRUMB_F if number.value > BOILED_C[1] else CRUMB_C
    behind = [word for word in words[number.end : number.end + 3] if word not in LITTLE]
    before = [word for word in words[max(number.start - 2, 0) : number.start] if word not in TEMPERATURE_LEADS]
    return low <= number.value <= high and (before == ["core"] or (bool(behind) and behind[0] in MIDDLES))


def is_boiling(words: Sequence[str]) -> bool:
    """Whether the talk is of something that boils."""
    boils = any(word.startswith("boil") or word == "kettle" for word in words)
    return boils or (not LIQUIDS.isdisjoint(words) and said(words, BOILS))


def _could_boil(value: float) -> bool:
    return BOILED_C[0] <= value <= BOILED_C[1] or FULL_SCALE_F[0] <= value <= FULL_SCALE_F[1]


def unscaled_c(value: float, words: Sequence[str], units: Units) -> float:
    """Degrees without a scale: the kitchen's, unless they make sense in the other one only.

    >>> unscaled_c(180.0, "cake in the oven at 180".split(), "us"), unscaled_c(118.0, "syrup to 118".split(), "us")
    (180.0, 118.0)
    """
    metric = value <= BOILED_C[1] if is_boiling(words) and _could_boil(value) else units == "metric"
    metric = metric or _is_celsius(value, words)
    return value if metric and value <= BARE_C[1] else to_si(value, "degF")


def _is_celsius(value: float, words: Sequence[str]) -> bool:
    """Whether a bare figure can only be Celsius: an oven that bakes at 180, a syrup boiled to 118."""
    said = set(words)
    low, high = BAKED_C
    bakes = low <= value <= high and value != LOW_OVEN_F and not said.isdisjoint(BAKES) and said.isdisjoint(LOW_HEAT)
    if BATH_C[0] <= value <= BATH_C[1] and not said.isdisjoint(BATHS):
        return True
    low, high = SYRUP_C
    return bakes or (low <= value <= high and not said.isdisjoint(SYRUPS) and "f" not in said)


def is_reading(value: float, units: Units) -> bool:
    """Whether a bare figure can be what a thermometer reads in something hot."""
    low, high = BARE_F if units == "us" else BARE_C
    return _could_boil(value) or low <= value <= high


FULL_BOIL_C = (100.0, 0.05)


def boil_test_c(temperatures: Sequence[float], words: Sequence[str], in_water: bool) -> float | None:
    """The temperature at which the cook's water boils [degC], where one is given.

    What everybody knows, 212 F and 100 C, is no reading. in_water: whether what boils is water, for all one hears
    """
    if not is_boiling(words) or not any(word in words for word in BOIL_TEST_THINGS) or not in_water:
        return None
    low, high = (water.boiling_point_c(at) for at in (air.HIGHEST_M, air.LOWEST_M))
    return next((t for t in temperatures if low <= t <= high and abs(t - FULL_BOIL_C[0]) > FULL_BOIL_C[1]), None)
