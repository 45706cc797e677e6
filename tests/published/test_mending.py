"""What mending says, against published lists of causes and published amounts, named beside each check."""

import pytest

from assistant.replies.sentences import worded
from rules.mending import Mending, Ranked, suggest
from rules.mending.safety import cautions
from rules.tables import read_csv

FT = 0.3048


def at_ft(symptom: str, dish_class: str, elevation_ft: float = 7000) -> Mending:
    return suggest([symptom], dish_class=dish_class, elevation_m=elevation_ft * FT)


def changes(found: Mending) -> set[tuple[str, str]]:
    return {(row.change.what, row.change.way) for row in found.causes}


def ids(found: Mending) -> set[str]:
    return {row.cause.id for row in found.causes}


def first(found: Mending) -> Ranked:
    assert found.next is not None
    return found.next


def line(row: Ranked) -> str:
    return worded(row.line, "us")


def told(found: Mending) -> str:
    return " ".join(f"{c.level}: {worded(c.text, 'us')}" for c in cautions(found))


# cakes


@pytest.mark.source("uwyo-baking-high-altitudes")
def test_a_cake_falls_because_gas_stretches_its_walls() -> None:
    """Gas expands more, cell walls stretch and burst, and the cake falls; less leavening relieves the pressure."""
    change = first(at_ft("sank_in_the_middle", "layer_cake")).change
    assert (change.what, change.way) == ("leavening", "less")


@pytest.mark.source("uwyo-baking-high-altitudes")
def test_tenderizers_go_down_and_strengtheners_up() -> None:
    """To reinforce cell walls: less sugar and fat (tenderizers), more egg and flour (strengtheners)."""
    wanted = {("sugar", "less"), ("fat", "less"), ("egg", "more"), ("flour", "more"), ("leavening", "less")}
    assert wanted <= changes(at_ft("sank_in_the_middle", "layer_cake"))


@pytest.mark.source("uwyo-baking-high-altitudes")
def test_coarse_texture_comes_of_gas_in_large_pockets() -> None:
    """Leavening occurs faster, bubbles group into large pockets: a coarse-textured cake."""
    row = first(at_ft("crumb_coarse", "layer_cake"))
    assert (row.change.what, row.change.way) == ("leavening", "less")


@pytest.mark.source("uwyo-baking-high-altitudes")
def test_sticking_comes_of_concentrated_sugar() -> None:
    """Quicker evaporation makes baked goods more prone to sticking, as sugar becomes more concentrated."""
    assert ("sugar", "less") in changes(at_ft("stuck_to_the_pan", "layer_cake"))


@pytest.mark.source("uwyo-baking-high-altitudes")
def test_dry_and_crumbly_wants_moisture() -> None:
    """They lose moisture more quickly; batters and doughs need more of it."""
    row = first(at_ft("crumb_dry", "layer_cake"))
    assert (row.change.what, row.change.way) == ("liquid", "more")


@pytest.mark.parametrize("source", ["uwyo-altitude-adjusters", "usu-faq-204"])
def test_one_thing_at_a_time_powder_then_sugar_then_liquid(source: str) -> None:
    """Both tables: change one thing at a time, in the order of the rows: powder, sugar, liquid, then the others."""
    found = at_ft("sank_in_the_middle", "layer_cake")
    whats = [row.change.what for row in found.causes]
    assert whats.index("leavening") < whats.index("sugar") < whats.index("liquid"), source


@pytest.mark.source("uwyo-altitude-adjusters")
@pytest.mark.parametrize(
    ("elevation_ft", "least", "most"), [(3000, 1 / 8, 1 / 8), (5000, 1 / 8, 1 / 4), (7000, 1 / 4, 1 / 4)]
)
def test_powder_taken_off_each_teaspoon(elevation_ft: float, least: float, most: float) -> None:
    """Table for cakes with shortening: 1/8 tsp a teaspoon at 3,000 ft, 1/8 to 1/4 at 5,000, 1/4 at 7,000."""
    change = first(at_ft("sank_in_the_middle", "layer_cake", elevation_ft)).change
    taken = (change.from_value - change.to_value) / change.from_value
    assert least - 1e-9 <= taken <= most + 1e-9


@pytest.mark.source("uwyo-altitude-adjusters")
@pytest.mark.parametrize(("elevation_ft", "least", "most"), [(3000, 1, 2), (5000, 2, 4), (7000, 3, 4)])
def test_liquid_added_to_each_cup(elevation_ft: float, least: float, most: float) -> None:
    """The same table: 1 to 2 tbsp a cup at 3,000 ft, 2 to 4 at 5,000, 3 to 4 at 7,000."""
    found = at_ft("crumb_dry", "layer_cake", elevation_ft)
    change = next(row.change for row in found.causes if row.change.what == "liquid")
    assert least - 1e-9 <= (change.to_value - change.from_value) * 16 <= most + 1e-9


@pytest.mark.source("egg-producers-cakes")
def test_pans_are_filled_half() -> None:
    """Pans half full, not two thirds, as batters rise higher."""
    assert "half full" in line(first(at_ft("ran_over_the_pan", "layer_cake")))


@pytest.mark.source("csu-high-altitude-food-prep")
@pytest.mark.parametrize("symptom", ["sank_in_the_middle", "crumb_coarse"])
def test_foam_cakes_want_soft_peaks(symptom: str) -> None:
    """Angel food and sponge: beat whites to soft peaks only."""
    lines = [line(row) for row in at_ft(symptom, "foam_cake").causes[:2]]
    assert any("soft peaks" in said for said in lines)


# cookies, biscuits


@pytest.mark.source("uwyo-altitude-adjusters")
def test_cookies_that_spread() -> None:
    """Spreading: less sugar or fat, or more flour, by an eighth to a quarter."""
    found = at_ft("spread_too_far", "cookie")
    for what, way in (("sugar", "less"), ("fat", "less"), ("flour", "more")):
        change = next(row.change for row in found.causes if (row.change.what, row.change.way) == (what, way))
        assert 1 / 8 - 0.01 <= abs(change.to_value / change.from_value - 1) <= 1 / 4
    assert first(found).change.what == "sugar"


@pytest.mark.source("uwyo-altitude-adjusters")
def test_a_soapy_aftertaste_wants_less_soda_or_powder() -> None:
    """Soapy aftertaste: lower baking soda or powder by an eighth of a teaspoon."""
    change = first(at_ft("tastes_soapy", "cookie", 0)).change
    assert (change.what, change.way) == ("leavening", "less")
    assert (change.from_value - change.to_value) / change.from_value == pytest.approx(1 / 8)


@pytest.mark.source("ky-4h-food-scores")
def test_biscuits_too_small() -> None:
    """Too small: not enough or poor quality leavening, overmixing, oven not hot enough."""
    found = at_ft("rose_too_little", "biscuit", 0)
    assert {"too_little_leavening", "stale_leavening", "handled_too_much", "oven_too_cool"} <= ids(found)


@pytest.mark.source("ky-4h-food-scores")
def test_biscuits_tough() -> None:
    """Tough: too much flour in the dough or in handling it, overmixed ingredients."""
    assert {"too_much_flour", "overmixed", "handled_too_much"} <= ids(at_ft("crumb_tough", "biscuit", 0))


# bread


@pytest.mark.source("usu-faq-204")
@pytest.mark.parametrize("symptom", ["loaf_collapsed", "overproofed"])
def test_dough_rises_only_to_double(symptom: str) -> None:
    """Yeast bread: shorten the rise; let it rise only to double."""
    row = first(at_ft(symptom, "yeast_bread"))
    assert (row.change.what, row.change.way) == ("proof", "shorter")
    assert "doubled" in line(row)


@pytest.mark.source("american-womans-cook-book")
def test_over_rising_makes_a_porous_loaf_that_crumbles() -> None:
    """Too long rising: very porous, broken irregular cells, crumbles badly; so does too cool an oven."""
    assert {"risen_too_long", "oven_late"} <= ids(at_ft("holes_too_big", "yeast_bread", 0))
    assert "risen_too_long" in ids(at_ft("loaf_dry", "yeast_bread", 0))


@pytest.mark.source("american-womans-cook-book")
def test_under_rising_and_too_much_flour_make_a_small_loaf() -> None:
    """Under-rising gives a small loaf; too stiff a dough rises slowly; old yeast gives inferior bread."""
    assert {"risen_too_short", "dough_too_dry", "dead_yeast"} <= ids(at_ft("loaf_dense", "yeast_bread", 0))


# sugar and jam


@pytest.mark.parametrize("source", ["usu-faq-453", "csu-candy-high-elevation"])
def test_candy_that_sets_too_hard_was_cooked_to_the_sea_level_reading(source: str) -> None:
    """Subtract the fall of the boiling point, about 10 °F at 5,000 ft."""
    change = first(at_ft("candy_too_hard", "candy", 5000)).change
    assert change.to_value * 1.8 == pytest.approx(-10, abs=1), source


@pytest.mark.source("osu-sp-50-746")
def test_jam_too_soft() -> None:
    """Too soft: undercooking, insufficient acid, too large a batch at one time."""
    assert ids(at_ft("set_too_loose", "jam", 0)) == {"undercooked_gel", "too_little_acid", "batch_too_large"}


@pytest.mark.source("osu-sp-50-746")
def test_jam_too_stiff() -> None:
    """Too stiff: overcooking, too much pectin in the fruit; cook to 8 °F over the boiling point of water."""
    found = at_ft("set_too_stiff", "jam")
    assert ids(found) == {"overcooked_gel", "too_much_pectin"}
    assert "8 °F" in line(first(found))


@pytest.mark.source("usda-aib-539")
@pytest.mark.parametrize("row", read_csv("tables/gel_point_usda-aib-539.csv").rows, ids=lambda r: r["elevation_ft"])
def test_gel_point_of_the_printed_table(row: dict[str, str]) -> None:
    """Guide 7: the gel point at each elevation, whole degrees; 4,000 ft is printed half a degree high."""
    change = first(at_ft("set_too_loose", "jam", float(row["elevation_ft"]))).change
    assert change.to_value * 1.8 + 32 == pytest.approx(float(row["temp_f"]), abs=1.1)


@pytest.mark.source("nchfp-jellied-problems")
def test_crystals_in_jelly() -> None:
    """Crystals: excess sugar; undissolved sugar on the side of the pot; cooked too slowly or too long."""
    found = at_ft("crystals_in_the_set", "jam", 0)
    assert {"gel_sugar_measured", "slow_boil", "overcooked_gel"} == ids(found)


# fat, pots, drinks


@pytest.mark.source("uwyo-altitude-adjusters")
def test_frying_goes_down_three_degrees_a_thousand_feet() -> None:
    """370 °F becomes 355 °F at 5,000 ft."""
    change = first(at_ft("dark_outside_raw_inside", "battered", 5000)).change
    assert change.to_value * 1.8 == pytest.approx(-15, abs=0.5)


@pytest.mark.source("uwyo-altitude-adjusters")
def test_boiled_roots_take_4_to_11_percent_more_a_thousand_feet() -> None:
    """Boiled and steamed foods: 4 to 11 % more time for each 1,000 ft, by product."""
    found = at_ft("roots_hard_inside", "starchy_root", 5000)
    change = next(row.change for row in found.causes if row.cause.by == "boil")
    assert 1 + 5 * 0.04 <= change.to_value / 100 <= 1 + 5 * 0.11


@pytest.mark.source("csu-high-altitude-food-prep")
def test_starch_does_not_thicken_over_a_double_boiler() -> None:
    """Above some 5,000 ft a double boiler may not gelatinise starch: use direct heat."""
    assert "direct heat" in line(first(at_ft("starch_stays_thin", "starch_pudding", 6000)))


@pytest.mark.source("scaa-brewing")
def test_brew_water() -> None:
    """Water at contact 200 °F ± 5 °F, 55 g a litre."""
    found = at_ft("brew_weak", "coffee", 0)
    water = next(row.change for row in found.causes if row.cause.by == "brew")
    assert 195 <= water.to_value * 1.8 + 32 <= 205
    assert any("55 g" in line(row) for row in found.causes)


# safety


@pytest.mark.source("usda-fsis-safe-temperatures")
@pytest.mark.parametrize(
    ("dish_class", "least"), [("poultry_pieces", "165 °F"), ("ground_meat", "160 °F"), ("fish", "145 °F")]
)
def test_meat_that_is_underdone(dish_class: str, least: str) -> None:
    """The chart of safe minimum temperatures, the same at every elevation."""
    for elevation_ft in (0, 9000):
        said = told(at_ft("meat_underdone", dish_class, elevation_ft))
        assert said.startswith("stop: ")
        assert least in said


@pytest.mark.source("usu-ask-extension")
def test_kidney_beans_boil_ten_minutes() -> None:
    """Kidney beans: soak, and boil at least 10 minutes before slow cooking."""
    assert "at least 10 minutes" in told(at_ft("beans_hard", "dried_bean"))


@pytest.mark.source("usda-aib-539")
@pytest.mark.parametrize("symptom", ["jar_lost_seal", "jar_cloudy"])
def test_a_doubtful_jar_is_not_tasted(symptom: str) -> None:
    """Never taste food from a jar with an unsealed lid or signs of spoilage; throw it out safely."""
    said = told(at_ft(symptom, "canned_low_acid"))
    assert "stop: Do not taste it" in said
    assert "botulism" in said


@pytest.mark.source("usda-garden-produce")
def test_liquid_lost_in_the_canner() -> None:
    """Packed too full, pressure that fluctuates or is let down suddenly; it does not spoil; do not top it up."""
    found = at_ft("jar_lost_liquid", "canned_low_acid")
    assert ids(found) == {"headspace", "steady_pressure"}
    assert "do not open it" in told(found)
