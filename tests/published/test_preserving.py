"""Home canning against the printed tables, at both ends of every band."""

import pytest

from assistant.replies.worded import answer
from rules.book import Case
from rules.model import Request
from rules.physics import water
from rules.physics.units import PSI_PER_PA, to_f
from rules.preserving import gel
from rules.preserving.foods import foods
from rules.preserving.gate import refusal
from rules.preserving.pressure import canner_psi

FT_M = 0.3048
AIB, USU, NCHFP, MU = "usda-aib-539", "usu-canning-bands", "nchfp", "mu-qafs163"
FOUR_BANDS = ((0, 1000), (1001, 3000), (3001, 6000), (6001, 8000))
THREE_BANDS = ((0, 1000), (1001, 6000), (6001, 8000))
USU_BANDS = ((3001, 6000), (6001, 8000), (8001, 10000))


def process_min(dish: str, base_min: float, feet: float) -> float:
    asked = Request(topic="preserve", dish=dish, time_min=base_min, elevation_m=feet * FT_M)
    return answer(asked).figure("process_time").value


def cells(source, dish, pack, bands, printed):
    """One check for each printed cell: source, what it is of, band, time."""
    return [
        pytest.param(source, dish, printed[0], band, time, id=f"{dish} {pack} {band[0]}-{band[1]} ft")
        for band, time in zip(bands, printed, strict=True)
    ]


@pytest.mark.parametrize(
    ("source", "dish", "base_min", "band", "printed_min"),
    [
        *cells(AIB, "peaches", "hot pints", FOUR_BANDS, (20, 25, 30, 35)),
        *cells(AIB, "peaches", "hot quarts", FOUR_BANDS, (25, 30, 35, 40)),
        *cells(AIB, "peaches", "raw quarts", FOUR_BANDS, (30, 35, 40, 45)),
        *cells(NCHFP, "tomatoes", "in water pints", FOUR_BANDS, (40, 45, 50, 55)),
        *cells(NCHFP, "tomatoes", "in water quarts", FOUR_BANDS, (45, 50, 55, 60)),
        *cells(AIB, "jam", "half-pints", THREE_BANDS, (5, 10, 15)),
        *cells("from-memory", "dill pickles", "pints", THREE_BANDS, (10, 15, 20)),
        *cells(AIB, "applesauce", "hot pints", FOUR_BANDS, (15, 20, 20, 25)),
    ],
)
def test_process_time(source, dish, base_min, band, printed_min):
    assert [process_min(dish, base_min, feet) for feet in band] == [printed_min, printed_min]


@pytest.mark.parametrize(
    ("source", "dish", "base_min", "printed"),
    [
        pytest.param(USU, "apples", 20, (30, 35, 40), id="apples hot pints"),
        pytest.param(USU, "applesauce", 15, (20, 25, 30), id="applesauce hot pints"),
        pytest.param(USU, "applesauce", 20, (30, 35, 40), id="applesauce hot quarts"),
        pytest.param(USU, "peaches", 25, (35, 40, 45), id="peaches raw pints"),
        pytest.param(USU, "peaches", 30, (40, 45, 50), id="peaches raw quarts"),
        pytest.param(USU, "pears", 20, (30, 35, 40), id="pears hot pints"),
        pytest.param(USU, "apple juice", 5, (10, 15, 20), id="juices"),
        pytest.param(USU, "cherries", 25, (35, 40, 45), id="cherries raw pints"),
    ],
)
def test_three_high_bands(source, dish, base_min, printed):
    """Utah State's tables; their base is the USDA column for 0 - 1,000 ft of the same product and jar."""
    assert tuple(process_min(dish, base_min, high) for _, high in USU_BANDS) == printed
    assert tuple(process_min(dish, base_min, low) for low, _ in USU_BANDS) == printed


@pytest.mark.source(AIB, USU)
def test_both_tables_are_shown_where_they_differ():
    given = answer(Request(topic="preserve", dish="peaches", time_min=20, elevation_m=9000 * FT_M))
    time = given.figure("process_time")
    assert (time.low, time.high) == (35, 40)
    assert "above 6,000 ft" in given.because[0].text
    assert "8,001–10,000 ft" in given.because[0].text
    assert {"usda-aib-539", "usu-canning-bands"} <= set(given.because[0].sources)


PRESSURES = [
    (AIB, "dial", "high_acid", (0, 2000), 6),
    (AIB, "dial", "high_acid", (2001, 4000), 7),
    (AIB, "dial", "high_acid", (4001, 6000), 8),
    (AIB, "dial", "high_acid", (6001, 8000), 9),
    (AIB, "dial", "low_acid", (0, 2000), 11),
    (AIB, "dial", "low_acid", (2001, 4000), 12),
    (AIB, "dial", "low_acid", (4001, 6000), 13),
    (AIB, "dial", "low_acid", (6001, 8000), 14),
    ("extension-canning-8000", "dial", "low_acid", (8001, 10000), 15),
    (AIB, "weighted", "high_acid", (0, 1000), 5),
    (AIB, "weighted", "high_acid", (1001, 10000), 10),
    (MU, "weighted", "low_acid", (0, 1000), 10),
    (MU, "weighted", "low_acid", (1001, 10000), 15),
]


@pytest.mark.parametrize(("source", "gauge", "food", "band", "psi"), PRESSURES)
def test_canner_pressure(source, gauge, food, band, psi):
    assert [canner_psi(gauge, food, feet * FT_M).value for feet in band] == [psi, psi]


@pytest.mark.parametrize(
    ("source", "gauge", "food", "band", "psi"), [p for p in PRESSURES if p[1:3] == ("dial", "low_acid")]
)
def test_dial_pressure_reaches_240_f(source, gauge, food, band, psi):
    """The physics behind the bands: 240 degF of steam to within a degree at the top of each."""
    inside_c = water.saturation_temp_c(Case(Request(elevation_m=band[1] * FT_M)).here.pressure_pa + psi / PSI_PER_PA)
    assert to_f(inside_c) == pytest.approx(240, abs=1)


@pytest.mark.parametrize(("source", "psi", "temp_f"), [(MU, 10.5, 240)])
def test_weights_run_at_half_a_pound_more(source, psi, temp_f):
    inside_c = water.saturation_temp_c(Case(Request(elevation_m=0)).here.pressure_pa + psi / PSI_PER_PA)
    assert to_f(inside_c) == pytest.approx(temp_f, abs=0.6)


@pytest.mark.parametrize(
    ("source", "feet", "printed_f"),
    [
        (AIB, 0, 220),
        (AIB, 1000, 218),
        (AIB, 2000, 216),
        (AIB, 3000, 214),
        (AIB, 4000, 212),
        (AIB, 5000, 211),
        (AIB, 6000, 209),
        (AIB, 7000, 207),
        (AIB, 8000, 205),
    ],
)
def test_gel_point(source, feet, printed_f):
    """Water here and 8 degF, to a degree of the print; 4,000 ft is printed a degree and a half under its neighbours."""
    given = answer(Request(topic="preserve", subject="gel_point", elevation_m=feet * FT_M))
    assert to_f(given.figure("gel_point").value) == pytest.approx(printed_f, abs=1.0)
    assert gel.printed_f(feet) == (feet, printed_f)


@pytest.mark.parametrize(("source", "rise_f"), [("lowe-experimental-cookery", 7.02)])
def test_gel_point_of_the_laboratory(source, rise_f):
    """Cruess and McNair: jelly of 65 Brix boils 7.02 degF over water."""
    point = answer(Request(topic="preserve", subject="gel_point", elevation_m=0)).figure("gel_point")
    assert point.low == pytest.approx(99.97 + rise_f / 1.8, abs=0.01)


@pytest.mark.parametrize(
    ("source", "feet", "minutes"),
    [("csu-preserve-smart", 999, 10), ("csu-preserve-smart", 5000, 15), (AIB, 0, 10), (AIB, 8000, 18)],
)
def test_home_canned_food_is_boiled_before_tasting(source, feet, minutes):
    given = answer(Request(subject="home_canned_tasting", elevation_m=feet * FT_M))
    assert given.figure("boil_before_tasting").value == minutes


@pytest.mark.parametrize(("source", "feet", "minutes"), [(AIB, 999, 10), (AIB, 2000, 12), (AIB, 6000, 16)])
def test_empty_jars(source, feet, minutes):
    given = answer(Request(topic="preserve", subject="jar_sterilising", elevation_m=feet * FT_M))
    assert given.figure("sterilising_time").value == minutes


@pytest.mark.parametrize(
    ("source", "minutes", "feet", "steam_does"),
    [
        ("nchfp-steam-canners", 30, 7000, True),
        ("nchfp-steam-canners", 35, 5000, True),
        ("nchfp-steam-canners", 35, 7000, False),
        ("nchfp-steam-canners", 45, 0, True),
        ("nchfp-steam-canners", 45, 1001, False),
    ],
)
def test_steam_canner_holds_45_minutes(source, minutes, feet, steam_does):
    given = answer(
        Request(topic="preserve", subject="steam_canning", dish="peaches", time_min=minutes, elevation_m=feet * FT_M)
    )
    assert any(c.level == "stop" for c in given.cautions) is not steam_does


@pytest.mark.parametrize(
    ("source", "words"), [("csu-9-341", "2 tbsp bottled lemon juice or ½ tsp citric acid to a quart, 1 tbsp or ¼ tsp")]
)
def test_tomatoes_take_acid(source, words):
    given = answer(Request(topic="preserve", dish="tomatoes", dish_class="tender_vegetable", elevation_m=1600))
    assert any(words in step for step in given.steps)


# the shortest and longest times that let a cook's own time through, against the pages that print them


@pytest.mark.parametrize(
    ("source", "dish", "printed"),
    [
        ("umn-acid-pressure", "applesauce", (8, 10)),
        ("umn-acid-pressure", "apples", (8, 8)),
        ("umn-acid-pressure", "berries", (8, 10)),
        ("umn-acid-pressure", "cherries", (8, 10)),
        ("umn-acid-pressure", "grapefruit", (8, 10)),
        ("umn-acid-pressure", "peaches", (10, 10)),
        ("umn-acid-pressure", "pears", (10, 10)),
        ("umn-acid-pressure", "plums", (10, 10)),
        ("umn-acid-pressure", "rhubarb", (8, 8)),
        ("umaine-4382", "asparagus", (30, 40)),
        ("umaine-4382", "green beans", (20, 25)),
        ("usu-canning-meats", "chicken", (65, 90)),
        ("usu-canning-meats", "rabbit", (65, 90)),
    ],
)
def test_times_in_a_pressure_canner(source, dish, printed):
    assert foods()[dish].pressure_min == printed


@pytest.mark.parametrize(
    ("source", "dish"),
    [("umn-acid-pressure", dish) for dish in ("pineapple", "figs", "grapes", "asian pears", "jam", "salsa")],
)
def test_the_acid_pressure_table_prints_no_such_food(source, dish):
    """The table of acid foods under pressure is of ten rows; these are not among them."""
    assert foods()[dish].pressure_min is None


@pytest.mark.parametrize(
    ("source", "dish", "words"),
    [
        ("uwex-white-peaches", "white peaches", "freeze"),
        ("osu-em-9446", "elderberries", "cook them before anyone eats them"),
        ("kstate-rrc-canning", "melons", "freeze"),
        ("kstate-rrc-canning", "bananas", "freeze"),
        ("kstate-rrc-canning", "papaya", "freeze"),
        ("ucanr-can-fruit", "persimmons", "dry"),
        ("kstate-pumpkin", "pumpkin butter", "cubes"),
        ("psu-what-not-to-can", "pickled eggs", "refrigerated"),
    ],
)
def test_fruit_that_is_low_in_acid_and_food_that_is_too_thick(source, dish, words):
    given = answer(Request(topic="preserve", dish=dish, elevation_m=2133.6, time_min=30))
    assert not given.figures
    assert words in given.steps[0].lower()
    assert source in given.because[0].sources


@pytest.mark.parametrize(
    ("source", "dish", "reason"),
    [
        ("psu-half-gallon", "apple juice", None),
        ("psu-half-gallon", "grape juice", None),
        ("psu-half-gallon", "canned tomato juice", "half_gallon_jars"),
        ("psu-half-gallon", "peaches", "half_gallon_jars"),
    ],
)
def test_half_gallon_jars_hold_two_juices(source, dish, reason):
    assert refusal(Request(topic="preserve", dish=dish, subject="half_gallon_jars", elevation_m=1600)) == reason
