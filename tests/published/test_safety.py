"""Food safety against the codes and agencies."""

import pytest

from assistant.replies.worded import answer
from rules.heat import equipment
from rules.model import Quantity, Request
from rules.physics import water
from rules.physics.units import to_c, to_f
from rules.safety import lethality

FT_M = 0.3048
CODE, ALASKA, NEW_YORK = "fda-food-code-2022", "alaska-18-aac-31", "ny-1-nycrr-271"


def ask(subject, feet=None, **fields):
    elevation_m = None if feet is None else feet * FT_M
    return answer(Request(topic="doneness", subject=subject, elevation_m=elevation_m, **fields))


@pytest.mark.parametrize(
    ("source", "agency", "feet", "minutes"),
    [
        ("cdc-eid-2025-boil", "cdc", 6499, 1),
        ("cdc-eid-2025-boil", "cdc", 6501, 3),
        ("epa-boil", "epa", 4999, 1),
        ("epa-boil", "epa", 5000, 3),
        ("health-canada-boil", "health_canada", 6560, 1),
        ("health-canada-boil", "health_canada", 6563, 2),
    ],
)
def test_boiling_water_to_drink(source, agency, feet, minutes):
    assert ask("drinking_water", feet).figure(f"boil_{agency}").value == minutes


@pytest.mark.source("who-boil")
def test_who_asks_for_the_boil_alone():
    assert "WHO asks only for a rolling boil" in ask("drinking_water", 9000).because[0].text


@pytest.mark.parametrize(
    ("source", "table", "temp_f", "minutes"),
    [
        (ALASKA, 0, 130, 112),
        (ALASKA, 0, 131, 89),
        (ALASKA, 0, 133, 56),
        (ALASKA, 0, 135, 36),
        (ALASKA, 0, 136, 28),
        (ALASKA, 0, 138, 18),
        (ALASKA, 0, 140, 12),
        (ALASKA, 0, 142, 8),
        (ALASKA, 0, 144, 5),
        (ALASKA, 0, 145, 4),
        (ALASKA, 0, 147, 134 / 60),
        (ALASKA, 0, 149, 85 / 60),
        (ALASKA, 0, 151, 54 / 60),
        (ALASKA, 0, 155, 22 / 60),
        (ALASKA, 0, 157, 14 / 60),
        (ALASKA, 0, 158, 0),
        (NEW_YORK, 1, 130, 121),
        (NEW_YORK, 1, 132, 77),
        (NEW_YORK, 1, 134, 47),
        (NEW_YORK, 1, 137, 24),
        (NEW_YORK, 1, 139, 15),
        (NEW_YORK, 1, 143, 6),
        (NEW_YORK, 1, 146, 182 / 60),
        (NEW_YORK, 1, 150, 72 / 60),
        (NEW_YORK, 1, 154, 29 / 60),
        (NEW_YORK, 1, 157, 15 / 60),
    ],
)
def test_roast_held_for_longer(source, table, temp_f, minutes):
    """Cells typed again from the code; the tables hold minutes to four digits."""
    row = lethality.printed(lethality.kind("whole_cut").tables[table], to_c(temp_f))
    assert row.source == source
    assert row.time_min == pytest.approx(minutes, abs=0.005)


@pytest.mark.source(ALASKA, NEW_YORK)
def test_both_roast_tables_are_shown_and_the_longer_is_given():
    held = ask("time_temperature", 7000, dish_class="tender_cut", temperature_c=to_c(130))
    hold = held.figure("hold_time")
    assert (hold.low, hold.high, hold.value) == (112, 121, 121)
    assert "2 h 1 min" in held.headline
    assert {ALASKA, NEW_YORK} <= set(held.because[0].sources)


@pytest.mark.parametrize(
    ("source", "temp_f", "seconds"), [(CODE, 145, 180), (CODE, 150, 60), ("cfp-2012-iii-018", 155, 17), (CODE, 158, 0)]
)
def test_minced_meat(source, temp_f, seconds):
    row = lethality.printed(lethality.kind("ground_meat").tables[0], to_c(temp_f))
    assert row.time_min * 60 == pytest.approx(seconds, abs=0.01)


@pytest.mark.source("fda-food-code-2017")
def test_the_two_editions_are_named():
    assert "15 s at 155 °F" in ask("time_temperature", dish_class="ground_meat").because[0].text


@pytest.mark.parametrize(
    ("source", "dish_class", "temp_f", "minutes"),
    [(CODE, "poultry_pieces", 165, None), (CODE, "casserole", 165, None), (CODE, "fish", 145, 0.25)],
)
def test_food_outside_the_roast_tables(source, dish_class, temp_f, minutes):
    held = ask("time_temperature", dish_class=dish_class)
    assert held.figure("safe_temperature").value == pytest.approx(to_c(temp_f), abs=0.01)
    assert (held.figure("hold_time").value if minutes else held.figure("hold_time")) == minutes


@pytest.mark.parametrize(
    ("source", "subject", "figure", "temp_f"),
    [
        (CODE, "cooling", "first_temperature", 70),
        (CODE, "cooling", "cold_temperature", 41),
        (CODE, "holding", "hold_temperature", 135),
        (CODE, "holding", "roast_hold_temperature", 130),
        (CODE, "holding", "cold_hold_temperature", 41),
        (CODE, "reheating", "reheat_temperature", 165),
        (CODE, "reheating", "reheat_packed_temperature", 135),
        ("fda-21-cfr-131-3", "pasteurise_milk", "vat_temperature", 145),
        ("fda-21-cfr-131-3", "pasteurise_milk", "flash_temperature", 161),
        ("who-formula-2007", "formula", "mix_temperature", 158),
        ("from-memory", "sanitising", "rinse_temperature", 180),
        ("from-memory", "sanitising", "sink_temperature", 171),
        ("from-memory", "sanitising", "surface_temperature", 160),
        ("common-practice", "yogurt", "scald_temperature", 180),
        ("common-practice", "yogurt", "pitch_temperature", 110),
        ("crc-handbook", "thermometer_ice_point", "ice_point", 32),
    ],
)
@pytest.mark.parametrize("feet", [0, 7000, 12_000])
def test_a_safe_temperature_is_the_same_everywhere(source, subject, figure, temp_f, feet):
    found = ask(subject, feet).figure(figure)
    assert to_f(found.value) == pytest.approx(temp_f, abs=0.1)
    assert found.sea_level == pytest.approx(found.value)


@pytest.mark.parametrize(
    ("source", "subject", "figure", "minutes"),
    [
        (CODE, "cooling", "first_time", 120),
        (CODE, "cooling", "total_time", 360),
        (CODE, "holding", "time_without_heat", 240),
        (CODE, "reheating", "reheat_time", 120),
        ("fda-21-cfr-131-3", "pasteurise_milk", "vat_time", 30),
        ("fda-21-cfr-131-3", "pasteurise_milk", "flash_time", 0.25),
    ],
)
def test_a_limit_of_time(source, subject, figure, minutes):
    assert ask(subject, 8000).figure(figure).value == minutes


@pytest.mark.parametrize(("source", "pounds", "low_h", "high_h", "wet_min"), [("fsis-big-thaw", 20, 96, 120, 600)])
def test_thawing_a_turkey(source, pounds, low_h, high_h, wet_min):
    """A day for every 4 to 5 lb in the refrigerator, 30 min a pound in cold water."""
    thawed = ask("thawing", quantity=Quantity(pounds, "lb"))
    cold = thawed.figure("refrigerator_time")
    assert (cold.low / 60, cold.high / 60) == (low_h, high_h)
    assert thawed.figure("cold_water_time").value == wet_min


@pytest.mark.parametrize(
    ("source", "temp_f", "feet", "tolerance_ft"),
    [
        ("usda-fsis-high-altitude", 203, 5000, 200),
        ("usda-fsis-high-altitude", 198, 7500, 200),
        ("computed", 200, 6600, 100),
        ("computed", 180, 17_400, 150),
    ],
)
def test_where_a_boiling_bath_falls_under_a_target(source, temp_f, feet, tolerance_ft):
    """The slow-cooker hold of 200 degF fails from about 6,600 ft; a 180 degF rinse only far above any kitchen."""
    assert water.elevation_from_boiling_m(to_c(temp_f)) / FT_M == pytest.approx(feet, abs=tolerance_ft)


@pytest.mark.parametrize(("source", "feet", "said"), [("computed", 6400, False), ("computed", 6800, True)])
def test_the_slow_cooker_hold_is_called_out_of_reach(source, feet, said):
    assert any("200 °F" in c.text for c in ask("holding", feet).cautions) is said


@pytest.mark.parametrize(
    ("source", "feet", "from_2000", "from_sea"),
    [("nfpa-54", 2000, 0, 0), ("nfpa-54", 3000, 4, 12), ("nfpa-54", 5000, 12, 20), ("nfpa-54", 7000, 20, 28)],
)
def test_gas_appliances(source, feet, from_2000, from_sea):
    assert equipment.derated_percent(feet * FT_M) == pytest.approx((from_2000, from_sea), abs=0.1)


@pytest.mark.parametrize(
    ("source", "feet", "low", "high"),
    [
        ("csu-high-altitude-food-prep", 4999, 0, 1.5),
        ("csu-high-altitude-food-prep", 5000, 1, 1.5),
        ("common-practice", 2000, 0, 0),
        ("common-practice", 8000, 1, 3),
    ],
)
def test_blanching_for_the_freezer(source, feet, low, high):
    """A minute more from 5,000 ft, against half a minute for each 1,000 ft above 2,000 ft."""
    more = answer(Request(topic="preserve", subject="blanching", elevation_m=feet * FT_M)).figure("blanch_more")
    assert (more.low, more.high) == (low, high)
