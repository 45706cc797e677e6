"""Under pressure: the printed gauge pressure that is told, the gauge that is asked about, what is never let through."""

import pytest

from assistant.replies.worded import answer
from rules.foods.dishes import dishes
from rules.model import Request
from rules.preserving.bands import bands, in_band, near_edge, whole_feet
from rules.preserving.pressure import canner_psi

FT_M, PA_PER_PSI = 0.3048, 6894.757


def can(dish=None, feet=7000, **fields):
    known = dishes().get(dish or "")
    fields = {"subject": "pressure_canning", **fields}
    dish_class = known.dish_class if known else None
    return answer(Request(topic="preserve", dish=dish, dish_class=dish_class, elevation_m=feet * FT_M, **fields))


def told(answered, figure):
    found = answered.figure(figure)
    return found and found.value


@pytest.mark.parametrize(
    ("dish", "feet", "dial", "weighted"),
    [
        ("peaches", 0, 6, 5),
        ("peaches", 1000, 6, 5),
        ("peaches", 1001, 6, 10),
        ("peaches", 2001, 7, 10),
        ("peaches", 8000, 9, 10),
        ("peaches", 8001, None, 10),
        ("peaches", 10_000, None, 10),
        ("green beans", 0, 11, 10),
        ("green beans", 1001, 11, 15),
        ("green beans", 2001, 12, 15),
        ("green beans", 8000, 14, 15),
        ("green beans", 8001, 15, 15),
        ("chicken", 6001, 14, 15),
        ("tomatoes", 0, 11, 10),
        ("tomatoes", 6001, 14, 15),
        ("tomatillos", 6001, 14, 15),
        ("canned tomato juice", 4001, 13, 15),
        (None, 0, 11, 10),
        (None, 6001, 14, 15),
    ],
)
def test_the_pressure_told_is_the_printed_one(dish, feet, dial, weighted):
    """Fruit in its own lower table; tomatoes, and food that is not named, in that of vegetables and meat."""
    given = can(dish, feet)
    assert (told(given, "dial_gauge"), told(given, "weighted_gauge")) == (dial, weighted)


@pytest.mark.parametrize(
    ("dish", "dial", "weighted"), [("peaches", 6, 5), ("green beans", 11, 10), ("tomatoes", 11, 10)]
)
def test_the_pressure_at_sea_level_stands_beside_it(dish, dial, weighted):
    given = can(dish)
    assert given.figure("dial_gauge").sea_level == dial
    assert given.figure("weighted_gauge").sea_level == weighted
    assert given.figure("dial_gauge").unit == given.figure("weighted_gauge").unit == "psi"


@pytest.mark.parametrize(("feet", "begins"), [(500, 0), (2001, 2001), (7000, 6001), (9000, 8001)])
def test_the_band_is_that_of_the_dial_gauge(feet, begins):
    assert told(can("green beans", feet, time_min=25), "band") == begins


def test_the_band_is_that_of_the_weighted_gauge_where_no_dial_is_printed():
    assert told(can("peaches", 9000, time_min=10), "band") == 1001


def test_the_source_of_a_band_is_the_text_that_prints_it():
    """The USDA dial table ends at 8,000 ft."""
    assert canner_psi("dial", "low_acid", 8000 * FT_M).source == "usda-aib-539"
    assert canner_psi("dial", "low_acid", 8001 * FT_M).source == "extension-canning-8000"
    assert canner_psi("dial", "high_acid", 8001 * FT_M) is None
    assert canner_psi("weighted", "low_acid", 10_001 * FT_M) is None
    beyond = {source for because in can("green beans", 9000).because for source in because.sources}
    within = {source for because in can("green beans", 7000).because for source in because.sources}
    assert "extension-canning-8000" in beyond - within


@pytest.mark.parametrize(("feet", "said"), [(8000, False), (8001, True), (9500, True)])
def test_above_8000_ft_the_end_of_the_usda_table_is_told(feet, said):
    given = can("green beans", feet)
    assert any("USDA dial-gauge table ends" in c.text and "Confirm it" in c.text for c in given.cautions) is said
    assert any("no tested dial pressure" in c.text for c in can("peaches", feet).cautions) is said


def test_a_dial_that_is_not_printed_is_said_to_be_none():
    assert can("peaches", 9000, subject="dial_gauge").headline.startswith("No table gives a dial gauge pressure here.")
    assert not can("peaches", 7000, subject="dial_gauge").headline.startswith("No table")
    assert not can("peaches", 9000, subject="weighted_gauge").headline.startswith("No table")


# the pressure that the cook names


@pytest.mark.parametrize(
    ("dish", "psi", "feet", "fields", "verdict"),
    [
        ("green beans", 13.9, 7000, {"subject": "dial_gauge"}, "too low"),
        ("green beans", 14, 7000, {"subject": "dial_gauge"}, "is enough at"),
        ("green beans", 14.5, 7000, {"subject": "weighted_gauge"}, "too low"),
        ("green beans", 15, 7000, {"subject": "weighted_gauge"}, "is enough at"),
        ("green beans", 10, 1001, {"subject": "weighted_gauge"}, "too low"),
        ("green beans", 10, 1000, {"subject": "weighted_gauge"}, "is enough at"),
        ("green beans", 10, 0, {"subject": "dial_gauge"}, "too low"),
        ("green beans", 11, 2000, {"subject": "dial_gauge"}, "is enough at"),
        ("green beans", 11, 2001, {"subject": "dial_gauge"}, "too low"),
        ("green beans", 14, 7000, {"subject": None, "equipment": ("dial_gauge_canner",)}, "is enough at"),
        ("green beans", 14, 7000, {"subject": None, "equipment": ("weighted_gauge_canner",)}, "too low"),
        ("green beans", 14, 7000, {"subject": None, "equipment": ("pressure_canner",)}, "dial gauge only"),
        (
            "green beans",
            14,
            7000,
            {"subject": None, "equipment": ("dial_gauge_canner", "weighted_gauge_canner")},
            "dial gauge only",
        ),
        ("green beans", 13.9, 7000, {"subject": None}, "too low"),
        ("peaches", 8, 7000, {"subject": "dial_gauge"}, "too low"),
        ("peaches", 9, 7000, {"subject": "dial_gauge"}, "is enough at"),
        ("tomatoes", 9, 7000, {"subject": "dial_gauge"}, "too low"),
        (None, 13, 7000, {"subject": "dial_gauge"}, "too low"),
        ("green beans", 0, 7000, {"subject": "dial_gauge"}, "too low"),
    ],
)
def test_a_named_pressure_is_held_against_the_printed_one(dish, psi, feet, fields, verdict):
    assert verdict in can(dish, feet, gauge_pa=psi * PA_PER_PSI, **fields).headline


# what is said with it


@pytest.mark.parametrize(
    ("dish", "fields", "never"),
    [
        ("green beans", {"subject": None}, True),
        ("green beans", {"subject": "pressure_canning"}, False),
        ("green beans", {"subject": None, "equipment": ("dial_gauge_canner",)}, False),
    ],
)
def test_low_acid_food_is_never_boiled(dish, fields, never):
    given = can(dish, **fields)
    assert ("in a pressure canner, never in boiling water" in given.headline) is never
    assert any(c.level == "stop" and "Never can green beans in boiling water" in c.text for c in given.cautions)


def test_acid_food_under_pressure_has_no_such_stop():
    assert not any(c.level == "stop" for c in can("peaches").cautions)


@pytest.mark.parametrize(
    ("dish", "fields", "why"),
    [
        ("green beans", {"time_min": 21, "subject": None}, "nothing says that it was read for a pressure canner"),
        ("green beans", {"time_min": 19}, "none that is printed for green beans"),
        (None, {"time_min": 20}, "name the food"),
    ],
)
def test_a_time_that_is_left_out_is_said_to_be(dish, fields, why):
    given = can(dish, **fields)
    assert given.figure("process_time") is None
    assert any(c.level == "warn" and "left out" in c.text and why in c.text for c in given.cautions)
    assert "the process time does not change" not in given.headline


def test_a_time_that_is_printed_stays_at_every_elevation():
    for feet in (0, 5000, 9000):
        time = can("green beans", feet, time_min=20, time_high_min=25).figure("process_time")
        assert (time.value, time.sea_level, time.unit) == (25, 25, "min")


@pytest.mark.parametrize(("dish", "paired"), [("tomatoes", True), ("tomatillos", True), ("peaches", False)])
def test_tomatoes_are_told_not_to_cross_the_columns(dish, paired):
    steps = can(dish).steps
    assert any("take one pair whole" in step and "9 psi" in step and "10 psi" in step for step in steps) is paired


@pytest.mark.parametrize(
    ("subject", "checked"), [("dial_gauge", True), ("pressure_canning", True), ("weighted_gauge", False)]
)
def test_a_dial_gauge_is_checked_every_year(subject, checked):
    assert any("checked every year" in c.text for c in can("green beans", subject=subject).cautions) is checked


def test_the_canner_is_vented_first():
    steps = can("green beans").steps
    assert any("10 min" in step and "vent" in step for step in steps)
    assert any("start the time again" in step for step in steps)


def test_the_spores_die_at_240_f():
    given = can("green beans")
    text = " ".join(b.text for b in given.because)
    assert "240 °F" in text
    assert "15 psi" in text
    assert "240 °F" not in " ".join(b.text for b in can("peaches").because)


# bands as they are printed


@pytest.mark.parametrize(
    ("elevation_m", "feet"), [(-430, 0), (0, 0), (0.3, 1), (304.8, 1000), (304.9, 1000), (305, 1001), (3048, 10_000)]
)
def test_an_elevation_in_whole_feet(elevation_m, feet):
    assert whole_feet(elevation_m) == feet


def test_a_band_holds_both_of_its_ends():
    table = bands("canning_time_usu-canning-bands", "add_min", process="long")
    found = [in_band(table, feet) for feet in (3000, 3001, 6000, 6001, 8000, 8001, 10_000, 10_001)]
    assert [band and band.value for band in found] == [None, 10, 10, 15, 15, 20, 20, None]
    assert {band.source for band in table} == {"usu-canning-bands"}


@pytest.mark.parametrize(("feet", "near"), [(4500, False), (5950, True), (6000, True), (6001, False), (9990, False)])
def test_only_the_upper_edge_of_a_closed_band_is_near(feet, near):
    band = in_band(bands("canning_time_usda-aib-539", "add_min", process="long"), feet)
    assert near_edge(band, feet) is near
