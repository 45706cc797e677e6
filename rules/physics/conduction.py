"""Heat on its way to the centre: roasts, whole potatoes, fish, eggs in water.

First term of the series for a body whose surface takes the temperature of the medium at once (Biot number
infinite), which is right in boiling water and steam and too quick in dry air.
"""

from __future__ import annotations

import math

from rules.errors import OutOfRange, UnknownWord, within

# shape -> first coefficient and first root of the series at the centre
FIRST_TERM = {"sphere": (2.0, math.pi), "cylinder": (1.6020, 2.4048), "slab": (4 / math.pi, math.pi / 2)}
SMALLEST_FOURIER = 0.2

# the egg as a body: specific heat, density, conductivity, in J/(g K), g/cm3, W/(cm K)
EGG_C, EGG_RHO, EGG_K = 3.7, 1.038, 5.4e-3
EGG_YOLK_FACTOR = 0.76


def remaining(start_c: float, medium_c: float, target_c: float) -> float:
    """Share of the first temperature difference that is left when the centre is at the target."""
    low, high = min(start_c, medium_c), max(start_c, medium_c)
    if not low < target_c < high:
        hint = "A centre never passes the temperature around it; use a hotter medium or a lower target."
        raise OutOfRange("target temperature", target_c, low, high, "degC", hint)
    return (target_c - medium_c) / (start_c - medium_c)


def time_to_centre_min(
    shape: str, half_thickness_mm: float, diffusivity_m2_s: float, start_c: float, medium_c: float, target_c: float
) -> float:
    """Time for the centre to reach a temperature, heating or cooling.

    shape: "sphere", "cylinder" (long) or "slab" (wide)
    half_thickness_mm: from surface to centre: radius of sphere and cylinder, half the slab [mm], 1 to 300
    diffusivity_m2_s: thermal diffusivity [m2/s], 5e-8 to 5e-7; foods have 1.2e-7 to 1.8e-7
    start_c, medium_c, target_c: food at the start, medium around it, centre at the end [degC]
    returns: time [min]
    raises: UnknownWord for a shape; OutOfRange for a target not between start and medium, for a size or
        diffusivity outside its range, and where the Fourier number is below 0.2 so that one term is not enough
    source: carslaw-jaeger

    >>> round(time_to_centre_min("sphere", 30, 1.5e-7, 10, 98, 90))
    31
    """
    if shape not in FIRST_TERM:
        raise UnknownWord.among("shape", shape, FIRST_TERM)
    half_m = within("half thickness", half_thickness_mm, 1, 300, "mm") / 1000
    diffusivity = within("thermal diffusivity", diffusivity_m2_s, 5e-8, 5e-7, "m2/s")
    coefficient, root = FIRST_TERM[shape]
    fourier = math.log(coefficient / remaining(start_c, medium_c, target_c)) / root**2
    hint = "The centre has hardly begun to change; choose a target further from the start."
    within("Fourier number", fourier, SMALLEST_FOURIER, math.inf, "", hint)
    return fourier * half_m**2 / diffusivity / 60


def egg_time_min(mass_g: float, start_c: float, water_c: float, target_c: float) -> float:
    """Time for the yolk's edge of an egg in its shell to reach a temperature in boiling water.

    mass_g: egg with shell [g], 30 to 110
    start_c, water_c: egg at the start, water [degC]
    target_c: edge of the yolk [degC]: 63 for soft, 77 for hard
    returns: time [min]
    raises: OutOfRange for a mass outside its range, a target not between start and water, and one so near the
        start that the formula does not hold
    source: williams-egg

    >>> round(egg_time_min(57, 4, 100, 63), 2)
    4.53
    """
    mass = within("mass of the egg", mass_g, 30, 110, "g")
    left = within(
        "share of the temperature difference left",
        remaining(start_c, water_c, target_c),
        0,
        EGG_YOLK_FACTOR,
        "",
        "The yolk has hardly begun to warm; choose a hotter target.",
    )
    scale_s = EGG_C * math.cbrt(EGG_RHO) / (EGG_K * math.pi**2 * math.cbrt(4 * math.pi / 3) ** 2)
    return math.cbrt(mass) ** 2 * scale_s * math.log(EGG_YOLK_FACTOR / left) / 60
