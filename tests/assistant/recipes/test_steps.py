"""Times, temperatures, pressures and cues of a method: what a cook reads in each sentence."""

import pytest

from assistant.recipes.steps import read_step
from assistant.recipes.temperatures import Habits

# text, [(marked, low_min, high_min, what)]
TIMES = [
    ("Bake at 350 for 30 to 35 minutes.", [("30 to 35 minutes", 30, 35, "bake")]),
    ("Bake until golden brown, 25-30 min.", [("25-30 min", 25, 30, "bake")]),
    ("Bring to a boil and simmer 20 minutes.", [("20 minutes", 20, 20, "simmer")]),
    ("Simmer, stirring often, for 20 minutes.", [("20 minutes", 20, 20, "simmer")]),
    ("Let rise until doubled, about 1 hour.", [("1 hour", 60, 60, "rise")]),
    ("Bake 1 hour 10 minutes.", [("1 hour 10 minutes", 70, 70, "bake")]),
    ("Bake for an hour and a half.", [("an hour and a half", 90, 90, "bake")]),
    ("Braise 2 1/2 to 3 hours.", [("2 1/2 to 3 hours", 150, 180, "braise")]),
    ("Proof 45 minutes to 1 hour.", [("45 minutes to 1 hour", 45, 60, "rise")]),
    ("Pressure-cook 40 minutes at 15 psi.", [("40 minutes", 40, 40, "pressure")]),
    ("Cook 10 minutes at high pressure.", [("10 minutes", 10, 10, "pressure")]),
    ("Fry 2 minutes per side.", [("2 minutes", 2, 2, "fry")]),
    ("Refrigerate 12 to 48 hours.", [("12 to 48 hours", 720, 2880, "chill")]),
    ("Chill overnight.", [("overnight", 480, 720, "chill")]),
    ("Soak the beans overnight and drain.", [("overnight", 480, 720, "soak")]),
    ("Cool in the pan 10 minutes.", [("10 minutes", 10, 10, "cool")]),
    (
        "Bake 40 minutes. Invert and let hang, about 2 hours.",
        [("40 minutes", 40, 40, "bake"), ("2 hours", 120, 120, "cool")],
    ),
    ("Bake covered. About 20 minutes.", [("20 minutes", 20, 20, "bake")]),
    ("After 20 minutes of baking, rotate the pan.", [("20 minutes", 20, 20, "bake")]),
    ("Fold once, with 30 minutes of chilling after.", [("30 minutes", 30, 30, "chill")]),
    ("Score and bake with steam for 35 minutes.", [("35 minutes", 35, 35, "bake")]),
    ("Leave in the oven with the door ajar for 1 hour.", [("1 hour", 60, 60, "rest")]),
    ("Boil until reduced by half, about 20 minutes.", [("20 minutes", 20, 20, "reduce")]),
    ("Bring the cream to a simmer and steep 30 minutes.", [("30 minutes", 30, 30, "steep")]),
    ("Process half-pints 10 minutes in a boiling-water canner.", [("10 minutes", 10, 10, "process")]),
    ("Knead in the rest for 8 minutes.", [("8 minutes", 8, 8, "knead")]),
    ("Cover; cook over low heat 18 minutes.", [("18 minutes", 18, 18, "cook")]),
    ("Let stand off the heat 10 minutes.", [("10 minutes", 10, 10, "rest")]),
    ("Soak in boiling water for 10 minutes.", [("10 minutes", 10, 10, "soak")]),
    ("Whip whites 3 minutes.", [("3 minutes", 3, 3, "mix")]),
    ("Return to the oven for 5 minutes.", [("5 minutes", 5, 5, "bake")]),
    ("Toast 30 seconds.", [("30 seconds", 0.5, 0.5, "toast")]),
    ("Let rise 1 h 30 min.", [("1 h 30 min", 90, 90, "rise")]),
    ("Divide at 900 g in two 9-inch pans.", []),
    ("350 - 10 to 12 min.", [("10 to 12 min", 10, 12, "bake")]),
    ("Melt over barely simmering water, about 5 minutes.", [("5 minutes", 5, 5, "other")]),
]

# text, [(marked, degC, what)]
TEMPERATURES = [
    ("Bake at 350 for 30 minutes.", [("350", 176.7, "oven")]),
    ("Preheat the oven to 350°F (180°C).", [("350°F (180°C)", 176.7, "oven")]),
    ("Heat oven to 180 °C/350 °F.", [("180 °C/350 °F", 180, "oven")]),
    ("Bake at 220 for 20 minutes, then reduce to 190.", [("220", 220, "oven"), ("190", 190, "oven")]),
    ("Bake at 300 degrees.", [("300 degrees", 148.9, "oven")]),
    ("350 - 10 to 12 min.", [("350", 176.7, "oven")]),
    ("375 for 25 minutes.", [("375", 190.6, "oven")]),
    ("Oven 450. Cut in the butter.", [("450", 232.2, "oven")]),
    ("Cook on a 375 F griddle.", [("375 F", 190.6, "other")]),
    ("Cook to 240 F.", [("240 F", 115.6, "sugar")]),
    ("Boil to the soft-ball stage, 235 to 240 °F.", [("235 to 240 °F", 112.8, "sugar")]),
    ("Cook to the gelling point, 220°F.", [("220°F", 104.4, "sugar")]),
    ("Fry in oil at 370 until golden.", [("370", 187.8, "fat")]),
    ("Heat the oil to 180 °C.", [("180 °C", 180, "fat")]),
    ("Roast to an internal temperature of 165.", [("165", 73.9, "food")]),
    ("Bake at 325 F until the centre reaches 175 F.", [("325 F", 162.8, "oven"), ("175 F", 79.4, "food")]),
    ("Hold above 135 °F for service.", [("135 °F", 57.2, "hold")]),
    ("Combine yeast and water (105 to 115 F).", [("105 to 115 F", 40.6, "water")]),
    ("Let proof at 27 °C until doubled.", [("27 °C", 27, "proof")]),
    ("Heat the milk to 180 °F, then cool to 110 °F.", [("180 °F", 82.2, "water"), ("110 °F", 43.3, "other")]),
    ("Cool to 70 °F within 2 hours.", [("70 °F", 21.1, "other")]),
    ("Braise in a Dutch oven at 325 F.", [("325 F", 162.8, "oven")]),
    ("Add 2 cups of flour to 350 g of water.", []),
    ("Serves 4 to 6 at 12 noon.", []),
]


@pytest.mark.parametrize(("text", "expected"), TIMES, ids=[t for t, _ in TIMES])
def test_times(text, expected):
    marks = read_step(text).times
    assert [(text[m.start : m.end], m.low_min, m.high_min, m.what) for m in marks] == expected


@pytest.mark.parametrize(("text", "expected"), TEMPERATURES, ids=[t for t, _ in TEMPERATURES])
def test_temperatures(text, expected):
    marks = read_step(text).temperatures
    assert [(text[m.start : m.end], round(m.low_c, 1), m.what) for m in marks] == expected


@pytest.mark.parametrize(
    ("text", "kpa"),
    [("at 15 psi", 103.42), ("at 10 pounds pressure", 68.95), ("at 80 kPa", 80.0), ("at 15 lb. pressure", 103.42)],
)
def test_gauge_pressure(text, kpa):
    (mark,) = read_step(f"Cook 20 minutes {text}.").pressures
    assert mark.gauge_pa / 1000 == pytest.approx(kpa, abs=0.01)


@pytest.mark.parametrize(
    ("text", "what"),
    [
        ("Bring to a boil.", "boil"),
        ("Lower to a simmer.", "simmer"),
        ("Wait until doubled in bulk.", "doubled"),
        ("Whip to stiff, glossy peaks.", "stiff_peaks"),
        ("Whip to soft peaks.", "soft_peaks"),
        ("Brown 3 minutes per side.", "per_side"),
    ],
)
def test_cues(text, what):
    assert what in [cue.what for cue in read_step(text).cues]


@pytest.mark.parametrize(
    ("text", "name", "size"),
    [
        ("Butter two 9-inch round cake pans.", "cake pans", "9-inch"),
        ("Line a 9 x 13-inch baking pan.", "baking pan", "9 x 13-inch"),
        ("Heat a cast-iron skillet.", "cast-iron skillet", ""),
        ("Pour into a 2-quart soufflé dish.", "soufflé dish", "2-quart"),
    ],
)
def test_vessels(text, name, size):
    (vessel,) = read_step(text).vessels
    assert (vessel.name, vessel.size) == (name, size)


@pytest.mark.parametrize(
    ("text", "approx", "at_least"),
    [
        ("Rest about 1 hour.", True, False),
        ("Chill at least 4 hours.", False, True),
        ("Chill 4 hours or more.", False, True),
    ],
)
def test_how_firm_a_time_is(text, approx, at_least):
    (mark,) = read_step(text).times
    assert (mark.approx, mark.at_least) == (approx, at_least)


def test_a_bare_oven_figure_follows_the_recipe():
    assert read_step("Bake at 220.", habits=Habits(metric=True)).temperatures[0].unit == "degC"
    assert read_step("Bake at 220.").temperatures[0].unit == "degF"
