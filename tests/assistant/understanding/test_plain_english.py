"""Everyday English is no food: words that look like a slip of a kitchen word, names, and phrases that only sound so."""

from __future__ import annotations

import pytest

from assistant.answering import understand
from assistant.understanding.lexicon import phrase_book, plain_phrases
from assistant.understanding.spelling import mend, plain_words

# no dish is asked about in any of them
NO_DISH = """
we are out of stock until Thursday
the stock room is locked again
remember to stock up before the pass closes
stock levels are low this week
let him stew for a while
my boss roasted me in the meeting
they grilled me about the invoice
she is in hot pursuit of a promotion
the smoke alarm keeps going off
no smoking on the terrace please
the smoke detector needs a battery
that report was a piece of cake
the exam was easy as pie
put the figures in a pie chart
I spilled the beans about the party
he is a bean counter at heart
the kids were full of beans
stuck in a traffic jam below the tunnel
the printer has a paper jam
he got himself in a pickle
pickleball court is frozen
you are the apple of my eye
do not cherry pick the numbers
the plan went pear shaped
sour grapes if you ask me
he went bananas at the referee
in a nutshell the budget is gone
it drives me nuts when they are late
the nuts and bolts of the contract
a couch potato all winter
hot potato nobody wants to touch
do not cry over spilt milk
he tried to butter up the inspector
riding the gravy train
icing on the cake for our team
cream of the crop this season
his salad days are over
walking on eggshells around the owner
they egged on the drummer
nest egg for the children
he chickened out of the climb
build a chicken coop behind the shed
chicken wire for the fence
going cold turkey on coffee breaks
a wild goose chase across town
goose bumps on my arms
black sheep of the family
beef up the security on the door
have a beef with the landlord
ham radio on the ridge
bring home the bacon
fishing licence for the lake
something fishy about that bill
sole trader since March
the sole of my shoe came off
bass guitar for sale
a red herring in the story
he perched on the wall
the skate park is open
clam up when the boss is near
the world is your oyster
raise a toast to the bride
spaghetti junction is closed
spaghetti code in the booking system
smart cookie that girl
accept cookies on the website
tough cookie at the front desk
secretary's birthday is on Friday
proof of purchase for the warranty
burden of proof is on them
proof of address for the bank
trouble is brewing in the office
let off steam on the slopes
run out of steam by noon
the steam engine runs on Sundays
chill out and have a rest
coffee table needs a polish
the coffee break is at ten
tea towels are in the drawer
water polo on channel four
a nature preserve near the village
wondering about the wedding guests
my colleague Hannah is leaving
the managers were worrying over wages
bowling night with the neighbours
wishing you a pleasant journey
we wished the soldiers well
the princess signed the papers
the prince and the princess danced
a professor of physics visited
a shepherd lost his dog near the border
please whisper in the library
he is a swimmer and a boxer
the bride wore white
banking hours have changed
the ceremony lasted an hour
the satellite dish fell off the roof
the mortgage was approved
a storm is brewing over the ridge
the elevator is stuck on the second floor
the surgeon was late for the match
my grandson collects stamps
the tennis final was delayed
a carpenter mended the roof
the painter forgot his ladder
""".strip().splitlines()


@pytest.mark.parametrize("said", NO_DISH)
def test_no_dish(said: str) -> None:
    assert understand(said).dish is None


def test_a_hundred_of_them() -> None:
    assert len(set(NO_DISH)) >= 100


@pytest.mark.parametrize(
    "said",
    [
        "We moved from Catalina to the hills, how long for potatoes",
        "my friend Sally is here, how long do potatoes take",
        "greetings from Brandon, the potatoes are on",
        "Hi from Pastora, how long to boil potatoes",
        "uncle Tamalou wants potatoes, how long at 7,000 ft",
        "for Frau Klosser: potatoes at 1,600 m",
    ],
)
def test_names_are_left_alone(said: str) -> None:
    assert understand(said).dish == "potatoes"


def test_a_name_beside_its_phrase_is_a_slip() -> None:
    assert understand("how long to braise Shrot Ribs at 7,000 ft").dish == "short ribs"
    assert understand("How Long To Boil Brocoli At 7,000 Ft").dish == "broccoli"


# slips of thumbs in long sentences of people in a hurry
@pytest.mark.parametrize(
    ("said", "dish"),
    [
        ("so my sister in law is coming on sunday and she wants biryaani, how long at 7,000 ft you reckon", "biryani"),
        ("hello we just moved up here from the coast and the lentisl are never soft, how long at 2,400 m", "lentils"),
        ("the new lad put the brisket on at six and went home, how long for briskt at 6,800 ft", "beef brisket"),
        ("quick one before service how long do i give the potatos at 5,900", "potatoes"),
        ("trying to work out the timing for sunday, roats beef at 8,200 ft for a dozen of us", "roast beef"),
        ("its freezing out and the kids want pancaks, how long a side up at 9,000 ft", "pancakes"),
        ("my mother always did chikpeas in the cooker, up here at 3,000 m how long", "chickpeas"),
        ("boss says vhicken thighs for eighty, 7,400 ft, how long in the oven", "chicken thighs"),
        ("any idea for quiona at 2,700 metres my last pot was crunchy", "quinoa"),
        ("what about hcickpeas at 8,000 ft", "chickpeas"),
    ],
)
def test_slips_in_long_sentences(said: str, dish: str) -> None:
    assert understand(said).dish == dish


# real words, and foreign ones, that are no slip of the kitchen word beside them
@pytest.mark.parametrize(
    "word",
    [
        "bowling",
        "colleague",
        "wondering",
        "managed",
        "princess",
        "dedicated",
        "celebrate",
        "province",
        "symphony",
        "rewarding",
        "treeline",
        "whittled",
        "cunning",
        "surgeon",
        "stitched",
        "tribe",
        "laughter",
        "routine",
        "salute",
        "vegetation",
        "whisker",
        "prosecutor",
        "hostel",
        "beaker",
        "crest",
    ],
)
def test_plain_words_stay(word: str) -> None:
    assert mend(word) is None


def test_a_letter_far_off_is_no_slip() -> None:
    assert mend("sallt") != "salty"
    assert mend("hoqiny") is None


def test_no_plain_word_is_a_dish_or_a_method() -> None:
    book = phrase_book().phrases
    named = {word for word in plain_words() for kind, _ in book.get(word, ()) if kind in ("dish", "method")}
    assert named == set()


def test_plain_phrases_hold_a_word_that_would_be_heard() -> None:
    assert len(plain_phrases()) == len(set(plain_phrases()))
    assert all(phrase == phrase.lower() and "-" not in phrase and "'" not in phrase for phrase in plain_phrases())


@pytest.mark.parametrize("word", ["can", "bath", "bottle", "process", "coarse", "stiff", "set", "fire", "hold"])
def test_a_word_of_many_meanings_is_no_method_and_no_dish_alone(word: str) -> None:
    assert [kind for kind, _ in phrase_book().phrases.get(word, ()) if kind in ("dish", "method")] == []


@pytest.mark.parametrize(
    ("said", "dish"),
    [
        ("cook the rice in stock at 7,000 ft", "white rice"),
        ("how long does stock take at 6,300 ft", "stock"),
        ("smoke the turkey at 8,000 ft", "turkey"),
        ("gravy for forty at 6,000 ft", "gravy"),
        ("apple pie at 7,900 ft", "apple pie"),
    ],
)
def test_and_food_is_still_food(said: str, dish: str) -> None:
    assert understand(said).dish == dish
