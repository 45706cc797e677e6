"""How figures are written in a sentence: both unit systems, the asker's first, no false precision."""

from __future__ import annotations

import math
from dataclasses import dataclass

from rules.baking.rounding import number
from rules.model import Units
from rules.physics.units import (
    FT_PER_M,
    G_PER_LB,
    INHG_PER_PA,
    ML_PER_CUP,
    ML_PER_TBSP,
    PSI_PER_PA,
    round_time_min,
    round_to,
    to_f,
)

SMALL_K = 0.6
# What a set of cups has below a whole one, and how near an amount must lie to be told by it [share].
MARKS_OF_A_CUP, NEAR_A_MARK = (0.25, 0.333, 0.5, 0.667, 0.75), 0.1
# from here on ounces are rounded to a pound
LEAST_LB = 0.97


def duration(time_min: float) -> str:
    """A time as a cook says it.

    >>> duration(252), duration(60), duration(7.5), duration(0.5), duration(1500)
    ('4 h 10 min', '1 h', '7½ min', '30 s', '25 h')
    """
    minutes = round_time_min(time_min)
    if minutes < 2:
        seconds = int(round_to(minutes * 60, 5))
        return f"{seconds} s" if seconds < 60 else ("1 min" if seconds == 60 else f"1 min {seconds - 60} s")
    if minutes < 60:
        whole = int(minutes)
        return f"{whole}½ min" if minutes - whole else f"{whole} min"
    hours, rest = divmod(round(minutes), 60)
    return f"{hours} h {rest} min" if rest else f"{hours} h"


def exact_duration(time_min: float) -> str:
    """A time that must not be rounded down: to the second, and upwards.

    >>> exact_duration(112), exact_duration(57), exact_duration(17 / 60), exact_duration(134 / 60)
    ('1 h 52 min', '57 min', '17 s', '2 min 14 s')
    """
    minutes, seconds = divmod(math.ceil(round(time_min * 60, 1)), 60)
    hours, minutes = divmod(minutes, 60)
    parts = ((hours, "h"), (minutes, "min"), (seconds, "s"))
    return " ".join(f"{amount} {unit}" for amount, unit in parts if amount) or "0 min"


def duration_span(low_min: float, high_min: float) -> str:
    """A range of times; one time where both ends round to the same.

    >>> duration_span(150, 180), duration_span(8, 12), duration_span(59, 61), duration_span(45, 90)
    ('2 h 30 min to 3 h', '8 to 12 min', '1 h', '45 min to 1 h 30 min')
    """
    low, high = duration(low_min), duration(high_min)
    if low == high:
        return low
    low_parts, high_parts = low.split(), high.split()
    if len(low_parts) == len(high_parts) == 2 and low_parts[1] == high_parts[1]:
        return f"{low_parts[0]} to {high}"
    return f"{low} to {high}"


@dataclass(frozen=True, slots=True)
class Say:
    """Writes quantities for one asker: `units` decides which system stands first."""

    units: Units = "us"

    def _both(self, us: str, metric: str) -> str:
        first, second = (us, metric) if self.units == "us" else (metric, us)
        return f"{first} ({second})"

    def temp(self, temp_c: float) -> str:
        """A food or water temperature, to 1 degF and 0.5 degC.

        >>> Say("us").temp(92.87), Say("metric").temp(92.87)
        ('199 °F (93 °C)', '93 °C (199 °F)')
        """
        return self._both(f"{number(round_to(to_f(temp_c), 1))} °F", f"{number(round_to(temp_c, 0.5))} °C")

    def temp_span(self, low_c: float, high_c: float) -> str:
        """A range of temperatures.

        >>> Say("us").temp_span(112, 116)
        '234–241 °F (112–116 °C)'
        """
        if round_to(to_f(low_c), 1) == round_to(to_f(high_c), 1):
            return self.temp(low_c)
        us = f"{number(round_to(to_f(low_c), 1))}–{number(round_to(to_f(high_c), 1))} °F"
        metric = f"{number(round_to(low_c, 0.5))}–{number(round_to(high_c, 0.5))} °C"
        return self._both(us, metric)

    def oven(self, temp_c: float) -> str:
        """An oven or fat setting, to 5 degF and 2 degC.

        >>> Say("us").oven(162.8)
        '325 °F (162 °C)'
        """
        return self._both(f"{number(round_to(to_f(temp_c), 5))} °F", f"{number(round_to(temp_c, 2))} °C")

    def oven_span(self, low_c: float, high_c: float) -> str:
        """A range of settings; one setting where both ends read alike.

        >>> Say("us").oven_span(173.9, 179.4), Say("metric").oven_span(163, 163)
        ('345–355 °F (174–180 °C)', '164 °C (325 °F)')
        """
        us = dict.fromkeys(number(round_to(to_f(end), 5)) for end in (low_c, high_c))
        metric = dict.fromkeys(number(round_to(end, 2)) for end in (low_c, high_c))
        return self._both(f"{'–'.join(us)} °F", f"{'–'.join(metric)} °C")

    def temp_drop(self, kelvin: float) -> str:
        """A temperature difference, a small one to a tenth.

        >>> Say("us").temp_drop(7.1), Say("us").temp_drop(0.34)
        ('13 °F (7 °C)', '0.6 °F (0.3 °C)')
        """
        if abs(kelvin) < SMALL_K:
            return self._both(f"{number(kelvin * 1.8, 1)} °F", f"{number(kelvin, 1)} °C")
        return self._both(f"{number(round_to(kelvin * 1.8, 1))} °F", f"{number(round_to(kelvin, 0.5))} °C")

    def fine_drop(self, kelvin: float) -> str:
        """A difference too small for whole degrees.

        >>> Say("us").fine_drop(0.175)
        '0.3 °F (0.17 °C)'
        """
        return self._both(f"{number(kelvin * 1.8, 1)} °F", f"{number(kelvin)} °C")

    def elevation(self, elevation_m: float) -> str:
        """An elevation, to a sensible step; sea level by name.

        >>> Say("us").elevation(2133.6), Say("us").elevation(0)
        ('7,000 ft (2,130 m)', 'sea level')
        """
        if abs(elevation_m) < 1:
            return "sea level"
        feet = round_to(elevation_m * FT_PER_M, 10)
        metres = round_to(elevation_m, 10 if self.units == "us" else 1)
        return self._both(f"{number(feet)} ft", f"{number(metres)} m")

    def volume(self, ml: float) -> str:
        """A volume of liquid in kitchen measures.

        >>> Say("us").volume(250), Say("metric").volume(250), Say("us").volume(30)
        ('1 cup (250 ml)', '250 ml (1 cup)', '2 tbsp (30 ml)')
        """
        return self._both(_cups(ml), f"{number(round_to(ml, 5 if ml < 100 else 10 if ml < 1000 else 50))} ml")

    def mass(self, grams: float) -> str:
        """A weight.

        >>> Say("us").mass(1814), Say("metric").mass(100)
        ('4 lb (1,810 g)', '100 g (3½ oz)')
        """
        pounds = grams / G_PER_LB
        us = f"{_fraction(round_to(pounds, 0.25))} lb" if pounds >= 1 else f"{_fraction(round_to(pounds * 16, 0.5))} oz"
        return self._both(us, f"{number(round_to(grams, 10 if grams >= 200 else 5 if grams >= 50 else 1))} g")

    def bulk(self, grams: float) -> str:
        """A weight that is bought or cooked for many, to what a scale of that size shows.

        >>> Say("us").bulk(9840), Say("metric").bulk(72_340), Say("us").bulk(41), Say("us").bulk(1_500)
        ('22 lb (9.8 kg)', '72 kg (159 lb)', '1½ oz (41 g)', '3½ lb (1.5 kg)')
        """
        return self._both(_pounds(grams / G_PER_LB), _kilograms(grams))

    def liquid(self, ml: float) -> str:
        """A volume of liquid, from cups to gallons.

        >>> Say("us").liquid(473), Say("us").liquid(2_000), Say("metric").liquid(10_400), Say("us").liquid(30)
        ('2 cups (470 ml)', '2 qt (2 L)', '10.5 L (2¾ gal)', '2 tbsp (30 ml)')
        """
        return self._both(_gallons(ml), _litres(ml))

    def scaled(self, grams: float) -> str:
        """A weight of a list, in the asker's system alone.

        >>> Say("us").scaled(22_680), Say("metric").scaled(22_680)
        ('50 lb', '22.5 kg')
        """
        return _pounds(grams / G_PER_LB) if self.units == "us" else _kilograms(grams)

    def ladled(self, ml: float) -> str:
        """A volume of a list, in the asker's system alone.

        >>> Say("us").ladled(7_570), Say("metric").ladled(7_570)
        ('2 gal', '7.6 L')
        """
        return _gallons(ml) if self.units == "us" else _litres(ml)

    def pressure(self, pressure_pa: float) -> str:
        """An absolute air pressure.

        >>> Say("us").pressure(78185)
        '23.1 inHg (782 hPa)'
        """
        return self._both(f"{number(pressure_pa * INHG_PER_PA, 1)} inHg", f"{number(pressure_pa / 100, 0)} hPa")

    def gauge(self, gauge_pa: float) -> str:
        """A gauge pressure as cookers and canners are marked, to half a psi; one given in tenths as it was given.

        >>> Say("us").gauge(103421), Say("us").gauge(99000), Say("us").gauge(11.6 / PSI_PER_PA)
        ('15 psi (103 kPa)', '14.5 psi (99 kPa)', '11.6 psi (80 kPa)')
        """
        psi = gauge_pa * PSI_PER_PA
        shown = round(psi, 1) if abs(psi - round(psi, 1)) < 1e-6 else round_to(psi, 0.5)
        return self._both(f"{number(shown)} psi", f"{number(gauge_pa / 1000, 0)} kPa")


_FRACTIONS = {
    0.0: "",
    0.125: "⅛",
    0.25: "¼",
    0.375: "⅜",
    0.5: "½",
    0.625: "⅝",
    0.75: "¾",
    0.875: "⅞",
    0.333: "⅓",
    0.667: "⅔",
}


def _fraction(value: float) -> str:
    whole = int(value)
    part = _FRACTIONS.get(round(value - whole, 3))
    if part is None:
        return number(value)
    return (f"{whole}" if whole or not part else "") + part


def _cups(ml: float) -> str:
    """Cups to a quarter; below one to a third as well, and in spoons where no mark of a cup is near.

    >>> _cups(90), _cups(80), _cups(120), _cups(140), _cups(500), _cups(30)
    ('6 tbsp', '⅓ cup', '½ cup', '9 tbsp', '2 cups', '2 tbsp')
    """
    cups = ml / ML_PER_CUP
    mark = min(MARKS_OF_A_CUP, key=lambda share: abs(share - cups))
    if cups < 0.97 and abs(mark - cups) <= NEAR_A_MARK * cups:
        return f"{_fraction(mark)} cup"
    if cups >= 0.7:
        return f"{_fraction(round_to(cups, 0.25))} cup{'s' if round_to(cups, 0.25) > 1 else ''}"
    tbsp = max(0.5, round_to(ml / ML_PER_TBSP, 0.5 if ml < 4 * ML_PER_TBSP else 1))
    return f"{_fraction(tbsp)} tbsp"


def _pounds(pounds: float) -> str:
    if pounds < LEAST_LB:
        return f"{_fraction(max(0.25, round_to(pounds * 16, 0.5 if pounds * 16 < 8 else 1)))} oz"
    return f"{_fraction(round_to(pounds, 0.25 if pounds < 3 else 0.5 if pounds < 10 else 1))} lb"


def _kilograms(grams: float) -> str:
    if grams < 1000:
        return f"{number(round_to(grams, 10 if grams >= 200 else 5 if grams >= 50 else 1))} g"
    return f"{number(round_to(grams / 1000, 0.1 if grams < 10_000 else 0.5 if grams < 50_000 else 1))} kg"


def _gallons(ml: float) -> str:
    quarts = ml / ML_PER_CUP / 4
    if quarts < 1.5:
        return _cups(ml)
    if quarts < 6:
        return f"{_fraction(round_to(quarts, 0.25 if quarts < 3 else 0.5))} qt"
    return f"{_fraction(round_to(quarts / 4, 0.25 if quarts < 40 else 0.5 if quarts < 80 else 1))} gal"


def _litres(ml: float) -> str:
    if ml < 1000:
        return f"{number(round_to(ml, 5 if ml < 100 else 10))} ml"
    return f"{number(round_to(ml / 1000, 0.1 if ml < 10_000 else 0.5 if ml < 50_000 else 1))} L"
