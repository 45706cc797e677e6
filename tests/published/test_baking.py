"""Baking at altitude against the extension publications. Ranges are checked as ranges: they were found by trial."""

from __future__ import annotations

import pytest

from assistant.replies.recipe.worded import in_words
from assistant.replies.worded import answer
from rules.baking import bands, components, eggs, frying, leavening, syrup, yeast
from rules.baking.batch import Batch
from rules.baking.formula import ratios
from rules.heat.pressure import inside_c
from rules.model import Quantity, Request
from rules.physics import evaporation
from rules.physics.ambient import ambient
from rules.physics.units import PSI_PER_PA, to_c, to_f
from rules.recipe import IngredientLine, Recipe, Step, TempMark, TimeMark
from rules.recipes import wet_dish
from rules.recipes.convert import convert

FT = 0.3048
TBSP_PER_CUP = 16


def line(amount: float, unit: str | None, item: str, mass_g: float) -> IngredientLine:
    measure = f"{amount:g} {unit or ''}".strip()
    return IngredientLine(
        line=f"{measure} {item}",
        item=item,
        amount=amount,
        unit=unit,
        mass_g=mass_g,
        mass_from="density",
        end=len(measure),
    )


CAKE = Recipe(
    ingredients=(
        line(2, "cup", "all-purpose flour", 250),
        line(1, "tsp", "baking powder", 4.6),
        line(1, "cup", "granulated sugar", 200),
        line(1, "cup", "milk", 244),
    ),
    steps=(
        Step(
            text="Bake at 350 °F for 30 minutes.",
            times=(TimeMark(19, 29, 30, 30, "bake"),),
            temperatures=(TempMark(8, 14, to_c(350), to_c(350), "degF", "oven"),),
        ),
    ),
)


def cake_at(feet: float) -> dict[str, tuple[float, float, float]]:
    """What the converted cake has, and its range: each component by name."""
    new = convert(CAKE, to_elevation_m=feet * FT, style="layer_cake")
    return {c.what: (c.to_value, c.to_low, c.to_high) for c in new.changes if c.to_value is not None}


# University of Wyoming Extension, Altitude Adjusters, section 1; Utah State University Extension, FAQ 204 (2005): the
# same figures but for the liquid at 7,000 ft. Powder less in tsp a teaspoon, sugar less and liquid more in tbsp a cup.
@pytest.mark.source("uwyo-altitude-adjusters", "usu-faq-204")
@pytest.mark.parametrize(
    ("feet", "powder", "sugar", "liquid"),
    [
        (3000, (1 / 8, 1 / 8), (0, 1), (1, 2)),
        (5000, (1 / 8, 1 / 4), (0, 2), (2, 4)),
        (7000, (1 / 4, 1 / 4), (1, 3), (3, 4)),
    ],
)
def test_the_cake_table_of_wyoming_and_utah(feet, powder, sugar, liquid) -> None:
    at = cake_at(feet)
    half_eighth, half_spoon = 1 / 16, 0.5
    assert powder[0] - half_eighth <= 1 - at["leavening"][0] <= powder[1] + half_eighth
    less = (1 - at["sugar"][0]) * TBSP_PER_CUP
    assert sugar[0] - half_spoon <= less <= sugar[1] + half_spoon
    more = (at["liquid"][0] - 1) * TBSP_PER_CUP
    assert liquid[0] - half_spoon <= more <= liquid[1] + half_spoon


@pytest.mark.source("usu-faq-204")
@pytest.mark.parametrize(("feet", "low", "high"), [(3000, 1, 2), (5000, 2, 4), (7000, 2, 4)])
def test_the_range_of_the_liquid_spans_utah_too(feet, low, high) -> None:
    """Utah State University Extension, FAQ 204 (2005)."""
    span = bands.change("liquid", feet * FT)
    assert span.low * TBSP_PER_CUP == pytest.approx(low)
    assert span.high * TBSP_PER_CUP == pytest.approx(high)


# The percent form of the extension table, as an appliance manual reprints it.
@pytest.mark.source("uwyo-altitude-adjusters")
@pytest.mark.parametrize(
    ("feet", "component", "low", "high"),
    [(3000, "leavening", -10, -10), (5000, "leavening", -25, -10), (7000, "leavening", -25, -25),
     (3000, "sugar", -10, -5), (5000, "sugar", -10, -10), (7000, "sugar", -20, -20),
     (3000, "liquid", 5, 10), (5000, "liquid", 20, 20), (7000, "liquid", 20, 25)],
)  # fmt: skip
def test_the_percent_form_of_the_table(feet, component, low, high) -> None:
    """Kitchen percentages rounded to 5: each stands within 3 points of our range."""
    span = bands.change(component, feet * FT)
    assert 100 * span.low - 3 <= high
    assert 100 * span.high + 3 >= low


@pytest.mark.source("uwyo-altitude-adjusters", "csu-cakes-2002")
@pytest.mark.parametrize("feet", [3000, 5000, 7000])
def test_oven_fifteen_to_twenty_five_degrees_hotter(feet) -> None:
    """University of Wyoming Extension, Altitude Adjusters, section 1; Colorado State University: no more than 25 °F."""
    assert cake_at(feet)["oven"] == (370, 365, 375)


@pytest.mark.source("uwyo-altitude-adjusters")
@pytest.mark.parametrize("component", ["leavening", "sugar", "liquid", "oven"])
@pytest.mark.parametrize("feet", [0, 500, 1500, 2000])
def test_nothing_is_needed_well_below_three_thousand_feet(component, feet) -> None:
    """University of Wyoming Extension, section 1: no adjustment up to 3,000 ft. Ours is brought in from 2,000 ft."""
    assert bands.change(component, feet * FT) == bands.NOTHING


@pytest.mark.source("uwyo-altitude-adjusters")
def test_the_order_of_the_rows_is_the_order_of_the_changes() -> None:
    """University of Wyoming Extension, section 1: one adjustment at a time, in the order of the table."""
    new = convert(CAKE, to_elevation_m=7000 * FT, style="layer_cake")
    assert [c.what for c in new.changes if c.what in ("leavening", "sugar", "liquid", "oven")] == [
        "leavening", "sugar", "liquid", "oven",
    ]  # fmt: skip
    assert any("one thing at a time" in c.text for c in in_words(new).cautions)


@pytest.mark.source("csu-cakes-2002")
@pytest.mark.parametrize("feet", [4000, 5280, 7000])
def test_colorado_short_form(feet) -> None:
    """Colorado State University, 12 December 2002: leavener less by 1/8 to 1/4."""
    assert 1 / 8 - 0.02 <= -bands.change("leavening", feet * FT).value <= 1 / 4


@pytest.mark.source("computed", "afrs-high-altitude")
@pytest.mark.parametrize(("feet", "least", "most"), [(8000, 0.26, 0.34), (10_000, 0.31, 0.39)])
def test_above_the_tables_leavening_goes_by_the_gas_law(feet, least, most) -> None:
    """Dry gas and gas at 60 degC, by hand: 26 to 32 % at 8,000 ft, 31 to 39 % at 10,000. The Armed Forces' card takes
    two thirds off at 8,000 ft, more than either."""
    cut = bands.change("leavening", feet * FT)
    assert least - 0.01 <= -cut.value <= most
    assert -cut.value < 2 / 3


@pytest.mark.source("csu-high-altitude-food-prep")
@pytest.mark.parametrize("feet", [5000, 5280])
def test_colorado_sugar_lies_in_the_range(feet) -> None:
    """Colorado State University Extension class, read in a reprint: 1 to 2 tbsp less a cup."""
    span = bands.change("sugar", feet * FT)
    assert span.low * TBSP_PER_CUP <= -2 + 0.01
    assert span.high * TBSP_PER_CUP >= -1


@pytest.mark.source("egg-producers-cakes")
def test_egg_producers_time_and_pan() -> None:
    """State egg producers' group, read in a reprint: time up to 20 % less, pans half full instead of two thirds."""
    new = convert(CAKE, to_elevation_m=5280 * FT, style="layer_cake")
    assert new.steps[0].times[0].to_high_min == pytest.approx(24)
    pan = next(c for c in new.changes if c.what == "pan")
    assert (pan.from_value, pan.to_value) == (0.67, 0.5)


@pytest.mark.source("common-practice")
def test_time_in_minutes_for_each_thirty() -> None:
    """Common practice: 5 to 8 minutes less in 30."""
    change = next(c for c in convert(CAKE, to_elevation_m=7000 * FT, style="layer_cake").changes if c.what == "time")
    assert 30 - 8 <= change.to_value <= 30 - 5
    assert change.to_high <= 30


@pytest.mark.source("nmsu-circular-293")
@pytest.mark.parametrize("feet", [5000, 7500])
def test_new_mexico_rule_for_shortening_cakes(feet) -> None:
    """New Mexico State University, Circular 293: 1/4 to 1/2 tsp less for 2 cups of flour, each 2,500 ft.

    A cake with 2 to 4 tsp of powder for 2 cups: the range of the one rule meets that of the other.
    """
    rule = leavening.nmsu_tsp(2, feet * FT)
    table = bands.change("leavening", feet * FT)
    ours = (table.low * 4, table.high * 2)
    assert ours[0] <= rule.high
    assert rule.low <= ours[1]


@pytest.mark.source("nmsu-circular-293")
@pytest.mark.parametrize(
    ("feet", "printed"), [(2500, (0.25, 0.5)), (5000, (0.5, 1.0)), (7500, (0.75, 1.5)), (10_000, (1.0, 2.0))]
)
def test_new_mexico_rule_as_printed(feet, printed) -> None:
    """New Mexico State University, Circular 293, opening."""
    span = leavening.nmsu_tsp(2, feet * FT)
    assert (-span.high, -span.low) == pytest.approx(printed)


@pytest.mark.source("usu-faq-204")
def test_quick_breads_a_quarter_less() -> None:
    """Utah State University Extension, FAQ 204 (2005): reduce the baking powder or soda by one fourth."""
    assert components.change("quick_bread", "leavening", 7000 * FT).value == pytest.approx(-0.25)
    for feet in (3000, 4500, 5500):
        span = components.change("quick_bread", "leavening", feet * FT)
        assert span.low <= -0.25 <= span.high + 1e-9


@pytest.mark.source("usu-faq-204")
def test_bread_machine_yeast() -> None:
    """Utah State University Extension, FAQ 204 (2005): 1/8 to 1/4 tsp less: of 1 to 2 tsp, 6 to 25 %."""
    span = bands.change("bread_machine_yeast", 4500 * FT)
    assert (-span.high, -span.low) == pytest.approx((0.125, 0.25))
    assert 0.0625 <= -bands.change("yeast", 4500 * FT).value <= 0.25


@pytest.mark.source("common-practice")
@pytest.mark.parametrize(("feet", "less"), [(6300, 0.25), (9200, 1 / 3)])
def test_yeast_by_bakers_reports(feet, less) -> None:
    """Bakers' reports, common practice: a quarter less near 6,300 ft, a third less near 9,200 ft."""
    assert -bands.change("yeast", feet * FT).value == pytest.approx(less, abs=0.01)


@pytest.mark.source("uwyo-altitude-adjusters")
@pytest.mark.parametrize("feet", [4000, 6000, 8000])
def test_dough_rises_faster_the_higher_one_is(feet) -> None:
    """University of Wyoming Extension, section 8: the higher the altitude, the shorter the time for dough to rise."""
    ratio = yeast.proof_ratio(Batch.of(Recipe(), "yeast_bread", 0, feet * FT))
    assert ratio.low < ratio.value < 1 <= ratio.high


@pytest.mark.source("common-practice")
def test_dough_rises_a_quarter_to_a_half_faster() -> None:
    """Common practice: dough rises 25 to 50 % faster in the mountains; ours at 7,000 and 10,000 ft."""
    for feet in (7000, 10_000):
        assert 1.25 <= 1 / yeast.proof_ratio(Batch.of(Recipe(), "yeast_bread", 0, feet * FT)).low <= 1.5


@pytest.mark.source("uwyo-altitude-adjusters")
def test_deep_fat_at_five_thousand_feet() -> None:
    """University of Wyoming Extension, section 7: 3 °F for each 1,000 ft, 370 becomes 355 °F at 5,000 ft."""
    assert 370 + frying.difference_k(0, 5000 * FT).value * 1.8 == pytest.approx(355)


@pytest.mark.source("usu-faq-453")
def test_candy_of_utah() -> None:
    """Utah State University Extension, FAQ 453: water boiling at 203 °F takes 9 °F off every stage."""
    local_f = to_f(ambient(4900 * FT).boiling_c)
    assert local_f == pytest.approx(203, abs=0.5)
    assert 246 + syrup.shift_k(to_c(246), 0, 4900 * FT) * 1.8 == pytest.approx(246 - 9, abs=0.5)


@pytest.mark.source("csu-candy-high-elevation")
@pytest.mark.parametrize(("feet", "printed_f"), [(5000, (224, 230)), (7500, (219, 225))])
def test_soft_ball_of_colorado(feet, printed_f) -> None:
    """Colorado State University, Candy Making at High Elevation: soft ball 234-240 °F, 2 °F less for 1,000 ft."""
    for sea_f, local_f in zip((234, 240), printed_f, strict=True):
        assert sea_f + syrup.shift_k(to_c(sea_f), 0, feet * FT) * 1.8 == pytest.approx(local_f, abs=1.6)


@pytest.mark.source("csu-candy-high-elevation", "computed")
def test_soft_ball_by_the_measured_difference() -> None:
    """Soft ball 234-240 °F with water at 202.8 °F (5,000 ft, reference equation): 224.9-230.9 °F."""
    for sea_f, local_f in ((234, 224.9), (240, 230.9)):
        assert sea_f + syrup.shift_k(to_c(sea_f), 0, 5000 * FT) * 1.8 == pytest.approx(local_f, abs=0.15)


@pytest.mark.source("from-memory")
def test_caramel_does_not_move() -> None:
    """From memory, food chemistry: caramelisation from about 338 °F is no matter of boiling."""
    assert syrup.shift_k(to_c(338), 0, 10_000 * FT) == 0


@pytest.mark.source("usda-sr28")
@pytest.mark.parametrize(
    ("count", "size", "each_g"), [(1, "medium", 44), (1, "large", 50), (1, "extra-large", 56), (1, "jumbo", 63)]
)
def test_egg_sizes(count, size, each_g) -> None:
    """USDA National Nutrient Database, SR 28, NDB 01123."""
    assert eggs.mass_g(count, size) == each_g


@pytest.mark.source("csu-high-altitude-food-prep")
def test_extra_large_for_large_in_rich_cakes() -> None:
    """Colorado State University food scientists (2018 press, read second-hand): extra-large eggs in place of large."""
    cake = Recipe(ingredients=(*CAKE.ingredients, line(3, None, "egg", 150)))
    change = next(c for c in convert(cake, to_elevation_m=5003 * FT, style="layer_cake").changes if c.what == "egg")
    assert (change.from_value, change.from_unit, change.to_value, change.to_unit) == (3, "large", 3, "extra-large")


@pytest.mark.source("csu-high-altitude-food-prep", "from-memory")
def test_soda_keeps_what_sour_milk_needs() -> None:
    """Colorado State University Extension, from memory: never below 1/2 tsp of soda a cup of sour milk."""
    for soda, least in ((0.5, 0.5), (0.75, 0.5), (1.0, 0.5)):
        quick = Recipe(
            ingredients=(
                line(2, "cup", "all-purpose flour", 250),
                line(soda, "tsp", "baking soda", soda * 4.6),
                line(1, "cup", "buttermilk", 245),
            )
        )
        to = convert(quick, to_elevation_m=9000 * FT, style="quick_bread").ingredients[1].amount
        assert least <= to <= soda
        assert to < soda or soda < 1


@pytest.mark.source("common-practice")
@pytest.mark.parametrize(("style", "component"), [("pie", "oven"), ("yeast_bread", "salt"), ("meringue", "sugar")])
def test_what_stays(style, component) -> None:
    """Denver home-service advice (reprint) for pie crust; common practice for the others."""
    share = components.share(style, component)
    assert share is not None
    assert share.value == 0


@pytest.mark.source("csu-high-altitude-food-prep")
@pytest.mark.parametrize("style", ["cookie"])
def test_cookies_change_slightly_in_each_direction(style) -> None:
    """Colorado State University (second-hand): slightly less leavening, fat, sugar; more liquid, flour, heat.

    The fat of a plain cookie is left as it is, since most that spread too far want flour or sugar put right.
    """
    assert components.change(style, "fat", 5280 * FT).value <= 0
    for component in ("leavening", "sugar"):
        assert bands.change(component, 5280 * FT).value < components.change(style, component, 5280 * FT).value < 0
    for component in ("liquid", "flour"):
        assert components.change(style, component, 5280 * FT).value > 0
    assert 0 < components.change(style, "oven", 5280 * FT).value <= 25


@pytest.mark.source("computed", "uwyo-altitude-adjusters")
@pytest.mark.parametrize("feet", [3000, 4000, 5000, 6000, 7000])
def test_the_cake_table_agrees_with_the_gas_law(feet) -> None:
    """Computed: gas for the same space, dry at room temperature and wet at 60 °C, spans the table within 3 points."""
    dry, wet = (1 - 1 / leavening.gas_ratio(0, feet * FT, c) for c in (None, 60.0))
    assert dry - 0.03 <= -bands.change("leavening", feet * FT).value <= wet + 0.03


# University of Wyoming Extension, Altitude Adjusters no. 2: 1 psi more for each 2,000 ft keeps the heat inside.
@pytest.mark.source("computed", "from-memory", "uwyo-altitude-adjusters")
@pytest.mark.parametrize("feet", [5000, 7000])
def test_the_liquid_of_the_table_makes_good_the_drying(feet) -> None:
    """Computed: a cake loses about a tenth of its weight in the oven (from memory), and thin air takes it faster.

    The table's liquid makes that good, and up to three times over: stored flour is drier there too.
    """
    lost_g = 0.1 * 800
    more_lost_g = lost_g * (evaporation.drying_ratio(feet * FT) - 1)
    added_g = 244 * bands.change("liquid", feet * FT).value
    assert 1 <= added_g / more_lost_g <= 3


@pytest.mark.source("uwyo-altitude-adjusters")
@pytest.mark.parametrize(("feet", "psi"), [(2000, 11), (4000, 12), (6000, 13), (8000, 14)])
def test_one_psi_for_two_thousand_feet(feet, psi) -> None:
    same = inside_c(ambient(0), 10 / PSI_PER_PA)
    assert inside_c(ambient(feet * FT), psi / PSI_PER_PA) == pytest.approx(same, abs=0.4)


@pytest.mark.source("anderson-1980-altitude")
def test_fifteen_minutes_in_a_hundred_at_five_thousand_feet_lies_in_the_range() -> None:
    """Anderson, New High Altitude Cookbook, quoted: pressure cooking 5 % longer for each 1,000 ft above 2,000 ft."""
    step = Step(text="Pressure-cook 100 minutes.", times=(TimeMark(14, 25, 100, 100, "pressure"),))
    moved = wet_dish.under_pressure(Batch.of(Recipe(steps=(step,)), "beans", 0, 5000 * FT), step)
    assert moved is not None
    assert moved.shift is not None
    assert moved.shift.span.low <= 1.15 <= moved.shift.span.high


@pytest.mark.source("uwyo-altitude-adjusters")
@pytest.mark.parametrize(("style", "feet"), [("rice", 5280), ("soup", 5000), ("pasta", 7000), ("braise", 7000)])
def test_boiled_food_four_to_eleven_percent_a_thousand_feet(style, feet) -> None:
    """University of Wyoming Extension, Altitude Adjusters no. 2: 4 to 11 % longer for each 1,000 ft, by product."""
    moved = wet_dish.simmering(Batch.of(Recipe(), style, 0, feet * FT))
    assert moved is not None
    assert moved.shift is not None
    # how the shares add up is not printed: not more than simply added
    assert 1 + 0.04 * feet / 1000 - 0.01 <= moved.shift.span.value <= 1 + 0.11 * feet / 1000


@pytest.mark.source("quast-1977-beans")
def test_beans_by_their_published_z() -> None:
    """Quast and da Silva 1977, z 18 and 19 °C over the boil; 5,000 ft, 5.07 K lower: 1.85 to 1.91 times at most."""
    moved = wet_dish.simmering(Batch.of(Recipe(), "beans", 0, 5000 * FT))
    assert moved is not None
    assert moved.shift is not None
    assert 1.5 < moved.shift.span.value < 1.85
    assert 1.85 <= moved.shift.span.high <= 1.91 + 0.01


@pytest.mark.source("common-practice")
def test_bakers_percentage() -> None:
    """The baker's percentage by its definition (common practice): flour 100, water 68, salt 2."""
    dough = Recipe(
        ingredients=(line(500, "g", "bread flour", 500), line(340, "g", "water", 340), line(10, "g", "salt", 10))
    )
    found = ratios(dough)
    assert found.percent == {"flour": 100.0, "liquid": 68.0, "salt": 2.0}
    assert found.liquid == 0.68


@pytest.mark.source("from-memory")
def test_gas_of_baking_powder() -> None:
    """The US standard for baking powder, from memory: at least 12 % of carbon dioxide by weight, 14 % usual."""
    found = ratios(CAKE)
    per_g_of_powder = found.gas_ml_per_g * found.flour_g / 4.6
    assert 0.12 <= per_g_of_powder * 44.01 / 24_470 <= 0.17


# Worked examples, reckoned by hand from the Wyoming table.
@pytest.mark.source("uwyo-altitude-adjusters")
@pytest.mark.parametrize(
    ("feet", "tsp", "low", "high"),
    [(7000, 2, 1.5, 1.5), (5000, 2, 1.5, 1.75), (3000, 2, 1.75, 1.75), (6500, 2, 1.5, 1.625)],
)
def test_baking_powder_for_two_teaspoons(feet, tsp, low, high) -> None:
    """University of Wyoming Extension, section 1."""
    request = Request(
        topic="bake_adjust", subject="baking powder", quantity=Quantity(tsp, "tsp"), elevation_m=feet * FT
    )
    to = answer(request).figure("leavening_to")
    assert to is not None
    assert low <= to.value <= high
    assert to.unit == "tsp"


@pytest.mark.source("uwyo-altitude-adjusters")
def test_muffins_at_eight_thousand_feet() -> None:
    """University of Wyoming Extension, section 1: 15 to 25 °F."""
    request = Request(
        topic="bake_adjust", subject="oven", dish="muffins", dish_class="quick_bread", elevation_m=8000 * FT
    )
    change = answer(request).figure("oven_change")
    assert change is not None
    assert (change.low * 1.8, change.high * 1.8) == pytest.approx((15, 25), abs=0.1)


@pytest.mark.source("uwyo-altitude-adjusters")
def test_sugar_of_a_cake_at_seven_thousand_feet() -> None:
    """University of Wyoming Extension, section 1: 1 to 3 tbsp less a cup."""
    request = Request(
        topic="bake_adjust", subject="granulated sugar", quantity=Quantity(1, "cup"), dish_class="layer_cake",
        elevation_m=7000 * FT,
    )  # fmt: skip
    to = answer(request).figure("sugar_to")
    assert to is not None
    assert (1 - to.high) * 16 == pytest.approx(1, abs=0.6)
    assert (1 - to.low) * 16 == pytest.approx(3, abs=0.6)
