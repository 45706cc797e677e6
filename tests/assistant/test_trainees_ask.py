"""What trainees and teachers ask: verdicts first, what makes up for what, what comes of it, who is to blame."""

from __future__ import annotations

import pytest

from assistant.answering import reply_to, understand


def headline(text: str) -> str:
    return reply_to(text).headline


@pytest.mark.parametrize(
    ("text", "verdict"),
    [
        ("does height matter for a sous vide bath", "No. "),
        ("is a sous vide bath the same at 8,000 ft", "Yes. "),
        ("so sous vide is not affected by elevation, right?", "Yes. "),
        ("does hot oil get as hot in the mountains", "Yes. "),
        ("is frying oil cooler at altitude", "No. "),
        ("are candy stages the same up high", "No. "),
        ("is hot holding different at altitude", "No. "),
        ("does the cold water test need adjusting at 7,500 ft", "No. "),
        ("is the oven as hot at 9,000 ft", "Yes. "),
        ("does thawing take longer in the mountains", "No. "),
        ("can I use the same flan recipe in Cusco", "Yes. "),
    ],
)
def test_whether_a_thing_changes_is_said_first(text: str, verdict: str) -> None:
    assert headline(text).startswith(verdict)


@pytest.mark.parametrize(
    ("text", "verdict"),
    [
        ("does salt make up for the thin air in Quito", "No. The salt"),
        ("is it true that a cook in Leh may dip his fingers in boiling water", "No. Boiling water"),
        ("does a lid make up for the altitude", "No. A lid"),
        ("does a bigger flame compensate for altitude", "No. However hard"),
        ("is it true that steaming saves time over boiling up here", "No. Steam"),
        ("my boss says burgers have to be hotter inside at 8,000 ft, true or not", "No. Hamburgers: 160"),
        ("is a rice cooker useless at 3,500 m", "Partly. "),
        ("does sourdough go faster or slower at 7,000 ft", "The gas"),
    ],
)
def test_what_is_believed_gets_its_verdict(text: str, verdict: str) -> None:
    assert headline(text).startswith(verdict)


@pytest.mark.parametrize(
    ("text", "words"),
    [
        # 86.1 degC at 4,150 m by T_sat of the standard air
        ("what happens if the thermocirculator is set to 95 C for beets at 4,150 m", ("never gets to", "86 °C")),
        ("what would happen if I fried chicken at 190 C in La Paz", ("crust is brown before", "174 °C")),
        ("my thermometer reads 194 F at a rolling boil, is it broken or am I high up", ("Not broken if", "9,820 ft")),
        ("is my tea awful at 2,900 m or is it me", ("elevation and not you", "90.5 °C")),
        # 240 °F less 13 °F
        ("what would happen to fondant cooked to 240 °F in Mexico City", ("227 °F", "240 °F")),
        ("combi steam shows 100 C at 3,200 m, do I need to call the service", ("Nothing is broken", "89.5 °C")),
        ("will 10 min in the water bath do for plum jam at 7,000 ft", ("No: 10 min is too short", "15 min")),
    ],
)
def test_what_comes_of_it_and_whose_fault_it_is(text: str, words: tuple[str, ...]) -> None:
    said = headline(text)
    assert all(word in said for word in words), said


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("which suffers more in the mountains, boiled potatoes or a roast", ("water or steam suffers",)),
        ("why are eggs slower here but a grilled steak is not", ("water or steam suffers",)),
        ("at what temperature does cream boil at 3,000 m", ("within half a degree", "90 °C")),
        ("how much hotter is 15 psi than an open boil at 3,000 m", ("26 °C",)),
        ("our book says 1 °C for every 300 m, how good is that at 3,900 m", ("rule of thumb", "87 °C")),
        ("how many degrees for each 1,000 ft", ("for each",)),
        ("above what height does rice no longer cook", ("At no height",)),
        ("would vacuum packed carrots cook faster", ("No. Food in a bag",)),
        ("is boiling hot enough for chicken at 13,000 ft", ("Yes. Meat only has to reach",)),
    ],
)
def test_reasons_that_were_asked_outright(text: str, words: tuple[str, ...]) -> None:
    said = headline(text)
    assert all(word in said for word in words), said


def test_where_somebody_learns_now_is_here_and_where_they_learned_is_not() -> None:
    assert understand("doing my stage in Quito, how long for rice").elevation_m is not None
    assert understand("I did my training in Quito, how long for rice").elevation_m is None
    assert understand("does pork get cooked at 4000 m").elevation_m == pytest.approx(4000)
