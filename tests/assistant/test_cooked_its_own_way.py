"""The way that the asker tells goes before the dish's usual one, and the dish's own nature before its class.

Each case: the question, what the reply must say, what it must not.
"""

from __future__ import annotations

import re

import pytest

from assistant.dialogue.memory import Memory
from assistant.dialogue.turn import take_turn

SAID = [
    # fat, and not water; both temperatures of it: 3 degF a thousand feet
    (
        "steak fries, first oil 290F, second oil 370F in Savannah. at 10,000 ft?",
        r"260 °F.*340 °F",
        r"boil(ing)? french",
    ),
    ("cassava chips: 140 C in the oil, then 190 C. We are at 3,000 m", r"124 °C.*174 °C", r"rolling"),
    # steamed puddings are steamed, and longer
    ("marmalade pudding steamed 90 min at my aunt's, anything to change at 1,900 m?", r"steaming", r"[Bb]ake|oven"),
    # fried, then water and the lid; a cooker with its vent open
    ("wontons frozen, fry till brown, then water and lid 5 min, 2,500 m, how long", r"for steaming", r"hot fat"),
    (
        "idli 11 min in the pressure cooker, whistle removed, in Kochi. how long at 2,100 m",
        r"for steaming idli",
        r"psi\b.*idli",
    ),
    # a dip, not a boil
    ("do bagels need longer in the kettle at 9,000 ft, 40 seconds a side", r"^No: about 40 s", r"loaf|variable kettle"),
    # a low oven roasts longer than a hot one
    ("standing rib roast at 225F, how long at 5,500 ft", r"roasting prime rib", r"[Ff]rying"),
    # in the sun nothing is set to a temperature
    ("sun dry pears on the terrace, 2,700 m, how many days", r"^In the sun pears", r"Dry pears at"),
    # a sauce has no bone and no edge that sets
    ("is 83 C enough for vanilla sauce at 2,600 m", r"back of a spoon", r"clear of bone|Set at the edge"),
    ("custard sauce at 82 C, does that temperature change at 2,400 m", r"^No, that stays", r"^Yes"),
    # layered dough is not punched
    ("danish pastries proof too fast at 2,200 m, what now", r"wobble", r"[Pp]unch it down"),
    # the last figure of a sweet judges it
    ("toffee like a windowpane, boiled to 305F, 6,500 ft, how far was I over", r"12 °F", r"crystal"),
    ("water test says 201, penuche at 238 set like gravel, did i go too far", r"^Yes: 238 °F .* 11 °F", r"crystal"),
    (
        "quince fruit jellies boiled to 107 C in Quito, leather. by how much was I over",
        r"9\.5 °C",
        r"gasket",
    ),
    # what was raw the last time is told beside the time
    ("pork dumplings still raw in the middle yesterday, 8 min at home, how long at 9,500 ft", r"^About 1\d", r"^No"),
    ("what do I do, momos raw in the middle, can we eat them", r"165 °F|160 °F", r"^About"),
    # warming again is the reheating that is asked about
    ("50 poached eggs done the night before, how should I warm them again, 1,900 m", r"ice water", r"^No"),
    ("chowder was reheated at noon, may I warm it again tonight", r"^No", r"^About"),
    # what freezes is not put up in jars, what the freezer holds is cooked
    ("the freezer is full of mackerel, how do I cook one at 7,000 ft", r"145 °F", r"pressure canner|Process"),
    # demonstrations; probes set as if at the sea
    ("experiment: pump the air from a bell jar until tepid water boils. what do my pupils learn", r"vacuum", r"^No"),
    (
        "the new guy adjusted every probe to 212 in boiling water, 7,300 ft, is the turkey fine",
        r"too high",
        r"oven under",
    ),
    ("set the thermometer to 212 in boiling water in Tampa, good?", r"right", r"^No"),
    # words that sound like sickness, and those that are
    ("apple pints at 5,000 ft, the table made my eyes crossed", r"min", r"botulism"),
    ("uncle sees double and his eyelids droop since the home canned peppers", r"emergency", r"What went wrong"),
    # what a pot holds is not how it is kept warm
    (
        "one pan holds 2 dozen eggs, I need 8 dozen boiled and cold at noon, minutes a batch at 6,000 ft",
        r"hard yolk",
        r"held at",
    ),
    # for the frail the yolk is firm, and an age is no temperature
    ("ouma is 86 and on chemo, is 5 min right for her egg at 1,800 m", r"^No|firm", r"as you like|86 °C"),
    ("amma is 81, boiled egg, how many minutes at 2,200 m", r"hard yolk", r"Soft yolk|81 °C"),
    ("ten week old twins, rice cereal at night?", r"milk alone", r"elevation are you"),
    # a bird is done at its own temperature
    ("why does roast turkey take the same time at 6,000 ft", r"165 °F", r"$^"),
    # in the soup, not in the oven
    (
        "cazuela for 50 with chicken thighs in it, potatoes too, 13:30, 2,500 m, what goes in when",
        r"chicken thighs",
        r"oven",
    ),
]  # fmt: skip


@pytest.mark.parametrize(("question", "must", "must_not"), SAID)
def test_is_answered_as_it_is_cooked(question: str, must: str, must_not: str) -> None:
    text = take_turn(question, Memory()).answer.text
    assert re.search(must, text, re.DOTALL), text[:400]
    assert not re.search(must_not, text, re.DOTALL), text[:400]
