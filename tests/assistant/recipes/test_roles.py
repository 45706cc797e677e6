"""What each figure of a step is, by the words of its own clause: wordings of our own for every role."""

import pytest

from assistant.recipes.steps import read_step
from assistant.recipes.temperatures import Habits
from assistant.recipes.text import read_text

US, METRIC = Habits(unit="degF"), Habits(unit="degC", metric=True)

# text, [(marked, what)], by what they are
TEMPERATURES = {
    "core": [
        ("Roast to an internal temperature of 165 °F.", [("165 °F", "food")]),
        ("Cook the chicken to a minimum of 165°.", [("165°", "food")]),
        ("Cook chicken to 165.", [("165", "food")]),
        ("Cook until the thickest part of the thigh registers 175 ºF.", [("175 ºF", "food")]),
        ("Grill until a thermometer in the centre reads 71 °C.", [("71 °C", "food")]),
        ("The patties are safe at an internal temperature of at least 160℉.", [("160℉", "food")]),
        ("Fry the cutlets until they reach 74℃ inside.", [("74℃", "food")]),
        ("Sear, then finish in the oven until an instant-read thermometer shows 145 F.", [("145 F", "food")]),
        ("Bake at 375 °F to 165 °F inside.", [("375 °F", "oven"), ("165 °F", "food")]),
        ("Roast at 425°F until the breast hits 160°F and the thigh 175°F.",
         [("425°F", "oven"), ("160°F", "food"), ("175°F", "food")]),
        ("Roast at 220 °C until the core is 68 °C.", [("220 °C", "oven"), ("68 °C", "food")]),
        ("Pull the brisket when it probes tender, about 203 °F.", [("203 °F", "food")]),
        ("Bake until the loaf is 205 °F in the center.", [("205 °F", "food")]),
        ("Cook the meatloaf to a safe minimum of 160 degrees.", [("160 degrees", "food")]),
        ("Turkey must reach a minimum temperature of 165 degrees F deep inside.", [("165 degrees F", "food")]),
        ("For medium-rare take it out at 130 °F.", [("130 °F", "food")]),
        ("Simmer the meatballs until they are 160 °F throughout.", [("160 °F", "food")]),
        ("Cook the custard to 175 °F, stirring.", [("175 °F", "food")]),
        ("Bake to an internal temp between 145 and 150 °F.", [("145 and 150 °F", "food")]),
        ("Cook the sausages until 71–74 °C.", [("71–74 °C", "food")]),
        ("The roast will rise to 145 °F by carryover.", [("145 °F", "food")]),
    ],
    "hold": [
        ("Keep the pancakes warm in a 200 °F oven.", [("200 °F", "hold")]),
        ("Keep warm at 170 °F until serving.", [("170 °F", "hold")]),
        ("Transfer to a warm oven (200°F) while you fry the rest.", [("200°F", "hold")]),
        ("Preheat the oven to 200 °F to keep the waffles hot.", [("200 °F", "hold")]),
        ("Hold above 135 °F for service.", [("135 °F", "hold")]),
        ("Hold the soup at 60 °C or more.", [("60 °C", "hold")]),
        ("Set a low oven, 90 °C, and slide the plates in.", [("90 °C", "hold")]),
        ("On the steam table keep it at 140 F.", [("140 F", "hold")]),
    ],
    "cold": [
        ("Refrigerate at 40 °F or below.", [("40 °F", "fridge")]),
        ("Chill in the fridge at 4 °C overnight.", [("4 °C", "fridge")]),
        ("Freeze at 0 °F for up to 3 months.", [("0 °F", "fridge")]),
        ("Cool to 70 °F within 2 hours.", [("70 °F", "other")]),
        ("Thaw in the refrigerator below 40 °F.", [("40 °F", "thaw")]),
        ("Let the caramel cool to 110 °F.", [("110 °F", "other")]),
    ],
    "elsewhere": [
        ("Heat the smoker to 225 °F.", [("225 °F", "smoker")]),
        ("Smoke at 225°F with hickory, glazing with brown sugar.", [("225°F", "smoker")]),
        ("Hold the pellet grill at 250 °F.", [("250 °F", "smoker")]),
        ("Set a grill for indirect heat, about 325 °F.", [("325 °F", "grill")]),
        ("Grill over charcoal at 200 °C.", [("200 °C", "grill")]),
        ("Preheat the air fryer to 380 °F.", [("380 °F", "air_fryer")]),
        ("Air fry at 350 F to 165 F inside.", [("350 F", "air_fryer"), ("165 F", "food")]),
        ("Bake in the air-fryer at 320°F.", [("320°F", "air_fryer")]),
        ("Cook sous vide at 140 °F.", [("140 °F", "bath")]),
        ("Set the immersion circulator to 63 °C.", [("63 °C", "bath")]),
        ("Lower the bag into a 131°F water bath.", [("131°F", "bath")]),
        ("Pasteurize the eggs at 135 °F.", [("135 °F", "pasteurise")]),
        ("Reheat, covered, at 325 °F.", [("325 °F", "reheat")]),
        ("Leftovers are reheated to 165°F.", [("165°F", "reheat")]),
        ("Warm through at 160 °C.", [("160 °C", "reheat")]),
        ("Cook on a 375 F griddle.", [("375 F", "other")]),
        ("The canner must come to 240 °F.", [("240 °F", "canner")]),
        ("Temper the chocolate: heat to 115 °F, cool to 82 °F.", [("115 °F", "other"), ("82 °F", "other")]),
    ],
    "angles": [
        ("Bake 20 minutes, rotating the pan 180° once.", []),
        ("Rotate the sheets 180 degrees.", []),
        ("Turn the dough 90 degrees and fold again.", []),
        ("Give the dough a 90° turn.", []),
        ("Hold the knife at a 45° angle.", []),
        ("Spin each tray 180° halfway.", []),
    ],
    "oven": [
        ("Preheat the oven to 350°F (180°C).", [("350°F (180°C)", "oven")]),
        ("Bake in a 350-degree oven.", [("350-degree", "oven")]),
        ("Bake at 350.", [("350", "oven")]),
        ("Bake at 425℉ for 10 minutes.", [("425℉", "oven")]),
        ("Bake at 450 °F for 15 minutes, then lower to 375 °F.", [("450 °F", "oven"), ("375 °F", "oven")]),
        ("Set the oven between 350 and 375 °F.", [("350 and 375 °F", "oven")]),
        ("Dry in the oven at 200 °F.", [("200 °F", "oven")]),
        ("Heat oven to 180 °C/350 °F.", [("180 °C/350 °F", "oven")]),
    ],
    "fat": [
        ("Heat the oil to 350 °F.", [("350 °F", "fat")]),
        ("Bring the lard back to 375 °F between batches.", [("375 °F", "fat")]),
        ("Deep-fry at 180 °C.", [("180 °C", "fat")]),
        ("When a thermometer in the oil reads 360 °F, slip in the dough.", [("360 °F", "fat")]),
        ("Fry in 365 °F oil until the inside is 165 °F.", [("365 °F", "fat"), ("165 °F", "food")]),
        ("Hold the oil at 350 °F.", [("350 °F", "fat")]),
    ],
    "sugar": [
        ("Boil to the soft-ball stage, 235 to 240 °F.", [("235 to 240 °F", "sugar")]),
        ("Cook the syrup until a candy thermometer registers 248 °F.", [("248 °F", "sugar")]),
        ("Cook to the gel point, 220 °F.", [("220 °F", "sugar")]),
        ("Boil the jam to the setting point of 104 °C.", [("104 °C", "sugar")]),
        ("Cook the toffee to 300 °F without stirring.", [("300 °F", "sugar")]),
    ],
    "liquid": [
        ("Heat the milk to 180 °F.", [("180 °F", "water")]),
        ("Combine yeast and water (105 to 115 °F).", [("105 to 115 °F", "water")]),
        ("Poach gently at 170 °F.", [("170 °F", "water")]),
        ("Let the dough rise at 78 °F.", [("78 °F", "proof")]),
    ],
}  # fmt: skip


@pytest.mark.parametrize(("text", "expected"), [row for rows in TEMPERATURES.values() for row in rows])
def test_what_a_temperature_is(text, expected):
    marks = read_step(text).temperatures
    assert [(text[m.start : m.end], m.what) for m in marks] == expected


# text, habits, degC, what
BARE = [
    ("Cook the chicken to 165°.", US, 73.9, "food"),
    ("Fry the chicken until 165°.", US, 73.9, "food"),
    ("Fry the chicken to 165 degrees.", US, 73.9, "food"),
    ("Fry the chicken until it is 165.", Habits(), 73.9, "food"),
    ("Cook to a minimum of 165 degrees.", METRIC, 73.9, "food"),
    ("Cook until the centre is 75°.", METRIC, 75, "food"),
    ("Cook to 71 degrees inside.", METRIC, 71, "food"),
    ("Heat the oil to 180°.", METRIC, 180, "fat"),
    ("Bake at 180°.", METRIC, 180, "oven"),
    ("Bake at 350°.", US, 176.7, "oven"),
    ("Roast at 200°.", METRIC, 200, "oven"),
    ("Fry at 165°.", US, 73.9, None),
]


@pytest.mark.parametrize(("text", "habits", "temp_c", "what"), BARE)
def test_a_figure_without_a_unit_has_the_unit_of_the_recipe(text, habits, temp_c, what):
    (mark,) = read_step(text, habits=habits).temperatures
    assert round(mark.low_c, 1) == temp_c
    assert mark.what == what or (what is None and mark.what not in ("oven", "fat", "sugar"))


# text, [(marked, what)]
TIMES = {
    "rest": [
        ("Take the turkey out of the refrigerator 1 1/2 hours before cooking.", [("1 1/2 hours", "ahead")]),
        ("Bring the roast to room temperature, 2 hours.", [("2 hours", "rest")]),
        ("Remove the steaks from the fridge 45 minutes before grilling.", [("45 minutes", "ahead")]),
        ("Start the sponge 8 hours ahead.", [("8 hours", "ahead")]),
        ("Tent with foil and let rest 20 minutes.", [("20 minutes", "rest")]),
        ("Let the batter stand for 30 minutes.", [("30 minutes", "rest")]),
        ("Turn off the steam and wait 5 minutes before opening the lid.", [("5 minutes", "ahead")]),
        ("Take the pan off the heat and wait for 5 minutes.", [("5 minutes", "rest")]),
        ("Thaw overnight in the fridge.", [("overnight", "thaw")]),
        ("Defrost for 24 hours.", [("24 hours", "thaw")]),
        ("Marinate for 4 hours, then grill for 10 minutes.", [("4 hours", "marinate"), ("10 minutes", "grill")]),
        ("Brine the chops 12 hours.", [("12 hours", "marinate")]),
        ("Reheat for 15 minutes.", [("15 minutes", "reheat")]),
        ("Chill 2 hours, or freeze 30 minutes.", [("2 hours", "chill"), ("30 minutes", "chill")]),
        ("Keep the fritters warm for up to 30 minutes.", [("30 minutes", "limit")]),
        ("Serve within 2 hours.", [("2 hours", "limit")]),
    ],
    "beside": [
        ("Simmer 1 hour, stirring every 7 minutes.", [("1 hour", "simmer"), ("7 minutes", "interval")]),
        ("Baste every half hour.", [("half hour", "interval")]),
        ("Stir at 10-minute intervals.", [("10-minute", "interval")]),
        ("Microwave in 30 second bursts.", [("30 second", "interval")]),
        ("Boil the pasta 3 minutes less than the packet says.", [("3 minutes", "relative")]),
        ("For the last 10 minutes, uncover.", [("10 minutes", "relative")]),
        ("Add the peas 5 minutes before the end.", [("5 minutes", "relative")]),
        ("Keeps for 3 days.", [("3 days", "limit")]),
        ("Store the simmered greens in a sealed tub for 3 to 4 days.", [("3 to 4 days", "hold")]),
        ("Simmered sauce will keep 3 days.", [("3 days", "hold")]),
        ("The braised cabbage can be stored for 2 days.", [("2 days", "hold")]),
        ("Churn for 20 minutes until thickened.", [("20 minutes", "mix")]),
    ],
    "doneness": [
        ("Cook the ground chicken until no longer pink, about 5 minutes.", [("5 minutes", "doneness")]),
        ("Simmer until the pork is no longer pink, 10 minutes.", [("10 minutes", "doneness")]),
        ("Roast 45 minutes, or until the juices run clear.", [("45 minutes", "doneness")]),
        ("Poach the fish until opaque, 8 minutes.", [("8 minutes", "doneness")]),
        ("Simmer 12 minutes, until the meatballs are cooked through.", [("12 minutes", "doneness")]),
        ("Cover and steam 6 minutes, until the shells have opened.", [("6 minutes", "doneness")]),
        ("Boil the shrimp 3 minutes, until they turn pink.", [("3 minutes", "doneness")]),
        ("Bake 20 minutes until it flakes easily.", [("20 minutes", "doneness")]),
    ],
    "browning": [
        ("Brown the beef, 6 to 8 minutes.", [("6 to 8 minutes", "fry")]),
        ("Cook the beef until browned, 6 to 8 minutes.", [("6 to 8 minutes", "fry")]),
        ("Cook the onions until golden, 25 minutes.", [("25 minutes", "fry")]),
        ("Sear 4 minutes per side, then braise 2 hours.", [("4 minutes", "fry"), ("2 hours", "braise")]),
        ("Cook until fragrant, 1 minute.", [("1 minute", "fry")]),
        ("Set the pressure cooker to sauté, add the leeks and cook until browned, 4 minutes.", [("4 minutes", "fry")]),
        ("Sauté 5 minutes, add the stock, and simmer 40 minutes.", [("5 minutes", "fry"), ("40 minutes", "simmer")]),
    ],
    "reduction": [
        ("Simmer until reduced by half, 10 minutes.", [("10 minutes", "reduce")]),
        ("Boil 15 minutes, until syrupy.", [("15 minutes", "reduce")]),
        ("Simmer 5 minutes until thickened.", [("5 minutes", "reduce")]),
        ("Simmer 2 hours until thickened and the beef is tender.", [("2 hours", "simmer")]),
    ],
    "elsewhere": [
        ("Air fry 12 minutes.", [("12 minutes", "air_fry")]),
        ("Bake in the air fryer for 12 minutes.", [("12 minutes", "air_fry")]),
        ("Smoke for 4 hours.", [("4 hours", "smoke")]),
        ("Cook on the grill over charcoal 20 to 30 minutes.", [("20 to 30 minutes", "grill")]),
        ("Cook sous vide for 1 hour.", [("1 hour", "sous_vide")]),
        ("Cook in the slow cooker on low for 8 hours.", [("8 hours", "slow_cook")]),
        ("Microwave 2 minutes.", [("2 minutes", "microwave")]),
        ("Process the pints 25 minutes in the canner.", [("25 minutes", "process")]),
    ],
    "moving": [
        ("Bake 30 to 35 minutes.", [("30 to 35 minutes", "bake")]),
        ("Bring to a boil and simmer 2 hours, until tender.", [("2 hours", "simmer")]),
        ("Simmer 20 minutes before adding the potatoes.", [("20 minutes", "simmer")]),
        ("Let rise until doubled, about 1 hour.", [("1 hour", "rise")]),
        ("Let stand until doubled, about 1 hour.", [("1 hour", "rise")]),
        ("Cover and let stand in a warm place until the dough doubles, about 1 hour.", [("1 hour", "rise")]),
        ("Lay the buns in the tin and let rest for 1 hour, or until they are puffy.", [("1 hour", "rise")]),
        ("Let rest 20 minutes, then roll out.", [("20 minutes", "rest")]),
        ("Pressure-cook 40 minutes.", [("40 minutes", "pressure")]),
        ("Simmer thirty five minutes.", [("thirty five minutes", "simmer")]),
        ("Simmer three quarters of an hour.", [("three quarters of an hour", "simmer")]),
        ("Boil ninety minutes.", [("ninety minutes", "boil")]),
    ],
}


@pytest.mark.parametrize(("text", "expected"), [row for rows in TIMES.values() for row in rows])
def test_what_a_time_is(text, expected):
    marks = read_step(text).times
    assert [(text[m.start : m.end], m.what) for m in marks] == expected


def roles(text: str) -> list[str]:
    """What the figures of a recipe's steps are, temperatures of a step before its times."""
    steps = read_text(text).steps
    return [mark.what for one in steps for mark in (*one.temperatures, *one.times)]


def test_what_was_named_last_is_in_use_in_the_steps_that_follow():
    crisp = (
        "Wings\nIngredients\n2 lb chicken wings\nMethod\nPreheat the air fryer.\nCook at 380 °F for 20 minutes.\n"
        "Bake 5 minutes."
    )
    assert roles(crisp) == ["air_fryer", "air_fry", "air_fry"]
    ribs = (
        "Ribs\nIngredients\n2 racks ribs\nMethod\nLight the smoker.\nCook at 225 °F for 5 hours.\n"
        "Bake in the oven at 300 °F, 1 hour."
    )
    assert roles(ribs) == ["smoker", "smoke", "oven", "bake"]
    cake = "Cake\nIngredients\n2 cups flour\nMethod\nMicrowave the butter 1 minute.\nBake at 350 °F, 30 minutes."
    assert roles(cake) == ["microwave", "oven", "bake"]


def test_the_title_names_what_it_is_cooked_in():
    text = "Air fryer potatoes\nIngredients\n2 lb potatoes\nMethod\nHeat to 400 °F.\nCook at 400 °F, 15 minutes."
    assert roles(text) == ["air_fryer", "air_fryer", "air_fry"]


def test_a_barely_warm_oven_keeps_warm_where_the_recipe_does():
    text = "Pancakes\nIngredients\n2 cups flour\nMethod\nHeat the oven to 200 °F.\nFry them and keep them warm."
    assert roles(text)[0] == "hold"
    dried = "Meringues\nIngredients\n4 egg whites\nMethod\nHeat the oven to 200 °F.\nBake 2 hours."
    assert roles(dried) == ["oven", "bake"]
