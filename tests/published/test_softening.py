"""Rates of softening against studies, extension advice and what kitchens see."""

import pytest

from rules.physics import kinetics, water

FT_M = 0.3048
LEE, QUAST, UWYO = "lee-2017-texture", "quast-1977-beans", "uwyo-altitude-adjusters"
CSU, PRACTICE, POTATO = "csu-high-altitude-food-prep", "common-practice", "hiroshima-potato-kinetics"


def factor(elevation_ft, z_k):
    return kinetics.rate_factor(water.boiling_point_c(elevation_ft * FT_M), water.boiling_point_c(0), z_k)


@pytest.mark.parametrize(
    ("source", "ea_kj_per_mol", "z_k"),
    [
        (LEE, 76.6, 34),
        (LEE, 100.4, 26),
        (LEE, 171.5, 15),
        (LEE, 79.9, 32),
        (LEE, 162.8, 16),
        (LEE, 142.3, 18),
        (LEE, 54.4, 48),
        (LEE, 71.4, 36),
        (LEE, 159, 16),
        (LEE, 92, 28),
        (LEE, 117, 22),
        (LEE, 117.6, 22),
        (LEE, 143, 18),
        (LEE, 156, 17),
    ],
)
def test_z_from_activation(source, ea_kj_per_mol, z_k):
    assert kinetics.z_from_activation(ea_kj_per_mol, 95) == pytest.approx(z_k, abs=0.52)


@pytest.mark.parametrize(
    ("source", "dish_class", "ea_kj_per_mol"),
    [
        (LEE, "tender_vegetable", 76.6),
        (LEE, "tender_vegetable", 54.4),
        (LEE, "leafy_green", 71.4),
        (LEE, "root_vegetable", 142.3),
        (LEE, "root_vegetable", 159),
        (LEE, "root_vegetable", 117.6),
        (LEE, "root_vegetable", 92),
        (POTATO, "starchy_root", 62.8),
        (POTATO, "starchy_root", 76),
        ("rice-cooking-kinetics", "rice", 71),
        ("suzuki-1976-rice", "rice", 79.5),
    ],
)
def test_studies_lie_in_the_range_of_their_class(source, dish_class, ea_kj_per_mol):
    soft = kinetics.softening(dish_class)
    z_k = kinetics.z_from_activation(ea_kj_per_mol, 95)
    assert z_k <= soft.z_high_k + 1
    # the tissue of roots alone slows down more than a piece of which a part of the time only warms
    assert dish_class == "root_vegetable" or soft.z_low_k - 1 <= z_k


@pytest.mark.parametrize(("source", "temp_c", "rate_per_min"), [(POTATO, 95, 0.61), (POTATO, 90, 0.46)])
def test_potato_rate(source, temp_c, rate_per_min):
    """A potato in hot water: 0.80 a minute at 100 degC."""
    soft = kinetics.softening("starchy_root")
    quick, slow = (kinetics.rate_factor(temp_c, 100, z_k) for z_k in (soft.z_high_k, soft.z_low_k))
    assert quick <= 0.80 / rate_per_min <= slow
    assert kinetics.rate_factor(temp_c, 100, 41) == pytest.approx(0.80 / rate_per_min, rel=0.02)


PLAIN = ["rice", "whole_grain", "porridge", "starchy_root", "root_vegetable", "tender_vegetable", "leafy_green", "soup"]


@pytest.mark.source("uwyo-altitude-adjusters")
@pytest.mark.parametrize("dish_class", PLAIN)
@pytest.mark.parametrize("elevation_ft", [3000, 5000, 7000])
def test_plain_boiled_food_lies_between_the_ends_that_extension_tests_found(dish_class, elevation_ft):
    """4 to 11 % more for each 1,000 ft, read in the altitude adjusters of the University of Wyoming Extension."""
    soft = kinetics.softening(dish_class)
    least, most = (1 + share * elevation_ft / 1000 for share in (0.04, 0.11))
    assert least <= factor(elevation_ft, soft.z_k) <= most
    assert factor(elevation_ft, soft.z_low_k) <= most * 1.1


@pytest.mark.parametrize(("source", "z_k"), [(QUAST, 19), (QUAST, 18)], ids=["black beans", "brown beans"])
def test_beans_measured_over_the_boil_are_the_steep_end(source, z_k):
    soft = kinetics.softening("dried_bean")
    assert soft.z_low_k <= z_k < soft.z_k
    assert 1.85 - 0.005 <= factor(5000, z_k) <= 2.07 + 0.01


@pytest.mark.parametrize(
    ("source", "elevation_ft", "low_min", "high_min"),
    [(PRACTICE, ft, 150, 180) for ft in (3000, 6000, 7000, 9000)],
)
def test_the_braise_is_fitted_to_what_cooks_report_for_3000_ft(source, elevation_ft, low_min, high_min):
    """No check from outside: z of a braise is fitted to this half hour to an hour, common practice."""
    z_k = kinetics.softening("collagen_cut").z_k
    for sea_level_min in (low_min, high_min):
        extra_min = sea_level_min * (factor(elevation_ft, z_k) - 1)
        assert 25 * elevation_ft / 3000 <= extra_min <= 60 * elevation_ft / 3000


@pytest.mark.parametrize(
    ("source", "dish_class"),
    [(CSU, "collagen_cut"), (CSU, "stock"), (CSU, "mixed_stew"), (CSU, "tender_cut"), (CSU, "whole_bird")],
)
def test_meat_by_moist_heat_may_need_a_quarter_more_at_5000_ft(source, dish_class):
    soft = kinetics.softening(dish_class)
    assert factor(5000, soft.z_high_k) <= 1.26
    assert factor(5000, soft.z_low_k) >= 1.25


@pytest.mark.parametrize(("source", "percent_per_1000_ft", "z_k"), [(UWYO, 4, 60), (UWYO, 11, 22)])
def test_boiled_food_by_the_thousand_feet(source, percent_per_1000_ft, z_k):
    assert 100 * (factor(1000, z_k) - 1) == pytest.approx(percent_per_1000_ft, abs=0.5)


@pytest.mark.parametrize("elevation_ft", [3000, 5000, 7000, 10_000])
@pytest.mark.parametrize(
    ("source", "dish_class"),
    [(UWYO, c) for c in ("general", "starchy_root", "root_vegetable", "tender_vegetable", "pasta", "rice", "fruit")],
)
def test_likely_times_lie_in_the_published_band(source, dish_class, elevation_ft):
    """Boiled foods take 4 to 11 % more for every thousand feet."""
    thousands = elevation_ft / 1000
    likely = factor(elevation_ft, kinetics.softening(dish_class).z_k)
    assert 1.035**thousands <= likely <= 1.115**thousands


@pytest.mark.parametrize(("source", "elevation_ft", "times"), [(CSU, 5000, 5 / 3)])
def test_a_three_minute_egg_may_take_five(source, elevation_ft, times):
    soft = kinetics.softening("egg")
    assert factor(elevation_ft, soft.z_high_k) <= times <= factor(elevation_ft, soft.z_low_k) + 0.01
