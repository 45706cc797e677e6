"""What the explanations claim, against sources outside the project, named beside each check."""

import re

import pytest
from CoolProp.CoolProp import PropsSI

from assistant.replies.sentences import worded
from rules.book import Case, Part
from rules.model import Request
from rules.physics.units import PSI_PER_PA, to_f
from rules.topics.why import explained, rows

FT = 0.3048


def at_ft(name: str, elevation_ft: float) -> Part:
    return explained(rows()[name], Case(Request(elevation_m=elevation_ft * FT)))


def value(told: Part, figure_id: str) -> float:
    return next(f.value for f in told.figures if f.id == figure_id)


def line(told: Part) -> str:
    return worded(told.headline, "us")


def paragraph(told: Part) -> str:
    return worded(told.because, "us")


def text(told: Part) -> str:
    return " ".join((line(told), paragraph(told), worded(told.maths, "us")))


@pytest.mark.parametrize(
    ("elevation_ft", "psia"), [(1000, 14.175), (5000, 12.230), (7000, 11.341), (10_000, 10.108), (15_000, 8.296)]
)
@pytest.mark.source("us-std-atm-1976")
def test_air_pressure(elevation_ft: float, psia: float) -> None:
    """US standard atmosphere table in psia, read in a reprint; entries are good to 0.003."""
    told = at_ft("water_boils_cooler", elevation_ft)
    assert value(told, "air_pressure") * 1000 * PSI_PER_PA == pytest.approx(psia, abs=0.004)


@pytest.mark.parametrize(("elevation_ft", "boil_f"), [(0, 212), (2000, 208), (5000, 203), (7500, 198), (10_000, 193)])
@pytest.mark.source("csu-high-altitude-food-prep")
def test_boiling_points(elevation_ft: float, boil_f: int) -> None:
    """CSU Extension, High Altitude Food Preparation: table in whole degrees; its 193 at 10,000 ft is 0.7 low."""
    told = at_ft("full_boil_reading", elevation_ft)
    assert to_f(value(told, "boiling_point")) == pytest.approx(boil_f, abs=0.75)


@pytest.mark.source("csu-high-altitude-food-prep")
def test_198_is_a_full_boil_at_7500_ft() -> None:
    """CSU Extension, High Altitude Food Preparation: water boils at 198 F at 7,500 ft."""
    assert "198 °F" in line(at_ft("full_boil_reading", 7500))


@pytest.mark.source("atkins-ebullioscopic")
def test_salt() -> None:
    """Atkins, Physical Chemistry: ebullioscopic constant of water 0.512 K kg/mol; NaCl 58.44 g/mol, two ions."""
    assert value(at_ft("salt_in_water", 7000), "salt_raises") == pytest.approx(2 * 0.512 * 10 / 58.44, abs=5e-4)


@pytest.mark.parametrize(
    ("elevation_ft", "gel_f"), [(0, 220), (1000, 218), (2000, 216), (3000, 214), (5000, 211), (7000, 207), (8000, 205)]
)
@pytest.mark.source("usda-aib-539")
def test_gel_point_of_jam(elevation_ft: float, gel_f: int) -> None:
    """USDA AIB 539, Guide 7, gel point by elevation, read in a reprint, whole degrees."""
    assert to_f(value(at_ft("jam_sets_cooler", elevation_ft), "gel_point")) == pytest.approx(gel_f, abs=0.6)


@pytest.mark.parametrize(("elevation_ft", "low_f", "high_f"), [(0, 234, 240), (5000, 224, 230), (7500, 219, 225)])
@pytest.mark.source("csu-candy-high-elevation")
def test_soft_ball(elevation_ft: float, low_f: int, high_f: int) -> None:
    """CSU Food Smart Colorado, Candy Making at High Elevation: soft ball by elevation."""
    assert low_f <= to_f(value(at_ft("candy_hard", elevation_ft), "soft_ball")) <= high_f


@pytest.mark.source("uwyo-altitude-adjusters")
def test_frying_fat() -> None:
    """University of Wyoming Extension, Altitude Adjusters no. 7: doughnuts at 370 F, 355 F at 5,000 ft."""
    told = at_ft("fat_turned_down", 5000)
    assert to_f(value(told, "fat_temperature")) == pytest.approx(355, abs=0.5)
    assert "370 °F (188 °C) doughnuts go to 355 °F" in paragraph(told)


@pytest.mark.source("uwyo-altitude-adjusters")
def test_one_psi_for_each_2000_ft_keeps_the_heat() -> None:
    """University of Wyoming Extension, Altitude Adjusters no. 2: 13 psi at 6,000 ft equals 10 psi at sea level."""
    here, sea = (
        PropsSI("T", "P", p_pa, "Q", 0, "Water") for p_pa in (81_200 + 13 / PSI_PER_PA, 101_325 + 10 / PSI_PER_PA)
    )
    assert here == pytest.approx(sea, abs=0.2)
    assert "1 psi (7 kPa) more for every 2,000 ft (610 m)" in paragraph(at_ft("pressure_cooker_cooler", 6000))


@pytest.mark.parametrize("elevation_ft", [0, 7000, 10_000])
@pytest.mark.source("iapws-r6-95")
def test_heat_inside_a_pressure_cooker(elevation_ft: float) -> None:
    """CoolProp (IAPWS-95): saturation at the standard air's pressure, by table, and 15 psi of gauge."""
    psia = {0: 14.696, 7000: 11.341, 10_000: 10.108}[int(elevation_ft)]
    steam_c = PropsSI("T", "P", (psia + 15) / PSI_PER_PA, "Q", 0, "Water") - 273.15
    assert value(at_ft("pressure_cooker_helps", elevation_ft), "inside_temperature") == pytest.approx(steam_c, abs=0.05)


@pytest.mark.source("mu-qafs163")
def test_low_acid_canning_heat() -> None:
    """MU Extension qafs163: 240 F stands for 10.5 psi of gauge between 0 and 1,000 ft."""
    needed_pa = PropsSI("P", "T", 273.15 + value(at_ft("canning_pressure", 0), "needed_temperature"), "Q", 0, "Water")
    gauges = [needed_pa * PSI_PER_PA - psia for psia in (14.696, 14.175)]
    assert gauges[0] < 10.5 < gauges[1]


@pytest.mark.source("quast-1977-beans")
def test_beans() -> None:
    """Quast and da Silva 1977: z 19 degC for black, 18 degC for brown beans over the boil; 5,000 ft boils at 202.8 F by
    table."""
    figure = next(f for f in at_ft("beans_stay_hard", 5000).figures if f.id == "time_factor")
    black, brown = (10 ** ((212.0 - 202.8) / 1.8 / z_k) for z_k in (19, 18))
    assert figure.high == pytest.approx(brown, rel=0.02)
    assert figure.value < black


@pytest.mark.source("uwyo-altitude-adjusters")
@pytest.mark.parametrize("elevation_ft", [5000, 7000])
def test_the_most_that_extension_tests_found_lies_in_the_range_of_beans(elevation_ft: float) -> None:
    """Boiled foods take up to 11 % more for every thousand feet; that they are added is our reading."""
    figure = next(f for f in at_ft("beans_stay_hard", elevation_ft).figures if f.id == "time_factor")
    assert figure.low is not None
    assert figure.high is not None
    assert figure.low <= 1 + 0.11 * elevation_ft / 1000 <= figure.high


@pytest.mark.source("iapws-r6-95")
def test_heat_of_boiling() -> None:
    """CoolProp (IAPWS-95): heat to boil away a kilogram of water at the boil of sea level."""
    heat = (PropsSI("H", "P", 101_325, "Q", 1, "Water") - PropsSI("H", "P", 101_325, "Q", 0, "Water")) / 1000
    said = re.search(r"takes ([\d,]+) kJ to boil away", text(at_ft("harder_boil", 0)))
    assert said is not None
    assert float(said[1].replace(",", "")) == pytest.approx(heat, abs=1.5)


@pytest.mark.parametrize(("elevation_ft", "psia"), [(0, 14.696), (7000, 11.341)])
@pytest.mark.source("iapws-r6-95")
def test_weather(elevation_ft: float, psia: float) -> None:
    """CoolProp (IAPWS-95): 10 hPa less on the boil."""
    p_pa = psia / PSI_PER_PA
    fall_k = PropsSI("T", "P", p_pa, "Q", 0, "Water") - PropsSI("T", "P", p_pa - 1000, "Q", 0, "Water")
    assert value(at_ft("weather_and_barometer", elevation_ft), "weather_drop") == pytest.approx(fall_k, abs=0.006)


@pytest.mark.parametrize(("elevation_ft", "psia"), [(0, 14.696), (7000, 11.341)])
@pytest.mark.source("iapws-r6-95")
def test_foam(elevation_ft: float, psia: float) -> None:
    """CoolProp (IAPWS-95): vapor pressure of water at 20 and 70 degC, and the ideal gas law."""
    p_pa = psia / PSI_PER_PA
    cold, warm = (p_pa - PropsSI("P", "T", 273.15 + t, "Q", 0, "Water") for t in (20, 70))
    expected = cold / warm * 343.15 / 293.15
    assert value(at_ft("soft_peaks", elevation_ft), "foam_swelling") == pytest.approx(expected, abs=0.01)


@pytest.mark.parametrize(("elevation_ft", "less"), [(3000, 1 / 8), (7000, 1 / 4)])
@pytest.mark.source("uwyo-altitude-adjusters")
def test_leavening_by_pressure_lands_near_the_table(elevation_ft: float, less: float) -> None:
    """University of Wyoming Extension, Altitude Adjusters: 1/8 tsp off each tsp at 3,000 ft, 1/4 at 7,000 ft."""
    told = at_ft("less_leavening", elevation_ft)
    assert 1 - 1 / value(told, "gas_volume") == pytest.approx(less, abs=0.04)
    assert "an eighth off at 3,000 ft (910 m) and a quarter off by 7,000 ft (2,130 m)" in paragraph(told)


@pytest.mark.source("browne-1912-sucrose")
def test_syrup() -> None:
    """Browne 1912: a sucrose solution of 80 % boils 12.0 K above water, one of 20 % 0.6 K."""
    told = paragraph(at_ft("sugar_in_water", 0))
    assert "20 % sugar, adds only 1.1 °F (0.6 °C); at 80 % it is 22 °F (12 °C)" in told


@pytest.mark.source("usda-retention-2007")
def test_alcohol_left() -> None:
    """USDA Nutrient Retention Factors, release 6, 2007: simmered 15 min 40 %, 1 h 25 %, 2.5 h 5 %; flamed 75 %."""
    told = paragraph(at_ft("alcohol_stays", 7000))
    assert "40 % was left after 15 minutes of simmering, 25 % after an hour and 5 % after two and a half" in told
    assert "flaming leaves about three quarters" in told


@pytest.mark.source("crc-handbook")
def test_pure_alcohol() -> None:
    """CRC Handbook: ethanol boils at 78.3 degC at 101.325 kPa (from memory)."""
    assert "pure alcohol 78." in text(at_ft("alcohol_stays", 0))


@pytest.mark.source("usda-fsis-safe-temperatures")
def test_safe_temperatures() -> None:
    """FoodSafety.gov, Safe Minimum Cooking Temperatures, 2019: whole cuts 145 F and 3 min, ground 160, poultry 165."""
    for elevation_ft in (0, 7000):
        told = paragraph(at_ft("safe_temperatures", elevation_ft))
        assert "Whole cuts need 145 °F (63 °C) and three minutes' rest, ground meat 160 °F (71 °C)" in told
        assert "poultry and leftovers 165 °F (74 °C)" in told


@pytest.mark.parametrize(
    ("elevation_ft", "verdict"), [(0, "above it"), (7000, "inside it"), (11_000, "under all of that")]
)
@pytest.mark.source("scaa-brewing")
def test_coffee(elevation_ft: float, verdict: str) -> None:
    """SCAA brewing best practices: water at contact 200 F, 5 F either way."""
    told = at_ft("coffee_weak", elevation_ft)
    assert "194–205 °F (90–96 °C)" in line(told)
    assert verdict in line(told)


@pytest.mark.parametrize(("elevation_ft", "minutes"), [(0, 1), (4000, 1), (5000, 3), (7000, 3)])
@pytest.mark.source("cdc-eid-2025-boil")
def test_drinking_water(elevation_ft: float, minutes: float) -> None:
    """CDC, Emerging Infectious Diseases 31(8), 2025, table: EPA 1 min, 3 min from 5,000 ft; CDC from 6,500 ft."""
    assert value(at_ft("water_boiled_longer", elevation_ft), "boil_time") == minutes


@pytest.mark.source("csu-high-altitude-food-prep")
def test_slow_cooker_advice_is_out_of_reach_above_6600_ft() -> None:
    """CSU Extension: keep food in a slow cooker at 200 F or more, the boil of about 6,600 ft."""
    assert "can be met" in paragraph(at_ft("slow_cooker_slow", 6500))
    assert "cannot be met" in paragraph(at_ft("slow_cooker_slow", 7000))


@pytest.mark.source("williams-egg")
def test_eggs() -> None:
    """Williams, The Science of Boiling an Egg: 57 g from 4 degC to 63 degC, 4.53 min, 5.15 at 5,000 ft."""
    there, here = (value(at_ft("eggs_take_longer", feet), "soft_egg") for feet in (0, 5000))
    assert here / there == pytest.approx(5.15 / 4.53, abs=0.05)
    assert "a three-minute egg may want five at 5,000 ft" in paragraph(at_ft("eggs_take_longer", 7000))
