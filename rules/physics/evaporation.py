"""Water leaving an open or covered pot, and drying in thin air.

An open surface loses water by Carrier's formula for still air, 0.089 (p_water - p_room) / latent heat. Vapour spreads
faster through thin air, in proportion to 1 / pressure. At a bare simmer the two cancel: the vapour is the same share
of the air everywhere, and a square metre loses some 13 kg an hour at any elevation. A longer simmer loses more
because it is longer.
"""

from __future__ import annotations

import math

from rules.errors import within
from rules.physics import air, water

CARRIER_W_PER_M2_PA = 0.089
BELOW_BOIL_K = 3.0
COVERED_SHARE = 0.1
LARGEST_AREA_M2 = 5.0
# depth of a pot's liquid in proportion to how wide the pot is
DEPTH_TO_WIDTH = 0.6


def evaporation_rate_kg_m2_h(surface_c: float, pressure_pa: float, room_vapour_pa: float = 0.0) -> float:
    """Water lost by an open surface in still air.

    surface_c: temperature of the surface, below the boil [degC], 0 to 130
    pressure_pa: air pressure [Pa], 50 000 to 110 000
    room_vapour_pa: vapour pressure of the room's air [Pa], 0 up to that of the surface
    returns: rate [kg/(m2 h)]
    raises: OutOfRange outside those ranges, and where the surface would boil
    source: ashrae-applications

    >>> round(evaporation_rate_kg_m2_h(96.97, 101_325), 1)
    12.9
    """
    pressure = within("air pressure", pressure_pa, 50_000, 110_000, "Pa")
    surface_pa = water.saturation_pressure_pa(surface_c)
    hint = "At the boil the burner sets the rate, not the air; take a surface a few degrees cooler."
    within("vapour pressure of the surface", surface_pa, 0, pressure, "Pa", hint)
    drive_pa = surface_pa - within("vapour pressure of the room", room_vapour_pa, 0, surface_pa, "Pa")
    latent_j_per_kg = 1000 * water.latent_heat_kj_per_kg(surface_c)
    return 3600 * CARRIER_W_PER_M2_PA * drive_pa / latent_j_per_kg * air.SEA_LEVEL_PA / pressure


def evaporation_rate_ml_min(area_m2: float, *, covered: bool, elevation_m: float = 0.0) -> float:
    """Water lost by a pot at a bare simmer, 3 K under the boil.

    A lid that sits well holds back about nine tenths (common practice).

    area_m2: surface of the liquid [m2], up to 5; a 28 cm pot has 0.06
    covered: whether the lid is on
    elevation_m: height above sea level [m], -430 to 5500
    returns: rate [ml/min]
    raises: OutOfRange outside those ranges
    source: ashrae-applications

    >>> round(evaporation_rate_ml_min(0.06, covered=False), 1)
    12.9
    """
    area = within("surface of the pot", area_m2, 0, LARGEST_AREA_M2, "m2", "Give square metres: 0.06 for a 28 cm pot.")
    simmer_c = water.boiling_point_c(elevation_m) - BELOW_BOIL_K
    open_kg_m2_h = evaporation_rate_kg_m2_h(simmer_c, air.pressure_pa(elevation_m))
    return open_kg_m2_h * area * 1000 / 60 * (COVERED_SHARE if covered else 1.0)


def extra_liquid_ml(
    time_here_min: float,
    time_there_min: float,
    area_m2: float,
    *,
    covered: bool,
    elevation_m: float,
    from_elevation_m: float = 0.0,
) -> float:
    """How much more liquid a pot needs here than where the recipe was written.

    time_here_min, time_there_min: simmering time here and there [min]
    area_m2, covered: as in evaporation_rate_ml_min
    elevation_m, from_elevation_m: height here and there [m], -430 to 5500
    returns: liquid [ml], negative where the pot needs less
    raises: OutOfRange outside those ranges, and for a negative time
    source: ashrae-applications

    >>> round(extra_liquid_ml(275, 165, 0.06, covered=True, elevation_m=2133.6))
    137
    """
    here_min = within("time here", time_here_min, 0, 100_000, "min")
    there_min = within("time there", time_there_min, 0, 100_000, "min")
    here = evaporation_rate_ml_min(area_m2, covered=covered, elevation_m=elevation_m)
    there = evaporation_rate_ml_min(area_m2, covered=covered, elevation_m=from_elevation_m)
    return here * here_min - there * there_min


def drying_ratio(elevation_m: float) -> float:
    """How much faster a surface of a given temperature dries here than at sea level, in air equally damp.

    Vapour spreads through air in inverse proportion to the pressure. Holds below the boil: dough, bread, a roast.

    elevation_m: height above sea level [m], -430 to 5500
    returns: ratio [-], above 1 above sea level
    raises: OutOfRange outside that range
    source: computed

    >>> round(drying_ratio(2133.6), 2)
    1.3
    """
    return air.SEA_LEVEL_PA / air.pressure_pa(elevation_m)


def surface_m2(volume_ml: float) -> float:
    """The surface of a pot that so much stands in, six tenths as deep as the pot is wide [m2].

    source: common-practice

    >>> round(surface_m2(4000), 3)
    0.033
    """
    across_m = (volume_ml / 1e6 / (math.pi / 4 * DEPTH_TO_WIDTH)) ** (1 / 3)
    return min(math.pi / 4 * across_m**2, LARGEST_AREA_M2)
