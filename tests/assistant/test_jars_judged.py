"""Jars that are judged, cookers by any word, and what another trade answers: the first line, end to end."""

import pytest

from assistant.answering import reply_to, understand


def first_line(text: str) -> str:
    return reply_to(text).text.splitlines()[0]


@pytest.mark.parametrize(
    ("text", "verdict", "figures"),
    [
        ("I gave the pear quarts only 25 minutes last night at 6,500 ft, keep or dump them?", "No: ", ["25 min", "40"]),
        ("ran the blackberry jam five minutes this morning, we are at 7,200 ft. still good?", "No: ", ["5 min", "15"]),
        (
            "our dill pickle pints had 10 min in the canner weeks ago at 5,500 ft, safe?",
            "No: ",
            ["10 min", "15", "Disc"],
        ),
        ("applesauce quarts got 35 minutes at 6,400 ft yesterday, bin or eat?", "Yes: ", ["35 min"]),
        ("is 15 minutes enough for pints of applesauce at 5,000 ft", "No: ", ["15 min", "20"]),
        ("green bean pints had 20 min at 10 lb weighted at 4,800 ft an hour ago, redo?", "No: ", ["10 psi", "15 psi"]),
        (
            "trout in pints, 80 minutes on the weighted gauge at 6,900 ft, my uncle swears by it",
            "No: ",
            ["80 min", "100"],
        ),
    ],
)
def test_jars_are_judged_by_their_own_time(text, verdict, figures):
    """Due times typed from the USDA guide: pears 25 (+15), jam 5 (+10), dills 10 (+5), applesauce 15, fish 100."""
    line = first_line(text)
    assert line.startswith(verdict)
    assert all(figure in line for figure in figures)


def test_when_they_came_out_decides_what_becomes_of_them():
    fresh = first_line("did the plum jam 5 minutes this morning at 7,000 ft, still ok?")
    old = first_line("did the plum jam 5 minutes a week ago at 7,000 ft, still ok?")
    unsaid = first_line("did the plum jam 5 minutes in the canner at 7,000 ft, still ok?")
    assert "Redo them now" in fresh
    assert "Discard them" in old
    assert "24 hours" in unsaid


@pytest.mark.parametrize(
    ("text", "time_min"),
    [
        ("my cooker does kidney beans in 25 min in Mombasa, what in Nairobi", 25.0),
        ("lentils in the olla a presion 12 minutos in Lima, in Cusco?", 12.0),
        ("cocotte minute, lentils 12 minutes at sea level, at 2,600 m", 12.0),
        ("lamb shanks 40 min hp then natural release at 7,500 ft", 40.0),
        ("pot roast in her cooker takes 60 minutes at the coast, at 1,800 m", 60.0),
    ],
)
def test_a_pressure_cooker_by_any_word(text, time_min):
    request = understand(text)
    assert (request.topic, request.method, request.time_min) == ("time", "pressure_cook", time_min)


@pytest.mark.parametrize(
    "text",
    [
        "pot roast on the cooker for 3 hours at 5,000 ft",
        "brown rice in the rice cooker 40 min at 8,000 ft",
        "chili in my slow cooker 8 hours at 7,000 ft",
    ],
)
def test_another_cooker_is_none(text):
    assert understand(text).method != "pressure_cook"


def test_a_time_that_no_open_pot_keeps_is_one_under_pressure():
    line = first_line("steel-cut oats take 5 minutes at home in Houston, what in Leadville")
    assert "pressure cooking" in line
    assert "simmering" in first_line("are 5 minutes enough for steel-cut oats in Leadville")


def test_an_electric_pot_has_no_flame_and_no_weight():
    said = reply_to("beef stew 35 min in the electric multicooker at 7,000 ft").text
    assert "flame" not in said
    assert "HIGH" in said


@pytest.mark.parametrize(
    "text",
    [
        "where do i buy canning lids near Quito",
        "who sells canner gaskets in Nairobi",
        "tire pressure for the truck at 9,000 ft",
        "how much do mason jars cost in Denver",
        "which brand of canner should i get",
    ],
)
def test_shops_prices_and_tyres_are_another_trade(text):
    assert "outside what I know" in first_line(text)


def test_lids_and_a_time_asked_at_once_is_answered():
    assert "peaches" in first_line("where can i buy lids and how many minutes for peach pints at 6,000 ft")


def test_meat_that_hangs_is_done_by_its_weight():
    line = first_line("how do I know my biltong is dry, 6 kg when I hung it, at 1,700 m")
    assert "2.7 kg" in line
    assert "3.3 kg" in line


@pytest.mark.parametrize(
    "text",
    [
        "must pickled onions in malt vinegar be boiled at 1,500 m",
        "does torshi in straight vinegar have to be processed at 6,000 ft",
    ],
)
def test_pickles_in_full_vinegar(text):
    line = first_line(text)
    assert line.startswith("Only if")
    assert "shelf" in line


@pytest.mark.parametrize(
    "text",
    [
        "torshi with oil and vinegar on the shelf, must it be boiled",
        "must eggs pickled in vinegar be processed for the shelf",
        "can i hang a nut on the regulator weight for more pressure at 9,000 ft",
        "fig jam without lemon, 10 min in jars at 6,000 ft",
    ],
)
def test_what_hurts_is_still_refused(text):
    assert first_line(text).split()[0].rstrip(".,:") in ("No", "Discard")


def test_the_heat_inside_where_it_is_asked():
    assert first_line("how hot is it inside at 15 psi at 10,000 ft").startswith("240 °F")


def test_why_minutes_here_and_pounds_there():
    line = first_line("why is it minutes for the water bath and pounds for the pressure canner")
    assert "kettle" in line
    assert "pounds" in line
