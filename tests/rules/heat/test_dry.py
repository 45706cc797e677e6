"""Dry heat: how much a wet surface slows the middle, how times go with it, and what stays as it is."""

import math

import pytest

from assistant.replies.sentences import worded
from rules import safety
from rules.book import Case
from rules.errors import OutOfRange
from rules.heat import dry
from rules.heat.heat_settings import Setting
from rules.model import Request
from rules.physics.ambient import ambient
from rules.physics.units import to_c, to_f

FT_M = 0.3048
SEA, SEVEN = ambient(0), ambient(7000 * FT_M)
SAME = dry.Pace(1.0, 1.0, 1.0)


def case(method="roast", feet=7000.0, topic="time", **fields):
    return Case(Request(topic=topic, method=method, elevation_m=feet * FT_M, **fields))


def climbing(air):
    """1.2, 1.5 and 2.0 times as long anywhere above 1,000 m."""
    return dry.Pace(1.2, 1.5, 2.0) if air.elevation_m > 1000 else SAME


# ways through the wet surface ---------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("dish_class", "hot"),
    [
        ("poultry_pieces", True),
        ("fish", True),
        ("sauce", True),
        ("collagen_cut", False),
        ("starchy_root", False),
        ("pasta", False),
    ],
)
def test_meat_is_done_when_hot_and_what_must_soften_is_not(dish_class, hot):
    assert dry.heated_through(dish_class) is hot


# printed: poultry 165 degF; fish and whole cuts 145 degF
@pytest.mark.parametrize(
    ("dish", "dish_class", "core_f"),
    [
        ("chicken breasts", "poultry_pieces", 165), ("whole chicken", "whole_bird", 165), (None, "fish", 145),
        ("hamburgers", "ground_meat", 160), ("turkey burgers", "ground_meat", 165),
        (None, "custard", 170), ("carrots", "root_vegetable", 165),
    ],
)  # fmt: skip
def test_the_centre_is_cooked_to_the_printed_temperature(dish, dish_class, core_f):
    assert to_f(dry.core_c(dish, dish_class)) == pytest.approx(core_f, abs=0.2)


@pytest.mark.parametrize("target_c", [62.8, 73.9])
def test_a_slab_5_cm_thick_heats_as_the_series_says(target_c):
    """First term by hand: 4/pi exp(-(pi/2)^2 Fo) of the 5 degC to the boil is left, with 1.3e-7 m2/s."""
    minutes = dry.centre_minutes(SEVEN, target_c)
    fourier = 1.3e-7 * 60 * minutes / 0.025**2
    left = 4 / math.pi * math.exp(-((math.pi / 2) ** 2) * fourier)
    assert SEVEN.boiling_c - left * (SEVEN.boiling_c - 5) == pytest.approx(target_c)


@pytest.mark.parametrize("dish_class", ["poultry_pieces", "collagen_cut", "starchy_root", "tender_cut"])
@pytest.mark.parametrize("feet", [-1000, 3000, 7000, 10_000])
def test_the_likely_pace_lies_between_no_change_and_a_wet_surface_all_the_way(dish_class, feet):
    pace = dry.wet_surface_pace(case(dish_class=dish_class))(ambient(feet * FT_M))
    assert pace.low <= pace.likely <= pace.high
    assert 1.0 in (pace.low, pace.high)
    assert pace.likely**2 == pytest.approx(pace.low * pace.high)
    assert (pace.high > 1) is (feet > 0)


def test_a_wet_surface_slows_what_softens_by_its_z():
    """Cooler by 7.1 K at 7,000 ft, and z of a tough cut 44 K: ten to the power of 7.1 over 44."""
    pace = dry.wet_surface_pace(case(dish_class="collagen_cut"))(SEVEN)
    assert pace.high == pytest.approx(10 ** (7.1 / 44), rel=2e-3)


def test_a_wet_surface_slows_what_is_heated_through_by_the_series():
    pace = dry.wet_surface_pace(case(dish="chicken breasts", dish_class="poultry_pieces"))(SEVEN)
    assert pace.high == pytest.approx(dry.centre_minutes(SEVEN, 73.9) / dry.centre_minutes(SEA, 73.9), rel=1e-3)
    assert 1.1 < pace.high < 1.3


def test_a_hotter_centre_is_slowed_more():
    """Minced poultry is cooked to 165 degF and other minced meat to 160 degF."""
    turkey, beef = (
        dry.wet_surface_pace(case("grill", dish=dish, dish_class="ground_meat"))(SEVEN)
        for dish in ("turkey burgers", "hamburgers")
    )
    assert turkey.high > beef.high > 1


def test_what_is_toasted_dry_has_no_wet_surface():
    toasted = case("roast", dish="walnuts", dish_class="nuts")
    assert "toasted" in toasted.traits
    assert dry.wet_surface_pace(toasted)(SEVEN) == SAME


# printed: up to one quarter more, at 5,000 ft
@pytest.mark.parametrize(
    ("feet", "top"), [(-1000, 1.0), (0, 1.0), (2500, 1.125), (5000, 1.25), (10_000, 1.25), (18_000, 1.25)]
)
def test_the_published_quarter_is_reached_at_5000_ft(feet, top):
    pace = dry.up_to_a_quarter(lambda _: SAME)(ambient(feet * FT_M))
    assert (pace.low, pace.likely) == (1, 1)
    assert pace.high == pytest.approx(top)


def test_a_pace_over_the_quarter_keeps_its_own_top():
    assert dry.up_to_a_quarter(lambda _: dry.Pace(1.0, 1.2, 1.4))(SEVEN) == dry.Pace(1.0, 1.2, 1.4)


# times --------------------------------------------------------------------------------------------------------------


def test_the_cooks_own_time_is_multiplied():
    time = dry.dry_time(case(time_min=60.0, time_high_min=100.0), "roast", climbing)
    assert (time.base_low_min, time.base_high_min) == (60, 100)
    assert time.likely_min == pytest.approx(120)
    # a range of 60 to 100 and a pace of 1.2 to 2.0 around 1.5, their logarithms added as squares
    assert (time.low_min, time.high_min) == pytest.approx((83.4, 172.7), abs=0.1)
    assert time.factor == pytest.approx(1.5)
    assert time.source == "common-practice"


def test_going_down_the_range_turns_round():
    """0.5, 0.67 and 0.83 of the time: what slowed most up there gains most down here."""
    time = dry.dry_time(case(feet=0.0, from_elevation_m=2000.0, time_min=60.0), "roast", climbing)
    assert (time.low_min, time.likely_min, time.high_min) == pytest.approx((30, 40, 50))


def test_the_tables_time_holds_at_sea_level_and_grows_to_the_baseline():
    """The table's bird takes 70 to 110 min at sea level; half as long again where the recipe was written."""
    bird = {"dish_class": "whole_bird"}
    at_sea = dry.dry_time(case(**bird), "roast", climbing)
    up = dry.dry_time(case(from_elevation_m=2133.6, **bird), "roast", climbing)
    assert (at_sea.base_low_min, at_sea.base_high_min) == (70, 110)
    assert (up.base_low_min, up.base_high_min) == pytest.approx((105, 165))
    assert (up.low_min, up.high_min) == pytest.approx((105, 165))
    assert at_sea.likely_min == pytest.approx(135)


def test_a_time_that_nobody_knows_is_none():
    assert dry.dry_time(case(dish_class="pasta"), "roast", climbing) is None


def test_without_a_time_it_is_told_by_how_much():
    part = dry.time_part(case(dish_class="pasta"), "roast", climbing, "Because.", "usda-roast-325")
    (factor,) = part.figures
    assert (factor.id, factor.low, factor.value, factor.high) == ("time_factor", 1.2, 1.5, 2.0)
    assert worded(part.because, "us").endswith("Because.")
    assert part.sources == ("usda-roast-325",)


def test_with_a_time_it_is_told_with_both_figures_and_each_source_once():
    part = dry.time_part(case(time_min=60.0), "roast", climbing, "Because.", "usda-roast-325", "common-practice")
    here, base = part.figures
    assert (here.id, here.low, here.value, here.high) == ("cook_time", 70, 90, 120)
    assert (base.id, base.value) == ("baseline_time", 60)
    assert part.because == "Because."
    assert part.sources == ("common-practice", "usda-roast-325")
    assert "70 min to 2 h" in worded(part.headline, "us") or "1 h 10 min" in worded(part.headline, "us")
    assert dry.time_part(case(time_min=60.0, topic="doneness"), "roast", climbing, "").headline == ""


# settings -----------------------------------------------------------------------------------------------------------


def test_the_cooks_setting_is_taken_and_the_usual_one_where_there_is_none():
    usual, given = dry.set_to(case(dish_class="whole_bird"), "roast")
    assert (given, usual.middle_c > 150) == (False, True)
    own, given = dry.set_to(case(dish_class="whole_bird", temperature_c=200.0), "roast")
    assert (own.low_c, own.high_c, own.way, given) == (200, 200, usual.way, True)


@pytest.mark.parametrize(("method", "asked_c", "taken"), [
    ("roast", 89.9, False), ("roast", 90.0, True), ("bake", 64.9, False), ("bake", 65.0, True),
    ("fry", 99.9, False), ("fry", 100.0, True), ("smoke", 74.0, False), ("roast", 350.0, True),
    ("sous_vide", 54.0, True),
])  # fmt: skip
def test_what_no_oven_is_set_to_is_the_centres(method, asked_c, taken):
    assert dry.set_to(case(method, dish_class="tender_cut", temperature_c=asked_c), method)[1] is taken


@pytest.mark.parametrize("asked_c", [10.0, 350.5, 700.0, float("nan")])
def test_a_setting_at_which_nothing_is_cooked_is_refused(asked_c):
    with pytest.raises(OutOfRange) as refused:
        dry.set_to(case(dish_class="tender_cut", temperature_c=asked_c), "roast")
    fault = refused.value
    assert (fault.name, fault.low, fault.high, fault.unit) == ("temperature", 20, 350, "degC")
    assert fault.hint == "Give the setting of the oven, the grate or the fat."


def test_twenty_degrees_is_a_setting_still():
    assert dry.set_to(case(dish_class="tender_cut", temperature_c=20.0), "roast")[1] is True


def test_a_setting_is_told_with_its_range_and_sea_level():
    of, sea = Setting(to_c(325), to_c(355), "still"), Setting(to_c(350), to_c(370), "still")
    figure = dry.setting_figure("oven", "Oven", of, sea)
    assert (figure.id, figure.label, figure.unit) == ("oven", "Oven", "degC")
    ends = [to_f(t) for t in (figure.low, figure.value, figure.high, figure.sea_level)]
    assert ends == pytest.approx([325, 340, 355, 360], abs=0.01)
    assert to_f(dry.setting_figure("oven", "Oven", of).sea_level) == pytest.approx(340, abs=0.01)
    assert figure.value == round(figure.value, 2)


def test_an_oven_that_stays_is_said_and_answers_a_question_about_it():
    heat = Setting(to_c(350), to_c(350), "still")
    asked = case("bake", topic="temperature", dish="casserole", dish_class="casserole")
    part = dry.oven_stays(asked, heat, asked.baseline, "Because.")
    headline = worded(part.headline, "us")
    assert headline.startswith("Set the oven to 350 °F")
    assert headline.endswith("for casserole at 7,000 ft (2,130 m), as at sea level.")
    (figure,) = part.figures
    assert (figure.id, worded(figure.label, "us"), round(to_f(figure.value))) == ("oven", "Oven", 350)
    assert "preheat it fully" in worded(part.steps[0], "us")
    assert part.because == "Because."
    assert dry.oven_stays(case("bake"), heat, "", "").headline == ""


# the centre, and drying ---------------------------------------------------------------------------------------------


def test_a_safe_temperature_comes_with_its_rest():
    beef, bird = (safety.safe_temperature(None, name) for name in ("tender_cut", "whole_bird"))
    core, rest = dry.safe_figures("core_temperature", beef)
    assert (core.id, worded(core.label, "us"), round(to_f(core.value))) == (
        "core_temperature",
        "Safe at the centre",
        145,
    )
    assert core.sea_level == core.value
    assert (rest.id, worded(rest.label, "us"), rest.value, rest.unit) == ("rest_time", "Rest", 3, "min")
    assert [figure.id for figure in dry.safe_figures("core_temperature", bird)] == ["core_temperature"]


# vapour spreads as 1 / pressure: 846.0 hPa at 4,900 ft and 696.8 hPa at 10,000 ft are of the printed tables
@pytest.mark.parametrize(("feet", "percent"), [(4900, 20), (10_000, 45)])
def test_thin_air_dries_faster(feet, percent):
    assert f"about {percent} % faster" in worded(dry.dries(case(feet=feet)), "us")


@pytest.mark.parametrize(("feet", "said"), [(0, False), (2499, False), (2501, True)])
def test_drying_is_told_from_2500_ft(feet, said):
    assert bool(dry.dries(case(feet=feet))) is said


def test_what_stays_is_said_in_words():
    assert worded(dry.nothing_differs(case()), "us") == "Nothing differs from sea level, so the time stays."
    assert "go by colour and smell" in worded(dry.by_colour(), "us")
