import pytest
from hypothesis import given
from hypothesis import strategies as st

from rules.errors import OutOfRange
from rules.physics import air, evaporation, water

ELEVATIONS = st.floats(-430, 5500)


@given(ELEVATIONS)
def test_a_bare_simmer_loses_the_same_everywhere(elevation_m):
    here = evaporation.evaporation_rate_ml_min(0.06, covered=False, elevation_m=elevation_m)
    assert here == pytest.approx(evaporation.evaporation_rate_ml_min(0.06, covered=False), rel=0.05)


@given(st.floats(0.001, 2))
def test_a_lid_holds_back_nine_tenths(area_m2):
    lid, bare = (evaporation.evaporation_rate_ml_min(area_m2, covered=covered) for covered in (True, False))
    assert lid == pytest.approx(bare / 10)


@given(st.floats(0, 600), st.floats(0, 600))
def test_extra_liquid_turns_round(here_min, there_min):
    way_up = evaporation.extra_liquid_ml(here_min, there_min, 0.06, covered=False, elevation_m=2000)
    way_down = evaporation.extra_liquid_ml(
        there_min, here_min, 0.06, covered=False, elevation_m=0, from_elevation_m=2000
    )
    assert way_up == pytest.approx(-way_down, abs=1e-9)


def test_the_same_pot_at_the_same_place_needs_nothing_extra():
    same = evaporation.extra_liquid_ml(90, 90, 0.06, covered=True, elevation_m=1500, from_elevation_m=1500)
    assert same == 0


@given(ELEVATIONS)
def test_the_same_surface_dries_faster_higher_up(elevation_m):
    ratio = evaporation.drying_ratio(elevation_m)
    assert (ratio > 1) == (elevation_m > 0) or ratio == pytest.approx(1)


def test_a_boiling_surface_is_refused():
    with pytest.raises(OutOfRange, match="burner sets the rate"):
        evaporation.evaporation_rate_kg_m2_h(99, 78_000)


def test_air_damper_than_the_surface_is_refused():
    with pytest.raises(OutOfRange, match="room"):
        evaporation.evaporation_rate_kg_m2_h(10, 101_325, 3000)


@pytest.mark.parametrize("area_m2", [-0.1, 28])
def test_impossible_pots_are_refused(area_m2):
    with pytest.raises(OutOfRange, match="square metres"):
        evaporation.evaporation_rate_ml_min(area_m2, covered=True)


def test_negative_times_are_refused():
    with pytest.raises(OutOfRange, match="time here"):
        evaporation.extra_liquid_ml(-1, 90, 0.06, covered=True, elevation_m=0)


@given(st.floats(0.01, 5), ELEVATIONS)
def test_a_square_metre_in_an_hour_is_a_pot_in_a_minute(area_m2, elevation_m):
    """A kilogram of water taken as a litre, as cooks do."""
    simmer_c = water.boiling_point_c(elevation_m) - 3
    kg_h = area_m2 * evaporation.evaporation_rate_kg_m2_h(simmer_c, air.pressure_pa(elevation_m))
    ml_min = evaporation.evaporation_rate_ml_min(area_m2, covered=False, elevation_m=elevation_m)
    assert ml_min * 60 / 1000 == pytest.approx(kg_h)


@given(st.floats(20, 99), st.floats(0, 2000))
def test_a_pascal_carries_carriers_heat_away(surface_c, room_pa):
    """Carrier's coefficient for still air: 0.089 W from a square metre for each pascal, at sea level."""
    kg_s = evaporation.evaporation_rate_kg_m2_h(surface_c, air.SEA_LEVEL_PA, room_pa) / 3600
    heat_w = kg_s * water.latent_heat_kj_per_kg(surface_c) * 1000
    assert heat_w == pytest.approx(0.089 * (water.saturation_pressure_pa(surface_c) - room_pa), rel=1e-9)


def test_what_is_not_said_is_dry_air_at_sea_level():
    assert evaporation.evaporation_rate_kg_m2_h(90, 101_325) == evaporation.evaporation_rate_kg_m2_h(90, 101_325, 0)
    pot = {"area_m2": 0.06, "covered": False}
    assert evaporation.evaporation_rate_ml_min(**pot) == evaporation.evaporation_rate_ml_min(**pot, elevation_m=0)
    up = {"covered": False, "elevation_m": 2000}
    said = evaporation.extra_liquid_ml(90, 60, 0.06, **up, from_elevation_m=0)
    assert evaporation.extra_liquid_ml(90, 60, 0.06, **up) == said


@pytest.mark.parametrize(
    ("pressure_pa", "inside"), [(50_000, True), (110_000, True), (49_999.5, False), (110_000.5, False)]
)
def test_both_ends_of_the_pressure_are_taken(pressure_pa, inside):
    if inside:
        assert evaporation.evaporation_rate_kg_m2_h(60, pressure_pa) > 0
        return
    with pytest.raises(OutOfRange, match="air pressure"):
        evaporation.evaporation_rate_kg_m2_h(60, pressure_pa)
