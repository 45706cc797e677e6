"""Questions in many words, each answered in its own form: the verdict first, its figure held against a second way.

The second way: the barometric formula and Antoine's equation for the boil, and a rate that falls tenfold in z kelvin,
with times and z typed again here.
"""

import math
import re

import pytest

from assistant.answering import reply_to

M_PER_FT = 0.3048
# dish: middle of its time at sea level [min], z of its class [K]
TIMES = {
    "potatoes": (20.0, 45.0), "spaghetti": (10.0, 60.0), "lentils": (27.5, 24.0), "chickpeas": (97.5, 24.0),
    "short ribs": (165.0, 44.0), "rice": (16.5, 50.0), "pot roast": (195.0, 44.0), "broccoli": (5.5, 45.0),
    "dumplings": (18.0, 60.0), "oxtail": (210.0, 44.0),
}  # fmt: skip
DURATION = re.compile(r"(?:(\d+) h ?)?(?:(\d+)(½)? min)?")


def boil_c(feet: float) -> float:
    """Where water boils, by the standard atmosphere's power law and Antoine's equation."""
    mmhg = 760 * (1 - 2.25577e-5 * feet * M_PER_FT) ** 5.25588
    return 1730.63 / (8.07131 - math.log10(mmhg)) - 233.426


def boil_f(feet: float) -> float:
    return boil_c(feet) * 1.8 + 32


def minutes(dish: str, feet: float, base: float | None = None) -> float:
    """What a dish takes at an elevation."""
    table, z = TIMES[dish]
    return (base or table) * 10 ** ((100 - boil_c(feet)) / z)


def headline(text: str, *context: str) -> str:
    return reply_to(text, context).text.splitlines()[0]


def first_minutes(text: str) -> float:
    """The first time that is written in a sentence [min]."""
    found = next(m for m in DURATION.finditer(text) if m[1] or m[2])
    return 60 * int(found[1] or 0) + int(found[2] or 0) + (0.5 if found[3] else 0)


def first_f(text: str) -> float:
    """The first temperature in degF."""
    found = re.search(r"(\d+)(?:–\d+)? °F", text)
    assert found, text
    return float(found[1])


@pytest.mark.parametrize(
    ("text", "dish", "feet"),
    [
        ("how long do potatoes boil at 7,000 ft", "potatoes", 7000),
        ("spaghetti 9000 ft", "spaghetti", 9000),
        ("cooking time for lentils at 6,500 feet", "lentils", 6500),
        ("how many minutes for steamed broccoli at 8,000 ft", "broccoli", 8000),
        ("how long to braise short ribs at 6,000 ft", "short ribs", 6000),
        ("time for white rice at 5,500 ft please", "rice", 5500),
    ],
)
def test_a_plain_question_of_time_opens_with_the_middle(text, dish, feet):
    said = headline(text)
    assert said.startswith("About ")
    assert " (" in said.split(" for ")[0]
    assert first_minutes(said) == pytest.approx(minutes(dish, feet), rel=0.08)


@pytest.mark.parametrize(
    ("text", "verdict", "dish", "feet"),
    [
        ("do potatoes take longer to boil at 7,000 ft", "Yes: ", "potatoes", 7000),
        ("will spaghetti need more time at 9,000 ft", "Yes: ", "spaghetti", 9000),
        ("do lentils cook faster at 8,000 ft", "No: ", "lentils", 8000),
        ("is the cooking time for short ribs the same at 7,000 ft", "No: ", "short ribs", 7000),
        ("does rice take any longer at 2,000 m", "Yes: ", "rice", 6562),
        ("do dumplings steam quicker at 3000 m", "No: ", "dumplings", 9843),
        ("does braising short ribs go slower at 6,500 ft", "Yes: ", "short ribs", 6500),
        ("should broccoli steam longer at 9,000 ft", "Yes: ", "broccoli", 9000),
        ("do I need to adjust the time for boiled potatoes at 6,000 ft", "Yes: ", "potatoes", 6000),
        ("does the time change for boiled spaghetti at 7,500 ft", "Yes: ", "spaghetti", 7500),
        ("will oxtail take extra time at 2400 m", "Yes: ", "oxtail", 7874),
        ("do boiled potatoes take the same time at 10,000 ft", "No: ", "potatoes", 10000),
        ("does it take less time to simmer lentils at 5,000 ft", "No: ", "lentils", 5000),
        ("faster or slower for potatoes at 7,000 ft", "Longer: ", "potatoes", 7000),
        ("do lentils go slower or quicker at 6,000 ft", "Longer: ", "lentils", 6000),
    ],
)
def test_whether_a_time_changes(text, verdict, dish, feet):
    said = headline(text)
    assert said.startswith(verdict)
    here = said.split(", ", 1)[1]
    assert first_minutes(here) == pytest.approx(minutes(dish, feet), rel=0.08)
    assert "instead of" in said


@pytest.mark.parametrize(
    ("text", "verdict", "stays_f"),
    [
        ("does the oven change for pot roast at 6,500 ft", "No: ", 325),
        ("should I turn the oven up for lasagna at 7,800 ft", "No: ", 350),
        ("is the oven the same for roast turkey at 7,000 ft", "Yes: ", 325),
        ("does the oven temperature stay the same for meatloaf at 8,000 ft", "Yes: ", 350),
        ("do I raise the oven for roast potatoes at 9,000 ft", "No: ", 400),
        ("does the smoker need to be hotter for pulled pork at 7,000 ft", "No: ", 225),
        ("is the smoker cooler for beef brisket at 5,280 ft", "No: ", 225),
        ("does the oven need to be lower for short ribs at 9,000 ft", "No: ", 325),
    ],
)
def test_dry_heat_stays_where_it_is(text, verdict, stays_f):
    said = headline(text)
    assert said.startswith(verdict)
    assert first_f(said) == pytest.approx(stays_f, abs=5)
    assert "stays" in said


@pytest.mark.parametrize(
    ("text", "verdict", "feet"),
    [
        ("should the fat be cooler for doughnuts at 7,000 ft", "Yes: ", 7000),
        ("does the fryer need turning down for french fries at 6,000 ft", "Yes: ", 6000),
        ("is the oil hotter for doughnuts at 8,000 ft", "No: ", 8000),
        ("does the frying oil stay the same for doughnuts at 7,000 ft", "No: ", 7000),
        ("frying doughnuts at 5,000 ft, hotter or cooler", "Lower: ", 5000),
    ],
)
def test_deep_fat_goes_down_by_three_degrees_a_thousand_feet(text, verdict, feet):
    """The published rule for deep fat: about 3 °F for every 1,000 ft."""
    said = headline(text)
    assert said.startswith(verdict)
    drop = re.search(r"(\d+) °F \([^)]*\) cooler than", said)
    assert drop, said
    assert int(drop[1]) == pytest.approx(3 * feet / 1000, abs=1)


@pytest.mark.parametrize(
    ("text", "verdict", "feet"),
    [
        ("does water boil at a lower temperature at 7,000 ft", "Yes: ", 7000),
        ("does the kettle boil cooler at 9000 ft", "Yes: ", 9000),
        ("does water boil hotter at 5,280 ft", "No: ", 5280),
        ("is the boiling point of water the same at 8,000 ft", "No: ", 8000),
        ("does the boiling point change at 10,000 ft", "Yes: ", 10000),
    ],
)
def test_whether_the_boil_moves(text, verdict, feet):
    said = headline(text)
    assert said.startswith(verdict)
    assert first_f(said) == pytest.approx(boil_f(feet), abs=1)


@pytest.mark.parametrize(
    ("text", "verdict", "word"),
    [
        ("does the microwave need more time at 7,000 ft for frozen peas", "No: ", "shortest time given"),
        ("do I need to change the microwave time for baked potatoes at 8,000 ft", "Hardly: ", "shortest time given"),
        ("does sous vide steak need more time at 9,000 ft", "No: ", "as at sea level"),
        ("does the slow cooker take longer for pulled pork at 7,000 ft", "Yes: ", "instead of 9 h"),
        (
            "does chili in the slow cooker take longer at 8,000 ft",
            "Yes: ",
            "Any dry beans in it boil hard 30 min first.",
        ),
        ("is the pressure cooker time the same for chickpeas at 7,000 ft", "No: ", "instead of 13 min"),
        ("do I cook rice longer in a rice cooker at 8,000 ft", "Yes: ", "instead of 17 min"),
        ("do hamburgers grill slower at 10,000 ft", "Yes: ", "grilling hamburgers"),
        ("does a turkey roast slower at 7,000 ft", "Yes, a little: ", "the oven stays as it is"),
        ("is it the same temperature for poaching salmon at 8,000 ft", "Yes: ", "160–180 °F"),
        ("does soft ball change at 7,000 ft", "Yes: ", "cooler than at sea level"),
        ("does caramel change at 8,000 ft", "No: ", "as at any elevation"),
    ],
)
def test_every_way_of_cooking_gets_its_verdict(text, verdict, word):
    said = headline(text)
    assert said.startswith(verdict)
    assert word in said


@pytest.mark.parametrize(
    ("text", "dish", "feet"),
    [
        ("how much longer do potatoes take at 7,000 ft", "potatoes", 7000),
        ("how much longer for spaghetti at 9,000 ft", "spaghetti", 9000),
        ("how much slower do lentils cook at 8,000 ft", "lentils", 8000),
        ("how much extra time does a pot roast need at 7,000 ft", "pot roast", 7000),
        ("how much more time for braised short ribs at 9,000 ft", "short ribs", 9000),
        ("how much longer should I steam broccoli at 3000 m", "broccoli", 9843),
    ],
)
def test_how_much_longer_is_counted(text, dish, feet):
    said = headline(text)
    assert said.startswith("About ")
    assert "instead of" in said
    percent = re.search(r"About (\d+) % longer", said)
    factor = minutes(dish, feet) / TIMES[dish][0]
    if percent:
        assert int(percent[1]) == pytest.approx((factor - 1) * 100, abs=6)
    else:
        assert "as long" in said
        assert factor > 1.8


@pytest.mark.parametrize(
    ("text", "verdict", "planned", "dish", "feet"),
    [
        ("is 2 hours enough for short ribs at 7,000 ft", "No: ", 120, "short ribs", 7000),
        ("will 35 minutes do for potatoes at 8,000 ft", "Yes: ", 35, "potatoes", 8000),
        ("would 15 min be ok for potatoes at 9,000 ft", "No: ", 15, "potatoes", 9000),
        ("I've only got 30 min, can I do lentils at 9,000 ft", "No: ", 30, "lentils", 9000),
        ("we eat in 90 minutes, is pot roast possible at 6,500 ft", "No: ", 90, "pot roast", 6500),
        ("if I give the broccoli 4 min of steam at 9,000 ft is that enough", "No: ", 4, "broccoli", 9000),
        ("does 10 minutes sound right for steamed broccoli at 7,000 ft", "Yes: ", 10, "broccoli", 7000),
        ("is half an hour enough for chickpeas at 6,000 ft", "No: ", 30, "chickpeas", 6000),
        ("can rice be done in 15 min at 8,000 ft", "No: ", 15, "rice", 8000),
        ("is 16 min plenty for spaghetti at 9,000 ft", "Yes: ", 16, "spaghetti", 9000),
        ("are 25 minutes enough for steamed dumplings at 2,000 m", "Yes: ", 25, "dumplings", 6562),
        ("I have 7 hours, will oxtail be tender at 2,400 m", "Yes: ", 420, "oxtail", 7874),
        ("my guests come in 2 h, is that enough for oxtail at 7,000 ft", "No: ", 120, "oxtail", 7000),
        ("is 5 h long enough for short ribs at 7,000 ft", "Yes: ", 300, "short ribs", 7000),
        ("would 25 minutes be enough for lentils at 9,000 ft", "No: ", 25, "lentils", 9000),
        ("potatoes at 10,000 ft, is 28 minutes ok", "Just: ", 28, "potatoes", 10000),
    ],
)
def test_whether_a_time_will_do(text, verdict, planned, dish, feet):
    said = headline(text)
    assert said.startswith(verdict)
    assert first_minutes(said) == planned
    about = said.split("about ", 1)[1]
    takes = minutes(dish, feet)
    assert first_minutes(about) == pytest.approx(takes, rel=0.08)
    assert (planned < takes * 0.97) == (verdict != "Yes: ")


def test_the_recipes_own_time_is_the_baseline_of_what_is_planned():
    said = headline("the packet says 9 min for spaghetti, is 13 enough at 9,000 ft")
    assert said.startswith("Yes: 13 min will do")
    assert first_minutes(said.split("about ", 1)[1]) == pytest.approx(minutes("spaghetti", 9000, 9.0), rel=0.08)


def test_too_long_is_told_without_yes_or_no():
    said = headline("is 60 minutes too long for potatoes at 7,000 ft")
    assert said.startswith("1 h is more than it takes")


@pytest.mark.parametrize(
    ("text", "verdict", "word"),
    [
        ("is 325 ok for braised pot roast at 7,000 ft", "Yes: 325 °F", "as at sea level"),
        ("is 350 right for meatloaf at 7,500 ft", "Yes: 350 °F", "as at sea level"),
        ("is 375 fine for frying doughnuts at 7,000 ft", "No: ", "355 °F"),
        ("is 225 ok for smoking pork butt at 7,000 ft", "Yes: 225 °F", "as at sea level"),
        ("can I hold soup at 63 C at 4,000 m", "Yes: 63 °C", "86.5 °C"),
        ("is 60 C warm enough to hold the stew at 3,000 m", "Yes: 60 °C", "90 °C"),
        ("is 38 F cold enough for the fridge at 7,000 ft", "Yes: 38 °F", "41 °F"),
        ("is 85 C ok for carrots sous vide at 4,000 m", "No: ", "84.5 °C"),
        ("is 60 C fine for chicken breast sous vide at 3,000 m", "Yes: 60 °C", "1 h 30 min"),
        ("is 235 F ok for soft ball at 7,000 ft", "No: 235 °F", "221–227 °F"),
        ("is 224 right for soft ball at 7,000 ft", "Yes: 224 °F", "221–227 °F"),
        ("is bread done at 195 F inside at 7,000 ft", "Yes: 195 °F", "185–197 °F"),
        ("is 165 still right for chicken at 8,000 ft", "Yes. 165 °F", "any elevation"),
        ("will a rolling boil at 88 C cook potatoes at 3,640 m", "Yes: 88 °C", "full boil"),
        ("does 15 psi still do it at 8,000 ft", "No: 15 psi", "242 °F"),
    ],
)
def test_whether_a_temperature_will_do(text, verdict, word):
    said = headline(text)
    assert said.startswith(verdict)
    assert word in said


@pytest.mark.parametrize(
    ("text", "had", "dish", "feet"),
    [
        ("lentils have been simmering 20 min at 8,000 ft, how much longer", 20, "lentils", 8000),
        ("how much longer do chickpeas need after 45 min on the simmer at 8,200 ft", 45, "chickpeas", 8200),
        ("oxtail at 7,000 ft, 90 mins gone, how long left", 90, "oxtail", 7000),
        ("short ribs have been in for 3 hours at 9,000 ft, how long left", 180, "short ribs", 9000),
        ("chickpeas on since 9 this morning and it is 11 now, 7,500 ft, how long to go", 120, "chickpeas", 7500),
        ("potatoes have had 15 minutes at 2,600 m, when will they be done", 15, "potatoes", 8530),
        ("pot roast went in 2 hours ago at 7,000 ft, how much longer", 120, "pot roast", 7000),
        ("the rice has been going 15 min at 10,000 ft, how much longer", 15, "rice", 10000),
        ("potatoes boiled 20 mins not soft yet, 9,000 ft", 20, "potatoes", 9000),
        ("been braising the short ribs for 2 h at 6,500 ft, how many more minutes", 120, "short ribs", 6500),
        ("lentils simmering for 30 minutes already at 2,500 m, how much longer", 30, "lentils", 8202),
        ("short ribs after 3 hours at 8,000 ft, how many more minutes", 180, "short ribs", 8000),
        ("steamed dumplings have had 10 min at 9,000 ft, how much longer", 10, "dumplings", 9000),
        ("had the pot roast on 90 minutes so far at 8,000 ft how long left", 90, "pot roast", 8000),
        ("my chickpeas have simmered 2 hours at 7,000 ft, how much longer", 120, "chickpeas", 7000),
    ],
)
def test_what_is_still_to_go_is_what_it_takes_less_what_it_has_had(text, had, dish, feet):
    said = headline(text)
    left = minutes(dish, feet) - had
    assert said.startswith("About ")
    assert " more, " in said
    assert first_minutes(said) == pytest.approx(left, rel=0.1, abs=minutes(dish, feet) * 0.07)
    assert "counted from" in said


@pytest.mark.parametrize(
    ("text", "had", "reason"),
    [
        ("chickpeas have been simmering 9 hours at 7,000 ft, how much longer", "9 h", "baking soda"),
        ("short ribs have been braising 8 hours at 7,000 ft and still tough", "8 h", "steady simmer"),
        ("potatoes have been boiling 90 min at 7,000 ft, still hard", "1 h 30 min", "acid"),
        ("the rice has been simmering 2 hours at 8,000 ft, how much longer", "2 h", "ran out of water"),
    ],
)
def test_past_its_time_it_says_so_with_the_reason_and_the_way_out(text, had, reason):
    said = headline(text)
    assert said.startswith("It should be done: ")
    assert f"yours has had {had}" in said
    assert reason in said


@pytest.mark.parametrize(
    ("text", "way", "quick", "slow"),
    [
        ("pressure cooker or open pot for chickpeas at 8,000 ft", "Quicker", "pressure cooking", "simmering chickpeas"),
        (
            "which is faster, braising or pressure cooking short ribs at 7,000 ft",
            "Quicker",
            "pressure cooking",
            "braising",
        ),
        (
            "should I braise or pressure cook lamb shanks at 8,000 ft",
            "Quicker",
            "pressure cooking lamb",
            "braising lamb",
        ),
        ("chickpeas or red lentils, which is quicker at 9,000 ft", "Quicker", "red lentils", "chickpeas"),
        ("brown rice or quinoa, which takes longer at 8,000 ft", "Longer", "brown rice", "quinoa"),
        ("potatoes or carrots, which cooks faster at 7,000 ft", "Quicker", "carrots", "potatoes"),
        ("spaghetti or white rice at 9,000 ft, which is quicker", "Quicker", "spaghetti", "white rice"),
    ],
)
def test_which_of_two_is_quicker(text, way, quick, slow):
    said = headline(text)
    assert said.startswith(f"{way} at ")
    first, other = said.split(", against ")
    assert quick in first
    assert slow in other
    one, two = first_minutes(first.split("about")[1]), first_minutes(other)
    assert one < two if way == "Quicker" else one > two


@pytest.mark.parametrize(
    ("text", "slow", "quick"),
    [
        ("which goes on first at 3,100 m, lentils or pasta", "lentils", "pasta"),
        ("do I start the rice or the chickpeas first at 7,500 ft", "chickpeas", "rice"),
        ("at 2,800 m I have rice, lentils and potatoes, what order do I cook them", "lentils", "rice"),
    ],
)
def test_the_slowest_goes_on_first(text, slow, quick):
    first, then = headline(text).split(" Then ")
    assert first.startswith("First at ")
    assert slow in first
    assert quick in then
    assert first_minutes(first.split("about")[1]) > first_minutes(then)


@pytest.mark.parametrize(
    ("text", "dish"),
    [
        ("roast pork belly at 6,800 ft, how long", "pork belly"),
        ("roast chicken drumsticks at 2,000 m", "drumsticks"),
        ("baked apple crumble at 7,000 ft, how long", "crumble"),
    ],
)
def test_a_method_takes_no_half_of_a_name(text, dish):
    assert dish in headline(text)


@pytest.mark.parametrize(
    ("text", "begins", "dish", "feet"),
    [
        ("does rice take longer in La Paz or in Lhasa", "The same: ", "rice", (11942, 11995)),
        ("lentils in Quito and in Bogota, how long each", "Longer at ", "lentils", (9350, 8660)),
        ("any difference for boiling potatoes between Denver and Leadville", "Longer at ", "potatoes", (10152, 5280)),
        ("chickpeas at 5,000 ft against 8,000 ft, how do the times compare", "Longer at ", "chickpeas", (8000, 5000)),
    ],
)  # fmt: skip
def test_two_places_side_by_side(text, begins, dish, feet):
    said = headline(text)
    assert said.startswith(begins)
    first, last = said.split(", against " if "against" in said else ", and ")
    assert first_minutes(first.split("about ")[1]) == pytest.approx(minutes(dish, feet[0]), rel=0.08)
    assert first_minutes(last) == pytest.approx(minutes(dish, feet[1]), rel=0.08)


def test_where_of_two_places_water_boils_lower():
    said = headline("where does water boil lower, Cusco or Quito")
    assert said.startswith("Lower at 3,399 m (11,150 ft): ")
    assert first_f(said) == pytest.approx(boil_f(11150), abs=1)


def test_three_places_have_three_times():
    assert headline("spaghetti at 1500 m, 2500 m and 3500 m").count(" min at ") == 3


def test_steam_is_no_hotter_than_the_boil():
    assert headline("steam or boil potatoes at 9,000 ft, which is faster").startswith("As long either way")


@pytest.mark.parametrize(
    ("text", "verdict", "word"),
    [
        ("is it worth buying a pressure cooker at 7,000 ft", "Yes: ", "dried beans"),
        ("should I buy a pressure cooker for beans at 8,000 ft", "Yes: ", "under pressure"),
        ("is a pressure cooker worth it for pasta at 9,000 ft", "No: ", "14 min"),
        ("do we need an electric pressure cooker at 2,000 ft", "No: ", "2,000 ft"),
        ("do I need a pressure cooker for chickpeas at 9,000 ft", "Yes: ", "simmering chickpeas"),
        ("is a pressure cooker worth having for short ribs at 6,000 ft", "Yes: ", "braising short ribs"),
        ("do I really need a meat thermometer at 7,000 ft", "Yes, a cheap one: ", "13 °F"),
        ("does a rice cooker help at 9,000 ft", "No: ", "16 °F"),
        ("is it worth getting an induction hob at 9,000 ft", "No: ", "16 °F"),
    ],
)
def test_whether_it_pays(text, verdict, word):
    said = headline(text)
    assert said.startswith(verdict)
    assert word in said


@pytest.mark.parametrize(
    ("text", "verdict", "feet"),
    [
        ("can rice even cook at 5,000 m", "Yes: ", 16404),
        ("can potatoes get soft at 14,000 ft", "Yes: ", 14000),
        ("is it possible to cook lentils at 4,800 m", "Yes: ", 15748),
        ("can carrots soften at 4,500 m", "Yes: ", 14764),
        ("can you cook pasta at 16,000 ft", "Yes: ", 16000),
        ("can water reach 205 F at 5,280 ft", "No: ", 5280),
        ("can a braise hit 203 F inside at 9,000 ft", "No: ", 9000),
        ("can water in the pot reach 210 F at 3,000 ft", "No: ", 3000),
    ],
)
def test_whether_it_can_be_done_by_what_the_boil_reaches(text, verdict, feet):
    said = headline(text)
    assert said.startswith(f"{verdict}water boils at ")
    boils = re.search(r"(\d+) °F", said)
    assert boils
    assert int(boils[1]) == pytest.approx(boil_f(feet), abs=1.5)


@pytest.mark.parametrize(
    ("text", "verdict", "word"),
    [
        ("can you even cook dried beans at 12,000 ft", "No: ", "pressure cooker"),
        ("can bread reach 205 F inside at 8,000 ft", "No: ", "196 °F"),
        ("can you roast a chicken at 11,000 ft", "Yes: ", "roasting chicken"),
        ("can oil get to 375 at 9,000 ft", "Yes: ", "375 °F"),
    ],
)
def test_what_hangs_on_more_than_the_boil(text, verdict, word):
    said = headline(text)
    assert said.startswith(verdict)
    assert word in said


@pytest.mark.parametrize(
    ("text", "word"),
    [
        ("how do I know beef brisket is done at 7,000 ft", "fork twists"),
        ("how do you tell when short ribs are ready at 8,000 ft", "from 145 °F"),
        ("how can I tell rice is done at 9,000 ft", "no chalky core"),
        ("when is banana bread done at 7,000 ft", "192–197 °F"),
        ("how do I know carrots are done at 7,000 ft", "knife tip"),
        ("how do I tell when dried beans are done at 8,000 ft", "crush"),
        ("medium rare steak at 7,000 ft what temp", "130–135 °F"),
        ("what temperature for medium rare prime rib at 7,000 ft", "130–135 °F"),
        ("medium well rack of lamb at 7,000 ft", "145–155 °F"),
        ("what internal temp for a medium steak at 6,000 ft", "135–145 °F"),
    ],
)
def test_how_to_tell_that_it_is_done(text, word):
    assert word in headline(text)


@pytest.mark.parametrize(
    ("text", "dish", "feet"),
    [
        ("what do I multiply the box time by for spaghetti at 10,000 ft", "spaghetti", 10000),
        ("what's the multiplier for chickpeas at 8,000 ft", "chickpeas", 8000),
        ("by what factor does the time grow for potatoes at 3,000 m", "potatoes", 9843),
        ("conversion factor for lentils at 6,000 ft", "lentils", 6000),
        ("multiply the time by what for short ribs at 7,000 ft", "short ribs", 7000),
        ("how many times as long do chickpeas take at 7,500 ft", "chickpeas", 7500),
    ],
)
def test_by_what_to_multiply(text, dish, feet):
    said = headline(text)
    factor = re.search(r"by about ([\d.]+)", said)
    assert factor, said
    assert float(factor[1]) == pytest.approx(minutes(dish, feet) / TIMES[dish][0], rel=0.08)


@pytest.mark.parametrize(
    ("text", "base"),
    [
        ("turkey, 14 lb at 20 min per lb, 7,000 ft", "4 h 40 min"),
        ("roast beef, 4 lb at 20 minutes to the pound, 6,000 ft", "1 h 20 min"),
        ("leg of lamb 3 kg, 40 min a kilo plus 20 min, at 1,900 m", "2 h 20 min"),
        ("a 2 kg pork roast at 45 min per kilo, 2,000 m", "1 h 30 min"),
    ],
)
def test_a_time_per_weight_is_reckoned_for_the_weight(text, base):
    assert f"against {base} at sea level" in headline(text)


@pytest.mark.parametrize(
    "text",
    [
        "how long to braise short ribs at 7,000 ft", "boiled potatoes at 9,000 ft", "chickpeas 8,000 ft",
        "stir the chili every 20 min, how long at 7,000 ft",
        "soaked 8 hours, how long do black beans simmer at 7,000 ft",
        "it takes 3 h at sea level, how long for pot roast at 7,000 ft", "how long for a roast chicken at 6,000 ft",
        "the box says 9 minutes, how long for penne at 8,000 ft", "normally 12 min for broccoli, how long at 2,600 m",
    ],
)  # fmt: skip
def test_where_no_other_form_is_heard_the_usual_headline_stands(text):
    said = headline(text)
    assert said.startswith("About ")
    assert " for " in said
    assert "instead of" not in said


def test_a_refusal_stays_a_refusal_whatever_the_form():
    assert headline("is 200 F ok to roast a turkey at 7,000 ft").startswith("No")
    assert headline("is 2 hours enough for a steak sous vide at 55 C at 2,100 m").startswith("No. 2 h")


def test_a_follow_up_is_judged_by_the_question_before():
    assert headline("is 80 minutes enough?", "how long for pinto beans at 7,000 ft").startswith(
        "No: 1 h 20 min is short"
    )
    assert headline("its been on 50 min, how much longer", "chickpeas at 8,000 ft").startswith("About 2 h 4")
    assert headline("does the oven temp change?", "braise short ribs at 7,000 ft").startswith(
        "No: the oven stays at 325 °F"
    )
