"""Boiling point and latent heat against the IAPWS release, handbooks, extension tables and public libraries."""

import ambiance
import chemicals
import pytest
from CoolProp.CoolProp import PropsSI

from rules.physics import air, water

FT_M = 0.3048
IF97, R6, CRC = "iapws-r7-97", "iapws-r6-95", "crc-handbook"
CSU, USU, AIB = "csu-high-altitude-food-prep", "usu-2013-pressure", "usda-aib-539"
GRID_M = [-430, -300, -100, 0, 152.4, 500, 1000, 1500, 1609.3, 2000, 2133.6, 2500, 3000, 3500, 4000, 4500, 5000, 5500]


def fahrenheit(temp_c):
    return temp_c * 1.8 + 32


@pytest.mark.parametrize(
    ("source", "temp_k", "mpa"),
    [(IF97, 300, 0.353658941e-2), (IF97, 500, 0.263889776e1), (IF97, 600, 0.123443146e2)],
)
def test_if97_table_35(source, temp_k, mpa):
    assert water.saturation_pressure_pa(temp_k - 273.15) / 1e6 == pytest.approx(mpa, rel=2e-9)


@pytest.mark.parametrize(
    ("source", "mpa", "temp_k"),
    [(IF97, 0.1, 0.372755919e3), (IF97, 1, 0.453035632e3), (IF97, 10, 0.584149488e3)],
)
def test_if97_table_36(source, mpa, temp_k):
    assert water.saturation_temp_c(mpa * 1e6) + 273.15 == pytest.approx(temp_k, abs=0.5e-6)


@pytest.mark.parametrize(
    ("source", "kpa", "temp_c"),
    [
        (CRC, 50, 81.32),
        (CRC, 60, 85.93),
        (CRC, 70, 89.93),
        (CRC, 80, 93.49),
        (CRC, 90, 96.69),
        (CRC, 95, 98.18),
        (CRC, 100, 99.61),
        (CRC, 101.325, 99.97),
    ],
)
def test_handbook_boiling_points(source, kpa, temp_c):
    assert water.saturation_temp_c(kpa * 1000) == pytest.approx(temp_c, abs=0.0051)


@pytest.mark.parametrize("kpa", [1, 5, 20, 50, 60, 70, 80, 90, 101.325, 110, 150, 205, 300])
@pytest.mark.parametrize("source", [R6])
def test_against_coolprop(source, kpa):
    theirs_c = PropsSI("T", "P", kpa * 1000, "Q", 0, "Water") - 273.15
    assert water.saturation_temp_c(kpa * 1000) == pytest.approx(theirs_c, abs=0.01)


@pytest.mark.parametrize("temp_c", [5, 25, 60, 80, 90, 95, 100, 110, 121.1])
@pytest.mark.parametrize("source", [IF97])
def test_against_chemicals(source, temp_c):
    assert water.saturation_pressure_pa(temp_c) == pytest.approx(chemicals.Psat_IAPWS(temp_c + 273.15), rel=1e-9)


@pytest.mark.parametrize("elevation_m", GRID_M)
@pytest.mark.parametrize("source", [R6])
def test_boiling_point_over_the_whole_range(source, elevation_m):
    """Within 0.05 degC of another atmosphere with another equation of state."""
    geometric = ambiance.Atmosphere.geop2geom_height(elevation_m)
    pressure_pa = float(ambiance.Atmosphere(geometric).pressure[0])
    theirs_c = PropsSI("T", "P", pressure_pa, "Q", 0, "Water") - 273.15
    assert water.boiling_point_c(elevation_m) == pytest.approx(theirs_c, abs=0.05)


# the guides round; the tolerance is half of the last digit, or wider where the guides differ among themselves
@pytest.mark.parametrize(
    ("source", "elevation_ft", "temp_f", "tolerance"),
    [
        (CSU, 0, 212, 0.5),
        (CSU, 2000, 208, 0.5),
        (CSU, 5000, 203, 0.5),
        (CSU, 7500, 198, 0.5),
        (CSU, 10_000, 193, 1.0),
        (USU, 2900, 206.6, 0.6),
        (USU, 4600, 203.0, 0.6),
        (USU, 5600, 201.2, 0.6),
        (USU, 7700, 197.6, 0.6),
        (AIB, 0, 212.0, 0.05),
        (AIB, 1000, 210.2, 0.25),
        (AIB, 2000, 208.5, 0.25),
        (AIB, 3000, 206.7, 0.25),
        (AIB, 4000, 204.9, 0.25),
        ("usda-fsis-high-altitude", 2000, 208, 0.5),
    ],
)
def test_extension_boiling_points(source, elevation_ft, temp_f, tolerance):
    assert fahrenheit(water.boiling_point_c(elevation_ft * FT_M)) == pytest.approx(temp_f, abs=tolerance)


@pytest.mark.parametrize(
    ("source", "elevation_ft", "temp_f"),
    [(AIB, i * 1000, f) for i, f in enumerate([220, 218, 216, 214, 212, 211, 209, 207, 205])],
)
def test_jelly_points(source, elevation_ft, temp_f):
    """Printed as local boiling point + 8 degF, whole degrees; the 4,000 ft entry is 0.7 below that."""
    tolerance = 0.7 if elevation_ft == 4000 else 0.5
    assert fahrenheit(water.boiling_point_c(elevation_ft * FT_M)) + 8 == pytest.approx(temp_f, abs=tolerance)


@pytest.mark.parametrize("elevation_ft", range(2000, 14_001, 2000))
@pytest.mark.parametrize("source", ["nmsu-e-215"])
def test_rule_of_thumb(source, elevation_ft):
    """1 degF for 500 ft, a rule that over-corrects by up to a tenth."""
    fall_f = 212 - fahrenheit(water.boiling_point_c(elevation_ft * FT_M))
    assert 0.88 <= fall_f / (elevation_ft / 500) <= 1.0


@pytest.mark.parametrize("elevation_ft", [2000, 4000, 6000, 8000, 10_000])
@pytest.mark.parametrize("source", ["uwyo-altitude-adjusters"])
def test_a_pound_more_for_2000_ft_keeps_the_pressure_cooker_hot(source, elevation_ft):
    inside_pa = air.pressure_pa(elevation_ft * FT_M) + (10 + elevation_ft / 2000) * 6894.757
    sea_level_pa = air.pressure_pa(0) + 10 * 6894.757
    assert water.saturation_temp_c(inside_pa) == pytest.approx(water.saturation_temp_c(sea_level_pa), abs=0.6)


@pytest.mark.parametrize("temp_c", [1, 20, 50, 75, 82, 90, 95, 100, 115, 121.1, 130])
@pytest.mark.parametrize("source", [R6])
def test_latent_heat_against_coolprop(source, temp_c):
    vapour, liquid = (PropsSI("H", "T", temp_c + 273.15, "Q", quality, "Water") for quality in (1, 0))
    assert water.latent_heat_kj_per_kg(temp_c) == pytest.approx((vapour - liquid) / 1000, rel=1e-3)


@pytest.mark.parametrize(
    ("source", "temp_c", "kj_per_kg", "tolerance"), [(CRC, 100, 2256.5, 0.15), (CRC, 90, 2283, 0.5)]
)
def test_latent_heat_of_the_steam_tables(source, temp_c, kj_per_kg, tolerance):
    assert water.latent_heat_kj_per_kg(temp_c) == pytest.approx(kj_per_kg, abs=tolerance)
