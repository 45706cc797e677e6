"""What cooks tell in other ways than the plain one, and what has to come of it."""

from __future__ import annotations

import pytest

from assistant.answering import reply_to, understand

M_PER_FT = 0.3048


@pytest.mark.parametrize(
    ("text", "time"),
    [
        ("brown rice for 60 covers at 6, when do I start, 8,000 ft", "18:00"),
        ("breakfast at 0630, oatmeal, Leadville, when do I light the burner", "06:30"),
        ("staff meal 0445, white rice at 7,000 ft, when do I start", "04:45"),
    ],
)
def test_a_time_of_service(text: str, time: str) -> None:
    assert understand(text).service_time == time


@pytest.mark.parametrize(
    ("text", "feet"),
    [
        ("how long do i boil rice at for thousand ate hundred feet", 4800),
        ("hw long fr hrd boild egs at 7,000 ft", 7000),
        ("caramel to 165 then butter, does altitude shift the 165, 6,200 ft", 6200),
        ("rice for hundred people at 5,000 ft, how long", 5000),
    ],
)
def test_the_elevation(text: str, feet: float) -> None:
    assert understand(text).elevation_m == pytest.approx(feet * M_PER_FT, abs=1)


def test_people_are_no_figure_misheard() -> None:
    assert understand("how much rice for hundred people at 5,000 ft").portions == 100


def test_thumbs_write_short() -> None:
    heard = understand("hw long fr hrd boild egs at 7,000 ft")
    assert (heard.dish, heard.topic) == ("hard-boiled eggs", "time")


def test_a_barometer_knows_more_than_the_town_below() -> None:
    """742 hPa is the air of 2,550 m by the standard atmosphere; the town stands lower."""
    heard = understand("our barometer reads 742 hPa, station pressure, hotel above Zermatt, what does water boil at")
    assert heard.elevation_from == "barometer"
    assert heard.elevation_m == pytest.approx(2550, abs=15)


def test_a_low_boil_and_a_recipe_of_the_sea() -> None:
    heard = understand("my water boils at 197, the card says 3 hours for corned beef, sea level")
    assert heard.elevation_from == "boil_test"
    assert heard.elevation_m == pytest.approx(8200 * M_PER_FT, abs=50)
    assert heard.from_elevation_m == 0.0


@pytest.mark.parametrize(
    ("text", "opens"),
    [
        # a stage drops as the boil does, 1 degF for every 500 ft; past hard crack no water is left: common practice
        ("hard candy says 300 F, should I still go to 300 at 7,000 ft", "Take it to 287"),
        ("caramel to 340 F, does altitude shift the 340 at 7,000 ft", "No:"),
        ("does altitude change the 240 F for soft ball at 7,000 ft", "Yes:"),
        ("dough is up so fast here at 6,000 ft, must I add more yeast", "No."),
        ("what temp should the fryer be at 7,000 ft", "Hold the fat"),
        ("carrots sous vide at 90, can the circulator hold that at 2,640 m", "No:"),
        ("pork belly in a bag at 62 for 30 h at 2,000 m, any change", "No:"),
        ("bain marie soup sitting at 64 C for 3 hours, still good to serve", "Yes."),
        ("creme anglaise to 83 C, fine at 765 hPa on the barometer here", "Yes"),
        ("how do I get beet juice out of an apron", "That is outside"),
    ],
)
def test_how_the_answer_opens(text: str, opens: str) -> None:
    assert reply_to(text).headline.startswith(opens)


@pytest.mark.source("usda-aib-539")
@pytest.mark.parametrize(("minutes", "opens"), [(20, "No: 20 min is too short"), (25, "Yes: 25 min")])
def test_what_the_cook_means_to_give_is_not_what_the_recipe_prints(minutes: int, opens: str) -> None:
    """Fresh-pack dill pickles in quarts: 15 min to 1,000 ft, 25 min above 6,000 ft."""
    before = ("dill pickles, quarts, the tested recipe says 15 min in the water bath", "our kitchen is at 7,100 ft")
    assert reply_to(f"is {minutes} min enough then?", before).headline.startswith(opens)


def test_a_formula_names_its_yeast_by_its_kind_alone() -> None:
    """Gas comes in proportion to the yeast: 1.2 % times 90 min over 135 min."""
    text = "65% water, 2% salt, 1.2% instant, bulk was 135 min on the coast, here 90 min, 5,600 ft, what do I cut"
    assert reply_to(text).headline.startswith("Cut the instant yeast from 1.2% to about 0.8%")


def test_each_of_several_elevations_is_told_for_a_bake() -> None:
    said = reply_to("1 tsp baking powder in muffins, what is it at 3,500, 5,000 and 8,000 ft").headline
    assert all(feet in said for feet in ("3,500 ft", "5,000 ft", "8,000 ft"))
