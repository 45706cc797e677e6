"""Questions about pressure cookers as people put them, and what the first line of the answer must say."""

import re

import pytest

from assistant.answering import reply_to, understand

# the question, what the first line says, what it does not
ASKED = [
    # minutes under pressure are carried by the steam inside, whatever the device is called
    ("pork belly 50 min at high pressure at sea level, what at 6,000 ft", "pressure cooking pork belly", "brais"),
    ("goulash 30 minutes in my express pot in Lyon, now at 2,000 m", "pressure cooking goulash", "simmer"),
    ("book of the smart cooker says 18 min for split peas, we are at 7,500 ft", "pressure cooking split peas", ""),
    ("12 min at 15 psi for barley, kitchen at 8,200 ft", "pressure cooking", "simmering"),
    # the release
    ("brisket under pressure at 7,000 ft, may I quick release?", "^Natural release for beef brisket", ""),
    ("asparagus in the pressure cooker at 5,000 ft, natural or quick release?", "^A quick release is right", ""),
    ("split pea soup in the multicooker at 6,000 ft, do I quick release", "foam", ""),
    # in general
    ("do I cook longer in the pressure cooker at 9,000 ft", "^Yes: about 35 % more", "psi .* to match"),
    ("does a pressure cooker notice the altitude, it has its own pressure", "^Partly.*gauge counts", "open pot"),
    ("how much pressure does an electric pressure cooker hold at 6,000 ft", "10 psi.*12 psi.*HIGH", "to match"),
    # whistles: the cook's own count is what they are held against
    ("how many whistles for chole at 2,100 m? In Kolkata we give 4", "against 4 at", ""),
    ("kitne whistle for mutton in Leh? Nagpur mein 6 is enough", "against 6 at", ""),
    ("how many seeti for 3 potatoes at 2,000 m", "whistles .*for potatoes", "against 1 "),
]
# where the words are of the canner, and where they are not
CANNED = [
    (
        "15 lb weight for parsnips at 600 feet, too much?",
        "no tested process|safe and more than enough",
        "pressure cooking",
    ),
    ("the 15 lb weight is all I have, green beans, 700 ft", "safe and more than enough", "pressure cooking"),
    ("10 lb weight for green beans at 2,500 ft, fine?", "too low", "Yes"),
    (
        "my dial rule: a pound per 2000 ft on top of 11, at 7,000 ft I get 14.5, right?",
        "14.5 psi.*14 psi",
        "thermometer",
    ),
    ("the gauge of my canner dips in the middle at 5,500 ft, do I start again", "^Yes: bring it back to 13 psi", ""),
    ("can I can peaches in an express cooker at 6,000 ft", "^No. Do not can in an electric", "min"),
]
FERMENTS = [
    ("does my kraut want more salt at 2,400 m", "^No: the salt goes by weight", ""),
    ("10 kg of cabbage for kraut at 2 % salt, does it change at 8,000 ft", "200 g", "pressure"),
    ("kimchi jar bulges its lid in La Paz more than in Lima, burp it?", "Burp the jar", ""),
    ("is kombucha done sooner at 8,000 ft", "^No faster", "rise until doubled"),
    ("vinegar in pickled okra at 7,500 ft, does that change?", "^No: the vinegar", ""),
    ("jam in the hills, any tips", "sets 8 °F .4.5 °C. above the boil", r"\d min"),
    ("does jelly cook longer at 8,000 ft", "^About as long", ""),
]


@pytest.mark.parametrize(("text", "says", "never"), [*ASKED, *CANNED, *FERMENTS])
def test_the_first_line_answers(text, says, never):
    line = reply_to(text).text.split("\n")[0]
    assert re.search(says, line), line
    assert not never or not re.search(never, line), line


@pytest.mark.parametrize(
    "text", ["a bulging jar of canned kimchi from the cellar", "my canned kraut jar bulges, eat it?"]
)
def test_a_bulging_jar_from_the_shelf_is_no_ferment(text):
    assert understand(text).subject != "ferment_gas"
    assert reply_to(text).text.startswith(("Discard", "No"))


def test_a_town_is_no_word_of_a_reason():
    assert understand("Park City, what is the science of that").subject != "smoking_stalls"


def test_a_new_ring_is_not_replaced_again():
    reply = reply_to("the cooker builds no pressure at 9,000 ft, steam pours out of the valve, the ring is new")
    assert "valve" in reply.text
    assert "replace a ring" not in reply.text


def test_no_minutes_for_jars_of_jam_without_an_elevation():
    assert not re.search(r"\d min", reply_to("jam, please help").text)
