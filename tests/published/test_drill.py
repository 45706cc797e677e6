"""Answers of the drill against figures that others printed. A question is drawn at the elevation of the figure."""

from random import Random

import pytest

from assistant.drill.wording import in_words
from rules import drill
from rules.drill.draw import Draw, Place
from rules.physics.units import to_c

FT_M = 0.3048


class At(Draw):
    """Draws the elevation and the things that a printed figure is for."""

    feet: float = 0.0
    picks: tuple = ()

    def place(self, low_ft=0, high_ft=0, *, edges_m=()):
        return Place(self.feet * FT_M, f"at {self.feet} ft")

    def one_of(self, things):
        return next((thing for thing in things if getattr(thing, "name", thing) in self.picks), things[0])


def question(kind_id, feet, *picks):
    theme, _, name = kind_id.partition(".")
    kind = next(kind for kind in drill.kinds_of(theme) if kind.name == name)
    draw = At(f"{kind_id}/1", theme, kind.level, Random(1), "us")
    object.__setattr__(draw, "feet", feet)
    object.__setattr__(draw, "picks", picks)
    return in_words(kind.make(draw))


@pytest.mark.parametrize(
    ("feet", "printed_f", "source"),
    [(2000, 208, "csu-high-altitude-food-prep"), (5000, 203, "csu-high-altitude-food-prep"),
     (7500, 198, "csu-high-altitude-food-prep"), (10_000, 193, "csu-high-altitude-food-prep"),
     (5000, 202, "csu-candy-high-elevation")],
)  # fmt: skip
def test_where_water_boils(feet, printed_f, source):
    asked = question("boiling.point", feet)
    assert drill.grade(asked, to_c(printed_f)).right
    assert not drill.grade(asked, to_c(printed_f - 4)).right
    assert not drill.grade(asked, to_c(212)).right


@pytest.mark.parametrize(
    ("feet", "fall_f", "source"), [(5000, 9, "csu-high-altitude-food-prep"), (7500, 14, "csu-high-altitude-food-prep")]
)
def test_how_far_the_boil_falls(feet, fall_f, source):
    assert drill.grade(question("boiling.fall", feet), fall_f / 1.8).right


@pytest.mark.source("csu-candy-high-elevation")
def test_soft_ball_as_the_candy_guide_prints_it():
    """Soft ball, 234-240 degF at sea level, is 224-230 degF at 5,000 ft."""
    asked = question("baking.candy", 5000, "soft_ball")
    assert drill.grade(asked, (to_c(224), to_c(230))).right
    assert not drill.grade(asked, (to_c(234), to_c(240))).right


@pytest.mark.source("csu-candy-high-elevation")
def test_a_candy_recipe_comes_down_ten_degrees_at_five_thousand_feet():
    asked = question("baking.recipe_candy", 5000, 240)
    assert drill.grade(asked, to_c(230)).right
    assert not drill.grade(asked, to_c(240)).right


@pytest.mark.source("csu-candy-high-elevation")
def test_a_candy_recipe_comes_down_fifteen_degrees_at_seven_and_a_half_thousand_feet():
    assert drill.grade(question("baking.recipe_candy", 7500, 240), to_c(225)).right


@pytest.mark.source("uwyo-altitude-adjusters")
@pytest.mark.parametrize(("feet", "low_tsp", "high_tsp"), [(3000, 1.75, 1.75), (5000, 1.5, 1.75), (7000, 1.5, 1.5)])
def test_baking_powder_of_two_teaspoons(feet, low_tsp, high_tsp):
    """Less by 1/8, 1/8 to 1/4 and 1/4 tsp for each teaspoon."""
    asked = question("baking.powder", feet, 2.0)
    assert drill.grade(asked, (low_tsp, high_tsp)).right
    assert not drill.grade(asked, 2.5).right
    assert not drill.grade(asked, 1.0).right


@pytest.mark.source("uwyo-altitude-adjusters")
@pytest.mark.parametrize(("component", "low", "high"), [("sugar", 1, 3), ("liquid", 3, 4)])
def test_sugar_and_liquid_at_seven_thousand_feet(component, low, high):
    assert drill.grade(question(f"baking.{component}", 7000), (low, high)).right


@pytest.mark.source("uwyo-altitude-adjusters")
def test_the_oven_of_a_cake():
    asked = question("baking.oven", 7000, 350)
    assert drill.grade(asked, (to_c(365), to_c(375))).right
    assert not drill.grade(asked, to_c(350)).right
    assert not drill.grade(asked, to_c(385)).right


@pytest.mark.source("uwyo-altitude-adjusters")
def test_doughnuts_at_five_thousand_feet():
    asked = question("baking.fat", 5000, "doughnuts")
    assert drill.grade(asked, to_c(355)).right
    assert not drill.grade(asked, to_c(370)).right


@pytest.mark.source("usda-aib-539")
@pytest.mark.parametrize(
    ("feet", "printed_f"),
    [(1000, 218), (2000, 216), (3000, 214), (4000, 212), (5000, 211), (6000, 209), (7000, 207), (8000, 205)],
)  # fmt: skip
def test_where_jelly_sets(feet, printed_f):
    assert drill.grade(question("baking.jam", feet), to_c(printed_f)).right


@pytest.mark.parametrize(
    ("kind", "feet", "psi", "source"),
    [("dial_gauge", 1500, 11, "usda-aib-539"), ("dial_gauge", 3500, 12, "usda-aib-539"),
     ("dial_gauge", 5300, 13, "usda-aib-539"), ("dial_gauge", 6500, 14, "usda-aib-539"),
     ("dial_gauge", 9000, 15, "extension-canning-8000"),
     ("weighted_gauge", 800, 10, "usda-aib-539"), ("weighted_gauge", 6500, 15, "usda-aib-539")],
)  # fmt: skip
def test_canner_pressure_for_low_acid_food(kind, feet, psi, source):
    asked = question(f"safety.{kind}", feet)
    assert asked.answer == psi
    assert not any(drill.grade(asked, other).right for other in (psi - 1, psi - 0.5, psi + 1))


@pytest.mark.source("usda-aib-539")
@pytest.mark.parametrize(("feet", "printed_min"), [(800, 20), (2500, 25), (5000, 30), (6500, 35)])
def test_peaches_hot_pints_in_boiling_water(feet, printed_min):
    asked = question("safety.boiling_water_time", feet, "peaches, hot pack, pints")
    assert asked.answer == printed_min


@pytest.mark.source("fda-food-code-2022")
@pytest.mark.parametrize(("kind", "hours"), [("cool_first", 2), ("cool_in_all", 6)])
def test_cooling_in_two_stages(kind, hours):
    """135 to 70 degF in 2 h, to 41 degF in 6 h in all: 3-501.14."""
    asked = question(f"safety.{kind}", 0)
    assert asked.answer == 60 * hours
    assert "135 °F" in asked.text
    assert ("70 °F" if hours == 2 else "41 °F") in asked.text


@pytest.mark.source("fda-food-code-2022")
@pytest.mark.parametrize(
    ("kind", "printed_f", "wrong_f"), [("hold_hot", 135, 130), ("hold_cold", 41, 45), ("reheat", 165, 155)]
)
def test_holding_and_reheating(kind, printed_f, wrong_f):
    asked = question(f"safety.{kind}", 9000)
    assert drill.grade(asked, to_c(printed_f)).right
    assert not drill.grade(asked, to_c(wrong_f)).right


@pytest.mark.source("usda-fsis-safe-temperatures")
@pytest.mark.parametrize(
    ("kind", "printed_f"),
    [("poultry", 165), ("ground_meat", 160), ("whole_cut", 145), ("fish", 145), ("leftover", 165)],
)  # fmt: skip
def test_safe_temperatures_stay_at_nine_thousand_feet(kind, printed_f):
    asked = question("safety.centre", 9000, kind)
    assert drill.grade(asked, to_c(printed_f)).right
    assert not drill.grade(asked, to_c(printed_f - 2)).right


@pytest.mark.parametrize(
    ("agency", "feet", "minutes", "source"),
    [("CDC", 7000, 3, "cdc-eid-2025-boil"), ("CDC", 5300, 1, "cdc-eid-2025-boil"), ("EPA", 5300, 3, "epa-boil"),
     ("Health Canada", 7000, 2, "health-canada-boil"), ("Health Canada", 5300, 1, "health-canada-boil")],
)  # fmt: skip
def test_boiling_water_to_drink(agency, feet, minutes, source):
    assert question("safety.boil_water", feet, agency).answer == minutes


@pytest.mark.source("csu-preserve-smart")
def test_fifteen_minutes_at_five_thousand_feet():
    assert question("safety.empty_jars", 0, 5).answer == 15


@pytest.mark.source("csu-high-altitude-food-prep")
def test_a_braise_takes_a_quarter_more_at_five_thousand_feet():
    asked = question("timing.braise_by_the_guide", 5000, 240.0)
    assert drill.grade(asked, 300).right
    assert not drill.grade(asked, 240).right


@pytest.mark.source("anderson-1980-altitude")
@pytest.mark.parametrize(("thousands", "percent"), [(3, 5), (5, 15), (7, 25), (8, 30)])
def test_under_pressure_five_per_cent_for_each_thousand_feet(thousands, percent):
    asked = question("timing.under_pressure", 0, thousands, 60.0)
    assert asked.answer == pytest.approx(60 * (1 + percent / 100))


@pytest.mark.source("usda-roast-325")
def test_two_hours_at_325_become_two_and_a_half():
    assert question("timing.roast", 7000, 120.0).answer == 150


@pytest.mark.source("csu-high-altitude-food-prep")
def test_half_a_pound_of_gauge_for_each_thousand_feet():
    """The guide: air pressure falls by about half a pound for each 1,000 ft."""
    assert drill.grade(question("boiling.same_pressure", 6000, 10.0), 13.0).right


@pytest.mark.source("iapws-r7-97")
@pytest.mark.parametrize(("feet", "psi", "steam_f"), [(6000, 15.0, 243.9), (8000, 15.0, 242.0), (10_000, 10.0, 228.2)])
def test_inside_a_pressure_cooker(feet, psi, steam_f):
    assert question("boiling.pressure_cooker", feet, psi).answer == pytest.approx(to_c(steam_f), abs=0.05)
