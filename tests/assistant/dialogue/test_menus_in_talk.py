"""A menu that is pasted or named over turns, ordered and worked back in conversation."""

from __future__ import annotations

from dataclasses import replace

import pytest

from assistant.dialogue.memory import Memory
from assistant.dialogue.menu_written import wanted
from assistant.dialogue.timing import following
from assistant.dialogue.turn import Turn, take_turn, timers_asked
from rules.model import Kitchen

LODGE_M = 2134.0
PASTED = "short ribs 40%\ntrout, 35\npolenta, side\ngreen beans 1/2"


def talk(*said: str, at_m: float | None = LODGE_M) -> Turn:
    """The last turn of a conversation at Timberfold Lodge."""
    memory, turn = Memory(kitchen=Kitchen(elevation_m=at_m)), None
    for line in said:
        turn = take_turn(line, memory)
        memory = turn.memory
    assert turn is not None
    return turn


def test_a_pasted_menu_is_read_back() -> None:
    turn = talk(PASTED)
    assert "short ribs for 40 %; trout for 35; polenta; green beans for 50 %" in turn.answer.text
    assert turn.memory.menu is not None


def test_a_pasted_menu_is_ordered_for_the_covers_that_are_told() -> None:
    """Of 90 guests 36 take the 40 % and 45 the half: common practice; a pound of bone-in short ribs each."""
    text = talk(PASTED, "order that for 90").answer.text
    assert text.startswith("For 90: 36 lb (16 kg) of bone-in short ribs as a main course for 36; ")
    assert "raw trout as a main course for 35" in text
    assert "green beans as a side for 45" in text
    assert "bone-in short ribs, 4 × 10 lb for 38 lb" in text


def test_covers_that_nobody_told_are_asked_for() -> None:
    turn = talk(PASTED, "order it")
    assert turn.memory.asked == "portions"
    assert talk(PASTED, "order it", "90").answer.text == talk(PASTED, "order that for 90").answer.text


@pytest.mark.parametrize(
    "said",
    [
        f"order this for 90 please:\n{PASTED}",
        f"{PASTED}\ncan you order that for 90?",
        "Menu: short ribs 40%, trout, 35, polenta, side, green beans 1/2. Order that for 90.",
        f"Covers: 90\n{PASTED}\nwhat do I order?",
    ],
)
def test_what_is_wanted_may_stand_around_the_menu(said: str) -> None:
    assert "36 lb (16 kg) of bone-in short ribs as a main course for 36" in talk(said).answer.text


def test_covers_are_changed_of_an_order() -> None:
    text = talk(PASTED, "order that for 90", "make it 120").answer.text
    assert text.startswith("For 120:")
    assert "for 48" in text


def test_twice_the_covers_never_take_less() -> None:
    one, two = (talk(PASTED, f"order that for {n}").answer for n in (90, 180))
    for before, after in zip(one.figures, two.figures, strict=True):
        assert before.id == after.id
        assert after.value >= before.value


def test_a_menu_is_worked_back_and_moved() -> None:
    planned = talk(PASTED, "schedule it for Saturday 6:30").answer
    assert "6:30 pm on Saturday" in planned.headline
    moved = talk(PASTED, "schedule it for Saturday 6:30", "service moved to 7").answer
    assert "7 pm on Saturday" in moved.headline
    assert "30 min later" in moved.text
    assert "at 1 pm" in talk(PASTED, "schedule it for Saturday 6:30", "when in for a 1 pm carve").answer.headline


def test_nothing_begins_after_service() -> None:
    turn = talk(PASTED, "schedule it for Saturday 6:30")
    assert turn.memory.menu is not None
    assert turn.memory.menu.service_time == "18:30"
    assert turn.answer.steps[-1] == "6:30 pm: Serve."


def test_an_order_goes_by_what_was_planned_and_back() -> None:
    said = ("short ribs, polenta and green beans for 90 at 6:30 saturday", "order that")
    text = talk(*said).answer.text
    assert text.startswith("For 90: 89 lb (40.5 kg) of bone-in short ribs")
    assert "7 pm on Saturday" in talk(*said, "service moved to 7").answer.headline


def test_dishes_named_over_turns_are_one_menu() -> None:
    said = ("short ribs for 60, how much", "and mashed potatoes with that", "order it all for 60")
    text = talk(*said).answer.text
    assert "short ribs" in text.partition("\n")[0]
    assert "unpeeled potatoes" in text.partition("\n")[0]


def test_the_elevation_changes_what_is_poured_in_and_nothing_on_the_plate() -> None:
    high, low = (talk(PASTED, "order that for 90", at_m=m).answer for m in (LODGE_M, 0.0))
    assert [f.value for f in high.figures] == [f.value for f in low.figures]
    assert "4 % more" in high.text
    assert "% more)" not in low.text


def test_a_bad_menu_gives_a_line_each_and_the_rest_is_done() -> None:
    bad = "Covers: 90\nService: 6:30 pm\nService: 7 pm\nshort ribs\ntrout, -5\nxqzvw\npolenta, side\nwhat do I order?"
    text = talk(bad).answer.text
    assert 'Line 6: I know no dish in "xqzvw"' in text
    assert "feeds nobody" in text
    assert "time of service" in text
    assert "bone-in short ribs" in text
    assert "dry polenta" in text


def test_a_recipe_is_no_menu() -> None:
    recipe = "Beans\n2 cups pinto beans\n1 onion\n2 tsp salt\nSimmer the beans 2 hours."
    assert talk(recipe).memory.menu is None


@pytest.mark.parametrize(
    ("said", "what"),
    [
        ("order everything for 90", "order"),
        ("shopping list please", "order"),
        ("what do we need to order", "order"),
        ("work that back from 6:30", "schedule"),
        ("give me a timeline", "schedule"),
        ("in what order do they go on", ""),
        ("how long for rice", ""),
    ],
)
def test_what_is_wanted_of_a_menu(said: str, what: str) -> None:
    assert wanted(said) == what


@pytest.mark.parametrize("said", ["timers for all", "set timers please", "set a timer for everything", "timers for it"])
def test_timers_are_started_from_a_plan(said: str) -> None:
    turn = talk(PASTED, "schedule it for Saturday 6:30", said)
    asked = timers_asked(turn)
    assert [(one.timer_action, one.dish) for one in asked] == [
        ("fire", "short ribs"),
        ("fire", "polenta"),
        ("fire", "trout"),
        ("fire", "green beans"),
    ]
    assert all(one.service_time == "18:30" and one.service_day == "saturday" for one in asked)
    assert turn.memory.menu is not None


def test_a_timer_with_a_length_is_no_timer_of_the_plan() -> None:
    asked = timers_asked(talk(PASTED, "schedule it for Saturday 6:30", "set a timer for the beans 90 minutes"))
    assert [(one.timer_action, one.time_min) for one in asked] == [("set", 90.0)]


def test_the_gas_of_a_menu_is_that_of_all_its_dishes() -> None:
    text = talk(PASTED, "schedule it for Saturday 6:30", "do we need more gas").answer.text
    assert text.startswith("Fuel on the burners: ")
    assert "for this menu at 7,000 ft (2,130 m)" in text
    assert "bone-in" not in text


@pytest.mark.parametrize(
    ("said", "told"),
    [
        # a pound of bone-in ribs a head: common practice
        ("how many lbs of bone-in short ribs for 85 covers", "84 lb (38.5 kg) of bone-in short ribs for 85"),
        # 3/4 cup each, 158 g a cup, swollen 2.81 times (365 and 130 kcal): USDA SR Legacy
        ("rice for seventy five, side portion", "7 lb (3.1 kg) of dry white rice for 75 as a side"),
        # 300 x 5 oz = 94 lb cooked, 2.3 times the dry weight: 41 lb, three cases of 20 lb
        ("cases of dried spaghetti for 300 at 5 oz cooked", "3 cases of 20 lb"),
        # 200 x 8 oz = 12.5 gal at 58 g to the litre
        ("coffee for 200", "6 lb (2.8 kg) of ground coffee for 200"),
        # 0.52 of 50 lb: Food Buying Guide, from memory
        ("yield on 50 lb pork butt", "about 26 lb (12 kg) cooked"),
        ("50 lb bag makes how many trays of cornbread", "About 12 full sheets"),
    ],
)
def test_amounts_asked_in_talk(said: str, told: str) -> None:
    assert told in talk(said).answer.text


def test_a_list_may_be_led_by_what_is_wanted_of_it() -> None:
    banquet = "order for a banquet of 200: prime rib 70%, salmon 30%, asparagus"
    assert "bone-in prime rib as a main course for 140" in talk(banquet).answer.text
    assert "To serve 200 at 7 pm on Saturday" in talk(banquet, "work that back from 7 pm Saturday").answer.headline


def test_the_service_of_a_list_is_heard_behind_it() -> None:
    said = "Menu: roast turkey 60%, salmon 40%, mashed potatoes side. For 120 on Friday at 5."
    assert "To serve 120 at 5 pm on Friday" in talk(said).answer.headline


def test_a_vegetable_dish_is_ordered_without_meat() -> None:
    assert "ground beef" not in talk("Menu: vegetable lasagna, salmon. Order that for 40.").answer.text


def test_an_order_in_kilos() -> None:
    assert talk(PASTED, "order it for 90 in kilos").answer.text.startswith("For 90: 16 kg (36 lb)")


@pytest.mark.parametrize("said", ["order that", "schedule it for 6:30", "shopping list please"])
def test_without_a_menu_it_is_asked_for(said: str) -> None:
    assert talk(said).answer.text.startswith("Which menu?")


def test_one_dish_that_was_talked_of_is_ordered() -> None:
    text = talk("how long to braise short ribs", "order that for 90").answer.text
    assert text.startswith("About 89 lb (40.5 kg) of bone-in short ribs for 90")


def test_nobody_cooks_for_less_than_one() -> None:
    assert talk("-5 covers of short ribs").memory.asked == "portions"


PLANNED = (PASTED, "schedule it for Saturday 6:30", "set timers please")


@pytest.mark.parametrize(
    ("said", "time"),
    [
        ("service moved to 7", "19:00"),
        ("push it back half an hour", "19:00"),
        ("half an hour later", "19:00"),
        ("service is at 6 now", "18:00"),
    ],
)
def test_the_timers_of_a_plan_follow_its_service(said: str, time: str) -> None:
    follow = talk(*PLANNED, said).follow
    assert follow is not None
    assert (follow.timer_action, follow.service_time, follow.service_day) == ("follow", time, "saturday")
    assert [one.dish for one in follow.menu] == ["short ribs", "polenta", "trout", "green beans"]
    asked = timers_asked(talk(*PLANNED))
    assert [one.left_min for one in follow.menu] == [one.left_min for one in asked]


def test_timers_follow_a_plan_to_another_place_and_without_a_dish() -> None:
    here, there = talk(*PLANNED, "service moved to 7").follow, talk(*PLANNED, "and at 9,000 feet?").follow
    assert here is not None
    assert there is not None
    assert there.menu[0].left_min > here.menu[0].left_min
    without = talk(*PLANNED, "without the polenta").follow
    assert without is not None
    assert {one.timer_name: one.left_min is None for one in without.menu}["polenta"] is True


@pytest.mark.parametrize("said", ["why", "how long do potatoes boil", "thanks", "what is on first?"])
def test_timers_stay_where_the_plan_stays(said: str) -> None:
    assert talk(*PLANNED, said).follow is None


def test_another_plan_leaves_the_timers_of_this_one_alone() -> None:
    sunday = talk("roast chicken and rice for noon on Sunday").memory
    assert following(talk(*PLANNED).memory.menu, sunday) is None
    assert following(sunday.menu, replace(sunday, menu=replace(sunday.menu, service_time="13:00"))) is not None
