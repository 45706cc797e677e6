"""Which place is the kitchen, which is the baseline, which plays no part, and which are asked about together.

Elevations of towns are those of data/lexicon/places.toml, so a part is told by the name of the place.
"""

from __future__ import annotations

import pytest

from assistant.answering import understand
from assistant.reading.places import elevation_m
from rules.model import Kitchen

FT_M = 0.3048
SEA = 0.0


def metres(place: str | float | None) -> float | None:
    """A place by name, or a figure in feet."""
    if isinstance(place, str):
        name, _, _unit = place.partition(" m")
        if name.isdigit():
            return float(name)
        known = elevation_m(place)
        assert known is not None, place
        return known
    return None if place is None else place * FT_M


def parts(text: str, kitchen: Kitchen | None = None) -> tuple[float | None, float | None]:
    request = understand(text, kitchen=kitchen)
    return request.elevation_m, request.from_elevation_m


def near(metres: float | None) -> object:
    return None if metres is None else pytest.approx(metres, abs=3)


@pytest.mark.parametrize(
    ("text", "here"),
    [
        ("we are up in Telluride, wings in the fryer at 350", "Telluride"),
        ("I'm in Leadville and the oven is at 400", "Leadville"),
        ("Flagstaff. 250 covers. how long for the penne", "Flagstaff"),
        ("how long do 600 g of lentils simmer in Cusco", "Cusco"),
        ("flour 500, water 375, levain 100, Bogota, it overproofs", "Bogota"),
        ("churros at 190 in Quito", "Quito"),
        ("Vail: doughnuts in oil at 365 how long", "Vail"),
        ("smoker at 250, Santa Fe, how long for ribs", "Santa Fe"),
        ("roast chicken 425 then 350 in Taos", "Taos"),
        # a figure that agrees with its town is one with it, and holds
        ("Telluride 8750, how long for rice", 8750),
        ("I bake in Leadville, 10,150 or so", 10150),
        ("we cook in Park City at seven thousand feet", 7000),
        ("rice in Bogota, 2640", "2640 m"),
        ("beans in Johannesburg (1750 m)", "1750 m"),
        ("at 9,200 ft in Silverton how long do eggs take", 9200),
        ("in Laramie, about 7,200 ft, how long for barley", 7200),
        # a figure beats a town that it does not agree with
        ("our hut is above Vail at 11,000 ft, pasta time", 11000),
        ("near Boulder at 8,400 ft, how long for rice", 8400),
        # a town in an address or in the name of a dish is no kitchen
        ("Santa Fe enchiladas at 9,100 ft", 9100),
        ("how long do I bake Boston brown bread in Leadville", "Leadville"),
        ("two New York strip steaks at 6,200 ft", 6200),
        ("Denver omelette in Cusco", "Cusco"),
        ("we're at 12 Denver Street, elevation 6,800 ft", 6800),
        ("Chicago style pizza in Breckenridge", "Breckenridge"),
        # a step of a rule, a table's row, a difference, a thing's size: none of them is the kitchen
        ("does the boil drop 1 C per 300 metres or 330, I'm in Quito", "Quito"),
        ("they say 2 lb for every 2,000 ft, I am at 6,300 ft", 6300),
        ("the chart has 0-1,000 ft and 1,001-3,000 ft, we are at 5,600 ft", 5600),
        ("the box says above 3,500 ft add a quarter cup of flour, I'm at 7,200 ft", 7200),
        ("over 3,000 ft add 5 minutes it says. my kitchen is at 6,100 ft", 6100),
        ("a 6 foot smoker at 7,400 ft", 7400),
        ("a 2,000 ft climb from the car, camp is at 3,400 m", "3400 m"),
        # between two figures is their middle
        ("we are somewhere between 6,000 and 7,000 ft, how long for beans", 6500),
        ("lodge is at 2400-2600 m, how long for rice", "2500 m"),
        # said again
        ("at 6,000 no wait 7,000 ft", 7000),
        ("3,200 ft, sorry, METRES, for lentils", "3200 m"),
        ("8,000 metres. Oops. FEET. how long for rice", 8000),
        ("rice at 2400 feet i mean metres", "2400 m"),
        ("I'm at 7,000 ft, not metres", 7000),
        # as it is spoken
        ("we're at seventy five hundred, how long for rice", 7500),
        ("were at five two eight oh how long do eggs take", 5280),
        ("im at ninety three hundred feet", 9300),
        ("pasta at sixty eight hundred feed", 6800),
        ("were at eight five how long for pinto beans", 8500),
        ("up at twelve two, how long for noodles", 12200),
        ("twenty four hundred meters, chickpeas", "2400 m"),
        ("our bakery is a mile up", 5280),
        ("rice at ten k feet", 10000),
        ("were at 7 thou", 7000),
        ("im at 7ish thousand", 7000),
        ("potatoes at 2400ish metres", "2400 m"),
        ("braise at nine thousand ft", 9000),
        ("nearly two thousand metres up, bread", "2000 m"),
        ("lasagne, we're 7,800 up", 7800),
        ("9200ft lamb shanks", 9200),
        ("the job is in Courchevel 1850", "1850 m"),
        ("ten two hundred feet, how long for eggs", 10200),
        ("lodge is at 11k", 11000),
        ("pao de queijo won't puff at 2640", "2640 m"),
        # nearby
        ("outside Laramie how long for rice", "Laramie"),
        ("cabin near Fairplay, eggs", "Fairplay"),
        ("hut above Zermatt, rosti", "Zermatt"),
    ],
)
def test_the_kitchen(text: str, here: str | float) -> None:
    assert parts(text) == (near(metres(here)), None)


@pytest.mark.parametrize(
    ("text", "here", "baseline"),
    [
        ("chickpeas 35 min in Chicago. what is it in Leadville", "Leadville", "Chicago"),
        ("rice 4 whistles in Mumbai, how many in Leh", "Leh", "Mumbai"),
        ("jacket potatoes an hour at 200 at home in London, how long in Davos", "Davos", "London"),
        ("steamed pudding 6 hrs at home in Dublin. in Nairobi?", "Nairobi", "Dublin"),
        ("custard done in 40 at home in Boston. in Santa Fe?", "Santa Fe", "Boston"),
        ("I used to work in Dallas, now I cook in Telluride", "Telluride", "Dallas"),
        ("the kettle came with us from Dallas to Telluride", "Telluride", "Dallas"),
        ("my sister in Mumbai gets it perfect, mine sinks in Shimla", "Shimla", "Mumbai"),
        ("aunty in Delhi does rajma in 6 whistles, I'm in Leh", "Leh", "New Delhi"),
        ("soaked like my mom in Houston does, still hard in Santa Fe", "Santa Fe", "Houston"),
        ("moved from Houston to Colorado Springs, spaghetti stays hard", "Colorado Springs", "Houston"),
        ("we left Santa Fe for New Orleans, the cake is like a brick", "New Orleans", "Santa Fe"),
        ("syrup to 118 at home in Lisbon. New kitchen is Zermatt", "Zermatt", "Lisbon"),
        ("the book is from London and I bake in Nairobi", "Nairobi", "London"),
        ("recipe from Houston says 60 min, I am in CDMX", "Mexico City", "Houston"),
        ("why does dough rise quicker in Mexico City than in Miami", "Mexico City", "Miami"),
        ("is the stall lower here in Bozeman than back in Austin", "Bozeman", "Austin"),
        ("rice was 15 minutes in Singapore, how long at 9,000 ft", 9000, "Singapore"),
        ("squid 45 min at the coast, 2500 m now", "2500 m", SEA),
        ("down in the valley it takes 3 hours, up here at 8,200 ft?", 8200, SEA),
        ("eggs 4 minutes by the sea, what in Cusco", "Cusco", SEA),
        ("20 min sea lvl, im at 7k ft", 7000, SEA),
        ("our plan is copied from Mumbai, we run it in Leh", "Leh", "Mumbai"),
        ("croissants proof 2 h in Paris, I'm in Addis Ababa now", "Addis Ababa", "Paris"),
        ("40 minutes at 500 ft and what at 8,000 ft", 8000, 500),
        ("moving production from 500 m to 1,900 m", "1900 m", "500 m"),
        ("down home it takes 2 hours, how long in Breckenridge", "Breckenridge", SEA),
        ("like gran in London does it, in Zermatt", "Zermatt", "London"),
    ],
)
def test_the_kitchen_and_the_baseline(text: str, here: str | float, baseline: str | float) -> None:
    assert parts(text) == (near(metres(here)), near(metres(baseline)))


@pytest.mark.parametrize(
    ("text", "here"),
    [
        ("the chef from La Paz says no, we are at 6,000 ft", 6000),
        ("I am from Miami, I cook in Leadville", "Leadville"),
        ("my guests from Quito want locro, we're in Aspen", "Aspen"),
        ("spices shipped from New Delhi, kitchen is in Vail", "Vail"),
    ],
)
def test_a_place_somebody_comes_from_plays_no_part(text: str, here: str | float) -> None:
    assert parts(text) == (near(metres(here)), None)


@pytest.mark.parametrize(
    ("text", "all_of_them"),
    [
        ("does rice take longer in La Paz or in Lhasa", ["La Paz", "Lhasa"]),
        ("a chicken breast at 60: give me Aspen against the coast", ["Aspen", SEA]),
        ("beans in Vail and in Leadville, how long", ["Vail", "Leadville"]),
        ("boiling point in Quito vs Cusco", ["Quito", "Cusco"]),
        ("three camps: 2400, 2800 and 4700 m, same lentils", ["2400 m", "2800 m", "4700 m"]),
        ("Denver or Leadville, which boils cooler", ["Denver", "Leadville"]),
        ("pasta times for 5,000, 7,000 and 9,000 ft", [5000, 7000, 9000]),
        ("give me a number for Namche, Lukla and Kathmandu", ["Namche Bazaar", "Lukla", "Kathmandu"]),
        ("eggs at 6,000 ft or 9,000 ft", [6000, 9000]),
    ],
)
def test_places_asked_about_together_are_kept_in_their_order(text: str, all_of_them: list[str | float]) -> None:
    request = understand(text)
    assert list(request.elevations_m) == [near(metres(place)) for place in all_of_them]
    assert request.elevation_m == request.elevations_m[0]


@pytest.mark.parametrize(
    "text",
    [
        "and per 300 metres in celsius",
        "how much does the boil fall for every 1,000 ft",
        "add 2 lb per 500 ft, right?",
        "what is the 0-1,000 ft row of the canning table for",
        "is it true that above 3,000 ft you add flour",
        "the trailhead is 3 miles away, dal",
        "my mom in Ohio does beans in an hour",
        "a table 8 feet long for the buffet",
        "gain of 2,000 ft on the trail, lunch is rice",
    ],
)
def test_no_kitchen_is_made_of_it(text: str) -> None:
    request = understand(text)
    assert (request.elevation_m, request.elevations_m) == (None, ())


def test_a_figure_beats_a_town_and_that_is_said() -> None:
    (left,) = understand("in Leadville at 6,000 ft, how long for rice").unused
    assert (left.kind, left.text) == ("place", "leadville")


def test_one_kitchen_is_no_list() -> None:
    assert understand("rice in Leadville, 10,150 ft").elevations_m == ()
    assert understand("written for sea level, I'm at 6,200 ft").elevations_m == ()
